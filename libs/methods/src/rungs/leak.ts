import { commonPractice } from '../cites.js';
import { defineMethod, type Test } from '../method.js';
import { inPrint } from '../tests.js';

const refusedWithoutLeak: Test = ({ place: { kind } }) =>
  kind === 'leak'
    ? undefined
    : {
        code: 'more-than-a-leak',
        text: 'what is to be mended here is more than the way in of the water: that is stopped beside the repair',
        cite: commonPractice,
        wouldFit: 'a crack, an open joint, a hatch or a chainplate that leaks over dry, sound core',
      };

const damp: Test = ({ place: { core } }) =>
  core === 'damp-sound'
    ? {
        code: 'read-again',
        text: 'damp core stays: the leak is stopped, and the same points are read again after a season',
        cite: inPrint,
      }
    : undefined;

/** The water is stopped and nothing else is touched, because the core is dry. */
export const closeLeak = defineMethod({
  code: 'close-leak',
  title: 'Stop the leak alone',
  reach: 'spot',
  cutSide: 'none',
  skin: 'kept',
  needs: [
    'where the water comes in',
    'a plug beside it that is dry and pale',
    'length of the crack or joint',
  ],
  refusals: [refusedWithoutLeak],
  conditions: [damp],
  suits: () => ({
    code: 'dry-core',
    text: 'the core beside it is dry and sound: what lets the water in is closed, and the deck is not opened for it',
    cite: commonPractice,
  }),
  rank: () => 5,
  leavesUndone: () => [
    'the place is faired, not painted: a painted or moulded deck is touched up beside it',
    'core farther away was not seen: sound it again after a season',
  ],
  stages: ['clean to sound laminate', 'grind or dig back', 'close or seal', 'hose test'],
  operations: ['spot-look', 'spot-protect', 'spot-check', 'spot-clean-up'],
  cautions: [],
  drawings: ['plan'],
});

/** Causes that are stopped by work of their own; fittings and overlays have rungs and lines already. */
export const closedAlone = ['hull-deck-joint', 'hatch', 'chainplate', 'crack'] as const;
