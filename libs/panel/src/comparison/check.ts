import { fraction } from '#lib/units';
import { derived, type Cite, type Figure } from '#lib/provenance';
import type { StateName } from '../plate/states.js';

export type Verdict = 'passes' | 'fails' | 'not-established';

/** A demand against a capacity. Failing is a result. */
export interface PanelCheckItem {
  /** Names this check among all, such as `repaired:person:core-shear`; its derivation has the same key. */
  readonly key: string;
  /** Code of the panel's check. */
  readonly code: string;
  /** Name of the panel's check. */
  readonly title: string;
  /** State of the deck that is checked. */
  readonly state?: StateName;
  /** Load that it is checked under. */
  readonly load?: string;
  /** Fitting that it is checked at. */
  readonly fitting?: string;
  /** What the panel must bear or keep to. */
  readonly demand?: number;
  /** What the panel can bear or is allowed. */
  readonly capacity?: number;
  /** Unit of the panel's demand and capacity. */
  readonly unit: string;
  /** Demand over capacity. */
  readonly utilisation?: number;
  /** Verdict of the panel's check. */
  readonly verdict: Verdict;
  /** What in the panel decides. */
  readonly governs: string;
  /** What would make it pass. */
  readonly remedy?: string;
  /** Source of the panel's requirement. */
  readonly source: string;
  /** Why there is no figure, where there is none. */
  readonly reason?: string;
  /** Of the repaired panel: what the same check comes to on the deck as built. */
  readonly asBuilt?: BuiltCheck;
}

/** `isNoWorse` where the repair uses no more of what is allowed than the deck did: a check that both fail is not the repair's. */
export interface BuiltCheck {
  /** Demand over capacity of the deck as it was built. */
  readonly utilisation: number;
  /** Verdict on the deck as it was built. */
  readonly verdict: Verdict;
  /** Whether the repaired deck is no worse than that. */
  readonly isNoWorse: boolean;
}

/** A check with its utilisation and everything that came from. */
export interface ReasonedCheck {
  readonly item: PanelCheckItem;
  readonly why?: Figure;
}

export const keyOf = (code: string, { state, load, fitting }: CheckInputs['where']): string =>
  [state, load, fitting, code].filter((part) => part !== undefined).join(':');

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

export function defineCheck({
  code,
  title,
  where,
  demand,
  capacity,
  governs,
  cite,
  remedy,
}: CheckInputs): ReasonedCheck {
  const utilisation = demand.value / capacity.value;
  const passes = utilisation <= 1;
  const why = derived('1', fraction(utilisation), `utilisation: ${title}`, {
    formula: 'panel.utilisation',
    title: 'Demand over capacity',
    symbol: 'u',
    cite,
    inputs: { demand, capacity },
  });
  const item: PanelCheckItem = {
    key: keyOf(code, where),
    code,
    title,
    ...where,
    demand: demand.value,
    capacity: capacity.value,
    unit: demand.unit,
    utilisation,
    verdict: passes ? 'passes' : 'fails',
    governs,
    source: cite.source,
    ...(passes ? {} : { remedy: remedy(utilisation) }),
  };
  return { item, why };
}

export interface NotEstablished {
  readonly code: string;
  readonly title: string;
  readonly unit: string;
  readonly source: string;
  readonly reason: string;
  readonly where: CheckInputs['where'];
}

/** A figure we cannot support is absent, with the reason. */
export const notEstablished = ({
  code,
  title,
  unit,
  source,
  reason,
  where,
}: NotEstablished): ReasonedCheck => ({
  item: {
    key: keyOf(code, where),
    code,
    title,
    unit,
    source,
    reason,
    ...where,
    verdict: 'not-established',
    governs: 'nothing could be compared',
  },
});

/** Three significant digits, for sentences. */
export const inWords = (value: number): string => String(Number(value.toPrecision(3)));
