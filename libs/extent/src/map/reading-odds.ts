import { defineFormula, type Cite } from '#lib/provenance';
import { fraction } from '#lib/units';
import { seenBy, shareOfScale } from './meter-response.js';
import type { Team } from './team.js';
import type { PlugCondition, HammerSound, Reading, Survey } from '../reading.js';

/**
 * How often a reading of this kind is seen over bad core against how often over sound core. Nobody has published
 * rates; these are judgements that keep the order everyone agrees on: a plug is proof and outranks any number of
 * symptoms, which may all err together; a void is plainer than a dull sound, and meters err both ways. The caller may
 * replace them.
 */
export interface ReadingOdds {
  readonly plug: Readonly<Record<PlugCondition, number>>;
  readonly sounding: Readonly<Record<HammerSound, number>>;
  /** Odds at the wet reference; at the dry reference they are the inverse, between them they run evenly in the logarithm. */
  readonly meterWet: number;
  /** Share of its weight that an unreliable reading keeps. */
  readonly unreliableShare: number;
}

export const usualOdds: ReadingOdds = {
  plug: { 'rotten': 1e6, 'wet-bonded': 1e6, 'debonded-dry': 1e6, 'damp-sound': 1 / 100, 'dry-sound': 1e-6 },
  sounding: { void: 8, dull: 4, sharp: 1 / 4 },
  meterWet: 3,
  unreliableShare: 0.25,
};

export const oddsCite: Cite = {
  source: 'FROM-MEMORY',
  note: 'judgement: surveyors report that symptoms err both ways and that only a plug is proof; no rates are published',
};

/** One reading as evidence: how likely it is over bad core and over sound core; only their ratio moves the map. */
export interface Evidence {
  readonly ifBad: number;
  readonly ifSound: number;
  /** How far beside its own place it may belong, in standard deviations of the field. */
  readonly edge: number;
}

/** Nobody sounds an edge exactly. */
export const SYMPTOM_EDGE = 0.1;

/** A plug shows the core of its own hole. */
const PLUG_EDGE = 0.01;

export const bayesOdds = defineFormula({
  id: 'extent.chance-after-reading',
  title: 'Chance that core is bad after one reading',
  cite: { source: 'BAYES', clause: 'odds form' },
  inputs: {
    chanceBefore: { symbol: 'p', unit: '1', meaning: 'chance before the reading', above: 0, below: 1 },
    odds: { symbol: 'LR', unit: '1', meaning: 'odds of the reading over bad core to sound core', above: 0 },
  },
  output: { symbol: "p'", unit: '1', meaning: 'chance after the reading' },
  evaluate: ({ chanceBefore, odds }) =>
    fraction((chanceBefore * odds) / (chanceBefore * odds + 1 - chanceBefore)),
  // By hand: 0.25 before, odds 4: 1.00 / (1.00 + 0.75) = 0.5714.
  worked: [{ at: 'by hand', given: { chanceBefore: 0.25, odds: 4 }, printed: '0.5714' }],
});

/** A sounding by the rates of this survey's hammer and a meter reading by its response, where they are sought; anything else by its odds. */
export function evidenceOf(
  reading: Reading,
  meter: Survey['meter'],
  odds: ReadingOdds,
  team: Team,
): Evidence {
  const { ifBad, ifSound } = likelihoodOf(reading, meter, odds, team);
  const edge = reading.kind === 'plug' ? PLUG_EDGE : SYMPTOM_EDGE;
  if (reading.isUnreliable !== true) return { ifBad, ifSound, edge };
  const ratio = (ifBad / ifSound) ** odds.unreliableShare;
  return { ifBad: ratio / (1 + ratio), ifSound: 1 / (1 + ratio), edge };
}

function likelihoodOf(
  reading: Reading,
  meter: Survey['meter'],
  odds: ReadingOdds,
  team: Team,
): Pick<Evidence, 'ifBad' | 'ifSound'> {
  if (reading.kind === 'sounding' && team.hammer !== undefined)
    return { ifBad: team.hammer.overBad[reading.sound], ifSound: team.hammer.overSound[reading.sound] };
  if (reading.kind === 'moisture' && team.meter !== undefined && meter !== undefined)
    return seenBy(team.meter, shareOfScale(reading.value, meter));
  const ratio = oddsOf(reading, meter, odds);
  return { ifBad: ratio / (1 + ratio), ifSound: 1 / (1 + ratio) };
}

/** Odds of bad core to sound core that one reading speaks for. */
export function oddsOf(reading: Reading, meter: Survey['meter'], odds: ReadingOdds): number {
  switch (reading.kind) {
    case 'plug':
      return odds.plug[reading.condition];
    case 'sounding':
      return odds.sounding[reading.sound];
    case 'moisture':
      return meter === undefined ? 1 : odds.meterWet ** (2 * wetness(reading.value, meter) - 1);
  }
}

/** Where a meter reading stands between its dry and wet references, 0 to 1; beyond them it says no more than at them. */
export const wetness = (
  value: number,
  { dryReference, wetReference }: NonNullable<Survey['meter']>,
): number => Math.min(1, Math.max(0, (value - dryReference) / (wetReference - dryReference)));

/** What a reading says on its own: odds of two or more either way, else nothing. */
export function verdictOf(
  reading: Reading,
  meter: Survey['meter'],
  odds: ReadingOdds,
): 'bad' | 'sound' | 'undecided' {
  const ratio = oddsOf(reading, meter, odds);
  if (ratio >= 2) return 'bad';
  return ratio <= 0.5 ? 'sound' : 'undecided';
}
