import { html, nothing, type TemplateResult } from 'lit';
import type { EstimatePreview, RungSection, StoredEstimate } from 'kingplank-sdk';
import { wordFor, type Language } from '../words/words.js';
import { faultsOf, figure, money } from './parts.js';
import type { Sheet, SheetState } from './sheet.js';
import { withSigns } from './signs.js';

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
    <p class="help" lang="en" dir="ltr">${withSigns(panel.sentence)}</p>
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
          ${lines.map((line) => html`<li>${withSigns(line)}</li>`)}
        </ul>
      </details>`;

const verdictWords = {
  'fit': 'fit_verdict',
  'fit-with-conditions': 'fit-with-conditions',
  'unfit': 'unfit',
} as const;

function ladder({ stored, language }: SheetState): TemplateResult {
  if (stored === undefined) return html`<p class="help">${language.words.methodsLater}</p>`;
  const { methods } = stored.estimate;
  const dearest = Math.max(...methods.rungs.map(({ priceRange }) => Number(priceRange?.p90.amount ?? 0)));
  const [fit, unfit] = [true, false].map((isFit) =>
    methods.rungs
      .filter(({ verdict }) => (verdict !== 'unfit') === isFit)
      .map((rung) => ladderRung(rung, methods, { language, dearest })),
  );
  return html`<ul class="ladder">
      ${fit}
    </ul>
    ${unfit.length === 0 ? nothing : unfitRungs(unfit, language)}`;
}

/** What is not fit is there to be looked up, each with the reason that decided. */
const unfitRungs = (rungs: readonly TemplateResult[], { words }: Language): TemplateResult =>
  html`<details>
    <summary>${words.unfit} (${rungs.length})</summary>
    <ul class="ladder">
      ${rungs}
    </ul>
  </details>`;

interface LadderScale {
  readonly language: Language;
  /** The amount at the end of every bar. */
  readonly dearest: number;
}

function ladderRung(
  { rung, verdict, title, priceRange, workingDays, deciding, conditions }: RungSection,
  { planned, recommended }: StoredEstimate['estimate']['methods'],
  { language, dearest }: LadderScale,
): TemplateResult {
  const { words } = language;
  const mark = (isOn: boolean, word: string) => (isOn ? html`<em class="mark">${word}</em>` : nothing);
  return html`<li class=${verdict}>
    <strong lang="en" dir="ltr">${title}</strong>
    <em>${words[verdictWords[verdict]]}</em>
    ${mark(rung === planned.rung, words.planned)} ${mark(rung === recommended?.rung, words.recommended)}
    ${priceRange === undefined ? nothing : rungPrice(priceRange, { language, dearest })}
    ${
      workingDays === undefined
        ? nothing
        : html`<span class="soft">${words.days}: ${figure(workingDays.p50, language)}</span>`
    }
    <p lang="en" dir="ltr">${withSigns(deciding.text)}</p>
    ${texts(
      words.conditions,
      conditions.map(({ text }) => text),
    )}
  </li>`;
}

/** P10 to P90 on one scale for all ways, with the middle marked. */
function rungPrice(
  { p10, p50, p90 }: NonNullable<RungSection['priceRange']>,
  { language, dearest }: LadderScale,
): TemplateResult {
  const [from, middle, to] = [p10, p50, p90].map(({ amount }) => (100 * Number(amount)) / dearest);
  return html`<span class="rung-price"
    ><svg class="spread" viewBox="0 0 100 8" preserveAspectRatio="none" aria-hidden="true">
      <line x1="0" y1="4" x2="100" y2="4"></line>
      <rect x=${from} y="1" width=${Math.max(1, to - from)} height="6"></rect>
      <rect class="middle" x=${middle - 0.5} y="0" width="1" height="8"></rect>
    </svg>
    ${money(p10, language)} – ${money(p90, language)}</span
  >`;
}

function drivers({ stored, language }: SheetState): TemplateResult {
  if (stored === undefined) return html`<p class="help">${language.words.driversLater}</p>`;
  return html`${driverBars(stored, language)} ${betterEvidence(stored, language)}`;
}

/** What would bring the contingency down, and by how much. */
function betterEvidence({ estimate }: StoredEstimate, language: Language): TemplateResult | typeof nothing {
  const { betterEvidence: offered } = estimate.totals;
  if (offered.length === 0) return nothing;
  return html`<p>${language.words.betterEvidence}</p>
    <ul>
      ${offered.map(
        ({ evidence, saves }) =>
          html`<li>
            ${wordFor(language, evidence)}: <strong>${money(saves, language)}</strong> ${language.words.less}
          </li>`,
      )}
    </ul>`;
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
