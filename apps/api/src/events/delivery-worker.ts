import { Inject, Injectable, type OnModuleDestroy } from '@nestjs/common';
import { failureFacts, Log } from '../edge/log.js';
import { Database } from '../persistence/database.js';
import { Rounds } from '../persistence/rounds.js';
import { configurationToken, type Configuration } from '../settings/configuration.js';
import { GONE, outcomeOf } from './delivery-schedule.js';
import { eventView } from './event-view.js';
import type { EndpointSecret } from './event.entities.js';
import { EventsRepository, type DeliveryClaim } from './events.repository.js';
import { post, type Posted } from './post.js';
import { SecretSeal } from './secret-seal.js';
import { signatureOf } from './signature.js';

/** How often a copy looks for what is due. */
const LOOK_EVERY_MS = 2000;
const AT_ONCE = 10;
const AT_ONCE_OF_EACH = 2;
/** Longer than an endpoint may take to answer; then another copy takes the delivery. */
const LEASE_S = 60;

/** Posts events to endpoints; any number of copies may do so on one database. Nothing is sent inside a transaction. */
@Injectable()
export class DeliveryWorker implements OnModuleDestroy {
  private readonly rounds = new Rounds(LOOK_EVERY_MS, () => this.deliverAll());

  constructor(
    private readonly database: Database,
    private readonly log: Log,
    private readonly seal: SecretSeal,
    @Inject(configurationToken) private readonly configuration: Configuration,
  ) {}

  /** Once the database is open. */
  start(): void {
    this.rounds.start();
  }

  /** Something may be due. */
  wake(): void {
    this.rounds.wake();
  }

  onModuleDestroy(): Promise<void> {
    return this.rounds.end();
  }

  /** A database that cannot be reached now is asked again at the next look. */
  private async deliverAll(): Promise<void> {
    try {
      while (!this.rounds.stop.aborted) {
        const claims = await this.database.asWorker((tx) =>
          EventsRepository.in(tx).claim(AT_ONCE, AT_ONCE_OF_EACH, LEASE_S),
        );
        if (claims.length === 0) return;
        await Promise.all(claims.map((claim) => this.deliver(claim)));
      }
    } catch (failure) {
      this.log.entry('warn', 'Events could not be delivered', failureFacts(failure));
    }
  }

  /** A copy that stops leaves its deliveries to the lease. */
  private async deliver(claim: DeliveryClaim): Promise<void> {
    const posted = await this.posted(claim);
    if (this.rounds.stop.aborted && posted.status === undefined) return;
    await this.database.asWorker(async (tx) => {
      const events = EventsRepository.in(tx);
      await events.settle(claim, outcomeOf(claim.attempt, posted, Math.random()));
      if (posted.status === GONE)
        await events.disable(claim.endpointId, `The endpoint answered ${GONE}, which says that it is gone.`);
    });
  }

  private posted({ url, endpointId, secrets, eventId: id, type, at, data }: DeliveryClaim): Promise<Posted> {
    const body = JSON.stringify(eventView({ id, type, at, data }));
    const atS = Math.floor(Date.now() / 1000);
    const signing = living(secrets).flatMap((kept) => this.seal.open(kept, endpointId) ?? []);
    if (signing.length === 0) return Promise.resolve({ failure: NOT_OPENED });
    return post({
      url,
      body,
      headers: {
        'user-agent': 'Kingplank-Webhooks/1',
        'webhook-id': id,
        'webhook-timestamp': String(atS),
        'webhook-signature': signatureOf({ id, atS, body }, signing),
      },
      areLocalAllowed: this.configuration.webhookLocalTargets,
      signal: this.rounds.stop,
    });
  }
}

const NOT_OPENED =
  'The secret was sealed by a key that the service has no more; renew it, and repeat the delivery.';

const living = (secrets: readonly EndpointSecret[]): readonly string[] =>
  secrets
    .filter(({ until }) => until === undefined || Date.parse(until) > Date.now())
    .map(({ secret }) => secret);
