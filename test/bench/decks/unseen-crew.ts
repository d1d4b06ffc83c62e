import type { HammerSound, Reading, Survey } from '#lib/extent';
import type { Point } from '#lib/geometry';
import type { RandomStream } from '#lib/kernel';
import { SCALE, type Crew, type Team } from './survey.js';
import { normal, type Deck } from './truth.js';

/**
 * Four more ways of erring, none of them with one pair of rates for the whole deck: fixed before the first run, and nothing of
 * the map was chosen by them.
 */
export type UnseenCrewName = 'tires' | 'shy of rims' | 'two hands' | 'drawn by lot';
export const unseenCrews: readonly UnseenCrewName[] = ['tires', 'shy of rims', 'two hands', 'drawn by lot'];

interface Rates {
  readonly heardOverBad: number;
  readonly sharpOverSound: number;
}

/** Rates at a place, part of the survey done (0 to 1). */
type RatesAt = (at: Point, done: number) => Rates;

const crewOf: Readonly<Record<UnseenCrewName, (deck: Deck, random: RandomStream) => RatesAt>> = {
  'tires': () => (_, done) => ({ heardOverBad: 0.94 - 0.26 * done, sharpOverSound: 0.95 - 0.15 * done }),
  'shy of rims': (deck) => (at) =>
    isNearRim(deck, at)
      ? { heardOverBad: 0.62, sharpOverSound: 0.68 }
      : { heardOverBad: 0.96, sharpOverSound: 0.96 },
  'two hands': (deck) => {
    const middle = deck.cells.reduce((sum, { at }) => sum + at[0], 0) / deck.cells.length;
    return (at) =>
      at[0] < middle
        ? { heardOverBad: 0.62, sharpOverSound: 0.97 }
        : { heardOverBad: 0.95, sharpOverSound: 0.8 };
  },
  'drawn by lot': (_, random) => {
    const rates = { heardOverBad: 0.58 + 0.4 * random(), sharpOverSound: 0.75 + 0.24 * random() };
    return () => rates;
  },
};

const RIM_MM = 60;

const isNearRim = ({ isBad }: Deck, [x, y]: Point): boolean =>
  [[RIM_MM, 0], [-RIM_MM, 0], [0, RIM_MM], [0, -RIM_MM]].some(
    ([dx, dy]) => isBad([Math.max(0, x + dx), Math.max(0, y + dy)]) !== isBad([x, y]),
  ); // prettier-ignore

/** A crew that does not walk a grid: lines across the deck, and more round fittings; its meter drifts from one end to the other. */
export class UnseenCrew implements Crew {
  private readonly ratesAt: RatesAt;
  private readonly meter: {
    readonly sound: number;
    readonly bad: number;
    readonly sd: number;
    readonly drift: number;
  };
  private readonly meterShare: number;
  private readonly plugs: number;
  private readonly longMm: number;

  constructor(
    private readonly deck: Deck,
    name: UnseenCrewName,
    private readonly random: RandomStream,
  ) {
    this.ratesAt = crewOf[name](deck, random);
    this.meter = {
      sound: 0.05 + 0.25 * random(),
      bad: 0.6 + 0.35 * random(),
      sd: 0.1 + 0.12 * random(),
      drift: 0.3 * (random() - 0.5),
    };
    this.meterShare = 0.1 + 0.3 * random();
    this.plugs = Math.floor(5 * random());
    this.longMm = Math.max(...deck.outline.map(([x]) => x));
  }

  tap(at: Point, done = 0.5): Reading {
    const felt = this.near(at, 15);
    const isBad = this.deck.isBad(felt);
    const { heardOverBad, sharpOverSound } = this.ratesAt(felt, done);
    const isAlarm = isBad ? this.random() < heardOverBad : this.random() >= sharpOverSound;
    const isVoid = this.random() < (isBad ? 0.5 : 0.25);
    const sound: HammerSound = isAlarm ? (isVoid ? 'void' : 'dull') : 'sharp';
    return { kind: 'sounding', at, sound };
  }

