import { commonPractice, fromMemory } from '../cites.js';
import type { MethodFacts } from '../facts.js';
import { isKnown } from '#lib/kernel';
import { insertUnder } from '../hardware/schedule.js';
import { limits, solidOverCoreKgPerM2 } from '../limits.js';
import { defineMethod, type Test } from '../method.js';
import {
  conditionCoreEnd,
  conditionOverlay,
  inPrint,
  m2Words,
  referredUnderLoad,
  refusedOutOfReach,
  refusedTooNarrow,
  refusedUnderOverlay,
  refusedWhen,
  refusedWithoutBadCore,
} from '../tests.js';

const openedOperations = [
  'inspect-map',
  'protect',
  'cut-skin',
  'hold-remeasure',
  'ream-lip',
  'grind-inner',
  'fit-core',
  'bed-core',
  'check-bond',
] as const;

const openedStages = [
  'map',
  'fittings off',
  'cut',
  'core out',
  'hold and measure',
  'dry',
  'fit and bed the core',
] as const;

/** Damp core that is pale and bonded stays; nobody opens a deck for it. */
const refusedDamp: Test = refusedWhen(
  ['damp-sound', 'dry-sound'],
  `it may stay: ${limits.keepMoisturePercent} % or less alone does not justify replacing it`,
  { cite: inPrint, wouldFit: 'core that is rotten, saturated or has let go' },
);

const fromAbove = [refusedWithoutBadCore, refusedUnderOverlay, refusedOutOfReach, refusedTooNarrow] as const;
const keepsNonskid = ({ deck: { surface } }: MethodFacts): boolean => surface === 'moulded-nonskid';

export const aboveOldSkin = defineMethod({
  code: 'above-old-skin',
  title: 'From above, the old skin bonded back',
  reach: 'opening',
  cutSide: 'outer',
  skin: 'bonded-back',
  needs: ['whether the outer skin is whole', 'how well it still holds', 'its nonskid'],
  refusals: [
    ...fromAbove,
    ({ deck: { outerSkin } }) =>
      outerSkin === 'cracked'
        ? {
            code: 'cracked-skin',
            text: 'the outer skin is cracked or crazed: it does not come off whole and would not be sound again',
            cite: inPrint,
            wouldFit: 'a whole skin, or a new laminate',
          }
        : undefined,
  ],
  conditions: [
    ({ deck: { outerSkin } }) =>
      isKnown(outerSkin)
        ? undefined
        : {
            code: 'look-for-cracks',
            text: 'look for cracks and crazing first: a cracked skin is replaced',
            cite: inPrint,
          },
    ({ place: { core } }) =>
      core === 'wet-bonded'
        ? {
            code: 'skin-still-bonded',
            text: 'the skin still holds and may tear when it is lifted: keep cloth for a new one',
            cite: inPrint,
          }
        : undefined,
    ({ place: { badAreaM2 } }) =>
      badAreaM2 > limits.liftSkinM2
        ? {
            code: 'lift-in-pieces',
            text: `${m2Words(badAreaM2)} is lifted in ${Math.ceil(badAreaM2 / limits.liftSkinM2)} pieces: one or two people lift about ${limits.liftSkinM2} m2 flat`,
            value: badAreaM2,
            limit: limits.liftSkinM2,
            unit: 'm2',
            cite: fromMemory,
          }
        : undefined,
    conditionOverlay,
    conditionCoreEnd,
    referredUnderLoad,
  ],
  suits: ({ place, deck }) => ({
    code: 'skin-worth-keeping',
    text: `${m2Words(place.badAreaM2)} lifts in one piece${deck.surface === 'moulded-nonskid' ? ', and its moulded nonskid cannot be matched' : ''}`,
    value: place.badAreaM2,
    limit: limits.liftSkinM2,
    unit: 'm2',
    cite: inPrint,
  }),
  rank: (facts) => (keepsNonskid(facts) ? 50 : 56),
  leavesUndone: () => ['the seam shows, and the old skin keeps whatever it was'],
  stages: [...openedStages, 'clean the old skin', 'bed it flush', 'close the seam', 'finish the seam'],
  operations: [...openedOperations, 'clean-saved-skin', 'bed-skin', 'close-seam'],
  cautions: [],
  drawings: ['plan', 'outer-section'],
});

