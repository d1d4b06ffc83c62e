import type { ChangeOrder } from '#lib/costing';
import { Defect } from '#lib/kernel';
import {
  facts,
  flow,
  list,
  numeric,
  paragraph,
  row,
  table,
  wide,
  type Block,
  type ReportDocument,
  type Section,
} from './document.js';
import { documentOf } from './estimate-report.js';
import type { ReportRequest } from './request.js';
import { dateText, moneyText, quantityText } from './said.js';

/** What changed since the price was agreed, for yard and owner to sign. */
export function changeOrderDocument(request: ReportRequest): ReportDocument {
  const {
    issue: { changeOrder },
    reader: { words },
  } = request;
  if (changeOrder === undefined) throw new Defect('A change order was to be printed and there is none');
  return documentOf(request, 'change-order', words.changeOrder.kind, [
    openingSection(request, changeOrder),
    ...lineSections(request, changeOrder),
    ...rateSections(request, changeOrder),
    sumSection(request, changeOrder),
    signatureSection(request, changeOrder),
  ]);
}

function openingSection({ estimate, issue, reader }: ReportRequest, { title, reason }: ChangeOrder): Section {
  const { identity, changeOrder: said, columns } = reader.words;
  return flow('change', 1, title, [
    facts(said.what, [
      [identity.estimate, issue.id],
      ...(estimate.reference === undefined ? [] : [[identity.reference, estimate.reference] as const]),
      [identity.revision, String(issue.revision)],
      [identity.madeAt, dateText(reader, issue.madeAt)],
      ...(issue.letterhead.name === '' ? [] : [[identity.organisation, issue.letterhead.name] as const]),
      [columns.because, reason],
    ]),
  ]);
}

const lineSections = (request: ReportRequest, { additions, deductions }: ChangeOrder): readonly Section[] => {
  const { changeOrder: said, report } = request.reader.words;
  return [
    flow(
      'additions',
      2,
      said.additions,
      additions.length === 0 ? [paragraph(report.none)] : [lineTable(request, said.additions, additions)],
    ),
    flow(
      'deductions',
      2,
      said.deductions,
      deductions.length === 0 ? [paragraph(report.none)] : [lineTable(request, said.deductions, deductions)],
    ),
  ];
};

function lineTable({ reader }: ReportRequest, caption: string, lines: ChangeOrder['additions']): Block {
  const { columns, changeOrder: said } = reader.words;
  const quantity = (text: string, unit: string): string => quantityText(reader, Number(text), unit);
  return table(
    caption,
    [wide(columns.what, 3), numeric(columns.before), numeric(columns.after), numeric(said.difference)],
    lines.map((line) => ({
      ...row(
        line.title,
        quantity(line.quantityBefore, line.unit),
        quantity(line.quantityAfter, line.unit),
        moneyText(reader, line.difference),
      ),
      note: line.code,
    })),
  );
}

/** What was measured again, where the first issue holds rates for it. */
function rateSections({ reader }: ReportRequest, { byRates }: ChangeOrder): readonly Section[] {
  if (byRates === undefined) return [];
  const { columns, changeOrder: said } = reader.words;
  const quantity = (text: string, unit: string): string => quantityText(reader, Number(text), unit);
  const hours = (value: number): string => quantityText(reader, Math.round(value), 'h');
  const sums = [
    [said.measured, byRates.measured],
    [said.credited, byRates.provisionalCredited],
    [said.byRatesDifference, byRates.difference],
  ] as const;
  return [
    flow('by-rates', 2, said.byRates, [
      paragraph(said.byRatesLead),
      table(
        said.byRates,
        [
          wide(columns.what, 3),
          numeric(columns.before),
          numeric(said.found),
          numeric(columns.price),
          numeric(columns.amount),
        ],
        [
          ...byRates.items.map(({ what, unit, quantityAgreed, quantityFound, rate, amount }) =>
            row(
              what,
              quantity(quantityAgreed, unit),
              quantity(quantityFound, unit),
              moneyText(reader, rate),
              moneyText(reader, amount),
            ),
          ),
          ...sums.map(([name, amount]) => row(name, '', '', '', moneyText(reader, amount))),
        ],
      ),
      paragraph(
        said.hours(hours(byRates.expectedH), hours(byRates.authorisedH), byRates.isWithinAuthorisation),
      ),
    ]),
  ];
}

function sumSection({ reader }: ReportRequest, { steps, sums, statements }: ChangeOrder): Section {
  const { columns, changeOrder: said } = reader.words;
  return flow('sums', 2, said.sums, [
    table(
      said.steps,
      [wide(columns.item), numeric(columns.before), numeric(columns.after), numeric(said.difference)],
      steps.map(({ name, before, after, difference }) =>
        row(name, ...[before, after, difference].map((amount) => moneyText(reader, amount))),
      ),
    ),
    table(
      said.agreed,
      [wide(columns.item), numeric(columns.amount)],
      sums.map(({ name, amount }, index) => ({
        ...row(name, moneyText(reader, amount)),
        ...(index === sums.length - 1 ? { emphasis: 'total' as const } : {}),
      })),
    ),
    list(statements),
  ]);
}

function signatureSection({ reader }: ReportRequest, { signatures }: ChangeOrder): Section {
  const { signature, changeOrder: said, sections } = reader.words;
  return flow('signature', 1, sections.signature, [
    paragraph(said.lead),
    ...signatures.flatMap((whose): readonly Block[] => [
      paragraph(whose),
      { kind: 'signature', fields: [signature.name, signature.place, signature.date, signature.signature] },
    ]),
  ]);
}
