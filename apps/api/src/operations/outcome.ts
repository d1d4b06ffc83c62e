import type { Content } from '../edge/content.js';

/** Something that was made and has its own address. */
export interface MadeElsewhere {
  readonly href: string;
  readonly mediaType: string;
}

/** What an operation came to: a document that is kept beside it, or something elsewhere. */
export type Outcome = Content | MadeElsewhere;
