import { derived, productOf, type Figure } from '#lib/provenance';
import { fraction } from '#lib/units';

/** A quantity at another extent, in the rough. */
export const scaledFigure = <U extends string>(figure: Figure<U>, factor: number): Figure<U> =>
  factor === 1
    ? figure
    : productOf(figure.unit, figure.meaning, {
        recorded: figure,
        factor: derived('1', fraction(factor), 'found over recorded', {
          formula: 'arithmetic.ratio',
          title: 'Ratio',
          symbol: 'E',
          cite: { source: 'ARITHMETIC' },
          inputs: {},
        }),
      });
