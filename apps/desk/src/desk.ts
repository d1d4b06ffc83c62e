import { ProblemError, type Kingplank, type ProblemEntry } from 'kingplank-sdk';
import type { Units } from 'kingplank-deck';
import type { TemplateResult } from 'lit';
import type { DeskWords } from './words/words.js';

/** What a page of the desk works with. */
export interface Desk {
  readonly client: Kingplank;
  readonly apiKey: string;
  readonly language: string;
  readonly units: Units;
  readonly words: DeskWords;
  /** Something shows differently. */
  readonly redraw: () => void;
  /** One line for everybody to read, or to hear. */
  readonly say: (text: string) => void;
  /** The same for what went wrong. */
  readonly fault: (text: string) => void;
  readonly go: (hash: string) => void;
}

export interface Page {
  readonly view: () => TemplateResult;
}

/** Work whose failure is said, and whose end shows. */
export async function trying(
  desk: Desk,
  work: () => Promise<void>,
  onFaults: (faults: readonly ProblemEntry[]) => void = () => undefined,
): Promise<void> {
  try {
    await work();
  } catch (error) {
    if (error instanceof ProblemError) onFaults(error.errors);
    desk.fault(error instanceof Error ? error.message : String(error));
  }
  desk.redraw();
}

/** The same for what cannot be undone: asked for once more. */
export async function tryingIfSure(desk: Desk, what: string, work: () => Promise<void>): Promise<void> {
  if (confirm(`${what}?`)) await trying(desk, work);
}

export interface Amount {
  readonly amount: string;
  readonly currency: string;
}

export const money = ({ amount, currency }: Amount, { language }: Desk): string =>
  new Intl.NumberFormat(language, { style: 'currency', currency }).format(Number(amount));

export const number = (value: number, { language }: Desk, digits = 0): string =>
  new Intl.NumberFormat(language, { maximumFractionDigits: digits }).format(value);

export const day = (text: string, { language }: Desk): string =>
  new Intl.DateTimeFormat(language, { dateStyle: 'medium', timeStyle: 'short' }).format(new Date(text));

/** A text as a file to keep. */
export const textFile = (
  text: string,
  type: string,
  name: string,
): { readonly blob: Blob; readonly name: string } => ({
  blob: new Blob([text], { type }),
  name,
});
