import type { Coating, Datum } from '#lib/catalogue';
import { coatingsOf, isGelcoated, isStyrenated } from './coatings.js';
import { assumed, fromCatalogue, productOf, derived, sumOf, type Figure } from '#lib/provenance';
import type { OperationFlags } from '#lib/work';
import { lengthOffRoll } from '#lib/laminate';
import type { FittingCard } from '#lib/methods';
import type { PressMethod } from '#lib/press';
import type { ResinDemand, StepDemand } from '#lib/resin';
import type { DriverQuantities, JobFlag, NeedRequest } from '#lib/takeoff';
import { fraction, kg, m, m2, mFromMm, mm } from '#lib/units';
import { commonPractice } from '#lib/asking';
import type { CoreWork } from './core-stage.js';
import { hardwareNeeds } from './hardware-needs.js';
import type { Job } from '../job/job.js';
import type { JobQuantities } from './labour-drivers.js';
import { overlayNeeds } from './overlay-needs.js';
import type { LaminateWork, PlyWork } from './laminate-stage.js';
import type { PressedQuantities } from './pressed-quantities.js';

/** What a job buys by: its sheets, plies, areas and fittings. */
export interface NeedContext {
  readonly job: Job;
  readonly quantities: JobQuantities;
  readonly core: Pick<CoreWork, 'sheets'>;
  readonly laminate: Pick<LaminateWork, 'plies' | 'plyCount' | 'largestPlyM2' | 'sessions'>;
  /** Of the fittings that come off and are set again. */
  readonly cards: readonly FittingCard[];
  /** For what is done beside: the leak that is stopped. */
  readonly needsBesides: readonly NeedRequest[];
  /** What the press and the props are counted by; nothing where nothing is pressed. */
  readonly pressed: PressedQuantities;
  /** What presses the bed; nothing where nothing is bedded. */
  readonly pressedBy: PressMethod | 'nothing';
}

/** Everything the rooms found the job to need, before waste is turned into packs. */
export const needsOf = (context: NeedContext, demand: ResinDemand): readonly NeedRequest[] => [
  ...coreNeeds(context),
  ...fabricNeeds(context),
  ...resinNeeds(context, demand),
  ...coatingNeeds(context),
  ...hardwareNeeds(context.job, context.cards),
  ...overlayNeeds(context.job, context.quantities),
  ...context.needsBesides,
];

const coreNeeds = ({ core, job }: NeedContext): readonly NeedRequest[] =>
  core.sheets.map(({ thicknessMm, form, sheet, count, netM2 }) => {
    const sheetM2 = (sheet.lengthMm / 1000) * (sheet.widthMm / 1000);
    const bought = count.value * sheetM2;
    return {
      id: `core-${form}-${thicknessMm}-${sheet.lengthMm}x${sheet.widthMm}`,
      title: `${job.core.name}, ${thicknessMm} mm`,
      material: job.core.code,
      thicknessMm,
      form,
      sheet,
      unit: 'm2',
      purpose: 'core',
      netQuantity: netM2,
      wasteFraction: derived(
        '1',
        fraction(netM2.value === 0 ? 0 : bought / netM2.value - 1),
        'cut to waste from whole sheets',
        {
          formula: 'coring.sheet-waste',
          title: 'Whole sheets over the core fitted',
          symbol: 'w',
          cite: { source: 'ARITHMETIC' },
          inputs: {
            sheets: count,
            sheetArea: derived('m2', m2(sheetM2), 'area of a sheet', {
              formula: 'geometry.area',
              title: 'Length times width',
              symbol: 'A',
              cite: { source: 'ARITHMETIC' },
              inputs: {},
            }),
            fitted: netM2,
          },
        },
      ),
      packQuantity: sheetM2,
    };
  });

/** Cloth is bought by the running metre of its roll: what the outlines leave of that length is waste. */
function fabricNeeds({ laminate }: NeedContext): readonly NeedRequest[] {
  const rolls = new Map(laminate.plies.map((ply) => [`${ply.fabric.code}/${ply.rollWidthMm}`, ply]));
  return [...rolls].map(([key, { fabric, rollWidthMm }]) => {
    const plies = laminate.plies.filter((ply) => `${ply.fabric.code}/${ply.rollWidthMm}` === key);
    const areas = Object.fromEntries(plies.map(({ label, areaM2 }) => [label, areaM2]));
    const net = plies.reduce((sum, { areaM2 }) => sum + areaM2.value, 0);
    const lengthM = rollLengthOf(plies, rollWidthMm);
    const offRoll = lengthM * mFromMm(mm(rollWidthMm));
    return {
      id: `fabric-${fabric.code}-${rollWidthMm}`,
      title: fabric.name,
      material: fabric.code,
      rollWidthMm,
      unit: 'm2',
      purpose: 'laminate',
      netQuantity: derived<string>('m2', m2(net), 'area of plies', {
        formula: 'arithmetic.sum',
        title: 'Sum of parts',
        symbol: 'Σ',
        cite: { source: 'ARITHMETIC' },
        inputs: areas,
      }),
      wasteFraction: derived(
        '1',
        fraction(Math.max(0, net === 0 ? 0 : offRoll / net - 1)),
        'cut to waste from the roll',
        {
          formula: 'laminate.roll-waste',
          title: 'Area taken off the roll over area of plies',
          symbol: 'w',
          cite: { source: 'ARITHMETIC' },
          inputs: {
            length: derived('m', m(lengthM), 'length off the roll', {
              formula: 'laminate.roll-length',
              title: 'Strips of all plies, side by side on the roll',
              symbol: 'L',
              cite: { source: 'COMMON-PRACTICE' },
              inputs: areas,
            }),
            width: derived('mm', mm(rollWidthMm), 'width of the roll', {
              formula: 'laminate.roll-width',
              title: 'Chosen roll',
              symbol: 'b',
              cite: { source: 'COMMON-PRACTICE' },
              inputs: {},
            }),
          },
        },
      ),
    };
  });
}

