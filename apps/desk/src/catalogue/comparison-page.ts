import { filled, formTexts, freshKey, valueOf } from 'kingplank-deck/page';
import type {
  Edition,
  EditionComparison,
  EditionList,
  EditionTrial,
  EntryChange,
  EstimateSummary,
  History,
  PriceBreakInput,
  PriceListInput,
  TriedEstimate,
} from 'kingplank-sdk';
import { html, nothing, type TemplateResult } from 'lit';
import { day, money, number, trying, tryingIfSure, type Desk, type Page } from '../desk.js';
import { table } from '../table.js';
import { editionHead, isDraft, isScheduled } from './edition-head.js';

/** What an edition changes, what that does to stored estimates, its publication, and who did what to it. */
export function comparisonPage(desk: Desk, edition: string): Page {
  return new ComparisonPage(desk, edition);
}

const TRIAL_MS = 120_000;

class ComparisonPage implements Page {
  readonly #desk: Desk;
  readonly #code: string;
  #read:
    | {
        readonly edition: Edition;
        readonly etag: string;
        readonly all: EditionList;
        readonly lists: readonly PriceListInput[];
        readonly history: History;
      }
    | undefined;
  #against = '';
  #comparison: EditionComparison | undefined;
  #trial: EditionTrial | undefined;
  /** Estimates that the draft can be tried on, once somebody wants to choose. */
  #stored: readonly EstimateSummary[] | undefined;

  constructor(desk: Desk, code: string) {
    this.#desk = desk;
    this.#code = code;
    void trying(desk, () => this.#readAll());
  }

  view(): TemplateResult {
    const { words } = this.#desk;
    if (this.#read === undefined) return html`<p>${words.working}</p>`;
    const { edition, lists, all, history } = this.#read;
    const hash = `#/catalogue/${edition.code}/comparison`;
    return html`${editionHead(this.#desk, { edition, lists, hash })} ${this.#choice(all)}
      ${this.#comparison === undefined ? html`<p>${words.working}</p>` : changesView(this.#desk, this.#comparison)}
      ${this.#effect()} ${isDraft(edition) ? this.#publication() : nothing}
      ${isScheduled(edition) ? this.#schedule(edition) : nothing}
      <h2>${words.history}</h2>
      ${historyTable(this.#desk, history)}`;
  }

  async #readAll(): Promise<void> {
    const { editions, priceLists } = this.#desk.client;
    const code = this.#code;
    const [{ value, etag }, all, { items }, history] = await Promise.all([
      editions.get(code),
      editions.list(),
      priceLists.list({ edition: code }),
      editions.history(code),
    ]);
    this.#read = { edition: value, etag, all, lists: items, history };
    const isCurrent = all.current === code;
    const before = all.items.find((one) => one.code !== code && one.state === 'published');
    await this.#compare(isCurrent ? (before?.code ?? code) : all.current);
  }

  async #compare(against: string): Promise<void> {
    this.#against = against;
    this.#trial = undefined;
    this.#comparison = await this.#desk.client.editions.compare(this.#code, { with: against });
  }

