import { randomStream, type RandomStream } from '#lib/kernel';

/** What a deck is made from; each trait is drawn from its own list. */
const traits = {
  lengthMm: [900, 2400, 4000, 9000],
  widthMm: [500, 1200, 2000, 4000],
  hole: ['none', 'hatch', 'C', 'comb', 'portholes'],
  zones: [0, 1, 3, 8, 20, 40],
  zoneCorners: [4, 12, 60, 200],
  zoneShape: ['round', 'star', 'crescent', 'comb', 'spiral', 'ring'],
  readings: [0, 12, 45, 118, 400, 1200, 2000],
  dull: [0.1, 0.3, 0.5, 0.7],
  plugs: [0, 1, 6],
  fittings: [0, 2, 12, 40, 100],
  supports: [0, 2, 8, 20],
  camberMm: [0, 2500, 20_000],
  coreMm: [6, 12.7, 25, 50],
  outerMm: [1.5, 3, 8],
  coreType: ['end-grain-balsa', 'marine-plywood', 'cross-linked-foam'],
  skin: ['any', 're-bed', 'relay'],
  edges: ['simply-supported', 'clamped'],
} as const;
type Trait = keyof typeof traits;
export type Deck = { readonly [K in Trait]: (typeof traits)[K][number] } & { readonly seed: number };

export const oneOf = <T>(list: readonly T[], random: RandomStream): T =>
  list[Math.floor(random() * list.length)];

export const drawn = (random: RandomStream): Deck => ({
  lengthMm: oneOf(traits.lengthMm, random),
  widthMm: oneOf(traits.widthMm, random),
  hole: oneOf(traits.hole, random),
  zones: oneOf(traits.zones, random),
  zoneCorners: oneOf(traits.zoneCorners, random),
  zoneShape: oneOf(traits.zoneShape, random),
  readings: oneOf(traits.readings, random),
  dull: oneOf(traits.dull, random),
  plugs: oneOf(traits.plugs, random),
  fittings: oneOf(traits.fittings, random),
  supports: oneOf(traits.supports, random),
  camberMm: oneOf(traits.camberMm, random),
  coreMm: oneOf(traits.coreMm, random),
  outerMm: oneOf(traits.outerMm, random),
  coreType: oneOf(traits.coreType, random),
  skin: oneOf(traits.skin, random),
  edges: oneOf(traits.edges, random),
  seed: Math.floor(1e6 * random()),
});

/** One or two traits of another draw. */
export function changed(deck: Deck, random: RandomStream): Deck {
  const other = drawn(random);
  const names = Object.keys(traits);
  const taken = new Set([oneOf(names, random), oneOf(names, random)]);
  const entries = Object.entries(other).filter(([name]) => taken.has(name) || name === 'seed');
  return { ...deck, ...Object.fromEntries(entries) };
}

type Place = readonly [number, number];

const box = (x: number, y: number, width: number, height: number): readonly Place[] => [
  [x, y],
  [x + width, y],
  [x + width, y + height],
  [x, y + height],
];

/** Hatches of awkward shape: a C that almost closes, a comb of slots, and round ones whose edges are shorter than any saw's turn. */
function holesOf({ hole, lengthMm: l, widthMm: w }: Deck): readonly (readonly Place[])[] {
  if (hole === 'none') return [];
  if (hole === 'hatch') return [box(0.4 * l, 0.35 * w, 0.2 * l, 0.3 * w)];
  if (hole === 'portholes')
    return Array.from({ length: 20 }, (_, port) =>
      roundAt([(l * (port + 0.5)) / 20, w * (port % 2 === 0 ? 0.25 : 0.75)], 0.0075 * l, 24),
    );
  if (hole === 'C') {
    const [x, y, a, b, t] = [0.3 * l, 0.2 * w, 0.4 * l, 0.6 * w, 0.08 * Math.min(l, w)];
    return [
      [
        [x, y],
        [x + a, y],
        [x + a, y + t],
        [x + t, y + t],
        [x + t, y + b - t],
        [x + a, y + b - t],
        [x + a, y + b],
        [x, y + b],
      ],
    ];
  }
  return Array.from({ length: 6 }, (_, slot) => box((0.1 + 0.14 * slot) * l, 0.15 * w, 0.05 * l, 0.7 * w));
}

const roundAt = ([x, y]: Place, radius: number, corners: number): readonly Place[] =>
  Array.from({ length: corners }, (_, corner): Place => {
    const turn = (2 * Math.PI * corner) / corners;
    return [x + radius * Math.cos(turn), y + radius * Math.sin(turn)];
  });

function zoneOf(deck: Deck, number: number, random: RandomStream): object {
  const { zoneCorners: corners, zoneShape } = deck;
  const [at, radius] = roomFor(deck, random);
  return {
    id: `Z${number + 1}`,
    outline: outlines[zoneShape](at, radius, corners),
    ...(zoneShape === 'ring' ? { holes: [roundAt(at, 0.4 * radius, Math.max(12, corners / 2))] } : {}),
  };
}

type Outline = (at: Place, radius: number, corners: number) => readonly Place[];

