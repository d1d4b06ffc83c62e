import { describe, expect, test } from '@jest/globals';
import { cautionRules } from '#lib/cautions';
import { operations } from '#lib/work';
import { jobLadder } from './combine.js';
import type { DeckFacts, PlaceFacts } from './facts.js';
import { ladderFor, rungNamed } from './ladder.js';
import { solidOverCoreKgPerM2 } from './limits.js';
import { rungCodes } from './method.js';
import { methods } from './rungs/all.js';
import { fillFor } from './rungs/edge.js';

const deck = (changes: Partial<DeckFacts> = {}): DeckFacts => ({
  outerSkinMm: 3,
  innerSkinMm: 2,
  coreMm: 12.7,
  outerSkin: 'unknown',
  surface: 'painted-nonskid',
  overlay: 'none',
  below: 'lined',
  lining: 'unknown',
  workingHeightMm: 'unknown',
  obstaclesBelow: [],
  badShare: 0.1,
  zoneCount: 1,
  panelAreaM2: 2,
  finish: 'panel',
  daysAvailable: 'unknown',
  isFreezeExpected: 'unknown',
  shelter: 'tent',
  ...changes,
});

const zone = (changes: Partial<PlaceFacts> = {}): PlaceFacts => ({
  id: 'Z1',
  kind: 'zone',
  badAreaM2: 0.2,
  longMm: 500,
  narrowMm: 400,
  core: 'wet-rotten',
  moisturePercent: 'unknown',
  isProvenByPlug: false,
  wetReachMm: 'unknown',
  fittings: [],
  edge: 'none',
  ...changes,
});

const verdictOf = (code: (typeof rungCodes)[number], place: PlaceFacts, on: DeckFacts = deck()) =>
  rungNamed(ladderFor({ deck: on, place }), code);

describe('the ladder', () => {
  test('knows every rung once, in the order in which a repairer considers them', () =>
    expect(methods.map(({ code }) => code)).toEqual([...rungCodes]));

  test('names only operations and cautions that exist', () => {
    const known = new Set([...operations, ...cautionRules].map(({ code }) => code));
    const named = methods.flatMap((method) => [...method.operations, ...method.cautions]);
    expect(named.filter((code) => !known.has(code))).toEqual([]);
  });

  test('draws the inner section and the mirrored plan for the one that cuts the inner skin', () => {
    const inner = methods.filter(({ cutSide }) => cutSide === 'inner');
    expect(inner.map(({ code, drawings }) => [code, drawings])).toEqual([
      ['from-below', ['mirrored-plan', 'inner-section']],
    ]);
  });
});

