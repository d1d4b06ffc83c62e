import {
  distance,
  nearestOnRing,
  ringsOf,
  roundedCorners,
  type Point,
  type Region,
  type Ring,
} from '#lib/geometry';
import { m2FromMm2, mm2 } from '#lib/units';
import { finding, roundTo, toWholeMm, type Finding } from '../finding.js';
import { cornerRadii, type CutShape } from './cut-shape.js';
import type { DeckUnderCut } from './ground.js';
import { gapBetween, neededBridgeMm } from './merge.js';
import { reachUnder } from './reach.js';
import { cutsAlongSupports, supportsUnder } from './supports.js';
import type { SkinPieces } from './pieces.js';

/** What one opening came to, ready to be judged. */
export interface JudgedOpening {
  readonly label: string;
  readonly shape: CutShape;
  readonly undercut: Region;
  readonly pieces: SkinPieces;
}

/** Smaller radii start cracks: the low end of what the trade cuts. */
const LEAST_RADIUS_MM = 25;

/** Core nearer than this to the cut is reached in any case. */
const REACH_TOLERANCE_MM = 1;

/** Everything about one opening that does not fit, with numbers. */
export const shapeFindings = (opening: JudgedOpening, deck: DeckUnderCut): readonly Finding[] => [
  ...undercutFindings(opening, deck),
  ...taperFindings(opening, deck),
  ...supportFindings(opening, deck),
  ...cornerFindings(opening, deck),
  ...pieceFindings(opening, deck),
];

function undercutFindings(
  { label, shape, undercut }: JudgedOpening,
  { rules }: DeckUnderCut,
): readonly Finding[] {
  const reachMm = reachUnder(undercut, shape.region);
  return reachMm > rules.undercutReachMm + REACH_TOLERANCE_MM
    ? [
        finding('undercut-too-deep', {
          opening: label,
          reachMm: toWholeMm(reachMm),
          mostMm: rules.undercutReachMm,
        }),
      ]
    : [];
}

function taperFindings({ label, shape }: JudgedOpening, deck: DeckUnderCut): readonly Finding[] {
  const room = taperRoom(shape.region, deck.panel);
  if (room === undefined || room.mm >= deck.taperWidthMm - 0.5) return [];
  return [
    finding('no-room-for-taper', {
      opening: label,
      neededMm: toWholeMm(deck.taperWidthMm),
      availableMm: toWholeMm(room.mm),
      xMm: toWholeMm(room.at[0]),
      yMm: toWholeMm(room.at[1]),
    }),
  ];
}

/** Skin between the cut and the nearest edge or hole of the panel, and where. */
export function taperRoom(
  opening: Region,
  panel: Region,
): { readonly mm: number; readonly at: Point } | undefined {
  const [cuts, edges] = [ringsOf(opening), ringsOf(panel)];
  const pairs = cuts.flatMap((cut) =>
    edges.flatMap((edge) => [
      ...nearestPairs(cut, edge),
      ...nearestPairs(edge, cut).map(({ mm, at, on }) => ({ mm, at: on, on: at })),
    ]),
  );
  return pairs.reduce<{ readonly mm: number; readonly at: Point } | undefined>(
    (best, { mm, at }) => (best === undefined || mm < best.mm ? { mm, at } : best),
    undefined,
  );
}

const nearestPairs = (
  corners: Ring,
  ring: Ring,
): readonly { readonly mm: number; readonly at: Point; readonly on: Point }[] =>
  corners.map((at) => {
    const on = nearestOnRing(at, ring);
    return { mm: distance(at, on), at, on };
  });

const supportFindings = ({ label, shape }: JudgedOpening, deck: DeckUnderCut): readonly Finding[] => {
  const { supportClearanceMm: clearanceMm } = deck.rules;
  return [
    ...cutsAlongSupports(shape, deck).map(({ support, lengthMm, awayMm }) =>
      finding('cut-on-support', {
        opening: label,
        kind: support.kind,
        lengthMm: toWholeMm(lengthMm),
        awayMm: toWholeMm(awayMm),
        clearanceMm,
      }),
    ),
    ...supportsUnder(shape, deck).map(({ support, at }) =>
      finding('cut-crosses-support', {
        opening: label,
        kind: support.kind,
        xMm: toWholeMm(at[0]),
        yMm: toWholeMm(at[1]),
        clearanceMm,
      }),
    ),
  ];
};

function cornerFindings({ label, shape }: JudgedOpening, { rules }: DeckUnderCut): readonly Finding[] {
  const wanted = Math.min(LEAST_RADIUS_MM, rules.cornerRadiusMm);
  const radii = ringsOf(shape.sharp)
    .flatMap((ring) => roundedCorners(ring, cornerRadii(rules)))
    .map(({ radiusMm }) => radiusMm)
    .filter((radius) => radius > 0);
  const tightest = Math.min(...radii, Number.MAX_VALUE);
  return tightest < wanted - 0.5
    ? [finding('corner-too-tight', { opening: label, radiusMm: toWholeMm(tightest), leastMm: wanted })]
    : [];
}

function pieceFindings({ label, pieces }: JudgedOpening, { rules }: DeckUnderCut): readonly Finding[] {
  const { bondableAreaM2 = Number.MAX_VALUE, bondableLengthMm = Number.MAX_VALUE } = rules;
  const areaM2 = m2FromMm2(mm2(pieces.largest.areaMm2));
  const isTooLarge = areaM2 > bondableAreaM2 * 1.15 || pieces.largest.lengthMm > bondableLengthMm * 1.15;
  if (!isTooLarge) return [];
  return [
    finding('piece-too-large', {
      opening: label,
      areaM2: roundTo(areaM2, 2),
      lengthMm: toWholeMm(pieces.largest.lengthMm),
      mostM2: rules.bondableAreaM2 ?? 'any',
      mostMm: rules.bondableLengthMm ?? 'any',
    }),
  ];
}

/** Bridges of skin between openings that are too narrow for the tapers of both. */
export function bridgeFindings(openings: readonly JudgedOpening[], deck: DeckUnderCut): readonly Finding[] {
  const needed = neededBridgeMm(deck);
  return openings.flatMap((one, index) =>
    openings.slice(index + 1).flatMap((other) => {
      const bridgeMm = gapBetween(one.shape.region, other.shape.region);
      return bridgeMm < needed - 0.5
        ? [
            finding('narrow-bridge', {
              opening: one.label,
              other: other.label,
              bridgeMm: toWholeMm(bridgeMm),
              neededMm: toWholeMm(needed),
            }),
          ]
        : [];
    }),
  );
}
