import { planStack as plan, type StackRequest } from '#lib/coring';
import type { CoreSheet, Datum } from '#lib/catalogue';
import type { PublishedCase } from '../published-case.js';

const datum = (value: number): Datum => ({ value, cite: { source: 'ARITHMETIC' } });

/** Common inch thicknesses; the properties do not matter to these cases. */
const core: CoreSheet = {
  kind: 'core',
  code: 'core-of-cases',
  name: 'Core of these cases',
  coreType: 'end-grain-balsa',
  densityKgPerM3: datum(140),
  shearStrengthMPa: datum(2),
  shearModulusMPa: datum(100),
  compressiveStrengthMPa: datum(10),
  compressiveModulusMPa: datum(3000),
  inPlaneModulusMPa: datum(98),
  thicknessesMm: [9.5, 12.7, 15.9, 19.1],
  sheets: [],
  forms: [{ form: 'scored', scoreSpacingMm: 25, scoreWidthMm: 1, scoreDepthFraction: 0.6 }],
  allowedTurnsDeg: [],
  largestPieceM2: datum(0.4),
  needsBleedHoles: true,
  wetOutLPerM2: datum(0.5),
};

const planned = (change: Partial<StackRequest>) => {
  const outcome = plan({ cavityMm: 14, core, areaM2: 1, form: 'scored', wantedMm: 12.7, ...change });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
};

const kerfVolume = (): number => planned({}).kerfResin?.value ?? Number.NaN;
const stackWater = (): number =>
  planned({ cavityMm: 12.7, oldCore: { densityKgPerM3: 140, moistureFraction: 1.5 } }).waterLeaving?.value ??
  Number.NaN;
const thicknessFor = (cavityMm: number): number => {
  const outcome = plan({ cavityMm, core, areaM2: 1 });
  return outcome.ok ? outcome.value.layers[0].thicknessMm : Number.NaN;
};

export const coringStack: readonly PublishedCase[] = [
  {
    id: 'coring-kerf-25mm',
    room: 'coring',
    title: 'Resin in the kerfs of scored sheet, 25 mm squares, 1 mm kerf, 60 % of 12.7 mm',
    source: 'ARITHMETIC',
    locus: '(2/25 - 1/625) x 7.62 mm',
    unit: 'l',
    printed: '0.6',
    ours: kerfVolume,
    kind: 'by-hand',
  },
  {
    id: 'coring-water-150-percent',
    room: 'coring',
    title: 'Water leaving with 1 m2 of 12.7 mm core of 140 kg/m3 from 150 % to 12 % moisture',
    source: 'ARITHMETIC',
    locus: '1.778 kg x 1.38',
    unit: 'kg',
    printed: '2.45',
    ours: stackWater,
    kind: 'by-hand',
  },
  {
    id: 'coring-five-eighths',
    room: 'coring',
    title: 'Replacement core where the cavity is 5/8 in of old core and two glue lines of 1/32 in',
    source: 'COMMON-PRACTICE',
    locus: "core of the old core's thickness, 5/8 in",
    unit: 'mm',
    printed: '15.9',
    ours: () => thicknessFor(15.875 + 2 * 0.794),
    kind: 'limit',
  },
];
