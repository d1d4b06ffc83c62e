import { html, type TemplateResult } from 'lit';

export interface Column {
  readonly head: string;
  readonly isNumber?: boolean;
  /** Left out where the page is narrow. */
  readonly isLess?: boolean;
}

/** A table that scrolls by itself where the page is too narrow for it. */
export const table = (label: string, columns: readonly Column[], rows: unknown): TemplateResult =>
  html`<div class="scroll" tabindex="0" role="region" aria-label=${label}>
    <table>
      <thead>
        <tr>
          ${columns.map((column) => html`<th scope="col" class=${classOf(column)}>${column.head}</th>`)}
        </tr>
      </thead>
      <tbody>
        ${rows}
      </tbody>
    </table>
  </div>`;

const classOf = ({ isNumber, isLess }: Column): string =>
  [isNumber === true ? 'number' : '', isLess === true ? 'less' : ''].join(' ').trim();
