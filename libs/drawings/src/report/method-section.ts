import type { HardwareCard, RungSection } from '#lib/estimate';
import {
  flow,
  list,
  paragraph,
  row,
  table,
  narrow,
  numeric,
  wide,
  type Block,
  type Section,
  type Table,
} from './document.js';
import type { ReportRequest } from './request.js';
import { lengthText, upTo } from '../reader.js';
import { aboutMoney } from './body/speaking.js';

/** Every way to mend the deck with the reason that decides, the hardware that comes off, and the leak. */
export function methodSection(request: ReportRequest): Section {
  const {
    estimate: { methods, leak, leftOut, hardware },
    reader,
  } = request;
  const said = reader.words.methods;
  const { planned, recommended, runnerUp, rungs } = methods;
  const undone = rungs.find(({ rung }) => rung === planned.rung)?.leavesUndone ?? [];
  return flow('methods', 1, reader.words.sections.methods, [
    paragraph(said.planned(planned.title, planned.because)),
    ...(planned.isNamedInRecord ? [paragraph(said.asNamed)] : []),
    ...(planned.isNamedInRecord && recommended !== undefined && recommended.rung !== planned.rung
      ? [paragraph(said.recommended(recommended.title, recommended.because))]
      : []),
    ...(runnerUp === undefined ? [] : [paragraph(said.runnerUp(runnerUp.title))]),
    ladderTable(request),
    paragraph(said.note),
    ...unfitBlocks(request),
    ...(undone.length === 0 ? [] : [paragraph(`${said.undone}:`), list(undone)]),
    ...hardwareBlocks(request, hardware),
    paragraph(`${reader.words.sections.leak}: ${leak.title}. ${leak.text}`),
    ...(leftOut.length === 0
      ? []
      : [paragraph(`${said.leftOut} ${leftOut.map(({ because }) => because).join('; ')}.`)]),
  ]);
}

function ladderTable({ estimate: { methods }, reader }: ReportRequest): Table {
  const said = reader.words.methods;
  return table(
    reader.words.sections.methods,
    [
      wide(said.method, 2),
      narrow(said.verdict),
      wide(said.reason, 4),
      numeric(said.hours),
      numeric(said.days),
      numeric(said.price),
    ],
    methods.rungs.filter(isFit).map((rung) =>
      row(
        rung.title,
        said.verdicts[rung.verdict],
        rung.deciding.text,
        spanText(rung.labourH, (value) => upTo(reader, value, value < 10 ? 1 : 0)),
        spanText(rung.calendarDays, (value) => upTo(reader, value, 0)),
        priceText(rung, reader),
      ),
    ),
  );
}

const isFit = ({ verdict }: RungSection): boolean => verdict !== 'unfit';

/** What cannot be done has neither hours nor price: its reason is enough. */
function unfitBlocks({ estimate: { methods }, reader }: ReportRequest): readonly Block[] {
  const said = reader.words.methods;
  const unfit = methods.rungs.filter((rung) => !isFit(rung));
  return unfit.length === 0
    ? []
    : [paragraph(said.unfit), list(unfit.map(({ title, deciding }) => said.why(title, deciding.text)))];
}

const spanText = (range: RungSection['labourH'], say: (value: number) => string): string =>
  range === undefined ? '–' : `${say(range.p10)} – ${say(range.p90)}`;

const priceText = ({ priceRange }: RungSection, reader: ReportRequest['reader']): string =>
  priceRange === undefined
    ? '–'
    : `${aboutMoney(reader, priceRange.p10)} – ${aboutMoney(reader, priceRange.p90)}`;

export function hardwareBlocks(
  { reader }: ReportRequest,
  hardware: readonly HardwareCard[],
): readonly Block[] {
  if (hardware.length === 0) return [];
  const said = reader.words.methods;
  const length = (valueMm: number): string =>
    lengthText(reader, valueMm, reader.units === 'si' && Number.isInteger(valueMm) ? 0 : 1);
  /** Boards and plates are sawn to the millimetre. */
  const sawn = (valueMm: number): string => lengthText(reader, valueMm);
  return [
    table(
      reader.words.sections.hardware,
      [
        narrow(said.fitting),
        wide(said.fasteners, 1.4),
        wide(said.plug),
        wide(said.insert, 2),
        wide(said.plate, 2),
        wide(said.sealant),
      ],
      hardware.map((card) =>
        row(
          namedKind(card),
          `${card.fasteners} × ${length(card.fastenerMm)} × ${length(card.fastenerLengthMm)}`,
          `${length(card.plugMm)}, ${upTo(reader, card.plugMl, 0)} ml`,
          card.insert === undefined
            ? '–'
            : `${sawn(card.insert.lengthMm)} × ${sawn(card.insert.widthMm)}, ${card.insert.material}`,
          card.plate === undefined
            ? '–'
            : `${sawn(card.plate.lengthMm)} × ${sawn(card.plate.widthMm)} × ${length(card.plate.thicknessMm)}, ${card.plate.rule}`,
          `${card.sealant.kind.replace('-', ' ')}, ${card.sealant.ml} ml`,
        ),
      ),
    ),
    list([
      ...tighteningSaid(hardware).map((text) => `${said.tighten}, ${text}.`),
      ...hardware.flatMap(({ id, referral, note }) =>
        [referral, note].flatMap((text) => (text === undefined ? [] : [`${id}: ${text}.`])),
      ),
    ]),
  ];
}

/** Fittings that are tightened alike share the sentence. */
const tighteningSaid = (hardware: readonly HardwareCard[]): readonly string[] =>
  [...new Set(hardware.map(({ tightening }) => tightening))].map(
    (text) =>
      `${hardware
        .filter(({ tightening }) => tightening === text)
        .map(({ id }) => id)
        .join(', ')}: ${text}`,
  );

/** Most fittings are named after their kind; only a name that leaves it open is given it in brackets. */
function namedKind({ id, kind }: HardwareCard): string {
  const words = kind.replace('-', ' ');
  return id.toLowerCase().replaceAll('-', ' ').includes(words) ? id : `${id} (${words})`;
}
