import { formTexts, freshKey } from 'kingplank-deck/page';
import { type Edition, type LabourRatesInput, type PriceListInput, type ProblemEntry } from 'kingplank-sdk';
import { html, nothing, type TemplateResult } from 'lit';
import { trying, type Desk, type Page } from '../desk.js';
import { editionHead, isDraft } from './edition-head.js';
import { numberField } from './number-field.js';

/** Rates of the yard in an edition: by the hour, charges, and percentages. */
export function ratesPage(desk: Desk, code: string): Page {
  const { client, words } = desk;
  let edition: Edition | undefined;
  let lists: readonly PriceListInput[] = [];
  let rates: readonly LabourRatesInput[] = [];
  let faults: readonly ProblemEntry[] = [];
  const read = async (): Promise<void> => {
    const [{ value }, priceLists, labourRates] = await Promise.all([
      client.editions.get(code),
      client.priceLists.list({ edition: code }),
      client.labourRates.list({ edition: code }),
    ]);
    edition = value;
    lists = priceLists.items;
    rates = labourRates.items;
  };
  const keepFaults = (found: readonly ProblemEntry[]): void => {
    faults = found;
  };
  const save = (one: LabourRatesInput, texts: Texts): Promise<void> =>
    trying(
      desk,
      async () => {
        faults = [];
        const { etag } = await client.labourRates.get(one.code, { edition: code });
        const options = { edition: code, ifMatch: etag, idempotencyKey: freshKey() };
        await client.labourRates.change(one.code, withTexts(one, texts), options);
        await read();
        desk.say(words.saved);
      },
      keepFaults,
    );
  void trying(desk, read);
  return {
    view: () => {
      if (edition === undefined) return html`<p>${words.working}</p>`;
      const isOpen = isDraft(edition);
      return html`${editionHead(desk, { edition, lists, hash: `#/catalogue/${code}/rates` })}
      ${rates.map((one) => ratesForm(desk, one, { isOpen, faults, save }))}`;
    },
  };
}

type Texts = Readonly<Record<string, string>>;

interface Form {
  readonly isOpen: boolean;
  readonly faults: readonly ProblemEntry[];
  readonly save: (rates: LabourRatesInput, texts: Texts) => Promise<void>;
}

const ratesForm = (desk: Desk, rates: LabourRatesInput, form: Form): TemplateResult => {
  const { words } = desk;
  const { name, currency, perHour, charges, overheadPercent, profitPercent, taxGroups } = rates;
  const field = (at: string, label: string, value: string): TemplateResult =>
    numberField(form, at, label, value);
  return html`<h2>${name} (${currency})</h2>
    <form @submit=${(event: Event) => void form.save(rates, formTexts(event))}>
      <fieldset>
        <legend>${words.perHour}</legend>
        <div class="fields" lang="en">
          ${Object.entries(perHour).map(([skill, rate]) => field(`/perHour/${skill}`, skill, rate))}
        </div>
      </fieldset>
      <fieldset>
        <legend>${words.charges}</legend>
        <div class="fields" lang="en">
          ${charges.map((charge, at) => field(`/charges/${at}/price`, chargeSaid(charge), charge.price))}
        </div>
      </fieldset>
      <fieldset>
        <legend>${words.percents}</legend>
        <div class="fields" lang="en">
          ${field('/overheadPercent', 'overhead', overheadPercent)}
          ${field('/profitPercent', 'profit', profitPercent)}
        </div>
      </fieldset>
      <fieldset>
        <legend>${words.taxGroups}</legend>
        <div class="fields" lang="en">
          ${taxGroups.map((group, at) => field(`/taxGroups/${at}/percent`, group.name, group.percent))}
        </div>
      </fieldset>
      ${form.isOpen ? html`<button class="main" type="submit">${words.save}</button>` : nothing}
    </form>`;
};

/** Two charges of one name differ in where and when they fall due. */
const chargeSaid = ({ name, per, when, where }: LabourRatesInput['charges'][number]): string =>
  [name, per, ...[when, where].flatMap((text) => (text === undefined ? [] : [text]))]
    .map((text) => text.replaceAll('-', ' '))
    .join(', ');

/** The parts of the rates that hold what was typed, whole, as a merge patch takes them. */
const withTexts = (
  { perHour, charges, taxGroups }: LabourRatesInput,
  texts: Texts,
): Pick<LabourRatesInput, 'perHour' | 'charges' | 'overheadPercent' | 'profitPercent' | 'taxGroups'> => {
  const { general, laminator, finisher, rigger } = perHour;
  const rate = (skill: string, was: string): string => texts[`/perHour/${skill}`]?.trim() ?? was;
  return {
    perHour: {
      general: rate('general', general),
      laminator: rate('laminator', laminator),
      finisher: rate('finisher', finisher),
      rigger: rate('rigger', rigger),
    },
    charges: charges.map((charge, at) => ({
      ...charge,
      price: texts[`/charges/${at}/price`]?.trim() ?? charge.price,
    })),
    taxGroups: taxGroups.map((group, at) => ({
      ...group,
      percent: texts[`/taxGroups/${at}/percent`]?.trim() ?? group.percent,
    })),
    overheadPercent: (texts['/overheadPercent'] ?? '').trim(),
    profitPercent: (texts['/profitPercent'] ?? '').trim(),
  };
};
