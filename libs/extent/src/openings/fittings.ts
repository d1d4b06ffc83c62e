import { distanceToEdge, distanceToRegion, type Region } from '#lib/geometry';
import type { Place } from '../reading.js';
import { finding, toWholeMm, type Finding } from '../finding.js';
import type { FittingKind, FittingOnDeck } from './request.js';

export type FittingWork = 'remove' | 'pot' | 'insert' | 'plate' | 'refit' | 're-bed';

/** What the job does to one fitting, and why it is in the scope. */
export interface FittingInScope {
  /** Id of the fitting. */
  readonly id: string;
  /** Kind of fitting. */
  readonly kind: FittingKind;
  /** Middle of the fitting, [xMm, yMm]. */
  readonly at: Place;
  /** Holes that the fitting has. */
  readonly holes: number;
  /** Whether it stands in an opening or beside one. */
  readonly where: 'inside' | 'near';
  /** Label of the nearest opening. */
  readonly opening: string;
  /** From the edge of its base to the opening; 0 inside. */
  readonly distanceMm: number;
  /** Whether it carries loads that a crew depends on. */
  readonly isHighlyLoaded: boolean;
  /** What is done to it. */
  readonly work: readonly FittingWork[];
  /** Why the work is needed. */
  readonly because: string;
}

interface FittingKindFacts {
  /** Its fastenings pull or crush: the core under it is replaced by something dense, and a plate spreads the load. */
  readonly isLoaded: boolean;
  /** A failure here endangers the craft. */
  readonly isHighlyLoaded: boolean;
  /** A cover or a step carries nothing through a plate below. */
  readonly hasPlate: boolean;
  readonly usualHoles: number;
}

const facts: Readonly<Record<FittingKind, FittingKindFacts>> = {
  'stanchion': { isLoaded: true, isHighlyLoaded: false, hasPlate: true, usualHoles: 4 },
  'cleat': { isLoaded: true, isHighlyLoaded: false, hasPlate: true, usualHoles: 4 },
  'winch': { isLoaded: true, isHighlyLoaded: false, hasPlate: true, usualHoles: 5 },
  'windlass': { isLoaded: true, isHighlyLoaded: true, hasPlate: true, usualHoles: 4 },
  'chainplate': { isLoaded: true, isHighlyLoaded: true, hasPlate: false, usualHoles: 4 },
  'mast-step': { isLoaded: true, isHighlyLoaded: true, hasPlate: false, usualHoles: 4 },
  'track': { isLoaded: true, isHighlyLoaded: false, hasPlate: true, usualHoles: 10 },
  'hatch': { isLoaded: false, isHighlyLoaded: false, hasPlate: false, usualHoles: 12 },
  'fill': { isLoaded: false, isHighlyLoaded: false, hasPlate: false, usualHoles: 3 },
  'vent': { isLoaded: false, isHighlyLoaded: false, hasPlate: false, usualHoles: 4 },
  'pad-eye': { isLoaded: true, isHighlyLoaded: false, hasPlate: true, usualHoles: 4 },
  'other': { isLoaded: false, isHighlyLoaded: false, hasPlate: false, usualHoles: 4 },
};

/** What people, sails or lines hang on: its failure hurts somebody. Common practice, no published source. */
export const isLoaded = (kind: FittingKind): boolean => facts[kind].isLoaded;
export const isHighlyLoaded = (kind: FittingKind): boolean => facts[kind].isHighlyLoaded;
export const fittingKinds: readonly FittingKind[] = [
  'stanchion',
  'cleat',
  'winch',
  'windlass',
  'chainplate',
  'mast-step',
  'track',
  'hatch',
  'fill',
  'vent',
  'pad-eye',
  'other',
];

interface LabelledOpening {
  readonly label: string;
  readonly region: Region;
}

export interface FittingsFound {
  readonly inScope: readonly FittingInScope[];
  readonly findings: readonly Finding[];
  /** Fittings whose number of holes was not given, with the number taken. */
  readonly assumedHoles: readonly {
    readonly index: number;
    readonly kind: FittingKind;
    readonly holes: number;
  }[];
}

