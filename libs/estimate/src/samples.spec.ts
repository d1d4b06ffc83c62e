import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from '@jest/globals';
import { shippedCatalogue } from '#lib/catalogue';
import { detailOf } from '#lib/kernel';
import type { Estimate } from './document/estimate-document.js';
import { estimate } from './estimate.js';

const folder = path.join(import.meta.dirname, '../../../apps/workshop/samples');

function estimated(name: string): Estimate {
  const made = estimate(
    JSON.parse(readFileSync(path.join(folder, `${name}.json`), 'utf8')),
    shippedCatalogue,
    'test',
  );
  if (!made.ok) throw new Error(made.problems.map(detailOf).join(' '));
  return made.value.estimate;
}

describe('an invented sample is mended as a yard would:', () => {
  /**
   * The rungs are what the trade does in such a place. The hours are a fence against a slip of scale and no proof: wide, and
   * drawn round the first answers, but for the stanchion, where methods in print have 2 to 7 h on four bolts.
   */
  test.each([
    ['stanchion', 'ream-and-pot', [2, 7]],
    ['toe-rail', 'edge-rout-and-fill', [3, 14]],
    ['planked-side-deck', 'above-new-skin', [35, 90]],
    ['from-below', 'from-below', [20, 60]],
    ['cockpit-sole', 'whole-panel', [150, 400]],
  ])('%s by %s', (name, rung, [least, most]) => {
    const { methods, summary, totals, process } = estimated(name);
    expect(methods.planned.rung).toBe(rung);
    expect(summary.labourMeanH).toBeGreaterThan(least);
    expect(summary.labourMeanH).toBeLessThan(most);
    expect(Number(totals.range.p10.amount)).toBeLessThan(Number(totals.total.amount));
    expect(process.bondPressure === undefined || process.bondPressure.method !== undefined).toBe(true);
  });
});

test('a place known from a plug alone is worded by what the plug shows, and the sample is counted', () => {
  const [finding] = estimated('stanchion').conclusion.findings;
  expect(finding.condition).toBe('wet-bonded');
  expect(finding.wording.byService).toContain('the core is wet, hard and still bonded to the skins');
  expect(finding.wording.byService).toContain('One core sample was taken.');
});

test('nobody is warned of standing on an inner skin that is cut away from below', () => {
  const codesOf = (name: string): readonly string[] => estimated(name).cautions.map(({ code }) => code);
  expect(codesOf('from-below')).not.toContain('open-inner-skin');
  expect(codesOf('planked-side-deck')).toContain('open-inner-skin');
});

describe('from below', () => {
  const below = estimated('from-below');
  const titles = [
    ...(below.process.calendar?.tasks ?? []).map(({ title }) => title),
    ...below.process.demands.map(({ title }) => title),
    ...below.lines.map(({ title }) => title),
    ...below.checks.map(({ title, remedy }) => `${title} ${remedy ?? ''}`),
  ];

  test('the outer skin is ground and sealed on its underside, and the inner skin is tapered', () => {
    expect(titles).toEqual(
      expect.arrayContaining([
        'Grind the underside of the outer skin, tape its holes from above',
        'Seal the underside of the outer skin',
        'Taper the inner skin round the opening on its face below, vacuum and solvent wipe',
      ]),
    );
    expect(titles.filter((title) => /(seal|grind|prop) (it|the inner skin)/i.test(title))).toEqual([]);
  });

  test('a ply beyond two goes on once those above are tacky, because two that are wet hang badly', () => {
    const task = (code: string) => below.process.calendar?.tasks.find((one) => one.code === code);
    const [first, further] = [task('laminate-top'), task('laminate-extra-ply')];
    expect(further?.title).toContain('tacky');
    expect(further?.startDay ?? 0).toBeGreaterThan(first?.endDay ?? Infinity);
  });

  test('the skin that is left is the outer one, checked by how far the jacks lift it', () => {
    const opened = below.checks.filter(({ state }) => state === 'opened');
    expect(opened.map(({ code }) => code)).toEqual(['open-skin-lift']);
    expect(below.panel?.states.map(({ state }) => state)).toEqual(['as-built', 'as-found', 'repaired']);
    expect(below.assumptions.filter(({ at }) => at.startsWith('/opened'))).toEqual([]);
  });

  test('nothing is cut, painted or matched on deck', () => {
    const codes = below.cautions.map(({ code }) => code);
    expect(codes).toContain('cut-through-deck');
    expect(codes.filter((code) => ['cut-too-deep', 'nonskid-match', 'resin-rain'].includes(code))).toEqual(
      [],
    );
  });
});

test('an assumed figure is said with digits that a reader can use', () => {
  const values = estimated('from-below').assumptions.map(({ value }) => value);
  expect(values.filter((value) => /\d\.\d{5}/.test(value))).toEqual([]);
});
