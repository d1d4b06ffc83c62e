import type { RandomStream } from '#lib/kernel';
import { FifthCrew, fifthCrews, type FifthCrewName } from './fifth-crew.js';
import { fifthDamages, fifthDeck, type FifthDamage } from './fifth-truth.js';
import { FourthCrew, fourthCrews, type FourthCrewName } from './fourth-crew.js';
import { fourthDamages, fourthDeck, type FourthDamage } from './fourth-truth.js';
import { bestRangeMm } from './oracle.js';
import { heldOutTeams, Surveyor, teams, type Team } from './survey.js';
import type { Setting, Simulated } from './trial.js';
import { damageNames, deckWith, type DamageName } from './truth.js';
import { UnseenCrew, unseenCrews, type UnseenCrewName } from './unseen-crew.js';
import { unseenDamages, unseenDeck, type UnseenDamage } from './unseen-truth.js';

/** A set of simulators: kinds of damage by kinds of team, with shares and seeds of its own. */
export interface SimulatorSet {
  readonly title: string;
  readonly cells: readonly Pick<Setting, 'damage' | 'team' | 'made'>[];
  readonly share: Setting['share'];
  readonly seed: number;
}

const withFixedRates = (crews: readonly Team[]): SimulatorSet['cells'] =>
  damageNames.flatMap((damage) =>
    crews.map((team) => ({
      damage,
      team: team.name,
      made: (share: number, random: RandomStream) => fixed(damage, team, share, random),
    })),
  );

function fixed(damage: DamageName, team: Team, share: number, random: RandomStream): Simulated {
  const deck = deckWith(damage, share, random);
  const known = { team, share: deck.badShare, rangeMm: bestRangeMm[damage] };
  return { deck, crew: new Surveyor(deck, team, random), known };
}

function unseen(damage: UnseenDamage, name: UnseenCrewName, share: number, random: RandomStream): Simulated {
  const deck = unseenDeck(damage, share, random);
  const crew = new UnseenCrew(deck, name, random);
  const known = { team: crew.average(), share: deck.badShare, rangeMm: bestRangeMm[damage] };
  return { deck, crew, known };
}

function fourth(damage: FourthDamage, name: FourthCrewName, share: number, random: RandomStream): Simulated {
  const deck = fourthDeck(damage, share, random);
  const crew = new FourthCrew(deck, name, random);
  const known = { team: crew.average(), share: deck.badShare, rangeMm: bestRangeMm[damage] };
  return { deck, crew, known };
}

function fifth(damage: FifthDamage, name: FifthCrewName, share: number, random: RandomStream): Simulated {
  const deck = fifthDeck(damage, share, random);
  const crew = new FifthCrew(deck, name, random);
  const known = { team: crew.average(), share: deck.badShare, rangeMm: bestRangeMm[damage] };
  return { deck, crew, known };
}

export const simulatorSets = {
  tuned: {
    title: 'Decks the map was built on',
    cells: withFixedRates(teams),
    share: [0.18, 0.8],
    seed: 20_261_128,
  },
  held: {
    title: 'Held out: other teams, other shares, other seeds',
    cells: withFixedRates(heldOutTeams),
    share: [0.15, 1],
    seed: 77_000_000,
  },
  unseen: {
    title: 'Unseen: other damage, other crews, other panels',
    cells: unseenDamages.flatMap((damage) =>
      unseenCrews.map((team) => ({
        damage,
        team,
        made: (share: number, random: RandomStream) => unseen(damage, team, share, random),
      })),
    ),
    share: [0.16, 0.9],
    seed: 31_415_926,
  },
  fourth: {
    title: 'Fourth: another make of decks and listeners, after the map was settled',
    cells: fourthDamages.flatMap((damage) =>
      fourthCrews.map((team) => ({
        damage,
        team,
        made: (share: number, random: RandomStream) => fourth(damage, team, share, random),
      })),
    ),
    share: [0.2, 0.85],
    seed: 60_221_408,
  },
  fifth: {
    title: 'Fifth: decks and listeners that nothing was chosen by',
    cells: fifthDamages.flatMap((damage) =>
      fifthCrews.map((team) => ({
        damage,
        team,
        made: (share: number, random: RandomStream) => fifth(damage, team, share, random),
      })),
    ),
    share: [0.18, 0.9],
    seed: 27_182_818,
  },
} as const satisfies Readonly<Record<string, SimulatorSet>>;

export type SetName = keyof typeof simulatorSets;
export const setNames: readonly SetName[] = ['tuned', 'held', 'unseen', 'fourth', 'fifth'];

/** Of each cell the deck of this number, with so many readings. */
export const settingsOf = (set: SetName, count: number, deck: number): readonly Setting[] => {
  const { cells, share, seed } = simulatorSets[set];
  return cells.map((cell, index) => ({
    ...cell,
    count,
    share,
    seed: seed + 10_000 * Math.floor(index / 4) + 1000 * (index % 4) + deck,
  }));
};
