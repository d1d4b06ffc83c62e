import { laidOver, scaled, triangularMean, type ThreePoint } from '#lib/kernel';
import type { Hardener, Skill } from '#lib/catalogue';
import { saidOr } from '#lib/asking';
import { isByVisit, labourFor, operationsFor } from '#lib/work';
import { cureFactor, dryingDays, type Drying } from './waits.js';
import { operations } from '#lib/work';
import type { DriverAmounts, GateKind, Operation, Phase, Wait } from '#lib/work';
import {
  calendarQuestions,
  cyclesQuestions,
  type CalendarRequest,
  type CalendarScenario,
  type CustomOperation,
  type PlannedTask,
} from './calendar-request.js';
import { inOrder } from './critical-path.js';

/** How long successors wait: by the clock, or by the age of the resin. */
export type TaskWait =
  | { readonly kind: 'none' }
  | { readonly kind: 'drying' | 'hold' | 'elapsed'; readonly hours: ThreePoint }
  | { readonly kind: 'cure'; readonly ageH: ThreePoint };

export interface NetworkTask {
  readonly code: string;
  readonly operation: string;
  readonly title: string;
  readonly phase: Phase;
  readonly skill: Skill;
  readonly gate: GateKind;
  /** Man-hours. */
  readonly hours: ThreePoint;
  /** What it takes on average. */
  readonly meanH: number;
  readonly mostHands: number;
  readonly wait: TaskWait;
  readonly isHoldPoint: boolean;
  readonly after: readonly string[];
  /** Of these, the ones it is laid on while they are wet. */
  readonly wetOn: readonly string[];
  /** Of these, the ones it may be laid on while they are tacky. */
  readonly tackyOn: readonly string[];
  /** Ages between which the next layer bonds to it without sanding, h at 25 degC; of what cures. */
  readonly tacky?: TackyWindow;
}

/** From gel until the moment after which it must be sanded. */
export interface TackyWindow {
  readonly opensAgeH: number;
  readonly shutsAgeH: number;
}

type Hours = ThreePoint & { readonly meanH: number };
const nothing: Hours = { low: 0, likely: 0, high: 0, meanH: 0 };

/** The tasks of this job: operations that belong to it, each cycle on its own, and what the caller adds. */
export function networkFor(
  request: CalendarRequest,
  hardener: Hardener,
  deckC: number,
): readonly NetworkTask[] {
  const chosen = chosenFor(request);
  const hoursOf = hoursFor(request);
  const custom = request.customOperations ?? [];
  const standIns = standInsAmong(new Set(chosen.map(({ code }) => code)));
  const tasks = chosen.flatMap((operation) =>
    cyclesOf(operation, {
      request,
      hardener,
      hours: hoursOf.get(operation.code) ?? nothing,
      deckC,
      after: afterOf(operation, standIns, custom),
    }),
  );
  return inOrder([...tasks, ...custom.map((added) => customTask(added, standIns, tasks))]);
}

type Sized = Pick<CalendarRequest, 'drivers' | 'flags'>;

const chosenFor = ({ drivers, flags }: Sized): readonly Operation[] =>
  operationsFor(drivers, flags).filter(({ driver }) => !isByVisit(driver));

function hoursFor({ drivers, flags }: Sized): ReadonlyMap<string, Hours> {
  const labour = labourFor(drivers, flags);
  return new Map(
    (labour.ok ? labour.value : []).map(({ code, hours: { low, likely, high }, meanH }) => [
      code,
      { low, likely, high, meanH },
    ]),
  );
}

/** A network at some size, and that of the same cycles at the size of the request, which it may differ from in its hours alone. */
export interface SizedNetwork {
  readonly tasks: readonly NetworkTask[];
  readonly base: readonly NetworkTask[];
}

type Setting = Pick<CycleContext, 'request' | 'hardener' | 'deckC'>;