  #choice({ items }: EditionList): TemplateResult {
    const { words } = this.#desk;
    const choose = (event: Event): Promise<void> => trying(this.#desk, () => this.#compare(valueOf(event)));
    return html`<h2>${words.comparison}</h2>
      <label
        ><span>${words.against}</span
        ><select dir="ltr" .value=${this.#against} @change=${choose}>
          ${items
            .filter(({ code }) => code !== this.#code)
            .map(({ code }) => html`<option ?selected=${code === this.#against}>${code}</option>`)}
        </select></label
      >`;
  }

  #effect(): TemplateResult {
    const { words } = this.#desk;
    const tryOut = (event: Event): Promise<void> => {
      const newest = Number(formTexts(event).newest);
      const estimates = chosenIn(event);
      this.#desk.say(words.working);
      return trying(this.#desk, async () => {
        this.#trial = await this.#desk.client.editions.tryOut(
          this.#code,
          { ...(estimates.length > 0 ? { estimates } : { newest }), against: this.#against },
          { timeoutMs: TRIAL_MS, idempotencyKey: freshKey() },
        );
        this.#desk.say('');
      });
    };
    return html`<h2>${words.effect}</h2>
      <p class="soft">${words.effectHelp}</p>
      <form class="row" @submit=${tryOut}>
        <label
          ><span>${words.newest}</span><input name="newest" type="number" min="1" max="20" required value="5"
        /></label>
        ${this.#choosing()}
        <button type="submit">${words.tryOut}</button>
      </form>
      ${this.#trial === undefined ? nothing : trialView(this.#desk, this.#trial)}`;
  }

  /** Which estimates, instead of the newest. */
  #choosing(): TemplateResult {
    const { words, client } = this.#desk;
    const read = (): void => {
      if (this.#stored !== undefined) return;
      void trying(this.#desk, async () => {
        this.#stored = await client.estimates.list().toArray({ limit: MOST_TO_CHOOSE });
      });
    };
    return html`<details class="grow" @toggle=${read}>
      <summary>${words.chooseEstimates}</summary>
      <fieldset>
        <legend>${words.chooseHelp}</legend>
        ${(this.#stored ?? []).map(
          ({ id, title, reference }) =>
            html`<label class="check"
              ><input type="checkbox" name="estimate" value=${id} /><span
                >${[title, reference ?? ''].filter((text) => text !== '').join(' · ')}</span
              ></label
            >`,
        )}
      </fieldset>
    </details>`;
  }

  #publication(): TemplateResult {
    const { words } = this.#desk;
    return html`<h2>${words.publish}</h2>
      <p>${words.publishHelp}</p>
      <form class="row" @submit=${(event: Event) => void this.#publish(event)}>
        <label><span>${words.effectiveAt}</span><input name="effectiveAt" type="datetime-local" /></label>
        <button class="main" type="submit">${words.publish}</button>
      </form>`;
  }

  /** Until it counts, a publication can be taken back. */
  #schedule({ effectiveAt = '' }: Edition): TemplateResult {
    const { words, client, say } = this.#desk;
    const withdraw = (): Promise<void> =>
      tryingIfSure(this.#desk, `${words.withdraw} (${this.#code})`, async () => {
        await client.editions.withdraw(this.#code, {
          ifMatch: this.#read?.etag ?? '',
          idempotencyKey: freshKey(),
        });
        await this.#readAll();
        say(words.isWithdrawn);
      });
    return html`<h2>${words.published}</h2>
      <p>${filled(words.scheduledFor, { at: day(effectiveAt, this.#desk) })}</p>
      <button type="button" @click=${withdraw}>${words.withdraw}</button>`;
  }

  #publish(event: Event): Promise<void> {
    const { words, client, say } = this.#desk;
    const { effectiveAt = '' } = formTexts(event);
    return tryingIfSure(this.#desk, `${words.publish} (${this.#code})`, async () => {
      await client.editions.publish(this.#code, {
        ifMatch: this.#read?.etag ?? '',
        idempotencyKey: freshKey(),
        // The field has the clock of the desk; the service is told an instant.
        ...(effectiveAt === '' ? {} : { effectiveAt: new Date(effectiveAt).toISOString() }),
      });
      await this.#readAll();
      say(words.isPublished);
    });
  }
}

/** As many as one trial takes. */
const MOST_TO_CHOOSE = 20;

const chosenIn = ({ currentTarget }: Event): readonly string[] =>
  currentTarget instanceof HTMLFormElement ? new FormData(currentTarget).getAll('estimate').map(String) : [];

const MOST_FIELDS = 12;

function changesView(desk: Desk, { changes, isSame }: EditionComparison): TemplateResult {
  const { words } = desk;
  if (isSame) return html`<p>${words.nothingChanged}</p>`;
  return table(
    words.comparison,
    [
      { head: words.entry },
      { head: words.figure },
      { head: words.before, isNumber: true },
      { head: words.after, isNumber: true },
    ],
    changes.map((change) => changeRows(desk, change)),
  );
}

