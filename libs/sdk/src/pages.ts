/** One page of a list, as the service sends it. */
export interface Page<T> {
  readonly items: readonly T[];
  readonly nextCursor?: string | null;
}

/** A list that fetches its next page when it is needed: `for await (const item of list)`. */
export class Pages<T> implements AsyncIterable<T> {
  readonly #fetchPage: (cursor: string | undefined) => PromiseLike<Page<T>>;

  constructor(fetchPage: (cursor: string | undefined) => PromiseLike<Page<T>>) {
    this.#fetchPage = fetchPage;
  }

  /** The first page alone, with its cursor. */
  async firstPage(): Promise<Page<T>> {
    return await this.#fetchPage(undefined);
  }

  /** The first `limit` items, over as many pages as that takes. */
  async toArray({ limit }: { readonly limit: number }): Promise<readonly T[]> {
    const items: T[] = [];
    if (limit <= 0) return items;
    for await (const item of this) {
      items.push(item);
      if (items.length >= limit) break;
    }
    return items;
  }

  async *[Symbol.asyncIterator](): AsyncIterator<T> {
    let cursor: string | undefined;
    do {
      const page = await this.#fetchPage(cursor);
      yield* page.items;
      cursor = page.nextCursor ?? undefined;
    } while (cursor !== undefined);
  }
}
