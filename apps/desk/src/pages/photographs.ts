import { filled, formTexts, freshKey } from 'kingplank-deck/page';
import type { DeckPhotograph } from 'kingplank-sdk';
import { html, type TemplateResult } from 'lit';
import { trying, tryingIfSure, type Desk, type Page } from '../desk.js';

interface Shown extends DeckPhotograph {
  /** Of the picture in memory. */
  readonly url: string;
}

/** Photographs of the deck beside an estimate: numbered as on the plan, with a caption, a place and a direction. */
export function photographsOf(desk: Desk, id: string): Page {
  const { client, words } = desk;
  let all: readonly Shown[] = [];
  const read = async (): Promise<void> => {
    const { items } = await client.estimates.photographs(id);
    for (const { url } of all) URL.revokeObjectURL(url);
    all = await Promise.all(
      items.map(async (one) => {
        const { blob } = await client.estimates.photograph(id, one.number);
        return { ...one, url: URL.createObjectURL(blob) };
      }),
    );
  };
  const add = (
    form: HTMLFormElement,
    texts: Readonly<Record<string, string>>,
    picture: File,
  ): Promise<void> =>
    trying(desk, async () => {
      desk.say(words.sendingPicture);
      const number = Math.max(0, ...all.map((one) => one.number)) + 1;
      const bytes = new Uint8Array(await picture.arrayBuffer());
      const type = picture.type === 'image/png' ? 'image/png' : 'image/jpeg';
      await client.estimates.setPhotograph(id, number, bytes, {
        ...saidOf(texts),
        type,
        timeoutMs: 120_000,
        idempotencyKey: freshKey(),
      });
      form.reset();
      await read();
      desk.say(words.saved);
    });
  const remove = (number: number): Promise<void> =>
    tryingIfSure(desk, filled(words.removePicture, { n: number }), async () => {
      await client.estimates.removePhotograph(id, number);
      await read();
    });
  void trying(desk, read);
  return {
    view: () =>
      html`<h2>${words.photographs}</h2>
        <ul class="photographs">
          ${all.map((one) => photograph(desk, one, () => void remove(one.number)))}
        </ul>
        ${addForm(desk, add)}`,
  };
}

const photograph = (
  { words }: Desk,
  { number, caption, url, at, directionDeg }: Shown,
  remove: () => void,
): TemplateResult =>
  html`<li>
    <figure>
      <img src=${url} alt=${caption} />
      <figcaption>
        <strong>${number}</strong> ${caption}
        <span class="soft" dir="ltr"
          >${at === undefined ? '' : at.join(', ')}${directionDeg === undefined ? '' : ` · ${directionDeg}°`}</span
        >
      </figcaption>
    </figure>
    <button type="button" @click=${remove}>${filled(words.removePicture, { n: number })}</button>
  </li>`;

type Adding = (
  form: HTMLFormElement,
  texts: Readonly<Record<string, string>>,
  picture: File,
) => Promise<void>;

const addForm = ({ words }: Desk, add: Adding): TemplateResult => {
  const send = (event: Event): void => {
    const texts = formTexts(event);
    const { currentTarget: form } = event;
    const picture = form instanceof HTMLFormElement ? new FormData(form).get('picture') : null;
    if (form instanceof HTMLFormElement && picture instanceof File) void add(form, texts, picture);
  };
  const length = (name: string, word: string): TemplateResult =>
    html`<label><span>${word}</span><input name=${name} type="number" step="1" dir="ltr" /></label>`;
  return html`<form class="row" @submit=${send}>
    <label
      ><span>${words.picture}</span
      ><input name="picture" type="file" accept="image/jpeg,image/png" capture="environment" required
    /></label>
    <label class="grow"><span>${words.caption}</span><input name="caption" maxlength="300" required /></label>
    ${length('x', words.placeX)} ${length('y', words.placeY)}
    <label
      ><span>${words.direction}</span
      ><input name="direction" type="number" min="0" max="359" step="1" dir="ltr"
    /></label>
    <button type="submit">${words.addPicture}</button>
  </form>`;
};

/** A place is said whole, and a direction only of a place. */
function saidOf({ caption = '', x = '', y = '', direction = '' }: Readonly<Record<string, string>>): {
  readonly caption: string;
  readonly at?: string;
  readonly directionDeg?: string;
} {
  return {
    caption,
    ...(x === '' && y === '' ? {} : { at: `${x},${y}` }),
    ...(direction === '' ? {} : { directionDeg: direction }),
  };
}
