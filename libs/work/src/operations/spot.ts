import type { Cite } from '#lib/provenance';
import { noWait, takenOff, threePoint, untilSandable } from './cites.js';
import { beddingThen, cleaningFirst, holdingNuts, takingOff } from './hardware.js';
import { defineOperation, type Operation } from '../operation.js';

/** What is done once at a fitting and at each of its holes: no published unit rates; tuned to no job. */
const judged: Cite = {
  source: 'FROM-MEMORY',
  note: 'one four-bolt base: re-bed 0.8 to 3 h, ream and pot 2 to 7 h, set-up counted',
};
const closed = { skin: ['closed'] } as const;
/** Strips and drying go beside an opening or an injection too; those have paid the set-up. */
const besideToo = { skin: ['closed', 'inject', 're-bed', 'relay'] } as const;
const beforeBedding = ['spot-redrill', 'spot-clean-holes', 'frame-ring', 'slot-fill'];
const sealantCures: Operation['waits'] = {
  kind: 'elapsed',
  hoursThreePoint: threePoint(24, 48, 72),
  why: 'bedding cures before the fitting is loaded',
  cite: { source: 'FROM-MEMORY' },
};

type Spot = Pick<Operation, 'code' | 'title' | 'phase' | 'driver' | 'hours' | 'skill' | 'after'> &
  Partial<Pick<Operation, 'waits' | 'gate' | 'consumes' | 'isHoldPoint' | 'appliesWhen' | 'cite'>>;

const spot = (given: Spot): Operation =>
  defineOperation({
    waits: noWait,
    gate: 'none',
    strains: ['on-deck'],
    appliesWhen: closed,
    cite: judged,
    ...given,
  });

const beside = (given: Spot): Operation => spot({ appliesWhen: besideToo, ...given });

/** Work on fittings and their holes, and on core that stays: nothing of the deck is opened. */
export const spotOperations: readonly Operation[] = [
  spot({
    code: 'spot-look',
    title: 'Tap round the place, take one plug more, photograph',
    phase: 'survey',
    driver: 'job',
    hours: threePoint(0.15, 0.25, 0.5),
    skill: 'laminator',
    after: [],
  }),
  spot({
    code: 'spot-protect',
    title: 'Sheet below, mask above',
    phase: 'prepare',
    driver: 'job',
    hours: threePoint(0.15, 0.2, 0.4),
    skill: 'general',
    after: ['spot-look'],
  }),
  spot({
    code: 'spot-fitting-off',
    title: 'Take fittings off, by their cards',
    phase: 'prepare',
    driver: 'fitting-off-h',
    ...takingOff,
    skill: 'rigger',
    after: ['spot-protect'],
  }),
  spot({
    code: 'spot-clean-holes',
    title: 'Old bedding out, deck and base clean',
    phase: 'prepare',
    driver: 'fitting-on-h',
    ...cleaningFirst,
    skill: 'rigger',
    after: ['spot-fitting-off'],
    consumes: ['abrasive'],
  }),
  spot({
    code: 'spot-dig',
    title: 'Dig out through the holes until the shavings come dry; vacuum',
    phase: 'open',
    driver: 'hole',
    hours: threePoint(0.06, 0.1, 0.2),
    skill: 'laminator',
    after: ['spot-clean-holes'],
    waits: {
      kind: 'drying',
      daysThreePoint: threePoint(0.2, 1, 3),
      cite: { source: 'FROM-MEMORY', note: 'solvent or air dry, hours to days' },
    },
    gate: 'dry-deck',
  }),
  spot({
    code: 'spot-fill',
    title: 'Tape below, wet out, top up as the grain drinks, fill with thick mix',
    phase: 'bond',
    driver: 'hole',
    hours: threePoint(0.05, 0.08, 0.16),
    skill: 'laminator',
    after: ['spot-dig'],
    waits: untilSandable,
    gate: 'resin',
    consumes: ['resin', 'filler'],
  }),
  spot({
    code: 'spot-redrill',
    title: 'Tape off, sand flush, redrill and countersink',
    phase: 'refit',
    driver: 'hole',
    hours: threePoint(0.04, 0.07, 0.14),
    skill: 'rigger',
    after: ['spot-fill'],
    consumes: ['abrasive'],
  }),
  spot({
    code: 'spot-bed',
    title: 'Bed and bolt fittings, by their cards',
    phase: 'refit',
    driver: 'fitting-on-h',
    ...beddingThen,
    skill: 'rigger',
    after: beforeBedding,
    waits: sealantCures,
    gate: 'dry-deck',
    consumes: ['sealant'],
  }),
  spot({
    code: 'spot-second-person',
    title: 'Second person below, holding nuts or screws',
    phase: 'refit',
    driver: 'fitting-helped-h',
    ...holdingNuts,
    skill: 'general',
    after: beforeBedding,
  }),
  ...dryingOperations(),
  ...stripOperations(),
  spot({
    code: 'spot-check',
    title: 'Sound it, hose it, photograph',
    phase: 'hand-over',
    driver: 'job',
    hours: threePoint(0.1, 0.2, 0.3),
    skill: 'laminator',
    after: [
      'spot-bed',
      'spot-second-person',
      'dry-plug-holes',
      'strip-close',
      'close-injection-holes',
      'joint-tape',
      'crack-tape',
      'leak-hunt',
      'topcoat',
      'buff-gelcoat',
    ],
  }),
  spot({
    code: 'spot-clean-up',
    title: 'Clean up',
    phase: 'hand-over',
    driver: 'job',
    hours: threePoint(0.1, 0.15, 0.3),
    skill: 'general',
    after: ['spot-check'],
  }),
];

