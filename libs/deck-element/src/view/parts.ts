import { html, nothing, type TemplateResult } from 'lit';
import type { ProblemEntry } from 'kingplank-sdk';
import { thicknessFor, unitOf, writeLength } from '../model/lengths.js';
import { valueAt, withValueAt, type Field } from '../model/fields.js';
import { wordFor, type Language } from '../words/words.js';
import { valueOf } from './controls.js';
import type { Sheet, SheetState } from './sheet.js';

export interface Choice {
  readonly value: string;
  readonly word: string;
}

export interface Select {
  readonly label: string;
  readonly choices: readonly Choice[];
  readonly chosen: string;
  readonly take: (value: string) => void;
}

export const select = ({ label, choices, chosen, take }: Select): TemplateResult =>
  html`<label class="field"
    ><span>${label}</span>
    <select .value=${chosen} @change=${(event: Event) => take(valueOf(event))}>
      ${choices.map(
        ({ value, word }) => html`<option value=${value} ?selected=${value === chosen}>${word}</option>`,
      )}
    </select></label
  >`;

/** The faults that the service found in the record as it stands. */
export function faultsOf({ preview, sending }: SheetState): readonly ProblemEntry[] {
  if (sending.kind === 'refused') return sending.faults;
  return preview.kind === 'faults' ? preview.faults : [];
}

/** One field of the record, with what the service says against it. */
export function recordField(sheet: Sheet, field: Field): TemplateResult {
  const { state } = sheet;
  const given = valueAt(state.record, field.at);
  const fault = given === undefined ? undefined : faultsOf(state).find(({ pointer }) => pointer === field.at);
  const id = `fault${field.at.replaceAll('/', '-')}`;
  return html`<label class="field"
      ><span
        >${state.language.words[field.word]}${field.kind === 'thickness' ? ` ${unitNote(state)}` : ''}</span
      >
      ${control(sheet, field, given, fault === undefined ? undefined : id)}</label
    >${fault === undefined ? nothing : html`<p class="fault" id=${id} lang="en" dir="ltr">${fault.detail}</p>`}`;
}

const unitNote = ({ units }: SheetState): string => `(${unitOf(units)})`;

const inputTypes = { thickness: 'text', text: 'text', number: 'number', date: 'date' } as const;

function control(sheet: Sheet, field: Field, given: unknown, fault: string | undefined): TemplateResult {
  const { state, act } = sheet;
  const take = (event: Event): void => {
    act.edit(withValueAt(state.record, field.at, readValue(field, valueOf(event), state)));
  };
  if (field.kind === 'choice') return choiceControl(state.language, field, String(given ?? ''), take);
  return html`<input
    name=${field.at}
    type=${inputTypes[field.kind]}
    inputmode=${field.kind === 'number' ? 'decimal' : nothing}
    step=${field.kind === 'number' ? 'any' : nothing}
    autocomplete="off"
    ?required=${field.isNeeded === true}
    aria-invalid=${fault === undefined ? nothing : 'true'}
    aria-describedby=${fault ?? nothing}
    .value=${shownValue(field, given, state)}
    @change=${take}
  />`;
}

const choiceControl = (
  language: Language,
  { at, choices = [] }: Field,
  given: string,
  take: (event: Event) => void,
): TemplateResult =>
  html`<select name=${at} .value=${given} @change=${take}>
    <option value="" ?selected=${given === ''}>${language.words.notSaid}</option>
    ${choices.map(
      (code) => html`<option value=${code} ?selected=${code === given}>${wordFor(language, code)}</option>`,
    )}
  </select>`;

function readValue(
  { kind, isNeeded }: Field,
  text: string,
  { units }: SheetState,
): number | string | undefined {
  if (text.trim() === '') return isNeeded === true ? '' : undefined;
  if (kind === 'thickness') return thicknessFor(text, units);
  return kind === 'number' ? Number(text) : text;
}

/** What was typed as text stands as it was typed; a number is written in the units of the sheet. */
function shownValue({ kind }: Field, given: unknown, { units }: SheetState): string {
  if (given === undefined) return '';
  return kind === 'thickness' && typeof given === 'number' ? writeLength(given, units) : String(given);
}

export const button = (
  word: string,
  press: () => void,
  { isOff = false, name = '' }: { readonly isOff?: boolean; readonly name?: string } = {},
): TemplateResult =>
  html`<button type="button" class=${name} ?disabled=${isOff} @click=${press}>${word}</button>`;

/** One of several that is chosen: pressed in, for eyes and for readers. */
export const toggle = (word: string, isOn: boolean, press: () => void, name = ''): TemplateResult =>
  html`<button type="button" class="toggle ${name}" aria-pressed=${isOn ? 'true' : 'false'} @click=${press}>
    ${word}
  </button>`;

/** An amount as the service gave it, grouped as the language groups. */
export function money(
  { amount, currency }: { readonly amount: string; readonly currency: string },
  { code }: Language,
): string {
  return new Intl.NumberFormat(code, { style: 'currency', currency, maximumFractionDigits: 0 }).format(
    Number(amount),
  );
}

/** To the cent, for what is signed. */
export function moneyToTheCent(
  { amount, currency }: { readonly amount: string; readonly currency: string },
  { code }: Language,
): string {
  return new Intl.NumberFormat(code, { style: 'currency', currency }).format(Number(amount));
}

export const figure = (value: number, { code }: Language, digits = 0): string =>
  new Intl.NumberFormat(code, { maximumFractionDigits: digits }).format(value);
