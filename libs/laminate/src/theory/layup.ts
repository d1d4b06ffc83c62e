import type { FabricLayer, Reinforcement, ResinSystem } from '#lib/catalogue';
import { problem, refusal, success, type Outcome, type Problem, laidOver } from '#lib/kernel';
import type { ResinConstants } from '../ply/constituents.js';
import { defaultFraction, type FractionKind } from '../ply/default-fractions.js';
import { numberFaults } from '#lib/asking';
import type { Ply, PlyBreakingStrain } from '../ply/ply.js';
import type { PlyLayup, PlyMethod, PlyMethodName, PlyProperties, Remark } from '../ply/ply-method.js';
import { basisFaults, findPlyMethod, methodFaults, plyMethods } from '../ply/ply-properties.js';
import { stackFibreFraction, thicknessOf } from '../ply/ply-thickness.js';

export interface LayupRequest {
  readonly material: Reinforcement;
  readonly resin: ResinConstants;
  readonly method: PlyMethodName;
  /** Of the whole fabric; the catalogue's value for hand lay-up when absent. */
  readonly fibreMassFraction?: number;
  /** Roll direction from the panel's x axis. */
  readonly turnDeg?: number;
}

export interface LaidPly extends Ply {
  readonly layup: PlyLayup;
  readonly arealMassGPerM2: number;
  readonly fibreMassFraction: number;
  readonly resinGPerM2: number;
  readonly partialFactors?: PlyBreakingStrain;
}

/** One fabric, wet out: its plies bottom first, and what it weighs. */
export interface Layup {
  readonly material: string;
  readonly method: PlyMethodName;
  readonly plies: readonly LaidPly[];
  readonly thicknessMm: number;
  readonly arealMassGPerM2: number;
  readonly resinGPerM2: number;
  readonly fibreMassFraction: number;
  /** As the method takes them. */
  readonly fibreDensityKgPerM3: number;
  readonly resinDensityKgPerM3: number;
  readonly remarks: readonly Remark[];
}

/** What lamination theory needs of a resin of the catalogue. */
export const resinConstantsOf = (resin: ResinSystem): ResinConstants => ({
  chemistry: resin.chemistry,
  densityKgPerM3: resin.curedDensityGPerCm3.value * 1000,
  youngMPa: resin.youngModulusMPa.value,
  poissonRatio: resin.poissonRatio.value,
});

/** Mat as one ply equal in all directions, woven and stitched fabric as fibres at their angles, a hybrid as its layers. */
export function layupOf(request: LayupRequest): Outcome<Layup> {
  const { material, resin, turnDeg = 0 } = request;
  const method = findPlyMethod(request.method);
  if (method === undefined) {
    return refusal(
      problem('not-one-of', '/method', {
        value: String(request.method),
        choices: plyMethods.map(({ name }) => name).join(', '),
      }),
    );
  }
  const fibreMassFraction = request.fibreMassFraction ?? material.fibreMassFraction.value;
  const early = [
    ...basisFaults({ layup: 'mat', fibreMassFraction, resin }),
    ...numberFaults('/turnDeg', turnDeg, { from: -360, upTo: 360 }),
    ...resinFaults(material, resin),
  ];
  if (early.length > 0) return refusal(...early);
  const pieces = piecesOf(material.layers, fibreMassFraction, method);
  const late = unique(
    pieces.flatMap(({ layup, fibreMassFraction: psi }) =>
      methodFaults(method, { layup, fibreMassFraction: psi, resin }),
    ),
  );
  if (late.length > 0) return refusal(...late);
  return success(laid(request, method, pieces));
}

function laid(
  { material, resin, turnDeg = 0 }: LayupRequest,
  method: PlyMethod,
  pieces: readonly Piece[],
): Layup {
  const built = pieces.map((piece) => ({
    piece,
    properties: method.propertiesOf({
      layup: piece.layup,
      fibreMassFraction: piece.fibreMassFraction,
      resin,
    }),
  }));
  const plies = built.map(({ piece, properties }) => plyFrom(piece, properties, turnDeg));
  return {
    material: material.code,
    method: method.name,
    plies,
    thicknessMm: sum(plies, 'thicknessMm'),
    arealMassGPerM2: sum(plies, 'arealMassGPerM2'),
    resinGPerM2: sum(plies, 'resinGPerM2'),
    fibreMassFraction: stackFibreFraction(plies),
    fibreDensityKgPerM3: built[0].properties.fibreDensityKgPerM3,
    resinDensityKgPerM3: built[0].properties.resinDensityKgPerM3,
    remarks: uniqueRemarks(built.flatMap(({ properties }) => properties.remarks)),
  };
}

