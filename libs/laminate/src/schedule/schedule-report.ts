import { relaidSkinQuestions } from './asked.js';
import { saidOr, type Assumption } from '#lib/asking';
import { Defect, lazily, unreachable } from '#lib/kernel';
import { derived, sumOf, type Cite, type Figure } from '#lib/provenance';
import { nPerMm } from '#lib/units';
import { laminate, type LaminateAnswer } from '../theory/laminate.js';
import type { LayupFigures } from '../theory/layup-figures.js';
import type { LaidOffer, LeftOut, PreparedSearch } from './prepared-search.js';
import { measureSkin, pulls, type SkinMeasure } from '../theory/skin.js';
import { diagnose, type Constraint, type ConstraintReport } from './stack-diagnosis.js';
import type { SearchEffort, Stack, StackSearch } from './stack-search.js';

export interface ScheduleSearch {
  /** Whether any schedule meets every requirement. */
  readonly outcome: 'found' | 'cannot-be-done';
  /** Process that the plies are laid by. */
  readonly method: string;
  /** What decides between schedules that pass. */
  readonly rankedBy: 'price' | 'mass';
  /** The skin that the new one must match. */
  readonly oldSkin: OldSkinReport;
  /** As many as were wanted or can be made, best first. */
  readonly best: readonly Schedule[];
  /** How much was searched, and that nothing better was left out. */
  readonly effort: SearchEffort & {
    /** No allowed schedule is better. */
    readonly isProvenBest: true;
  };
  /** As asked, or as many as have room for their steps in the taper. */
  readonly mostPlies: number;
  /** What no schedule could meet; only when none was found. */
  readonly missing?: Missing;
  /** Materials that could not be used, each with its problems. */
  readonly leftOut: readonly LeftOut[];
  /** What the search took that nobody stated. */
  readonly assumptions: readonly Assumption[];
  /** What the result does not cover. */
  readonly limits: readonly string[];
}

export interface OldSkinReport {
  /** Thickness of the old skin. */
  readonly thicknessMm: number;
  /** Stiffness of the old skin fore and aft. */
  readonly alongNPerMm: number;
  /** Stiffness of the old skin athwart. */
  readonly acrossNPerMm: number;
  /** Stiffness of the old skin in shear. */
  readonly shearNPerMm: number;
  /** In the order tension along, compression along, tension across, compression across. */
  readonly strengthNPerMm: readonly number[];
  /** Whether its plies were guessed from the thickness. */
  readonly isGuessed: boolean;
  /** Where guessed: stiffness along of the weakest and the strongest likely build. */
  readonly alongLowNPerMm?: number;
  /** Stiffness it might have if the guess is low. */
  readonly alongHighNPerMm?: number;
}

export interface SchedulePly {
  /** Code of the ply's fabric. */
  readonly material: string;
  /** Name of the ply's fabric. */
  readonly name: string;
  /** Turn of the fabric against fore and aft. */
  readonly turnDeg: number;
  /** Thickness of the cured ply. */
  readonly thicknessMm: number;
  /** Glass in the ply, per square metre. */
  readonly glassGPerM2: number;
  /** Resin in the ply, per square metre. */
  readonly resinGPerM2: number;
  /** Mass of glass over mass of ply. */
  readonly fibreMassFraction: number;
}

export interface SkinCheck {
  /** Which requirement was checked. */
  readonly check: string;
  /** Name of the requirement. */
  readonly title: string;
  /** Unit of demand and capacity. */
  readonly unit: string;
  /** What is asked of the new skin. */
  readonly demand: number;
  /** What the new skin has. */
  readonly capacity: number;
  /** Demand over capacity; up to 1 it passes. */
  readonly utilisation: number;
  /** Whether the skin meets it. */
  readonly verdict: 'passes' | 'fails';
  /** Where the requirement is published. */
  readonly cite: Cite;
  /** What would let it pass. */
  readonly toPass?: string;
}

