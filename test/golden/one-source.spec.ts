import { beforeAll, describe, expect, test } from '@jest/globals';
import type { DefectRecord, Estimate } from '#lib/estimate';
import {
  annexNames,
  defaultReader,
  jobPackOf,
  reportOf,
  type Block,
  type ReportDocument,
  type ReportRequest,
} from '#lib/drawings';
import { leastRectangle } from '#lib/geometry';
import { withUnitSigns } from '../../libs/drawings/src/sheet/unit-signs.js';
import { linesCsv } from '../../apps/api/src/documents/lines-csv.js';
import { summaryText } from '../../apps/workshop/demo-summary.js';
import { estimateOf, sampleRecordOf } from '../samples/sample-record.js';

/**
 * One figure, one source: every number with a unit that body, annexes, page, job pack, summary or CSV of a sample prints is
 * led back to a place of the document that bears the same unit, and is that value at the digits it is printed with.
 */
interface Printed {
  readonly where: string;
  readonly text: string;
}

interface Found extends Printed {
  readonly value: number;
  readonly decimals: number;
  readonly unit: Unit;
}

type Unit = 'money' | 'h' | 'd' | 'm2' | 'l' | 'kg' | 'mm' | 'kPa' | 'share';

const THIN_SPACES = /[\u00a0\u202f]/g;
const NUMBER = String.raw`(?<![\w.,/:])(-?\d{1,3}(?:[ ,]\d{3})+(?:\.\d+)?|-?\d+(?:\.\d+)?)`;

/** How units are printed, and what one of them is in the unit of the document. */
const printedUnits: readonly (readonly [RegExp, Unit, number])[] = [
  [new RegExp(`EUR ${NUMBER.replace(String.raw`(?<![\w.,/:])`, '')}`, 'g'), 'money', 1],
  [new RegExp(`${NUMBER} EUR`, 'g'), 'money', 1],
  [new RegExp(`${NUMBER} h(?![\\w/])`, 'g'), 'h', 1],
  [new RegExp(`${NUMBER} (?:d|days?|working days)(?![\\w/])`, 'g'), 'd', 1],
  [new RegExp(`${NUMBER} (?:m²|m2)`, 'g'), 'm2', 1],
  [new RegExp(`${NUMBER} l(?![\\w/])`, 'g'), 'l', 1],
  [new RegExp(`${NUMBER} ml(?![\\w/])`, 'g'), 'l', 1e-3],
  [new RegExp(`${NUMBER} kg(?![\\w/])`, 'g'), 'kg', 1],
  [new RegExp(`${NUMBER} g(?![\\w/])`, 'g'), 'kg', 1e-3],
  [new RegExp(`${NUMBER} mm(?![\\w/²³])`, 'g'), 'mm', 1],
  [new RegExp(`${NUMBER} m(?![\\w/²³])`, 'g'), 'mm', 1e3],
  [new RegExp(`${NUMBER} kPa`, 'g'), 'kPa', 1],
  [new RegExp(`${NUMBER} %`, 'g'), 'share', 1e-2],
];

const numbersIn = ({ where, text }: Printed): readonly Found[] =>
  printedUnits.flatMap(([pattern, unit, factor]) =>
    [...text.replace(THIN_SPACES, ' ').matchAll(pattern)].map(([, digits]) => {
      const plain = digits.replace(/[ ,]/g, '');
      return {
        where,
        text,
        unit,
        value: Number(plain) * factor,
        decimals: (plain.split('.')[1]?.length ?? 0) - Math.log10(factor),
      };
    }),
  );

/** Ends of names in the document, with the unit they stand for and what one is in the unit compared. */
const namedUnits: readonly (readonly [RegExp, Unit, number])[] = [
  [/(?:M2|m2)$/, 'm2', 1],
  [/[a-z]M$/, 'mm', 1e3],
  [/Mm$/, 'mm', 1],
  [/(?:Days?)$/, 'd', 1],
  [/H$/, 'h', 1],
  [/L$/, 'l', 1],
  [/Ml$/, 'l', 1e-3],
  [/Kg$/, 'kg', 1],
  [/(?:MassG|G)$/, 'kg', 1e-3],
  [/KPa$/, 'kPa', 1],
  [/(?:[Pp]ercent)$/, 'share', 1e-2],
  [/(?:[Ss]hare\w*|[Ff]raction|[Uu]tilisation|[Pp]robability|[Cc]hance)$/, 'share', 1],
];

