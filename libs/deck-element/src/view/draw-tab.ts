import { html, nothing, type TemplateResult } from 'lit';
import { flipped, withOutline, without, type Drawn } from '../model/edits.js';
import { buildUpFields, jobFields } from '../model/fields.js';
import { readLengthMm, unitOf, writeLength } from '../model/lengths.js';
import { mirrored, panelTemplates, type PanelSizes, type PanelTemplate } from '../model/panel-templates.js';
import type { Tool } from '../model/pen.js';
import {
  fittingsOf,
  holesOf,
  outlineOf,
  placeOf,
  readingsOf,
  supportsOf,
  zonesOf,
  type Fitting,
  type Ring,
} from '../model/record.js';
import { struck, walked } from '../model/tape.js';
import { filled, wordFor } from '../words/words.js';
import { formTexts, valueOf } from './controls.js';
import { button, recordField, select, toggle } from './parts.js';
import type { PanelBy, Sheet } from './sheet.js';

export function drawTab(sheet: Sheet): TemplateResult {
  const { words } = sheet.state.language;
  return html`
    <fieldset>
      <legend>${words.panel}</legend>
      ${panelForm(sheet)}
    </fieldset>
    <fieldset>
      <legend>${words.buildUp}</legend>
      <div class="fields">${buildUpFields.map((field) => recordField(sheet, field))}</div>
    </fieldset>
    <fieldset>
      <legend>${words.palette}</legend>
      ${palette(sheet)}
    </fieldset>
    <fieldset>
      <legend>${words.drawn}</legend>
      ${drawnList(sheet)}
    </fieldset>
    <details>
      <summary>${words.job}</summary>
      <div class="fields">${jobFields.map((field) => recordField(sheet, field))}</div>
    </details>
  `;
}

const ways: readonly { readonly by: PanelBy; readonly word: 'bySizes' | 'byTape' | 'byTwoTapes' }[] = [
  { by: 'sizes', word: 'bySizes' },
  { by: 'tape', word: 'byTape' },
  { by: 'two-tapes', word: 'byTwoTapes' },
];

function panelForm(sheet: Sheet): TemplateResult {
  const { state, act } = sheet;
  const { words } = state.language;
  return html`
    <div class="row">
      ${ways.map(({ by, word }) => toggle(words[word], state.panelBy === by, () => act.setPanelBy(by)))}
    </div>
    ${state.panelBy === 'sizes' ? sizesForm(sheet) : tapeForm(sheet)}
    <div class="row">
      ${button(words.mirror, () => completeByMirror(sheet), { isOff: outlineOf(state.record).length < 3 })}
      ${button(words.flip, () => act.edit(flipped(state.record)), { isOff: outlineOf(state.record).length < 3 })}
    </div>
  `;
}

function sizesForm(sheet: Sheet): TemplateResult {
  const { words } = sheet.state.language;
  const [first] = panelTemplates;
  return html`<form class="fields" @submit=${(event: Event) => drawBySizes(sheet, formTexts(event))}>
    <label class="field"
      ><span>${words.template}</span>
      <select name="template" @change=${showExample(sheet)}>
        ${panelTemplates.map(({ code }) => html`<option value=${code}>${words[`template.${code}`]}</option>`)}
      </select></label
    >
    ${(['length', 'widthAft', 'widthForward'] as const).map((name) => sizeField(sheet, first, name))}
    <button type="submit" class="main">${words.setPanel}</button>
  </form>`;
}

type SizeName = 'length' | 'widthAft' | 'widthForward';

const sizeOf = ({ example }: PanelTemplate, name: SizeName): number => {
  const byName = {
    length: example.lengthMm,
    widthAft: example.widthAftMm,
    widthForward: example.widthForwardMm,
  };
  return byName[name];
};

const sizeField = ({ state }: Sheet, template: PanelTemplate, name: SizeName): TemplateResult =>
  html`<label class="field"
    ><span>${state.language.words[name]} (${unitOf(state.units)})</span
    ><input
      name=${name}
      inputmode="decimal"
      autocomplete="off"
      required
      value=${writeLength(sizeOf(template, name), state.units)}
  /></label>`;

/** Another part of the deck shows its own example sizes, to be measured over. */
const showExample =
  ({ state }: Sheet) =>
  (event: Event): void => {
    const template = panelTemplates.find(({ code }) => code === valueOf(event)) ?? panelTemplates[0];
    const form = event.target instanceof HTMLSelectElement ? event.target.form : null;
    for (const name of ['length', 'widthAft', 'widthForward'] as const) {
      const input = form?.elements.namedItem(name);
      if (input instanceof HTMLInputElement) input.value = writeLength(sizeOf(template, name), state.units);
    }
  };

