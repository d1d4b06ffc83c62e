import { materialsOf, type Reinforcement } from '#lib/catalogue';
import { andThen, problem, refusal, success, type Outcome } from '#lib/kernel';
import { limits, type JudgedRung, type PlaceFacts } from '#lib/methods';
import { derived, type Figure } from '#lib/provenance';
import type { ResinStepRequest } from '#lib/resin';
import { fraction, l, m, m2 } from '#lib/units';
import type { Job } from '../job/job.js';
import type { AreaQuantities } from '../stages/area-quantities.js';
import type { SheetsWanted } from '../stages/core-stage.js';
import {
  circumstancesOf,
  coatsAndCycles,
  finishArea,
  nonskidArea,
  smoothArea,
  noArea,
  none,
  nothingBesides,
  beyond,
  coveringArea,
  type JobQuantities,
} from '../stages/labour-drivers.js';
import { overlaySteps } from '../stages/overlay-needs.js';
import type { PlyWork } from '../stages/laminate-stage.js';
import { sealStep } from '../stages/resin-steps.js';
import { cardsFor, fittingFigures } from './hardware.js';
import { besidesOf } from './besides.js';
import type { RungPlan } from './rung-work.js';

/**
 * A rung that opens the deck, worked out in the rough: openings as boxes round the places, plies and sheets by area.
 * Hours and prices come from the same functions as those of the planned rung; only the geometry is coarser.
 */
export function roughOpening(job: Job, rung: JudgedRung, places: readonly PlaceFacts[]): Outcome<RungPlan> {
  const fabric = heaviestFabric(job);
  if (fabric === undefined)
    return refusal(problem('not-supported', '/method/resin', { why: 'no cloth suits this resin' }));
  const size = roughSize(job, places);
  const quantities = roughQuantities(job, rung, { places, size });
  const plies = roughPlies(job, rung, { fabric, size });
  return andThen(sheetsFor(job, quantities.coredM2.value), (sheets) =>
    success({
      job,
      quantities,
      flags: {
        ...circumstancesOf(job),
        skin: job.answers.method.skin.value,
        condition: conditionOf(places),
        props: 'needed',
        panel: job.record.panel.camberRadiusMm === undefined ? 'flat' : 'cambered',
      },
      steps: [...roughSteps(job, { size, plies, quantities }), ...overlaySteps(job, quantities)],
      core: { sheets },
      laminate: { plies, plyCount: plies.length, sessions: 1, largestPlyM2: quantities.laminateM2 },
      needsBesides: [],
      cards: cardsFor(
        job,
        places.flatMap(({ fittings }) =>
          fittings.map(({ id, isOnPlace }) => ({ id, isOnOpening: isOnPlace })),
        ),
      ),
    }),
  );
}

interface RoughSize {
  readonly openedM2: number;
  /** Of it, what core comes out of. */
  readonly baredM2: number;
  readonly cutM: number;
  readonly laminateM2: number;
}

const MM_PER_M = 1000;
const MM2_PER_M2 = 1e6;

function roughSize({ answers }: Job, places: readonly PlaceFacts[]): RoughSize {
  const skinMm = (
    answers.method.access.value === 'from-below'
      ? answers.innerSkin.thicknessMm
      : answers.outerSkin.thicknessMm
  ).value;
  const taperMm =
    answers.method.skin.value === 'relay' ? answers.method.taperRatio.value * skinMm : TAPE_MM / 2;
  const marginMm = answers.method.cutMarginMm.value;
  const staysMm =
    answers.method.soundCore.value === 'stays' ? Math.max(0, marginMm - limits.provenMarginMm) : 0;
  const boxes = places.map(({ longMm, narrowMm }) => {
    return [longMm + 2 * marginMm, narrowMm + 2 * marginMm] as const;
  });
  const sum = (of: (box: readonly [number, number]) => number): number =>
    boxes.reduce((total, box) => total + of(box), 0);
  const ring = (grownMm: number): number =>
    sum(([a, b]) => ((a + 2 * grownMm) * (b + 2 * grownMm)) / MM2_PER_M2);
  return {
    openedM2: ring(0),
    baredM2: ring(-staysMm),
    cutM: sum(([a, b]) => (2 * (a + b)) / MM_PER_M),
    laminateM2:
      answers.method.skin.value === 'relay'
        ? ring(taperMm)
        : ring(taperMm) - sum(([a, b]) => (Math.max(0, a - TAPE_MM) * Math.max(0, b - TAPE_MM)) / MM2_PER_M2),
  };
}

/** Tapes over a seam. Source: [METHODS-IN-PRINT] 100 and 150 mm. */
const TAPE_MM = 150;

