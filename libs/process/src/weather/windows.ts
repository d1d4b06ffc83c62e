import type { Coating, ResinSystem } from '#lib/catalogue';
import { problem, refusal, success, type Outcome, type Problem } from '#lib/kernel';
import { rateRatioOf } from '../cure/arrhenius.js';
import { CURE_REFERENCE_C } from '../cure/cure-plan.js';
import type { GateKind } from '../operations/operation.js';
import { choiceFaults, countFaults, numberFaults, optionalFaults, repeatFaults } from '../request-faults.js';
import type { ProcessAssumption } from '../unit-figures.js';
import { deckTemperature, warmthAssumptions, warmthFaults, type DeckWarmth } from './deck.js';
import { epochOf, forecastFaults, type Forecast, type ForecastHour } from './forecast.js';
import { coatingLimits, requirementsOf, resinLimits, type GateLimits, type GateName, type Requirement } from './gates.js';
import { dewPointOf } from './humid-air.js';
import { readInstant, zoneOffset } from './instant.js';

/** One step that waits for weather. */
export interface WeatherStep {
  readonly code: string;
  readonly title: string;
  readonly gate: GateKind;
  /** Hours of work before the clock of the gel begins to matter no more. */
  readonly workH: number;
  /** For a coating: its catalogue entry; for resin the request's own. */
  readonly coating?: Coating;
  /** Hours after the work until rain and dew no longer hurt; from the resin's gel, or a coating's touch-dry default. */
  readonly untilSafeH?: number;
}

export interface WeatherRequest {
  readonly steps: readonly WeatherStep[];
  readonly resin?: ResinSystem;
  readonly hardener?: string;
  readonly shelter: 'shed' | 'tent' | 'open';
  readonly warmth?: DeckWarmth;
  readonly coreMoisturePercent?: number;
  readonly forecast?: Forecast;
}

/** Hours in which a step may start. */
export interface WorkWindow {
  readonly rank: number;
  readonly fromAt: string;
  readonly untilAt: string;
  readonly startHours: number;
  readonly leastDewMarginK: number;
  readonly meanDeckC: number;
  /** What shuts the window, or `end-of-forecast`. */
  readonly limitedBy: GateName | 'end-of-forecast';
}

export interface StepWeather {
  readonly code: string;
  readonly title: string;
  readonly requires: readonly Requirement[];
  readonly windows: readonly WorkWindow[];
  /** Share of the forecast's hours that each gate keeps shut. */
  readonly shutBy: readonly { readonly gate: GateName; readonly hours: number }[];
  readonly note?: string;
}

export interface WeatherHour {
  readonly at: string;
  readonly dewPointC: number;
  readonly deckC: number;
  readonly dewMarginK: number;
}

export interface WeatherPlan {
  readonly steps: readonly StepWeather[];
  readonly hours: readonly WeatherHour[];
  readonly assumptions: readonly ProcessAssumption[];
}

/** When each step may start: the requirements always, the windows when there is a forecast. */
export function weatherGates(request: WeatherRequest): Outcome<WeatherPlan> {
  const problems = weatherFaults(request);
  if (problems.length > 0) return refusal(...problems);
  const sky = request.forecast === undefined ? undefined : skyOf(request.forecast, request.warmth);
  return success({
    steps: request.steps.map((step) => stepWeather(request, step, sky)),
    hours: sky?.hours.map(({ at }, index) => ({ at, dewPointC: sky.dewC[index], deckC: sky.deckC[index], dewMarginK: sky.deckC[index] - sky.dewC[index] })) ?? [],
    assumptions: warmthAssumptions('/warmth', request.warmth),
  });
}

/** A forecast worked out once: deck, dew point, and what falls from the sky. */
export interface Sky {
  readonly hours: readonly ForecastHour[];
  readonly deckC: Float64Array;
  readonly dewC: Float64Array;
}

