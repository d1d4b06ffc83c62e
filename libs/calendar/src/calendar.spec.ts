import { describe, expect, test } from '@jest/globals';
import ICAL from 'ical.js';
import { findMaterial, shippedCatalogue } from '#lib/catalogue';
import {
  calendarText,
  criticalPath,
  planCalendar,
  type CalendarPlan,
  type CalendarRequest,
} from './index.js';
import type { ForecastHour } from '#lib/cure';

const resin = findMaterial(shippedCatalogue, 'resin', 'resin-epoxy-5to1')!;
const job: CalendarRequest = {
  startDate: '2026-05-04',
  timeZone: 'Europe/Lisbon',
  resin,
  hardener: 'medium',
  crew: { people: 2 },
  deckTemperatureC: 18,
  runs: 200,
  drivers: {
    'opened-m2': 1.2,
    'cut-m': 4.4,
    'taper-m': 4.4,
    'laminate-m2': 1.5,
    'faired-m2-cycle': 6,
    'primed-m2-coat': 4,
    'topcoat-m2-coat': 4,
    'finish-m2': 2,
    'nonskid-m2': 2,
    'hole': 8,
    'fitting-off-h': 1,
    'fitting-on-h': 1.5,
  },
  flags: {
    skin: 'relay',
    access: 'from-above',
    condition: 'wet-rotten',
    press: 'weights',
    shelter: 'tent',
    below: 'open',
    skill: 'professional',
    props: 'needed',
    finish: 'painted',
    nonskid: 'yes',
    berth: 'ashore',
    panel: 'flat',
  },
};
const planOf = (request: CalendarRequest): CalendarPlan => {
  const outcome = planCalendar(request);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
};
const problemsOf = (request: CalendarRequest) => {
  const outcome = planCalendar(request);
  return outcome.ok ? [] : outcome.problems;
};
const taskOf = (plan: CalendarPlan, code: string) => plan.tasks.find((task) => task.code === code)!;

