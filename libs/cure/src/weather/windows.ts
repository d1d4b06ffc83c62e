import type { Coating, ResinSystem } from '#lib/catalogue';
import { problem, refusal, success, type Outcome, type Problem } from '#lib/kernel';
import { gateKinds } from '#lib/work';
import {
  ask,
  askCode,
  askText,
  askWhich,
  countFaults,
  faultsIn,
  repeatFaults,
  type AnswersTo,
  type ProcessAssumption,
} from '#lib/asking';
import { skyAssumptions, warmthAssumptions, warmthFaults, warmthUnder, type DeckWarmth } from './deck.js';
import { epochOf, forecastFaults, type Forecast } from './forecast.js';
import {
  coatingLimits,
  requirementsOf,
  resinLimits,
  TOUCH_DRY_H,
  type GateLimits,
  type GateName,
  type Requirement,
} from './gates.js';
import { gelEnds } from './gel-ends.js';
import { exactInstant, instantFaults, readInstant, writeInstant } from './instant.js';
import { HOUR_MS, skyOf, type Sky } from './sky.js';
import { worksAt, type WorkTimes } from './working-time.js';

/** One step that waits for weather. */
export const weatherStepAsked = {
  code: askCode({
    meaning: 'name of the step',
    description: 'A name for the step.',
    example: 'bed-core',
  }),
  title: askText({ meaning: 'title of the step', atMost: 120 }),
  gate: askWhich({
    meaning: 'what it waits for',
    description: 'What it waits for.',
    choices: gateKinds,
  }),
  workH: ask({
    meaning: 'hours of work',
    description: 'Hours of work.',
    unit: 'h',
    range: { from: 0, upTo: 24 },
  }),
  untilSafeH: ask({
    meaning: 'hours until rain and dew no longer hurt',
    description:
      'Hours after the work until rain and dew no longer hurt; absent: the gel of the resin, or four hours for a coat.',
    unit: 'h',
    range: { from: 0, upTo: 240 },
    otherwise: 'unknown',
  }),
  earliestAt: askText({
    meaning: 'earliest start',
    note: 'RFC 3339: what comes before is done then, and no earlier hour counts.',
    atMost: 40,
    otherwise: 'unknown',
  }),
};

export interface WeatherStep extends AnswersTo<typeof weatherStepAsked> {
  /** For a coating: its catalogue entry; for resin the request's own. */
  readonly coating?: Coating;
}

export const MOST_STEPS = 200;

export const shelterAsked = askWhich({ meaning: 'shelter over the work', choices: ['shed', 'tent', 'open'] });

export const coreMoistureAsked = ask({
  meaning: 'moisture of the core',
  description: 'Moisture of the core.',
  unit: '%',
  range: { from: 0, upTo: 700 },
  otherwise: 'unknown',
});

export interface WeatherRequest {
  readonly steps: readonly WeatherStep[];
  readonly resin?: ResinSystem;
  readonly hardener?: string;
  readonly shelter: 'shed' | 'tent' | 'open';
  readonly warmth?: DeckWarmth;
  readonly coreMoisturePercent?: number;
  readonly forecast?: Forecast;
  /** With it only hours in which the crew works count. */
  readonly workTimes?: WorkTimes;
}

/** What ends a window. */
export type WindowEnd = GateName | 'end-of-forecast' | 'end-of-work';

/** Hours in which a step may start. */
export interface WorkWindow {
  /** Place among the windows, 1 the best. */
  readonly rank: number;
  /** Earliest start in the window (RFC 3339). */
  readonly fromAt: string;
  /** The end of its last hour. */
  readonly untilAt: string;
  /** Hours within which the step may start. */
  readonly startHours: number;
  /** Least distance of the deck from the dew point. */
  readonly leastDewMarginK: number;
  /** Mean temperature of the deck in the window. */
  readonly meanDeckC: number;
  /** What ends the window. */
  readonly limitedBy: WindowEnd;
}

