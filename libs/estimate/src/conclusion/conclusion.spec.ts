import { describe, expect, test } from '@jest/globals';
import { shippedCatalogue } from '#lib/catalogue';
import { aRecord } from '../../../../test/samples/a-record.js';
import type { DefectRecord } from '../job/defect-record.js';
import { estimate } from '../estimate.js';
import { gradeOf } from './grading.js';

const concludedOf = (record: DefectRecord) => {
  const made = estimate(record, shippedCatalogue, 'test');
  if (!made.ok) throw new Error(JSON.stringify(made.problems));
  return made.value.estimate;
};

const square = (id: string, x: number, y: number) => ({
  id,
  outline: [
    [x, y],
    [x + 400, y],
    [x + 400, y + 300],
    [x, y + 300],
  ] as const,
  condition: 'wet-rotten' as const,
});

/**
 * Three classes, safety first, then what has a date, then what is watched: guides for surveyors read second-hand. What
 * falls into which class is common practice, no published source.
 */
describe('the class of a finding', () => {
  const subject = { about: 'Z1', areaM2: 0.1, fittings: [] };
  const windlass = { id: 'W', kind: 'windlass', isLeaking: false } as const;
  test.each([
    ['rot under a windlass', 'wet-rotten', [windlass], 'before-use'],
    ['rot under a vent', 'wet-rotten', [{ ...windlass, kind: 'vent' as const }], 'next-opportunity'],
    ['damp core, hard and bonded', 'wet-bonded', [], 'monitor'],
    [
      'damp core at a fitting that leaks',
      'wet-bonded',
      [{ ...windlass, isLeaking: true }],
      'next-opportunity',
    ],
    ['a loose dry skin', 'dry-debonded', [], 'next-opportunity'],
  ] as const)('%s', (_, condition, fittings, expected) => {
    expect(gradeOf({ ...subject, condition, fittings }).class).toBe(expected);
  });
});

describe('what an estimate concludes', () => {
  const record = aRecord({ zones: [square('Z1', 500, 300)] });
  const made = concludedOf(record);
  const { conclusion } = made;

  test('has one finding for each zone, with where it is, how large, and how that is known', () => {
    expect(conclusion.findings.map(({ about }) => about)).toEqual(['Z1']);
    expect(conclusion.findings[0].wording.text).toContain('500 to 900 mm forward of its aft edge');
    expect(conclusion.findings[0].wording.text).toContain('0.12 m2');
  });

  test('puts the words of the surveyor in their place and keeps those of the service beside them', () => {
    const stated = concludedOf({
      ...record,
      findings: [
        { about: 'Z1', class: 'monitor', wording: 'Soft underfoot.' },
        { about: 'bow-rail', wording: 'Loose at its feet.' },
      ],
    });
    const [first, second] = stated.conclusion.findings;
    expect([first.class, first.classByService]).toEqual(['monitor', conclusion.findings[0].class]);
    expect(first.wording).toEqual({
      text: 'Soft underfoot.',
      byService: conclusion.findings[0].wording.byService,
      isSurveyors: true,
    });
    expect(first.recommendation.isSurveyors).toBe(false);
    expect(second.wording.text).toBe('Loose at its feet.');
    expect(stated.totals).toEqual(made.totals);
  });

  test('says who and what without touching a figure', () => {
    const named = concludedOf({
      ...record,
      vessel: { name: 'Invented' },
      parties: { client: 'An invented owner', surveyor: { name: 'An invented surveyor' } },
      inspection: { lies: 'ashore', on: '2027-02-01' },
      occurrence: { cause: 'worn bedding' },
    });
    expect(named).toEqual(made);
  });

  test('says what is looked at again with what passes, the hold point first', () => {
    expect(conclusion.reinspection[0].before).toContain('hold point');
    expect(conclusion.reinspection.every(({ accept, by }) => accept !== '' && by !== '')).toBe(true);
    expect(conclusion.reinspection[0].accept).toContain('12 % moisture');
  });

  test('resolves every source that it names', () => {
    const known = new Set(made.bibliography.map(({ key }) => key));
    const named = [
      ...made.checks,
      ...made.cautions,
      ...made.assumptions,
      ...made.hardware,
      ...conclusion.reinspection,
    ].map(({ source }) => source);
    expect(named.filter((key) => !known.has(key))).toEqual([]);
    expect(made.bibliography.map(({ number }) => number)).toEqual(
      made.bibliography.map((_, index) => index + 1),
    );
  });
});
