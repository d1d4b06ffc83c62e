import {
  caulkPerM2,
  clampLoad,
  fittingCard,
  fittingHours,
  flangeForTaper,
  gapVolume,
  holesPerM2,
  limits,
  pastePerMetre,
  plateSideByArea,
  plateSidePerBolt,
  plateThickness,
  plugVolume,
  pocketDiameter,
  poursFor,
  railMoment,
  screwsPerM2,
  sealantVolume,
  slabDrying,
  solidOverCoreKgPerM2,
  torqueFor,
  usualCards,
  washerPressure,
} from '#lib/methods';
import { planUpwardPress, skinLift, upwardForce } from '#lib/press';
import { operations } from '#lib/work';
import type { PublishedCase } from '../published-case.js';

type Given = Readonly<Record<string, number>>;
const valueOf = (formula: { readonly evaluate: (given: never) => number }, given: Given): number =>
  (formula.evaluate as (values: Given) => number)(given);

type Short = Omit<PublishedCase, 'room'>;
const methods = (one: Short): PublishedCase => ({ room: 'methods', ...one });
/** Common practice and values from memory say so in their locus; by-hand ones are our own arithmetic beside the source. */
const byHand = (one: Omit<Short, 'source' | 'kind' | 'locus'> & { readonly locus?: string }): PublishedCase =>
  methods({ source: 'ARITHMETIC', kind: 'by-hand', locus: 'by hand', ...one });

const IN = 25.4;
const halfInch = 12.7;
const stack = { outerSkinMm: 3, coreMm: 12.7, innerSkinMm: 2 };
const card = (kind: string, baseMm: number) =>
  fittingCard({ id: 'A', kind, baseMm, isHighlyLoaded: false }, stack);

/** Plugs round a quarter-inch bolt in half an inch of core. */
export const plugs: readonly PublishedCase[] = (
  [
    [6.35, '19.05', '3.6', 0.1],
    [12.7, '31.75', '10.1', 0.2],
    [25.4, '57.15', '32.6', 0.5],
  ] as const
).flatMap(([reachMm, diameter, volume, absolute]) => [
  byHand({
    id: `methods-pocket-${reachMm}`,
    title: `Pocket of ${reachMm} mm of reach round a 1/4 in hole`,
    unit: 'mm',
    printed: diameter,
    ours: () => valueOf(pocketDiameter, { holeMm: 6.35, reachMm }),
  }),
  byHand({
    id: `methods-plug-${reachMm}`,
    title: `Filler in that pocket in half-inch core`,
    unit: 'ml',
    printed: volume,
    ours: () => valueOf(plugVolume, { diameterMm: Number(diameter), coreMm: halfInch }),
    tolerance: { absolute, because: 'rounded to a tenth of a millilitre' },
  }),
]);

export const digging: readonly PublishedCase[] = [
  byHand({
    id: 'methods-plug-large',
    title: 'Pocket of 76 mm round a 1/4 in hole',
    unit: 'ml',
    printed: '251',
    ours: () => valueOf(plugVolume, { diameterMm: 6.35 + 2 * 76.2, coreMm: halfInch }),
    tolerance: { absolute: 1, because: '3 in of reach are 76.2 mm' },
  }),
  methods({
    id: 'methods-plug-large-pours',
    title: 'That pocket is filled in two pours at least',
    source: 'METHODS-REAM',
    locus: 'large old openings are filled in several stages because of heat',
    unit: 'pours',
    printed: '3',
    ours: () => poursFor(251, halfInch),
    tolerance: {
      absolute: 1,
      because: 'two or more are asked for; one hundred millilitres a pour is from memory',
    },
  }),
  methods({
    id: 'methods-ream-reach',
    title: 'Reach of a hex key through a fastener hole',
    source: 'METHODS-REAM',
    locus: 'owner log, deck fill ring',
    unit: 'mm',
    printed: '25',
    ours: () => limits.reamReachMm,
  }),
  methods({
    id: 'methods-ream-farthest',
    title: 'Reach of a set of longer keys',
    source: 'METHODS-REAM',
    locus: 'owner page, winch pockets',
    unit: 'mm',
    printed: '32',
    ours: () => limits.reamFarthestMm,
  }),
  methods({
    id: 'methods-stop-digging',
    title: 'Where digging stops: 6 x 12 in',
    source: 'METHODS-REAM',
    locus: 'class forum',
    unit: 'm2',
    printed: '0.046',
    ours: () => limits.stopDiggingM2,
    tolerance: { absolute: (6 * IN * 12 * IN) / 1e6 - 0.046, because: '72 square inches are 0.04645 m2' },
  }),
];

