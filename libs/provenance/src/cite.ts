/** Where a fact was read. `source` is a key of a file in `libs/catalogue/data/sources/`. */
export interface Cite {
  /** Key of the source; `/v1/sources/{code}` names it in full. */
  readonly source: string;
  /** Clause, table, equation or page in the source. */
  readonly clause?: string;
  /** Clause, table or page, or why the value stands without one. */
  readonly note?: string;
}
