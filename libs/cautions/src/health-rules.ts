import type { Hardener } from '#lib/catalogue';
import { isKnown } from '#lib/kernel';
import type { CautionContext, CautionRule } from './caution-context.js';

/** Paints of decks built up to this year are taken to hold lead until tested. Source: [FROM-MEMORY]. */
const LEAD_UNTIL = 1990;

const hardenerOf = ({ resin, hardener }: CautionContext): Hardener | undefined =>
  resin?.hardeners.find(({ code }) => code === hardener);
const isEpoxy = ({ resin }: CautionContext): boolean => resin?.chemistry === 'epoxy';
const isStyrenated = ({ resin }: CautionContext): boolean =>
  resin !== undefined && resin.chemistry !== 'epoxy';
const gelcoats = ({ coatings }: CautionContext) => coatings.filter(({ coating }) => coating === 'gelcoat');
/** Resin and gelcoat that cure by styrene, started with ketone peroxide. */
const styrenated = (context: CautionContext) => [
  ...(context.resin !== undefined && isStyrenated(context) ? [context.resin] : []),
  ...gelcoats(context),
];
const startedWithPeroxide = (
  context: CautionContext,
  said: (names: string) => string,
): string | undefined => {
  const materials = styrenated(context);
  return materials.length === 0 ? undefined : said(materials.map(({ name }) => name).join(' and '));
};
/** Of ketone peroxide in its usual solution. Source: [FROM-MEMORY]. */
const peroxideHazards = ['H242', 'H302', 'H314', 'H332'];
const isocyanates = ({ coatings }: CautionContext) => coatings.filter(({ isIsocyanate }) => isIsocyanate);
const isPaintOld = ({ yearBuilt }: CautionContext): boolean => !isKnown(yearBuilt) || yearBuilt <= LEAD_UNTIL;
const age = ({ yearBuilt }: CautionContext): string =>
  isKnown(yearBuilt) ? `built in ${yearBuilt}` : 'the year of building is not stated';
const powders = ({ fillers }: CautionContext) =>
  fillers.filter(({ bulkDensityGPerCm3 }) => bulkDensityGPerCm3.value < 0.3);

