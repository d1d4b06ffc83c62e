import { areaMm2, containsPoint, difference, union, type Region } from '#lib/geometry';
import { computeChecked, defineFormula, type Figure } from '#lib/provenance';
import { fraction, m2FromMm2, mm2 } from '#lib/units';
import { answeredIn, inUnit, saidOr } from '#lib/asking';
import type { ExtentRequest } from './extent-request.js';
import type { Place } from './reading.js';
import { contourAt } from './map/contour.js';
import { drawable } from './map/drawable.js';
import { mapQuestions } from './map/questions.js';
import type { SurveyMap } from './map/survey-map.js';
import { layoutOf } from './openings/layout.js';
import { ruleFigures, rulesOf } from './openings/rules.js';

/** Where to cut, as one decision between opening now and coming back. */
export interface CutChoice {
  /** Core this likely to be bad, or more, is opened. */
  readonly probability: number;
  /** Whether the record names the margin or the least expected work chose it. */
  readonly chosenBy: 'record' | 'expected-hours';
  /** Bad core that this leaves, as the map expects it. */
  readonly expectedLeftM2: number;
  /** Hours of the openings, and those of leaving what is left. */
  readonly openingHours: number;
  /** Hours expected for bad core left behind. */
  readonly leavingHours: number;
  /** What opening nothing would come to. */
  readonly hoursWithoutOpening: number;
}

export const leaveCostFigure = (stated: number | undefined): Figure<'h/m2'> =>
  answeredIn(mapQuestions.leaveCostHPerM2, stated, '/map/leaveCostHPerM2');

export const cutProbability = defineFormula({
  id: 'extent.cut-probability',
  title: 'Chance of bad core from which opening costs less than leaving',
  cite: { source: 'BERGER-1985', clause: 'decision between two actions with linear losses' },
  inputs: {
    takeHPerM2: {
      symbol: 't',
      unit: 'h/m2',
      meaning: 'hours of a square metre opened with the rest',
      above: 0,
    },
    leaveHPerM2: { symbol: 'l', unit: 'h/m2', meaning: 'hours of a square metre of bad core left', above: 0 },
  },
  output: { symbol: 'p', unit: '1', meaning: 'chance from which opening costs less' },
  evaluate: ({ takeHPerM2, leaveHPerM2 }) => fraction(Math.min(1, takeHPerM2 / leaveHPerM2)),
  // By hand: 16 h to open, 80 h to leave: 16 / 80.
  worked: [{ at: 'by hand', given: { takeHPerM2: 16, leaveHPerM2: 80 }, printed: '0.2' }],
});

export const cutProbabilityFigure = (stated: number | undefined): Figure<'1'> => {
  const { openedHPerM2 } = ruleFigures({});
  return computeChecked(cutProbability, {
    takeHPerM2: { ...openedHPerM2, unit: 'h/m2', value: inUnit('h/m2', openedHPerM2.value) },
    leaveHPerM2: leaveCostFigure(stated),
  });
};

/** Chances tried; the one at which a single square metre breaks even is tried first and its neighbours after it. */
const TRIED: readonly number[] = [0.03, 0.06, 0.1, 0.14, 0.2, 0.27, 0.35, 0.45, 0.6];

/** A plug that proved rot is not closed over: leaving its place is as dear as a second visit to the boat. */
const SECOND_VISIT_H = 40;

interface Tried {
  readonly probability: number;
  readonly zones: Region;
  readonly openingHours: number;
  readonly expectedLeftM2: number;
  /** Plugs that proved bad core and lie outside. */
  readonly provenLeft: number;
}

/**
 * The cut that loses least: hours of the straight-sided openings that would really be sawn, and the hours of leaving what the
 * map expects outside them. The margin is whatever the map's doubt makes worth its hours; nothing is added to it.
 * Source: [BERGER-1985] decision by expected loss
 * Worked: libs/extent/src/cut-choice.spec.ts
 */