export interface Schedule {
  /** Place among the schedules, 1 the best. */
  readonly rank: number;
  /** Plies of the schedule, from the core outwards. */
  readonly plies: readonly SchedulePly[];
  /** Thickness of all plies. */
  readonly thicknessMm: Figure<'mm'>;
  /** Glass in a square metre. */
  readonly glassGPerM2: Figure<'g/m2'>;
  /** Resin in a square metre. */
  readonly resinGPerM2: Figure<'g/m2'>;
  /** Stiffness fore and aft. */
  readonly stiffnessAlongNPerMm: Figure<'N/mm'>;
  /** Stiffness athwart. */
  readonly stiffnessAcrossNPerMm: Figure<'N/mm'>;
  /** How far the new skin ends above the old surface; negative lies below it. */
  readonly proudMm: number;
  /** Price of a square metre in the list's currency; absent without prices. */
  readonly pricePerM2?: number;
  /** Every requirement with demand and capacity. */
  readonly checks: readonly SkinCheck[];
  /** Requirement that the schedule meets most narrowly. */
  readonly governs: string;
  /** Stiffness of the plies by classical laminate theory. */
  readonly laminate: Pick<LaminateAnswer, 'aNPerMm' | 'bN' | 'dNmm' | 'inPlane' | 'flexural'>;
  /** Why it is not the first. */
  readonly lost?: {
    /** What this schedule lost by. */
    readonly by: 'price' | 'mass' | 'plies' | 'nothing';
    /** By how much, in that measure. */
    readonly difference: number;
    /** Why it is not the first, in a sentence. */
    readonly words: string;
  };
}

export interface Missing {
  /** Each constraint with what it costs. */
  readonly reports: readonly ConstraintReport[];
  /** Constraints that no stack meets, whatever else it misses. */
  readonly metByNone: readonly Constraint[];
  /** The lack in sentences. */
  readonly words: readonly string[];
  /** Schedules that were looked at. */
  readonly examined: number;
  /** False when only a part of the stacks was looked at for this; that none will do is proven all the same. */
  readonly isComplete: boolean;
}

const theory: Cite = { source: 'JONES-1999', clause: 'chapter 4' };
const sandwich: Cite = { source: 'ZENKERT-1995', clause: '3.1' };
const practice: Cite = { source: 'COMMON-PRACTICE' };

export function scheduleReport(prepared: PreparedSearch, search: StackSearch): ScheduleSearch {
  const { request, settled, old, leftOut } = prepared;
  const isFound = search.best.length > 0;
  return {
    outcome: isFound ? 'found' : 'cannot-be-done',
    method: settled.method,
    rankedBy: isPriced(prepared) ? 'price' : 'mass',
    oldSkin: oldReport(prepared),
    best: search.best.map((_, i) => scheduleOf(prepared, search.best, i)),
    effort: { ...search.effort, isProvenBest: true },
    mostPlies: prepared.problem.mostPlies,
    ...(isFound ? {} : { missing: missingFrom(prepared) }),
    leftOut,
    assumptions: [...settled.assumptions, ...old.assumptions, ...panelAssumption(prepared)],
    limits: [
      'a comparison of the new skin with the old by one named method, not a design approval',
      'skins at a mast step, chainplate, windlass, winch, cleat or keel structure go to a naval architect or qualified surveyor',
      ...(request.panel === undefined
        ? ['the bending of the panel was not compared: its core and other skin were not given']
        : []),
    ],
  };
}

const isPriced = ({ request }: PreparedSearch): boolean => request.fabrics[0].pricePerM2 !== undefined;

const panelAssumption = ({ request: { panel } }: PreparedSearch): readonly Assumption[] =>
  panel === undefined || panel.newCore !== undefined
    ? []
    : [
        {
          at: '/panel/newCore',
          meaning: 'new core',
          value: 'as thick and as stiff as the old',
          because: 'nothing else was stated',
          source: practice.source,
        },
      ];

