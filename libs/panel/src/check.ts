import { fraction } from '#lib/units';
import { derived, type Cite, type Figure } from '#lib/provenance';
import type { StateName } from './states.js';

export type Verdict = 'passes' | 'fails' | 'not-established';

/** A demand against a capacity. Failing is a result; `why` is the utilisation with everything it came from. */
export interface PanelCheckItem {
  readonly code: string;
  readonly title: string;
  readonly state?: StateName;
  readonly load?: string;
  readonly fitting?: string;
  readonly demand?: number;
  readonly capacity?: number;
  readonly unit: string;
  /** Demand over capacity. */
  readonly utilisation?: number;
  readonly verdict: Verdict;
  readonly governs: string;
  /** What would make it pass. */
  readonly remedy?: string;
  readonly source: string;
  readonly reason?: string;
  readonly why?: Figure;
}

export interface CheckInputs {
  readonly code: string;
  readonly title: string;
  readonly where: { readonly state?: StateName; readonly load?: string; readonly fitting?: string };
  readonly demand: Figure;
  readonly capacity: Figure;
  readonly governs: string;
  readonly cite: Cite;
  /** Told how many times too much is asked. */
  readonly remedy: (excess: number) => string;
}

export function defineCheck({ code, title, where, demand, capacity, governs, cite, remedy }: CheckInputs): PanelCheckItem {
  const utilisation = demand.value / capacity.value;
  const passes = utilisation <= 1;
  const why = derived('1', fraction(utilisation), `utilisation: ${title}`, {
    formula: 'panel.utilisation', title: 'Demand over capacity', symbol: 'u', cite, inputs: { demand, capacity },
  });
  return {
    code, title, ...where, demand: demand.value, capacity: capacity.value, unit: demand.unit, utilisation,
    verdict: passes ? 'passes' : 'fails', governs, source: cite.source, why,
    ...(passes ? {} : { remedy: remedy(utilisation) }),
  };
}

export const notEstablished = (item: Pick<PanelCheckItem, 'code' | 'title' | 'unit' | 'source'> & { readonly reason: string; readonly where: CheckInputs['where'] }): PanelCheckItem => ({
  code: item.code, title: item.title, unit: item.unit, source: item.source, reason: item.reason, ...item.where,
  verdict: 'not-established', governs: 'nothing could be compared',
});

/** Three significant digits, for sentences. */
export const inWords = (value: number): string => String(Number(value.toPrecision(3)));
