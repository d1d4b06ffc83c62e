import { computeChecked } from '#lib/provenance';
import { enteredIn } from '#lib/asking';
import { leakLoad, pumpDownTime, vacuumPressure } from './atmosphere.js';
import {
  battenSag,
  battenScrewLoad,
  laminateThreadShear,
  LEAST_INTERLAMINAR_MPA,
  SAFETY_OF_A_SCREW,
  screwAllowable,
} from './battens.js';
import type { BondPressureRequest, PressOption, PressQuantity, PressSettings } from './bond-request.js';
import { weightNeeded, weightPressure } from './dead-weight.js';
import { battenLines, type PressLine } from './press-lines.js';

const quantity = (code: string, name: string, value: number, unit: string): PressQuantity => ({
  code,
  name,
  value,
  unit,
});
const rounded = (value: number, step: number): number => Math.ceil(value / step - 1e-9) * step;

/** Loose bags stay put up to about this slope. From memory. */
const STEEPEST_FOR_WEIGHTS_DEG = 12;
/** More than this a crew does not place by hand before the resin gels. From memory. */
const MOST_WEIGHT_KG = 500;
/** Bags of 20 kg on a tenth of a square metre each, two deep; a third row slides off. From memory. */
const MOST_WEIGHT_KPA = 4;

export function weightsOption(request: BondPressureRequest, settings: PressSettings): PressOption {
  const neededKg = computeChecked(weightNeeded, {
    pressureKPa: enteredIn('kPa', settings.requiredKPa, 'pressure needed', '/requiredKPa'),
    areaM2: enteredIn('m2', request.areaM2, 'area', '/areaM2'),
  }).value;
  const turns = turnsFor(neededKg);
  const atOnceKg = neededKg / turns;
  const wholeKg = rounded(atOnceKg, 1);
  const bags = Math.ceil(atOnceKg / settings.bagKg - 1e-9);
  const availableKg = Math.min(
    request.weights?.availableKg ?? bags * settings.bagKg,
    Math.max(bags, 1) * settings.bagKg,
  );
  const availableKPa = computeChecked(weightPressure, {
    massKg: enteredIn('kg', availableKg, 'weights', '/weights/availableKg'),
    areaM2: enteredIn('m2', request.areaM2 / turns, 'area', '/areaM2'),
  }).value;
  const refusals = weightRefusals(request, {
    neededKg: atOnceKg,
    availableKg,
    requiredKPa: settings.requiredKPa,
  });
  return {
    method: 'weights',
    availableKPa,
    utilisation: settings.requiredKPa / availableKPa,
    verdict: refusals.length === 0 ? 'passes' : 'fails',
    restsOn: 'the inner skin alone, which carries every kilogram to its supports',
    onInnerSkinKPa: availableKPa + settings.deadLoadKPa,
    ...(turns === 1 ? {} : { turns }),
    evenness:
      'even where the bags touch; bags of sand follow the camber, blocks do not; bridge the gaps with a caul',
    quantities: [
      quantity('weights', turns === 1 ? 'weights' : 'weights of one turn', wholeKg, 'kg'),
      quantity('bags', `bags of ${settings.bagKg} kg`, bags, 'each'),
      quantity('release-film', 'release film under them', 1.4 * request.areaM2, 'm2'),
    ],
    onPieceKgPerM2: neededKg / request.areaM2,
    reasons: [
      `${settings.requiredKPa.toFixed(1)} kPa on ${(request.areaM2 / turns).toFixed(2)} m2 is ${wholeKg} kg, ${bags} bags; nothing is screwed into the deck`,
      ...(turns === 1
        ? []
        : [
            `${request.areaM2.toFixed(1)} m2 are bedded in ${turns} turns: the bags move on when the bed before holds`,
          ]),
    ],
    refusals,
  };
}

/** Where it would be more at once, the opening is bedded in turns. */
const turnsFor = (neededKg: number): number => Math.max(1, Math.ceil(neededKg / MOST_WEIGHT_KG - 1e-9));

