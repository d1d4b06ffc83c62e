import { scaled } from '#lib/kernel';
import { deckOpened, fromMemory, noWait, splitFromMemory, threePoint, untilReleased, untilSandable } from './cites.js';
import { defineOperation } from './operation.js';

const checkRate = threePoint(0.5, 1, 2);
const checkShare = { ...splitFromMemory, note: 'one rate for all sounding and hose checks, shared 3 : 3 : 4 over the three times they are made' };

/** Core, skin, seams and fairing: everything that cures. */
export const bondOperations = [
  defineOperation({
    code: 'set-inserts', title: 'Set solid or dense inserts, in stages', phase: 'bond', driver: 'insert',
    hours: threePoint(0.5, 1, 2), skill: 'laminator', appliesWhen: {}, after: ['taper-skin'], waits: noWait, gate: 'resin',
    strains: ['overhead-from-below', 'on-deck'], consumes: ['resin', 'filler', 'fabric'], cite: fromMemory,
  }),
  defineOperation({
    code: 'bed-core', title: 'Fill the undercut, bed the core, press it down', phase: 'bond', driver: 'opened-m2',
    hours: threePoint(0.8, 1.5, 3), skill: 'laminator', appliesWhen: {}, after: ['set-inserts', 'clean-saved-skin'], waits: untilReleased, gate: 'resin',
    strains: ['overhead-from-below', 'on-deck', 'by-area'], consumes: ['resin', 'filler', 'core'], cite: fromMemory,
  }),
  defineOperation({
    code: 'check-bond', title: 'Trim, sound the new core, mend what sounds hollow', phase: 'bond', driver: 'job',
    hours: scaled(checkRate, 0.3), skill: 'laminator', appliesWhen: deckOpened, after: ['bed-core'], waits: noWait, gate: 'none',
    strains: ['on-deck'], cite: checkShare,
  }),
  defineOperation({
    code: 'bed-skin', title: 'Bed the saved skin, press it flush', phase: 'close', driver: 'opened-m2',
    hours: threePoint(0.6, 1.2, 2.5), skill: 'laminator', appliesWhen: { skin: ['re-bed'] }, after: ['check-bond'], waits: untilReleased, gate: 'resin',
    strains: ['overhead-from-below', 'on-deck', 'by-area'], consumes: ['resin', 'filler'], cite: fromMemory,
  }),
  defineOperation({
    code: 'close-seam', title: 'Close the cut with tapes', phase: 'close', driver: 'cut-m',
    hours: threePoint(0.3, 0.5, 1), skill: 'laminator', appliesWhen: { skin: ['re-bed'] }, after: ['bed-skin'], waits: untilSandable, gate: 'resin',
    strains: ['overhead-from-below', 'on-deck'], consumes: ['resin', 'fabric'], cite: { ...fromMemory, note: 'two to three tapes' },
  }),
  defineOperation({
    code: 'laminate-top', title: 'Lay the new skin, two plies', phase: 'close', driver: 'laminate-m2',
    hours: threePoint(1, 1.8, 3), skill: 'laminator', appliesWhen: { skin: ['relay'] }, after: ['check-bond'], waits: untilSandable, gate: 'resin',
    strains: ['overhead-from-below', 'on-deck', 'by-area'], consumes: ['resin', 'fabric'], cite: fromMemory,
  }),
  defineOperation({
    code: 'laminate-extra-ply', title: 'Lay the plies beyond two', phase: 'close', driver: 'extra-ply-m2',
    hours: threePoint(0.4, 0.7, 1.2), skill: 'laminator', appliesWhen: { skin: ['relay'] }, after: ['laminate-top'], waits: untilSandable, gate: 'resin',
    strains: ['overhead-from-below', 'on-deck', 'by-area'], consumes: ['resin', 'fabric'], cite: { source: 'FROM-MEMORY', note: 'about 0.8 of half the two-ply rate: set-up is already paid' },
  }),
  defineOperation({
    code: 'pot-holes', title: 'Drill, ream, tape, fill and redrill holes', phase: 'close', driver: 'hole',
    hours: threePoint(0.15, 0.25, 0.5), skill: 'laminator', appliesWhen: {}, after: ['close-seam', 'laminate-top', 'laminate-extra-ply'], waits: untilSandable, gate: 'resin',
    strains: ['on-deck'], consumes: ['resin', 'filler'], cite: fromMemory,
  }),
  defineOperation({
    code: 'fair', title: 'Fair: apply and sand, each cycle', phase: 'close', driver: 'faired-m2-cycle',
    hours: threePoint(0.5, 0.85, 1.6), skill: 'finisher', appliesWhen: { access: ['from-above'], finish: ['painted'] }, after: ['close-seam', 'laminate-top', 'laminate-extra-ply'],
    waits: untilSandable, gate: 'resin', strains: ['on-deck', 'by-area'], consumes: ['fairing', 'abrasive'], cite: fromMemory,
  }),
  defineOperation({
    code: 'check-before-paint', title: 'Sound and hose check before paint', phase: 'close', driver: 'job',
    hours: scaled(checkRate, 0.3), skill: 'laminator', appliesWhen: {}, after: ['fair', 'pot-holes', 'close-injection-holes'],
    waits: noWait, gate: 'none', strains: ['on-deck'], cite: checkShare,
  }),
];

export const finalCheckHours = scaled(checkRate, 0.4);
export const finalCheckCite = checkShare;
