import {
  areaMm2,
  difference,
  intersection,
  offset,
  perimeterMm,
  regionOf,
  union,
  type Region,
} from '#lib/geometry';
import { defineFormula, derived, type Figure } from '#lib/provenance';
import { fraction, m, m2, m2FromMm2, mFromMm, mm, mm2 } from '#lib/units';
import { fittingsInScope, type FittingInScope } from './fittings.js';
import type { OpeningPlan } from './plan.js';
import type { OpeningRequest } from './request.js';
import { rulesOf } from './rules.js';

/** What the openings come to where the bad core is so many times as large as recorded. */
export interface OpeningsAtExtent {
  readonly extentFactor: number;
  readonly figures: Pick<
    OpeningPlan['figures'],
    'openedArea' | 'taperBandArea' | 'cutLength' | 'splitLength'
  >;
  readonly fittings: readonly FittingInScope[];
}

/** How far the edge of the bad core moves when its area grows: from A + P d + pi d2 = E A. */
export const edgeShift = defineFormula({
  id: 'extent.edge-shift',
  title: 'How far the edge of the bad core moves when its area changes',
  cite: { source: 'STEINER-1840', clause: 'area of a parallel body' },
  inputs: {
    areaMm2: { symbol: 'A', unit: 'mm2', meaning: 'area recorded', above: 0 },
    perimeterMm: { symbol: 'P', unit: 'mm', meaning: 'its perimeter', above: 0 },
    extentFactor: { symbol: 'E', unit: '1', meaning: 'found over recorded area', from: 0 },
  },
  output: { symbol: 'd', unit: 'mm', meaning: 'shift outwards' },
  evaluate: ({ areaMm2: area, perimeterMm: around, extentFactor }) =>
    mm(
      (Math.sqrt(Math.max(0, around ** 2 + 4 * Math.PI * (extentFactor - 1) * area)) - around) /
        (2 * Math.PI),
    ),
  // By hand: a circle of radius 100 mm that becomes 2.25 times as large has a radius of 150 mm, 50 more.
  worked: [
    {
      at: 'by hand: circle, radius 100 to 150',
      given: { areaMm2: 31415.9265, perimeterMm: 628.318531, extentFactor: 2.25 },
      printed: '50.0',
    },
  ],
});

/**
 * The planned openings with their edges moved as far as the edge of the bad core moves, kept off the panel's edges as they
 * were: margins do not grow, what reaches the edge of the panel stops there, and fittings come into reach.
 *
 * Valid:  zones without hollows; the form of the openings is kept.
 * Source: [STEINER-1840] for the shift; the regions by [VATTI-1992]
 * Worked: libs/extent/src/openings/plan.spec.ts
 */
export function openingsAt(
  plan: OpeningPlan,
  request: OpeningRequest,
  factors: readonly number[],
): readonly OpeningsAtExtent[] {
  const panel = union(regionOf(request.panel.outline, request.panel.holes ?? []));
  const bad = union(...request.zones.map(({ outline, holes = [] }) => regionOf(outline, holes)));
  const opened = plan.openings.map(({ area }): Region => [area]);
  const permitted = union(offset(panel, -plan.insetMm, 'miter'), ...opened);
  return factors.map((extentFactor) => {
    const shiftMm = edgeShift.evaluate({
      areaMm2: mm2(areaMm2(bad)),
      perimeterMm: mm(perimeterMm(bad)),
      extentFactor: fraction(extentFactor),
    });
    const moved = moveEdges(opened, shiftMm, permitted);
    return atExtent({ plan, request, panel, moved, extentFactor });
  });
}

/** Less is cut out where less is bad; a hand still has to get in. */
const LEAST_OPENED_SHARE = 0.2;

function moveEdges(opened: readonly Region[], shiftMm: number, permitted: Region): Region {
  const moved = opened.map((region) => {
    const to = offset(region, shiftMm, 'miter');
    return areaMm2(to) < LEAST_OPENED_SHARE * areaMm2(region)
      ? offset(region, -Math.sqrt(areaMm2(region)) * (1 - Math.sqrt(LEAST_OPENED_SHARE)) * 0.5, 'miter')
      : to;
  });
  return intersection(union(...moved), permitted);
}

interface Moved {
  readonly plan: OpeningPlan;
  readonly request: OpeningRequest;
  readonly panel: Region;
  readonly moved: Region;
  readonly extentFactor: number;
}

function atExtent({ plan, request, panel, moved, extentFactor }: Moved): OpeningsAtExtent {
  const openedM2 = m2FromMm2(mm2(areaMm2(moved)));
  const band = difference(intersection(offset(moved, plan.taperWidthMm, 'miter'), panel), moved);
  const pace = plan.openedAreaM2 === 0 ? 1 : Math.sqrt(openedM2 / plan.openedAreaM2);
  const area = (meaning: string, value: number): Figure<'m2'> =>
    derived('m2', m2(value), meaning, { ...planned, inputs: {} });
  const length = (meaning: string, value: number): Figure<'m'> =>
    derived('m', m(value), meaning, { ...planned, inputs: {} });
  return {
    extentFactor,
    figures: {
      openedArea: area('opened area', openedM2),
      taperBandArea: area('taper band', m2FromMm2(mm2(areaMm2(band)))),
      cutLength: length('length of cut', mFromMm(mm(perimeterMm(moved)))),
      splitLength: length('cuts across lifted skin', plan.splitLengthM * pace),
    },
    fittings: fittingsInScope(
      request.fittings ?? [],
      moved.map((polygon, index) => ({ label: String(index), region: [polygon] })),
      rulesOf(request).fittingReachMm,
    ).inScope,
  };
}

const planned = {
  formula: 'extent.openings-at-extent',
  title: 'The openings with their edges moved',
  symbol: 'A',
  cite: { source: 'VATTI-1992' },
} as const;
