import { kerAndSlope } from './kelvin.js';

export interface SkinOnCore {
  /** Bending stiffness of the skin alone, N.mm. */
  readonly skinBending: number;
  /** Modulus of the core through its thickness over its thickness, N/mm3. */
  readonly foundation: number;
}

export interface Indentation {
  readonly depthMm: number;
  /** Greatest pressure of the skin on the core. */
  readonly coreStressMPa: number;
  /** Length over which the dent spreads. */
  readonly spreadMm: number;
}

const SERIES_LIMIT = 12;

/**
 * Local dent under a foot or a washer: the skin as a plate on a bed of springs (the core), under a round patch.
 *
 * w0 = (q/k) (1 + x ker'(x)), x = radius / spread, spread = (D_f/k)^(1/4).
 * Valid:  isotropic thin skin, core that neither slips nor crushes; the far skin held. Beyond x = 12 the patch is so wide
 *         that the core simply feels the pressure.
 * Source: [PANEL-DERIVED] Hankel integral of a plate on a Winkler bed; no published formula could be read.
 * Worked: test/reference/cases/panel-sandwich.ts
 */
export function roundPatch(
  { skinBending, foundation }: SkinOnCore,
  forceN: number,
  radiusMm: number,
): Indentation {
  const spreadMm = (skinBending / foundation) ** 0.25;
  const pressure = forceN / (Math.PI * radiusMm ** 2);
  const x = radiusMm / spreadMm;
  const share = x > SERIES_LIMIT ? 1 : 1 + x * kerAndSlope(x).slope;
  const depthMm = (pressure / foundation) * share;
  return { depthMm, coreStressMPa: depthMm * foundation, spreadMm };
}

/** The same under a point: w0 = P / (8 sqrt(k D_f)). */
export function pointLoad({ skinBending, foundation }: SkinOnCore, forceN: number): Indentation {
  const depthMm = forceN / (8 * Math.sqrt(foundation * skinBending));
  return { depthMm, coreStressMPa: depthMm * foundation, spreadMm: (skinBending / foundation) ** 0.25 };
}
