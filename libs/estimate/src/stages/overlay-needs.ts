import { caulkPerM2, screwsPerM2 } from '#lib/methods';
import { assumed, derived, productOf, type Figure } from '#lib/provenance';
import type { ResinStepRequest } from '#lib/resin';
import type { NeedRequest } from '#lib/takeoff';
import { fraction, m2, mm } from '#lib/units';
import type { Job } from '../job/job.js';
import type { JobQuantities } from './labour-drivers.js';

/** Planks of 45 mm in seams of 5 mm, screwed every 200 mm. Source: [METHODS-IN-PRINT] 50 x 200 to 56 x 250 mm. */
const PLANK_MM = 45;
const SEAM_MM = 5;
const PITCH_MM = 200;

const screws = screwsPerM2.evaluate({ plankMm: mm(PLANK_MM + SEAM_MM), pitchMm: mm(PITCH_MM) });

/** Reamed to twice the screw before it is filled: 1 to 3 ml each. Source: [METHODS-IN-PRINT], diameter from memory. */
const REAMED_MM = 10;

/** Every screw hole of the overlay is filled through the skin and the core that it went into. */
export function overlaySteps({ answers }: Job, { besides }: JobQuantities): readonly ResinStepRequest[] {
  const areaM2 = besides['overlay-screwed-m2']?.value ?? 0;
  return areaM2 === 0
    ? []
    : [
        {
          step: 'potting',
          title: 'Fill the screw holes of the overlay',
          holes: Math.ceil(areaM2 * screws),
          diameterMm: REAMED_MM,
          depthMm: answers.outerSkin.thicknessMm.value + answers.core.thicknessMm.value,
        },
      ];
}

/** What planks take to be laid again: caulk, the planks that broke, screws and plugs; a synthetic sheet is bought whole. */
export function overlayNeeds({ record }: Job, { besides }: JobQuantities): readonly NeedRequest[] {
  const area = besides['overlay-relay-m2'];
  const { overlay } = record.panel;
  if (area === undefined || overlay === undefined) return [];
  const relaid = derived<string>('m2', m2(area.value), 'overlay laid again', {
    formula: 'arithmetic.sum',
    title: 'Sum of parts',
    symbol: 'Σ',
    cite: { source: 'ARITHMETIC' },
    inputs: { area },
  });
  return overlay.kind === 'synthetic' ? [sheetNeed(relaid)] : plankNeeds(relaid, overlay.kind);
}

const sheetNeed = (relaid: Figure): NeedRequest => ({
  id: 'overlay-synthetic-sheet',
  title: 'Synthetic deck sheet with its glue',
  material: 'consumable-synthetic-deck',
  unit: 'm2',
  purpose: 'finish',
  netQuantity: relaid,
});

function plankNeeds(relaid: Figure, kind: 'screwed-planks' | 'glued-planks'): readonly NeedRequest[] {
  const by = (unit: string, meaning: string, per: Figure): Figure =>
    productOf<string>(unit, meaning, { relaid, per });
  return [
    {
      id: 'overlay-caulk',
      title: 'Deck caulk',
      material: 'consumable-deck-caulk',
      unit: 'l',
      purpose: 'finish',
      netQuantity: by('l', 'caulk in the seams', caulk),
      wasteFraction: caulkWaste,
    },
    {
      id: 'overlay-plank',
      title: 'Deck planking, hardwood',
      material: 'consumable-deck-plank',
      unit: 'm2',
      purpose: 'finish',
      netQuantity: by('m2', 'planks that are replaced', replaced),
    },
    ...(kind === 'glued-planks'
      ? []
      : [
          {
            id: 'overlay-screw',
            title: 'Deck screw and plug',
            material: 'fastener-deck-screw',
            unit: 'each',
            purpose: 'fastener',
            netQuantity: by('each', 'screws of the planks', screwed),
          },
        ]),
  ];
}

interface Taken {
  readonly because: string;
  readonly source: string;
}

const taken = (unit: string, value: number, meaning: string, { because, source }: Taken): Figure =>
  assumed<string>(unit, fraction(value), meaning, { at: '/panel/overlay', because, cite: { source } });

const caulk = taken(
  'l/m2',
  caulkPerM2.evaluate({ plankMm: mm(PLANK_MM), seamMm: mm(SEAM_MM) }),
  'caulk in a square metre of seams',
  { because: 'planks of 45 mm with seams of 5 mm', source: 'METHODS-IN-PRINT' },
);
const caulkWaste = taken('1', 0.25, 'waste of caulk', {
  because: 'a quarter is tooled off and left in the cartridge',
  source: 'METHODS-IN-PRINT',
});
const replaced = taken('1', 1 / 3, 'share of the planks that break', {
  because: 'one plank in three is replaced',
  source: 'FROM-MEMORY',
});
const screwed = taken('1/m2', screws, 'screws in a square metre', {
  because: 'planks of 50 mm with their seam, screwed every 200 mm',
  source: 'METHODS-IN-PRINT',
});
