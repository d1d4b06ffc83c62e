import { computeChecked, type Figure } from '#lib/provenance';
import { assumptionFrom, enteredIn, enteredOrAssumed, workedOut, type Default } from '#lib/asking';
import { ambientPressure } from './atmosphere.js';
import type { BondPressureRequest, PressSettings } from './bond-request.js';
import { camberPressure, weightPressure } from './dead-weight.js';

interface SettingDefault extends Default {
  readonly unit: string;
  readonly meaning: string;
}

const remembered = (
  unit: string,
  meaning: string,
  value: number,
  spread: { readonly low: number; readonly high: number; readonly because: string },
): SettingDefault => ({ unit, meaning, value, ...spread, cite: { source: 'FROM-MEMORY' } });

const defaults = {
  requiredKPa: remembered('kPa', 'pressure that the bed needs', 1, {
    low: 0.5,
    high: 2,
    because:
      'a flexible skin and a thin bed close under 0.5 to 1 kPa, 50 to 100 kg/m2; more sags the skin below',
  }),
  leastKPa: remembered('kPa', 'pressure that the bed needs', 0.5, {
    low: 0.5,
    high: 1,
    because: 'no prop can be set below: the least that closes a thin bed, so that the skin sags least',
  }),
  modulusMPa: remembered('MPa', 'modulus of the inner skin', 9000, {
    low: 6000,
    high: 14000,
    because: 'hand-laid mat and woven glass',
  }),
  strengthMPa: remembered('MPa', 'bending strength of the inner skin', 140, {
    low: 100,
    high: 200,
    because: 'hand-laid mat and woven glass, sound',
  }),
  deadLoad: remembered('kg/m2', 'core, bed and skin on the inner skin', 10, {
    low: 5,
    high: 15,
    because: 'new core 2, wet bed 2, skin 5 kg/m2',
  }),
  bagKg: remembered('kg', 'one weight', 20, {
    low: 10,
    high: 25,
    because: 'a sand bag that one person lifts',
  }),
  widthMm: remembered('mm', 'width of a batten', 45, { low: 40, high: 100, because: 'common timber' }),
  heightMm: remembered('mm', 'height of a batten', 20, { low: 18, high: 45, because: 'common timber' }),
  battenMPa: remembered('MPa', 'modulus of a batten', 9000, {
    low: 7000,
    high: 12000,
    because: 'softwood along the grain',
  }),
  screwDiameterMm: remembered('mm', 'diameter of a screw', 4.2, {
    low: 3.5,
    high: 5,
    because: 'common screw',
  }),
  threadMm: remembered('mm', 'thread in the deck', 10, {
    low: 6,
    high: 15,
    because: 'short of the inner skin',
  }),
  screwSpacingMm: remembered('mm', 'spacing of screws along a batten', 150, {
    low: 100,
    high: 250,
    because: 'sag between screws grows with the fourth power of it',
  }),
  fraction: remembered('1', 'share of the air that the pump takes away', 0.75, {
    low: 0.65,
    high: 0.85,
    because: '22 inHg of 30 is what repair manuals ask at least',
  }),
  pumpLPerMin: remembered('l/min', 'free flow of the pump', 50, {
    low: 25,
    high: 150,
    because: 'small workshop pump',
  }),
} as const;

export function settingsFor(request: BondPressureRequest): PressSettings {
  const figures = {
    needed: setting(
      request.requiredKPa,
      request.canPropFromBelow === false ? defaults.leastKPa : defaults.requiredKPa,
      '/requiredKPa',
    ),
    altitude: enteredOrAssumed('m', request.altitudeM, 'altitude', {
      at: '/altitudeM',
      value: 0,
      because: 'boats lie near the sea',
      cite: { source: 'COMMON-PRACTICE' },
    }),
    modulus: setting(request.innerSkin.modulusMPa, defaults.modulusMPa, '/innerSkin/modulusMPa'),
    strength: setting(request.innerSkin.strengthMPa, defaults.strengthMPa, '/innerSkin/strengthMPa'),
    deadLoad: setting(request.deadLoadKgPerM2, defaults.deadLoad, '/deadLoadKgPerM2'),
    bag: setting(request.weights?.bagKg, defaults.bagKg, '/weights/bagKg'),
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

const setting = (
  given: number | undefined,
  { unit, meaning, ...fallback }: SettingDefault,
  at: string,
): Figure => enteredOrAssumed(unit, given, meaning, { at, ...fallback });

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
  const width = setting(battens?.widthMm, defaults.widthMm, '/battens/widthMm');
  const height = setting(battens?.heightMm, defaults.heightMm, '/battens/heightMm');
  const modulus = setting(battens?.modulusMPa, defaults.battenMPa, '/battens/modulusMPa');
  const screwSpacing = setting(battens?.screwSpacingMm, defaults.screwSpacingMm, '/battens/screwSpacingMm');
  const diameter = setting(battens?.screwDiameterMm, defaults.screwDiameterMm, '/battens/screwDiameterMm');
  const thread = setting(battens?.threadMm, defaults.threadMm, '/battens/threadMm');
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
  const fraction = setting(vacuum?.fraction, defaults.fraction, '/vacuum/fraction');
  const pump = setting(vacuum?.pumpLPerMin, defaults.pumpLPerMin, '/vacuum/pumpLPerMin');
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