function drawBySizes({ state, act }: Sheet, texts: Readonly<Record<string, string>>): void {
  const template = panelTemplates.find(({ code }) => code === texts.template) ?? panelTemplates[0];
  const [lengthMm, widthAftMm, widthForwardMm] = [texts.length, texts.widthAft, texts.widthForward].map(
    (text) => readLengthMm(text ?? '', state.units),
  );
  if (lengthMm === undefined || widthAftMm === undefined || widthForwardMm === undefined) {
    act.say(filled(state.language.words.tapeUnreadable, { line: 1 }));
    return;
  }
  const sizes: PanelSizes = { lengthMm, widthAftMm, widthForwardMm };
  setPanel({ state, act }, template.outline(sizes));
}

function setPanel({ state, act }: Sheet, ring: Ring): void {
  act.edit(withOutline(state.record, ring));
  act.fit();
}

function tapeForm(sheet: Sheet): TemplateResult {
  const { words } = sheet.state.language;
  const isWalk = sheet.state.panelBy === 'tape';
  return html`<form @submit=${(event: Event) => drawByTape(sheet, formTexts(event).tape ?? '')}>
    <label class="field"
      ><span>${isWalk ? words.tapeHelp : words.twoTapesHelp}</span>
      <textarea
        name="tape"
        rows="5"
        dir="ltr"
        placeholder=${isWalk ? '1650 90\n900 90\n1650 90\n900 90' : '1650\n1880 900\n900 1880'}
      ></textarea>
    </label>
    <button type="submit" class="main">${words.setPanel}</button>
  </form>`;
}

function drawByTape({ state, act }: Sheet, text: string): void {
  const { words } = state.language;
  const lines = text
    .split(/\r?\n/)
    .map((line) => line.trim())
    .filter((line) => line !== '');
  const isWalk = state.panelBy === 'tape';
  const rows = lines.map((line, at) => pairIn(line, isWalk, at, state));
  const unreadable = rows.findIndex((row) => row === undefined);
  if (unreadable >= 0 || rows.length < 3) {
    act.say(filled(words.tapeUnreadable, { line: unreadable >= 0 ? unreadable + 1 : rows.length + 1 }));
    return;
  }
  const pairs = rows.filter((row) => row !== undefined);
  if (isWalk) drawWalk({ state, act }, pairs);
  else strikeTapes({ state, act }, pairs);
}

type Pair = readonly [number, number];

function pairIn(line: string, isWalk: boolean, at: number, { units }: Sheet['state']): Pair | undefined {
  const [first, second, ...more] = line.split(/\s*[;,\t]\s*|\s{2,}| (?=[\d.]+\s*°?$)/);
  const length = readLengthMm(first ?? '', units);
  if (length === undefined || more.length > 0) return undefined;
  if (!isWalk && at === 0) return second === undefined ? [length, 0] : undefined;
  const other = isWalk ? Number((second ?? '').replace('°', '')) : readLengthMm(second ?? '', units);
  return second === undefined || other === undefined || !Number.isFinite(other) ? undefined : [length, other];
}

function drawWalk(sheet: Sheet, pairs: readonly Pair[]): void {
  const { ring, closingErrorMm } = walked(pairs.map(([lengthMm, angleDeg]) => ({ lengthMm, angleDeg })));
  const { words } = sheet.state.language;
  const mm = `${writeLength(closingErrorMm, sheet.state.units)} ${unitOf(sheet.state.units)}`;
  setPanel(sheet, ring);
  sheet.act.say(filled(words.closingError, { mm }));
}

function strikeTapes(sheet: Sheet, [base, ...pairs]: readonly Pair[]): void {
  const met = struck(
    base[0],
    pairs.map(([fromAMm, fromBMm]) => ({ fromAMm, fromBMm })),
  );
  if ('ring' in met) setPanel(sheet, met.ring);
  else sheet.act.say(filled(sheet.state.language.words.tapesCannotMeet, { line: met.cannotMeet + 2 }));
}

function completeByMirror(sheet: Sheet): void {
  const { words } = sheet.state.language;
  const made = mirrored(outlineOf(sheet.state.record));
  if ('ring' in made) setPanel(sheet, made.ring);
  else sheet.act.say(made.refused === 'crosses-centreline' ? words.mirrorCrosses : words.mirrorOff);
}

const tools: readonly Tool[] = ['select', 'zone', 'hatch', 'beam', 'fitting'];

const fittingKinds: readonly Fitting['kind'][] = [
  'stanchion',
  'cleat',
  'winch',
  'windlass',
  'chainplate',
  'mast-step',
  'track',
  'hatch',
  'fill',
  'vent',
  'pad-eye',
  'other',
];

