import { settledRight } from '#lib/asking';
import { computeChecked, derived, entered, type Figure } from '#lib/provenance';
import { mm, mPaFromKPa } from '#lib/units';
import { bendRadius, camberGap } from './formulas.js';
import { modulusOf, scoredForm } from './core-sheet.js';
import { plywoodRadius } from './plywood-bending.js';
import type { StackRequest } from './request.js';
import { camberQuestions, type CamberRequest } from './rules.js';

/** How the core follows a cambered deck. */
export interface CamberPlan {
  /** Form of sheet that follows the camber. */
  readonly form: 'plain' | 'scored';
  /** How the core is brought to the curve. */
  readonly way: 'lies' | 'bends' | 'scored' | 'shorter-pieces';
  /** Radius to which the pressure bends the thickest layer. */
  readonly bentRadius: Figure<'mm'>;
  /** Gap under a plain piece of the stated length. */
  readonly gap: Figure<'mm'>;
  /** A plain piece no longer than this across the camber lies within the gap without bending. */
  readonly longestFlatPieceMm: number;
  /** What the crew does, in a sentence. */
  readonly words: string;
  /** The bend, the spring-back and what they are compared with. */
  readonly figures: readonly Figure[];
}

/** Plain sheet where it lies or is pressed to the radius, scored sheet where there is some, shorter pieces otherwise. Plywood is not bent beyond what it takes. */
export function cambered(
  request: StackRequest,
  layersMm: readonly number[],
  camber: CamberRequest,
): CamberPlan {
  const { core } = request;
  const length = pieceLength(request, camber);
  const settled = settledRight(camber, camberQuestions, '/camber');
  const { radiusMm: radius, pressureKPa: pressure, mostGapMm: most } = settled;
  const bentRadius = computeChecked(bendRadius, {
    modulusMPa: modulusOf(core),
    lengthMm: length,
    thicknessMm: derived('mm', mm(Math.max(...layersMm)), 'thickest layer', {
      formula: 'coring.choice',
      title: "Layers from the material's list",
      symbol: 't',
      cite: { source: 'ARITHMETIC' },
      inputs: {},
    }),
    pressureMPa: derived('MPa', mPaFromKPa(pressure.value), 'pressure that holds it down', {
      formula: 'units.pressure',
      title: 'kPa to MPa',
      symbol: 'p',
      cite: { source: 'ARITHMETIC' },
      inputs: { pressure },
    }),
  });
  const gap = computeChecked(camberGap, { lengthMm: length, deckRadiusMm: radius, bentRadiusMm: bentRadius });
  const longestFlatPieceMm = Math.floor(Math.sqrt(8 * camber.radiusMm * most.value));
  const leastRadiusMm = leastRadiusOf(request, Math.max(...layersMm));
  const way = wayOf({
    length: length.value,
    longestFlatPieceMm,
    gapMm: gap.value,
    mostGapMm: most.value,
    breaks: leastRadiusMm > camber.radiusMm,
    hasScored: scoredForm(core) !== undefined,
  });
  return {
    form: way === 'scored' ? 'scored' : 'plain',
    way,
    bentRadius,
    gap,
    longestFlatPieceMm,
    figures: [gap, most],
    words: words(way, {
      lengthMm: length.value,
      longestFlatPieceMm,
      radiusMm: camber.radiusMm,
      thicknessMm: Math.max(...layersMm),
      leastRadiusMm,
    }),
  };
}

/** Balsa and foam are held by the pressure alone; plywood breaks before it reaches any radius that is asked of it. */
const leastRadiusOf = ({ core }: StackRequest, thicknessMm: number): number =>
  core.coreType === 'marine-plywood' ? plywoodRadius.evaluate({ thicknessMm: mm(thicknessMm) }) : 0;

function pieceLength({ core }: StackRequest, { pieceLengthMm }: CamberRequest): Figure<'mm'> {
  if (pieceLengthMm !== undefined)
    return entered('mm', mm(pieceLengthMm), 'length of a piece across the camber', '/camber/pieceLengthMm');
  return derived(
    'mm',
    mm(Math.round(1000 * Math.sqrt(core.largestPieceM2.value))),
    'length of a piece across the camber',
    {
      formula: 'coring.piece-side',
      title: 'Side of the largest piece, taken square',
      symbol: 'L',
      cite: core.largestPieceM2.cite,
      inputs: {},
    },
  );
}

interface Facts {
  readonly length: number;
  readonly longestFlatPieceMm: number;
  readonly gapMm: number;
  readonly mostGapMm: number;
  /** Tighter than the sheet can be bent without breaking. */
  readonly breaks: boolean;
  readonly hasScored: boolean;
}

function wayOf({
  length,
  longestFlatPieceMm,
  gapMm,
  mostGapMm,
  breaks,
  hasScored,
}: Facts): CamberPlan['way'] {
  if (length <= longestFlatPieceMm) return 'lies';
  if (gapMm <= mostGapMm && !breaks) return 'bends';
  return hasScored ? 'scored' : 'shorter-pieces';
}

interface WordFacts {
  readonly lengthMm: number;
  readonly longestFlatPieceMm: number;
  readonly radiusMm: number;
  readonly thicknessMm: number;
  readonly leastRadiusMm: number;
}

function words(
  way: CamberPlan['way'],
  { lengthMm, longestFlatPieceMm, radiusMm, thicknessMm, leastRadiusMm }: WordFacts,
): string {
  const piece = `a plain piece ${thicknessMm} mm thick and ${Math.round(lengthMm)} mm long on a radius of ${Math.round(radiusMm)} mm`;
  if (way === 'lies') return `${piece} lies close enough without bending`;
  if (way === 'bends') return `${piece} is pressed down to the skin`;
  if (way === 'scored') return `${piece} would not lie down: use scored sheet, its kerfs filled with resin`;
  const breaks =
    leastRadiusMm > radiusMm
      ? ` and breaks, as plywood of ${thicknessMm} mm is bent to ${Math.round(leastRadiusMm)} mm at the tightest`
      : '';
  return `${piece} would not lie down${breaks}: cut pieces at most ${longestFlatPieceMm} mm across the camber`;
}
