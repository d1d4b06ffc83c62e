import { refusal, success, type Outcome } from '#lib/kernel';
import { defineFormula } from '#lib/provenance';
import { fraction, mm, mPa } from '#lib/units';
import { faultsIn } from '#lib/asking';
import { jointQuestions, scheduleLimitsQuestions } from '../schedule/asked.js';

const ratioInput = {
  symbol: 'R',
  unit: '1',
  meaning: 'length of the scarf over the thickness',
  from: 1,
  upTo: 100,
} as const;
const stressInput = {
  symbol: 'σ',
  unit: 'MPa',
  meaning: 'stress in the skin across the joint',
  from: 0,
  upTo: 5000,
} as const;
const statics = { source: 'LAMINATE-BY-HAND', clause: 'statics of an inclined joint' } as const;

/** Width of the bevel on one side. */
export const taperWidth = defineFormula({
  id: 'laminate.taper-width',
  title: 'Width of a taper from its ratio',
  cite: { source: 'REPAIR-MAGAZINE-12TO1', note: '12:1 at least, and as thick as the laminate' },
  inputs: {
    thicknessMm: { symbol: 't', unit: 'mm', meaning: 'thickness of the skin', above: 0, upTo: 100 },
    taperRatio: ratioInput,
  },
  output: { symbol: 'L', unit: 'mm', meaning: 'width of the taper on one side' },
  evaluate: ({ thicknessMm, taperRatio }) => mm(thicknessMm * taperRatio),
  worked: [
    {
      at: 'the article and a standards body study page: 6 mm at 12:1',
      given: { thicknessMm: 6, taperRatio: 12 },
      printed: '72',
    },
  ],
});

/** Average shear in the bond of a scarf: σ sin θ cos θ with tan θ = 1/R. */
export const scarfShear = defineFormula({
  id: 'laminate.scarf-shear',
  title: 'Average bond shear in a scarf',
  cite: statics,
  inputs: { stressMPa: stressInput, taperRatio: ratioInput },
  output: { symbol: 'τ', unit: 'MPa', meaning: 'average shear stress in the bond' },
  evaluate: ({ stressMPa, taperRatio }) => mPa((stressMPa * taperRatio) / (1 + taperRatio ** 2)),
  // By hand: 124 x 18 / (1 + 324) = 2232 / 325 = 6.868.
  worked: [{ at: 'by hand: 124 x 18 / 325', given: { stressMPa: 124, taperRatio: 18 }, printed: '6.868' }],
});

/** Average peel in the bond of a scarf: σ sin² θ. */
export const scarfPeel = defineFormula({
  id: 'laminate.scarf-peel',
  title: 'Average stress normal to the bond of a scarf',
  cite: statics,
  inputs: { stressMPa: stressInput, taperRatio: ratioInput },
  output: { symbol: 'σn', unit: 'MPa', meaning: 'average stress normal to the bond' },
  evaluate: ({ stressMPa, taperRatio }) => mPa(stressMPa / (1 + taperRatio ** 2)),
  // By hand: 124 / 325 = 0.38154.
  worked: [{ at: 'by hand: 124 / 325', given: { stressMPa: 124, taperRatio: 18 }, printed: '0.3815' }],
});

/** Least ratio whose bond shear stays within an allowable: the larger root of R/(1 + R²) = τa/σ. */
export const scarfRatio = defineFormula({
  id: 'laminate.scarf-ratio',
  title: 'Scarf ratio that a bond shear allows',
  cite: statics,
  inputs: {
    stressMPa: { ...stressInput, above: 0 },
    allowableShearMPa: { symbol: 'τa', unit: 'MPa', meaning: 'allowable bond shear', above: 0, upTo: 100 },
  },
  output: { symbol: 'R', unit: '1', meaning: 'least length of the scarf over the thickness' },
  evaluate: ({ stressMPa, allowableShearMPa }) => fraction(leastRatio(stressMPa, allowableShearMPa)),
  // By hand: 124/6.9 = 17.971; (17.971 + sqrt(17.971² - 4))/2 = (17.971 + 17.860)/2 = 17.915.
  worked: [
    { at: 'by hand: 124 over 6.9', given: { stressMPa: 124, allowableShearMPa: 6.9 }, printed: '17.915' },
  ],
});

/** 1 where any angle will do: the shear never exceeds half the stress. */
function leastRatio(stress: number, allowable: number): number {
  const ratio = stress / allowable;
  return ratio <= 2 ? 1 : (ratio + Math.sqrt(ratio * ratio - 4)) / 2;
}

export interface ScarfCheckRequest {
  readonly stressMPa: number;
  readonly taperRatio: number;
  readonly allowableShearMPa: number;
  readonly allowablePeelMPa?: number;
}

export interface ScarfCheck {
  readonly shearMPa: number;
  readonly peelMPa: number;
  readonly shearUtilisation: number;
  readonly peelUtilisation?: number;
  readonly leastRatio: number;
  readonly verdict: 'passes' | 'fails';
}

/** Average stresses in the joint of skin and closing laminate against what the bond allows. */
export function checkScarf(request: ScarfCheckRequest): Outcome<ScarfCheck> {
  const problems = faultsIn(request, { ...jointQuestions, taperRatio: scheduleLimitsQuestions.taperRatio });
  if (problems.length > 0) return refusal(...problems);
  const { stressMPa, taperRatio, allowableShearMPa, allowablePeelMPa } = request;
  const shearMPa = (stressMPa * taperRatio) / (1 + taperRatio ** 2);
  const peelMPa = stressMPa / (1 + taperRatio ** 2);
  const peel = allowablePeelMPa === undefined ? {} : { peelUtilisation: peelMPa / allowablePeelMPa };
  const worst = Math.max(shearMPa / allowableShearMPa, peel.peelUtilisation ?? 0);
  return success({
    shearMPa,
    peelMPa,
    shearUtilisation: shearMPa / allowableShearMPa,
    ...peel,
    leastRatio: leastRatio(stressMPa, allowableShearMPa),
    verdict: worst <= 1 ? 'passes' : 'fails',
  });
}
