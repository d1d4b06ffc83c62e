import {
  plyMethodInWords,
  type ClosingPlies,
  type RelaidPlies,
  type Schedule,
  type ScheduleSearch,
} from '#lib/laminate';
import type { Check, LaminateSection, NamedValue } from '../document/estimate-document.js';
import { lower } from '../conclusion/speaking.js';
import type { Job } from '../job/job.js';
import type { ScheduleChoice, TriedSchedule } from '../stages/schedule-choice.js';
import { areasOf } from './areas.js';

/** What was found, and which of it was chosen. */
export interface FoundAndChosen {
  readonly search: ScheduleSearch;
  readonly choice: ScheduleChoice;
}

export function relaidSection(
  job: Job,
  laid: RelaidPlies,
  { search, choice }: FoundAndChosen,
): LaminateSection {
  const best = choice.chosen.schedule;
  return {
    method: 'relay',
    taperRatio: job.answers.method.taperRatio.value,
    taperWidthMm: laid.taperWidthMm.value,
    plies: laid.plies.map((ply) => ({
      order: ply.order,
      material: ply.material,
      materialName: ply.name,
      thicknessMm: ply.thicknessMm,
      areaM2: ply.areaM2.value,
      outline: areasOf(ply.outline),
      rollLengthM: ply.rollLengthM,
      rollWidthMm: ply.rollWidthMm,
      glassKg: ply.glassKg.value,
      resinKg: ply.resinKg.value,
      orientationDeg: ply.turnDeg,
    })),
    totalThicknessMm: best.thicknessMm.value,
    oldThicknessMm: search.oldSkin.thicknessMm,
    glassKg: laid.glassKg.value,
    resinKg: laid.resinKg.value,
    alternatives: alternativesOf(search, choice, job.priceList.currency),
    properties: propertiesOf(best, search),
    notes: [
      `Every schedule of the catalogue's fabrics was weighed, ranked by ${search.rankedBy}; plies by ${plyMethodInWords(search.method)}.`,
      ...laid.consequences,
      ...laid.notes,
      ...search.limits,
    ],
  };
}

const MOST_SHOWN = 3;

/** The chosen one first, then the cheapest others, each with why it was not chosen. */
function alternativesOf(
  { best }: ScheduleSearch,
  choice: ScheduleChoice,
  currency: string,
): LaminateSection['alternatives'] {
  const { chosen, tried } = choice;
  const untried = best
    .filter(({ rank }) => rank > tried.length)
    .map((schedule): TriedSchedule => ({ schedule }));
  const others = [...tried, ...untried].filter((one) => one !== chosen).slice(0, MOST_SHOWN - 1);
  return [
    alternativeOf(chosen, whyChosen(choice), currency),
    ...others.map((other) => alternativeOf(other, whyNot(other, chosen), currency)),
  ];
}

const alternativeOf = (
  { schedule: { rank, plies, thicknessMm, pricePerM2 } }: TriedSchedule,
  reason: string,
  currency: string,
): LaminateSection['alternatives'][number] => ({
  rank,
  plies: plies.map(({ name, turnDeg }) => (turnDeg === 0 ? name : `${name}, turned ${turnDeg} deg`)),
  thicknessMm: thicknessMm.value,
  costPerM2: pricePerM2 === undefined ? 'not priced' : `${pricePerM2.toFixed(2)} ${currency}/m2`,
  reason,
});

function whyChosen({ chosen: { schedule, panel }, tried }: ScheduleChoice): string {
  const governs = `nearest to its limit: ${governingTitle(schedule)}`;
  if (panel === undefined) return `the cheapest that restores the skin; ${governs}`;
  if (panel.shortfalls.length === 0)
    return `the cheapest that restores the skin and every measure of the panel; ${governs}`;
  return `of the ${tried.length} cheapest that restore the skin none restores every measure of the panel; this is the cheapest of those that leave the fewest short; ${governs}`;
}

function whyNot({ schedule, panel }: TriedSchedule, chosen: TriedSchedule): string {
  const dearer = (schedule.pricePerM2 ?? 0) - (chosen.schedule.pricePerM2 ?? 0);
  const price =
    Math.abs(dearer) < 0.005
      ? (schedule.lost?.words ?? 'as dear')
      : `${dearer > 0 ? 'dearer' : 'cheaper'} by ${Math.abs(dearer).toFixed(2)} per m2`;
  return panel === undefined || panel.shortfalls.length === 0
    ? price
    : `${price}; leaves the panel short in ${fewOf(panel.shortfalls.map(lower))}`;
}

const MOST_SHORTFALLS = 2;

/** The first of several, and how many more there are: what a reader compares by. */
const fewOf = (all: readonly string[]): string => {
  const more = all.length - MOST_SHORTFALLS;
  const shown = all.slice(0, MOST_SHORTFALLS).join('; ');
  return more > 0 ? `${shown}; and ${more} more` : shown;
};

