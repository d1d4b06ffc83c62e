// Recorded by test/contract/examples.spec.ts from a real run; do not edit.
import type { RecordedExamples } from '../recorded-examples.js';

export const recordedExamples: RecordedExamples = {};
