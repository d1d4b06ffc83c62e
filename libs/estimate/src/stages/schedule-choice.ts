import { searchSchedules, type Schedule, type ScheduleRequest, type ScheduleSearch } from '#lib/laminate';
import { restorationOf, type Restoration } from '#lib/panel';
import type { Job } from '../job/job.js';
import { asBuilt, bayOf, craftOf, repairedWith } from './panel-values.js';
import type { OldSkins } from './skins.js';

/** A schedule that restores the skin, and what the whole panel comes to with it. */
export interface TriedSchedule {
  readonly schedule: Schedule;
  /** Absent where the panel cannot be checked; the panel stage says why. */
  readonly panel?: Restoration;
}

export interface ScheduleChoice {
  readonly chosen: TriedSchedule;
  /** Cheapest first, the chosen one among them. */
  readonly tried: readonly TriedSchedule[];
}

export interface PanelAround {
  readonly skins: OldSkins;
  readonly coreMm: number;
}

/** Every schedule tried costs a panel check; prices have risen by about a fifth when so many have been passed over. */
const MOST_TRIED = 40;

/**
 * Of the schedules that restore the skin, the cheapest that restores every measure of the panel too: a skin stiffer than
 * the old draws more load to itself, and can leave core or inner skin with less than they had. Where none does, the cheapest of those that leave the fewest short.
 */
export function chooseSchedule(
  job: Job,
  around: PanelAround,
  request: ScheduleRequest,
  found: ScheduleSearch,
): ScheduleChoice {
  const judge = judgeOf(job, around);
  const few = tried(found.best, judge);
  const choice = choiceFrom(few);
  if (judge === undefined || isRestored(choice.chosen)) return choice;
  const more = searchSchedules({ ...request, keep: MOST_TRIED });
  return more.ok ? choiceFrom([...few, ...tried(more.value.best.slice(few.length), judge)]) : choice;
}

type Judge = (schedule: Schedule) => Restoration;

function judgeOf(job: Job, { skins, coreMm }: PanelAround): Judge | undefined {
  const [lengthXMm, widthYMm] = bayOf(job);
  const craft = craftOf(job);
  const outcome = restorationOf({
    panel: { lengthXMm, widthYMm, edges: job.answers.panel.edges.value },
    asBuilt: asBuilt(job, skins),
    ...(craft === undefined ? {} : { craft }),
  });
  return outcome.ok ? (schedule) => outcome.value(repairedWith(job, { skins, coreMm, schedule })) : undefined;
}

/** Up to the first that restores the panel: those after it are dearer. */
function tried(schedules: readonly Schedule[], judge: Judge | undefined): readonly TriedSchedule[] {
  const all: TriedSchedule[] = [];
  for (const schedule of schedules) {
    const one = judge === undefined ? { schedule } : { schedule, panel: judge(schedule) };
    all.push(one);
    if (isRestored(one)) break;
  }
  return all;
}

const isRestored = (one: TriedSchedule): boolean => one.panel !== undefined && countShort(one) === 0;

function choiceFrom([first, ...others]: readonly TriedSchedule[]): ScheduleChoice {
  const chosen = others.reduce((best, one) => (countShort(one) < countShort(best) ? one : best), first);
  return { chosen, tried: [first, ...others] };
}

const countShort = ({ panel }: TriedSchedule): number => panel?.shortfalls.length ?? 0;
