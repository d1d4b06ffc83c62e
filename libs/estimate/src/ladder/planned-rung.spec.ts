import { expect, test } from '@jest/globals';
import { shippedCatalogue } from '#lib/catalogue';
import { detailOf } from '#lib/kernel';
import { randomJobs } from '../../../../test/property/random-jobs.js';
import { aRecord } from '../../../../test/samples/a-record.js';
import type { DefectRecord } from '../job/defect-record.js';
import { jobOf } from '../job/job.js';
import { keptWork } from '../kept-work.js';
import { ladderOf, type RungsShown } from './method-ladder.js';

/** What is done at which place, or the words of the refusal. */
function choiceOf(record: DefectRecord, shown: RungsShown): readonly string[] {
  const job = jobOf(record, shippedCatalogue);
  const ladder = job.ok ? ladderOf(job.value, keptWork(), shown) : job;
  return ladder.ok
    ? [
        ladder.value.chosen.deciding.text,
        ...ladder.value.combination.map(({ place, rung }) => `${place.id} ${rung.method.code}`),
      ]
    : ladder.problems.map(detailOf);
}

const panel = { ...aRecord().panel, accessBelow: 'none', camberRadiusMm: 2500 } as const;
const stiff = aRecord({ panel, core: { thicknessMm: 19, coreType: 'marine-plywood' } });

test('who is shown the planned rung alone gets the one that stands when all are looked at, or the same refusal', () => {
  const random = randomJobs(5, 11).map(({ record }) => record);
  const tight = random.map((record): DefectRecord => ({
    ...record,
    panel: { ...record.panel, coreEndsMm: 120, camberRadiusMm: 2500, accessBelow: 'none' },
  }));
  const named = random.map((record): DefectRecord => ({ ...record, method: { rung: 'from-below' } }));
  const records = [
    ...random,
    ...tight,
    ...named,
    stiff,
    { ...stiff, method: { rung: 'above-new-skin' } },
  ] as const;
  const all = records.map((record) => choiceOf(record, 'all'));
  expect(records.map((record) => choiceOf(record, 'planned'))).toEqual(all);
  expect(new Set(all.map((choice) => choice.join(' '))).size).toBeGreaterThan(5);
});