/** Metres taken off a roll when strips of every ply lie side by side on it, as far as its width goes. */
const rollLengthOf = (plies: readonly PlyWork[], rollWidthMm: number): number =>
  mFromMm(
    mm(
      lengthOffRoll(
        plies.flatMap(({ strips }) => strips),
        rollWidthMm,
      ),
    ),
  );

function resinNeeds({ job }: NeedContext, demand: ResinDemand): readonly NeedRequest[] {
  const hardener = job.resin.hardeners.find(({ code }) => code === demand.hardener);
  const of = (title: string, pick: (step: StepDemand) => number) => massNeed(title, demand, pick);
  return [
    {
      ...of(`${job.resin.name}, resin`, ({ resinG }) => resinG),
      id: 'resin',
      material: job.resin.code,
      purpose: 'resin',
    },
    {
      ...of(`${job.resin.name}, ${hardener?.name ?? demand.hardener}`, ({ hardenerG }) => hardenerG),
      id: 'hardener',
      material: job.resin.code,
      part: demand.hardener,
      purpose: 'resin',
    },
    ...demand.totals.fillers.map(({ filler }) => {
      const name = job.catalogue.materials.find(({ code }) => code === filler)?.name ?? filler;
      return {
        ...of(name, (step) => (step.filler === filler ? step.fillerG : 0)),
        id: `filler-${filler}`,
        material: filler,
        purpose: 'filler',
      };
    }),
  ];
}

/** Net mass without waste, and the waste of the resin steps beside it; each step is an input of the figure. */
function massNeed(
  title: string,
  demand: ResinDemand,
  pick: (step: StepDemand) => number,
): Pick<NeedRequest, 'title' | 'unit' | 'netQuantity' | 'wasteFraction' | 'wasteRange'> {
  const steps = demand.steps.filter((step) => pick(step) > 0);
  const netShare = ({ netL, totalL }: StepDemand): number => (totalL === 0 ? 0 : netL / totalL);
  const netKg = steps.reduce((sum, step) => sum + pick(step) * netShare(step), 0) / 1000;
  const totalKg = steps.reduce((sum, step) => sum + pick(step), 0) / 1000;
  const wasteShare = netKg === 0 ? 0 : totalKg / netKg - 1;
  return {
    title,
    unit: 'kg',
    netQuantity: derived<string>('kg', kg(netKg), `${title}, net`, {
      formula: 'process.step-masses',
      title: 'Sum over the steps that take it',
      symbol: 'Σ',
      cite: { source: 'ARITHMETIC' },
      inputs: Object.fromEntries(steps.map((step) => [step.step, step.why.netL])),
    }),
    wasteFraction: derived('1', fraction(wasteShare), 'waste as a share of net', {
      formula: 'process.step-waste',
      title: 'Waste of the steps together',
      symbol: 'w',
      cite: commonPractice,
      inputs: Object.fromEntries(steps.map((step) => [step.step, step.why.mixedG])),
    }),
    wasteRange: { low: 0.1, high: 0.3 },
  };
}

function coatingNeeds({ job, quantities }: NeedContext): readonly NeedRequest[] {
  const coatings = coatingsOf(job);
  const laid = (kind: Coating['coating']): readonly Coating[] =>
    coatings.filter(({ coating }) => coating === kind);
  return [
    ...laid('fairing-compound').map((coating) => volumeNeed(coating, quantities.fairedM2, undefined)),
    ...laid('primer').map((coating) => volumeNeed(coating, quantities.finishM2, quantities.primerCoats)),
    ...laid('topcoat').map((coating) => volumeNeed(coating, quantities.topcoatM2, quantities.topcoatCoats)),
    ...laid('gelcoat').map((coating) => volumeNeed(coating, quantities.finishM2, quantities.topcoatCoats)),
    ...(quantities.nonskidM2.value > 0
      ? laid('nonskid').map((coating) => volumeNeed(coating, quantities.nonskidM2, undefined))
      : []),
  ];
}

