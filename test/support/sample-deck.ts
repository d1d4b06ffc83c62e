import { randomStream } from '#lib/kernel';
import { m2FromMm2, mm2 } from '#lib/units';
import type { Reading } from '#lib/extent';
import type { DefectMapInput } from '../../libs/drawings/src/deck/defect-map.js';
import type { OpeningPlanInput } from '../../libs/drawings/src/deck/opening-plan.js';
import type { Fitting, Panel } from '../../libs/drawings/src/deck/panel-marks.js';
import type { PiecePlanInput } from '../../libs/drawings/src/deck/piece-plan.js';
import type { Outline, Place } from '../../libs/drawings/src/deck/place.js';
import type { PlyPlanInput } from '../../libs/drawings/src/deck/ply-plan.js';
import type { SheetLayoutInput } from '../../libs/drawings/src/deck/sheet-layout.js';
import type { SectionInput } from '../../libs/drawings/src/joint/section.js';
import type { BatchCardInput } from '../../libs/drawings/src/job/batch-card.js';
import type { GanttInput } from '../../libs/drawings/src/job/gantt.js';

/** An invented foredeck, used to look at the drawings and to test their layout. */
export const foredeck: Panel = {
  name: 'Foredeck',
  outer: [
    [0, -1050],
    [900, -880],
    [1700, -560],
    [2250, -180],
    [2250, 180],
    [1700, 560],
    [900, 880],
    [0, 1050],
  ],
  holes: [
    [
      [700, -250],
      [1200, -250],
      [1200, 250],
      [700, 250],
    ],
  ],
  supports: [{ kind: 'bulkhead', from: [1450, -670], to: [1450, 670] }],
};

const box = (x: number, y: number, width: number, height: number): Outline => [
  [x, y],
  [x + width, y],
  [x + width, y + height],
  [x, y + height],
];

const fittings: readonly Fitting[] = [
  { id: 'stanchion S1', at: [250, -900] },
  { id: 'cleat P', at: [1750, -420] },
  { id: 'cleat S', at: [1750, 420] },
  { id: 'vent', at: [420, 420] },
  { id: 'windlass', at: [1900, 0] },
];

function surveyed(): readonly Reading[] {
  const chance = randomStream(7);
  return Array.from({ length: 80 }, (_, index): Reading => {
    const at: Place = [120 + (index % 10) * 190, -640 + Math.floor(index / 10) * 180];
    const isBad = Math.hypot(at[0] - 420, at[1] - 380) < 330;
    if (index % 17 === 0) return { kind: 'plug', at, condition: isBad ? 'rotten' : 'dry-sound' };
    if (index % 3 === 0)
      return {
        kind: 'moisture',
        at,
        value: Math.round((isBad ? 28 : 9) + chance() * 8),
        ...(index % 9 === 0 ? { isUnreliable: true } : {}),
      };
    return { kind: 'sounding', at, sound: isBad ? (chance() < 0.5 ? 'void' : 'dull') : 'sharp' };
  }).filter(
    ({ at }) =>
      Math.abs(at[1]) < 1000 - at[0] * 0.38 && !(at[0] > 680 && at[0] < 1220 && Math.abs(at[1]) < 270),
  );
}

export const sampleDefectMap: DefectMapInput = {
  panel: foredeck,
  fittings,
  readings: surveyed(),
  contours: [],
  next: [],
  openings: [],
  photographs: [],
  damagedAreaM2: 0.42,
  zones: [
    {
      id: 'Z1',
      outline: [
        [150, 250],
        [300, 180],
        [560, 230],
        [640, 420],
        [520, 640],
        [260, 620],
      ],
      areaM2: 0.18,
      condition: 'wet-rotten',
    },
    {
      id: 'Z2',
      outline: [
        [1300, -500],
        [1650, -480],
        [1620, -250],
        [1320, -260],
      ],
      areaM2: 0.08,
      condition: 'wet-bonded',
    },
    {
      id: 'Z3',
      outline: [
        [1350, 150],
        [1600, 180],
        [1500, 340],
      ],
      areaM2: 0.02,
      condition: 'dry-debonded',
    },
  ],
};

const blob = (radius: number): Outline =>
  Array.from({ length: 40 }, (_, index): Place => {
    const turn = (index / 40) * 2 * Math.PI;
    return [420 + Math.cos(turn) * radius * 1.2, 380 + Math.sin(turn) * radius];
  });

export const sampleContourMap: DefectMapInput = {
  ...sampleDefectMap,
  zones: [],
  contours: [0.1, 0.5, 0.9].map((probability, index) => ({
    probability,
    areas: [{ outer: blob(330 - index * 70), holes: [] }],
  })),
  next: [
    { number: 1, kind: 'plug', at: [560, 420] },
    { number: 2, kind: 'sounding', at: [300, 60] },
    { number: 3, kind: 'moisture', at: [900, -500] },
  ],
};

const openingA = box(100, 130, 560, 540);
const openingB = box(1260, -540, 420, 320);

export const sampleOpeningPlan: OpeningPlanInput = {
  panel: foredeck,
  fittings,
  cutLengthM: 3.68,
  seenFrom: 'above',
  isSkinKept: false,
  openings: [
    {
      label: 'A',
      area: { outer: openingA, holes: [] },
      sawLine: openingA,
      areaM2: 0.302,
      cutDepthMm: 4.5,
      undercut: [{ outer: box(660, 260, 60, 300), holes: [] }],
      coreStays: [],
      taperBand: [{ outer: box(50, 80, 660, 640), holes: [] }],
    },
    {
      label: 'B',
      area: { outer: openingB, holes: [] },
      sawLine: openingB,
      areaM2: 0.134,
      cutDepthMm: 4.5,
      undercut: [],
      coreStays: [],
      taperBand: [{ outer: box(1210, -590, 520, 420), holes: [] }],
    },
  ],
};

