import { commonPractice, fromMemory, injectionLimit } from '../cites.js';
import type { MethodFacts } from '../facts.js';
import { isKnown } from '#lib/kernel';
import { limits } from '../limits.js';
import { defineMethod, type Reason, type Test } from '../method.js';
import {
  conditionPlug,
  inPrint,
  isBad,
  m2Words,
  refusedAboveArea,
  refusedUnderFitting,
  refusedUnderLoad,
  refusedUnderOverlay,
  refusedWhen,
  refusedWithoutPlug,
  wordsFor,
} from '../tests.js';

/** Damp, pale, bonded core at or below what alone does not justify replacing it. */
const mayStayDamp = ({ place: { core, moisturePercent } }: MethodFacts): boolean =>
  core === 'damp-sound' && isKnown(moisturePercent) && moisturePercent <= limits.keepMoisturePercent;

const refusedWithBadCore: Test = (facts) => {
  const { place } = facts;
  if (!isBad(facts) || mayStayDamp(facts)) return undefined;
  const state = isKnown(place.core) ? wordsFor(place.core) : 'bad';
  return {
    code: 'wet-plug',
    text: `the core here is ${state}${place.badAreaM2 > 0 ? `, ${m2Words(place.badAreaM2)} of it` : ''}: new bedding would shut the water in`,
    value: place.badAreaM2,
    limit: 0,
    unit: 'm2',
    cite: inPrint,
    wouldFit: 'a plug beside the hole that is dry and pale',
  };
};

const refusedWithoutFitting =
  (why: string): Test =>
  ({ place: { fittings } }) =>
    fittings.length > 0
      ? undefined
      : {
          code: 'no-fitting',
          text: why,
          value: 0,
          limit: 1,
          unit: 'fittings',
          cite: commonPractice,
          wouldFit: 'a fitting whose holes lead to the wet core',
        };

export const rebed = defineMethod({
  code: 'rebed',
  title: 'Re-bed the fitting',
  reach: 'spot',
  cutSide: 'none',
  skin: 'kept',
  needs: ['a plug beside the hole', 'whether the fitting moves or leaks'],
  refusals: [refusedWithBadCore, refusedWithoutFitting('there is no fitting here to bed anew')],
  conditions: [
    conditionPlug('a dry, pale plug beside the hole is what lets the core stay'),
    (facts) =>
      mayStayDamp(facts)
        ? {
            code: 'read-again',
            text: `core at ${isKnown(facts.place.moisturePercent) ? facts.place.moisturePercent : 0} % stays: the leak is stopped, and the same points are read again after a season`,
            value: isKnown(facts.place.moisturePercent) ? facts.place.moisturePercent : 0,
            limit: limits.keepMoisturePercent,
            unit: '%',
            cite: inPrint,
          }
        : undefined,
  ],
  suits: ({ place }) => ({
    code: 'dry-plug',
    text: 'the core beside the hole is dry: only the bedding has failed',
    ...(isKnown(place.moisturePercent) ? { value: place.moisturePercent, unit: '%' } : {}),
    limit: limits.keepMoisturePercent,
    cite: inPrint,
  }),
  rank: () => 10,
  leavesUndone: () => ['core farther from the hole was not seen: sound it again after a season'],
  stages: ['fitting off', 'old bedding out', 'countersink', 'bed and bolt', 'hose test'],
  operations: [
    'spot-look',
    'spot-protect',
    'spot-fitting-off',
    'spot-clean-holes',
    'spot-bed',
    'spot-check',
    'spot-clean-up',
  ],
  cautions: [],
  drawings: ['plan', 'hole-section'],
});

const toolReaches = (facts: MethodFacts): Reason | undefined => {
  const { wetReachMm } = facts.place;
  if (!isKnown(wetReachMm) || wetReachMm <= limits.reamFarthestMm) return undefined;
  return {
    code: 'beyond-the-tool',
    text: `wet core still comes out ${Math.round(wetReachMm)} mm from the hole; a tool through it reaches ${limits.reamReachMm} mm, ${limits.reamFarthestMm} mm with a set of longer keys`,
    value: wetReachMm,
    limit: limits.reamFarthestMm,
    unit: 'mm',
    cite: inPrint,
    wouldFit: 'an opening: cut instead of dig',
  };
};

