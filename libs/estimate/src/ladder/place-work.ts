import { findMaterial } from '#lib/catalogue';
import { liftsFor, type PlaceChoice, type RungCode } from '#lib/methods';
import { assumed, derived, productOf, type Figure } from '#lib/provenance';
import type { ResinStepRequest } from '#lib/resin';
import { fraction, m, m2 } from '#lib/units';
import type { Job } from '../job/job.js';
import { noArea, none, type Besides, type JobQuantities } from '../stages/labour-drivers.js';
import type { PlyWork } from '../stages/laminate-stage.js';

/** What places take that are injected, dried in place or routed out as a strip: by themselves or beside an opening. */
export interface PlaceWork {
  readonly injectedM2: JobQuantities['injectedM2'];
  readonly injectionHoles: JobQuantities['injectionHoles'];
  readonly besides: Besides;
  readonly steps: readonly ResinStepRequest[];
  readonly plies: readonly PlyWork[];
}

export function placeWork(job: Job, places: readonly PlaceChoice[]): PlaceWork {
  const grids = gridsOver(places);
  const plies = tapesFor(job, places);
  return {
    injectedM2: grids.injected.areaM2,
    injectionHoles: grids.injected.holes,
    besides: besidesOfPlaces(job, places, grids),
    steps: placeSteps(job, places, { plies, grids }),
    plies,
  };
}

/** Ground that is drilled in a grid, its places, and the holes; counted once for the hours, the pots and the goods. */
interface Grid {
  readonly places: number;
  readonly areaM2: Figure<'m2'>;
  readonly holes: Figure<'1'>;
}
type Grids = Readonly<Record<'injected' | 'dried', Grid>>;

const gridsOver = (places: readonly PlaceChoice[]): Grids => ({
  injected: gridOver(taking(places, 'inject'), INJECTION_PER_M2, ['area injected under', 'injection holes']),
  dried: gridOver(taking(places, 'dry-in-place'), DRYING_PER_M2, ['area dried in place', 'drying holes']),
});

function gridOver(
  places: readonly PlaceChoice[],
  perM2: number,
  [areaMeaning, holesMeaning]: readonly [string, string],
): Grid {
  const areaM2 = area(areaMeaning, areaM2Of(places));
  return {
    places: places.length,
    areaM2,
    holes: gridHoles(areaM2, { perM2, least: LEAST_HOLES * places.length, meaning: holesMeaning }),
  };
}

/** Places that take one rung. */
export const taking = (places: readonly PlaceChoice[], code: RungCode): readonly PlaceChoice[] =>
  places.filter(({ rung }) => rung.method.code === code);

export const counted = (meaning: string, count: number): Figure<'1'> =>
  derived('1', fraction(count), meaning, {
    formula: 'scope.count',
    title: 'Counted from places and fittings',
    symbol: 'n',
    cite: { source: 'ARITHMETIC' },
    inputs: {},
  });

export const area = (meaning: string, valueM2: number): Figure<'m2'> =>
  valueM2 === 0
    ? noArea
    : derived('m2', m2(valueM2), meaning, {
        formula: 'geometry.area',
        title: 'Area of the places',
        symbol: 'A',
        cite: { source: 'ARITHMETIC' },
        inputs: {},
      });

export const length = (meaning: string, valueM: number): Figure<'m'> =>
  derived('m', m(valueM), meaning, {
    formula: 'geometry.length',
    title: 'Length along the edge',
    symbol: 'L',
    cite: { source: 'ARITHMETIC' },
    inputs: {},
  });

export const areaM2Of = (places: readonly PlaceChoice[]): number =>
  places.reduce((sum, { place }) => sum + place.badAreaM2, 0);
const stripsIn = (places: readonly PlaceChoice[]): readonly PlaceChoice[] =>
  taking(places, 'edge-rout-and-fill');
const stripM = (strips: readonly PlaceChoice[]): number =>
  strips.reduce((sum, { place }) => sum + place.longMm / MM_PER_M, 0);
/** At a hatch the frame is off and the core lies bare: no slot is cut, and none is closed. */
const isAtHatch = ({ place: { edge } }: PlaceChoice): boolean => edge !== 'none' && edge.kind === 'hatch';
const slotM = (places: readonly PlaceChoice[]): number =>
  stripM(stripsIn(places).filter((one) => !isAtHatch(one)));
const MM_PER_M = 1000;

/** One hole to each square of 6 in; to dry, one to each square of 4 in. Source: [TRADE-INJECTION], [FROM-MEMORY]. */
const INJECTION_PER_M2 = 43;
const DRYING_PER_M2 = 97;
const LEAST_HOLES = 4;

interface GridRule {
  readonly perM2: number;
  readonly least: number;
  readonly meaning: string;
}

function gridHoles(under: Figure<'m2'>, { perM2, least, meaning }: GridRule): Figure<'1'> {
  if (under.value === 0) return none;
  const density = assumed<string>('1/m2', fraction(perM2), `${meaning} in a square metre`, {
    at: '/method',
    because: 'a square grid; four holes at the least in each place, so that one shows where another has run',
    cite: { source: 'TRADE-INJECTION' },
    low: 24,
    high: 172,
  });
  const holes = productOf<string>('1', meaning, { area: under, perM2: density });
  return derived('1', fraction(Math.max(least, Math.ceil(holes.value))), meaning, {
    formula: 'scope.count',
    title: 'Holes of the grid, four at least in each place',
    symbol: 'n',
    cite: { source: 'TRADE-INJECTION' },
    inputs: { holes },
  });
}

