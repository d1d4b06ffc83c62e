import { filled, formTexts, freshKey } from 'kingplank-deck/page';
import type { Edition, EditionList } from 'kingplank-sdk';
import { html, nothing, type TemplateResult } from 'lit';
import { day, trying, tryingIfSure, type Desk, type Page } from '../desk.js';
import { table } from '../table.js';

/** The editions of the catalogue: which is current, which are worked on, and which can be had back. */
export function editionsPage(desk: Desk): Page {
  let list: EditionList | undefined;
  const read = async (): Promise<void> => {
    list = await desk.client.editions.list();
  };
  void trying(desk, read);
  return {
    view: () =>
      html`<h1>${desk.words.catalogue}</h1>
        ${list === undefined ? html`<p>${desk.words.working}</p>` : editionsView(desk, list, read)}`,
  };
}

type Reading = () => Promise<void>;

const editionsView = (desk: Desk, list: EditionList, read: Reading): TemplateResult => {
  const { words } = desk;
  return html`${table(
    words.editions,
    [
      { head: words.edition },
      { head: words.state },
      { head: words.note, isLess: true },
      { head: words.published, isLess: true },
      { head: words.difference },
      { head: words.actions },
    ],
    list.items.map((edition) => editionRow(desk, edition, list, read)),
  )}
  ${draftForm(desk, list)}`;
};

const editionRow = (desk: Desk, edition: Edition, list: EditionList, read: Reading): TemplateResult => {
  const { words } = desk;
  const { code, note, publishedAt } = edition;
  return html`<tr>
    <td><a href=${`#/catalogue/${code}`}>${code}</a></td>
    <td>${stateOf(desk, edition, list)}</td>
    <td class="less">${note}</td>
    <td class="less">${publishedAt === undefined ? '' : day(publishedAt, desk)}</td>
    <td>
      ${
        code === list.current
          ? nothing
          : html`<a href=${`#/catalogue/${code}/comparison`} aria-label=${`${words.difference}: ${code}`}
              >${words.difference}</a
            >`
      }
    </td>
    <td>${editionAct(desk, edition, list, read)}</td>
  </tr>`;
};

const stateOf = (desk: Desk, edition: Edition, { current }: EditionList): string => {
  const { words } = desk;
  const { code, isShipped } = edition;
  return [
    publicationOf(desk, edition),
    ...(isShipped ? [words.shipped] : []),
    ...(code === current ? [words.current] : []),
  ].join(', ');
};

function publicationOf(desk: Desk, { state, effectiveAt = '' }: Edition): string {
  if (state === 'draft') return desk.words.draft;
  return state === 'scheduled'
    ? filled(desk.words.scheduledFor, { at: day(effectiveAt, desk) })
    : desk.words.publishedState;
}

function editionAct(
  desk: Desk,
  { code, state }: Edition,
  { current }: EditionList,
  read: Reading,
): TemplateResult | typeof nothing {
  const { words, client } = desk;
  if (code === current) return nothing;
  const discard = (): Promise<void> =>
    tryingIfSure(desk, `${words.throwAway} (${code})`, async () => {
      const { etag } = await client.editions.get(code);
      await client.editions.discard(code, { ifMatch: etag });
      await read();
    });
  if (state === 'draft') return html`<button type="button" @click=${discard}>${words.throwAway}</button>`;
  return state === 'scheduled' ? nothing : restoreForm(desk, code, read);
}

/** What was published is copied under another name and becomes current at once. */
const restoreForm = (desk: Desk, code: string, read: Reading): TemplateResult => {
  const { words } = desk;
  const restore = (event: Event): Promise<void> => {
    const { name = '', note = '' } = formTexts(event);
    return trying(desk, async () => {
      await desk.client.editions.restore(
        code,
        { code: name, ...(note === '' ? {} : { note }) },
        { idempotencyKey: freshKey() },
      );
      await read();
    });
  };
  return html`<details>
    <summary>${words.restore}</summary>
    <form class="row" @submit=${restore}>
      <label
        ><span>${words.restoreAs}</span
        ><input name="name" required autocomplete="off" dir="ltr" .value=${`${code}-again`}
      /></label>
      <label><span>${words.why}</span><input name="note" autocomplete="off" /></label>
      <button type="submit">${words.restore}</button>
    </form>
  </details>`;
};

const draftForm = (desk: Desk, { items, current }: EditionList): TemplateResult => {
  const { words } = desk;
  const make = (event: Event): Promise<void> => {
    const { name = '', basedOn = current, note = '' } = formTexts(event);
    return trying(desk, async () => {
      await desk.client.editions.draft(
        { code: name, basedOn, ...(note === '' ? {} : { note }) },
        { idempotencyKey: freshKey() },
      );
      desk.go(`#/catalogue/${name}`);
    });
  };
  return html`<h2>${words.newDraft}</h2>
    <form class="row" @submit=${make}>
      <label
        ><span>${words.draftCode}</span
        ><input name="name" required autocomplete="off" dir="ltr" aria-describedby="draft-code-help"
      /></label>
      <label
        ><span>${words.basedOn}</span
        ><select name="basedOn" dir="ltr">
          ${items.map(({ code }) => html`<option ?selected=${code === current}>${code}</option>`)}
        </select></label
      >
      <label class="grow"><span>${words.note}</span><input name="note" autocomplete="off" /></label>
      <button class="main" type="submit">${words.makeDraft}</button>
    </form>
    <p class="soft" id="draft-code-help">${words.draftCodeHelp}</p>`;
};
