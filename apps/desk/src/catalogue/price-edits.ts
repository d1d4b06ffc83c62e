import type { PackInput, ProblemEntry } from 'kingplank-sdk';

/** Prices that were typed and are not saved, by the number of the pack and the place among its prices. */
export class PriceEdits {
  readonly #typed: ReadonlyMap<string, string>;
  readonly #faults: ReadonlyMap<string, string>;

  constructor(
    typed: ReadonlyMap<string, string> = new Map(),
    faults: ReadonlyMap<string, string> = new Map(),
  ) {
    this.#typed = typed;
    this.#faults = faults;
  }

  get count(): number {
    return this.#typed.size;
  }

  /** A price typed as it was is no edit. */
  with(sku: string, at: number, text: string, was: string): PriceEdits {
    const others = [...this.#typed].filter(([place]) => place !== placeOf(sku, at));
    return new PriceEdits(new Map(text === was ? others : [...others, [placeOf(sku, at), text]]));
  }

  /** What the service says against packs of a list, each at its price. */
  withFaults(problems: readonly ProblemEntry[], packs: readonly PackInput[]): PriceEdits {
    const faults = problems.flatMap(({ pointer = '', detail }) => {
      const [, pack, at = '0'] = /^\/packs\/(\d+)(?:\/prices(?:\/(\d+))?)?/.exec(pointer) ?? [];
      const found = packs[Number(pack)];
      return found === undefined ? [] : [[placeOf(found.sku, Number(at)), detail] as const];
    });
    return new PriceEdits(this.#typed, new Map(faults));
  }

  valueOf(sku: string, at: number): string | undefined {
    return this.#typed.get(placeOf(sku, at));
  }

  faultOf(sku: string, at: number): string | undefined {
    return this.#faults.get(placeOf(sku, at));
  }

  isChanged(sku: string): boolean {
    return [...this.#typed.keys()].some((place) => place.startsWith(`${sku}\n`));
  }

  appliedTo(packs: readonly PackInput[]): readonly PackInput[] {
    return packs.map((pack) => ({
      ...pack,
      prices: pack.prices.map((one, at) => ({ ...one, price: this.valueOf(pack.sku, at) ?? one.price })),
    }));
  }
}

const placeOf = (sku: string, at: number): string => `${sku}\n${at}`;
