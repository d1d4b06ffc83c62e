import type { DefectRecord, EstimateBasket, Kingplank, StoredEstimate } from 'kingplank-sdk';
import { without, withReading, type Drawn } from './model/edits.js';
import { fitted, zoomed, type Frame } from './model/frame.js';
import { gridPlaces, nextPlace, soundsByLetter } from './model/hammer.js';
import { begun, redone, stepped, undone, type History } from './model/history.js';
import type { Units } from './model/lengths.js';
import { freshKey, type Outbox, type Waiting } from './model/outbox.js';
import { finished, freshPen, type Pen, type Touched } from './model/pen.js';
import { emptySheet, outlineOf, type Place } from './model/record.js';
import type { Album } from './service/album.js';
import { keep, orderOf, paperOf } from './service/papers.js';
import { Photographs } from './service/photographs.js';
import { Previewing } from './service/previewing.js';
import { openedBy, Sending } from './service/sending.js';
import { whereNext } from './service/where-next.js';
import type { Document, PanelBy, SheetActions, SheetState, Tab, TakenPhotograph } from './view/sheet.js';
import { filled, type Language } from './words/words.js';

/** What the page says of the sheet. */
export interface BoardSettings {
  readonly client: Kingplank | undefined;
  readonly outbox: Outbox | undefined;
  readonly album: Album | undefined;
  readonly language: Language;
  readonly units: Units;
  readonly linkTo: string;
  readonly revises: string | undefined;
}

export interface BoardEvents {
  /** Something shows differently. */
  readonly changed: () => void;
  readonly recordChanged: (record: DefectRecord) => void;
  readonly estimateMade: (stored: StoredEstimate) => void;
}

type Loose = Omit<
  SheetState,
  'record' | 'canUndo' | 'canRedo' | 'language' | 'units' | 'linkTo' | 'revises' | 'waiting' | 'next'
>;

const blank: Loose = {
  pen: freshPen,
  tab: 'draw',
  panelBy: 'sizes',
  frame: fitted(emptySheet, 600, 400),
  cursor: undefined,
  chosen: undefined,
  message: '',
  preview: { kind: 'nothing' },
  sending: { kind: 'nothing' },
  reason: '',
  stored: undefined,
  basket: undefined,
  drawing: undefined,
  drawingNames: [],
  spacingMm: 150,
  nextReadings: undefined,
  filed: [],
  kept: [],
};

/** The sheet on the board: what is drawn, what is shown, and everything that can be done to it. */
export class Board {
  readonly act: SheetActions;
  readonly #events: BoardEvents;
  readonly #previewing: Previewing;
  readonly #sending: Sending;
  readonly #photographs: Photographs;
  #settings: BoardSettings;
  #history: History<DefectRecord> = begun(emptySheet);
  /** What a finger holds and has not let go yet. */
  #live: DefectRecord | undefined;
  #loose: Loose = blank;
  #isFitted = true;
  /** What the estimate was made of that the result shows, as it was sent. */
  #lastMade: Waiting | undefined;