function weightRefusals(
  { weights, slopeDeg = 0 }: BondPressureRequest,
  {
    neededKg,
    availableKg,
    requiredKPa,
  }: Readonly<Record<'neededKg' | 'availableKg' | 'requiredKPa', number>>,
): readonly string[] {
  return [
    ...(requiredKPa > MOST_WEIGHT_KPA
      ? [
          `${requiredKPa.toFixed(1)} kPa is more than the ${MOST_WEIGHT_KPA} kPa of bags two deep: thinner layers or kerfs in the core, or press it another way`,
        ]
      : []),
    ...(weights?.availableKg !== undefined && availableKg < neededKg - 1e-6
      ? [
          `${rounded(neededKg, 1)} kg are needed and ${availableKg.toFixed(0)} kg are at hand: bed the area in parts, or press it another way`,
        ]
      : []),
    ...(slopeDeg > STEEPEST_FOR_WEIGHTS_DEG ? [`weights slide on a slope of ${slopeDeg} degrees`] : []),
  ];
}

/** Sag between screws that still presses evenly. From memory: a third of a usual bed. */
const MOST_BATTEN_SAG_MM = 0.5;

export function battensOption(request: BondPressureRequest, settings: PressSettings): PressOption {
  const { batten, requiredKPa } = settings;
  const numbers = battenNumbers(request, settings);
  const refusals = battenRefusals(request, numbers);
  const isEstablished = numbers.allowableN !== undefined;
  const isIntoInnerSkin = request.battens?.isIntoInnerSkin === true;
  return {
    method: 'battens',
    ...(numbers.availableKPa === undefined
      ? {}
      : { availableKPa: numbers.availableKPa, utilisation: requiredKPa / numbers.availableKPa }),
    verdict:
      refusals.length === 0 && isEstablished
        ? 'passes'
        : isEstablished || request.battens?.deckAround === 'none'
          ? 'fails'
          : 'not-established',
    restsOn: isIntoInnerSkin
      ? 'itself: every screw pulls the inner skin up against the piece, and the ends of the battens lie on the sound deck around'
      : 'the sound deck around, which takes the pull of every screw',
    onInnerSkinKPa: requiredKPa + settings.deadLoadKPa,
    ...(isIntoInnerSkin ? { skinSpanMm: Math.max(batten.spacingMm, batten.screwSpacingMm) } : {}),
    evenness: `sag between screws ${numbers.sagMm.toFixed(2)} mm (simply supported up to ${(5 * numbers.sagMm).toFixed(2)} mm); halving the screw spacing cuts it sixteen times`,
    quantities: [
      quantity('battens', `battens ${batten.widthMm} x ${batten.heightMm} mm`, numbers.battenM, 'm'),
      quantity('screws', 'screws with washers', numbers.screws, 'each'),
      quantity('release-film', 'release film under them', 1.4 * request.areaM2, 'm2'),
    ],
    lines: numbers.lines,
    reasons: [
      `each screw pulls ${numbers.pullN.toFixed(0)} N`,
      ...(numbers.allowableN === undefined
        ? []
        : [
            `a screw of ${batten.screwDiameterMm} mm with ${batten.threadMm} mm of thread may pull ${numbers.allowableN.toFixed(0)} N`,
          ]),
      ...(numbers.provingN === undefined
        ? []
        : [
            `that is a conservative model and no published table: pull one screw on the spot to ${numbers.provingN.toFixed(0)} N before the resin is mixed`,
          ]),
      'every screw hole is potted afterwards',
    ],
    refusals,
  };
}

interface BattenNumbers {
  readonly pullN: number;
  readonly sagMm: number;
  readonly allowableN?: number;
  readonly availableKPa?: number;
  /** Pull that a screw must hold in a test on the spot, where only a model speaks for it. */
  readonly provingN?: number;
  readonly lines: readonly PressLine[];
  readonly battenM: number;
  readonly screws: number;
}

