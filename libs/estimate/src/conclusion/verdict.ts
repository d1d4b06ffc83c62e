/** What the repaired deck comes to beside the deck as built: the one verdict of an estimate, its list entry and its preview. */
export type RepairVerdict =
  'restored' | 'not-restored' | 'not-established' | 'deck-stays-closed' | 'cannot-be-carried-out';

const sentences: Readonly<Record<RepairVerdict, string>> = {
  'restored': 'Repaired as planned, this deck is as stiff and as strong as it was built, by calculation.',
  'not-restored':
    'Repaired as planned, this deck does not get back all that it had when built; the shortfalls are named.',
  'not-established': 'Whether this deck gets back what it had when built could not be calculated.',
  'deck-stays-closed':
    'The deck stays closed; the repair is good when the core proves dry and the water stays out.',
  'cannot-be-carried-out':
    'As recorded the repair cannot be carried out: no way was found to press what is bonded.',
};

export interface Restoring {
  /** Whether something presses what is bonded, where anything is. */
  readonly isPressed: boolean;
  readonly isOpened: boolean;
  /** Absent where the panel could not be compared. */
  readonly shortfalls?: readonly string[];
}

export interface SaidVerdict {
  /** Code of the verdict. */
  readonly code: RepairVerdict;
  /** The verdict in a sentence. */
  readonly sentence: string;
}

export function verdictOf(restoring: Restoring): SaidVerdict {
  const code = codeOf(restoring);
  return { code, sentence: sentences[code] };
}

function codeOf({ isPressed, isOpened, shortfalls }: Restoring): RepairVerdict {
  if (!isPressed) return 'cannot-be-carried-out';
  if (!isOpened) return 'deck-stays-closed';
  if (shortfalls === undefined) return 'not-established';
  return shortfalls.length === 0 ? 'restored' : 'not-restored';
}
