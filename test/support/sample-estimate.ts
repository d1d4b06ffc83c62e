import { shippedCatalogue } from '#lib/catalogue';
import type { DefectRecord, Estimate } from '#lib/estimate';
import { concluded } from '../../libs/estimate/src/conclusion/conclusion.js';
import type { EstimateBody } from '../../libs/estimate/src/document/estimate-document.js';
import { defaultReader } from '../../libs/drawings/src/reader.js';
import {
  foredeck,
  sampleBatch,
  sampleDefectMap,
  sampleGantt,
  sampleOpeningPlan,
  samplePiecePlan,
  samplePlyPlan,
  sampleSheetLayout,
} from './sample-deck.js';
import { greyJpeg } from './pictures.js';
import { annexNames, type ReportRequest } from '../../libs/drawings/src/report/request.js';

/** Eight by eight grey points. */
const greyPicture = {
  type: 'image/jpeg',
  base64: greyJpeg.toString('base64'),
  widthPx: 8,
  heightPx: 8,
} as const;

const eur = (amount: string) => ({ amount, currency: 'EUR' });
const range = (p10: number, p50: number, p90: number) => ({ p10, p50, p90 });
const total = { p10: eur('7214.10'), p50: eur('9120.55'), p80: eur('10480.20'), p90: eur('11904.75') };

/** How large the invented sample is made: lines, fittings and zones may be multiplied, names lengthened. */
export interface SampleSize {
  readonly lines: number;
  readonly fittings: number;
  readonly zones: number;
  readonly nameLength: number;
}

export const smallSample: SampleSize = { lines: 24, fittings: 5, zones: 3, nameLength: 0 };

const lengthened = (name: string, { nameLength }: SampleSize): string =>
  nameLength === 0 ? name : `${name} ${'of a rather long description '.repeat(20)}`.slice(0, nameLength);

/** An invented record; the drawings and the report read only these of its fields. */
export const sampleRecord = (size: SampleSize): DefectRecord => ({
  title: 'Foredeck of a sailing yacht',
  reference: 'Job 2026-014',
  craft: { craftType: 'sail', lengthHullM: 9.8, yearBuilt: 1984, designCategory: 'B' },
  panel: {
    name: 'Foredeck',
    outline: foredeck.outer,
    holes: foredeck.holes,
    supports: foredeck.supports,
  },
  outerSkin: { thicknessMm: 4 },
  innerSkin: { thicknessMm: 2 },
  core: { thicknessMm: 13, coreType: 'end-grain-balsa' },
  survey: { readings: sampleDefectMap.readings, meter: { dryReference: 10, wetReference: 35 } },
  cause: {
    cause: 'leaking-fitting',
    causeClass: 'pre-existing',
    note: lengthened('old bedding at the vent', size),
  },
  fittings: fittingsOf(size).map(({ id, at }) => ({ id, kind: 'other', at })),
});

const fittingsOf = ({ fittings }: SampleSize) =>
  Array.from({ length: fittings }, (_, index) => {
    const known = sampleDefectMap.fittings[index % sampleDefectMap.fittings.length];
    const lap = Math.floor(index / sampleDefectMap.fittings.length);
    return {
      id: lap === 0 ? known.id : `${known.id} ${lap + 1}`,
      at: [known.at[0] - lap * 90, known.at[1] * (1 - lap * 0.1)] as const,
    };
  });

const titles = [
  'Epoxy laminating resin',
  'Slow hardener',
  'End-grain balsa, scored, 12 mm',
  'Biaxial with mat 600 g/m²',
  'Colloidal silica',
  'Abrasive discs P80',
  'Cutting the skin',
  'Bedding the core',
  'Fairing',
  'Tent hire',
];

