/** Where a fact was read. `source` is a key of a file in `libs/catalogue/data/sources/`. */
export interface Cite {
  readonly source: string;
  /** Clause, table, equation or page in the source. */
  readonly clause?: string;
  readonly note?: string;
}
