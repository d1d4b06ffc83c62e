import { areaMm2, difference, offset, perimeterMm, type Region } from '#lib/geometry';
import { problem, refusal, success, type Outcome, type Problem } from '#lib/kernel';
import { assumed, computeChecked, entered, sumOf, type Cite, type Figure } from '#lib/provenance';
import { fraction, mFromMm, mm } from '#lib/units';
import { commonPractice, countFaults, faultsIn, type Assumption } from '#lib/asking';
import { rebeddedSkinQuestions } from '../schedule/asked.js';
import type { RollStrip } from './roll-strips.js';
import { layingConsequences, stagesOf, type LayingOrder, type Stage } from './laying.js';
import { assumptionOf } from '../assumption.js';
import { areaFigure, plyMass } from '../ply/ply-mass.js';
import { orderFaults, plyCount, plyToLayFaults, stepsOf, type PlyToLay } from './relaid-plies.js';
import { checkScarf, taperWidth, type ScarfCheck } from './scarf.js';
import { standards } from '../standards.js';
import { usualTaper } from './usual-taper.js';

/** The lifted skin bonded back, and the groove that its cut line became. */
export interface ClosingRequest {
  readonly skinThicknessMm: number;
  /** The cut line as the edge of an opening, or its length alone. */
  readonly opening?: Region;
  readonly cutLengthMm?: number;
  readonly kerfMm?: number;
  readonly taperRatio?: number;
  readonly plies: readonly PlyToLay[];
  readonly order?: LayingOrder;
  readonly overlapMm?: number;
  readonly longestStripMm?: number;
  readonly wetLimitMm?: number;
  /** Clear width from the cut line to the nearest edge or fitting, on the narrower side. */
  readonly roomMm?: number;
  /** Stress across the joint, and what its bond allows. */
  readonly joint?: {
    readonly stressMPa: number;
    readonly allowableShearMPa: number;
    readonly allowablePeelMPa?: number;
  };
}

export interface ClosingPly {
  /** Place of the strip, 1 the first laid. */
  readonly order: number;
  /** Stage that the strip is laid in. */
  readonly stage: number;
  /** Code of the strip's fabric. */
  readonly material: string;
  /** Name of the strip's fabric. */
  readonly name: string;
  /** What the strip adds over the joint. */
  readonly thicknessMm: number;
  /** Width of the strip. */
  readonly widthMm: number;
  /** Edge of the strip along the joint. */
  readonly outline?: Region;
  /** Area of the strip. */
  readonly areaM2: Figure<'m2'>;
  /** Pieces that the strip is cut in. */
  readonly strips: number;
  /** Width of the roll for strips. */
  readonly rollWidthMm: number;
  /** Length of roll for the strips. */
  readonly rollLengthM: number;
  /** As they are cut from the roll. */
  readonly rollStrips: readonly RollStrip[];
  /** Glass in the strip. */
  readonly glassKg: Figure<'kg'>;
  /** Resin that wets the strip. */
  readonly resinKg: Figure<'kg'>;
}

export interface ClosingCheck {
  /** Which property of the joint was checked. */
  readonly check: 'taper-room' | 'flush' | 'bond-shear' | 'bond-peel';
  /** Name of the check on the joint. */
  readonly title: string;
  /** Unit of the joint's demand and capacity. */
  readonly unit: string;
  /** Whether the joint passes. */
  readonly verdict: 'passes' | 'fails' | 'not-established';
  /** What the joint must carry or keep to. */
  readonly demand?: number;
  /** What the joint can carry or is allowed. */
  readonly capacity?: number;
  /** Demand on the joint over its capacity. */
  readonly utilisation?: number;
  /** Source of the joint's requirement. */
  readonly cite: Cite;
  /** The check in a sentence. */
  readonly words?: string;
}

export interface ClosingPlies {
  /** Width of the taper over the closing joint. */
  readonly taperWidthMm: Figure<'mm'>;
  /** Width of the open joint before it is closed. */
  readonly grooveWidthMm: number;
  /** Whether wide or narrow strips are laid first. */
  readonly order: LayingOrder;
  /** What this order of strips means. */
  readonly consequences: readonly string[];
  /** Strips over the joint, in the order they are laid. */
  readonly plies: readonly ClosingPly[];
  /** Strips laid wet on wet together. */
  readonly stages: readonly Stage[];
  /** Glass of all strips. */
  readonly glassKg: Figure<'kg'>;
  /** Resin of all strips. */
  readonly resinKg: Figure<'kg'>;
  /** Whether the closed joint holds and lies flush. */
  readonly checks: readonly ClosingCheck[];
  /** Least taper that the bond allows, where the joint's stress was given. */
  readonly leastTaperRatio?: number;
  /** What was taken about the joint. */
  readonly assumptions: readonly Assumption[];
}

