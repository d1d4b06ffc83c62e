import { html, nothing, type TemplateResult } from 'lit';
import { withReading } from '../model/edits.js';
import { meterFields } from '../model/fields.js';
import { plugConditions, readTyped } from '../model/hammer.js';
import { readLengthMm, thicknessFor, unitOf, writeLength, type Units } from '../model/lengths.js';
import { placeOf, readingsOf, type Reading } from '../model/record.js';
import { filled, wordFor } from '../words/words.js';
import { formTexts, valueOf } from './controls.js';
import { button, figure, recordField, select, toggle } from './parts.js';
import { photographsPart } from './photographs-part.js';
import type { NextAsked, Sheet, SheetState } from './sheet.js';
import { withSigns } from './signs.js';

export function tapTab(sheet: Sheet): TemplateResult {
  const { state, act } = sheet;
  const { words } = state.language;
  const { pen } = state;
  return html`
    <fieldset>
      <legend>${words['tool.sounding']}</legend>
      <p class="help">${words.tapHelp}</p>
      ${soundButtons(sheet)}
      <p class="figure">
        ${whereNext(sheet)} · ${filled(words.tapped, { n: readingsOf(state.record).length })}
      </p>
      ${spacingField(sheet)} ${taken(sheet)}
    </fieldset>
    <fieldset>
      <legend>${words.palette}</legend>
      <div class="row">
        ${(['sounding', 'plug', 'photograph', 'select'] as const).map((tool) =>
          toggle(words[`tool.${tool}`], pen.tool === tool, () => act.setPen({ ...pen, tool, corners: [] })),
        )}
      </div>
      ${pen.tool === 'plug' ? plugParts(sheet) : nothing}
    </fieldset>
    <fieldset>
      <legend>${words.photographs}</legend>
      ${photographsPart(sheet)}
    </fieldset>
    <fieldset>
      <legend>${words.askNext}</legend>
      ${nextReadings(sheet)}
    </fieldset>
    <details>
      <summary>${words.typedList}</summary>
      ${typedList(sheet)}
    </details>
    <details>
      <summary>${words.meter}</summary>
      <div class="fields">${meterFields.map((field) => recordField(sheet, field))}</div>
    </details>
  `;
}

const letters = [
  { letter: 's', sound: 'sharp' },
  { letter: 'd', sound: 'dull' },
  { letter: 'v', sound: 'void' },
] as const;

/** Large, for a thumb while the other hand holds the hammer. */
const soundButtons = ({ state, act }: Sheet): TemplateResult =>
  html`<div class="row sounds">
    ${letters.map(
      ({ letter, sound }) =>
        html`<button
          type="button"
          class="sound ${sound}"
          ?disabled=${state.next === undefined}
          @click=${() => act.noteSound(letter)}
        >
          <kbd>${letter.toUpperCase()}</kbd> ${state.language.words[sound]}
        </button>`,
    )}
  </div>`;

function whereNext({ state }: Sheet): string {
  const { words } = state.language;
  if (state.next === undefined) return words.gridDone;
  const [x, y] = state.next.map((mm) => writeLength(mm, state.units));
  return filled(words.nextAt, { x, y });
}

/** As many as are seen without scrolling past the buttons. */
const MOST_SHOWN = 6;

/** The last readings, newest first, and the one that is chosen on the plan; each can be chosen here as there. */
function taken({ state, act }: Sheet): TemplateResult | typeof nothing {
  const { record, chosen, language, units } = state;
  const readings = readingsOf(record);
  if (readings.length === 0) return nothing;
  const isChosen = (index: number): boolean => chosen?.kind === 'reading' && chosen.index === index;
  const shown = readings
    .map((reading, index) => ({ reading, index }))
    .filter(({ index }) => index >= readings.length - MOST_SHOWN || isChosen(index))
    .reverse();
  return html`<ol class="taken-list" aria-label=${language.words.taken}>
    ${shown.map(
      ({ reading, index }) =>
        html`<li value=${index + 1}>
          ${toggle(readingSaid(reading, { language, units }), isChosen(index), () =>
            act.choose(isChosen(index) ? undefined : { kind: 'reading', index }),
          )}
        </li>`,
    )}
  </ol>`;
}