function battenNumbers(request: BondPressureRequest, { batten, requiredKPa }: PressSettings): BattenNumbers {
  const { lengthMm, widthMm } = request;
  const { spacingMm, screwSpacingMm } = batten;
  const lines = battenLines({ lengthMm, widthMm, spacingMm, screwSpacingMm });
  const pullN = computeChecked(battenScrewLoad, {
    pressureKPa: enteredIn('kPa', requiredKPa, 'pressure', '/requiredKPa'),
    widthMm: enteredIn('mm', batten.spacingMm, 'width pressed', '/battens/spacingMm'),
    spacingMm: enteredIn('mm', batten.screwSpacingMm, 'screw spacing', '/battens/screwSpacingMm'),
  }).value;
  const sagMm = computeChecked(battenSag, {
    lineLoad: enteredIn('N/mm', (requiredKPa * batten.spacingMm) / 1000, 'line load', '/requiredKPa'),
    spacingMm: enteredIn('mm', batten.screwSpacingMm, 'screw spacing', '/battens/screwSpacingMm'),
    modulusMPa: enteredIn('MPa', batten.modulusMPa, 'modulus', '/battens/modulusMPa'),
    widthMm: enteredIn('mm', batten.widthMm, 'width', '/battens/widthMm'),
    heightMm: enteredIn('mm', batten.heightMm, 'height', '/battens/heightMm'),
  }).value;
  const allowableN = allowableFor(request.battens, batten);
  return {
    pullN,
    sagMm,
    ...(allowableN === undefined ? {} : { allowableN, availableKPa: (requiredKPa * allowableN) / pullN }),
    ...(request.battens?.deckAround === 'laminate-only' ? { provingN: PROVING_TIMES * pullN } : {}),
    lines,
    battenM: lines.reduce((sum, { from, to }) => sum + to[0] - from[0], 0) / 1000,
    screws: lines.reduce((sum, { points }) => sum + points.length, 0),
  };
}

/** A pull test goes to this many times the pull of the press. Source: [FROM-MEMORY]. */
const PROVING_TIMES = 2;

/** What a screw may pull: in wood by a published rule, in laminate by a stated model; nothing where neither is known. */
function allowableFor(
  battens: BondPressureRequest['battens'],
  { screwDiameterMm, threadMm }: PressSettings['batten'],
): number | undefined {
  const diameterMm = enteredIn('mm', screwDiameterMm, 'diameter', '/battens/screwDiameterMm');
  const thread = enteredIn('mm', threadMm, 'thread', '/battens/threadMm');
  if (battens?.deckAround === 'laminate-only')
    return computeChecked(laminateThreadShear, {
      diameterMm,
      threadMm: thread,
      strengthMPa: enteredIn('MPa', LEAST_INTERLAMINAR_MPA, 'interlaminar strength', '/battens'),
      safety: enteredIn('1', SAFETY_OF_A_SCREW, 'safety', '/battens'),
    }).value;
  if (battens?.deckAround !== 'wood' || battens.woodSpecificGravity === undefined) return undefined;
  return computeChecked(screwAllowable, {
    gravity: enteredIn('1', battens.woodSpecificGravity, 'specific gravity', '/battens/woodSpecificGravity'),
    diameterMm,
    threadMm: thread,
  }).value;
}

function battenRefusals(
  { battens }: BondPressureRequest,
  { pullN, sagMm, allowableN }: BattenNumbers,
): readonly string[] {
  if (battens === undefined)
    return [
      'it is not stated what the screws would hold in: say whether it is wood or laminate, and how thick',
    ];
  if (battens.deckAround === 'none') return ['no sound deck around the opening to hold battens down'];
  return [
    ...(battens.deckAround === 'wood' && allowableN === undefined
      ? ['the specific gravity of the wood is not stated, so the hold of its screws is not established']
      : []),
    ...(allowableN !== undefined && pullN > allowableN
      ? [
          `each screw would pull ${pullN.toFixed(0)} N and may pull ${allowableN.toFixed(0)} N: set them closer, longer or thicker`,
        ]
      : []),
    ...(sagMm > MOST_BATTEN_SAG_MM
      ? [`battens sag ${sagMm.toFixed(2)} mm between screws: stiffer battens or closer screws`]
      : []),
  ];
}

/** Drop test that a wet bag should pass: about an inch of mercury in five minutes. */
const MOST_LEAK_KPA_PER_MIN = 3.38639 / 5;

