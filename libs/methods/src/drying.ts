import { inUnit } from '#lib/asking';
import { defineFormula } from '#lib/provenance';

const SECONDS_PER_HOUR = 3600;
const M_PER_MM = 1e-3;

/**
 * Time in which a slab dries from one face until 90 % of its free water is gone: t = 0.848 L²/D.
 *
 * Valid:  one face open, the other shut, one constant coefficient; unsteady coefficients are about half of steady ones.
 */
export const slabDrying = defineFormula({
  id: 'methods.slab-drying',
  title: 'Time to dry a slab from one face, 90 %',
  cite: { source: 'ARITHMETIC', note: 'first term of the diffusion series, 8/π² exp(−π²Dt/4L²) = 0.1' },
  inputs: {
    depthMm: { symbol: 'L', unit: 'mm', meaning: 'depth from the open face', above: 0, upTo: 500 },
    diffusivityM2PerS: { symbol: 'D', unit: 'm2/s', meaning: 'moisture diffusivity', above: 0, upTo: 1e-6 },
  },
  output: { symbol: 't', unit: 'h', meaning: 'time' },
  evaluate: ({ depthMm, diffusivityM2PerS }) =>
    inUnit('h', (0.848 * (depthMm * M_PER_MM) ** 2) / diffusivityM2PerS / SECONDS_PER_HOUR),
  // 0.848 x 0.0127²/5e-9 = 27,355 s
  worked: [
    {
      at: 'by hand: open balsa face of 12.7 mm',
      given: { depthMm: 12.7, diffusivityM2PerS: 5e-9 },
      printed: '7.6',
    },
  ],
});

export const drynessFormulas = [slabDrying];
