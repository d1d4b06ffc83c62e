import {
  dewPointOf,
  requirementsOf,
  type GateLimits,
  type GateName,
  type Requirement,
  type WindowEnd,
} from '#lib/cure';
import type {
  Check,
  CureMilestones,
  WeatherSection,
  WeatherStepSection,
} from '../document/estimate-document.js';
import { coatingsFor, resinsFor } from '../stages/fitting-materials.js';
import { gateGroups } from '../stages/gate-groups.js';
import type { Job } from '../job/job.js';
import { cureHours, type ProcessWork } from '../stages/process-stage.js';
import { minuteOf, type Outlook, type StepInWeather, type WeatherWork } from '../stages/weather-stage.js';

const MOST_WINDOWS = 5;

/** The forecast in the document: for each step the windows, ranked, with what ends them. */
export function weatherSection({ outlook, steps, notes }: WeatherWork): {
  readonly weather?: WeatherSection;
} {
  return outlook === undefined
    ? {}
    : { weather: { ...outlook.said, steps: steps.map((step) => stepSection(step, outlook)), notes } };
}

const stepSection = (
  { code, gate, earliestAt, plannedAt, plannedEndAt, neededH, openH, weather }: StepInWeather,
  { local }: Outlook,
): WeatherStepSection => ({
  code,
  title: weather.title,
  gate,
  earliestAt,
  plannedAt,
  plannedEndAt,
  neededH,
  openH,
  windowCount: weather.windows.length,
  shutBy: weather.shutBy,
  windows: weather.windows
    .slice(0, MOST_WINDOWS)
    .map(({ rank, fromAt, untilAt, startHours, leastDewMarginK, meanDeckC, limitedBy }) => ({
      rank,
      fromAt: local(Date.parse(fromAt)),
      untilAt: local(Date.parse(untilAt)),
      hours: startHours,
      leastDewMarginK,
      meanDeckC,
      limitedBy,
    })),
});

/** Cures that the forecast reaches, each by itself, and one row for all that go by the stated temperature. */
export function cureSection(
  job: Job,
  { cure }: ProcessWork,
  { cures }: WeatherWork,
): readonly CureMilestones[] {
  const own = cures.map(({ task, cure: found, isWithinForecast }): CureMilestones => ({
    step: task.title,
    temperatureC: found.deck.meanC,
    basis: isWithinForecast ? 'forecast' : 'forecast-then-stated',
    startAt: task.endAt,
    ...cureHours(
      found,
      found.notes.filter((note) => !cure.notes.includes(note)),
    ),
  }));
  const step = own.length === 0 ? 'every bonding and laminating step' : 'every step after the forecast';
  return [
    ...own,
    {
      step,
      temperatureC: job.answers.conditions.temperatureC.value,
      basis: 'stated',
      ...cureHours(cure, cure.notes),
    },
  ];
}

/** Whether the stated conditions suit each kind of work, and whether the forecast leaves hours enough for each step. */
export const weatherChecks = (
  job: Job,
  process: ProcessWork,
  { outlook, steps }: WeatherWork,
): readonly Check[] => [
  ...gateGroups(job, process.batches.resin.hardener).flatMap(({ code, title, limits }) =>
    statedCheck(job, { code, title, limits }),
  ),
  ...(outlook === undefined ? [] : forecastChecks(steps, outlook)),
];

interface Measured {
  readonly requirement: Requirement;
  readonly demand: number;
  readonly capacity: number;
  readonly utilisation?: number;
  readonly passes: boolean;
}

/** The first condition that the stated air and deck fail, else the one that they use up most. */
function statedCheck(
  job: Job,
  { code, title, limits }: { readonly code: string; readonly title: string; readonly limits: GateLimits },
): readonly Check[] {
  const measured = requirementsOf(limits, job.answers.conditions.shelter.value).flatMap((requirement) =>
    measuredBy(requirement, job),
  );
  const governing =
    measured.find(({ passes }) => !passes) ??
    [...measured].sort((a, b) => (b.utilisation ?? 0) - (a.utilisation ?? 0)).at(0);
  if (governing === undefined) return [];
  const {
    requirement: { gate, text, unit, cite },
    demand,
    capacity,
    utilisation,
    passes,
  } = governing;
  const { temperatureC, relativeHumidityPercent } = job.answers.conditions;
  return [
    {
      code: `weather-stated-${code}`,
      title: `${title} at ${temperatureC.value.toFixed(1)} degC and ${relativeHumidityPercent.value.toFixed(0)} %`,
      demand,
      capacity,
      unit,
      ...(utilisation === undefined ? {} : { utilisation }),
      verdict: passes ? 'passes' : 'fails',
      governs: text,
      source: cite.source,
      ...(passes ? {} : { remedy: remedyFor(job, code, gate) }),
    },
  ];
}

/** What to do about a stated condition, with what of the catalogue would suit it as it is. */
function remedyFor({ catalogue, answers: { conditions } }: Job, code: string, gate: GateName): string {
  const deckC = conditions.temperatureC.value;
  if (gate !== 'too-cold' && gate !== 'too-warm') return remedies[gate];
  const names = code === 'resin' ? resinsFor(catalogue, deckC) : coatingsFor(catalogue, code, deckC);
  return names.length === 0
    ? `${remedies[gate]}; nothing of the catalogue suits ${deckC.toFixed(0)} degC`
    : `${remedies[gate]}; of the catalogue ${names.join(', ')} would do at ${deckC.toFixed(0)} degC`;
}

