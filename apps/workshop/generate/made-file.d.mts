export const root: string;
export function sourcesBelow(folder: string): string[];
export function digestOf(files: readonly string[], ...words: readonly string[]): string;
export function writeMade(made: {
  readonly from: string;
  readonly digest: string;
  readonly files: readonly string[];
  readonly make: () => Promise<readonly string[]> | readonly string[];
}): Promise<void>;
