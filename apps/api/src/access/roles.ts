/**
 * What a key is for. No role reaches beyond the organisation of its key; a `platform-operator` makes organisations and
 * sees nothing of what is in them.
 */
export const roles = [
  'surveyor',
  'chandler',
  'integrator',
  'auditor',
  'catalogue-admin',
  'organisation-admin',
  'platform-operator',
] as const;
export type Role = (typeof roles)[number];

/** What may be done, and by which roles. An integrator may do what its scopes name, and nothing else. */
export const permissions = {
  'calculate': ['surveyor', 'chandler', 'auditor', 'catalogue-admin', 'organisation-admin'],
  'estimates:write': ['surveyor'],
  'estimates:read': ['surveyor', 'chandler', 'auditor'],
  'estimates:share': ['surveyor'],
  'orders:read': ['surveyor', 'chandler', 'auditor'],
  'catalogue:read': ['surveyor', 'chandler', 'auditor', 'catalogue-admin', 'organisation-admin'],
  'prices:write': ['chandler', 'catalogue-admin'],
  'catalogue:write': ['catalogue-admin'],
  'letterhead:read': ['surveyor', 'chandler', 'auditor', 'organisation-admin'],
  'letterhead:write': ['organisation-admin'],
  'pages:write': ['organisation-admin', 'chandler'],
  'keys:read': ['organisation-admin', 'auditor'],
  'keys:write': ['organisation-admin'],
  'audit:read': ['organisation-admin', 'auditor'],
  'events:read': ['surveyor', 'auditor', 'organisation-admin'],
  'webhooks:read': ['organisation-admin', 'auditor'],
  'webhooks:write': ['organisation-admin'],
  'organisation:read': [
    'surveyor',
    'chandler',
    'auditor',
    'catalogue-admin',
    'organisation-admin',
    'platform-operator',
  ],
  'organisation:write': ['organisation-admin', 'platform-operator'],
  'organisations:make': ['platform-operator'],
} as const satisfies Readonly<Record<string, readonly Role[]>>;
export type Permission = keyof typeof permissions;
export const permissionNames: readonly Permission[] = Object.keys(permissions).filter(isPermission);

function isPermission(name: string): name is Permission {
  return name in permissions;
}

/** What an integrator can be given; keys and organisations stay with people. */
export const scopes = [
  'calculate',
  'estimates:read',
  'estimates:write',
  'orders:read',
  'catalogue:read',
  'prices:write',
  'catalogue:write',
  'letterhead:read',
  'pages:write',
  'audit:read',
  'events:read',
  'webhooks:read',
  'webhooks:write',
] as const satisfies readonly Permission[];
export type Scope = (typeof scopes)[number];

/**
 * How a caller shows itself: a `secret` key of a program, a `publishable` key in a page that anybody can read, or the
 * secret of a `holder`, which opens one estimate.
 */
export type KeyKind = 'secret' | 'publishable' | 'holder';

/** Who is asking: one key of one organisation. */
export interface Caller {
  readonly organisationId: string;
  readonly keyId: string;
  readonly keyName: string;
  readonly roles: readonly Role[];
  readonly scopes: readonly Scope[];
  readonly kind: KeyKind;
  /** What a page is held to; only of a publishable key, and of secrets made with one. */
  readonly page?: PageLimits;
  /** The hash of the secret of a holder. */
  readonly secretHash?: string;
}

export interface PageLimits {
  readonly origins: readonly string[];
  readonly perMinute: number;
  readonly perMinutePerVisitor: number;
  readonly perDay: number;
  readonly edition?: string;
}

const rolesWith = (permission: Permission): readonly Role[] => permissions[permission];

export const may = ({ roles: held, scopes: given }: Caller, permission: Permission): boolean =>
  rolesWith(permission).some((role) => held.includes(role)) ||
  (held.includes('integrator') && given.some((scope) => scope === permission));

/** All roles that can have a permission, an integrator by its scopes included. */
export const rolesThatMay = (permission: Permission): readonly Role[] =>
  roles.filter(
    (role) =>
      rolesWith(permission).includes(role) ||
      (role === 'integrator' && scopes.some((scope) => scope === permission)),
  );

/** A chandler sees the estimates that were shared with it, unless another role shows it all of them. */
export const seesOnlyShared = (caller: Caller): boolean =>
  caller.roles.includes('chandler') &&
  !may({ ...caller, roles: caller.roles.filter((role) => role !== 'chandler') }, 'estimates:read');