export interface StepWeather {
  /** Code of the step that waits for weather. */
  readonly code: string;
  /** Name of that step. */
  readonly title: string;
  /** What the weather must be. */
  readonly requires: readonly Requirement[];
  /** When the step may start, best first. */
  readonly windows: readonly WorkWindow[];
  /** Hours of the forecast in which the work may not be begun, by the gate that forbids it. */
  readonly shutBy: readonly {
    /** Gate that keeps the step shut. */
    readonly gate: GateName;
    /** Hours that this gate alone shuts. */
    readonly hours: number;
  }[];
  /** What to know when no window fits. */
  readonly note?: string;
}

export interface WeatherHour {
  /** Start of the hour (RFC 3339). */
  readonly at: string;
  /** Dew point of the air. */
  readonly dewPointC: number;
  /** Temperature of the deck. */
  readonly deckC: number;
  /** Deck temperature less dew point; below the gate's limit the deck is wet. */
  readonly dewMarginK: number;
}

export interface WeatherPlan {
  /** Each step with its gates and windows. */
  readonly steps: readonly StepWeather[];
  /** The forecast, hour by hour, as the deck feels it. */
  readonly hours: readonly WeatherHour[];
  /** What was taken about the weather. */
  readonly assumptions: readonly ProcessAssumption[];
}

/** When each step may start: the requirements always, the windows when there is a forecast. */
export function weatherGates(request: WeatherRequest): Outcome<WeatherPlan> {
  const problems = weatherFaults(request);
  if (problems.length > 0) return refusal(...problems);
  const warmth = warmthUnder(request.shelter, request.warmth);
  const sky = request.forecast === undefined ? undefined : skyOf(request.forecast, warmth);
  return success({
    steps: request.steps.map((step) => stepWeather(request, step, sky)),
    hours:
      sky?.hours.map(({ at }, index) => ({
        at,
        dewPointC: sky.dewC[index],
        deckC: sky.deckC[index],
        dewMarginK: sky.deckC[index] - sky.dewC[index],
      })) ?? [],
    assumptions: [
      ...warmthAssumptions('/warmth', request.warmth),
      ...(sky === undefined ? [] : skyAssumptions('/warmth', { warmth, told: request.warmth })),
      ...silenceAssumptions(request),
    ],
  });
}

function stepWeather(request: WeatherRequest, step: WeatherStep, sky: Sky | undefined): StepWeather {
  const limits = limitsOf(request, step);
  const requires = requirementsOf(limits, request.shelter);
  const named = { code: step.code, title: step.title, requires };
  if (sky === undefined)
    return {
      ...named,
      windows: [],
      shutBy: [],
      note: 'no forecast was given; these are the conditions to wait for',
    };
  const shut = shutGates(request, limits, sky);
  const fromMs = step.earliestAt === undefined ? undefined : readInstant(step.earliestAt)?.epochMs;
  const works = worksIn(sky, request.workTimes).map(
    (isWorked, hour) => isWorked && (fromMs === undefined || sky.startMs + (hour + 1) * HOUR_MS > fromMs),
  );
  const ends = endsOf(shut, {
    workH: step.workH,
    safeFrom: step.untilSafeH === undefined ? safeAfter(limits, sky) : later(step.untilSafeH),
  });
  return {
    ...named,
    windows: windowsOf(sky, works, ends),
    shutBy: tally(ends.filter((_, hour) => works[hour])),
  };
}

export const limitsOf = ({ resin, hardener }: WeatherRequest, { gate, coating }: WeatherStep): GateLimits => {
  if (gate === 'resin' && resin !== undefined) return resinLimits(resin, hardener ?? '');
  return gate === 'coating' && coating !== undefined ? coatingLimits(coating) : { kind: gate };
};

type Place = Pick<WeatherRequest, 'shelter' | 'coreMoisturePercent'>;

/** The gate that keeps each hour shut, if any; the first that bites, in the order of the job sheet. */
function shutGates(place: Place, limits: GateLimits, sky: Sky): readonly (GateName | undefined)[] {
  const requires = requirementsOf(limits, place.shelter);
  return sky.hours.map((hour, index) => {
    const marginK = sky.deckC[index] - sky.dewC[index];
    const values: Readonly<Record<GateName, number>> = {
      'dew-margin': -marginK,
      'humidity': hour.relativeHumidityPercent,
      'too-cold': -sky.deckC[index],
      'too-warm': sky.deckC[index],
      'rain': hour.rainMm ?? 0,
      'wind': hour.windMPerS ?? 0,
      'core-moisture': place.coreMoisturePercent ?? 0,
    };
    return requires.find(
      ({ gate, limit }) => values[gate] > (gate === 'dew-margin' || gate === 'too-cold' ? -limit : limit),
    )?.gate;
  });
}

