import { deckOpened, fromMemory, noWait, threePoint } from './cites.js';
import { defineOperation } from './operation.js';

const lifted = ['lift-skin-debonded', 'lift-skin-bonded'];
const emptied = ['core-out-rotten', 'core-out-bonded'];

/** From the saw to a dry, clean, tapered hole with new core that fits. */
export const openOperations = [
  defineOperation({
    code: 'cut-skin', title: 'Mark and cut the skin', phase: 'open', driver: 'cut-m',
    hours: threePoint(0.15, 0.3, 0.6), skill: 'laminator', appliesWhen: {}, after: ['protect', 'prop'], waits: noWait, gate: 'dry-deck',
    strains: ['overhead-from-below', 'on-deck', 'by-area'], consumes: ['abrasive'], cite: fromMemory,
  }),
  defineOperation({
    code: 'lift-skin-debonded', title: 'Lift the skin where it has let go', phase: 'open', driver: 'opened-m2',
    hours: threePoint(0.2, 0.4, 0.8), skill: 'laminator', appliesWhen: { condition: ['wet-rotten', 'dry-debonded'] }, after: ['cut-skin'],
    waits: noWait, gate: 'dry-deck', strains: ['overhead-from-below', 'on-deck', 'by-area'], cite: fromMemory,
  }),
  defineOperation({
    code: 'lift-skin-bonded', title: 'Lift the skin where it still holds', phase: 'open', driver: 'opened-m2',
    hours: threePoint(2, 4, 8), skill: 'laminator', appliesWhen: { condition: ['wet-bonded'] }, after: ['cut-skin'],
    waits: noWait, gate: 'dry-deck', strains: ['overhead-from-below', 'on-deck', 'by-area'], cite: fromMemory,
  }),
  defineOperation({
    code: 'core-out-rotten', title: 'Take out rotten core', phase: 'open', driver: 'opened-m2',
    hours: threePoint(0.5, 1.5, 3), skill: 'general', appliesWhen: { condition: ['wet-rotten'] }, after: lifted,
    waits: noWait, gate: 'dry-deck', strains: ['overhead-from-below', 'on-deck', 'by-area'], cite: fromMemory,
  }),
  defineOperation({
    code: 'core-out-bonded', title: 'Take out core that is still bonded', phase: 'open', driver: 'opened-m2',
    hours: threePoint(3, 6, 10), skill: 'general', appliesWhen: { condition: ['wet-bonded', 'dry-debonded'] }, after: lifted,
    waits: noWait, gate: 'dry-deck', strains: ['overhead-from-below', 'on-deck', 'by-area'], cite: fromMemory,
  }),
  defineOperation({
    code: 'hold-remeasure', title: 'Hold: re-measure, photograph, client authorises', phase: 'open', driver: 'job',
    hours: threePoint(0.25, 0.5, 1), skill: 'laminator', appliesWhen: deckOpened, after: emptied,
    waits: { kind: 'hold', hoursThreePoint: threePoint(2, 24, 72), why: 'the client sees the real extent and agrees to it', cite: { source: 'FROM-MEMORY' } },
    gate: 'none', strains: [], isHoldPoint: true, cite: fromMemory,
  }),
  defineOperation({
    code: 'ream-lip', title: 'Ream out core under the lip', phase: 'open', driver: 'cut-m',
    hours: threePoint(0.15, 0.3, 0.6), skill: 'general', appliesWhen: {}, after: ['hold-remeasure'], waits: noWait, gate: 'dry-deck',
    strains: ['overhead-from-below', 'on-deck'], cite: fromMemory,
  }),
  defineOperation({
    code: 'dry-edges', title: 'Dry the edges and the lip', phase: 'open', driver: 'opened-m2',
    hours: threePoint(0.5, 1, 2), skill: 'general', appliesWhen: { condition: ['wet-rotten', 'wet-bonded'] }, after: ['ream-lip'],
    waits: { kind: 'drying', daysThreePoint: threePoint(2, 7, 28), cite: { source: 'FROM-MEMORY', note: 'tent with heat or dehumidifier; two equal readings a few days apart decide, not the days' } },
    gate: 'none', strains: ['on-deck', 'by-area'], cite: fromMemory,
  }),
  defineOperation({
    code: 'clean-saved-skin', title: 'Clean the underside of the saved skin', phase: 'open', driver: 'opened-m2',
    hours: threePoint(0.7, 1.5, 3), skill: 'laminator', appliesWhen: { skin: ['re-bed'] }, after: ['hold-remeasure'], waits: noWait, gate: 'none',
    strains: [], consumes: ['abrasive'], isOffDeck: true, cite: fromMemory,
  }),
  defineOperation({
    code: 'make-plates', title: 'Make backing plates', phase: 'open', driver: 'plate',
    hours: threePoint(0.5, 1, 2), skill: 'rigger', appliesWhen: {}, after: ['hold-remeasure'], waits: noWait, gate: 'none',
    strains: [], isOffDeck: true, cite: { ...fromMemory, note: 'made and fitted' },
  }),
  defineOperation({
    code: 'grind-inner', title: 'Grind the inner skin, patch and tape its holes from below', phase: 'open', driver: 'opened-m2',
    hours: threePoint(0.5, 1, 2), skill: 'laminator', appliesWhen: {}, after: ['ream-lip', 'dry-edges'], waits: noWait, gate: 'dry-deck',
    strains: ['overhead-from-below', 'on-deck', 'by-area'], consumes: ['abrasive', 'resin', 'fabric'], cite: fromMemory,
  }),
  defineOperation({
    code: 'fit-core', title: 'Pattern, cut and dry fit the core; check the thickness stack', phase: 'open', driver: 'opened-m2',
    hours: threePoint(0.7, 1.3, 2.5), skill: 'laminator', appliesWhen: {}, after: ['grind-inner'], waits: noWait, gate: 'none',
    strains: ['overhead-from-below', 'on-deck', 'by-area'], consumes: ['core'], cite: fromMemory,
  }),
  defineOperation({
    code: 'taper-skin', title: 'Taper the old skin, vacuum and solvent wipe', phase: 'open', driver: 'taper-m',
    hours: threePoint(0.2, 0.35, 0.7), skill: 'laminator', appliesWhen: {}, after: ['fit-core'], waits: noWait, gate: 'dry-deck',
    strains: ['overhead-from-below', 'on-deck'], consumes: ['abrasive'], cite: fromMemory,
  }),
];
