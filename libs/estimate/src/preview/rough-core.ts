import { mapValue, refusal, type Outcome } from '#lib/kernel';
import { planStack, type StackLayer } from '#lib/coring';
import { assumed, derived, type Figure } from '#lib/provenance';
import { fraction, l, m2 } from '#lib/units';
import { commonPractice } from '#lib/asking';
import type { Job } from '../job/job.js';
import {
  alikeThickness,
  scoresOf,
  sheetsOnSale,
  type CoreWork,
  type SheetsWanted,
} from '../stages/core-stage.js';
import type { OpenedScope } from '../stages/three-areas.js';

/** New core by its area: the stack is chosen as ever, but no piece is cut and no sheet laid out. */
export type RoughCore = Pick<
  CoreWork,
  'sheets' | 'beddedM2' | 'solid' | 'solidL' | 'pieces' | 'scores' | 'coreMm'
>;

export function roughCoreFor(job: Job, { plan, areas }: OpenedScope): Outcome<RoughCore> {
  const { openedM2, staysM2 } = areas.recorded;
  const groundM2 = openedM2 - staysM2 + plan.undercutAreaM2;
  const isSolid = areas.fill === 'solid';
  const beddedM2 = rough('m2', m2(isSolid ? 0 : groundM2), 'ground to be cored', plan.figures);
  const solidL = rough(
    'l',
    l(isSolid ? groundM2 * job.answers.core.cavityMm.value : 0),
    'filled solid',
    plan.figures,
  );
  const stack = planStack({
    cavityMm: job.answers.core.cavityMm.value,
    core: job.core,
    areaM2: beddedM2.value,
    ...alikeThickness(job),
  });
  if (!stack.ok) return refusal(...stack.problems.map((found) => ({ ...found, at: `/core${found.at}` })));
  return mapValue(stack, ({ layers }) => ({
    beddedM2,
    solidL,
    ...(isSolid ? { solid: asStrip(groundM2, job.answers.core.cavityMm.value) } : {}),
    sheets: isSolid ? [] : layers.flatMap((layer) => sheetsByArea(job, layer, beddedM2)),
    pieces: isSolid ? [] : evenPieces(job, beddedM2.value),
    ...scoresOf(job, layers),
    coreMm: layers.reduce((sum, { thicknessMm }) => sum + thicknessMm, 0),
  }));
}

const rough = <U extends 'm2' | 'l'>(
  unit: U,
  value: Figure<U>['value'],
  meaning: string,
  { openedArea, undercutArea }: OpenedScope['plan']['figures'],
): Figure<U> =>
  derived(unit, value, meaning, {
    formula: 'preview.core-ground',
    title: 'Opened and undercut, less sound core that stays',
    symbol: 'A',
    cite: { source: 'ARITHMETIC' },
    inputs: { opened: openedArea, undercut: undercutArea },
  });

const MM_PER_M = 1000;

/** The same ground as one strip a metre wide. */
const asStrip = (areaM2: number, heightMm: number): NonNullable<CoreWork['solid']> => ({
  lengthM: areaM2,
  widthMm: MM_PER_M,
  heightMm,
});

const usedShare: Figure<'1'> = assumed('1', fraction(0.8), 'share of a sheet that ends up in the deck', {
  at: '/core',
  because: 'pieces are not laid out in a preview; a fifth of small jobs ends up as offcuts',
  cite: commonPractice,
  low: 0.5,
  high: 0.95,
});

/** Whole sheets of the format that then costs least. */
function sheetsByArea(
  job: Job,
  { thicknessMm, form }: StackLayer,
  netM2: Figure<'m2'>,
): readonly SheetsWanted[] {
  const formats = sheetsOnSale(job) ?? job.core.sheets.map((sheet) => ({ ...sheet, cost: 1 }));
  const counted = formats.map(({ lengthMm, widthMm, cost }) => {
    const sheetM2 = (lengthMm / 1000) * (widthMm / 1000);
    const count = Math.ceil(netM2.value / (sheetM2 * usedShare.value));
    return { sheet: { lengthMm, widthMm }, count, cost: count * cost };
  });
  return counted
    .sort((a, b) => a.cost - b.cost)
    .slice(0, 1)
    .map(({ sheet, count }) => ({ thicknessMm, form, sheet, netM2, count: countFigure(count, netM2) }));
}

const countFigure = (count: number, netM2: Figure<'m2'>): Figure<'1'> =>
  derived('1', fraction(count), 'sheets by area', {
    formula: 'preview.sheets-by-area',
    title: 'Area over what a sheet gives, in whole sheets',
    symbol: 'n',
    cite: { source: 'ARITHMETIC' },
    inputs: { area: netM2, usedShare },
  });

/** As few pieces as the largest that one person beds. */
function evenPieces({ core }: Job, areaM2: number): CoreWork['pieces'] {
  const count = Math.max(1, Math.ceil(areaM2 / core.largestPieceM2.value));
  return Array.from({ length: count }, (_, at) => ({ label: `C${at + 1}`, areaM2: m2(areaM2 / count) }));
}
