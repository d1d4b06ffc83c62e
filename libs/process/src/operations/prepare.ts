import { scaled } from '#lib/kernel';
import { commonPractice, deckOpened, fromMemory, noWait, splitFromMemory, threePoint } from './cites.js';
import { defineOperation } from './operation.js';

const liningRate = threePoint(1, 2, 5);

/** Everything before the first cut: look, isolate, clear, protect, prop. */
export const prepareOperations = [
  defineOperation({
    code: 'inspect-map', title: 'Inspect, sound, take plugs, map and photograph', phase: 'survey', driver: 'job',
    hours: threePoint(1, 2.5, 6), skill: 'laminator', appliesWhen: {}, after: [], waits: noWait, gate: 'none',
    strains: [], cite: fromMemory,
  }),
  defineOperation({
    code: 'isolate-services', title: 'Isolate batteries and wiring, identify tanks and hoses, probe linings', phase: 'prepare', driver: 'job',
    hours: threePoint(0.25, 0.5, 1), skill: 'rigger', appliesWhen: {}, after: ['inspect-map'], waits: noWait, gate: 'none',
    strains: [], isOffDeck: true, cite: fromMemory,
  }),
  defineOperation({
    code: 'lining-out', title: 'Take lining and trim out', phase: 'prepare', driver: 'support-m2-below',
    hours: scaled(liningRate, 0.4), skill: 'general', appliesWhen: { below: ['lined'] }, after: ['isolate-services'], waits: noWait, gate: 'none',
    strains: [], isOffDeck: true, cite: splitFromMemory,
  }),
  defineOperation({
    code: 'hardware-off-small', title: 'Take off four-bolt fittings', phase: 'prepare', driver: 'fitting-small',
    hours: threePoint(0.25, 0.5, 1), skill: 'rigger', appliesWhen: {}, after: ['isolate-services', 'lining-out'], waits: noWait, gate: 'none',
    strains: [], cite: fromMemory,
  }),
  defineOperation({
    code: 'hardware-off-large', title: 'Take off winches, windlass and track', phase: 'prepare', driver: 'fitting-large',
    hours: threePoint(1, 2, 4), skill: 'rigger', appliesWhen: {}, after: ['isolate-services', 'lining-out'], waits: noWait, gate: 'none',
    strains: [], cite: fromMemory,
  }),
  defineOperation({
    code: 'tent', title: 'Build tent or shrink cover', phase: 'prepare', driver: 'job',
    hours: threePoint(6, 12, 30), skill: 'general', appliesWhen: { shelter: ['tent'] }, after: ['hardware-off-small', 'hardware-off-large'],
    waits: noWait, gate: 'none', strains: [], cite: fromMemory,
  }),
  defineOperation({
    code: 'protect', title: 'Protect, contain dust, stage', phase: 'prepare', driver: 'job',
    hours: threePoint(3, 6, 16), skill: 'general', appliesWhen: deckOpened, after: ['hardware-off-small', 'hardware-off-large', 'tent'],
    waits: noWait, gate: 'none', strains: [], cite: fromMemory,
  }),
  defineOperation({
    code: 'prop', title: 'Prop the skin that stays, before anything is cut', phase: 'prepare', driver: 'job',
    hours: threePoint(1, 3, 8), skill: 'general', appliesWhen: { props: ['needed'] }, after: ['isolate-services', 'lining-out'],
    waits: noWait, gate: 'none', strains: [], isOffDeck: true, cite: fromMemory,
  }),
  defineOperation({
    code: 'daily-set-up', title: 'Set up and pack up each day', phase: 'prepare', driver: 'day',
    hours: threePoint(0.25, 0.3, 0.5), skill: 'general', appliesWhen: {}, after: [], waits: noWait, gate: 'none',
    strains: [], holds: ['owner-first-time'], cite: { ...commonPractice, note: '15 to 20 minutes of a session, as owners tell of theirs' },
  }),
];
