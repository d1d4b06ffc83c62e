import type { Cite } from '#lib/provenance';
import { noWait, takenOff, threePoint, untilSandable } from './cites.js';
import { defineOperation, type AppliesWhen, type Operation } from '../operation.js';

const judged: Cite = { source: 'FROM-MEMORY', note: 'no published unit rates' };
const jointCite: Cite = {
  source: 'METHODS-IN-PRINT',
  note: 'two tapes over one whole side in a day of 7.25 h that also held sanding; spread from memory',
};
const whateverIsDone: AppliesWhen = { skin: ['re-bed', 'relay', 'inject', 'closed'] };
const begun = ['protect', 'protect-spot', 'spot-protect', ...takenOff];
const fittingsAreOff = [...begun, 'hardware-off', 'spot-clean-holes'];

type Leak = Pick<Operation, 'code' | 'title' | 'phase' | 'driver' | 'hours' | 'skill' | 'after' | 'cite'> &
  Partial<Pick<Operation, 'waits' | 'gate' | 'consumes'>>;

const leak = (given: Leak): Operation =>
  defineOperation({
    waits: noWait,
    gate: 'none',
    strains: ['on-deck'],
    appliesWhen: whateverIsDone,
    ...given,
  });

/** Ground out, then two tapes: a joint along the edge, or a crack anywhere. */
const closed = (
  what: 'joint' | 'crack',
  hours: { readonly grind: Operation['hours']; readonly tape: Operation['hours'] },
  cite: Cite,
): readonly Operation[] => [
  leak({
    code: `${what}-grind`,
    title:
      what === 'joint'
        ? 'Clean and grind the joint of hull and deck, round its edge'
        : 'Grind the crack out 12:1 to sound laminate',
    phase: 'open',
    driver: `${what}-m`,
    hours: hours.grind,
    skill: 'laminator',
    after: begun,
    gate: 'dry-deck',
    consumes: ['abrasive'],
    cite,
  }),
  leak({
    code: `${what}-tape`,
    title:
      what === 'joint'
        ? 'Glass the joint over with two tapes, 100 and 150 mm, seams apart'
        : 'Close the crack with two tapes, fair it',
    phase: 'close',
    driver: `${what}-m`,
    hours: hours.tape,
    skill: 'laminator',
    after: [`${what}-grind`],
    waits: untilSandable,
    gate: 'resin',
    consumes: ['resin', 'fabric'],
    cite,
  }),
];

/** What stops the water where no fitting, rail or overlay of the plan does. */
export const leakOperations: readonly Operation[] = [
  ...closed('joint', { grind: threePoint(0.1, 0.25, 0.5), tape: threePoint(0.3, 0.5, 1) }, jointCite),
  ...closed('crack', { grind: threePoint(0.5, 1, 2), tape: threePoint(0.8, 1.5, 3) }, judged),
  leak({
    code: 'frame-ring',
    title: 'Core edge round the hatch or window dug back 12 mm and sealed',
    phase: 'open',
    driver: 'leak-frame',
    hours: threePoint(0.4, 0.7, 1.4),
    skill: 'laminator',
    after: fittingsAreOff,
    waits: untilSandable,
    gate: 'resin',
    consumes: ['resin', 'filler'],
    cite: judged,
  }),
  leak({
    code: 'slot-fill',
    title: 'Block under the cover of the chainplate filled solid',
    phase: 'open',
    driver: 'leak-slot',
    hours: threePoint(0.3, 0.5, 1),
    skill: 'laminator',
    after: fittingsAreOff,
    waits: untilSandable,
    gate: 'resin',
    consumes: ['resin', 'filler'],
    cite: judged,
  }),
  leak({
    code: 'leak-hunt',
    title: 'Hose the deck in sections from the lowest up before it is closed; mark where water comes',
    phase: 'open',
    driver: 'leak-hunt',
    hours: threePoint(1, 2, 4),
    skill: 'general',
    after: begun,
    cite: judged,
  }),
];
