import { describe, expect, test } from '@jest/globals';
import { defaultReader, lengthText, type Reader } from '../reader.js';
import { sampleRequest, smallSample } from '../../../../test/support/sample-estimate.js';
import { landscape, phone, portrait } from '../sheet/formats.js';
import { textBox, textMarks } from '../sheet/marks.js';
import { withUnitSigns } from '../sheet/unit-signs.js';
import { english, type Words } from '../words/english.js';
import type { Block, ReportDocument } from './document.js';
import { annexesFor } from './annexes.js';
import { drawingNames, namedDrawing } from './drawings.js';
import { reportOf } from './estimate-report.js';
import { jobPackOf } from './job-pack.js';
import { annexNames, purposes } from './request.js';
import { opened } from '../../../../test/samples/opened.js';

const many = { lines: 60, fittings: 40, zones: 6, nameLength: 0 };
const long = { lines: 24, fittings: 12, zones: 6, nameLength: 180 };

describe.each([
  ['a small job', smallSample],
  ['40 fittings and six zones', many],
  ['very long names', long],
] as const)('every drawing of %s', (_, size) => {
  const request = sampleRequest(size);
  test.each([
    ['landscape', landscape('a4')],
    ['portrait', portrait('letter')],
    ['a phone', phone],
  ] as const)('on %s has no text on text', (__, format) => {
    const clashes = drawingNames(request).flatMap((name) => {
      const drawing = namedDrawing(name, request, format)!;
      const boxes = textMarks(drawing.marks).map((mark) => ({ says: mark.text, box: textBox(mark) }));
      return boxes.flatMap(({ says, box: a }, index) =>
        boxes
          .slice(index + 1)
          .filter(
            ({ box: b }) =>
              Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x) > 0.1 &&
              Math.min(a.y + a.height, b.y + b.height) - Math.max(a.y, b.y) > 0.1,
          )
          .map(({ says: other }) => `${name}: ${says} on ${other}`),
      );
    });
    expect(clashes).toEqual([]);
  });
});

