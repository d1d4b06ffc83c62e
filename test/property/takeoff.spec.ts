import { expect, test } from '@jest/globals';
import fc from 'fast-check';
import { takeOff, wholePackCount } from '#lib/takeoff';

const seed = 20261125;
const quantity = fc.oneof(fc.constant(0), fc.double({ min: 1e-9, max: 1e6, noNaN: true }));
const pack = fc.double({ min: 1e-3, max: 1e4, noNaN: true });

test('what is bought covers what is required, and one pack less would not', () => {
  fc.assert(
    fc.property(quantity, pack, (required, content) => {
      const count = wholePackCount(required, content);
      expect(count * content).toBeGreaterThanOrEqual(required * (1 - 2e-9));
      if (count > 0) expect((count - 1) * content).toBeLessThan(required);
    }),
    { seed, numRuns: 2000 },
  );
});

test('required is never less than net, and net plus waste is required', () => {
  fc.assert(
    fc.property(quantity, fc.double({ min: 0, max: 3, noNaN: true }), (netQuantity, wasteFraction) => {
      const outcome = takeOff({
        items: [{ id: 'a', title: 'a', material: 'a', unit: 'kg', purpose: 'p', netQuantity, wasteFraction }],
      });
      if (!outcome.ok) throw new Error('refused');
      const [need] = outcome.value.needs;
      expect(need.required.value).toBeGreaterThanOrEqual(need.net.value);
      expect(need.required.value).toBeCloseTo(
        netQuantity + netQuantity * wasteFraction,
        6 - Math.ceil(Math.log10(1 + netQuantity)),
      );
    }),
    { seed, numRuns: 1000 },
  );
});