function readingSaid(reading: Reading, { language, units }: Pick<SheetState, 'language' | 'units'>): string {
  const at = placeOf(reading.at)
    .map((mm) => writeLength(mm, units))
    .join(', ');
  switch (reading.kind) {
    case 'sounding':
      return `${wordFor(language, reading.sound)} · ${at}`;
    case 'plug':
      return `${language.words['reading.plug']}, ${wordFor(language, reading.condition)}${skinSaid(reading, units)} · ${at}`;
    case 'moisture':
      return `${language.words['reading.moisture']} ${figure(reading.value, language)} · ${at}`;
  }
}

/** The skin in the plug, where it was measured; a text stands as it was typed. */
function skinSaid({ outerSkinMm }: Extract<Reading, { kind: 'plug' }>, units: Units): string {
  if (outerSkinMm === undefined) return '';
  return typeof outerSkinMm === 'number'
    ? `, ${writeLength(outerSkinMm, units)} ${unitOf(units)}`
    : `, ${outerSkinMm}`;
}

const spacingField = ({ state, act }: Sheet): TemplateResult =>
  html`<label class="field short"
    ><span>${state.language.words.spacing} (${unitOf(state.units)})</span
    ><input
      inputmode="decimal"
      .value=${writeLength(state.spacingMm, state.units)}
      @change=${(event: Event) => act.setSpacing(readLengthMm(valueOf(event), state.units) ?? state.spacingMm)}
  /></label>`;

const plugParts = (sheet: Sheet): TemplateResult => html`${plugState(sheet)} ${plugSkin(sheet)}`;

/** Measured plug by plug: it is asked for anew after each. */
const plugSkin = ({ state, act }: Sheet): TemplateResult =>
  html`<label class="field short"
    ><span>${state.language.words.plugSkin} (${unitOf(state.units)})</span
    ><input
      name="plug-skin"
      inputmode="decimal"
      autocomplete="off"
      .value=${state.pen.plugSkin === undefined ? '' : String(state.pen.plugSkin)}
      @change=${(event: Event) => {
        const text = valueOf(event);
        act.setPen({
          ...state.pen,
          plugSkin: text.trim() === '' ? undefined : thicknessFor(text, state.units),
        });
      }}
  /></label>`;

const plugState = ({ state, act }: Sheet): TemplateResult =>
  select({
    label: state.language.words.plugState,
    chosen: state.pen.plug,
    choices: plugConditions.map((code) => ({ value: code, word: wordFor(state.language, code) })),
    take: (value) =>
      act.setPen({ ...state.pen, plug: plugConditions.find((code) => code === value) ?? state.pen.plug }),
  });

function nextReadings({ state, act }: Sheet): TemplateResult {
  const { words } = state.language;
  const { nextReadings: asked } = state;
  if (asked === 'not-offered') return html`<p class="help">${words.nextNotOffered}</p>`;
  return html`<p class="help">${words.nextWhy}</p>
    ${button(words.askNext, act.askWhereNext)} ${asked === undefined ? nothing : nextAsked(asked, state)}`;
}

/** What the readings would tell, and the list of them with the numbers that stand on the plan. */
function nextAsked({ readings, advice, minutes, areaRangeM2 }: NextAsked, state: SheetState): TemplateResult {
  const { language, units } = state;
  const [now, after] = [areaRangeM2.now, areaRangeM2.after].map((m2) => figure(m2, language, 2));
  return html`<p lang="en" dir="ltr">${withSigns(advice)}</p>
    <p class="figure">
      ${filled(language.words.nextTells, { now, after, minutes: figure(minutes, language) })}
    </p>
    <ol class="asked-list">
      ${readings.map(
        ({ at, number, kind, chance }) =>
          html`<li value=${number}>
            ${wordFor(language, `reading.${kind}`)}
            <span dir="ltr">${at.map((mm) => writeLength(mm, units)).join(', ')}</span>
            <span class="soft"
              >${filled(language.words.chance, { percent: figure(100 * chance, language) })}</span
            >
          </li>`,
      )}
    </ol>`;
}

function typedList(sheet: Sheet): TemplateResult {
  const { words } = sheet.state.language;
  return html`<form @submit=${(event: Event) => takeTyped(sheet, formTexts(event).list ?? '')}>
    <label class="field"
      ><span>${words.typedHelp}</span>
      <textarea name="list" rows="6" dir="ltr" placeholder="850 0 d"></textarea>
    </label>
    <button type="submit">${words.takeList}</button>
  </form>`;
}

function takeTyped({ state, act }: Sheet, list: string): void {
  const read = readTyped(list);
  if ('readings' in read) act.edit(read.readings.reduce(withReading, state.record));
  else act.say(filled(state.language.words.listUnreadable, { line: read.line, text: read.text }));
}
