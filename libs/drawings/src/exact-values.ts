import type { Estimate } from '#lib/estimate';
import type { Reader } from './reader.js';
import type { ExactValues } from './readers-units.js';

/** Ends of names in the document, with the unit that they stand for. */
const units = [
  [/(?:M2|m2)$/, 'm²'],
  [/Kg$/, 'kg'],
  [/L$/, 'l'],
] as const;

/** Every area, mass and volume that the document holds; read only for a reader whose units are not its own. */
export function exactValues(reader: Reader, estimate: Estimate): ExactValues {
  const found: Record<keyof ExactValues, number[]> = { 'm²': [], 'kg': [], 'l': [] };
  const look = (value: unknown, unit: keyof ExactValues | undefined): void => {
    if (typeof value === 'number' && unit !== undefined) found[unit].push(value);
    if (typeof value !== 'object' || value === null) return;
    for (const [key, inner] of Object.entries(value))
      look(
        inner,
        units.find(([end]) => end.test(key))?.[1] ??
          (Array.isArray(value) || isSpread(key) ? unit : undefined),
      );
  };
  if (reader.units === 'us') look(estimate, undefined);
  return found;
}

/** A spread bears the unit of the figure it belongs to. */
const isSpread = (key: string): boolean => /^p\d\d$/.test(key);