interface Settled {
  readonly taperRatio: number;
  readonly order: LayingOrder;
  readonly overlapMm: number;
  readonly wetLimitMm: number;
  readonly kerfMm: number;
  readonly longestStripMm: number;
}

/** Level within which closing plies count as flush, mm; beyond it they are faired or sanded. */
const FLUSH_MM = 0.5;

/**
 * Tapers on both sides of a cut and the plies that close it.
 *
 * Both edges are ground to a taper of ratio x thickness, so the groove is twice that and the kerf. Ply k is as wide as
 * the groove at the ply's top; in the other order the same widths are laid from the widest down.
 */
export function closingPlies(request: ClosingRequest): Outcome<ClosingPlies> {
  const problems = closingFaults(request);
  return problems.length > 0 ? refusal(...problems) : success(close(request, settle(request)));
}

/** How many plies of one fabric fill the groove: the nearest whole number, at least one. */
export const pliesToFill = (skinThicknessMm: number, plyThicknessMm: number): number =>
  Math.max(1, Math.round(skinThicknessMm / plyThicknessMm));

const settle = (request: ClosingRequest): Settled => ({
  taperRatio: request.taperRatio ?? usualTaper(request.skinThicknessMm).value,
  order: request.order ?? standards.order.value,
  overlapMm: request.overlapMm ?? standards.overlapMm.value,
  wetLimitMm: request.wetLimitMm ?? standards.wetLimitMm.value,
  kerfMm: request.kerfMm ?? standards.kerfMm.value,
  longestStripMm: request.longestStripMm ?? standards.longestStripMm.value,
});

function close(request: ClosingRequest, settled: Settled): ClosingPlies {
  const taperWidthMm = taperFigure(request, settled);
  const smallestFirst = stepsOf(
    { plies: request.plies, oldThicknessMm: request.skinThicknessMm },
    settled.taperRatio,
  ).map((step) => 2 * step + settled.kerfMm);
  const widths = settled.order === 'smallest-first' ? smallestFirst : [...smallestFirst].reverse();
  const stages = stagesOf(
    request.plies.map(({ thicknessMm }) => thicknessMm),
    settled.wetLimitMm,
  );
  const plies = request.plies.map((ply, i) =>
    closingPly(request, settled, {
      ply,
      i,
      widthMm: widths[i],
      taperWidthMm,
      stage: stages.find((stage) => stage.plies.includes(i + 1))?.stage ?? 1,
    }),
  );
  const scarf = scarfOf(request, settled);
  return {
    taperWidthMm,
    grooveWidthMm: 2 * taperWidthMm.value + settled.kerfMm,
    order: settled.order,
    consequences: layingConsequences[settled.order],
    plies,
    stages,
    glassKg: sumOf('kg', 'glass in the closing plies', numbered(plies.map(({ glassKg }) => glassKg))),
    resinKg: sumOf(
      'kg',
      'resin in the closing plies, no waste',
      numbered(plies.map(({ resinKg }) => resinKg)),
    ),
    checks: [roomCheck(request, taperWidthMm.value), flushCheck(request), ...bondChecks(request, scarf)],
    ...(scarf === undefined ? {} : { leastTaperRatio: scarf.leastRatio }),
    assumptions: assumptionsOf(request),
  };
}

const numbered = <U extends string>(figures: readonly Figure<U>[]): Readonly<Record<string, Figure<U>>> =>
  Object.fromEntries(figures.map((figure, i) => [`ply${i + 1}`, figure]));

function taperFigure(
  { skinThicknessMm, taperRatio: given }: ClosingRequest,
  { taperRatio }: Settled,
): Figure<'mm'> {
  const { because, cite } = usualTaper(skinThicknessMm);
  const ratio =
    given === undefined
      ? assumed('1', fraction(taperRatio), 'taper ratio', { at: '/taperRatio', because, cite })
      : entered('1', fraction(taperRatio), 'taper ratio', '/taperRatio');
  return computeChecked(taperWidth, {
    thicknessMm: entered('mm', mm(skinThicknessMm), 'thickness of the skin', '/skinThicknessMm'),
    taperRatio: ratio,
  });
}

