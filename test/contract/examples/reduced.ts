import { isRecord } from '../../../apps/api/src/edge/record.js';

/** So many of a list stand in an example: one of a list of things, some of a list of numbers, points or words. */
const [THINGS, PLAIN] = [1, 3];

/** A derivation is shown down to here; below, the inputs of a figure are left out. */
const DEEPEST_FIGURE = 1;

/**
 * An answer cut down to what shows its shape: of each list the first entries, of all trees of figures the first with its
 * inputs. How a figure is derived is seen from one.
 */
export const reduced = (value: unknown): unknown => new Cut().value(value);

/** Deliveries as they stand before the first attempt: whether one was made by now depends on what else the machine does. */
export function untried(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(untried);
  if (!isRecord(value)) return value;
  const parts = Object.entries(value);
  if (!('attempts' in value)) return Object.fromEntries(parts.map(([key, part]) => [key, untried(part)]));
  const delivery = parts.filter(([key]) => !ofAnAttempt.has(key));
  const nextAttemptAt = value.nextAttemptAt ?? value.triedAt;
  return { ...Object.fromEntries(delivery), status: 'waiting', attempts: 0, nextAttemptAt };
}

const ofAnAttempt = new Set(['triedAt', 'lastStatus', 'lastFailure']);

class Cut {
  private isDerivationShown = false;

  value(value: unknown, figures = 0): unknown {
    if (Array.isArray(value)) {
      const isPlain = value.every((item) => !isRecord(item));
      return value.slice(0, isPlain ? PLAIN : THINGS).map((item) => this.value(item, figures));
    }
    if (!isRecord(value)) return value;
    return Object.fromEntries(
      Object.entries(value).map(([key, part]) => [
        key,
        key === 'inputs' && isRecord(part) ? this.inputs(part, figures + 1) : this.value(part, figures),
      ]),
    );
  }

  private inputs(inputs: Readonly<Record<string, unknown>>, figures: number): unknown {
    if (figures > DEEPEST_FIGURE || this.isDerivationShown) return {};
    const shown = Object.entries(inputs).map(([symbol, figure]) => [symbol, this.value(figure, figures)]);
    this.isDerivationShown = true;
    return Object.fromEntries(shown);
  }
}

const DAY_MS = 86_400_000;

/**
 * Takes out of recorded texts what is another at each run: ids, instants of the run, secrets, cursors. What stands for
 * them is the same wherever the same thing stood, so that an example still hangs together.
 */
export class Steady {
  private readonly ids = new Map<string, string>();

  constructor(private readonly now: number) {}

  value(value: unknown): unknown {
    if (typeof value === 'string') return this.text(value);
    if (Array.isArray(value)) return value.map((item) => this.value(item));
    if (!isRecord(value)) return value;
    return Object.fromEntries(
      Object.entries(value).map(([key, part]) => [
        this.text(key),
        key === 'nextCursor' ? CURSOR : this.value(part),
      ]),
    );
  }

  private text(text: string): string {
    return text
      .replace(/\b[0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12}\b/g, (id) => this.id(id))
      .replace(/\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(?:\.\d+)?Z/g, (instant) => this.instant(instant))
      .replace(
        /\b(kp_(?:[a-z]+_)?)[\w-]{6,}/g,
        (key, kind: string) => kind + steadyText(key.length - kind.length),
      )
      .replace(/\bwhsec_[\w+/=]+/g, `whsec_${Buffer.alloc(24, 'example').toString('base64')}`);
  }

  private id(id: string): string {
    const known = this.ids.get(id);
    if (known !== undefined) return known;
    const steady = `01900000-0000-7000-8000-${String(this.ids.size + 1).padStart(12, '0')}`;
    this.ids.set(id, steady);
    return steady;
  }

  /** Days of a plan are part of the answer; moments near that of the run are not. */
  private instant(instant: string): string {
    const days = Math.round((Date.parse(instant) - this.now) / DAY_MS);
    return Math.abs(days) > 2 ? instant : `2027-03-0${3 + days}T08:00:00.000Z`;
  }
}

const CURSOR = '100';

const steadyText = (length: number): string => 'example'.repeat(20).slice(0, length);

/** What a value is made of: figures and words follow the engine and the catalogue, and are not held to a recording. */
export function shapeOf(value: unknown): unknown {
  if (Array.isArray(value)) return value.slice(0, 1).map(shapeOf);
  if (!isRecord(value)) return value === null ? 'null' : typeof value;
  return Object.fromEntries(Object.entries(value).map(([key, part]) => [key, shapeOf(part)]));
}
