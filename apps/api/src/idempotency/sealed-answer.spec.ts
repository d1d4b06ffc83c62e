import { expect, test } from '@jest/globals';
import { opened, sealed } from './sealed-answer.js';

const answer = { status: 201, headers: { Location: '/v1/keys/1' }, body: { key: 'kp_shown_once' } };

test('an answer is opened by the key that sealed it, and by no other', () => {
  const bytes = sealed(answer, 'kp_mine');
  expect(opened(bytes, 'kp_mine')).toEqual(answer);
  expect(opened(bytes, 'kp_theirs')).toBeUndefined();
  expect(Buffer.from(bytes).toString('latin1')).not.toContain('kp_shown_once');
});

test('an answer that was changed is not opened', () => {
  const bytes = Uint8Array.from(sealed(answer, 'kp_mine'));
  bytes[bytes.length - 1] ^= 1;
  expect(opened(bytes, 'kp_mine')).toBeUndefined();
});