interface RoughContext {
  readonly places: readonly PlaceFacts[];
  readonly size: RoughSize;
}

const figureOf = <U extends 'm2' | 'm' | 'l' | '1'>(
  unit: U,
  value: Figure<U>['value'],
  meaning: string,
): Figure<U> =>
  derived(unit, value, meaning, {
    formula: 'scope.rough',
    title: 'Boxes round the places with their margins',
    symbol: 'A',
    cite: { source: 'ARITHMETIC' },
    inputs: {},
  });

/** Places and their margin in the state that takes the most work; where core stays, the skin still holds. */
function roughAreas(
  job: Job,
  { openedM2, baredM2 }: RoughSize,
  places: readonly PlaceFacts[],
): AreaQuantities {
  const condition = conditionOf(places);
  const part = (meaning: string, value: number): Figure<'m2'> => figureOf('m2', m2(value), meaning);
  const bared = part('ground from which core comes out, roughly', baredM2);
  const kept = part('sound core that stays, roughly', openedM2 - baredM2);
  const isSolid = job.fill === 'solid';
  const litres = isSolid ? baredM2 * job.answers.core.cavityMm.value : 0;
  return {
    baredM2: bared,
    keptCoreM2: kept,
    driedM2: condition === 'dry-debonded' ? noArea : bared,
    coredM2: isSolid ? noArea : bared,
    solidL: figureOf('l', l(litres), 'filled solid, roughly'),
    looseSkinM2: condition === 'wet-bonded' ? noArea : bared,
    heldSkinM2: condition === 'wet-bonded' ? part('skin that still holds, roughly', openedM2) : kept,
    looseCoreM2: condition === 'wet-rotten' ? bared : noArea,
    heldCoreM2: condition === 'wet-rotten' ? noArea : bared,
  };
}

function roughQuantities(job: Job, rung: JudgedRung, { places, size }: RoughContext): JobQuantities {
  const openedM2 = figureOf('m2', m2(size.openedM2), 'opened area, roughly');
  const fairedM2 = figureOf('m2', m2(size.laminateM2), 'area to fair, roughly');
  const finishM2 = finishArea(job, fairedM2);
  const nonskidM2 = nonskidArea(job, finishM2);
  const fittings = places.flatMap((place) => place.fittings);
  const extra = Math.max(0, plyCountFor(job) - 2);
  return {
    openedM2,
    ...roughAreas(job, size, places),
    coveringM2: coveringArea(job, finishM2),
    cutM: figureOf('m', m(size.cutM), 'saw cut, roughly'),
    lipM: figureOf('m', m(0), 'no lip, roughly'),
    topcoatM2: smoothArea(finishM2, nonskidM2),
    taperM: figureOf('m', m(size.cutM), 'taper, roughly'),
    fairedM2,
    finishM2,
    oldFinishM2: beyond('old finish that is painted over', finishM2, fairedM2),
    laminateM2: figureOf('m2', m2(size.laminateM2), 'laminate, roughly'),
    extraPlyM2: figureOf('m2', m2(size.laminateM2 * extra), 'ply area beyond two plies, roughly'),
    laminatePauseM2: noArea,
    ...coatsAndCycles(job, fairedM2),
    injectedM2: noArea,
    injectionHoles: none,
    nonskidM2,
    liningM2: figureOf(
      'm2',
      m2(job.answers.panel.accessBelow.value === 'lined' ? 1.3 * size.openedM2 : 0),
      'lining, roughly',
    ),
    holes: figureOf(
      '1',
      fraction(fittings.reduce((n, { holes }) => n + (holes === 'unknown' ? 4 : holes), 0)),
      'holes to pot',
    ),
    ...fittingFigures(
      job,
      fittings.map(({ id }) => ({ id, isOnOpening: true })),
    ),
    inserts: figureOf('1', fraction(job.fill === 'solid' ? 0 : fittings.length), 'solid inserts'),
    plates: figureOf('1', fraction(fittings.length), 'backing plates'),
    besides: { ...nothingBesides, ...besidesOf(job, rung, { openedM2, places }) },
  };
}

/** Millimetres of laminate that a heavy ply makes by hand. Source: [COMMON-PRACTICE]. */
const HEAVY_PLY_MM = 0.9;
const plyCountFor = ({ answers }: Job): number =>
  answers.method.skin.value === 're-bed'
    ? 3
    : Math.max(
        2,
        Math.ceil(
          (answers.method.access.value === 'from-below'
            ? answers.innerSkin.thicknessMm
            : answers.outerSkin.thicknessMm
          ).value / HEAVY_PLY_MM,
        ),
      );

