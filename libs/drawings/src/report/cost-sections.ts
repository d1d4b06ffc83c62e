import type { Caution, EstimateLine } from '#lib/estimate';
import { percentText, upTo, type Reader } from '../reader.js';
import {
  facts,
  flow,
  narrow,
  numeric,
  paragraph,
  row,
  table,
  wide,
  type Block,
  type Callout,
  type Row,
  type Section,
} from './document.js';
import type { Change, ReportRequest } from './request.js';
import { citedIn } from './cited.js';
import { dateText, figureText, moneyText, unitPriceText, quantityText, unitName, word } from './said.js';

export function costSections(request: ReportRequest): readonly Section[] {
  const { estimate, reader } = request;
  const { sections, cost } = reader.words;
  return [
    flow('cost', 1, sections.cost, [
      sectionTable(request),
      rangeTable(request),
      paragraph(cost.rangeNote),
      pointParagraph(request),
      paragraph(goodsNote(request)),
    ]),
    flow('drivers', 2, sections.drivers, driverBlocks(request)),
    flow('causes', 2, sections.causes, [causeTable(request)]),
    flow(
      'lines',
      2,
      sections.costLines,
      estimate.lines.length === 0 ? [paragraph(reader.words.report.none)] : [lineTable(request)],
    ),
  ];
}

/** From the sections down to the total, each step of the roll-up on a row of its own. */
function sectionTable({ estimate: { sections, totals }, reader }: ReportRequest): Block {
  const { columns, cost } = reader.words;
  const total = (name: string, amount: typeof totals.net): Row => ({
    ...row(name, moneyText(reader, amount)),
    emphasis: 'total',
  });
  return table(
    cost.sections,
    [wide(columns.item), numeric(columns.amount)],
    [
      ...sections.map(({ title, amount }) => row(title, moneyText(reader, amount))),
      total(cost.net, totals.net),
      row(cost.overhead, moneyText(reader, totals.overhead)),
      row(cost.profit, moneyText(reader, totals.profit)),
      {
        ...row(cost.growth, moneyText(reader, totals.growth.amount)),
        note: provisionalNote(totals.growth, reader),
      },
      {
        ...row(cost.newAreas, moneyText(reader, totals.newAreas.amount)),
        note: provisionalNote(totals.newAreas, reader),
      },
      ...totals.taxes.map(({ name, percent, base, amount }) =>
        row(cost.tax(name, percent, moneyText(reader, base)), moneyText(reader, amount)),
      ),
      total(cost.total, totals.total),
      { ...row(cost.contingency, moneyText(reader, totals.contingency)), note: totals.contingencyBasis },
      row(cost.withContingency, moneyText(reader, totals.totalWithContingency)),
    ],
  );
}

/** How much of what at which price, so that what is found can be charged or credited. */
const provisionalNote = (
  { quantity, unit, unitPrice, basis }: ReportRequest['estimate']['totals']['growth'],
  reader: Reader,
): string =>
  `${reader.words.cost.priced(upTo(reader, quantity, 2), unitPriceText(reader, unitPrice), unitName(unit, reader))}. ${basis}`;

const goodsNote = ({
  estimate: {
    totals: {
      goods: { billed, bought, basis },
    },
  },
  reader,
}: ReportRequest): string =>
  `${reader.words.cost.goods(moneyText(reader, billed), moneyText(reader, bought))} ${basis}`;

function rangeTable({
  estimate: {
    totals: { range },
  },
  reader,
}: ReportRequest): Block {
  const said = reader.words.cost;
  return table(
    said.range,
    [numeric(said.p10), numeric(said.p50), numeric(said.p80), numeric(said.p90)],
    [row(...[range.p10, range.p50, range.p80, range.p90].map((amount) => moneyText(reader, amount)))],
  );
}

const pointParagraph = ({
  estimate: {
    totals: { total, shareWithin },
  },
  reader,
}: ReportRequest): Block =>
  paragraph(reader.words.cost.pointNote(moneyText(reader, total), percentText(reader, shareWithin, 0)));

/** The few that matter by name; the many small ones as one sum. */
const MOST_DRIVERS = 12;

