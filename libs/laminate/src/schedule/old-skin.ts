import { below, refusal, success, type Outcome } from '#lib/kernel';
import type { Reinforcement } from '#lib/catalogue';
import { constituentSets, type ResinConstants } from '../ply/constituents.js';
import { defaultFraction } from '../ply/default-fractions.js';
import { numberFaults, skinThicknessAsked, type Assumption, commonPractice } from '#lib/asking';
import { layupOf, type LaidPly } from '../theory/layup.js';
import type { PlyLayup, PlyMethod } from '../ply/ply-method.js';
import { methodFaults } from '../ply/ply-properties.js';
import { measureSkin, type SkinMeasure } from '../theory/skin.js';
import { thicknessOf } from '../ply/ply-thickness.js';

export interface OldPly {
  readonly material: Reinforcement;
  readonly turnDeg?: number;
  readonly fibreMassFraction?: number;
}

/** The skin that was there: its measured thickness, and its plies from the core outwards where known. */
export interface OldSkin {
  readonly thicknessMm: number;
  readonly plies?: readonly OldPly[];
  /** Polyester when absent. */
  readonly resin?: ResinConstants;
}

export interface SkinBuild {
  readonly measure: SkinMeasure;
  readonly plies: readonly LaidPly[];
}

export interface OldSkinMeasure extends SkinBuild {
  /** Where the plies were guessed: the same thickness as its weakest and strongest likely build. */
  readonly low?: SkinBuild;
  readonly high?: SkinBuild;
  readonly assumptions: readonly Assumption[];
}

/** Mat's part of the glass: likely, and the builds at either end. */
export const guessedMatShare = { likely: 0.5, weakest: 1, strongest: 0.3 } as const;

const practice = commonPractice.source;

/** The old skin's stiffness and strength by one method: from its plies, otherwise guessed from its thickness. Problems point into `old`. */
export function measureOldSkin(old: OldSkin, method: PlyMethod): Outcome<OldSkinMeasure> {
  const faults = numberFaults('/thicknessMm', old.thicknessMm, {
    above: 0,
    upTo: skinThicknessAsked.range.upTo,
    unit: 'mm',
  });
  if (faults.length > 0) return refusal(...faults);
  return old.plies === undefined ? guessed(old, method) : fromPlies(old, old.plies, method);
}

const oldResinOf = ({
  resin,
}: OldSkin): { readonly resin: ResinConstants; readonly assumptions: readonly Assumption[] } =>
  resin === undefined
    ? {
        resin: constituentSets.bv.resins.polyester,
        assumptions: [
          {
            at: '/oldSkin/resin',
            meaning: 'resin of the old skin',
            value: 'polyester',
            because: 'nearly all moulded decks are',
            source: practice,
          },
        ],
      }
    : { resin, assumptions: [] };

function fromPlies(old: OldSkin, plies: readonly OldPly[], method: PlyMethod): Outcome<OldSkinMeasure> {
  const { resin, assumptions } = oldResinOf(old);
  const layups = plies.map((ply, i) => ({ i, outcome: layupOf({ ...ply, resin, method: method.name }) }));
  const problems = layups.flatMap(({ i, outcome }) =>
    outcome.ok ? [] : below(`/plies/${i}`, outcome.problems),
  );
  if (problems.length > 0) return refusal(...problems);
  const laid = layups.flatMap(({ outcome }) => (outcome.ok ? outcome.value.plies : []));
  const measure = measureSkin(laid);
  return success({
    measure,
    plies: laid,
    assumptions: [...assumptions, ...thicknessNote(old.thicknessMm, measure.thicknessMm)],
  });
}

