import { problem, type Problem, type ThreePoint } from '#lib/kernel';
import { operations } from '#lib/work';
import { drivers, type OperationFlags } from '#lib/work';
import {
  dayFaults,
  choiceFaults,
  countFaults,
  numberFaults,
  optionalChoiceFaults,
  optionalFaults,
} from '#lib/asking';
import { epochOf, forecastFaults } from '#lib/cure';
import { warmthFaults } from '#lib/cure';
import { zoneFaults, zoneOffset } from '#lib/cure';
import { weekdays } from '#lib/cure';
import type { CalendarRequest, CustomOperation } from './calendar-request.js';

const flagChoices: { readonly [K in keyof OperationFlags]: readonly OperationFlags[K][] } = {
  skin: ['re-bed', 'relay', 'inject', 'closed'],
  access: ['from-above', 'from-below'],
  condition: ['wet-rotten', 'wet-bonded', 'dry-debonded'],
  press: ['weights', 'battens', 'vacuum'],
  shelter: ['shed', 'tent', 'open'],
  below: ['open', 'lined', 'none'],
  skill: ['professional', 'owner'],
  props: ['needed', 'not-needed'],
  finish: ['painted', 'none'],
  nonskid: ['yes', 'no'],
  berth: ['ashore', 'afloat'],
  panel: ['flat', 'cambered'],
};

/** Everything wrong with a calendar request but the shape of its network, which is judged once it is built. */
export function calendarFaults(request: CalendarRequest): readonly Problem[] {
  const hardeners = request.resin.hardeners.map(({ code }) => code);
  return [
    ...dayFaults('/startDate', request.startDate),
    ...(request.today === undefined ? [] : dayFaults('/today', request.today)),
    ...zoneFaults('/timeZone', request.timeZone),
    ...driverFaults(request),
    ...Object.entries(flagChoices).flatMap(([name, choices]) =>
      choiceFaults(`/flags/${name}`, flagOf(request.flags, name), choices),
    ),
    ...crewFaults(request.crew),
    ...(hardeners.includes(request.hardener)
      ? []
      : [
          problem('unknown-code', '/hardener', {
            value: request.hardener,
            kind: `hardener of ${request.resin.code}`,
            known: hardeners.join(', '),
          }),
        ]),
    ...optionalFaults('/deckTemperatureC', request.deckTemperatureC, { from: -40, upTo: 80, unit: 'degC' }),
    ...warmthFaults('/warmth', request.warmth),
    ...optionalFaults('/weatherLossFraction', request.weatherLossFraction, { from: 0, upTo: 0.9, unit: '' }),
    ...optionalFaults('/coreMoisturePercent', request.coreMoisturePercent, { from: 0, upTo: 700, unit: '%' }),
    ...optionalFaults('/seed', request.seed, { from: 0, upTo: 4294967295, unit: '' }),
    ...optionalFaults('/runs', request.runs, { from: 100, upTo: 20000, unit: 'calendars' }),
    ...['fair', 'prime', 'topcoat'].flatMap((name) =>
      cycleFaults(`/cycles/${name}`, Object.entries(request.cycles ?? {}).find(([key]) => key === name)?.[1]),
    ),
    ...skyFaults(request),
    ...(request.customOperations ?? []).flatMap((custom, index) =>
      customFaults(custom, `/customOperations/${index}`),
    ),
  ];
}

/** Faults of the forecast, read in the zone of the place where it names none of its own; two zones must agree hour by hour. */
function skyFaults({ forecast, timeZone }: CalendarRequest): readonly Problem[] {
  if (forecast === undefined) return [];
  const place = timeZone === undefined ? undefined : zoneOffset(timeZone);
  if (timeZone === undefined || place === undefined) return forecastFaults(forecast, '/forecast');
  const faults = forecastFaults({ timeZone, ...forecast }, '/forecast');
  const own = forecast.timeZone === undefined ? undefined : zoneOffset(forecast.timeZone);
  if (
    faults.length > 0 ||
    own === undefined ||
    forecast.hours.every((hour) => own(epochOf(hour)) === place(epochOf(hour)))
  )
    return faults;
  return [
    problem('contradiction', '/forecast/timeZone', {
      other: '/timeZone',
      why: `clocks in ${forecast.timeZone ?? ''} and ${timeZone} do not show the same time; give both for the same place`,
    }),
  ];
}

