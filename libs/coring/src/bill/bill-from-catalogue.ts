import { faultsIn, saidOr } from '#lib/asking';
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
import { areaMm2, difference, intersection, offset, readOutline, regionOf, type Region } from '#lib/geometry';
import { findMaterial, materialsOf, type Catalogue, type CoreSheet } from '#lib/catalogue';
import type { OpeningToFill } from '../mosaic/request.js';
import { coreBill, type CoreBill } from './core-bill.js';
import {
  coreBillQuestions,
  type CoreBillByCode,
  type DrawnOpening,
  drawnOpeningQuestions,
} from './questions.js';

/** `coreBill` for callers that know codes: looks the core up and reads the outlines. */
export function coreBillFrom(
  request: CoreBillByCode,
  catalogue: Catalogue,
  shouldStop: () => boolean = () => false,
): Outcome<CoreBill> {
  const faults = faultsIn(request, coreBillQuestions);
  if (faults.length > 0) return refusal(...faults);
  const read = allOf({
    core: coreOf(request.material, catalogue),
    openings: readOpenings(request.openings),
  });
  return andThen(read, ({ core, openings }) => coreBill({ ...request, core, openings }, shouldStop));
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
  { label, outline, undercutMm, cavity }: DrawnOpening,
  at: string,
): Outcome<OpeningToFill> {
  const outer = readOutline(outline, `${at}/outline`);
  const whole = cavity === undefined ? undefined : readOutline(cavity, `${at}/cavity`);
  const problems = [
    ...(outer.ok ? [] : outer.problems),
    ...(whole === undefined || whole.ok ? [] : whole.problems),
  ];
  if (problems.length > 0 || !outer.ok) return refusal(...problems);
  const area = { outer: outer.value, holes: [] };
  const reach: Region =
    whole?.ok === true
      ? regionOf(whole.value)
      : offset([area], saidOr(drawnOpeningQuestions.undercutMm, undercutMm));
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
