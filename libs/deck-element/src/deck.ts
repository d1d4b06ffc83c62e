import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { Kingplank, type DefectRecord, type StoredEstimate } from 'kingplank-sdk';
import { Board, type BoardSettings } from './board.js';
import { Hand, wheeled } from './hand.js';
import { keyPressed } from './keyboard.js';
import type { Units } from './model/lengths.js';
import { Outbox } from './model/outbox.js';
import type { Place } from './model/record.js';
import { Album } from './service/album.js';
import { drawTab } from './view/draw-tab.js';
import { planOf } from './view/plan.js';
import { resultTab } from './view/result-tab.js';
import { seeTab } from './view/see-tab.js';
import type { Sheet, SheetState, Tab } from './view/sheet.js';
import { styles } from './view/styles.js';
import { tapTab } from './view/tap-tab.js';
import { titleBlock } from './view/title-block.js';
import { languageOf } from './words/words.js';

const RETRY_MS = 15_000;

const tabs: readonly Tab[] = ['draw', 'tap', 'see', 'result'];

const tabPanels: Readonly<Record<Tab, (sheet: Sheet) => TemplateResult>> = {
  draw: drawTab,
  tap: tapTab,
  see: seeTab,
  result: resultTab,
};

/**
 * A deck to draw, to tap and to have priced, on any page.
 *
 * @fires change - the record changed: `detail.record`
 * @fires estimate - the service made an estimate of it: `detail` is what it answered
 */
export class KingplankDeck extends LitElement {
  static override styles = styles;

  static override properties = {
    service: { type: String },
    apiKey: { type: String, attribute: 'api-key' },
    allowSecretKey: { attribute: false },
    tongue: { type: String, attribute: 'lang' },
    units: { type: String },
    keep: { type: String },
    linkTo: { type: String, attribute: 'link-to' },
    revises: { type: String },
  };

  /** Where the service answers. */
  declare service: string;
  /** A publishable key (`kp_pub_…`). */
  declare apiKey: string;
  /** For a page that only its owner opens; never set by an attribute. */
  declare allowSecretKey: boolean;
  declare tongue: string;
  declare units: Units;
  /** The name under which this device keeps what was entered. */
  declare keep: string;
  /** Where a stored estimate is shown, with `{id}` in it. */
  declare linkTo: string;
  /** The id of the estimate that is revised, if one is. */
  declare revises: string | undefined;

  readonly #board: Board;
  readonly #hand: Hand;
  #retry: ReturnType<typeof setInterval> | undefined;
  #sized: ResizeObserver | undefined;
  #isDraftTaken = false;

