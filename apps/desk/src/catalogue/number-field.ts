import type { ProblemEntry } from 'kingplank-sdk';
import { html, nothing, type TemplateResult } from 'lit';

export interface NumberFields {
  /** Read only where the edition is published. */
  readonly isOpen: boolean;
  readonly faults: readonly ProblemEntry[];
}

/** A number of a form, named by its place in the entry, with what the service has against it. */
export function numberField(
  { isOpen, faults }: NumberFields,
  at: string,
  label: string,
  value: string,
): TemplateResult {
  const fault = faults.find(({ pointer }) => pointer === at);
  return html`<label
    ><span>${label}</span
    ><input
      name=${at}
      inputmode="decimal"
      autocomplete="off"
      dir="ltr"
      ?readonly=${!isOpen}
      aria-invalid=${fault === undefined ? nothing : 'true'}
      .value=${value}
    />${fault === undefined ? nothing : html`<span class="fault">${fault.detail}</span>`}</label
  >`;
}