export const reamAndPot = defineMethod({
  code: 'ream-and-pot',
  title: 'Ream out through the holes and pot them',
  reach: 'spot',
  cutSide: 'none',
  skin: 'kept',
  needs: ['how far from the hole wet core still comes out', 'size and number of the holes'],
  refusals: [
    refusedWithoutFitting('there is no fastener hole to work through'),
    refusedWhen(['dry-sound', 'damp-sound'], 'there is nothing to dig out; bed the fitting anew', {
      cite: inPrint,
      wouldFit: 'wet or brown core round the hole',
    }),
    refusedWhen(['dry-debonded'], 'digging does not close a gap under the skin', {
      cite: inPrint,
      wouldFit: 'wet core round a hole; a dry gap is injected',
    }),
    refusedUnderLoad('a pocket of filler does not carry it'),
    refusedAboveArea({
      code: 'cut-instead-of-dig',
      limitM2: limits.stopDiggingM2,
      why: 'at which one stops digging and cuts',
      cite: inPrint,
      wouldFit: 'a local opening',
    }),
    toolReaches,
  ],
  conditions: [
    ({ place: { wetReachMm } }) =>
      isKnown(wetReachMm)
        ? wetReachMm > limits.reamReachMm
          ? {
              code: 'longer-keys',
              text: `${Math.round(wetReachMm)} mm takes a set of longer keys; pockets of neighbouring holes merge`,
              value: wetReachMm,
              limit: limits.reamReachMm,
              unit: 'mm',
              cite: inPrint,
            }
          : undefined
        : {
            code: 'dry-shaving',
            text: `stop and cut if no dry shaving comes at ${limits.reamReachMm} mm from the hole`,
            value: limits.reamReachMm,
            limit: limits.reamFarthestMm,
            unit: 'mm',
            cite: inPrint,
          },
  ],
  suits: ({ place }) => ({
    code: 'tool-reaches',
    text: isKnown(place.wetReachMm)
      ? `dry core was reached ${Math.round(place.wetReachMm)} mm from the hole, within the ${limits.reamReachMm} mm that a tool through it digs`
      : 'wet only round the holes, as far as is known',
    ...(isKnown(place.wetReachMm) ? { value: place.wetReachMm } : {}),
    limit: limits.reamReachMm,
    unit: 'mm',
    cite: inPrint,
  }),
  rank: () => 20,
  leavesUndone: () => [
    'core beyond the plugs stays as it is; an owner who potted damp core was told to expect a second repair',
  ],
  stages: [
    'fitting off',
    'dig to dry shavings',
    'air dry',
    'tape below',
    'wet out and fill',
    'cure',
    'redrill',
    'countersink',
    'bed and bolt',
  ],
  operations: [
    'spot-look',
    'spot-protect',
    'spot-fitting-off',
    'spot-clean-holes',
    'spot-dig',
    'spot-fill',
    'spot-redrill',
    'spot-bed',
    'spot-check',
    'spot-clean-up',
  ],
  cautions: [],
  drawings: ['plan', 'hole-section'],
});

const isSaturated = ({ place: { moisturePercent } }: MethodFacts): boolean =>
  isKnown(moisturePercent) && moisturePercent > limits.saturationPercent;

const daysToDry = (facts: MethodFacts): number =>
  isSaturated(facts) ? limits.dryingSeasonDays : limits.dryingDays;

const refusedNoTime: Test = (facts) => {
  const { daysAvailable } = facts.deck;
  const needed = daysToDry(facts);
  return isKnown(daysAvailable) && daysAvailable < needed
    ? {
        code: 'no-time-to-dry',
        text: `${daysAvailable} days are there, and a closed edge takes ${needed} or more`,
        value: daysAvailable,
        limit: needed,
        unit: 'd',
        cite: fromMemory,
        wouldFit: 'a season under cover',
      }
    : undefined;
};

