import { assumedIn, enteredIn, inUnit, assumptionFrom } from '#lib/asking';
import { computeChecked, defineFormula, type Cite, type Figure } from '#lib/provenance';
import { ambientPressure } from './atmosphere.js';
import { bowLines } from './press-lines.js';
import type { BondPressurePlan, InnerSkinCheck, PressOption, PressQuantity } from './bond-request.js';

/** Standard gravity, m/s2: exact by definition. */
const GRAVITY = 9.80665;

/** Force that holds a piece up: pressure on its bed and its own weight with the bed's. */
export const upwardForce = defineFormula({
  id: 'process.upward-force',
  title: 'Upward force on a piece pressed from below',
  cite: { source: 'ARITHMETIC', note: 'F = (p/g + w) A, as kg' },
  inputs: {
    pressureKPa: { symbol: 'p', unit: 'kPa', meaning: 'pressure on the bed', from: 0, upTo: 100 },
    hangingKgPerM2: { symbol: 'w', unit: 'kg/m2', meaning: 'core and wet bed that hang', from: 0, upTo: 100 },
    areaM2: { symbol: 'A', unit: 'm2', meaning: 'area of the piece', above: 0, upTo: 20 },
  },
  output: { symbol: 'F', unit: 'kg', meaning: 'force' },
  evaluate: ({ pressureKPa, hangingKgPerM2, areaM2 }) =>
    inUnit('kg', ((pressureKPa * 1000) / GRAVITY + hangingKgPerM2) * areaM2),
  // 1000/9.80665 = 101.97, + 3.4 = 105.4 kg/m2; on 18 x 24 in (0.279 m2) 29.4 kg.
  worked: [
    {
      at: 'by hand: 1 kPa, balsa 1.9 and bed 1.5 kg/m2, 18 x 24 in',
      given: { pressureKPa: 1, hangingKgPerM2: 3.4, areaM2: 0.279 },
      printed: '29.4',
    },
  ],
});

/** Lift of the skin above, a strip that runs on over its bows: p L4/(384 E I). */
export const skinLift = defineFormula({
  id: 'process.skin-lift',
  title: 'Lift of the skin above between bows',
  cite: { source: 'CIVIL-BEAM-TABLE', clause: 'case 5, both ends fixed' },
  inputs: {
    pressureKPa: { symbol: 'p', unit: 'kPa', meaning: 'pressure from below', from: 0, upTo: 100 },
    spacingMm: { symbol: 'L', unit: 'mm', meaning: 'spacing of bows', above: 0, upTo: 5000 },
    thicknessMm: { symbol: 't', unit: 'mm', meaning: 'thickness of the skin', above: 0, upTo: 60 },
    modulusMPa: { symbol: 'E', unit: 'MPa', meaning: 'modulus of the skin', above: 0, upTo: 250000 },
  },
  output: { symbol: 'δ', unit: 'mm', meaning: 'lift at the middle' },
  evaluate: ({ pressureKPa, spacingMm, thicknessMm, modulusMPa }) =>
    inUnit('mm', ((pressureKPa / 1000) * spacingMm ** 4) / (384 * modulusMPa * (thicknessMm ** 3 / 12))),
  // 0.001 x 300^4/(384 x 10,000 x 2.25) = 8.1e6/8.64e6 = 0.9375 mm; at 600 mm sixteen times that.
  worked: [
    {
      at: 'by hand: 1 kPa on 3 mm of 10 GPa over 300 mm',
      given: { pressureKPa: 1, spacingMm: 300, thicknessMm: 3, modulusMPa: 10000 },
      printed: '0.94',
    },
  ],
});

export const upwardFormulas = [upwardForce, skinLift];

export interface UpwardRequest {
  readonly areaM2: number;
  readonly lengthMm: number;
  readonly widthMm: number;
  /** The skin that stays above and is pressed upwards. */
  readonly skinAboveMm: number;
  readonly coreKgPerM2: number;
  readonly altitudeM: number;
  readonly prefer: 'jacks' | 'vacuum';
}

const fromMemory: Cite = { source: 'FROM-MEMORY' };

