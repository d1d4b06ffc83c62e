import { materialsOf, type Coating } from '#lib/catalogue';
import type { OperationFlags } from '#lib/work';
import type { OverlayRecord } from '../job/defect-record.js';
import type { Job } from '../job/job.js';

/** From below the deck's finish stays, and under planks that go back there is none. */
export const isFinished = ({ answers, record }: Job): boolean =>
  answers.method.access.value === 'from-above' && !isLaidAgain(record.panel.overlay);

/** In gelcoat: no primer and no paint. */
export const isGelcoated = (job: Job): boolean =>
  isFinished(job) && job.answers.method.finishIn.value === 'gelcoat';

/** Polyester and vinylester, which gelcoat bonds to. */
export const isStyrenated = ({ resin }: Pick<Job, 'resin'>): boolean => resin.chemistry !== 'epoxy';

/** What a deck whose finish is part of the job is finished in. */
export const finishFlag = (job: Job): Exclude<OperationFlags['finish'], 'none'> => {
  if (!isGelcoated(job)) return 'painted';
  return isStyrenated(job) ? 'gelcoat' : 'gelcoat-over-epoxy';
};

/** Whether taking it off is part of this job. */
export const isTakenOff = (overlay: OverlayRecord | undefined): overlay is OverlayRecord =>
  overlay !== undefined && overlay.then !== 'not-included' && overlay.then !== 'stays';

export const isLaidAgain = (overlay: OverlayRecord | undefined): boolean => overlay?.then === 'back';

/** What the job lays on: the topcoat of the job, and the first coating of each other kind. */
export const coatingsOf = (job: Job): readonly Coating[] => {
  const { catalogue, topcoat } = job;
  if (!isFinished(job)) return [];
  const all = materialsOf(catalogue, 'coating');
  return kindsLaid(job).flatMap((kind) =>
    kind === 'topcoat' && topcoat !== undefined
      ? [topcoat]
      : all.filter(({ coating }) => coating === kind).slice(0, 1),
  );
};

/** Gelcoat over polyester is faired in the polyester of the job: over epoxy filler it would stay soft again. */
function kindsLaid(job: Job): readonly Coating['coating'][] {
  if (!isGelcoated(job)) return ['primer', 'fairing-compound', 'nonskid', 'topcoat'];
  return isStyrenated(job) ? ['gelcoat'] : ['fairing-compound', 'gelcoat'];
}

const laidBy: Readonly<Record<string, Coating['coating']>> = {
  prime: 'primer',
  topcoat: 'topcoat',
  gelcoat: 'gelcoat',
  nonskid: 'nonskid',
};

/** The coating that an operation lays, if it lays one. */
export const coatingOf = (job: Job, operation: string): Coating | undefined =>
  coatingsOf(job).find(
    ({ coating }) => coating === laidBy[operation] || (operation === 'nonskid' && coating === 'gelcoat'),
  );

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
