import { Defect } from '#lib/kernel';
import type { In } from '#lib/units';

/** A number that comes with its unit as data (a rule of a table), given that unit. */
export function inUnit<U extends string>(value: number): In<U> {
  if (isOfUnit<U>(value)) return value;
  throw new Defect(`${value} has no unit`);
}

const isOfUnit = <U extends string>(value: number): value is In<U> => Number.isFinite(value);
