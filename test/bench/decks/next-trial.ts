import { estimateExtent, type Extent, type ExtentRequest, type Reading, type Survey } from '#lib/extent';
import { randomStream } from '#lib/kernel';
import type { Crew } from './survey.js';
import { chancesAt, requestFor, shareFor, type Setting } from './trial.js';
import type { Deck } from './truth.js';

/** Minutes there are for further readings, and after how many of them the map is looked at again. */
export const FURTHER_MINUTES = 60;
const BATCH = 10;

/** Minutes of each kind, as the service takes them where nobody states them. */
const MINUTES = { sounding: 0.5, moisture: 1, plug: 30 } as const;

/** What further readings came to: where the map wanted them, and on a grid for the same minutes. */
export interface NextTrial {
  readonly damage: string;
  readonly team: string;
  readonly share: number;
  readonly before: number;
  readonly suggested: number;
  readonly grid: number;
  readonly minutes: number;
  readonly counts: Readonly<Record<Reading['kind'], number>>;
  readonly gridReadings: number;
}

const SHOWN_EVERY = 9;

export function nextTrial(setting: Setting): NextTrial {
  const random = randomStream(setting.seed);
  const { deck, crew } = setting.made(shareFor(random, setting.share), random);
  const survey = crew.survey(setting.count);
  const { readings, minutes, first } = followed(deck, crew, survey);
  const onGrid = gridFor(crew, minutes);
  const brier = (found: Extent) => brierOn(deck, found);
  return {
    damage: setting.damage,
    team: setting.team,
    share: deck.badShare,
    before: brier(first),
    suggested: brier(mapped(requestFor(deck, withMore(survey, readings)))),
    grid: brier(mapped(requestFor(deck, withMore(survey, onGrid)))),
    minutes,
    counts: {
      sounding: readings.filter(({ kind }) => kind === 'sounding').length,
      moisture: readings.filter(({ kind }) => kind === 'moisture').length,
      plug: readings.filter(({ kind }) => kind === 'plug').length,
    },
    gridReadings: onGrid.length,
  };
}

interface Followed {
  readonly first: Extent;
  readonly readings: readonly Reading[];
  readonly minutes: number;
}

/** Readings where the service wants them, a batch at a time, until the minutes are gone or it says that further ones are not worth theirs. */
function followed(deck: Deck, crew: Crew, survey: Survey): Followed {
  const readings: Reading[] = [];
  let [minutes, first]: [number, Extent | undefined] = [0, undefined];
  for (;;) {
    const left = FURTHER_MINUTES - minutes;
    const next = { count: BATCH, ...(left >= 0.5 ? { minutes: left } : {}) };
    const found = mapped({ ...requestFor(deck, withMore(survey, readings)), next });
    first ??= found;
    const wanted = left >= 0.5 ? (found.nextReadings?.readings ?? []) : [];
    if (wanted.length === 0) return { first, readings, minutes };
    for (const { kind, at } of wanted) {
      readings.push(taken(crew, kind, at));
      minutes += MINUTES[kind];
    }
  }
}

function taken(crew: Crew, kind: Reading['kind'], at: Reading['at']): Reading {
  if (kind === 'plug') return crew.plug(at);
  return kind === 'sounding' ? crew.tap(at) : crew.metered(at);
}

/** Three taps to one meter reading, spread as the crew spreads a survey. */
function gridFor(crew: Crew, minutes: number): readonly Reading[] {
  const four = 3 * MINUTES.sounding + MINUTES.moisture;
  return crew
    .places(Math.floor((4 * minutes) / four))
    .map((at, index) => (index % 4 === 3 ? crew.metered(at) : crew.tap(at)));
}

function mapped(request: ExtentRequest): Extent {
  const outcome = estimateExtent(request);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}

const withMore = (survey: Survey, more: readonly Reading[]): Survey => ({
  ...survey,
  readings: [...survey.readings, ...more],
});

function brierOn(deck: Deck, found: Extent): number {
  const cells = deck.cells.filter((_, index) => index % SHOWN_EVERY === 0);
  const chances = chancesAt(
    found,
    cells.map(({ at }) => at),
  );
  return (
    cells.reduce((sum, { isBad }, index) => sum + (chances[index] - (isBad ? 1 : 0)) ** 2, 0) / cells.length
  );
}

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

export function nextTable(title: string, trials: readonly NextTrial[]): readonly string[] {
  const row = (name: string, of: readonly NextTrial[]): string => {
    const [suggested, grid] = [mean(of.map((one) => one.suggested)), mean(of.map((one) => one.grid))];
    const kinds = (['sounding', 'moisture', 'plug'] as const).map((kind) =>
      mean(of.map(({ counts }) => counts[kind])).toFixed(1),
    );
    const cells = [
      name,
      `${of.length}`,
      mean(of.map(({ before }) => before)).toFixed(4),
      grid.toFixed(4),
      suggested.toFixed(4),
      (suggested / grid).toFixed(2),
      mean(of.map(({ minutes }) => minutes)).toFixed(0),
      kinds.join(' / '),
      mean(of.map(({ gridReadings }) => gridReadings)).toFixed(0),
    ];
    return `| ${cells.join(' | ')} |`;
  };
  const damages = [...new Set(trials.map(({ damage }) => damage))];
  return [
    `## Next readings against a grid: ${title}`,
    '',
    `After the survey, up to ${FURTHER_MINUTES} minutes: readings where the service wants them, at most ${BATCH} before the map is looked at again, until it says to stop; and the same minutes on places spread as before, three taps to one meter reading. A tap takes half a minute, a meter reading one, a plug thirty.`,
    '',
    '| damage | decks | Brier before | after the grid | after the suggested | x grid | minutes | taps / meter / plugs | readings on the grid |',
    '|---|---|---|---|---|---|---|---|---|',
    ...damages.map((damage) =>
      row(
        damage,
        trials.filter((one) => one.damage === damage),
      ),
    ),
    row('**all**', trials),
    '',
  ];
}
