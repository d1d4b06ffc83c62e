import { upTo } from '../../reader.js';
import { dense, numeric, paragraph, row, table, task, wide, type Block, type Section } from '../document.js';
import type { ReportRequest } from '../request.js';

/** Goods by supplier, and the tools that the steps ask for: what is ticked off before the deck is opened. */
export const goodsTasks = (request: ReportRequest): readonly Section[] => {
  const { jobPack } = request.reader.words;
  const goods = pickTables(request);
  const tools = toolsOf(request);
  return goods.length === 0 && tools.length === 0
    ? []
    : [
        task('pick-list', jobPack.pick, [
          dense(paragraph(jobPack.pickLead)),
          ...goods,
          ...(tools.length === 0 ? [] : [dense(paragraph(`${jobPack.toolsLead} ${tools.join('; ')}.`))]),
        ]),
      ];
};

/** Two goods to a line, so that the list stays on its sheet. */
const pickTables = ({ estimate, reader }: ReportRequest): readonly Block[] => {
  const { columns, jobPack } = reader.words;
  const picked = estimate.lines.flatMap(({ packs }) => packs);
  const suppliers = [...new Set(picked.map(({ supplier }) => supplier))].sort();
  return suppliers.map((supplier) => {
    const own = picked
      .filter((pack) => pack.supplier === supplier)
      .map(({ name, count }) => [upTo(reader, count, 0), packSaid(name)] as const);
    const half = Math.ceil(own.length / 2);
    return dense(
      table(
        supplier,
        [numeric(jobPack.packs), wide(columns.what), numeric(jobPack.packs), wide(columns.what)],
        own.slice(0, half).map((left, index) => row(...left, ...(own[half + index] ?? ['', '']))),
      ),
    );
  });
};

/** Sheets of a price list count their packs in units; a pack of one needs no word for it, more are named in the plural. */
const packSaid = (name: string): string =>
  name
    .replace(/, 1 each$/, '')
    .replace(/, pack of (\d+) each$/, ', pack of $1')
    .replace(/, pack of (\d+) pair$/, ', pack of $1 pairs');

/** Each tool once, in the order of the steps that first need it. */
const toolsOf = ({ estimate, reader }: ReportRequest): readonly string[] => {
  const { tools } = reader.words.jobPack;
  const needed = estimate.process.calendar.tasks.flatMap(({ code }) =>
    Object.entries(tools)
      .filter(([step]) => code.startsWith(step))
      .flatMap(([, named]) => named.split('; ')),
  );
  return [...new Set(needed)];
};

/** Lines to write what meter, thermometer and hygrometer show: what the gates ask for, proved afterwards. */
export const logBlocks = ({ reader }: ReportRequest): readonly Block[] => {
  const { jobPack } = reader.words;
  const titles = Object.values(jobPack.log.columns);
  return [
    paragraph(jobPack.log.lead),
    table(
      jobPack.log.title,
      titles.map((title) => wide(title)),
      Array.from({ length: LOG_LINES }, () => row(...titles.map(() => ''))),
    ),
  ];
};

const LOG_LINES = 10;
