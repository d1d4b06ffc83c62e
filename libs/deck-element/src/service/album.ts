import type { Photograph } from '../model/photograph.js';

const STORE = 'photographs';

/** Photographs that this device keeps under one name; pictures are too large for the shelf of the drafts. */
export class Album {
  readonly #sheet: string;

  constructor(sheet: string) {
    this.#sheet = sheet;
  }

  /** In the order in which they were taken. */
  async all(): Promise<readonly Photograph[]> {
    const found: readonly unknown[] = await inStore('readonly', (store) => store.getAll());
    return found
      .filter(isKept)
      .filter(({ sheet }) => sheet === this.#sheet)
      .sort((a, b) => a.takenAtMs - b.takenAtMs);
  }

  async put(photograph: Photograph): Promise<void> {
    await inStore('readwrite', (store) => store.put({ ...photograph, sheet: this.#sheet }));
  }

  async remove(key: string): Promise<void> {
    await inStore('readwrite', (store) => store.delete(key));
  }
}

interface Kept extends Photograph {
  readonly sheet: string;
}

const isKept = (value: unknown): value is Kept =>
  typeof value === 'object' &&
  value !== null &&
  typeof Reflect.get(value, 'key') === 'string' &&
  typeof Reflect.get(value, 'takenAtMs') === 'number' &&
  Reflect.get(value, 'picture') instanceof Blob;

async function inStore<T>(
  mode: IDBTransactionMode,
  work: (store: IDBObjectStore) => IDBRequest<T>,
): Promise<T> {
  const database = await opened();
  try {
    return await answerOf(work(database.transaction(STORE, mode).objectStore(STORE)));
  } finally {
    database.close();
  }
}

function opened(): Promise<IDBDatabase> {
  const request = indexedDB.open('kingplank-deck', 1);
  request.onupgradeneeded = () => {
    request.result.createObjectStore(STORE, { keyPath: 'key' });
  };
  return answerOf(request);
}

const answerOf = <T>(request: IDBRequest<T>): Promise<T> =>
  new Promise((resolve, reject) => {
    request.onsuccess = () => {
      resolve(request.result);
    };
    request.onerror = () => {
      reject(request.error ?? new Error('The device keeps no photographs'));
    };
  });
