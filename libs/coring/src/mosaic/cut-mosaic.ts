import { pointer, problem, refusal, success, type Outcome, type Problem } from '#lib/kernel';
import { faultsIn, saidOr } from '#lib/asking';
import { areaMm2, difference, type Region } from '#lib/geometry';
import { assumptionsOf, type Figure } from '#lib/provenance';
import { chosenDivision, type MosaicDivision } from './division.js';
import { mosaicFindings, type MosaicFinding } from './findings.js';
import { buttLengthMm, jointLengthMm, jointOnSupportMm } from './joints.js';
import { hasGrain, MM2_PER_M2, usualInsideMm } from './layer-cells.js';
import { beddedLayer, type BeddedLayer } from './layer-pieces.js';
import { pieceOf, type CorePiece, type PlacedCut } from './piece.js';
import { openAreaOf, type MosaicRequest, type OpeningToFill } from './request.js';
import {
  grainAsked,
  mosaicFigures,
  mosaicNumbers,
  mosaicRuleQuestions,
  type MosaicNumbers,
  type MosaicRules,
} from './rules.js';
import { cavityDivision, solidFill, takenFrom, type CavityDivision, type SolidFill } from './solid-fill.js';

/** Core, joints and what is filled solid: together the cavities of the openings, layer by layer. */
export interface Mosaic {
  /** The pieces, in the order they are bedded. */
  readonly pieces: readonly CorePiece[];
  /** Places that take no core. Never under or over a piece. */
  readonly solidFills: readonly SolidFill[];
  /** How many pieces, and why so many. */
  readonly division: MosaicDivision;
  /** Area of all pieces. */
  readonly netAreaM2: number;
  /** Opening and undercut, each as often as there are layers. */
  readonly regionAreaM2: number;
  /** Gaps between pieces and round them. */
  readonly jointAreaM2: number;
  /** Filled solid, each place as often as it takes the place of a layer. */
  readonly solidAreaM2: number;
  /** Volume that is filled solid in place of core. */
  readonly solidVolumeL: number;
  /** Length of all joints between pieces. */
  readonly jointLengthM: number;
  /** Of it what runs across the grain; 0 where the core has no grain in its plane. */
  readonly buttLengthM: number;
  /** Length of joint that runs along a support in spite of everything. */
  readonly jointOnSupportM: number;
  /** What about the pieces deserves attention. */
  readonly findings: readonly MosaicFinding[];
  /** Limits of a piece that nobody stated. */
  readonly assumptions: readonly Figure[];
}

/** Divides what is to be cored into pieces that a person can bed, labelled in the order in which they go in. */
export function cutMosaic(request: MosaicRequest): Outcome<Mosaic> {
  const problems = mosaicProblems(request);
  if (problems.length > 0) return refusal(...problems);
  return success(mosaicOf(request, mosaicNumbers(request.rules)));
}

const mosaicProblems = ({ openings, layers, rules }: MosaicRequest): readonly Problem[] => [
  ...divisionProblems(openings, rules),
  ...(layers.length === 0 ? [problem('too-few', '/layers', { count: 0, least: 1 })] : []),
];

/** Faults of openings and rules, all at once. */
export function divisionProblems(
  openings: readonly OpeningToFill[],
  rules: MosaicRules = {},
): readonly Problem[] {
  const labels = openings.map(({ label }) => label);
  return [
    ...(openings.length === 0 ? [problem('too-few', '/openings', { count: 0, least: 1 })] : []),
    ...labels.flatMap((label, k) =>
      labels.indexOf(label) < k
        ? [problem('duplicate', pointer('/openings', k, 'label'), { value: label })]
        : [],
    ),
    ...openings.flatMap(({ area }, k) =>
      areaMm2([area]) > 1
        ? []
        : [problem('outline-without-area', pointer('/openings', k, 'area'), { hint: '' })],
    ),
    ...faultsIn(rules, mosaicRuleQuestions, '/mosaicRules'),
  ];
}

/** Pairs of a corner and an edge that the search for ways in may look at for one division of one opening and layer: some ten milliseconds. */
const MOST_WORK = 500_000;

interface CoredLayer extends BeddedLayer {
  readonly opening: OpeningToFill;
  readonly layer: number;
  /** What takes core in the end. */
  readonly coreable: Region;
}