function palette({ state, act }: Sheet): TemplateResult {
  const { words } = state.language;
  const { pen } = state;
  return html`<div class="row">
      ${tools.map((tool) =>
        toggle(words[`tool.${tool}`], pen.tool === tool, () => act.setPen({ ...pen, tool, corners: [] })),
      )}
    </div>
    ${
      pen.tool === 'fitting'
        ? select({
            label: words.fitting,
            chosen: pen.fitting,
            choices: fittingKinds.map((kind) => ({ value: kind, word: wordFor(state.language, kind) })),
            take: (value) =>
              act.setPen({ ...pen, fitting: fittingKinds.find((kind) => kind === value) ?? 'other' }),
          })
        : nothing
    }
    ${
      pen.corners.length === 0
        ? nothing
        : html`<div class="row">
            ${
              pen.tool === 'zone'
                ? button(words.closeZone, act.finishZone, { isOff: pen.corners.length < 3, name: 'main' })
                : nothing
            }
            ${button(words.liftPen, () => act.setPen({ ...pen, corners: [] }))}
          </div>`
    }`;
}

const zoneConditions = ['wet-rotten', 'wet-bonded', 'dry-debonded'] as const;

function drawnList(sheet: Sheet): TemplateResult {
  const { record, language } = sheet.state;
  const { words } = language;
  const entries = [
    ...zonesOf(record).map(({ id }, index) => entry(sheet, { kind: 'zone', index }, `${words.zone} ${id}`)),
    ...holesOf(record).map((_, index) => entry(sheet, { kind: 'hole', index }, `${words.hole} ${index + 1}`)),
    ...supportsOf(record).map(({ kind }, index) =>
      entry(sheet, { kind: 'support', index }, `${words.support} ${index + 1} (${kind})`),
    ),
    ...fittingsOf(record).map((fitting, index) => entry(sheet, { kind: 'fitting', index }, fitting.id)),
  ];
  const count = readingsOf(record).length;
  return html`<ul class="drawn">
    ${entries} ${count === 0 ? nothing : html`<li>${filled(words.tapped, { n: count })}</li>`}
  </ul>`;
}

function entry(sheet: Sheet, drawn: Drawn, name: string): TemplateResult {
  const { state, act } = sheet;
  const { words } = state.language;
  return html`<li>
    ${toggle(name, state.chosen?.kind === drawn.kind && state.chosen.index === drawn.index, () => act.choose(drawn))}
    ${drawn.kind === 'zone' ? conditionSelect(sheet, drawn.index) : nothing}
    ${drawn.kind === 'fitting' ? fittingDetails(sheet, drawn.index) : nothing}
    <button
      type="button"
      class="remove"
      aria-label=${`${words.remove}: ${name}`}
      @click=${() => {
        act.choose(undefined);
        act.edit(without(state.record, drawn));
      }}
    >
      ×
    </button>
  </li>`;
}

function conditionSelect({ state, act }: Sheet, index: number): TemplateResult {
  const zones = zonesOf(state.record);
  const take = (value: string): void => {
    const condition = zoneConditions.find((code) => code === value);
    act.edit({
      ...state.record,
      zones: zones.map((zone, at) => (at === index ? { ...zone, condition } : zone)),
    });
  };
  return select({
    label: state.language.words.condition,
    chosen: zones[index]?.condition ?? '',
    choices: zoneConditions.map((code) => ({ value: code, word: wordFor(state.language, code) })),
    take,
  });
}

function fittingDetails({ state, act }: Sheet, index: number): TemplateResult {
  const fittings = fittingsOf(state.record);
  const fitting = fittings[index];
  const change = (part: Partial<Fitting>): void => {
    act.edit({
      ...state.record,
      fittings: fittings.map((one, at) => (at === index ? { ...one, ...part } : one)),
    });
  };
  const [x, y] = placeOf(fitting.at);
  const place = (word: 'x' | 'y', value: number, take: (mm: number) => void): TemplateResult =>
    html`<label class="field short"
      ><span>${state.language.words[word]}</span
      ><input
        inputmode="decimal"
        .value=${writeLength(value, state.units)}
        @change=${(event: Event) => take(readLengthMm(valueOf(event), state.units) ?? value)}
    /></label>`;
  return html`${place('x', x, (mm) => change({ at: [mm, y] }))}${place('y', y, (mm) => change({ at: [x, mm] }))}
    <label class="check"
      ><input
        type="checkbox"
        .checked=${fitting.isLeaking === true}
        @change=${() => change({ isLeaking: fitting.isLeaking !== true })}
      />${state.language.words.leaking}</label
    >`;
}
