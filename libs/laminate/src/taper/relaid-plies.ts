import type { Reinforcement } from '#lib/catalogue';
import { areaMm2, difference, offset, type Region } from '#lib/geometry';
import { problem, refusal, success, type Outcome, type Problem } from '#lib/kernel';
import { assumed, computeChecked, entered, sumOf, type Figure } from '#lib/provenance';
import { fraction, m2FromMm2, mFromMm, mm, mm2 } from '#lib/units';
import { countFaults, faultsIn, saidOr, type Assumption } from '#lib/asking';
import {
  layOutQuestions,
  namedPlyQuestions,
  oldSkinQuestions,
  scheduleLimitsQuestions,
} from '../schedule/asked.js';
import { layingConsequences, stagesOf, type LayingOrder, type Stage } from './laying.js';
import { assumptionOf } from '../assumption.js';
import { areaFigure, plyMass } from '../ply/ply-mass.js';
import { cutFromRoll, type RollCut, type RollPiece } from './roll-cut.js';
import { taperWidth } from './scarf.js';
import { standards } from '../standards.js';
import { usualTaper } from './usual-taper.js';

/** A ply to be laid, as a schedule gives it. */
export interface PlyToLay {
  readonly material: Reinforcement;
  readonly thicknessMm: number;
  readonly fibreMassFraction: number;
  readonly turnDeg?: number;
}

export interface RelaidRequest {
  /** Where the old skin is cut away. */
  readonly opening: Region;
  readonly oldThicknessMm: number;
  /** Plies of the schedule, from the core outwards. */
  readonly plies: readonly PlyToLay[];
  readonly taperRatio?: number;
  readonly order?: LayingOrder;
  readonly overlapMm?: number;
  readonly endAllowanceMm?: number;
  /** Thickest wet stack laid in one go. */
  readonly wetLimitMm?: number;
  /** Sound old skin that the taper may use: the panel less what stands on it. */
  readonly soundSkin?: Region;
}

export interface LaidOutPly {
  /** In the order of laying, from 1. */
  readonly order: number;
  /** Stage that the ply is laid in. */
  readonly stage: number;
  /** Code of the fabric to cut. */
  readonly material: string;
  /** Name of the fabric to cut. */
  readonly name: string;
  /** How the fabric is turned when laid. */
  readonly turnDeg: number;
  /** What the ply adds to the skin. */
  readonly thicknessMm: number;
  /** How far its edge lies outside the opening. */
  readonly beyondOpeningMm: number;
  /** Edge to cut the ply to. */
  readonly outline: Region;
  /** Area of the ply. */
  readonly areaM2: Figure<'m2'>;
  /** Pieces of fabric that make the ply. */
  readonly pieces: readonly RollPiece[];
  /** Width of the roll they are cut from. */
  readonly rollWidthMm: number;
  /** Length of roll that they take. */
  readonly rollLengthM: number;
  /** Area that lies double where pieces meet. */
  readonly overlapAreaM2: number;
  /** Glass in this ply. */
  readonly glassKg: Figure<'kg'>;
  /** Resin that wets this ply. */
  readonly resinKg: Figure<'kg'>;
}

export interface RoomCheck {
  /** Checks whether there is room for the taper. */
  readonly check: 'taper-room';
  /** Whether there is room; not established where edges are unknown. */
  readonly verdict: 'passes' | 'fails' | 'not-established';
  /** Taper that would lie off the panel. */
  readonly outsideM2: number;
  /** The room in a sentence. */
  readonly words: string;
}

export interface RelaidPlies {
  /** Width of the taper that the new plies step up. */
  readonly taperWidthMm: Figure<'mm'>;
  /** Area of the taper. */
  readonly taperAreaM2: number;
  /** Whether the largest or the smallest ply is laid first. */
  readonly order: LayingOrder;
  /** What this order means for the work. */
  readonly consequences: readonly string[];
  /** New plies in the order they are laid. */
  readonly plies: readonly LaidOutPly[];
  /** What is laid wet on wet before it must cool. */
  readonly stages: readonly Stage[];
  /** Glass of all new plies. */
  readonly glassKg: Figure<'kg'>;
  /** Resin of all new plies. */
  readonly resinKg: Figure<'kg'>;
  /** Area of the largest ply in one piece. */
  readonly largestPlyM2: number;
  /** Whether the taper stays on the panel. */
  readonly room: RoomCheck;
  /** What was taken about plies and rolls. */
  readonly assumptions: readonly Assumption[];
  /** What the laminator should heed. */
  readonly notes: readonly string[];
}

interface Settled {
  readonly taperRatio: number;
  readonly order: LayingOrder;
  readonly overlapMm: number;
  readonly endAllowanceMm: number;
  readonly wetLimitMm: number;
}

/**
 * Ply outlines, cutting lengths, masses, laying order and stages of a relaid skin.
 *
 * Ply k reaches as far outside the opening as the taper has opened at its top: ratio times the height of the stack there,
 * at most the whole taper. Outlines are offsets with round corners, which is what a grinder leaves.
 */
