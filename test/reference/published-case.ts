/** One number printed somewhere outside this project, and our own computation of it. */
export interface PublishedCase {
  /** Unique over all cases, e.g. `panel-roark-11.4-1a-ab2`. */
  readonly id: string;
  /** The room whose computation is checked; one page of the verification manual per room. */
  readonly room: string;
  readonly title: string;
  /** Key in `libs/catalogue/data/sources/`. */
  readonly source: string;
  /** Table, equation, example or page. */
  readonly locus: string;
  readonly unit: string;
  /** As printed: `'0.0444'`, `'5.54e4'`. */
  readonly printed: string;
  readonly ours: () => number;
  /** Without one, half a unit of the last printed digit. */
  readonly tolerance?: ({ readonly absolute: number } | { readonly relative: number }) & {
    readonly because: string;
  };
  /** The printed value cannot be reproduced: the test then holds our value to `ours`, and the manual prints the reason. */
  readonly disagreement?: {
    readonly oursShouldBe: number;
    readonly relative: number;
    readonly reason: string;
  };
  /** Absent: published. Otherwise what kind of second opinion this is. */
  readonly kind?: 'published' | 'independent-method' | 'limit' | 'by-hand';
}

/** Half a unit of the last printed digit. */
export function halfLastDigit(printed: string): number {
  const [mantissa, exponent = '0'] = printed.toLowerCase().split('e');
  const decimals = mantissa.split('.')[1]?.length ?? 0;
  return 0.5 * 10 ** (Number(exponent) - decimals);
}

export function allowedDifference({ printed, tolerance }: PublishedCase): number {
  if (tolerance === undefined) return halfLastDigit(printed) * (1 + 1e-9);
  return 'absolute' in tolerance ? tolerance.absolute : tolerance.relative * Math.abs(Number(printed));
}