interface Placed {
  readonly ply: PlyToLay;
  readonly i: number;
  readonly widthMm: number;
  readonly taperWidthMm: Figure<'mm'>;
  readonly stage: number;
}

function closingPly(
  request: ClosingRequest,
  settled: Settled,
  { ply, i, widthMm, taperWidthMm, stage }: Placed,
): ClosingPly {
  const { opening } = request;
  const lengthMm = cutLengthOf(request);
  const outline =
    opening === undefined
      ? undefined
      : difference(offset(opening, widthMm / 2), offset(opening, -widthMm / 2));
  const area = outline === undefined ? lengthMm * widthMm : areaMm2(outline);
  const strips = Math.ceil(lengthMm / settled.longestStripMm);
  const areaM2 = areaFigure(area, `area of closing ply ${i + 1}`, { taperWidthMm });
  const laidM2 = areaFigure(
    area + strips * settled.overlapMm * widthMm,
    `area of closing ply ${i + 1} with overlaps twice`,
    { areaM2 },
  );
  return {
    order: i + 1,
    stage,
    material: ply.material.code,
    name: ply.material.name,
    thicknessMm: ply.thicknessMm,
    widthMm,
    ...(outline === undefined ? {} : { outline }),
    areaM2,
    ...rollOf(ply.material.rollWidthsMm, { widthMm, lengthMm, strips, overlapMm: settled.overlapMm }),
    ...plyMass(
      {
        material: ply.material,
        fibreMassFraction: ply.fibreMassFraction,
        fractionAt: `/plies/${i}/fibreMassFraction`,
      },
      laidM2,
    ),
  };
}

interface Strip {
  readonly widthMm: number;
  readonly lengthMm: number;
  readonly strips: number;
  readonly overlapMm: number;
}

/** The narrowest roll that is wide enough, or the widest with strips side by side; a wide roll is slit into lanes. */
function rollOf(rollWidthsMm: readonly number[], { widthMm, lengthMm, strips, overlapMm }: Strip) {
  const wideEnough = rollWidthsMm.filter((width) => width >= widthMm);
  const rollWidthMm = wideEnough.length > 0 ? Math.min(...wideEnough) : Math.max(...rollWidthsMm);
  const stripMm = lengthMm / strips + overlapMm;
  const abreast =
    widthMm <= rollWidthMm ? 1 : Math.ceil((widthMm - overlapMm) / Math.max(1, rollWidthMm - overlapMm));
  const lanes = Math.max(1, Math.floor(rollWidthMm / widthMm));
  return {
    strips: strips * abreast,
    rollWidthMm,
    rollLengthM: mFromMm(mm(Math.ceil((strips * abreast) / lanes) * stripMm)),
    rollStrips: Array.from({ length: strips * abreast }, () => ({
      lengthMm: stripMm,
      widthMm: Math.min(widthMm, rollWidthMm),
    })),
  };
}

const cutLengthOf = ({ opening, cutLengthMm }: ClosingRequest): number =>
  cutLengthMm ?? (opening === undefined ? 0 : perimeterMm(opening));

function scarfOf({ joint }: ClosingRequest, { taperRatio }: Settled): ScarfCheck | undefined {
  if (joint === undefined) return undefined;
  const outcome = checkScarf({ ...joint, taperRatio });
  return outcome.ok ? outcome.value : undefined;
}

function roomCheck({ roomMm }: ClosingRequest, taperMm: number): ClosingCheck {
  const base = {
    check: 'taper-room',
    title: 'Room for the taper beside the cut',
    unit: 'mm',
    demand: taperMm,
    cite: commonPractice,
  } as const;
  if (roomMm === undefined)
    return { ...base, verdict: 'not-established', words: 'the clear width beside the cut was not given' };
  if (roomMm === 0)
    return {
      ...base,
      verdict: 'fails',
      capacity: 0,
      words: 'there is no skin beside the cut to taper: move the cut line',
    };
  return {
    ...base,
    capacity: roomMm,
    utilisation: taperMm / roomMm,
    verdict: taperMm <= roomMm * (1 + 1e-9) ? 'passes' : 'fails',
    words: `needs ${taperMm.toFixed(0)} mm each side`,
  };
}

