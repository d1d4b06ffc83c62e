import { KingplankDeck } from 'kingplank-deck';
import { keep } from 'kingplank-deck/page';
import type { Revisions, StoredEstimate } from 'kingplank-sdk';
import { html, nothing, type TemplateResult } from 'lit';
import { photographsOf } from './photographs.js';
import { day, money, trying, type Desk, type Page } from '../desk.js';

/** An empty sheet, or the one that was begun on this device. */
export function newSheetPage(desk: Desk): Page {
  const deck = deckOf(desk, 'new');
  return {
    view: () =>
      html`<h1>${desk.words.newSheet}</h1>
        ${deck}`,
  };
}

/** A stored estimate with its record on the board, its papers and its revisions. */
export function storedSheetPage(desk: Desk, id: string): Page {
  const deck = deckOf(desk, `of-${id}`);
  const photographs = photographsOf(desk, id);
  deck.tab = 'result';
  let stored: StoredEstimate | undefined;
  let revisions: Revisions['items'] = [];
  void trying(desk, async () => {
    const [found, record, all] = await Promise.all([
      desk.client.estimates.get(id),
      desk.client.estimates.record(id),
      desk.client.estimates.revisions(id),
    ]);
    stored = found;
    revisions = all.items;
    deck.record = record;
    deck.stored = found;
  });
  return {
    view: () => html`
      <h1>${stored?.estimate.title ?? desk.words.working}</h1>
      <div class="row">
        <a class="button" href=${`#/estimates/${id}/revise`}>${desk.words.revise}</a>
        <a class="button" href=${`#/order/${id}`}>${desk.words.basket}</a>
      </div>
      ${deck} ${photographs.view()} ${revisionsTable(desk, id, revisions)}
    `,
  };
}

/** The record of an estimate on the board, to be made again after something became known. */
export function reviseSheetPage(desk: Desk, id: string): Page {
  const deck = deckOf(desk, `revision-of-${id}`);
  deck.revises = id;
  void trying(desk, async () => {
    deck.record = await desk.client.estimates.record(id);
  });
  return {
    view: () =>
      html`<h1>${desk.words.revise}</h1>
        ${deck}`,
  };
}

function deckOf({ apiKey, language, units, go }: Desk, keep: string): KingplankDeck {
  const deck = new KingplankDeck();
  Object.assign(deck, {
    service: location.origin,
    apiKey,
    allowSecretKey: true,
    tongue: language,
    units,
    keep,
    linkTo: '#/estimates/{id}',
  });
  deck.addEventListener('estimate', (event) => {
    const made: { readonly id: string } | undefined = event instanceof CustomEvent ? event.detail : undefined;
    if (made !== undefined) go(`#/estimates/${made.id}`);
  });
  return deck;
}

function revisionsTable(
  desk: Desk,
  id: string,
  revisions: Revisions['items'],
): TemplateResult | typeof nothing {
  const { words } = desk;
  if (revisions.length === 0) return nothing;
  return html`<h2>${words.revisions}</h2>
    <div class="scroll" tabindex="0" role="region" aria-label=${words.revisions}>
      <table>
        <thead>
          <tr>
            <th scope="col">${words.revision}</th>
            <th scope="col">${words.reason}</th>
            <th scope="col">${words.made}</th>
            <th scope="col" class="number">${words.total}</th>
            <th scope="col">${words.changed}</th>
          </tr>
        </thead>
        <tbody>
          ${revisions.map((revision, at) => revisionRow(desk, id, revision, revisions[at - 1]))}
        </tbody>
      </table>
    </div>`;
}

type Revision = Revisions['items'][number];

function revisionRow(
  desk: Desk,
  id: string,
  revision: Revision,
  before: Revision | undefined,
): TemplateResult {
  const { words } = desk;
  const number = revision.revision.number;
  return html`<tr>
    <td>${revision.id === id ? number : html`<a href=${`#/estimates/${revision.id}`}>${number}</a>`}</td>
    <td>${revision.revision.reason ?? ''}</td>
    <td>${day(revision.createdAt, desk)}</td>
    <td class="number">${money(revision.total, desk)}</td>
    <td>
      ${
        before === undefined
          ? nothing
          : html`<a href=${`#/compare/${revision.id}/${before.id}`}>${words.changed}</a>
              <button type="button" @click=${() => void keepChangeOrder(desk, revision.id)}>
                ${words.changeOrder}
              </button>`
      }
    </td>
  </tr>`;
}

const keepChangeOrder = (desk: Desk, id: string): Promise<void> =>
  trying(desk, async () => {
    keep(await desk.client.estimates.changeOrderPdf(id));
  });
