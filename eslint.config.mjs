import tseslint from 'typescript-eslint';
import { shellRules } from './test/guardrails/shell-floors.mjs';
import { directionRules, purityRules, houseRules } from './test/guardrails/house-rules.mjs';

/** The rules themselves, with their reasons, are in test/guardrails/house-rules.mjs, beside the tests that prove them. */
export default tseslint.config(
  {
    ignores: [
      'dist/**',
      'node_modules/**',
      'coverage/**',
      'data/**',
      'demo-output/**',
      '**/generated/**',
      '**/*.must-not-compile.ts',
      'test/contract/consumers/**',
    ],
  },
  ...houseRules,
  ...directionRules,
  ...purityRules,
  ...shellRules,
);
