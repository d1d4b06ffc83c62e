import type { DepreciationTerms, LineRequest } from '#lib/costing';
import { assumed, type Figure } from '#lib/provenance';
import { years } from '#lib/units';

interface JudgedLife {
  readonly part: string;
  readonly years: number;
  /** What a line of it is bought for. */
  readonly purposes: readonly string[];
}

/** Life of what is replaced, years: hull structure from an adjuster's list, the rest judged; no scale for decks is published. */
export const judgedLives: readonly JudgedLife[] = [
  { part: 'core, laminate and resin', years: 45, purposes: ['core', 'laminate', 'resin', 'filler'] },
  { part: 'fastenings', years: 20, purposes: ['fastener'] },
  { part: 'paint and nonskid', years: 10, purposes: ['finish'] },
  { part: 'sealant and what is used up', years: 7, purposes: ['consumable', 'safety'] },
];
const otherLife: JudgedLife = { part: 'other parts', years: 10, purposes: [] };

const lifeOf = ({ stage }: Pick<LineRequest, 'stage'>): JudgedLife =>
  judgedLives.find(({ purposes }) => purposes.some((purpose) => purpose === stage)) ?? otherLife;

const isLeftOpen = ({ lifeYears, percent }: DepreciationTerms): boolean =>
  lifeYears === undefined && percent === undefined;

/** Parts carry the wear that the record states; a life that is stated nowhere is judged by the kind of part. */
export const withWear = (terms: DepreciationTerms, lines: readonly LineRequest[]): readonly LineRequest[] =>
  lines.map((line) =>
    line.partOrLabour === 'part'
      ? { ...line, depreciation: isLeftOpen(terms) ? { ...terms, lifeYears: lifeOf(line).years } : terms }
      : line,
  );

/** The lives that were judged for parts of these lines. */
export function livesAssumed(terms: DepreciationTerms, lines: readonly LineRequest[]): readonly Figure[] {
  if (!isLeftOpen(terms)) return [];
  const parts = lines.filter(({ partOrLabour }) => partOrLabour === 'part');
  return [...new Set(parts.map(lifeOf))].map(({ part, years: life }) =>
    assumed('years', years(life), `life of ${part}`, {
      at: '/pricing/depreciation/lifeYears',
      because: 'no life and no percentage is stated, and no scale for decks is published',
      cite: { source: 'FROM-MEMORY' },
    }),
  );
}
