import { mapValue, type Outcome } from '#lib/kernel';
import { labourFor, type OperationFlags, type OperationHours } from '#lib/work';
import { derived, productOf, sumOf, type Figure } from '#lib/provenance';
import { days as inDays, h } from '#lib/units';
import type { Job } from '../job/job.js';
import { driverAmountsOf, driverFiguresOf, type JobQuantities } from './labour-drivers.js';

export interface LabourWork {
  readonly operations: readonly (OperationHours & { readonly driverFigure: Figure })[];
  readonly likelyH: Figure<'h'>;
  readonly lowH: number;
  readonly highH: number;
  /** Working days of the crew on site, waits apart. */
  readonly crewDays: Figure<'d'>;
  readonly flags: OperationFlags;
}

/** Hours of every operation; the daily set-up follows from the days that the other hours take. */
export function labourOf(job: Job, quantities: JobQuantities, flags: OperationFlags): Outcome<LabourWork> {
  const amounts = driverAmountsOf(quantities);
  const worked = labourFor({ ...amounts, day: 0 }, flags);
  if (!worked.ok) return worked;
  const days = crewDaysFor(job, totalOf(worked.value));
  return mapValue(labourFor({ ...amounts, day: Math.ceil(days.value) }, flags), (operations) =>
    labourWork(operations, { quantities, days, flags }),
  );
}

const totalOf = (operations: readonly OperationHours[]): Figure<'h'> =>
  sumOf(
    'h',
    'hours of work',
    Object.fromEntries(operations.map((operation) => [operation.code, hoursFigure(operation)])),
  );

const hoursFigure = ({ title, hours, cite }: OperationHours): Figure<'h'> =>
  derived('h', h(hours.likely), title, {
    formula: 'process.operation-hours',
    title: 'Hours per unit times amount times modifiers',
    symbol: 't',
    cite,
    inputs: {},
  });

function crewDaysFor(
  {
    answers: {
      crew: { people, hoursPerDay },
    },
  }: Job,
  total: Figure<'h'>,
): Figure<'d'> {
  const perDay = productOf<string>('h/d', 'crew hours in a day', { people, hoursPerDay });
  return derived<'d'>('d', inDays(total.value / perDay.value), 'days of the crew', {
    formula: 'labour.crew-days',
    title: 'Hours of work over crew hours in a day',
    symbol: 'd',
    cite: { source: 'ARITHMETIC' },
    inputs: { work: total, crew: perDay },
  });
}

interface LabourContext {
  readonly quantities: JobQuantities;
  readonly days: Figure<'d'>;
  readonly flags: OperationFlags;
}

function labourWork(
  operations: readonly OperationHours[],
  { quantities, days, flags }: LabourContext,
): LabourWork {
  const figures = driverFiguresOf(quantities);
  return {
    operations: operations.map((operation) => ({
      ...operation,
      driverFigure: figures[operation.driver] ?? amountFigure(operation, days),
    })),
    likelyH: totalOf(operations),
    lowH: operations.reduce((sum, { hours }) => sum + hours.low, 0),
    highH: operations.reduce((sum, { hours }) => sum + hours.high, 0),
    crewDays: days,
    flags,
  };
}

const amountFigure = ({ driver, driverAmount }: OperationHours, days: Figure<'d'>): Figure =>
  derived<string>(driver, h(driverAmount), driver === 'day' ? 'days begun' : 'once per job', {
    formula: 'labour.amount',
    title: driver === 'day' ? 'Whole days that the work takes' : 'Once per job',
    symbol: 'n',
    cite: { source: 'ARITHMETIC' },
    inputs: driver === 'day' ? { days } : {},
  });
