import { deckWarmthQuestions } from '#lib/cure';
import { saidOr } from '#lib/asking';
import { operations, type DriverAmounts } from '#lib/work';
import type { Job } from '../job/job.js';

/** Whether a heater warms the deck. */
export const isHeated = ({ record }: Job): boolean =>
  saidOr(deckWarmthQuestions.heaterK, record.conditions?.warmth?.heaterK) > 0;

/** Whether a shade is rigged over the work: a shed is one already. */
export const isShaded = ({ record, answers }: Job): boolean =>
  answers.conditions.shelter.value !== 'shed' &&
  saidOr(deckWarmthQuestions.isShaded, record.conditions?.warmth?.isShaded);

/** What is done on each day worked, by the number of them. */
export const visitAmounts = (job: Job, days: number): DriverAmounts => ({
  'day': days,
  'shade-day': isShaded(job) ? days : 0,
  'heat-day': isHeated(job) ? days : 0,
});

/** What shade and heater take of a day, likely hours of one pair of hands; the setting up of a day is the calendar's. */
export const visitHoursADay = (job: Job): number =>
  hoursOf('shade-day', isShaded(job)) + hoursOf('heat-day', isHeated(job));

const hoursOf = (driver: 'shade-day' | 'heat-day', isDone: boolean): number =>
  isDone ? (operations.find((operation) => operation.driver === driver)?.hours.likely ?? 0) : 0;
