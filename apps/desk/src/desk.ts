import type { Kingplank } from 'kingplank-sdk';
import type { Units } from 'kingplank-deck';
import type { TemplateResult } from 'lit';
import type { DeskWords } from './words.js';

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
  readonly go: (hash: string) => void;
}

export interface Page {
  readonly view: () => TemplateResult;
}

/** Work whose failure is said, and whose end shows. */
export async function trying(desk: Desk, work: () => Promise<void>): Promise<void> {
  try {
    await work();
  } catch (error) {
    desk.say(error instanceof Error ? error.message : String(error));
  }
  desk.redraw();
}

/** A key for one write; `crypto.randomUUID` is only there under TLS. */
export const freshKey = (): string =>
  Array.from(crypto.getRandomValues(new Uint8Array(16)), (byte) => byte.toString(16).padStart(2, '0')).join(
    '',
  );

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

/** Hands a file to the browser to keep. */
export function keepFile(blob: Blob, name: string): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(blob);
  link.download = name;
  link.click();
  setTimeout(() => {
    URL.revokeObjectURL(link.href);
  }, 60_000);
}

export const textFile = (text: string, type: string): Blob => new Blob([text], { type });

/** The value of the control that an event comes from. */
export function valueOf({ target }: Event): string {
  const isControl =
    target instanceof HTMLInputElement ||
    target instanceof HTMLSelectElement ||
    target instanceof HTMLTextAreaElement;
  return isControl ? target.value : '';
}

/** The texts of the form that was sent. */
export function formTexts(event: Event): Readonly<Record<string, string>> {
  event.preventDefault();
  const { currentTarget } = event;
  if (!(currentTarget instanceof HTMLFormElement)) return {};
  return Object.fromEntries([...new FormData(currentTarget)].map(([name, value]) => [name, String(value)]));
}