export function skyOf({ hours, timeZone }: Forecast, warmth?: DeckWarmth): Sky {
  const zone = timeZone === undefined ? undefined : zoneOffset(timeZone);
  const deckC = Float64Array.from(hours, (hour) => {
    const epochMs = epochOf(hour);
    const offsetMin = zone === undefined ? readInstant(hour.at)?.offsetMin ?? 0 : zone(epochMs);
    return deckTemperature(hour.temperatureC, (((epochMs / 3_600_000 + offsetMin / 60) % 24) + 24) % 24, warmth);
  });
  return { hours, deckC, dewC: Float64Array.from(hours, ({ temperatureC, relativeHumidityPercent }) => dewPointOf(temperatureC, relativeHumidityPercent)) };
}

function stepWeather(request: WeatherRequest, step: WeatherStep, sky: Sky | undefined): StepWeather {
  const limits = limitsOf(request, step);
  const requires = requirementsOf(limits, request.shelter);
  const named = { code: step.code, title: step.title, requires };
  if (sky === undefined) return { ...named, windows: [], shutBy: [], note: 'no forecast was given; these are the conditions to wait for' };
  const shut = shutGates(request, limits, sky);
  return { ...named, windows: windowsOf(sky, startsOf(request, step, { sky, shut }), shut), shutBy: tally(shut) };
}

export const limitsOf = ({ resin, hardener }: WeatherRequest, { gate, coating }: WeatherStep): GateLimits => {
  if (gate === 'resin' && resin !== undefined) return resinLimits(resin, hardener ?? '');
  return gate === 'coating' && coating !== undefined ? coatingLimits(coating) : { kind: gate };
};

/** The gate that keeps each hour shut, if any; the first that bites, in the order of the job sheet. */
function shutGates(request: Pick<WeatherRequest, 'shelter' | 'coreMoisturePercent'>, limits: GateLimits, sky: Sky): readonly (GateName | undefined)[] {
  const requires = requirementsOf(limits, request.shelter);
  return sky.hours.map((hour, index) => {
    const marginK = sky.deckC[index] - sky.dewC[index];
    const values: Readonly<Record<GateName, number>> = {
      'dew-margin': -marginK, humidity: hour.relativeHumidityPercent, 'too-cold': -sky.deckC[index], 'too-warm': sky.deckC[index],
      rain: hour.rainMm ?? 0, wind: hour.windMPerS ?? 0, 'core-moisture': request.coreMoisturePercent ?? 0,
    };
    return requires.find(({ gate, limit }) => values[gate] > (gate === 'dew-margin' || gate === 'too-cold' ? -limit : limit))?.gate;
  });
}

interface SkyWithShut {
  readonly sky: Sky;
  readonly shut: readonly (GateName | undefined)[];
}

/** Hours at which the step may start: everything open until the work is done, and until the resin no longer minds. */
function startsOf(request: WeatherRequest, step: WeatherStep, { sky, shut }: SkyWithShut): readonly boolean[] {
  const shutBefore = cumulative(shut.map((gate) => gate !== undefined));
  const shutAfterWork = cumulative(shut.map((gate) => gate !== undefined && gate !== 'too-warm' && gate !== 'wind'));
  return shut.map((_, start) => {
    const workEnd = start + Math.max(1, Math.ceil(step.workH));
    const safeEnd = workEnd + Math.ceil(safeHours(request, step, sky.deckC[Math.min(workEnd, shut.length - 1)]));
    if (safeEnd > shut.length) return false;
    return shutBefore[workEnd] === shutBefore[start] && shutAfterWork[safeEnd] === shutAfterWork[workEnd];
  });
}

function cumulative(flags: readonly boolean[]): Int32Array {
  const sums = new Int32Array(flags.length + 1);
  for (let index = 0; index < flags.length; index += 1) sums[index + 1] = sums[index] + (flags[index] ? 1 : 0);
  return sums;
}

/** Hours a coating stays tender; from memory. */
const TOUCH_DRY_H = 4;

