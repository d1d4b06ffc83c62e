/** Digits that a printed number shows, leading zeros apart. */
export function significantDigits(printed: string): number {
  const [mantissa] = printed.toLowerCase().split('e');
  const digits = mantissa.replace(/[^0-9]/g, '').replace(/^0+/, '');
  return Math.max(1, digits.length);
}

/** More digits than this are the machine's, not the method's. */
const MOST_DIGITS = 11;

/** Differences of this share are the last bits of doubles, which another machine may round otherwise: they are written as 0. */
const NOISE = 2e-11;

/** What is left where terms cancel to a printed 0 is noise when it is far below what is allowed. */
export const isNoise = (value: number, printed: string, allowed: number): boolean =>
  Number(printed) === 0
    ? Math.abs(value) <= allowed / 100
    : Math.abs(value - Number(printed)) <= NOISE * Math.abs(Number(printed));

/** Our value with two digits more than were printed, so that the reader sees what rounding hides. */
export function oursText(value: number, printed: string, allowed: number): string {
  if (Number(printed) === 0 && isNoise(value, printed, allowed)) return '0';
  return trimmed(value, Math.min(MOST_DIGITS, Math.max(4, significantDigits(printed) + 2)));
}

const trimmed = (value: number, digits: number): string => String(Number(value.toPrecision(digits)));

/** Difference as a share of what was printed; of a printed 0, as it is. */
export function differenceText(value: number, printed: string, allowed: number): string {
  if (isNoise(value, printed, allowed)) return '0';
  const expected = Number(printed);
  const share = expected === 0 ? value : (value - expected) / Math.abs(expected);
  return `${share > 0 ? '+' : '-'}${shareText(Math.abs(share), expected === 0)}`;
}

/** What is allowed, in the same terms as the difference. */
export function allowedText(printed: string, allowed: number): string {
  const expected = Number(printed);
  if (allowed === 0) return 'exact';
  return `±${shareText(expected === 0 ? allowed : allowed / Math.abs(expected), expected === 0)}`;
}

const shareText = (share: number, isAbsolute: boolean): string =>
  isAbsolute || share < 1e-3 ? share.toExponential(1) : `${trimmed(100 * share, 2)} %`;
