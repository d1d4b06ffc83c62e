import type { TSESLint } from '@typescript-eslint/utils';

export const shellFloors: readonly (readonly string[])[];
export const shellRules: TSESLint.FlatConfig.ConfigArray;
