import { problem, type Problem, type ThreePoint } from '#lib/kernel';
import { faultsIn, saidOr } from '#lib/asking';
import { drivers, operations } from '#lib/work';
import { epochOf, forecastFaults, zoneFaults, zoneOffset } from '#lib/cure';
import {
  calendarCrewQuestions,
  calendarQuestions,
  type CalendarRequest,
  type CustomOperation,
} from './calendar-request.js';

/** Everything wrong with a calendar request but the shape of its network, which is judged once it is built. */
export function calendarFaults(request: CalendarRequest): readonly Problem[] {
  const asked = faultsIn(request, calendarQuestions);
  const isSkyRead = !asked.some(({ at }) => at.startsWith('/forecast'));
  const hardeners = request.resin.hardeners.map(({ code }) => code);
  return [
    ...asked,
    ...zoneFaults('/timeZone', request.timeZone),
    ...strangeDrivers(request),
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
    ...(isSkyRead ? skyFaults(request) : []),
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

/** A driver that no operation is counted by would be left out without a word. */
const strangeDrivers = ({ drivers: amounts }: CalendarRequest): readonly Problem[] =>
  Object.keys(amounts).flatMap((name) =>
    drivers.some((driver) => driver === name)
      ? []
      : [problem('not-one-of', `/drivers/${name}`, { value: name, choices: drivers.join(', ') })],
  );

function crewFaults(crew: CalendarRequest['crew']): readonly Problem[] {
  const { hoursPerDay, startHour } = calendarCrewQuestions;
  return saidOr(startHour, crew.startHour) + saidOr(hoursPerDay, crew.hoursPerDay) > 24
    ? [
        problem('contradiction', '/crew/hoursPerDay', {
          other: '/crew/startHour',
          why: 'the working day would run past midnight',
        }),
      ]
    : [];
}

const threePointFaults = (at: string, { low, likely, high }: ThreePoint): readonly Problem[] =>
  low <= likely && likely <= high
    ? []
    : [problem('contradiction', at, { other: `${at}/likely`, why: 'low, likely and high must not fall' })];

function customFaults(custom: CustomOperation, at: string): readonly Problem[] {
  const known = operations.map(({ code }) => code);
  return [
    ...(known.includes(custom.code) ? [problem('duplicate', `${at}/code`, { value: custom.code })] : []),
    ...threePointFaults(`${at}/hours`, custom.hours),
    ...(custom.waitH === undefined ? [] : threePointFaults(`${at}/waitH`, custom.waitH)),
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