export function relaidPlies(request: RelaidRequest): Outcome<RelaidPlies> {
  const problems = relaidFaults(request);
  return problems.length > 0 ? refusal(...problems) : success(layOut(request, settle(request)));
}

function settle({
  oldThicknessMm,
  taperRatio,
  order,
  overlapMm,
  endAllowanceMm,
  wetLimitMm,
}: RelaidRequest): Settled {
  return {
    taperRatio: taperRatio ?? usualTaper(oldThicknessMm).value,
    order: order ?? standards.order.value,
    overlapMm: overlapMm ?? standards.overlapMm.value,
    endAllowanceMm: endAllowanceMm ?? standards.endAllowanceMm.value,
    wetLimitMm: wetLimitMm ?? standards.wetLimitMm.value,
  };
}

function layOut(request: RelaidRequest, settled: Settled): RelaidPlies {
  const taperWidthMm = taperFigure(request, settled);
  const steps = stepsOf(request, settled.taperRatio);
  const reach = settled.order === 'smallest-first' ? steps : [...steps].reverse();
  const stages = stagesOf(
    request.plies.map(({ thicknessMm }) => thicknessMm),
    settled.wetLimitMm,
  );
  const plies = layEach(request, settled, { reach, stages, taperWidthMm });
  const widest = offset(request.opening, taperWidthMm.value);
  return {
    taperWidthMm,
    taperAreaM2: squareMetres(areaMm2(widest) - areaMm2(request.opening)),
    order: settled.order,
    consequences: layingConsequences[settled.order],
    plies,
    stages,
    glassKg: sumOf('kg', 'glass in the relaid skin', numbered(plies.map(({ glassKg }) => glassKg))),
    resinKg: sumOf('kg', 'resin in the relaid skin, no waste', numbered(plies.map(({ resinKg }) => resinKg))),
    largestPlyM2: Math.max(...plies.map(({ areaM2 }) => areaM2.value)),
    room: roomCheck(request.soundSkin, widest),
    assumptions: assumptionsOf(request),
    notes: notesOf(request, steps, taperWidthMm.value),
  };
}

const squareMetres = (areaMm: number): number => m2FromMm2(mm2(areaMm));

const numbered = <U extends string>(figures: readonly Figure<U>[]): Readonly<Record<string, Figure<U>>> =>
  Object.fromEntries(figures.map((figure, i) => [`ply${i + 1}`, figure]));

function taperFigure(
  { oldThicknessMm, taperRatio: given }: RelaidRequest,
  { taperRatio }: Settled,
): Figure<'mm'> {
  const { because, cite } = usualTaper(oldThicknessMm);
  const ratio =
    given === undefined
      ? assumed('1', fraction(taperRatio), 'taper ratio', { at: '/taperRatio', because, cite })
      : entered('1', fraction(taperRatio), 'taper ratio', '/taperRatio');
  return computeChecked(taperWidth, {
    thicknessMm: entered('mm', mm(oldThicknessMm), 'thickness of the old skin', '/oldThicknessMm'),
    taperRatio: ratio,
  });
}

/** How far each ply's edge lies outside the opening, smallest first. */
export function stepsOf(
  { plies, oldThicknessMm }: Pick<RelaidRequest, 'plies' | 'oldThicknessMm'>,
  taperRatio: number,
): readonly number[] {
  let height = 0;
  return plies.map(({ thicknessMm }) => {
    height += thicknessMm;
    return taperRatio * Math.min(height, oldThicknessMm);
  });
}

interface Layout {
  readonly reach: readonly number[];
  readonly stages: readonly Stage[];
  readonly taperWidthMm: Figure<'mm'>;
}

function layEach(
  request: RelaidRequest,
  settled: Settled,
  { reach, stages, taperWidthMm }: Layout,
): readonly LaidOutPly[] {
  const laid: { readonly ply: LaidOutPly; readonly cut: RollCut }[] = [];
  for (const [i, ply] of request.plies.entries()) {
    const outline = offset(request.opening, reach[i]);
    const turnDeg = saidOr(namedPlyQuestions.turnDeg, ply.turnDeg);
    const under = laid.at(-1);
    const seamsBelowMm = under !== undefined && under.ply.turnDeg === turnDeg ? under.cut.seamsMm : [];
    const cut = cutFromRoll(outline, {
      rollWidthsMm: ply.material.rollWidthsMm,
      directionDeg: turnDeg,
      overlapMm: settled.overlapMm,
      endAllowanceMm: settled.endAllowanceMm,
      seamsBelowMm,
    });
    const stage = stages.find(({ plies }) => plies.includes(i + 1))?.stage ?? 1;
    laid.push({
      cut,
      ply: {
        order: i + 1,
        stage,
        turnDeg,
        ...described(ply),
        ...measured(ply, { outline, cut, i, reachMm: reach[i], taperWidthMm }),
      },
    });
  }
  return laid.map(({ ply }) => ply);
}

const described = ({ material, thicknessMm }: PlyToLay) => ({
  material: material.code,
  name: material.name,
  thicknessMm,
});

