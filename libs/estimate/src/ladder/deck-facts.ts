import { areaMm2 } from '#lib/geometry';
import type { DeckFacts, PlaceFacts } from '#lib/methods';
import { m2FromMm2, mm2 } from '#lib/units';
import type { OverlayRecord, PanelRecord } from '../job/defect-record.js';
import type { Job } from '../job/job.js';

/** What the record says of the deck and the yard, with nothing guessed: what nobody said is unknown. */
export function deckFactsOf(job: Job, places: readonly PlaceFacts[]): DeckFacts {
  const { record, answers } = job;
  const { panel, conditions } = record;
  const panelM2 = m2FromMm2(mm2(netAreaMm2(panel)));
  const zones = places.filter(({ kind }) => kind === 'zone');
  const badM2 = zones.reduce((sum, { badAreaM2 }) => sum + badAreaM2, 0);
  return {
    outerSkinMm: answers.outerSkin.thicknessMm.value,
    innerSkinMm: answers.innerSkin.thicknessMm.value,
    coreMm: answers.core.thicknessMm.value,
    outerSkin: panel.outerSkinState ?? 'unknown',
    surface: job.answers.panel.surface.value,
    overlay: overlayFor(panel.overlay),
    below: job.answers.panel.accessBelow.value,
    lining: job.answers.panel.accessBelow.value === 'open' ? 'none' : (panel.lining ?? 'unknown'),
    workingHeightMm: panel.workingHeightMm ?? 'unknown',
    obstaclesBelow: panel.under ?? [],
    badShare: panelM2 === 0 ? 0 : Math.min(1, badM2 / panelM2),
    zoneCount: zones.length,
    panelAreaM2: panelM2,
    finish: job.answers.method.finish.value,
    daysAvailable: conditions?.daysAvailable ?? 'unknown',
    isFreezeExpected: conditions?.isFreezeExpected ?? 'unknown',
    shelter: job.answers.conditions.shelter.value,
  };
}

/** Planks that are left to others come off all the same before this job begins. */
function overlayFor(overlay: OverlayRecord | undefined): DeckFacts['overlay'] {
  if (overlay === undefined) return 'none';
  return overlay.then === 'stays' ? 'stays' : 'comes-off';
}

export const netAreaMm2 = ({ outline, holes = [] }: PanelRecord): number =>
  areaMm2([{ outer: outline, holes: [] }]) -
  holes.reduce((sum, hole) => sum + areaMm2([{ outer: hole, holes: [] }]), 0);