function mosaicOf(request: MosaicRequest, numbers: MosaicNumbers): Mosaic {
  const cavities = request.openings.map((opening) => ({ opening, parts: cavityDivision(opening, numbers) }));
  const { division, cells } = chosenDivision(
    request,
    cavities.map(({ opening, parts: { coreable } }) => ({ area: openAreaOf(opening), coreable })),
    numbers,
  );
  const layers = request.layers.flatMap((_, layer) =>
    cavities.map(({ opening, parts }, k): CoredLayer => {
      const task = {
        request,
        numbers,
        area: openAreaOf(opening),
        layer,
        largestMm2: division.largestPieceM2 * MM2_PER_M2,
        insideMm: usualInsideMm(layer),
      };
      const bedded = beddedLayer({ ...task, coreable: parts.coreable }, cells[layer][k], MOST_WORK);
      const coreable = difference(
        parts.coreable,
        bedded.solid.map(({ polygon }) => polygon),
      );
      return {
        ...bedded,
        opening,
        layer,
        coreable,
        solid: takenFrom(parts.coreable, coreable, bedded.solid),
      };
    }),
  );
  const cuts = layers.flatMap(({ cuts: own, opening, layer }) =>
    own.map((cut): PlacedCut => ({ ...cut, opening, layer })),
  );
  const pieces = cuts.map((cut, k) =>
    pieceOf(request, cut, { order: k + 1, within: orderWithin(cuts, k), numbers }),
  );
  return answerOf(request, { pieces, layers, cavities, numbers, division });
}

const orderWithin = (cuts: readonly PlacedCut[], at: number): number =>
  cuts.slice(0, at + 1).filter(({ opening }) => opening.label === cuts[at].opening.label).length;

interface Worked {
  readonly pieces: readonly CorePiece[];
  readonly layers: readonly CoredLayer[];
  readonly cavities: readonly { readonly opening: OpeningToFill; readonly parts: CavityDivision }[];
  readonly numbers: MosaicNumbers;
  readonly division: MosaicDivision;
}

function answerOf(request: MosaicRequest, worked: Worked): Mosaic {
  const { pieces, layers, cavities, division, numbers } = worked;
  const supports = (request.supports ?? []).map(({ from, to }) => [from, to] as const);
  const through = cavities.flatMap(({ opening, parts }) =>
    parts.solid.map((region) => solidFill(opening, region, request.cavityMm)),
  );
  const inLayers = layers.flatMap(({ solid, opening, layer }) =>
    solid.map((region) => solidFill(opening, region, request.layers[layer].thicknessMm)),
  );
  const solidFills = [...through, ...inLayers];
  const areaOf = (regions: readonly Region[]): number =>
    regions.reduce((sum, region) => sum + areaMm2(region), 0) / MM2_PER_M2;
  const cells = ({ cuts }: CoredLayer): readonly Region[] => cuts.map(({ cell }) => cell);
  const onSupportMm = layers.reduce(
    (sum, one) => sum + jointOnSupportMm(cells(one), one.coreable, { supports, numbers }),
    0,
  );
  return {
    pieces,
    solidFills,
    division,
    netAreaM2: pieces.reduce((sum, { areaM2 }) => sum + areaM2, 0),
    regionAreaM2: areaOf(cavities.map(({ parts }) => parts.cavity)) * request.layers.length,
    jointAreaM2: areaOf(
      layers.map(({ coreable, cuts }) =>
        difference(
          coreable,
          cuts.map(({ piece }) => piece),
        ),
      ),
    ),
    solidAreaM2: sumOf(through, 'areaM2') * request.layers.length + sumOf(inLayers, 'areaM2'),
    solidVolumeL: sumOf(solidFills, 'volumeL'),
    jointLengthM: layers.reduce((sum, one) => sum + jointLengthMm(cells(one), one.coreable), 0) / MM_PER_M,
    buttLengthM: layers.reduce((sum, one) => sum + buttsOfMm(request, one), 0) / MM_PER_M,
    jointOnSupportM: onSupportMm / MM_PER_M,
    findings: mosaicFindings({
      pieces,
      solidFills,
      onSupportMm,
      unproven: layers.filter(({ isProven }) => !isProven).map(({ opening }) => opening.label),
    }),
    assumptions: Object.values(mosaicFigures(request.rules)).flatMap((figure) => assumptionsOf(figure)),
  };
}

const buttsOfMm = (request: MosaicRequest, { cuts, coreable }: CoredLayer): number =>
  hasGrain(request)
    ? buttLengthMm(
        cuts.map(({ cell }) => cell),
        coreable,
        saidOr(grainAsked, request.grainDeg),
      )
    : 0;

const MM_PER_M = 1000;

const sumOf = (fills: readonly SolidFill[], key: 'areaM2' | 'volumeL'): number =>
  fills.reduce((sum, fill) => sum + fill[key], 0);
