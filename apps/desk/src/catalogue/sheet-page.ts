import { filled, formTexts, freshKey, valueOf } from 'kingplank-deck/page';
import type { ProblemEntry, Versioned, PriceListInput } from 'kingplank-sdk';
import { html, nothing, type TemplateResult } from 'lit';
import { trying, type Desk, type Page } from '../desk.js';
import { table } from '../table.js';
import { faultRows, refusals } from './fault-table.js';
import { readDelimited, type Delimited } from './delimited.js';
import { guessed } from './guessed-meanings.js';
import {
  takeSheet,
  targets,
  type SheetChoices,
  type SheetFault,
  type TakenSheet,
  type Target,
} from './supplier-sheet.js';

/** A supplier's sheet taken into a price list of a draft: pasted, its columns named, its faults shown, and taken. */
export function sheetPage(desk: Desk, edition: string, list: string): Page {
  return new SheetPage(desk, edition, list);
}

const MOST_SAMPLED = 5;

class SheetPage implements Page {
  readonly #desk: Desk;
  readonly #edition: string;
  readonly #code: string;
  #read: Versioned<PriceListInput> | undefined;
  #text = '';
  #sheet: Delimited | undefined;
  #choices: SheetChoices = { meanings: [], decimalMark: '.', breaks: 'keep', unknown: 'fault' };
  /** What the service said against it. */
  #refused: readonly ProblemEntry[] = [];

  constructor(desk: Desk, edition: string, list: string) {
    this.#desk = desk;
    this.#edition = edition;
    this.#code = list;
    void trying(desk, async () => {
      this.#read = await desk.client.priceLists.get(list, { edition });
    });
  }

  view(): TemplateResult {
    const { words } = this.#desk;
    const back = `#/catalogue/${this.#edition}/lists/${this.#code}`;
    return html`<h1>${words.import}</h1>
      <p><a href=${back} dir="ltr">${this.#edition} · ${this.#code}</a></p>
      ${this.#entry()} ${this.#sheet === undefined ? nothing : this.#rest(this.#sheet)}`;
  }

