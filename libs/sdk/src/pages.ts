/** One page of a list, as the service sends it. */
export interface Page<T> {
  readonly items: readonly T[];
  readonly nextCursor?: string | null;
}

/** A list that fetches its next page when it is needed: `for await (const item of list)`. */
export class Pages<T> implements AsyncIterable<T> {
  readonly #fetchPage: (cursor: string | undefined) => Promise<Page<T>>;

  constructor(fetchPage: (cursor: string | undefined) => Promise<Page<T>>) {
    this.#fetchPage = fetchPage;
  }

  /** The first page alone. */
  firstPage(): Promise<Page<T>> {
    return this.#fetchPage(undefined);
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
