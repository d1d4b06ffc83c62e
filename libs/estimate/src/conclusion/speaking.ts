/** Figures inside sentences, rounded as a person says them. */
export const areaSaid = (areaM2: number): string =>
  `${areaM2 >= 1 ? String(Number(areaM2.toFixed(2))) : digits(areaM2, 2)} m2`;

export const tensOfMm = (lengthMm: number): string => String(Math.round(lengthMm / 10) * 10);

/** So many digits that mean something, never in powers of ten. */
export function digits(value: number, count: number): string {
  if (value === 0) return '0';
  const decimals = Math.max(0, Math.min(6, count - 1 - Math.floor(Math.log10(Math.abs(value)))));
  return String(Number(value.toFixed(decimals)));
}

/** A sentence that goes on after another. */
export const lower = (text: string): string => `${text.charAt(0).toLowerCase()}${text.slice(1)}`;
