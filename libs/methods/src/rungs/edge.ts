import { commonPractice, fromMemory } from '../cites.js';
import type { EdgeFacts, MethodFacts } from '../facts.js';
import { limits } from '../limits.js';
import { defineMethod, type Test } from '../method.js';
import {
  conditionCoreEnd,
  conditionOverlay,
  inPrint,
  needsLip,
  refusedUnderOverlay,
  refusedWithoutBadCore,
} from '../tests.js';

const edgeOf = ({ place: { edge } }: MethodFacts): EdgeFacts | undefined =>
  edge !== 'none' && needsLip(edge.gapMm, edge.flangeMm) ? edge : undefined;

const refusedWithoutEdge: Test = (facts) =>
  edgeOf(facts) === undefined
    ? {
        code: 'no-edge',
        text: 'no bad core lies under the flange of an edge',
        cite: commonPractice,
        wouldFit: 'rot that runs under toe rail, coaming or joint',
      }
    : undefined;

const refusedUnlessEdgeIs =
  (kinds: readonly string[], what: string): Test =>
  (facts) => {
    const edge = edgeOf(facts);
    return edge === undefined || kinds.includes(edge.kind)
      ? undefined
      : {
          code: 'other-edge',
          text: `the edge is a ${edge.kind.replace('-', ' ')}: ${what}`,
          cite: commonPractice,
          wouldFit: 'an opening beside the edge, or routing out from its bare side',
        };
  };

/** What fills a strip, by its width: paste, solid laminate, dense strip, core. */
export function fillFor(
  widthMm: number,
  isUnderLip: boolean,
): 'paste' | 'solid-laminate' | 'dense-strip' | 'core' {
  const coreFromMm = isUnderLip ? limits.coreUnderLipMm : CORE_FROM_MM;
  if (widthMm >= coreFromMm) return 'core';
  if (widthMm < PASTE_BELOW_MM) return 'paste';
  return widthMm <= SOLID_UP_TO_MM ? 'solid-laminate' : 'dense-strip';
}

/** Source: [FROM-MEMORY] minimum widths of what is bedded. */
const PASTE_BELOW_MM = 25;
const SOLID_UP_TO_MM = 40;
const CORE_FROM_MM = 75;

export const edgeRoutAndFill = defineMethod({
  code: 'edge-rout-and-fill',
  title: 'At the edge: leave the lip, rout out under it, fill it solid',
  reach: 'strip',
  cutSide: 'outer',
  skin: 'kept',
  needs: ['where the core ends', 'how deep the strip runs', 'kind of edge'],
  refusals: [
    refusedWithoutBadCore,
    refusedWithoutEdge,
    refusedUnderOverlay,
    (facts) => {
      const edge = edgeOf(facts);
      return edge !== undefined && edge.deepMm > limits.lipReachMm
        ? {
            code: 'deeper-than-tools',
            text: `the strip runs ${Math.round(edge.deepMm)} mm in from the edge; hooked tools rout ${limits.lipReachMm} mm under a lip`,
            value: edge.deepMm,
            limit: limits.lipReachMm,
            unit: 'mm',
            cite: inPrint,
            wouldFit: 'an opening beside the lip, or plies wrapped up the edge',
          }
        : undefined;
    },
  ],
  conditions: [
    conditionOverlay,
    (facts) =>
      edgeOf(facts)?.kind === 'hatch'
        ? {
            code: 'frame-off',
            text: 'the frame comes off, the bare edge of the core is routed from its side, and the frame is bedded anew',
            cite: inPrint,
          }
        : undefined,
  ],
  suits: (facts) => {
    const edge = edgeOf(facts);
    const deepMm = edge?.deepMm ?? 0;
    return {
      code: 'within-tool-reach',
      text: `the strip is ${Math.round(deepMm)} mm deep: hooked tools reach ${limits.lipReachMm} mm under the lip, and core is not bedded under a lip below ${limits.coreUnderLipMm} mm`,
      value: deepMm,
      limit: limits.lipReachMm,
      unit: 'mm',
      cite: inPrint,
    };
  },
  rank: () => 42,
  leavesUndone: () => ['beyond what this plan does about the leak, the joint and its bolts stay as they are'],
  stages: [
    'slot along the inboard side',
    'rout to clean laminate',
    'dry',
    'wet out',
    'fill in lifts',
    'close the slot with tapes',
  ],
  operations: [
    'spot-look',
    'spot-protect',
    'strip-cut',
    'strip-rout',
    'strip-fill',
    'strip-close',
    'spot-check',
    'spot-clean-up',
  ],
  cautions: [],
  drawings: ['plan', 'edge-section'],
});

