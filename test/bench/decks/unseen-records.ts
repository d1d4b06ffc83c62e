import { randomStream, type RandomStream } from '#lib/kernel';

/**
 * Decks of another kind than those the slowest are searched among: bands that wander, teeth all round, stairs, bones and leaves,
 * side by side in rows or nested one about another, beside slots, lattices of small hatches or a long well. Made after the
 * budgets were set, and not looked at before.
 */
export interface UnseenDeck {
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly hatches: 'none' | 'slots' | 'lattice' | 'well';
  readonly shape: keyof typeof shapes;
  readonly lie: 'rows' | 'scattered' | 'line';
  readonly zones: number;
  readonly corners: number;
  readonly readings: number;
  readonly supports: number;
  readonly coreMm: number;
  readonly seed: number;
}

type Place = readonly [number, number];
type Outline = (radius: number, corners: number, random: RandomStream) => readonly Place[];

const oneOf = <T>(list: readonly T[], random: RandomStream): T => list[Math.floor(random() * list.length)];

/** About the origin, within its radius, so that no outline crosses itself. */
const about = (corners: number, reachAt: (turn: number, corner: number) => number): readonly Place[] =>
  Array.from({ length: corners }, (_, corner): Place => {
    const turn = (2 * Math.PI * corner) / corners;
    const reach = reachAt(turn, corner);
    return [reach * Math.cos(turn), reach * Math.sin(turn)];
  });

/** A band along a line of heights, out on one side and back on the other. */
const band = (heights: readonly number[], radius: number, widthMm: number): readonly Place[] => {
  const at = (index: number): number => radius * ((1.8 * index) / (heights.length - 1) - 0.9);
  const side = (shift: number): readonly Place[] =>
    heights.map((height, index): Place => [at(index), height + shift]);
  return [...side(-widthMm / 2), ...[...side(widthMm / 2)].reverse()];
};

const shapes = {
  /** A band that wanders up and down as water along planks does. */
  wandering: (radius, corners, random) => {
    let height = 0;
    const heights = Array.from({ length: Math.max(4, corners / 2) }, () => {
      height = Math.max(-0.7 * radius, Math.min(0.7 * radius, height + (random() - 0.5) * 0.5 * radius));
      return height;
    });
    return band(heights, radius, 0.15 * radius);
  },
  cog: (radius, corners) => about(corners, (_, corner) => radius * (corner % 4 < 2 ? 1 : 0.7)),
  stairs: (radius, corners) => {
    const steps = Math.max(2, Math.floor(corners / 4));
    const step = (1.4 * radius) / steps;
    const up = Array.from({ length: steps }, (_, index): readonly Place[] => {
      const from = -0.7 * radius + index * step;
      return [
        [from, from],
        [from + step, from],
      ];
    });
    const down = [...up.flat()].reverse().map(([x, y]): Place => [x - 0.2 * radius, y + 0.3 * radius]);
    return [...up.flat(), ...down];
  },
  bone: (radius, corners) => about(corners, (turn) => radius * (0.25 + 0.75 * Math.cos(turn) ** 4)),
  leaf: (radius, corners, random) =>
    about(corners, (turn) => radius * (0.55 + 0.3 * Math.cos(5 * turn) + 0.15 * random())),
} as const satisfies Readonly<Record<string, Outline>>;

export const unseenDeck = (random: RandomStream): UnseenDeck => ({
  lengthMm: oneOf([1800, 5200, 11_000], random),
  widthMm: oneOf([700, 1600, 3400], random),
  hatches: oneOf(['none', 'slots', 'lattice', 'well'] as const, random),
  shape: oneOf(['wandering', 'cog', 'stairs', 'bone', 'leaf'] as const, random),
  lie: oneOf(['rows', 'scattered', 'line'] as const, random),
  zones: oneOf([6, 18, 34, 50], random),
  corners: oneOf([16, 48, 120, 240], random),
  readings: oneOf([0, 60, 900], random),
  supports: oneOf([0, 5, 45], random),
  coreMm: oneOf([9, 19, 25], random),
  seed: Math.floor(1e6 * random()),
});

const box = (x: number, y: number, width: number, height: number): readonly Place[] => [
  [x, y],
  [x + width, y],
  [x + width, y + height],
  [x, y + height],
];

function hatchesOf({ hatches, lengthMm: l, widthMm: w }: UnseenDeck): readonly (readonly Place[])[] {
  if (hatches === 'well') return [box(0.1 * l, 0.45 * w, 0.8 * l, 0.1 * w)];
  if (hatches === 'slots')
    return Array.from({ length: 14 }, (_, slot) =>
      box(l * (0.03 + 0.068 * slot), 0.3 * w, 0.012 * l, 0.4 * w),
    );
  if (hatches === 'lattice')
    return Array.from({ length: 36 }, (_, one) =>
      box(l * (0.04 + 0.08 * (one % 12)), w * (0.2 + 0.25 * Math.floor(one / 12)), 0.02 * l, 0.05 * w),
    );
  return [];
}

/** Where the middle of a zone lies, of so many. */
function middleOf(
  { lie, lengthMm: l, widthMm: w, zones }: UnseenDeck,
  zone: number,
  random: RandomStream,
): Place {
  if (lie === 'scattered') return [l * (0.08 + 0.84 * random()), w * (0.12 + 0.76 * random())];
  if (lie === 'line') return [(l * (zone + 0.5)) / zones, w * (0.5 + 0.02 * random())];
  const columns = Math.ceil(zones / 3);
  return [(l * ((zone % columns) + 0.5)) / columns, w * (0.2 + 0.3 * Math.floor(zone / columns))];
}

export function unseenRecord(deck: UnseenDeck): unknown {
  const { lengthMm: l, widthMm: w } = deck;
  const random = randomStream(deck.seed);
  const zones = Array.from({ length: deck.zones }, (_, zone) => {
    const [x, y] = middleOf(deck, zone, random);
    const radius = (0.04 + 0.1 * random()) * Math.min(l, w) + 20;
    const outline = shapes[deck.shape](radius, deck.corners, random).map(([dx, dy]): Place => [
      x + dx,
      y + dy,
    ]);
    return { id: `Z${zone + 1}`, outline };
  });
  const readings = Array.from({ length: deck.readings }, () => ({
    kind: 'sounding',
    at: [l * random(), w * random()],
    sound: random() < 0.3 ? 'dull' : 'sharp',
  }));
  return {
    panel: {
      outline: box(0, 0, l, w),
      holes: hatchesOf(deck),
      supports: Array.from({ length: deck.supports }, (_, number) => {
        const x = (l * (number + 1)) / (deck.supports + 1);
        return { from: [x, 0], to: [x, w], kind: 'beam' };
      }),
    },
    outerSkin: { thicknessMm: 3 },
    innerSkin: { thicknessMm: 2 },
    core: { thicknessMm: deck.coreMm, coreType: 'end-grain-balsa' },
    zones,
    ...(readings.length === 0 ? {} : { survey: { readings } }),
  };
}
