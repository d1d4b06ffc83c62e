import type { Compliance } from './compliance.js';
import type { Symmetric } from './stiffness.js';

/** Moduli of a homogeneous plate that would answer the same. */
export interface EngineeringConstants {
  /** Young's modulus fore and aft. */
  readonly youngAlongMPa: number;
  /** Young's modulus athwart. */
  readonly youngAcrossMPa: number;
  /** Poisson's ratio under load fore and aft. */
  readonly poissonAlong: number;
  /** Poisson's ratio under load athwart. */
  readonly poissonAcross: number;
  /** Shear modulus in the plane. */
  readonly shearModulusMPa: number;
  /** Shear strain over strain under load fore and aft: 0 for a balanced laminate. */
  readonly shearCouplingAlong: number;
  /** Shear strain over strain under load athwart. */
  readonly shearCouplingAcross: number;
}

/**
 * In-plane constants: E_x = 1/(h a11), ν_xy = -a12/a11, G_xy = 1/(h a66).
 *
 * `free` lets an unsymmetric laminate warp, `heldFlat` takes A alone; for a symmetric one both are the same.
 * Source: [JONES-1999] chapter 4
 */
export const inPlaneConstants = (
  compliance: Compliance,
  thicknessMm: number,
): { readonly free: EngineeringConstants; readonly heldFlat: EngineeringConstants } => ({
  free: constantsFrom(compliance.aMmPerN, thicknessMm),
  heldFlat: constantsFrom(compliance.flatAMmPerN, thicknessMm),
});

/** Bending constants: E_fx = 12/(h³ d11), with the mid-plane free to stretch. */
export const flexuralConstants = (compliance: Compliance, thicknessMm: number): EngineeringConstants =>
  constantsFrom(compliance.dPerNmm, thicknessMm ** 3 / 12);

const constantsFrom = (m: Symmetric, size: number): EngineeringConstants => ({
  youngAlongMPa: 1 / (size * m[0]),
  youngAcrossMPa: 1 / (size * m[3]),
  poissonAlong: -m[1] / m[0],
  poissonAcross: -m[1] / m[3],
  shearModulusMPa: 1 / (size * m[5]),
  shearCouplingAlong: m[2] / m[0],
  shearCouplingAcross: m[4] / m[3],
});