const thicknessNote = (measuredMm: number, computedMm: number): readonly Assumption[] => {
  const difference = computedMm - measuredMm;
  if (Math.abs(difference) <= 0.15 * measuredMm) return [];
  return [
    {
      at: '/oldSkin/thicknessMm',
      meaning: 'thickness of the old skin',
      value: `${measuredMm} mm for the surface, ${computedMm.toFixed(2)} mm for stiffness and strength`,
      because: `the plies named come to ${computedMm.toFixed(2)} mm while ${measuredMm} mm was measured; hand lay-up repeats its thickness to about 15 %`,
      source: practice,
    },
  ];
};

function guessed(old: OldSkin, method: PlyMethod): Outcome<OldSkinMeasure> {
  const { resin, assumptions } = oldResinOf(old);
  const faults = (['mat', 'woven'] as const).flatMap((layup) =>
    methodFaults(method, { layup, fibreMassFraction: psiOf(layup), resin }),
  );
  if (faults.length > 0) return refusal(...faults);
  const build = (matShare: number): SkinBuild => {
    const plies = guessedPlies(old.thicknessMm, matShare, { resin, method });
    return { measure: measureSkin(plies), plies };
  };
  return success({
    ...build(guessedMatShare.likely),
    low: build(guessedMatShare.weakest),
    high: build(guessedMatShare.strongest),
    assumptions: [
      ...assumptions,
      {
        at: '/oldSkin/plies',
        meaning: 'plies of the old skin',
        value: 'half the glass mat, half woven roving; at the ends all mat, and three tenths mat',
        because:
          'guessed from the thickness: decks of the trade are mat and woven roving in turns, laid by hand; no source ties builds to years',
        source: practice,
      },
    ],
  });
}

const psiOf = (layup: 'mat' | 'woven'): number => defaultFraction(layup, 'hand-simple').value;

/** Half the mat under the roving and half over it; an all-mat skin is one ply. */
function guessedPlies(
  thicknessMm: number,
  matShare: number,
  { resin, method }: { readonly resin: ResinConstants; readonly method: PlyMethod },
): readonly LaidPly[] {
  const mat = laidAt('mat', resin, method);
  const woven = laidAt('woven', resin, method);
  const glass = thicknessMm / (matShare * mat.thicknessMm + (1 - matShare) * woven.thicknessMm);
  if (matShare === 1) return [scaled(mat, glass)];
  return [
    scaled(mat, (glass * matShare) / 2),
    scaled(woven, glass * (1 - matShare)),
    scaled(mat, (glass * matShare) / 2),
  ];
}

/** A ply of one g/m2 of glass. */
function laidAt(
  layup: Extract<PlyLayup, 'mat' | 'woven'>,
  resin: ResinConstants,
  method: PlyMethod,
): LaidPly {
  const fibreMassFraction = psiOf(layup);
  const properties = method.propertiesOf({ layup, fibreMassFraction, resin });
  const {
    strength,
    breakingStrain,
    partialFactors,
    youngAlongMPa,
    youngAcrossMPa,
    poissonRatio,
    shearModulusMPa,
  } = properties;
  return {
    layup,
    arealMassGPerM2: 1,
    fibreMassFraction,
    resinGPerM2: (1 - fibreMassFraction) / fibreMassFraction,
    angleDeg: 0,
    thicknessMm: thicknessOf({
      arealMassGPerM2: 1,
      fibreMassFraction,
      fibreDensityKgPerM3: properties.fibreDensityKgPerM3,
      resinDensityKgPerM3: properties.resinDensityKgPerM3,
    }),
    youngAlongMPa,
    youngAcrossMPa,
    poissonRatio,
    shearModulusMPa,
    ...(strength === undefined ? {} : { strength }),
    ...(breakingStrain === undefined ? {} : { breakingStrain }),
    ...(partialFactors === undefined ? {} : { partialFactors }),
  };
}

const scaled = (ply: LaidPly, glassGPerM2: number): LaidPly => ({
  ...ply,
  arealMassGPerM2: glassGPerM2,
  resinGPerM2: ply.resinGPerM2 * glassGPerM2,
  thicknessMm: ply.thicknessMm * glassGPerM2,
});
