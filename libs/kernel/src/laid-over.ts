const nothing = {};

/**
 * `{ ...under, name: value }` for places that run thousands of times. The engine copies the first spread into an object with
 * no room, and every property that is added to it makes a shape of its own: microseconds here, and again wherever it is read.
 * After an empty first spread all copies share one shape.
 */
export const laidOver = <A extends object, B extends object>(under: A, over: B): A & B => ({
  ...nothing,
  ...under,
  ...over,
});
