import type { DefectRecord } from 'kingplank-sdk';

/** A record that is to be sent; its key stays the same however often it is tried. */
export interface Waiting {
  readonly key: string;
  readonly record: DefectRecord;
  /** The estimate it revises, with the reason; absent for a new estimate. */
  readonly revises?: { readonly id: string; readonly reason: string };
  /** The photographs that go to the estimate once it is made, by their keys in the album. */
  readonly photographs?: readonly string[];
  /** The estimate was made and shown; what waits are its photographs. */
  readonly isMade?: true;
}

/** The part of a browser's storage that is used. */
export interface Shelf {
  readonly getItem: (name: string) => string | null;
  readonly setItem: (name: string, text: string) => void;
  readonly removeItem: (name: string) => void;
}

/**
 * What was entered and what waits to be sent, kept on the device under one name. A text that cannot be read is put
 * aside under `<name>.unreadable` and not thrown away.
 */
export class Outbox {
  readonly #shelf: Shelf;
  readonly #name: string;

  constructor(shelf: Shelf, name: string) {
    this.#shelf = shelf;
    this.#name = `kingplank-deck:${name}`;
  }

  draft(): DefectRecord | undefined {
    const found = this.#read(`${this.#name}:draft`);
    return isRecord(found) ? found : undefined;
  }

  keepDraft(record: DefectRecord): void {
    this.#shelf.setItem(`${this.#name}:draft`, JSON.stringify(record));
  }

  forgetDraft(): void {
    this.#shelf.removeItem(`${this.#name}:draft`);
  }

  waiting(): readonly Waiting[] {
    const found = this.#read(`${this.#name}:waiting`);
    return Array.isArray(found) ? found.filter(isWaiting) : [];
  }

  put(waiting: Waiting): void {
    this.#keep([...this.waiting().filter(({ key }) => key !== waiting.key), waiting]);
  }

  take(key: string): void {
    this.#keep(this.waiting().filter((one) => one.key !== key));
  }

  /** What went with it is off its list; what was added meanwhile keeps it here. */
  sent({ key, photographs = [] }: Waiting): void {
    const now = this.waiting().find((one) => one.key === key);
    const left = (now?.photographs ?? []).filter((one) => !photographs.includes(one));
    if (now === undefined || left.length === 0) this.take(key);
    else this.put({ ...now, isMade: true, photographs: left });
  }

  /** Its estimate is made, and its photographs go on waiting. */
  made(waiting: Waiting): void {
    const now = this.waiting().find(({ key }) => key === waiting.key);
    this.put({ ...(now ?? waiting), isMade: true });
  }

  #keep(waiting: readonly Waiting[]): void {
    if (waiting.length === 0) this.#shelf.removeItem(`${this.#name}:waiting`);
    else this.#shelf.setItem(`${this.#name}:waiting`, JSON.stringify(waiting));
  }

  #read(name: string): unknown {
    const text = this.#shelf.getItem(name);
    if (text === null) return undefined;
    try {
      return JSON.parse(text);
    } catch {
      this.#shelf.setItem(`${name}.unreadable`, text);
      this.#shelf.removeItem(name);
      return undefined;
    }
  }
}

const isObject = (value: unknown): value is object => typeof value === 'object' && value !== null;

const isRecord = (value: unknown): value is DefectRecord =>
  isObject(value) &&
  ['panel', 'outerSkin', 'innerSkin', 'core'].every((part) => isObject(Reflect.get(value, part)));

const isWaiting = (value: unknown): value is Waiting =>
  isObject(value) && typeof Reflect.get(value, 'key') === 'string' && isRecord(Reflect.get(value, 'record'));

/** A key that nobody else has, also on pages that are served without TLS in a yard. */
export function freshKey(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
}