describe('the report', () => {
  const report = reportOf(sampleRequest(smallSample));

  test('tells things in the order in which they are judged', () => {
    expect(report.sections.filter(({ level }) => level === 1).map(({ id }) => id)).toEqual([
      'summary',
      'identity',
      'findings',
      'repair',
      'sums',
      'not-inspected',
      'reinspection',
      'statement',
      'acknowledgement',
      'photographs',
      ...annexNames.map((name) => `annex-${name}`),
      'sources',
    ]);
  });

  test('has behind the body what its purpose calls for, and no more', () => {
    for (const purpose of purposes) {
      const annexes = annexesFor[purpose];
      const sections = reportOf({ ...sampleRequest(smallSample), purpose, annexes }).sections;
      expect(sections.flatMap(({ id }) => /^annex-(.*)/.exec(id)?.[1] ?? [])).toEqual(annexes);
    }
  });

  test('puts the worst caution first, and what is no danger to life in a table', () => {
    const severities = report.sections
      .find(({ id }) => id === 'cautions')!
      .blocks.flatMap((block) =>
        block.kind === 'callout'
          ? [block.label]
          : block.kind === 'table'
            ? block.rows.map(({ cells }) => cells[0])
            : [],
      );
    expect(severities).toEqual(['Danger', 'Warning', 'Caution']);
  });

  test('lists behind the annexes every source that they cite, numbered as they cite it, and no other', () => {
    for (const annexes of [['cautions'], ['structure', 'cautions'], annexNames, ['prices']] as const) {
      const { sections } = reportOf({ ...sampleRequest(smallSample), annexes });
      const listed = sections
        .filter(({ id }) => id === 'sources')
        .flatMap(({ blocks }) => blocks)
        .flatMap((block) => (block.kind === 'table' ? block.rows.map(({ cells }) => cells[0]) : []));
      const cited =
        JSON.stringify(sections.filter(({ id }) => id !== 'sources')).match(/\[\d+\](?=[".])/g) ?? [];
      const inOrder = [...new Set(cited.map((one) => one.slice(1, -1)))];
      expect(listed).toEqual(inOrder);
      expect(listed).toEqual(listed.map((_, index) => String(index + 1)));
    }
  });

  test('gives hours and a price, as a person says it, to the ways that fit, and to the others their reason', () => {
    const { blocks } = report.sections.find(({ id }) => id === 'methods')!;
    const rows = blocks.flatMap((block) => (block.kind === 'table' ? block.rows : []));
    expect(rows[0].cells.slice(-1)).toEqual(['EUR\u00a07,210 – EUR\u00a011,900']);
    const reasons = blocks.flatMap((block) => (block.kind === 'list' ? block.items : []));
    expect(reasons).toContain(
      'Re-bed the fitting: the core here is wet and rotten, 0.27 m² of it: new bedding would shut the water in',
    );
  });

  test('says what would make a check pass only of one that fails, and where it governs in a whole phrase', () => {
    const request = sampleRequest(smallSample);
    const [check] = request.estimate.checks;
    const checks = (['passes', 'fails'] as const).map((verdict) => ({
      ...check,
      code: verdict,
      verdict,
      governs: 'at the edge of the load',
      remedy: 'a thicker core',
    }));
    const blocks = reportOf({ ...request, estimate: { ...request.estimate, checks } }).sections.flatMap(
      (section) => section.blocks,
    );
    const notes = blocks
      .flatMap((block) => (block.kind === 'table' ? block.rows : []))
      .flatMap(({ note }) => (note?.startsWith('at the edge') === true ? [note] : []));
    expect(notes).toEqual(['at the edge of the load', 'at the edge of the load. To pass: a thicker core']);
  });

  test('names the few drivers that matter and sums the rest', () => {
    const request = sampleRequest(smallSample);
    const drivers = Array.from({ length: 40 }, (_, index) => ({
      name: `driver ${index}`,
      shareOfVariance: 1 / 40,
    }));
    const totals = { ...request.estimate.totals, drivers };
    const [block] = reportOf({ ...request, estimate: { ...request.estimate, totals } }).sections.find(
      ({ id }) => id === 'drivers',
    )!.blocks;
    expect(block.kind === 'table' ? block.rows.slice(-1).map(({ cells }) => cells) : []).toEqual([
      ['28 others together', '70.0 %'],
    ]);
    expect(block.kind === 'table' ? block.rows.length : 0).toBe(13);
  });
});

describe('the job pack', () => {
  const pack = jobPackOf(sampleRequest(smallSample));

  test('has one sheet for each task, and the hold point among the days', () => {
    const titles = pack.sections.filter(({ layout }) => layout === 'task').map(({ title }) => title);
    expect(titles).toEqual([
      'Before anything else',
      'Plan of the days',
      'Pick list',
      'Mark out',
      'Props and pressing',
      'Fittings',
      'Core pieces, opening A',
      'Core pieces, opening B',
      'Log of moisture and weather',
      'Ply cut sheet, opening A',
      'Ply cut sheet, opening B',
      'Cut, taper and layers',
      'Pot cards',
      'Gates and waits',
    ]);
    const days = pack.sections.find(({ id }) => id === 'plan')!.blocks;
    const holds = days
      .flatMap((block) => (block.kind === 'table' ? block.rows : []))
      .filter(({ emphasis }) => emphasis === 'hold');
    expect(holds).toHaveLength(1);
    expect(JSON.stringify(days)).toContain('HOLD POINT: stop at the line marked Hold.');
  });

  test('has all goods at hand by name and every tool once, on the day that first needs it; sizes and numbers stand in the pick list', () => {
    const sample = sampleRequest(smallSample);
    const named = Object.entries(sample.reader.words.jobPack.tools);
    const { calendar } = sample.estimate.process;
    const tasks = calendar.tasks.map((one, index) => ({ ...one, code: named[index][0] }));
    const process = { ...sample.estimate.process, calendar: { ...calendar, tasks } };
    const request = { ...sample, estimate: { ...sample.estimate, process } };
    const { sections } = jobPackOf(request);
    const rowsOf = (sheet: string): readonly (readonly string[])[] =>
      sections
        .find(({ id }) => id === sheet)!
        .blocks.flatMap((block) => (block.kind === 'table' ? block.rows.map(({ cells }) => cells) : []));
    const plan = rowsOf('plan').map((cells) => cells[1]);
    const picked = rowsOf('pick-list').flatMap(([count, name, second, other]) => [
      `${count} ${name}`,
      `${second} ${other}`,
    ]);
    const bought = request.estimate.lines.flatMap(({ packs }) => packs);
    expect(bought.length).toBeGreaterThan(0);
    for (const { name, count } of bought) {
      const [called] = name.split(', ');
      const days = plan.filter((needed) => needed.includes(called));
      const alike = new Set(bought.map((pack) => pack.name).filter((pack) => pack.startsWith(called)));
      expect([called, days.length > 0 && days.length <= alike.size]).toEqual([called, true]);
      expect(picked).toContain(`${count} ${name.replace(/, 1 each$/, '')}`);
    }
    const tools = new Set(named.slice(0, tasks.length).flatMap(([, those]) => those.split('; ')));
    expect(tools.size).toBeGreaterThan(5);
    const fetched = plan.flatMap((needed) => /Tools: ([^.]*)\./.exec(needed)?.[1].split('; ') ?? []);
    expect(fetched).toEqual([...tools]);
  });

  test('names a board with rounded corners by its size, and puts short tasks on one sheet', () => {
    const request = sampleRequest(smallSample);
    const { core } = opened(request.estimate);
    const [first, ...others] = core.pieces;
    const quarter = Array.from({ length: 17 }, (_, at) => {
      const turn = (at / 16) * (Math.PI / 2);
      return [460 + 40 * Math.cos(turn), 260 + 40 * Math.sin(turn)] as const;
    });
    const rounded = [[0, 0] as const, [500, 0] as const, ...quarter, [0, 300] as const];
    const shaped = jobPackOf({
      ...request,
      estimate: {
        ...request.estimate,
        core: { ...core, pieces: [{ ...first, outline: rounded }, ...others] },
      },
    });
    expect(JSON.stringify(shaped.sections)).toContain('500 mm × 300 mm, corners rounded to 40 mm');
    expect(shaped.sections.filter(({ layout }) => layout === 'template')).toEqual([]);
    expect(pack.sections.filter(({ sharesSheet }) => sharesSheet === true).length).toBeGreaterThan(0);
  });

  test('says every caution once, the gravest in front and the others where the work is', () => {
    const request = sampleRequest(smallSample);
    const { cautions } = request.estimate;
    const said = JSON.stringify(pack.sections);
    for (const { text } of cautions) expect(said.split(JSON.stringify(text).slice(1, -1))).toHaveLength(2);
  });

  test('has templates of what is neither a board nor too large to be glued together true', () => {
    const request = sampleRequest(smallSample);
    const { core } = opened(request.estimate);
    const triangle = (legMm: number) =>
      [
        [0, 0],
        [legMm, 0],
        [0, legMm],
      ] as const;
    const [first, second, ...boards] = core.pieces;
    const pieces = [{ ...first, outline: triangle(240) }, { ...second, outline: triangle(1400) }, ...boards];
    const shaped = jobPackOf({ ...request, estimate: { ...request.estimate, core: { ...core, pieces } } });
    const templates = shaped.sections.filter(({ layout }) => layout === 'template');
    expect(templates.length).toBeGreaterThan(0);
    expect(templates.every(({ title }) => title.startsWith(`Template ${first.label},`))).toBe(true);
    const said = JSON.stringify(shaped.sections);
    expect(said).toContain(`Too large for a template: ${second.label}.`);
    expect(pack.sections.filter(({ layout }) => layout === 'template')).toEqual([]);
  });
});

/** Every word wrapped in guillemets: what shows without them was not taken from the words. */
function marked(words: unknown): unknown {
  if (typeof words === 'string') return `«${words}»`;
  if (typeof words === 'function') return (...given: readonly unknown[]) => `«${String(words(...given))}»`;
  return Object.fromEntries(
    Object.entries(words as Record<string, unknown>).map(([key, value]) => [key, marked(value)]),
  );
}

test('a translation reaches every heading, column, name and legend of report and job pack', () => {
  const words = { ...(marked(english) as Words), language: 'en' };
  const request = { ...sampleRequest(smallSample), reader: { ...defaultReader, words } };
  const said = (document: ReportDocument): readonly string[] =>
    document.sections.flatMap(({ title, blocks }) => [title, ...blocks.flatMap(wordsOf)]);
  const untranslated = [...said(reportOf(request)), ...said(jobPackOf(request))].filter(
    (text) => text !== '' && text !== 'x' && text !== 'y' && !text.includes('«'),
  );
  expect([...new Set(untranslated)].filter((name) => !engineNames.includes(name))).toEqual([]);
});

test('beside the words, documents and drawings show only what the data says, numbers and signs of units', () => {
  const words = { ...(marked(english) as Words), language: 'en' };
  const request = { ...sampleRequest(smallSample), reader: { ...defaultReader, words } };
  const shownTexts = [reportOf(request), jobPackOf(request)].flatMap(everyText);
  const drawn = drawingNames(request).flatMap((name) => {
    const drawing = namedDrawing(name, request, landscape('a4'))!;
    return [drawing.title, drawing.description, ...textMarks(drawing.marks).map(({ text }) => text)];
  });
  const given = givenTexts([request.estimate, request.record, request.issue]);
  expect(shownTexts.length).toBeGreaterThan(500);
  expect([
    ...new Set(
      [...shownTexts, ...drawn].map((text) => leftOf(text, given)).filter((left) => /\p{L}/u.test(left)),
    ),
  ]).toEqual([]);
  expect(leftOf('«Cost» in all, 12 m²', given)).toContain('in all');
});

/** What remains of a text when everything that has a right to be there is taken away. */
function leftOf(text: string, given: readonly string[]): string {
  let left = text.replace(DATES, ' ');
  // Words may stand inside words, so the innermost go first; a drawing shortens what it has no room for, and breaks its lines.
  while (/«[^«»]*»/.test(left)) left = left.replace(/«[^«»]*»/g, ' ');
  left = left.replace(/«[^«»]*$|^[^«»]*»/g, ' ');
  for (const one of given)
    left =
      one.length > SHORT
        ? left.replaceAll(one, ' ')
        : left
            .split(/(?<![\p{L}\p{N}])(?=[\p{L}\p{N}])|(?<=[\p{L}\p{N}])(?![\p{L}\p{N}])/u)
            .filter((part) => part !== one)
            .join('');
  return left.replace(
    /(?<![\p{L}])(?:mm|m|N·mm|N|kN|kPa|MPa|kg|g|ml|l|h|d|min|EUR|m²|mm²|m³|°C|x|y)(?![\p{L}])/gu,
    ' ',
  );
}

/** Data as short as this could be part of any word, and is taken away only where it stands alone. */
const SHORT = 3;
/** As the platform writes them in the reader's language. */
const DATES =
  /\d{1,2} (?:January|February|March|April|May|June|July|August|September|October|November|December)(?: \d{4})?|\d{1,2} (?:Jan|Feb|Mar|Apr|May|Jun|Jul|Aug|Sept|Oct|Nov|Dec)\b/g;

/** Every text of the data, the longest first, as it is and as it is printed. */
function givenTexts(data: unknown): readonly string[] {
  const found = new Set<string>();
  const look = (value: unknown): void => {
    if (typeof value === 'string' && value !== '')
      for (const form of [
        value,
        withUnitSigns(value),
        `${value[0].toUpperCase()}${value.slice(1)}`,
        value.replaceAll('-', ' '),
        withUnitSigns(value).split('. ', 1)[0],
      ])
        found.add(form);
    else if (typeof value === 'object' && value !== null) Object.values(value).forEach(look);
  };
  look(data);
  return [...found].sort((a, b) => b.length - a.length);
}

const everyText = ({ title, subtitle, runningFoot, words, sections }: ReportDocument): readonly string[] => [
  title,
  subtitle,
  runningFoot,
  ...Object.values(words),
  ...sections.flatMap((section) => [section.title, ...section.blocks.flatMap(textsOf)]),
];

function textsOf(block: Block): readonly string[] {
  switch (block.kind) {
    case 'paragraph':
      return [block.text];
    case 'list':
      return block.items;
    case 'facts':
      return [block.caption, ...block.rows.flatMap(({ name, value }) => [name, value])];
    case 'table':
      return [
        block.caption,
        ...block.columns.map(({ title }) => title),
        ...block.rows.flatMap(({ cells, note }) => [...cells, note ?? '']),
      ];
    case 'figure':
      return [block.caption, block.alt];
    case 'photograph':
      return [block.caption];
    case 'callout':
      return [block.label, block.text, block.small];
    case 'cards':
      return block.figures.map(({ caption }) => caption);
    case 'signature':
      return block.fields;
  }
}

/** Said by the engine, which writes English. */
const engineNames = [
  // a supplier's name is data
  'Invented chandlery',
  'Bag film',
  'Modulus along the deck',
  'Modulus across the deck',
  'A person on one foot',
  'Yardstick pressure',
  'Stiffness',
  'Utilisation',
];

function wordsOf(block: Block): readonly string[] {
  switch (block.kind) {
    case 'table':
      return [block.caption, ...block.columns.map(({ title }) => title)];
    case 'facts':
      return [block.caption, ...block.rows.map(({ name }) => name)];
    case 'figure':
      return block.caption === '' ? [block.alt] : [block.caption, block.alt];
    case 'callout':
      return [block.label];
    case 'signature':
      return block.fields;
    default:
      return [];
  }
}

describe('lengths in inches', () => {
  const us: Reader = { ...defaultReader, locale: 'en-US', units: 'us' };
  test('are read on a tape where a tape can show them', () => {
    expect([lengthText(us, 1220), lengthText(us, 12.7, 1), lengthText(us, 5, 1)]).toEqual([
      '4 ft 1/16 in',
      '1/2 in',
      '3/16 in',
    ]);
  });
  test('of thin plies are decimals, for a tape would show nothing', () => {
    expect([lengthText(us, 0.75, 2), lengthText(us, 0.24, 2)]).toEqual(['0.030 in', '0.009 in']);
  });
});