/** Air through holes until two readings agree; nothing is taken out. */
function dryingOperations(): readonly Operation[] {
  return [
    beside({
      code: 'dry-drill',
      title: 'Drill inlet and outlet holes, from below or where paint follows',
      phase: 'open',
      driver: 'dry-hole',
      hours: threePoint(0.01, 0.02, 0.04),
      skill: 'general',
      after: ['spot-clean-holes', 'spot-protect', 'protect', 'protect-spot', ...takenOff],
    }),
    beside({
      code: 'dry-set-up',
      title: 'Cover that sheds rain and breathes; dry air in, wet air out; heat to 60 degC at most',
      phase: 'open',
      driver: 'dry-set-up',
      hours: threePoint(1, 2, 4),
      skill: 'general',
      after: ['dry-drill'],
    }),
    beside({
      code: 'dry-read',
      title: 'Read the same points at the same hour before the heat is on',
      phase: 'open',
      driver: 'dry-reading',
      hours: threePoint(0.2, 0.3, 0.6),
      skill: 'general',
      after: ['dry-set-up'],
      waits: {
        kind: 'drying',
        daysThreePoint: threePoint(7, 21, 60),
        cite: { source: 'FROM-MEMORY', note: 'two equal readings three days apart decide, not the days' },
      },
    }),
    beside({
      code: 'dry-plug-holes',
      title: 'Plug all holes',
      phase: 'close',
      driver: 'dry-hole',
      hours: threePoint(0.02, 0.04, 0.08),
      skill: 'laminator',
      after: ['dry-read'],
      waits: untilSandable,
      gate: 'resin',
      consumes: ['resin', 'filler'],
    }),
  ];
}

/** A strip under the lip of an edge: slot, rout, fill, close. */
function stripOperations(): readonly Operation[] {
  return [
    beside({
      code: 'strip-cut',
      title: 'Cut the slot along the inboard side of the strip',
      phase: 'open',
      driver: 'slot-m',
      hours: threePoint(0.15, 0.3, 0.6),
      skill: 'laminator',
      after: ['spot-protect', 'protect', 'protect-spot', ...takenOff],
      gate: 'dry-deck',
      consumes: ['abrasive'],
    }),
    beside({
      code: 'strip-rout',
      title: 'Rout out under the lip with hooked tools; vacuum',
      phase: 'open',
      driver: 'strip-m',
      hours: threePoint(0.3, 0.6, 1.2),
      skill: 'general',
      after: ['strip-cut'],
      waits: {
        kind: 'drying',
        daysThreePoint: threePoint(2, 7, 15),
        cite: {
          source: 'FROM-MEMORY',
          note: 'an edge of 25 mm under a lip dries in 7 to 15 days at 15 to 21 degC',
        },
      },
      gate: 'dry-deck',
    }),
    beside({
      code: 'strip-fill',
      title: 'Wet out and fill the strip in lifts, slips of dense strip pushed in',
      phase: 'bond',
      driver: 'strip-m',
      hours: threePoint(0.3, 0.6, 1.2),
      skill: 'laminator',
      after: ['strip-rout'],
      waits: untilSandable,
      gate: 'resin',
      consumes: ['resin', 'filler'],
    }),
    beside({
      code: 'strip-close',
      title: 'Close the slot with tapes, fair and touch up',
      phase: 'close',
      driver: 'slot-m',
      hours: threePoint(0.5, 0.9, 1.8),
      skill: 'laminator',
      after: ['strip-fill'],
      waits: untilSandable,
      gate: 'resin',
      consumes: ['resin', 'fabric', 'fairing'],
    }),
  ];
}
