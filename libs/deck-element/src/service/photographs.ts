import type { Photograph } from '../model/photograph.js';
import { freshKey } from '../model/outbox.js';
import type { KeptPhotograph, TakenPhotograph } from '../view/sheet.js';
import type { Album } from './album.js';
import { pictureOf } from './picture.js';

/** The photographs on this device as the sheet shows them. */
export class Photographs {
  readonly #show: (kept: readonly KeptPhotograph[]) => void;
  #kept: readonly KeptPhotograph[] = [];

  constructor(show: (kept: readonly KeptPhotograph[]) => void) {
    this.#show = show;
  }

  /** What the album holds now; what was shown and is sent or gone is let go of. */
  async read(album: Album): Promise<void> {
    const all = await album.all();
    for (const { url } of this.#kept) URL.revokeObjectURL(url);
    this.#kept = all.map(shown);
    this.#show(this.#kept);
  }

  /** The key under which the album keeps it; undefined for a file that is no picture to this browser. */
  async add(album: Album, { file, caption, spot }: TakenPhotograph): Promise<string | undefined> {
    const picture = await pictureOf(file);
    if (picture === undefined) return undefined;
    const key = freshKey();
    await album.put({
      key,
      takenAtMs: Date.now(),
      caption,
      picture,
      ...(spot === undefined ? {} : { spot }),
    });
    await this.read(album);
    return key;
  }

  async remove(album: Album, key: string): Promise<void> {
    await album.remove(key);
    await this.read(album);
  }
}

const shown = ({ key, caption, spot, picture, refused }: Photograph): KeptPhotograph => ({
  key,
  caption,
  spot,
  refused,
  url: URL.createObjectURL(picture),
});
