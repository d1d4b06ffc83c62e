import { expect, test } from '@jest/globals';
import { inOrder } from './in-order.js';
import { refusal, success } from './outcome.js';
import { problem } from './problem.js';

test('each stage is given all that stands before it', () => {
  const done = inOrder({ plank: 2 })
    .then('beam', ({ plank }) => success(plank + 3))
    .then('deck', ({ plank, beam }) => success(plank * beam))
    .done();
  expect(done).toEqual(success({ plank: 2, beam: 5, deck: 10 }));
});

test('a stage that refuses ends the line, and no later stage is asked', () => {
  const asked: string[] = [];
  const done = inOrder({ plank: 2 })
    .then('beam', () => refusal(problem('missing', '/beam', { expected: 'a beam' })))
    .then('deck', () => {
      asked.push('deck');
      return success(1);
    })
    .done();
  expect(done.ok ? [] : done.problems.map(({ at }) => at)).toEqual(['/beam']);
  expect(asked).toEqual([]);
});