const defaults = {
  pressureKPa: (): Figure<'kPa'> =>
    assumedIn(
      'kPa',
      {
        value: 1,
        because: 'a flexible skin and a thin bed close under 0.5 to 1 kPa; more lifts the deck',
        cite: fromMemory,
        low: 0.5,
        high: 1,
      },
      'pressure that closes the bed',
      '/requiredKPa',
    ),
  bedKgPerM2: (): Figure<'kg/m2'> =>
    assumedIn(
      'kg/m2',
      {
        value: 1.5,
        because: 'a bed about a millimetre thick',
        cite: fromMemory,
        low: 1,
        high: 2.5,
      },
      'wet bed that hangs',
      '/deadLoadKgPerM2',
    ),
  modulusMPa: (): Figure<'MPa'> =>
    assumedIn(
      'MPa',
      {
        value: 10000,
        because: 'hand-laid mat and woven glass',
        cite: fromMemory,
        low: 6000,
        high: 14000,
      },
      'modulus of the skin above',
      '/innerSkin/modulusMPa',
    ),
};

/** Lift that a deck may keep for ever. From memory: what fairing hides. */
const MOST_LIFT_MM = 1;
/** Every foot. Source: [METHODS-FROM-BELOW]. Closer where the skin is thin, never closer than a hand: from memory. */
const BOW_MM = 300;
const LEAST_BOW_MM = 150;
/** 18 by 24 in, the smaller of the pieces from below in print. Source: [METHODS-FROM-BELOW]. */
const PIECE_M2 = 0.279;

/**
 * What holds core up against a deck that is opened from below: jacks under padded boards with the force balance, or a bag;
 * and what keeps the skin above in its shape meanwhile. Nothing is laid on the inner side: it is cut away.
 */
export function planUpwardPress(request: UpwardRequest): BondPressurePlan {
  const ambientKPa = computeChecked(ambientPressure, {
    altitudeM: enteredIn('m', request.altitudeM, 'altitude', '/altitudeM'),
  }).value;
  const [pressure, bed, modulus] = [defaults.pressureKPa(), defaults.bedKgPerM2(), defaults.modulusMPa()];
  const hanging = enteredIn('kg/m2', request.coreKgPerM2 + bed.value, 'core and bed', '/deadLoadKgPerM2');
  const pieceM2 = Math.min(PIECE_M2, request.areaM2);
  const forceOf = (areaM2: number): number =>
    computeChecked(upwardForce, {
      pressureKPa: pressure,
      hangingKgPerM2: hanging,
      areaM2: enteredIn('m2', areaM2, 'area', '/areaM2'),
    }).value;
  const above = skinAbove(request, pressure, modulus);
  const jacks = jacksOption({
    request,
    above,
    pieceM2,
    pieceKg: forceOf(pieceM2),
    pressureKPa: pressure.value,
  });
  const bag = bagOption(request.areaM2, ambientKPa);
  const options = [jacks, bag];
  const chosen =
    options.find(({ method, verdict }) => method === request.prefer && verdict === 'passes') ?? jacks;
  return {
    method: chosen.verdict === 'passes' ? chosen.method : undefined,
    requiredKPa: pressure.value,
    ...(chosen.availableKPa === undefined ? {} : { availableKPa: chosen.availableKPa }),
    restsOn: chosen.restsOn,
    turns: 1,
    innerSkin: above.check,
    options,
    quantities: chosen.verdict === 'passes' ? chosen.quantities : [],
    lines: bowLines({ lengthMm: request.lengthMm, widthMm: request.widthMm, count: above.bows }),
    ...(chosen.onPieceKgPerM2 === undefined ? {} : { onPieceKgPerM2: chosen.onPieceKgPerM2 }),
    recommendation: `Hold each piece up with ${chosen.method}: ${chosen.reasons.join('; ')}. It rests on ${chosen.restsOn}.`,
    refusals: options.flatMap(({ method, refusals }) => refusals.map((why) => `${method}: ${why}`)),
    ambientKPa,
    assumptions: [pressure, bed, modulus].flatMap(assumptionFrom),
  };
}

interface SkinAbove {
  readonly check: InnerSkinCheck;
  readonly spacingMm: number;
  readonly bows: number;
  /** Laid on deck where bows alone would have to stand too close. */
  readonly ballastKg: number;
  readonly liftMm: number;
}