  constructor() {
    super();
    this.service = '';
    this.apiKey = '';
    this.allowSecretKey = false;
    this.tongue = '';
    this.units = 'si';
    this.keep = 'sheet';
    this.linkTo = '';
    this.#board = new Board(this.#settings(), {
      changed: () => {
        this.requestUpdate();
      },
      recordChanged: (record) => {
        this.#tell('change', { record });
      },
      estimateMade: (stored) => {
        this.#tell('estimate', stored);
      },
    });
    this.#hand = new Hand(this.#board);
  }

  /** What is drawn, as the service takes it. */
  get record(): DefectRecord {
    return this.#board.record;
  }

  set record(record: DefectRecord) {
    this.#isDraftTaken = true;
    this.#board.open(record);
  }

  /** The estimate that the result shows, once it was asked for or given. */
  get stored(): StoredEstimate | undefined {
    return this.#board.state().stored;
  }

  set stored(stored: StoredEstimate | undefined) {
    if (stored !== undefined) this.#board.openStored(stored);
  }

  /** Draw, tap, see or result. */
  set tab(tab: Tab) {
    this.#board.act.setTab(tab);
  }

  override connectedCallback(): void {
    super.connectedCallback();
    addEventListener('online', this.#sendWaiting);
    this.#retry = setInterval(this.#sendWaiting, RETRY_MS);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    removeEventListener('online', this.#sendWaiting);
    clearInterval(this.#retry);
    this.#sized?.disconnect();
    this.#sized = undefined;
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    const isService = ['service', 'apiKey', 'allowSecretKey', 'keep'].some((name) =>
      Reflect.apply(changed.has, changed, [name]),
    );
    if (isService) this.#connect();
    this.#board.settle(this.#settings());
  }

  protected override updated(): void {
    const plan = this.renderRoot.querySelector('.plan');
    if (plan === null || this.#sized !== undefined) return;
    this.#sized = new ResizeObserver(([{ contentRect }]) => {
      this.#board.size(contentRect.width, contentRect.height);
    });
    this.#sized.observe(plan);
  }

  protected override render(): TemplateResult {
    const state = this.#board.state();
    const { language, tab } = state;
    const sheet: Sheet = { state, act: this.#board.act };
    return html`<div class="desk" lang=${language.code} dir=${language.direction}>
      <div class="board" part="board">${this.#bar(sheet)}${this.#plan(state)}${titleBlock(state)}</div>
      <div class="side" part="side">
        <div class="tabs" role="tablist" @keydown=${this.#tabKey}>
          ${tabs.map((one) => this.#tabButton(one, state))}
        </div>
        <p class="message" role="status">${state.message}</p>
        <div role="tabpanel" id="tab-panel" aria-labelledby=${`tab-${tab}`}>${tabPanels[tab](sheet)}</div>
      </div>
    </div>`;
  }

  #connected: Pick<BoardSettings, 'client' | 'outbox' | 'album'> = {
    client: undefined,
    outbox: undefined,
    album: undefined,
  };

  #connect(): void {
    const isComplete = this.service !== '' && this.apiKey !== '';
    const outbox = new Outbox(localStorage, this.keep);
    const client = isComplete
      ? new Kingplank({
          baseUrl: this.service,
          apiKey: this.apiKey,
          allowSecretKeyInBrowser: this.allowSecretKey,
          logLevel: 'off',
        })
      : undefined;
    this.#connected = { client, outbox, album: new Album(this.keep) };
    const draft = this.#isDraftTaken ? undefined : outbox.draft();
    this.#isDraftTaken = true;
    if (draft !== undefined) this.#board.open(draft);
    queueMicrotask(this.#sendWaiting);
  }

  #settings(): BoardSettings {
    const tongue = this.tongue === '' ? document.documentElement.lang : this.tongue;
    const { units, linkTo, revises } = this;
    return {
      ...this.#connected,
      language: languageOf(tongue),
      units: units === 'us' ? 'us' : 'si',
      linkTo,
      revises,
    };
  }

  readonly #sendWaiting = (): void => {
    void this.#board.sendWaiting();
  };

  #tell(name: 'change' | 'estimate', detail: unknown): void {
    this.dispatchEvent(new CustomEvent(name, { detail, bubbles: true, composed: true }));
  }

  #bar({ state, act }: Sheet): TemplateResult {
    const { words } = state.language;
    const press = (sign: string, word: string, does: () => void, isOff = false): TemplateResult =>
      html`<button type="button" aria-label=${word} title=${word} ?disabled=${isOff} @click=${does}>
        ${sign}
      </button>`;
    return html`<div class="bar">
      ${press('↶', words.undo, act.undo, !state.canUndo)} ${press('↷', words.redo, act.redo, !state.canRedo)}
      ${press('+', words.zoomIn, () => act.zoom(1.3))} ${press('−', words.zoomOut, () => act.zoom(1 / 1.3))}
      ${press('▭', words.fit, act.fit)}
      ${press('×', words.remove, () => this.#board.remove(), state.chosen === undefined)}
      ${press(words.newSheet, words.newSheet, act.startAnew)}
    </div>`;
  }

  #plan(state: SheetState): TemplateResult {
    const { words } = state.language;
    const { widthPx, heightPx } = state.frame;
    return html`<div class="plan">
      <svg
        role="application"
        tabindex="0"
        dir="ltr"
        viewBox=${`0 0 ${widthPx} ${heightPx}`}
        part="plan"
        aria-label=${words.sheet}
        aria-description=${words.sheetHelp}
        @pointerdown=${this.#down}
        @pointermove=${this.#move}
        @pointerup=${this.#up}
        @pointercancel=${() => this.#hand.cancel()}
        @wheel=${this.#wheel}
        @keydown=${this.#key}
        @blur=${() => this.#board.set({ cursor: undefined })}
      >
        ${planOf(state)}
      </svg>
    </div>`;
  }

  #tabButton(tab: Tab, { tab: shown, language }: SheetState): TemplateResult {
    const isShown = tab === shown;
    return html`<button
      type="button"
      role="tab"
      id=${`tab-${tab}`}
      aria-selected=${isShown ? 'true' : 'false'}
      aria-controls=${isShown ? 'tab-panel' : nothing}
      tabindex=${isShown ? '0' : '-1'}
      @click=${() => this.#board.act.setTab(tab)}
    >
      ${language.words[tab]}
    </button>`;
  }

  readonly #tabKey = (event: KeyboardEvent): void => {
    const { tab, language } = this.#board.state();
    const forward = language.direction === 'ltr' ? 'ArrowRight' : 'ArrowLeft';
    const back = forward === 'ArrowRight' ? 'ArrowLeft' : 'ArrowRight';
    const step = event.key === forward ? 1 : event.key === back ? -1 : 0;
    if (step === 0) return;
    event.preventDefault();
    const next = tabs[(tabs.indexOf(tab) + step + tabs.length) % tabs.length];
    this.#board.act.setTab(next);
    void this.updateComplete.then(() => {
      this.renderRoot.querySelector<HTMLElement>(`#tab-${next}`)?.focus();
    });
  };

  readonly #down = (event: PointerEvent): void => {
    if (event.button !== 0) return;
    const { currentTarget } = event;
    if (currentTarget instanceof Element) currentTarget.setPointerCapture(event.pointerId);
    this.#hand.down(event.pointerId, pxOf(event));
  };

  readonly #move = (event: PointerEvent): void => {
    this.#hand.move(event.pointerId, pxOf(event));
  };

  readonly #up = (event: PointerEvent): void => {
    this.#hand.up(event.pointerId);
  };

  readonly #wheel = (event: WheelEvent): void => {
    if (!event.ctrlKey && !event.altKey) return;
    event.preventDefault();
    wheeled(this.#board, pxOf(event), event.deltaY);
  };

  readonly #key = (event: KeyboardEvent): void => {
    if (keyPressed(this.#board, this.#hand, event)) event.preventDefault();
  };
}

function pxOf(event: MouseEvent): Place {
  const { currentTarget } = event;
  if (!(currentTarget instanceof Element)) return [0, 0];
  const { left, top } = currentTarget.getBoundingClientRect();
  return [event.clientX - left, event.clientY - top];
}