interface Cut {
  readonly outline: Region;
  readonly cut: RollCut;
  readonly i: number;
  readonly reachMm: number;
  readonly taperWidthMm: Figure<'mm'>;
}

function measured(
  { material, fibreMassFraction }: PlyToLay,
  { outline, cut, i, reachMm, taperWidthMm }: Cut,
) {
  const area = areaMm2(outline);
  const areaM2 = areaFigure(area, `area of ply ${i + 1}`, { taperWidthMm });
  const laidM2 = areaFigure(area + cut.overlapAreaMm2, `area of ply ${i + 1} with overlaps twice`, {
    areaM2,
  });
  return {
    beyondOpeningMm: reachMm,
    outline,
    areaM2,
    pieces: cut.pieces,
    rollWidthMm: cut.rollWidthMm,
    rollLengthM: mFromMm(mm(cut.rollLengthMm)),
    overlapAreaM2: squareMetres(cut.overlapAreaMm2),
    ...plyMass({ material, fibreMassFraction, fractionAt: `/plies/${i}/fibreMassFraction` }, laidM2),
  };
}

function roomCheck(soundSkin: Region | undefined, widest: Region): RoomCheck {
  if (soundSkin === undefined)
    return {
      check: 'taper-room',
      verdict: 'not-established',
      outsideM2: 0,
      words: 'the sound skin round the opening was not given, so the room for the taper is not checked',
    };
  const outsideM2 = squareMetres(areaMm2(difference(widest, soundSkin)));
  const isInside = outsideM2 < 1e-5;
  return {
    check: 'taper-room',
    verdict: isInside ? 'passes' : 'fails',
    outsideM2,
    words: isInside
      ? 'the taper lies on sound skin all round'
      : `${outsideM2.toFixed(4)} m2 of the taper would lie off the sound skin: move the cut inwards, turn the laminate up the edge, or take a steeper taper with its bond stress checked`,
  };
}

function assumptionsOf(request: RelaidRequest): readonly Assumption[] {
  const taken = { ...standards, taperRatio: usualTaper(request.oldThicknessMm) };
  const keys = ['taperRatio', 'order', 'overlapMm', 'endAllowanceMm', 'wetLimitMm'] as const;
  return keys.flatMap((key) => (request[key] === undefined ? [assumptionOf(`/${key}`, taken[key])] : []));
}

function notesOf(
  { plies, oldThicknessMm }: RelaidRequest,
  steps: readonly number[],
  taperMm: number,
): readonly string[] {
  const total = plies.reduce((sum, { thicknessMm }) => sum + thicknessMm, 0);
  const smallest = Math.min(...steps.map((step, i) => step - (i === 0 ? 0 : steps[i - 1])));
  return [
    ...(total > oldThicknessMm
      ? [
          `the new skin stands ${(total - oldThicknessMm).toFixed(2)} mm above the old; plies above the surface end at the edge of the taper`,
        ]
      : []),
    ...(total < oldThicknessMm
      ? [
          `the new skin lies ${(oldThicknessMm - total).toFixed(2)} mm below the old, and ${(taperMm - steps[steps.length - 1]).toFixed(0)} mm of the taper is left to fill`,
        ]
      : []),
    ...(smallest < 5 && plies.length > 1
      ? [
          `steps between ply edges come down to ${smallest.toFixed(1)} mm; a class society staggers successive edges by 50 mm, which a taper this narrow cannot hold`,
        ]
      : []),
  ];
}

const { taperRatio } = scheduleLimitsQuestions;
const { overlapMm, endAllowanceMm, wetLimitMm } = layOutQuestions;
export const plyCount = { least: 1, most: 60 };

function relaidFaults(request: RelaidRequest): readonly Problem[] {
  const { opening, plies, order } = request;
  const area = opening.length === 0 ? 0 : areaMm2(opening);
  return [
    ...(area > 0 ? [] : [problem('outline-without-area', '/opening', { hint: '' })]),
    ...oldSkinQuestions.thicknessMm.faults(request.oldThicknessMm, '/oldThicknessMm'),
    ...countFaults('/plies', plies.length, plyCount),
    ...plies.slice(0, 60).flatMap((ply, i) => plyToLayFaults(ply, `/plies/${i}`)),
    ...faultsIn(request, { taperRatio, overlapMm, endAllowanceMm, wetLimitMm }),
    ...orderFaults(order),
  ];
}

const { turnDeg, fibreMassFraction } = namedPlyQuestions;

export const plyToLayFaults = (ply: PlyToLay, at: string): readonly Problem[] => [
  ...faultsIn(ply, { thicknessMm: oldSkinQuestions.thicknessMm, turnDeg, fibreMassFraction }, at),
];

export const orderFaults = (order: LayingOrder | undefined): readonly Problem[] =>
  order === undefined || order in layingConsequences
    ? []
    : [
        problem('not-one-of', '/order', {
          value: String(order),
          choices: Object.keys(layingConsequences).join(', '),
        }),
      ];
