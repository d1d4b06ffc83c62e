import type { HammerSound, Reading, Survey } from '#lib/extent';
import type { Point } from '#lib/geometry';
import type { RandomStream } from '#lib/kernel';
import { normal, type Deck } from './truth.js';

/** How somebody's hammer and meter err; the map is told nothing of it. */
export interface Team {
  readonly name: string;
  readonly heardOverBad: number;
  readonly sharpOverSound: number;
  /** Patches of this size in which the hammer is wrong as a whole, over sound and over bad core; 0 for none. */
  readonly patchMm: number;
  readonly dullPatchShare: number;
  readonly deafPatchShare: number;
  /** Meter: share of the scale at which sound and bad core read, noise, and share of readings that metal spoils. */
  readonly meter: {
    readonly sound: number;
    readonly bad: number;
    readonly sd: number;
    readonly metal: number;
  };
}

const independent = { patchMm: 0, dullPatchShare: 0, deafPatchShare: 0 };
const meter = { sound: 0.12, bad: 0.72, sd: 0.17, metal: 0.03 };

/** Fixed before the first run. */
export const teams: readonly Team[] = [
  { name: 'fair', heardOverBad: 0.88, sharpOverSound: 0.92, ...independent, meter },
  { name: 'misses', heardOverBad: 0.65, sharpOverSound: 0.97, ...independent, meter },
  { name: 'cries wolf', heardOverBad: 0.95, sharpOverSound: 0.8, ...independent, meter: { ...meter, sound: 0.3, bad: 0.85 } }, // prettier-ignore
  { name: 'hangs together', heardOverBad: 0.95, sharpOverSound: 0.95, patchMm: 200, dullPatchShare: 0.08, deafPatchShare: 0.14, meter }, // prettier-ignore
];

/** Others again, never tuned on. */
export const heldOutTeams: readonly Team[] = [
  { name: 'good', heardOverBad: 0.93, sharpOverSound: 0.95, ...independent, meter: { sound: 0.05, bad: 0.9, sd: 0.12, metal: 0.01 } }, // prettier-ignore
  { name: 'deaf', heardOverBad: 0.55, sharpOverSound: 0.98, ...independent, meter: { sound: 0.1, bad: 0.5, sd: 0.2, metal: 0.05 } }, // prettier-ignore
  { name: 'nervous', heardOverBad: 0.9, sharpOverSound: 0.74, ...independent, meter: { sound: 0.35, bad: 0.8, sd: 0.22, metal: 0.05 } }, // prettier-ignore
  { name: 'patchy', heardOverBad: 0.92, sharpOverSound: 0.93, patchMm: 260, dullPatchShare: 0.12, deafPatchShare: 0.1, meter: { ...meter, bad: 0.6 } }, // prettier-ignore
];

export const SCALE = { dryReference: 10, wetReference: 30 } as const;
const PLACE_SD_MM = 20;
const VOID_OVER_BAD = 0.6;
const VOID_OVER_SOUND = 0.35;

/** Who reads a deck: single readings where they are asked for, and a survey of so many. */
export interface Crew {
  readonly tap: (at: Point) => Reading;
  readonly metered: (at: Point) => Reading;
  readonly plug: (at: Point) => Reading;
  readonly places: (count: number) => readonly Point[];
  readonly survey: (count: number) => Survey;
}

/** Makes readings of one deck by one team; patches of wrong hearing stay where they are. */
export class Surveyor implements Crew {
  private readonly patches: readonly { readonly at: Point; readonly isDull: boolean }[];

  constructor(
    private readonly deck: Deck,
    private readonly team: Team,
    private readonly random: RandomStream,
  ) {
    this.patches = this.patchesOf();
  }

