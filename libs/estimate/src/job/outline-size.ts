import { boundsOfPoints, type Bounds } from '#lib/geometry';
import { Defect } from '#lib/kernel';
import type { Outline } from '../document/estimate-document.js';

/** The box round an outline that has been read and found good. */
export function extentOfOutline(outline: Outline): Bounds {
  const found = boundsOfPoints(outline);
  if (found === undefined) throw new Defect('An outline that was read has no corners');
  return found;
}