const methodsOf = (): Estimate['methods'] => ({
  recommended: {
    rung: 'above-new-skin',
    title: 'From above, a new skin',
    because: 'the deck is painted anyway',
  },
  planned: {
    rung: 'above-new-skin',
    title: 'From above, a new skin',
    because: 'the deck is painted anyway',
    isNamedInRecord: false,
  },
  rungs: [
    {
      rung: 'rebed',
      title: 'Re-bed the fitting',
      verdict: 'unfit',
      deciding: {
        code: 'wet-plug',
        text: 'the core here is wet and rotten, 0.27 m2 of it: new bedding would shut the water in',
        value: 0.27,
        limit: 0,
        unit: 'm2',
        source: 'METHODS-IN-PRINT',
        wouldFit: 'a plug beside the hole that is dry and pale',
      },
      conditions: [],
      leavesUndone: [],
      stages: ['fitting off', 'bed and bolt'],
      isRough: true,
    },
    {
      rung: 'above-new-skin',
      title: 'From above, a new skin',
      verdict: 'fit',
      deciding: { code: 'new-laminate', text: 'the deck is painted anyway', source: 'METHODS-IN-PRINT' },
      conditions: [],
      leavesUndone: ['matching of the old nonskid beyond the finished area'],
      stages: ['cut', 'core out', 'fit and bed the core', 'laminate'],
      isRough: false,
      labourH: range(48.2, 63.5, 88.1),
      workingDays: range(14, 19, 27),
      calendarDays: range(22, 30, 44),
      priceRange: total,
    },
  ],
  places: [
    {
      place: 'Z1',
      badAreaM2: 0.27,
      rung: 'above-new-skin',
      title: 'From above, a new skin',
      because: 'painted',
    },
  ],
});

export const sampleEstimate = (size: SampleSize): Estimate =>
  concluded(sampleBody(size), sampleRecord(size), shippedCatalogue.sources);

const sampleBody = (size: SampleSize): EstimateBody => ({
  title: lengthened('Foredeck of a sailing yacht', size),
  reference: 'Job 2026-014',
  summary: {
    openedAreaM2: 0.4368,
    cutLengthM: 3.68,
    coreSheets: 2,
    mixedResinL: 5.42,
    labourLikelyH: 58.4,
    labourMeanH: 61.2,
    labourH: range(48.2, 63.5, 88.1),
    workingDays: range(14, 19, 27),
    calendarDays: range(22, 30, 44),
    total: eur('9333.21'),
    totalRange: total,
    totalWithContingency: eur('10399.21'),
    insurer: { attributable: eur('787.51'), prior: eur('8545.70'), improvement: eur('0.00') },
  },
  methods: methodsOf(),
  leftOut: [],
  hardware: [],
  leak: {
    cause: 'fittings',
    title: 'Fittings through the deck',
    remedy: 'every fitting within 300 mm off, its holes potted, bedded anew',
    verify: 'the meter within 2 points of the dry reference',
    isRemedied: true,
    text: 'The way in of the water is stopped in this plan.',
  },
  scope: scopeOf(size),
  core: coreOf(),
  laminate: laminateOf(),
  panel: panelState(),
  checks: checksOf(),
  process: processOf(),
  sections: [
    { code: 'opening', title: 'Opening and core out', amount: eur('2410.00') },
    { code: 'core', title: 'New core', amount: eur('1873.40') },
    { code: 'laminate', title: 'Skin', amount: eur('1604.11') },
  ],
  lines: linesOf(size),
  totals: totalsOf(),
  cautions: cautionsOf(),
  assumptions: [
    {
      of: 'record',
      at: '/conditions/temperatureC',
      meaning: 'temperature of the deck',
      value: '18 °C',
      because: 'Not stated.',
      source: 'COMMON-PRACTICE',
    },
    {
      of: 'record',
      at: '/method/taperRatio',
      meaning: 'taper ratio',
      value: '12',
      because: 'Usual for glass decks.',
      source: 'COMMON-PRACTICE',
    },
  ],
  limits: ['The lining was not removed.', 'No core samples were taken forward of the windlass.'],
  provenance: {
    engineVersion: '0.1.0',
    edition: '2026-1',
    catalogueHash: 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855',
    priceList: 'list-eu-2026',
    labourRates: 'rates-eu-2026',
  },
});

const cautionsOf = (): Estimate['cautions'] => [
  {
    code: 'dust',
    severity: 'warning',
    kind: 'health',
    protection: ['P3 mask', 'gloves'],
    hazards: [],
    text: 'Cutting and grinding glass laminate makes fine dust: fit extraction and wear a P3 mask, gloves and goggles.',
    because: 'Skins are cut and tapered.',
    source: 'COMMON-PRACTICE',
  },
  {
    code: 'wiring',
    severity: 'danger',
    kind: 'site',
    protection: [],
    hazards: [],
    text: 'Isolate the wiring below the panel before cutting.',
    because: 'Wiring lies under the panel.',
    source: 'COMMON-PRACTICE',
  },
  {
    code: 'sensitiser',
    severity: 'caution',
    kind: 'health',
    protection: ['nitrile gloves'],
    hazards: [{ code: 'H317', text: 'May cause an allergic skin reaction' }],
    text: 'Epoxy resins and hardeners can sensitise the skin: no contact, no solvent on skin.',
    because: 'Epoxy is used.',
    source: 'COMMON-PRACTICE',
  },
];

