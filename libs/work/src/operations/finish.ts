import { scaled } from '#lib/kernel';
import { aboutHours, type HoursBySize } from '../job-size.js';
import { checkBeforePaintHours, checkCite, finalCheckHours } from './bond.js';
import {
  commonPractice,
  deckOpened,
  fromMemory,
  noWait,
  sizedFromMemory,
  splitFromMemory,
  threePoint,
  untilSandable,
} from './cites.js';
import { holdingNuts, settingAgain } from './hardware.js';
import { defineOperation, type Operation, type Wait } from '../operation.js';

const overcoat = (why: string, low: number, likely: number, high: number): Wait => ({
  kind: 'elapsed',
  hoursThreePoint: threePoint(low, likely, high),
  isCure: true,
  why,
  cite: { source: 'FROM-MEMORY' },
});
/** Coats of one session: the next as soon as the last has flashed off. */
const sameSession: Wait = {
  kind: 'elapsed',
  hoursThreePoint: threePoint(1, 2, 4),
  isCure: true,
  why: 'coat on coat in one session',
  cite: {
    source: 'JOB-DECK-LOG-2023',
    note: 'three coats of primer in one day of six hours, three of gloss in another',
  },
};
const sealantCures: Wait = {
  kind: 'elapsed',
  hoursThreePoint: threePoint(24, 72, 168),
  why: 'bedding cures before the fitting is loaded',
  cite: { source: 'FROM-MEMORY' },
};
const epoxyBeforePaint: Wait = {
  kind: 'elapsed',
  hoursThreePoint: threePoint(12, 18, 36),
  isCure: true,
  why: 'last epoxy to the epoxy primer of the paint system: the next day, longer in a thick fill',
  cite: {
    ...commonPractice,
    note: 'two-part epoxy primer goes over epoxy the next day; the 5 to 7 days at 21 degC that are printed stand before solvent paint without it',
  },
};
const epoxyBeforeGelcoat: Wait = {
  kind: 'elapsed',
  hoursThreePoint: threePoint(240, 336, 504),
  isCure: true,
  why: 'epoxy cured through before gelcoat, which stays soft where amine is left',
  cite: {
    source: 'MAKER-EPOXY-FINISH',
    note: 'polyester gelcoat over epoxy after about two weeks at room temperature, sooner where it is cured warm; ten days and three weeks are judgement',
  },
};
/** Gelcoat takes the next coat while it is tacky: without wax it stays so in air. */
const tackyGelcoat: Wait = {
  kind: 'elapsed',
  hoursThreePoint: threePoint(0.5, 1, 2),
  isCure: true,
  why: 'gelcoat on tacky gelcoat',
  cite: { source: 'FROM-MEMORY' },
};
const matchByColour: HoursBySize = {
  by: 'finish-m2',
  hand: aboutHours(0.3),
  spot: aboutHours(0.6),
  panel: aboutHours(1),
  deck: aboutHours(1.5),
};
/** No told job separates them: held to the one quote with a gelcoat finish, which the page of outside jobs has. */
const gelcoatRate = {
  source: 'FROM-MEMORY',
  note: 'unit rate of a skilled hand under cover; no published hours of a gelcoat finish were found',
} as const;
/** 66 to 70 h from primer to nonskid and 45 to 55 h of sanding, skimming and fairing before, on 24 to 28 m2. */
const refinishCite = {
  source: 'JOB-DECK-LOG-2023',
  note: 'ten hours once and 4.5 h for each painted square metre, held to a log of a whole deck; the shares between steps are judgement',
} as const;
const finishFixed: HoursBySize = {
  by: 'finish-m2',
  hand: aboutHours(1),
  spot: aboutHours(3),
  panel: aboutHours(5.5),
  deck: aboutHours(8),
};
/** The old finish beside the repair is sanded and skimmed while the repair is faired: one deck, one run of days. */
const closed = ['close-seam', 'laminate-top', 'laminate-extra-ply', 'close-injection-holes'] as const;
const lastEpoxy = [
  'fair',
  'skim-fair',
  'pot-holes',
  'close-injection-holes',
  'strip-close',
  'dry-plug-holes',
  'joint-tape',
  'crack-tape',
  'overlay-fill-holes',
  'overlay-scrape-glued',
] as const;
const beforeRefit = [
  'check-before-paint',
  'topcoat',
  'buff-gelcoat',
  'nonskid',
  'make-plates',
  'pot-holes',
  'frame-ring',
  'slot-fill',
] as const;
/** Also over a deck that stays closed, where planks come off it for good. */
const finished = {
  skin: ['re-bed', 'relay', 'inject', 'closed'],
  access: ['from-above'],
  finish: ['painted', 'gelcoat', 'gelcoat-over-epoxy'],
} as const;
const painted = { ...finished, finish: ['painted'] } as const;
const gelcoated = { ...finished, finish: ['gelcoat', 'gelcoat-over-epoxy'] } as const;