export const aboveNewSkin = defineMethod({
  code: 'above-new-skin',
  title: 'From above, a new skin',
  reach: 'opening',
  cutSide: 'outer',
  skin: 'new',
  needs: ['thickness of the outer skin', 'how the deck is finished'],
  refusals: [...fromAbove],
  conditions: [
    ({ deck: { surface } }) =>
      surface === 'moulded-nonskid'
        ? {
            code: 'nonskid-lost',
            text: 'the moulded nonskid is lost: the panel gets painted nonskid',
            cite: inPrint,
          }
        : undefined,
    ({ place: { core } }) =>
      core === 'damp-sound'
        ? {
            code: 'damp-may-stay',
            text: `damp, bonded core may stay: ${limits.keepMoisturePercent} % or less alone does not justify replacing it`,
            cite: inPrint,
          }
        : undefined,
    conditionOverlay,
    conditionCoreEnd,
    referredUnderLoad,
  ],
  suits: ({ place, deck }) => ({
    code: 'new-laminate',
    text: `${m2Words(place.badAreaM2)} is opened from above and laminated anew${deck.outerSkin === 'cracked' ? ': the old skin is cracked' : ', the soundest skin where the deck is painted anyway'}`,
    value: place.badAreaM2,
    unit: 'm2',
    cite: inPrint,
  }),
  rank: () => 55,
  leavesUndone: () => ['matching of the old nonskid beyond the finished area'],
  stages: [...openedStages, 'taper', 'laminate', 'fair', 'prime and paint'],
  operations: [...openedOperations, 'taper-skin', 'laminate-top'],
  cautions: [],
  drawings: ['plan', 'outer-section'],
});

const isBelowKnown = ({ deck: { lining, workingHeightMm, below } }: MethodFacts): boolean =>
  isKnown(workingHeightMm) && (below === 'open' || isKnown(lining));

