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
  const injected = taking(places, 'inject');
  const injectedM2 = area('area injected under', areaM2Of(injected));
  const plies = tapesFor(job, places);
  return {
    injectedM2,
    injectionHoles: gridHoles(injectedM2, INJECTION_PER_M2, 'injection holes'),
    besides: besidesOfPlaces(places, injected.length),
    steps: placeSteps(job, places, plies),
    plies,
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

const area = (meaning: string, valueM2: number): Figure<'m2'> =>
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

const areaM2Of = (places: readonly PlaceChoice[]): number =>
  places.reduce((sum, { place }) => sum + place.badAreaM2, 0);
const stripM = (places: readonly PlaceChoice[]): number =>
  taking(places, 'edge-rout-and-fill').reduce((sum, { place }) => sum + place.longMm / MM_PER_M, 0);
const MM_PER_M = 1000;

/** One hole to each square of 6 in; to dry, one to each square of 4 in. Source: [TRADE-INJECTION], [FROM-MEMORY]. */
const INJECTION_PER_M2 = 43;
const DRYING_PER_M2 = 97;
const LEAST_HOLES = 4;

function gridHoles(under: Figure<'m2'>, perM2: number, meaning: string): Figure<'1'> {
  if (under.value === 0) return none;
  const density = assumed<string>('1/m2', fraction(perM2), `${meaning} in a square metre`, {
    at: '/method',
    because: 'a square grid; four holes at the least, so that one shows where another has run',
    cite: { source: 'TRADE-INJECTION' },
    low: 24,
    high: 172,
  });
  const holes = productOf<string>('1', meaning, { area: under, perM2: density });
  return derived('1', fraction(Math.max(LEAST_HOLES, Math.ceil(holes.value))), meaning, {
    formula: 'scope.count',
    title: 'Holes of the grid, four at least',
    symbol: 'n',
    cite: { source: 'TRADE-INJECTION' },
    inputs: { holes },
  });
}

/** Two readings a week for three weeks, and one more to see two alike. Source: [FROM-MEMORY]. */
const READINGS = 7;

function besidesOfPlaces(places: readonly PlaceChoice[], injected: number): Besides {
  const dried = area('area dried in place', areaM2Of(taking(places, 'dry-in-place')));
  const strips = stripM(places);
  return {
    'injected-place': counted('places injected', injected),
    ...(dried.value === 0
      ? {}
      : {
          'dry-hole': gridHoles(dried, DRYING_PER_M2, 'drying holes'),
          'dry-set-up': counted('drying set-up', 1),
          'dry-reading': counted('rounds of readings', READINGS),
        }),
    ...(strips === 0 ? {} : { 'strip-m': length('strip at the edge', strips) }),
  };
}

const DRILL_MM = 3.2;

function placeSteps(
  { answers }: Job,
  places: readonly PlaceChoice[],
  plies: readonly PlyWork[],
): readonly ResinStepRequest[] {
  const depthMm = answers.core.thicknessMm.value;
  const injectedM2 = areaM2Of(taking(places, 'inject'));
  const driedM2 = areaM2Of(taking(places, 'dry-in-place'));
  return [
    ...(injectedM2 === 0 ? [] : injectionSteps(injectedM2, answers.outerSkin.thicknessMm.value)),
    ...(driedM2 === 0
      ? []
      : [
          {
            step: 'potting' as const,
            title: 'Plug the drying holes',
            holes: Math.ceil(driedM2 * DRYING_PER_M2),
            diameterMm: DRILL_MM,
            depthMm: depthMm + answers.outerSkin.thicknessMm.value,
          },
        ]),
    ...stripSteps(places, depthMm, plies),
  ];
}

/** A quarter of an inch. */
const INJECTION_HOLE_MM = 6.35;

const injectionSteps = (areaM2: number, skinMm: number): readonly ResinStepRequest[] => [
  { step: 'inject', areaM2 },
  {
    step: 'potting',
    title: 'Fill the injection holes',
    holes: Math.max(LEAST_HOLES, Math.ceil(areaM2 * INJECTION_PER_M2)),
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
  tapesOf(job, stripM(places), 'T');

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