/** Paint, fittings, interior, and the hand-over. */
export const finishOperations = [
  defineOperation({
    code: 'strip-covering',
    title: 'Take off the covering that is bonded to the deck, fill what held it',
    phase: 'finish',
    driver: 'covering-m2',
    hours: threePoint(2, 3.3, 5.2),
    skill: 'general',
    appliesWhen: finished,
    after: closed,
    waits: noWait,
    gate: 'dry-deck',
    strains: ['on-deck', 'by-area'],
    consumes: ['abrasive'],
    cite: { source: 'JOB-COVERING-2018', note: 'a told total of 280 h for 30 to 40 m2, finish counted off' },
  }),
  defineOperation({
    code: 'sand-old-finish',
    title: 'Sand off the old nonskid and gloss, wipe clean',
    phase: 'finish',
    driver: 'old-finish-m2',
    hours: threePoint(0.5, 0.9, 1.6),
    skill: 'finisher',
    appliesWhen: finished,
    after: [...closed, 'strip-covering'],
    waits: noWait,
    gate: 'dry-deck',
    strains: ['on-deck', 'by-area'],
    consumes: ['abrasive'],
    cite: refinishCite,
  }),
  defineOperation({
    code: 'skim-fair',
    title: 'Skim and fair round the repair',
    phase: 'finish',
    driver: 'old-finish-m2',
    hours: threePoint(0.7, 1.1, 2),
    skill: 'finisher',
    appliesWhen: painted,
    after: ['sand-old-finish'],
    waits: untilSandable,
    gate: 'resin',
    strains: ['on-deck', 'by-area'],
    consumes: ['fairing', 'abrasive'],
    cite: refinishCite,
  }),
  defineOperation({
    code: 'check-before-paint',
    title: 'Sound and hose check before the finish',
    phase: 'close',
    driver: 'job',
    hours: checkBeforePaintHours.panel,
    bySize: checkBeforePaintHours,
    skill: 'laminator',
    appliesWhen: {},
    after: [...lastEpoxy, 'leak-hunt'],
    waits: noWait,
    gate: 'none',
    strains: ['on-deck'],
    cite: checkCite,
  }),
  defineOperation({
    code: 'finish-set-up',
    title: 'Get ready for the finish: wash down, mix and strain, clean the gear, unmask, look it over',
    phase: 'finish',
    driver: 'job',
    hours: finishFixed.panel,
    bySize: finishFixed,
    skill: 'finisher',
    appliesWhen: finished,
    after: closed,
    waits: noWait,
    gate: 'none',
    strains: [],
    cite: refinishCite,
  }),
  defineOperation({
    code: 'stand-before-paint',
    title: 'Let the epoxy stand before paint; wash and sand off blush',
    phase: 'finish',
    driver: 'job',
    hours: threePoint(0, 0, 0),
    skill: 'finisher',
    appliesWhen: painted,
    after: lastEpoxy,
    // It stands from the last filling on, not from the day on which that can be sanded.
    wetOn: lastEpoxy,
    waits: epoxyBeforePaint,
    gate: 'none',
    strains: [],
    cite: { ...commonPractice, note: 'a wait; its sanding is counted with the primer' },
  }),
  defineOperation({
    code: 'prime',
    title: 'Prime and sand, each coat',
    phase: 'finish',
    driver: 'primed-m2-coat',
    hours: threePoint(0.25, 0.4, 0.7),
    skill: 'finisher',
    appliesWhen: painted,
    after: ['stand-before-paint', 'check-before-paint', 'finish-set-up'],
    waits: overcoat('primer to sand and overcoat', 12, 16, 24),
    waitsBetween: sameSession,
    gate: 'coating',
    strains: ['on-deck', 'by-area'],
    consumes: ['primer', 'abrasive'],
    cite: fromMemory,
  }),
  ...groundForGelcoat(),
  defineOperation({
    code: 'mask',
    title: 'Mask for the finish',
    phase: 'finish',
    driver: 'finish-m2',
    hours: threePoint(0.2, 0.3, 0.45),
    skill: 'finisher',
    appliesWhen: finished,
    after: ['prime', 'key-for-gelcoat', 'match-gelcoat'],
    waits: noWait,
    gate: 'dry-deck',
    strains: ['on-deck', 'by-area'],
    cite: fromMemory,
  }),
  defineOperation({
    code: 'topcoat',
    title: 'Topcoat, each coat',
    phase: 'finish',
    driver: 'topcoat-m2-coat',
    hours: threePoint(0.1, 0.17, 0.3),
    skill: 'finisher',
    appliesWhen: painted,
    after: ['mask'],
    waits: overcoat('topcoat to tape over', 16, 24, 44),
    waitsBetween: sameSession,
    gate: 'coating',
    strains: ['on-deck', 'by-area'],
    consumes: ['topcoat'],
    cite: fromMemory,
  }),
  ...gelcoatLaid(),
  defineOperation({
    code: 'nonskid',
    title: 'Nonskid, with its masking',
    phase: 'finish',
    driver: 'nonskid-m2',
    hours: threePoint(0.4, 0.7, 1.3),
    skill: 'finisher',
    appliesWhen: { ...finished, nonskid: ['yes'] },
    after: ['topcoat', 'buff-gelcoat'],
    waits: overcoat('nonskid to foot traffic', 24, 36, 72),
    gate: 'coating',
    strains: ['on-deck', 'by-area'],
    consumes: ['nonskid'],
    cite: fromMemory,
  }),
  defineOperation({
    code: 'refit-fittings',
    title: 'Bed and bolt fittings, by their cards',
    phase: 'refit',
    driver: 'fitting-on-h',
    ...settingAgain,
    skill: 'rigger',
    appliesWhen: {},
    after: beforeRefit,
    waits: sealantCures,
    gate: 'dry-deck',
    strains: ['on-deck'],
    consumes: ['sealant'],
  }),
  defineOperation({
    code: 'refit-second-person',
    title: 'Second person below, holding nuts or screws',
    phase: 'refit',
    driver: 'fitting-helped-h',
    ...holdingNuts,
    skill: 'general',
    appliesWhen: {},
    after: beforeRefit,
    waits: noWait,
    gate: 'none',
    strains: [],
  }),
  defineOperation({
    code: 'final-check',
    title: 'Leak test, final sounding map, photographs, materials record',
    phase: 'hand-over',
    driver: 'job',
    hours: finalCheckHours.panel,
    bySize: finalCheckHours,
    skill: 'laminator',
    appliesWhen: {},
    after: [
      'refit-fittings',
      'refit-second-person',
      'check-before-paint',
      'topcoat',
      'buff-gelcoat',
      'nonskid',
    ],
    waits: noWait,
    gate: 'none',
    strains: [],
    cite: checkCite,
  }),
  defineOperation({
    code: 'lining-back',
    title: 'Put lining and trim back',
    phase: 'refit',
    driver: 'support-m2-below',
    hours: scaled(threePoint(1, 2, 5), 0.6),
    skill: 'general',
    appliesWhen: { below: ['lined'] },
    after: ['final-check'],
    waits: noWait,
    gate: 'none',
    strains: [],
    isOffDeck: true,
    cite: splitFromMemory,
  }),
  defineOperation({
    code: 'clean-up',
    title: 'Clean up, take waste away',
    phase: 'hand-over',
    driver: 'job',
    hours: aboutHours(1.5),
    bySize: {
      by: 'opened-m2',
      hand: aboutHours(0.2),
      spot: aboutHours(0.5),
      panel: aboutHours(1.5),
      deck: aboutHours(4),
    },
    skill: 'general',
    appliesWhen: deckOpened,
    after: ['final-check', 'lining-back'],
    waits: noWait,
    gate: 'none',
    strains: [],
    cite: sizedFromMemory,
  }),
];