export const edgeWrap = defineMethod({
  code: 'edge-wrap',
  isToTheEdge: true,
  edgeWork: 'upstand',
  title: 'At the edge: open to the joint, wrap the new plies up the upstand',
  reach: 'opening',
  cutSide: 'outer',
  skin: 'new',
  needs: ['height of the upstand', 'where the core ends', 'kind of edge'],
  refusals: [
    refusedWithoutBadCore,
    refusedWithoutEdge,
    refusedUnderOverlay,
    refusedUnlessEdgeIs(['toe-rail', 'coaming', 'hull-joint', 'other'], 'there is nothing to wrap up'),
  ],
  conditions: [
    () => ({
      code: 'upstand',
      text: `the side of rail or coaming must give each ply ${limits.upstandMm} mm, over a fillet of 10 to 15 mm radius`,
      value: limits.upstandMm,
      unit: 'mm',
      cite: fromMemory,
    }),
    conditionOverlay,
    conditionCoreEnd,
  ],
  suits: () => ({
    code: 'plies-turn-up',
    text: 'no flange is left to land on: the plies turn up the side',
    cite: inPrint,
  }),
  rank: () => 58,
  leavesUndone: () => ['the joint under the rail stays closed'],
  stages: [
    'cut to the joint',
    'core out',
    'dry',
    'core or fill',
    'fillet',
    'plies over the edge and up the side',
    'fair',
    'paint deck and upstand',
  ],
  operations: [
    'inspect-map',
    'protect',
    'cut-skin',
    'hold-remeasure',
    'bed-core',
    'laminate-top',
    'wrap-upstand',
  ],
  cautions: [],
  drawings: ['plan', 'edge-section'],
});

export const edgeRailOff = defineMethod({
  code: 'edge-rail-off',
  isToTheEdge: true,
  edgeWork: 'rail',
  title: 'At the edge: rail off, repair to the deck edge, joint rebuilt',
  reach: 'opening',
  cutSide: 'outer',
  skin: 'new',
  needs: ['how the rail is fastened', 'length of the rail', 'where the core ends'],
  refusals: [
    refusedWithoutBadCore,
    refusedWithoutEdge,
    refusedUnderOverlay,
    refusedUnlessEdgeIs(['toe-rail', 'hull-joint'], 'there is no rail to take off'),
  ],
  conditions: [
    () => ({
      code: 'rail-comes-off',
      text: 'the rail must come off whole: glued and screwed wood usually breaks; metal takes 3 to 6 h off and 6 to 12 h on for 10 m',
      cite: fromMemory,
    }),
    conditionOverlay,
  ],
  suits: () => ({
    code: 'rot-under-the-rail',
    text: 'rot passes under the rail: with it off, the deck is mended to its edge',
    cite: inPrint,
  }),
  rank: () => 59,
  leavesUndone: () => ['the hull-deck joint is opened and must be rebuilt'],
  stages: [
    'rail off',
    'cut to the edge',
    'core out',
    'dry',
    'core',
    'laminate to the edge',
    'bolt holes potted',
    'rail bedded and bolted',
  ],
  operations: [
    'inspect-map',
    'protect',
    'rail-off',
    'cut-skin',
    'hold-remeasure',
    'bed-core',
    'laminate-top',
    'rail-on',
  ],
  cautions: [],
  drawings: ['plan', 'edge-section'],
});