/** Whether the crew works in any half of each hour; always, when no times are given. */
const worksIn = ({ hours, startMs, offset }: Sky, workTimes: WorkTimes | undefined): readonly boolean[] =>
  hours.map(
    (_, hour) =>
      workTimes === undefined ||
      [0, 0.5].some((half) => {
        const epochMs = startMs + (hour + half) * HOUR_MS;
        return worksAt(epochMs + offset(epochMs) * 60_000, workTimes);
      }),
  );

interface WorkAhead {
  readonly workH: number;
  /** The hour from which rain and dew no longer hurt work that ended at an hour. */
  readonly safeFrom: (endHour: number) => number;
}

const later =
  (hours: number) =>
  (endHour: number): number =>
    endHour + Math.ceil(hours);

/** Until the resin has gelled along the deck's temperature, or the coat is touch dry. */
function safeAfter({ kind, gel }: GateLimits, { deckC }: Sky): WorkAhead['safeFrom'] {
  if (kind !== 'resin' || gel === undefined) return later(kind === 'coating' ? TOUCH_DRY_H : 0);
  const gelled = gelEnds(deckC, gel);
  return (endHour) => Math.ceil(gelled(endHour));
}

/** Nothing where work that starts in the hour is done and safe before a gate shuts; else the gate, or the end of what is known. */
function endsOf(
  shut: readonly (GateName | undefined)[],
  { workH, safeFrom }: WorkAhead,
): readonly (WindowEnd | undefined)[] {
  const nextShut = nextIn(shut, () => true);
  // Heat and wind matter while resin and cloth go on, not while it gels.
  const nextHarmful = nextIn(shut, (gate) => gate !== 'too-warm' && gate !== 'wind');
  return shut.map((_, start) => {
    const workEnd = Math.min(shut.length, start + Math.max(1, Math.ceil(workH)));
    if (nextShut[start] < workEnd) return shut[nextShut[start]];
    const safeEnd = safeFrom(start + Math.max(1, Math.ceil(workH)));
    if (nextHarmful[workEnd] < safeEnd) return shut[nextHarmful[workEnd]];
    return safeEnd > shut.length ? 'end-of-forecast' : undefined;
  });
}

/** For each hour, and for the one after the last, the next that is shut by such a gate. */
function nextIn(shut: readonly (GateName | undefined)[], counts: (gate: GateName) => boolean): Float64Array {
  const next = new Float64Array(shut.length + 1).fill(Number.POSITIVE_INFINITY);
  for (let hour = shut.length - 1; hour >= 0; hour -= 1) {
    const gate = shut[hour];
    next[hour] = gate !== undefined && counts(gate) ? hour : next[hour + 1];
  }
  return next;
}

function windowsOf(
  sky: Sky,
  works: readonly boolean[],
  ends: readonly (WindowEnd | undefined)[],
): readonly WorkWindow[] {
  const found = runsOf(ends.map((end, hour) => end === undefined && works[hour])).map(([from, to]) =>
    windowAt(sky, [from, to], ends[to] ?? (to === ends.length ? 'end-of-forecast' : 'end-of-work')),
  );
  return found
    .sort((a, b) => b.startHours - a.startHours || epochOf({ at: a.fromAt }) - epochOf({ at: b.fromAt }))
    .map((window, index) => ({ ...window, rank: index + 1 }));
}

function runsOf(starts: readonly boolean[]): readonly (readonly [number, number])[] {
  return starts.flatMap((open, index) => {
    if (!open || starts[index - 1]) return [];
    const end = starts.findIndex((still, at) => at > index && !still);
    return [[index, end === -1 ? starts.length : end] as const];
  });
}

