// must not compile: TS2322
import { mPa, type Mm } from '#lib/units';

export const length: Mm = mPa(12.7);
