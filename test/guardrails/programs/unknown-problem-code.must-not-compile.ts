import { problem } from '#lib/kernel';

export const wrong = problem('no-such-code', '/x');
