import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from '@jest/globals';
import { manualPages } from './manual-pages.js';
import { allowedText, differenceText, oursText, significantDigits } from './number-text.js';

const folder = dirname(fileURLToPath(import.meta.url));
const pages = await manualPages(join(folder, '..', '..', '..'));

describe('the verification manual', () => {
  test('says what the cases say: run `npm run manual` and commit', () => {
    const onDisk = new Map(
      readdirSync(folder)
        .filter((name) => /\.(md|svg)$/.test(name))
        .map((name) => [name, readFileSync(join(folder, name), 'utf8')]),
    );
    const stale = [...new Set([...pages.keys(), ...onDisk.keys()])].filter(
      (name) => pages.get(name) !== onDisk.get(name),
    );
    expect(stale).toEqual([]);
  });

  test('holds no case that fails without a reason, and no source that is not listed', () => {
    for (const [name, text] of pages) {
      expect([name, text.includes('**fails**')]).toEqual([name, false]);
      expect([name, text.includes('*not in the list of sources*')]).toEqual([name, false]);
    }
  });
});

describe('numbers in the manual', () => {
  test('show two digits more than were printed', () => {
    expect(oursText(1.2224383917, '1.222', 0.0005)).toBe('1.22244');
    expect(significantDigits('0.00406')).toBe(3);
    expect(significantDigits('5.54e4')).toBe(3);
  });

  test('write a difference as a share of what was printed, and noise as 0', () => {
    expect(differenceText(1.01, '1', 0.1)).toBe('+1 %');
    expect(differenceText(0.99999, '1', 0.1)).toBe('-1.0e-5');
    expect(differenceText(0.1 + 0.2, '0.3', 0.05)).toBe('0');
    expect(allowedText('200', 0.5)).toBe('±0.25 %');
  });
});
