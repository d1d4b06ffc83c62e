import type { JobRiskRequest } from '#lib/costing';
import type { Job } from '../job/job.js';

/** Whose pace the work goes at. */
export type Hands = JobRiskRequest['hands'];

export const handsOf = ({ answers }: Job): Hands =>
  answers.crew.labour.value === 'owner' ? 'owner' : 'yard';

/** A yard takes no rent of its own customer for the days on which it stays away; an owner who works there pays for all. */
export const paysForAbsence = (job: Job): boolean => handsOf(job) === 'owner';
