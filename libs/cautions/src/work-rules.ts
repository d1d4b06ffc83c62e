import { MOST_CORE_MOISTURE_PERCENT } from '#lib/cure';
import { isKnown } from '#lib/kernel';
import type { CautionContext, CautionRule } from './caution-context.js';

const isEpoxy = ({ resin }: CautionContext): boolean => resin?.chemistry === 'epoxy';
const findings = ({ batchFindings }: CautionContext, ...codes: readonly string[]): boolean =>
  batchFindings.some((code) => codes.includes(code));
const isOpened = ({ openedAreaM2 }: CautionContext): boolean => openedAreaM2 > 0;
const hasPrimer = ({ coatings }: CautionContext): boolean =>
  coatings.some(({ coating }) => coating === 'primer');
const onePart = ({ coatings }: CautionContext) =>
  coatings.filter(({ coating, isIsocyanate }) => coating === 'topcoat' && !isIsocyanate);

/** The trade's mistakes that a plan can see coming. */
export const workRules: readonly CautionRule[] = [
  {
    code: 'core-wet',
    severity: 'warning',
    kind: 'work',
    harm: 72,
    source: 'INJECTION-LIMITS',
    when: wetCore,
    text: `Core closed in wet rots again. Bond at ${MOST_CORE_MOISTURE_PERCENT} % or less, or within two points of the dry reading of the same deck, read twice a few days apart.`,
  },
  {
    code: 'cause-open',
    severity: 'warning',
    kind: 'work',
    harm: 65,
    source: 'COMMON-PRACTICE',
    when: ({ cause }) => (isKnown(cause) ? undefined : 'the way in of the water is not stated'),
    text: 'Where the water came in is not found yet: every fitting, window and joint within 300 mm is re-bedded, or the rot returns.',
  },
  {
    code: 'extent-uncertain',
    severity: 'warning',
    kind: 'work',
    harm: 58,
    source: 'COMMON-PRACTICE',
    when: ({ evidence }) =>
      evidence === 'mapped-with-plugs' || evidence === 'opened-and-measured'
        ? undefined
        : `the extent rests on ${evidence === 'single-symptom' ? 'one symptom' : 'hammer and meter alone'}`,
    text: 'Expect more than was found: sound 300 mm all round, take plugs on both sides of each boundary, and re-measure at the hold before anything is ordered to size.',
  },
  {
    code: 'no-plug',
    severity: 'caution',
    kind: 'work',
    harm: 50,
    source: 'COMMON-PRACTICE',
    when: ({ plugs }) => (plugs === 0 ? 'no plug was taken' : undefined),
    text: 'Decks that read wet and sounded hollow were opened and found sound: one plug in each area before it is priced as replacement.',
  },
  {
    code: 'kicked-pot',
    severity: 'warning',
    kind: 'work',
    harm: 56,
    source: 'COMMON-PRACTICE',
    when: (context) =>
      findings(context, 'pot-too-short', 'piece-too-large')
        ? 'the batch plan has a pot or a piece that outlasts the resin'
        : context.temperatureC >= 25
          ? `it is ${context.temperatureC.toFixed(0)} degC`
          : undefined,
    text: 'Pots will kick early: smaller pots, cooled resin, slower hardener, pieces dry fitted and in order, hands free before the first stir.',
  },
  {
    code: 'resin-under-pressure',
    severity: 'warning',
    kind: 'work',
    harm: 55,
    source: 'COMMON-PRACTICE',
    when: ({ injectedAreaM2 }) =>
      injectedAreaM2 > 0 ? `${injectedAreaM2.toFixed(2)} m2 is injected under a skin that stays` : undefined,
    text: 'Resin under pressure spurts out of the next hole and through any hole in the inner skin: face shield, berths sheeted below, one person at the gun and one at the vents. Drill with a stop that spares the inner skin. Stop when the skin lifts: press it back to contact, no harder, and start at the low side.',
    protection: ['face shield', 'goggles', 'nitrile or butyl gloves'],
  },
  {
    code: 'layer-heats',
    severity: 'warning',
    kind: 'work',
    harm: 54,
    source: 'COMMON-PRACTICE',
    when: (context) =>
      findings(context, 'layer-heats')
        ? 'the batch plan has a fill that can heat itself'
        : context.solidInserts > 0
          ? `solid inserts to set or build up: ${context.solidInserts}`
          : undefined,
    text: 'Thick fills and solid lay-ups overheat, foam and burn the core: about 4 to 6 mm at a go, cool between.',
  },
  {
    code: 'off-ratio',
    severity: 'caution',
    kind: 'work',
    harm: 48,
    source: 'COMMON-PRACTICE',
    when: ({ usesPumps }) => (usesPumps ? 'pumps are used' : undefined),
    text: 'One stroke of each pump, whatever the ratio on the tin: the pumps hold the ratio. Prove them on the scale before the first batch and after every new tin.',
  },
  {
    code: 'off-ratio-scale',
    severity: 'caution',
    kind: 'work',
    harm: 47,
    source: 'COMMON-PRACTICE',
    when: ({ usesPumps, resin }) =>
      !usesPumps && resin !== undefined ? `${resin.name} is weighed or measured, without pumps` : undefined,
    text: 'Off its ratio resin stays soft for ever: a scale that shows a gram, a tenth for small pots, set to nothing once, read against the running total on the card; never the lids, never by eye. What stays soft is cut out, not coated over.',
  },
  {
    code: 'air-under-core',
    severity: 'caution',
    kind: 'work',
    harm: 46,
    source: 'COMMON-PRACTICE',
    when: ({ needsBleedHoles }) => (needsBleedHoles ? 'plain, unscored core is bedded' : undefined),
    text: 'Plain core traps air: bleed holes of 3 to 5 mm every 75 to 150 mm, notched bed, resin seen at every hole; sound it before it is covered.',
  },
  {
    code: 'proud-skin',
    severity: 'warning',
    kind: 'work',
    harm: 52,
    source: 'COMMON-PRACTICE',
    when: ({ proudMm }) =>
      proudMm > 0.5 ? `the new stack stands ${proudMm.toFixed(1)} mm above the old` : undefined,
    text: 'The skin would sit proud: thinner core or bed. Pressed flush or just below is filled; proud is ground away with the strength in it.',
  },
  {
    code: 'no-taper',
    severity: 'warning',
    kind: 'structure',
    harm: 69,
    source: 'COMMON-PRACTICE',
    when: ({ taperFits }) =>
      taperFits ? undefined : 'the taper does not fit between the cut and what stands beside it',
    text: 'Without its taper the joint carries a fraction of the skin: move the cut, laminate up the face beside it, or close from the other side as well.',
  },
  {
    code: 'bolt-crush',
    severity: 'warning',
    kind: 'structure',
    harm: 67,
    source: 'COMMON-PRACTICE',
    when: ({ fittings }) => {
      const bolted = fittings.filter(({ isThroughBolted }) => isThroughBolted);
      return bolted.length > 0 ? `bolted through: ${bolted.map(({ id }) => id).join(', ')}` : undefined;
    },
    text: 'Bolts crush core and let water in: a plug or insert at every bolt, a plate below as large as fits, bedding renewed.',
  },
  {
    code: 'cold-cure',
    severity: 'warning',
    kind: 'work',
    harm: 53,
    source: 'MARINE-PREP-BOOK',
    when: ({ coldestNightC, resin, hardener }) => {
      const lowest = resin?.hardeners.find(({ code }) => code === hardener)?.lowestTemperatureC.value;
      return isKnown(coldestNightC) && lowest !== undefined && coldestNightC < lowest
        ? `nights of ${coldestNightC.toFixed(0)} degC, below the ${lowest} degC of the hardener`
        : undefined;
    },
    text: 'The cure stands still in the cold and may never be whole: heat the deck until it is sandable, take a hardener for the cold, or wait.',
  },
  {
    code: 'blush',
    severity: 'caution',
    kind: 'work',
    harm: 45,
    source: 'AMPP-41205-190',
    when: (context) =>
      isEpoxy(context) && context.flags.finish !== 'none'
        ? `epoxy is coated over${context.relativeHumidityPercent > 70 ? `, in air of ${context.relativeHumidityPercent} %` : ''}`
        : undefined,
    text: 'Cool, damp air leaves a waxy blush on epoxy: wash with water and a pad, dry, then abrade at 80 to 100 grit before anything is bonded or painted on it.',
  },
  {
    code: 'paint-too-soon',
    severity: 'caution',
    kind: 'work',
    harm: 43,
    source: 'COMMON-PRACTICE',
    when: (context) =>
      isEpoxy(context) && context.flags.finish === 'painted' ? 'paint follows epoxy' : undefined,
    text: "A two-part epoxy primer goes over epoxy the next day; paint with solvent and no such primer waits five to seven days at 21 degC, longer when it is colder. Each coat within the maker's window, or sanded.",
  },
  {
    code: 'gelcoat-on-epoxy',
    severity: 'warning',
    kind: 'work',
    harm: 51,
    source: 'MAKER-EPOXY-FINISH',
    when: (context) =>
      isEpoxy(context) && context.flags.finish === 'gelcoat-over-epoxy'
        ? `gelcoat goes over ${context.resin?.name}`
        : undefined,
    text: 'Gelcoat cures badly and holds poorly on epoxy that is not through: about two weeks at room temperature, blush washed off, 80 grit, and a palm-sized trial first, pulled at after a day. What stays soft or peels comes off, and the deck is painted over epoxy primer instead.',
  },
  {
    code: 'one-part-on-epoxy',
    severity: 'caution',
    kind: 'work',
    harm: 42,
    source: 'COMMON-PRACTICE',
    when: (context) =>
      isEpoxy(context) && onePart(context).length > 0 && !hasPrimer(context)
        ? `${onePart(context)
            .map(({ name }) => name)
            .join(', ')} straight on epoxy`
        : undefined,
    text: 'One-part paint may stay soft on fresh epoxy: an epoxy primer between.',
  },
  {
    code: 'cut-too-deep',
    severity: 'warning',
    kind: 'structure',
    harm: 61,
    source: 'COMMON-PRACTICE',
    when: (context) =>
      isOpened(context) && context.flags.access === 'from-above' ? 'the skin is cut from above' : undefined,
    text: 'Saw and grinder go through the inner skin in a moment: depth from measured holes, skin and 1 to 3 mm, no more.',
  },
  {
    code: 'open-deck',
    severity: 'warning',
    kind: 'structure',
    harm: 59,
    source: 'COMMON-PRACTICE',
    when: (context) =>
      isOpened(context) && context.flags.access === 'from-above'
        ? `${context.openedAreaM2.toFixed(2)} m2 stand open`
        : undefined,
    text: 'Nobody steps on an opened or unfilled deck: boards from sound deck to sound deck.',
  },
  {
    code: 'resin-rain',
    severity: 'caution',
    kind: 'work',
    harm: 41,
    source: 'COMMON-PRACTICE',
    when: ({ innerSkinHasHoles, flags }) =>
      flags.access === 'from-above' && (innerSkinHasHoles || flags.below === 'lined')
        ? innerSkinHasHoles
          ? 'the inner skin has holes'
          : 'a lining hangs below'
        : undefined,
    text: 'Resin runs through every hole onto lining, berths and people: tape each from below before the first pot, sheet everything, look while you pour.',
  },
  {
    code: 'nonskid-match',
    severity: 'caution',
    kind: 'work',
    harm: 30,
    source: 'COMMON-PRACTICE',
    when: ({ surface, finishExtent, flags }) =>
      flags.access === 'from-above' && surface === 'moulded-nonskid' && finishExtent !== 'whole-deck'
        ? `a ${finishExtent} in moulded nonskid`
        : undefined,
    text: 'A patch in moulded nonskid shows for ever; agree with the owner on patch, panel or whole deck before the price is agreed.',
  },
  {
    code: 'frost',
    severity: 'caution',
    kind: 'work',
    harm: 36,
    source: 'COMMON-PRACTICE',
    when: ({ coldestNightC, flags }) =>
      isKnown(coldestNightC) && coldestNightC < 0 && flags.condition !== 'dry-debonded'
        ? `frost of ${coldestNightC.toFixed(0)} degC on wet core`
        : undefined,
    text: 'Water in the core bursts the bond when it freezes: drain, cover and warm it before the frost.',
  },
];

/** What stays must be dry: one wet place is enough, and dry core that comes out says nothing of what is bonded to. */
function wetCore({ coreMoisturePercent, coreReadings, flags }: CautionContext): string | undefined {
  const { dryStays, wetStays, dryOut } = coreReadings;
  if (isKnown(coreMoisturePercent) && coreMoisturePercent > MOST_CORE_MOISTURE_PERCENT)
    return `a plug in core that stays reads ${coreMoisturePercent} %`;
  if (wetStays > 0) return `core that stays reads wet at ${wetStays} ${wetStays === 1 ? 'place' : 'places'}`;
  if (dryStays > 0 || flags.condition === 'dry-debonded') return undefined;
  return dryOut > 0
    ? 'the dry readings stated are of core that comes out; none is stated of core that stays'
    : 'the core was found wet and no dry reading is stated';
}
