import { faultsIn } from '#lib/asking';
import { findMaterial, type Catalogue, type PriceList, type ResinSystem } from '#lib/catalogue';
import { pointer, problem, refusal, success, type Outcome, type Problem } from '#lib/kernel';
import type { BasketRequest, ResinMatch } from './basket-request.js';
import { basketQuestions, type BasketByCode } from './questions.js';
import { satisfies } from './content.js';

/** The codes looked up: the price list, cut down to what can matter, and the mixing ratio of every resin. */
export function basketFrom(asked: BasketByCode, catalogue: Catalogue): Outcome<BasketRequest> {
  const faults = faultsIn(asked, basketQuestions);
  if (faults.length > 0) return refusal(...faults);
  const priceList = catalogue.priceLists.find(({ code }) => code === asked.priceList);
  const problems = [
    ...(priceList === undefined
      ? [
          unknown('/priceList', asked.priceList, {
            kind: 'price list',
            known: catalogue.priceLists.map(({ code }) => code),
          }),
        ]
      : []),
    ...unknownMaterials(asked, catalogue),
    ...unknownHardeners(asked, catalogue),
  ];
  if (problems.length > 0 || priceList === undefined) return refusal(...problems);
  const { needs, substitutes, onHand, options } = asked;
  return success({
    currency: priceList.currency,
    priceList: relevantPart(priceList, asked),
    needs,
    matches: matchesFor(asked, catalogue),
    ...(substitutes === undefined ? {} : { substitutes }),
    ...(onHand === undefined ? {} : { onHand }),
    ...(options === undefined ? {} : { options }),
  });
}

const MOST_NAMED = 12;

const unknown = (
  at: string,
  value: string,
  { kind, known }: { readonly kind: string; readonly known: readonly string[] },
): Problem =>
  problem('unknown-code', at, {
    value,
    kind,
    known: known.slice(0, MOST_NAMED).join(', ') + (known.length > MOST_NAMED ? ', ...' : ''),
  });

function unknownMaterials(
  { needs, substitutes = [], onHand = [] }: BasketByCode,
  { materials }: Catalogue,
): readonly Problem[] {
  const codes = new Set(materials.map(({ code }) => code));
  const named = [
    ...needs.map(({ material }, index) => [pointer('/needs', index, 'material'), material] as const),
    ...onHand.map(({ material }, index) => [pointer('/onHand', index, 'material'), material] as const),
    ...substitutes.flatMap(({ insteadOf, use }, index) => [
      [pointer('/substitutes', index, 'insteadOf', 'material'), insteadOf.material] as const,
      [pointer('/substitutes', index, 'use', 'material'), use.material] as const,
    ]),
  ];
  return named.flatMap(([at, code]) =>
    codes.has(code) ? [] : [unknown(at, code, { kind: 'material', known: [...codes] })],
  );
}

/** Hardeners named for a resin, and those needed themselves, must be among its own. */
function unknownHardeners({ needs, hardeners = [] }: BasketByCode, catalogue: Catalogue): readonly Problem[] {
  return [
    ...needs.flatMap(({ material, part }, index) => {
      const found = findMaterial(catalogue, 'resin', material);
      return part === undefined || found === undefined
        ? []
        : hardenerFault(found, part, pointer('/needs', index, 'part'));
    }),
    ...hardeners.flatMap(({ resin, hardener }, index) => {
      const found = findMaterial(catalogue, 'resin', resin);
      if (found !== undefined)
        return hardenerFault(found, hardener, pointer('/hardeners', index, 'hardener'));
      const known = catalogue.materials.filter(({ kind }) => kind === 'resin').map(({ code }) => code);
      return [unknown(pointer('/hardeners', index, 'resin'), resin, { kind: 'resin', known })];
    }),
  ];
}

function hardenerFault({ code, hardeners }: ResinSystem, hardener: string, at: string): readonly Problem[] {
  const known = hardeners.map((one) => one.code);
  return known.includes(hardener)
    ? []
    : [problem('hardener-without-resin', at, { value: hardener, resin: code, known: known.join(', ') })];
}

/**
 * The hardeners that are asked for, with their parts by mass. A resin nobody asked a hardener for may be cured by any of
 * its own: the cheapest is bought, and the order says which.
 */
function matchesFor({ needs, hardeners = [] }: BasketByCode, catalogue: Catalogue): readonly ResinMatch[] {
  return [...new Set(needs.map(({ material }) => material))].flatMap((code) => {
    const resin = findMaterial(catalogue, 'resin', code);
    if (resin === undefined) return [];
    const asked = new Set([
      ...needs.flatMap(({ material, part }) => (material === code && part !== undefined ? [part] : [])),
      ...hardeners.flatMap((one) => (one.resin === code ? [one.hardener] : [])),
    ]);
    return resin.hardeners
      .filter((hardener) => asked.size === 0 || asked.has(hardener.code))
      .map((hardener) => ({
        resin: code,
        hardener: hardener.code,
        massRatio: hardener.partsByMass.value / PARTS,
      }));
  });
}

/** A mixing ratio is given to this many parts of resin. */
const PARTS = 100;

/** Packs of other materials cannot matter and need not travel to the solver. */
function relevantPart(priceList: PriceList, { needs, substitutes = [] }: BasketByCode): PriceList {
  const materials = new Set(needs.map(({ material }) => material));
  return {
    ...priceList,
    packs: priceList.packs.filter(
      ({ content }) =>
        materials.has(content.material) || substitutes.some(({ use }) => satisfies(content, use)),
    ),
  };
}
