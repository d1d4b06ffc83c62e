// must not compile: TS2322
import { compute, defineFormula, entered } from '#lib/provenance';
import { mm, mPa } from '#lib/units';

const doubled = defineFormula({
  id: 'plant',
  title: 'Plant',
  cite: { source: 'ARITHMETIC' },
  inputs: { lengthMm: { symbol: 'l', unit: 'mm', meaning: 'length' } },
  output: { symbol: 'd', unit: 'mm', meaning: 'doubled' },
  evaluate: ({ lengthMm }) => mm(lengthMm * 2),
  worked: [{ at: 'plant', given: { lengthMm: 1 }, printed: '2' }],
});

export const wrong = compute(doubled, { lengthMm: entered('MPa', mPa(1), 'stress', '/x') });