/** Two readings a week for three weeks, and one more to see two alike. Source: [FROM-MEMORY]. */
const READINGS = 7;

function besidesOfPlaces(
  { record }: Job,
  places: readonly PlaceChoice[],
  { injected, dried }: Grids,
): Besides {
  const strips = stripsIn(places);
  const cutM = slotM(places);
  const frames = framesIn(record, places).length;
  return {
    'injected-place': counted('places injected', injected.places),
    ...(dried.places === 0
      ? {}
      : {
          'dry-hole': dried.holes,
          'dry-set-up': counted('drying set-up', 1),
          'dry-reading': counted('rounds of readings', READINGS),
        }),
    ...(strips.length === 0 ? {} : { 'strip-m': length('strip at the edge', stripM(strips)) }),
    ...(cutM === 0 ? {} : { 'slot-m': length('slot along the strip', cutM) }),
    ...(frames === 0 ? {} : { 'leak-frame': counted('frame whose core is sealed', frames) }),
  };
}

/** A hatch that is named as the leak has its frame off already. */
export const framesIn = ({ cause }: Job['record'], places: readonly PlaceChoice[]): readonly string[] =>
  cause?.leak !== 'hatch' && stripsIn(places).some(isAtHatch) ? ['hatch'] : [];

/** An eighth of an inch. From memory. */
const DRILL_MM = 3.2;

interface PlaceGoods {
  readonly plies: readonly PlyWork[];
  readonly grids: Grids;
}

function placeSteps(
  { answers }: Job,
  places: readonly PlaceChoice[],
  { plies, grids: { injected, dried } }: PlaceGoods,
): readonly ResinStepRequest[] {
  const coreMm = answers.core.thicknessMm.value;
  const skinMm = answers.outerSkin.thicknessMm.value;
  return [
    ...(injected.places === 0 ? [] : injectionSteps(injected, skinMm)),
    ...(dried.places === 0
      ? []
      : [
          {
            step: 'potting' as const,
            title: 'Plug the drying holes',
            holes: dried.holes.value,
            diameterMm: DRILL_MM,
            depthMm: coreMm + skinMm,
          },
        ]),
    ...stripSteps(places, coreMm, plies),
  ];
}

/** A quarter of an inch. Source: [TRADE-INJECTION]. */
const INJECTION_HOLE_MM = 6.35;

const injectionSteps = ({ areaM2, holes }: Grid, skinMm: number): readonly ResinStepRequest[] => [
  { step: 'inject', areaM2: areaM2.value },
  {
    step: 'potting',
    title: 'Fill the injection holes',
    holes: holes.value,
    diameterMm: INJECTION_HOLE_MM,
    depthMm: skinMm,
  },
];

const stripSteps = (
  places: readonly PlaceChoice[],
  coreMm: number,
  plies: readonly PlyWork[],
): readonly ResinStepRequest[] => [
  ...taking(places, 'edge-rout-and-fill').map(({ place }): ResinStepRequest => ({
    step: 'undercut',
    title: `Fill the strip ${place.id} in ${liftsFor((place.narrowMm * coreMm) / MM_PER_M)} lifts`,
    lengthM: place.longMm / MM_PER_M,
    widthMm: place.narrowMm,
    heightMm: coreMm,
  })),
  ...(plies.length === 0
    ? []
    : [
        {
          step: 'closing-plies' as const,
          title: 'Tapes over the slot of the strip',
          plies: plies.map(({ label, areaM2, fabric, fibreMassFraction }) => ({
            label,
            areaM2: areaM2.value,
            arealMassGPerM2: fabric.arealMassGPerM2.value,
            fibreMassFraction,
          })),
        },
      ]),
];

/** Two tapes over the slot of a strip, 100 and 150 mm wide. Source: [METHODS-EDGES]. */
const tapesFor = (job: Job, places: readonly PlaceChoice[]): readonly PlyWork[] =>
  tapesOf(job, slotM(places), 'T');

/** Two tapes of such a length, the wider over the narrower. */
export function tapesOf(job: Job, lengthM: number, letter: string): readonly PlyWork[] {
  const tape = findMaterial(job.catalogue, 'reinforcement', TAPE);
  if (lengthM === 0 || tape === undefined) return [];
  return tape.rollWidthsMm.map((widthMm, index) => ({
    label: `${letter}${index + 1}`,
    fabric: tape,
    areaM2: area(`tape ${widthMm} mm wide`, (lengthM * widthMm) / MM_PER_M),
    rollLengthM: lengthM,
    rollWidthMm: widthMm,
    strips: [{ lengthMm: lengthM * MM_PER_M, widthMm }],
    fibreMassFraction: tape.fibreMassFraction.value,
  }));
}

const TAPE = 'reinforcement-tape-biaxial-600';
