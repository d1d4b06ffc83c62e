import { refusal, success, type Outcome } from '#lib/kernel';
import { computeChecked } from '#lib/provenance';
import { enteredIn, faultsIn } from '#lib/asking';
import type {
  BondPressurePlan,
  BondPressureRequest,
  InnerSkinCheck,
  PressMethod,
  PressOption,
  PressSettings,
} from './bond-request.js';
import { bondPressureQuestions } from './bond-request.js';
import { propSpacing, skinSag, skinStress } from './inner-skin.js';
import { boardLines, PROP_ABOVE_MM, type PressLine, type Support } from './press-lines.js';
import { battensOption, vacuumOption, weightsOption } from './press-options.js';
import { settingsFor } from './press-settings.js';

/** What presses the bed, what that rests on, and whether the inner skin bears it; a recommendation with reasons, refusals with reasons. */
export function planBondPressure(request: BondPressureRequest): Outcome<BondPressurePlan> {
  const problems = faultsIn(request, bondPressureQuestions);
  return problems.length > 0 ? refusal(...problems) : success(planFor(request, settingsFor(request)));
}

function planFor(request: BondPressureRequest, settings: PressSettings): BondPressurePlan {
  const options = [
    weightsOption(request, settings),
    battensOption(request, settings),
    vacuumOption(request, settings),
  ];
  const checks = new Map(options.map((option) => [option.method, skinCheck(request, settings, option)]));
  const judged = options.map((option) => withProps(request, option, checks.get(option.method)));
  const chosen = chosenOption(request, judged);
  const shown = chosen ?? judged.find(({ method }) => method === (request.prefer ?? 'weights')) ?? judged[0];
  const innerSkin = checks.get(shown.method) ?? skinCheck(request, settings, shown);
  return {
    method: chosen?.method,
    requiredKPa: settings.requiredKPa,
    ...(shown.availableKPa === undefined ? {} : { availableKPa: shown.availableKPa }),
    restsOn: shown.restsOn,
    turns: shown.turns ?? 1,
    innerSkin,
    options: judged,
    quantities: chosen === undefined ? [] : [...chosen.quantities, ...propQuantities(innerSkin)],
    lines: chosen === undefined ? [] : [...(chosen.lines ?? []), ...boardsUnder(request, innerSkin)],
    ...(chosen?.onPieceKgPerM2 === undefined ? {} : { onPieceKgPerM2: chosen.onPieceKgPerM2 }),
    recommendation: recommendationOf(request, judged, chosen),
    refusals: judged.flatMap(({ method, refusals }) =>
      refusals.map((why) => (why.startsWith(`${method}: `) ? why : `${method}: ${why}`)),
    ),
    ambientKPa: settings.ambientKPa,
    assumptions: settings.assumptions.filter(({ at }) => !isOfAnother(at, shown.method)),
  };
}

/** A reader asks how the press that is taken was worked out, not how the others were. */
const isOfAnother = (at: string, taken: PressMethod): boolean =>
  (['battens', 'vacuum'] as const).some((method) => method !== taken && at.startsWith(`/${method}/`));

/** A press that needs props under the skin is no press where none can be set. */
function withProps(
  { canPropFromBelow }: BondPressureRequest,
  option: PressOption,
  check: InnerSkinCheck | undefined,
): PressOption {
  if (check?.props.needed !== true || canPropFromBelow !== false) return option;
  return {
    ...option,
    verdict: 'fails',
    refusals: [
      ...option.refusals,
      `${option.method}: the inner skin needs props under ${option.onInnerSkinKPa.toFixed(1)} kPa and none can be set from below`,
    ],
  };
}

const orderOfChoice: readonly PressMethod[] = ['weights', 'vacuum', 'battens'];

function chosenOption(
  { prefer }: BondPressureRequest,
  options: readonly PressOption[],
): PressOption | undefined {
  const passing = options.filter(({ verdict }) => verdict === 'passes');
  return (
    passing.find(({ method }) => method === prefer) ??
    orderOfChoice.flatMap((wanted) => passing.filter(({ method }) => method === wanted))[0]
  );
}

function recommendationOf(
  { prefer }: BondPressureRequest,
  options: readonly PressOption[],
  chosen: PressOption | undefined,
): string {
  if (chosen === undefined)
    return 'None of the three ways can be recommended as described; the refusals say what would have to change.';
  const wished = options.find(({ method }) => method === prefer);
  const instead =
    wished !== undefined && wished.method !== chosen.method
      ? `, not ${wished.method} (${wished.refusals[0] ?? 'not established'})`
      : '';
  return `Press with ${chosen.method}${instead}: ${chosen.reasons.join('; ')}. It rests on ${chosen.restsOn}.`;
}

/** Sag that a deck may keep for ever if it cures so: a two-hundredth of the span, at most 2 mm. From memory. */
const allowedSag = (spanMm: number): number => Math.min(2, spanMm / 200);
/** Share of its strength to which a skin alone is loaded while it stands open. From memory. */
const STRESS_SHARE = 1 / 3;

