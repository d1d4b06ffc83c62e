import type {
  DefectRecord,
  EstimateBasket,
  EstimatePreview,
  ProblemEntry,
  StoredEstimate,
} from 'kingplank-sdk';
import type { Drawn } from '../model/edits.js';
import type { Frame } from '../model/frame.js';
import type { Units } from '../model/lengths.js';
import type { Pen } from '../model/pen.js';
import type { Filed, Spot } from '../model/photograph.js';
import type { Place } from '../model/record.js';
import type { Language } from '../words/words.js';

export type Tab = 'draw' | 'tap' | 'see' | 'result';
export type PanelBy = 'sizes' | 'tape' | 'two-tapes';

/** What the service said of the record as it stands. */
export type PreviewState =
  | { readonly kind: 'nothing' }
  | { readonly kind: 'asking'; readonly last?: EstimatePreview }
  | { readonly kind: 'answered'; readonly last: EstimatePreview }
  | { readonly kind: 'faults'; readonly faults: readonly ProblemEntry[]; readonly detail: string }
  | { readonly kind: 'offline'; readonly last?: EstimatePreview }
  | { readonly kind: 'not-offered' };

export type SendingState =
  | { readonly kind: 'nothing' }
  | { readonly kind: 'sending' }
  | { readonly kind: 'refused'; readonly faults: readonly ProblemEntry[]; readonly detail: string };

export type Document = 'report' | 'job-pack' | 'lines' | 'quotation' | 'templates' | 'basket';

/** The places that the service would have read next, the most telling one first, and what that would tell. */
export interface NextAsked {
  readonly readings: readonly NextReading[];
  /** Whether to go on or to stop, in the words of the service. */
  readonly advice: string;
  readonly minutes: number;
  /** Width of the range of bad core: now, and as expected after these readings. */
  readonly areaRangeM2: { readonly now: number; readonly after: number };
}

/** A reading worth taking next, and what it would be worth. */
export interface NextReading {
  readonly at: Place;
  readonly number: number;
  readonly kind: string;
  /** Chance of bad core there. */
  readonly chance: number;
}

/** A photograph that this device keeps. */
export interface KeptPhotograph {
  readonly key: string;
  readonly caption: string;
  readonly spot: Spot | undefined;
  /** Of the picture in memory. */
  readonly url: string;
  readonly refused: string | undefined;
}

/** A photograph as the form says it; the picture is still as the camera left it. */
export interface TakenPhotograph {
  readonly file: File;
  readonly caption: string;
  readonly spot: Spot | undefined;
}

/** Everything that the sheet shows. */
export interface SheetState {
  readonly record: DefectRecord;
  readonly pen: Pen;
  readonly tab: Tab;
  readonly panelBy: PanelBy;
  readonly language: Language;
  readonly units: Units;
  readonly frame: Frame;
  readonly cursor: Place | undefined;
  readonly chosen: Drawn | undefined;
  readonly canUndo: boolean;
  readonly canRedo: boolean;
  readonly message: string;
  readonly preview: PreviewState;
  readonly sending: SendingState;
  readonly waiting: number;
  readonly revises: string | undefined;
  readonly reason: string;
  readonly stored: StoredEstimate | undefined;
  readonly basket: EstimateBasket | undefined;
  readonly drawing: { readonly name: string; readonly url: string } | undefined;
  readonly drawingNames: readonly string[];
  readonly linkTo: string;
  readonly spacingMm: number;
  readonly next: Place | undefined;
  readonly nextReadings: NextAsked | 'not-offered' | undefined;
  /** What the service has, of the estimate that is shown. */
  readonly filed: readonly Filed[];
  /** What is on this device, to be sent with the estimate or after it. */
  readonly kept: readonly KeptPhotograph[];
}

/** Everything that can be done to it. */
export interface SheetActions {
  readonly edit: (record: DefectRecord) => void;
  readonly setPen: (pen: Pen) => void;
  readonly setTab: (tab: Tab) => void;
  readonly setPanelBy: (by: PanelBy) => void;
  readonly choose: (drawn: Drawn | undefined) => void;
  readonly say: (message: string) => void;
  readonly undo: () => void;
  readonly redo: () => void;
  readonly zoom: (by: number) => void;
  readonly fit: () => void;
  readonly startAnew: () => void;
  readonly finishZone: () => void;
  readonly noteSound: (letter: string) => void;
  readonly setSpacing: (mm: number) => void;
  readonly setReason: (reason: string) => void;
  readonly send: () => void;
  readonly sendWaiting: () => void;
  readonly fetchDocument: (document: Document) => void;
  readonly fetchOrder: (supplier: string) => void;
  readonly showDrawing: (name: string) => void;
  readonly askWhereNext: () => void;
  /** True once the device keeps it. */
  readonly addPhotograph: (taken: TakenPhotograph) => Promise<boolean>;
  readonly removePhotograph: (key: string) => void;
}

export interface Sheet {
  readonly state: SheetState;
  readonly act: SheetActions;
}
