import type { TSESLint } from '@typescript-eslint/utils';

export const floors: readonly (readonly string[])[];
export const sameFloorEdges: Readonly<Record<string, readonly string[]>>;
export const directionRules: TSESLint.FlatConfig.ConfigArray;
export const purityRules: TSESLint.FlatConfig.ConfigArray;
export const houseRules: TSESLint.FlatConfig.ConfigArray;
