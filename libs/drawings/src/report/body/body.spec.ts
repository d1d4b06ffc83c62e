import { describe, expect, test } from '@jest/globals';
import { sampleRequest, smallSample } from '../../../../../test/support/sample-estimate.js';
import type { Block } from '../document.js';
import { reportOf } from '../estimate-report.js';
import type { ReportRequest } from '../request.js';

const textsOf = (block: Block): readonly string[] => {
  switch (block.kind) {
    case 'paragraph':
      return [block.text];
    case 'list':
      return block.items;
    case 'facts':
      return block.rows.map(({ name, value }) => `${name}: ${value}`);
    case 'table':
      return block.rows.map(({ cells, note }) => [...cells, note ?? ''].join(' '));
    case 'figure':
    case 'photograph':
      return [block.caption];
    case 'callout':
      return [block.text];
    case 'cards':
      return block.figures.map(({ caption }) => caption);
    case 'signature':
      return block.fields;
  }
};

const bodySections = (request: ReportRequest) =>
  reportOf({ ...request, annexes: [] }).sections.filter(({ layout }) => layout === 'body');

const saidInBody = (request: ReportRequest): string =>
  bodySections(request)
    .flatMap(({ title, blocks }) => [title, ...blocks.flatMap(textsOf)])
    .join('\n');

/** An invented inspection with everything that a record can say about it. */
const whole = (): ReportRequest => {
  const request = sampleRequest(smallSample);
  return {
    ...request,
    purpose: 'damage',
    record: {
      ...request.record,
      vessel: {
        name: 'Invented Vessel',
        builder: 'Invented Builders',
        model: 'Model Thirty',
        registration: 'REG 0001',
        hullNumber: 'HIN 0002',
      },
      inspection: {
        place: 'Invented Harbour',
        lies: 'ashore',
        on: '2026-02-14',
        conditions: 'dry, 12 degrees',
        instruments: 'meter of invented make',
        notInspected: 'The keel was not inspected.',
      },
      parties: {
        client: 'The invented client',
        instructedBy: 'The invented broker',
        surveyor: { name: 'The invented surveyor', qualification: 'invented qualification' },
      },
      occurrence: { cause: 'bedding that had gone hard', insurerReference: 'CLAIM 0003' },
    },
  };
};

/**
 * What a survey report must hold, item by item. Sources, read in excerpt: report criteria of an association of marine
 * surveyors (vessel, client, place and date, purpose, afloat or ashore, findings with photographs); a standards council's
 * page on what a survey provides (conditions); an institute's magazine and a lawyers' article on report writing (findings
 * graded, action and how to verify it, who instructs, opinion named as such); surveyors' published terms (limits,
 * signature); an adjusters' guide (cause, cost, hidden damage).
 */
describe('the body holds what survey guidance demands', () => {
  const body = saidInBody(whole());

  test.each([
    ['name of the vessel', /Invented Vessel/],
    ['builder and model', /Invented Builders, Model Thirty/],
    ['type, length and year', /hull 9\.80 m, built 1984/],
    ['registration', /REG 0001/],
    ['hull number', /HIN 0002/],
    ['place of the inspection, ashore or afloat', /Invented Harbour, ashore/],
    ['day of the inspection', /14 February 2026/],
    ['conditions', /dry, 12 degrees/],
    ['instruments', /meter of invented make/],
    ['client', /The invented client/],
    ['who gave the instruction', /The invented broker/],
    ['insurer’s reference', /CLAIM 0003/],
    ['a class for each finding', /Before use|At the next opportunity|Monitor/],
    ['what may not be done until then', /Until it is repaired/],
    ['a recommendation with one action', /Recommendation, .*: (Repair it|Stop the water)/],
    ['how the recommendation is verified', /Verify by/],
    ['cause, named as opinion', /Cause, in the opinion of the surveyor: bedding that had gone hard/],
    ['cost of the repair with its range', /Four jobs in five cost EUR/],
    ['what is paid as measured, for hidden damage', /paid as measured at the hold point/],
    ['what was not inspected', /The keel was not inspected\./],
    ['limits of what was seen', /not (seen|inspected)/],
    ['re-inspection before something is closed', /Re-inspection\n.*before /],
    ['statement without prejudice, and no guarantee', /without prejudice .* no guarantee/],
    ['name and qualification of who signs', /Surveyor: The invented surveyor, invented qualification/],
    ['place and date of the signature', /Place, Date/],
  ] as const)('%s', (_, pattern) => {
    expect(body).toMatch(pattern);
  });

  test('under a title that says its purpose', () => {
    expect(reportOf(whole()).title).toMatch(/^Damage report/);
  });

  test('and names what nobody stated', () => {
    const bare = saidInBody(sampleRequest(smallSample));
    expect(bare).toMatch(
      /Not stated: name of the vessel, builder and model, registration, hull number, place of the inspection, .*surveyor and qualification/,
    );
  });

  test('in numbers that match the photographs on the plan', () => {
    const [figure] = bodySections(whole())
      .flatMap(({ blocks }) => blocks)
      .filter((block) => block.kind === 'figure');
    expect(figure?.svg).toContain('>ph. 1</text>');
    expect(figure?.svg).not.toContain('>ph. 2</text>');
  });
});

/**
 * Grade of reading: 0.39 words a sentence + 11.8 syllables a word - 15.59, and reading ease: 206.835 - 1.015 words a
 * sentence - 84.6 syllables a word. What ends at a colon or semicolon counts as a sentence, as Flesch counts it.
 *
 * Source: Kincaid, Fishburne, Rogers, Chissom 1975, and Flesch 1948; from memory.
 */
function readingOf(text: string): { readonly grade: number; readonly ease: number } {
  const sentences = text.split(/[.!?:;]+(?=\s|$)/).filter((sentence) => /\p{L}/u.test(sentence));
  const words = sentences.flatMap((sentence) => sentence.match(/[\p{L}'’-]+/gu) ?? []);
  const syllables = words.reduce((sum, word) => sum + syllablesIn(word), 0);
  const [length, weight] = [words.length / sentences.length, syllables / words.length];
  return { grade: 0.39 * length + 11.8 * weight - 15.59, ease: 206.835 - 1.015 * length - 84.6 * weight };
}

/** Groups of vowels, a silent e at the end not counted. */
function syllablesIn(word: string): number {
  const plain = word
    .toLowerCase()
    .replace(/(?:[^laeiouy]es|ed|[^laeiouy]e)$/, '')
    .replace(/^y/, '')
    .replace(/([aeiouy])ing$/, '$1-ing');
  const groups = plain.match(/[aeiouy]{1,2}/g) ?? [];
  return Math.max(1, groups.length);
}

describe('the body reads as plain English', () => {
  test('by a measure that gives the values printed for known sentences', () => {
    expect(readingOf('The cat sat on the mat.').ease).toBeCloseTo(116, 0);
    expect(
      readingOf('This sentence, taken as a reading passage unto itself, is being used to prove a point.')
        .ease,
    ).toBeCloseTo(69, 0);
  });

  test('below grade eight, as is asked of texts for everybody', () => {
    const prose = bodySections(whole())
      .flatMap(({ blocks }) => blocks)
      .flatMap((block) =>
        block.kind === 'paragraph' ? [block.text] : block.kind === 'list' ? block.items : [],
      )
      .join('\n');
    expect(readingOf(prose).grade).toBeLessThan(8);
  });
});