export const injection: readonly PublishedCase[] = [
  ...(
    [
      [6, '43'],
      [4, '97'],
      [3, '172'],
    ] as const
  ).map(([spacingIn, printed]) =>
    byHand({
      id: `methods-grid-${spacingIn}`,
      title: `Holes in a square metre at ${spacingIn} in`,
      unit: '1/m2',
      printed,
      ours: () => valueOf(holesPerM2, { spacingMm: spacingIn * IN }),
    }),
  ),
  methods({
    id: 'methods-82-holes',
    title: 'Area that 82 holes at 4 in stand for',
    source: 'METHODS-INJECT-LOGS',
    locus: 'owners’ forum, 82 holes',
    unit: 'm2',
    printed: '0.85',
    ours: () => 82 / valueOf(holesPerM2, { spacingMm: 4 * IN }),
    tolerance: { absolute: 0.05, because: 'the edge of the area is not told' },
  }),
  methods({
    id: 'methods-14-per-foot',
    title: 'Fourteen holes to the square foot, in a square metre',
    source: 'METHODS-INJECT-LOGS',
    locus: 'owners’ forum, 14 per foot',
    unit: '1/m2',
    printed: '151',
    ours: () => valueOf(holesPerM2, { spacingMm: (12 * IN) / Math.sqrt(14) }),
  }),
  byHand({
    id: 'methods-gap',
    title: 'A gap of one millimetre under one square metre',
    unit: 'l',
    printed: '1.0',
    ours: () => valueOf(gapVolume, { gapMm: 1, areaM2: 1 }),
  }),
  methods({
    id: 'methods-inject-limit',
    title: 'Largest area that injection is trusted with: two square feet',
    source: 'TRADE-INJECTION',
    locus: 'at most one to two square feet',
    unit: 'm2',
    printed: '0.19',
    ours: () => limits.injectM2,
    tolerance: { absolute: 0.015, because: 'two square feet are 0.186 m2, restated as 0.2' },
  }),
];

export const fromBelow: readonly PublishedCase[] = [
  byHand({
    id: 'methods-upward-m2',
    title: 'Upward force on a square metre at 1 kPa with balsa and bed',
    unit: 'kg/m2',
    printed: '105',
    ours: () => valueOf(upwardForce, { pressureKPa: 1, hangingKgPerM2: 3.4, areaM2: 1 }),
  }),
  byHand({
    id: 'methods-upward-piece',
    title: 'Upward force on a piece of 18 x 24 in',
    unit: 'kg',
    printed: '29',
    ours: () =>
      valueOf(upwardForce, { pressureKPa: 1, hangingKgPerM2: 3.4, areaM2: (18 * 24 * IN * IN) / 1e6 }),
  }),
  byHand({
    id: 'methods-skin-lift',
    title: 'Lift of 3 mm of skin at 1 kPa between bows a foot apart',
    unit: 'mm',
    printed: '0.9',
    ours: () => valueOf(skinLift, { pressureKPa: 1, spacingMm: 300, thicknessMm: 3, modulusMPa: 10000 }),
  }),
  byHand({
    id: 'methods-skin-lift-double',
    title: 'Twice the spacing lifts it how many times as far',
    unit: '1',
    printed: '16',
    ours: () =>
      valueOf(skinLift, { pressureKPa: 1, spacingMm: 600, thicknessMm: 3, modulusMPa: 10000 }) /
      valueOf(skinLift, { pressureKPa: 1, spacingMm: 300, thicknessMm: 3, modulusMPa: 10000 }),
  }),
  methods({
    id: 'methods-bows',
    title: 'Spacing of bows that a plan from below asks for under 3 mm of skin',
    source: 'METHODS-FROM-BELOW',
    locus: 'owners’ forum: bows every foot',
    unit: 'mm',
    printed: '305',
    ours: () => {
      const { bowSpacingMm } = planned(3);
      return bowSpacingMm;
    },
    tolerance: { absolute: 55, because: '250 to 400 mm are in use' },
  }),
  methods({
    id: 'methods-no-bags',
    title: 'Weights that press downwards in a plan from below',
    source: 'METHODS-FROM-BELOW',
    locus: 'core is held up with jacks and boards',
    unit: 'kg',
    printed: '0',
    ours: () => planned(3).weightsKg,
  }),
];

function planned(skinAboveMm: number): { readonly bowSpacingMm: number; readonly weightsKg: number } {
  const plan = planUpwardPress({
    areaM2: 0.45,
    lengthMm: 900,
    widthMm: 500,
    skinAboveMm,
    coreKgPerM2: 1.9,
    altitudeM: 0,
    prefer: 'jacks',
  });
  return {
    bowSpacingMm: Number(/every (\d+) mm/.exec(plan.innerSkin.props.why)?.[1]),
    weightsKg: plan.quantities.find(({ code }) => code === 'weights')?.value ?? 0,
  };
}

