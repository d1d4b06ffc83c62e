import { askPart, askText, askWhich, practice } from '#lib/asking';
import { attendanceParts } from './attendance.js';
import { craftQuestions } from './craft.js';
import { deckParts } from './deck.js';
import { defectParts } from './defect.js';
import { methodQuestions } from './method.js';
import { conditionQuestions, crewQuestions } from './place.js';
import { pricingQuestions } from './pricing.js';

/** Everything that may be asked about a soft deck. */
export const recordQuestions = {
  title: askText({
    meaning: 'title',
    description: 'What the job is called on documents.',
    atMost: 200,
    otherwise: 'unknown',
  }),
  reference: askText({
    meaning: 'reference',
    description: "The caller's own reference.",
    atMost: 100,
    otherwise: 'unknown',
  }),
  ...attendanceParts,
  craft: askPart({
    meaning: 'the craft',
    note: 'Her size and what she is built for.',
    of: craftQuestions,
    otherwise: 'defaults',
  }),
  ...deckParts,
  ...defectParts,
  soundedDeck: askWhich({
    meaning: 'how much of the deck was sounded',
    note: 'New areas turn up where nobody listened.',
    choices: ['whole', 'part'],
    otherwise: practice('part', 'only the panel in question is taken to have been sounded'),
  }),
  method: askPart({ meaning: 'how it is repaired', of: methodQuestions, otherwise: 'defaults' }),
  conditions: askPart({
    meaning: 'conditions of work',
    description: 'Where the work is done, and in what air.',
    of: conditionQuestions,
    otherwise: 'defaults',
  }),
  crew: askPart({
    meaning: 'the crew',
    note: 'Who does the work, and how much of their time goes into it.',
    of: crewQuestions,
    otherwise: 'defaults',
  }),
  pricing: askPart({
    meaning: 'pricing',
    note: 'From which list and rates, and on what terms.',
    of: pricingQuestions,
    otherwise: 'defaults',
  }),
  locale: askText({
    meaning: 'language of documents',
    description: 'Language that numbers and dates of documents are written in.',
    atMost: 35,
    form: { pattern: /^[a-zA-Z]{2,8}(?:-[a-zA-Z0-9]{1,8})*$/, words: 'a language tag such as en-GB' },
    otherwise: 'unknown',
  }),
};
