import type { Edition, PriceListInput } from 'kingplank-sdk';
import { html, nothing, type TemplateResult } from 'lit';
import type { Desk } from '../desk.js';

export interface EditionPlace {
  readonly edition: Edition;
  readonly lists: readonly PriceListInput[];
  /** The address that is open. */
  readonly hash: string;
}

/** What every page of an edition begins with: its name, its state, and the ways to its other pages. */
export const editionHead = ({ words }: Desk, { edition, lists, hash }: EditionPlace): TemplateResult => {
  const at = `#/catalogue/${edition.code}`;
  const link = (to: string, word: string): TemplateResult =>
    html`<a class="button" href=${to} aria-current=${to === hash ? 'page' : nothing}>${word}</a>`;
  return html`<h1>${words.edition} <span dir="ltr">${edition.code}</span></h1>
    <p class="soft">
      ${[isDraft(edition) ? words.draft : words.readOnly, edition.note].filter((text) => text !== '').join(' · ')}
    </p>
    <nav class="row" aria-label=${words.edition}>
      ${lists.map(({ code, name }) => link(`${at}/lists/${code}`, name))} ${link(`${at}/rates`, words.rates)}
      ${link(`${at}/materials`, words.materials)} ${link(`${at}/sources`, words.sources)}
      ${link(`${at}/comparison`, words.comparison)}
    </nav>`;
};

export const isScheduled = ({ state }: Edition): boolean => state === 'scheduled';

export const isDraft = ({ state }: Edition): boolean => state === 'draft';
