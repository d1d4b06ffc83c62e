import { languageOf, valueOf, wordFor } from 'kingplank-deck/page';
import type { EstimateListed } from 'kingplank-sdk';
import { html, nothing, type TemplateResult } from 'lit';
import { day, money, number, trying, type Desk, type Page } from '../desk.js';

const PAGE = 50;

/** The estimates of the organisation, newest first, to search, to compare and to order for together. */
export function estimatesPage(desk: Desk): Page {
  return new EstimateList(desk);
}

class EstimateList implements Page {
  readonly #desk: Desk;
  readonly #pages: AsyncIterator<EstimateListed>;
  #items: readonly EstimateListed[] = [];
  #chosen: readonly string[] = [];
  #sought = '';
  #isAtEnd = false;
  #isLoaded = false;

  constructor(desk: Desk) {
    this.#desk = desk;
    this.#pages = desk.client.estimates.list({ limit: PAGE })[Symbol.asyncIterator]();
    void this.#more();
  }

  view(): TemplateResult {
    const { words } = this.#desk;
    const shown = this.#items.filter((item) => this.#isSought(item));
    return html`
      <h1>${words.estimates}</h1>
      <form class="row" role="search" @submit=${this.#askForReference}>
        <label class="grow"
          ><span>${words.search}</span
          ><input type="search" @input=${(event: Event) => this.#seek(valueOf(event))}
        /></label>
        ${
          shown.length === 0 && this.#sought !== ''
            ? html`<button class="main" type="submit">${words.askReference}</button>`
            : nothing
        }
        ${this.#actions()}
      </form>
      ${
        this.#isLoaded && this.#items.length === 0
          ? html`<p>${words.noneYet} <a href="#/new">${words.newSheet}</a></p>`
          : this.#table(shown)
      }
      ${
        this.#isAtEnd || !this.#isLoaded
          ? nothing
          : html`<button type="button" @click=${() => void this.#more()}>${words.more}</button>`
      }
    `;
  }

  #actions(): TemplateResult {
    const { words, go } = this.#desk;
    const [first, second] = this.#chosen;
    return html`<button
        type="button"
        ?disabled=${this.#chosen.length !== 2}
        @click=${() => go(`#/compare/${first}/${second}`)}
      >
        ${words.compare}
      </button>
      <button
        type="button"
        ?disabled=${this.#chosen.length === 0}
        @click=${() => go(`#/order/${this.#chosen.join(',')}`)}
      >
        ${words.order}
      </button>`;
  }

  #table(items: readonly EstimateListed[]): TemplateResult {
    const { words } = this.#desk;
    return html`<div class="scroll" tabindex="0" role="region" aria-label=${words.estimates}>
      <table class="listed">
        <thead>
          <tr>
            <th scope="col">${words.choose}</th>
            <th scope="col">${words.title}</th>
            <th scope="col" class="less">${words.reference}</th>
            <th scope="col" class="number">${words.total}</th>
            <th scope="col" class="number less">${words.range}</th>
            <th scope="col" class="number less">${words.hours}</th>
            <th scope="col" class="less">${words.verdict}</th>
            <th scope="col" class="less">${words.made}</th>
          </tr>
        </thead>
        <tbody>
          ${items.map((item) => this.#row(item))}
        </tbody>
      </table>
    </div>`;
  }

  #row(item: EstimateListed): TemplateResult {
    const desk = this.#desk;
    const title = item.title === '' ? desk.words.untitled : item.title;
    return html`<tr>
      <td>
        <input
          type="checkbox"
          aria-label=${`${desk.words.choose}: ${title}`}
          .checked=${this.#chosen.includes(item.id)}
          @change=${() => this.#choose(item.id)}
        />
      </td>
      <td>
        <a href=${`#/estimates/${item.id}`}>${title}</a>
        ${item.revision.number > 0 ? html`<span class="soft">${desk.words.revision} ${item.revision.number}</span>` : nothing}
      </td>
      <td class="less">${item.reference ?? ''}</td>
      <td class="number">${money(item.total, desk)}</td>
      <td class="number less">${money(item.totalP10, desk)} – ${money(item.totalP90, desk)}</td>
      <td class="number less">${number(item.labourH, desk, 1)}</td>
      <td class="less">${wordFor(languageOf(desk.language), item.verdict)}</td>
      <td class="less">${day(item.createdAt, desk)}</td>
    </tr>`;
  }

  #seek(text: string): void {
    this.#sought = text;
    this.#desk.redraw();
  }

  /** What was not read yet is asked for by its whole reference. */
  readonly #askForReference = (event: Event): void => {
    event.preventDefault();
    const reference = this.#sought.trim();
    if (reference === '') return;
    void trying(this.#desk, async () => {
      const found = await this.#desk.client.estimates.list({ reference }).toArray({ limit: PAGE });
      const known = new Set(this.#items.map(({ id }) => id));
      this.#items = [...this.#items, ...found.filter(({ id }) => !known.has(id))];
      if (found.length === 0) this.#desk.fault(this.#desk.words.noReference);
    });
  };

  #isSought({ title, reference = '' }: EstimateListed): boolean {
    return `${title} ${reference}`.toLowerCase().includes(this.#sought.trim().toLowerCase());
  }

  #choose(id: string): void {
    this.#chosen = this.#chosen.includes(id)
      ? this.#chosen.filter((one) => one !== id)
      : [...this.#chosen, id];
    this.#desk.redraw();
  }

  async #more(): Promise<void> {
    await trying(this.#desk, async () => {
      for (let count = 0; count < PAGE; count += 1) {
        const { value, done } = await this.#pages.next();
        if (done === true) {
          this.#isAtEnd = true;
          break;
        }
        this.#items = [...this.#items, value];
      }
    });
    this.#isLoaded = true;
    this.#desk.redraw();
  }
}
