import { pointer, problem } from '#lib/kernel';
import { mergePatched } from '../edge/merge-patch.js';
import { checkedAs } from '../edge/dto.pipe.js';
import { HttpProblem, notFound } from '../edge/problems.js';
import { isRecord } from '../edge/record.js';
import { PackDto } from './dto/prices.dto.js';

/** The packs of the document of a price list; none in what is no price list. */
export const packsOf = (body: unknown): readonly unknown[] =>
  isRecord(body) && Array.isArray(body.packs) ? body.packs : [];

/** @throws {HttpProblem} not-found */
export function packOf(body: unknown, sku: string): unknown {
  const found = packsOf(body).find(isPack(sku));
  if (found === undefined) throw noSuchPack(sku);
  return found;
}

/** The document with one pack changed by a merge patch. @throws {HttpProblem} not-found, unprocessable */
export function withPackPatched(body: unknown, sku: string, patch: unknown): unknown {
  return withPack(body, sku, mergePatched(packOf(body, sku), patch));
}

/** The document with a pack put in the place of that of its SKU, or after the others. @throws {HttpProblem} unprocessable */
export function withPack(body: unknown, sku: string, pack: unknown): unknown {
  checkedAs(PackDto, pack);
  if (!isPack(sku)(pack)) throw skuIsKept(sku);
  const packs = packsOf(body);
  return withPacks(
    body,
    packs.some(isPack(sku)) ? packs.map((known) => (isPack(sku)(known) ? pack : known)) : [...packs, pack],
  );
}

/** The document without one pack. @throws {HttpProblem} not-found */
export function withoutPack(body: unknown, sku: string): unknown {
  packOf(body, sku);
  return withPacks(
    body,
    packsOf(body).filter((pack) => !isPack(sku)(pack)),
  );
}

const withPacks = (body: unknown, packs: readonly unknown[]): unknown =>
  isRecord(body) ? { ...body, packs } : body;

const isPack =
  (sku: string) =>
  (pack: unknown): boolean =>
    isRecord(pack) && pack.sku === sku;

const noSuchPack = (sku: string): HttpProblem =>
  notFound(`A pack ${JSON.stringify(sku.slice(0, 80))} in this price list`);

const skuIsKept = (sku: string): HttpProblem =>
  new HttpProblem('unprocessable', {
    detail: 'A SKU is never changed; add a new pack and remove the old one.',
    problems: [
      problem('contradiction', pointer('', 'sku'), { other: 'the address', why: `the pack is ${sku}` }),
    ],
  });