/** Every fitting inside an opening or within reach of one, and every leaking one wherever it stands. */
export function fittingsInScope(
  fittings: readonly FittingOnDeck[],
  openings: readonly LabelledOpening[],
  reachMm: number,
): FittingsFound {
  const found = fittings.flatMap((fitting, index) => {
    const near = nearestOpening(fitting, openings);
    if (near === undefined) return [];
    const isFar = near.distanceMm > reachMm;
    return isFar && fitting.isLeaking !== true
      ? []
      : [{ index, fitting, near, isFar, scope: scopeOf(fitting, near) }];
  });
  return {
    inScope: found.map(({ scope }) => scope),
    findings: found.flatMap(({ fitting, near, isFar }) => findingsOf(fitting, near, isFar)),
    assumedHoles: found.flatMap(({ fitting, index, scope }) =>
      fitting.holes === undefined ? [{ index, kind: fitting.kind, holes: scope.holes }] : [],
    ),
  };
}

interface Near {
  readonly label: string;
  readonly distanceMm: number;
  readonly isInside: boolean;
  readonly isOnCut: boolean;
}

function nearestOpening(
  { at, baseMm = 0 }: FittingOnDeck,
  openings: readonly LabelledOpening[],
): Near | undefined {
  const all = openings.map(({ label, region }): Near => {
    const awayMm = distanceToRegion(at, region);
    return {
      label,
      isInside: awayMm === 0,
      distanceMm: Math.max(0, awayMm - baseMm / 2),
      isOnCut: distanceToEdge(at, region) < baseMm / 2,
    };
  });
  return all.reduce<Near | undefined>(
    (best, next) => (best === undefined || next.distanceMm < best.distanceMm ? next : best),
    undefined,
  );
}

function scopeOf(fitting: FittingOnDeck, near: Near): FittingInScope {
  const kind = facts[fitting.kind];
  return {
    id: fitting.id,
    kind: fitting.kind,
    at: fitting.at,
    holes: fitting.holes ?? kind.usualHoles,
    where: near.isInside ? 'inside' : 'near',
    opening: near.label,
    distanceMm: near.distanceMm,
    isHighlyLoaded: kind.isHighlyLoaded,
    work: near.isInside ? workInside(kind) : workNear(kind),
    because: reasonFor(fitting, near),
  };
}

/** New core lies under it: what carries load stands on a dense insert that its bolts go straight through. */
const workInside = ({ isLoaded: bears, hasPlate }: FittingKindFacts): readonly FittingWork[] => [
  'remove',
  bears ? 'insert' : 'pot',
  ...platedWork(hasPlate),
];

/** Its core stays, but water can come in by its holes again: they are potted and it is bedded anew. */
const workNear = ({ hasPlate }: FittingKindFacts): readonly FittingWork[] => [
  'remove',
  'pot',
  ...platedWork(hasPlate),
];

const platedWork = (hasPlate: boolean): readonly FittingWork[] => [
  ...(hasPlate ? (['plate'] as const) : []),
  're-bed',
  'refit',
];

function reasonFor({ isLeaking }: FittingOnDeck, { label, isInside, distanceMm }: Near): string {
  const place = isInside ? `stands in opening ${label}` : `${toWholeMm(distanceMm)} mm from opening ${label}`;
  return isLeaking === true ? `${place}, and leaks` : place;
}

function findingsOf({ id, kind, isLeaking }: FittingOnDeck, near: Near, isFar: boolean): readonly Finding[] {
  const named = { fitting: id, kind, name: nameOf(id, kind) };
  return [
    ...(near.isOnCut ? [finding('fitting-on-cut', { opening: near.label, ...named })] : []),
    ...(isHighlyLoaded(kind) && !isFar ? [finding('highly-loaded-fitting', named)] : []),
    ...(isFar && isLeaking === true
      ? [finding('leak-elsewhere', { ...named, distanceMm: toWholeMm(near.distanceMm) })]
      : []),
  ];
}

/** A fitting whose id says what it is needs no second word: windlass, cleat-2, but stanchion S4. */
export function nameOf(id: string, kind: FittingKind): string {
  const [said, word] = [id, kind].map((text) =>
    text
      .toLowerCase()
      .replace(/[-_\s]+/g, ' ')
      .trim(),
  );
  if (said === word) return `the ${word}`;
  return said.includes(word) ? id : `${word} ${id}`;
}