const coreOf = (): Estimate['core'] => ({
  material: 'core-balsa-150',
  materialName: 'End-grain balsa 150 kg/m³, scored',
  cavityMm: 13,
  stackMm: 12.6,
  flushMm: -0.4,
  solidAreaM2: 0,
  solidVolumeL: 0,
  netAreaM2: 0.4213,
  wasteAreaM2: 0.1172,
  purchaseAreaM2: 1.4884,
  wasteByCause: [
    { cause: 'kerf', areaM2: 0.0172 },
    { cause: 'scraps', areaM2: 0.1 },
  ],
  stack: [
    { layer: 'bond line', thicknessMm: 0.6 },
    { layer: 'End-grain balsa 150 kg/m³', thicknessMm: 12 },
  ],
  pieces: samplePiecePlan.pieces.map((piece) => ({
    ...piece,
    opening: piece.label.slice(0, 1),
    bay: 1,
    holes: [],
    isUnderLip: false,
    thicknessMm: 12,
    form: 'plain',
    layer: 1,
  })),
  division: '13 pieces of at most 0.45 m2: as few as one bed holds inside half its pot life',
  solidFills: [
    {
      opening: 'A',
      kind: 'paste',
      outline: [
        [1120, -10],
        [1720, -10],
        [1720, 20],
        [1120, 20],
      ],
      holes: [],
      areaM2: 0.018,
      volumeL: 0.23,
      widthMm: 30,
      lifts: 1,
      isUnderLip: true,
    },
  ],
  sheets: sampleSheetLayout.sheets.map((sheet) => ({
    ...sheet,
    thicknessMm: 12,
    form: 'plain',
    isBought: true,
    placed: sheet.placed.map((placed) => ({ ...placed, holes: [], turnDeg: 0 })),
  })),
  kerfMm: 2,
  utilisation: 0.545,
  massChangeKg: -1.2,
  waterLeavingKg: 3.4,
  notes: ['The sheet bends to the camber without scoring on the outer side.'],
});

const scopeOf = (size: SampleSize): Estimate['scope'] => ({
  panel: { name: 'Foredeck', outline: foredeck.outer, holes: foredeck.holes, areaM2: 2.86 },
  evidence: 'sounded-and-metered',
  damagedAreaM2: range(0.31, 0.42, 0.77),
  zones: Array.from({ length: size.zones }, (_, index) => ({
    ...sampleDefectMap.zones[index % 3],
    id: `Z${index + 1}`,
    outline: sampleDefectMap.zones[index % 3].outline.map(
      ([x, y]) => [x + Math.floor(index / 3) * 60, y + Math.floor(index / 3) * 150] as const,
    ),
  })),
  contours: [],
  openedAreaM2: 0.4368,
  retainedAreaM2: 0.018,
  undercutAreaM2: 0.018,
  coreOutAreaM2: 0.4368,
  coreStaysAreaM2: 0,
  cutLengthM: 3.68,
  taperBandM2: 0.21,
  openings: sampleOpeningPlan.openings.map((opening) => ({
    ...opening,
    cornerRadiusMm: 30,
    cutLengthM: opening.label === 'A' ? 2.2 : 1.48,
    undercutAreaM2: opening.label === 'A' ? 0.018 : 0,
    coreStaysAreaM2: 0,
    reason: lengthened('follows the damaged core with a margin of 75 mm', size),
  })),
  fittings: fittingsOf(size).map(({ id, at }, index) => ({
    id: lengthened(id, size),
    kind: index % 5 === 4 ? 'windlass' : 'cleat',
    at,
    holes: 4,
    where: index % 2 === 0 ? 'inside' : 'near',
    work: ['remove', 'pot', 'refit'],
    isHighlyLoaded: index % 5 === 4,
  })),
  findings: [
    {
      code: 'taper-room',
      severity: 'warn',
      text: 'The taper of opening B reaches the edge of the panel: 22 mm of 48 mm are there.',
      facts: { roomMm: 22, neededMm: 48 },
    },
  ],
  method: [
    { choice: 'Skin', value: 'lay up a new one', reason: lengthened('The old skin is crazed.', size) },
    { choice: 'Access', value: 'from above', reason: 'The lining stays in.' },
    { choice: 'Press', value: 'vacuum', reason: 'Even pressure over the whole opening.' },
  ],
  included: [
    'Opening, core, skin, fairing and finish of the patch',
    'Fittings off and on within 300 mm of a cut',
  ],
  excluded: ['Lifting the craft', 'Finish of the whole deck'],
});

