import { estimateExtent, type Quantiles } from '#lib/extent';
import { randomStream } from '#lib/kernel';
import { requestFor, shareFor, type Setting } from './trial.js';

/** Where the truth fell: below P10, from there to P50, from there to P90, above. */
export type Band = 0 | 1 | 2 | 3;

/** Whether the ranges of one survey held its deck. */
export interface RangeTrial {
  readonly damage: string;
  readonly team: string;
  readonly count: number;
  readonly share: number;
  readonly map: Band;
  readonly priced: Band;
}

export function rangeTrial(setting: Setting): RangeTrial {
  const random = randomStream(setting.seed);
  const { deck, crew } = setting.made(shareFor(random, setting.share), random);
  const outcome = estimateExtent(requestFor(deck, crew.survey(setting.count)));
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  const { mapSpreadM2, damagedAreaM2 } = outcome.value;
  const badM2 = (deck.badShare * deck.cells.length * 400) / 1e6;
  return {
    damage: setting.damage,
    team: setting.team,
    count: setting.count,
    share: deck.badShare,
    map: bandOf(badM2, mapSpreadM2 ?? damagedAreaM2),
    priced: bandOf(badM2, damagedAreaM2),
  };
}

const bandOf = (value: number, { p10, p50, p90 }: Quantiles): Band =>
  value < p10 ? 0 : value < p50 ? 1 : value <= p90 ? 2 : 3;

const percent = (of: readonly RangeTrial[], is: (one: RangeTrial) => boolean): number =>
  Math.round((100 * of.filter(is).length) / of.length);

const held = (band: Band): boolean => band === 1 || band === 2;

/** Half the width of a 95 % interval of a share of four fifths among so many decks, in hundredths. */
const doubt = (count: number): number => Math.round(196 * Math.sqrt(0.16 / count));

export function rangeTable(title: string, trials: readonly RangeTrial[]): readonly string[] {
  const teams = [...new Set(trials.map(({ team }) => team))];
  const counts = [...new Set(trials.map(({ count }) => count))].sort((one, other) => one - other);
  const row = (name: string, of: readonly RangeTrial[]): readonly string[] => {
    if (of.length === 0) return [];
    const histogram = (which: 'map' | 'priced') =>
      [0, 1, 2, 3].map((band) => of.filter((one) => one[which] === band).length).join(' ');
    return [
      `| ${name} | ${of.length} | ${percent(of, ({ map }) => held(map))} % (± ${doubt(of.length)}) | ${histogram('map')} | ${percent(of, ({ priced }) => held(priced))} % | ${histogram('priced')} |`,
    ];
  };
  return [
    `### ${title}`,
    '',
    '| decks | number | truth in map P10 to P90 | below P10, to P50, to P90, above | truth in priced P10 to P90 | the same |',
    '|---|---|---|---|---|---|',
    ...counts.flatMap((count) => {
      const of = trials.filter((one) => one.count === count);
      return [
        ...teams.flatMap((team) =>
          row(
            `${count}, hammer ${team}`,
            of.filter((one) => one.team === team),
          ),
        ),
        ...row(
          `${count}, bad share under 5 %`,
          of.filter(({ share }) => share < 0.05),
        ),
        ...row(
          `${count}, over 60 %`,
          of.filter(({ share }) => share > 0.6),
        ),
        ...row(`**${count}, all**`, of),
      ];
    }),
    '',
  ];
}
