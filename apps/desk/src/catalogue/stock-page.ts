import { filled, formTexts, freshKey } from 'kingplank-deck/page';
import type { PackInput, PriceListInput } from 'kingplank-sdk';
import { html, type TemplateResult } from 'lit';
import { day, trying, type Desk, type Page } from '../desk.js';
import { table } from '../table.js';

interface Counted {
  readonly packs: number;
  readonly countedAt: string;
}

/** How many packs there are now: counted at the shelf, in force at once, in no edition. */
export function stockPage(desk: Desk, edition: string, listCode: string): Page {
  const { client, words } = desk;
  let list: PriceListInput | undefined;
  let counts: ReadonlyMap<string, Counted> = new Map();
  const read = async (): Promise<void> => {
    const [{ value }, { items }] = await Promise.all([
      client.priceLists.get(listCode, { edition }),
      client.priceLists.stock(listCode),
    ]);
    list = value;
    counts = new Map(items.map((one) => [one.sku, one]));
  };
  const save = (texts: Readonly<Record<string, string>>): Promise<void> =>
    trying(desk, async () => {
      const items = Object.entries(texts).flatMap(([sku, text]) => {
        const typed = text.trim();
        const was = counts.get(sku)?.packs;
        return typed === '' || Number(typed) === was ? [] : [{ sku, packs: Number(typed) }];
      });
      if (items.length > 0)
        await client.priceLists.countStock(listCode, { items }, { idempotencyKey: freshKey() });
      await read();
      desk.say(filled(words.counted, { n: items.length }));
    });
  void trying(desk, read);
  return {
    view: () =>
      html`<h1>${words.countStock}</h1>
        <p><a href=${`#/catalogue/${edition}/lists/${listCode}`} dir="ltr">${edition} · ${listCode}</a></p>
        <p class="soft">${words.stockHelp}</p>
        ${list === undefined ? html`<p>${words.working}</p>` : stockForm(desk, list.packs, counts, save)}`,
  };
}

const stockForm = (
  desk: Desk,
  packs: readonly PackInput[],
  counts: ReadonlyMap<string, Counted>,
  save: (texts: Readonly<Record<string, string>>) => Promise<void>,
): TemplateResult => {
  const { words } = desk;
  return html`<form @submit=${(event: Event) => void save(formTexts(event))}>
    ${table(
      words.stock,
      [
        { head: words.sku, isLess: true },
        { head: words.name },
        { head: words.stock },
        { head: words.countedAt, isLess: true },
      ],
      packs.map((pack) => stockRow(desk, pack, counts.get(pack.sku))),
    )}
    <div class="row save-bar"><button class="main" type="submit">${words.save}</button></div>
  </form>`;
};

const stockRow = (
  desk: Desk,
  { sku, name, stock }: PackInput,
  counted: Counted | undefined,
): TemplateResult =>
  html`<tr>
    <td class="less" dir="ltr">${sku}</td>
    <td lang="en">${name}</td>
    <td>
      <input
        name=${sku}
        inputmode="numeric"
        pattern="[0-9]*"
        autocomplete="off"
        dir="ltr"
        aria-label=${`${desk.words.stock}: ${sku}`}
        placeholder=${stock ?? ''}
        .value=${counted === undefined ? '' : String(counted.packs)}
      />
    </td>
    <td class="less">${counted === undefined ? '' : day(counted.countedAt, desk)}</td>
  </tr>`;