const laminateOf = (): Estimate['laminate'] => ({
  method: 'relay',
  taperRatio: 12,
  taperWidthMm: 48,
  totalThicknessMm: 3.91,
  oldThicknessMm: 4,
  glassKg: 1.32,
  resinKg: 1.48,
  plies: samplePlyPlan.plies.map((ply) => ({
    ...ply,
    material: `glass-${ply.order}`,
    thicknessMm: ply.order === 1 ? 0.7 : 1.07,
    areaM2: 0.48 + ply.order * 0.07,
    rollLengthM: 1.1 + ply.order * 0.1,
    rollWidthMm: 1270,
    glassKg: 0.3 + ply.order * 0.1,
    resinKg: 0.35 + ply.order * 0.1,
    orientationDeg: ply.order === 2 ? 45 : 0,
  })),
  alternatives: [
    {
      rank: 1,
      plies: ['CSM 300', 'BXM 600', 'BXM 600'],
      thicknessMm: 3.91,
      costPerM2: '41.20',
      reason: 'Least cost that restores stiffness and strength.',
    },
    {
      rank: 2,
      plies: ['CSM 300', 'BXM 600', 'WR 500', 'CSM 300'],
      thicknessMm: 4.4,
      costPerM2: '44.80',
      reason: 'Stands 0.4 mm proud.',
    },
  ],
  properties: [
    { code: 'ex', name: 'Modulus along the deck', value: 11820.4, unit: 'MPa' },
    { code: 'ey', name: 'Modulus across the deck', value: 11790.1, unit: 'MPa' },
  ],
  notes: [],
});

const panelState = (): Estimate['panel'] => ({
  verdict: 'restored',
  shortfalls: [],
  withinHands: [],
  sizeMm: [1450, 1340],
  loads: [
    { code: 'person', name: 'A person on one foot', value: 1, unit: 'kN' },
    { code: 'pressure', name: 'Yardstick pressure', value: 7.2, unit: 'kPa' },
  ],
  states: (['as-built', 'as-found', 'opened', 'repaired'] as const).map((state, index) => ({
    state,
    bendingXNmm: [3120000, 610000, 8400, 3190000][index],
    bendingYNmm: [3010000, 590000, 8100, 3080000][index],
    shearNPerMm: [1480, 210, 0, 1510][index],
    deflections: [
      { load: 'a person', deflectionMm: [3.1, 9.8, 41.2, 2.9][index] },
      { load: 'pressure', deflectionMm: [4.4, 13.9, 77.1, 4.2][index] },
    ],
    ...(index === 2 ? {} : { governs: 'core shear at the edge', utilisation: [0.38, 1.21, 0, 0.36][index] }),
  })),
  ratios: [
    { code: 'stiffness', name: 'Stiffness', value: 1.022, unit: '1' },
    { code: 'utilisation', name: 'Utilisation', value: 1.056, unit: '1' },
  ],
  limits: ['The panel is taken as a rectangle of the size stated.'],
});

const checksOf = (): Estimate['checks'] => [
  {
    code: 'deflection',
    title: 'Deflection under a person',
    state: 'as-built',
    demand: 3.1,
    capacity: 8.2,
    unit: 'mm',
    utilisation: 0.378,
    verdict: 'passes',
    governs: 'patch load at midspan',
    source: 'ZENKERT-1995',
  },
  {
    code: 'deflection',
    title: 'Deflection under a person',
    state: 'repaired',
    demand: 2.9,
    capacity: 8.2,
    unit: 'mm',
    utilisation: 0.354,
    verdict: 'passes',
    governs: 'patch load at midspan',
    source: 'ZENKERT-1995',
  },
  {
    code: 'inner-skin',
    title: 'Inner skin alone under the weights',
    state: 'opened',
    demand: 14.2,
    capacity: 11.9,
    unit: 'MPa',
    utilisation: 1.193,
    verdict: 'fails',
    governs: 'bending between bulkheads',
    remedy: 'prop at 500 mm or less',
    source: 'TIMOSHENKO-PLATES-1959',
  },
  {
    code: 'core-crush',
    title: 'Core under the washers',
    unit: 'MPa',
    verdict: 'not-established',
    governs: '',
    reason: 'Washer sizes are not known.',
    source: 'COMMON-PRACTICE',
  },
];

