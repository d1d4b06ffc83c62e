import type { MoneyJson } from '#lib/money';
import type { Reader } from '../../reader.js';
import { upTo } from '../../reader.js';
import type { ReportRequest } from '../request.js';
import { moneyText } from '../said.js';

const SPOKEN_DIGITS = 3;

/** A sum as a person says it: three digits that mean something. */
export function aboutMoney(reader: Reader, { amount, currency }: MoneyJson): string {
  const value = Number(Number(amount).toPrecision(SPOKEN_DIGITS));
  return moneyText(reader, { amount: String(Math.round(value)), currency });
}

/** A sum in whole units of its currency, halves away from nothing. */
export const wholeMoney = (reader: Reader, { amount, currency }: MoneyJson): string =>
  moneyText(reader, { amount: String(Math.round(Number(amount))), currency });

/** Halves say nothing of work that takes weeks. */
const HALVES_BELOW_H = 100;

/** To the half hour, long work to the hour. */
export const hoursSaid = (reader: Reader, hours: number): string =>
  hours < HALVES_BELOW_H ? `${upTo(reader, Math.round(hours * 2) / 2, 1)} h` : `${upTo(reader, hours, 0)} h`;

/** Whole days, begun days counted. */
const daysSaid = (reader: Reader, days: number): string => upTo(reader, Math.ceil(days - 1e-9), 0);

/** Hours and working days as likely, the calendar from early to late. */
export const timeSaid = ({ estimate: { summary }, reader }: ReportRequest): string =>
  reader.words.body.timeSaid(
    hoursSaid(reader, summary.labourH.p50),
    daysSaid(reader, summary.workingDays.p50),
    daysSaid(reader, summary.calendarDays.p10),
    daysSaid(reader, summary.calendarDays.p90),
  );

export const joined = (parts: readonly (string | undefined)[], by = ', '): string =>
  parts.filter((part) => part !== undefined && part !== '').join(by);
