import { filled, formTexts, freshKey, keep, valueOf } from 'kingplank-deck/page';
import { type Edition, type Kingplank, type PriceListInput, type ProblemEntry } from 'kingplank-sdk';
import { html, nothing, type TemplateResult } from 'lit';
import { textFile, trying, type Desk, type Page } from '../desk.js';
import { table } from '../table.js';
import { editionHead, isDraft } from './edition-head.js';
import { refusals } from './fault-table.js';

/** One line of a shelf: what is looked for by. */
interface Entry {
  readonly code: string;
  readonly name: string;
  readonly kind: string;
}

interface Shelved {
  readonly name: 'materials' | 'sources';
  readonly entries: (client: Kingplank, edition: string) => Promise<readonly Entry[]>;
}

const shelves: Readonly<Record<Shelved['name'], Shelved>> = {
  materials: {
    name: 'materials',
    entries: async (client, edition) =>
      (await client.materials.list({ edition })).items.map(({ code, name, kind }) => ({ code, name, kind })),
  },
  sources: {
    name: 'sources',
    entries: async (client, edition) =>
      (await client.sources.list({ edition })).items.map(({ key, title, body }) => ({
        code: key,
        name: title,
        kind: body,
      })),
  },
};

export const materialsPage = (desk: Desk, code: string): Page => new ShelfPage(desk, code, shelves.materials);
export const sourcesPage = (desk: Desk, code: string): Page => new ShelfPage(desk, code, shelves.sources);

const MOST_SHOWN = 60;

/** Materials or sources of an edition: looked through, had as a sheet, and in a draft taken in from one. */
class ShelfPage implements Page {
  readonly #desk: Desk;
  readonly #code: string;
  readonly #shelf: Shelved;
  #edition: Edition | undefined;
  #lists: readonly PriceListInput[] = [];
  #entries: readonly Entry[] = [];
  #sought = '';
  #refused: readonly ProblemEntry[] = [];

  constructor(desk: Desk, code: string, shelf: Shelved) {
    this.#desk = desk;
    this.#code = code;
    this.#shelf = shelf;
    void trying(desk, () => this.#read());
  }

  async #read(): Promise<void> {
    const { client } = this.#desk;
    const [{ value }, { items }, entries] = await Promise.all([
      client.editions.get(this.#code),
      client.priceLists.list({ edition: this.#code }),
      this.#shelf.entries(client, this.#code),
    ]);
    [this.#edition, this.#lists, this.#entries] = [value, items, entries];
  }

  view(): TemplateResult {
    const { words } = this.#desk;
    if (this.#edition === undefined) return html`<p>${words.working}</p>`;
    const found = this.#entries.filter((entry) => isSought(entry, this.#sought));
    const head = {
      edition: this.#edition,
      lists: this.#lists,
      hash: `#/catalogue/${this.#code}/${this.#shelf.name}`,
    };
    return html`${editionHead(this.#desk, head)}
      <h2>${words[this.#shelf.name]}</h2>
      ${this.#tools(found.length)} ${this.#table(found)}
      ${isDraft(this.#edition) ? this.#sheetForm() : nothing}`;
  }

  #tools(count: number): TemplateResult {
    const { words } = this.#desk;
    return html`<div class="row">
      <label class="grow"
        ><span>${words.findEntry}</span
        ><input type="search" .value=${this.#sought} @input=${(event: Event) => this.#seek(valueOf(event))}
      /></label>
      <p class="soft" role="status">${filled(words.entriesOf, { n: count, all: this.#entries.length })}</p>
      <button type="button" @click=${() => void this.#keepCsv()}>${words.asCsvList}</button>
    </div>`;
  }

  #table(found: readonly Entry[]): TemplateResult {
    const { words } = this.#desk;
    return table(
      words[this.#shelf.name],
      [{ head: words.entry }, { head: words.name }, { head: words.kind, isLess: true }],
      found.slice(0, MOST_SHOWN).map(
        ({ code, name, kind }) =>
          html`<tr lang="en">
            <td dir="ltr">${code}</td>
            <td>${name}</td>
            <td class="less">${kind}</td>
          </tr>`,
      ),
    );
  }

  #sheetForm(): TemplateResult {
    const { words } = this.#desk;
    return html`<h2>${words.import}</h2>
      <p class="soft" id="shelf-help">${words.shelfHelp}</p>
      <form @submit=${(event: Event) => void this.#take(formTexts(event).cells ?? '')}>
        <label
          ><span>${words.cells}</span
          ><textarea
            name="cells"
            rows="6"
            dir="ltr"
            spellcheck="false"
            aria-describedby="shelf-help"
          ></textarea>
        </label>
        <div class="row">
          <label
            ><span>${words.file}</span><input type="file" accept=".csv,text/csv" @change=${this.#fileChosen}
          /></label>
          <button class="main" type="submit">${words.take}</button>
        </div>
      </form>
      ${refusals(this.#desk, this.#refused)}`;
  }

  readonly #fileChosen = ({ target }: Event): void => {
    const file = target instanceof HTMLInputElement ? target.files?.[0] : undefined;
    if (file !== undefined) void file.text().then((text) => this.#take(text));
  };

  /** All of the sheet or none of it, with every fault at its row and column. */
  #take(csv: string): Promise<void> {
    return trying(
      this.#desk,
      async () => {
        const { client, words, say } = this.#desk;
        this.#refused = [];
        const { imported } = await client[this.#shelf.name].importCsv(
          csv,
          { edition: this.#code },
          { idempotencyKey: freshKey() },
        );
        await this.#read();
        say(filled(words.tookIn, { n: imported }));
      },
      (faults) => {
        this.#refused = faults;
      },
    );
  }

  #keepCsv(): Promise<void> {
    return trying(this.#desk, async () => {
      const csv = await this.#desk.client[this.#shelf.name].listCsv({ edition: this.#code });
      keep(textFile(csv, 'text/csv', `${this.#shelf.name}-${this.#code}.csv`));
    });
  }

  #seek(text: string): void {
    this.#sought = text.trim().toLowerCase();
    this.#desk.redraw();
  }
}

const isSought = ({ code, name, kind }: Entry, sought: string): boolean => {
  const text = `${code} ${name} ${kind}`.toLowerCase();
  return sought.split(/\s+/).every((word) => text.includes(word));
};
