import type { OpeningPlan } from '#lib/extent';
import { limits } from '#lib/methods';
import { assumed, derived, type Figure } from '#lib/provenance';
import { m2, mm } from '#lib/units';
import type { CoreWork } from './core-stage.js';
import { scaledFigure } from './scaled-figure.js';
import type { RecordedAreas, ThreeAreas } from './three-areas.js';

/** An opening by what becomes of its core, and by what holds there. */
export interface AreaQuantities {
  /** Where core comes out, and where sound core is left. */
  readonly baredM2: Figure<'m2'>;
  readonly keptCoreM2: Figure<'m2'>;
  /** Of the ground that is bared, what was wet. */
  readonly driedM2: Figure<'m2'>;
  /** New core, under the lip too; and what is filled solid instead. */
  readonly coredM2: Figure<'m2'>;
  readonly solidL: Figure<'l'>;
  /** A loose skin lifts off, a held one is prised; loose core is scooped, held core cut. */
  readonly looseSkinM2: Figure<'m2'>;
  readonly heldSkinM2: Figure<'m2'>;
  readonly looseCoreM2: Figure<'m2'>;
  readonly heldCoreM2: Figure<'m2'>;
}

/**
 * The opening by what holds there. At another extent the ring of sound core keeps its width, so that it goes with the length of
 * the cut; everything else keeps its share, and new core and solid fill go with the ground that is bared.
 */
export function areaQuantities(
  { recorded }: ThreeAreas,
  figures: OpeningPlan['figures'],
  core: Pick<CoreWork, 'beddedM2' | 'solidL'>,
): AreaQuantities {
  const { openedArea } = figures;
  const baredM2 = baredM2At(recorded, figures);
  const outM2 = recorded.openedM2 - recorded.staysM2;
  const ratio = outM2 === 0 ? 1 : baredM2 / outM2;
  const ofOpened = (m2Recorded: number): number => (openedArea.value * m2Recorded) / recorded.openedM2;
  const part = (meaning: string, value: number): Figure<'m2'> =>
    derived('m2', m2(Math.max(0, value)), meaning, {
      formula: 'scope.three-areas',
      title: 'Opened ground by what holds there: zones in their state, their margin, and sound core beyond',
      symbol: 'A',
      cite: { source: 'COMMON-PRACTICE' },
      inputs: { opened: openedArea, margin: provenMargin },
    });
  return {
    baredM2: part('ground from which core comes out', baredM2),
    keptCoreM2: part('sound core that stays', openedArea.value - baredM2),
    driedM2: part('ground that was wet', ratio * recorded.wetM2),
    coredM2: scaledFigure(core.beddedM2, ratio),
    solidL: scaledFigure(core.solidL, ratio),
    looseSkinM2: part('skin that has let go', ofOpened(recorded.looseSkinM2)),
    heldSkinM2: part('skin that still holds', ofOpened(recorded.heldSkinM2)),
    looseCoreM2: part('rotten core', ratio * recorded.looseCoreM2),
    heldCoreM2: part('core that still holds and comes out', ratio * recorded.heldCoreM2),
  };
}

const provenMargin: Figure<'mm'> = assumed(
  'mm',
  mm(limits.provenMarginMm),
  'core taken out past its boundary',
  {
    at: '/method/soundCore',
    because: 'about an inch past the last bad core, where clean shavings prove the boundary',
    cite: { source: 'METHODS-EDGES' },
    low: 12,
    high: 50,
  },
);

function baredM2At(
  { cutM, staysM2, openedM2 }: RecordedAreas,
  { openedArea, cutLength }: OpeningPlan['figures'],
): number {
  const longer = cutM === 0 ? 1 : cutLength.value / cutM;
  return openedArea.value - staysM2 * Math.min(longer, openedArea.value / openedM2);
}
