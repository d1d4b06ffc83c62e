import type { Board } from './board.js';
import { moved, withCorner, type Drawn } from './model/edits.js';
import { shifted, toPlace, zoomed, type Frame } from './model/frame.js';
import { cornerAt, cornersOf, hitAt } from './model/hit.js';
import { stroked, touched } from './model/pen.js';
import type { Place } from './model/record.js';
import { snapped } from './model/snapping.js';
import type { DefectRecord } from 'kingplank-sdk';

/** How near a finger has to come, how far it moves before it draws, and how much it trembles. */
const REACH_PX = 16;
const STROKE_PX = 7;
const TREMBLE_PX = 4;

/** A finger on the sheet since it came down. */
interface Hold {
  readonly pointer: number;
  readonly linePx: readonly Place[];
  readonly isStroke: boolean;
  readonly frame: Frame;
  readonly before: DefectRecord;
  readonly held: Drawn | undefined;
  readonly corner: number | undefined;
}

/** One finger or the mouse on the plan: a touch sets down, a stroke draws, moves or shifts the sheet. */
export class Hand {
  readonly #board: Board;
  #hold: Hold | undefined;

  constructor(board: Board) {
    this.#board = board;
  }

  down(pointer: number, px: Place): void {
    if (this.#hold !== undefined) return;
    const { frame, record } = this.#board;
    const at = toPlace(frame, px);
    const { chosen } = this.#board.state();
    const corner =
      chosen === undefined ? undefined : cornerAt(cornersOf(record, chosen), at, this.#reachMm());
    const held = corner === undefined ? hitAt(record, at, this.#reachMm()) : chosen;
    this.#hold = { pointer, linePx: [px], isStroke: false, frame, before: record, held, corner };
  }

  move(pointer: number, px: Place): void {
    const hold = this.#hold;
    if (hold?.pointer !== pointer) return;
    const isStroke =
      hold.isStroke || Math.hypot(px[0] - hold.linePx[0][0], px[1] - hold.linePx[0][1]) > STROKE_PX;
    this.#hold = { ...hold, isStroke, linePx: [...hold.linePx, px] };
    if (isStroke) this.#dragged(this.#hold, px);
  }

  up(pointer: number): void {
    const hold = this.#hold;
    if (hold?.pointer !== pointer) return;
    this.#hold = undefined;
    if (hold.isStroke) this.#stroked(hold);
    else this.#touched(hold);
  }

  cancel(): void {
    this.#hold = undefined;
    this.#board.hold(undefined);
  }

  /** A touch by the keyboard's cross. */
  press(at: Place): void {
    const { pen, record } = this.#board;
    if (pen.tool === 'select') this.#board.act.choose(hitAt(record, at, this.#reachMm()));
    else this.#board.take(touched(pen, record, at, this.#reachMm()));
  }

  #reachMm(): number {
    return REACH_PX / this.#board.frame.pxPerMm;
  }

  #snap(px: Place): Place {
    const { record } = this.#board;
    const { units } = this.#board.state();
    return snapped(toPlace(this.#board.frame, px), record, this.#reachMm(), units).place;
  }

  #touched({ linePx, held }: Hold): void {
    const { pen, record } = this.#board;
    if (pen.tool === 'select') this.#board.act.choose(held);
    else this.#board.take(touched(pen, record, this.#snap(linePx[0]), this.#reachMm()));
  }

  #dragged(hold: Hold, px: Place): void {
    const { tool } = this.#board.pen;
    if (tool === 'select') this.#moved(hold, px);
    else this.#board.set({ pen: { ...this.#board.pen, corners: this.#lineOf(hold) } });
  }

  /** A corner goes where the finger is; a thing goes along; where nothing is held, the sheet does. */
  #moved({ held, corner, before, frame, linePx }: Hold, px: Place): void {
    if (held !== undefined && corner !== undefined)
      this.#board.hold(withCorner(before, held, corner, this.#snap(px)));
    else if (held !== undefined && held.kind !== 'panel')
      this.#board.hold(moved(before, held, this.#way(linePx[0], px)));
    else this.#board.setFrame(shifted(frame, [px[0] - linePx[0][0], px[1] - linePx[0][1]]));
  }

  #way(fromPx: Place, toPx: Place): Place {
    const { pxPerMm } = this.#board.frame;
    return [Math.round((toPx[0] - fromPx[0]) / pxPerMm), Math.round((toPx[1] - fromPx[1]) / pxPerMm)];
  }

  #lineOf({ linePx }: Hold): readonly Place[] {
    const isFree = this.#board.pen.tool === 'zone';
    const ends = [linePx[0], linePx[linePx.length - 1]];
    return isFree
      ? linePx.map((one) => rounded(toPlace(this.#board.frame, one)))
      : ends.map((one) => this.#snap(one));
  }

  #stroked(hold: Hold): void {
    const { pen, record } = this.#board;
    if (pen.tool === 'select') {
      this.#board.letGo();
      return;
    }
    this.#board.take(stroked(pen, record, this.#lineOf(hold), TREMBLE_PX / this.#board.frame.pxPerMm));
  }
}

const rounded = ([x, y]: Place): Place => [Math.round(x), Math.round(y)];

/** A turn of the wheel brings the sheet nearer or takes it farther, around what the mouse points at. */
export function wheeled(board: Board, px: Place, deltaY: number): void {
  const before = toPlace(board.frame, px);
  const frame = zoomed(board.frame, deltaY < 0 ? 1.15 : 1 / 1.15);
  const after = toPlace(frame, px);
  board.setFrame({
    ...frame,
    middle: [frame.middle[0] + before[0] - after[0], frame.middle[1] + before[1] - after[1]],
  });
}