export const healthRules: readonly CautionRule[] = [
  {
    code: 'isocyanate-spray',
    severity: 'danger',
    kind: 'health',
    harm: 98,
    source: 'HSE-ISOCYANATE',
    decides: 'an occupational hygienist, and the local rules for spraying isocyanates',
    when: (context) =>
      context.application === 'spray-elsewhere'
        ? named('sprayed outside a booth', isocyanates(context))
        : undefined,
    text: 'Do not spray two-part isocyanate paint outside a booth: one exposure can start an asthma that lasts for life, and no filter mask protects against it. Take it off the plan, or move the work into a booth.',
    protection: ['air-fed breathing apparatus', 'booth with extraction', 'health surveillance'],
    hazards: (context) => isocyanates(context).flatMap(({ hazards = [] }) => hazards),
  },
  {
    code: 'isocyanate',
    severity: 'danger',
    kind: 'health',
    harm: 90,
    source: 'HSE-ISOCYANATE',
    decides:
      "the maker's safety data sheet and the local rules; brush and roller work needs an assessment of its own",
    when: (context) =>
      context.application === 'spray-elsewhere'
        ? undefined
        : named('on the list of coatings', isocyanates(context)),
    text: 'Two-part polyurethane hardener holds isocyanates. Never spray it outside a booth with air-fed breathing apparatus; roll and brush in moving air, keep others away, nobody with asthma takes part. Sanding before full cure frees it again.',
    protection: ['nitrile gloves', 'goggles', 'coverall', 'air-fed breathing apparatus where it is sprayed'],
    hazards: (context) => isocyanates(context).flatMap(({ hazards = [] }) => hazards),
  },
  {
    code: 'peroxide',
    severity: 'danger',
    kind: 'health',
    harm: 86,
    source: 'GHS',
    decides: "the maker's safety data sheet",
    when: (context) => startedWithPeroxide(context, (names) => `${names}, started with ketone peroxide`),
    text: 'Ketone peroxide blinds: goggles on before the bottle is opened, water for the eyes within reach. Never bring it together with accelerator, metal dust or rags; keep it cool and apart. Rags and left-over gelcoat or resin heat and catch fire in a bin: out in the open, wet, until they are cold.',
    protection: ['goggles', 'gloves', 'eye wash within reach'],
    hazards: (context) => (isStyrenated(context) ? (hardenerOf(context)?.hazards ?? []) : peroxideHazards),
  },
  {
    code: 'styrene',
    severity: 'danger',
    kind: 'health',
    harm: 80,
    source: 'NIOSH-POCKET-GUIDE',
    decides: 'local exposure limits',
    when: (context) =>
      startedWithPeroxide(
        context,
        (names) =>
          `${names}${context.flags.access === 'from-below' || context.flags.shelter !== 'open' ? ', in an enclosed place' : ''}${context.application === 'brush-and-roller' || gelcoats(context).length === 0 ? '' : ', sprayed'}`,
      ),
    text: 'Styrene vapour is heavy, stuns and burns. One body recommends at most 50 ppm over a day and 100 for a short time: blow fresh air in low and draw foul air out, watch each other below deck, nothing that sparks.',
    protection: ['organic-vapour filters or supplied air', 'forced ventilation', 'gloves'],
    hazards: (context) => styrenated(context).flatMap(({ hazards = [] }) => hazards),
  },
  {
    code: 'lead-paint',
    severity: 'danger',
    kind: 'health',
    harm: 78,
    source: 'OSHA-LEAD',
    decides: 'a laboratory on the paint, and the local rules for lead',
    when: (context) =>
      isPaintOld(context) && context.surface !== 'moulded-nonskid'
        ? `${age(context)}, and old deck paint is ground or sanded`
        : undefined,
    text: 'Assume lead in the old deck paint until a test says otherwise: no dry sanding, scraping into the wind or burning off; extraction at the tool, washing before eating, no children near, dust kept off the ground and the water.',
    protection: ['P3 filter', 'extraction at the tool', 'coverall that stays on site'],
  },
  {
    code: 'asbestos-mat',
    severity: 'danger',
    kind: 'health',
    harm: 79,
    source: 'FROM-MEMORY',
    decides: 'a laboratory, and a licensed remover if it is found',
    when: (context) =>
      context.surface === 'bonded-mat' && isPaintOld(context)
        ? `a bonded deck mat on a boat ${isKnown(context.yearBuilt) ? `of ${context.yearBuilt}` : 'of unknown age'}`
        : undefined,
    text: 'Old bonded deck mats and their glue may hold asbestos: have a piece tested before anything is torn, ground or sanded.',
    protection: ['leave it alone until tested'],
  },
  {
    code: 'amine-hardener',
    severity: 'warning',
    kind: 'health',
    harm: 76,
    source: 'SDS-EPOXY',
    decides: "the maker's safety data sheet",
    when: (context) =>
      isEpoxy(context) ? `${hardenerOf(context)?.name ?? 'amine hardener'} is poured and mixed` : undefined,
    text: 'Epoxy hardener burns skin and eyes. Goggles while pouring and mixing; wash skin with soap and water, never with solvent.',
    protection: ['goggles', 'nitrile or butyl gloves', 'coverall'],
    hazards: (context) => hardenerOf(context)?.hazards ?? [],
  },
  {
    code: 'epoxy-sensitisation',
    severity: 'warning',
    kind: 'health',
    harm: 74,
    source: 'HSE-GLOVES',
    decides: 'a doctor, once a rash has shown',
    when: (context) =>
      isEpoxy(context)
        ? `${context.resin?.name} is used ${context.flags.access === 'from-below' ? 'overhead' : 'by hand'}`
        : undefined,
    text: 'Uncured epoxy makes people allergic for life, often after months without trouble; half-cured dust does too. Butyl gloves for water-based, nitrile for solvent-based systems, changed as soon as they are wet inside; do not sand before it is through.',
    protection: ['nitrile or butyl gloves', 'long sleeves', 'P3 filter when sanding'],
    hazards: ({ resin }) => resin?.hazards ?? [],
  },
  {
    code: 'glass-dust',
    severity: 'warning',
    kind: 'health',
    harm: 70,
    source: 'OSHA-LIMITS',
    decides: 'local exposure limits for fibrous glass and wood dust',
    when: ({ openedAreaM2 }) =>
      openedAreaM2 > 0 ? `${openedAreaM2.toFixed(2)} m2 of glass skin is cut, ground and tapered` : undefined,
    text: 'Glass, core and filler dust: extraction at the tool, a P3 filter that fits the face, goggles, sleeves taped; vacuum, never blow down.',
    protection: ['P3 filter', 'goggles', 'coverall', 'hearing protection'],
  },
  {
    code: 'light-powders',
    severity: 'caution',
    kind: 'health',
    harm: 44,
    source: 'FROM-MEMORY',
    when: (context) => named('weighed loose', powders(context)),
    text: 'Light fillers float for minutes: weigh them out of the wind with a filter on, add them to the resin and not the resin to them.',
    protection: ['P2 or P3 filter'],
    hazards: (context) => powders(context).flatMap(({ hazards = [] }) => hazards),
  },
  {
    code: 'enclosed-below',
    severity: 'danger',
    kind: 'health',
    harm: 82,
    source: 'COMMON-PRACTICE',
    decides: 'a competent person, where the local rules call it a confined space',
    when: ({ flags }) =>
      flags.access === 'from-below' ? 'the work is done from below, in an enclosed space' : undefined,
    text: 'Vapour and dust gather below: blow air through, a second person within call, light that cannot spark, face shield against falling resin and core.',
    protection: ['forced ventilation', 'second person', 'face shield'],
  },
];

function named(doing: string, materials: readonly { readonly name: string }[]): string | undefined {
  return materials.length === 0 ? undefined : `${materials.map(({ name }) => name).join(', ')} ${doing}`;
}
