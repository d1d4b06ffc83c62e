import { below, pointer, problem, type Problem, nearest } from '#lib/kernel';
import type { Catalogue, PriceList } from '#lib/catalogue';
import { faultsOfPriceList } from '#lib/costing';
import { isRecord } from '../edge/dto/field.js';
import { HttpProblem, summaryOf } from '../edge/problems.js';

/** @throws {HttpProblem} unprocessable, with everything that does not hold together */
export function refuseUnlessWhole(catalogue: Catalogue): void {
  const problems = inconsistencies(catalogue);
  if (problems.length === 0) return;
  throw new HttpProblem('unprocessable', {
    detail: `The edition does not hold together. ${summaryOf(problems)}`,
    problems,
  });
}

/** What only shows when an edition is looked at as a whole; it is published only when nothing is found. */
export const inconsistencies = (catalogue: Catalogue): readonly Problem[] => [
  ...unknownCites(catalogue),
  ...catalogue.priceLists.flatMap((list, index) =>
    priceListFaults(list, catalogue, pointer('', 'priceLists', index)),
  ),
  ...catalogue.labourRates.flatMap(({ validFrom, validTo }, index) =>
    validityFaults(validFrom, validTo, pointer('', 'labourRates', index)),
  ),
];

function unknownCites(catalogue: Catalogue): readonly Problem[] {
  const known = new Set(catalogue.sources.map(({ key }) => key));
  return (['materials', 'labourRates'] as const).flatMap((part) =>
    catalogue[part].flatMap((item) =>
      citesIn(item, pointer('', part, item.code))
        .filter(({ source }) => !known.has(source))
        .map(({ source, at }) => unknown(at, source, 'source', known)),
    ),
  );
}

interface FoundCite {
  readonly source: string;
  readonly at: string;
}

function citesIn(value: unknown, at: string): readonly FoundCite[] {
  if (Array.isArray(value)) return value.flatMap((item, index) => citesIn(item, pointer(at, index)));
  if (!isRecord(value)) return [];
  return Object.entries(value).flatMap(([key, part]) =>
    key === 'cite' && isRecord(part) && typeof part.source === 'string'
      ? [{ source: part.source, at: pointer(at, 'cite', 'source') }]
      : citesIn(part, pointer(at, key)),
  );
}

/** A list must be one that orders can be made from: the costing room says what that takes. */
function priceListFaults(list: PriceList, { materials }: Catalogue, at: string): readonly Problem[] {
  const codes = new Set(materials.map(({ code }) => code));
  const unknownMaterials = list.packs.flatMap(({ content }, index) =>
    codes.has(content.material)
      ? []
      : [unknown(pointer(at, 'packs', index, 'content', 'material'), content.material, 'material', codes)],
  );
  return [
    ...validityFaults(list.validFrom, list.validTo, at),
    ...below(at, faultsOfPriceList(list)),
    ...unknownMaterials,
  ];
}

const validityFaults = (from: string, to: string, at: string): readonly Problem[] =>
  from <= to
    ? []
    : [
        problem('contradiction', pointer(at, 'validTo'), {
          other: 'validFrom',
          why: 'it ends before it begins',
        }),
      ];

const MOST_NAMED = 20;

const unknown = (at: string, value: string, kind: string, known: ReadonlySet<string>): Problem =>
  problem('unknown-code', at, {
    value: JSON.stringify(value),
    kind,
    known: [...new Set([...nearest(value, known), ...known])].slice(0, MOST_NAMED).join(', '),
  });
