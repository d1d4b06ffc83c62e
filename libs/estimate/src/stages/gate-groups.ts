import { coatingLimits, resinLimits, type GateLimits } from '#lib/cure';
import { coatingsOf } from './coatings.js';
import type { Job } from '../job/job.js';

/** Work that waits for the same conditions. */
export interface GateGroup {
  readonly code: string;
  readonly title: string;
  readonly limits: GateLimits;
}

export function gateGroups(job: Job, hardener: string): readonly GateGroup[] {
  const laid = coatingsOf(job).filter(
    ({ coating }) =>
      coating === 'primer' ||
      coating === 'topcoat' ||
      coating === 'gelcoat' ||
      (coating === 'nonskid' && job.answers.panel.surface.value.endsWith('nonskid')),
  );
  return [
    { code: 'resin', title: 'Bonding and laminating', limits: resinLimits(job.resin, hardener) },
    ...laid.map((coating) => ({
      code: coating.coating,
      title: coating.name,
      limits: coatingLimits(coating),
    })),
    ...(job.answers.conditions.shelter.value === 'open'
      ? [
          {
            code: 'dry-deck',
            title: 'Cutting, grinding, masking and fitting out',
            limits: { kind: 'dry-deck' } as const,
          },
        ]
      : []),
  ];
}

/** Those that some work waits for: a spot that is not painted waits for no paint. */
export const gatesOf = (groups: readonly GateGroup[], waited: readonly string[]): readonly GateGroup[] =>
  groups.filter(({ code, limits }) => waited.includes(limits.kind === 'coating' ? 'coating' : code));
