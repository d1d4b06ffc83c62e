import type { LabourRates, Skill, YardCharge } from '#lib/catalogue';
import {
  pointer,
  problem,
  refusal,
  success,
  triangularMean,
  type Outcome,
  type Problem,
  type ThreePoint,
} from '#lib/kernel';
import { derived, fromCatalogue, productOf, type Cite, type Figure } from '#lib/provenance';
import { figureOf } from '#lib/takeoff';
import { fraction } from '#lib/units';
import type { CauseClass, LineRequest } from './cost-line.js';

/** An operation with its hours, as the process room works them out: unit hours times driver times modifiers. */
export interface WorkedOperation {
  readonly code: string;
  readonly title: string;
  readonly phase?: string;
  readonly skill: Skill;
  readonly driver: string;
  readonly driverAmount: number | Figure;
  readonly hoursPerDriver: ThreePoint;
  readonly modifiers?: readonly {
    readonly code: string;
    readonly title: string;
    readonly factor: ThreePoint;
    readonly cite: Cite;
  }[];
  readonly cite: Cite;
  /** Done by the owner: its hours are shown, at no price. */
  readonly isOwn?: boolean;
}

export interface LabourTerms {
  readonly rates: LabourRates;
  readonly taxGroup: string;
  readonly causeClass: CauseClass;
}

const skillNames: Readonly<Record<Skill, string>> = {
  general: 'yard hand',
  laminator: 'laminator',
  finisher: 'finisher',
  rigger: 'rigger',
};

/** One priced line of labour for each operation that takes time. */
export function labourLines(
  operations: readonly WorkedOperation[],
  terms: LabourTerms,
): Outcome<readonly LineRequest[]> {
  const problems = operations.flatMap((operation, index) =>
    faultsOf(operation, terms, pointer('/operations', index)),
  );
  if (problems.length > 0) return refusal(...problems);
  return success(
    operations.map((operation, index) => labourLine(operation, terms, pointer('/operations', index))),
  );
}

function labourLine(
  operation: WorkedOperation,
  { rates, taxGroup, causeClass }: LabourTerms,
  at: string,
): LineRequest {
  const hours = hoursFigure(operation, at);
  const modifiers = operation.modifiers ?? [];
  const factorAt = (end: 'low' | 'high'): number =>
    [operation.hoursPerDriver, ...modifiers.map(({ factor }) => factor)].reduce((factor, points) => {
      const mean = triangularMean(points);
      return mean === 0 ? factor : (factor * points[end]) / mean;
    }, 1);
  return {
    code: `labour-${operation.code}`,
    section: 'labour',
    title: `${operation.title} (${skillNames[operation.skill]})`,
    ...(operation.phase === undefined ? {} : { stage: operation.phase }),
    partOrLabour: 'labour',
    causeClass,
    netQuantity: hours,
    unit: 'h',
    unitRate: operation.isOwn === true ? '0' : rates.perHour[operation.skill],
    ...(operation.isOwn === true ? { note: 'own work, not billed' } : {}),
    rateCite: rates.cite ?? {
      source: 'PRICE-DATA',
      note: `labour rates ${rates.code}${rates.invented ? ', invented' : ''}`,
    },
    taxGroup,
    spread: { low: factorAt('low'), high: factorAt('high') },
  };
}

/** Priced hours are means: hours overrun further than they fall short, and a sum of likely hours is seldom enough. */
function hoursFigure(operation: WorkedOperation, at: string): Figure {
  const { low, high } = operation.hoursPerDriver;
  const perDriverUnit: string = `h/${operation.driver}`;
  const meanH = fraction(triangularMean(operation.hoursPerDriver));
  const perDriver = fromCatalogue(perDriverUnit, meanH, `mean hours per ${operation.driver}`, {
    item: operation.code,
    field: 'hours',
    cite: operation.cite,
    low,
    high,
  });
  const amount = figureOf(
    operation.driverAmount,
    operation.driver,
    `amount of ${operation.driver}`,
    pointer(at, 'driverAmount'),
  );
  const factors = Object.fromEntries(
    (operation.modifiers ?? []).map((modifier) => [modifier.code, modifierFigure(modifier)]),
  );
  return productOf<string>('h', `${operation.title}, hours`, {
    hoursPerDriver: perDriver,
    driverAmount: amount,
    ...factors,
  });
}

