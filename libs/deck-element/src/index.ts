import { KingplankDeck } from './deck.js';

export { KingplankDeck };
export type { Units } from './model/lengths.js';
export { languages } from './words/words.js';

/** One page may load this module twice; the element is defined once. */
if (customElements.get('kingplank-deck') === undefined)
  customElements.define('kingplank-deck', KingplankDeck);
