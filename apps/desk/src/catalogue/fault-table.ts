import type { ProblemEntry } from 'kingplank-sdk';
import { html, nothing, type TemplateResult } from 'lit';
import type { Desk } from '../desk.js';
import { table } from '../table.js';

/** What the service said against a sheet, by row and column. */
export const refusals = (desk: Desk, faults: readonly ProblemEntry[]): TemplateResult | typeof nothing =>
  faults.length === 0
    ? nothing
    : faultRows(
        desk,
        faults.map(({ row, column, detail }) => ({ row, column, text: detail })),
      );

interface FaultRow {
  readonly row?: number | undefined;
  readonly column?: string | undefined;
  readonly text: string;
}

export const faultRows = ({ words }: Desk, faults: readonly FaultRow[]): TemplateResult =>
  html`<h2>${words.faults} (${faults.length})</h2>
    ${table(
      words.faults,
      [{ head: words.row, isNumber: true }, { head: words.columns }, { head: words.fault }],
      faults.map(
        ({ row, column, text }) =>
          html`<tr>
            <td class="number">${row ?? ''}</td>
            <td>${column ?? ''}</td>
            <td class="fault">${text}</td>
          </tr>`,
      ),
    )}`;
