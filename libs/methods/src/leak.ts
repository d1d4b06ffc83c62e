import type { Cite } from '#lib/provenance';
import { commonPractice, fromMemory } from './cites.js';
import { inPrint } from './tests.js';

export const leakCauses = [
  'fittings',
  'hull-deck-joint',
  'hatch',
  'overlay-screws',
  'chainplate',
  'crack',
  'not-known',
] as const;
export type LeakCause = (typeof leakCauses)[number];

/** How a cause is stopped, and how one finds out that it stays stopped. */
export interface LeakRemedy {
  readonly cause: LeakCause;
  readonly title: string;
  /** What the plan does about it. */
  readonly remedy: string;
  /** The same as this plan does it, where lines of its own stop the water. */
  readonly treated?: string;
  /** Re-inspection: what is measured, when, and the value that passes. */
  readonly verify: string;
  /** The remedy is part of the plan as soon as its fittings are. */
  readonly isInPlan: (facts: {
    /** Kinds of the fittings that come off and are bedded anew. */
    readonly bedded: readonly string[];
    readonly takesOverlayOff: boolean;
    readonly railOff: boolean;
    /** The remedy has lines of its own in this plan. */
    readonly isTreated: boolean;
  }) => boolean;
  readonly cite: Cite;
}

const within =
  'the meter within 2 points of the dry reference at the same marks, three months afloat or after ten hours of hosing';

export const leakRemedies: Readonly<Record<LeakCause, LeakRemedy>> = {
  'fittings': {
    cause: 'fittings',
    title: 'Fittings through the deck',
    remedy: 'every fitting within 300 mm off, its holes potted, bedded anew',
    verify: within,
    isInPlan: ({ bedded }) => bedded.length > 0,
    cite: inPrint,
  },
  'hull-deck-joint': {
    cause: 'hull-deck-joint',
    title: 'Joint of hull and deck',
    remedy: 'rail off, joint cleaned and rebuilt, or glassed over with two tapes of 100 and 150 mm',
    treated: 'joint cleaned, ground and glassed over with two tapes of 100 and 150 mm',
    verify: within,
    isInPlan: ({ railOff, isTreated }) => railOff || isTreated,
    cite: inPrint,
  },
  'hatch': {
    cause: 'hatch',
    title: 'Hatch or window',
    remedy: 'frame off, core edge dug back 12 mm or more and sealed, frame bedded in a sealant that flexes',
    verify: 'ten minutes of hosing from below upwards, no drop inside',
    isInPlan: ({ bedded, isTreated }) => bedded.includes('hatch') || isTreated,
    cite: inPrint,
  },
  'overlay-screws': {
    cause: 'overlay-screws',
    title: 'Screws of the overlay',
    remedy: 'overlay off, every screw hole reamed and filled twice',
    verify: within,
    isInPlan: ({ takesOverlayOff }) => takesOverlayOff,
    cite: inPrint,
  },
  'chainplate': {
    cause: 'chainplate',
    title: 'Chainplate slot',
    remedy: 'cover off, block under it filled solid, slot cut anew, sealed with what flexes',
    verify: 'dry below the slot after a day of sailing to windward; sealant renewed within five years',
    isInPlan: ({ bedded, isTreated }) => bedded.includes('chainplate') || isTreated,
    cite: inPrint,
  },
  'crack': {
    cause: 'crack',
    title: 'Crack in the skin',
    remedy: 'crack ground out 12:1 and laminated; its cause, a hard spot or a weak panel, looked for',
    verify: 'no new crack after a season under the same load',
    isInPlan: ({ isTreated }) => isTreated,
    cite: commonPractice,
  },
  'not-known': {
    cause: 'not-known',
    title: 'Not known',
    remedy:
      'hose the deck in sections from the lowest up before it is closed; bed every fitting within 300 mm anew',
    verify: within,
    isInPlan: () => false,
    cite: fromMemory,
  },
};

/** What the plan does about the leak, in a sentence that a report can carry. */
export interface LeakAnswer {
  readonly cause: LeakCause;
  readonly title: string;
  readonly remedy: string;
  readonly verify: string;
  readonly isRemedied: boolean;
  readonly text: string;
}

export function leakAnswer(cause: LeakCause, facts: Parameters<LeakRemedy['isInPlan']>[0]): LeakAnswer {
  const { title, verify, isInPlan, ...words } = leakRemedies[cause];
  const remedy = facts.isTreated && !facts.railOff ? (words.treated ?? words.remedy) : words.remedy;
  const isRemedied = isInPlan(facts);
  return {
    cause,
    title,
    remedy,
    verify,
    isRemedied,
    text: isRemedied
      ? `The way in of the water is stopped in this plan: ${remedy}. Verify by ${verify}.`
      : `The way in of the water is not stopped in this plan, and the repair will not last until it is: ${remedy}. Verify by ${verify}.`,
  };
}
