import { isLarge, largeDeflection } from './large-deflection.js';
import { plateModel, type EdgeFixing, type PlateAnswer, type PlateModel } from './plate-answer.js';
import { skinPlate } from './sandwich-section.js';
import type { SkinValues } from './states.js';
import type { PlateStiffness } from './plate.js';

/** The thin inner skin while the core is out. */
export interface OpenSkinRequest {
  readonly skin: SkinValues;
  readonly lengthXMm: number;
  readonly widthYMm: number;
  readonly edges: EdgeFixing;
  readonly clampPressureKPa: number;
  /** Sag that the new core would keep. */
  readonly allowedSagMm: number;
  readonly personN: number;
  readonly heelRadiusMm: number;
  readonly skinShare: number;
}

export interface OpenSkinAnswer {
  /** With the pull of the skin between held edges, where the sag is large. */
  readonly clampSagMm: number;
  /** Stress in the inner skin where it is held. */
  readonly clampStressMPa: number;
  /** Sag under the pressing by plate bending alone, without the stretch of the skin. */
  readonly linearClampSagMm: number;
  /** Sag under one person. */
  readonly personSagMm: number;
  /** Plate bending alone: an upper bound where the sag is large. */
  readonly personStressMPa: number;
  /** Stress that the inner skin may take. */
  readonly usableStressMPa: number;
  /** Sag over half the skin: the plate theory then overstates it, and the skin pulls at its edges. */
  readonly isLargeDeflection: boolean;
  /** Whether props are needed before somebody steps on it. */
  readonly propsNeeded: boolean;
  /** Spacing of props in both directions that keeps sag and stress within bounds under the clamp load. */
  readonly propSpacingMm: number;
  /** The same for a person who kneels or steps on it; absent when no spacing between props makes that safe. */
  readonly propSpacingForPersonMm?: number;
  /** How to work on the open deck. */
  readonly advice: readonly string[];
}

/** For a request already known to be sound; takes the skin's plate where it was made before. */
export function openSkinAnswer(request: OpenSkinRequest, ready?: PlateModel): OpenSkinAnswer {
  const { skin, lengthXMm, widthYMm, edges, personN, heelRadiusMm } = request;
  const { stiffness, face } = skinPlate(skin);
  const model =
    ready ??
    plateModel(
      stiffness,
      { lengthXMm, widthYMm },
      { xStart: edges, xEnd: edges, yStart: edges, yEnd: edges },
    );
  const side = Math.min(heelRadiusMm * Math.sqrt(Math.PI), lengthXMm, widthYMm);
  const clamp = model.answerTo({
    pressureMPa: request.clampPressureKPa / KPA_PER_MPA,
    x1Mm: 0,
    x2Mm: lengthXMm,
    y1Mm: 0,
    y2Mm: widthYMm,
  });
  const person = model.answerTo({
    pressureMPa: personN / (side * side),
    x1Mm: (lengthXMm - side) / 2,
    x2Mm: (lengthXMm + side) / 2,
    y1Mm: (widthYMm - side) / 2,
    y2Mm: (widthYMm + side) / 2,
  });
  const stress = ({ spots }: PlateAnswer): number =>
    Math.max(
      ...spots.flatMap(({ fields: { mx, my } }) => [
        Math.abs(face.xx * mx + face.xy * my),
        Math.abs(face.yx * mx + face.yy * my),
      ]),
    );
  const usableStressMPa =
    request.skinShare *
    Math.min(
      skin.tensileStrengthMPa,
      skin.compressiveStrengthMPa,
      skin.tensileStrengthYMPa ?? Infinity,
      skin.compressiveStrengthYMPa ?? Infinity,
    );
  const clampSag = largeDeflection(skin, { lengthXMm, widthYMm }, clamp.deflectionMm);
  const answer = {
    clampSagMm: clampSag.deflectionMm,
    clampStressMPa: stress(clamp) * clampSag.bendingShare + clampSag.membraneStressMPa,
    linearClampSagMm: clamp.deflectionMm,
    personSagMm: largeDeflection(skin, { lengthXMm, widthYMm }, person.deflectionMm).deflectionMm,
    personStressMPa: stress(person),
    usableStressMPa,
  };
  const propsNeeded = answer.clampSagMm > request.allowedSagMm || answer.clampStressMPa > usableStressMPa;
  const forPerson = spacingUnderPerson(request, stiffness, usableStressMPa);
  return {
    ...answer,
    propsNeeded,
    isLargeDeflection: isLarge(skin, Math.max(clamp.deflectionMm, person.deflectionMm)),
    propSpacingMm: spacingUnderPressure(request, stiffness, usableStressMPa),
    ...(forPerson === undefined ? {} : { propSpacingForPersonMm: forPerson }),
    advice: adviceFor(request, { ...answer, linearPersonSagMm: person.deflectionMm }, propsNeeded),
  };
}

