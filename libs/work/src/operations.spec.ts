import { describe, expect, test } from '@jest/globals';
import { labourFor, modifiers, operations, type OperationFlags } from './index.js';

const flags: OperationFlags = {
  skin: 'relay',
  access: 'from-above',
  condition: 'wet-rotten',
  press: 'weights',
  shelter: 'shed',
  below: 'open',
  skill: 'professional',
  props: 'needed',
  finish: 'painted',
  nonskid: 'yes',
  berth: 'ashore',
  panel: 'flat',
};
/** The section of 32 square feet whose yard quote implies 76 to 105 hours. */
const quotedSection = {
  'opened-m2': 2.97,
  'cut-m': 7.3,
  'taper-m': 7.3,
  'laminate-m2': 3.5,
  'faired-m2-cycle': 4 * 4,
  'primed-m2-coat': 8,
  'topcoat-m2-coat': 8,
  'finish-m2': 4,
  'nonskid-m2': 4,
  'hole': 24,
  'fitting-off-h': 3,
  'fitting-on-h': 3.5,
  'fitting-helped-h': 3.5,
};
const totalOf = (amounts: Parameters<typeof labourFor>[0], choices: OperationFlags) => {
  const outcome = labourFor(amounts, choices);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value.reduce(
    (sum, { hours }) => ({
      low: sum.low + hours.low,
      likely: sum.likely + hours.likely,
      high: sum.high + hours.high,
    }),
    { low: 0, likely: 0, high: 0 },
  );
};

describe('the operations of the trade', () => {
  test('every code is its own and every predecessor exists and comes earlier', () => {
    const codes = operations.map(({ code }) => code);
    expect(new Set(codes).size).toBe(codes.length);
    for (const { code, after } of operations) {
      for (const before of after)
        expect([code, codes.indexOf(before) >= 0 && codes.indexOf(before) < codes.indexOf(code)]).toEqual([
          code,
          true,
        ]);
    }
  });

  test('low, likely and high stand in order in every rate and every modifier', () => {
    for (const { hours } of operations)
      expect(hours.low <= hours.likely && hours.likely <= hours.high).toBe(true);
    for (const { factor } of modifiers)
      expect(factor.low <= factor.likely && factor.likely <= factor.high).toBe(true);
  });

  test('nothing is cut before the skin that stays is propped', () => {
    expect(operations.find(({ code }) => code === 'cut-skin')?.after).toContain('prop');
  });

  test('three square metres with finish come to the order of hours a yard quoted for them', () => {
    const { low, likely, high } = totalOf(quotedSection, flags);
    expect(likely).toBeGreaterThan(76);
    expect(likely).toBeLessThan(115);
    expect(low).toBeLessThan(76);
    expect(high).toBeGreaterThan(105);
  });

  test('working overhead costs about twice the hours of what is overhead and nothing of the rest', () => {
    const below = labourFor(quotedSection, { ...flags, access: 'from-below' });
    const above = labourFor(quotedSection, flags);
    const hoursOf = (outcome: typeof below, code: string) =>
      outcome.ok ? outcome.value.find((line) => line.code === code)?.hours.likely : undefined;
    expect(hoursOf(below, 'bed-core')! / hoursOf(above, 'bed-core')!).toBeCloseTo(2.1, 12);
    expect(hoursOf(below, 'clean-up')).toBe(hoursOf(above, 'clean-up'));
    expect(hoursOf(below, 'prime')).toBeUndefined();
  });

  test('whatever is counted by area goes faster on a large flat panel, and what is counted otherwise does not', () => {
    const byArea = [
      'opened-m2',
      'laminate-m2',
      'extra-ply-m2',
      'faired-m2-cycle',
      'primed-m2-coat',
      'topcoat-m2-coat',
      'finish-m2',
      'nonskid-m2',
    ];
    const offDeck = ['clean-saved-skin'];
    for (const { code, driver, strains } of operations.filter(
      (one) => byArea.includes(one.driver) && !offDeck.includes(one.code),
    ))
      expect([code, driver, strains.includes('by-area')]).toEqual([code, driver, true]);
  });

  test('an owner takes longer over everything but the daily set-up, whose time is that of owners already', () => {
    const [owner, hand] = (['owner', 'professional'] as const).map((skill) =>
      labourFor({ ...quotedSection, day: 10 }, { ...flags, skill }),
    );
    if (!owner.ok || !hand.ok) throw new Error('refused');
    const ratios = owner.value.map(
      (line, index) => [line.code, line.hours.likely / hand.value[index].hours.likely] as const,
    );
    expect(ratios.filter(([, ratio]) => Math.abs(ratio - 2) > 1e-12)).toEqual([['daily-set-up', 1]]);
  });

  test('a re-bedded skin is cleaned, bedded and taped; a relaid one is laminated instead', () => {
    const codes = (skin: 're-bed' | 'relay') => {
      const outcome = labourFor(quotedSection, { ...flags, skin });
      return outcome.ok ? outcome.value.map(({ code }) => code) : [];
    };
    expect(codes('re-bed')).toEqual(expect.arrayContaining(['clean-saved-skin', 'bed-skin', 'close-seam']));
    expect(codes('re-bed')).not.toContain('laminate-top');
    expect(codes('relay')).toContain('laminate-top');
    expect(codes('relay')).not.toContain('bed-skin');
  });

  test('a driver that is negative, unheard of or not a number is named, all at once', () => {
    const outcome = labourFor({ 'hole': -1, 'cut-m': Number.NaN, ...JSON.parse('{"acre": 2}') }, flags);
    expect(outcome.ok ? [] : outcome.problems.map(({ code, at }) => [code, at])).toEqual([
      ['out-of-range', '/hole'],
      ['not-a-number', '/cut-m'],
      ['not-one-of', '/acre'],
    ]);
  });
});
