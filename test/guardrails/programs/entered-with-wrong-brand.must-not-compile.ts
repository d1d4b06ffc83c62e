// must not compile: TS2345
import { entered } from '#lib/provenance';
import { mPa } from '#lib/units';

export const wrong = entered('mm', mPa(1), 'length', '/x');
