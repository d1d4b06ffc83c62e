/** A stream of numbers in [0, 1), wholly decided by its seed. */
export type RandomStream = () => number;

/**
 * Seeded pseudo-random stream (mulberry32: a 32-bit Weyl sequence through an xor-multiply hash).
 *
 * The rooms take randomness as a value, so that the same seed gives the same answer on every machine.
 * Valid:  simulation and search; never for secrets. Period 2^32.
 * Source: public-domain generator of T. Ettinger (2017), written from memory of its recurrence.
 */
export function randomStream(seed: number): RandomStream {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}
