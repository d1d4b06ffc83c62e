import { Inject, Injectable } from '@nestjs/common';
import { problem } from '#lib/kernel';
import type { Caller } from '../access/roles.js';
import { AuditTrail } from '../audit/audit-trail.js';
import { staleVersion } from '../edge/preconditions.js';
import { HttpProblem, notFound, summaryOf } from '../edge/problems.js';
import { Database, type Transaction } from '../persistence/database.js';
import { isId, newId } from '../persistence/ids.js';
import { configurationToken, type Configuration } from '../settings/configuration.js';
import type { EndpointSecret, EventRow, WebhookEndpointRow } from './event.entities.js';
import { SecretSeal } from './secret-seal.js';
import { EventsRepository, type DeliveryRow } from './events.repository.js';
import type { NewWebhookEndpointDto } from './events.dto.js';
import type { EventType } from './service-event.js';
import { newSecret } from './signature.js';
import { targetFault } from './target.js';

/** Of one organisation; each is called for every event. */
const MOST_ENDPOINTS = 20;
const MOST_DELIVERIES = 200;
const MS_PER_H = 3_600_000;

type VersionCheck = (version: number) => void;

interface FeedQuery {
  readonly limit: number;
  readonly cursor: string | undefined;
  readonly types: readonly EventType[] | undefined;
}

export interface MadeEndpoint {
  readonly row: WebhookEndpointRow;
  readonly secret: string;
}

/** What happened in an organisation, and where it wants to be told. */
@Injectable()
export class EventsService {
  constructor(
    private readonly database: Database,
    private readonly seal: SecretSeal,
    @Inject(configurationToken) private readonly configuration: Configuration,
  ) {}

  feed({ organisationId }: Caller, { limit, cursor, types }: FeedQuery): Promise<EventRow[]> {
    return this.database.inOrganisation(organisationId, (tx) =>
      EventsRepository.in(tx).feed({ afterPosition: cursor ?? '0', limit, types: types ?? null }),
    );
  }

  endpoints({ organisationId }: Caller): Promise<WebhookEndpointRow[]> {
    return this.database.inOrganisation(organisationId, (tx) => EventsRepository.in(tx).endpoints());
  }

  endpoint({ organisationId }: Caller, id: string): Promise<WebhookEndpointRow> {
    return this.database.inOrganisation(organisationId, (tx) => endpointIn(tx, id));
  }

  add(caller: Caller, { url, types }: NewWebhookEndpointDto): Promise<MadeEndpoint> {
    const why = targetFault(url, this.configuration.webhookLocalTargets);
    if (why !== undefined) throw noTarget(why);
    const { organisationId } = caller;
    return this.database.inOrganisation(organisationId, async (tx) => {
      const events = EventsRepository.in(tx);
      if ((await events.endpoints()).length >= MOST_ENDPOINTS) throw tooManyEndpoints();
      const [id, secret] = [newId(), newSecret()];
      const secrets = [{ secret: this.seal.seal(secret, id) }];
      await events.addEndpoint({ id, organisationId, url, types, secrets });
      await AuditTrail.in(tx).add(caller, {
        action: 'created',
        subject: 'webhook_endpoint',
        code: id,
        after: { url, types },
      });
      return { row: await endpointIn(tx, id), secret };
    });
  }

  remove(caller: Caller, id: string, check: VersionCheck): Promise<void> {
    return this.database.inOrganisation(caller.organisationId, async (tx) => {
      const { url, version } = await endpointIn(tx, id);
      check(version);
      if (!(await EventsRepository.in(tx).removeEndpoint(id, version))) throw staleVersion();
      await AuditTrail.in(tx).add(caller, {
        action: 'removed',
        subject: 'webhook_endpoint',
        code: id,
        before: { url },
      });
    });
  }

  /** A new secret; the one before it signs beside it for a while, older ones no more. */
  renewSecret(caller: Caller, id: string, overlapHours: number): Promise<MadeEndpoint> {
    return this.database.inOrganisation(caller.organisationId, async (tx) => {
      const { secrets, version } = await endpointIn(tx, id);
      const secret = newSecret();
      const until = new Date(Date.now() + overlapHours * MS_PER_H).toISOString();
      const kept: readonly EndpointSecret[] =
        overlapHours === 0 ? [] : [{ secret: secrets[0].secret, until }];
      const renewed = [{ secret: this.seal.seal(secret, id) }, ...kept];
      if (!(await EventsRepository.in(tx).setSecrets(id, version, renewed))) throw staleVersion();
      await AuditTrail.in(tx).add(caller, {
        action: 'changed',
        subject: 'webhook_endpoint',
        code: id,
        after: { secretRenewed: true, overlapHours },
      });
      return { row: await endpointIn(tx, id), secret };
    });
  }

  deliveries({ organisationId }: Caller, id: string): Promise<readonly DeliveryRow[]> {
    return this.database.inOrganisation(organisationId, async (tx) => {
      await endpointIn(tx, id);
      return EventsRepository.in(tx).deliveries(id, MOST_DELIVERIES);
    });
  }

  repeat(caller: Caller, id: string, eventId: string): Promise<DeliveryRow> {
    return this.database.inOrganisation(caller.organisationId, async (tx) => {
      const { disabledBecause } = await endpointIn(tx, id);
      if (disabledBecause !== null)
        throw new HttpProblem('conflict', {
          detail: `Nothing is delivered there: ${disabledBecause} Make another endpoint.`,
        });
      const row = isId(eventId) ? await EventsRepository.in(tx).repeat(id, eventId) : undefined;
      if (row === undefined) throw notFound(`Event ${JSON.stringify(eventId.slice(0, 60))}`);
      await AuditTrail.in(tx).add(caller, {
        action: 'changed',
        subject: 'webhook_endpoint',
        code: id,
        after: { repeated: eventId },
      });
      return row;
    });
  }
}

async function endpointIn(tx: Transaction, id: string): Promise<WebhookEndpointRow> {
  const row = isId(id) ? await EventsRepository.in(tx).endpoint(id) : null;
  if (row === null) throw notFound(`Webhook endpoint ${JSON.stringify(id.slice(0, 60))}`);
  return row;
}

const noTarget = (why: string): HttpProblem => {
  const problems = [
    problem('not-supported', '/url', { why: `events cannot be posted there, because ${why}` }),
  ];
  return new HttpProblem('unprocessable', { detail: summaryOf(problems), problems });
};

const tooManyEndpoints = (): HttpProblem =>
  new HttpProblem('conflict', {
    detail: `There are ${MOST_ENDPOINTS} webhook endpoints already; remove one that is not needed.`,
  });