export function vacuumOption(request: BondPressureRequest, settings: PressSettings): PressOption {
  const { vacuum, ambientKPa, requiredKPa } = settings;
  const fullKPa = computeChecked(vacuumPressure, {
    ambient: enteredIn('kPa', ambientKPa, 'air pressure', '/altitudeM'),
    vacuumFraction: enteredIn('1', vacuum.fraction, 'vacuum', '/vacuum/fraction'),
  }).value;
  const leak = leakOf(request, settings, ambientKPa - fullKPa);
  const heldKPa = leak.heldKPa ?? fullKPa;
  const refusals = [
    ...airRefusals(request),
    ...leak.refusals,
    ...(heldKPa < requiredKPa
      ? [`${heldKPa.toFixed(0)} kPa of vacuum is less than the ${requiredKPa.toFixed(0)} kPa needed`]
      : []),
  ];
  const isSelfReacting = request.innerSkin.isAirtight === true;
  return {
    method: 'vacuum',
    availableKPa: heldKPa,
    ...(heldKPa > 0 ? { utilisation: requiredKPa / heldKPa } : {}),
    verdict: refusals.length === 0 ? 'passes' : 'fails',
    restsOn: isSelfReacting
      ? 'itself: air presses the inner skin from below as hard as the bag from above'
      : 'nothing safe: air drawn through the inner skin unloads it from below, and the bag then presses it down',
    onInnerSkinKPa: isSelfReacting ? settings.deadLoadKPa : fullKPa + settings.deadLoadKPa,
    evenness:
      'even everywhere the film and breather reach; bleed holes let the air out from under plain core',
    quantities: vacuumQuantities(request, settings),
    reasons: [
      `${(100 * vacuum.fraction).toFixed(0)} % of the ${ambientKPa.toFixed(1)} kPa at this altitude is ${fullKPa.toFixed(0)} kPa`,
      leak.reason,
    ],
    refusals,
  };
}

const airRefusals = ({ innerSkin }: BondPressureRequest): readonly string[] =>
  innerSkin.isAirtight === true
    ? []
    : [
        innerSkin.isAirtight === undefined
          ? 'it is not known whether the inner skin is airtight: seal every hole from below and prove it by a drop test first'
          : 'the inner skin leaks: the bag would press an unsupported skin with the weight of the air and may break it',
      ];

interface LeakResult {
  readonly heldKPa?: number;
  readonly reason: string;
  readonly refusals: readonly string[];
}

function leakOf(
  { vacuum: given }: BondPressureRequest,
  { vacuum, ambientKPa }: PressSettings,
  insideKPa: number,
): LeakResult {
  const pumpDown = computeChecked(pumpDownTime, {
    volumeL: enteredIn('l', vacuum.bagVolumeL, 'air', '/vacuum/bagVolumeL'),
    pumpLPerMin: enteredIn('l/min', vacuum.pumpLPerMin, 'pump', '/vacuum/pumpLPerMin'),
    fromKPa: enteredIn('kPa', ambientKPa, 'air pressure', '/altitudeM'),
    toKPa: enteredIn('kPa', insideKPa, 'pressure inside', '/vacuum/fraction'),
  }).value;
  const words = `the pump takes ${pumpDown.toFixed(1)} min to draw a tight bag down`;
  if (given?.dropKPa === undefined || given.dropMinutes === undefined)
    return {
      reason: `${words}; accept the bag when it loses at most 3.4 kPa in five minutes with the pump shut off`,
      refusals: [],
    };
  const flow = computeChecked(leakLoad, {
    volumeL: enteredIn('l', vacuum.bagVolumeL, 'air', '/vacuum/bagVolumeL'),
    dropKPa: enteredIn('kPa', given.dropKPa, 'drop', '/vacuum/dropKPa'),
    minutes: enteredIn('min', given.dropMinutes, 'time', '/vacuum/dropMinutes'),
  }).value;
  const heldKPa = Math.max(0, ambientKPa - Math.max(insideKPa, flow / vacuum.pumpLPerMin));
  const isLeaky = given.dropKPa / given.dropMinutes > MOST_LEAK_KPA_PER_MIN;
  return {
    heldKPa,
    reason: `${words}; with the leak of the drop test it holds ${heldKPa.toFixed(0)} kPa`,
    refusals: isLeaky
      ? [
          `the bag loses ${(given.dropKPa / given.dropMinutes).toFixed(1)} kPa a minute; at most ${MOST_LEAK_KPA_PER_MIN.toFixed(2)} is acceptable: find the leak`,
        ]
      : [],
  };
}

const vacuumQuantities = (
  { areaM2 }: BondPressureRequest,
  { perimeterM, vacuum }: PressSettings,
): readonly PressQuantity[] => [
  quantity('bag-film', 'bagging film', 1.4 * areaM2, 'm2'),
  quantity('breather', 'breather', 1.3 * areaM2, 'm2'),
  quantity('perforated-film', 'perforated release film', 1.3 * areaM2, 'm2'),
  quantity('sealant-tape', 'sealant tape', 1.3 * perimeterM, 'm'),
  quantity('pump', `vacuum pump of ${vacuum.pumpLPerMin} l/min or more`, 1, 'each'),
];
