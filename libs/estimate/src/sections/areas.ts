import type { Polygon, Region } from '#lib/geometry';
import type { Area } from '../document/estimate-document.js';

export const areasOf = (region: Region): readonly Area[] => region.map(areaOfPolygon);

export const areaOfPolygon = ({ outer, holes }: Polygon): Area => ({ outer, holes });
