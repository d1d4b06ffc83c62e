import type { Consumable } from '#lib/catalogue';
import { pointer, problem, refusal, success, type Outcome, type Problem } from '#lib/kernel';
import { assumptionsOf, type Figure } from '#lib/provenance';
import {
  consumableNeeds,
  driverUnits,
  jobFlags,
  type DriverQuantities,
  type JobFlag,
} from './consumables.js';
import { faultsOfNeed, needOf, type Need, type NeedRequest } from './need.js';

export interface TakeOffRequest {
  /** Core, cloth, resin, filler, coating: what the other rooms found the job to need. */
  readonly items: readonly NeedRequest[];
  /** Consumables, safety items and fasteners of the catalogue. */
  readonly consumables?: readonly Consumable[];
  readonly drivers?: DriverQuantities;
  readonly flags?: readonly JobFlag[];
}

export interface TakeOff {
  readonly needs: readonly Need[];
  /** Every default that was taken, each once. */
  readonly assumptions: readonly Figure[];
}

const MOST_NEEDS = 5000;

/** What the job needs, from net quantity to whole packs, three points each. */
export function takeOff(request: TakeOffRequest): Outcome<TakeOff> {
  const problems = faultsOf(request);
  if (problems.length > 0) return refusal(...problems);
  const needs = [
    ...request.items.map((item, index) => needOf(item, pointer('/items', index))),
    ...consumableNeeds(request.consumables ?? [], request.drivers ?? {}, request.flags ?? []),
  ];
  return success({ needs, assumptions: distinctAssumptions(needs) });
}

function faultsOf(request: TakeOffRequest): readonly Problem[] {
  const count = request.items.length + (request.consumables?.length ?? 0);
  if (count > MOST_NEEDS) return [problem('too-many', '/items', { count, most: MOST_NEEDS })];
  return [
    ...request.items.flatMap((item, index) => faultsOfNeed(item, pointer('/items', index))),
    ...repeatedIds(request),
    ...faultsOfDrivers(request.drivers ?? {}),
    ...(request.flags ?? []).flatMap((flag, index) =>
      jobFlags.includes(flag)
        ? []
        : [problem('not-one-of', pointer('/flags', index), { value: flag, choices: jobFlags.join(', ') })],
    ),
  ];
}

function repeatedIds({ items, consumables = [] }: TakeOffRequest): readonly Problem[] {
  const seen = new Set(consumables.map(({ code }) => code));
  return items.flatMap(({ id }, index) => {
    if (seen.has(id)) return [problem('duplicate', pointer('/items', index, 'id'), { value: id })];
    seen.add(id);
    return [];
  });
}

const faultsOfDrivers = (drivers: DriverQuantities): readonly Problem[] =>
  Object.entries(drivers).flatMap(([driver, given]) => {
    const at = pointer('/drivers', driver);
    if (!Object.hasOwn(driverUnits, driver)) {
      return [problem('not-one-of', at, { value: driver, choices: Object.keys(driverUnits).join(', ') })];
    }
    const value = typeof given === 'number' ? given : given.value;
    return Number.isFinite(value) && value >= 0
      ? []
      : [problem('out-of-range', at, { value, range: '0 or more' })];
  });

function distinctAssumptions(needs: readonly Need[]): readonly Figure[] {
  const found = needs.flatMap(({ required, purchase }) => assumptionsOf(purchase ?? required));
  return [...new Map(found.map((figure) => [`${figureAt(figure)} ${figure.meaning}`, figure])).values()];
}

const figureAt = ({ origin }: Figure): string => (origin.kind === 'assumed' ? origin.at : '');