const rollerLoss: Figure<'1'> = assumed('1', fraction(0.12), 'coating lost in tray and roller', {
  at: '/method/finish',
  because: 'brush and roller lose 10 to 15 %',
  cite: { source: 'COATING-LOSS' },
  low: 0.1,
  high: 0.15,
});

function volumeNeed(coating: Coating, areaM2: Figure<'m2'>, coats: Figure<'1'> | undefined): NeedRequest {
  const spread = catalogueFigure(coating.code, coating.coverageM2PerL, {
    field: 'coverageM2PerL',
    unit: 'm2/l',
    meaning: 'coverage of one coat',
  });
  const layers =
    coats ?? catalogueFigure(coating.code, coating.coats, { field: 'coats', unit: '1', meaning: 'coats' });
  const litres = spread.value === 0 ? 0 : (areaM2.value * layers.value) / spread.value;
  const { low = coating.coverageM2PerL.value, high = coating.coverageM2PerL.value } = coating.coverageM2PerL;
  return {
    id: coating.code,
    title: coating.name,
    material: coating.code,
    unit: 'l',
    purpose: 'finish',
    netQuantity: derived<string>('l', fraction(litres), `${coating.name}, net`, {
      formula: 'finish.coating-volume',
      title: 'Area times coats over coverage',
      symbol: 'V',
      cite: { source: 'ARITHMETIC' },
      inputs: { area: areaM2, coats: layers, coverage: spread },
    }),
    netRange: {
      low: (litres * coating.coverageM2PerL.value) / high,
      high: (litres * coating.coverageM2PerL.value) / low,
    },
    wasteFraction: rollerLoss,
    wasteRange: { low: 0.1, high: 0.15 },
  };
}

interface Wanted {
  readonly field: string;
  readonly unit: string;
  readonly meaning: string;
}

const catalogueFigure = (
  item: string,
  { value, low, high, cite }: Datum,
  { field, unit, meaning }: Wanted,
): Figure =>
  fromCatalogue<string>(unit, fraction(value), meaning, {
    item,
    field,
    cite,
    ...(low === undefined ? {} : { low }),
    ...(high === undefined ? {} : { high }),
  });

/** What consumables are counted by. */
export const consumableDriversOf = (
  { job, quantities, cards, laminate, pressed }: NeedContext,
  labourH: Figure<'h'>,
  mixedL: number,
): DriverQuantities => ({
  'job': 1,
  'opened-m2': sumOf<string>('m2', 'opened or injected under', {
    opened: quantities.openedM2,
    injected: quantities.injectedM2,
  }),
  'cut-m': quantities.cutM,
  'taper-m': quantities.taperM,
  'laminate-m2': productOf<string>('m2', 'laminate area over all plies', {
    largestPly: laminate.largestPlyM2,
    plies: derived('1', fraction(laminate.plyCount), 'plies', {
      formula: 'laminate.count',
      title: 'Plies counted',
      symbol: 'n',
      cite: { source: 'ARITHMETIC' },
      inputs: {},
    }),
  }),
  'laminate-session-m2': productOf<string>('m2', 'laminate area of each session', {
    largestPly: laminate.largestPlyM2,
    sessions: derived('1', fraction(laminate.sessions), 'sessions of laminating', {
      formula: 'laminate.count',
      title: 'Stages laid wet on wet',
      symbol: 'n',
      cite: { source: 'ARITHMETIC' },
      inputs: {},
    }),
  }),
  'faired-m2': quantities.fairedM2,
  'finish-m2': quantities.finishM2,
  'hole': sumOf<string>('1', 'holes filled', {
    fittings: quantities.holes,
    injection: quantities.injectionHoles,
  }),
  'fitting': cards.length,
  'labour-h': labourH,
  'mixed-l': mixedL,
  'styrenated-l': isStyrenated(job) ? mixedL : 0,
  'gelcoat-m2': isGelcoated(job) ? quantities.finishM2 : 0,
  'bag-perimeter-m': quantities.cutM,
  'person': job.answers.crew.people,
  ...pressed,
});

export const consumableFlagsOf = (
  { job, quantities, pressedBy }: NeedContext,
  skin: OperationFlags['skin'],
): readonly JobFlag[] => [
  ...(skin === 'inject' || skin === 'closed' ? [] : [skin]),
  ...pressFlags(pressedBy),
  job.resin.chemistry === 'epoxy' ? 'epoxy' : 'polyester',
  ...finishFlags(job),
  ...(job.answers.method.access.value === 'from-above' && quantities.nonskidM2.value > 0
    ? ['nonskid' as const]
    : []),
];

const finishFlags = (job: Job): readonly JobFlag[] => {
  if (job.answers.method.access.value === 'from-below') return ['from-below'];
  return isGelcoated(job) ? [] : ['paint'];
};

/** Goods of the press that is planned, which need not be the one that was wished for; jacks and boards are counted by themselves. */
const pressFlags = (pressedBy: NeedContext['pressedBy']): readonly JobFlag[] =>
  pressedBy === 'nothing' || pressedBy === 'jacks' ? [] : [pressedBy];