const heaviestFabric = ({ catalogue, resin }: Job): Reinforcement | undefined =>
  materialsOf(catalogue, 'reinforcement')
    .filter(({ suitsResins, code }) => suitsResins.includes(resin.chemistry) && code.includes('biaxial'))
    .sort((a, b) => b.arealMassGPerM2.value - a.arealMassGPerM2.value)
    .at(0);

function roughPlies(
  job: Job,
  _: JudgedRung,
  { fabric, size }: { readonly fabric: Reinforcement; readonly size: RoughSize },
): readonly PlyWork[] {
  const rollWidthMm = Math.max(...fabric.rollWidthsMm);
  return Array.from({ length: plyCountFor(job) }, (_ignored, index): PlyWork => ({
    label: `P${index + 1}`,
    fabric,
    areaM2: figureOf('m2', m2(size.laminateM2), `ply ${index + 1}, roughly`),
    rollLengthM: (ROLL_WASTE * size.laminateM2 * MM_PER_M) / rollWidthMm,
    rollWidthMm,
    strips: [
      { lengthMm: (ROLL_WASTE * size.laminateM2 * MM_PER_M * MM_PER_M) / rollWidthMm, widthMm: rollWidthMm },
    ],
    fibreMassFraction: fabric.fibreMassFraction.value,
  }));
}

/** Cloth off the roll over cloth laid; core bought over core fitted. From memory, for the rough comparison of rungs alone. */
const ROLL_WASTE = 1.2;
const SHEET_WASTE = 1.3;

function sheetsFor({ core, priceList, answers }: Job, coredM2: number): Outcome<readonly SheetsWanted[]> {
  if (coredM2 === 0) return success([]);
  const offers = priceList.packs.filter(
    ({ content }) => content.material === core.code && content.sheet !== undefined,
  );
  const away = (thicknessMm = 0): number => Math.abs(thicknessMm - answers.core.thicknessMm.value);
  const nearest = offers.sort((a, b) => away(a.content.thicknessMm) - away(b.content.thicknessMm)).at(0);
  const { sheet, thicknessMm } = nearest?.content ?? {};
  if (sheet === undefined || thicknessMm === undefined) return success([]);
  const sheetM2 = (sheet.lengthMm * sheet.widthMm) / MM2_PER_M2;
  return success([
    {
      thicknessMm,
      form: 'plain',
      sheet,
      count: figureOf('1', fraction(Math.ceil((SHEET_WASTE * coredM2) / sheetM2)), 'core sheets, roughly'),
      netM2: figureOf('m2', m2(coredM2), 'core, roughly'),
    },
  ]);
}

interface RoughStepContext {
  readonly size: RoughSize;
  readonly plies: readonly PlyWork[];
  readonly quantities: Pick<JobQuantities, 'baredM2' | 'coredM2' | 'solidL'>;
}

/** A litre to each thousand square millimetres of section and metre of length. */
const solidStep = ({ answers }: Job, litres: number): ResinStepRequest => ({
  step: 'undercut',
  lengthM: 1,
  widthMm: (litres * MM_PER_M) / answers.core.cavityMm.value,
  heightMm: answers.core.cavityMm.value,
});

function roughSteps(job: Job, { size, plies, quantities }: RoughStepContext): readonly ResinStepRequest[] {
  const { baredM2, coredM2, solidL } = quantities;
  const wet = plies.map(({ label, areaM2: plyM2, fabric, fibreMassFraction }) => ({
    label,
    areaM2: plyM2.value,
    arealMassGPerM2: fabric.arealMassGPerM2.value,
    fibreMassFraction,
  }));
  return [
    sealStep(job, baredM2.value),
    ...(coredM2.value === 0
      ? [solidStep(job, solidL.value)]
      : [
          {
            step: 'prewet' as const,
            areaM2: coredM2.value,
            litresPerM2: job.core.wetOutLPerM2.value,
          },
          { step: 'bed-core' as const, areaM2: coredM2.value },
        ]),
    ...(job.answers.method.skin.value === 'relay'
      ? [
          { step: 'top-laminate' as const, plies: wet },
          { step: 'weave-fill' as const, areaM2: size.laminateM2, coats: 3 },
        ]
      : [
          { step: 'bed-skin' as const, areaM2: size.openedM2 },
          { step: 'closing-plies' as const, plies: wet },
        ]),
  ];
}

const conditionOf = (places: readonly PlaceFacts[]): 'wet-rotten' | 'wet-bonded' | 'dry-debonded' => {
  const states = places.map(({ core }) => core);
  if (states.includes('wet-bonded')) return 'wet-bonded';
  return states.length > 0 && states.every((state) => state === 'dry-debonded')
    ? 'dry-debonded'
    : 'wet-rotten';
};
