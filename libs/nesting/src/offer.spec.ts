import { describe, expect, test } from '@jest/globals';
import { offerFor } from './offer.js';

describe('what to do about a piece that is too large', () => {
  const sheet = { width: 1220, height: 610 };

  test('the fewest parts are named, on the sheet that needs fewest', () => {
    expect(offerFor({ width: 1300, height: 610 }, [{ width: 600, height: 600 }, sheet])).toBe(
      'cut it into 2 parts of at most 650 x 610 mm, or add larger stock',
    );
    expect(offerFor({ width: 2500, height: 700 }, [sheet])).toBe(
      'cut it into 6 parts of at most 833.4 x 350 mm, or add larger stock',
    );
  });

  test('a quarter turn that would do is named first', () => {
    expect(offerFor({ width: 500, height: 1000 }, [sheet])).toBe(
      'allow a quarter turn more, in which it fits, or cut it into 2 parts of at most 500 x 500 mm, or add larger stock',
    );
  });

  test('where the trim takes everything no split helps', () => {
    expect(offerFor({ width: 10, height: 10 }, [{ width: 400, height: -5 }])).toBe(
      'add larger stock: the trimmed edges leave no room on this',
    );
  });
});