const DECIMAL = /^-?\d+(?:\.\d+)?$/;

/** Texts that are a quantity with its unit. */
const wholeQuantities: readonly string[] = ['value', 'costPerM2'];

type Leaves = Readonly<Record<Unit, readonly number[]>>;

function leavesOf(data: unknown): Leaves {
  const found: Record<Unit, number[]> = {
    money: [],
    h: [],
    d: [],
    m2: [],
    l: [],
    kg: [],
    mm: [],
    kPa: [],
    share: [],
  };
  const byWord: Readonly<Record<string, readonly [Unit, number]>> = {
    'h': ['h', 1],
    'm2': ['m2', 1],
    'm': ['mm', 1e3],
    'mm': ['mm', 1],
    'l': ['l', 1],
    'kg': ['kg', 1],
    'kPa': ['kPa', 1],
    'day': ['d', 1],
    '%': ['share', 1e-2],
  };
  const look = (value: unknown, path: readonly string[], unit: readonly [Unit, number] | undefined): void => {
    if (typeof value === 'object' && value !== null) {
      const stated = 'unit' in value && typeof value.unit === 'string' ? byWord[value.unit] : undefined;
      if ('amount' in value && 'currency' in value) found.money.push(Number(value.amount));
      for (const [key, inner] of Object.entries(value)) {
        const named = namedUnits.find(([end]) => end.test(key));
        look(inner, [...path, key], named === undefined ? (stated ?? unit) : [named[1], named[2]]);
      }
      return;
    }
    const number = typeof value === 'string' && DECIMAL.test(value) ? Number(value) : value;
    if (typeof number === 'number' && unit !== undefined) found[unit[0]].push(number * unit[1]);
    if (typeof value === 'string' && wholeQuantities.includes(path.at(-1) ?? ''))
      for (const stated of numbersIn({ where: 'value', text: value })) found[stated.unit].push(stated.value);
  };
  look(data, [], undefined);
  return found;
}

const SPOKEN = 3;

/** From each point of an outline to the sides of the box round it: the radius of a rounded corner is one of them. */
function fromSidesMm(outline: readonly (readonly [number, number])[]): readonly number[] {
  const [xs, ys] = [outline.map(([x]) => x), outline.map(([, y]) => y)];
  return outline.flatMap(([x, y]) => [
    x - Math.min(...xs),
    Math.max(...xs) - x,
    y - Math.min(...ys),
    Math.max(...ys) - y,
  ]);
}

/** Lengths that a drawing measures off the document's own outlines: corner to corner, and the rectangle round a piece. */
const measuredMm = ({ scope, core }: Estimate, { survey }: DefectRecord): readonly number[] => [
  ...(survey?.readings ?? []).flatMap(({ at }) => at),
  ...scope.openings.flatMap(({ sawLine }) =>
    sawLine.flatMap(([x, y]) => sawLine.map(([otherX, otherY]) => Math.hypot(otherX - x, otherY - y))),
  ),
  ...(core?.pieces ?? []).flatMap(({ outline }) => {
    const { lengthMm, widthMm } = leastRectangle(outline);
    return [lengthMm, widthMm, ...fromSidesMm(outline)];
  }),
];

/** Words with a number among them; a bare quantity is a figure. */
const SENTENCE = /\d.*\p{L}{3}|\p{L}{3}.*\d/su;

/** Every text that the document itself holds: what stands in it is a name, a rule or a reason, in print as there. */
function textsHeld(data: unknown): readonly string[] {
  if (typeof data === 'string') return SENTENCE.test(data) ? [data, withUnitSigns(data)] : [];
  return typeof data === 'object' && data !== null ? Object.values(data).flatMap(textsHeld) : [];
}

