import { edgeFixity, type ClampedEdges, type Correction } from './edge-fixity.js';
import {
  addFields,
  type PlateFields,
  type PlateStiffness,
  type Rectangle,
  type RectangularLoad,
  type Spot,
} from './plate.js';
import { supportedPlate } from './supported-plate.js';

export type EdgeFixing = 'simply-supported' | 'clamped';
export type PlateEdges = Readonly<Record<'xStart' | 'xEnd' | 'yStart' | 'yEnd', EdgeFixing>>;

export interface PlateModel {
  readonly answerTo: (load: RectangularLoad) => PlateAnswer;
}

/** What a load does at the spots where it can be worst. */
export interface PlateAnswer {
  readonly at: (spot: Spot) => PlateFields;
  readonly spots: readonly NamedSpot[];
  readonly deflectionMm: number;
  readonly deflectionAt: Spot;
  /** Estimated relative error of ending the series and the polynomials, over deflection and moments. */
  readonly truncation: number;
}

export interface NamedSpot {
  readonly name: string;
  readonly spot: Spot;
  readonly fields: PlateFields;
}

/** A plate on four edges, each simply supported or clamped, ready for any number of loads. */
export function plateModel(stiffness: PlateStiffness, size: Rectangle, edges: PlateEdges): PlateModel {
  const supported = supportedPlate(stiffness, size);
  const clamped = clampedOf(edges);
  const isHeld = Object.values(clamped).some((held) => held);
  const fixity = isHeld ? edgeFixity(stiffness, size, clamped) : undefined;
  const answerTo = (load: RectangularLoad): PlateAnswer => {
    const correction = fixity?.correctionFor((edge, waves) => supported.edgeRotation(load, edge, waves));
    let truncation = 0;
    const at = (spot: Spot): PlateFields => {
      const { fields, truncation: left } = supported.at(load, spot);
      truncation = Math.max(truncation, left);
      return correction === undefined ? fields : addFields(fields, correction.at(spot));
    };
    const spots = spotsFor(size, load, isSymmetric(size, load, clamped)).map(({ name, spot }) => ({
      name,
      spot,
      fields: at(spot),
    }));
    const deepest = spots.reduce((most, one) =>
      Math.abs(one.fields.w) > Math.abs(most.fields.w) ? one : most,
    );
    const unsettled = correction === undefined ? 0 : unsettledShare(correction, deepest);
    return {
      at,
      spots,
      deflectionMm: deepest.fields.w,
      deflectionAt: deepest.spot,
      truncation: Math.max(truncation, unsettled),
    };
  };
  return { answerTo };
}

const clampedOf = (edges: PlateEdges): ClampedEdges => ({
  xStart: edges.xStart === 'clamped',
  xEnd: edges.xEnd === 'clamped',
  yStart: edges.yStart === 'clamped',
  yEnd: edges.yEnd === 'clamped',
});

/** What the highest degree of the polynomials still brought, over what there is. */
function unsettledShare(correction: Correction, { spot, fields }: NamedSpot): number {
  const whole = correction.at(spot);
  const coarser = correction.coarserAt(spot);
  const moment = Math.max(Math.abs(fields.mx), Math.abs(fields.my), Number.MIN_VALUE);
  return Math.max(
    Math.abs(whole.w - coarser.w) / Math.max(Math.abs(fields.w), Number.MIN_VALUE),
    Math.abs(whole.mx - coarser.mx) / moment,
    Math.abs(whole.my - coarser.my) / moment,
  );
}

const ROUNDING = 1e-9;

const isSymmetric = (
  { lengthXMm, widthYMm }: Rectangle,
  load: RectangularLoad,
  edges: ClampedEdges,
): boolean =>
  edges.xStart === edges.xEnd &&
  edges.yStart === edges.yEnd &&
  Math.abs(load.x1Mm + load.x2Mm - lengthXMm) < ROUNDING * lengthXMm &&
  Math.abs(load.y1Mm + load.y2Mm - widthYMm) < ROUNDING * widthYMm;

interface Candidate {
  readonly name: string;
  readonly spot: Spot;
}

/** Middle of the load, middles of the edges, edges of the load, and a search along both lines when nothing is symmetric. */
function spotsFor(size: Rectangle, load: RectangularLoad, symmetric: boolean): readonly Candidate[] {
  const { lengthXMm: a, widthYMm: b } = size;
  const x = (load.x1Mm + load.x2Mm) / 2;
  const y = (load.y1Mm + load.y2Mm) / 2;
  const places: Candidate[] = [{ name: 'under the middle of the load', spot: { xMm: x, yMm: y } }];
  const edge = (name: string, xMm: number, yMm: number): void => {
    places.push({ name, spot: { xMm, yMm } });
  };
  edge('at the edge x = 0', 0, y);
  edge('at the edge y = 0', x, 0);
  if (load.x1Mm > 0) edge('at the edge of the load, forward', load.x1Mm, y);
  if (load.y1Mm > 0) edge('at the edge of the load, to port', x, load.y1Mm);
  if (symmetric) return places;
  edge('at the far edge along x', a, y);
  edge('at the far edge along y', x, b);
  if (load.x2Mm < a) edge('at the edge of the load, aft', load.x2Mm, y);
  if (load.y2Mm < b) edge('at the edge of the load, to starboard', x, load.y2Mm);
  for (let step = 1; step < SEARCH_STEPS; step += 1) {
    edge('along the panel', (a * step) / SEARCH_STEPS, y);
    edge('across the panel', x, (b * step) / SEARCH_STEPS);
  }
  edge('at the middle of the panel', a / 2, b / 2);
  return places;
}

const SEARCH_STEPS = 16;
