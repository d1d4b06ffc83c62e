import type { Transaction } from '../persistence/database.js';
import { EventsRepository } from './events.repository.js';

const EVENTS_KEPT_DAYS = 30;

/** Events are told again for a month; their deliveries go with them. */
export const forgetOldEvents = (tx: Transaction): Promise<void> =>
  EventsRepository.in(tx).sweep(EVENTS_KEPT_DAYS);
