import type { Cite } from '#lib/provenance';
import { deckOpened, noWait, threePoint, untilSandable } from './cites.js';
import { defineOperation, type AppliesWhen, type Operation } from '../operation.js';

const overlayCite: Cite = {
  source: 'METHODS-IN-PRINT',
  note: 'tuned to 20 h for half of a 37 ft deck and 4 h for one cockpit patch; screwed 4 to 13 h/m2 in all, glued 2 to 8',
};
const liningCite: Cite = { source: 'FROM-MEMORY', note: 'pages on linings give methods, no hours' };
const edgeCite: Cite = { source: 'FROM-MEMORY', note: 'metal rail 3 to 6 h off and 6 to 12 h on for 10 m' };

type Besides = Pick<Operation, 'code' | 'title' | 'phase' | 'driver' | 'hours' | 'skill' | 'after' | 'cite'> &
  Partial<Pick<Operation, 'waits' | 'gate' | 'consumes' | 'isOffDeck' | 'appliesWhen' | 'strains'>>;

/** An overlay or a lining comes off for a closed repair as for an open one. */
const whateverIsDone: AppliesWhen = { skin: ['re-bed', 'relay', 'inject', 'closed'] };

const besides = (given: Besides): Operation =>
  defineOperation({ waits: noWait, gate: 'none', strains: [], appliesWhen: whateverIsDone, ...given });

const overlayOff = (kind: 'screwed' | 'glued'): readonly Operation[] => {
  const driver = `overlay-${kind}-m2` as const;
  const isScrewed = kind === 'screwed';
  const off = besides({
    code: `overlay-off-${kind}`,
    title: isScrewed ? 'Plugs and screws out, then the planks' : 'Glued overlay off',
    phase: 'prepare',
    driver,
    hours: isScrewed ? threePoint(1.2, 2.5, 5) : threePoint(1, 1.5, 3.5),
    skill: 'general',
    after: ['isolate-services', 'hardware-off', 'spot-protect'],
    strains: ['on-deck'],
    cite: overlayCite,
  });
  const clean = besides({
    code: `overlay-scrape-${kind}`,
    title: 'Scrape and grind the old bedding off',
    phase: 'prepare',
    driver,
    hours: isScrewed ? threePoint(1, 2.5, 4.5) : threePoint(1, 2.5, 4.5),
    skill: 'general',
    after: [off.code],
    strains: ['on-deck'],
    consumes: ['abrasive'],
    cite: overlayCite,
  });
  const fill = besides({
    code: 'overlay-fill-holes',
    title: 'Ream, countersink and fill every screw hole, twice',
    phase: 'prepare',
    driver,
    hours: threePoint(1.8, 2.5, 3.3),
    skill: 'laminator',
    after: [clean.code],
    waits: untilSandable,
    gate: 'resin',
    strains: ['on-deck'],
    consumes: ['resin', 'filler', 'abrasive'],
    cite: overlayCite,
  });
  return isScrewed ? [off, clean, fill] : [off, clean];
};

const lining = (
  kind: 'zipped' | 'panel' | 'glued',
  hours: { readonly out: Operation['hours']; readonly back: Operation['hours'] },
  words: { readonly out: string; readonly back: string },
): { readonly out: Operation; readonly back: Operation } => {
  const common = {
    driver: `lining-${kind}-m2` as const,
    skill: 'general' as const,
    isOffDeck: true,
    cite: liningCite,
  };
  return {
    out: besides({
      ...common,
      code: `lining-out-${kind}`,
      title: words.out,
      phase: 'prepare',
      hours: hours.out,
      after: ['isolate-services'],
    }),
    back: besides({
      ...common,
      code: `lining-back-${kind}`,
      title: words.back,
      phase: 'refit',
      hours: hours.back,
      after: ['final-check', 'spot-check'],
    }),
  };
};

const linings = [
  lining(
    'zipped',
    { out: threePoint(0.2, 0.3, 0.6), back: threePoint(0.3, 0.5, 1) },
    {
      out: 'Unzip or unbatten the vinyl lining',
      back: 'Put the vinyl lining back',
    },
  ),
  lining(
    'panel',
    { out: threePoint(0.15, 0.2, 0.4), back: threePoint(0.2, 0.3, 0.6) },
    {
      out: 'Take the lining panels off their screws',
      back: 'Put the lining panels back',
    },
  ),
  lining(
    'glued',
    { out: threePoint(0.4, 0.6, 1), back: threePoint(2.5, 3.2, 4) },
    {
      out: 'Pull the glued lining off and scrape its foam',
      back: 'Glue a new lining in',
    },
  ),
];

/** Before the deck can be worked on: overlay, lining and rail off. */
export const offOperations: readonly Operation[] = [
  ...overlayOff('screwed'),
  ...overlayOff('glued'),
  ...linings.map(({ out }) => out),
  besides({
    code: 'rail-off',
    title: 'Take the toe rail off, number its bolts',
    phase: 'prepare',
    driver: 'rail-m',
    hours: threePoint(0.3, 0.45, 0.6),
    skill: 'rigger',
    appliesWhen: deckOpened,
    after: ['isolate-services'],
    cite: edgeCite,
  }),
  besides({
    code: 'deck-bows',
    title: 'Bows or ballast on deck that keep its shape while the inner skin is off',
    phase: 'prepare',
    driver: 'bow',
    hours: threePoint(0.2, 0.4, 0.8),
    skill: 'general',
    appliesWhen: { ...deckOpened, access: ['from-below'] },
    after: ['isolate-services'],
    cite: { source: 'METHODS-IN-PRINT', note: 'bows every foot across a foredeck; hours from memory' },
  }),
];

/** After the deck is whole again. */
export const backOperations: readonly Operation[] = [
  besides({
    code: 'wrap-upstand',
    title: 'Fillet, wrap the plies over the edge and up the side, fair it',
    phase: 'close',
    driver: 'upstand-m',
    hours: threePoint(0.4, 0.8, 1.5),
    skill: 'laminator',
    appliesWhen: deckOpened,
    after: ['laminate-top', 'close-seam'],
    waits: untilSandable,
    gate: 'resin',
    strains: ['on-deck'],
    consumes: ['resin', 'fabric', 'fairing'],
    cite: { source: 'FROM-MEMORY' },
  }),
  besides({
    code: 'rail-on',
    title: 'Bed and bolt the toe rail, joint rebuilt',
    phase: 'refit',
    driver: 'rail-m',
    hours: threePoint(0.6, 0.9, 1.2),
    skill: 'rigger',
    appliesWhen: deckOpened,
    after: ['topcoat', 'buff-gelcoat', 'nonskid', 'check-before-paint'],
    gate: 'dry-deck',
    consumes: ['sealant'],
    cite: edgeCite,
  }),
  besides({
    code: 'overlay-back',
    title: 'Lay the overlay again and caulk it',
    phase: 'refit',
    driver: 'overlay-relay-m2',
    hours: threePoint(8, 11, 14),
    skill: 'general',
    after: ['topcoat', 'buff-gelcoat', 'check-before-paint', 'overlay-fill-holes'],
    gate: 'dry-deck',
    strains: ['on-deck'],
    consumes: ['sealant'],
    cite: { source: 'FROM-MEMORY', note: 'local relay 8 to 14 h/m2; one plank in three replaced' },
  }),
  ...linings.map(({ back }) => back),
];