function driverBlocks({ estimate: { totals }, reader }: ReportRequest): readonly Block[] {
  const { columns, cost, report } = reader.words;
  if (totals.drivers.length === 0) return [paragraph(report.none)];
  const ranked = [...totals.drivers].sort((a, b) => b.shareOfVariance - a.shareOfVariance);
  const rest = ranked.slice(MOST_DRIVERS);
  const together = rest.reduce((sum, { shareOfVariance }) => sum + shareOfVariance, 0);
  return [
    table(
      cost.drivers,
      [wide(columns.item), numeric(columns.share)],
      [
        ...ranked
          .slice(0, MOST_DRIVERS)
          .map(({ name, shareOfVariance }) => row(name, percentText(reader, shareOfVariance, 1))),
        ...(rest.length === 0
          ? []
          : [row(cost.otherDrivers(upTo(reader, rest.length, 0)), percentText(reader, together, 1))]),
      ],
    ),
    stageZeroParagraph(totals, reader),
  ];
}

const stageZeroParagraph = (
  { offer: { stageZero } }: ReportRequest['estimate']['totals'],
  reader: Reader,
): Block =>
  paragraph(
    reader.words.cost.stageZero(
      moneyText(reader, stageZero.amount),
      quantityText(reader, stageZero.labourH, 'h'),
      moneyText(reader, stageZero.contingencyFreed),
    ),
  );

function causeTable({ estimate: { totals }, reader }: ReportRequest): Block {
  const { columns, cost } = reader.words;
  return table(
    cost.byCause,
    [wide(columns.cause), numeric(columns.amount)],
    [
      ...totals.byCause.map(({ causeClass, amount }) =>
        row(word(cost.causes, causeClass), moneyText(reader, amount)),
      ),
      row(cost.parts, moneyText(reader, totals.parts)),
      row(cost.labour, moneyText(reader, totals.labour)),
      ...(totals.depreciation === undefined
        ? []
        : [
            row(cost.wear, moneyText(reader, totals.depreciation.depreciation)),
            row(cost.remaining, moneyText(reader, totals.depreciation.remaining)),
          ]),
    ],
  );
}

function lineTable({ estimate: { lines }, reader }: ReportRequest): Block {
  const { columns, cost } = reader.words;
  return table(
    reader.words.sections.costLines,
    [
      wide(columns.what, 3),
      numeric(columns.quantity),
      numeric(columns.price),
      numeric(columns.amount),
      narrow(columns.cause),
      narrow(columns.kind),
    ],
    lines.map((line) => ({
      ...row(
        line.title,
        quantityText(reader, line.purchaseQuantity, line.unit),
        priceText(line, reader),
        moneyText(reader, line.amount),
        word(cost.causes, line.causeClass),
        word(cost.partOrLabour, line.partOrLabour),
      ),
      note: [
        ...(line.wasteQuantity === 0
          ? []
          : [
              cost.netOf(
                quantityText(reader, line.netQuantity, line.unit),
                quantityText(reader, line.wasteQuantity, line.unit),
              ),
            ]),
        ...line.packs.map(({ name, count }) => `${upTo(reader, count, 0)} × ${name}`),
        ...chargedOf(line, reader),
        ...(isSpread(line)
          ? [
              cost.amountFromTo(
                moneyText(reader, line.amountRange.low),
                moneyText(reader, line.amountRange.high),
              ),
            ]
          : []),
      ].join('; '),
    })),
  );
}

/** How the amount comes about: what it was priced with, times the price. */
const priceText = (
  { pricedQuantity, unitPrice, unit, packs, goods }: EstimateLine,
  reader: Reader,
): string =>
  packs.length === 0 || (goods !== undefined && goods.billedBy !== 'whole-packs')
    ? reader.words.cost.priced(
        upTo(reader, Number(pricedQuantity), 6),
        unitPriceText(reader, unitPrice),
        unitName(unit, reader),
      )
    : packs
        .map(({ count, price }) => reader.words.cost.pack(upTo(reader, count, 0), moneyText(reader, price)))
        .join(' + ');

/** Only of lines that are not charged by the pack. */
const chargedOf = ({ goods }: EstimateLine, reader: Reader): readonly string[] =>
  goods === undefined || goods.billedBy === 'whole-packs'
    ? []
    : [reader.words.cost.chargedBy[goods.billedBy](moneyText(reader, goods.bought))];

