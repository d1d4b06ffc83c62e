import type { HammerSound, Reading, Survey } from '#lib/extent';
import { distance, type Point } from '#lib/geometry';
import type { RandomStream } from '#lib/kernel';
import { SCALE, type Crew, type Team } from './survey.js';
import { CELL_MM, normal, type Deck } from './truth.js';

/**
 * Four listeners of a fifth make: one half deaf on one side of the deck, one swayed by the sound before, one misled by the backing
 * of fittings, and one honest with rates drawn for the deck. They spread their places evenly by two counters, check one in
 * three close by, and read a meter that drifts and levels off. Fixed before the first run.
 */
export type FifthCrewName = 'half deaf' | 'carries over' | 'misled by backing' | 'honest';
export const fifthCrews: readonly FifthCrewName[] = [
  'half deaf',
  'carries over',
  'misled by backing',
  'honest',
];

const PLACE_SD_MM = 15;
const CHECK_MM = 70;
const METER_MM = 50;

interface Habit {
  /** Chance of a dull or hollow sound. */
  readonly alarm: (isBad: boolean, at: Point) => number;
  /** How often the sound before is heard again, whatever lies below. */
  readonly swayed: number;
}

export class FifthCrew implements Crew {
  private readonly habit: Habit;
  private readonly meter: {
    readonly dry: number;
    readonly wet: number;
    readonly sd: number;
    readonly drift: number;
  };
  private readonly metered1In: number;
  private readonly plugs: number;
  private readonly onDeck: ReadonlySet<string>;
  private last: HammerSound = 'sharp';
  private count = 0;
  private metersRead = 0;

  constructor(
    private readonly deck: Deck,
    name: FifthCrewName,
    private readonly random: RandomStream,
  ) {
    this.onDeck = new Set(deck.cells.map(({ at }) => this.keyOf(at)));
    this.habit = this.habitOf(name);
    this.meter = {
      dry: 0.05 + 0.25 * random(),
      wet: 0.55 + 0.45 * random(),
      sd: 0.08 + 0.17 * random(),
      drift: 0.2 * (random() - 0.5),
    };
    this.metered1In = 3 + Math.floor(4 * random());
    this.plugs = Math.floor(5 * random());
    this.count = Math.floor(5000 * random());
  }

  private habitOf(name: FifthCrewName): Habit {
    const [hit, miss] = [0.76 + 0.19 * this.random(), 0.02 + 0.12 * this.random()];
    const usual = (isBad: boolean): number => (isBad ? hit : miss);
    if (name === 'carries over') return { alarm: usual, swayed: 0.25 };
    if (name === 'half deaf') {
      const split = this.anyPlace();
      const way = 2 * Math.PI * this.random();
      const isDeafAt = ([x, y]: Point): boolean =>
        (x - split[0]) * Math.cos(way) + (y - split[1]) * Math.sin(way) > 0;
      return { alarm: (isBad, at) => (isBad && isDeafAt(at) ? 0.6 * hit : usual(isBad)), swayed: 0 };
    }
    if (name === 'misled by backing') {
      const isBacked = (at: Point): boolean =>
        this.deck.fittings.some((fitting) => distance(fitting.at, at) < 140);
      return { alarm: (isBad, at) => (!isBad && isBacked(at) ? 0.45 : usual(isBad)), swayed: 0 };
    }
    return { alarm: usual, swayed: 0 };
  }

  tap(at: Point): Reading {
    const isBad = this.deck.isBad(this.strayed(at));
    const isSwayed = this.random() < this.habit.swayed;
    const isAlarm = this.random() < this.habit.alarm(isBad, at);
    const isVoid = this.random() < (isBad ? 0.55 : 0.3);
    const heard: HammerSound = isAlarm ? (isVoid ? 'void' : 'dull') : 'sharp';
    const sound = isSwayed ? this.last : heard;
    this.last = sound;
    return { kind: 'sounding', at, sound };
  }

  metered(at: Point): Reading {
    const { dry, wet, sd, drift } = this.meter;
    this.metersRead += 1;
    const drifted = drift * Math.min(1, this.metersRead / 25);
    const share = dry + (wet - dry) * this.badRound(at) + drifted + sd * normal(this.random);
    const shown = this.random() < 0.03 ? 1.3 : Math.min(1.15, Math.max(-0.1, share));
    return {
      kind: 'moisture',
      at,
      value: SCALE.dryReference + shown * (SCALE.wetReference - SCALE.dryReference),
    };
  }

