/**
 * Shares a whole number of tenths of a gram among parts in proportion to their weights, losing none:
 * each gets its floor, the largest remainders get the rest, ties to the earlier part.
 */
export function shareOut(total: number, weights: readonly number[]): readonly number[] {
  const tenths = Math.round(total * 10);
  const sum = weights.reduce((all, weight) => all + weight, 0);
  const exact = weights.map((weight) => (sum === 0 ? tenths / weights.length : (tenths * weight) / sum));
  const floors = exact.map(Math.floor);
  const left = tenths - floors.reduce((all, floor) => all + floor, 0);
  const first = new Set(
    exact
      .map((share, index) => ({ index, rest: share - floors[index] }))
      .sort((a, b) => b.rest - a.rest || a.index - b.index)
      .slice(0, left)
      .map(({ index }) => index),
  );
  return floors.map((floor, index) => (floor + (first.has(index) ? 1 : 0)) / 10);
}
