/** Where a fact was read. `source` is a key of `libs/catalogue/data/sources.json`. */
export interface Cite {
  readonly source: string;
  /** Clause, table, equation or page in the source. */
  readonly clause?: string;
  readonly note?: string;
}
