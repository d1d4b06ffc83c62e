import { describe, expect, test } from '@jest/globals';
import { shippedCatalogue } from '#lib/catalogue';
import { jobOf, judgedLadder } from '#lib/estimate';
import { detailOf } from '#lib/kernel';
import { rungNamed, rungCodes, type JobLadder, type RungCode } from '#lib/methods';
import type { Situation } from './situation.js';
import { situations } from './situations.js';

function judgedFor({ record }: Situation): ReturnType<typeof judgedLadder> {
  const job = jobOf(record, shippedCatalogue);
  if (!job.ok) throw new Error(job.problems.map(detailOf).join(' '));
  return judgedLadder(job.value);
}

function ladderOf(situation: Situation): JobLadder {
  const judged = judgedFor(situation);
  if (!judged.ok) throw new Error(judged.problems.map(detailOf).join(' '));
  return judged.value.ladder;
}

/** The rung that the ladder recommends; none where nothing is opened. */
function taken(situation: Situation): string {
  const judged = judgedFor(situation);
  return judged.ok ? (judged.value.ladder.recommended?.method.code ?? 'nothing fits') : NOTHING;
}

const NOTHING = 'none';
/** Situations in which something is bad, and a ladder therefore judged. */
const judged = situations.filter(({ expected }) => expected !== NOTHING);

const codeOf = (name: string): RungCode => {
  const found = rungCodes.find((code) => code === name);
  if (found === undefined) throw new Error(`${name} is no rung`);
  return found;
};

describe('an experienced repairer and the ladder take the same rung for', () => {
  test.each(situations.map((one) => [one.title, one] as const))('%s', (_, one) => {
    const says = taken(one);
    expect(says).toBe(one.disagreement?.says ?? one.expected);
    if (one.disagreement !== undefined) expect(one.disagreement.says).not.toBe(one.expected);
  });
});

describe('what a repairer would refuse is refused with its reason:', () => {
  test.each(
    judged.flatMap((one) =>
      Object.entries(one.unfit ?? {}).map(
        ([rung, word]) => [`${rung} for ${one.id}`, one, rung, word] as const,
      ),
    ),
  )('%s', (_, one, rung, word) => {
    const judged = rungNamed(ladderOf(one).governing, codeOf(rung));
    expect(judged.verdict).toBe('unfit');
    expect(judged.deciding.text).toContain(word);
  });
});

test('every rung says why, and a refused one what would have to change', () => {
  const all = judged.flatMap((one) => ladderOf(one).governing.rungs);
  expect(all.every(({ deciding }) => deciding.text.length > 15)).toBe(true);
  const silent = all.filter(
    ({ verdict, deciding }) => verdict === 'unfit' && deciding.wouldFit === undefined,
  );
  expect(silent.map(({ method, deciding }) => `${method.code} ${deciding.code}`)).toEqual([]);
});