export const edges: readonly PublishedCase[] = [
  byHand({
    id: 'methods-flange',
    title: 'Flange for a taper of 12:1 on 3 mm',
    unit: 'mm',
    printed: '46',
    ours: () => valueOf(flangeForTaper, { ratio: 12, skinMm: 3 }),
  }),
  ...(
    [
      [25, '0.32'],
      [50, '0.64'],
      [75, '0.95'],
    ] as const
  ).map(([widthMm, printed]) =>
    byHand({
      id: `methods-paste-${widthMm}`,
      title: `Paste in a metre of strip ${widthMm} mm wide`,
      unit: 'l/m',
      printed,
      ours: () => valueOf(pastePerMetre, { widthMm, coreMm: halfInch }),
    }),
  ),
  methods({
    id: 'methods-smallest-lip-reach',
    title: 'Reach of hooked tools under a lip',
    source: 'COMMON-PRACTICE',
    locus: 'common practice, no published source',
    unit: 'mm',
    printed: '75',
    ours: () => limits.lipReachMm,
  }),
];

export const overlays: readonly PublishedCase[] = [
  byHand({
    id: 'methods-screws-dense',
    title: 'Screws on a grid of 50 x 200 mm',
    unit: '1/m2',
    printed: '100',
    ours: () => valueOf(screwsPerM2, { plankMm: 50, pitchMm: 200 }),
  }),
  byHand({
    id: 'methods-screws-sparse',
    title: 'Screws on a grid of 56 x 250 mm',
    unit: '1/m2',
    printed: '71',
    ours: () => valueOf(screwsPerM2, { plankMm: 56, pitchMm: 250 }),
  }),
  methods({
    id: 'methods-caulk',
    title: 'Caulk in seams of 5 mm between planks of 45 mm',
    source: 'METHODS-OVERLAY',
    locus: 'laying guide and maker: 20 m of 5 x 5 mm in a square metre',
    unit: 'l/m2',
    printed: '0.50',
    ours: () => valueOf(caulkPerM2, { plankMm: 45, seamMm: 5 }),
  }),
  methods({
    id: 'methods-caulk-cartridges',
    title: 'Cartridges of 305 ml for it, a quarter wasted',
    source: 'METHODS-OVERLAY',
    locus: 'maker: 25 % waste, packs of 305 ml',
    unit: '1/m2',
    printed: '2.0',
    ours: () => (1.25 * valueOf(caulkPerM2, { plankMm: 45, seamMm: 5 })) / 0.305,
  }),
];

