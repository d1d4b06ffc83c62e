import {
  problem,
  refusal,
  success,
  triangularMean,
  type Outcome,
  type Problem,
  type ThreePoint,
  laidOver,
} from '#lib/kernel';
import type { Skill } from '#lib/catalogue';
import type { Cite } from '#lib/provenance';
import { hoursAtSize } from './job-size.js';
import { operations } from './operations/all.js';
import { threePoint } from './operations/cites.js';
import { modifiersFor, type Modifier } from './modifiers.js';
import {
  appliesTo,
  type AppliesWhen,
  drivers,
  type Driver,
  type DriverAmounts,
  type Operation,
  type OperationFlags,
  type Phase,
} from './operation.js';

/** Hours of one operation on this job, and how they came about. */
export interface OperationHours {
  readonly code: string;
  readonly title: string;
  readonly phase: Phase;
  readonly skill: Skill;
  readonly driver: Driver;
  readonly driverAmount: number;
  readonly hoursPerDriver: ThreePoint;
  readonly modifiers: readonly {
    readonly code: string;
    readonly title: string;
    readonly factor: ThreePoint;
    readonly cite: Cite;
  }[];
  /** Least, most likely and most. */
  readonly hours: ThreePoint;
  /** What the job takes on average: hours overrun further than they fall short, so that it lies above the likely. */
  readonly meanH: number;
  readonly cite: Cite;
}

/** The operations that belong to a job with these drivers and flags, in trade order. */
export function operationsFor(amounts: DriverAmounts, flags: OperationFlags): readonly Operation[] {
  const all = withStates(amounts, flags);
  return operationsOf(flags).filter(({ driver }) => amountOf(all, driver) > 0);
}

const ofFlags = new WeakMap<OperationFlags, readonly Operation[]>();

/** Whatever the amounts: one job asks for the same flags at every extent. */
function operationsOf(flags: OperationFlags): readonly Operation[] {
  const known =
    ofFlags.get(flags) ??
    operations
      .filter(({ appliesWhen }) => isOfSuchDeck(appliesWhen, flags) && appliesTo(appliesWhen, flags))
      .map((operation) => onItsFace(operation, flags));
  ofFlags.set(flags, known);
  return known;
}

/** From below the other skin stays: what is ground, wetted and laid has other words there, and hangs. */
const onItsFace = (operation: Operation, { access }: OperationFlags): Operation =>
  access === 'from-below' && operation.fromBelow !== undefined
    ? { ...operation, ...operation.fromBelow }
    : operation;

/** An operation that names no skin belongs to a deck that is opened or injected: a closed one has its own. */
const isOfSuchDeck = (appliesWhen: AppliesWhen, { skin }: OperationFlags): boolean =>
  appliesWhen.skin !== undefined || skin !== 'closed';

/** Where the state of skin and core is not told apart, the whole opening is in the state of the flag. */
function withStates(amounts: DriverAmounts, { condition, skin }: OperationFlags): DriverAmounts {
  const opened = skin === 'inject' || skin === 'closed' ? 0 : (amounts['opened-m2'] ?? 0);
  const places = { 'injected-place': amounts['injected-place'] ?? (skin === 'inject' ? 1 : 0) };
  const isTold = stateDrivers.some((driver) => amounts[driver] !== undefined);
  if (isTold) return laidOver(amounts, places);
  return laidOver(laidOver(amounts, places), {
    [condition === 'wet-bonded' ? 'held-skin-m2' : 'loose-skin-m2']: opened,
    [condition === 'wet-rotten' ? 'loose-core-m2' : 'held-core-m2']: opened,
  });
}

const stateDrivers = ['loose-skin-m2', 'held-skin-m2', 'loose-core-m2', 'held-core-m2'] as const;

/** Three-point hours per operation that has any: unit rate times driver times every modifier that touches it. */
export function labourFor(amounts: DriverAmounts, flags: OperationFlags): Outcome<readonly OperationHours[]> {
  const problems = driverFaults(amounts);
  if (problems.length > 0) return refusal(...problems);
  const all = withStates(amounts, flags);
  const worked = operationsFor(all, flags).filter(({ hours }) => hours.high > 0);
  return success(worked.map((operation) => hoursOf(operation, all, flags)));
}

function hoursOf(operation: Operation, amounts: DriverAmounts, flags: OperationFlags): OperationHours {
  const { code, title, phase, skill, driver, bySize, cite } = operation;
  const driverAmount = amountOf(amounts, driver);
  const hours = bySize === undefined ? operation.hours : hoursAtSize(bySize, amounts[bySize.by] ?? 0);
  const applied = modifiersFor(operation, flags);
  return {
    code,
    title,
    phase,
    skill,
    driver,
    driverAmount,
    hoursPerDriver: hours,
    cite,
    modifiers: applied.map(({ code: name, title: words, factor, cite: source }) => ({
      code: name,
      title: words,
      factor,
      cite: source,
    })),
    hours: modified(hours, driverAmount, applied),
    meanH: applied.reduce(
      (product, { factor }) => product * triangularMean(factor),
      triangularMean(hours) * driverAmount,
    ),
  };
}

function modified(rate: ThreePoint, amount: number, applied: readonly Modifier[]): ThreePoint {
  const factor = (pick: (point: ThreePoint) => number): number =>
    applied.reduce((product, modifier) => product * pick(modifier.factor), amount);
  return threePoint(
    rate.low * factor(({ low }) => low),
    rate.likely * factor(({ likely }) => likely),
    rate.high * factor(({ high }) => high),
  );
}

/**
 * Where nothing is said of a lip, the whole cut has one; where nothing of an old finish, all that is painted; and where the
 * areas of an opening are not told apart, core comes out of all of it and goes back into all of it.
 */
const standIns: Readonly<Partial<Record<Driver, Driver>>> = {
  'lip-m': 'cut-m',
  'old-finish-m2': 'finish-m2',
  'bared-m2': 'opened-m2',
  'dried-m2': 'bared-m2',
  'cored-m2': 'bared-m2',
};

const amountOf = (amounts: DriverAmounts, driver: Driver): number => {
  const standIn = standIns[driver];
  return amounts[driver] ?? (driver === 'job' ? 1 : standIn === undefined ? 0 : amountOf(amounts, standIn));
};

const known: ReadonlySet<string> = new Set(drivers);

const driverFaults = (amounts: DriverAmounts): readonly Problem[] =>
  Object.entries(amounts).flatMap(([name, amount]) => {
    const at = `/${name}`;
    if (!known.has(name)) return [problem('not-one-of', at, { value: name, choices: drivers.join(', ') })];
    if (!Number.isFinite(amount)) return [problem('not-a-number', at, { value: String(amount), hint: '' })];
    return amount < 0 ? [problem('out-of-range', at, { value: amount, range: '0 or more' })] : [];
  });
