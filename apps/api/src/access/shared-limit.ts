import { Inject, Injectable, type OnModuleDestroy } from '@nestjs/common';
import type { Response } from 'express';
import { failureFacts, Log } from '../edge/log.js';
import { RateLimit } from '../edge/rate-limit.js';
import { Database } from '../persistence/database.js';
import { configurationToken, type Configuration } from '../settings/configuration.js';
import { RequestCountRepository } from './request-count.repository.js';
import type { Caller } from './roles.js';

/** How often copies tell each other; a caller may pass its limit by what it can ask in this time. */
const TELL_EVERY_MS = 500;
const MINUTE_MS = 60_000;

/** The limit of requests for a key and for an organisation, counted over all copies of the service on one server. */
@Injectable()
export class SharedLimit implements OnModuleDestroy {
  private readonly limit = new RateLimit();
  private timer: NodeJS.Timeout | undefined;
  private telling: Promise<void> | undefined;
  private forgottenAt = 0;

  constructor(
    private readonly database: Database,
    private readonly log: Log,
    @Inject(configurationToken) private readonly configuration: Configuration,
  ) {}

  /** @throws {HttpProblem} too-many-requests */
  takeFor(caller: Caller, address: string, response: Response): void {
    const { organisationRequestsPerMinute: perMinute } = this.configuration;
    this.take(
      [
        ...this.ownAllowances(caller, address),
        { caller: `organisation ${caller.organisationId}`, perMinute },
      ],
      response,
    );
  }

  /** A page's key is in everybody's hands: it is counted for itself, and for each address that uses it. */
  private ownAllowances({ keyId, page }: Caller, address: string): Parameters<RateLimit['take']>[0] {
    if (page === undefined) return [{ caller: keyId, perMinute: this.configuration.requestsPerMinute }];
    return [
      { caller: `${keyId} from ${address}`, perMinute: page.perMinutePerVisitor },
      { caller: keyId, perMinute: page.perMinute },
    ];
  }

  /** For those who show no key that is known. */
  takeForAddress(address: string, response: Response): void {
    this.take([{ caller: `address ${address}`, perMinute: this.configuration.requestsPerMinute }], response);
  }

  async onModuleDestroy(): Promise<void> {
    clearTimeout(this.timer);
    await this.telling;
  }

  private take(allowances: Parameters<RateLimit['take']>[0], response: Response): void {
    // The embedded database belongs to one copy: there is nobody to tell.
    if (this.configuration.databaseUrl !== undefined)
      this.timer ??= setTimeout(() => {
        this.telling = this.tell();
      }, TELL_EVERY_MS).unref();
    this.limit.take(allowances, response);
  }

  /** Counts that could not be told are lost for the others; the limit of this copy still holds. */
  private async tell(): Promise<void> {
    this.timer = undefined;
    const counts = this.limit.taken();
    if (counts.length === 0) return;
    const minute = Math.floor(Date.now() / MINUTE_MS);
    try {
      await this.database.asWorker(async (tx) => {
        const repository = RequestCountRepository.in(tx);
        this.limit.told(await repository.add(counts));
        if (this.forgottenAt !== minute) await repository.forgetBefore(minute);
      });
      this.forgottenAt = minute;
    } catch (failure) {
      this.log.entry(
        'warn',
        'The counts of requests could not be told to other copies',
        failureFacts(failure),
      );
    }
  }
}
