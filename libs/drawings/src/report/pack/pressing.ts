import { massText, temperatureText, type Reader } from '../../reader.js';
import {
  dense,
  facts,
  list,
  numeric,
  paragraph,
  row,
  table,
  task,
  untitled,
  wide,
  type Block,
  type Section,
} from '../document.js';
import { pressPlanFigures } from '../figures.js';
import { openedOf, type ReportRequest } from '../request.js';
import { waitText } from '../said.js';
import { pressedGoods, pressFacts, refusedPresses } from '../work-sections.js';

/** Where boards, props and loads go, in which order they are placed and taken off, and the figures behind them. */
export const pressingTasks = (request: ReportRequest): readonly Section[] => {
  const { bondPressure } = request.estimate.process;
  const opened = openedOf(request);
  if (bondPressure === undefined) return [];
  return [
    task('pressing', request.reader.words.jobPack.pressing, [
      ...(opened === undefined ? [] : pressPlanFigures(opened).map(untitled)),
      ...stepBlocks(request),
      ...loadTable(request),
      ...figureBlocks(bondPressure, request.reader),
    ]),
  ];
};

type Press = NonNullable<ReportRequest['estimate']['process']['bondPressure']>;

/** Why the other ways were not taken is for whoever signs the report; a crew reads it only when there is none. */
const figureBlocks = (press: Press, reader: Reader): readonly Block[] => {
  const said = reader.words.process;
  return [
    dense(facts(said.pressure, pressFacts(press, reader))),
    { ...dense(facts(said.pressure, pressedGoods(press, reader))), across: 2 },
    ...(press.method === undefined
      ? [paragraph(press.recommendation), ...refusedPresses(press, reader)]
      : []),
  ];
};

type Method = NonNullable<Press['method']>;

/** Placing and removal, each with the wait that parts them. */
function stepBlocks({ estimate: { process }, reader }: ReportRequest): readonly Block[] {
  const { pressed } = reader.words.jobPack;
  const method = process.bondPressure?.method;
  if (method === undefined) return [];
  const [cure] = process.cure;
  const first = supportsUsed(method, process.bondPressure?.props.needed === true);
  return [
    dense(paragraph(pressed.steps)),
    dense(
      list([
        ...first.map((kind) => pressed[kind]),
        pressed.placing[method],
        ...(cure?.releaseH === undefined
          ? []
          : [pressed.holding(waitText(reader, cure.releaseH), temperatureText(reader, cure.temperatureC))]),
        pressed.removal[method],
        ...(cure?.sandableH === undefined
          ? []
          : first.map((kind) => pressed.last[kind](waitText(reader, cure.sandableH ?? 0)))),
      ]),
    ),
  ];
}

/** What keeps the skin in its shape meanwhile. */
const supportsUsed = (method: Method, needsProps: boolean): readonly ('boards' | 'bows')[] =>
  method === 'jacks' ? ['bows'] : needsProps ? ['boards'] : [];

/** The plan says what lies on one or two pieces. */
const LEAST_LISTED = 3;

const PAIRS_A_LINE = 5;

/** In the order of placing, read down each pair of columns; a bag or battens load no piece by itself. */
function loadTable({ estimate: { process }, reader }: ReportRequest): readonly Block[] {
  const said = reader.words.jobPack.pressed;
  const loaded = (process.bondPressure?.pieces ?? []).flatMap(({ label, massKg }) =>
    massKg === undefined ? [] : [[label, massText(reader, massKg, 0)] as const],
  );
  if (loaded.length < LEAST_LISTED) return [];
  const lines = Math.ceil(loaded.length / PAIRS_A_LINE);
  const pairs = Array.from({ length: PAIRS_A_LINE }, (_, pair) => pair * lines);
  const load = process.bondPressure?.method === 'jacks' ? said.heldBy : said.laidOn;
  return [
    dense(
      table(
        said.loads,
        pairs.flatMap(() => [wide(said.piece), numeric(load)]),
        Array.from({ length: lines }, (_, line) =>
          row(...pairs.flatMap((first) => loaded[first + line] ?? ['', ''])),
        ),
      ),
    ),
  ];
}
