import { scaled } from '#lib/kernel';
import { finalCheckCite, finalCheckHours } from './bond.js';
import { commonPractice, deckOpened, fromMemory, noWait, splitFromMemory, threePoint } from './cites.js';
import { defineOperation, type Wait } from './operation.js';

const overcoat = (why: string, low: number, likely: number, high: number): Wait => ({
  kind: 'elapsed', hoursThreePoint: threePoint(low, likely, high), why, cite: { source: 'FROM-MEMORY' },
});
const sealantCures: Wait = {
  kind: 'elapsed', hoursThreePoint: threePoint(24, 72, 168), why: 'bedding cures before the fitting is loaded', cite: { source: 'FROM-MEMORY' },
};
const epoxyBeforePaint: Wait = {
  kind: 'elapsed', hoursThreePoint: threePoint(120, 144, 168), why: 'last epoxy to the paint system, 5 to 7 days at 21 degC', cite: { ...commonPractice, note: 'a plan seller prints 5 to 7 days at 21 degC' },
};
const painted = { access: ['from-above'], finish: ['painted'] } as const;

/** Paint, fittings, interior, and the hand-over. */
export const finishOperations = [
  defineOperation({
    code: 'stand-before-paint', title: 'Let the epoxy stand before paint; wash and sand off blush', phase: 'finish', driver: 'job',
    hours: threePoint(0, 0, 0), skill: 'finisher', appliesWhen: painted, after: ['check-before-paint'], waits: epoxyBeforePaint, gate: 'none',
    strains: [], cite: { ...commonPractice, note: 'a wait; its sanding is counted with the primer' },
  }),
  defineOperation({
    code: 'prime', title: 'Prime and sand, each coat', phase: 'finish', driver: 'primed-m2-coat',
    hours: threePoint(0.4, 0.7, 1.2), skill: 'finisher', appliesWhen: painted, after: ['stand-before-paint'], waits: overcoat('primer to sand and overcoat', 12, 16, 24), gate: 'coating',
    strains: ['on-deck', 'by-area'], consumes: ['primer', 'abrasive'], cite: fromMemory,
  }),
  defineOperation({
    code: 'mask', title: 'Mask for the finish', phase: 'finish', driver: 'finish-m2',
    hours: threePoint(0.25, 0.4, 0.6), skill: 'finisher', appliesWhen: painted, after: ['prime'], waits: noWait, gate: 'dry-deck',
    strains: ['on-deck', 'by-area'], cite: fromMemory,
  }),
  defineOperation({
    code: 'topcoat', title: 'Topcoat, each coat', phase: 'finish', driver: 'topcoat-m2-coat',
    hours: threePoint(0.1, 0.25, 0.5), skill: 'finisher', appliesWhen: painted, after: ['mask'], waits: overcoat('topcoat to tape and overcoat', 12, 16, 24), gate: 'coating',
    strains: ['on-deck', 'by-area'], consumes: ['topcoat'], cite: fromMemory,
  }),
  defineOperation({
    code: 'nonskid', title: 'Nonskid, with its masking', phase: 'finish', driver: 'nonskid-m2',
    hours: threePoint(0.5, 0.9, 1.6), skill: 'finisher', appliesWhen: { ...painted, nonskid: ['yes'] }, after: ['topcoat'], waits: overcoat('nonskid to foot traffic', 24, 36, 72), gate: 'coating',
    strains: ['on-deck', 'by-area'], consumes: ['nonskid'], cite: fromMemory,
  }),
  defineOperation({
    code: 'refit-small', title: 'Bed and bolt four-bolt fittings', phase: 'refit', driver: 'fitting-small',
    hours: threePoint(1, 2, 4), skill: 'rigger', appliesWhen: {}, after: ['check-before-paint', 'topcoat', 'nonskid', 'make-plates', 'pot-holes'], waits: sealantCures, gate: 'dry-deck',
    strains: ['on-deck'], consumes: ['sealant'], cite: fromMemory,
  }),
  defineOperation({
    code: 'refit-large', title: 'Bed and bolt winches, windlass and track', phase: 'refit', driver: 'fitting-large',
    hours: threePoint(4, 7, 10), skill: 'rigger', appliesWhen: {}, after: ['check-before-paint', 'topcoat', 'nonskid', 'make-plates', 'pot-holes'], waits: sealantCures, gate: 'dry-deck',
    strains: ['on-deck'], consumes: ['sealant'], cite: fromMemory,
  }),
  defineOperation({
    code: 'final-check', title: 'Leak test, final sounding map, photographs, materials record', phase: 'hand-over', driver: 'job',
    hours: finalCheckHours, skill: 'laminator', appliesWhen: {}, after: ['refit-small', 'refit-large', 'check-before-paint', 'topcoat', 'nonskid'], waits: noWait, gate: 'none',
    strains: [], cite: finalCheckCite,
  }),
  defineOperation({
    code: 'lining-back', title: 'Put lining and trim back', phase: 'refit', driver: 'support-m2-below',
    hours: scaled(threePoint(1, 2, 5), 0.6), skill: 'general', appliesWhen: { below: ['lined'] }, after: ['final-check'], waits: noWait, gate: 'none',
    strains: [], isOffDeck: true, cite: splitFromMemory,
  }),
  defineOperation({
    code: 'clean-up', title: 'Clean up, take waste away', phase: 'hand-over', driver: 'job',
    hours: threePoint(1, 3, 8), skill: 'general', appliesWhen: deckOpened, after: ['final-check', 'lining-back'], waits: noWait, gate: 'none',
    strains: [], cite: fromMemory,
  }),
];
