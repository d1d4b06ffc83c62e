import { computeChecked } from '#lib/provenance';
import { enteredIn } from '#lib/asking';
import { leakLoad, pumpDownTime, vacuumPressure } from './atmosphere.js';
import { battenSag, battenScrewLoad, screwAllowable } from './battens.js';
import type { BondPressureRequest, PressOption, PressQuantity, PressSettings } from './bond-request.js';
import { weightNeeded, weightPressure } from './dead-weight.js';

const quantity = (code: string, name: string, value: number, unit: string): PressQuantity => ({
  code,
  name,
  value,
  unit,
});
const rounded = (value: number, step: number): number => Math.ceil(value / step - 1e-9) * step;

/** Loose bags stay put up to about this slope. From memory. */
const STEEPEST_FOR_WEIGHTS_DEG = 12;
/** More than this by hand on a deck is not a plan. From memory. */
const MOST_WEIGHT_KG = 500;

export function weightsOption(request: BondPressureRequest, settings: PressSettings): PressOption {
  const neededKg = computeChecked(weightNeeded, {
    pressureKPa: enteredIn('kPa', settings.requiredKPa, 'pressure needed', '/requiredKPa'),
    areaM2: enteredIn('m2', request.areaM2, 'area', '/areaM2'),
  }).value;
  const bags = Math.ceil(neededKg / settings.bagKg - 1e-9);
  const availableKg = Math.min(
    request.weights?.availableKg ?? bags * settings.bagKg,
    Math.max(bags, 1) * settings.bagKg,
  );
  const availableKPa = computeChecked(weightPressure, {
    massKg: enteredIn('kg', availableKg, 'weights', '/weights/availableKg'),
    areaM2: enteredIn('m2', request.areaM2, 'area', '/areaM2'),
  }).value;
  const refusals = weightRefusals(request, { neededKg, bags, availableKg });
  return {
    method: 'weights',
    availableKPa,
    utilisation: settings.requiredKPa / availableKPa,
    verdict: refusals.length === 0 ? 'passes' : 'fails',
    restsOn: 'the inner skin alone, which carries every kilogram to its supports',
    onInnerSkinKPa: availableKPa + settings.deadLoadKPa,
    evenness:
      'even where the bags touch; bags of sand follow the camber, blocks do not; bridge the gaps with a caul',
    quantities: [
      quantity('weights', 'weights', rounded(neededKg, 1), 'kg'),
      quantity('bags', `bags of ${settings.bagKg} kg`, bags, 'each'),
      quantity('release-film', 'release film under them', 1.4 * request.areaM2, 'm2'),
    ],
    reasons: [
      `${settings.requiredKPa.toFixed(1)} kPa on ${request.areaM2.toFixed(2)} m2 is ${neededKg.toFixed(0)} kg, ${bags} bags; nothing is screwed into the deck`,
    ],
    refusals,
  };
}

function weightRefusals(
  { weights, slopeDeg = 0 }: BondPressureRequest,
  {
    neededKg,
    bags,
    availableKg,
  }: { readonly neededKg: number; readonly bags: number; readonly availableKg: number },
): readonly string[] {
  return [
    ...(weights?.availableKg !== undefined && availableKg < neededKg - 1e-6
      ? [
          `${neededKg.toFixed(0)} kg are needed and ${availableKg.toFixed(0)} kg are at hand: bed the area in parts, or press it another way`,
        ]
      : []),
    ...(neededKg > MOST_WEIGHT_KG
      ? [`${neededKg.toFixed(0)} kg (${bags} bags) is more than a crew can place before the resin gels`]
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
  const isEstablished =
    request.battens?.deckAround === 'wood' && request.battens.woodSpecificGravity !== undefined;
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
    restsOn: 'the sound deck around, which takes the pull of every screw',
    onInnerSkinKPa: requiredKPa + settings.deadLoadKPa,
    evenness: `sag between screws ${numbers.sagMm.toFixed(2)} mm (simply supported up to ${(5 * numbers.sagMm).toFixed(2)} mm); halving the screw spacing cuts it sixteen times`,
    quantities: [
      quantity('battens', `battens ${batten.widthMm} x ${batten.heightMm} mm`, numbers.battenM, 'm'),
      quantity('screws', 'screws with washers', numbers.screws, 'each'),
      quantity('release-film', 'release film under them', 1.4 * request.areaM2, 'm2'),
    ],
    reasons: [
      `each screw pulls ${numbers.pullN.toFixed(0)} N`,
      ...(numbers.allowableN === undefined
        ? []
        : [
            `a screw of ${batten.screwDiameterMm} mm with ${batten.threadMm} mm of thread may pull ${numbers.allowableN.toFixed(0)} N`,
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
  readonly battenM: number;
  readonly screws: number;
}

function battenNumbers(request: BondPressureRequest, { batten, requiredKPa }: PressSettings): BattenNumbers {
  const lines = Math.max(1, Math.ceil(request.widthMm / batten.spacingMm));
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
  const gravity = request.battens?.deckAround === 'wood' ? request.battens.woodSpecificGravity : undefined;
  const allowableN =
    gravity === undefined
      ? undefined
      : computeChecked(screwAllowable, {
          gravity: enteredIn('1', gravity, 'specific gravity', '/battens/woodSpecificGravity'),
          diameterMm: enteredIn('mm', batten.screwDiameterMm, 'diameter', '/battens/screwDiameterMm'),
          threadMm: enteredIn('mm', batten.threadMm, 'thread', '/battens/threadMm'),
        }).value;
  return {
    pullN,
    sagMm,
    ...(allowableN === undefined ? {} : { allowableN, availableKPa: (requiredKPa * allowableN) / pullN }),
    battenM: (lines * (request.lengthMm + 200)) / 1000,
    screws: lines * (Math.ceil(request.lengthMm / batten.screwSpacingMm) + 1),
  };
}

function battenRefusals(
  { battens }: BondPressureRequest,
  { pullN, sagMm, allowableN }: BattenNumbers,
): readonly string[] {
  if (battens === undefined)
    return [
      'it is not stated what the deck around the opening holds screws with; glass skin alone has no published hold',
    ];
  if (battens.deckAround === 'none') return ['no sound deck around the opening to hold battens down'];
  return [
    ...(battens.deckAround === 'laminate-only'
      ? [
          `withdrawal of screws from glass laminate is not established by any published table; each would have to hold ${pullN.toFixed(0)} N: use bolts with washers, or another press`,
        ]
      : []),
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
