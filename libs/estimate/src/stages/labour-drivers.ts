import { areaMm2 } from '#lib/geometry';
import { assumed, derived, productOf, sumOf, type Figure } from '#lib/provenance';
import type { Driver, DriverAmounts, OperationFlags } from '#lib/work';
import { fraction, l, m, m2, m2FromMm2, mm2, type In } from '#lib/units';
import type { ZoneCondition } from '../job/defect-record.js';
import { commonPractice } from '#lib/asking';
import type { Job } from '../job/job.js';
import { usualCondition } from '../job/questions/defect.js';
import { fittingFigures, offIn } from '../ladder/hardware.js';
import { finishFlag, isFinished, isGelcoated, isTakenOff } from './coatings.js';
import type { LaminateWork } from './laminate-stage.js';
import { areaQuantities, type AreaQuantities } from './area-quantities.js';
import type { CoreWork } from './core-stage.js';
import type { ScopeWork } from './scope-stage.js';
import type { OpenedScope } from './three-areas.js';

/** What the hours and the consumables of this job are counted by, each with its derivation. */
export interface JobQuantities extends AreaQuantities {
  readonly openedM2: Figure<'m2'>;
  readonly cutM: Figure<'m'>;
  /** The cut round openings under whose edges core is taken out. */
  readonly lipM: Figure<'m'>;
  readonly taperM: Figure<'m'>;
  readonly laminateM2: Figure<'m2'>;
  readonly extraPlyM2: Figure<'m2'>;
  /** Cured before the next plies are laid on it. */
  readonly laminatePauseM2: Figure<'m2'>;
  readonly fairedM2: Figure<'m2'>;
  readonly fairingCycles: Figure<'1'>;
  readonly finishM2: Figure<'m2'>;
  /** Of it, what keeps its old finish under the paint: the fairing of the repair has none. */
  readonly oldFinishM2: Figure<'m2'>;
  /** Finished smooth: nonskid has its own coats on the primer. */
  readonly topcoatM2: Figure<'m2'>;
  /** Bonded on top of the deck and taken off before it is painted. */
  readonly coveringM2: Figure<'m2'>;
  readonly primerCoats: Figure<'1'>;
  readonly topcoatCoats: Figure<'1'>;
  readonly nonskidM2: Figure<'m2'>;
  readonly liningM2: Figure<'m2'>;
  readonly holes: Figure<'1'>;
  /** By the cards of the fittings that come off. */
  readonly fittingOffH: Figure<'h'>;
  readonly fittingOnH: Figure<'h'>;
  readonly fittingHelpedH: Figure<'h'>;
  readonly inserts: Figure<'1'>;
  readonly plates: Figure<'1'>;
  /** Under a skin that stays; none where the deck is opened. */
  readonly injectedM2: Figure<'m2'>;
  readonly injectionHoles: Figure<'1'>;
  /** What only some methods count by: strips, bows, rails, overlays, linings by their kind. */
  readonly besides: Besides;
}

export type Besides = Readonly<Partial<Record<Driver, Figure>>>;
export const nothingBesides: Besides = {};

export const noArea = derived('m2', m2(0), 'none', {
  formula: 'scope.count',
  title: 'None in this job',
  symbol: '0',
  cite: { source: 'ARITHMETIC' },
  inputs: {},
});
export const none = derived('1', fraction(0), 'none', {
  formula: 'scope.count',
  title: 'None in this job',
  symbol: '0',
  cite: { source: 'ARITHMETIC' },
  inputs: {},
});
export const noVolume = derived('l', l(0), 'none', {
  formula: 'scope.count',
  title: 'None in this job',
  symbol: '0',
  cite: { source: 'ARITHMETIC' },
  inputs: {},
});
export const noLength = derived('m', m(0), 'none', {
  formula: 'scope.count',
  title: 'None in this job',
  symbol: '0',
  cite: { source: 'ARITHMETIC' },
  inputs: {},
});

const one = fraction(1);
const PLIES_IN_THE_UNIT_RATE = 2;