const governingTitle = ({ governs, checks }: Schedule): string =>
  lower(checks.find(({ check }) => check === governs)?.title ?? governs);

function propertiesOf(best: Schedule, { oldSkin }: ScheduleSearch): readonly NamedValue[] {
  return [
    {
      code: 'stiffness-along',
      name: 'Extensional stiffness along',
      value: best.stiffnessAlongNPerMm.value,
      unit: 'N/mm',
      note: `old skin ${Number(oldSkin.alongNPerMm.toPrecision(3))} kN/m`,
    },
    {
      code: 'stiffness-across',
      name: 'Extensional stiffness across',
      value: best.stiffnessAcrossNPerMm.value,
      unit: 'N/mm',
      note: `old skin ${Number(oldSkin.acrossNPerMm.toPrecision(3))} kN/m`,
    },
    { code: 'proud', name: 'New surface above the old', value: best.proudMm, unit: 'mm' },
    { code: 'glass', name: 'Glass', value: best.glassGPerM2.value, unit: 'g/m2' },
    { code: 'resin', name: 'Resin in the laminate', value: best.resinGPerM2.value, unit: 'g/m2' },
  ];
}

export const scheduleChecks = (best: Schedule, laid: RelaidPlies, isRelaxed: boolean): readonly Check[] => [
  ...best.checks.map(
    ({ check, title, demand, capacity, unit, utilisation, verdict, cite, toPass }): Check => ({
      code: `skin-${check}`,
      title,
      state: 'repaired',
      demand,
      capacity,
      unit,
      utilisation,
      verdict,
      governs: title,
      source: cite.source,
      ...(toPass === undefined ? {} : { remedy: toPass }),
    }),
  ),
  ...(isRelaxed
    ? [
        {
          code: 'skin-flush',
          title: 'Level of the new skin within the usual limits',
          state: 'repaired' as const,
          unit: 'mm',
          verdict: 'fails' as const,
          governs: 'no schedule of the catalogue is flush within 0.5 mm proud and 1 mm low',
          remedy: 'more fairing, or a fabric of another weight',
          source: 'COMMON-PRACTICE',
        },
      ]
    : []),
  {
    code: 'taper-room',
    title: 'Room for the taper round the openings',
    unit: 'm2',
    demand: laid.room.outsideM2,
    verdict: laid.room.verdict,
    governs: laid.room.words,
    source: 'COMMON-PRACTICE',
    ...(laid.room.verdict === 'passes'
      ? {}
      : { remedy: 'move the cut away from the edge, or turn the laminate up it' }),
  },
];

export function closingSection(
  job: Job,
  closed: ClosingPlies,
): { readonly section: LaminateSection; readonly checks: readonly Check[] } {
  const total = closed.plies.reduce((sum, { thicknessMm }) => sum + thicknessMm, 0);
  return {
    section: {
      method: 're-bed',
      taperRatio: job.answers.method.taperRatio.value,
      taperWidthMm: closed.taperWidthMm.value,
      plies: closed.plies.map((ply) => ({
        order: ply.order,
        material: ply.material,
        materialName: ply.name,
        thicknessMm: ply.thicknessMm,
        areaM2: ply.areaM2.value,
        outline: ply.outline === undefined ? [] : areasOf(ply.outline),
        widthMm: ply.widthMm,
        rollLengthM: ply.rollLengthM,
        rollWidthMm: ply.rollWidthMm,
        glassKg: ply.glassKg.value,
        resinKg: ply.resinKg.value,
        orientationDeg: 0,
      })),
      totalThicknessMm: total,
      oldThicknessMm:
        job.answers.method.access.value === 'from-above'
          ? job.answers.outerSkin.thicknessMm.value
          : job.answers.innerSkin.thicknessMm.value,
      glassKg: closed.glassKg.value,
      resinKg: closed.resinKg.value,
      alternatives: [],
      properties: [
        { code: 'groove', name: 'Width of the groove over the cut', value: closed.grooveWidthMm, unit: 'mm' },
      ],
      notes: closed.consequences,
    },
    checks: closed.checks.map(
      ({ check, title, unit, verdict, demand, capacity, utilisation, cite, words }): Check => ({
        code: `seam-${check}`,
        title,
        state: 'repaired',
        unit,
        verdict,
        governs: words ?? title,
        source: cite.source,
        ...(demand === undefined ? {} : { demand }),
        ...(capacity === undefined ? {} : { capacity }),
        ...(utilisation === undefined ? {} : { utilisation }),
        ...(verdict === 'not-established' && words !== undefined ? { reason: words } : {}),
      }),
    ),
  };
}
