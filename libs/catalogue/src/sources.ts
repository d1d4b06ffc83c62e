/** How a source was read. */
export type ReadAs = 'first-hand' | 'second-hand' | 'memory' | 'derived' | 'common-practice';

export interface Source {
  readonly key: string;
  readonly title: string;
  readonly body: string;
  readonly year: string;
  readonly readAs: ReadAs;
  readonly url?: string;
  readonly note?: string;
}
