import { KingplankError, ProblemError, StaleVersionError, type Kingplank } from 'kingplank-sdk';
import { isFiled, numberFor, type Photograph } from '../model/photograph.js';
import type { Album } from './album.js';
import { mayWait } from './waiting.js';

/** An estimate, and a client that may write to it. */
export interface Opened {
  readonly client: Kingplank;
  readonly id: string;
}

const PATIENCE_MS = 120_000;

/**
 * Sends photographs to an estimate, each under the first number that is free there, and takes from the album what the
 * service has. One that it refuses stays in the album with the reason. False when the rest has to wait.
 */
export async function sendPhotographs(
  keys: readonly string[],
  album: Album,
  opened: Opened,
): Promise<boolean> {
  if (keys.length === 0) return true;
  const waiting = (await album.all()).filter(({ key }) => keys.includes(key));
  try {
    for (const photograph of waiting) await sendOne(photograph, album, opened);
    return true;
  } catch (error) {
    if (error instanceof KingplankError) return false;
    throw error;
  }
}

async function sendOne(photograph: Photograph, album: Album, opened: Opened): Promise<void> {
  try {
    await file(photograph, album, opened);
    await album.remove(photograph.key);
  } catch (error) {
    // Somebody took the number meanwhile: the next try reads the numbers again.
    if (mayWait(error) || error instanceof StaleVersionError || !(error instanceof ProblemError)) throw error;
    await album.put({ ...photograph, refused: error.message });
  }
}

async function file(photograph: Photograph, album: Album, { client, id }: Opened): Promise<void> {
  const { items } = await client.estimates.photographs(id);
  if (isFiled(photograph, items)) return;
  const { key, caption, picture, spot } = photograph;
  const number = numberFor(photograph, items);
  await album.put({ ...photograph, number });
  await client.estimates.setPhotograph(id, number, new Uint8Array(await picture.arrayBuffer()), {
    caption,
    ...(spot === undefined ? {} : { at: spot.at.join(',') }),
    ...(spot?.directionDeg === undefined ? {} : { directionDeg: String(spot.directionDeg) }),
    isNewOnly: true,
    idempotencyKey: `${key}-${number}`,
    timeoutMs: PATIENCE_MS,
  });
}
