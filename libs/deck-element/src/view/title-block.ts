import { html, nothing, type TemplateResult } from 'lit';
import type { EstimatePreview } from 'kingplank-sdk';
import { wordFor } from '../words/words.js';
import { figure, money } from './parts.js';
import type { SheetState } from './sheet.js';

/** The block in the corner of the sheet: what the drawing comes to, while it is drawn. */
export function titleBlock(state: SheetState): TemplateResult {
  const { words } = state.language;
  const shown = 'last' in state.preview ? state.preview.last : undefined;
  return html`<div
    class="block"
    part="title-block"
    aria-busy=${state.preview.kind === 'asking' ? 'true' : 'false'}
  >
    ${cell(words.title, titleOf(state), 'wide')} ${figures(state, shown)}
    ${cell(words.scale, state.units === 'si' ? 'mm' : 'in', 'small')}
  </div>`;
}

const titleOf = ({ record, language }: SheetState): string =>
  record.title ?? record.panel.name ?? language.words.sheet;

const cell = (name: string, value: string, kind: string): TemplateResult =>
  html`<div class="cell ${kind}">
    <span class="cell-name">${name}</span><span class="cell-value">${value}</span>
  </div>`;

function figures(state: SheetState, shown: EstimatePreview | undefined): readonly TemplateResult[] {
  const { language } = state;
  const { words } = language;
  const price = shown?.price;
  const range = price?.range;
  return [
    html`<div class="cell price" part="price">
      <span class="cell-name">${words.price}</span>
      <span class="cell-value">${price === undefined ? '—' : money(price.withoutContingency, language)}</span>
      <span class="cell-range"
        >${range === undefined ? nothing : html`${money(range.p10, language)} – ${money(range.p90, language)}`}</span
      >
    </div>`,
    cell(
      words.hours,
      shown === undefined ? '—' : `${figure(shown.summary.labourLikelyH, language)} h`,
      'short',
    ),
    cell(words.days, shown === undefined ? '—' : figure(shown.summary.workingDays.p50, language), 'short'),
    cell(words.verdict, shown === undefined ? '—' : wordFor(language, shown.panel.verdict), 'verdict'),
  ];
}