const isSpread = ({ amountRange: { low, high } }: EstimateLine): boolean => low.amount !== high.amount;

const cautionOrder = { danger: 0, warning: 1, caution: 2 } as const;

export function cautionSection(request: ReportRequest): Section {
  return flow('cautions', 1, request.reader.words.sections.cautions, [
    paragraph(request.reader.words.cautions.lead),
    ...cautionCallouts(request).filter(isDanger),
    ...otherCautions(request),
  ]);
}

const isDanger = ({ severity }: Callout): boolean => severity === 'danger';

/** What is no danger to life stands in a table: nobody reads thirty boxes. */
function otherCautions(request: ReportRequest): readonly Block[] {
  const { columns, cautions: said } = request.reader.words;
  const others = cautionCallouts(request).filter((callout) => !isDanger(callout));
  return others.length === 0
    ? []
    : [
        table(
          said.others,
          [narrow(columns.kind), wide(columns.what, 5)],
          others.map(({ label, text, small }) => ({ ...row(label, text), note: small })),
        ),
      ];
}

/** The gravest first. */
export const orderedCautions = ({ estimate }: ReportRequest): readonly Caution[] =>
  [...estimate.cautions].sort((a, b) => cautionOrder[a.severity] - cautionOrder[b.severity]);

export const cautionCallouts = (request: ReportRequest): readonly Callout[] => {
  const { reader } = request;
  return orderedCautions(request).map((caution) => ({
    kind: 'callout',
    severity: caution.severity,
    label: reader.words.cautions.severities[caution.severity],
    text: caution.text,
    small: whyText(caution, request),
  }));
};

/** What called the caution, what protects, which hazards the materials are labelled with, and who decides. */
function whyText({ because, protection, hazards, decides, source }: Caution, request: ReportRequest): string {
  const { cautions: said } = request.reader.words;
  return [
    ...(because === ''
      ? []
      : [`${because[0].toUpperCase()}${because.slice(1)}${/[.!?]$/.test(because) ? '' : '.'}`]),
    ...(protection.length === 0 ? [] : [said.protection(protection.join(', '))]),
    ...(hazards.length === 0
      ? []
      : [said.hazards(hazards.map(({ code, text }) => `${code} ${text}`).join('; '))]),
    ...(decides === undefined ? [] : [said.decides(decides)]),
    said.source(citedIn(request, source)),
  ].join(' ');
}

export function reproductionSections(request: ReportRequest): readonly Section[] {
  const {
    estimate: { provenance },
    issue,
    reader,
  } = request;
  const { provenance: said, sections, revisions, columns } = reader.words;
  return [
    flow('provenance', 1, sections.provenance, [
      paragraph(said.lead),
      facts(sections.provenance, [
        [said.engine, provenance.engineVersion],
        [said.edition, provenance.edition],
        [said.hash, provenance.catalogueHash],
        [said.priceList, provenance.priceList],
        [said.labourRates, provenance.labourRates],
      ]),
    ]),
    flow(
      'revisions',
      1,
      sections.revisions,
      issue.history.length === 0
        ? [paragraph(revisions.only)]
        : [
            table(
              sections.revisions,
              [numeric(columns.number), narrow(columns.when), wide(columns.reason), numeric(columns.total)],
              issue.history.map(({ number, madeAt, reason, total }) =>
                row(
                  String(number),
                  dateText(reader, madeAt),
                  reason ?? revisions.first,
                  moneyText(reader, total),
                ),
              ),
            ),
          ],
    ),
    ...(issue.changes.length === 0
      ? []
      : [
          flow('comparison', 2, sections.comparison, [
            table(
              sections.comparison,
              [wide(columns.what), numeric(columns.before), numeric(columns.after)],
              issue.changes.map((change) => changeRow(change, reader)),
            ),
          ]),
        ]),
  ];
}

function changeRow(change: Change, reader: Reader): Row {
  switch (change.kind) {
    case 'figure':
      return row(
        change.what,
        figureText(reader, change.before, change.unit),
        figureText(reader, change.after, change.unit),
      );
    case 'sum':
      return row(change.what, moneyText(reader, change.before), moneyText(reader, change.after));
  }
}
