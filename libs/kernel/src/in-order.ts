import { Defect } from './defect.js';
import { laidOver } from './laid-over.js';
import { success, type Outcome } from './outcome.js';

/** A line of stages: each is given what stands so far and adds one named thing to it. */
export interface InOrder<T extends object> {
  readonly then: <K extends string, V>(
    name: K,
    stage: (soFar: T) => Outcome<V>,
  ) => InOrder<T & Readonly<Record<K, V>>>;
  readonly done: () => Outcome<T>;
}

/** Runs stages one after the other; the first that refuses ends the line with its problems. */
export const inOrder = <T extends object>(start: T): InOrder<T> => lineFrom(success(start));

const lineFrom = <T extends object>(soFar: Outcome<T>): InOrder<T> => ({
  then: (name, stage) => lineFrom(withNext(soFar, name, stage)),
  done: () => soFar,
});

function withNext<T extends object, K extends string, V>(
  soFar: Outcome<T>,
  name: K,
  stage: (soFar: T) => Outcome<V>,
): Outcome<T & Readonly<Record<K, V>>> {
  if (!soFar.ok) return soFar;
  const next = stage(soFar.value);
  return next.ok ? success(extended(soFar.value, name, next.value)) : next;
}

function extended<T extends object, K extends string, V>(
  soFar: T,
  name: K,
  value: V,
): T & Readonly<Record<K, V>> {
  const all = laidOver(soFar, { [name]: value });
  if (holds(all, name, value)) return all;
  throw new Defect(`Stage ${name} left nothing behind`);
}

const holds = <T extends object, K extends string, V>(
  all: T,
  name: K,
  value: V,
): all is T & Readonly<Record<K, V>> => Object.getOwnPropertyDescriptor(all, name)?.value === value;
