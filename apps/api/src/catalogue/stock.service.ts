import { Injectable } from '@nestjs/common';
import type { Pack, PriceList } from '#lib/catalogue';
import { nearest, pointer, problem, type Problem } from '#lib/kernel';
import type { Caller } from '../access/roles.js';
import { AuditTrail } from '../audit/audit-trail.js';
import { HttpProblem, notFound, summaryOf } from '../edge/problems.js';
import { Database, type Transaction } from '../persistence/database.js';
import { CurrentCatalogue } from './current-catalogue.js';
import type { StockRow } from './stock.entity.js';
import { StockRepository, type Count } from './stock.repository.js';

/** How many packs of a SKU there are now. */
export interface StockCount {
  /** Pack that was counted. */
  readonly sku: string;
  /** Whole packs that could be sold when they were counted. */
  readonly packs: number;
  /** RFC 3339 instant at which it was counted. */
  readonly countedAt: string;
}

/** What was counted of a price list. Of packs that are not here, the stock of the edition counts. */
export interface StockList {
  /** Code of the price list whose packs were counted. */
  readonly priceList: string;
  /** Packs that were counted. */
  readonly items: readonly StockCount[];
}

const MOST_KEPT = 20;

/** Stock is what there is today: no edition holds it, and a count is in force at once. */
@Injectable()
export class StockService {
  constructor(
    private readonly database: Database,
    private readonly catalogues: CurrentCatalogue,
  ) {}

  async list(caller: Caller, priceList: string): Promise<StockList> {
    await this.listOf(caller, priceList);
    const rows = await this.rows(caller.organisationId, priceList);
    return { priceList, items: rows.map(stockView) };
  }

  async get(caller: Caller, priceList: string, sku: string): Promise<StockCount> {
    const row = await this.inside(caller, (tx) => StockRepository.in(tx, priceList).find(sku));
    if (row === null) throw notFound(`A count of ${JSON.stringify(sku.slice(0, 80))} in this price list`);
    return stockView(row);
  }

  /** All counts or none. @throws {HttpProblem} unprocessable, naming every SKU that the current list does not hold */
  async put(caller: Caller, priceList: string, counts: readonly Count[]): Promise<StockList> {
    const { packs } = await this.listOf(caller, priceList);
    refuseUnlessKnown(packs, counts);
    await this.inside(caller, async (tx) => {
      const stock = StockRepository.in(tx, priceList);
      await stock.put(caller.organisationId, counts);
      await AuditTrail.in(tx).add(caller, {
        action: 'changed',
        subject: 'stock',
        code: priceList,
        // A till that states its whole shelf every hour would bury the trail.
        after: counts.length > MOST_KEPT ? { counted: counts.length } : counts,
      });
    });
    return this.list(caller, priceList);
  }

  /** From then on the stock of the edition counts again. */
  remove(caller: Caller, priceList: string, sku: string): Promise<void> {
    return this.inside(caller, async (tx) => {
      const before = await StockRepository.in(tx, priceList).find(sku);
      if (before === null) return;
      await StockRepository.in(tx, priceList).remove(sku);
      await AuditTrail.in(tx).add(caller, {
        action: 'removed',
        subject: 'stock',
        code: priceList,
        before: { sku, packs: before.packs },
      });
    });
  }

  private rows(organisationId: string, priceList: string): Promise<readonly StockRow[]> {
    return this.database.inOrganisation(organisationId, (tx) => StockRepository.in(tx, priceList).list());
  }

  private inside<T>({ organisationId }: Caller, work: (tx: Transaction) => Promise<T>): Promise<T> {
    return this.database.inOrganisation(organisationId, work);
  }

  private async listOf({ organisationId }: Caller, code: string): Promise<PriceList> {
    const { priceLists } = await this.catalogues.of(organisationId);
    const found = priceLists.find((list) => list.code === code);
    if (found === undefined) throw notFound(`The price list ${JSON.stringify(code.slice(0, 80))}`);
    return found;
  }
}

const stockView = ({ sku, packs, countedAt }: StockRow): StockCount => ({
  sku,
  packs,
  countedAt: countedAt.toISOString(),
});

function refuseUnlessKnown(packs: readonly Pack[], counts: readonly Count[]): void {
  const known = new Set(packs.map(({ sku }) => sku));
  const problems = counts.flatMap(({ sku }, index) => skuFaults(sku, index, { known, counts }));
  if (problems.length > 0) throw new HttpProblem('unprocessable', { detail: summaryOf(problems), problems });
}

function skuFaults(
  sku: string,
  index: number,
  { known, counts }: { readonly known: ReadonlySet<string>; readonly counts: readonly Count[] },
): readonly Problem[] {
  const at = pointer('/items', index, 'sku');
  if (counts.findIndex((other) => other.sku === sku) < index)
    return [problem('duplicate', at, { value: sku })];
  if (known.has(sku)) return [];
  const near = nearest(sku, [...known]);
  return [
    problem('unknown-code', at, {
      value: sku,
      kind: 'SKU of this price list in the current edition',
      known: near.join(', '),
    }),
  ];
}
