import { filled, formTexts, freshKey, keep, valueOf } from 'kingplank-deck/page';
import type { Edition, PackInput, PriceListInput } from 'kingplank-sdk';
import { html, nothing, type TemplateResult } from 'lit';
import { textFile, trying, type Desk, type Page } from '../desk.js';
import { table } from '../table.js';
import { editionHead, isDraft } from './edition-head.js';
import { PriceEdits } from './price-edits.js';

const SHOWN_AT_ONCE = 100;

/** A price list of an edition; the first one where none is named. */
export function priceListPage(desk: Desk, edition: string, list?: string): Page {
  return new PriceListPage(desk, edition, list);
}

class PriceListPage implements Page {
  readonly #desk: Desk;
  readonly #editionCode: string;
  readonly #listCode: string | undefined;
  #edition: Edition | undefined;
  #lists: readonly PriceListInput[] = [];
  #list: PriceListInput | undefined;
  #etag = '';
  #sought = '';
  #isAllShown = false;
  #edits = new PriceEdits();

  constructor(desk: Desk, edition: string, list: string | undefined) {
    this.#desk = desk;
    this.#editionCode = edition;
    this.#listCode = list;
    void trying(desk, () => this.#read());
  }

  view(): TemplateResult {
    const { words } = this.#desk;
    const [edition, list] = [this.#edition, this.#list];
    if (edition === undefined || list === undefined) return html`<p>${words.working}</p>`;
    const found = list.packs.filter((pack) => isSought(pack, this.#sought));
    const shown = this.#isAllShown ? found : found.slice(0, SHOWN_AT_ONCE);
    const hash = `#/catalogue/${edition.code}/lists/${list.code}`;
    return html`${editionHead(this.#desk, { edition, lists: this.#lists, hash })} ${this.#tools(list, found)}
    ${isDraft(edition) ? this.#columnForm(list, found) : nothing} ${this.#packTable(list, shown)}
    ${
      shown.length === found.length
        ? nothing
        : html`<button type="button" @click=${() => this.#showAll()}>
            ${words.showAll} (${found.length})
          </button>`
    }
    ${this.#saveBar()}`;
  }

  async #read(): Promise<void> {
    const { client } = this.#desk;
    const edition = this.#editionCode;
    const [{ value }, { items }] = await Promise.all([
      client.editions.get(edition),
      client.priceLists.list({ edition }),
    ]);
    this.#edition = value;
    this.#lists = items;
    const code = this.#listCode ?? items[0]?.code;
    if (code === undefined) return;
    const read = await client.priceLists.get(code, { edition });
    this.#list = read.value;
    this.#etag = read.etag;
    this.#edits = new PriceEdits();
  }

  #tools(list: PriceListInput, found: readonly PackInput[]): TemplateResult {
    const { words } = this.#desk;
    const counts = { n: found.length, all: list.packs.length };
    const hash = `#/catalogue/${this.#editionCode}/lists/${list.code}`;
    return html`<div class="row">
      <label class="grow"
        ><span>${words.find}</span
        ><input type="search" .value=${this.#sought} @input=${(event: Event) => this.#seek(valueOf(event))}
      /></label>
      <p class="soft" role="status">${filled(words.shownOf, counts)}</p>
      ${
        this.#edition !== undefined && isDraft(this.#edition)
          ? html`<a class="button" href=${`${hash}/sheet`}>${words.import}</a>`
          : nothing
      }
      <a class="button" href=${`${hash}/suppliers`}>${words.suppliers}</a>
      <a class="button" href=${`${hash}/stock`}>${words.countStock}</a>
      <button type="button" @click=${() => void this.#keepCsv(list)}>${words.asCsvList}</button>
    </div>`;
  }

  #packTable({ currency }: PriceListInput, packs: readonly PackInput[]): TemplateResult {
    const { words } = this.#desk;
    const mayEdit = this.#edition !== undefined && isDraft(this.#edition);
    return table(
      words.prices,
      [
        { head: words.sku, isLess: true },
        { head: words.name },
        { head: words.supplier, isLess: true },
        { head: `${words.prices} (${currency})` },
        { head: words.stock, isNumber: true, isLess: true },
      ],
      packs.map(
        (pack) =>
          html`<tr class=${this.#edits.isChanged(pack.sku) ? 'changed' : ''}>
            <td class="less" dir="ltr">${pack.sku}</td>
            <td lang="en">${pack.name}</td>
            <td class="less" dir="ltr">${pack.supplier}</td>
            <td><div class="breaks">${pack.prices.map((_, at) => this.#price(pack, at, mayEdit))}</div></td>
            <td class="number less">${pack.stock ?? ''}</td>
          </tr>`,
      ),
    );
  }

  #price({ sku, prices }: PackInput, at: number, mayEdit: boolean): TemplateResult {
    const { words } = this.#desk;
    const { fromPacks, price } = prices[at];
    const word = fromPacks === 1 ? words.onePack : filled(words.fromPacks, { n: fromPacks });
    if (!mayEdit) return html`<span class="break"><span class="soft">${word}</span> ${price}</span>`;
    const fault = this.#edits.faultOf(sku, at);
    const id = `fault-${sku}-${at}`;
    return html`<label class="break"
      ><span>${word}</span
      ><input
        inputmode="decimal"
        autocomplete="off"
        dir="ltr"
        aria-label=${`${sku}, ${word}`}
        aria-invalid=${fault === undefined ? nothing : 'true'}
        aria-describedby=${fault === undefined ? nothing : id}
        .value=${this.#edits.valueOf(sku, at) ?? price}
        @change=${(event: Event) => this.#edit(sku, at, valueOf(event), price)}
      />${fault === undefined ? nothing : html`<span class="fault" id=${id} lang="en">${fault}</span>`}</label
    >`;
  }

  #edit(sku: string, at: number, text: string, was: string): void {
    this.#edits = this.#edits.with(sku, at, text.trim(), was);
    this.#desk.redraw();
  }

