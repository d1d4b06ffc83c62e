import { regionOf, difference, type Polygon } from '#lib/geometry';
import type { CoreSheet, Datum } from '#lib/catalogue';
import type { OpeningToFill } from '../../libs/coring/src/mosaic/request.js';

const datum = (value: number): Datum => ({ value, cite: { source: 'FROM-MEMORY' } });

/** A core sheet for tests, valid by default. */
export const aCoreSheet = (change: Partial<CoreSheet> = {}): CoreSheet => ({
  kind: 'core',
  code: 'core-test',
  name: 'Core for tests',
  coreType: 'end-grain-balsa',
  densityKgPerM3: datum(150),
  shearStrengthMPa: datum(2.33),
  shearModulusMPa: datum(129),
  compressiveStrengthMPa: datum(10.3),
  compressiveModulusMPa: datum(3255),
  inPlaneModulusMPa: datum(98),
  thicknessesMm: [6.35, 9.5, 12.7, 15.9, 19.1, 25.4],
  sheets: [{ lengthMm: 1220, widthMm: 610 }],
  forms: [
    { form: 'plain' },
    { form: 'scored', scoreSpacingMm: 25, scoreWidthMm: 1, scoreDepthFraction: 0.6 },
  ],
  allowedTurnsDeg: [0, 90, 180, 270],
  largestPieceM2: datum(0.45),
  needsBleedHoles: true,
  wetOutLPerM2: datum(0.5),
  ...change,
});

/** An opening of 900 x 500 mm with an undercut of 60 mm forward of it and 50 mm along one side. */
export function anOpening(label = 'A'): OpeningToFill {
  const area: Polygon = {
    outer: [
      [0, 0],
      [900, 0],
      [900, 500],
      [0, 500],
    ],
    holes: [],
  };
  const undercut = difference(
    regionOf([
      [0, -50],
      [960, -50],
      [960, 500],
      [0, 500],
    ]),
    [area],
  );
  return { label, area, undercut };
}