const changeRows = (desk: Desk, { code, change, fields, fieldCount }: EntryChange): unknown => {
  const shown = fields.slice(0, MOST_FIELDS);
  if (shown.length === 0)
    return html`<tr lang="en">
      <td>${code}</td>
      <td colspan="3">${change}</td>
    </tr>`;
  const more = fieldCount - shown.length;
  return html`${shown.map(
    ({ at, before, after }) =>
      html`<tr lang="en">
        <td>${code}</td>
        <td>${fieldSaid(at)}</td>
        <td class="number">${valueSaid(desk, before)}</td>
        <td class="number">${valueSaid(desk, after)}</td>
      </tr>`,
  )}
  ${
    more === 0
      ? nothing
      : html`<tr>
          <td></td>
          <td colspan="3">${filled(desk.words.fieldsMore, { n: more })}</td>
        </tr>`
  }`;
};

/** The way to a field as words: the number of the pack, then what of it. */
const fieldSaid = (at: string): string =>
  at
    .split('/')
    .slice(1)
    .filter((part) => part !== 'packs')
    .map((part) => part.replaceAll('~1', '/').replaceAll('~0', '~'))
    .join(', ');

function valueSaid(desk: Desk, value: unknown): string {
  if (value === undefined) return '—';
  if (Array.isArray(value)) return value.map((one) => valueSaid(desk, one)).join(', ');
  if (isBreak(value))
    return value.fromPacks === 1
      ? value.price
      : `${filled(desk.words.fromPacks, { n: value.fromPacks })}: ${value.price}`;
  if (typeof value === 'object' && value !== null)
    return Object.entries(value)
      .map(([name, part]) => `${name}: ${valueSaid(desk, part)}`)
      .join(', ');
  return String(value);
}

const isBreak = (value: unknown): value is PriceBreakInput =>
  typeof value === 'object' && value !== null && 'fromPacks' in value && 'price' in value;

const trialView = (desk: Desk, { estimates, sameCount, totals }: EditionTrial): TemplateResult => {
  const { words } = desk;
  const differing = estimates.filter(
    ({ difference, refusedBecause }) => refusedBecause.length > 0 || Number(difference?.amount) !== 0,
  );
  return html`<p role="status">${filled(words.sameEstimates, { n: sameCount })}</p>
    ${
      differing.length === 0
        ? nothing
        : table(
            words.effect,
            [
              { head: words.title },
              { head: words.before, isNumber: true },
              { head: words.after, isNumber: true },
              { head: words.difference, isNumber: true },
            ],
            differing.map((one) => triedRow(desk, one)),
          )
    }
    ${totals.map(
      ({ before, after, difference }) =>
        html`<p class="figure">
          ${words.total}: ${money(before, desk)} → ${money(after, desk)} (${money(difference, desk)})
        </p>`,
    )}`;
};

function triedRow(desk: Desk, tried: TriedEstimate): TemplateResult {
  const { id, title, reference, before, after, difference, shareOfBefore, refusedBecause } = tried;
  const name = html`<td>
    <a href=${`#/estimates/${id}`}>${title ?? id.slice(0, 8)}</a> <span class="soft">${reference ?? ''}</span>
  </td>`;
  if (before === undefined || after === undefined || difference === undefined)
    return html`<tr>
      ${name}
      <td colspan="3">
        <span class="fault">${desk.words.refused}</span> <span lang="en">${refusedBecause.join(' ')}</span>
      </td>
    </tr>`;
  const share = shareOfBefore === undefined ? '' : ` (${number(100 * shareOfBefore, desk, 1)} %)`;
  return html`<tr>
    ${name}
    <td class="number">${money(before, desk)}</td>
    <td class="number">${money(after, desk)}</td>
    <td class="number">${money(difference, desk)}${share}</td>
  </tr>`;
}

const historyTable = (desk: Desk, { items }: History): TemplateResult =>
  table(
    desk.words.history,
    [{ head: desk.words.made }, { head: desk.words.who }, { head: desk.words.what }],
    items.map(
      ({ at, keyName, action }) =>
        html`<tr>
          <td>${day(at, desk)}</td>
          <td>${keyName ?? '—'}</td>
          <td lang="en">${action}</td>
        </tr>`,
    ),
  );
