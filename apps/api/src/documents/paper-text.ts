import { printable } from '#lib/drawings';

/** Longest run of letters that a narrow table column can hold; longer ones get places to break. */
const LONGEST_RUN = 18;
const BREAK = '\u200B';

/** Text as the embedded font shows it, with invisible places to break in long runs. */
export const paperText = (text: string): string =>
  printable(text).replace(/[^\s\u200B-]{19,}/gu, (run) => broken(run));

function broken(run: string): string {
  const letters = [...run];
  return letters
    .map((letter, index) => (index > 0 && index % LONGEST_RUN === 0 ? `${BREAK}${letter}` : letter))
    .join('');
}