  plug(at: Point): Reading {
    return { kind: 'plug', at, condition: this.deck.isBad(at) ? 'rotten' : 'dry-sound' };
  }

  survey(count: number): Survey {
    const places = this.places(count).flatMap((at, index) =>
      index % 3 === 2 ? [at, this.beside(at)] : [at],
    );
    const readings = places
      .slice(0, count)
      .map((at, index) => (index % this.metered1In === 1 ? this.metered(at) : this.tap(at)));
    const alarms = readings.filter((one) => one.kind === 'sounding' && one.sound !== 'sharp');
    const plugs = Array.from({ length: this.plugs }, (_, index) => {
      const suspect = index % 2 === 0 ? alarms[Math.floor(this.random() * alarms.length)] : undefined;
      return this.plug(suspect?.at ?? this.anyPlace());
    });
    return { readings: [...readings, ...plugs], meter: SCALE };
  }

  /** Two counters, in twos and in threes, read backwards: even over the deck however many are taken. */
  places(count: number): readonly Point[] {
    const [wide, high] = [0, 1].map((axis) => Math.max(...this.deck.outline.map((corner) => corner[axis])));
    const found: Point[] = [];
    while (found.length < count) {
      this.count += 1;
      const at: Point = [wide * backwards(this.count, 2), high * backwards(this.count, 3)];
      if (this.onDeck.has(this.keyOf(at))) found.push(at);
    }
    return found;
  }

  /** For the oracle: the rates over many taps at random places. */
  average(): Team {
    const taps = Array.from({ length: 4000 }, () => {
      const at = this.anyPlace();
      const reading = this.tap(at);
      return {
        isBad: this.deck.isBad(at),
        isAlarm: reading.kind === 'sounding' && reading.sound !== 'sharp',
      };
    });
    const alarmsOver = (wanted: boolean): number => {
      const over = taps.filter(({ isBad }) => isBad === wanted);
      return over.filter(({ isAlarm }) => isAlarm).length / Math.max(1, over.length);
    };
    const { dry, wet, sd, drift } = this.meter;
    return {
      name: 'average',
      heardOverBad: Math.min(0.99, alarmsOver(true)),
      sharpOverSound: Math.min(0.99, 1 - alarmsOver(false)),
      patchMm: 0,
      dullPatchShare: 0,
      deafPatchShare: 0,
      meter: {
        sound: dry + drift / 2,
        bad: Math.min(1.1, wet + drift / 2),
        sd: Math.hypot(sd, drift / 4),
        metal: 0.03,
      },
    };
  }

  private keyOf([x, y]: Point): string {
    return `${Math.floor(x / CELL_MM)} ${Math.floor(y / CELL_MM)}`;
  }

  private anyPlace(): Point {
    return this.deck.cells[Math.floor(this.random() * this.deck.cells.length)].at;
  }

  private strayed([x, y]: Point): Point {
    const near: Point = [x + PLACE_SD_MM * normal(this.random), y + PLACE_SD_MM * normal(this.random)];
    return this.onDeck.has(this.keyOf(near)) ? near : [x, y];
  }

  private beside([x, y]: Point): Point {
    const angle = 2 * Math.PI * this.random();
    const there: Point = [x + CHECK_MM * Math.cos(angle), y + CHECK_MM * Math.sin(angle)];
    return this.onDeck.has(this.keyOf(there)) ? there : [x, y];
  }

  /** Share of bad core under the meter, felt at its middle and at six places round it. */
  private badRound(at: Point): number {
    const round = Array.from({ length: 6 }, (_, index): Point => {
      const angle = (Math.PI * index) / 3;
      return [at[0] + METER_MM * Math.cos(angle), at[1] + METER_MM * Math.sin(angle)];
    });
    const felt = [at, ...round].filter((place) => this.onDeck.has(this.keyOf(place)));
    return felt.filter((place) => this.deck.isBad(place)).length / Math.max(1, felt.length);
  }
}

/** The digits of a whole number behind the point, last digit first. */
function backwards(whole: number, base: number): number {
  let [value, place, rest] = [0, 1 / base, whole];
  while (rest > 0) {
    value += place * (rest % base);
    rest = Math.floor(rest / base);
    place /= base;
  }
  return value;
}
