import { answeredIn, enteredOrAssumed } from '#lib/asking';
import type { Figure } from '#lib/provenance';
import type { CoreType } from '#lib/catalogue';
import { criteriaQuestions, type Criteria } from './panel-request.js';
import { coreShearShare } from '../yardstick/yardstick.js';

export interface ResolvedCriteria {
  readonly skinShare: Figure<'1'>;
  readonly coreShearShare: (coreType: CoreType) => Figure<'1'>;
  readonly coreCrushShare: Figure<'1'>;
  readonly spanOverDeflection: Figure<'1'>;
}

/** What to judge by: as given, or the yardstick's own shares stated as assumptions. */
export const criteriaOf = (given: Criteria): ResolvedCriteria => ({
  skinShare: judgedBy('skinShare', given),
  coreShearShare: (coreType) =>
    enteredOrAssumed(
      '1',
      given.coreShearShare,
      `usable share of the shear strength of ${coreType.replaceAll('-', ' ')}`,
      {
        at: '/criteria/coreShearShare',
        value: coreShearShare[coreType],
        because: 'the small-craft yardstick; class rules take 0.3 to 0.65',
        cite: { source: 'ISO-12215-5-2008', clause: 'table 11' },
        low: 0.3,
        high: 0.65,
      },
    ),
  coreCrushShare: judgedBy('coreCrushShare', given),
  spanOverDeflection: judgedBy('spanOverDeflection', given),
});

const judgedBy = (
  field: 'skinShare' | 'coreCrushShare' | 'spanOverDeflection',
  given: Criteria,
): Figure<'1'> => answeredIn(criteriaQuestions[field], given[field], `/criteria/${field}`);