function oldReport({ request, old, target }: PreparedSearch): OldSkinReport {
  const spread =
    old.low === undefined || old.high === undefined
      ? {}
      : { alongLowNPerMm: old.low.measure.alongNPerMm, alongHighNPerMm: old.high.measure.alongNPerMm };
  return {
    thicknessMm: request.oldSkin.thicknessMm,
    alongNPerMm: target.alongNPerMm,
    acrossNPerMm: target.acrossNPerMm,
    shearNPerMm: target.shearNPerMm,
    strengthNPerMm: target.strengthNPerMm,
    isGuessed: request.oldSkin.plies === undefined,
    ...spread,
  };
}

/** What can be long in the making is made when it is asked for: of many skins kept few are looked at closely. */
function scheduleOf(prepared: PreparedSearch, best: readonly Stack[], i: number): Schedule {
  const stack = best[i];
  const laid = stack.order.map((option) => prepared.offers[option]);
  const parts = partsOf(prepared, stack, laid);
  return {
    rank: i + 1,
    plies: laid.map(schedulePly),
    get thicknessMm() {
      return parts.thicknessMm();
    },
    get glassGPerM2() {
      return parts.glassGPerM2();
    },
    get resinGPerM2() {
      return parts.resinGPerM2();
    },
    get stiffnessAlongNPerMm() {
      return parts.along();
    },
    get stiffnessAcrossNPerMm() {
      return parts.across();
    },
    get proudMm() {
      return parts.measure().thicknessMm - prepared.request.oldSkin.thicknessMm;
    },
    ...(isPriced(prepared) ? { pricePerM2: stack.price } : {}),
    get checks() {
      return parts.checks();
    },
    get governs() {
      return parts.checks().reduce((worst, check) => (check.utilisation > worst.utilisation ? check : worst))
        .check;
    },
    get laminate() {
      return parts.laminate();
    },
    ...(i === 0 ? {} : { lost: lostTo(best[0], stack, isPriced(prepared)) }),
  };
}

function partsOf(prepared: PreparedSearch, stack: Stack, laid: readonly LaidOffer[]) {
  const plies = laid.flatMap(({ layup }) => layup.plies);
  const measure = lazily(() => measureSkin(plies));
  const figures = lazily(() => laid.map((offer) => offer.figures()));
  return {
    measure,
    thicknessMm: lazily(() => sumOf('mm', 'thickness of the new skin', numbered(figures(), 'thicknessMm'))),
    glassGPerM2: lazily(() => sumOf('g/m2', 'glass in the new skin', numbered(figures(), 'glassGPerM2'))),
    resinGPerM2: lazily(() =>
      sumOf('g/m2', 'resin in the new skin, no waste', numbered(figures(), 'resinGPerM2')),
    ),
    along: lazily(() => stiffnessFigure('along', measure().alongNPerMm, figures())),
    across: lazily(() => stiffnessFigure('across', measure().acrossNPerMm, figures())),
    checks: lazily(() => checksOf(prepared, stack, measure())),
    laminate: lazily(() => laminateOf(plies)),
  };
}

function laminateOf(plies: Parameters<typeof laminate>[0]['plies']): Schedule['laminate'] {
  const outcome = laminate({ plies });
  if (!outcome.ok) throw new Defect(`a laid skin was refused: ${JSON.stringify(outcome.problems)}`);
  const { aNPerMm, bN, dNmm, inPlane, flexural } = outcome.value;
  return { aNPerMm, bN, dNmm, inPlane, flexural };
}

const numbered = <K extends keyof LayupFigures>(
  figures: readonly LayupFigures[],
  key: K,
): Readonly<Record<string, LayupFigures[K]>> =>
  Object.fromEntries(figures.map((figure, i) => [`ply${i + 1}`, figure[key]]));

const stiffnessFigure = (
  direction: string,
  value: number,
  figures: readonly LayupFigures[],
): Figure<'N/mm'> =>
  derived('N/mm', nPerMm(value), `extensional stiffness ${direction}, force per width for unit strain`, {
    formula: 'laminate.membrane-stiffness',
    title: 'Lamination theory, inverse of A',
    symbol: direction === 'along' ? '1/a11' : '1/a22',
    cite: theory,
    inputs: numbered(figures, 'thicknessMm'),
  });