function flushCheck({ plies, skinThicknessMm }: ClosingRequest): ClosingCheck {
  const total = plies.reduce((sum, { thicknessMm }) => sum + thicknessMm, 0);
  const off = total - skinThicknessMm;
  return {
    check: 'flush',
    title: 'Closing plies level with the skin',
    unit: 'mm',
    demand: Math.abs(off),
    capacity: FLUSH_MM,
    utilisation: Math.abs(off) / FLUSH_MM,
    verdict: Math.abs(off) <= FLUSH_MM ? 'passes' : 'fails',
    cite: commonPractice,
    words: `${Math.abs(off).toFixed(2)} mm ${off >= 0 ? 'proud' : 'low'}`,
  };
}

const statics: Cite = { source: 'LAMINATE-BY-HAND', clause: 'statics of an inclined joint' };

function bondChecks({ joint }: ClosingRequest, scarf: ScarfCheck | undefined): readonly ClosingCheck[] {
  if (joint === undefined || scarf === undefined) {
    return [
      {
        check: 'bond-shear',
        title: 'Shear in the bond of the taper',
        unit: 'MPa',
        verdict: 'not-established',
        cite: statics,
        words: 'the stress across the joint and the bond allowable were not given',
      },
    ];
  }
  const shear: ClosingCheck = {
    check: 'bond-shear',
    title: 'Shear in the bond of the taper',
    unit: 'MPa',
    demand: scarf.shearMPa,
    capacity: joint.allowableShearMPa,
    utilisation: scarf.shearUtilisation,
    verdict: scarf.shearUtilisation <= 1 ? 'passes' : 'fails',
    cite: statics,
    words: `a taper of ${scarf.leastRatio.toFixed(1)}:1 or longer passes`,
  };
  if (joint.allowablePeelMPa === undefined || scarf.peelUtilisation === undefined) return [shear];
  return [
    shear,
    {
      check: 'bond-peel',
      title: 'Stress normal to the bond of the taper',
      unit: 'MPa',
      demand: scarf.peelMPa,
      capacity: joint.allowablePeelMPa,
      utilisation: scarf.peelUtilisation,
      verdict: scarf.peelUtilisation <= 1 ? 'passes' : 'fails',
      cite: statics,
    },
  ];
}

function assumptionsOf(request: ClosingRequest): readonly Assumption[] {
  const keys = ['taperRatio', 'order', 'overlapMm', 'wetLimitMm', 'kerfMm', 'longestStripMm'] as const;
  const taken = { ...standards, taperRatio: usualTaper(request.skinThicknessMm) };
  return keys.flatMap((key) => (request[key] === undefined ? [assumptionOf(`/${key}`, taken[key])] : []));
}

const numbersAsked = {
  skinThicknessMm: rebeddedSkinQuestions.skinThicknessMm,
  cutLengthMm: rebeddedSkinQuestions.cutLengthMm,
  kerfMm: rebeddedSkinQuestions.kerfMm,
  taperRatio: rebeddedSkinQuestions.taperRatio,
  overlapMm: rebeddedSkinQuestions.overlapMm,
  longestStripMm: rebeddedSkinQuestions.longestStripMm,
  wetLimitMm: rebeddedSkinQuestions.wetLimitMm,
  roomMm: rebeddedSkinQuestions.roomMm,
};

function closingFaults(request: ClosingRequest): readonly Problem[] {
  const { plies, opening, cutLengthMm, joint } = request;
  const noLine =
    opening === undefined && cutLengthMm === undefined
      ? [
          problem('missing', '/cutLengthMm', {
            expected: 'the length of the cut, or the opening whose edge it is',
          }),
        ]
      : [];
  const noArea =
    opening !== undefined && areaMm2(opening) <= 0
      ? [problem('outline-without-area', '/opening', { hint: '' })]
      : [];
  const jointFaults =
    joint === undefined ? ({ ok: true } as const) : checkScarf({ ...joint, taperRatio: 12 });
  return [
    ...noLine,
    ...noArea,
    ...faultsIn(request, numbersAsked),
    ...countFaults('/plies', plies.length, plyCount),
    ...plies.slice(0, 60).flatMap((ply, i) => plyToLayFaults(ply, `/plies/${i}`)),
    ...orderFaults(request.order),
    ...(jointFaults.ok ? [] : jointFaults.problems.map((found) => ({ ...found, at: `/joint${found.at}` }))),
  ];
}
