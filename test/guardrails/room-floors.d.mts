import type { Linter } from 'eslint';

export const floors: readonly (readonly string[])[];
export const sameFloorEdges: Readonly<Record<string, readonly string[]>>;
export const directionRules: readonly Linter.Config[];