const schedulePly = ({ offer, turnDeg, layup }: LaidOffer): SchedulePly => ({
  material: offer.material.code,
  name: offer.material.name,
  turnDeg,
  thicknessMm: layup.thicknessMm,
  glassGPerM2: layup.arealMassGPerM2,
  resinGPerM2: layup.resinGPerM2,
  fibreMassFraction: layup.fibreMassFraction,
});

interface Demand {
  readonly check: string;
  readonly title: string;
  readonly unit: string;
  readonly demand: number;
  readonly capacity: number;
  readonly cite: Cite;
  readonly toPass?: string;
}

const checked = (demand: Demand): SkinCheck => {
  const utilisation = demand.capacity === 0 ? 0 : demand.demand / demand.capacity;
  return { ...demand, utilisation, verdict: utilisation <= 1 + 1e-9 ? 'passes' : 'fails' };
};

function checksOf(
  { request, settled, target, problem }: PreparedSearch,
  stack: Stack,
  measure: SkinMeasure,
): readonly SkinCheck[] {
  const { thicknessMm } = request.oldSkin;
  const stiffness = (check: string, title: string, key: 'alongNPerMm' | 'acrossNPerMm' | 'shearNPerMm') =>
    checked({
      check,
      title,
      unit: 'N/mm',
      demand: target[key],
      capacity: measure[key],
      cite: theory,
      toPass: 'more or stiffer glass in this direction',
    });
  const shear = stiffness('stiffness-shear', 'Shear stiffness of the skin', 'shearNPerMm');
  return [
    stiffness('stiffness-along', 'Extensional stiffness along', 'alongNPerMm'),
    stiffness('stiffness-across', 'Extensional stiffness across', 'acrossNPerMm'),
    ...(saidOr(relaidSkinQuestions.restoreShear, request.restoreShear) ? [shear] : []),
    ...pulls.map((pull, i) =>
      checked({
        check: `strength-${pull}`,
        title: `First-ply strength, ${pull.replace('-', ' ')}`,
        unit: 'N/mm',
        demand: target.strengthNPerMm[i],
        capacity: measure.strengthNPerMm[i],
        cite: theory,
      }),
    ),
    ...panelChecks(stack, problem.panel),
    checked({
      check: 'flush-proud',
      title: 'Surface not above the limit',
      unit: 'mm',
      demand: measure.thicknessMm,
      capacity: thicknessMm + settled.proudUpToMm,
      cite: practice,
    }),
    checked({
      check: 'flush-low',
      title: 'Surface not below the limit',
      unit: 'mm',
      demand: problem.thinnestMm,
      capacity: measure.thicknessMm,
      cite: practice,
    }),
    checked({
      check: 'steps',
      title: 'Room in the taper for a step a ply',
      unit: 'mm',
      demand: stack.plyCount > 1 ? settled.smallestStepMm * stack.plyCount : 0,
      capacity: settled.taperRatio * thicknessMm,
      cite: practice,
    }),
  ];
}

function panelChecks({ ratios }: Stack, panel: PreparedSearch['problem']['panel']): readonly SkinCheck[] {
  if (ratios === undefined || panel === undefined) return [];
  return ([0, 1] as const).flatMap((side) => {
    const direction = side === 0 ? 'along' : 'across';
    return [
      checked({
        check: `panel-bending-${direction}`,
        title: `Bending stiffness of the panel ${direction}`,
        unit: 'N.mm',
        demand: panel.bendingNmm[side],
        capacity: panel.bendingNmm[side] * ratios.bending[side],
        cite: sandwich,
      }),
      checked({
        check: `panel-moment-${direction}`,
        title: `Moment at which the skin's first ply breaks, ${direction}`,
        unit: 'N',
        demand: panel.momentN[side],
        capacity: panel.momentN[side] * ratios.moment[side],
        cite: sandwich,
      }),
    ];
  });
}