const KPA_PER_MPA = 1000;

/**
 * Span of a simply supported strip whose sag and stress stay in bounds: 5 p s^4/(384 D) and 6 (p s^2/8)/t^2.
 * A strip bends more than a bay held on four sides, so that the spacing is on the safe side.
 * Source: [WOOD-HANDBOOK-2010] table 9-1.
 */
function spacingUnderPressure(
  { clampPressureKPa, allowedSagMm, skin }: OpenSkinRequest,
  { d11, d22 }: PlateStiffness,
  usableMPa: number,
): number {
  const pressure = clampPressureKPa / KPA_PER_MPA;
  const bySag = ((384 * Math.min(d11, d22) * allowedSagMm) / (5 * pressure)) ** 0.25;
  const byStress = Math.sqrt((8 * usableMPa * skin.thicknessMm ** 2) / (6 * pressure));
  return Math.min(bySag, byStress);
}

/** Square bay with a foot at its middle: deflection 0.0116 P s^2/D and Roark's centre stress with nu 0.3. */
function spacingUnderPerson(
  { personN, heelRadiusMm, allowedSagMm, skin }: OpenSkinRequest,
  { d11, d22 }: PlateStiffness,
  usableMPa: number,
): number | undefined {
  const bySag = Math.sqrt((allowedSagMm * Math.min(d11, d22)) / (SQUARE_POINT_DEFLECTION * personN));
  const byStress =
    (Math.PI *
      heelRadiusMm *
      Math.exp(((2 * Math.PI * skin.thicknessMm ** 2 * usableMPa) / (3 * personN) - SQUARE_BETA) / 1.3)) /
    2;
  const spacing = Math.min(bySag, byStress);
  return spacing > 2 * heelRadiusMm ? spacing : undefined;
}

/** Source: [TIMOSHENKO-PLATES-1959] point load on a square plate. */
const SQUARE_POINT_DEFLECTION = 0.0116;
/** Source: [ROARK-2002] table 11.4 case 1b, square. */
const SQUARE_BETA = 0.435;

interface OpenAnswer {
  readonly linearClampSagMm: number;
  readonly linearPersonSagMm: number;
  readonly clampSagMm: number;
  readonly personSagMm: number;
  readonly personStressMPa: number;
  readonly usableStressMPa: number;
}

function adviceFor(
  { skin, allowedSagMm }: OpenSkinRequest,
  answer: OpenAnswer,
  propsNeeded: boolean,
): readonly string[] {
  const large = isLarge(skin, Math.max(answer.linearClampSagMm, answer.linearPersonSagMm));
  return [
    ...(propsNeeded
      ? ['Prop the inner skin from below before the deck is opened; the new core would keep the sag.']
      : []),
    ...(answer.personStressMPa > answer.usableStressMPa
      ? ['Nobody stands or kneels on the inner skin: work from planks that rest on the deck around.']
      : []),
    ...(answer.personStressMPa <= answer.usableStressMPa && answer.personSagMm > allowedSagMm
      ? ['Stepping on the inner skin sags it; work from planks.']
      : []),
    ...(large
      ? [
          'The sag is large for so thin a skin: it hangs like a sheet and pulls the edges of the opening inwards; the sag is an estimate, the stress under a foot an upper bound.',
        ]
      : []),
  ];
}
