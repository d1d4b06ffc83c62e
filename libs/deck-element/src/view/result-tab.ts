import { html, nothing, type TemplateResult } from 'lit';
import type { EstimateBasket } from 'kingplank-sdk';
import { isReadyToPrice } from '../model/record.js';
import { filled, wordFor, type Language } from '../words/words.js';
import { valueOf } from './controls.js';
import { button, figure, moneyToTheCent } from './parts.js';
import { faultList } from './see-tab.js';
import type { Document, Sheet, SheetState } from './sheet.js';

export function resultTab(sheet: Sheet): TemplateResult {
  const { state } = sheet;
  const { words } = state.language;
  return html`
    <fieldset>
      <legend>${state.revises === undefined ? words.estimate : words.revise}</legend>
      ${sendForm(sheet)}
    </fieldset>
    ${state.stored === undefined ? html`<p class="help">${words.noEstimate}</p>` : result(sheet)}
    <p class="caution">${words.caution}</p>
  `;
}

function sendForm({ state, act }: Sheet): TemplateResult {
  const { words } = state.language;
  const isSending = state.sending.kind === 'sending';
  const lacksReason = state.revises !== undefined && state.reason.trim() === '';
  return html`
    ${
      state.revises === undefined
        ? nothing
        : html`<label class="field"
            ><span>${words.reason}</span
            ><input
              name="reason"
              .value=${state.reason}
              @input=${(event: Event) => act.setReason(valueOf(event))}
          /></label>`
    }
    ${button(
      isSending ? words.sending : state.revises === undefined ? words.estimate : words.revise,
      act.send,
      {
        isOff: isSending || lacksReason || !isReadyToPrice(state.record),
        name: 'main',
      },
    )}
    ${isReadyToPrice(state.record) ? nothing : html`<p class="help">${words.drawFirst}</p>`}
    ${
      state.waiting === 0
        ? nothing
        : html`<p class="waiting" role="status">
            ${filled(words.waiting, { n: state.waiting })} ${button(words.sendNow, act.sendWaiting)}
          </p>`
    }
    ${state.sending.kind === 'refused' ? faultList(state) : nothing}
  `;
}

function result(sheet: Sheet): TemplateResult {
  const { state } = sheet;
  const { words } = state.language;
  return html`
    <fieldset>
      <legend>${words.result}</legend>
      ${totals(state)}
    </fieldset>
    <fieldset>
      <legend>${words.documents}</legend>
      ${documents(sheet)}
    </fieldset>
    <fieldset>
      <legend>${words.basket}</legend>
      ${basketPart(sheet)}
    </fieldset>
    <fieldset>
      <legend>${words.drawings}</legend>
      ${drawings(sheet)}
    </fieldset>
  `;
}

function totals({ stored, language, linkTo }: SheetState): TemplateResult | typeof nothing {
  if (stored === undefined) return nothing;
  const { words } = language;
  const { summary } = stored.estimate;
  return html`<dl class="figures">
      <dt>${words.total}</dt>
      <dd class="total">${moneyToTheCent(summary.total, language)}</dd>
      <dt>${words.range}</dt>
      <dd>
        ${moneyToTheCent(summary.totalRange.p10, language)} –
        ${moneyToTheCent(summary.totalRange.p90, language)}
      </dd>
      <dt>${words.hours}</dt>
      <dd>${figure(summary.labourLikelyH, language, 1)} h</dd>
      <dt>${words.days}</dt>
      <dd>${figure(summary.workingDays.p50, language)}</dd>
      <dt>${words.verdict}</dt>
      <dd>${wordFor(language, summary.verdict)}</dd>
    </dl>
    <p class="help" lang="en" dir="ltr">${stored.estimate.conclusion.verdict.sentence}</p>
    ${linkTo === '' ? nothing : html`<p><a href=${linkTo.replace('{id}', stored.id)}>${words.link}</a></p>`}`;
}

const documentWords: readonly {
  readonly document: Document;
  readonly word: 'report' | 'jobPack' | 'lines' | 'quotation' | 'templates';
}[] = [
  { document: 'report', word: 'report' },
  { document: 'job-pack', word: 'jobPack' },
  { document: 'templates', word: 'templates' },
  { document: 'lines', word: 'lines' },
  { document: 'quotation', word: 'quotation' },
];

const documents = ({ state, act }: Sheet): TemplateResult =>
  html`<div class="row">
    ${documentWords.map(({ document, word }) =>
      button(state.language.words[word], () => act.fetchDocument(document)),
    )}
  </div>`;

function basketPart({ state, act }: Sheet): TemplateResult {
  const { words } = state.language;
  if (state.basket === undefined) return button(words.basket, () => act.fetchDocument('basket'));
  return basketTable(state.basket, state.language, act.fetchOrder);
}

/** The packs to order, with a form for each supplier. */
function basketTable(
  basket: EstimateBasket,
  language: Language,
  fetchOrder: (supplier: string) => void,
): TemplateResult {
  const { words } = language;
  return html`<div class="scroll" tabindex="0" role="region" aria-label=${words.basket}>
      <table>
        <thead>
          <tr>
            <th scope="col">${words.packs}</th>
            <th scope="col">${words.supplier}</th>
            <th scope="col">${words.price}</th>
          </tr>
        </thead>
        <tbody lang="en" dir="ltr">
          ${basket.lines.map(
            ({ packCount, name, supplier, amount }) =>
              html`<tr>
                <td>${packCount} × ${name}</td>
                <td>${supplier}</td>
                <td class="number">${moneyToTheCent(amount, language)}</td>
              </tr>`,
          )}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row" colspan="2">${words.basketTotal}</th>
            <td class="number">${moneyToTheCent(basket.total, language)}</td>
          </tr>
        </tfoot>
      </table>
    </div>
    <div class="row">
      ${basket.orders.map(({ supplier, name }) => button(`${words.order}: ${name}`, () => fetchOrder(supplier)))}
    </div>`;
}

function drawings({ state, act }: Sheet): TemplateResult {
  return html`<div class="row">
      ${state.drawingNames.map(
        (name) =>
          html`<button type="button" lang="en" @click=${() => act.showDrawing(name)}>${name}</button>`,
      )}
    </div>
    ${
      state.drawing === undefined
        ? nothing
        : html`<img class="drawing" src=${state.drawing.url} alt=${state.drawing.name} />`
    }`;
}
