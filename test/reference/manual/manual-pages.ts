import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Source } from '#lib/catalogue';
import { allCases } from '../all-cases.js';
import { allFormulas, type RoomFormula } from '../all-formulas.js';
import { allowedDifference, halfLastDigit, type PublishedCase } from '../published-case.js';
import { allowedText, differenceText, isNoise, oursText } from './number-text.js';
import { scatter, type Dot } from './scatter.js';

/** Every file of the manual by its name; the same input gives the same text on every machine. */
export async function manualPages(root: string): Promise<ReadonlyMap<string, string>> {
  const sources = readSources(join(root, 'libs', 'catalogue', 'data', 'sources'));
  const cases = [...(await allCases())].sort(byId);
  const formulas = await allFormulas();
  const rooms = [...new Set([...cases.map(({ room }) => room), ...formulas.map(({ room }) => room)])].sort();
  const parts = rooms.map((room) => ({
    room,
    cases: cases.filter((each) => each.room === room),
    formulas: formulas.filter((each) => each.room === room),
  }));
  const pages = new Map<string, string>([['index.md', indexPage(parts)]]);
  for (const part of parts) {
    pages.set(`${part.room}.md`, roomPage(part, sources));
    if (part.cases.length > 0) pages.set(`${part.room}.svg`, scatter(part.cases.map(dotOf)));
  }
  return pages;
}

interface RoomPart {
  readonly room: string;
  readonly cases: readonly PublishedCase[];
  readonly formulas: readonly RoomFormula[];
}

type Sources = ReadonlyMap<string, Source>;

const byId = (a: { readonly id: string }, b: { readonly id: string }): number =>
  a.id < b.id ? -1 : a.id > b.id ? 1 : 0;

function readSources(folder: string): Sources {
  const all = readdirSync(folder)
    .filter((name) => name.endsWith('.json'))
    .sort()
    .flatMap((name): readonly Source[] => JSON.parse(readFileSync(join(folder, name), 'utf8')));
  return new Map(all.map((source) => [source.key, source]));
}

/** Some cases solve a plate; each is worked out once. */
const values = new WeakMap<PublishedCase, number>();

function oursOf(each: PublishedCase): number {
  const value = values.get(each) ?? each.ours();
  values.set(each, value);
  return value;
}

const generated = '<!-- Written by `npm run manual` from the test cases; never edited by hand. -->';

const kindWords = {
  'published': 'published',
  'independent-method': 'second method',
  'limit': 'limit or invariant',
  'by-hand': 'by hand',
} as const;

const kindOf = ({ kind = 'published' }: PublishedCase): keyof typeof kindWords => kind;

function indexPage(parts: readonly RoomPart[]): string {
  const count = ({ cases }: RoomPart, kind: keyof typeof kindWords): number =>
    cases.filter((each) => kindOf(each) === kind).length;
  const rows = parts.map((part) => [
    `[${part.room}](${part.room}.md)`,
    part.cases.length,
    ...(Object.keys(kindWords) as (keyof typeof kindWords)[]).map((kind) => count(part, kind)),
    part.cases.filter(({ disagreement }) => disagreement === undefined).length,
    part.cases.filter(({ disagreement }) => disagreement !== undefined).length,
    part.formulas.length,
    part.formulas.reduce((sum, { formula }) => sum + formula.worked.length, 0),
  ]);
  const totals =
    rows[0]?.slice(1).map((_, column) => rows.reduce((sum, row) => sum + Number(row[column + 1]), 0)) ?? [];
  return [
    '# Verification manual',
    '',
    generated,
    '',
    'Each room of the calculation is held against numbers from outside it. A page lists every case: what the source prints and where, what we compute, the difference and what is allowed, both as a share of what is printed (as they are where 0 is printed), and the verdict. A number that does not reproduce stays in the list with its reason.',
    '',
    '- **published**: a number printed by the source named.',
    "- **second method**: a number reached another way (finite differences, another body's rule) where no print exists.",
    '- **limit or invariant**: what the theory must give in a limit, or must not change.',
    '- **by hand**: worked out step by step beside the code, or the same formula evaluated apart from it; the latter proves only arithmetic.',
    '',
    "How each source was read (first-hand, second-hand, from memory) stands with it on the room's page. Agreement here is agreement of numbers; nothing in it is a design approval.",
    '',
    table(
      [
        'room',
        'cases',
        ...Object.values(kindWords),
        'agree',
        'disagree, explained',
        'formulas',
        'worked examples',
      ],
      [...rows, ['**all**', ...totals]],
    ),
    '',
  ].join('\n');
}

function roomPage({ room, cases, formulas }: RoomPart, sources: Sources): string {
  const disagreeing = cases.filter(({ disagreement }) => disagreement !== undefined);
  return [
    `# ${room}`,
    '',
    generated,
    '',
    `[All rooms](index.md)`,
    '',
    ...(cases.length === 0
      ? []
      : [
          `${cases.length} cases, ${cases.length - disagreeing.length} agree, ${disagreeing.length} disagree with a reason. The plot shows each difference over what is allowed: left of the line agrees.`,
          '',
          `![Difference over allowed difference of each ${room} case, logarithmic](${room}.svg)`,
          '',
        ]),
    ...sourceSections(cases, sources),
    ...(formulas.length === 0
      ? []
      : ['## Formulas', '', ...formulas.flatMap(({ formula }) => formulaSection(formula, sources))]),
  ].join('\n');
}

