import type { Given } from './heard.js';
import type { Ties } from './interpolation.js';
import type { Posterior } from './posterior.js';
import type { Team } from './team.js';

/** What holds if the damage has one range and the team one set of errors, with the weight that the readings give it. */
export interface MapPart {
  readonly rangeMm: number;
  readonly hearingSd: number;
  readonly given: Given;
  readonly posterior: Posterior;
  readonly team: Team;
  /** From the lattice of this range to that of the map, and how much too even the field is there. */
  readonly bridge: Ties;
  readonly evenness: Float64Array;
  readonly weight: number;
}