function windowAt(sky: Sky, [from, to]: readonly [number, number], limitedBy: WindowEnd): WorkWindow {
  const margins = sky.deckC.subarray(from, to).map((deck, index) => deck - sky.dewC[from + index]);
  return {
    rank: 0,
    fromAt: sky.hours[from].at,
    untilAt: endOf(sky, to - 1),
    startHours: to - from,
    leastDewMarginK: margins.reduce((least, margin) => Math.min(least, margin)),
    meanDeckC: sky.deckC.subarray(from, to).reduce((sum, deck) => sum + deck, 0) / (to - from),
    limitedBy,
  };
}

/** The end of an hour, written with the offset of its start. */
const endOf = ({ hours }: Sky, hour: number): string => {
  const { epochMs, offsetMin } = exactInstant(hours[hour].at);
  return writeInstant(epochMs + HOUR_MS, offsetMin);
};

function tally(ends: readonly (WindowEnd | undefined)[]): StepWeather['shutBy'] {
  const gates = [
    ...new Set(
      ends.flatMap((end) =>
        end === undefined || end === 'end-of-forecast' || end === 'end-of-work' ? [] : end,
      ),
    ),
  ];
  return gates
    .map((gate) => ({ gate, hours: ends.filter((name) => name === gate).length }))
    .sort((a, b) => b.hours - a.hours);
}

/**
 * Hours of a sky in which an hour of such work may be done: fit, and done and safe before a gate shuts. The calendar walks
 * along it, and the windows of an hour's work are its runs; the calendar goes on where the forecast ends.
 */
export const openHours = (place: Place, limits: GateLimits, sky: Sky): readonly boolean[] =>
  endsOf(shutGates(place, limits, sky), { workH: 1, safeFrom: safeAfter(limits, sky) }).map(
    (end) => end === undefined || end === 'end-of-forecast',
  );

const NOT_FORECAST: Readonly<Record<'rainMm' | 'windMPerS', string>> = {
  rainMm: 'rain where the forecast is silent',
  windMPerS: 'wind where the forecast is silent',
};

/** What the windows take for granted because nobody said it. */
function silenceAssumptions({
  forecast,
  shelter,
  steps,
  coreMoisturePercent,
}: WeatherRequest): readonly ProcessAssumption[] {
  if (forecast === undefined) return [];
  const silent =
    shelter === 'open'
      ? (['rainMm', 'windMPerS'] as const).filter((name) =>
          forecast.hours.some((hour) => hour[name] === undefined),
        )
      : [];
  const asksForDryCore = coreMoisturePercent === undefined && steps.some(({ gate }) => gate === 'resin');
  return [
    ...silent.map((name) => ({
      at: '/forecast/hours',
      meaning: NOT_FORECAST[name],
      value: 'none',
      because: 'the forecast does not give it: look at the sky',
      source: 'COMMON-PRACTICE',
    })),
    ...(asksForDryCore
      ? [
          {
            at: '/coreMoisturePercent',
            meaning: 'core moisture in the hours of the forecast',
            value: 'dry enough',
            because: 'no reading is given: read the meter before anything is bonded',
            source: 'COMMON-PRACTICE',
          },
        ]
      : []),
  ];
}

function weatherFaults(request: WeatherRequest): readonly Problem[] {
  const needsResin = request.steps.some(({ gate }) => gate === 'resin') && request.resin === undefined;
  return [
    ...countFaults('/steps', request.steps.length, { least: 1, most: MOST_STEPS }),
    ...repeatFaults(
      '/steps',
      'code',
      request.steps.map(({ code }) => code),
    ),
    ...request.steps.flatMap((step, index) => stepFaults(step, `/steps/${index}`)),
    ...(needsResin
      ? [problem('missing', '/resin', { expected: 'the resin system, because a step waits for its gel' })]
      : []),
    ...faultsIn(request, { shelter: shelterAsked, coreMoisturePercent: coreMoistureAsked }),
    ...warmthFaults('/warmth', request.warmth),
    ...(request.forecast === undefined ? [] : forecastFaults(request.forecast, '/forecast')),
  ];
}

const stepFaults = (step: WeatherStep, at: string): readonly Problem[] => [
  ...faultsIn(step, weatherStepAsked, at),
  ...(step.earliestAt === undefined ? [] : instantFaults(`${at}/earliestAt`, step.earliestAt)),
];