/** The networks of the same job at other sizes and with other numbers of fairing cycles, each made once. */
export function networksBeside(
  tasks: readonly NetworkTask[],
  context: Setting,
): (scenario: Pick<CalendarScenario, 'drivers' | 'fairingCycles'>) => SizedNetwork {
  const { request, hardener, deckC } = context;
  const withCycles = (fair: number): CalendarRequest => ({ ...request, cycles: { ...request.cycles, fair } });
  const bases = new Map([[saidOr(cyclesQuestions.fair, request.cycles?.fair), tasks]]);
  const known = new Map<number, Map<DriverAmounts, SizedNetwork>>();
  return ({ drivers, fairingCycles }) => {
    const base = bases.get(fairingCycles) ?? networkFor(withCycles(fairingCycles), hardener, deckC);
    bases.set(fairingCycles, base);
    const sizes = known.get(fairingCycles) ?? new Map<DriverAmounts, SizedNetwork>();
    known.set(fairingCycles, sizes);
    const found = sizes.get(drivers) ?? {
      base,
      tasks: networkAt(drivers, base, { ...context, request: withCycles(fairingCycles) }),
    };
    sizes.set(drivers, found);
    return found;
  };
}

/** It is made anew only where other operations belong to it there. */
function networkAt(
  drivers: DriverAmounts,
  tasks: readonly NetworkTask[],
  { request, hardener, deckC }: Setting,
): readonly NetworkTask[] {
  if (drivers === request.drivers) return tasks;
  const there = { drivers, flags: request.flags };
  const [own, others] = [chosenFor(request), chosenFor(there)];
  const isAlike = own.length === others.length && own.every((operation, at) => operation === others[at]);
  return isAlike ? resized(tasks, hoursFor(there)) : networkFor({ ...request, drivers }, hardener, deckC);
}

function resized(tasks: readonly NetworkTask[], hoursOf: ReadonlyMap<string, Hours>): readonly NetworkTask[] {
  const counts = new Map<string, number>();
  for (const { operation } of tasks) counts.set(operation, (counts.get(operation) ?? 0) + 1);
  return tasks.map((task) => {
    const hours = hoursOf.get(task.operation);
    return hours === undefined ? task : laidOver(task, shareOf(hours, counts.get(task.operation) ?? 1));
  });
}

const shareOf = (hours: Hours, count: number): Pick<NetworkTask, 'hours' | 'meanH'> => ({
  hours: { low: hours.low / count, likely: hours.likely / count, high: hours.high / count },
  meanH: hours.meanH / count,
});

/** Predecessors in this job: one that does not belong to it hands its own predecessors on. */
function afterOf(
  operation: Operation,
  standIns: StandIns,
  custom: readonly CustomOperation[],
): readonly string[] {
  const added = custom.filter(({ before }) => before?.includes(operation.code)).map(({ code }) => code);
  return [...new Set([...operation.after.flatMap(standIns), ...added])];
}

const byCode = new Map(operations.map((operation) => [operation.code, operation]));

/** Of an operation, itself or those of the job that stand in for it. */
type StandIns = (code: string) => readonly string[];

/** Each is looked up once: an operation is reached by very many ways through those that are missing. */
function standInsAmong(present: ReadonlySet<string>): StandIns {
  const known = new Map<string, readonly string[]>();
  const standIns: StandIns = (code) => {
    if (present.has(code)) return [code];
    const found = known.get(code) ?? [...new Set(byCode.get(code)?.after.flatMap(standIns) ?? [])];
    known.set(code, found);
    return found;
  };
  return standIns;
}

interface CycleContext {
  readonly request: CalendarRequest;
  readonly hardener: Hardener;
  readonly hours: Hours;
  readonly deckC: number;
  readonly after: readonly string[];
}

type Cycle = keyof typeof cyclesQuestions;

/** How often each is done; the first session of a new skin is its first two plies, the others lay the rest. */
const repeated: Readonly<Record<string, (of: (cycle: Cycle) => number) => number>> = {
  'bed-core': (of) => of('bedding'),
  'close-seam': (of) => of('laminating'),
  'laminate-extra-ply': (of) => Math.max(1, of('laminating') - 1),
  'fair': (of) => of('fair'),
  'prime': (of) => of('prime'),
  'topcoat': (of) => of('topcoat'),
  'gelcoat': (of) => of('topcoat'),
};

