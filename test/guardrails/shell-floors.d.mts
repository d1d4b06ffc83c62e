import type { Linter } from 'eslint';

export const shellFloors: readonly (readonly string[])[];
export const shellRules: readonly Linter.Config[];