export function quantitiesOf(
  job: Job,
  { plan, areas }: OpenedScope,
  laminate: LaminateWork,
  core: Pick<CoreWork, 'beddedM2' | 'solidL' | 'jointTapeM'>,
): JobQuantities {
  const { openedArea, cutLength, splitLength } = plan.figures;
  const cutM = sumOf('m', 'saw cut', { around: cutLength, across: splitLength });
  const fairedM2 = fairedArea(job, plan.figures, laminate);
  const finishM2 = finishArea(job, fairedM2);
  const nonskidM2 = nonskidArea(job, finishM2);
  return {
    openedM2: openedArea,
    lipM: lipLength(plan),
    topcoatM2: smoothArea(finishM2, nonskidM2),
    ...areaQuantities(areas, plan.figures, core),
    coveringM2: coveringArea(job, finishM2),
    cutM,
    taperM: cutM,
    fairedM2,
    finishM2,
    oldFinishM2: beyond('old finish that is painted over', finishM2, fairedM2),
    laminateM2: laminate.largestPlyM2,
    extraPlyM2: productOf('m2', 'ply area beyond two plies', {
      largestPly: laminate.largestPlyM2,
      extraPlies: extraPlies(laminate),
    }),
    laminatePauseM2: productOf('m2', 'laminate washed and sanded between sessions', {
      largestPly: laminate.largestPlyM2,
      pauses: pausesOf(laminate),
    }),
    ...coatsAndCycles(job, fairedM2),
    injectedM2: noArea,
    injectionHoles: none,
    besides: core.jointTapeM === undefined ? nothingBesides : { 'core-joint-m': core.jointTapeM },
    nonskidM2,
    liningM2: liningArea(job, openedArea),
    ...fittingCounts(plan),
    ...fittingFigures(job, offIn(plan.fittings.filter(({ work }) => work.includes('remove')))),
    ...(areas.fill === 'solid' ? { inserts: none } : {}),
  };
}

/** Cycles of a patch: two to a quarter of a square metre of filler, three from one on, straight in the logarithm between. */
const patchCycles = (fairedM2: number): number => {
  const [spotM2, panelM2] = [0.25, 1];
  const share = Math.log(Math.max(fairedM2, spotM2) / spotM2) / Math.log(panelM2 / spotM2);
  return 2 + Math.min(1, share);
};

export const coatsAndCycles = (
  job: Job,
  fairedM2: Figure<'m2'>,
): Pick<JobQuantities, 'fairingCycles' | 'primerCoats' | 'topcoatCoats'> => ({
  fairingCycles: fairingCyclesOf(job, fairedM2),
  primerCoats: isGelcoated(job)
    ? none
    : assumed('1', fraction(2), 'primer coats', {
        at: '/method/finish',
        because: 'two coats of high-build primer, a third over a rough surface',
        cite: { source: 'FROM-MEMORY' },
        low: 2,
        high: 3,
      }),
  topcoatCoats: assumed('1', fraction(2), isGelcoated(job) ? 'coats of gelcoat' : 'topcoat coats', {
    at: '/method/finish',
    because: isGelcoated(job)
      ? 'two coats wet on wet make the 0.6 mm that is sanded flush, a third over a strong change of colour'
      : 'two coats, a third over a strong change of colour',
    cite: { source: 'FROM-MEMORY' },
    low: 2,
    high: 3,
  }),
});

/** Gelcoat, sanded flush, takes the place of the last skim. */
function fairingCyclesOf(job: Job, fairedM2: Figure<'m2'>): Figure<'1'> {
  const lastSkim = isGelcoated(job) ? 1 : 0;
  const cycles = job.answers.method.finish.value === 'patch' ? patchCycles(fairedM2.value) : 4;
  return assumed('1', fraction(cycles - lastSkim), 'fairing cycles', {
    at: '/method/finish',
    because: isGelcoated(job)
      ? 'one on a spot, two for a patch, three for a panel; the gelcoat that is sanded flush is the last of them'
      : 'three to six are seen; two on a spot, three for a patch, four for a panel',
    cite: { source: 'FROM-MEMORY' },
    low: 2 - lastSkim,
    high: 6 - lastSkim,
  });
}

export const smoothArea = (finish: Figure<'m2'>, nonskid: Figure<'m2'>): Figure<'m2'> =>
  beyond('finished smooth', finish, nonskid);

