import { Defect, unreachable } from '#lib/kernel';

/** How a result that falls between two whole numbers is decided. */
export type Rounding = 'half-away-from-zero' | 'half-to-even' | 'floor' | 'ceiling';

/** Exact integer division, rounded in the named way. */
export function roundedDivision(over: bigint, under: bigint, rounding: Rounding): bigint {
  if (under === 0n) throw new Defect('Division of money by zero');
  const [top, bottom] = under < 0n ? [-over, -under] : [over, under];
  const remainder = ((top % bottom) + bottom) % bottom;
  const floor = (top - remainder) / bottom;
  if (remainder === 0n) return floor;
  switch (rounding) {
    case 'floor':
      return floor;
    case 'ceiling':
      return floor + 1n;
    case 'half-to-even':
      return nearest(floor, remainder, bottom, floor % 2n !== 0n);
    case 'half-away-from-zero':
      return nearest(floor, remainder, bottom, top > 0n);
    default:
      return unreachable(rounding);
  }
}

function nearest(floor: bigint, remainder: bigint, under: bigint, tieGoesUp: boolean): bigint {
  const twice = remainder * 2n;
  if (twice === under) return tieGoesUp ? floor + 1n : floor;
  return twice > under ? floor + 1n : floor;
}
