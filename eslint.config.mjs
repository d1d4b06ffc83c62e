import { houseRules, purityRules } from './test/guardrails/house-rules.mjs';
import { directionRules } from './test/guardrails/room-floors.mjs';
import { shellRules } from './test/guardrails/shell-floors.mjs';

/** The rules themselves, with their reasons, are in test/guardrails, beside the tests that prove them. */
export default [
  {
    ignores: [
      '**/dist/**',
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
];
