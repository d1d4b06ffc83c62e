/** What a key may be used for. `operator` may do everything in its own organisation, and make organisations. */
export const roles = ['surveyor', 'chandler', 'integrator', 'catalogue-admin', 'operator'] as const;
export type Role = (typeof roles)[number];

/** Who is asking: one key of one organisation. */
export interface Caller {
  readonly organisationId: string;
  readonly keyId: string;
  readonly keyName: string;
  readonly roles: readonly Role[];
}
