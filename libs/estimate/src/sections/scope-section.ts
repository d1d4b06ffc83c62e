import { areaMm2, type Region } from '#lib/geometry';
import type { OpeningPlan, PlannedOpening } from '#lib/extent';
import { m2FromMm2, mm2 } from '#lib/units';
import type { FittingScope, Opening, Scope } from '../document/estimate-document.js';
import type { ExtentWork } from '../stages/extent-stage.js';
import { isFinished, isGelcoated } from '../stages/coatings.js';
import { measuredFindings } from '../job/measured.js';
import type { Job } from '../job/job.js';
import type { OpenedScope } from '../stages/three-areas.js';
import { areaOfPolygon, areasOf } from './areas.js';
import { panelScope, zoneScope } from './deck-scope.js';

/** What is cut, what stays, what is in and what is out. */
export function scopeSection(job: Job, { plan, areas }: OpenedScope, extent: ExtentWork): Scope {
  const { panel } = job.record;
  return {
    panel: panelScope(panel, plan.panelAreaM2),
    evidence: extent.grade,
    damagedAreaM2: extent.damagedAreaM2,
    zones: extent.zones.map(zoneScope),
    contours: extent.contours,
    ...extent.next(),
    openings: plan.openings.map((opening) => openingSection(opening, areas.stays.get(opening.label) ?? [])),
    openedAreaM2: plan.openedAreaM2,
    coreOutAreaM2: areas.recorded.openedM2 - areas.recorded.staysM2,
    coreStaysAreaM2: areas.recorded.staysM2,
    retainedAreaM2: plan.retainedAreaM2,
    undercutAreaM2: plan.undercutAreaM2,
    cutLengthM: plan.cutLengthM + plan.splitLengthM,
    taperBandM2: plan.taperBandAreaM2,
    fittings: plan.fittings.map(fittingScope),
    findings: [...measuredFindings(job.stated), ...plan.findings, ...extent.findings],
    method: methodOf(job),
    ...inAndOut(job, plan),
  };
}

const openingSection = (opening: PlannedOpening, stays: Region): Opening => ({
  label: opening.label,
  area: areaOfPolygon(opening.area),
  sawLine: opening.sawLine,
  cornerRadiusMm: opening.cornerRadiusMm,
  areaM2: opening.areaM2,
  cutLengthM: opening.cutLengthM,
  ...(opening.cutDepthMm === undefined ? {} : { cutDepthMm: opening.cutDepthMm }),
  undercut: areasOf(opening.undercut),
  undercutAreaM2: opening.undercutAreaM2,
  coreStays: areasOf(stays),
  coreStaysAreaM2: m2FromMm2(mm2(areaMm2(stays))),
  taperBand: areasOf(opening.taperBand),
  reason: opening.reason,
});

const fittingScope = ({
  id,
  kind,
  at,
  holes,
  where,
  work,
  isHighlyLoaded,
}: OpeningPlan['fittings'][number]): FittingScope => ({
  id,
  kind,
  at,
  holes,
  where,
  work,
  isHighlyLoaded,
});

const methodOf = ({ answers: { method, conditions, evidence }, supplied }: Job): Scope['method'] => {
  const choices = {
    'Skin': method.skin,
    'Access': method.access,
    'Pressure on the bond': method.press,
    'Sound core': method.soundCore,
    'Finish': method.finish,
    'Finished in': method.finishIn,
    'Evidence': evidence,
    'Shelter': conditions.shelter,
    'New core': supplied.core,
    'Resin': supplied.resin,
  };
  return Object.entries(choices).map(([choice, { value, because }]) => ({ choice, value, reason: because }));
};

export const overlayIn = ({ record: { panel } }: Job): readonly string[] => {
  switch (panel.overlay?.then) {
    case 'back':
      return ['overlay off round the openings, its holes filled, and laid again with one plank in three new'];
    case 'paint':
      return ['overlay off the whole panel, its holes filled, the deck made good and painted in its place'];
    default:
      return [];
  }
};

export const overlayOut = ({ record: { panel } }: Job): readonly string[] => {
  switch (panel.overlay?.then) {
    case 'not-included':
      return [
        'overlay off, its holes filled and whatever takes its place: by others, before and after this job',
      ];
    case 'stays':
      return ['the overlay: it stays as it lies, and its screw holes may let water in again'];
    default:
      return [];
  }
};

const isShed = (job: Job): boolean => job.answers.conditions.shelter.value === 'shed';

/** What a reader would otherwise argue about later. */
function inAndOut(job: Job, plan: OpeningPlan): Pick<Scope, 'included' | 'excluded'> {
  const isLined = job.answers.panel.accessBelow.value === 'lined';
  const hasFinish = isFinished(job);
  return {
    included: [
      job.fill === 'solid'
        ? 'opening, removal of bad core, drying, filling solid and closing of the openings listed'
        : 'opening, removal of bad core, drying, new core, bonding and closing of the openings listed',
      ...(plan.fittings.length > 0 ? ['fittings listed: off, holes potted, re-bedded'] : []),
      ...(isLined ? ['lining below the openings out and back'] : []),
      ...overlayIn(job),
      ...(hasFinish
        ? [
            `finish of the ${job.answers.method.finish.value.replace('-', ' ')}${isGelcoated(job) ? ' in gelcoat' : ''}`,
          ]
        : []),
      'protection of the craft, protection of people, waste',
      'yard charges listed',
      'sounding, hose test and photographs on completion',
    ],
    excluded: [
      'damage found outside the openings listed',
      ...overlayOut(job),
      'structure under the deck, tanks, wiring beyond isolation',
      'mast out, rigging, sea trial',
      'matching of old nonskid pattern and colour beyond the area finished',
      ...(job.answers.panel.surface.value === 'bonded-mat'
        ? ['taking off the bonded deck mat with its glue, and laying a new one']
        : []),
      ...(job.answers.method.access.value === 'from-below' ? ['finish of the surfaces below deck'] : []),
      ...(isShed(job) ? [] : ['hire of a building']),
      'storage, survey re-inspection, transport of the craft',
    ],
  };
}
