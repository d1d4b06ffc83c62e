import { worker } from 'workerpool';
import { Defect } from '#lib/kernel';

/** One order as it travels to a hand. The stock comes along only when the hand does not hold it. */
export interface Errand {
  readonly file: string;
  readonly order: unknown;
  readonly stockKey?: string;
  readonly stock?: unknown;
  /** Keys that the hand need not keep any longer. */
  readonly forget: readonly string[];
}

type Runner = (order: unknown, stock: unknown) => unknown;

const stocks = new Map<string, unknown>();
const runners = new Map<string, Runner>();

/** The only thing a hand knows how to do: load the file of a job, once, and run it. */
async function run({ file, order, stockKey, stock, forget }: Errand): Promise<unknown> {
  for (const key of forget) stocks.delete(key);
  if (stockKey !== undefined && stock !== undefined) stocks.set(stockKey, stock);
  const runner = runners.get(file) ?? (await loaded(file));
  return runner(order, stockKey === undefined ? undefined : stocks.get(stockKey));
}

async function loaded(file: string): Promise<Runner> {
  const module: Readonly<Record<string, unknown>> = await import(file);
  const { run: found } = module;
  if (!isRunner(found)) throw new Defect(`${file} exports no function run`);
  runners.set(file, found);
  return found;
}

const isRunner = (value: unknown): value is Runner => typeof value === 'function';

worker({ run });