/** What is left of an area beyond a part of it. */
export const beyond = (meaning: string, whole: Figure<'m2'>, part: Figure<'m2'>): Figure<'m2'> =>
  derived('m2', m2(Math.max(0, whole.value - part.value)), meaning, {
    formula: 'arithmetic.difference',
    title: 'An area less a part of it',
    symbol: 'A',
    cite: { source: 'ARITHMETIC' },
    inputs: { whole, part },
  });

const lipLength = ({ openings }: ScopeWork['plan']): Figure<'m'> =>
  derived(
    'm',
    m(
      openings.reduce(
        (sum, { undercutReachMm, cutLengthM }) => (undercutReachMm > 0 ? sum + cutLengthM : sum),
        0,
      ),
    ),
    'cut with core taken out under its edge',
    {
      formula: 'scope.lip-length',
      title: 'Cut of the openings that are undercut',
      symbol: 'L',
      cite: { source: 'ARITHMETIC' },
      inputs: {},
    },
  );

/** A re-bedded skin is faired over its seams only; a relaid one over the whole laminate. */
function fairedArea(
  job: Job,
  { openedArea, taperBandArea }: ScopeWork['plan']['figures'],
  laminate: LaminateWork,
): Figure<'m2'> {
  if (job.answers.method.skin.value === 're-bed') return laminate.largestPlyM2;
  return sumOf('m2', 'area to fair', { opened: openedArea, taperBand: taperBandArea });
}

/** What is bonded to the deck and comes off before it is painted; a recorded overlay takes that of the panel with it. */
export function coveringArea(job: Job, finishM2: Figure<'m2'>): Figure<'m2'> {
  if (job.answers.panel.surface.value !== 'planked') return noArea;
  if (job.record.panel.overlay === undefined) return finishM2;
  return beyond('covering beyond the panel', finishM2, areaOf('panel', m2FromMm2(mm2(panelAreaMm2(job)))));
}

/** All of the panel is painted where planks come off it for good, however small the repair under them. */
export const bareFinishArea = (job: Job): Figure<'m2'> =>
  isTakenOff(job.record.panel.overlay) && isFinished(job)
    ? areaOf('panel', m2FromMm2(mm2(panelAreaMm2(job))))
    : noArea;

export function finishArea(job: Job, fairedM2: Figure<'m2'>): Figure<'m2'> {
  if (!isFinished(job)) return noArea;
  const panel = m2FromMm2(mm2(panelAreaMm2(job)));
  switch (job.answers.method.finish.value) {
    case 'patch':
      return productOf('m2', 'area to finish', { faired: fairedM2, blend: blendFactor });
    case 'panel':
      return areaOf('panel', panel);
    case 'whole-deck':
      return areaOf('whole deck', m2(job.record.method?.wholeDeckAreaM2 ?? panel));
  }
}

const blendFactor: Figure<'1'> = assumed('1', fraction(1.3), 'finished over faired area', {
  at: '/method/finish',
  because: 'paint is feathered out past the fairing',
  cite: { source: 'FROM-MEMORY' },
  low: 1.3,
  high: 2,
});

const areaOf = (what: string, area: In<'m2'>): Figure<'m2'> =>
  derived('m2', area, `area of the ${what}`, {
    formula: 'geometry.area',
    title: 'Area of an outline',
    symbol: 'A',
    cite: { source: 'ARITHMETIC' },
    inputs: {},
  });

function panelAreaMm2({ record: { panel } }: Job): number {
  const holes = (panel.holes ?? []).reduce((sum, hole) => sum + areaMm2([{ outer: hole, holes: [] }]), 0);
  return areaMm2([{ outer: panel.outline, holes: [] }]) - holes;
}

export const nonskidArea = (job: Job, finishM2: Figure<'m2'>): Figure<'m2'> => {
  const hasNonskid =
    job.answers.panel.surface.value === 'painted-nonskid' ||
    job.answers.panel.surface.value === 'moulded-nonskid';
  const share = assumed('1', fraction(hasNonskid ? 0.75 : 0), 'share of the finish that is nonskid', {
    at: '/panel/surface',
    because: hasNonskid
      ? 'smooth margins round the nonskid take about a quarter'
      : 'the surface has no nonskid',
    cite: commonPractice,
  });
  return productOf('m2', 'nonskid area', { finish: finishM2, share });
};

