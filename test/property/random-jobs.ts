import { randomStream } from '#lib/kernel';
import { evidenceGrades } from '#lib/extent';
import type { DefectRecord } from '#lib/estimate';

type Place = readonly [xMm: number, yMm: number];
type Four = readonly [Place, Place, Place, Place];

/** One invented job, and the same one changed in a single thing. */
export interface RandomJob {
  readonly record: DefectRecord;
  /** With the zone of so many times its area about the same middle; nothing where the panel is too small for it. */
  readonly withZoneOf: (areaFactor: number) => DefectRecord | undefined;
  /** Without its first fitting; nothing where it has none. */
  readonly withoutFitting: DefectRecord | undefined;
}

const EDGE_MM = 60;

/** Jobs of spots, panels and decks of all grades, shelters and skins, wholly decided by the seed. Invented. */
export function randomJobs(count: number, seed: number): readonly RandomJob[] {
  const random = randomStream(seed);
  return Array.from({ length: count }, () => jobFrom(random));
}

function jobFrom(random: () => number): RandomJob {
  const between = (from: number, upTo: number): number => from + random() * (upTo - from);
  const oneOf = <T>(choices: readonly T[]): T => choices[Math.floor(random() * choices.length)];
  const [lengthMm, widthMm] = [between(1200, 3600), between(700, 2000)];
  const areaM2 = Math.exp(between(Math.log(0.05), Math.log((0.4 * lengthMm * widthMm) / 1e6)));
  const aspect = between(0.6, 1.8);
  const middle: Place = [lengthMm / 2, widthMm / 2];
  const fits = (factor: number): boolean => {
    const [long, wide] = sidesOf(areaM2 * factor, aspect);
    return long < lengthMm - 2 * EDGE_MM && wide < widthMm - 2 * EDGE_MM;
  };
  const condition = oneOf(['wet-rotten', 'wet-bonded', 'dry-debonded'] as const);
  const fittings = Array.from({ length: Math.floor(random() * 3) }, (_, index) => ({
    id: `F${index + 1}`,
    kind: oneOf(['cleat', 'stanchion', 'winch'] as const),
    at: [middle[0] + (index - 0.5) * 120, middle[1]] as const,
    holes: 4,
    holeDiameterMm: 8,
    baseMm: 80,
  }));
  const base: DefectRecord = {
    title: 'Invented deck',
    panel: {
      outline: box([lengthMm / 2, widthMm / 2], lengthMm, widthMm),
      surface: oneOf(['smooth-paint', 'painted-nonskid'] as const),
      accessBelow: oneOf(['open', 'lined'] as const),
    },
    outerSkin: { thicknessMm: oneOf([2.5, 3, 4]) },
    innerSkin: { thicknessMm: oneOf([1.5, 2]) },
    core: { thicknessMm: oneOf([9.5, 12.7, 19.1]), coreType: 'end-grain-balsa' },
    fittings,
    evidence: oneOf(evidenceGrades),
    method: {
      skin: oneOf(['re-bed', 'relay'] as const),
      finish: oneOf(['patch', 'panel'] as const),
    },
    conditions: {
      shelter: oneOf(['shed', 'tent', 'open'] as const),
      place: oneOf(['ashore-anyway', 'ashore-for-this'] as const),
      temperatureC: oneOf([15, 20, 25]),
    },
    crew: { people: oneOf([1, 2]) },
  };
  const withZone = (factor: number): DefectRecord => ({
    ...base,
    zones: [{ id: 'Z', outline: box(middle, ...sidesOf(areaM2 * factor, aspect)), condition }],
  });
  const record = withZone(fits(1) ? 1 : 0.5);
  return {
    record,
    withZoneOf: (factor) => (fits(1) && fits(factor) ? withZone(factor) : undefined),
    withoutFitting: fittings.length === 0 ? undefined : { ...record, fittings: fittings.slice(1) },
  };
}

const sidesOf = (areaM2: number, aspect: number): readonly [longMm: number, wideMm: number] => [
  Math.sqrt(areaM2 * 1e6 * aspect),
  Math.sqrt((areaM2 * 1e6) / aspect),
];

const box = ([x, y]: Place, longMm: number, wideMm: number): Four => [
  [x - longMm / 2, y - wideMm / 2],
  [x + longMm / 2, y - wideMm / 2],
  [x + longMm / 2, y + wideMm / 2],
  [x - longMm / 2, y + wideMm / 2],
];