  metered(at: Point): Reading {
    const { sound, bad, sd, drift } = this.meter;
    const middle = this.deck.isBad(this.near(at, 15)) ? bad : sound;
    const share =
      this.random() < 0.03
        ? 1.5 * this.random()
        : middle + drift * (at[0] / this.longMm - 0.5) + sd * normal(this.random);
    const value = SCALE.dryReference + share * (SCALE.wetReference - SCALE.dryReference);
    return { kind: 'moisture', at, value };
  }

  plug(at: Point): Reading {
    return { kind: 'plug', at, condition: this.deck.isBad(at) ? 'rotten' : 'dry-sound' };
  }

  survey(count: number): Survey {
    const places = this.places(count);
    const readings = places.map((at, index) =>
      this.random() < this.meterShare ? this.metered(at) : this.tap(at, index / count),
    );
    const plugs = Array.from({ length: this.plugs }, (_, index) => {
      const suspects = readings.filter(
        (one) => one.kind === 'sounding' && (one.sound === 'sharp') === (index % 2 === 1),
      );
      return suspects.length === 0
        ? undefined
        : this.plug(suspects[Math.floor(this.random() * suspects.length)].at);
    });
    return {
      readings: [...readings, ...plugs.flatMap((one) => (one === undefined ? [] : [one]))],
      meter: SCALE,
    };
  }

  /** Three in five on lines across the deck, from one end to the other; the rest round fittings, nearer ones more often. */
  places(count: number): readonly Point[] {
    const onLines = Math.ceil(0.6 * count);
    const columns = [...new Set(this.deck.cells.map(({ at }) => at[0]))].sort((one, other) => one - other);
    const lines = Math.max(2, Math.round(Math.sqrt(2 * onLines)));
    const line = (index: number): Point => {
      const column = Math.floor(((Math.floor((index * lines) / onLines) + 0.5) / lines) * columns.length);
      const across = this.deck.cells.filter(({ at }) => at[0] === columns[column]);
      return across[Math.floor(this.random() * across.length)].at;
    };
    return [
      ...Array.from({ length: onLines }, (_, index) => line(index)),
      ...Array.from({ length: count - onLines }, () => this.roundFitting()),
    ];
  }

  private roundFitting(): Point {
    const { fittings, cells } = this.deck;
    const { at } = fittings[Math.floor(this.random() * fittings.length)];
    const wanted: Point = [at[0] + 180 * normal(this.random), at[1] + 180 * normal(this.random)];
    return cells.reduce((best, cell) =>
      Math.hypot(cell.at[0] - wanted[0], cell.at[1] - wanted[1]) <
      Math.hypot(best.at[0] - wanted[0], best.at[1] - wanted[1])
        ? cell
        : best,
    ).at;
  }

  private near([x, y]: Point, sdMm: number): Point {
    return [Math.max(0, x + sdMm * normal(this.random)), Math.max(0, y + sdMm * normal(this.random))];
  }

  /** For the oracle: how this crew errs on this deck on average, counted over many taps of a stream of their own. */
  average(count = 3000): Team {
    const at = (wanted: boolean, isRight: (rates: Rates) => number): number => {
      const cells = this.deck.cells.filter(({ isBad }) => isBad === wanted);
      let sum = 0;
      for (let tap = 0; tap < count; tap += 1)
        sum += isRight(this.ratesAt(cells[Math.floor((tap * 0.6180339887 * cells.length) % cells.length)].at, tap / count)); // prettier-ignore
      return sum / count;
    };
    const { sound, bad, sd, drift } = this.meter;
    return {
      name: 'average',
      heardOverBad: at(true, ({ heardOverBad }) => heardOverBad),
      sharpOverSound: at(false, ({ sharpOverSound }) => sharpOverSound),
      patchMm: 0,
      dullPatchShare: 0,
      deafPatchShare: 0,
      meter: { sound, bad, sd: Math.hypot(sd, drift / Math.sqrt(12)), metal: 0.03 },
    };
  }
}
