/** One use of an Idempotency-Key: whose, for which operation, with which request. */
export interface KeyUse {
  readonly organisationId: string;
  readonly operation: string;
  readonly key: string;
  readonly requestHash: string;
}

export interface Claim extends KeyUse {
  readonly claimId: string;
}