describe('a threshold decides at its number:', () => {
  const stanchion = {
    id: 'S1',
    kind: 'stanchion',
    holes: 4,
    isHighlyLoaded: false,
    isLeaking: true,
    isOnPlace: true,
    baseMm: 75,
  } as const;
  const wet = (wetReachMm: number): PlaceFacts =>
    zone({ kind: 'fitting', badAreaM2: 0.01, core: 'wet-bonded', wetReachMm, fittings: [stanchion] });

  test.each([
    [18, 'fit'],
    [25, 'fit'],
    [28, 'fit-with-conditions'],
    [33, 'unfit'],
  ] as const)('wet core %s mm from the hole is potted: %s', (reachMm, verdict) =>
    expect(verdictOf('ream-and-pot', wet(reachMm)).verdict).toBe(verdict),
  );

  test('a pocket over 6 x 12 in is cut, not dug', () => {
    expect(verdictOf('ream-and-pot', { ...wet(20), badAreaM2: 0.045 }).verdict).toBe('fit');
    expect(verdictOf('ream-and-pot', { ...wet(20), badAreaM2: 0.047 }).deciding.limit).toBe(0.046);
  });

  const loose = zone({ core: 'dry-debonded', isProvenByPlug: true, moisturePercent: 10, badAreaM2: 0.09 });
  test.each([
    ['0.09 m2, dry', {}, 'fit'],
    ['0.15 m2, dry', { badAreaM2: 0.15 }, 'fit-with-conditions'],
    ['0.21 m2', { badAreaM2: 0.21 }, 'unfit'],
    ['13 % of moisture', { moisturePercent: 13 }, 'unfit'],
    ['no plug', { isProvenByPlug: false }, 'unfit'],
    ['a fitting near', { fittings: [stanchion] }, 'unfit'],
  ] as const)('injection of %s', (_, changes, verdict) =>
    expect(verdictOf('inject', { ...loose, ...changes }).verdict).toBe(verdict),
  );

  test.each([
    [599, 'unfit'],
    [600, 'fit'],
  ] as const)('%s mm of height below: %s', (workingHeightMm, verdict) =>
    expect(verdictOf('from-below', zone(), deck({ lining: 'screwed-panels', workingHeightMm })).verdict).toBe(
      verdict,
    ),
  );

  test('a moulded liner and a tank refuse the way from below, and say what would fit', () => {
    const liner = verdictOf('from-below', zone(), deck({ lining: 'moulded-liner', workingHeightMm: 1200 }));
    const tank = verdictOf(
      'from-below',
      zone(),
      deck({ lining: 'none', workingHeightMm: 1200, obstaclesBelow: ['water-tank'] }),
    );
    expect(
      [liner, tank].map(({ verdict, deciding }) => [verdict, deciding.code, deciding.wouldFit !== undefined]),
    ).toEqual([
      ['unfit', 'moulded-liner', true],
      ['unfit', 'tank-below', true],
    ]);
  });

  test.each([
    [24, 'paste'],
    [30, 'solid-laminate'],
    [70, 'dense-strip'],
    [75, 'core'],
  ] as const)('a strip of %s mm from an open side is filled with %s', (widthMm, fill) =>
    expect(fillFor(widthMm, false)).toBe(fill),
  );

  test('under a lip core begins at 100 mm', () =>
    expect([fillFor(99, true), fillFor(100, true)]).toEqual(['dense-strip', 'core']));

  test('solid laminate weighs 20 kg on the square metre more than half-inch balsa', () =>
    expect(solidOverCoreKgPerM2(12.7)).toBeCloseTo(19.7, 1));
});

describe('several places', () => {
  const stanchion = {
    id: 'S1',
    kind: 'stanchion',
    holes: 4,
    isHighlyLoaded: false,
    isLeaking: true,
    isOnPlace: true,
    baseMm: 75,
  } as const;
  const recored = zone({ badAreaM2: 0.4 });
  const potted = zone({
    id: 'S1',
    kind: 'fitting',
    badAreaM2: 0.006,
    core: 'wet-bonded',
    wetReachMm: 15,
    fittings: [stanchion],
  });
  const second = zone({ id: 'Z2', badAreaM2: 0.1 });

  test('are mended each in its own way, and openings share theirs', () => {
    const job = jobLadder(deck({ zoneCount: 2 }), [potted, recored, second]);
    expect(job.governing.place.id).toBe('Z1');
    expect(job.combination.map(({ place, rung }) => [place.id, rung.method.code])).toEqual([
      ['S1', 'ream-and-pot'],
      ['Z1', 'above-new-skin'],
      ['Z2', 'above-new-skin'],
    ]);
  });

  test('the recommended rung comes with the next best', () => {
    const { recommended, runnerUp } = jobLadder(deck(), [recored]);
    expect([recommended?.method.code, runnerUp?.verdict !== 'unfit']).toEqual(['above-new-skin', true]);
  });
});

describe('a leak over dry core', () => {
  const leak = zone({
    id: 'Crack in the skin',
    kind: 'leak',
    badAreaM2: 0,
    core: 'dry-sound',
    isProvenByPlug: true,
  });

  test('is stopped by itself, and every other rung says why it is not taken', () => {
    const { rungs, inOrder } = ladderFor({ deck: deck(), place: leak });
    expect(inOrder.map(({ method, verdict }) => [method.code, verdict])).toEqual([['close-leak', 'fit']]);
    const others = rungs.filter(({ method }) => method.code !== 'close-leak');
    expect(others.every(({ deciding }) => deciding.wouldFit !== undefined)).toBe(true);
  });

  test('is read again where the core is damp', () => {
    const { verdict, deciding } = verdictOf('close-leak', { ...leak, core: 'damp-sound' });
    expect([verdict, deciding.code]).toEqual(['fit-with-conditions', 'read-again']);
  });

  test('is no rung of a place with bad core', () => {
    expect(verdictOf('close-leak', zone()).verdict).toBe('unfit');
  });
});