const processOf = (): Estimate['process'] => ({
  resin: {
    code: 'epoxy-laminating',
    name: 'Epoxy laminating resin',
    hardener: 'slow',
    hardenerName: 'Slow hardener',
    why: 'At 18 °C it leaves 24 minutes for a batch of 600 g.',
  },
  demands: [
    {
      step: 'bed',
      title: 'Bed the core',
      netL: 0.62,
      wasteL: 0.11,
      totalL: 0.73,
      totalKg: 0.81,
      fillerKg: 0.09,
      filler: 'Colloidal silica',
    },
    { step: 'wet-out', title: 'Wet out the plies', netL: 1.31, wasteL: 0.24, totalL: 1.55, totalKg: 1.71 },
  ],
  batches: [1, 2, 3].map((number) => ({
    ...sampleBatch,
    number,
    step: 'bed',
    filler: 'Colloidal silica',
    resinG: 620,
    hardenerG: 186,
    fillerG: 84,
  })),
  findings: [],
  bondPressure: pressOf(),
  cure: [
    {
      step: 'Bed the core',
      temperatureC: 18,
      basis: 'stated',
      gelH: 1.8,
      releaseH: 9.5,
      sandableH: 16,
      recoatShutsH: 72,
      fullCureH: 190,
    },
  ],
  gates: [
    {
      step: 'Bed the core',
      requires: ['core moisture 12 % or less', 'surface at least 3 °C above the dew point', 'dry fit passed'],
    },
    { step: 'Topcoat', requires: ['5 days after the last epoxy', 'humidity below 85 %'] },
  ],
  calendar: calendarOf(),
});

const pressOf = (): Estimate['process']['bondPressure'] => ({
  method: 'vacuum',
  requiredKPa: 5,
  availableKPa: 61.4,
  restsOn: 'itself, over an airtight inner skin',
  quantities: [{ code: 'film', name: 'Bag film', value: 1.4, unit: 'm2' }],
  props: {
    needed: true,
    spacingMm: 500,
    why: 'The inner skin alone would bend by 9 mm under a kneeling person.',
  },
  lines: [
    { what: 'board', from: [900, -300], to: [900, 300], points: [[900, -150] as const, [900, 150] as const] },
  ],
  pieces: samplePiecePlan.pieces.map(({ label }) => ({ label, jacks: [] })),
  recommendation: 'Bag each opening by itself.',
  refusals: ['Weights: the inner skin alone fails.'],
});

const calendarOf = (): Estimate['process']['calendar'] => ({
  startDate: '2026-03-02',
  planned: { workingDays: 19, calendarDays: 30 },
  workingDays: range(14, 19, 27),
  calendarDays: range(22, 30, 44),
  criticalChain: [],
  milestones: [],
  notes: [],
  finish: { early: '2026-03-20', likely: '2026-03-27', late: '2026-04-08' },
  tasks: sampleGantt.tasks.map((task, index) => ({
    code: `t${index}`,
    title: task.title,
    gate: 'none',
    startsBecause: 'the work before it is done',
    startDay: task.startDay,
    endDay: task.endDay,
    labourH: 3.5,
    waitH: (task.waitEndDay - task.endDay) * 24,
    waitKind: 'cure',
    isCritical: task.isCritical,
    isHoldPoint: task.isHoldPoint,
    after: [],
  })),
});

const linesOf = (size: SampleSize): Estimate['lines'] =>
  Array.from({ length: size.lines }, (_, index) => ({
    code: `L${String(index + 1).padStart(3, '0')}`,
    section: 'core',
    title: lengthened(titles[index % titles.length], size),
    kind: index % 10 < 6 ? 'material' : 'labour',
    partOrLabour: index % 10 < 6 ? 'part' : 'labour',
    causeClass: index % 7 === 0 ? 'sudden' : 'pre-existing',
    unit: index % 10 < 6 ? 'kg' : 'h',
    netQuantity: 1.25 + index,
    wasteQuantity: 0.225,
    purchaseQuantity: 1.475 + index,
    unitPrice: eur('31.80'),
    isAveragePrice: false,
    packs: [],
    pricedQuantity: `${1 + index}.475`,
    amount: eur(`${46 + index * 31}.${String((index * 17) % 100).padStart(2, '0')}`),
    amountRange: { low: eur('40.00'), high: eur('80.00') },
    depreciable: index % 10 < 6,
    taxGroup: 'standard',
    ...(index % 10 === 0
      ? {
          packs: [
            {
              sku: 'RS-5',
              name: 'Resin, 5 kg',
              supplier: 'Invented chandlery',
              count: 1,
              price: eur('46.00'),
            },
          ],
        }
      : {}),
  }));

