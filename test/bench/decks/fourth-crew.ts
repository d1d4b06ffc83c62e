import type { HammerSound, Reading, Survey } from '#lib/extent';
import type { Point } from '#lib/geometry';
import type { RandomStream } from '#lib/kernel';
import { SCALE, type Crew, type Team } from './survey.js';
import type { Deck } from './truth.js';

/**
 * Four more listeners: one hears a footprint and not a point, one is deafened by thick laminate at the edges, one's attention
 * comes and goes from tap to tap, one is steady. They follow up what sounds bad with taps round it. Fixed before the first run.
 */
export type FourthCrewName = 'wide footprint' | 'thick edges' | 'by moods' | 'steady';
export const fourthCrews: readonly FourthCrewName[] = ['wide footprint', 'thick edges', 'by moods', 'steady'];

const FOOTPRINT_MM = 45;
const METER_MM = 35;
const FOLLOW_UP_MM = 110;

/** Chance of a dull or hollow sound over so much bad core, at a place, in a mood (0 asleep, 1 awake). */
type Alarm = (badShare: number, edgeMm: number, mood: number) => number;

const alarms: Readonly<Record<FourthCrewName, Alarm>> = {
  'wide footprint': (bad) => 0.05 + 0.9 / (1 + Math.exp(-9 * (bad - 0.45))),
  'thick edges': (bad, edgeMm) => (edgeMm < 130 ? (bad > 0.5 ? 0.5 : 0.07) : bad > 0.5 ? 0.92 : 0.05),
  'by moods': (bad, _, mood) => (bad > 0.5 ? 0.6 + 0.36 * mood : 0.16 - 0.13 * mood),
  'steady': (bad) => (bad > 0.5 ? 0.9 : 0.08),
};

export class FourthCrew implements Crew {
  private readonly alarm: Alarm;
  private readonly meter: { readonly dry: number; readonly gain: number; readonly noise: number };
  private readonly metered1In: number;
  private readonly plugs: number;
  private readonly edges: readonly Point[];
  private isAwake = true;

  constructor(
    private readonly deck: Deck,
    name: FourthCrewName,
    private readonly random: RandomStream,
  ) {
    this.alarm = alarms[name];
    this.meter = { dry: 0.02 + 0.25 * random(), gain: 0.4 + 0.5 * random(), noise: 0.12 + 0.25 * random() };
    this.metered1In = 3 + Math.floor(5 * random());
    this.plugs = Math.floor(4 * random());
    this.edges = [deck.outline, ...deck.holes].flatMap(alongRing);
  }

  tap(at: Point): Reading {
    // A mood lasts some fifteen taps.
    if (this.random() < 0.07) this.isAwake = !this.isAwake;
    const chance = this.alarm(this.badWithin(at, FOOTPRINT_MM), this.fromEdge(at), this.isAwake ? 1 : 0);
    const isAlarm = this.random() < chance;
    const isVoid = isAlarm && this.random() < (this.deck.isBad(at) ? 0.45 : 0.3);
    const sound: HammerSound = isVoid ? 'void' : isAlarm ? 'dull' : 'sharp';
    return { kind: 'sounding', at, sound };
  }

  metered(at: Point): Reading {
    const { dry, gain, noise } = this.meter;
    const wet = dry + gain * this.badWithin(at, METER_MM);
    const strayed = wet * Math.exp(noise * this.bell()) + 0.05 * this.bell();
    const share = this.random() < 0.02 ? 1.4 : Math.min(1.6, strayed);
    return {
      kind: 'moisture',
      at,
      value: SCALE.dryReference + share * (SCALE.wetReference - SCALE.dryReference),
    };
  }

  plug(at: Point): Reading {
    return { kind: 'plug', at, condition: this.deck.isBad(at) ? 'rotten' : 'dry-sound' };
  }

  /** Half of the readings on staggered rows; where one was bad, some go round it, else they fill the rows. */
  survey(count: number): Survey {
    const places = [...this.places(Math.ceil(0.6 * count))];
    const readings: Reading[] = [];
    while (readings.length < count) {
      const at = places.shift() ?? this.places(1)[0];
      const reading = readings.length % this.metered1In === 0 ? this.metered(at) : this.tap(at);
      readings.push(reading);
      if (reading.kind === 'sounding' && reading.sound !== 'sharp' && this.random() < 0.5)
        places.unshift(this.beside(at));
    }
    const plugs = Array.from({ length: this.plugs }, () => this.plug(this.anyPlace()));
    return { readings: [...readings, ...plugs], meter: SCALE };
  }

