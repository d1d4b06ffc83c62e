import { areaMm2 } from '#lib/geometry';
import { m2FromMm2, mm2 } from '#lib/units';
import type { Scope } from '../document/estimate-document.js';
import type { PanelRecord } from '../job/defect-record.js';
import type { ExtentWork } from '../stages/extent-stage.js';

/** The panel as it was recorded, whether it is opened or stays closed. */
export const panelScope = (panel: PanelRecord, areaM2: number): Scope['panel'] => ({
  name: panel.name ?? 'Panel',
  outline: panel.outline,
  holes: panel.holes ?? [],
  areaM2,
});

/** Bad core as it was drawn or mapped. */
export const zoneScope = ({
  id,
  outline,
  condition,
}: ExtentWork['zones'][number]): Scope['zones'][number] => ({
  id,
  outline,
  condition,
  areaM2: m2FromMm2(mm2(areaMm2([{ outer: outline, holes: [] }]))),
});
