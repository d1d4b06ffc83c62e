import { computeChecked, type Figure } from '#lib/provenance';
import {
  answeredIn,
  assumptionFrom,
  closesABed,
  enteredIn,
  enteredOrAssumed,
  sagsLeast,
  workedOut,
} from '#lib/asking';
import { ambientPressure } from './atmosphere.js';
import {
  battensQuestions,
  bondPressureQuestions as asked,
  pressedSkinQuestions as pressedSkin,
  vacuumQuestions,
  weightsQuestions,
  type BondPressureRequest,
  type PressSettings,
} from './bond-request.js';
import { camberPressure, weightPressure } from './dead-weight.js';

export function settingsFor(request: BondPressureRequest): PressSettings {
  const figures = {
    needed: enteredOrAssumed('kPa', request.requiredKPa, asked.requiredKPa.meaning, {
      at: '/requiredKPa',
      ...(request.canPropFromBelow === false ? sagsLeast : closesABed),
    }),
    altitude: answeredIn(asked.altitudeM, request.altitudeM, '/altitudeM'),
    modulus: answeredIn(pressedSkin.modulusMPa, request.innerSkin.modulusMPa, '/innerSkin/modulusMPa'),
    strength: answeredIn(pressedSkin.strengthMPa, request.innerSkin.strengthMPa, '/innerSkin/strengthMPa'),
    deadLoad: answeredIn(asked.deadLoadKgPerM2, request.deadLoadKgPerM2, '/deadLoadKgPerM2'),
    bag: answeredIn(weightsQuestions.bagKg, request.weights?.bagKg, '/weights/bagKg'),
  };
  const batten = battenSettings(request);
  const vacuum = vacuumSettings(request);
  const camber = camberFigure(request);
  return {
    requiredKPa: figures.needed.value + (camber?.value ?? 0),
    ambientKPa: computeChecked(ambientPressure, { altitudeM: figures.altitude }).value,
    skinModulusMPa: figures.modulus.value,
    skinStrengthMPa: figures.strength.value,
    deadLoadKPa: pressureOf(figures.deadLoad.value),
    bagKg: figures.bag.value,
    batten: batten.values,
    vacuum: vacuum.values,
    perimeterM: request.perimeterM ?? (2 * (request.lengthMm + request.widthMm)) / 1000,
    assumptions: [...Object.values(figures), ...batten.figures, ...vacuum.figures].flatMap(assumptionFrom),
  };
}

const pressureOf = (massKgPerM2: number): number =>
  computeChecked(weightPressure, {
    massKg: enteredIn('kg', massKgPerM2, 'dead load', '/deadLoadKgPerM2'),
    areaM2: enteredIn('m2', 1, 'one square metre', '/areaM2'),
  }).value;

function camberFigure({ camber }: BondPressureRequest): Figure<'kPa'> | undefined {
  if (camber === undefined) return undefined;
  return computeChecked(camberPressure, {
    modulusMPa: enteredIn('MPa', camber.modulusMPa, 'modulus of the core', '/camber/modulusMPa'),
    thicknessMm: enteredIn('mm', camber.thicknessMm, 'thickness of the core', '/camber/thicknessMm'),
    radiusMm: enteredIn('mm', camber.radiusMm, 'radius of the camber', '/camber/radiusMm'),
    lengthMm: enteredIn('mm', camber.pieceLengthMm, 'length of the piece', '/camber/pieceLengthMm'),
  });
}

function battenSettings({ battens }: BondPressureRequest): {
  readonly values: PressSettings['batten'];
  readonly figures: readonly Figure[];
} {
  const width = answeredIn(battensQuestions.widthMm, battens?.widthMm, '/battens/widthMm');
  const height = answeredIn(battensQuestions.heightMm, battens?.heightMm, '/battens/heightMm');
  const modulus = answeredIn(battensQuestions.modulusMPa, battens?.modulusMPa, '/battens/modulusMPa');
  const screwSpacing = answeredIn(
    battensQuestions.screwSpacingMm,
    battens?.screwSpacingMm,
    '/battens/screwSpacingMm',
  );
  const diameter = answeredIn(
    battensQuestions.screwDiameterMm,
    battens?.screwDiameterMm,
    '/battens/screwDiameterMm',
  );
  const thread = answeredIn(battensQuestions.threadMm, battens?.threadMm, '/battens/threadMm');
  const spacing =
    battens?.spacingMm === undefined
      ? workedOut('mm', width.value * 2, 'spacing of battens', {
          formula: 'arithmetic.product',
          title: 'twice the width',
          symbol: 's_b',
          cite: { source: 'FROM-MEMORY' },
          inputs: { width },
        })
      : enteredIn('mm', battens.spacingMm, 'spacing of battens', '/battens/spacingMm');
  return {
    values: {
      widthMm: width.value,
      heightMm: height.value,
      modulusMPa: modulus.value,
      spacingMm: spacing.value,
      screwSpacingMm: screwSpacing.value,
      screwDiameterMm: diameter.value,
      threadMm: thread.value,
    },
    figures: battens === undefined ? [] : [width, height, modulus, screwSpacing, diameter, thread],
  };
}

function vacuumSettings({ vacuum, areaM2 }: BondPressureRequest): {
  readonly values: PressSettings['vacuum'];
  readonly figures: readonly Figure[];
} {
  const fraction = answeredIn(vacuumQuestions.fraction, vacuum?.fraction, '/vacuum/fraction');
  const pump = answeredIn(vacuumQuestions.pumpLPerMin, vacuum?.pumpLPerMin, '/vacuum/pumpLPerMin');
  const volume = enteredOrAssumed('l', vacuum?.bagVolumeL, 'air under the bag and in the hose', {
    at: '/vacuum/bagVolumeL',
    value: Math.max(2, areaM2 * 10),
    because: 'ten litres under each square metre of film',
    cite: { source: 'FROM-MEMORY' },
  });
  return {
    values: { fraction: fraction.value, pumpLPerMin: pump.value, bagVolumeL: volume.value },
    figures: vacuum === undefined ? [] : [fraction, pump, volume],
  };
}
