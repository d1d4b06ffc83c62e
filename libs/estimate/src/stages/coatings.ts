import { materialsOf, type Coating } from '#lib/catalogue';
import type { OverlayRecord } from '../job/defect-record.js';
import type { Job } from '../job/job.js';

/** From below the deck's paint stays, and under planks that go back there is none. */
export const isPainted = ({ answers, record }: Job): boolean =>
  answers.method.access.value === 'from-above' && !isLaidAgain(record.panel.overlay);

/** Whether taking it off is part of this job. */
export const isTakenOff = (overlay: OverlayRecord | undefined): overlay is OverlayRecord =>
  overlay !== undefined && overlay.then !== 'not-included' && overlay.then !== 'stays';

export const isLaidAgain = (overlay: OverlayRecord | undefined): boolean => overlay?.then === 'back';

/** What the job lays on: the topcoat of the job, and the first coating of each other kind. */
export const coatingsOf = (job: Job): readonly Coating[] => {
  const { catalogue, topcoat } = job;
  if (!isPainted(job)) return [];
  const all = materialsOf(catalogue, 'coating');
  const kinds = [...new Set(all.map(({ coating }) => coating))];
  return kinds.flatMap((kind) =>
    kind === 'topcoat' && topcoat !== undefined
      ? [topcoat]
      : all.filter(({ coating }) => coating === kind).slice(0, 1),
  );
};

const laidBy: Readonly<Record<string, Coating['coating']>> = {
  prime: 'primer',
  topcoat: 'topcoat',
  nonskid: 'nonskid',
};

/** The coating that an operation lays, if it lays one. */
export const coatingOf = (job: Job, operation: string): Coating | undefined =>
  coatingsOf(job).find(({ coating }) => coating === laidBy[operation]);

/** The coating that asks for the driest air, and of equals for the warmest: what suits it suits the others. */
export const strictestCoating = (job: Job): Coating | undefined =>
  coatingsOf(job)
    .filter(({ coating }) => Object.values(laidBy).includes(coating))
    .sort(
      (a, b) =>
        a.highestRelativeHumidityPercent.value - b.highestRelativeHumidityPercent.value ||
        b.lowestTemperatureC.value - a.lowestTemperatureC.value,
    )
    .at(0);