const sum = (plies: readonly LaidPly[], key: 'thicknessMm' | 'arealMassGPerM2' | 'resinGPerM2'): number =>
  plies.reduce((total, ply) => total + ply[key], 0);

function plyFrom(piece: Piece, properties: PlyProperties, turnDeg: number): LaidPly {
  const { arealMassGPerM2, fibreMassFraction } = piece;
  const optional = {
    ...(properties.strength === undefined ? {} : { strength: properties.strength }),
    ...(properties.breakingStrain === undefined ? {} : { breakingStrain: properties.breakingStrain }),
    ...(properties.partialFactors === undefined ? {} : { partialFactors: properties.partialFactors }),
  };
  return {
    layup: piece.layup,
    arealMassGPerM2,
    fibreMassFraction,
    resinGPerM2: (arealMassGPerM2 * (1 - fibreMassFraction)) / fibreMassFraction,
    thicknessMm: thicknessOf({
      arealMassGPerM2,
      fibreMassFraction,
      fibreDensityKgPerM3: properties.fibreDensityKgPerM3,
      resinDensityKgPerM3: properties.resinDensityKgPerM3,
    }),
    angleDeg: piece.angleDeg + turnDeg,
    youngAlongMPa: properties.youngAlongMPa,
    youngAcrossMPa: properties.youngAcrossMPa,
    poissonRatio: properties.poissonRatio,
    shearModulusMPa: properties.shearModulusMPa,
    ...optional,
  };
}

interface Piece {
  readonly layup: PlyLayup;
  readonly angleDeg: number;
  readonly arealMassGPerM2: number;
  readonly fibreMassFraction: number;
}

function piecesOf(
  layers: readonly FabricLayer[],
  fibreMassFraction: number,
  method: PlyMethod,
): readonly Piece[] {
  const weighed = withFractions(layers, fibreMassFraction);
  const joined = method.layups.includes('unidirectional') ? weighed : pairsJoined(weighed);
  return method.wovenAs === 'one-ply' ? joined : joined.flatMap(halved);
}

const kindOf = (layer: FabricLayer, layers: readonly FabricLayer[]): FractionKind =>
  layer.layup === 'unidirectional' && layers.length > 1 ? 'multiaxial' : layer.layup;

/** The layers keep the proportions of their usual fractions, scaled so that the fabric as a whole has its own. */
function withFractions(layers: readonly FabricLayer[], whole: number): readonly Piece[] {
  const usual = layers.map((layer) =>
    laidOver(layer, { fibreMassFraction: defaultFraction(kindOf(layer, layers), 'hand-simple').value }),
  );
  const scale = whole / stackFibreFraction(usual);
  return usual.map((layer) => ({ ...layer, fibreMassFraction: layer.fibreMassFraction * scale }));
}

const isRightAngle = (a: number, b: number): boolean => Math.abs(a - b) % 180 === 90;

/** Two equal layers of fibres at right angles are what such a method calls 0/90. */
function pairsJoined(pieces: readonly Piece[]): readonly Piece[] {
  const joined: Piece[] = [];
  for (let i = 0; i < pieces.length; i += 1) {
    const [here, next] = [pieces[i], pieces.at(i + 1)];
    const isPair =
      here.layup === 'unidirectional' &&
      next?.layup === 'unidirectional' &&
      here.arealMassGPerM2 === next.arealMassGPerM2 &&
      isRightAngle(here.angleDeg, next.angleDeg);
    joined.push(isPair ? { ...here, layup: 'woven', arealMassGPerM2: 2 * here.arealMassGPerM2 } : here);
    i += isPair ? 1 : 0;
  }
  return joined;
}

const halved = (piece: Piece): readonly Piece[] =>
  piece.layup === 'woven'
    ? [0, 90].map((turn) => ({
        ...piece,
        layup: 'unidirectional' as const,
        angleDeg: piece.angleDeg + turn,
        arealMassGPerM2: piece.arealMassGPerM2 / 2,
      }))
    : [piece];

const resinFaults = (material: Reinforcement, resin: ResinConstants): readonly Problem[] =>
  material.suitsResins.includes(resin.chemistry)
    ? []
    : [
        problem('contradiction', '/material', {
          other: 'the resin',
          why: `${material.name} goes with ${material.suitsResins.join(' or ')}, not ${resin.chemistry}`,
        }),
      ];

const unique = (problems: readonly Problem[]): readonly Problem[] => [
  ...new Map(
    problems.map((found) => [`${found.code} ${found.at} ${JSON.stringify(found.facts)}`, found]),
  ).values(),
];

const uniqueRemarks = (remarks: readonly Remark[]): readonly Remark[] => [
  ...new Map(remarks.map((remark) => [`${remark.about} ${remark.words}`, remark])).values(),
];