export const fromBelow = defineMethod({
  code: 'from-below',
  title: 'From below, through the inner skin',
  reach: 'opening',
  cutSide: 'inner',
  skin: 'new',
  needs: ['kind of lining', 'working height', 'what lies below', 'thickness of both skins'],
  refusals: [
    refusedWithoutBadCore,
    refusedDamp,
    ({ deck: { below } }) =>
      below === 'none'
        ? {
            code: 'no-room-below',
            text: 'there is no room below to work from',
            cite: inPrint,
            wouldFit: 'work from above',
          }
        : undefined,
    ({ deck: { lining } }) =>
      lining === 'moulded-liner'
        ? {
            code: 'moulded-liner',
            text: 'a moulded liner bonded to the deck is in the way: cutting it is more work and frustration than the deck',
            cite: inPrint,
            wouldFit: 'a lining that comes down, or work from above',
          }
        : undefined,
    ({ deck: { workingHeightMm } }) =>
      isKnown(workingHeightMm) && workingHeightMm < limits.workingHeightMm
        ? {
            code: 'too-low',
            text: `${workingHeightMm} mm of height below is less than the ${limits.workingHeightMm} mm that a person needs to cut, press and laminate overhead`,
            value: workingHeightMm,
            limit: limits.workingHeightMm,
            unit: 'mm',
            cite: fromMemory,
            wouldFit: 'joinery out, or work from above',
          }
        : undefined,
    ({ deck: { obstaclesBelow } }) =>
      obstaclesBelow.some((one) => one.endsWith('tank'))
        ? {
            code: 'tank-below',
            text: `a ${obstaclesBelow.find((one) => one.endsWith('tank'))?.replace('-', ' ') ?? 'tank'} lies under the place`,
            cite: inPrint,
            wouldFit: 'the tank out, or work from above',
          }
        : undefined,
    refusedOutOfReach,
  ],
  conditions: [
    ({ deck: { lining, below } }) =>
      below === 'open' || isKnown(lining)
        ? undefined
        : {
            code: 'lining-kind',
            text: 'say what the lining is: it decides whether it comes down at all',
            cite: inPrint,
          },
    ({ deck: { workingHeightMm } }) =>
      isKnown(workingHeightMm)
        ? undefined
        : {
            code: 'measure-the-height',
            text: `measure the height below: less than ${limits.workingHeightMm} mm is no place to work overhead`,
            limit: limits.workingHeightMm,
            unit: 'mm',
            cite: fromMemory,
          },
    ({ place: { badAreaM2 } }) =>
      badAreaM2 > limits.jobFromBelowM2
        ? {
            code: 'larger-than-in-print',
            text: `${m2Words(badAreaM2)} is more than the ${limits.jobFromBelowM2} m2 of the largest job from below with hours in print: strip by strip, never open more than one bay`,
            value: badAreaM2,
            limit: limits.jobFromBelowM2,
            unit: 'm2',
            cite: inPrint,
          }
        : undefined,
    ({ deck: { obstaclesBelow } }) =>
      obstaclesBelow.includes('wiring')
        ? {
            code: 'wiring-below',
            text: 'wiring runs below: it is led clear before the first cut',
            cite: commonPractice,
          }
        : undefined,
    conditionCoreEnd,
    referredUnderLoad,
  ],
  suits: ({ place, deck }) => ({
    code: 'deck-stays-whole',
    text: `the lining comes down, ${isKnown(deck.workingHeightMm) ? `${deck.workingHeightMm} mm of height is enough` : 'the height is enough'}, and nonskid and paint above stay: ${m2Words(place.badAreaM2)} in pieces of ${limits.pieceFromBelowM2} m2 at most`,
    value: place.badAreaM2,
    limit: limits.jobFromBelowM2,
    unit: 'm2',
    cite: inPrint,
  }),
  rank: (facts) =>
    keepsNonskid(facts) && isBelowKnown(facts) && facts.place.badAreaM2 > limits.liftSkinM2 ? 48 : 60,
  leavesUndone: () => ['the deck above is not looked at: cracks and old bedding there stay'],
  stages: [
    'lining and joinery out',
    'tape fittings from above',
    'bows or ballast on deck',
    'cut the inner skin in bays',
    'core out',
    'dry',
    'core up, held by jacks and padded boards',
    'taper, laminate overhead ply by ply',
    'lining back',
  ],
  operations: [...openedOperations, 'lining-out', 'lining-back'],
  cautions: ['deck-shape', 'overhead-work', 'jacks-slip', 'enclosed-below'],
  drawings: ['mirrored-plan', 'inner-section'],
});

const isManyIslands = ({ deck: { badShare, zoneCount } }: MethodFacts): boolean =>
  badShare > limits.wholePanelSureShare ||
  (badShare > limits.wholePanelShare && zoneCount >= limits.manyIslands);

function badInPlaces({ deck: { badShare, zoneCount } }: MethodFacts): string {
  if (zoneCount === 0) return 'no zone of the panel is recorded as bad';
  return `${(100 * badShare).toFixed(0)} % of the panel is bad in ${zoneCount} ${zoneCount === 1 ? 'place' : 'places'}`;
}

