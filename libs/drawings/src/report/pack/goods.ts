import { upTo } from '../../reader.js';
import { dense, numeric, paragraph, row, table, task, wide, type Block, type Section } from '../document.js';
import type { ReportRequest } from '../request.js';

/** Goods by supplier: what is ticked off before the deck is opened. Tools stand with the day that first needs them. */
export const goodsTasks = (request: ReportRequest): readonly Section[] => {
  const { jobPack } = request.reader.words;
  const goods = pickTables(request);
  return goods.length === 0
    ? []
    : [task('pick-list', jobPack.pick, [dense(paragraph(jobPack.pickLead)), ...goods])];
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

/** Lines to write what meter, thermometer and hygrometer show: what the gates ask for, proved afterwards. */
export const logBlocks = ({ reader }: ReportRequest, lines: number): readonly Block[] => {
  const { jobPack } = reader.words;
  const titles = Object.values(jobPack.log.columns);
  return [
    dense(paragraph(jobPack.log.lead)),
    table(
      jobPack.log.title,
      titles.map((title) => wide(title)),
      Array.from({ length: lines }, () => row(...titles.map(() => ''))),
    ),
  ];
};