/** Water that was in the core under a load has been there long enough to cost it strength: nobody leaves it there to dry. */
const refusedWetUnderLoad: Test = (facts) =>
  facts.place.core === 'wet-bonded' || isSaturated(facts)
    ? refusedUnderLoad('wet core under it is replaced, not dried')(facts)
    : undefined;

/** Below fibre saturation, with a season under cover: most owners dry before they cut. */
const hasItsSeason = ({ place: { moisturePercent }, deck: { daysAvailable } }: MethodFacts): boolean =>
  isKnown(moisturePercent) &&
  moisturePercent <= limits.saturationPercent &&
  isKnown(daysAvailable) &&
  daysAvailable >= limits.dryingSeasonDays;

export const dryInPlace = defineMethod({
  code: 'dry-in-place',
  title: 'Stop the leak and dry the core in place',
  reach: 'spot',
  cutSide: 'none',
  skin: 'kept',
  needs: ['moisture at a plug', 'days available', 'whether frost is due', 'cover'],
  refusals: [
    refusedWhen(['wet-rotten'], 'rot does not dry back to wood', {
      cite: inPrint,
      wouldFit: 'core that is hard, pale and bonded',
    }),
    refusedWhen(['dry-debonded'], 'it is dry already, and drying bonds nothing', {
      cite: inPrint,
      wouldFit: 'wet core that is still bonded',
    }),
    refusedWhen(['dry-sound'], 'there is nothing to dry', {
      cite: commonPractice,
      wouldFit: 'a plug that is damp',
    }),
    ({ deck: { isFreezeExpected } }) =>
      isFreezeExpected === true
        ? {
            code: 'freeze-due',
            text: 'frost is due before the core is dry, and ice breaks the bond that is left',
            cite: inPrint,
            wouldFit: 'heat under cover, or the warm season',
          }
        : undefined,
    ({ deck: { shelter } }) =>
      shelter === 'open'
        ? {
            code: 'no-cover',
            text: 'without a cover the deck takes up what it gives off',
            cite: inPrint,
            wouldFit: 'a tent or a shed that sheds rain and breathes',
          }
        : undefined,
    refusedNoTime,
    refusedWetUnderLoad,
    ({ place: { badAreaM2, fittings } }) =>
      badAreaM2 === 0 && fittings.length === 0
        ? { code: 'nothing-to-dry', text: 'no place is named that would be dried', cite: commonPractice }
        : undefined,
  ],
  conditions: [
    conditionPlug('hard, pale, bonded core is what may stay'),
    ({ place: { core } }) =>
      core === 'wet-bonded'
        ? {
            code: 'pale-and-hard',
            text: 'the plug must be pale and hard, and squeezing it must give no black water',
            cite: inPrint,
          }
        : undefined,
    ({ place: { moisturePercent } }) =>
      isKnown(moisturePercent) && moisturePercent > limits.keepMoisturePercent
        ? {
            code: 'damp-over-twenty',
            text: `${moisturePercent} % is over the ${limits.keepMoisturePercent} % at which core may stay without a question`,
            value: moisturePercent,
            limit: limits.keepMoisturePercent,
            unit: '%',
            cite: inPrint,
          }
        : undefined,
    (facts) =>
      isKnown(facts.deck.daysAvailable)
        ? undefined
        : {
            code: 'time-to-dry',
            text: `say how many days there are: ${daysToDry(facts)} at the least, more with every inch of closed edge`,
            value: daysToDry(facts),
            unit: 'd',
            cite: fromMemory,
          },
  ],
  suits: ({ place, deck }) => ({
    code: 'damp-and-sound',
    text: `hard, bonded core${isKnown(place.moisturePercent) ? ` at ${place.moisturePercent} %` : ''} may stay: ${limits.keepMoisturePercent} % or less alone does not justify replacing it${isKnown(deck.daysAvailable) ? `, and there are ${deck.daysAvailable} days` : ''}`,
    ...(isKnown(place.moisturePercent) ? { value: place.moisturePercent } : {}),
    limit: limits.keepMoisturePercent,
    unit: '%',
    cite: inPrint,
  }),
  rank: (facts) => (hasItsSeason(facts) ? 35 : 45),
  leavesUndone: () => [
    'the core stays, and with it whatever strength it has lost',
    'the boundary may prove rotten when holes are drilled: then it is opened',
  ],
  stages: [
    'stop the leak',
    'map',
    'holes in and out',
    'cover',
    'dry air through',
    'read twice a week',
    'two equal readings',
    'plug the holes',
  ],
  operations: [
    'spot-look',
    'spot-protect',
    'dry-drill',
    'dry-set-up',
    'dry-read',
    'dry-plug-holes',
    'spot-check',
    'spot-clean-up',
  ],
  cautions: [],
  drawings: ['plan'],
});