  #entry(): TemplateResult {
    const { words } = this.#desk;
    return html`<form @submit=${(event: Event) => this.#take(formTexts(event).cells ?? '')}>
      <p class="soft" id="import-help">${words.importHelp}</p>
      <label
        ><span>${words.cells}</span
        ><textarea
          name="cells"
          rows="7"
          dir="ltr"
          spellcheck="false"
          aria-describedby="import-help"
        ></textarea>
      </label>
      <div class="row">
        <label
          ><span>${words.file}</span
          ><input type="file" accept=".csv,.tsv,.txt,text/csv,text/plain" @change=${this.#fileChosen}
        /></label>
        <button type="submit">${words.columns}</button>
      </div>
    </form>`;
  }

  readonly #fileChosen = ({ target }: Event): void => {
    const file = target instanceof HTMLInputElement ? target.files?.[0] : undefined;
    if (file === undefined) return;
    void trying(this.#desk, async () => {
      this.#take(await file.text());
    });
  };

  #take(text: string): void {
    this.#text = text;
    this.#sheet = readDelimited(text);
    this.#refused = [];
    this.#choices = { ...this.#choices, meanings: guessed(this.#sheet.rows[0] ?? []) };
    this.#desk.redraw();
  }

  #rest(sheet: Delimited): TemplateResult | typeof nothing {
    const list = this.#read?.value;
    if (list === undefined) return nothing;
    if (isWholeList(sheet)) return html`${this.#wholeList()} ${refusals(this.#desk, this.#refused)}`;
    const taken = takeSheet(list.packs, sheet, this.#choices);
    return html`<h2>${this.#desk.words.columns}</h2>
      ${this.#mapping(sheet)} ${this.#ways()} ${this.#outcome(taken)}`;
  }

  #wholeList(): TemplateResult {
    const { words } = this.#desk;
    return html`<p>${words.wholeList}</p>
      <button class="main" type="button" @click=${() => void this.#replaceAll()}>
        ${words.replaceAll}
      </button>`;
  }

  #mapping({ rows: [heads, ...rows] }: Delimited): TemplateResult {
    const { words } = this.#desk;
    const sampled = rows.slice(0, MOST_SAMPLED);
    return table(
      words.columns,
      [{ head: words.columns }, { head: words.columnMeans }, { head: words.sample, isLess: true }],
      heads.map(
        (head, at) =>
          html`<tr>
            <td>${head}</td>
            <td>
              ${this.#select(
                `${head}: ${words.columnMeans}`,
                ['', ...targets],
                this.#choices.meanings[at] ?? '',
                (chosen) => {
                  const meaning = targets.find((one) => one === chosen);
                  return { meanings: heads.map((_, i) => (i === at ? meaning : this.#choices.meanings[i])) };
                },
              )}
            </td>
            <td class="less" dir="ltr">${sampled.map((row) => row[at] ?? '').join(' · ')}</td>
          </tr>`,
      ),
    );
  }

  #ways(): TemplateResult {
    const { words } = this.#desk;
    const { decimalMark, breaks, unknown } = this.#choices;
    const labelled = (word: string, select: TemplateResult): TemplateResult =>
      html`<label><span>${word}</span>${select}</label>`;
    return html`<div class="row">
      ${labelled(
        words.decimalMark,
        this.#select(words.decimalMark, ['.', ','], decimalMark, (mark) => ({
          decimalMark: mark === ',' ? ',' : '.',
        })),
      )}
      ${labelled(
        words.breaks,
        this.#select(words.breaks, ['keep', 'drop'], breaks, (way) => ({
          breaks: way === 'drop' ? 'drop' : 'keep',
        })),
      )}
      ${labelled(
        words.unknownNumbers,
        this.#select(words.unknownNumbers, ['fault', 'leave-out'], unknown, (way) => ({
          unknown: way === 'leave-out' ? 'leave-out' : 'fault',
        })),
      )}
    </div>`;
  }

  #select(
    label: string,
    codes: readonly string[],
    chosen: string,
    change: (code: string) => Partial<SheetChoices>,
  ): TemplateResult {
    const word = this.#choiceWords();
    return html`<select
      aria-label=${label}
      .value=${chosen}
      @change=${(event: Event) => this.#choose(change(valueOf(event)))}
    >
      ${codes.map((code) => html`<option value=${code} ?selected=${code === chosen}>${word[code]}</option>`)}
    </select>`;
  }

  #choiceWords(): Readonly<Record<string, string>> {
    const { words } = this.#desk;
    return {
      '': words.leaveOut,
      ...targetWords(this.#desk),
      '.': words.point,
      ',': words.comma,
      'keep': words.breaksKeep,
      'drop': words.breaksDrop,
      'fault': words.unknownFault,
      'leave-out': words.unknownLeave,
    };
  }

  #choose(part: Partial<SheetChoices>): void {
    this.#choices = { ...this.#choices, ...part };
    this.#refused = [];
    this.#desk.redraw();
  }

  #outcome(taken: TakenSheet): TemplateResult {
    const { words } = this.#desk;
    const { changed, same, leftOut, faults } = taken;
    if (faults.length > 0) return faultTable(this.#desk, faults);
    const counts = { changed: changed.length, same: same.length, left: leftOut.length };
    return html`<p role="status">${filled(words.sheetResult, counts)}</p>
      <button
        class="main"
        type="button"
        ?disabled=${changed.length === 0}
        @click=${() => void this.#save(taken)}
      >
        ${words.take}
      </button>
      ${refusals(this.#desk, this.#refused)}`;
  }

  #save(taken: TakenSheet): Promise<void> {
    const { client } = this.#desk;
    return this.#sending(
      (options) => client.priceLists.change(this.#code, { packs: taken.packs }, options),
      (fault) => inSheet(fault, taken),
    );
  }

  #replaceAll(): Promise<void> {
    const { client } = this.#desk;
    return this.#sending(
      (options) => client.priceLists.replacePacks(this.#code, this.#text, options),
      (fault) => fault,
    );
  }

  #sending(
    send: (options: Sending) => PromiseLike<unknown>,
    placed: (fault: ProblemEntry) => ProblemEntry,
  ): Promise<void> {
    return trying(
      this.#desk,
      async () => {
        const { go } = this.#desk;
        await send({
          edition: this.#edition,
          ifMatch: this.#read?.etag ?? '',
          idempotencyKey: freshKey(),
        });
        go(`#/catalogue/${this.#edition}/lists/${this.#code}`);
      },
      (faults) => {
        this.#refused = faults.map(placed);
      },
    );
  }
}

interface Sending {
  readonly edition: string;
  readonly ifMatch: string;
  readonly idempotencyKey: string;
}

/** Such a sheet says all of a pack, so that new packs can come in by it. */
const isWholeList = ({ rows: [heads = []] }: Delimited): boolean =>
  ['sku', 'content.material', 'prices.0.price'].every((name) => heads.includes(name));

const targetWords = ({ words }: Desk): Readonly<Record<Target, string>> => ({
  sku: words['target.sku'],
  name: words['target.name'],
  supplier: words['target.supplier'],
  price: words['target.price'],
  stock: words['target.stock'],
  massKg: words['target.massKg'],
});

const faultTable = (desk: Desk, faults: readonly SheetFault[]): TemplateResult =>
  faultRows(
    desk,
    faults.map((fault) => ({ row: fault.row, column: fault.column, text: faultSaid(desk, fault) })),
  );

function faultSaid(desk: Desk, { code, text = '', firstRow = 0 }: SheetFault): string {
  const target = targets.find((one) => one === text);
  const what = target === undefined ? text : targetWords(desk)[target];
  return filled(desk.words[`fault.${code}`], { text, what, row: firstRow });
}

/** A fault of a pack at the row of the sheet that it came from. */
function inSheet(fault: ProblemEntry, { packs, rowOf }: TakenSheet): ProblemEntry {
  const [, at = '', column] = /^\/packs\/(\d+)\/?(.*)$/.exec(fault.pointer ?? '') ?? [];
  const row = rowOf.get(packs[Number(at)]?.sku ?? '');
  return row === undefined ? fault : { ...fault, row, ...(column === '' ? {} : { column }) };
}