/** In place of primer and topcoats: dull ground, colour tried beside the old, gelcoat shut off from the air, sanded flush. */
function gelcoating(
  operation: Omit<Operation, 'phase' | 'skill' | 'appliesWhen' | 'cite'> & Partial<Operation>,
): Operation {
  return defineOperation({
    phase: 'finish',
    skill: 'finisher',
    appliesWhen: gelcoated,
    cite: gelcoatRate,
    ...operation,
  });
}

function groundForGelcoat(): readonly Operation[] {
  return [
    gelcoating({
      code: 'stand-before-gelcoat',
      title: 'Let the epoxy cure through before gelcoat',
      driver: 'job',
      hours: threePoint(0, 0, 0),
      appliesWhen: { ...finished, finish: ['gelcoat-over-epoxy'] },
      after: lastEpoxy,
      wetOn: lastEpoxy,
      waits: epoxyBeforeGelcoat,
      gate: 'none',
      strains: [],
      cite: { ...commonPractice, note: 'a wait; what is washed and sanded after it is counted by itself' },
    }),
    gelcoating({
      code: 'key-for-gelcoat',
      title: 'Wash, sand dull at 80 grit, feather the old gelcoat',
      driver: 'finish-m2',
      hours: threePoint(0.2, 0.35, 0.6),
      after: ['stand-before-gelcoat', ...lastEpoxy, 'check-before-paint', 'finish-set-up'],
      waits: noWait,
      gate: 'dry-deck',
      strains: ['on-deck', 'by-area'],
      consumes: ['abrasive'],
    }),
    gelcoating({
      code: 'match-gelcoat',
      title: 'Tint the gelcoat and try it, cured, beside the old',
      driver: 'job',
      hours: matchByColour.panel,
      bySize: matchByColour,
      after: closed,
      waits: noWait,
      gate: 'none',
      strains: [],
    }),
  ];
}

function gelcoatLaid(): readonly Operation[] {
  return [
    gelcoating({
      code: 'gelcoat',
      title: 'Gelcoat, each coat; the last with wax in it or under film',
      driver: 'topcoat-m2-coat',
      hours: threePoint(0.12, 0.2, 0.35),
      after: ['mask'],
      waits: overcoat('gelcoat to wash, sand and buff', 12, 20, 36),
      waitsBetween: tackyGelcoat,
      gate: 'coating',
      strains: ['on-deck', 'by-area'],
      consumes: ['gelcoat'],
    }),
    gelcoating({
      code: 'buff-gelcoat',
      title: 'Wash off wax or film, wet-sand flush through the grits, buff',
      driver: 'buffed-m2',
      hours: threePoint(0.9, 1.6, 2.8),
      after: ['gelcoat'],
      waits: noWait,
      gate: 'dry-deck',
      strains: ['on-deck', 'by-area'],
      consumes: ['abrasive'],
    }),
  ];
}
