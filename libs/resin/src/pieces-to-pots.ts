import type { BatchLimit } from './batch-request.js';
import type { BeddedPiece } from './resin-request.js';

/** What one pot covers, as a share of its step. */
export interface PotShare {
  readonly covers: readonly string[];
  readonly share: number;
  readonly limitedBy: BatchLimit;
  /** More than one: this pot and its neighbours bed one piece, wet in wet. */
  readonly potsOfPiece: number;
}

interface Filling {
  readonly pots: readonly PotShare[];
  readonly open: { readonly covers: readonly string[]; readonly share: number };
}

const nothing = { covers: [], share: 0 };

/**
 * Gives each pot whole pieces in bedding order, so that no joint straddles two pots; a piece that no pot can bed
 * gets pots of its own, one after the other.
 */
export function potsByPiece(
  pieces: readonly BeddedPiece[],
  largestShare: number,
  limitedBy: BatchLimit,
): readonly PotShare[] {
  const total = pieces.reduce((sum, { areaM2 }) => sum + areaM2, 0);
  const filled = pieces.reduce<Filling>(
    (state, { label, areaM2 }) => withPiece(state, { label, share: areaM2 / total, largestShare, limitedBy }),
    { pots: [], open: nothing },
  );
  const pots = closed(filled, 'piece').pots;
  return pots.length === 1 ? pots.map((pot) => ({ ...pot, limitedBy: 'whole-step' as const })) : pots;
}

interface NextPiece {
  readonly label: string;
  readonly share: number;
  readonly largestShare: number;
  readonly limitedBy: BatchLimit;
}

function withPiece(state: Filling, { label, share, largestShare, limitedBy }: NextPiece): Filling {
  const fitsOpen = state.open.share + share <= largestShare;
  if (fitsOpen)
    return { ...state, open: { covers: [...state.open.covers, label], share: state.open.share + share } };
  const before = closed(state, 'piece');
  if (share <= largestShare) return { ...before, open: { covers: [label], share } };
  const count = Math.ceil(share / largestShare);
  const parts = Array.from({ length: count }, (_, part): PotShare => ({
    covers: [`${label} (${part + 1} of ${count})`],
    share: share / count,
    limitedBy,
    potsOfPiece: count,
  }));
  return { pots: [...before.pots, ...parts], open: nothing };
}

const closed = ({ pots, open }: Filling, limitedBy: BatchLimit): Filling =>
  open.covers.length === 0
    ? { pots, open }
    : { pots: [...pots, { ...open, limitedBy, potsOfPiece: 1 }], open: nothing };

/** Equal pots for a step without pieces. */
export function equalPots(
  totalG: number,
  largestG: number,
  { limitedBy, title }: { readonly limitedBy: BatchLimit; readonly title: string },
): readonly PotShare[] {
  const count = Math.max(1, Math.ceil(totalG / largestG - 1e-9));
  return Array.from({ length: count }, (_, index) => ({
    covers: [count === 1 ? title : `${title}, part ${index + 1} of ${count}`],
    share: 1 / count,
    potsOfPiece: 1,
    limitedBy: count === 1 ? 'whole-step' : limitedBy,
  }));
}
