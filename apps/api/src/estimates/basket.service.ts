import { Injectable } from '@nestjs/common';
import type { Catalogue, PriceList } from '#lib/catalogue';
import {
  basketFrom,
  priceDrift,
  ublOrders,
  type Basket,
  type OrderDocument,
  type PriceDrift,
} from '#lib/costing';
import { pointer, problem, unlessProblems } from '#lib/kernel';
import type { Caller } from '../access/roles.js';
import { CurrentCatalogue } from '../catalogue/current-catalogue.js';
import { basketJob } from '../estimating/basket/basket.job.js';
import { tell } from '../events/outbox.js';
import type { OrderNamed } from '../events/service-event.js';
import { Database } from '../persistence/database.js';
import { Workbench } from '../workbench/workbench.js';
import { answer, HttpProblem, notFound } from '../edge/problems.js';
import {
  basketAskedFor,
  reckonedLines,
  type BasketChoices,
  type OrderedEstimate,
} from './estimate-basket.js';
import { EstimatesService } from './estimates.service.js';

interface OrderWanted {
  readonly supplier?: string | undefined;
  /** ISO 8601 date. */
  readonly issueDate: string;
}

/** How the prices of a list differ from those that an estimate was reckoned with. */
export interface EstimateDrift extends PriceDrift {
  /** Estimate whose prices were compared. */
  readonly estimate: string;
}

/** A basket for stored estimates: priced in one edition of the catalogue, from today's stock, with what has changed since each was made. */
export interface EstimateBasket extends Basket {
  /** Code of the edition, and no moment, whose prices it is made with. */
  readonly pricedAt: string;
  /** RFC 3339 instant of the oldest count of stock in the list; absent when the stock of the edition counts. */
  readonly stockCountedAt?: string;
  /** For every estimate that was made with another edition, in the currency of the list. */
  readonly drift: readonly EstimateDrift[];
}

interface Placed extends OrderedEstimate {
  readonly edition: string;
}

/** The order that estimates call for, at the prices of the edition that is asked for. */
@Injectable()
export class EstimateBasketService {
  constructor(
    private readonly estimates: EstimatesService,
    private readonly catalogues: CurrentCatalogue,
    private readonly workbench: Workbench,
    private readonly database: Database,
  ) {}

  /** Needs of all the estimates are pooled before packs are chosen; each is told its share. */
  async basket(caller: Caller, id: string, choices: BasketChoices): Promise<EstimateBasket> {
    const first = await this.ordered(caller, id);
    const others = await this.others(caller, [id, ...(choices.together ?? [])]);
    const all = inOneOrder([first, ...others]);
    const asked = basketAskedFor(all, { ...choices, priceList: listOf(all, choices) });
    const { catalogue, ...counted } = await this.catalogues.stocked(
      caller.organisationId,
      await this.pricing(caller, all, choices.pricedAt),
      asked.priceList,
    );
    const order = answer(basketFrom(asked, catalogue));
    const basket = answer(await this.workbench.do(basketJob, order, caller));
    const list = catalogue.priceLists.find(({ code }) => code === asked.priceList);
    return {
      ...basket,
      pricedAt: catalogue.edition,
      ...counted,
      drift: list === undefined ? [] : driftOf(all, catalogue, list),
    };
  }

  /** The edition that is named, `current`, or none: then the one they were made with, or today's where they differ. */
  private async pricing(
    caller: Caller,
    all: readonly Placed[],
    pricedAt: string | undefined,
  ): Promise<Catalogue> {
    const { organisationId } = caller;
    if (pricedAt === undefined) {
      const editions = new Set(all.map(({ edition }) => edition));
      return editions.size === 1
        ? this.catalogues.edition(organisationId, all[0].edition)
        : this.catalogues.of(organisationId);
    }
    if (pricedAt === 'current') return this.catalogues.of(organisationId);
    return this.catalogues.edition(organisationId, pricedAt);
  }

  /** @throws {HttpProblem} unprocessable, naming every id that is none or stands twice */
  private async others(caller: Caller, [own, ...ids]: readonly string[]): Promise<readonly Placed[]> {
    const found = await Promise.all(ids.map((id) => this.ordered(caller, id).catch(absentWhenNotFound)));
    const problems = ids.flatMap((id, index) => {
      const at = pointer('/together', index);
      if (id === own || ids.indexOf(id) !== index) return [problem('duplicate', at, { value: id })];
      return found[index] === undefined
        ? [problem('not-in-form', at, { value: id, form: 'the id of an estimate that your key may read' })]
        : [];
    });
    return answer(unlessProblems(problems, () => found.filter((one) => one !== undefined)));
  }

  private async ordered(caller: Caller, id: string): Promise<Placed> {
    const { result, edition } = await this.estimates.row(caller, id);
    const { priceLists } = await this.catalogues.edition(caller.organisationId, edition);
    return { id, estimate: result, edition, priceLists };
  }

  /** Says that an order was written. */
  tellOrder({ organisationId }: Caller, data: OrderNamed): Promise<void> {
    return this.database.inOrganisation(organisationId, (tx) =>
      tell(tx, { organisationId, type: 'order.made', data }),
    );
  }

  /** A UBL 2.1 Order: it has one seller, so an order from several suppliers needs one of them named. */
  async ublOrder(
    caller: Caller,
    basket: EstimateBasket,
    { id, supplier, issueDate }: OrderWanted & { readonly id: string },
  ): Promise<OrderDocument> {
    const { letterhead } = await this.estimates.lineage(caller, id);
    const orders = ublOrders(basket, { id, issueDate, buyer: { name: letterhead.name } });
    const chosen =
      supplier === undefined && orders.length === 1
        ? orders[0]
        : orders.find((order) => order.supplier === supplier);
    if (chosen !== undefined) return chosen;
    if (supplier !== undefined)
      throw notFound(`A part of this order from ${JSON.stringify(supplier.slice(0, 80))}`);
    throw new HttpProblem('bad-request', {
      detail: 'The order goes to several suppliers; name one.',
      problems: [
        {
          ...problem('missing', '', {
            expected: `one of ${orders.map((order) => order.supplier).join(', ')}`,
          }),
          parameter: 'supplier',
        },
      ],
    });
  }
}

/** By id, so that the answer does not hang on which of them was named first. */
function inOneOrder([first, ...others]: readonly [Placed, ...Placed[]]): readonly [Placed, ...Placed[]] {
  const [least, ...rest] = [first, ...others].sort((a, b) => (a.id < b.id ? -1 : 1));
  return [least, ...rest];
}

/** @throws {HttpProblem} unprocessable, where estimates were priced from different lists and none is named */
function listOf(all: readonly Placed[], { priceList }: BasketChoices): string {
  const lists = [...new Set(all.map(({ estimate }) => estimate.provenance.priceList))];
  const isOpen = priceList === undefined && lists.length > 1;
  return answer(
    unlessProblems(
      isOpen
        ? [
            problem('missing', '/priceList', {
              expected: `one of ${lists.join(', ')}, because they were priced from different lists`,
            }),
          ]
        : [],
      () => priceList ?? lists[0],
    ),
  );
}

const driftOf = (all: readonly Placed[], { edition }: Catalogue, list: PriceList): readonly EstimateDrift[] =>
  all.flatMap((one) => {
    const drift = one.edition === edition ? undefined : priceDrift(reckonedLines(one.estimate), list);
    return drift === undefined ? [] : [{ estimate: one.id, ...drift }];
  });

function absentWhenNotFound(failure: unknown): undefined {
  if (failure instanceof HttpProblem && failure.kind === 'not-found') return undefined;
  throw failure;
}
