import { Foundation1764028800000 } from './migrations/1764028800000-foundation.js';
import { Operations1764115200000 } from './migrations/1764115200000-operations.js';
import { HouseKeeping1764288000000 } from './migrations/1764288000000-house-keeping.js';
import { AnyAnswer1764460800000 } from './migrations/1764460800000-any-answer.js';
import { Callers1764547200000 } from './migrations/1764547200000-callers.js';
import { Photographs1764633600000 } from './migrations/1764633600000-photographs.js';
import { Events1764676800000 } from './migrations/1764676800000-events.js';
import { ConfinedOperations1764720000000 } from './migrations/1764720000000-confined-operations.js';
import { EditionTimes1764806400000 } from './migrations/1764806400000-edition-times.js';
import { Stock1764892800000 } from './migrations/1764892800000-stock.js';
import { MadeElsewhere1764979200000 } from './migrations/1764979200000-made-elsewhere.js';
import { ErasedParties1765065600000 } from './migrations/1765065600000-erased-parties.js';
import { Letterhead1764201600000 } from './migrations/1764201600000-letterhead.js';

/** Oldest first. */
export const migrations = [
  Foundation1764028800000,
  Operations1764115200000,
  Letterhead1764201600000,
  HouseKeeping1764288000000,
  AnyAnswer1764460800000,
  Callers1764547200000,
  Photographs1764633600000,
  Events1764676800000,
  ConfinedOperations1764720000000,
  EditionTimes1764806400000,
  Stock1764892800000,
  MadeElsewhere1764979200000,
  ErasedParties1765065600000,
];
