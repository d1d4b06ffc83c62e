import type { ClosingPlies, RelaidPlies, Schedule, ScheduleSearch } from '#lib/laminate';
import type { Check, LaminateSection, NamedValue } from './estimate.js';
import type { Job } from './job.js';
import { areasOf } from './scope-section.js';

export function relaidSection(job: Job, laid: RelaidPlies, search: ScheduleSearch): LaminateSection {
  const best = search.best[0];
  return {
    method: 'relay', taperRatio: job.numbers.taperRatio.value, taperWidthMm: laid.taperWidthMm.value,
    plies: laid.plies.map((ply) => ({
      order: ply.order, material: ply.material, materialName: ply.name, thicknessMm: ply.thicknessMm, areaM2: ply.areaM2.value,
      outline: areasOf(ply.outline), rollLengthM: ply.rollLengthM, rollWidthMm: ply.rollWidthMm,
      glassKg: ply.glassKg.value, resinKg: ply.resinKg.value, orientationDeg: ply.turnDeg,
    })),
    totalThicknessMm: best.thicknessMm.value, oldThicknessMm: search.oldSkin.thicknessMm,
    glassKg: laid.glassKg.value, resinKg: laid.resinKg.value,
    alternatives: search.best.map((schedule) => alternativeOf(schedule, job.priceList.currency)),
    properties: propertiesOf(best, search),
    notes: [
      `${search.effort.isProvenBest ? 'Proven best by exhaustive search' : 'Best found'} over the fabrics of the catalogue, ranked by ${search.rankedBy}; plies by the method ${search.method}.`,
      ...laid.consequences, ...laid.notes, ...search.limits,
    ],
  };
}

const alternativeOf = ({ rank, plies, thicknessMm, pricePerM2, lost, governs }: Schedule, currency: string): LaminateSection['alternatives'][number] => ({
  rank, plies: plies.map(({ name, turnDeg }) => (turnDeg === 0 ? name : `${name}, turned ${turnDeg} deg`)), thicknessMm: thicknessMm.value,
  costPerM2: pricePerM2 === undefined ? 'not priced' : `${pricePerM2.toFixed(2)} ${currency}/m2`,
  reason: lost?.words ?? `the cheapest that restores the skin; ${governs} governs`,
});

function propertiesOf(best: Schedule, { oldSkin }: ScheduleSearch): readonly NamedValue[] {
  return [
    { code: 'stiffness-along', name: 'Extensional stiffness along', value: best.stiffnessAlongNPerMm.value, unit: 'N/mm', note: `old skin ${oldSkin.alongNPerMm.toFixed(0)} N/mm` },
    { code: 'stiffness-across', name: 'Extensional stiffness across', value: best.stiffnessAcrossNPerMm.value, unit: 'N/mm', note: `old skin ${oldSkin.acrossNPerMm.toFixed(0)} N/mm` },
    { code: 'proud', name: 'New surface above the old', value: best.proudMm, unit: 'mm' },
    { code: 'glass', name: 'Glass', value: best.glassGPerM2.value, unit: 'g/m2' },
    { code: 'resin', name: 'Resin in the laminate', value: best.resinGPerM2.value, unit: 'g/m2' },
  ];
}

export const scheduleChecks = (best: Schedule, laid: RelaidPlies, isRelaxed: boolean): readonly Check[] => [
  ...best.checks.map(({ check, title, demand, capacity, unit, utilisation, verdict, cite, toPass }): Check => ({
    code: `skin-${check}`, title, state: 'repaired', demand, capacity, unit, utilisation, verdict, governs: title, source: cite.source,
    ...(toPass === undefined ? {} : { remedy: toPass }),
  })),
  ...(isRelaxed ? [{
    code: 'skin-flush', title: 'Level of the new skin within the usual limits', state: 'repaired' as const, unit: 'mm', verdict: 'fails' as const,
    governs: 'no schedule of the catalogue is flush within 0.5 mm proud and 1 mm low', remedy: 'more fairing, or a fabric of another weight', source: 'COMMON-PRACTICE',
  }] : []),
  {
    code: 'taper-room', title: 'Room for the taper round the openings', unit: 'm2', demand: laid.room.outsideM2, verdict: laid.room.verdict,
    governs: laid.room.words, source: 'COMMON-PRACTICE',
    ...(laid.room.verdict === 'passes' ? {} : { remedy: 'move the cut away from the edge, or turn the laminate up it' }),
  },
];

export function closingSection(job: Job, closed: ClosingPlies): { readonly section: LaminateSection; readonly checks: readonly Check[] } {
  const total = closed.plies.reduce((sum, { thicknessMm }) => sum + thicknessMm, 0);
  return {
    section: {
      method: 're-bed', taperRatio: job.numbers.taperRatio.value, taperWidthMm: closed.taperWidthMm.value,
      plies: closed.plies.map((ply) => ({
        order: ply.order, material: ply.material, materialName: ply.name, thicknessMm: ply.thicknessMm, areaM2: ply.areaM2.value,
        outline: ply.outline === undefined ? [] : areasOf(ply.outline), widthMm: ply.widthMm, rollLengthM: ply.rollLengthM,
        rollWidthMm: ply.rollWidthMm, glassKg: ply.glassKg.value, resinKg: ply.resinKg.value, orientationDeg: 0,
      })),
      totalThicknessMm: total, oldThicknessMm: job.access.value === 'from-above' ? job.numbers.outerSkinMm.value : job.numbers.innerSkinMm.value,
      glassKg: closed.glassKg.value, resinKg: closed.resinKg.value, alternatives: [],
      properties: [{ code: 'groove', name: 'Width of the groove over the cut', value: closed.grooveWidthMm, unit: 'mm' }],
      notes: closed.consequences,
    },
    checks: closed.checks.map(({ check, title, unit, verdict, demand, capacity, utilisation, cite, words }): Check => ({
      code: `seam-${check}`, title, state: 'repaired', unit, verdict, governs: words ?? title, source: cite.source,
      ...(demand === undefined ? {} : { demand }), ...(capacity === undefined ? {} : { capacity }), ...(utilisation === undefined ? {} : { utilisation }),
      ...(verdict === 'not-established' && words !== undefined ? { reason: words } : {}),
    })),
  };
}
