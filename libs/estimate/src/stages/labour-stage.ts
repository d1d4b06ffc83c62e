import { mapValue, type Outcome, laidOver } from '#lib/kernel';
import { isByVisit, labourFor, type OperationFlags, type OperationHours } from '#lib/work';
import { derived, sumOf, type Figure } from '#lib/provenance';
import { h } from '#lib/units';
import type { Job } from '../job/job.js';
import { driverAmountsOf, driverFiguresOf, type JobQuantities } from './labour-drivers.js';
import { visitAmounts } from './visit-work.js';

export interface LabourWork {
  readonly operations: readonly WorkedHours[];
  /** Sum of the mean hours, which are what is priced. */
  readonly meanH: Figure<'h'>;
  /** Sum of the most likely hours, which are seldom enough for all of them together. */
  readonly likelyH: number;
  readonly flags: OperationFlags;
}

export type WorkedHours = OperationHours & {
  readonly driverFigure: Figure;
  /** Done by the owner: shown, not billed. */
  readonly isOwn: boolean;
};

/** Hours of every operation; the set-up of each day worked needs the days, which the calendar gives. */
export function labourOf(job: Job, { quantities, flags, visits }: LabourContext): Outcome<LabourWork> {
  const amounts = { ...driverAmountsOf(quantities), ...visitAmounts(job, visits?.value ?? 0) };
  return mapValue(labourFor(amounts, flags), (operations) =>
    labourWork(job, operations, { quantities, flags, visits }),
  );
}

export interface LabourContext {
  readonly quantities: JobQuantities;
  readonly flags: OperationFlags;
  /** Days on which somebody works; undefined before the calendar is made. */
  readonly visits: Figure<'d'> | undefined;
}

function labourWork(
  job: Job,
  operations: readonly OperationHours[],
  { quantities, flags, visits }: LabourContext,
): LabourWork {
  const figures = driverFiguresOf(quantities);
  return {
    operations: operations.map((operation) =>
      laidOver(operation, {
        driverFigure: figures[operation.driver] ?? amountFigure(operation, visits),
        isOwn: isOwnWork(job, operation.code),
      }),
    ),
    meanH: sumOf(
      'h',
      'hours of work',
      Object.fromEntries(operations.map((operation) => [operation.code, hoursFigure(operation)])),
    ),
    likelyH: operations.reduce((sum, { hours }) => sum + hours.likely, 0),
    flags,
  };
}

/** What an owner does himself where the two share the work: no resin, no saw, no spray gun. */
const ownersShare: ReadonlySet<string> = new Set([
  'lining-out',
  'lining-back',
  'hardware-off',
  'protect',
  'strip-covering',
  'sand-old-finish',
  'skim-fair',
  'mask',
  'clean-up',
  'clean-up-spot',
]);

const isOwnWork = ({ answers }: Job, code: string): boolean =>
  answers.crew.labour.value === 'owner' || (answers.crew.labour.value === 'mixed' && ownersShare.has(code));

export const hoursFigure = ({ title, meanH, cite }: OperationHours): Figure<'h'> =>
  derived('h', h(meanH), title, {
    formula: 'process.operation-hours',
    title: 'Mean hours per unit times amount times modifiers',
    symbol: 't',
    cite,
    inputs: {},
  });

const amountFigure = ({ driver, driverAmount }: OperationHours, visits: Figure<'d'> | undefined): Figure =>
  isByVisit(driver) && visits !== undefined
    ? visits
    : derived<string>(driver, h(driverAmount), 'once per job', {
        formula: 'labour.amount',
        title: 'Once per job',
        symbol: 'n',
        cite: { source: 'ARITHMETIC' },
        inputs: {},
      });
