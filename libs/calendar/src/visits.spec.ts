import { describe, expect, test } from '@jest/globals';
import { findMaterial, shippedCatalogue } from '#lib/catalogue';
import { randomStream } from '#lib/kernel';
import { workTimes } from './calendar.js';
import type { CalendarRequest } from './calendar-request.js';
import { settingFor } from './course.js';
import type { NetworkTask, TaskWait } from './network.js';
import { ordersOf } from './orders.js';
import { slotClock } from './slots.js';
import { fewestVisits } from './visits.js';
import { walkTables } from './walk-steps.js';
import { walk, walkPlan } from './walk.js';

const resin = findMaterial(shippedCatalogue, 'resin', 'resin-epoxy-5to1')!;
const request: CalendarRequest = {
  startDate: '2026-05-04',
  resin,
  hardener: 'medium',
  crew: { people: 1 },
  drivers: {},
  flags: {
    skin: 'relay',
    access: 'from-above',
    condition: 'wet-rotten',
    press: 'weights',
    shelter: 'shed',
    below: 'open',
    skill: 'professional',
    props: 'not-needed',
    finish: 'none',
    nonskid: 'no',
    berth: 'ashore',
    panel: 'flat',
  },
};
const clock = slotClock(request, workTimes(request), 400);
const setting = settingFor(request, resin.hardeners[0], { clock, deckC: 20 });
const crew = { people: 1, workShare: 1 };

/** A step of one hand, with hours, what it waits for and how long its followers wait for it. */
const step = (code: string, hoursH: number, after: readonly string[], waitH = 0): NetworkTask => ({
  code,
  operation: code,
  title: code,
  phase: 'bond',
  skill: 'laminator',
  gate: 'none',
  hours: { low: hoursH, likely: hoursH, high: hoursH },
  meanH: hoursH,
  mostHands: 1,
  wait: waitOf(waitH),
  isHoldPoint: false,
  after,
  wetOn: [],
  tackyOn: [],
});
const waitOf = (waitH: number): TaskWait =>
  waitH === 0 ? { kind: 'none' } : { kind: 'elapsed', hours: { low: waitH, likely: waitH, high: waitH } };
const daysOf = (tasks: readonly NetworkTask[], hoursFactor = 1) => {
  const plan = walkPlan(tasks, setting, crew);
  const draw = {
    hours: Float64Array.from(tasks, ({ meanH }) => meanH * hoursFactor),
    waits: Float64Array.from(tasks, ({ wait }) => (wait.kind === 'elapsed' ? wait.hours.likely : 0)),
    lostDays: new Float64Array(tasks.length),
  };
  const tables = walkTables(plan);
  const { finish } = walk(plan, draw, tables);
  return { visits: fewestVisits(plan, draw, tables), days: finish / 48 };
};

describe('days on which somebody must come', () => {
  // By hand: the day of 5.6 hours, less its set-up, holds five hours of work.
  test('what nobody waits for is done on a day on which somebody is there anyway', () => {
    const bed = step('bed', 1, [], 20);
    expect(daysOf([bed, step('close', 1, ['bed'])]).visits).toBe(2);
    expect(daysOf([bed, step('paint-locker', 1, []), step('close', 1, ['bed'])]).visits).toBe(2);
    expect(daysOf([step('bed', 1, [], 90), step('close', 1, ['bed'])]).visits).toBe(2);
  });

  test('a day that is full makes another', () => {
    expect(daysOf([step('sand', 4.5, [])]).visits).toBe(1);
    expect(daysOf([step('sand', 9, [])]).visits).toBe(2);
  });

  test('who comes while something still cures comes when all of it has cured', () => {
    const both = [
      step('bed', 1, [], 20),
      step('pot', 1, [], 44),
      step('close', 1, ['bed']),
      step('drill', 1, ['pot']),
    ];
    expect(daysOf(both).visits).toBe(2);
  });
});

describe('more work', () => {
  const random = randomStream(11);
  const jobs = Array.from({ length: 40 }, () =>
    Array.from({ length: 14 }, (_, place) =>
      step(
        `s${place}`,
        0.1 + 3 * random() ** 2,
        place === 0 ? [] : [`s${Math.floor(random() * place)}`],
        random() < 0.4 ? 4 + 20 * random() : 0,
      ),
    ),
  );
  const sizes = Array.from({ length: 12 }, (_, place) => 0.5 * 1.12 ** place);

  test('takes no fewer days and no fewer visits, in invented networks', () => {
    for (const tasks of jobs) {
      const found = sizes.map((size) => daysOf(tasks, size));
      found.slice(1).forEach(({ days, visits }, place) => {
        expect(days).toBeGreaterThanOrEqual(found[place].days - 1e-6);
        expect(visits).toBeGreaterThanOrEqual(found[place].visits);
      });
    }
  });

  test('changes no order in which it may be done', () => {
    const [tasks] = jobs;
    const larger = tasks.map((task) => ({ ...task, meanH: 7 * task.meanH }));
    expect(ordersOf(walkPlan(larger, setting, crew))).toEqual(ordersOf(walkPlan(tasks, setting, crew)));
  });
});
