import { isKnown } from '#lib/kernel';
import type { CautionContext, CautionRule } from './caution-context.js';

const has = (
  context: CautionContext,
  thing: 'wiring' | 'fuel-tank' | 'water-tank' | 'hoses' | 'lining' | 'insulation',
): boolean => isKnown(context.under) && context.under.includes(thing);
const highlyLoaded = ({ fittings }: CautionContext) =>
  fittings.filter(({ isHighlyLoaded }) => isHighlyLoaded);

export const siteRules: readonly CautionRule[] = [
  {
    code: 'highly-loaded-fitting',
    severity: 'danger',
    kind: 'structure',
    harm: 100,
    source: 'COMMON-PRACTICE',
    decides: 'a naval architect or qualified surveyor',
    when: (context) =>
      highlyLoaded(context).length === 0
        ? undefined
        : `${highlyLoaded(context)
            .map(({ kind, id }) =>
              id.toLowerCase().includes(kind) ? id : `${id} (${kind.replaceAll('-', ' ')})`,
            )
            .join(', ')} stands in or near the opening`,
    text: 'A mast step, chainplate, windlass or other highly loaded fitting stands here. Take the load off before the skin is cut, and have a naval architect or qualified surveyor state what is put back.',
  },
  {
    code: 'fuel-below',
    severity: 'danger',
    kind: 'fire',
    harm: 96,
    source: 'COMMON-PRACTICE',
    decides: 'a gas-free engineer or the local rule for hot work',
    when: (context) => (has(context, 'fuel-tank') ? 'a fuel tank lies under the deck' : undefined),
    text: 'Fuel under the saw: close and empty or shield the tank, prove the space free of vapour, no sparking tool until then, extinguisher and watch at hand; set the depth of cut from a measured skin.',
    protection: ['vapour test', 'extinguisher', 'depth stop'],
  },
  {
    code: 'wiring-below',
    severity: 'danger',
    kind: 'site',
    harm: 88,
    source: 'COMMON-PRACTICE',
    decides: 'a qualified electrician for anything at mains voltage',
    when: (context) => (has(context, 'wiring') ? 'wiring runs under the deck' : undefined),
    text: 'Wiring under the deck: batteries off, shore power unplugged, runs found and moved or shielded before the first cut or screw.',
    protection: ['isolate and lock off', 'depth stop'],
  },
  {
    code: 'tank-or-hose-below',
    severity: 'warning',
    kind: 'site',
    harm: 66,
    source: 'COMMON-PRACTICE',
    when: (context) =>
      has(context, 'water-tank') || has(context, 'hoses')
        ? `${has(context, 'water-tank') ? 'a water tank' : 'hoses'} under the deck`
        : undefined,
    text: 'Tanks and hoses under the deck: find them from below, mark them on the face that is cut, stop the saw and every screw short of the skin behind the core.',
    protection: ['depth stop'],
  },
  {
    code: 'under-unknown',
    severity: 'danger',
    kind: 'site',
    harm: 84,
    source: 'COMMON-PRACTICE',
    when: ({ under }) => (isKnown(under) ? undefined : 'what lies under the deck is not stated'),
    text: 'Nobody has said what lies under this deck. Wiring, tanks and hoses are found first, by opening the lining or drilling and looking, and only then is it cut.',
    protection: ['look before cutting'],
  },
  {
    code: 'prop-first',
    severity: 'danger',
    kind: 'structure',
    harm: 83,
    source: 'COMMON-PRACTICE',
    when: ({ flags, innerSkinSpanMm }) =>
      flags.props === 'needed'
        ? `the skin that stays is propped${isKnown(innerSkinSpanMm) ? `, its span is ${innerSkinSpanMm.toFixed(0)} mm` : ''}`
        : undefined,
    text: 'Prop the skin that stays before anything is cut, on boards that follow the camber; a skin alone sags under weights and people and cures so.',
  },
  {
    code: 'vacuum-unsupported',
    severity: 'danger',
    kind: 'structure',
    harm: 81,
    source: 'VACUUM-PRACTITIONERS',
    when: ({ flags, isInnerSkinAirtight }) =>
      flags.press === 'vacuum' && isInnerSkinAirtight !== true
        ? `a vacuum bag on an inner skin ${isKnown(isInnerSkinAirtight) ? 'that leaks' : 'that is not proven airtight'}`
        : undefined,
    text: 'A bag presses with tonnes on the square metre. On a skin that leaks it draws the compartment down and bends or breaks the panel: seal from below, prove by a drop test, and watch the panel while the pump runs.',
  },
  {
    code: 'exotherm',
    severity: 'danger',
    kind: 'fire',
    harm: 77,
    source: 'UDEL-EPOXY-SMOKE',
    when: ({ largestPotG, forgottenPotPeakC }) =>
      largestPotG >= 100
        ? `pots of up to ${largestPotG.toFixed(0)} g are mixed; one left alone could pass ${Math.min(forgottenPotPeakC, 200).toFixed(0)} degC`
        : undefined,
    text: 'A pot left standing cooks, smokes and can burn. Spread it or pour it into a tray at once; a hot pot goes outside on stone, into water or sand, never into a bin. Leftovers in tins of at most two litres, apart.',
    protection: ['tray', 'bucket of water or sand outside'],
  },
  {
    code: 'hardener-on-dust',
    severity: 'warning',
    kind: 'fire',
    harm: 62,
    source: 'HARDENER-SAWDUST',
    when: ({ resin, openedAreaM2 }) =>
      resin?.chemistry === 'epoxy' && openedAreaM2 > 0
        ? 'amine hardener is used beside core and wood dust'
        : undefined,
    text: 'Hardener spilt on sawdust or rags can light by itself: wipe with plain absorbent, keep it wet or outside until it is hard.',
    protection: ['metal bin with lid, outside'],
  },
  {
    code: 'solvent',
    severity: 'warning',
    kind: 'fire',
    harm: 64,
    source: 'GHS',
    when: ({ usesSolvent }) => (usesSolvent ? 'solvent is used for wiping and cleaning' : undefined),
    text: 'Solvent vapour burns and stuns: small closed tins, no heater or brush motor near, rags spread out to dry outside.',
    protection: ['nitrile gloves', 'ventilation', 'no ignition'],
    hazards: () => ['H225', 'H319', 'H336', 'EUH066'],
  },
  {
    code: 'heater-in-tent',
    severity: 'warning',
    kind: 'fire',
    harm: 63,
    source: 'AMPP-41205-190',
    when: ({ flags, temperatureC }) =>
      flags.shelter === 'tent' && temperatureC < 15
        ? `a tent at ${temperatureC.toFixed(0)} degC will be heated`
        : undefined,
    text: 'Heat a tent with electric or vented heat: a gas flame adds water and carbon dioxide, which blush the resin, and it lights vapour.',
    protection: ['vented or electric heat', 'carbon monoxide alarm'],
  },
  {
    code: 'afloat-tools',
    severity: 'danger',
    kind: 'site',
    harm: 85,
    source: 'COMMON-PRACTICE',
    decides: "the marina's rules",
    when: ({ flags }) => (flags.berth === 'afloat' ? 'the boat is afloat' : undefined),
    text: 'Mains tools over water: residual-current device, leads off the deck edge, nobody alone; dust, resin and wash water stay out of the water.',
    protection: ['residual-current device', 'second person'],
  },
  {
    code: 'height-ashore',
    severity: 'warning',
    kind: 'site',
    harm: 68,
    source: 'COMMON-PRACTICE',
    decides: 'the local rules for work at height',
    when: ({ flags }) =>
      flags.berth === 'ashore'
        ? 'the deck stands ashore, above a hard floor, with rails and stanchions off'
        : undefined,
    text: 'A deck ashore is a roof: staging with rails before the lifelines come off, no cuts walked backwards, openings boarded over.',
    protection: ['staging with guard rails'],
  },
  {
    code: 'heavy-weights',
    severity: 'caution',
    kind: 'site',
    harm: 40,
    source: 'COMMON-PRACTICE',
    when: ({ flags, weightsKg }) =>
      flags.press === 'weights' && weightsKg > 60
        ? `${weightsKg.toFixed(0)} kg of weights are carried up`
        : undefined,
    text: 'Weights in bags that one person lifts, counted and on deck before the first pot is mixed.',
  },
  {
    code: 'neighbours',
    severity: 'caution',
    kind: 'site',
    harm: 38,
    source: 'COMMON-PRACTICE',
    decides: "the yard's rules",
    when: ({ flags }) =>
      flags.shelter === 'shed'
        ? undefined
        : `work ${flags.shelter === 'tent' ? 'in a tent' : 'in the open'} beside other boats`,
    text: 'Dust and chips settle on the next boat: contain, vacuum as you go, clear up each day, ask the yard what it allows.',
  },
  {
    code: 'local-rules',
    severity: 'caution',
    kind: 'site',
    harm: 10,
    source: 'COMMON-PRACTICE',
    decides: 'the authority for waste and work, and licensed or qualified people',
    when: ({ resin, coatings }) =>
      resin === undefined && coatings.length === 0
        ? undefined
        : 'resins, hardeners or coatings are used, stored and thrown away',
    text: "Local rules on chemicals, dust, spraying, hot work and waste come before anything said here, and so does the maker's safety data sheet.",
  },
];