  places(count: number): readonly Point[] {
    const box = [0, 1].map((axis) => Math.max(...this.deck.outline.map((corner) => corner[axis])));
    const stepMm = Math.sqrt((this.deck.cells.length * 400) / count);
    const start = this.random();
    const rows = Math.max(1, Math.round(box[1] / stepMm));
    const found: Point[] = [];
    for (let row = 0; row < rows; row += 1)
      for (let x = stepMm * ((start + 0.5 * row) % 1); x < box[0]; x += stepMm)
        found.push([
          x + 0.15 * stepMm * this.bell(),
          ((row + 0.5) * box[1]) / rows + 0.15 * stepMm * this.bell(),
        ]);
    const onDeck = found.filter((at) => this.isDeck(at));
    while (onDeck.length < count) onDeck.push(this.anyPlace());
    // Evenly thinned to the number wanted.
    return Array.from({ length: count }, (_, index) => onDeck[Math.floor((index * onDeck.length) / count)]);
  }

  /** For the oracle: the rates over many taps at random places. */
  average(): Team {
    const counts = { bad: 0, heard: 0, sound: 0, sharp: 0 };
    for (let tap = 0; tap < 4000; tap += 1) {
      const at = this.anyPlace();
      const reading = this.tap(at);
      const isSharp = reading.kind === 'sounding' && reading.sound === 'sharp';
      if (this.deck.isBad(at)) {
        counts.bad += 1;
        counts.heard += isSharp ? 0 : 1;
      } else {
        counts.sound += 1;
        counts.sharp += isSharp ? 1 : 0;
      }
    }
    const { dry, gain, noise } = this.meter;
    return {
      name: 'average',
      heardOverBad: Math.min(0.99, counts.heard / Math.max(1, counts.bad)),
      sharpOverSound: Math.min(0.99, counts.sharp / Math.max(1, counts.sound)),
      patchMm: 0,
      dullPatchShare: 0,
      deafPatchShare: 0,
      meter: { sound: dry, bad: dry + gain, sd: Math.hypot(0.05, noise * (dry + gain / 2)), metal: 0.02 },
    };
  }

  private bell(): number {
    return Array.from({ length: 12 }, () => this.random()).reduce((sum, value) => sum + value, -6);
  }

  private anyPlace(): Point {
    return this.deck.cells[Math.floor(this.random() * this.deck.cells.length)].at;
  }

  private beside(at: Point): Point {
    const angle = 2 * Math.PI * this.random();
    const there: Point = [at[0] + FOLLOW_UP_MM * Math.cos(angle), at[1] + FOLLOW_UP_MM * Math.sin(angle)];
    return this.isDeck(there) ? there : this.anyPlace();
  }

  private isDeck([x, y]: Point): boolean {
    return this.deck.cells.some(({ at }) => Math.abs(at[0] - x) <= 10 && Math.abs(at[1] - y) <= 10);
  }

  private fromEdge([x, y]: Point): number {
    return Math.min(...this.edges.map(([ex, ey]) => Math.hypot(ex - x, ey - y)));
  }

  /** Share of bad core within a disc, felt at the middle and at eight places round it. */
  private badWithin([x, y]: Point, radiusMm: number): number {
    const round = Array.from({ length: 8 }, (_, index): Point => {
      const angle = (Math.PI * index) / 4;
      return [x + 0.7 * radiusMm * Math.cos(angle), y + 0.7 * radiusMm * Math.sin(angle)];
    });
    const felt: readonly Point[] = [[x, y], ...round];
    return felt.filter((at) => this.deck.isBad(at)).length / felt.length;
  }
}

/** Places every 20 mm or so along a ring. */
function alongRing(ring: readonly Point[]): readonly Point[] {
  return ring.flatMap((from, index) => {
    const to = ring[(index + 1) % ring.length];
    const steps = Math.max(1, Math.round(Math.hypot(to[0] - from[0], to[1] - from[1]) / 20));
    return Array.from({ length: steps }, (_, step): Point => [
      from[0] + ((to[0] - from[0]) * step) / steps,
      from[1] + ((to[1] - from[1]) * step) / steps,
    ]);
  });
}
