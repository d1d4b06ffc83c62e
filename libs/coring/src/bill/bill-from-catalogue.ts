import {
  allOf,
  andThen,
  pointer,
  problem,
  refusal,
  success,
  unlessProblems,
  type Outcome,
  type Problem,
} from '#lib/kernel';
import {
  areaMm2,
  difference,
  intersection,
  offset,
  readOutline,
  regionOf,
  type Point,
  type Region,
} from '#lib/geometry';
import { findMaterial, materialsOf, type Catalogue, type CoreSheet } from '#lib/catalogue';
import { timeProblems } from '#lib/nesting';
import type { OpeningToFill } from '../mosaic/request.js';
import { coreBill, type CoreBill } from './core-bill.js';
import type { CoreBillRequest } from './request.js';

/** A core bill with the material by its code and openings as outlines. */
export interface CoreBillByCode extends Omit<CoreBillRequest, 'core' | 'openings'> {
  readonly material: string;
  readonly openings: readonly DrawnOpening[];
  readonly timeLimitS?: number;
}

export interface DrawnOpening {
  readonly label: string;
  readonly outline: readonly Point[];
  /** How far core is taken out under the skin all round. */
  readonly undercutMm?: number;
  /** The outline to which core is taken out under the skin, where it is not the same all round. */
  readonly cavity?: readonly Point[];
}

/** `coreBill` for callers that know codes: looks the core up and reads the outlines. */
export function coreBillFrom(
  request: CoreBillByCode,
  catalogue: Catalogue,
  shouldStop: () => boolean = () => false,
): Outcome<CoreBill> {
  const { material, openings, timeLimitS, ...rest } = request;
  const read = allOf({
    core: coreOf(material, catalogue),
    openings: readOpenings(openings),
    time: unlessProblems(timeProblems(timeLimitS), () => true),
  });
  return andThen(read, (found) =>
    coreBill({ ...rest, core: found.core, openings: found.openings }, shouldStop),
  );
}

function coreOf(code: string, catalogue: Catalogue): Outcome<CoreSheet> {
  const core = findMaterial(catalogue, 'core', code);
  if (core !== undefined) return success(core);
  return refusal(
    problem('unknown-code', '/material', {
      value: code,
      kind: 'core',
      known: materialsOf(catalogue, 'core')
        .map((one) => one.code)
        .join(', '),
    }),
  );
}

function readOpenings(openings: readonly DrawnOpening[]): Outcome<readonly OpeningToFill[]> {
  const read = openings.map((opening, k) => openingFrom(opening, `/openings/${k}`));
  const problems = read.flatMap((outcome) => (outcome.ok ? [] : outcome.problems));
  const openingsRead = read.flatMap((outcome) => (outcome.ok ? [outcome.value] : []));
  return unlessProblems(
    [...problems, ...(problems.length > 0 ? [] : overlapProblems(openingsRead))],
    () => openingsRead,
  );
}

/** Core under two openings at once would be counted twice. */
function overlapProblems(openings: readonly OpeningToFill[]): readonly Problem[] {
  return openings.flatMap(({ area }, k) =>
    openings
      .slice(0, k)
      .filter((other) => areaMm2(intersection([area], [other.area])) > 1)
      .map(({ label }) =>
        problem('contradiction', pointer('/openings', k, 'outline'), {
          other: `opening ${label}`,
          why: 'openings must not overlap; join them into one',
        }),
      ),
  );
}

function openingFrom(
  { label, outline, undercutMm = 0, cavity }: DrawnOpening,
  at: string,
): Outcome<OpeningToFill> {
  const outer = readOutline(outline, `${at}/outline`);
  const whole = cavity === undefined ? undefined : readOutline(cavity, `${at}/cavity`);
  const problems = [
    ...(outer.ok ? [] : outer.problems),
    ...(whole === undefined || whole.ok ? [] : whole.problems),
    ...(undercutMm >= 0 && undercutMm <= 500
      ? []
      : [problem('out-of-range', `${at}/undercutMm`, { value: undercutMm, range: '0 to 500 mm' })]),
  ];
  if (problems.length > 0 || !outer.ok) return refusal(...problems);
  const area = { outer: outer.value, holes: [] };
  const reach: Region = whole?.ok === true ? regionOf(whole.value) : offset([area], undercutMm);
  const outside = areaMm2(difference([area], reach));
  if (outside > 1)
    return refusal(
      problem('contradiction', `${at}/cavity`, {
        other: 'outline',
        why: 'the cavity must hold the whole opening',
      }),
    );
  return success({ label, area, undercut: difference(reach, [area]) });
}
