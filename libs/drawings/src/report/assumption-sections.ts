import type { Assumption } from '#lib/estimate';
import { citedIn, isOwnDefault, isPractice, printedSources } from './cited.js';
import { flow, list, numeric, paragraph, row, table, wide, type Block, type Section } from './document.js';
import type { ReportRequest } from './request.js';
import { codeText, word } from './said.js';

type Group = 'record' | 'extent' | 'materials' | 'time' | 'structure';
const groups = ['record', 'extent', 'materials', 'time', 'structure'] as const;

/** Which group a default belongs to, by the room that takes it. */
const groupOf: Readonly<Record<string, Group>> = {
  'record': 'record',
  'openings': 'extent',
  'core-bill': 'materials',
  'laminate-schedule': 'materials',
  'resin-batches': 'materials',
  'cure-plan': 'time',
  'calendar': 'time',
  'bond-pressure': 'time',
  'panel-check': 'structure',
};

const roomOf = ({ of }: Assumption): string => of.split('/').at(-1) ?? of;
const isIn =
  (group: Group) =>
  (assumption: Assumption): boolean =>
    (groupOf[roomOf(assumption)] ?? 'record') === group;

/** What was taken because nobody said it, in groups by what it does to the price. */
export function assumptionSections(request: ReportRequest): readonly Section[] {
  const { assumptionGroups: said, assumptions: words, sections } = request.reader.words;
  if (request.estimate.assumptions.length === 0)
    return [flow('assumptions', 2, sections.assumptions, [paragraph(words.none)])];
  return [
    flow('assumptions', 2, sections.assumptions, [paragraph(said.lead)]),
    ...groups.flatMap((group) => groupSection(group, request)),
  ];
}

function groupSection(group: Group, request: ReportRequest): readonly Section[] {
  const { estimate, reader } = request;
  const { assumptionGroups: said, columns } = reader.words;
  const all = onceEach(estimate.assumptions.filter(isIn(group)));
  const own = all.filter(({ source }) => isOwnDefault(source));
  const others = all.filter(({ source }) => !isOwnDefault(source));
  if (all.length === 0) return [];
  const blocks: readonly Block[] = [
    ...(others.length === 0
      ? []
      : [
          table(
            said[group],
            [
              wide(columns.assumption, 3),
              wide(columns.value, 2),
              wide(columns.because, 5),
              wide(columns.source),
            ],
            others.map(({ meaning, value, because, source }) =>
              row(
                meaning,
                valueSaid(value, request),
                because,
                isPractice(source) ? said.practiceShort : citedIn(request, source),
              ),
            ),
          ),
        ]),
    ...(own.length === 0
      ? []
      : [
          paragraph(said.own(String(own.length))),
          list(own.map(({ meaning, value }) => said.fact(meaning, valueSaid(value, request)))),
        ]),
  ];
  return [flow(`assumptions-${group}`, 2, said[group], blocks)];
}

/** What says the same of several steps is said once. */
const onceEach = (all: readonly Assumption[]): readonly Assumption[] => [
  ...new Map(all.map((one) => [`${one.meaning} ${one.value} ${one.source}`, one])).values(),
];

/** A code of the catalogue or of a choice becomes words; figures and sentences stand. */
function valueSaid(value: string, { estimate: { core, process }, reader }: ReportRequest): string {
  const { choices } = reader.words.scope;
  if (Object.hasOwn(choices, value)) return word(choices, value);
  if (/^-\d/.test(value)) return `−${value.slice(1)}`;
  const names = {
    ...(core === undefined ? {} : { [core.material]: core.materialName }),
    [process.resin.code]: process.resin.name,
  };
  return /^[a-z]+(?:-[a-z0-9]+)+$/.test(value) ? codeText(names, value) : value;
}

/** Behind everything that cites it; absent where nothing does. */
export function bibliographySections(request: ReportRequest): readonly Section[] {
  const { assumptionGroups: said, columns, sections } = request.reader.words;
  const found = printedSources(request);
  return found.length === 0
    ? []
    : [
        flow('sources', 1, sections.sources, [
          table(
            sections.sources,
            [numeric(columns.number), wide(columns.source, 5), wide(columns.kind)],
            found.map(({ number, title, body, year, readAs }) =>
              row(
                String(number),
                said.source(title, body, yearSaid(year, said.undated)),
                word(said.readAs, readAs),
              ),
            ),
          ),
        ]),
      ];
}

const yearSaid = (year: string, undated: string): string => (year === 'n.d.' ? undated : year);
