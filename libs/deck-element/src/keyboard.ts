import type { Board } from './board.js';
import type { Hand } from './hand.js';
import { soundsByLetter } from './model/hammer.js';
import type { Place } from './model/record.js';

/** Where the cross is, or where it begins: in the middle of what is shown. */
const crossOf = (board: Board): Place => {
  const [x, y] = board.state().cursor ?? board.frame.middle;
  return [Math.round(x), Math.round(y)];
};

const COARSE_MM = 50;
const FINE_MM = 5;

const ways: Readonly<Record<string, Place>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

/** The plan by keyboard alone; whether the key meant anything. */
export function keyPressed(board: Board, hand: Hand, event: KeyboardEvent): boolean {
  if (event.ctrlKey || event.metaKey) return withControl(board, event);
  const way = ways[event.key];
  if (way !== undefined) return moveCross(board, way, event.shiftKey ? FINE_MM : COARSE_MM);
  return byName(board, hand, event.key);
}

function withControl({ act }: Board, { key, shiftKey }: KeyboardEvent): boolean {
  const letter = key.toLowerCase();
  if (letter === 'y' || (letter === 'z' && shiftKey)) act.redo();
  else if (letter === 'z') act.undo();
  else return false;
  return true;
}

function moveCross(board: Board, [dx, dy]: Place, stepMm: number): boolean {
  const [x, y] = crossOf(board);
  board.set({ cursor: [x + dx * stepMm, y + dy * stepMm] });
  return true;
}

function byName(board: Board, hand: Hand, key: string): boolean {
  const { pen, tab } = board.state();
  const letter = key.toLowerCase();
  switch (key) {
    case 'Enter':
    case ' ':
      hand.press(crossOf(board));
      return true;
    case 'Escape':
      board.set({ pen: { ...pen, corners: [], spot: undefined }, chosen: undefined });
      return true;
    case 'Delete':
    case 'Backspace':
      board.remove();
      return true;
    default:
      if (tab !== 'tap' || soundsByLetter[letter] === undefined) return false;
      board.act.noteSound(letter);
      return true;
  }
}