  constructor(settings: BoardSettings, events: BoardEvents) {
    this.#settings = settings;
    this.#events = events;
    this.#previewing = new Previewing((preview) => {
      this.set({ preview });
    });
    this.#sending = new Sending({
      show: (sending) => {
        this.set(sending.kind === 'refused' ? { sending, tab: 'result' } : { sending });
      },
      made: (stored, sent) => {
        this.#wasMade(stored, sent);
      },
      photographsSent: () => {
        this.#readPhotographs();
      },
    });
    this.#photographs = new Photographs((kept) => {
      this.set({ kept });
    });
    this.act = this.#actions();
  }

  get record(): DefectRecord {
    return this.#live ?? this.#history.present;
  }

  get pen(): Pen {
    return this.#loose.pen;
  }

  get frame(): Frame {
    return this.#loose.frame;
  }

  state(): SheetState {
    const { language, units, linkTo, revises, outbox } = this.#settings;
    const { record } = this;
    const { spacingMm } = this.#loose;
    return {
      ...this.#loose,
      record,
      language,
      units,
      linkTo,
      revises,
      canUndo: this.#history.past.length > 0,
      canRedo: this.#history.future.length > 0,
      waiting: outbox?.waiting().length ?? 0,
      next: nextPlace(record, this.#way(), spacingMm),
    };
  }

  set(part: Partial<Loose>): void {
    this.#loose = { ...this.#loose, ...part };
    this.#events.changed();
  }

  settle(settings: BoardSettings): void {
    const isOther = settings.client !== this.#settings.client || settings.units !== this.#settings.units;
    const isOtherAlbum = settings.album !== this.#settings.album;
    this.#settings = settings;
    if (isOther) this.#price();
    if (isOtherAlbum) this.#readPhotographs();
  }

  /** Another record on the board, with no steps to undo. */
  open(record: DefectRecord): void {
    this.#history = begun(record);
    this.#live = undefined;
    const { frame, spacingMm, tab, kept } = this.#loose;
    this.#loose = { ...blank, frame, spacingMm, tab, kept };
    this.act.fit();
    this.#price();
  }

  /** A stored estimate beside its record. */
  openStored(stored: StoredEstimate): void {
    this.set({ stored, basket: undefined, drawing: undefined, filed: [] });
    void this.#findDrawings(stored.id);
    this.#readPhotographs();
  }

  size(widthPx: number, heightPx: number): void {
    const { frame } = this.#loose;
    if (frame.widthPx === widthPx && frame.heightPx === heightPx) return;
    this.set({
      frame: this.#isFitted ? fitted(this.record, widthPx, heightPx) : { ...frame, widthPx, heightPx },
    });
  }

  setFrame(frame: Frame): void {
    this.#isFitted = false;
    this.set({ frame });
  }

  /** What a finger holds, shown and priced while it moves; `undefined` lets go without a change. */
  hold(record: DefectRecord | undefined): void {
    this.#live = record;
    this.#price();
    this.#events.changed();
  }

  letGo(): void {
    const held = this.#live;
    this.#live = undefined;
    if (held !== undefined && held !== this.#history.present) this.act.edit(held);
  }

  take({ pen, record }: Touched): void {
    this.set({ pen, message: '' });
    if (record !== this.#history.present) this.act.edit(record);
  }

  remove(): void {
    const { chosen } = this.#loose;
    if (chosen === undefined) return;
    this.set({ chosen: undefined });
    this.act.edit(without(this.record, chosen));
  }

  async sendWaiting(): Promise<void> {
    const { client, outbox, album } = this.#settings;
    if (client !== undefined && outbox !== undefined && album !== undefined)
      await this.#sending.sendAll({ client, outbox, album });
  }

  /** The places to tap: those that the service asked for, otherwise the grid. */
  #way(): readonly Place[] {
    const { nextReadings, spacingMm } = this.#loose;
    const asked = typeof nextReadings === 'object' ? nextReadings.readings.map(({ at }) => at) : [];
    return [...asked, ...gridPlaces(this.record, spacingMm)];
  }

  #price(): void {
    const { client, units } = this.#settings;
    this.#previewing.ask(client, this.record, units);
  }

  #became(history: History<DefectRecord>): void {
    this.#history = history;
    this.#live = undefined;
    this.#settings.outbox?.keepDraft(history.present);
    this.#price();
    this.set({ sending: { kind: 'nothing' } });
    this.#events.recordChanged(history.present);
  }

  #edit(record: DefectRecord): void {
    const isFirstPanel = outlineOf(this.#history.present).length === 0 && outlineOf(record).length > 0;
    this.#became(stepped(this.#history, record));
    if (isFirstPanel) this.act.fit();
  }

  #noteSound(letter: string): void {
    const sound = soundsByLetter[letter];
    const { next } = this.state();
    if (sound === undefined || next === undefined) return;
    this.act.edit(withReading(this.record, { kind: 'sounding', at: next, sound }));
  }

  #send(): void {
    const { outbox, revises } = this.#settings;
    const { reason } = this.#loose;
    const revision = revises === undefined ? {} : { revises: { id: revises, reason } };
    const photographs = this.#free();
    outbox?.put({ key: freshKey(), record: this.record, photographs, ...revision });
    this.#events.changed();
    void this.sendWaiting();
  }

  #wasMade(stored: StoredEstimate, sent: Waiting): void {
    if (JSON.stringify(sent.record) === JSON.stringify(this.record)) this.#settings.outbox?.forgetDraft();
    this.#lastMade = sent;
    this.set({ tab: 'result', message: '', reason: '' });
    this.openStored(stored);
    this.#events.estimateMade(stored);
  }

  async #findDrawings(id: string): Promise<void> {
    await this.#trying(async (client) => {
      const { items } = await client.estimates.drawings(id);
      this.set({ drawingNames: items.map(({ name }) => name).filter((name) => !name.includes('template')) });
    });
  }

  /** Photographs of the sheet that go with no estimate yet. */
  #free(): readonly string[] {
    const bound = this.#settings.outbox?.waiting().flatMap(({ photographs = [] }) => photographs) ?? [];
    return this.#loose.kept.map(({ key }) => key).filter((key) => !bound.includes(key));
  }

  /** Those on the device, and those that the service has of the estimate that is shown. */
  #readPhotographs(): void {
    const { album } = this.#settings;
    if (album !== undefined) void this.#saying(() => this.#photographs.read(album));
    void this.#trying(async (client, id) => {
      const { items } = await client.estimates.photographs(id);
      this.set({ filed: items });
    });
  }

  async #addPhotograph(taken: TakenPhotograph): Promise<boolean> {
    const { album, language } = this.#settings;
    if (album === undefined) return false;
    let key: string | undefined;
    await this.#saying(async () => {
      key = await this.#photographs.add(album, taken);
      if (key === undefined) throw new Error(language.words.pictureUnreadable);
    });
    if (key === undefined) return false;
    this.set({ pen: { ...this.#loose.pen, spot: undefined }, message: '' });
    this.#sendAfter(key);
    return true;
  }

  /** A photograph of a deck whose estimate is made goes after it at once. */
  #sendAfter(photograph: string): void {
    const { outbox } = this.#settings;
    const made = this.#lastMade;
    if (outbox === undefined || made === undefined || this.#loose.stored === undefined) return;
    const waiting = outbox.waiting().find(({ key }) => key === made.key);
    outbox.put({
      ...made,
      isMade: true,
      photographs: [...(waiting?.photographs ?? []), photograph],
    });
    void this.sendWaiting();
  }

  async #removePhotographs(keys: readonly string[]): Promise<void> {
    const { album } = this.#settings;
    if (album === undefined) return;
    await this.#saying(async () => {
      for (const key of keys) await this.#photographs.remove(album, key);
    });
  }

  /** Photographs that go with no estimate would go with the next deck: they are thrown away, if that is meant. */
  #startAnew(): void {
    const free = this.#free();
    const { words } = this.#settings.language;
    if (free.length > 0 && !confirm(filled(words.dropPhotographs, { n: free.length }))) return;
    void this.#removePhotographs(free);
    this.#edit(emptySheet);
    this.#lastMade = undefined;
    this.set({ stored: undefined, basket: undefined, drawing: undefined, filed: [], tab: 'draw' });
  }

  async #showDrawing(name: string): Promise<void> {
    await this.#trying(async (client, id) => {
      const { units } = this.#settings;
      const text = await client.estimates.drawing(id, name, {}, { units });
      const old = this.#loose.drawing;
      if (old !== undefined) URL.revokeObjectURL(old.url);
      const url = URL.createObjectURL(new Blob([text], { type: 'image/svg+xml' }));
      this.set({ drawing: { name, url } });
    });
  }

  async #fetch(document: Document): Promise<void> {
    await this.#trying(async (client, id) => {
      if (document === 'basket') this.set({ basket: await basketOf(client, id) });
      else keep(await paperOf(client, id, document));
    });
  }

  /** What goes wrong with a paper is said beside it; the sheet stays as it is. */
  async #trying(work: (client: Kingplank, id: string) => Promise<void>): Promise<void> {
    const { client } = this.#settings;
    const { stored } = this.#loose;
    if (client === undefined || stored === undefined) return;
    await this.#saying(() => work(openedBy(stored, client), stored.id));
  }

  async #saying(work: () => Promise<void>): Promise<void> {
    try {
      await work();
    } catch (error) {
      this.set({ message: error instanceof Error ? error.message : String(error) });
    }
  }

  /** Keys for pages may not ask it: the grid then stays the way. */
  async #askWhereNext(): Promise<void> {
    const { client } = this.#settings;
    if (client === undefined) return;
    try {
      this.set({ nextReadings: await whereNext(client, this.record) });
    } catch (error) {
      this.set({
        nextReadings: 'not-offered',
        message: error instanceof Error ? error.message : String(error),
      });
    }
  }

  #actions(): SheetActions {
    const set = (part: Partial<Loose>): void => {
      this.set(part);
    };
    return {
      ...this.#drawing(),
      setPen: (pen: Pen) => set({ pen, chosen: undefined }),
      setTab: (tab: Tab) => set({ tab, message: '', pen: penFor(tab, this.#loose.pen) }),
      setPanelBy: (panelBy: PanelBy) => set({ panelBy }),
      choose: (chosen: Drawn | undefined) => set({ chosen }),
      say: (message) => set({ message }),
      setSpacing: (spacingMm) => set({ spacingMm: Math.max(20, spacingMm) }),
      setReason: (reason) => set({ reason }),
      send: () => {
        this.#send();
      },
      sendWaiting: () => void this.sendWaiting(),
      fetchDocument: (document) => void this.#fetch(document),
      fetchOrder: (supplier) =>
        void this.#trying(async (client, id) => keep(await orderOf(client, id, supplier))),
      showDrawing: (name) => void this.#showDrawing(name),
      askWhereNext: () => void this.#askWhereNext(),
      addPhotograph: (taken) => this.#addPhotograph(taken),
      removePhotograph: (key) => void this.#removePhotographs([key]),
    };
  }

  #drawing() {
    return {
      edit: (record: DefectRecord): void => {
        this.#edit(record);
      },
      undo: (): void => {
        if (this.#history.past.length > 0) this.#became(undone(this.#history));
      },
      redo: (): void => {
        if (this.#history.future.length > 0) this.#became(redone(this.#history));
      },
      zoom: (by: number): void => {
        this.setFrame(zoomed(this.#loose.frame, by));
      },
      fit: (): void => {
        this.#isFitted = true;
        const { widthPx, heightPx } = this.#loose.frame;
        this.set({ frame: fitted(this.record, widthPx, heightPx) });
      },
      startAnew: (): void => {
        this.#startAnew();
      },
      finishZone: (): void => {
        this.take(finished(this.#loose.pen, this.record));
      },
      noteSound: (letter: string): void => {
        this.#noteSound(letter);
      },
    };
  }
}

const basketOf = async (client: Kingplank, id: string): Promise<EstimateBasket> =>
  await client.estimates.usualBasket(id);

/** The hammer lies ready where the deck is tapped, and is put away where it is drawn. */
function penFor(tab: Tab, pen: Pen): Pen {
  const isHammer = pen.tool === 'sounding' || pen.tool === 'plug' || pen.tool === 'photograph';
  if (tab === 'tap') return isHammer ? pen : { ...pen, tool: 'sounding', corners: [] };
  return isHammer ? { ...pen, tool: 'select', corners: [] } : pen;
}