export function chosenCut(
  request: ExtentRequest,
  panel: Region,
  map: SurveyMap,
): { readonly zones: Region; readonly choice: CutChoice } {
  const leaveHPerM2 = saidOr(mapQuestions.leaveCostHPerM2, request.map?.leaveCostHPerM2);
  const nothing: Tried = {
    probability: 1,
    zones: [],
    openingHours: 0,
    expectedLeftM2: leftBy(map, [], []),
    provenLeft: provenBad(request).length,
  };
  const costOf = ({ openingHours, expectedLeftM2, provenLeft }: Tried) =>
    openingHours + leaveHPerM2 * expectedLeftM2 + SECOND_VISIT_H * provenLeft;
  const answer = (tried: Tried, chosenBy: CutChoice['chosenBy']) => ({
    zones: tried.zones,
    choice: {
      probability: tried.probability,
      chosenBy,
      expectedLeftM2: tried.expectedLeftM2,
      openingHours: tried.openingHours,
      leavingHours: leaveHPerM2 * tried.expectedLeftM2,
      hoursWithoutOpening: costOf(nothing),
    },
  });
  const stated = request.map?.cutProbability;
  if (stated !== undefined) return answer(triedAt(stated, request, panel, map), 'record');
  const best = climbed(
    cutProbabilityFigure(leaveHPerM2).value,
    (probability) => triedAt(probability, request, panel, map),
    costOf,
  );
  return answer(
    costOf(best) < costOf(nothing) ? best : { ...nothing, probability: best.probability },
    'expected-hours',
  );
}

/** From the first chance to its neighbours while they cost less. */
function climbed(
  from: number,
  tryAt: (probability: number) => Tried,
  costOf: (tried: Tried) => number,
): Tried {
  const start = TRIED.reduce(
    (best, value, index) => (Math.abs(value - from) < Math.abs(TRIED[best] - from) ? index : best),
    0,
  );
  const known = new Map<number, Tried>();
  const at = (index: number): Tried => {
    const found = known.get(index) ?? tryAt(TRIED[index]);
    known.set(index, found);
    return found;
  };
  const along = (way: 1 | -1): number => {
    let here = start;
    while (TRIED[here + way] !== undefined && costOf(at(here + way)) < costOf(at(here))) here += way;
    return here;
  };
  const [up, down] = [along(1), along(-1)];
  return costOf(at(up)) <= costOf(at(down)) ? at(up) : at(down);
}

function triedAt(probability: number, request: ExtentRequest, panel: Region, map: SurveyMap): Tried {
  const zones = drawable(contourAt(probability, map.chance, map.lattice, panel));
  if (zones.length === 0)
    return {
      probability,
      zones,
      openingHours: 0,
      expectedLeftM2: leftBy(map, [], []),
      provenLeft: provenBad(request).length,
    };
  const rules = { ...rulesOf({ ...request, zones: [] }), cutMarginMm: request.method?.cutMarginMm ?? 0 };
  const taperWidthMm = rules.taperRatio * (request.outerSkin?.thicknessMm ?? USUAL_SKIN_MM);
  const { groups } = layoutOf([{ region: zones }], panel, request.panel, { rules, taperWidthMm });
  const opened = union(...groups.map(({ shape }) => shape.region));
  const reamed = difference(union(...groups.map(({ seeds }) => seeds)), opened);
  const hours = groups.reduce((sum, { shape }) => sum + shape.hours, 0);
  return {
    probability,
    zones,
    openingHours: hours + rules.openedHPerM2 * m2FromMm2(mm2(areaMm2(reamed))),
    expectedLeftM2: leftBy(map, opened, reamed),
    provenLeft: provenBad(request).filter((at) => !containsPoint(opened, at) && !containsPoint(reamed, at))
      .length,
  };
}

const PROOF: readonly string[] = ['rotten', 'wet-bonded', 'debonded-dry'];

const provenBad = ({ survey }: ExtentRequest): readonly Place[] =>
  (survey?.readings ?? []).flatMap((reading) =>
    reading.kind === 'plug' && reading.isUnreliable !== true && PROOF.includes(reading.condition)
      ? [reading.at]
      : [],
  );

/** Where nobody states the skin: only the room for the taper hangs on it here. */
const USUAL_SKIN_MM = 3;

/** Bad core that the map expects outside what is opened or reamed out, m2. */
function leftBy({ lattice, chance }: SurveyMap, opened: Region, reamed: Region): number {
  const left = lattice.nodes.reduce(
    (sum, { place, areaMm2: area }, node) =>
      area === 0 || containsPoint(opened, place) || containsPoint(reamed, place)
        ? sum
        : sum + chance[node] * area,
    0,
  );
  return m2FromMm2(mm2(left));
}
