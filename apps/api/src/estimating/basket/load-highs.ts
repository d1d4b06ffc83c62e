import type { Highs } from 'highs';
import { Defect } from '#lib/kernel';

type Loader = () => Promise<Highs>;

let loading: Promise<Highs> | undefined;

/** The solver, loaded once in each thread: its WebAssembly takes a moment to compile. */
export const loadHighs = (): Promise<Highs> => (loading ??= load());

/** The types of the package describe its CommonJS form, so that its loader must be recognised here. */
async function load(): Promise<Highs> {
  const module: Readonly<Record<string, unknown>> = await import('highs');
  if (!isLoader(module.default)) throw new Defect('The solver package has no loader');
  return module.default();
}

const isLoader = (value: unknown): value is Loader => typeof value === 'function';
