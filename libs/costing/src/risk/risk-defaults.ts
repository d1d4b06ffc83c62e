/** What a simulation takes where nobody says otherwise; each is listed among its assumptions. */
export const riskDefaults = {
  seed: 1,
  samples: 10_000,
  shape: 'triangular',
  extentToRate: 0.3,
  labour: 0.5,
  part: 0.3,
} as const;