/** A cycle for each coat, one after the other; the last carries the operation's code, so that successors find it. */
function cyclesOf(
  operation: Operation,
  { request, hardener, hours, deckC, after }: CycleContext,
): readonly NetworkTask[] {
  const count =
    repeated[operation.code]?.((cycle) => saidOr(cyclesQuestions[cycle], request.cycles?.[cycle])) ?? 1;
  const codeOf = (cycle: number): string => (cycle === count ? operation.code : `${operation.code}-${cycle}`);
  const share = shareOf(hours, count);
  return Array.from({ length: count }, (_, index): NetworkTask => ({
    code: codeOf(index + 1),
    operation: operation.code,
    title: count === 1 ? operation.title : `${operation.title} (${index + 1} of ${count})`,
    phase: operation.phase,
    skill: operation.skill,
    gate: operation.gate,
    hours: share.hours,
    meanH: share.meanH,
    mostHands: handsFor(operation),
    wait: waitOf(index + 1 < count ? (operation.waitsBetween ?? operation.waits) : operation.waits, {
      request,
      hardener,
      deckC,
    }),
    isHoldPoint: operation.isHoldPoint === true,
    after: index === 0 ? after : [codeOf(index)],
    wetOn: operation.wetOn ?? [],
    tackyOn: operation.tackyOn ?? [],
    ...(operation.waits.kind === 'cure'
      ? { tacky: { opensAgeH: hardener.gelH.value, shutsAgeH: hardener.recoatShutsH.value } }
      : {}),
  }));
}

/** How many can work on it at once without standing in each other's way; from memory. */
const handsFor = ({ driver }: Operation): number =>
  driver === 'job' || driver === 'insert' || driver === 'plate' ? 2 : 4;

function waitOf(
  waits: Wait,
  { request, hardener, deckC }: Pick<CycleContext, 'request' | 'hardener' | 'deckC'>,
): TaskWait {
  switch (waits.kind) {
    case 'none':
      return { kind: 'none' };
    case 'drying':
      return {
        kind: 'drying',
        hours: scaled(waits.daysThreePoint ?? dryingDays(dryingOf(request, deckC)), 24),
      };
    case 'hold':
      return request.isExtentAgreed === true
        ? { kind: 'none' }
        : { kind: 'hold', hours: waits.hoursThreePoint };
    case 'elapsed':
      return {
        kind: 'elapsed',
        hours:
          waits.isCure === true ? scaled(waits.hoursThreePoint, cureFactor(deckC)) : waits.hoursThreePoint,
      };
    case 'cure':
      return { kind: 'cure', ageH: ageOf(waits.until, hardener) };
  }
}

const dryingOf = (
  {
    flags: { shelter },
    dryingCore,
    coreMoisturePercent,
    edgeMoisturePercent = coreMoisturePercent,
  }: CalendarRequest,
  deckC: number,
): Drying => ({
  shelter,
  core: saidOr(calendarQuestions.dryingCore, dryingCore),
  deckC,
  ...(edgeMoisturePercent === undefined ? {} : { moisturePercent: edgeMoisturePercent }),
});

function ageOf(
  until: 'gel' | 'release' | 'sandable' | 'full',
  { gelH, releaseH, sandableH, fullCureH }: Hardener,
): ThreePoint {
  const {
    value,
    low = value,
    high = value,
  } = { gel: gelH, release: releaseH, sandable: sandableH, full: fullCureH }[until];
  return { low, likely: value, high };
}

function customTask(added: CustomOperation, standIns: StandIns, tasks: readonly NetworkTask[]): NetworkTask {
  const last = tasks.map(({ code }) => code);
  return {
    code: added.code,
    operation: added.code,
    title: added.title,
    phase: 'prepare',
    skill: 'general',
    gate: added.gate ?? 'none',
    hours: added.hours,
    meanH: triangularMean(added.hours),
    wetOn: [],
    tackyOn: [],
    mostHands: 2,
    wait: added.waitH === undefined ? { kind: 'none' } : { kind: 'elapsed', hours: added.waitH },
    isHoldPoint: added.isHoldPoint === true,
    after: [
      ...new Set(
        added.after.flatMap((code) => (last.includes(code) || !byCode.has(code) ? [code] : standIns(code))),
      ),
    ],
  };
}

export const waitKindOf = ({ wait }: NetworkTask): PlannedTask['waitKind'] => wait.kind;
