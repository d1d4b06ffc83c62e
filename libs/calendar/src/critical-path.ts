import { problem, refusal, success, type Outcome, type Problem } from '#lib/kernel';
import { repeatFaults } from '#lib/asking';

/** One activity of a network: how long it takes, and which must be finished before. */
export interface Activity {
  readonly code: string;
  readonly duration: number;
  readonly after: readonly string[];
}

export interface ActivityTimes {
  readonly code: string;
  readonly earliestStart: number;
  readonly earliestFinish: number;
  readonly latestStart: number;
  readonly latestFinish: number;
  readonly slack: number;
  readonly isCritical: boolean;
}

export interface CriticalPath {
  readonly length: number;
  readonly activities: readonly ActivityTimes[];
  /** Activities without slack, in order of start. */
  readonly critical: readonly string[];
}

/**
 * Earliest and latest times of a precedence network, finish to start, without limits of crew or clock.
 *
 * Source: [KELLEY-WALKER-1959]
 * Worked: test/reference/cases/calendar-network.ts
 */
export function criticalPath(activities: readonly Activity[]): Outcome<CriticalPath> {
  const problems = networkFaults(activities, '');
  if (problems.length > 0) return refusal(...problems);
  const order = inOrder(activities);
  const finish = new Map<string, number>();
  for (const { code, duration, after } of order)
    finish.set(
      code,
      after.reduce((latest, before) => Math.max(latest, finish.get(before) ?? 0), 0) + duration,
    );
  const length = Math.max(0, ...finish.values());
  return success(timed(order, finish, length));
}

/** Slack below this share of the length is rounding. */
const NO_SLACK = 1e-10;

function timed(
  order: readonly Activity[],
  finish: ReadonlyMap<string, number>,
  length: number,
): CriticalPath {
  const latest = latestFinishes(order, length);
  const times = order.map(({ code, duration }): ActivityTimes => {
    const [earliestFinish, latestFinish] = [finish.get(code) ?? 0, latest.get(code) ?? length];
    const slack = latestFinish - earliestFinish;
    return {
      code,
      earliestStart: earliestFinish - duration,
      earliestFinish,
      latestStart: latestFinish - duration,
      latestFinish,
      slack,
      isCritical: slack <= NO_SLACK * Math.max(1, length),
    };
  });
  return {
    length,
    activities: times,
    critical: times.filter(({ isCritical }) => isCritical).map(({ code }) => code),
  };
}

function latestFinishes(order: readonly Activity[], length: number): ReadonlyMap<string, number> {
  const latest = new Map(order.map(({ code }) => [code, length]));
  for (const { code, duration, after } of [...order].reverse()) {
    const start = (latest.get(code) ?? length) - duration;
    for (const before of after) latest.set(before, Math.min(latest.get(before) ?? length, start));
  }
  return latest;
}

/** Predecessors before successors; otherwise as listed. The network has no circle. */
export function inOrder<T extends { readonly code: string; readonly after: readonly string[] }>(
  activities: readonly T[],
): readonly T[] {
  const byCode = new Map(activities.map((activity) => [activity.code, activity]));
  const placed = new Set<string>();
  const order: T[] = [];
  const place = (activity: T): void => {
    if (placed.has(activity.code)) return;
    placed.add(activity.code);
    for (const before of activity.after) {
      const found = byCode.get(before);
      if (found !== undefined) place(found);
    }
    order.push(activity);
  };
  activities.forEach(place);
  return order;
}

/** Codes used twice, predecessors that do not exist, and circles. */
export function networkFaults(
  activities: readonly { readonly code: string; readonly after: readonly string[] }[],
  at: string,
): readonly Problem[] {
  const codes = activities.map(({ code }) => code);
  const unknown = activities.flatMap(({ after }, index) =>
    after.flatMap((before, place) =>
      codes.includes(before)
        ? []
        : [
            problem('unknown-code', `${at}/${index}/after/${place}`, {
              value: before,
              kind: 'operation of this network',
              known: codes.slice(0, 60).join(', '),
            }),
          ],
    ),
  );
  const repeated = repeatFaults(at, 'code', codes);
  if (unknown.length + repeated.length > 0) return [...repeated, ...unknown];
  const circle = circleIn(activities);
  if (circle === undefined) return [];
  return [
    problem('network-cycle', `${at}/${codes.indexOf(circle[0])}/after`, { circle: circle.join(' → ') }),
  ];
}

/** The first circle of precedences, each code once and the first again at the end. */
export function circleIn(
  activities: readonly { readonly code: string; readonly after: readonly string[] }[],
): readonly string[] | undefined {
  const byCode = new Map(activities.map((activity) => [activity.code, activity.after]));
  const done = new Set<string>();
  const search = (code: string, path: readonly string[]): readonly string[] | undefined => {
    if (path.includes(code)) return [...path.slice(path.indexOf(code)), code];
    if (done.has(code)) return undefined;
    for (const before of byCode.get(code) ?? []) {
      const found = search(before, [...path, code]);
      if (found !== undefined) return found;
    }
    done.add(code);
    return undefined;
  };
  for (const { code } of activities) {
    const found = search(code, []);
    if (found !== undefined) return found;
  }
  return undefined;
}

/** Mean of a three-point time, (a + 4m + b)/6. Source: [MALCOLM-1959]. */
export const threePointMean = (low: number, likely: number, high: number): number =>
  (low + 4 * likely + high) / 6;
/** Its variance, ((b - a)/6)2. Source: [MALCOLM-1959]. */
export const threePointVariance = (low: number, high: number): number => ((high - low) / 6) ** 2;
