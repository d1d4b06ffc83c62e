import type { Assumption, Estimate } from '#lib/estimate';
import type { Reader } from '../reader.js';
import { citedIn, isOwnDefault, sourcesIn } from './cited.js';
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

/** What was taken because nobody said it, in groups by what it does to the price; then the sources by number. */
export function assumptionSections(request: ReportRequest): readonly Section[] {
  const { estimate, reader } = request;
  const { assumptionGroups: said, assumptions: words, sections } = reader.words;
  if (estimate.assumptions.length === 0)
    return [
      flow('assumptions', 2, sections.assumptions, [paragraph(words.none)]),
      bibliographySection(request),
    ];
  return [
    flow('assumptions', 2, sections.assumptions, [paragraph(said.lead)]),
    ...groups.flatMap((group) => groupSection(group, estimate, reader)),
    bibliographySection(request),
  ];
}

function groupSection(group: Group, estimate: Estimate, reader: Reader): readonly Section[] {
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
              row(meaning, valueSaid(value, estimate), because, citedIn(estimate, source, reader)),
            ),
          ),
        ]),
    ...(own.length === 0
      ? []
      : [
          paragraph(said.own(String(own.length))),
          list(own.map(({ meaning, value }) => said.fact(meaning, valueSaid(value, estimate)))),
        ]),
  ];
  return [flow(`assumptions-${group}`, 2, said[group], blocks)];
}

/** What says the same of several steps is said once. */
const onceEach = (all: readonly Assumption[]): readonly Assumption[] => [
  ...new Map(all.map((one) => [`${one.meaning} ${one.value} ${one.source}`, one])).values(),
];

/** A code of the catalogue or of a choice becomes words; figures and sentences stand. */
function valueSaid(value: string, { core, process }: Estimate): string {
  const names = {
    ...(core === undefined ? {} : { [core.material]: core.materialName }),
    [process.resin.code]: process.resin.name,
  };
  return /^[a-z]+(?:-[a-z0-9]+)+$/.test(value) ? codeText(names, value) : value;
}

function bibliographySection({ estimate, reader }: ReportRequest): Section {
  const { assumptionGroups: said, columns, sections } = reader.words;
  const found = sourcesIn(estimate);
  return flow(
    'sources',
    2,
    sections.sources,
    found.length === 0
      ? [paragraph(reader.words.report.none)]
      : [
          table(
            sections.sources,
            [numeric(columns.number), wide(columns.source, 5), wide(columns.kind)],
            found.map(({ number, title, body, year, readAs }) =>
              row(String(number), said.source(title, body, year), word(said.readAs, readAs)),
            ),
          ),
        ],
  );
}
