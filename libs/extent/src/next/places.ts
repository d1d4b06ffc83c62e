import {
  containsPoint,
  distance,
  distanceToEdge,
  distanceToSegment,
  regionOf,
  type Region,
} from '#lib/geometry';
import { isKnown } from '#lib/kernel';
import type { Lattice } from '../map/lattice.js';
import type { FittingOnDeck, PanelShape } from '../openings/request.js';
import type { Place, Survey } from '../reading.js';
import type { NextAnswers, ReadingKind } from './questions.js';

export interface Deck {
  readonly panel: Region;
  readonly shape: PanelShape;
  readonly fittings: readonly FittingOnDeck[];
  readonly survey: Survey;
}

/**
 * What a reading keeps clear of, mm. Nearer to an edge or a support the deck rings of that and not of its core, and a hole is
 * bored into what holds the deck; metal of a fitting moves a meter. Common practice, no published source.
 */
const clear: Readonly<
  Record<ReadingKind, { readonly ofEdge: number; readonly ofSupport: number; readonly ofFitting: number }>
> = {
  sounding: { ofEdge: 30, ofSupport: 40, ofFitting: 30 },
  moisture: { ofEdge: 50, ofSupport: 40, ofFitting: 100 },
  plug: { ofEdge: 50, ofSupport: 50, ofFitting: 30 },
};

/** Half the base of a fitting whose base nobody stated. */
const USUAL_HALF_BASE_MM = 50;

/** A second reading of the same kind this near says the same again, and nothing is left to read beside a plug. */
const READ_ALREADY_MM = 60;

/** Whether a reading of this kind can be taken at a place and was not taken there before. */
export function reachableBy(
  deck: Deck,
  { unreachable }: NextAnswers,
): (kind: ReadingKind, place: Place) => boolean {
  const barred = isKnown(unreachable) ? unreachable.value.map((outline) => regionOf(outline)) : [];
  return (kind, place) => {
    const { ofEdge, ofSupport, ofFitting } = clear[kind];
    return (
      containsPoint(deck.panel, place) &&
      distanceToEdge(place, deck.panel) >= ofEdge &&
      !barred.some((region) => containsPoint(region, place)) &&
      (deck.shape.supports ?? []).every(({ from, to }) => distanceToSegment(place, from, to) >= ofSupport) &&
      deck.fittings.every(
        ({ at, baseMm }) =>
          distance(at, place) >= ofFitting + (baseMm === undefined ? USUAL_HALF_BASE_MM : baseMm / 2),
      ) &&
      !deck.survey.readings.some(
        (reading) =>
          (reading.kind === kind || reading.kind === 'plug') && distance(reading.at, place) < READ_ALREADY_MM,
      )
    );
  };
}

/** Squares of the panel of which each gives its most doubtful place, and further places wherever the doubt is dearest. */
const SQUARES = 24;
const FURTHER = 12;

/** Two readings of a batch stand at least so far apart. */
export const APART_MM = 70;

/** Nodes worth asking about: spread over the whole panel first, then where knowing would save most. */
export function candidatesAmong(
  lattice: Lattice,
  worth: Float64Array,
  isReachable: (node: number) => boolean,
): readonly number[] {
  const order = [...worth.keys()]
    .filter((node) => worth[node] > 0 && isReachable(node))
    .sort((one, other) => worth[other] - worth[one]);
  const spread = bestOfSquares(lattice, order);
  const further = apartFrom(spread, order, lattice);
  return [...spread, ...further];
}

function bestOfSquares({ nodes }: Lattice, order: readonly number[]): readonly number[] {
  const inPanel = nodes.filter(({ areaMm2 }) => areaMm2 > 0).length;
  const side = Math.max(1, Math.sqrt(inPanel / SQUARES));
  const taken = new Map<string, number>();
  for (const node of order) {
    const { column, row } = nodes[node];
    const square = `${Math.floor(column / side)} ${Math.floor(row / side)}`;
    if (!taken.has(square)) taken.set(square, node);
  }
  return [...taken.values()];
}

function apartFrom(
  taken: readonly number[],
  order: readonly number[],
  { nodes }: Lattice,
): readonly number[] {
  const all = [...taken];
  for (const node of order) {
    if (all.length >= taken.length + FURTHER) break;
    if (all.every((other) => distance(nodes[other].place, nodes[node].place) >= APART_MM)) all.push(node);
  }
  return all.slice(taken.length);
}
