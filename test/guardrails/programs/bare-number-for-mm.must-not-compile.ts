import type { Mm } from '#lib/units';

export const length: Mm = 12.7;
