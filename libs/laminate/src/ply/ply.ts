/** In-plane elastic constants of a ply in its own axes; 1 is along the fibres (or the warp). */
export interface PlyElastic {
  readonly youngAlongMPa: number;
  readonly youngAcrossMPa: number;
  /** ν12: contraction across for stretch along. */
  readonly poissonRatio: number;
  readonly shearModulusMPa: number;
}

/** Strengths of a ply in its own axes, all positive. */
export interface PlyStrength {
  readonly tensionAlongMPa: number;
  readonly compressionAlongMPa: number;
  readonly tensionAcrossMPa: number;
  readonly compressionAcrossMPa: number;
  readonly shearMPa: number;
}

/** Breaking strains as fractions, all positive; absent, strength over modulus. */
export interface PlyBreakingStrain {
  readonly tensionAlong: number;
  readonly compressionAlong: number;
  readonly tensionAcross: number;
  readonly compressionAcross: number;
  readonly shear: number;
}

/** Free growth of a ply: per kelvin and per unit of moisture taken up (mass fraction). */
export interface PlyExpansion {
  readonly thermalAlongPerK: number;
  readonly thermalAcrossPerK: number;
  readonly moistureAlong: number;
  readonly moistureAcross: number;
}

export interface Ply extends PlyElastic {
  readonly name?: string;
  readonly thicknessMm: number;
  /** From the laminate's x axis towards y. */
  readonly angleDeg: number;
  readonly strength?: PlyStrength;
  readonly breakingStrain?: PlyBreakingStrain;
  readonly expansion?: PlyExpansion;
}

/** Strains a ply breaks at: as given, otherwise strength over modulus, which takes it as linear to failure. */
export function breakingStrainOf(ply: Ply): PlyBreakingStrain | undefined {
  if (ply.breakingStrain !== undefined) return ply.breakingStrain;
  const { strength } = ply;
  if (strength === undefined) return undefined;
  return {
    tensionAlong: strength.tensionAlongMPa / ply.youngAlongMPa,
    compressionAlong: strength.compressionAlongMPa / ply.youngAlongMPa,
    tensionAcross: strength.tensionAcrossMPa / ply.youngAcrossMPa,
    compressionAcross: strength.compressionAcrossMPa / ply.youngAcrossMPa,
    shear: strength.shearMPa / ply.shearModulusMPa,
  };
}
