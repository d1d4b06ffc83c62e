// must not compile: TS2345
import { problem } from '#lib/kernel';

export const wrong = problem('no-such-code', '/x');
