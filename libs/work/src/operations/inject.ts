import type { Cite } from '#lib/provenance';
import { noWait, takenOff, threePoint, untilSandable } from './cites.js';
import { defineOperation } from '../operation.js';

const judged: Cite = {
  source: 'FROM-MEMORY',
  note: 'no published hours; a hole that is drilled, injected and filled takes less than one that is also reamed and redrilled, which takes a quarter of an hour',
};
const injected = { skin: ['inject'] } as const;
/** Beside an opening, or beside fittings, as well as by itself: the set-up is paid once. */
const wherever = { skin: ['inject', 're-bed', 'relay', 'closed'] } as const;

/** Resin under a skin that stays, through drilled holes: for small, dry debonding only. */
export const injectOperations = [
  defineOperation({
    code: 'protect-spot',
    title: 'Mask and protect round the area',
    phase: 'prepare',
    driver: 'job',
    hours: threePoint(0.5, 1, 2),
    skill: 'general',
    appliesWhen: injected,
    after: ['isolate-services', 'tent'],
    waits: noWait,
    gate: 'none',
    strains: [],
    cite: judged,
  }),
  defineOperation({
    code: 'drill-injection',
    title: 'Mark the grid, drill through the skin to the core',
    phase: 'open',
    driver: 'injection-hole',
    hours: threePoint(0.02, 0.04, 0.08),
    skill: 'laminator',
    appliesWhen: wherever,
    after: ['protect-spot', 'protect', 'spot-protect', ...takenOff],
    waits: noWait,
    gate: 'dry-deck',
    strains: ['overhead-from-below', 'on-deck'],
    consumes: ['abrasive'],
    cite: judged,
  }),
  defineOperation({
    code: 'check-drillings',
    title: 'Look at what each hole brings up: wet or dark core ends the injection here',
    phase: 'open',
    driver: 'injected-place',
    hours: threePoint(0.1, 0.25, 0.5),
    skill: 'laminator',
    appliesWhen: wherever,
    after: ['drill-injection'],
    waits: noWait,
    gate: 'none',
    strains: [],
    cite: judged,
  }),
  defineOperation({
    code: 'inject',
    title: 'Inject from the lowest hole until resin stands in its neighbours, press the skin down',
    phase: 'bond',
    driver: 'injection-hole',
    hours: threePoint(0.04, 0.08, 0.2),
    skill: 'laminator',
    appliesWhen: wherever,
    after: ['check-drillings'],
    waits: untilSandable,
    gate: 'resin',
    strains: ['overhead-from-below', 'on-deck'],
    consumes: ['resin'],
    cite: judged,
  }),
  defineOperation({
    code: 'check-injection',
    title: 'Sound the area, drill and inject again where it is hollow',
    phase: 'bond',
    driver: 'injected-place',
    hours: threePoint(0.25, 0.5, 1),
    skill: 'laminator',
    appliesWhen: wherever,
    after: ['inject'],
    waits: noWait,
    gate: 'none',
    strains: ['on-deck'],
    cite: judged,
  }),
  defineOperation({
    code: 'close-injection-holes',
    title: 'Countersink, fill and sand the holes',
    phase: 'close',
    driver: 'injection-hole',
    hours: threePoint(0.03, 0.06, 0.12),
    skill: 'finisher',
    appliesWhen: wherever,
    after: ['check-injection'],
    waits: untilSandable,
    gate: 'resin',
    strains: ['overhead-from-below', 'on-deck'],
    consumes: ['resin', 'filler', 'abrasive'],
    cite: judged,
  }),
];

/** The end of a small job; a deck that was opened leaves more behind. */
export const cleanUpSpot = defineOperation({
  code: 'clean-up-spot',
  title: 'Clean up',
  phase: 'hand-over',
  driver: 'job',
  hours: threePoint(0.25, 0.5, 1),
  skill: 'general',
  appliesWhen: injected,
  after: ['final-check', 'lining-back'],
  waits: noWait,
  gate: 'none',
  strains: [],
  cite: judged,
});
