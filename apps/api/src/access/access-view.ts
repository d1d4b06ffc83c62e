import { Defect } from '#lib/kernel';
import type { ApiKeyRow, OrganisationRow } from './access.entities.js';
import type { PageLimits, Role, Scope } from './roles.js';

/** Who keys and estimates belong to. */
export interface Organisation {
  /** Id of the organisation. */
  readonly id: string;
  /** Name of the organisation, as its documents show it. */
  readonly name: string;
  /** When the organisation was made (RFC 3339). */
  readonly createdAt: string;
}

/** A new organisation with the key that runs it; from here on, nobody outside can make another. */
export interface NewOrganisation extends Organisation {
  /** First key of the organisation; its text is shown this once. */
  readonly adminKey: NewKey;
}

export interface OrganisationList {
  /** All organisations, in the order they were made. */
  readonly items: readonly Organisation[];
  /** Give it as `cursor` for more organisations; absent on the last page. */
  readonly nextCursor?: string;
}

interface AnyKey {
  /** Id of the key; not the key itself. */
  readonly id: string;
  /** Organisation the key belongs to. */
  readonly organisationId: string;
  /** What the key is used for; stands in histories. */
  readonly name: string;
  /** When the key was made (RFC 3339). */
  readonly createdAt: string;
  /** From when on the key opens nothing; it never ends by itself when absent. */
  readonly expiresAt?: string;
  /** To the minute; absent for a key that was never used. */
  readonly lastUsedAt?: string;
  /** When it stopped counting (RFC 3339); absent while it counts. */
  readonly revokedAt?: string;
}

/** A key of an organisation, without its secret text. */
export interface Key extends AnyKey {
  /** The first characters, by which a person recognises the key. */
  readonly prefix: string;
  /** What its holder may do; see the table of roles. */
  readonly roles: readonly Role[];
  /** What an integrator may do. */
  readonly scopes: readonly Scope[];
  /** The key in whose place this one was made. */
  readonly renewsId?: string;
}

/** The only answer that ever holds the key itself. */
export interface NewKey extends Key {
  /** The key itself; shown this once. */
  readonly key: string;
}

export interface KeyList {
  /** Keys of the organisation, in the order they were made. */
  readonly items: readonly Key[];
  /** Give it as `cursor` for more keys; absent on the last page. */
  readonly nextCursor?: string;
}

/** A key that stands in a page for everybody to read: it makes estimates and lists none. */
export interface PublishableKey extends AnyKey {
  /** The key, which may stand in a page. */
  readonly key: string;
  /** Origins of the pages that may use it. */
  readonly origins: readonly string[];
  /** Requests a minute of all visitors together. */
  readonly perMinute: number;
  /** Requests a minute from one address. */
  readonly perMinutePerVisitor: number;
  /** Estimates a day, counted from midnight UTC. */
  readonly perDay: number;
  /** The edition it estimates with; whichever is current when absent. */
  readonly edition?: string;
}

export interface PublishableKeyList {
  /** Publishable keys of the organisation. */
  readonly items: readonly PublishableKey[];
  /** Give it as `cursor` for more publishable keys; absent on the last page. */
  readonly nextCursor?: string;
}

export const organisationView = ({ id, name, createdAt }: OrganisationRow): Organisation => ({
  id,
  name,
  createdAt: createdAt.toISOString(),
});

export const keyView = (row: ApiKeyRow): Key => ({
  ...anyKeyView(row),
  prefix: row.prefix,
  roles: row.roles,
  scopes: row.scopes,
  ...(row.renewsId === null ? {} : { renewsId: row.renewsId }),
});

export function publishableKeyView(row: ApiKeyRow): PublishableKey {
  if (row.shownText === null) throw new Defect(`The publishable key ${row.id} has no text`);
  return { ...anyKeyView(row), key: row.shownText, ...pageOfKey(row) };
}

function pageOfKey({ id, page }: ApiKeyRow): PageLimits {
  if (page === null) throw new Defect(`The publishable key ${id} has no limits`);
  return page;
}

const anyKeyView = ({
  id,
  organisationId,
  name,
  createdAt,
  expiresAt,
  lastUsedAt,
  revokedAt,
}: ApiKeyRow): AnyKey => ({
  id,
  organisationId,
  name,
  createdAt: createdAt.toISOString(),
  ...(expiresAt === null ? {} : { expiresAt: expiresAt.toISOString() }),
  ...(lastUsedAt === null ? {} : { lastUsedAt: lastUsedAt.toISOString() }),
  ...(revokedAt === null ? {} : { revokedAt: revokedAt.toISOString() }),
});