const totalsOf = (): Estimate['totals'] => ({
  currency: 'EUR',
  net: eur('5887.51'),
  overhead: eur('588.75'),
  profit: eur('471.00'),
  base: eur('6947.26'),
  growth: {
    amount: eur('795.80'),
    quantity: 0.14,
    unit: 'm2',
    unitPrice: eur('5684.29'),
    basis: 'Opening that will probably be found besides.',
  },
  newAreas: {
    amount: eur('100.00'),
    quantity: 0.3,
    unit: 'each',
    unitPrice: eur('333.33'),
    basis: 'Separate areas that nobody recorded.',
  },
  contingency: eur('895.80'),
  contingencyBasis: 'P80 of the cost less the price',
  contingencyByKind: [
    { kind: 'extent', name: 'More or less found than recorded', share: 0.7, amount: eur('627.06') },
    { kind: 'productivity', name: 'Pace of the work', share: 0.3, amount: eur('268.74') },
  ],
  betterEvidence: [{ evidence: 'mapped-with-plugs', contingency: eur('620.00'), saves: eur('275.80') }],
  shareWithin: 0.52,
  totalWithContingency: eur('10399.21'),
  taxes: [{ code: 'standard', name: 'VAT', percent: '19', base: eur('7843.06'), amount: eur('1490.18') }],
  tax: eur('1490.18'),
  total: eur('9333.24'),
  range: total,
  byCause: [
    { causeClass: 'pre-existing', amount: eur('5100.00') },
    { causeClass: 'sudden', amount: eur('787.51') },
  ],
  parts: eur('2211.40'),
  labour: eur('3676.11'),
  goods: { billing: 'as-bought', billed: eur('2211.40'), bought: eur('2211.40'), basis: 'Whole packs.' },
  drivers: [
    { name: 'hidden extent', shareOfVariance: 0.64 },
    { name: 'labour rates per operation', shareOfVariance: 0.27 },
  ],
  insurer: {
    attributable: eur('787.51'),
    prior: eur('8545.70'),
    improvement: eur('0.00'),
    wear: eur('0.00'),
    deductible: eur('0.00'),
    payable: eur('787.51'),
    basis: 'Lives are judged; the policy decides.',
  },
  offer: {
    stageZero: {
      title: 'Stage 0: open and map, up to the hold',
      amount: eur('812.40'),
      labourH: 11.5,
      contingencyFreed: eur('240.00'),
      lines: ['labour-cut-skin'],
    },
    unitRates: [
      { code: 'cut-m', what: 'Cut, reamed and tapered', unit: 'm', quantity: 3.68, rate: eur('70.20') },
    ],
    authorisation: { percent: 15, labourH: 73.4, basis: 'No hour above these is worked unasked.' },
    holdPoint: 'Work stops when the core is out.',
  },
  p90RelativeError: 0.0031,
  samples: 4096,
});

export const sampleRequest = (size: SampleSize): ReportRequest => ({
  estimate: sampleEstimate(size),
  record: sampleRecord(size),
  reader: { ...defaultReader, glyphs: 'embedded-font' },
  paper: 'a4',
  medium: 'page',
  purpose: 'condition',
  annexes: annexNames,
  issue: {
    id: 'est_01J9ZK3T7Q',
    madeAt: '2026-03-02T09:30:00Z',
    madeBy: 'A. Surveyor',
    photographs: [
      {
        number: 1,
        caption: 'Stain at the vent, seen from the mast',
        at: [420, 300],
        directionDeg: 0,
        picture: greyPicture,
      },
      { number: 2, caption: 'The lining below the stain', picture: greyPicture },
    ],
    letterhead: { name: 'Harbour Survey Office', lines: ['Quay 1', '00000 Port'] },
    revision: 2,
    history: [
      { number: 1, madeAt: '2026-02-20T10:00:00Z', total: eur('7920.00') },
      {
        number: 2,
        madeAt: '2026-03-02T09:30:00Z',
        reason: 'deck opened, extent measured again',
        total: eur('9333.21'),
      },
    ],
    changes: [
      { kind: 'figure', what: 'Opened area', unit: 'm2', before: 0.3, after: 0.44 },
      { kind: 'sum', what: 'Total with tax', before: eur('7920.00'), after: eur('9333.21') },
    ],
  },
});