export const wholePanel = defineMethod({
  code: 'whole-panel',
  title: 'The whole panel, between its hard edges',
  reach: 'opening',
  cutSide: 'outer',
  skin: 'new',
  needs: ['share of the panel that is bad', 'number of islands', 'how far the finish goes'],
  refusals: [
    refusedWithoutBadCore,
    refusedUnderOverlay,
    (facts) =>
      isManyIslands(facts)
        ? undefined
        : {
            code: 'mostly-sound',
            text: `${badInPlaces(facts)}: below ${100 * limits.wholePanelShare} % sound core would be thrown away`,
            value: facts.deck.badShare,
            limit: limits.wholePanelShare,
            cite: fromMemory,
            wouldFit: 'more than 40 % in three islands or more, or more than half',
          },
  ],
  conditions: [
    ({ deck: { finish } }) =>
      finish === 'patch'
        ? { code: 'new-finish', text: 'the whole panel gets a new finish, not a patch', cite: commonPractice }
        : undefined,
    conditionOverlay,
    referredUnderLoad,
  ],
  suits: ({ deck }) => ({
    code: 'islands-everywhere',
    text: `${(100 * deck.badShare).toFixed(0)} % of the panel is bad${deck.zoneCount === 1 ? ' in one sweep: what is left sound would cost more to keep than to take' : ` in ${deck.zoneCount} islands: edges and fairing of each would cost more than the panel`}`,
    value: deck.badShare,
    limit: limits.wholePanelShare,
    cite: fromMemory,
  }),
  rank: () => 46,
  leavesUndone: () => ['sound core between the islands goes with the rest'],
  stages: [...openedStages, 'taper', 'laminate bay by bay', 'fair', 'prime and paint'],
  operations: [...openedOperations, 'taper-skin', 'laminate-top'],
  cautions: [],
  drawings: ['plan', 'outer-section'],
});

const isLoaded = ({ place: { fittings } }: MethodFacts): boolean =>
  fittings.some(({ isHighlyLoaded, isOnPlace }) => isHighlyLoaded && isOnPlace);

/** The solid that such a fitting asks for anyway takes in all the bad core. */
const isUnderItsInsert = ({ place: { fittings, longMm, narrowMm } }: MethodFacts): boolean =>
  fittings.some(({ kind, baseMm, isOnPlace }) => {
    const insert = insertUnder(kind, isKnown(baseMm) ? baseMm : undefined);
    return isOnPlace && insert !== undefined && longMm <= insert.lengthMm && narrowMm <= insert.widthMm;
  });

export const solidSpot = defineMethod({
  code: 'solid-spot',
  fill: 'solid',
  title: 'A small solid spot, no core',
  reach: 'opening',
  cutSide: 'outer',
  skin: 'new',
  needs: ['area', 'what stands on it', 'thickness of the core'],
  refusals: [
    refusedWithoutBadCore,
    refusedUnderOverlay,
    ({ place: { badAreaM2 }, deck: { coreMm } }) =>
      badAreaM2 > limits.solidM2
        ? {
            code: 'too-large-to-be-solid',
            text: `${m2Words(badAreaM2)} is more than ${limits.solidM2} m2: solid laminate ${coreMm} mm thick weighs ${solidOverCoreKgPerM2(coreMm).toFixed(0)} kg/m2 more than core, ${(badAreaM2 * solidOverCoreKgPerM2(coreMm)).toFixed(1)} kg here, and heats as it cures`,
            value: badAreaM2,
            limit: limits.solidM2,
            unit: 'm2',
            cite: fromMemory,
            wouldFit: 'solid under the fitting alone and core round it',
          }
        : undefined,
  ],
  conditions: [conditionOverlay, referredUnderLoad],
  suits: (facts) => ({
    code: isUnderItsInsert(facts) ? 'under-its-insert' : 'small-and-loaded',
    text: `${isUnderItsInsert(facts) ? 'the solid that the fitting asks for takes in all of it: ' : ''}${m2Words(facts.place.badAreaM2)} filled solid adds ${(facts.place.badAreaM2 * solidOverCoreKgPerM2(facts.deck.coreMm)).toFixed(1)} kg`,
    value: facts.place.badAreaM2,
    limit: limits.solidM2,
    unit: 'm2',
    cite: fromMemory,
  }),
  rank: (facts) => {
    if (isLoaded(facts)) return 25;
    return isUnderItsInsert(facts) || facts.place.badAreaM2 <= limits.solidSmallM2 ? 52 : 62;
  },
  leavesUndone: () => ['the hard spot ends in core: its edge is tapered so that it does not crack there'],
  stages: [
    ...openedStages.slice(0, 6),
    'lay up or bed ready blocks in stages',
    'taper its edge',
    'laminate',
    'finish',
  ],
  operations: [...openedOperations, 'set-inserts', 'taper-skin', 'laminate-top'],
  cautions: [],
  drawings: ['plan', 'outer-section'],
});