  private patchesOf(): readonly { readonly at: Point; readonly isDull: boolean }[] {
    const { patchMm, dullPatchShare, deafPatchShare } = this.team;
    if (patchMm === 0) return [];
    const { cells } = this.deck;
    const areaMm2 = cells.length * 400;
    const each = (share: number, isDull: boolean) =>
      Array.from({ length: Math.round((share * areaMm2) / (Math.PI * (patchMm / 2) ** 2)) }, () => ({
        at: cells[Math.floor(this.random() * cells.length)].at,
        isDull,
      }));
    return [...each(dullPatchShare, true), ...each(deafPatchShare, false)];
  }

  tap(at: Point): Reading {
    const [x, y] = [at[0] + PLACE_SD_MM * normal(this.random), at[1] + PLACE_SD_MM * normal(this.random)];
    const isBad = this.deck.isBad([Math.max(0, x), Math.max(0, y)]);
    const patch = this.patches.find(
      ({ at: [px, py], isDull }) => Math.hypot(px - x, py - y) < this.team.patchMm / 2 && isDull === !isBad,
    );
    const isAlarm =
      patch === undefined
        ? isBad
          ? this.random() < this.team.heardOverBad
          : this.random() >= this.team.sharpOverSound
        : patch.isDull;
    const isVoid = this.random() < (isBad ? VOID_OVER_BAD : VOID_OVER_SOUND);
    const sound: HammerSound = isAlarm ? (isVoid ? 'void' : 'dull') : 'sharp';
    return { kind: 'sounding', at, sound };
  }

  metered(at: Point): Reading {
    const { sound, bad, sd, metal } = this.team.meter;
    const near = [[0, 0], [40, 0], [-40, 0], [0, 40], [0, -40]].map(([dx, dy]) => this.deck.isBad([Math.max(0, at[0] + dx), Math.max(0, at[1] + dy)])); // prettier-ignore
    const wet = near.filter((isBad) => isBad).length / near.length;
    const isMetal = this.random() < metal;
    const share = isMetal ? 1.2 : sound + wet * (bad - sound) + sd * normal(this.random);
    return {
      kind: 'moisture',
      at,
      value: SCALE.dryReference + share * (SCALE.wetReference - SCALE.dryReference),
    };
  }

  plug(at: Point): Reading {
    return { kind: 'plug', at, condition: this.deck.isBad(at) ? 'rotten' : 'dry-sound' };
  }

  /** Three taps in four on a jittered grid, every fourth a meter, then up to three plugs where the symptoms point. */
  survey(count: number): Survey {
    const readings = this.places(count).map((at, index) =>
      index % 4 === 3 ? this.metered(at) : this.tap(at),
    );
    const plugs = [true, true, false].flatMap((wanted) => {
      const suspects = readings.filter(
        (one) => one.kind === 'sounding' && (one.sound !== 'sharp') === wanted,
      );
      return suspects.length === 0
        ? []
        : [this.plug(suspects[Math.floor(this.random() * suspects.length)].at)];
    });
    return { readings: [...readings, ...plugs], meter: SCALE };
  }

  /** One place in each of about as many equal squares of the panel. */
  places(count: number): readonly Point[] {
    const { cells } = this.deck;
    const side = Math.sqrt((cells.length * 400) / count);
    const squares = new Map<string, Point[]>();
    for (const { at } of cells) {
      const key = `${Math.floor(at[0] / side)} ${Math.floor(at[1] / side)}`;
      squares.set(key, [...(squares.get(key) ?? []), at]);
    }
    const one = [...squares.values()].map((places) => places[Math.floor(this.random() * places.length)]);
    const rest = Array.from({ length: Math.max(0, count - one.length) }, () => cells[Math.floor(this.random() * cells.length)].at); // prettier-ignore
    return [...shuffled(one, this.random), ...rest].slice(0, count);
  }
}

function shuffled<T>(items: readonly T[], random: RandomStream): readonly T[] {
  const copy = [...items];
  for (let index = copy.length - 1; index > 0; index -= 1) {
    const other = Math.floor(random() * (index + 1));
    [copy[index], copy[other]] = [copy[other], copy[index]];
  }
  return copy;
}
