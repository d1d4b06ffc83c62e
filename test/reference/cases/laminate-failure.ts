import {
  firstPlyFailure,
  noClimate,
  onsetOf,
  progressiveFailure,
  type Criterion,
  type Ply,
  type PlyLimits,
  type Stress,
} from '#lib/laminate';
import type { PublishedCase } from '../published-case.js';

const of = (id: string, rest: Omit<PublishedCase, 'id' | 'room'>): PublishedCase => ({
  id: `laminate-${id}`,
  room: 'laminate',
  ...rest,
});

/** Published strengths of unidirectional E-glass and epoxy: Xt 1080, Xc 620, Yt 39, Yc 128, S 89 MPa. */
const glassEpoxy: Ply = {
  youngAlongMPa: 38_600,
  youngAcrossMPa: 8270,
  poissonRatio: 0.26,
  shearModulusMPa: 4140,
  thicknessMm: 1,
  angleDeg: 0,
  strength: {
    tensionAlongMPa: 1080,
    compressionAlongMPa: 620,
    tensionAcrossMPa: 39,
    compressionAcrossMPa: 128,
    shearMPa: 89,
  },
};

const pulled = (angleDeg: number, criterion: Criterion): number =>
  firstPlyFailure(
    [{ ...glassEpoxy, angleDeg }],
    { forcesNPerMm: [1, 0, 0], momentsN: [0, 0, 0] },
    noClimate,
    criterion,
  )?.loadFactor ?? Number.NaN;

const offAxis = {
  kind: 'by-hand',
  source: 'TUE-4MM00-2023',
  locus: 'failure example 1: strengths read, curve only plotted; closed form evaluated apart from this code',
  unit: 'MPa',
} as const;
const tolerance = { relative: 1e-4, because: 'stated to five or six digits' } as const;

const offAxisCase = (criterion: Criterion, angleDeg: number, printed: string): PublishedCase =>
  of(`off-axis-${criterion}-${angleDeg}`, {
    ...offAxis,
    title: `Pull at ${angleDeg} degrees to the fibres, ${criterion}`,
    printed,
    ours: () => pulled(angleDeg, criterion),
    tolerance,
  });

const hoffmanLimits: PlyLimits = {
  elastic: glassEpoxy,
  strength: {
    tensionAlongMPa: 100,
    compressionAlongMPa: 80,
    tensionAcrossMPa: 30,
    compressionAcrossMPa: 60,
    shearMPa: 20,
  },
  breakingStrain: { tensionAlong: 1, compressionAlong: 1, tensionAcross: 1, compressionAcross: 1, shear: 1 },
};
const unloaded: Stress = [0, 0, 0];

// By hand, [0/90]s of 1 mm plies, E1 40000, E2 10000, ν12 0.25, G 5000 under Nx: ν21 = 0.0625, 1 - ν12 ν21 = 0.984375,
// Q11 = 40634.92, Q22 = 10158.73, Q12 = 2539.683; A11 = A22 = 4 x 25396.83 = 101587.3, A12 = 4 x 2539.683 = 10158.73.
// a11 = A11/(A11² - A12²) = 9.942884e-6, a12 = -9.942884e-7. In the 90 ply σ2 (along x) = Q22 a11 + Q12 a12 = 0.1010070 - 0.0025252 = 0.0984818 MPa per N/mm.
// With Yt = 39 the 90 ply cracks at Nx = 39/0.0984818 = 396.01 N/mm.
const handPly = (angleDeg: number): Ply => ({
  youngAlongMPa: 40_000,
  youngAcrossMPa: 10_000,
  poissonRatio: 0.25,
  shearModulusMPa: 5000,
  thicknessMm: 1,
  angleDeg,
  strength: {
    tensionAlongMPa: 1080,
    compressionAlongMPa: 620,
    tensionAcrossMPa: 39,
    compressionAcrossMPa: 128,
    shearMPa: 89,
  },
});
const handStack = [0, 90, 90, 0].map(handPly);
const pull = { forcesNPerMm: [1, 0, 0], momentsN: [0, 0, 0] } as const;

// After the 90 plies lose all but a millionth of E2, G12 and ν12, the two 0 plies carry Nx/2 mm alone: fibres fail at 2 x 1080 = 2160 N/mm,
// less the little that ν12 of the 0 plies takes: their own matrix fails under the Poisson strain only if held across, which cracked plies' fibres do.
const ultimate = () =>
  progressiveFailure(handStack, pull, noClimate, {
    criterion: 'max-stress',
    degradation: { fibreFraction: 1e-6, matrixFraction: 1e-6 },
  })?.ultimateFactor ?? Number.NaN;

export const failureCases: readonly PublishedCase[] = [
  of('hoffman-uniaxial', {
    title: 'Reserve by Hoffman in a pull along the fibres of 25 MPa with Xt 100 and Xc 80',
    source: 'BV-NR546-2022',
    locus: 'Hoffman test',
    unit: '1',
    printed: '4.0',
    ours: () => onsetOf('hoffman', hoffmanLimits, unloaded, [25, 0, 0])?.factor ?? Number.NaN,
    tolerance: { relative: 1e-12, because: 'Xt over σ exactly' },
  }),
  ...(
    [
      [0, '1080'],
      [15, '356'],
      [30, '156'],
      [45, '78'],
      [60, '52'],
      [90, '39'],
    ] as const
  ).map(([angle, printed]) => offAxisCase('max-stress', angle, printed)),
  ...(
    [
      [0, '1080'],
      [15, '303.88'],
      [30, '123.323'],
      [45, '70.992'],
      [60, '50.264'],
      [90, '39'],
    ] as const
  ).map(([angle, printed]) => offAxisCase('tsai-wu', angle, printed)),
  of('crossply-first', {
    kind: 'by-hand',
    title: 'First crack of [0/90]s under Nx, maximum stress',
    source: 'LAMINATE-BY-HAND',
    locus: 'steps in the comment',
    unit: 'N/mm',
    printed: '396.01',
    ours: () => firstPlyFailure(handStack, pull, noClimate, 'max-stress')?.loadFactor ?? Number.NaN,
    tolerance: { absolute: 0.02, because: 'seven digits carried by hand' },
  }),
  of('crossply-last', {
    kind: 'limit',
    title: 'The same after its matrix is gone: the 0 plies alone, 2 x 1080',
    source: 'LAMINATE-BY-HAND',
    locus: 'equilibrium of the 0 plies',
    unit: 'N/mm',
    printed: '2160',
    ours: ultimate,
    tolerance: { relative: 1e-5, because: 'a millionth of the matrix is left' },
  }),
];
