import { refusal, success, type Outcome } from '#lib/kernel';
import type { Customer } from '../workbench/job.js';
import type { Workbench } from '../workbench/workbench.js';
import { logoJob } from './logo.job.js';
import { undecodable, uploadFaults } from '../pictures/upload.js';
import { logoLimits } from './logo-limits.js';

/** A letterhead logo from an upload, drawn anew as PNG, or every reason why it cannot be one. */
export async function logoFrom(
  uploaded: Uint8Array,
  workbench: Workbench,
  customer: Customer,
): Promise<Outcome<Uint8Array>> {
  const faults = uploadFaults(uploaded, logoLimits);
  if (faults.length > 0) return refusal(...faults);
  const picture = await workbench.do(logoJob, uploaded, customer);
  return picture === undefined ? refusal(undecodable) : success(picture);
}
