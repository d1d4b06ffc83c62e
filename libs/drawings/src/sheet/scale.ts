/**
 * Recommended scales as drawing size over real size, largest first: 50:1 down to 1:100.
 *
 * Source: [ISO-5455] table of recommended scales (continued by decimal multiples).
 */
export const enlargements = [50, 20, 10, 5, 2] as const;
export const reductions = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000] as const;

export interface Scale {
  /** Sheet millimetres per real millimetre. */
  readonly factor: number;
  /** `1:10`, `5:1`. */
  readonly text: string;
}

export const standardScales: readonly Scale[] = [
  ...enlargements.map((times) => ({ factor: times, text: `${times}:1` })),
  ...reductions.map((times) => ({ factor: 1 / times, text: `1:${times}` })),
];

export const fullSize: Scale = { factor: 1, text: '1:1' };

/** The largest recommended scale at which something of this size fits; the smallest one when none does. */
export function scaleToFit(
  widthMm: number,
  heightMm: number,
  roomWidthMm: number,
  roomHeightMm: number,
): Scale {
  const fits = ({ factor }: Scale): boolean =>
    widthMm * factor <= roomWidthMm && heightMm * factor <= roomHeightMm;
  return standardScales.find(fits) ?? standardScales[standardScales.length - 1];
}

const steps = [1, 2, 5];

/** The largest 1-2-5 length that is no longer than the room allows. */
export function roundLength(atMostMm: number): number {
  const power = 10 ** Math.floor(Math.log10(atMostMm));
  const best = [...steps].reverse().find((step) => step * power <= atMostMm) ?? 1;
  return best * power;
}
