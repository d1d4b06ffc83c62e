import type { RandomStream } from '#lib/kernel';

const { cos, log, sin, sqrt, PI } = Math;

/** Fills with independent standard normal numbers (Box and Muller's pairs). Source: [BOX-MULLER-1958] */
export function fillNormal(values: Float64Array, random: RandomStream): void {
  for (let index = 0; index < values.length; index += 2) {
    const radius = sqrt(-2 * log(1 - random()));
    const angle = 2 * PI * random();
    values[index] = radius * cos(angle);
    if (index + 1 < values.length) values[index + 1] = radius * sin(angle);
  }
}
