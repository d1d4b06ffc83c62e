import type { ApiKeyRow, OrganisationRow } from './access.entities.js';
import type { Role } from './roles.js';

export interface Organisation {
  readonly id: string;
  readonly name: string;
  /** RFC 3339 instant. */
  readonly createdAt: string;
}

export interface OrganisationList {
  readonly items: readonly Organisation[];
}

export interface Key {
  readonly id: string;
  readonly organisationId: string;
  readonly name: string;
  /** The first characters, by which a person recognises the key. */
  readonly prefix: string;
  readonly roles: readonly Role[];
  readonly createdAt: string;
  readonly revokedAt?: string;
}

/** The only answer that ever holds the key itself. */
export interface NewKey extends Key {
  readonly key: string;
}

export interface KeyList {
  readonly items: readonly Key[];
}

export const organisationView = ({ id, name, createdAt }: OrganisationRow): Organisation => ({
  id,
  name,
  createdAt: createdAt.toISOString(),
});

export const keyView = ({
  id,
  organisationId,
  name,
  prefix,
  roles,
  createdAt,
  revokedAt,
}: ApiKeyRow): Key => ({
  id,
  organisationId,
  name,
  prefix,
  roles,
  createdAt: createdAt.toISOString(),
  ...(revokedAt === null ? {} : { revokedAt: revokedAt.toISOString() }),
});
