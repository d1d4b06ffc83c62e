import { loadInWords, type PanelCheck, type StateResult } from '#lib/panel';
import type { InnerSkinCheck } from '#lib/press';
import type { Check, PanelSection } from '../document/estimate-document.js';
import type { Figure } from '#lib/provenance';

/** A failed check of the finished repair that cannot be laid at the deck's own door. */
export const failsByRepair = ({ verdict, state, asBuilt }: Check): boolean =>
  verdict === 'fails' &&
  (state === undefined || state === 'repaired') &&
  !(asBuilt?.verdict === 'fails' && asBuilt.isNoWorse);

/** The skin that alone is left while the core is out: of a deck cut from below the upper, by the press that lifts it. */
export interface OpenDeck {
  readonly above?: InnerSkinCheck;
}

/** Where the inner skin is what comes off, nothing that was worked out of it alone stands for this deck. */
const statesOf = ({ states }: PanelCheck, { above }: OpenDeck): PanelCheck['states'] =>
  above === undefined ? states : states.filter(({ state }) => state !== 'opened');

/** Four states side by side, short enough to read. */
export const panelSection = (
  check: PanelCheck,
  sizeMm: readonly [number, number],
  open: OpenDeck = {},
): PanelSection => ({
  verdict: check.verdict,
  shortfalls: check.shortfalls,
  withinHands: check.withinHands,
  sizeMm,
  loads: check.loads.map(({ code, title, pressureKPa }) => ({
    code,
    name: title,
    value: pressureKPa,
    unit: 'kPa',
  })),
  states: statesOf(check, open).map((state) => stateSection(state, sizeMm)),
  ratios: check.ratios.map(({ code, title, load, ratio }) => ({
    code: load === undefined ? code : `${code}-${load}`,
    name: load === undefined ? title : `${title}, ${loadInWords(load)}`,
    value: ratio,
    unit: '1',
  })),
  limits: check.limits,
});

/** Beyond this share of the short span a plate hangs like a sheet, and linear theory stands for nothing. */
const MOST_SAG_SHARE = 0.05;

const isSlack = ({ responses }: StateResult, sizeMm: readonly [number, number]): boolean =>
  responses.some(({ deflectionMm }) => deflectionMm > MOST_SAG_SHARE * Math.min(...sizeMm));

function stateSection(
  result: StateResult,
  sizeMm: readonly [number, number],
): PanelSection['states'][number] {
  const { state, section, responses, governing } = result;
  const stiffness = {
    state,
    bendingXNmm: section.bendingXNmm,
    bendingYNmm: section.bendingYNmm,
    shearNPerMm: section.shearNPerMm,
  };
  if (isSlack(result, sizeMm)) {
    return {
      ...stiffness,
      deflections: [],
      note: 'too slack for these loads by linear theory: nobody stands on it, and it is propped; see the check of the inner skin alone',
    };
  }
  return {
    ...stiffness,
    deflections: responses.map(({ load, deflectionMm }) => ({ load, deflectionMm })),
    ...(governing === undefined
      ? {}
      : {
          governs:
            governing.load === undefined
              ? governing.code.replaceAll('-', ' ')
              : `${governing.code.replaceAll('-', ' ')}, ${loadInWords(governing.load)}`,
          utilisation: governing.utilisation,
        }),
  };
}

/** Two loads put the same question; a reader must see which one an answer belongs to. */
const titleUnder = ({ title, load }: PanelCheck['states'][number]['checks'][number]): string =>
  load === undefined || title.includes(load) ? title : `${title}, ${loadInWords(load)}`;

/** The repaired panel in full; of the other states what governs, so that a reader sees what the repair is measured by. */
export function panelChecks(
  check: PanelCheck,
  sizeMm: readonly [number, number],
  open: OpenDeck = {},
): { readonly checks: readonly Check[]; readonly derivations: Readonly<Record<string, Figure>> } {
  const shown = statesOf(check, open)
    .filter((state) => !isSlack(state, sizeMm))
    .flatMap((state) => (state.state === 'repaired' ? state.checks : governingOf(state)));
  const items = [...shown, ...check.fittings];
  const checks = items.map((item): Check => ({
    code: codeOf(item),
    title: titleUnder(item),
    unit: item.unit,
    verdict: item.verdict,
    governs: item.governs,
    source: item.source,
    ...(item.state === undefined ? {} : { state: item.state }),
    ...(item.demand === undefined ? {} : { demand: item.demand }),
    ...(item.capacity === undefined ? {} : { capacity: item.capacity }),
    ...(item.utilisation === undefined ? {} : { utilisation: item.utilisation }),
    ...(item.remedy === undefined ? {} : { remedy: item.remedy }),
    ...(item.reason === undefined ? {} : { reason: item.reason }),
    ...(item.asBuilt === undefined ? {} : { asBuilt: item.asBuilt }),
  }));
  const derivations = Object.fromEntries(
    items.flatMap((item) => (item.why === undefined ? [] : [[`check:${codeOf(item)}`, item.why] as const])),
  );
  const alone = open.above === undefined ? openSkinCheck(check.opened) : skinAboveCheck(open.above);
  return { checks: [...checks, alone], derivations };
}

/** Sag of the inner skin that the new core would keep for ever, from memory. */
const ALLOWED_SAG_MM = 1;

/** The deck while it is open: only the other skin is left, and the press lies on it. */
const openSkinCheck = ({ clampSagMm, propsNeeded, propSpacingMm, advice }: PanelCheck['opened']): Check => ({
  code: 'open-skin-sag',
  title: 'Inner skin alone under the press',
  state: 'opened',
  demand: clampSagMm,
  capacity: ALLOWED_SAG_MM,
  unit: 'mm',
  utilisation: clampSagMm / ALLOWED_SAG_MM,
  verdict: propsNeeded ? 'fails' : 'passes',
  governs: advice[0] ?? 'sag under the clamp load',
  source: 'TIMOSHENKO-PLATES-1959',
  ...(propsNeeded
    ? { remedy: `prop it at ${Math.round(propSpacingMm)} mm in both directions before the deck is opened` }
    : {}),
});

/** Of a deck opened from below the outer skin is left, and jacks lift it. */
const skinAboveCheck = ({ sagMm, allowedSagMm, verdict, props }: InnerSkinCheck): Check => ({
  code: 'open-skin-lift',
  title: 'Outer skin alone, lifted by the press from below',
  state: 'opened',
  demand: sagMm,
  capacity: allowedSagMm,
  unit: 'mm',
  utilisation: sagMm / allowedSagMm,
  verdict,
  governs: props.why,
  source: 'METHODS-FROM-BELOW',
});

const governingOf = ({ checks, governing }: StateResult): StateResult['checks'] =>
  checks.filter(({ code, load }) => code === governing?.code && load === governing.load);

const codeOf = ({ code, state, load, fitting }: StateResult['checks'][number]): string =>
  ['panel', code, state, load, fitting].filter((part) => part !== undefined).join('-');
