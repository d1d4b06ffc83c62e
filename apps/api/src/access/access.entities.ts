import { Column, CreateDateColumn, Entity, PrimaryColumn, UpdateDateColumn } from 'typeorm';
import type { PageLimits, Role, Scope } from './roles.js';

@Entity('organisation')
export class OrganisationRow {
  @PrimaryColumn('uuid', { primaryKeyConstraintName: 'organisation_pkey' })
  readonly id!: string;

  @Column('text')
  readonly name!: string;

  @CreateDateColumn({ name: 'created_at', type: 'timestamptz' })
  readonly createdAt!: Date;

  @UpdateDateColumn({ name: 'updated_at', type: 'timestamptz' })
  readonly updatedAt!: Date;

  @Column('integer', { default: 1 })
  readonly version!: number;
}

@Entity('api_key')
export class ApiKeyRow {
  @PrimaryColumn('uuid', { primaryKeyConstraintName: 'api_key_pkey' })
  readonly id!: string;

  @Column('uuid', { name: 'organisation_id' })
  readonly organisationId!: string;

  @Column('text')
  readonly name!: string;

  /** SHA-256 of the key. Keys are 256 random bits, so a slow hash would protect nothing that chance does not. */
  @Column('text', { name: 'key_hash' })
  readonly keyHash!: string;

  /** The first characters, by which a person recognises the key. */
  @Column('text')
  readonly prefix!: string;

  @Column('text', { array: true })
  readonly roles!: readonly Role[];

  @Column('text', { default: 'secret' })
  readonly kind!: 'secret' | 'publishable';

  /** What an integrator's key may do. */
  @Column('text', { array: true, default: '{}' })
  readonly scopes!: readonly Scope[];

  @Column('timestamptz', { name: 'expires_at', nullable: true })
  readonly expiresAt!: Date | null;

  /** To the minute. */
  @Column('timestamptz', { name: 'last_used_at', nullable: true })
  readonly lastUsedAt!: Date | null;

  /** The key in whose place this one was made. */
  @Column('uuid', { name: 'renews_id', nullable: true })
  readonly renewsId!: string | null;

  /** The key itself, of a publishable key alone. */
  @Column('text', { name: 'shown_text', nullable: true })
  readonly shownText!: string | null;

  @Column('jsonb', { nullable: true })
  readonly page!: PageLimits | null;

  @CreateDateColumn({ name: 'created_at', type: 'timestamptz' })
  readonly createdAt!: Date;

  @Column('timestamptz', { name: 'revoked_at', nullable: true })
  readonly revokedAt!: Date | null;

  @Column('integer', { default: 1 })
  readonly version!: number;
}

/** Opens one estimate, or the making of one. */
@Entity('estimate_secret')
export class EstimateSecretRow {
  @PrimaryColumn('text', { primaryKeyConstraintName: 'estimate_secret_pkey' })
  readonly hash!: string;

  @Column('uuid', { name: 'organisation_id' })
  readonly organisationId!: string;

  /** The key it was made with. */
  @Column('uuid', { name: 'key_id' })
  readonly keyId!: string;

  /** Null until the estimate is made. */
  @Column('uuid', { name: 'root_id', nullable: true })
  readonly rootId!: string | null;

  /** What the estimate must be called, fixed by whoever made the secret. */
  @Column('text', { nullable: true })
  readonly reference!: string | null;

  @Column('integer', { name: 'revisions_left' })
  readonly revisionsLeft!: number;

  @CreateDateColumn({ name: 'created_at', type: 'timestamptz' })
  readonly createdAt!: Date;

  @Column('timestamptz', { name: 'expires_at' })
  readonly expiresAt!: Date;
}

/** A chandler's key and the estimates it may see. */
@Entity('estimate_share')
export class EstimateShareRow {
  @PrimaryColumn('uuid', { name: 'root_id', primaryKeyConstraintName: 'estimate_share_pkey' })
  readonly rootId!: string;

  @PrimaryColumn('uuid', { name: 'key_id', primaryKeyConstraintName: 'estimate_share_pkey' })
  readonly keyId!: string;

  @Column('uuid', { name: 'organisation_id' })
  readonly organisationId!: string;

  @CreateDateColumn({ name: 'created_at', type: 'timestamptz' })
  readonly createdAt!: Date;
}

/** How many estimates a publishable key made on a day. */
@Entity('page_use')
export class PageUseRow {
  @PrimaryColumn('uuid', { name: 'key_id', primaryKeyConstraintName: 'page_use_pkey' })
  readonly keyId!: string;

  @Column('uuid', { name: 'organisation_id' })
  readonly organisationId!: string;

  @PrimaryColumn('date', { primaryKeyConstraintName: 'page_use_pkey' })
  readonly day!: string;

  @Column('integer')
  readonly made!: number;
}