export const inject = defineMethod({
  code: 'inject',
  title: 'Inject under the skin that stays',
  reach: 'spot',
  cutSide: 'none',
  skin: 'kept',
  needs: ['a plug in the place', 'its area', 'whether the skin is whole'],
  refusals: [
    refusedWhen(
      ['wet-rotten', 'wet-bonded'],
      'resin does not mend wet or rotten core, and pushes the water into the next hole',
      {
        code: 'injection-on-rot',
        cite: injectionLimit,
        wouldFit: 'core dry at 12 % or less',
      },
    ),
    refusedWhen(['dry-sound', 'damp-sound'], 'it has not let go: there is no gap to fill', {
      cite: injectionLimit,
      wouldFit: 'a dry gap under the skin',
    }),
    refusedWithoutPlug('injection-needs-plug', 'no plug shows dry, sound core here'),
    ({ place: { moisturePercent } }) =>
      isKnown(moisturePercent) && moisturePercent > limits.bondMoisturePercent
        ? {
            code: 'too-wet-to-bond',
            text: `${moisturePercent} % is more than the ${limits.bondMoisturePercent} % at which resin bonds wood`,
            value: moisturePercent,
            limit: limits.bondMoisturePercent,
            unit: '%',
            cite: injectionLimit,
            wouldFit: 'drying first',
          }
        : undefined,
    refusedAboveArea({
      code: 'injection-too-large',
      limitM2: limits.injectM2,
      why: 'that injection is trusted with',
      cite: injectionLimit,
      wouldFit: 'an opening, or no more than 0.2 m2 in all',
    }),
    refusedUnderFitting,
    ({ deck: { outerSkin } }) =>
      outerSkin === 'cracked'
        ? {
            code: 'broken-skin',
            text: 'the skin is cracked: resin runs out of it and nothing presses it down',
            cite: inPrint,
            wouldFit: 'a whole skin',
          }
        : undefined,
    refusedUnderOverlay,
  ],
  conditions: [
    ({ place: { badAreaM2 } }) =>
      badAreaM2 > limits.injectComfortableM2
        ? {
            code: 'watch-the-area',
            text: `${m2Words(badAreaM2)} is over the square foot that nobody argues about`,
            value: badAreaM2,
            limit: limits.injectComfortableM2,
            unit: 'm2',
            cite: injectionLimit,
          }
        : undefined,
  ],
  suits: ({ place }) => ({
    code: 'small-and-dry',
    text: `${m2Words(place.badAreaM2)} of dry gap, below the ${limits.injectM2} m2 that injection is trusted with`,
    value: place.badAreaM2,
    limit: limits.injectM2,
    unit: 'm2',
    cite: injectionLimit,
  }),
  rank: () => 40,
  leavesUndone: () => [
    'What resin did not reach stays hollow: any hollow over 50 mm gets a new hole.',
    'Wet or dark core out of any hole ends the injection.',
  ],
  stages: [
    'drill the grid',
    'look at what each hole brings up',
    'inject from the low side',
    'press to contact',
    'sound next day',
    'fill the holes',
  ],
  operations: [
    'inspect-map',
    'protect-spot',
    'drill-injection',
    'check-drillings',
    'inject',
    'check-injection',
    'close-injection-holes',
    'clean-up-spot',
  ],
  cautions: [],
  drawings: ['plan', 'hole-section'],
});
