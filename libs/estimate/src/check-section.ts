import type { PanelCheck, StateResult } from '#lib/panel';
import type { Check, PanelSection } from './estimate.js';
import type { Figure } from '#lib/provenance';

/** Four states side by side, short enough to read. */
export const panelSection = (check: PanelCheck, sizeMm: readonly [number, number]): PanelSection => ({
  verdict: check.verdict, shortfalls: check.shortfalls, sizeMm,
  loads: check.loads.map(({ code, title, pressureKPa }) => ({ code, name: title, value: pressureKPa, unit: 'kPa' })),
  states: check.states.map(({ state, section, responses, governing }) => ({
    state, bendingXNmm: section.bendingXNmm, bendingYNmm: section.bendingYNmm, shearNPerMm: section.shearNPerMm,
    deflections: responses.map(({ load, deflectionMm }) => ({ load, deflectionMm })),
    ...(governing === undefined ? {} : { governs: governing.load === undefined ? governing.code : `${governing.code}, ${governing.load}`, utilisation: governing.utilisation }),
  })),
  ratios: check.ratios.map(({ code, title, load, ratio }) => ({ code: load === undefined ? code : `${code}-${load}`, name: load === undefined ? title : `${title}, ${load}`, value: ratio, unit: '1' })),
  limits: check.limits,
});

/** The repaired panel in full; of the other states what governs, so that a reader sees what the repair is measured by. */
export function panelChecks(check: PanelCheck): { readonly checks: readonly Check[]; readonly derivations: Readonly<Record<string, Figure>> } {
  const shown = check.states.flatMap((state) => (state.state === 'repaired' ? state.checks : governingOf(state)));
  const items = [...shown, ...check.fittings];
  const checks = items.map((item): Check => ({
    code: codeOf(item), title: item.title, unit: item.unit, verdict: item.verdict, governs: item.governs, source: item.source,
    ...(item.state === undefined ? {} : { state: item.state }),
    ...(item.demand === undefined ? {} : { demand: item.demand }), ...(item.capacity === undefined ? {} : { capacity: item.capacity }),
    ...(item.utilisation === undefined ? {} : { utilisation: item.utilisation }), ...(item.remedy === undefined ? {} : { remedy: item.remedy }),
    ...(item.reason === undefined ? {} : { reason: item.reason }),
  }));
  const derivations = Object.fromEntries(items.flatMap((item) => (item.why === undefined ? [] : [[`check:${codeOf(item)}`, item.why] as const])));
  return { checks, derivations };
}

const governingOf = ({ checks, governing }: StateResult): StateResult['checks'] =>
  checks.filter(({ code, load }) => code === governing?.code && load === governing.load);

const codeOf = ({ code, state, load, fitting }: StateResult['checks'][number]): string =>
  ['panel', code, state, load, fitting].filter((part) => part !== undefined).join('-');
