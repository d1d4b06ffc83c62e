// must not compile: TS2322
import type { Mm } from '#lib/units';

export const length: Mm = 12.7;
