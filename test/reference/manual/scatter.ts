export interface Dot {
  readonly id: string;
  /** Difference over what is allowed. */
  readonly ratio: number;
  readonly isDisagreement: boolean;
}

const WIDTH = 720;
const LEFT = 24;
const RIGHT = 24;
const TOP = 28;
const ROW = 5;
const FOOT = 34;
const LOWEST = -4;
const HIGHEST = 3;

/** Below a ten-thousandth of what is allowed lies noise, which differs between machines: all of it stands at the left edge. */
const clamped = (ratio: number): number =>
  Math.min(HIGHEST, Math.max(LOWEST, ratio > 0 ? Math.log10(ratio) : LOWEST));

const across = (power: number): number =>
  LEFT + ((power - LOWEST) / (HIGHEST - LOWEST)) * (WIDTH - LEFT - RIGHT);

const text = (value: string): string => value.replaceAll('&', '&amp;').replaceAll('<', '&lt;');
const at = (value: number): string => (Math.round(value * 2) / 2).toString();

/** One dot a case, its difference over the allowed difference on a logarithmic scale. */
export function scatter(dots: readonly Dot[]): string {
  const height = TOP + dots.length * ROW + FOOT;
  const bottom = height - FOOT;
  const powers = Array.from({ length: HIGHEST - LOWEST + 1 }, (_, i) => LOWEST + i);
  const grid = powers.map(
    (power) =>
      `<line x1="${at(across(power))}" y1="${TOP - 8}" x2="${at(across(power))}" y2="${bottom}" stroke="${power === 0 ? '#b3261e' : '#d5d9dd'}" stroke-width="${power === 0 ? 1.5 : 1}"/>` +
      `<text x="${at(across(power))}" y="${bottom + 16}" text-anchor="middle">${labelOf(power)}</text>`,
  );
  const marks = dots.map(
    ({ id, ratio, isDisagreement }, i) =>
      `<circle cx="${at(across(clamped(ratio)))}" cy="${at(TOP + (i + 0.5) * ROW)}" r="2.2" fill="${isDisagreement ? 'none' : '#1f4e79'}" stroke="${isDisagreement ? '#b3261e' : '#1f4e79'}"><title>${text(id)}</title></circle>`,
  );
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${WIDTH}" height="${height}" viewBox="0 0 ${WIDTH} ${height}" role="img" font-family="sans-serif" font-size="11" fill="#333">`,
    `<title>Difference over allowed difference, one dot a case</title><rect width="100%" height="100%" fill="#fff"/>`,
    `<text x="${at(across(0) - 6)}" y="14" text-anchor="end">agrees</text><text x="${at(across(0) + 6)}" y="14">outside (open: explained)</text>`,
    ...grid,
    ...marks,
    `<text x="${WIDTH / 2}" y="${height - 4}" text-anchor="middle">difference / allowed difference</text>`,
    '</svg>',
    '',
  ].join('\n');
}

const labelOf = (power: number): string =>
  power === LOWEST
    ? '0'
    : power === HIGHEST
      ? '≥ 1000'
      : power === 0
        ? '1'
        : power > 0
          ? String(10 ** power)
          : `10<tspan dy="-4" font-size="8">${power}</tspan>`;