/** Every other corner of a star stands in, and a crescent is bitten off on one side. */
const outlines: Readonly<Record<Deck['zoneShape'], Outline>> = {
  round: roundAt,
  ring: roundAt,
  star: ([x, y], radius, corners) =>
    roundAt([0, 0], radius, corners).map(([dx, dy], corner): Place => {
      const wave = corner % 2 === 1 ? 0.45 : 1;
      return [x + wave * dx, y + wave * dy];
    }),
  crescent: ([x, y], radius, corners) =>
    roundAt([0, 0], radius, corners).map(([dx, dy]): Place => [
      x + (dx > 0.6 * radius ? 0.35 : 1) * dx,
      y + dy,
    ]),
  comb: combAt,
  spiral: spiralAt,
};

/** Teeth half as wide as their spacing, four corners to each. */
function combAt([x, y]: Place, radius: number, corners: number): readonly Place[] {
  const teeth = Math.max(2, Math.floor(corners / 4));
  const widthMm = (1.4 * radius) / teeth;
  const edge = Array.from({ length: teeth }, (_, tooth): readonly Place[] => {
    const from = x - 0.7 * radius + tooth * widthMm;
    const [root, tip] = [y + 0.4 * radius, y - 0.7 * radius];
    return [
      [from, tip],
      [from + widthMm / 2, tip],
      [from + widthMm / 2, root],
      [from + widthMm, root],
    ];
  });
  return [...edge.flat(), [x + 0.7 * radius, y + 0.7 * radius], [x - 0.7 * radius, y + 0.7 * radius]];
}

/** A band of a fourteenth of the radius, wound twice round. */
function spiralAt([x, y]: Place, radius: number, corners: number): readonly Place[] {
  const steps = Math.max(8, Math.floor(corners / 2));
  const side = (inwards: number): readonly Place[] =>
    Array.from({ length: steps }, (_, step): Place => {
      const turn = (4.4 * Math.PI * step) / steps;
      const reach = radius * (0.25 + (0.7 * step) / steps - inwards);
      return [x + reach * Math.cos(turn), y + reach * Math.sin(turn)];
    });
  return [...side(0), ...[...side(0.07)].reverse()];
}

/** A place for a zone on the deck and not on a hatch; where forty tries find none, a small one in the corner. */
function roomFor(deck: Deck, random: RandomStream): readonly [Place, number] {
  const { lengthMm: l, widthMm: w } = deck;
  const rings = holesOf(deck);
  for (let turn = 0; turn < 40; turn += 1) {
    const radius = (0.03 + 0.12 * random()) * Math.min(l, w);
    const [x, y] = [radius + (l - 2 * radius) * random(), radius + (w - 2 * radius) * random()];
    const isClear = rings.every((ring) => {
      const [xs, ys] = [ring.map(([cornerX]) => cornerX), ring.map(([, cornerY]) => cornerY)];
      return (
        x + radius < Math.min(...xs) ||
        x - radius > Math.max(...xs) ||
        y + radius < Math.min(...ys) ||
        y - radius > Math.max(...ys)
      );
    });
    if (isClear) return [[x, y], radius];
  }
  return [[0.05 * w, 0.05 * w], 0.04 * w];
}

function readingsOf({ readings, plugs, dull, lengthMm, widthMm }: Deck, random: RandomStream): object[] {
  const place = (): Place => [lengthMm * (0.02 + 0.96 * random()), widthMm * (0.02 + 0.96 * random())];
  const soundings = Array.from({ length: readings }, () => ({
    kind: 'sounding',
    at: place(),
    sound: random() < dull ? 'dull' : 'sharp',
  }));
  const cores = Array.from({ length: readings === 0 ? 0 : plugs }, () => ({
    kind: 'plug',
    at: place(),
    condition: random() < dull ? 'rotten' : 'dry-sound',
  }));
  return [...soundings, ...cores];
}

export function recordOf(deck: Deck): unknown {
  const random = randomStream(deck.seed);
  const { lengthMm: l, widthMm: w } = deck;
  const fittings = Array.from({ length: deck.fittings }, (_, number) => ({
    id: `F${number + 1}`,
    kind: oneOf(['cleat', 'stanchion', 'winch'], random),
    at: [l * (0.05 + 0.9 * random()), w * (0.05 + 0.9 * random())],
  }));
  const supports = Array.from({ length: deck.supports }, (_, number) => ({
    from: [(l * (number + 1)) / (deck.supports + 1), 0],
    to: [(l * (number + 1)) / (deck.supports + 1), w],
    kind: 'beam',
  }));
  const readings = readingsOf(deck, random);
  return {
    panel: {
      outline: box(0, 0, l, w),
      holes: holesOf(deck),
      supports,
      edges: deck.edges,
      ...(deck.camberMm === 0 ? {} : { camberRadiusMm: deck.camberMm }),
    },
    outerSkin: { thicknessMm: deck.outerMm },
    innerSkin: { thicknessMm: 2 },
    core: { thicknessMm: deck.coreMm, coreType: deck.coreType },
    ...(fittings.length === 0 ? {} : { fittings }),
    ...(deck.zones === 0
      ? {}
      : { zones: Array.from({ length: deck.zones }, (_, number) => zoneOf(deck, number, random)) }),
    ...(readings.length === 0 ? {} : { survey: { readings } }),
    ...(deck.skin === 'any' ? {} : { method: { skin: deck.skin } }),
  };
}
