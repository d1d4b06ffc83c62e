import { isLoaded } from '#lib/extent';
import { containsPoint, regionOf } from '#lib/geometry';
import type { EstimateBody, FindingSubject, FittingScope } from '../document/estimate-document.js';
import { coreBeside } from '../ladder/places.js';
import type { DefectRecord, FindingClass } from '../job/defect-record.js';

export interface Grade {
  readonly class: FindingClass;
  readonly because: string;
}

/** Everything bad that the report must say something about: each zone, or each place where no zone was drawn. */
export function subjectsOf(estimate: EstimateBody, record: DefectRecord): readonly FindingSubject[] {
  const { scope, methods } = estimate;
  if (scope.zones.length === 0)
    return methods.places.map(({ place, badAreaM2 }) => ({
      about: place,
      condition: coreBeside(record, place),
      areaM2: badAreaM2,
      fittings: fittingsNamed(place, record),
    }));
  return scope.zones.map(({ id, condition, areaM2, outline }) => {
    const region = regionOf(outline);
    const xs = outline.map(([x]) => x);
    const aftMm = Math.min(...scope.panel.outline.map(([x]) => x));
    return {
      about: id,
      condition,
      areaM2,
      fromAftMm: [Math.min(...xs) - aftMm, Math.max(...xs) - aftMm],
      fittings: standingOn(record, scope.fittings, (at) => containsPoint(region, at)),
    };
  });
}

const fittingsNamed = (place: string, { fittings = [] }: DefectRecord): FindingSubject['fittings'] =>
  fittings
    .filter(({ id }) => id === place)
    .map(({ id, kind, isLeaking }) => ({ id, kind, isLeaking: isLeaking === true }));

type At = FittingScope['at'];

const standingOn = (
  { fittings = [] }: DefectRecord,
  inScope: readonly FittingScope[],
  isOver: (at: At) => boolean,
): FindingSubject['fittings'] =>
  fittings
    .filter(({ id, at }) => isOver(at) || inScope.some((one) => one.id === id && one.where === 'inside'))
    .map(({ id, kind, isLeaking }) => ({ id, kind, isLeaking: isLeaking === true }));

/**
 * Class of a finding. Source of the three classes: guides for surveyors that put safety first, then what has a date,
 * then what is watched. What falls into which is common practice, no published source; the surveyor may say otherwise.
 */
export function gradeOf({ condition, fittings }: FindingSubject): Grade {
  const loaded = fittings.filter(({ kind }) => isLoaded(kind));
  const isGone = condition === 'wet-rotten' || condition === 'unknown';
  if (isGone && loaded.length > 0)
    return {
      class: 'before-use',
      because: `the core is not known to be sound under what carries load: ${loaded.map(({ id }) => id).join(', ')}`,
    };
  if (condition === 'wet-bonded' && !fittings.some(({ isLeaking }) => isLeaking))
    return { class: 'monitor', because: 'the core is damp, hard and still bonded' };
  if (condition === 'dry-sound')
    return {
      class: 'next-opportunity',
      because: 'water that comes in reaches core that is still dry',
    };
  return {
    class: 'next-opportunity',
    because: 'it grows for as long as water comes in and people walk on it',
  };
}
