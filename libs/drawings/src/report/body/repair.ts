import { percentText, upTo, type Reader } from '../../reader.js';
import {
  bodySection,
  facts,
  list,
  numeric,
  paragraph,
  row,
  table,
  wide,
  type Block,
  type Row,
  type Section,
} from '../document.js';
import type { ReportRequest } from '../request.js';
import { dateText, unitName } from '../said.js';
import { aboutMoney, hoursSaid, timeSaid, wholeMoney } from './speaking.js';

/** What is done, why that and not the next best, and one verdict on the deck that comes of it. */
export function repairSection({ estimate: { conclusion }, reader }: ReportRequest): Section {
  const said = reader.words.body;
  const { runnerUp, sentences } = conclusion.method;
  const beside =
    runnerUp === undefined
      ? []
      : [
          said.runnerUp(
            runnerUp.title,
            runnerUp.price === undefined ? '' : said.atPrice(aboutMoney(reader, runnerUp.price)),
            runnerUp.because,
          ),
        ];
  return bodySection('repair', said.method, [
    paragraph([...sentences, ...beside].join(' ')),
    paragraph(`${said.verdict}: ${conclusion.verdict.sentence}`),
    ...(conclusion.verdict.notes.length === 0 ? [] : [list(conclusion.verdict.notes)]),
  ]);
}

export function sumSection(request: ReportRequest): Section {
  const { estimate, reader } = request;
  const said = reader.words.body;
  const { range, shareWithin } = estimate.totals;
  return bodySection('sums', said.sums, [
    sumTable(request),
    paragraph(
      said.sumNote(
        aboutMoney(reader, range.p10),
        aboutMoney(reader, range.p90),
        percentText(reader, shareWithin),
      ),
    ),
    ...(isForInsurer(request) ? [insurerFacts(request)] : []),
    facts(said.timing, timingRows(request)),
  ]);
}

function sumTable({ estimate: { totals }, reader }: ReportRequest): Block {
  const said = reader.words.body;
  const { growth, newAreas } = totals;
  const line = (name: string, amount: typeof totals.total): Row => row(name, wholeMoney(reader, amount));
  const provisional = (sum: typeof growth, say: typeof said.growth): readonly Row[] =>
    Math.round(Number(sum.amount.amount)) === 0 ? [] : [line(say(...rateSaid(reader, sum)), sum.amount)];
  return table(
    said.sums,
    [wide(reader.words.columns.item), numeric(reader.words.columns.amount)],
    [
      line(said.recordedScope, totals.base),
      ...provisional(growth, said.growth),
      ...provisional(newAreas, said.newAreas),
      line(said.tax, totals.tax),
      { ...line(said.total, totals.total), emphasis: 'total' },
      line(said.contingency, totals.contingency),
      line(said.withContingency, totals.totalWithContingency),
    ],
  );
}

type Provisional = ReportRequest['estimate']['totals']['growth'];

/** How much, at which price for which unit: deck is priced by the square that the reader measures in. */
function rateSaid(
  reader: Reader,
  { quantity, unit, unitPrice }: Provisional,
): readonly [string, string, string] {
  const size = unit === 'm2' && reader.units === 'us' ? M2_IN_FT2 : 1;
  const price = { ...unitPrice, amount: String(Number(unitPrice.amount) * size) };
  return [
    upTo(reader, quantity / size, 2),
    wholeMoney(reader, price),
    size === 1 ? unitName(unit, reader) : reader.words.body.squareFoot,
  ];
}

/** The foot is 0.3048 m by definition. */
const M2_IN_FT2 = 0.3048 ** 2;

/** Asked for by the purpose, or by a record that speaks of an event or of a deductible. */
const isForInsurer = ({ purpose, record }: ReportRequest): boolean =>
  purpose === 'damage' || record.occurrence !== undefined || record.pricing?.deductible !== undefined;

function insurerFacts({ estimate: { totals }, reader }: ReportRequest): Block {
  const said = reader.words.body;
  const { attributable, prior, improvement, wear, deductible, payable } = totals.insurer;
  return {
    ...facts(said.insurer, [
      [said.attributable, wholeMoney(reader, attributable)],
      [said.prior, wholeMoney(reader, prior)],
      [said.improvement, wholeMoney(reader, improvement)],
      [said.wear, wholeMoney(reader, wear)],
      [said.deductible, wholeMoney(reader, deductible)],
      [said.payable, wholeMoney(reader, payable)],
      [said.parts, wholeMoney(reader, totals.parts)],
      [said.labour, wholeMoney(reader, totals.labour)],
    ]),
    across: 2,
  };
}

function timingRows(request: ReportRequest): readonly (readonly [string, string])[] {
  const {
    estimate: { process, totals },
    reader,
  } = request;
  const said = reader.words.body;
  const { finish } = process.calendar;
  const [bonding] = process.gates;
  const { stageZero } = totals.offer;
  return [
    [said.working, timeSaid(request)],
    ...(finish === undefined
      ? []
      : [
          [
            said.finish,
            said.finishSaid(
              dateText(reader, finish.likely),
              dateText(reader, finish.early),
              dateText(reader, finish.late),
            ),
          ] as const,
        ]),
    ...(bonding === undefined ? [] : [[said.weather, bonding.requires.join('; ')] as const]),
    ...(stageZero.labourH === 0
      ? []
      : [
          [
            said.stageZero,
            said.stageZeroSaid(wholeMoney(reader, stageZero.amount), hoursSaid(reader, stageZero.labourH)),
          ] as const,
        ]),
  ];
}
