import { Column, CreateDateColumn, Entity, PrimaryColumn } from 'typeorm';
import type { EventType } from './service-event.js';

/** Something that happened in an organisation; never changed. */
@Entity('event')
export class EventRow {
  @PrimaryColumn('uuid', { primaryKeyConstraintName: 'event_pkey' })
  readonly id!: string;

  /** Rises in the order in which events of an organisation were committed. */
  @Column({ type: 'bigint', generated: 'identity', generatedIdentity: 'ALWAYS', unique: true })
  readonly position!: string;

  @Column('uuid', { name: 'organisation_id' })
  readonly organisationId!: string;

  @Column('text')
  readonly type!: EventType;

  @Column('timestamptz', { default: () => 'now()' })
  readonly at!: Date;

  @Column('jsonb')
  readonly data!: Readonly<Record<string, unknown>>;
}

export interface EndpointSecret {
  /** As `SecretSeal` keeps it. */
  readonly secret: string;
  /** RFC 3339; of one that was replaced and still signs for a while. */
  readonly until?: string;
}

/** Where an organisation wants to be told what happened. */
@Entity('webhook_endpoint')
export class WebhookEndpointRow {
  @PrimaryColumn('uuid', { primaryKeyConstraintName: 'webhook_endpoint_pkey' })
  readonly id!: string;

  @Column('uuid', { name: 'organisation_id' })
  readonly organisationId!: string;

  @Column('text')
  readonly url!: string;

  @Column('text', { array: true })
  readonly types!: readonly EventType[];

  /** Sealed and not hashed: a signature needs the secret itself. */
  @Column('jsonb')
  readonly secrets!: readonly EndpointSecret[];

  @CreateDateColumn({ name: 'created_at', type: 'timestamptz' })
  readonly createdAt!: Date;

  @Column('text', { name: 'disabled_because', nullable: true })
  readonly disabledBecause!: string | null;

  @Column('integer', { default: 1 })
  readonly version!: number;
}

/** One event on its way to one endpoint. */
@Entity('webhook_delivery')
export class WebhookDeliveryRow {
  @PrimaryColumn('uuid', { name: 'endpoint_id', primaryKeyConstraintName: 'webhook_delivery_pkey' })
  readonly endpointId!: string;

  @PrimaryColumn('uuid', { name: 'event_id', primaryKeyConstraintName: 'webhook_delivery_pkey' })
  readonly eventId!: string;

  @Column('uuid', { name: 'organisation_id' })
  readonly organisationId!: string;

  @Column('text', { default: 'waiting' })
  readonly status!: 'waiting' | 'delivered' | 'failed';

  @Column('integer', { default: 0 })
  readonly attempts!: number;

  @Column('timestamptz', { name: 'due_at', default: () => 'now()' })
  readonly dueAt!: Date;

  @Column('timestamptz', { name: 'tried_at', nullable: true })
  readonly triedAt!: Date | null;

  @Column('integer', { name: 'last_status', nullable: true })
  readonly lastStatus!: number | null;

  @Column('text', { name: 'last_failure', nullable: true })
  readonly lastFailure!: string | null;
}