const modifierFigure = ({
  code,
  title,
  factor,
  cite,
}: NonNullable<WorkedOperation['modifiers']>[number]): Figure =>
  fromCatalogue('1', fraction(triangularMean(factor)), title, {
    item: code,
    field: 'factor',
    cite,
    low: factor.low,
    high: factor.high,
  });

function faultsOf(
  { hoursPerDriver, driverAmount, skill }: WorkedOperation,
  { rates }: LabourTerms,
  at: string,
): readonly Problem[] {
  const amount = typeof driverAmount === 'number' ? driverAmount : driverAmount.value;
  const { low, likely, high } = hoursPerDriver;
  return [
    ...(Object.hasOwn(rates.perHour, skill)
      ? []
      : [
          problem('not-one-of', pointer(at, 'skill'), {
            value: skill,
            choices: Object.keys(rates.perHour).join(', '),
          }),
        ]),
    ...(Number.isFinite(amount) && amount >= 0
      ? []
      : [problem('out-of-range', pointer(at, 'driverAmount'), { value: amount, range: '0 or more' })]),
    ...(low >= 0 && low <= likely && likely <= high && Number.isFinite(high)
      ? []
      : [
          problem('out-of-range', pointer(at, 'hoursPerDriver'), {
            value: `${low}, ${likely}, ${high}`,
            range: 'three numbers of 0 or more in rising order',
          }),
        ]),
  ];
}

/** What the yard charges besides work, by how many of each the job takes. */
export interface YardAmounts {
  readonly shelter: 'shed' | 'tent' | 'open';
  /** Whether a heater warms the deck, day and night. */
  readonly isHeated: boolean;
  /** Whether a cloth is rigged on each visit to keep the sun off. */
  readonly isShaded: boolean;
  readonly place: 'afloat' | 'ashore-for-this' | 'ashore-anyway' | 'own-ground';
  /** On the calendar, and those on which somebody works. */
  readonly days: number | Figure;
  readonly workedDays: number | Figure;
  readonly labourH: number | Figure;
  readonly openedM2: number | Figure;
}

const perUnits = {
  'job': 'job',
  'day': 'day',
  'worked-day': 'day',
  'labour-h': 'h',
  'opened-m2': 'm2',
} as const satisfies Record<YardCharge['per'], string>;
/** Lines for the yard charges that this job attracts. */
export const yardLines = (
  amounts: YardAmounts,
  { rates, taxGroup, causeClass }: LabourTerms,
): readonly LineRequest[] =>
  rates.charges
    .filter(({ when }) => isWanted(when, amounts))
    .filter(({ where }) => isChargedAt(where, amounts.place))
    .map((charge) => ({
      code: `yard-${charge.code}`,
      section: 'yard',
      title: charge.name,
      partOrLabour: 'labour',
      causeClass,
      netQuantity: amountOf(charge.per, amounts),
      unit: perUnits[charge.per],
      unitRate: charge.price,
      rateCite: rates.cite ?? {
        source: 'PRICE-DATA',
        note: `labour rates ${rates.code}${rates.invented ? ', invented' : ''}`,
      },
      taxGroup,
    }));

function isWanted(when: YardCharge['when'], { isHeated, isShaded, shelter }: YardAmounts): boolean {
  if (when === undefined) return true;
  if (when === 'heated') return isHeated;
  return when === 'shaded' ? isShaded : when === shelter;
}

/** Haul-out and days ashore only for a boat that was hauled for this job; nothing of a yard's on ground of one's own. */
const isChargedAt = (where: YardCharge['where'], place: YardAmounts['place']): boolean =>
  where === undefined || (where === 'yard' ? place !== 'own-ground' : place === where);

function amountOf(per: YardCharge['per'], { days, workedDays, labourH, openedM2 }: YardAmounts): Figure {
  switch (per) {
    case 'job':
      return derived<string>('job', fraction(1), 'one job', {
        formula: 'arithmetic.one',
        title: 'Once per job',
        symbol: '1',
        cite: { source: 'ARITHMETIC' },
        inputs: {},
      });
    case 'day':
      return figureOf(days, 'day', 'days in the yard', '/days');
    case 'worked-day':
      return figureOf(workedDays, 'day', 'days worked', '/workedDays');
    case 'labour-h':
      return figureOf(labourH, 'h', 'hours of labour', '/labourH');
    case 'opened-m2':
      return figureOf(openedM2, 'm2', 'opened area', '/openedM2');
  }
}
