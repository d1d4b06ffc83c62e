/**
 * Thresholds of the ladder, each with where it comes from. A reader who disagrees with one finds it here and nowhere else.
 *
 * Source: [METHODS-IN-PRINT] owner logs, class sites and professional logs as named beside each; [FROM-MEMORY] the rest
 * Worked: libs/methods/src/ladder.spec.ts
 */
export const limits = {
  /** A long hex key through a fastener hole reaches this far past its side: two logs, 25 and 32 mm. */
  reamReachMm: 25,
  /** Pockets merge, and a set of longer keys is at its end: an owner's page on winch pockets. */
  reamFarthestMm: 32,
  /** 6 by 12 in: where a class forum stops digging and cuts. */
  stopDiggingM2: 0.046,
  /** One to two square feet in all. Source: [INJECTION-LIMITS]. */
  injectM2: 0.2,
  /** Above this the caller should look twice: the lower end of the same. */
  injectComfortableM2: 0.1,
  /** Epoxy bonds wood at 12 % or less. Source: [INJECTION-LIMITS]. */
  bondMoisturePercent: 12,
  /** Core suppliers: 20 % or less alone does not justify replacing. */
  keepMoisturePercent: 20,
  /** Fibre saturation, 28 to 30 % in handbooks of wood: from here water is free in the cells. */
  saturationPercent: 28,
  /** An edge of 25 mm under a lip at 15 degC: worked out from published coefficients and tuned. */
  dryingDays: 15,
  /** Saturated core, weeks to a season: from memory. */
  dryingSeasonDays: 60,
  /** A piece of skin that one or two people lift flat: from memory. */
  liftSkinM2: 0.3,
  /** 24 by 36 in: the largest piece from below in print. */
  pieceFromBelowM2: 0.56,
  /** The largest job from below with hours in print. */
  jobFromBelowM2: 1,
  /** From memory. */
  workingHeightMm: 600,
  /** From here the whole panel is cheaper than its islands: from memory, beside one restorer's rule. */
  wholePanelShare: 0.4,
  wholePanelSureShare: 0.5,
  /** From memory. */
  manyIslands: 3,
  /** Hooked tools rout this far under a lip: common practice, 25 to 75 mm. */
  lipReachMm: 75,
  /** Less is a core that no hand can bed under a lip: from memory. */
  coreUnderLipMm: 100,
  /** Upstand that one ply wants up the side of rail or coaming: from memory. */
  upstandMm: 50,
  /** Solid laminate where it is small enough not to weigh: from memory. */
  solidM2: 0.1,
  solidSmallM2: 0.05,
  /** Round the wet boundary, what a cut with its reach must take in: from memory. */
  provenMarginMm: 25,
} as const;

/** Heavier than the core it replaces by this, for solid laminate 12.7 mm thick in place of balsa. */
export const solidOverCoreKgPerM2 = (coreMm: number): number =>
  (coreMm / 1000) * (SOLID_KG_PER_M3 - BALSA_KG_PER_M3);

const SOLID_KG_PER_M3 = 1700;
const BALSA_KG_PER_M3 = 150;
