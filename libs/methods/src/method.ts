import type { Cite } from '#lib/provenance';
import type { MethodFacts } from './facts.js';

/** From stopping a leak to a new panel, in the order in which a repairer considers them. */
export const rungCodes = [
  'close-leak',
  'rebed',
  'ream-and-pot',
  'dry-in-place',
  'inject',
  'above-old-skin',
  'above-new-skin',
  'from-below',
  'edge-rout-and-fill',
  'edge-wrap',
  'edge-rail-off',
  'whole-panel',
  'solid-spot',
] as const;
export type RungCode = (typeof rungCodes)[number];

export const verdicts = ['fit', 'fit-with-conditions', 'unfit'] as const;
export type Verdict = (typeof verdicts)[number];

/** Why, with the number that decides and the one it was held against. */
export interface Reason {
  readonly code: string;
  readonly text: string;
  readonly value?: number;
  readonly limit?: number;
  readonly unit?: string;
  readonly cite: Cite;
  /** What would have to change for the rung to fit. */
  readonly wouldFit?: string;
}

/** One question put to the facts: nothing when it is passed. */
export type Test = (facts: MethodFacts) => Reason | undefined;

/** How the rung is worked out: through what is left closed, through an opening, or as a strip at an edge. */
export type Reach = 'spot' | 'opening' | 'strip';

/** A whole way to do the job: it answers for itself, and nobody else asks which one it is. */
export interface Method {
  readonly code: RungCode;
  readonly title: string;
  readonly reach: Reach;
  readonly cutSide: 'none' | 'outer' | 'inner';
  /** What becomes of the skin that was cut. */
  readonly skin: 'kept' | 'bonded-back' | 'new';
  /** What goes between the skins: core in a bed, or solid laminate. */
  readonly fill: 'core' | 'solid';
  /** Whether it runs right to the edge of the deck, so that no flange is left. */
  readonly isToTheEdge: boolean;
  /** What the edge takes besides: plies up the side, or the rail off and on. */
  readonly edgeWork: 'none' | 'upstand' | 'rail';
  /** Facts it goes by, as a surveyor would name them. */
  readonly needs: readonly string[];
  /** The first that answers makes the rung unfit. */
  readonly refusals: readonly Test[];
  /** Every one that answers is a condition of the rung. */
  readonly conditions: readonly Test[];
  /** Why it fits, where nothing speaks against it. */
  readonly suits: (facts: MethodFacts) => Reason;
  /** Smaller is taken first; what depends on the deck is worked out from it. */
  readonly rank: (facts: MethodFacts) => number;
  readonly leavesUndone: (facts: MethodFacts) => readonly string[];
  readonly stages: readonly string[];
  /** Codes of operations in the room of work. */
  readonly operations: readonly string[];
  /** Codes of cautions that always go with it. */
  readonly cautions: readonly string[];
  readonly drawings: readonly (
    'plan' | 'mirrored-plan' | 'outer-section' | 'inner-section' | 'hole-section' | 'edge-section'
  )[];
}

type Defaulted = 'isToTheEdge' | 'edgeWork' | 'fill';

/** A rung; one that says nothing of the edge keeps its flange there, and of the fill puts core back. */
export const defineMethod = (method: Omit<Method, Defaulted> & Partial<Pick<Method, Defaulted>>): Method => ({
  isToTheEdge: false,
  edgeWork: 'none',
  fill: 'core',
  ...method,
});