const pieces = [...gridded(openingA, 3, 3, 'A'), ...gridded(openingB, 2, 2, 'B')];

function gridded(outline: Outline, columns: number, rows: number, name: string): PiecePlanInput['pieces'] {
  const [[x, y], , [right, bottom]] = outline;
  const [width, height] = [(right - x) / columns, (bottom - y) / rows];
  return Array.from({ length: columns * rows }, (_, index) => ({
    label: `${name}${index + 1}`,
    beddingOrder: index + 1,
    grainDeg: 0,
    areaM2: m2FromMm2(mm2(width * height)),
    outline: box(
      x + (index % columns) * width + 1,
      y + Math.floor(index / columns) * height + 1,
      width - 2,
      height - 2,
    ),
    bleedHoles: [],
  }));
}

export const samplePiecePlan: PiecePlanInput = {
  panel: foredeck,
  pieces,
  openings: sampleOpeningPlan.openings,
  solidFills: [],
  fittings: [{ id: 'S4', at: [1400, 900], solid: { lengthMm: 125, widthMm: 125 } }],
  seenFrom: 'above',
};

export const samplePlyPlan: PlyPlanInput = {
  panel: foredeck,
  openings: sampleOpeningPlan.openings,
  taperRatio: 12,
  seenFrom: 'above',
  plies: [1, 2, 3].map((order) => ({
    order,
    materialName: order === 1 ? 'Chopped strand mat 300 g/m²' : 'Biaxial with mat 600 g/m²',
    outline: [
      box(100 - order * 16, 130 - order * 16, 560 + order * 32, 540 + order * 32),
      box(1260 - order * 16, -540 - order * 16, 420 + order * 32, 320 + order * 32),
    ].map((outer) => ({ outer, holes: [] })),
  })),
};

export const sampleSheetLayout: SheetLayoutInput = {
  hasGrain: true,
  sheets: [1, 2].map((number) => ({
    label: String(number),
    lengthMm: 1220,
    widthMm: 610,
    utilisation: number === 1 ? 0.71 : 0.38,
    placed: pieces.slice((number - 1) * 9, number * 9).map(({ label }, index) => ({
      piece: label,
      outline: box(10 + (index % 6) * 196, 10 + Math.floor(index / 6) * 190, 186, 178),
      cutOrder: index + 1,
    })),
    offcutsKept: [box(600, 400, 600, 200)],
  })),
};

export const sampleSection: SectionInput = {
  method: 'relay',
  cutFrom: 'above',
  wholeSkinMm: 2,
  cutSkinMm: 4,
  cavityMm: 13,
  taperRatio: 12,
  taperWidthMm: 48,
  stack: [
    { layer: 'bond line', thicknessMm: 0.6, isBond: true },
    { layer: 'end-grain balsa 150 kg/m³', thicknessMm: 12, isBond: false },
  ],
  plies: [1, 2, 3, 4].map((order) => ({
    order,
    materialName: order === 1 ? 'Chopped strand mat 300 g/m²' : 'Biaxial with mat 600 g/m²',
    thicknessMm: order === 1 ? 0.7 : 1.07,
  })),
};

export const sampleReBedSection: SectionInput = {
  ...sampleSection,
  method: 're-bed',
  stack: [...sampleSection.stack, { layer: 'bond line', thicknessMm: 0.4, isBond: true }],
  plies: [1, 2, 3].map((order) => ({
    order,
    materialName: 'Biaxial tape 450 g/m²',
    thicknessMm: 0.9,
    widthMm: 25 + order * 24,
  })),
};

const taskTitles = [
  'Scope, cause, photographs, inventory',
  'Hardware and linings out',
  'Protection and dust containment',
  'Props under the inner skin',
  'Sounding and plugs',
  'Marking out',
  'Cutting the skin',
  'Lifting the skin',
  'Core out',
  'Hold point: re-measure and agree',
  'Reaming under the lip',
  'Drying',
  'Grinding the inner skin',
  'Dry fit with thickness stack',
  'Taper',
  'Bedding core',
  'Sound check',
  'Laying up the outer skin',
  'Fairing, cycle 1',
  'Fairing, cycle 2',
  'Fairing, cycle 3',
  'Hose test before paint',
  'Primer',
  'Topcoat',
  'Non-skid',
  'Bedding fittings',
  'Interior back',
  'Leak test and final map',
];

export const sampleGantt: GanttInput = {
  tasks: taskTitles.map((title, index) => ({
    title,
    startDay: index * 0.8,
    endDay: index * 0.8 + 0.6,
    waitEndDay: index * 0.8 + (index % 4 === 3 ? 1.9 : 0.6),
    isCritical: index % 3 !== 1,
    isHoldPoint: index === 9,
  })),
};

export const sampleBatch: BatchCardInput = {
  number: 3,
  title: 'Bed the core',
  mixedMl: 742,
  weigh: [
    { what: 'resin', name: 'Epoxy laminating resin', addG: 620, scaleShowsG: 620, volumeMl: 539 },
    { what: 'hardener', name: 'Slow hardener', addG: 186, scaleShowsG: 806, volumeMl: 178 },
    { what: 'filler', name: 'Colloidal silica', addG: 84, scaleShowsG: 890, volumeMl: 1680 },
  ],
  covers: ['A1', 'A2', 'A3', 'A4'],
  useWithinMin: 22,
  limitedBy: 'pot life at 24 °C',
  pumps: '31 strokes of each',
};