export const hardware: readonly PublishedCase[] = [
  ...(
    [
      [6.35, 2 / 3, '4.2', 'laminate board'],
      [6.35, 1 / 3, '2.1', 'aluminium'],
      [9.525, 2 / 3, '6.4', 'laminate board'],
      [9.525, 1 / 3, '3.2', 'aluminium'],
    ] as const
  ).map(([boltMm, share, printed, what]) =>
    methods({
      id: `methods-plate-${boltMm}-${what.replace(' ', '-')}`,
      title: `Backing plate of ${what} under a bolt of ${boltMm} mm`,
      source: 'METHODS-PLATES',
      locus: 'tester’s blog: 2/3 and 1/3 of the bolt',
      unit: 'mm',
      printed,
      ours: () => valueOf(plateThickness, { boltMm, share }),
    }),
  ),
  ...(
    [
      [6.35, '32'],
      [9.525, '48'],
    ] as const
  ).map(([boltMm, printed]) =>
    methods({
      id: `methods-plate-side-${boltMm}`,
      title: `Plate under one bolt of ${boltMm} mm`,
      source: 'METHODS-PLATES',
      locus: 'tester’s blog: five bolt diameters',
      unit: 'mm',
      printed,
      ours: () => valueOf(plateSidePerBolt, { boltMm }),
    }),
  ),
  methods({
    id: 'methods-windlass-plate',
    title: 'Plate under a windlass of 260 mm base',
    source: 'COMMON-PRACTICE',
    locus: 'common practice: the base and 25 mm',
    unit: 'mm',
    printed: '285',
    ours: () => card('windlass', 260).plate?.lengthMm ?? 0,
  }),
  methods({
    id: 'methods-stanchion-plate',
    title: 'Plate under a stanchion base of 75 x 75 mm',
    source: 'METHODS-PLATES',
    locus: 'magazine: twice the area of the base',
    unit: 'mm',
    printed: '106',
    ours: () => valueOf(plateSideByArea, { baseMm: 75, times: 2 }),
  }),
  methods({
    id: 'methods-clamp',
    title: 'Clamp load of 70 in-lb on a 1/4 in bolt',
    source: 'METHODS-PLATES',
    locus: 'test magazine: lb = 20 x in-lb, 1,400 lb',
    unit: 'kN',
    printed: '6.2',
    ours: () => valueOf(clampLoad, { torqueNm: 70 * 0.112985, boltMm: 6.35, nutFactor: 0.2 }),
  }),
  ...(
    [
      [16, '37'],
      [31.75, '8.2'],
      [50, '3.2'],
    ] as const
  ).map(([washerMm, printed]) =>
    byHand({
      id: `methods-washer-${washerMm}`,
      title: `Pressure of 1,400 lb under ${washerMm} mm round a 1/4 in bolt`,
      unit: 'MPa',
      printed,
      ours: () => valueOf(washerPressure, { loadKN: 6.227, washerMm, boltMm: 6.35 }),
    }),
  ),
  methods({
    id: 'methods-torque',
    title: 'Torque of a greased 1/4 in bolt of 316',
    source: 'METHODS-TORQUE',
    locus: 'engineer’s post: 2 lbf.ft',
    unit: 'N.m',
    printed: '2.7',
    ours: () => torqueFor(6.35),
  }),
  methods({
    id: 'methods-torque-three-eighths',
    title: 'Torque of a greased 3/8 in bolt of 316',
    source: 'METHODS-TORQUE',
    locus: 'engineer’s post: 8 lbf.ft',
    unit: 'N.m',
    printed: '10.8',
    ours: () => torqueFor(9.525),
    disagreement: {
      oursShouldBe: 9.11,
      relative: 0.01,
      reason:
        'the post grows faster than the cube of the diameter; ours stays on the cube, which is the lower and safer in a cored deck',
    },
  }),
  methods({
    id: 'methods-rail-moment',
    title: 'Moment at the foot of a stanchion 610 mm high under 560 N',
    source: 'METHODS-RAIL-LOAD',
    locus: 'ISO 15085 as quoted by a maker',
    unit: 'N.m',
    printed: '342',
    ours: () => valueOf(railMoment, { forceN: 560, heightM: 0.61 }),
  }),
  byHand({
    id: 'methods-sealant',
    title: 'Sealant under a base of 75 x 75 mm with four bolts, squeezed out',
    unit: 'ml',
    printed: '34',
    ours: () => valueOf(sealantVolume, { baseMm2: 75 * 75, bolts: 4 }),
  }),
  methods({
    id: 'methods-deck-fill',
    title: 'Fasteners of a deck fill',
    source: 'METHODS-EDGES',
    locus: 'owner log, deck plate: 3 x No. 10',
    unit: '1',
    printed: '3',
    ours: () => usualCards['fill'].fasteners,
  }),
];

const bedding = operations.find(({ code }) => code === 'spot-bed')?.hours ?? { likely: Number.NaN };

/** Fourteen feet: two pulpits of four and six stanchions. */
export const rows: readonly PublishedCase[] = [
  methods({
    id: 'methods-row-of-feet',
    title: 'Fourteen rail feet bedded and bolted on prepared holes',
    source: 'METHODS-HOURS',
    locus: 'two pulpits and six stanchions: holes tapped 1 h, set nearly 3 h',
    unit: 'h',
    printed: '4',
    ours: () => fittingHours(Array.from({ length: 14 }, () => card('stanchion', 75))).onH * bedding.likely,
    tolerance: {
      absolute: 2,
      because: 'a day of one boatbuilder; 3 to 6 h are taken as its range, from memory',
    },
  }),
];

export const drying: readonly PublishedCase[] = [
  byHand({
    id: 'methods-dry-face',
    title: 'Open balsa face of 12.7 mm, along the grain',
    unit: 'h',
    printed: '7.6',
    ours: () => valueOf(slabDrying, { depthMm: 12.7, diffusivityM2PerS: 5e-9 }),
  }),
  byHand({
    id: 'methods-dry-edge',
    title: 'Closed edge of 50 mm, across the grain',
    unit: 'd',
    printed: '49',
    ours: () => valueOf(slabDrying, { depthMm: 50, diffusivityM2PerS: 5e-10 }) / 24,
  }),
  byHand({
    id: 'methods-solid-weight',
    title: 'Solid laminate over half-inch balsa',
    unit: 'kg/m2',
    printed: '20',
    ours: () => solidOverCoreKgPerM2(halfInch),
    tolerance: { absolute: 2, because: 'laminate of 1.7 g/ml and balsa of 150 kg/m3 are nominal' },
  }),
];
