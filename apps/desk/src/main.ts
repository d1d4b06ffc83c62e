import { languages, type Units } from 'kingplank-deck';
import { formTexts, valueOf } from 'kingplank-deck/page';
import { Kingplank, UnauthenticatedError } from 'kingplank-sdk';
import { html, nothing, render, type TemplateResult } from 'lit';
import type { Desk, Page } from './desk.js';
import { comparisonPage } from './catalogue/comparison-page.js';
import { editionsPage } from './catalogue/editions-page.js';
import { priceListPage } from './catalogue/price-list-page.js';
import { ratesPage } from './catalogue/rates-page.js';
import { sheetPage } from './catalogue/sheet-page.js';
import { materialsPage, sourcesPage } from './catalogue/shelf-page.js';
import { stockPage } from './catalogue/stock-page.js';
import { suppliersPage } from './catalogue/suppliers-page.js';
import { basketPage } from './pages/basket.js';
import { comparePage } from './pages/compare.js';
import { estimatesPage } from './pages/estimates.js';
import { newSheetPage, reviseSheetPage, storedSheetPage } from './pages/sheets.js';
import { deskWords } from './words/words.js';

/** Kept by this tab only, and never in an address. */
const KEY = 'kingplank-desk:key';
const looks = ['system', 'light', 'dark'] as const;
type Look = (typeof looks)[number];

interface Taste {
  readonly language: string;
  readonly units: Units;
  readonly look: Look;
}

type Route = readonly [RegExp, (desk: Desk, ...parts: readonly string[]) => Page];

