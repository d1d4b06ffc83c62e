import type { Coating, ResinSystem } from '#lib/catalogue';
import type { Cite } from '#lib/provenance';
import { Defect } from '#lib/kernel';
import type { GateKind } from '#lib/work';

/** One condition that work waits for. */
export type GateName =
  'dew-margin' | 'humidity' | 'too-cold' | 'too-warm' | 'rain' | 'wind' | 'core-moisture';

export interface Requirement {
  /** Which gate the requirement belongs to. */
  readonly gate: GateName;
  /** The requirement in words. */
  readonly text: string;
  /** Value that must be kept. */
  readonly limit: number;
  /** Unit of the limit. */
  readonly unit: string;
  /** Source of the limit. */
  readonly cite: Cite;
}

export interface GateLimits {
  readonly kind: GateKind;
  readonly coldestC?: number;
  readonly warmestC?: number;
  readonly dampestPercent?: number;
  readonly cite?: Cite;
  /** For a resin: hours to gel at the reference temperature, and how they grow in the cold. */
  readonly gel?: { readonly ageH: number; readonly activationEnergyKJPerMol: number };
}

export const DEW_MARGIN_K = 3;
export const MOST_CORE_MOISTURE_PERCENT = 12;
const MOST_WIND_M_PER_S = 10;

/** Limits of a resin with its hardener: from its catalogue entry. */
export function resinLimits(resin: ResinSystem, hardenerCode: string): GateLimits {
  const hardener = resin.hardeners.find(({ code }) => code === hardenerCode);
  if (hardener === undefined) throw new Defect(`"${resin.code}" has no hardener "${hardenerCode}"`);
  return {
    kind: 'resin',
    coldestC: hardener.lowestTemperatureC.value,
    warmestC: hardener.highestTemperatureC.value,
    dampestPercent: 85,
    cite: hardener.lowestTemperatureC.cite,
    gel: { ageH: hardener.gelH.value, activationEnergyKJPerMol: resin.activationEnergyKJPerMol.value },
  };
}

/** Hours a coating stays tender; from memory. */
export const TOUCH_DRY_H = 4;

export const coatingLimits = (coating: Coating): GateLimits => ({
  kind: 'coating',
  coldestC: coating.lowestTemperatureC.value,
  dampestPercent: coating.highestRelativeHumidityPercent.value,
  cite: coating.highestRelativeHumidityPercent.cite,
});

/** What must hold before and while a step is done, in the words of a job sheet. Without a forecast this is the answer. */
export function requirementsOf(
  limits: GateLimits,
  shelter: 'shed' | 'tent' | 'open',
): readonly Requirement[] {
  const sky: readonly Requirement[] =
    shelter === 'open'
      ? [
          { gate: 'rain', text: 'no rain', limit: 0, unit: 'mm/h', cite: { source: 'COMMON-PRACTICE' } },
          {
            gate: 'wind',
            text: `wind at most ${MOST_WIND_M_PER_S} m/s`,
            limit: MOST_WIND_M_PER_S,
            unit: 'm/s',
            cite: { source: 'FROM-MEMORY', note: 'loose cloth lifts and dust settles' },
          },
        ]
      : [];
  switch (limits.kind) {
    case 'none':
      return [];
    case 'dry-deck':
      return sky.filter(({ gate }) => gate === 'rain');
    case 'resin':
      return [...surface(limits), ...moisture, ...sky];
    case 'coating':
      return [...surface(limits), ...sky];
  }
}

const moisture: readonly Requirement[] = [
  {
    gate: 'core-moisture',
    text: `core and edges at most ${MOST_CORE_MOISTURE_PERCENT} % moisture, two equal readings a few days apart`,
    limit: MOST_CORE_MOISTURE_PERCENT,
    unit: '%',
    cite: { source: 'INJECTION-LIMITS', note: 'wood below 12 % for epoxy' },
  },
];

function surface({
  kind,
  coldestC,
  warmestC,
  dampestPercent,
  cite = { source: 'FROM-MEMORY' },
}: GateLimits): readonly Requirement[] {
  const until = kind === 'coating' ? 'the coat is touch dry' : 'gel';
  return [
    {
      gate: 'dew-margin',
      text: `surface at least ${DEW_MARGIN_K} K above the dew point, from the start until ${until}`,
      limit: DEW_MARGIN_K,
      unit: 'K',
      cite: { source: 'ISO-8502-4' },
    },
    ...(dampestPercent === undefined
      ? []
      : [
          {
            gate: 'humidity' as const,
            text: `relative humidity at most ${dampestPercent} %`,
            limit: dampestPercent,
            unit: '%',
            cite,
          },
        ]),
    ...(coldestC === undefined
      ? []
      : [
          {
            gate: 'too-cold' as const,
            text: `deck at least ${coldestC} degC until ${until}`,
            limit: coldestC,
            unit: 'degC',
            cite,
          },
        ]),
    ...(warmestC === undefined
      ? []
      : [
          {
            gate: 'too-warm' as const,
            text: `deck at most ${warmestC} degC when it goes on`,
            limit: warmestC,
            unit: 'degC',
            cite,
          },
        ]),
  ];
}