describe('calendar', () => {
  const plan = planOf(job);

  test('no task starts before its predecessors have cured, dried or been released', () => {
    for (const task of plan.tasks)
      for (const before of task.after) {
        // The stand before paint is a wait of its own: it runs from the last filling on. The weave is filled on tacky plies.
        const { readyAt, endAt } = taskOf(plan, before);
        const from = ['stand-before-paint', 'fair-1'].includes(task.code) ? endAt : readyAt;
        expect([task.code, Date.parse(task.startAt) >= Date.parse(from)]).toEqual([task.code, true]);
      }
  });

  test('the crew does one thing at a time, in working hours', () => {
    const worked = plan.tasks.filter(({ labourH }) => labourH > 0);
    for (let index = 1; index < worked.length; index += 1)
      expect(worked[index].startDay).toBeGreaterThanOrEqual(worked[index - 1].endDay - 1e-9);
    for (const { startAt } of worked) expect(Number(startAt.slice(11, 13))).toBeGreaterThanOrEqual(8);
  });

  test('nothing is built up again until the hold is lifted, while the opened edges dry', () => {
    const hold = taskOf(plan, 'hold-remeasure');
    expect(hold.isHoldPoint).toBe(true);
    expect(Date.parse(taskOf(plan, 'grind-inner').startAt)).toBeGreaterThanOrEqual(Date.parse(hold.readyAt));
    expect(Date.parse(taskOf(plan, 'dry-edges').startAt)).toBeLessThan(Date.parse(hold.readyAt));
  });

  test('fairing takes a cure for each cycle', () => {
    expect(plan.tasks.filter(({ operation }) => operation === 'fair').map(({ code }) => code)).toEqual([
      'fair-1',
      'fair-2',
      'fair',
    ]);
    expect(Date.parse(taskOf(plan, 'fair-2').startAt)).toBeGreaterThanOrEqual(
      Date.parse(taskOf(plan, 'fair-1').readyAt),
    );
  });

  // By hand: at 25 degC, which is where the deck stands here, ages are hours; the plies are laid before three in the afternoon.
  describe('the weave is filled', () => {
    const gelling = (gelH: number): CalendarRequest => ({
      ...job,
      deckTemperatureC: 25,
      drivers: { ...job.drivers, 'opened-m2': 0.05, 'laminate-m2': 0.1, 'faired-m2-cycle': 0.3 },
      resin: {
        ...resin,
        hardeners: resin.hardeners.map((one) => ({
          ...one,
          gelH: { ...one.gelH, value: gelH },
          recoatShutsH: { ...one.recoatShutsH, value: 6 },
        })),
      },
    });
    const filledAfterH = (request: CalendarRequest): number => {
      const found = planOf(request);
      const [laid, filled] = [taskOf(found, 'laminate-top'), taskOf(found, 'fair-1')];
      return (Date.parse(filled.startAt) - Date.parse(laid.endAt)) / 3_600_000;
    };

    test('from gel on, while the plies are tacky, where somebody is there', () => {
      expect(filledAfterH(gelling(0.5))).toBeCloseTo(0.5, 1);
      expect(taskOf(planOf(gelling(0.5)), 'fair-1').startsBecause).toContain('still tacky');
    });

    test('not before the plies can be sanded, where the crew goes home before they gel', () => {
      const found = planOf(gelling(3));
      expect(taskOf(found, 'laminate-top').endAt.slice(11, 13)).toBe('14');
      expect(Date.parse(taskOf(found, 'fair-1').startAt)).toBeGreaterThanOrEqual(
        Date.parse(taskOf(found, 'laminate-top').readyAt),
      );
    });
  });

  test('waits for nobody at the hold where the extent is agreed', () => {
    const agreed = planOf({ ...job, isExtentAgreed: true });
    const hold = taskOf(agreed, 'hold-remeasure');
    expect([hold.isHoldPoint, hold.waitH]).toEqual([true, 0]);
    expect(agreed.planned.calendarDays).toBeLessThanOrEqual(plan.planned.calendarDays);
  });

  // By hand: 5.3 h of work (5.6 less 0.3 of setting up) spread over 7.7 h: a man-hour takes 7.7/5.3 = 1.453 h for one man.
  test('spreads the work of a day over the hours that somebody is there', () => {
    const alone = { people: 1, hoursPerDay: 5.6, startHour: 8 };
    const inspected = (crew: CalendarRequest['crew']) => {
      const { startAt, endAt, labourH } = taskOf(planOf({ ...job, crew }), 'inspect-map');
      return (Date.parse(endAt) - Date.parse(startAt)) / 3_600_000 / labourH;
    };
    // Moments are written to the minute.
    expect(inspected(alone)).toBeCloseTo(1, 2);
    expect(inspected({ ...alone, presentH: 8 })).toBeCloseTo(7.7 / 5.3, 2);
  });

  test('early, likely and late finish stand in order and the same seed gives the same dates', () => {
    const { early, likely, late } = plan.finish;
    expect(Date.parse(early)).toBeLessThan(Date.parse(likely));
    expect(Date.parse(likely)).toBeLessThan(Date.parse(late));
    expect(planOf(job).finish).toEqual(plan.finish);
    expect(planOf({ ...job, seed: 7 }).finish).not.toEqual(plan.finish);
  });

  test('drying decides a wet deck, and its criticality says so', () => {
    expect(plan.criticalChain).toContain('dry-edges');
    expect(taskOf(plan, 'dry-edges').criticality).toBeGreaterThan(0.95);
    expect(plan.criticalChain[plan.criticalChain.length - 1]).toBe('clean-up');
  });

  test('a dry deck, more hands, a warmer deck: each ends sooner or no later', () => {
    const days = (change: Partial<CalendarRequest>) => planOf({ ...job, ...change }).calendarDays.p50;
    expect(days({ flags: { ...job.flags, condition: 'dry-debonded' } })).toBeLessThan(plan.calendarDays.p50);
    expect(days({ crew: { people: 4 } })).toBeLessThanOrEqual(plan.calendarDays.p50);
    expect(days({ crew: { people: 1 } })).toBeGreaterThan(plan.calendarDays.p50);
    expect(days({ deckTemperatureC: 10 })).toBeGreaterThanOrEqual(plan.calendarDays.p50);
  });

  test('weekend workers work on weekends only', () => {
    const weekend = planOf({ ...job, crew: { people: 2, workingDays: ['sat', 'sun'] } });
    for (const { startAt, labourH } of weekend.tasks)
      if (labourH > 0) expect([0, 6]).toContain(new Date(startAt).getUTCDay());
  });

  test('rain in the forecast moves work in the open to the first dry day', () => {
    const hours: readonly ForecastHour[] = Array.from({ length: 14 * 24 }, (_, hour) => ({
      at: new Date(Date.parse('2026-05-03T23:00:00Z') + hour * 3_600_000).toISOString(),
      temperatureC: 18,
      relativeHumidityPercent: 55,
      rainMm: hour < 5 * 24 ? 1 : 0,
      windMPerS: 2,
    }));
    const open: CalendarRequest = {
      ...job,
      flags: { ...job.flags, shelter: 'open' },
      forecast: { hours, timeZone: 'Europe/Lisbon' },
      weatherLossFraction: 0,
    };
    expect(taskOf(planOf(open), 'cut-skin').startAt.slice(0, 10)).toBe('2026-05-11');
    expect(
      Date.parse(taskOf(planOf({ ...open, flags: { ...open.flags, shelter: 'shed' } }), 'cut-skin').startAt),
    ).toBeLessThan(Date.parse('2026-05-09T00:00:00Z'));
  });

  test('a delivery that the caller adds holds the bedding back', () => {
    const late = planOf({
      ...job,
      customOperations: [
        {
          code: 'deliver-core',
          title: 'Core delivered',
          hours: { low: 0.5, likely: 0.5, high: 0.5 },
          after: [],
          before: ['bed-core'],
          waitH: { low: 900, likely: 900, high: 900 },
        },
      ],
    });
    expect(taskOf(late, 'bed-core').after).toContain('deliver-core');
    expect(taskOf(late, 'bed-core').startDay).toBeGreaterThan(37);
  });

  test('a circle of precedences is named with its way round', () => {
    const [found] = problemsOf({
      ...job,
      customOperations: [
        {
          code: 'loop',
          title: 'Loop',
          hours: { low: 1, likely: 1, high: 1 },
          after: ['laminate-top'],
          before: ['bed-core'],
        },
      ],
    });
    expect([found.code, found.at]).toEqual(['network-cycle', '/customOperations/0/after']);
    expect(String(found.facts.circle)).toContain('loop → laminate-top');
  });

  test('crew of zero, no such day, a driver unheard of, a cycle and a half: all named at once', () => {
    expect(
      problemsOf({
        ...job,
        startDate: '2026-02-30',
        crew: { people: 0, workingDays: [] },
        cycles: { fair: 1.5 },
        drivers: JSON.parse('{"acre": 1}'),
      }).map(({ at }) => at),
    ).toEqual(['/startDate', '/crew/people', '/crew/workingDays', '/cycles/fair', '/drivers/acre']);
  });

  test('a forecast of another place, a day named twice and a year of one digit are named', () => {
    const hours = Array.from({ length: 48 }, (_, hour) => ({
      at: new Date(Date.parse('2026-05-04T00:00:00Z') + hour * 3_600_000).toISOString(),
      temperatureC: 18,
      relativeHumidityPercent: 55,
    }));
    expect(
      problemsOf({ ...job, forecast: { hours, timeZone: 'America/New_York' } }).map(({ at, code }) => [
        at,
        code,
      ]),
    ).toEqual([['/forecast/timeZone', 'contradiction']]);
    expect(problemsOf({ ...job, forecast: { hours, timeZone: 'Portugal' } })).toEqual([]);
    expect(
      problemsOf({
        ...job,
        forecast: { hours: hours.map((hour) => ({ ...hour, at: hour.at.replace('.000Z', '+09:00') })) },
      }).map(({ at, code }) => [at, code]),
    ).toEqual([['/forecast/hours/0/at', 'wrong-zone']]);
    expect(
      problemsOf({
        ...job,
        startDate: '0001-01-01',
        today: '9999-12-31',
        crew: { people: 2, workingDays: ['mon', 'tue', 'mon'] },
      }).map(({ at, code }) => [at, code]),
    ).toEqual([
      ['/startDate', 'out-of-range'],
      ['/crew/workingDays/2', 'duplicate'],
      ['/today', 'out-of-range'],
    ]);
  });

  test('a deck below the limit of its resin has no calendar', () => {
    expect(problemsOf({ ...job, deckTemperatureC: 4 }).map(({ code }) => code)).toEqual(['resin-too-cold']);
  });

  test('today lists the work, the waits that run, or what comes next', () => {
    const first = planOf({ ...job, today: '2026-05-04' }).today!;
    expect(first.some(({ kind, task }) => kind === 'work' && task === 'inspect-map')).toBe(true);
    const drying = planOf({ ...job, today: taskOf(plan, 'dry-edges').readyAt.slice(0, 10) }).today!;
    expect(drying.some(({ kind, task }) => kind === 'wait' && task === 'dry-edges')).toBe(true);
    const sunday = planOf({ ...job, today: '2026-05-10' }).today!;
    expect(sunday.map(({ kind }) => kind)).toContain('next');
    const onHold = planOf({ ...job, today: taskOf(plan, 'hold-remeasure').endAt.slice(0, 10) }).today!;
    expect(onHold.find(({ kind }) => kind === 'hold')?.text).toContain(
      'nothing goes on until the client has agreed',
    );
  });

  test('the change of clocks loses no hour: the day still begins at eight', () => {
    const spring = planOf({ ...job, startDate: '2026-03-23' });
    const after = spring.tasks.filter(({ startAt, labourH }) => labourH > 0 && startAt > '2026-03-30');
    expect(after.some(({ startAt }) => startAt.endsWith('+01:00') && startAt.slice(11, 16) === '08:00')).toBe(
      true,
    );
  });
});

