import { refusal, success, type Outcome, type Problem } from '#lib/kernel';
import { computeChecked } from '#lib/provenance';
import { choiceFaults, numberFaults, optionalChoiceFaults, optionalFaults } from '#lib/asking';
import { enteredIn } from '#lib/asking';
import type {
  BondPressurePlan,
  BondPressureRequest,
  InnerSkinCheck,
  PressMethod,
  PressOption,
  PressSettings,
} from './bond-request.js';
import { pressMethods } from './bond-request.js';
import { propSpacing, skinSag, skinStress } from './inner-skin.js';
import { battensOption, vacuumOption, weightsOption } from './press-options.js';
import { settingsFor } from './press-settings.js';

/** What presses the bed, what that rests on, and whether the inner skin bears it; a recommendation with reasons, refusals with reasons. */
export function planBondPressure(request: BondPressureRequest): Outcome<BondPressurePlan> {
  const problems = bondFaults(request);
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

interface PropCase {
  readonly spacingMm: number | undefined;
  readonly sagMm: number;
  readonly spanMm: number;
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly limitMm: number;
}

/** Spans above about this are propped whatever the numbers say. Source: [FROM-MEMORY]. */
const PROP_ABOVE_MM = 400;

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
  const across = Math.max(0, Math.ceil(spanMm / spacing) - 1);
  const along = Math.max(1, Math.ceil(Math.max(lengthMm, widthMm) / PROP_ABOVE_MM));
  const sag = sagMm > 25 ? 'more than 25' : sagMm.toFixed(1);
  return {
    needed: true,
    spacingMm: spacing,
    lines: Math.max(1, across),
    count: Math.max(1, across) * along,
    why:
      spacingMm === undefined
        ? `a span of ${spanMm.toFixed(0)} mm is propped as a rule`
        : `alone the skin would sag ${sag} mm between supports ${spanMm.toFixed(0)} mm apart and cure so; ${limitMm.toFixed(1)} mm is allowed. Prop a board, shaped to the camber, before anything is cut`,
  };
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

function bondFaults(request: BondPressureRequest): readonly Problem[] {
  const { innerSkin, camber, weights } = request;
  return [
    ...numberFaults('/areaM2', request.areaM2, { above: 0, upTo: 100, unit: 'm2' }),
    ...numberFaults('/lengthMm', request.lengthMm, { above: 0, upTo: 20000, unit: 'mm' }),
    ...numberFaults('/widthMm', request.widthMm, { above: 0, upTo: 20000, unit: 'mm' }),
    ...optionalFaults('/perimeterM', request.perimeterM, { above: 0, upTo: 200, unit: 'm' }),
    ...optionalChoiceFaults('/prefer', request.prefer, pressMethods),
    ...optionalFaults('/requiredKPa', request.requiredKPa, { above: 0, upTo: 100, unit: 'kPa' }),
    ...(camber === undefined ? [] : camberFaults(camber)),
    ...numberFaults('/innerSkin/thicknessMm', innerSkin?.thicknessMm, { from: 0.3, upTo: 30, unit: 'mm' }),
    ...numberFaults('/innerSkin/spanMm', innerSkin?.spanMm, { above: 0, upTo: 5000, unit: 'mm' }),
    ...optionalFaults('/innerSkin/modulusMPa', innerSkin?.modulusMPa, {
      from: 1000,
      upTo: 100000,
      unit: 'MPa',
    }),
    ...optionalFaults('/innerSkin/strengthMPa', innerSkin?.strengthMPa, { from: 5, upTo: 2000, unit: 'MPa' }),
    ...optionalFaults('/deadLoadKgPerM2', request.deadLoadKgPerM2, { from: 0, upTo: 200, unit: 'kg/m2' }),
    ...optionalFaults('/slopeDeg', request.slopeDeg, { from: 0, upTo: 60, unit: 'degrees' }),
    ...optionalFaults('/altitudeM', request.altitudeM, { from: -500, upTo: 5000, unit: 'm' }),
    ...optionalFaults('/weights/availableKg', weights?.availableKg, { above: 0, upTo: 20000, unit: 'kg' }),
    ...optionalFaults('/weights/bagKg', weights?.bagKg, { above: 0, upTo: 50, unit: 'kg' }),
    ...battenFaults(request.battens),
    ...vacuumFaults(request.vacuum),
  ];
}

const camberFaults = (camber: NonNullable<BondPressureRequest['camber']>): readonly Problem[] => [
  ...numberFaults('/camber/radiusMm', camber.radiusMm, { from: 100, upTo: 1000000, unit: 'mm' }),
  ...numberFaults('/camber/pieceLengthMm', camber.pieceLengthMm, { from: 10, upTo: 5000, unit: 'mm' }),
  ...numberFaults('/camber/thicknessMm', camber.thicknessMm, { above: 0, upTo: 100, unit: 'mm' }),
  ...numberFaults('/camber/modulusMPa', camber.modulusMPa, { above: 0, upTo: 20000, unit: 'MPa' }),
];

const battenFaults = (battens: BondPressureRequest['battens']): readonly Problem[] =>
  battens === undefined
    ? []
    : [
        ...choiceFaults('/battens/deckAround', battens.deckAround, ['wood', 'laminate-only', 'none']),
        ...optionalFaults('/battens/woodSpecificGravity', battens.woodSpecificGravity, {
          above: 0.1,
          upTo: 1.2,
          unit: '',
        }),
        ...optionalFaults('/battens/widthMm', battens.widthMm, { from: 10, upTo: 500, unit: 'mm' }),
        ...optionalFaults('/battens/heightMm', battens.heightMm, { from: 5, upTo: 200, unit: 'mm' }),
        ...optionalFaults('/battens/modulusMPa', battens.modulusMPa, {
          from: 500,
          upTo: 210000,
          unit: 'MPa',
        }),
        ...optionalFaults('/battens/spacingMm', battens.spacingMm, { from: 10, upTo: 1000, unit: 'mm' }),
        ...optionalFaults('/battens/screwSpacingMm', battens.screwSpacingMm, {
          from: 20,
          upTo: 2000,
          unit: 'mm',
        }),
        ...optionalFaults('/battens/screwDiameterMm', battens.screwDiameterMm, {
          above: 1,
          upTo: 12,
          unit: 'mm',
        }),
        ...optionalFaults('/battens/threadMm', battens.threadMm, { above: 0, upTo: 150, unit: 'mm' }),
      ];

const vacuumFaults = (vacuum: BondPressureRequest['vacuum']): readonly Problem[] =>
  vacuum === undefined
    ? []
    : [
        ...optionalFaults('/vacuum/fraction', vacuum.fraction, { above: 0, upTo: 0.98, unit: '' }),
        ...optionalFaults('/vacuum/pumpLPerMin', vacuum.pumpLPerMin, {
          above: 0,
          upTo: 10000,
          unit: 'l/min',
        }),
        ...optionalFaults('/vacuum/bagVolumeL', vacuum.bagVolumeL, { above: 0, upTo: 10000, unit: 'l' }),
        ...optionalFaults('/vacuum/dropKPa', vacuum.dropKPa, { from: 0, upTo: 100, unit: 'kPa' }),
        ...optionalFaults('/vacuum/dropMinutes', vacuum.dropMinutes, { above: 0, upTo: 600, unit: 'min' }),
      ];
