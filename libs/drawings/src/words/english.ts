import { bodyWords } from './body-english.js';
import { reportWords } from './report-english.js';

/** Every word of the drawings and reports in English: the first language, and the shape of every other. */
const words = {
  language: 'en',
  drawing: {
    scale: 'Scale',
    notToScale: 'not to scale',
    sheet: 'Sheet',
    job: 'Job',
    paper: 'Paper',
    made: 'Made',
    bow: 'Bow',
    inMm: 'All dimensions in mm',
    inInches: 'Dimensions in feet, inches and sixteenths',
    panelEdge: 'edge of panel',
    supports: {
      'hull-joint': 'hull joint',
      'coaming': 'coaming',
      'hatch': 'hatch',
      'toe-rail': 'toe rail',
      'bulkhead': 'bulkhead below',
      'beam': 'beam below',
      'other': 'support below',
    },
    fitting: 'fitting',
    solid: 'solid under a fitting, its long side fore and aft, in place of core',
    plate: 'backing plate below, its long side fore and aft',
    seenFromBelow:
      'Seen from below, looking up: port and starboard change sides. Measure on the underside of the deck.',
  },
  conditions: {
    'wet-rotten': 'wet and rotten',
    'wet-bonded': 'wet, still bonded',
    'dry-debonded': 'dry, skin loose',
    'unknown': 'condition not known',
  },
  defectMap: {
    title: 'Defect map',
    describe: (zones: string, readings: string, area: string) =>
      `Plan of the panel seen from above with ${zones} of bad core and ${readings}. Damaged area about ${area}.`,
    zones: (count: number) => (count === 1 ? '1 zone' : `${count} zones`),
    readings: (count: number) => (count === 1 ? '1 reading' : `${count} readings`),
    band: (chance: string, from: string, to: string) => `${chance}, ${from} to ${to}`,
    chances: {
      little: 'small chance of bad core',
      possible: 'core may be bad',
      likely: 'core more likely bad than sound',
      nearlySure: 'core almost surely bad',
    },
    noSign: (percent: string) => `little sign of bad core, under ${percent}`,
    next: {
      sounding: 'tap here next, in this order',
      moisture: 'meter here next, in this order',
      plug: 'take a plug here next, in this order',
    },
    sharp: 'hammer: sharp',
    dull: 'hammer: dull',
    void: 'hammer: hollow',
    moisture: 'meter reading on its own scale',
    plugSound: 'plug: sound core',
    plugBad: 'plug: bad core',
    unreliable: 'reading marked doubtful',
    photograph: 'photograph, and which way it looks',
    photographNumber: (number: string) => `ph. ${number}`,
    notLabelled: (count: number) => `${count} labels are left out for room; the tables list them all.`,
  },
  openingPlan: {
    title: 'Opening plan',
    describe: (count: string, area: string, length: string) =>
      `Plan of ${count} to be cut, ${area} in all, ${length} of cut, with running dimensions from where the tapes are laid.`,
    openings: (count: number) => (count === 1 ? '1 opening' : `${count} openings`),
    sawLine: 'saw line',
    undercut: 'core taken out under skin that stays',
    coreStays: 'sound core that stays: clean its face',
    taper: 'outer edge of taper',
    datum: '0',
    checkPoint: 'end of the aft edge: check from here',
    toPort: (offset: string) => `P ${offset}`,
    toStarboard: (offset: string) => `S ${offset}`,
    setOut: {
      edges: 'Measure forward from the aft edge and inwards from the port edge.',
      centreline:
        'Measure forward from the aft edge along the centreline, and square from it to port (P) or starboard (S).',
      square:
        'Measure forward along the line square to the middle of the aft edge, and from it to port (P) or starboard (S).',
    },
    sawOn:
      'The skin goes back: saw along the line with the thinnest blade; half of what it takes falls on each side and is filled.',
    sawInside:
      'The line stays on the deck: saw along its inner side, so that what the blade takes falls into the part that comes off.',
    note: (setOut: string, depth: string) =>
      `${setOut} Saw no deeper than ${depth}; try the depth on a scrap edge and look for wiring, hoses and tanks behind it first.`,
    noDepth: (setOut: string) => `${setOut} No safe saw depth is known: read the findings before cutting.`,
    notListed: (count: number) => `${count} values found no room here; the table of corners lists them all.`,
  },
  piecePlan: {
    title: 'Core piece plan',
    describe: (count: string, area: string) =>
      `Plan of ${count} of new core, ${area}, labelled in the order of bedding.`,
    pieces: (count: number) => (count === 1 ? '1 piece' : `${count} pieces`),
    piece: 'core piece',
    grained: 'core piece, lines along the grain or score',
    solid: 'filled solid, no core',
    cut: 'edge of opening',
    bleed: 'bleed hole',
    note: 'Bed the pieces in the order of their labels. Every joint is filled.',
    leftOut: (count: number) => `${count} labels found no room here; the table of pieces lists them all.`,
  },
  pressPlan: {
    title: 'Plan of boards, props and loads',
    describe: (lines: string, pieces: string) =>
      `Plan of ${lines} and ${pieces}, with running dimensions from where the tapes are laid and what each piece is loaded with.`,
    lines: (count: number) => (count === 1 ? '1 length of timber' : `${count} lengths of timber`),
    setOut: {
      edges: 'Measured forward from the aft edge and inwards from the port edge, as the saw lines are.',
      centreline:
        'Measured forward from the aft edge along the centreline and square from it to port (P) or starboard (S), as the saw lines are.',
      square:
        'Measured along the line square to the middle of the aft edge and from it to port (P) or starboard (S), as the saw lines are.',
    },
    boardsBelow:
      'Boards and props stand under the inner skin and are drawn as if the deck were clear: looking up from below, port and starboard change sides.',
    timber: {
      board: 'board on props, under the inner skin',
      batten: 'batten over film, screwed down',
      bow: 'bow across the deck, on the other side of it',
    },
    prop: 'prop',
    screw: 'screw with washer',
    jack: 'jack under the padded board of a piece',
    seal: 'sealant tape of the bag, on sound clean skin outside the taper',
    breach: 'hole through the skin: close it airtight before the pump runs',
    sealed:
      'The tape runs on without a gap, with a pleat at each corner and at the hose; where it meets the edge of the panel it goes on up what stands there. Before resin is mixed the bag is pumped down dry and its loss read.',
    loaded: {
      above: 'core piece, with the weight that is laid on it',
      below: 'core piece, with the force that holds it up',
    },
  },
  sheets: {
    title: 'Sheet layout',
    describe: (count: string, used: string) =>
      `Cutting layout of ${count} with ${used} of the material used.`,
    sheets: (count: number) => (count === 1 ? '1 sheet' : `${count} sheets`),
    caption: (label: string, size: string, used: string) => `Sheet ${label}  ${size}  used ${used}`,
    piece: 'piece, number is the order of cutting',
    keep: 'offcut to keep',
    waste: 'waste',
    grain: 'grain of the sheet',
  },
  plyPlan: {
    title: 'Ply plan',
    describe: (count: string, ratio: string) => `Outlines of ${count} over the openings, taper ${ratio}.`,
    plies: (count: number) => (count === 1 ? '1 ply' : `${count} plies`),
    along: '0°',
    note: '0° runs fore and aft; the first ply lies on the core, its mat side against the core where it has one.',
    between: (least: string) =>
      `The plies between the two drawn are too near to tell apart here: each reaches at least ${least} past the one below on every side.`,
    ply: (order: string) => `ply ${order}`,
    plyOf: (order: string, material: string) => `ply ${order}: ${material}`,
  },
  section: {
    title: 'Section through the joint',
    describe: (method: string, ratio: string, times: string) =>
      `Section across the cut edge, ${method}, taper ${ratio}, heights drawn ${times} times the widths.`,
    exaggerated: (scale: string, times: string) =>
      `Widths at ${scale}; heights drawn ${times} times as large as widths.`,
    methods: {
      're-bed': 'old skin bedded back and closed with plies',
      'relay': 'new skin laid up over the core',
    },
    wholeSkin: { above: 'inner skin', below: 'outer skin, whole, with its paint' },
    cutSkin: { above: 'outer skin, stays', below: 'inner skin, stays' },
    liftedSkin: 'lifted skin, bedded back',
    newCore: 'new core',
    oldCore: 'old core, sound',
    bond: 'bond line',
    plies: 'new plies',
    filled: 'filled joint',
    cutLine: 'cut line',
    taperWidth: 'taper',
    ply: (order: string) => `ply ${order}`,
  },
  slotSection: {
    title: (place: string) => `Section through the slot: ${place}`,
    describe: (place: string, strip: string) =>
      `Section across the strip ${place}, ${strip} deep from the edge: routed out through a slot, filled solid between the skins, closed with tapes.`,
    drawn: 'The slot is as wide as the tool asks; tapes are drawn thicker than they are.',
    innerSkin: 'inner skin, stays',
    outerSkin: 'outer skin, ground for the tapes',
    oldCore: 'old core, sound and dry',
    fill: 'filled solid in lifts, core routed to clean laminate',
    slot: 'slot, filled flush with the skin',
    lip: 'lip of outer skin, stays',
    tapes: ['narrower tape over the slot', 'wider tape over it'],
    edge: 'edge of the deck',
  },
  fittingSection: {
    title: (names: string) => `Through one bolt: ${names}`,
    describe: (names: string) =>
      `Section through one bolt of ${names}: base, sealant, deck with plug or solid, plate and nut.`,
    outerSkin: 'outer skin',
    innerSkin: 'inner skin',
    core: 'core, sound',
    plug: (diameter: string) => `hole of ${diameter}, dug out, filled, drilled anew`,
    plate: (material: string) => `plate: ${material}`,
    base: 'base of the fitting',
    sealant: (kind: string) => `${kind} under the base and in a countersink round the bolt`,
    bolt: (diameter: string, length: string) => `bolt ${diameter} × ${length}`,
    nut: 'washer and nut',
  },
  gantt: {
    title: 'Calendar of the work',
    describe: (count: string, days: string) =>
      `Bars of ${count} over ${days} days, with waits and the hold point.`,
    tasks: (count: number) => (count === 1 ? '1 task' : `${count} tasks`),
    work: 'work',
    critical: 'work that sets the finish',
    wait: 'cure or drying wait',
    hold: 'hold point: stop, re-measure, agree',
    day: 'Day from the start',
    date: 'Date',
    sheetNote: (from: string, to: string) => `Tasks ${from} to ${to}.`,
  },
  batch: {
    title: (number: string) => `Batch ${number}`,
    describe: (number: string, title: string) =>
      `Card for batch ${number}, ${title}: what to weigh, in which order, and how long it lasts.`,
    weigh: 'Weigh in this order',
    resin: 'Resin',
    hardener: 'Hardener',
    filler: 'Filler',
    mixed: 'Mixed volume',
    part: (volume: string, scale: string) => `${volume} ml · scale shows ${scale} g`,
    loosePart: (volume: string, scale: string) => `about ${volume} ml loose · scale shows ${scale} g`,
    mix: 'Mix and scrape the sides, pour out of the pot at once.',
    for: 'For',
    useWithin: 'Use within',
    minutes: (value: string) => `${value} min`,
    startedAt: 'Mixed at',
    useBy: 'Use by',
    limitedBy: 'Batch size set by',
    pumps: 'Pumps',
  },
  template: {
    title: (piece: string) => `Template ${piece}`,
    describe: (piece: string, tile: string, tiles: string) =>
      `Full-size outline of core piece ${piece}, tile ${tile} of ${tiles}.`,
    tile: (piece: string, tile: string, tiles: string) => `${piece} · tile ${tile} of ${tiles}`,
    check: 'Print at 100 %. This line measures 100 mm',
    checkInches: '(3 15/16 in, just under)',
    grain: 'grain',
    cut: 'Saw outside the outline.',
    overlap: 'Lay the crosses of neighbouring tiles on each other.',
    forward: 'forward',
  },
  ...bodyWords,
  ...reportWords,
} as const;

/** The same keys with any text: what a translation has to fill in. */
type Translated<T> = {
  readonly [K in keyof T]: T[K] extends string
    ? string
    : T[K] extends (...given: infer G) => string
      ? (...given: G) => string
      : Translated<T[K]>;
};

export type Words = Translated<typeof words>;
export const english: Words = words;