describe('iCalendar', () => {
  const plan = planOf(job);
  const text = calendarText(plan, {
    uidPrefix: 'estimate-1',
    uidDomain: 'kingplank.example',
    stampAt: '2026-04-01T09:00:00Z',
    withTasks: true,
  });
  const events = new ICAL.Component(ICAL.parse(text))
    .getAllSubcomponents('vevent')
    .map((component) => new ICAL.Event(component));

  test('another parser reads every milestone and task, at the same moments', () => {
    const finish = events.find(({ uid }) => uid === 'estimate-1-milestone-finish@kingplank.example')!;
    expect(finish.startDate.toJSDate().getTime()).toBe(Date.parse(plan.finish.likely));
    expect(events.length).toBe(
      plan.milestones.length + plan.tasks.filter(({ startAt, endAt }) => endAt > startAt).length,
    );
    expect(events.find(({ uid }) => uid === 'estimate-1-task-prime@kingplank.example')!.summary).toBe(
      'Prime and sand, each coat (2 of 2)',
    );
  });

  test('lines end in CR LF and none is longer than 75 octets (RFC 5545, 3.1)', () => {
    expect(text.endsWith('END:VCALENDAR\r\n')).toBe(true);
    for (const line of text.split('\r\n')) expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75);
    expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
  });

  test('version, product, UID and stamp stand where the RFC requires them, and the same plan gives the same text', () => {
    expect(text).toMatch(/^BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:/);
    for (const event of events)
      expect([typeof event.uid, event.component.getFirstPropertyValue('dtstamp')?.toString()]).toEqual([
        'string',
        '2026-04-01T09:00:00Z',
      ]);
    expect(
      calendarText(plan, {
        uidPrefix: 'estimate-1',
        uidDomain: 'kingplank.example',
        stampAt: '2026-04-01T09:00:00Z',
        withTasks: true,
      }),
    ).toBe(text);
  });

  test('a newer issue has the UIDs of the older and a higher sequence, so that a diary moves the events (RFC 5545, 3.8.7.4)', () => {
    const again = new ICAL.Component(
      ICAL.parse(
        calendarText(plan, {
          uidPrefix: 'estimate-1',
          uidDomain: 'kingplank.example',
          stampAt: '2026-04-08T09:00:00Z',
          withTasks: true,
          sequence: 2,
        }),
      ),
    );
    const later = again.getAllSubcomponents('vevent').map((component) => new ICAL.Event(component));
    expect(later.map(({ uid }) => uid)).toEqual(events.map(({ uid }) => uid));
    expect(new Set(later.map(({ uid }) => uid)).size).toBe(later.length);
    expect([
      ...new Set(events.map(({ sequence }) => sequence)),
      ...new Set(later.map(({ sequence }) => sequence)),
    ]).toEqual([0, 2]);
    expect(again.getFirstPropertyValue('method')).toBe('PUBLISH');
  });

  test('commas, semicolons, backslashes and line breaks are escaped as in the example of RFC 5545, 3.3.11', () => {
    const odd = {
      ...plan,
      milestones: [
        {
          code: 'finish',
          title: 'Project XYZ Final Review\nConference Room - 3B\nCome Prepared.; a, b\\c',
          at: plan.plannedFinish,
        },
      ],
    };
    const written = calendarText(odd, {
      uidPrefix: 'x',
      uidDomain: 'y.example',
      stampAt: '2026-04-01T09:00:00Z',
      withTasks: false,
    });
    expect(written.replaceAll('\r\n ', '')).toContain(
      'SUMMARY:Project XYZ Final Review\\nConference Room - 3B\\nCome Prepared.\\; a\\, b\\\\c',
    );
  });
});

describe('critical path', () => {
  test('a circle, an unknown predecessor and a repeated code are refused', () => {
    const codes = (activities: Parameters<typeof criticalPath>[0]) => {
      const outcome = criticalPath(activities);
      return outcome.ok ? [] : outcome.problems.map(({ code }) => code);
    };
    expect(
      codes([
        { code: 'a', duration: 1, after: ['b'] },
        { code: 'b', duration: 1, after: ['a'] },
      ]),
    ).toEqual(['network-cycle']);
    expect(
      codes([
        { code: 'a', duration: 1, after: ['z'] },
        { code: 'a', duration: 1, after: [] },
      ]),
    ).toEqual(['duplicate', 'unknown-code']);
  });
});
