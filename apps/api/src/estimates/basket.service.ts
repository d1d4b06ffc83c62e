import { Injectable } from '@nestjs/common';
import { basketFrom, ublOrders, type Basket } from '#lib/costing';
import { pointer, problem, unlessProblems } from '#lib/kernel';
import type { Caller } from '../access/roles.js';
import { CurrentCatalogue } from '../catalogue/current-catalogue.js';
import { basketJob } from '../estimating/basket/basket.job.js';
import { Workbench } from '../workbench/workbench.js';
import { answer, HttpProblem, notFound } from '../edge/problems.js';
import { basketAskedFor, type BasketChoices, type OrderedEstimate } from './estimate-basket.js';
import { EstimatesService } from './estimates.service.js';

interface OrderWanted {
  readonly supplier?: string;
  /** ISO 8601 date. */
  readonly issueDate: string;
}

/** The order an estimate calls for, from the edition it was made with. */
@Injectable()
export class EstimateBasketService {
  constructor(
    private readonly estimates: EstimatesService,
    private readonly catalogues: CurrentCatalogue,
    private readonly workbench: Workbench,
  ) {}

  /** Needs of all the estimates are pooled before packs are chosen; each is told its share. */
  async basket(caller: Caller, id: string, choices: BasketChoices): Promise<Basket> {
    const first = await this.ordered(caller, id);
    const others = await this.others(caller, [id, ...(choices.together ?? [])]);
    const catalogue = await this.catalogues.edition(caller.organisationId, first.edition);
    const order = answer(basketFrom(basketAskedFor([first, ...others], choices), catalogue));
    return answer(await this.workbench.do(basketJob, order, caller));
  }

  /** @throws {HttpProblem} unprocessable, naming every id that is none or stands twice */
  private async others(
    caller: Caller,
    [own, ...ids]: readonly string[],
  ): Promise<readonly OrderedEstimate[]> {
    const found = await Promise.all(ids.map((id) => this.ordered(caller, id).catch(absentWhenNotFound)));
    const problems = ids.flatMap((id, index) => {
      const at = pointer('/together', index);
      if (id === own || ids.indexOf(id) !== index) return [problem('duplicate', at, { value: id })];
      return found[index] === undefined
        ? [problem('unknown-code', at, { value: id, kind: 'estimate', known: 'those of your organisation' })]
        : [];
    });
    return answer(unlessProblems(problems, () => found.filter((one) => one !== undefined)));
  }

  private async ordered(caller: Caller, id: string): Promise<OrderedEstimate & { readonly edition: string }> {
    const { result, edition } = await this.estimates.row(caller, id);
    const { priceLists } = await this.catalogues.edition(caller.organisationId, edition);
    return { id, estimate: result, edition, priceLists };
  }

  /** A UBL 2.1 Order: it has one seller, so an order from several suppliers needs one of them named. */
  async ublOrder(caller: Caller, id: string, { supplier, issueDate }: OrderWanted): Promise<string> {
    const best = await this.basket(caller, id, {});
    const { letterhead } = await this.estimates.lineage(caller, id);
    const orders = ublOrders(best, { id, issueDate, buyer: { name: letterhead.name } });
    const chosen =
      supplier === undefined && orders.length === 1
        ? orders[0]
        : orders.find((order) => order.supplier === supplier);
    if (chosen !== undefined) return chosen.xml;
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

function absentWhenNotFound(failure: unknown): undefined {
  if (failure instanceof HttpProblem && failure.kind === 'not-found') return undefined;
  throw failure;
}