function sourceSections(cases: readonly PublishedCase[], sources: Sources): readonly string[] {
  const keys = [...new Set(cases.map(({ source }) => source))].sort();
  return keys.flatMap((key) => {
    const own = cases.filter(({ source }) => source === key);
    const because = [
      ...new Set(own.flatMap(({ tolerance }) => (tolerance === undefined ? [] : [tolerance.because]))),
    ];
    const disagreeing = own.filter(({ disagreement }) => disagreement !== undefined);
    return [
      `## ${key}`,
      '',
      sourceLine(key, sources),
      '',
      table(
        ['case', 'where', 'unit', 'printed', 'ours', 'difference', 'allowed', 'verdict'],
        own.map(caseRow),
      ),
      '',
      ...(because.length === 0
        ? []
        : [`Allowed differences beyond half the last printed digit: ${because.map(sentence).join(' ')}`, '']),
      ...disagreeing.flatMap((each) => [`- \`${each.id}\`: ${sentence(each.disagreement?.reason ?? '')}`]),
      ...(disagreeing.length === 0 ? [] : ['']),
    ];
  });
}

const sentence = (words: string): string => {
  const text = words.trim();
  const capital = `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
  return /[.!?]$/.test(capital) ? capital : `${capital}.`;
};

function sourceLine(key: string, sources: Sources): string {
  const source = sources.get(key);
  if (source === undefined) return '*not in the list of sources*';
  const note = source.note === undefined ? '' : ` Note: ${sentence(source.note)}`;
  const title = source.url === undefined ? source.title : `[${source.title}](${source.url})`;
  return `${title}. ${sentence(source.body)} Year: ${source.year === 'n.d.' ? 'not dated' : source.year}. Read: ${source.readAs}.${note}`;
}

function caseRow(each: PublishedCase): readonly string[] {
  const value = oursOf(each);
  const allowed = allowedDifference(each);
  const kind = kindOf(each) === 'published' ? '' : ` (${kindWords[kindOf(each)]})`;
  return [
    `${each.title}<br>\`${each.id}\`${kind}`,
    each.locus,
    each.unit,
    each.printed,
    oursText(value, each.printed, allowed),
    differenceText(value, each.printed, allowed),
    allowedText(each.printed, allowed),
    verdictOf(each, value),
  ];
}

function verdictOf(each: PublishedCase, value: number): string {
  const isInside = Math.abs(value - Number(each.printed)) <= allowedDifference(each);
  if (each.disagreement !== undefined) return 'disagrees, explained below';
  return isInside ? 'agrees' : '**fails**';
}

function formulaSection(formula: RoomFormula['formula'], sources: Sources): readonly string[] {
  const inputs = Object.entries(formula.inputs).map(
    ([name, input]) => `${input.symbol} = \`${name}\` (${input.unit}): ${input.meaning}`,
  );
  const cite = `${formula.cite.source}${formula.cite.clause === undefined ? '' : `, ${formula.cite.clause}`}`;
  return [
    `### ${formula.title}`,
    '',
    `\`${formula.id}\`; ${formula.output.symbol} in ${formula.output.unit}; ${cite} (${sources.get(formula.cite.source)?.readAs ?? 'not in the list of sources'}). ${inputs.join('; ')}.`,
    '',
    table(
      ['example', 'printed', 'ours', 'difference', 'allowed'],
      formula.worked.map((worked) => {
        const value = formula.evaluate(worked.given as never);
        const allowed = worked.within?.absolute ?? halfLastDigit(worked.printed);
        return [
          worked.at,
          worked.printed,
          oursText(value, worked.printed, allowed),
          differenceText(value, worked.printed, allowed),
          allowedText(worked.printed, allowed),
        ];
      }),
    ),
    '',
  ];
}

const cell = (value: string | number): string => String(value).replaceAll('|', '\\|').replaceAll('\n', ' ');
const line = (cells: readonly (string | number)[]): string => `| ${cells.map(cell).join(' | ')} |`;
const table = (head: readonly string[], rows: readonly (readonly (string | number)[])[]): string =>
  [line(head), line(head.map(() => '---')), ...rows.map(line)].join('\n');

function dotOf(each: PublishedCase): Dot {
  const allowed = allowedDifference(each);
  const difference = isNoise(oursOf(each), each.printed, allowed)
    ? 0
    : Math.abs(oursOf(each) - Number(each.printed));
  return {
    id: each.id,
    ratio: allowed === 0 ? (difference === 0 ? 0 : Number.MAX_VALUE) : difference / allowed,
    isDisagreement: each.disagreement !== undefined,
  };
}