function lostTo(first: Stack, stack: Stack, priced: boolean): NonNullable<Schedule['lost']> {
  const price = stack.price - first.price;
  const mass = stack.massGPerM2 - first.massGPerM2;
  if (priced && price > 1e-9)
    return { by: 'price', difference: price, words: `dearer by ${price.toFixed(2)} per m2` };
  if (mass > 1e-6)
    return {
      by: 'mass',
      difference: mass,
      words: `heavier by ${mass.toFixed(0)} g/m2 with its resin${priced ? ' at the same price' : ''}`,
    };
  const plies = stack.plyCount - first.plyCount;
  if (plies > 0)
    return { by: 'plies', difference: plies, words: `${plies} more to lay at the same price and mass` };
  return {
    by: 'nothing',
    difference: 0,
    words: 'equal in price, mass and plies; listed second by catalogue order',
  };
}

function missingFrom({ problem, settled }: PreparedSearch): Missing {
  const { reports, examined, isComplete } = diagnose(problem);
  const metByNone = reports
    .filter(({ metBy, constraint }) => metBy === 0 && constraint !== 'order')
    .map(({ constraint }) => constraint);
  const alone = reports.filter(({ soleObstacleOf }) => soleObstacleOf > 0);
  const words = [
    ...reports
      .filter(({ constraint }) => metByNone.includes(constraint))
      .map(
        (report) =>
          `no stack meets: ${wordsOf(report.constraint)}; the best reaches ${percent(report.bestRatio)} of it`,
      ),
    ...alone.map(nearMiss),
    ...tooFewPlies(problem),
    ...(problem.mostPlies < settled.mostPlies
      ? [
          `the taper has room for the steps of ${problem.mostPlies} plies only: a longer taper or smaller steps would allow ${settled.mostPlies}`,
        ]
      : []),
  ];
  return {
    reports,
    metByNone,
    examined,
    isComplete,
    words:
      words.length > 0
        ? words
        : [
            'every stack misses two or more of the demands at once: offer stiffer or thinner fabrics, or allow more difference of level',
          ],
  };
}

/** Where the thickest plies together are thinner than the skin may be. */
function tooFewPlies({ options, mostPlies, thinnestMm }: PreparedSearch['problem']): readonly string[] {
  const mostMm = mostPlies * Math.max(...options.map(({ membrane }) => membrane.thicknessMm));
  return mostMm >= thinnestMm
    ? []
    : [
        `${mostPlies} plies of the thickest fabric come to ${mostMm.toFixed(1)} mm, and the skin must have ${thinnestMm.toFixed(1)} mm at least: allow more plies, offer heavier fabrics, or build it up as a single skin with a designer`,
      ];
}

const percent = (ratio: number): string => `${(100 * ratio).toFixed(1)} %`;

const nearMiss = ({ constraint, soleObstacleOf, nearestRatio }: ConstraintReport): string =>
  constraint === 'order'
    ? `${soleObstacleOf} stacks meet every measure of the skin, but none in an order with a fabric that suits the core first, one that prints little last, and the panel's bending restored: ${wordsOf('order')}`
    : `${soleObstacleOf} stacks miss only this: ${wordsOf(constraint)}; the nearest reaches ${percent(nearestRatio ?? 0)} of it`;

function wordsOf(constraint: Constraint): string {
  switch (constraint) {
    case 'flush-proud':
      return 'not above the old surface by more than allowed (allow more, or offer stiffer or thinner fabrics)';
    case 'flush-low':
      return 'not below the old surface by more than allowed (allow more fairing, or offer more plies)';
    case 'stiffness-along':
      return 'extensional stiffness along (offer fibres along)';
    case 'stiffness-across':
      return 'extensional stiffness across (offer fibres across)';
    case 'stiffness-shear':
      return 'shear stiffness (offer mat or fibres at 45 degrees)';
    case 'strength-tension-along':
    case 'strength-compression-along':
      return `${constraint.replaceAll('-', ' ')} (offer fibres along)`;
    case 'strength-tension-across':
    case 'strength-compression-across':
      return `${constraint.replaceAll('-', ' ')} (offer fibres across)`;
    case 'kinds':
      return 'no more kinds of fabric than allowed (allow one more)';
    case 'order':
      return 'offer a fabric that suits the core, or one that prints less, or a thicker core';
    default:
      return unreachable(constraint);
  }
}
