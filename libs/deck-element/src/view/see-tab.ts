import { html, nothing, type TemplateResult } from 'lit';
import type { EstimatePreview, StoredEstimate } from 'kingplank-sdk';
import { wordFor, type Language } from '../words/words.js';
import { faultsOf, figure, money } from './parts.js';
import type { Sheet, SheetState } from './sheet.js';

export function seeTab({ state }: Sheet): TemplateResult {
  const { words } = state.language;
  const preview = 'last' in state.preview ? state.preview.last : undefined;
  return html`
    <fieldset>
      <legend>${words.preview}</legend>
      ${preview === undefined ? standing(state) : previewed(preview, state)}
    </fieldset>
    <fieldset>
      <legend>${words.methods}</legend>
      ${ladder(state)}
    </fieldset>
    <fieldset>
      <legend>${words.drivers}</legend>
      ${drivers(state)}
    </fieldset>
  `;
}

function standing(state: SheetState): TemplateResult {
  const { words } = state.language;
  switch (state.preview.kind) {
    case 'not-offered':
      return html`<p class="help">${words.previewNotOffered}</p>`;
    case 'offline':
      return html`<p class="help">${words.offline}</p>`;
    case 'faults':
      return faultList(state);
    case 'asking':
      return html`<p class="help">${words.working}</p>`;
    default:
      return html`<p class="help">${words.drawFirst}</p>`;
  }
}

export function faultList(state: SheetState): TemplateResult {
  const { words } = state.language;
  const detail =
    state.sending.kind === 'refused'
      ? state.sending.detail
      : state.preview.kind === 'faults'
        ? state.preview.detail
        : '';
  return html`<p class="fault">${words.faults}</p>
    <ul class="faults" lang="en" dir="ltr">
      ${faultsOf(state).map(({ pointer, detail: text }) => html`<li><code>${pointer}</code> ${text}</li>`)}
      ${faultsOf(state).length === 0 ? html`<li>${detail}</li>` : nothing}
    </ul>`;
}

function previewed(preview: EstimatePreview, state: SheetState): TemplateResult {
  const { language } = state;
  const { words } = language;
  const { summary, price, panel, findings, leftOut } = preview;
  return html`
    <dl class="figures">
      <dt>${words.price}</dt>
      <dd>${money(price.withoutContingency, language)}</dd>
      <dt>${words.range}</dt>
      <dd>${money(price.range.p10, language)} – ${money(price.range.p90, language)}</dd>
      <dt>${words.hours}</dt>
      <dd>${figure(summary.labourH.p10, language)} – ${figure(summary.labourH.p90, language)} h</dd>
      <dt>${words.days}</dt>
      <dd>${figure(summary.workingDays.p10, language)} – ${figure(summary.workingDays.p90, language)}</dd>
      <dt>${words.openedArea}</dt>
      <dd dir="ltr">${summary.us?.openedAreaM2 ?? `${figure(summary.openedAreaM2, language, 2)} m²`}</dd>
      <dt>${words.verdict}</dt>
      <dd>${wordFor(language, panel.verdict)}</dd>
    </dl>
    <p class="help" lang="en" dir="ltr">${panel.sentence}</p>
    ${texts(words.missing, price.missing)}
    ${texts(
      words.findings,
      findings.map(({ text }) => text),
    )}
    ${texts(words.leftOut, leftOut)}
  `;
}

/** What the service says in words is in its language. */
const texts = (title: string, lines: readonly string[]): TemplateResult | typeof nothing =>
  lines.length === 0
    ? nothing
    : html`<details>
        <summary>${title} (${lines.length})</summary>
        <ul lang="en" dir="ltr">
          ${lines.map((line) => html`<li>${line}</li>`)}
        </ul>
      </details>`;

const verdictWords = {
  'fit': 'fit_verdict',
  'fit-with-conditions': 'fit-with-conditions',
  'unfit': 'unfit',
} as const;

function ladder({ stored, language }: SheetState): TemplateResult {
  if (stored === undefined) return html`<p class="help">${language.words.methodsLater}</p>`;
  const { rungs, planned, recommended } = stored.estimate.methods;
  return html`<ol class="ladder">
    ${rungs.map(
      (rung) =>
        html`<li class=${rung.verdict}>
          <strong lang="en" dir="ltr">${rung.title}</strong>
          <em>${language.words[verdictWords[rung.verdict]]}</em>
          ${rung.rung === planned.rung ? html`<em class="mark">${language.words.planned}</em>` : nothing}
          ${rung.rung === recommended?.rung ? html`<em class="mark">${language.words.recommended}</em>` : nothing}
          ${
            rung.priceRange === undefined
              ? nothing
              : html`<span
                  >${money(rung.priceRange.p10, language)} – ${money(rung.priceRange.p90, language)}</span
                >`
          }
          <p lang="en" dir="ltr">${rung.deciding.text}</p>
        </li>`,
    )}
  </ol>`;
}

function drivers({ stored, language }: SheetState): TemplateResult {
  if (stored === undefined) return html`<p class="help">${language.words.driversLater}</p>`;
  return driverBars(stored, language);
}

const MOST_DRIVERS = 6;

const driverBars = ({ estimate }: StoredEstimate, language: Language): TemplateResult =>
  html`<ul class="bars" lang="en" dir="ltr">
    ${[...estimate.totals.drivers]
      .sort((a, b) => b.shareOfVariance - a.shareOfVariance)
      .slice(0, MOST_DRIVERS)
      .map(
        ({ name, shareOfVariance }) =>
          html`<li>
            <span>${name}</span>
            <meter min="0" max="1" value=${Math.max(0, shareOfVariance)} aria-label=${name}></meter>
            <span>${figure(100 * shareOfVariance, language)} %</span>
          </li>`,
      )}
  </ul>`;