const flagOf = (flags: OperationFlags, name: string): string | undefined =>
  Object.entries(flags).find(([key]) => key === name)?.[1];

const driverFaults = ({ drivers: amounts }: CalendarRequest): readonly Problem[] =>
  Object.entries(amounts).flatMap(([name, amount]) =>
    drivers.some((driver) => driver === name)
      ? numberFaults(`/drivers/${name}`, amount, { from: 0, upTo: 100000, unit: '' })
      : [problem('not-one-of', `/drivers/${name}`, { value: name, choices: drivers.join(', ') })],
  );

const cycleFaults = (at: string, cycles: number | undefined): readonly Problem[] => [
  ...optionalFaults(at, cycles, { from: 1, upTo: 12, unit: 'cycles' }),
  ...(cycles !== undefined && !Number.isInteger(cycles)
    ? [problem('out-of-range', at, { value: cycles, range: 'a whole number of cycles' })]
    : []),
];

function crewFaults(crew: CalendarRequest['crew']): readonly Problem[] {
  const { hoursPerDay = 8, startHour = 8 } = crew;
  return [
    ...numberFaults('/crew/people', crew.people, { from: 1, upTo: 50, unit: 'people' }),
    ...optionalFaults('/crew/hoursPerDay', crew.hoursPerDay, { from: 1, upTo: 16, unit: 'h' }),
    ...optionalFaults('/crew/startHour', crew.startHour, { from: 0, upTo: 22, unit: 'h' }),
    ...(startHour + hoursPerDay > 24
      ? [
          problem('contradiction', '/crew/hoursPerDay', {
            other: '/crew/startHour',
            why: 'the working day would run past midnight',
          }),
        ]
      : []),
    ...(crew.workingDays === undefined
      ? []
      : [
          ...countFaults('/crew/workingDays', crew.workingDays.length, { least: 1, most: 7 }),
          ...crew.workingDays.flatMap((day, index) => [
            ...choiceFaults(`/crew/workingDays/${index}`, day, weekdays),
            ...(crew.workingDays?.indexOf(day) === index
              ? []
              : [problem('duplicate', `/crew/workingDays/${index}`, { value: day })]),
          ]),
        ]),
    ...(crew.daysOff ?? []).flatMap((date, index) => dayFaults(`/crew/daysOff/${index}`, date)),
  ];
}

const threePointFaults = (at: string, { low, likely, high }: ThreePoint): readonly Problem[] => {
  const each = [
    ...numberFaults(`${at}/low`, low, { from: 0, upTo: 10000, unit: 'h' }),
    ...numberFaults(`${at}/likely`, likely, { from: 0, upTo: 10000, unit: 'h' }),
    ...numberFaults(`${at}/high`, high, { from: 0, upTo: 10000, unit: 'h' }),
  ];
  return each.length > 0 || (low <= likely && likely <= high)
    ? each
    : [problem('contradiction', at, { other: `${at}/likely`, why: 'low, likely and high must not fall' })];
};

function customFaults(custom: CustomOperation, at: string): readonly Problem[] {
  const known = operations.map(({ code }) => code);
  return [
    ...(known.includes(custom.code) ? [problem('duplicate', `${at}/code`, { value: custom.code })] : []),
    ...threePointFaults(`${at}/hours`, custom.hours),
    ...(custom.waitH === undefined ? [] : threePointFaults(`${at}/waitH`, custom.waitH)),
    ...optionalChoiceFaults(`${at}/gate`, custom.gate, ['none', 'dry-deck', 'resin', 'coating']),
    ...(custom.before ?? []).flatMap((code, index) =>
      known.includes(code)
        ? []
        : [
            problem('unknown-code', `${at}/before/${index}`, {
              value: code,
              kind: 'operation',
              known: known.join(', '),
            }),
          ],
    ),
  ];
}
