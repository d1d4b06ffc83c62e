import type { Job } from '../job/job.js';
import type { CoreWork } from '../stages/core-stage.js';
import type { PlyWork } from '../stages/laminate-stage.js';
import { tapesOf } from './place-work.js';

/** Width of the tape over a joint of plywood. Source: [FROM-MEMORY]. */
const OVER_JOINT_MM = 150;

/** One tape along every joint of plywood that is a hinge without it. */
export const jointTapes = (job: Job, { jointTapeM }: Pick<CoreWork, 'jointTapeM'>): readonly PlyWork[] =>
  jointTapeM === undefined
    ? []
    : tapesOf(job, jointTapeM.value, 'J').filter(({ rollWidthMm }) => rollWidthMm === OVER_JOINT_MM);
