import { formTexts, freshKey } from 'kingplank-deck/page';
import { type Edition, type PriceListInput, type ProblemEntry } from 'kingplank-sdk';
import { html, nothing, type TemplateResult } from 'lit';
import { trying, type Desk, type Page } from '../desk.js';
import { editionHead, isDraft } from './edition-head.js';
import { numberField } from './number-field.js';

type Supplier = PriceListInput['suppliers'][number];
type Texts = Readonly<Record<string, string>>;

const charges = [
  'delivery',
  'hazardSurcharge',
  'oversizeFreight',
  'minimumOrder',
  'freeDeliveryFrom',
] as const;

/** What each supplier of a price list charges besides his goods, and from which sum on he does not. */
export function suppliersPage(desk: Desk, code: string, listCode: string): Page {
  const { client, words } = desk;
  let edition: Edition | undefined;
  let lists: readonly PriceListInput[] = [];
  let list: PriceListInput | undefined;
  let faults: readonly ProblemEntry[] = [];
  const read = async (): Promise<void> => {
    const [{ value }, all, one] = await Promise.all([
      client.editions.get(code),
      client.priceLists.list({ edition: code }),
      client.priceLists.get(listCode, { edition: code }),
    ]);
    [edition, lists, list] = [value, all.items, one.value];
  };
  const keepFaults = (found: readonly ProblemEntry[]): void => {
    faults = found;
  };
  const save = (suppliers: readonly Supplier[], texts: Texts): Promise<void> =>
    trying(
      desk,
      async () => {
        faults = [];
        const { etag } = await client.priceLists.get(listCode, { edition: code });
        const changed = suppliers.map((supplier, at) => withTexts(supplier, at, texts));
        const options = { edition: code, ifMatch: etag, idempotencyKey: freshKey() };
        await client.priceLists.change(listCode, { suppliers: changed }, options);
        await read();
        desk.say(words.saved);
      },
      keepFaults,
    );
  void trying(desk, read);
  return {
    view: () => {
      if (edition === undefined || list === undefined) return html`<p>${words.working}</p>`;
      const { suppliers, currency, name } = list;
      const isOpen = isDraft(edition);
      const head = { edition, lists, hash: `#/catalogue/${code}/lists/${listCode}/suppliers` };
      return html`${editionHead(desk, head)}
        <h2>${words.suppliers}: ${name} (${currency})</h2>
        <form @submit=${(event: Event) => void save(suppliers, formTexts(event))}>
          ${suppliers.map((supplier, at) => supplierFields(desk, supplier, at, { isOpen, faults }))}
          ${isOpen ? html`<button class="main" type="submit">${words.save}</button>` : nothing}
        </form>`;
    },
  };
}

const supplierFields = (
  { words }: Desk,
  supplier: Supplier,
  at: number,
  fields: Parameters<typeof numberField>[0],
): TemplateResult =>
  html`<fieldset>
    <legend lang="en">${supplier.name}</legend>
    <div class="fields">
      ${charges.map((charge) =>
        numberField(fields, `/suppliers/${at}/${charge}`, words[`charge.${charge}`], supplier[charge] ?? ''),
      )}
    </div>
  </fieldset>`;

/** What is left empty of free delivery says that there is none. */
function withTexts(supplier: Supplier, at: number, texts: Texts): Supplier {
  const typed = (charge: (typeof charges)[number]): string =>
    (texts[`/suppliers/${at}/${charge}`] ?? '').trim();
  const free = typed('freeDeliveryFrom');
  return {
    code: supplier.code,
    name: supplier.name,
    delivery: typed('delivery'),
    hazardSurcharge: typed('hazardSurcharge'),
    oversizeFreight: typed('oversizeFreight'),
    minimumOrder: typed('minimumOrder'),
    ...(free === '' ? {} : { freeDeliveryFrom: free }),
  };
}