/** What the stated conditions say about a requirement; rain, wind and the core's moisture they do not know. */
function measuredBy(
  requirement: Requirement,
  {
    answers: {
      conditions: { temperatureC, relativeHumidityPercent },
    },
  }: Job,
): readonly Measured[] {
  const { gate, limit } = requirement;
  const [deckC, humidity] = [temperatureC.value, relativeHumidityPercent.value];
  switch (gate) {
    case 'dew-margin': {
      const marginK = deckC - dewPointOf(deckC, humidity);
      return [
        {
          requirement,
          demand: limit,
          capacity: marginK,
          ...(marginK > 0 ? { utilisation: limit / marginK } : {}),
          passes: marginK >= limit,
        },
      ];
    }
    case 'humidity':
      return [
        {
          requirement,
          demand: humidity,
          capacity: limit,
          utilisation: humidity / limit,
          passes: humidity <= limit,
        },
      ];
    case 'too-cold':
      return [{ requirement, demand: limit, capacity: deckC, passes: deckC >= limit }];
    case 'too-warm':
      return [{ requirement, demand: deckC, capacity: limit, passes: deckC <= limit }];
    case 'rain':
    case 'wind':
    case 'core-moisture':
      return [];
  }
}

const remedies: Readonly<Record<GateName, string>> = {
  'dew-margin': 'warm the deck or dry the air under a tent, and wait for the margin',
  'humidity': 'dry the air under a tent, or wait for a drier day',
  'too-cold': 'heat the deck, or take a hardener or a coating made for the cold',
  'too-warm': 'shade the deck, start early, or take a slower hardener',
  'rain': 'cover the deck',
  'wind': 'shelter the deck',
  'core-moisture': 'dry the core until two equal readings',
};

/** A check for each step that the forecast reaches, and one for all that come after it. */
function forecastChecks(steps: readonly StepInWeather[], outlook: Outlook): readonly Check[] {
  const isReached = ({ earliestAt }: StepInWeather): boolean => Date.parse(earliestAt) < outlook.untilMs;
  const later = steps.filter((step) => !isReached(step));
  return [
    ...steps.filter(isReached).map((step) => forecastCheck(step, outlook)),
    ...(later.length === 0 ? [] : [afterForecast(later, outlook)]),
  ];
}

const afterForecast = (later: readonly StepInWeather[], { said }: Outlook): Check => ({
  code: 'weather-after-forecast',
  title: 'Weather of the steps after the forecast',
  unit: 'h',
  verdict: 'not-established',
  governs: 'the reach of the forecast',
  source: sourceOf(later[0]),
  demand: later.reduce((sum, { neededH }) => sum + neededH, 0),
  reason: `they can begin only after the forecast ends on ${minuteOf(said.untilAt)} (${later.map(({ weather: { title } }) => `"${title}"`).join(', ')}): bring a new forecast then`,
});

function forecastCheck(step: StepInWeather, outlook: Outlook): Check {
  const { weather, neededH, openH } = step;
  const found = judged(step, outlook);
  const isDecided = found.verdict !== 'not-established';
  return {
    code: `weather-${step.code}`,
    title: `Hours of the forecast for "${weather.title}"`,
    demand: neededH,
    capacity: openH,
    unit: 'h',
    ...(isDecided && openH > 0 ? { utilisation: neededH / openH } : {}),
    source: sourceOf(step),
    ...found,
  };
}

type Judgement = Pick<Check, 'verdict' | 'governs' | 'reason' | 'remedy'>;

function judged(
  { plannedAt, plannedEndAt, neededH, openH, weather }: StepInWeather,
  { fromMs, untilMs, said }: Outlook,
): Judgement {
  const unknown = (reason: string): Judgement => ({
    verdict: 'not-established',
    governs: 'the reach of the forecast',
    reason,
  });
  if (Date.parse(plannedAt) < fromMs)
    return unknown(`it begins before the forecast does, on ${minuteOf(said.fromAt)}`);
  if (Date.parse(plannedEndAt) <= untilMs)
    return { verdict: 'passes', governs: governedBy(weather.windows.at(0)?.limitedBy) };
  const shutH = weather.shutBy.reduce((sum, { hours }) => sum + hours, 0);
  const [worst] = weather.shutBy;
  if (worst === undefined || openH >= neededH || openH + shutH < neededH)
    return unknown(
      `it ends after the forecast does, on ${minuteOf(said.untilAt)}: bring a new forecast then`,
    );
  return {
    verdict: 'fails',
    governs: `${gateNames[worst.gate]}, which takes ${worst.hours} working hours away`,
    remedy: remedies[worst.gate],
  };
}

/** The conditions in words, for a sentence. */
export const gateNames: Readonly<Record<GateName, string>> = {
  'dew-margin': 'dew',
  'humidity': 'humid air',
  'too-cold': 'cold',
  'too-warm': 'heat',
  'rain': 'rain',
  'wind': 'wind',
  'core-moisture': 'wet core',
};

function governedBy(end: WindowEnd | undefined): string {
  if (end === undefined) return 'the hours of the forecast';
  return end === 'end-of-forecast'
    ? 'the end of the forecast'
    : end === 'end-of-work'
      ? 'the working day'
      : gateNames[end];
}

const sourceOf = ({ weather: { requires, shutBy } }: StepInWeather): string =>
  (requires.find(({ gate }) => gate === shutBy.at(0)?.gate) ?? requires[0]).cite.source;