function safeHours({ resin, hardener }: WeatherRequest, step: WeatherStep, deckC: number): number {
  if (step.untilSafeH !== undefined) return step.untilSafeH;
  if (step.gate === 'coating') return TOUCH_DRY_H;
  if (step.gate !== 'resin' || resin === undefined) return 0;
  const gelH = (resin.hardeners.find(({ code }) => code === hardener) ?? resin.hardeners[0]).gelH.value;
  return Math.min(48, gelH / rateRatioOf(resin.activationEnergyKJPerMol.value, CURE_REFERENCE_C, deckC));
}

function windowsOf(sky: Sky, starts: readonly boolean[], shut: readonly (GateName | undefined)[]): readonly WorkWindow[] {
  const runs = runsOf(starts);
  const found = runs.map(([from, to]) => windowAt({ sky, shut }, from, to));
  return found.sort((a, b) => b.startHours - a.startHours || epochOf({ at: a.fromAt }) - epochOf({ at: b.fromAt })).map((window, index) => ({ ...window, rank: index + 1 }));
}

function runsOf(starts: readonly boolean[]): readonly (readonly [number, number])[] {
  return starts.flatMap((open, index) => {
    if (!open || starts[index - 1]) return [];
    const end = starts.findIndex((still, at) => at > index && !still);
    return [[index, end === -1 ? starts.length : end] as const];
  });
}

function windowAt({ sky, shut }: SkyWithShut, from: number, to: number): WorkWindow {
  const margins = sky.deckC.subarray(from, to).map((deck, index) => deck - sky.dewC[from + index]);
  const next = shut.slice(to).find((gate) => gate !== undefined);
  return {
    rank: 0, fromAt: sky.hours[from].at, untilAt: sky.hours[to - 1].at, startHours: to - from,
    leastDewMarginK: margins.reduce((least, margin) => Math.min(least, margin)),
    meanDeckC: sky.deckC.subarray(from, to).reduce((sum, deck) => sum + deck, 0) / (to - from),
    limitedBy: next ?? 'end-of-forecast',
  };
}

function tally(shut: readonly (GateName | undefined)[]): StepWeather['shutBy'] {
  const gates = [...new Set(shut.flatMap((gate) => gate ?? []))];
  return gates.map((gate) => ({ gate, hours: shut.filter((name) => name === gate).length })).sort((a, b) => b.hours - a.hours);
}

/** Which hours of a sky are open for work of this kind; the calendar walks along it. */
export const openHours = (request: Pick<WeatherRequest, 'shelter' | 'coreMoisturePercent'>, limits: GateLimits, sky: Sky): Uint8Array =>
  Uint8Array.from(shutGates(request, limits, sky), (gate) => (gate === undefined ? 1 : 0));

function weatherFaults(request: WeatherRequest): readonly Problem[] {
  const needsResin = request.steps.some(({ gate }) => gate === 'resin') && request.resin === undefined;
  return [
    ...countFaults('/steps', request.steps.length, { least: 1, most: 200 }),
    ...repeatFaults('/steps', 'code', request.steps.map(({ code }) => code)),
    ...request.steps.flatMap((step, index) => stepFaults(step, `/steps/${index}`)),
    ...(needsResin ? [problem('missing', '/resin', { expected: 'the resin system, because a step waits for its gel' })] : []),
    ...choiceFaults('/shelter', request.shelter, ['shed', 'tent', 'open']),
    ...warmthFaults('/warmth', request.warmth),
    ...optionalFaults('/coreMoisturePercent', request.coreMoisturePercent, { from: 0, upTo: 700, unit: '%' }),
    ...(request.forecast === undefined ? [] : forecastFaults(request.forecast, '/forecast')),
  ];
}

const stepFaults = (step: WeatherStep, at: string): readonly Problem[] => [
  ...choiceFaults(`${at}/gate`, step.gate, ['none', 'dry-deck', 'resin', 'coating']),
  ...numberFaults(`${at}/workH`, step.workH, { from: 0, upTo: 24, unit: 'h' }),
  ...optionalFaults(`${at}/untilSafeH`, step.untilSafeH, { from: 0, upTo: 240, unit: 'h' }),
];
