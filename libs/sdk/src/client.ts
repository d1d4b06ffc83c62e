import { Editions, Shelf } from './catalogue.js';
import { Estimates } from './estimates.js';
import { Estimating } from './estimating.js';
import { Letterhead } from './letterhead.js';
import { Operations } from './operations.js';
import type { ClientOptions } from './transport.js';

/**
 * The Kingplank service as typed calls.
 *
 * Every call takes `{ timeoutMs, maxRetries, signal, idempotencyKey }`; writes carry an idempotency key by themselves, so
 * that a retry never makes a second estimate. What goes wrong is thrown as a `KingplankError`.
 */
export class Kingplank {
  readonly estimates: Estimates;
  readonly estimating: Estimating;
  readonly operations: Operations;
  readonly letterhead: Letterhead;
  readonly editions: Editions;
  readonly materials: Shelf<'materials'>;
  readonly priceLists: Shelf<'price-lists'>;
  readonly labourRates: Shelf<'labour-rates'>;
  readonly sources: Shelf<'sources'>;

  constructor(options: ClientOptions) {
    this.estimates = new Estimates(options);
    this.estimating = new Estimating(options);
    this.operations = new Operations(options);
    this.letterhead = new Letterhead(options);
    this.editions = new Editions(options);
    this.materials = new Shelf(options, 'materials');
    this.priceLists = new Shelf(options, 'price-lists');
    this.labourRates = new Shelf(options, 'labour-rates');
    this.sources = new Shelf(options, 'sources');
  }
}