const routes: readonly Route[] = [
  [/^#\/new$/, newSheetPage],
  [/^#\/estimates\/([^/]+)$/, storedSheetPage],
  [/^#\/estimates\/([^/]+)\/revise$/, reviseSheetPage],
  [/^#\/compare\/([^/]+)\/([^/]+)$/, comparePage],
  [/^#\/order\/(.+)$/, basketPage],
  [/^#\/catalogue$/, editionsPage],
  [/^#\/catalogue\/([^/]+)$/, priceListPage],
  [/^#\/catalogue\/([^/]+)\/rates$/, ratesPage],
  [/^#\/catalogue\/([^/]+)\/materials$/, materialsPage],
  [/^#\/catalogue\/([^/]+)\/sources$/, sourcesPage],
  [/^#\/catalogue\/([^/]+)\/comparison$/, comparisonPage],
  [/^#\/catalogue\/([^/]+)\/lists\/([^/]+)$/, priceListPage],
  [/^#\/catalogue\/([^/]+)\/lists\/([^/]+)\/sheet$/, sheetPage],
  [/^#\/catalogue\/([^/]+)\/lists\/([^/]+)\/suppliers$/, suppliersPage],
  [/^#\/catalogue\/([^/]+)\/lists\/([^/]+)\/stock$/, stockPage],
];

class App {
  readonly #root: HTMLElement;
  #apiKey = sessionStorage.getItem(KEY) ?? '';
  #taste: Taste = tasteKept();
  #notice = { text: '', isFault: false };
  #page: Page | undefined;

  constructor(root: HTMLElement) {
    this.#root = root;
    addEventListener('hashchange', () => {
      this.#open();
    });
    this.#open();
  }

  get #words() {
    return deskWords[this.#taste.language] ?? deskWords.en;
  }

  /** The page of the address, begun anew. */
  #open(): void {
    this.#notice = { text: '', isFault: false };
    this.#page = undefined;
    if (this.#apiKey !== '') {
      const desk = this.#desk();
      const found = routes.find(([pattern]) => pattern.test(location.hash));
      const parts = found?.[0].exec(location.hash)?.slice(1) ?? [];
      this.#page =
        found === undefined ? estimatesPage(desk) : found[1](desk, ...parts.map(decodeURIComponent));
    }
    this.#draw();
  }

  #desk(): Desk {
    const { language, units } = this.#taste;
    const client = new Kingplank({
      baseUrl: location.origin,
      apiKey: this.#apiKey,
      allowSecretKeyInBrowser: true,
      logLevel: 'off',
      units,
    });
    return {
      client,
      apiKey: this.#apiKey,
      language,
      units,
      words: this.#words,
      redraw: () => {
        this.#draw();
      },
      say: (text) => {
        this.#say(text, false);
      },
      fault: (text) => {
        this.#say(text, true);
      },
      go: (hash) => {
        location.hash = hash;
      },
    };
  }

  #draw(): void {
    const { language, look } = this.#taste;
    const direction = languages.find(({ code }) => code === language)?.direction ?? 'ltr';
    Object.assign(document.documentElement, { lang: language, dir: direction });
    document.documentElement.dataset.theme = look;
    render(
      html`${this.#header()}
        <main id="main">${this.#main()}</main>`,
      this.#root,
    );
  }

  #main(): TemplateResult {
    if (this.#page === undefined) return this.#signIn();
    return html`${this.#noticeLine()} ${this.#page.view()}`;
  }

  #noticeLine(): TemplateResult {
    const { text, isFault } = this.#notice;
    return html`<p class=${isFault ? 'notice fault' : 'notice'} role="status">${text}</p>`;
  }

  #say(text: string, isFault: boolean): void {
    this.#notice = { text, isFault };
    this.#draw();
  }

  #header(): TemplateResult {
    const words = this.#words;
    const link = (hash: string, word: string, isHere: boolean): TemplateResult =>
      html`<a href=${hash} aria-current=${isHere ? 'page' : nothing}>${word}</a>`;
    const { hash } = location;
    const isCatalogue = hash.startsWith('#/catalogue');
    // Before sign-in the room of what comes after is kept, so that nothing moves when it comes.
    const later = this.#apiKey === '' ? 'later' : '';
    return html`<header>
      <p class="mark">Kingplank</p>
      <nav aria-label="Kingplank" class=${later}>
        ${link('#/', words.estimates, hash !== '#/new' && !isCatalogue)}
        ${link('#/new', words.newSheet, hash === '#/new')}
        ${link('#/catalogue', words.catalogue, isCatalogue)}
      </nav>
      <div class="settings">
        ${this.#setting(words.language, ['en', 'ar'], this.#taste.language, (language) => ({ language }))}
        ${this.#setting(words.units, ['si', 'us'], this.#taste.units, (units) => ({
          units: units === 'us' ? 'us' : 'si',
        }))}
        ${this.#setting(words.look, looks, this.#taste.look, (look) => ({
          look: looks.find((one) => one === look) ?? 'system',
        }))}
        <button type="button" class=${later} @click=${() => this.#signOut()}>${words.signOut}</button>
      </div>
    </header>`;
  }

  #setting(
    label: string,
    choices: readonly string[],
    chosen: string,
    change: (value: string) => Partial<Taste>,
  ): TemplateResult {
    const words: Readonly<Record<string, string>> = {
      en: 'English',
      ar: 'العربية',
      si: 'mm',
      us: 'in',
      system: this.#words.bySystem,
      light: this.#words.light,
      dark: this.#words.dark,
    };
    return html`<select
      aria-label=${label}
      .value=${chosen}
      @change=${(event: Event) => this.#retaste(change(valueOf(event)))}
    >
      ${choices.map((code) => html`<option value=${code} ?selected=${code === chosen}>${words[code]}</option>`)}
    </select>`;
  }

  /** Another look is only drawn again; other words or units are another page. */
  #retaste(part: Partial<Taste>): void {
    this.#taste = { ...this.#taste, ...part };
    localStorage.setItem('kingplank-desk:taste', JSON.stringify(this.#taste));
    if (part.look === undefined) this.#open();
    else this.#draw();
  }

  #signIn(): TemplateResult {
    const words = this.#words;
    return html`<form
      class="sign-in"
      @submit=${(event: Event) => void this.#enter(formTexts(event).key ?? '')}
    >
      <h1>${words.signIn}</h1>
      <label
        ><span>${words.key}</span
        ><input
          name="key"
          type="password"
          autocomplete="off"
          spellcheck="false"
          required
          aria-describedby="key-help"
      /></label>
      <p class="soft" id="key-help">${words.keyHelp}</p>
      ${this.#noticeLine()}
      <button class="main" type="submit">${words.signIn}</button>
    </form>`;
  }

  /** Any key that the service knows opens the desk; what it may do shows on the pages. */
  async #enter(given: string): Promise<void> {
    this.#apiKey = given.trim();
    try {
      await this.#desk().client.editions.list();
      sessionStorage.setItem(KEY, this.#apiKey);
      this.#open();
    } catch (error) {
      this.#apiKey = '';
      this.#say(error instanceof UnauthenticatedError ? this.#words.keyRefused : String(error), true);
    }
  }

  #signOut(): void {
    sessionStorage.removeItem(KEY);
    this.#apiKey = '';
    this.#open();
  }
}

function tasteKept(): Taste {
  const usual: Taste = { language: 'en', units: 'si', look: 'system' };
  const kept = localStorage.getItem('kingplank-desk:taste');
  if (kept === null) return usual;
  try {
    const { language, units, look }: Partial<Record<keyof Taste, string>> = JSON.parse(kept);
    return {
      language: language === 'ar' ? 'ar' : 'en',
      units: units === 'us' ? 'us' : 'si',
      look: looks.find((one) => one === look) ?? 'system',
    };
  } catch {
    return usual;
  }
}

const root = document.getElementById('desk');
if (root !== null) new App(root);