  #saveBar(): TemplateResult | typeof nothing {
    const { words } = this.#desk;
    if (this.#edits.count === 0) return nothing;
    return html`<div class="row save-bar" role="region" aria-label=${words.save}>
      <p role="status">${filled(words.unsaved, { n: this.#edits.count })}</p>
      <button class="main" type="button" @click=${() => void this.#save()}>${words.save}</button>
      <button type="button" @click=${() => this.#dropEdits()}>${words.dropEdits}</button>
    </div>`;
  }

  #dropEdits(): void {
    this.#edits = new PriceEdits();
    this.#desk.redraw();
  }

  /** All changed prices in one go: all of them are right, or none is taken and each fault stands at its price. */
  #save(): Promise<void> {
    return trying(
      this.#desk,
      async () => {
        const { client, words, say } = this.#desk;
        const list = this.#list;
        if (list === undefined) return;
        const options = { edition: this.#editionCode, ifMatch: this.#etag };
        await client.priceLists.change(list.code, { packs: this.#edits.appliedTo(list.packs) }, options);
        await this.#read();
        say(words.saved);
      },
      (faults) => {
        this.#edits = this.#edits.withFaults(faults, this.#list?.packs ?? []);
      },
    );
  }

  #columnForm(list: PriceListInput, found: readonly PackInput[]): TemplateResult {
    const { words } = this.#desk;
    return html`<details>
      <summary>${words.column}</summary>
      <p class="soft">${filled(words.columnHelp, { n: found.length })}</p>
      <form class="row" @submit=${(event: Event) => void this.#changeColumn(list, found, formTexts(event))}>
        <label
          ><span>${words.percent}</span
          ><input name="percent" inputmode="text" required autocomplete="off" dir="ltr" placeholder="4.5"
        /></label>
        <label
          ><span>${words.roundTo}</span
          ><input name="roundTo" inputmode="decimal" autocomplete="off" dir="ltr" placeholder="0.05"
        /></label>
        <button type="submit">${words.apply}</button>
      </form>
    </details>`;
  }

  #changeColumn(
    { code }: PriceListInput,
    found: readonly PackInput[],
    { percent = '', roundTo = '' }: Readonly<Record<string, string>>,
  ): Promise<void> {
    return trying(this.#desk, async () => {
      const { client, words, say } = this.#desk;
      const { changed, chosenCount } = await client.priceLists.changePrices(
        code,
        {
          percent: percent.trim(),
          ...(roundTo.trim() === '' ? {} : { roundTo: roundTo.trim() }),
          ...(this.#sought === '' ? {} : { skus: found.map(({ sku }) => sku) }),
        },
        { edition: this.#editionCode, ifMatch: this.#etag, idempotencyKey: freshKey() },
      );
      await this.#read();
      say(filled(words.columnDone, { n: changed.length, all: chosenCount }));
    });
  }

  #seek(text: string): void {
    this.#sought = text.trim().toLowerCase();
    this.#desk.redraw();
  }

  #showAll(): void {
    this.#isAllShown = true;
    this.#desk.redraw();
  }

  #keepCsv({ code }: PriceListInput): Promise<void> {
    return trying(this.#desk, async () => {
      const edition = this.#editionCode;
      const csv = await this.#desk.client.priceLists.packsCsv(code, { edition });
      keep(textFile(csv, 'text/csv', `${code}-${edition}.csv`));
    });
  }
}

const isSought = ({ sku, name, supplier, content }: PackInput, sought: string): boolean => {
  const text = `${sku} ${name} ${supplier} ${content.material}`.toLowerCase();
  return sought.split(/\s+/).every((word) => text.includes(word));
};