const liningArea = (job: Job, openedArea: Figure<'m2'>): Figure<'m2'> => {
  const factor = job.answers.panel.accessBelow.value === 'lined' ? 1.3 : 0;
  return productOf('m2', 'lining to take out', {
    opened: openedArea,
    reach: assumed('1', fraction(factor), 'lining taken out over opened area', {
      at: '/panel/accessBelow',
      because: 'lining comes out a hand wider than the opening, to prop and to tape holes from below',
      cite: commonPractice,
    }),
  });
};

const extraPlies = ({ plyCount }: LaminateWork): Figure<'1'> =>
  derived('1', fraction(Math.max(0, plyCount - PLIES_IN_THE_UNIT_RATE)), 'plies beyond two', {
    formula: 'laminate.extra-plies',
    title: 'Plies beyond the two in the unit rate',
    symbol: 'n',
    cite: commonPractice,
    inputs: {},
  });

const pausesOf = ({ sessions }: LaminateWork): Figure<'1'> =>
  derived('1', fraction(Math.max(0, sessions - 1)), 'pauses between sessions', {
    formula: 'laminate.pauses',
    title: 'Sessions of laminating less one',
    symbol: 'n',
    cite: commonPractice,
    inputs: {},
  });

function fittingCounts({ fittings }: ScopeWork['plan']): Pick<JobQuantities, 'holes' | 'inserts' | 'plates'> {
  const counted = (meaning: string, count: number): Figure<'1'> =>
    derived('1', fraction(count), meaning, {
      formula: 'scope.count',
      title: 'Counted from the fittings in scope',
      symbol: 'n',
      cite: { source: 'ARITHMETIC' },
      inputs: {},
    });
  const having = (work: (typeof fittings)[number]['work'][number]) =>
    fittings.filter((fitting) => fitting.work.includes(work));
  return {
    holes: counted(
      'holes to pot',
      having('pot').reduce((sum, { holes }) => sum + holes, 0),
    ),
    inserts: counted('solid inserts', having('insert').length),
    plates: counted('backing plates', having('plate').length),
  };
}

/** The numbers that operations are counted by; `day` is worked out from the hours and added by the caller. */
export const driverAmountsOf = (quantities: JobQuantities): DriverAmounts => ({
  'job': one,
  'opened-m2': quantities.openedM2.value,
  'bared-m2': quantities.baredM2.value,
  'kept-core-m2': quantities.keptCoreM2.value,
  'dried-m2': quantities.driedM2.value,
  'cored-m2': quantities.coredM2.value,
  'solid-l': quantities.solidL.value,
  'loose-skin-m2': quantities.looseSkinM2.value,
  'held-skin-m2': quantities.heldSkinM2.value,
  'loose-core-m2': quantities.looseCoreM2.value,
  'held-core-m2': quantities.heldCoreM2.value,
  'cut-m': quantities.cutM.value,
  'lip-m': quantities.lipM.value,
  'taper-m': quantities.taperM.value,
  'laminate-m2': quantities.laminateM2.value,
  'laminate-pause-m2': quantities.laminatePauseM2.value,
  'extra-ply-m2': quantities.extraPlyM2.value,
  'faired-m2-cycle': quantities.fairedM2.value * quantities.fairingCycles.value,
  'primed-m2-coat': quantities.finishM2.value * quantities.primerCoats.value,
  'topcoat-m2-coat': quantities.topcoatM2.value * quantities.topcoatCoats.value,
  'finish-m2': quantities.finishM2.value,
  'old-finish-m2': quantities.oldFinishM2.value,
  'covering-m2': quantities.coveringM2.value,
  'nonskid-m2': quantities.nonskidM2.value,
  'buffed-m2': quantities.topcoatM2.value,
  'hole': quantities.holes.value,
  'fitting-off-h': quantities.fittingOffH.value,
  'fitting-on-h': quantities.fittingOnH.value,
  'fitting-helped-h': quantities.fittingHelpedH.value,
  'insert': quantities.inserts.value,
  'plate': quantities.plates.value,
  'support-m2-below': quantities.liningM2.value,
  'injection-hole': quantities.injectionHoles.value,
  ...Object.fromEntries(Object.entries(quantities.besides).map(([driver, { value }]) => [driver, value])),
});