/** Bows keep the lift within what a deck may keep; where the skin is too thin for that, ballast on deck takes the pressure. */
function skinAbove(
  { skinAboveMm, lengthMm, widthMm, areaM2 }: UpwardRequest,
  pressure: Figure<'kPa'>,
  modulus: Figure<'MPa'>,
): SkinAbove {
  const liftAt = (spacingMm: number): number =>
    computeChecked(skinLift, {
      pressureKPa: pressure,
      spacingMm: enteredIn('mm', spacingMm, 'spacing of bows', '/innerSkin/spanMm'),
      thicknessMm: enteredIn('mm', skinAboveMm, 'skin above', '/innerSkin/thicknessMm'),
      modulusMPa: modulus,
    }).value;
  const wanted = BOW_MM * Math.min(1, (MOST_LIFT_MM / liftAt(BOW_MM)) ** 0.25);
  const spacingMm = Math.max(LEAST_BOW_MM, Math.floor(wanted / 10) * 10);
  const liftMm = liftAt(spacingMm);
  const needsBallast = liftMm > MOST_LIFT_MM;
  const bows = Math.max(2, Math.ceil(Math.max(lengthMm, widthMm) / spacingMm) + 1);
  return {
    spacingMm,
    bows,
    liftMm,
    ballastKg: needsBallast ? ((pressure.value * 1000) / GRAVITY) * areaM2 : 0,
    check: {
      loadKPa: pressure.value,
      sagMm: liftMm,
      allowedSagMm: MOST_LIFT_MM,
      stressMPa: 0,
      allowedStressMPa: 0,
      verdict: needsBallast ? 'fails' : 'passes',
      props: {
        needed: false,
        why: `nothing is propped: the outer skin above is pressed upwards. Bows across the deck every ${spacingMm} mm keep its shape; between them it lifts ${liftMm.toFixed(1)} mm, ${MOST_LIFT_MM} mm is allowed${needsBallast ? '; the skin is too thin for that, so ballast on deck takes the pressure' : ''}`,
      },
    },
  };
}

interface Jacking {
  readonly request: UpwardRequest;
  readonly above: SkinAbove;
  readonly pieceM2: number;
  readonly pieceKg: number;
  readonly pressureKPa: number;
}

const quantity = (code: string, name: string, value: number, unit: string): PressQuantity => ({
  code,
  name,
  value,
  unit,
});

/** One jack under each corner of a board, and two boards, so that one piece cures while the next is set. */
const JACKS_PER_BOARD = 4;

function jacksOption({ request, above, pieceM2, pieceKg, pressureKPa }: Jacking): PressOption {
  const pieces = Math.ceil(request.areaM2 / pieceM2 - 1e-9);
  const boards = Math.min(2, pieces);
  return {
    method: 'jacks',
    availableKPa: pressureKPa,
    verdict: 'passes',
    restsOn: `a plank on sole or beams that carries ${pieceKg.toFixed(0)} kg for each piece, and bows on deck every ${above.spacingMm} mm`,
    onInnerSkinKPa: 0,
    evenness: 'even where the board is padded and follows the camber',
    onPieceKgPerM2: pieceKg / pieceM2,
    quantities: [
      quantity('jacks', 'screw jacks or sticks with wedges', JACKS_PER_BOARD * boards, 'each'),
      quantity('padded-boards', `padded boards of ${pieceM2.toFixed(2)} m2, film on them`, boards, 'each'),
      quantity('piece-force', 'upward force on one piece', pieceKg, 'kg'),
      quantity('bows', 'bows across the deck', above.bows, 'each'),
      ...(above.ballastKg === 0 ? [] : [quantity('ballast', 'ballast on deck', above.ballastKg, 'kg')]),
    ],
    reasons: [
      `${pressureKPa.toFixed(1)} kPa and the weight of core and bed are ${pieceKg.toFixed(0)} kg up on a piece of ${pieceM2.toFixed(2)} m2`,
      `the skin above lifts ${above.liftMm.toFixed(1)} mm between bows every ${above.spacingMm} mm`,
      'snug is enough: more pressure bends the deck',
    ],
    refusals: [],
  };
}

const bagOption = (areaM2: number, ambientKPa: number): PressOption => ({
  method: 'vacuum',
  availableKPa: 0.8 * ambientKPa,
  verdict: 'not-established',
  restsOn:
    'a bag sealed to the flange of the inner skin, every hole in the deck taped from above and a drop test',
  onInnerSkinKPa: 0,
  evenness: 'even; bag and outer skin press against each other through the core, and nothing else carries it',
  quantities: [quantity('bag-film', 'bagging film', 1.4 * areaM2, 'm2')],
  reasons: ['slow hardener, no voids; practitioners find it not much harder than from above'],
  refusals: [
    'it is not known whether the outer skin is airtight: tape every fitting from above and prove it by a drop test first',
  ],
});
