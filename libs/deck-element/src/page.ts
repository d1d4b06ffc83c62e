/** What a page around the element needs in the same way as the element does. */
export { freshKey } from './model/outbox.js';
export { keep } from './service/papers.js';
export { formTexts, valueOf } from './view/controls.js';
export { filled, languageOf, wordFor } from './words/words.js';
