import { html, nothing, type TemplateResult } from 'lit';
import { readLengthMm, unitOf, writeLength } from '../model/lengths.js';
import { MOST_PHOTOGRAPHS, type Spot } from '../model/photograph.js';
import { filled } from '../words/words.js';
import { formTexts } from './controls.js';
import { button } from './parts.js';
import type { KeptPhotograph, Sheet, SheetState } from './sheet.js';

/** Photographs of the deck: taken or chosen, with what they show and where one stood, kept here until they are sent. */
export function photographsPart(sheet: Sheet): TemplateResult {
  const { state } = sheet;
  const { words } = state.language;
  const isFull = state.kept.length + state.filed.length >= MOST_PHOTOGRAPHS;
  return html`<p class="help">${words.photographHelp}</p>
    <form class="fields" @submit=${(event: Event) => void take(sheet, event)}>
      <label class="field"
        ><span>${words.picture}</span><input name="picture" type="file" accept="image/*" required
      /></label>
      <label class="field"
        ><span>${words.caption}</span><input name="caption" maxlength="300" autocomplete="off" required
      /></label>
      ${spotFields(state)}
      <button type="submit" class="main" ?disabled=${isFull}>${words.keepPhotograph}</button>
    </form>
    ${filedSaid(state)} ${keptList(sheet)}`;
}

function spotFields({ pen, units, language }: SheetState): readonly TemplateResult[] {
  const { words } = language;
  const [x, y] = pen.spot?.at.map((mm) => writeLength(mm, units)) ?? ['', ''];
  return [
    spotField('x', `${words.placeForward} (${unitOf(units)})`, x),
    spotField('y', `${words.placeToStarboard} (${unitOf(units)})`, y),
    spotField('direction', words.looksTowards, String(pen.spot?.directionDeg ?? '')),
  ];
}

const spotField = (name: string, word: string, value: string): TemplateResult =>
  html`<label class="field"
    ><span>${word}</span><input name=${name} inputmode="decimal" dir="ltr" autocomplete="off" .value=${value}
  /></label>`;

async function take({ state, act }: Sheet, event: Event): Promise<void> {
  const texts = formTexts(event);
  const { currentTarget: form } = event;
  if (!(form instanceof HTMLFormElement)) return;
  const file = new FormData(form).get('picture');
  const spot = spotIn(texts, state);
  if (spot === 'unreadable') act.say(state.language.words.placeUnreadable);
  else if (file instanceof File) {
    const isKept = await act.addPhotograph({ file, caption: texts.caption ?? '', spot });
    if (isKept) form.reset();
  }
}

/** A place is said whole, and a direction only of a place. */
function spotIn(
  { x = '', y = '', direction = '' }: Readonly<Record<string, string>>,
  { units }: SheetState,
): Spot | undefined | 'unreadable' {
  if ([x, y, direction].every((text) => text.trim() === '')) return undefined;
  const [xMm, yMm] = [readLengthMm(x, units), readLengthMm(y, units)];
  if (xMm === undefined || yMm === undefined) return 'unreadable';
  const at = [toTenth(xMm), toTenth(yMm)] as const;
  if (direction.trim() === '') return { at };
  const directionDeg = Number(direction);
  return Number.isInteger(directionDeg) && directionDeg >= 0 && directionDeg < 360
    ? { at, directionDeg }
    : 'unreadable';
}

const toTenth = (mm: number): number => Math.round(mm * 10) / 10;

function filedSaid({ filed, language }: SheetState): TemplateResult | typeof nothing {
  if (filed.length === 0) return nothing;
  const list = filed.map(({ number, caption }) => `${number} ${caption}`).join(' · ');
  return html`<p class="figure">${filled(language.words.photographsFiled, { list })}</p>`;
}

function keptList(sheet: Sheet): TemplateResult | typeof nothing {
  const { kept, language } = sheet.state;
  if (kept.length === 0) return nothing;
  return html`<p class="figure" role="status">
      ${filled(language.words.photographsKept, { n: kept.length })}
    </p>
    <ul class="photographs" aria-label=${language.words.photographs}>
      ${kept.map((one) => keptItem(sheet, one))}
    </ul>`;
}

const keptItem = (
  { state, act }: Sheet,
  { key, caption, spot, url, refused }: KeptPhotograph,
): TemplateResult =>
  html`<li>
    <img src=${url} alt=${caption} />
    <span>${caption} <span class="soft" dir="ltr">${spotSaid(spot, state)}</span></span>
    ${refused === undefined ? nothing : html`<p class="fault" lang="en" dir="ltr">${refused}</p>`}
    ${button(filled(state.language.words.dropPhotograph, { caption }), () => act.removePhotograph(key))}
  </li>`;

function spotSaid(spot: Spot | undefined, { units }: SheetState): string {
  if (spot === undefined) return '';
  const at = spot.at.map((mm) => writeLength(mm, units)).join(', ');
  return spot.directionDeg === undefined ? at : `${at} · ${spot.directionDeg}°`;
}