/** The same amounts as figures, so that an hour can say what it was counted by. */
export const driverFiguresOf = (quantities: JobQuantities): Readonly<Record<string, Figure>> => ({
  'opened-m2': quantities.openedM2,
  'bared-m2': quantities.baredM2,
  'kept-core-m2': quantities.keptCoreM2,
  'dried-m2': quantities.driedM2,
  'cored-m2': quantities.coredM2,
  'solid-l': quantities.solidL,
  'loose-skin-m2': quantities.looseSkinM2,
  'held-skin-m2': quantities.heldSkinM2,
  'loose-core-m2': quantities.looseCoreM2,
  'held-core-m2': quantities.heldCoreM2,
  'cut-m': quantities.cutM,
  'lip-m': quantities.lipM,
  'taper-m': quantities.taperM,
  'laminate-m2': quantities.laminateM2,
  'laminate-pause-m2': quantities.laminatePauseM2,
  'extra-ply-m2': quantities.extraPlyM2,
  'faired-m2-cycle': productOf<string>('m2', 'faired area times cycles', {
    area: quantities.fairedM2,
    cycles: quantities.fairingCycles,
  }),
  'primed-m2-coat': productOf<string>('m2', 'finished area times primer coats', {
    area: quantities.finishM2,
    coats: quantities.primerCoats,
  }),
  'topcoat-m2-coat': productOf<string>('m2', 'smooth area times topcoats', {
    area: quantities.topcoatM2,
    coats: quantities.topcoatCoats,
  }),
  'finish-m2': quantities.finishM2,
  'old-finish-m2': quantities.oldFinishM2,
  'covering-m2': quantities.coveringM2,
  'nonskid-m2': quantities.nonskidM2,
  'buffed-m2': quantities.topcoatM2,
  'hole': quantities.holes,
  'fitting-off-h': quantities.fittingOffH,
  'fitting-on-h': quantities.fittingOnH,
  'fitting-helped-h': quantities.fittingHelpedH,
  'insert': quantities.inserts,
  'plate': quantities.plates,
  'support-m2-below': quantities.liningM2,
  'injection-hole': quantities.injectionHoles,
  ...quantities.besides,
});

export function flagsOf(job: Job, needsProps: boolean): OperationFlags {
  return {
    ...circumstancesOf(job),
    skin: job.answers.method.skin.value,
    condition: worstCondition(job.record.zones?.map(({ condition }) => condition)),
    props: needsProps ? 'needed' : 'not-needed',
    panel: job.record.panel.camberRadiusMm === undefined ? 'flat' : 'cambered',
  };
}

export const circumstancesOf = (
  job: Job,
): Omit<OperationFlags, 'skin' | 'condition' | 'props' | 'panel'> => ({
  access: job.answers.method.access.value,
  press: job.answers.method.press.value,
  shelter: job.answers.conditions.shelter.value,
  below: job.answers.panel.accessBelow.value,
  skill: job.answers.crew.skill.value,
  finish: isFinished(job) ? finishFlag(job) : 'none',
  nonskid: job.answers.panel.surface.value.endsWith('nonskid') ? 'yes' : 'no',
  berth: job.answers.conditions.place.value === 'afloat' ? 'afloat' : 'ashore',
});

/** The state that takes the most work decides: bonded core comes out harder than rotten core. */
const worstCondition = (conditions: readonly (ZoneCondition | undefined)[] = []): ZoneCondition =>
  conditions.includes('wet-bonded')
    ? 'wet-bonded'
    : conditions.length > 0 && conditions.every((condition) => condition === 'dry-debonded')
      ? 'dry-debonded'
      : usualCondition.value;

/** Every quantity by its name, with what only this method counts by. */
export const figuresOf = ({ besides, ...rest }: JobQuantities): readonly (readonly [string, Figure])[] => [
  ...Object.entries(rest),
  ...Object.entries(besides),
];
