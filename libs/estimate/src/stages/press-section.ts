import { boardLines, type BondPressurePlan, type PressLine } from '#lib/press';
import type { Bounds, Point } from '#lib/geometry';
import { extentOfOutline } from '../job/outline-size.js';
import type { Job } from '../job/job.js';
import type { BondPressureSection, CorePiece } from '../document/estimate-document.js';
import type { ScopeWork } from './scope-stage.js';

interface Pressed {
  readonly job: Job;
  readonly press: BondPressurePlan;
  readonly scope: ScopeWork;
  readonly core: { readonly section: { readonly pieces: readonly CorePiece[] } };
}

/** How the core is pressed, where everything lies that presses or carries, and what goes on each piece. */
export function pressSection({ job, press, scope, core }: Pressed): BondPressureSection {
  const lines = pressLines(job, press, scope);
  const { props } = press.innerSkin;
  return {
    ...(press.method === undefined ? {} : { method: press.method }),
    requiredKPa: press.requiredKPa,
    ...(press.availableKPa === undefined ? {} : { availableKPa: press.availableKPa }),
    restsOn: press.restsOn,
    quantities: press.quantities.map((one) => ({ ...one, value: countedOn(lines, one) })),
    props: {
      needed: props.needed,
      why: props.why,
      ...(props.spacingMm === undefined ? {} : { spacingMm: props.spacingMm }),
      ...(props.spanMm === undefined ? {} : { spanMm: props.spanMm }),
    },
    lines,
    pieces: press.method === undefined ? [] : core.section.pieces.map((piece) => pressedPiece(piece, press)),
    recommendation: press.recommendation,
    refusals: press.refusals,
  };
}

/** Props and boards are as many as the plan shows, under every opening. */
function countedOn(
  lines: readonly PressLine[],
  { code, value }: { readonly code: string; readonly value: number },
): number {
  const boards = lines.filter(({ what }) => what === 'board');
  if (code === 'prop-boards') return boards.length;
  return code === 'props' ? boards.reduce((sum, { points }) => sum + points.length, 0) : value;
}

/**
 * In deck coordinates: battens and bows over the largest opening, from which they go on to the next; boards under all of
 * them from before the first cut, between what holds the deck up there.
 */
export const pressLines = (job: Job, press: BondPressurePlan, { plan }: ScopeWork): readonly PressLine[] => [
  ...press.lines
    .filter(({ what }) => what !== 'board')
    .map((line) => moved(line, extentOfOutline(plan.openings[0].area.outer))),
  ...plan.openings.flatMap(({ area }) => boardsUnder(extentOfOutline(area.outer), job, press)),
];

function boardsUnder(bounds: Bounds, { record }: Job, press: BondPressurePlan): readonly PressLine[] {
  const { needed, spacingMm, spanMm } = press.innerSkin.props;
  return press.method === undefined || !needed || spacingMm === undefined || spanMm === undefined
    ? []
    : boardLines({ bounds, supports: record.panel.supports ?? [], spanMm, spacingMm });
}

function moved({ what, from, to, points }: PressLine, { minX, minY }: Bounds): PressLine {
  const shifted = ([x, y]: Point): Point => [x + minX, y + minY];
  return { what, from: shifted(from), to: shifted(to), points: points.map(shifted) };
}

function pressedPiece(
  { label, outline, areaM2 }: CorePiece,
  { method, onPieceKgPerM2 }: BondPressurePlan,
): BondPressureSection['pieces'][number] {
  return {
    label,
    ...(onPieceKgPerM2 === undefined ? {} : { massKg: Math.ceil(onPieceKgPerM2 * areaM2 - 1e-9) }),
    jacks: method === 'jacks' ? quarterPoints(extentOfOutline(outline)) : [],
  };
}

/** One jack under each quarter of the board that holds a piece. */
const quarterPoints = ({ minX, minY, maxX, maxY }: Bounds): readonly Point[] =>
  (
    [
      [0.25, 0.25],
      [0.75, 0.25],
      [0.75, 0.75],
      [0.25, 0.75],
    ] as const
  ).map(([along, across]) => [minX + along * (maxX - minX), minY + across * (maxY - minY)] as const);