/** Work, money, time and amounts have one value also in sentences; sizes, shares and pressures in a sentence are limits and names of goods. */
const oneValueInSentences: readonly Unit[] = ['money', 'h', 'd', 'm2', 'l', 'kg'];

/** Said in one sentence of the document and nowhere else: a rule, or the reason of a choice that was not taken. */
const saidOnce: readonly RegExp[] = [
  /\(\d+(\.\d+)? h for [\d.]+ m of cut and/,
  /is more than [\d.]+ m(²|2): solid laminate .* kg\/m(²|2) more than core, [\d.]+ kg here/,
  /Separate areas of about [\d.]+ m(²|2) that nobody recorded/,
  /^bags of \d+ kg|Sand bag, \d+ kg/,
  /codes give 75 to 82.5 kg a person/,
  /tape, \d+ ml$/,
  /100 g last \d+ min/,
  /padded boards of [\d.]+ m(²|2)|on a piece of [\d.]+ m(²|2)/,
  /metal takes 3 to 6 h off and 6 to 12 h on for 10 m/,
];

/** Where a source is described, its figures are its own. */
const ofSources = 'estimate-report sources';

/** A name that a drawing had no room for. */
const isCutShort = (text: string, texts: readonly string[]): boolean =>
  text.endsWith('…') && texts.some((whole) => whole.startsWith(text.slice(0, -1)));

const isSaidOnce = (text: string): boolean => saidOnce.some((pattern) => pattern.test(text));

/** As it is printed: to its digits; sums also to three digits, hours to the half, days counted up. */
function isOf({ unit, value, decimals }: Found, leaf: number): boolean {
  const step = 10 ** -decimals;
  if (Math.abs(leaf - value) <= step / 2 + 1e-9) return true;
  if (unit === 'money') return Number(leaf.toPrecision(SPOKEN)) === value;
  if (unit === 'h') return Math.round(leaf * 2) / 2 === value;
  return unit === 'd' && Math.ceil(leaf - 1e-9) === value;
}

const textsOfBlock = (block: Block): readonly string[] => {
  switch (block.kind) {
    case 'paragraph':
      return [block.text];
    case 'list':
      return block.items;
    case 'facts':
      return block.rows.map(({ name, value }) => `${name}: ${value}`);
    case 'table':
      return block.rows.flatMap(({ cells, note }) => [...cells, note ?? '']);
    case 'callout':
      return [block.text, block.small];
    case 'cards':
      return block.figures.map(({ caption }) => caption);
    case 'figure':
      return [block.alt, ...[...block.svg.matchAll(/>([^<>]+)<\/text>/g)].map(([, text]) => text)];
    case 'photograph':
      return [block.caption];
    case 'signature':
      return block.fields;
  }
};

/** The length of a scale bar belongs to the sheet and not to the deck. */
const isScaleBar = (text: string): boolean => /^[\d,]+ m?m$/.test(text);

const printedIn = ({ kind, sections }: ReportDocument): readonly Printed[] =>
  sections.flatMap(({ id, blocks }) =>
    blocks
      .flatMap((block) =>
        block.kind === 'figure'
          ? textsOfBlock(block).filter((text) => !isScaleBar(text))
          : textsOfBlock(block),
      )
      .map((text) => ({ where: `${kind} ${id}`, text })),
  );

const requestFor = (
  record: DefectRecord,
  estimate: Estimate,
  medium: ReportRequest['medium'],
): ReportRequest => ({
  estimate,
  record,
  medium,
  paper: 'a4',
  purpose: 'damage',
  annexes: annexNames,
  reader: defaultReader,
  issue: {
    id: 'one-source',
    madeAt: '2027-01-01T08:00:00Z',
    letterhead: { name: 'Invented office', lines: [] },
    revision: 1,
    photographs: [],
    history: [],
    changes: [],
  },
});

const everything = (record: DefectRecord, estimate: Estimate): readonly Printed[] => [
  ...(['page', 'screen'] as const).flatMap((medium) => {
    const request = requestFor(record, estimate, medium);
    return [...printedIn(reportOf(request)), ...printedIn(jobPackOf(request))];
  }),
  ...summaryText(estimate)
    .split('\n')
    .map((text) => ({ where: 'summary', text })),
];

/** Numbers of the prints that no place of the document accounts for. */
function lostIn(printed: readonly Printed[], held: Held): readonly string[] {
  const lost = printed
    .filter(({ text, where }) => where !== ofSources && !isSaidOnce(text) && !isCutShort(text, held.texts))
    .flatMap((one) => {
      const without = (texts: readonly string[]): Printed => ({
        ...one,
        text: texts.reduce((left, text) => left.replaceAll(text, ' '), one.text),
      });
      return [
        ...numbersIn(without(held.goods)).filter(({ unit }) => oneValueInSentences.includes(unit)),
        ...numbersIn(without(held.texts)).filter(({ unit }) => !oneValueInSentences.includes(unit)),
      ];
    })
    .filter((one) => !held.leaves[one.unit].some((leaf) => isOf(one, leaf)));
  return [...new Set(lost.map(({ where, value, unit, text }) => `${where} | ${value} ${unit} | ${text}`))];
}

interface Held {
  readonly leaves: Leaves;
  readonly texts: readonly string[];
  /** Names of goods, which bear the sizes of their packs. */
  readonly goods: readonly string[];
}

function heldBy(record: DefectRecord, estimate: Estimate): Held {
  const leaves = leavesOf([estimate, record]);
  return {
    leaves: {
      ...leaves,
      mm: [...leaves.mm, ...measuredMm(estimate, record)],
      share: [...leaves.share, LIMIT_SHARE],
    },
    texts: [...textsHeld([estimate, record])].sort((a, b) => b.length - a.length),
    goods: estimate.lines
      .flatMap(({ title, packs }) => [...packs.map((pack) => pack.name), title])
      .flatMap((name) => [name, withUnitSigns(name)])
      .sort((a, b) => b.length - a.length),
  };
}

/** What is allowed, as a share of itself. */
const LIMIT_SHARE = 1;

/** The estimate with another value wherever it holds this one. */
function withOther(estimate: Estimate, old: number): Estimate {
  const isOld = (value: number): boolean => value === old || value * 1000 === old;
  const other = (_: string, value: unknown): unknown => {
    if (typeof value === 'number') return isOld(value) ? value * 1.37 : value;
    return typeof value === 'string' && DECIMAL.test(value) && isOld(Number(value))
      ? (old * 1.37).toFixed(2)
      : value;
  };
  return JSON.parse(JSON.stringify(estimate), other);
}

/** Fewer digits than this are met by chance. */
const TELLING_DIGITS = 3;

const isTelling = ({ value, decimals }: Found): boolean =>
  Math.round(Math.abs(value) * 10 ** decimals) >= 10 ** (TELLING_DIGITS - 1);

describe.each(['foredeck', 'side-deck'])('the documents of %s', (name) => {
  const record = sampleRecordOf(name);
  let estimate: Estimate;
  let printed: readonly Printed[];
  beforeAll(() => {
    estimate = estimateOf(record);
    printed = everything(record, estimate);
  });

  test('print no number with a unit that the document does not hold', () => {
    expect(printed.flatMap(numbersIn).length).toBeGreaterThan(1000);
    expect(lostIn(printed, heldBy(record, estimate))).toEqual([]);
  });

  test.each<readonly [string, Unit, (one: Estimate) => string | number, readonly string[]]>([
    [
      'price',
      'money',
      (one) => one.totals.total.amount,
      ['estimate-report summary', 'estimate-report sums', 'estimate-report cost', 'summary'],
    ],
    [
      'likely hours',
      'h',
      (one) => one.summary.labourH.p50,
      ['estimate-report summary', 'estimate-report sums', 'summary'],
    ],
    [
      'latest end',
      'd',
      (one) => one.summary.calendarDays.p90,
      ['estimate-report summary', 'estimate-report sums'],
    ],
    ['opened area', 'm2', (one) => one.scope.openedAreaM2, ['estimate-report scope']],
    ['length of the cut', 'mm', (one) => one.scope.cutLengthM * 1000, ['estimate-report openings']],
    ['mixed resin', 'l', (one) => one.summary.mixedResinL, ['summary']],
  ])(
    'print their %s from one place: with another value there, it stands nowhere',
    (_, unit, figure, places) => {
      const old = Number(figure(estimate));
      const after = everything(record, withOther(estimate, old));
      const isMoved = printed.map(({ text }, index) => after[index].text !== text);
      const moved = printed.filter((__, index) => isMoved[index]).map(({ where }) => where);
      expect([...new Set(moved)]).toEqual(expect.arrayContaining([...places]));
      const left = printed
        .filter(({ text }, index) => !isMoved[index] && !isSaidOnce(text))
        .flatMap(numbersIn)
        .filter((one) => one.unit === unit && isTelling(one) && isOf(one, old));
      expect(left).toEqual([]);
    },
  );

  test('say the same wherever the document says it twice', () => {
    const { summary, totals, methods, scope, process } = estimate;
    const planned = methods.rungs.find(({ rung }) => rung === methods.planned.rung);
    expect(summary).toMatchObject({
      total: totals.total,
      totalRange: totals.range,
      totalWithContingency: totals.totalWithContingency,
      openedAreaM2: scope.openedAreaM2,
      cutLengthM: scope.cutLengthM,
      labourH: planned?.labourH,
      workingDays: process.calendar.workingDays,
      calendarDays: process.calendar.calendarDays,
    });
    expect(planned?.priceRange).toEqual(totals.range);
  });

  test('have in the CSV the amounts that add up to the net sum', () => {
    const [head, ...rows] = linesCsv(estimate).trim().split(/\r?\n/);
    const column = head.split(',').indexOf('amount');
    const cents = rows.map((row) => Math.round(Number(cellsOf(row)[column]) * 100));
    expect(cents.reduce((sum, amount) => sum + amount, 0)).toBe(
      Math.round(Number(estimate.totals.net.amount) * 100),
    );
  });
});

/** Of other kinds of job: a deck that stays closed, one that is opened from below, planks, and a large sole. */
test.each(['stanchion', 'toe-rail', 'from-below', 'planked-side-deck', 'cockpit-sole'])(
  'the documents of %s print no number with a unit that the document does not hold',
  (name) => {
    const record = sampleRecordOf(name);
    const estimate = estimateOf(record);
    const printed = everything(record, estimate);
    expect(printed.flatMap(numbersIn).length).toBeGreaterThan(200);
    expect(lostIn(printed, heldBy(record, estimate))).toEqual([]);
  },
);

/** Keys of sources, pointers into the contract, names of fields, powers of units that only a program reads. */
const UNREADABLE =
  /FROM-MEMORY|COMMON-PRACTICE|METHODS-IN-PRINT|\/v1\/|(?<![\p{L}/])\/[a-z]+[A-Z]\w*|\bN[.·]mm\b|\b[a-z]{2,}(?:[A-Z][a-z0-9]+)+\b/u;

test.each([
  'foredeck',
  'side-deck',
  'stanchion',
  'toe-rail',
  'from-below',
  'planked-side-deck',
  'cockpit-sole',
])(
  'no print of %s shows a key, a pointer, a name of a field, or stiffness in newtons by the millimetre',
  (name) => {
    const record = sampleRecordOf(name);
    const request = requestFor(record, estimateOf(record), 'page');
    const printed = [reportOf(request), jobPackOf(request)].flatMap(printedIn);
    expect(printed.map(({ text }) => text).filter((text) => UNREADABLE.test(text))).toEqual([]);
    expect('by /conditions/temperatureC and totalMm').toMatch(UNREADABLE);
  },
);

/** Cells of a row of CSV by its quotes. */
const cellsOf = (row: string): readonly string[] =>
  [...row.matchAll(/("(?:[^"]|"")*"|[^,]*)(?:,|$)/g)].map(([, cell]) => cell.replace(/^"|"$/g, ''));