function skinCheck(
  { innerSkin, lengthMm, widthMm }: BondPressureRequest,
  settings: PressSettings,
  { onInnerSkinKPa: loadKPa, skinSpanMm: spanMm = innerSkin.spanMm }: PressOption,
): InnerSkinCheck {
  const { thicknessMm } = innerSkin;
  const load = enteredIn('kPa', loadKPa, 'load on the skin', '/innerSkin');
  const span = enteredIn('mm', spanMm, 'span', '/innerSkin/spanMm');
  const thickness = enteredIn('mm', thicknessMm, 'thickness', '/innerSkin/thicknessMm');
  const modulus = enteredIn('MPa', settings.skinModulusMPa, 'modulus', '/innerSkin/modulusMPa');
  const sagMm = computeChecked(skinSag, {
    pressureKPa: load,
    spanMm: span,
    thicknessMm: thickness,
    modulusMPa: modulus,
  }).value;
  const stressMPa = computeChecked(skinStress, {
    pressureKPa: load,
    spanMm: span,
    thicknessMm: thickness,
  }).value;
  const limits = { sagMm: allowedSag(spanMm), stressMPa: settings.skinStrengthMPa * STRESS_SHARE };
  const isFit = sagMm <= limits.sagMm && stressMPa <= limits.stressMPa;
  const spacingMm = isFit
    ? undefined
    : computeChecked(propSpacing, {
        pressureKPa: load,
        sagMm: enteredIn('mm', limits.sagMm, 'sag', '/innerSkin'),
        thicknessMm: thickness,
        modulusMPa: modulus,
      }).value;
  return {
    loadKPa,
    sagMm,
    allowedSagMm: limits.sagMm,
    stressMPa,
    allowedStressMPa: limits.stressMPa,
    verdict: isFit ? 'passes' : 'fails',
    props: propsFor({ spacingMm, sagMm, spanMm, lengthMm, widthMm, limitMm: limits.sagMm }),
  };
}

const boardsUnder = (
  { innerSkin, lengthMm, widthMm }: BondPressureRequest,
  { props }: InnerSkinCheck,
): readonly PressLine[] =>
  props.spacingMm === undefined
    ? []
    : boardsFor({ lengthMm, widthMm, spanMm: innerSkin.spanMm }, props.spacingMm);

interface PropCase {
  readonly spacingMm: number | undefined;
  readonly sagMm: number;
  readonly spanMm: number;
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly limitMm: number;
}

function propsFor({
  spacingMm,
  sagMm,
  spanMm,
  lengthMm,
  widthMm,
  limitMm,
}: PropCase): InnerSkinCheck['props'] {
  if (spacingMm === undefined && spanMm <= PROP_ABOVE_MM)
    return {
      needed: false,
      why: `the skin sags ${sagMm.toFixed(1)} mm between supports ${spanMm.toFixed(0)} mm apart; ${limitMm.toFixed(1)} mm is allowed`,
    };
  const spacing = Math.max(100, Math.floor(Math.min(spacingMm ?? PROP_ABOVE_MM, PROP_ABOVE_MM) / 10) * 10);
  const boards = boardsFor({ lengthMm, widthMm, spanMm }, spacing);
  const sag = sagMm > 25 ? 'more than 25' : sagMm.toFixed(1);
  return {
    needed: true,
    spacingMm: spacing,
    spanMm,
    lines: boards.length,
    count: boards.reduce((sum, { points }) => sum + points.length, 0),
    why:
      spacingMm === undefined
        ? `a span of ${spanMm.toFixed(0)} mm is propped as a rule`
        : `alone the skin would sag ${sag} mm between supports ${spanMm.toFixed(0)} mm apart and cure so; ${limitMm.toFixed(1)} mm is allowed. Prop a board, shaped to the camber, before anything is cut`,
  };
}

/** Bay beside bay across the opening, where nothing says more about what is below it. */
function boardsFor(
  { lengthMm, widthMm, spanMm }: Pick<PropCase, 'lengthMm' | 'widthMm' | 'spanMm'>,
  spacingMm: number,
): readonly PressLine[] {
  const bays = Math.floor(Math.min(lengthMm, widthMm) / spanMm);
  const isAhead = lengthMm >= widthMm;
  const supports = Array.from({ length: bays }, (_, index): Support => {
    const across = (index + 1) * spanMm;
    return isAhead
      ? { from: [0, across], to: [lengthMm, across] }
      : { from: [across, 0], to: [across, widthMm] };
  });
  return boardLines({
    bounds: { minX: 0, minY: 0, maxX: lengthMm, maxY: widthMm },
    supports,
    spanMm: Math.min(spanMm, lengthMm, widthMm),
    spacingMm,
  });
}

const propQuantities = ({
  props,
}: InnerSkinCheck): readonly {
  readonly code: string;
  readonly name: string;
  readonly value: number;
  readonly unit: string;
}[] =>
  props.needed
    ? [
        { code: 'props', name: 'adjustable props', value: props.count ?? 1, unit: 'each' },
        { code: 'prop-boards', name: 'boards on the props', value: props.lines ?? 1, unit: 'each' },
      ]
    : [];
