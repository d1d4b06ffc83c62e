import { randomBytes } from 'node:crypto';
import { expect, test } from '@jest/globals';
import { SecretSeal } from './secret-seal.js';
import { newSecret } from './signature.js';

const [older, newer] = [randomBytes(32), randomBytes(32)];
const secret = newSecret();

test('a sealed secret shows nothing of itself, looks different each time, and is opened for its endpoint', () => {
  const seal = new SecretSeal([newer]);
  const [first, second] = [seal.seal(secret, 'mine'), seal.seal(secret, 'mine')];
  expect(first).not.toContain(secret.slice('whsec_'.length));
  expect(first).not.toBe(second);
  expect([first, second].map((kept) => seal.open(kept, 'mine'))).toEqual([secret, secret]);
});

test('a secret is opened neither beside another endpoint, nor by another key, nor when it was changed', () => {
  const kept = new SecretSeal([newer]).seal(secret, 'mine');
  const changed = `${kept.slice(0, -8)}AAAAAAA=`;
  expect(new SecretSeal([newer]).open(kept, 'theirs')).toBeUndefined();
  expect(new SecretSeal([older]).open(kept, 'mine')).toBeUndefined();
  expect(new SecretSeal([newer]).open(changed, 'mine')).toBeUndefined();
  expect(new SecretSeal([newer]).open('sealed:', 'mine')).toBeUndefined();
});

test('after a rotation the older key still opens what it sealed, and the newer one seals', () => {
  const before = new SecretSeal([older]).seal(secret, 'mine');
  const rotated = new SecretSeal([newer, older]);
  expect(rotated.open(before, 'mine')).toBe(secret);
  expect(new SecretSeal([newer]).open(rotated.seal(secret, 'mine'), 'mine')).toBe(secret);
});

test('without a key secrets stand as they are, and those from before there was one are still opened', () => {
  expect(new SecretSeal([]).seal(secret, 'mine')).toBe(secret);
  expect(new SecretSeal([newer]).open(secret, 'mine')).toBe(secret);
});
