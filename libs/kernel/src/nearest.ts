/**
 * The known names that a misspelt one may have meant, the nearest first: those that a third of its letters, changed,
 * left out, added or swapped with their neighbour, lead to (optimal string alignment distance); and those that hold it,
 * or that it holds, whole.
 * Worked: nearest.spec.ts
 */
export function nearest(given: string, known: Iterable<string>, most = 3): readonly string[] {
  const asked = folded(given);
  return [...known]
    .map((name) => ({ name, far: farness(asked, folded(name)) }))
    .filter(({ far }) => far <= Math.max(1, Math.floor(asked.length / 3)))
    .sort((a, b) => a.far - b.far || (a.name < b.name ? -1 : 1))
    .slice(0, most)
    .map(({ name }) => name);
}

/** As a hint in a sentence: empty when nothing is near. */
export function didYouMean(given: string, known: Iterable<string>): string {
  const [name] = nearest(given, known, 1);
  return name === undefined ? '' : ` (did you mean ${name}?)`;
}

const LONGEST = 80;
const LEAST_WHOLE = 4;

const folded = (name: string): string =>
  name
    .slice(0, LONGEST)
    .toLowerCase()
    .replace(/[-_. ]/g, '');

const farness = (a: string, b: string): number =>
  Math.min(a.length, b.length) >= LEAST_WHOLE && (a.includes(b) || b.includes(a)) ? 1 : steps(a, b);

function steps(a: string, b: string): number {
  let before: readonly number[] = [];
  let row: readonly number[] = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i += 1) {
    const next = [i];
    for (let j = 1; j <= b.length; j += 1) {
      const isSame = a[i - 1] === b[j - 1];
      const isSwap = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      next.push(
        Math.min(
          row[j] + 1,
          next[j - 1] + 1,
          row[j - 1] + (isSame ? 0 : 1),
          isSwap ? before[j - 2] + 1 : Number.POSITIVE_INFINITY,
        ),
      );
    }
    before = row;
    row = next;
  }
  return row[b.length];
}
