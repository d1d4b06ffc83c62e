import type { Schedule, ScheduleSearch } from '#lib/laminate';
import type { Outcome } from '#lib/kernel';
import { restorationOf, type PlateSource, type RepairJudge, type Restoration } from '#lib/panel';
import type { Job } from '../job/job.js';
import { asBuilt, bayOf, craftOf, repairedWith } from './panel-values.js';
import type { OldSkins } from './skins.js';

/** A schedule that restores the skin, and what the whole panel comes to with it. */
export interface TriedSchedule {
  readonly schedule: Schedule;
  /** Absent where the panel cannot be checked, the panel stage says why, or where one before leaves no more short. */
  readonly panel?: Restoration;
}

export interface ScheduleChoice {
  readonly chosen: TriedSchedule;
  /** Cheapest first, the chosen one among them. */
  readonly tried: readonly TriedSchedule[];
}

export interface PanelAround {
  readonly skins: OldSkins;
  readonly coreMm: number | 'old';
  readonly plates: PlateSource;
  /** Of the schedules that restore the skin, how many are tried on the panel before the best of them is taken. */
  readonly mostTried: number;
}

/** The few best schedules, and where more come from. */
export interface FoundSchedules {
  readonly search: ScheduleSearch;
  readonly more: (keep: number) => Outcome<ScheduleSearch>;
}

/**
 * Of the schedules that restore the skin, the cheapest that restores every measure of the panel too: a skin stiffer than
 * the old draws more load to itself, and can leave core or inner skin with less than they had. Where none does, the cheapest of those that leave the fewest short.
 */
export function chooseSchedule(
  job: Job,
  around: PanelAround,
  { search: { best: few }, more }: FoundSchedules,
): ScheduleChoice {
  const judge = judgeOf(job, around);
  if (judge === undefined)
    return { chosen: { schedule: few[0] }, tried: few.map((schedule) => ({ schedule })) };
  const choice = firstRestored(few, judge);
  if (isRestored(choice.chosen) || around.mostTried <= few.length) return choice;
  const many = more(around.mostTried);
  return many.ok ? goneOn(choice, many.value.best.slice(few.length), judge) : choice;
}

interface Judge {
  readonly judge: (schedule: Schedule) => Restoration;
  readonly fewestShort: (schedule: Schedule) => number;
}

/** What the whole panel comes to with a schedule, or with the old skin bedded again; absent where it cannot be checked. */
export const restorationWith = (
  job: Job,
  { skins, coreMm, plates }: PanelAround,
  schedule: Schedule | undefined,
): Restoration | undefined =>
  panelJudgeOf(job, { skins, plates })?.judge(repairedWith(job, { skins, coreMm, schedule }));

function judgeOf(job: Job, { skins, coreMm, plates }: PanelAround): Judge | undefined {
  const found = panelJudgeOf(job, { skins, plates });
  if (found === undefined) return undefined;
  const repaired = (schedule: Schedule) => repairedWith(job, { skins, coreMm, schedule });
  return {
    judge: (schedule) => found.judge(repaired(schedule)),
    fewestShort: (schedule) => found.fewestShort(repaired(schedule)),
  };
}

function panelJudgeOf(
  job: Job,
  { skins, plates }: Pick<PanelAround, 'skins' | 'plates'>,
): RepairJudge | undefined {
  const [lengthXMm, widthYMm] = bayOf(job);
  const craft = craftOf(job);
  const outcome = restorationOf(
    {
      panel: { lengthXMm, widthYMm, edges: job.answers.panel.edges.value },
      asBuilt: asBuilt(job, skins),
      ...(craft === undefined ? {} : { craft }),
    },
    plates,
  );
  return outcome.ok ? outcome.value : undefined;
}

/** Up to the first that restores the panel: those after it are dearer. Each is judged in full, because they are shown. */
function firstRestored([first, ...others]: readonly Schedule[], { judge }: Judge): ScheduleChoice {
  let choice = choiceOf({ schedule: first, panel: judge(first) });
  for (const schedule of others) {
    if (isRestored(choice.chosen)) return choice;
    choice = withNext(choice, { schedule, panel: judge(schedule) });
  }
  return choice;
}

/** A schedule that leaves as many short by its section alone cannot be chosen, and its plate is not worked out. */
function goneOn(
  start: ScheduleChoice,
  more: readonly Schedule[],
  { judge, fewestShort }: Judge,
): ScheduleChoice {
  let choice = start;
  for (const schedule of more) {
    if (isRestored(choice.chosen)) return choice;
    const mayBeBetter = fewestShort(schedule) < countShort(choice.chosen);
    choice = withNext(choice, mayBeBetter ? { schedule, panel: judge(schedule) } : { schedule });
  }
  return choice;
}

const choiceOf = (only: TriedSchedule): ScheduleChoice => ({ chosen: only, tried: [only] });

const withNext = ({ chosen, tried }: ScheduleChoice, next: TriedSchedule): ScheduleChoice => ({
  chosen: countShort(next) < countShort(chosen) ? next : chosen,
  tried: [...tried, next],
});

const isRestored = (one: TriedSchedule): boolean => countShort(one) === 0;

/** One whose panel was not worked out is not fewer short than the best before it. */
const countShort = ({ panel }: TriedSchedule): number => panel?.shortfalls.length ?? Infinity;
