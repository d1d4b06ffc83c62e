import { hatched, type Hatch } from '../sheet/hatch.js';
import type { OpenSheet } from '../sheet/furniture.js';
import { line, shape, sizes, text, textBox, type Fill, type Mark } from '../sheet/marks.js';
import { spread } from '../sheet/placing.js';
import type { Point, Ring } from '../sheet/shapes.js';
import { wrapped } from '../sheet/text-size.js';

/** A closed layer of the section in real mm: x across the cut, z upwards from the underside of the inner skin. */
export interface Layer {
  readonly corners: readonly (readonly [x: number, z: number])[];
  readonly fill: Fill;
  readonly hatch?: Hatch;
  readonly label?: { readonly side: 'left' | 'right'; readonly content: string };
}

/** Of the width, for the names on each side, or for numbers in their stead. */
const NAME_SHARE = 0.29;
const NUMBER_SHARE = 0.12;

interface Labels {
  readonly layers: readonly Layer[];
  /** What the numbers mean, from the top down; empty where the names themselves stand beside the layers. */
  readonly key: readonly string[];
  readonly share: number;
}

/** A narrow screen has no room for names beside the section: there they are numbered and listed below. */
export function labelled(layers: readonly Layer[], isNarrow: boolean): Labels {
  if (!isNarrow) return { layers, key: [], share: NAME_SHARE };
  const ordered = layers
    .filter(({ label }) => label !== undefined)
    .sort((one, other) => topOf(other) - topOf(one));
  const numbers = new Map(ordered.map((layer, index) => [layer, String(index + 1)]));
  return {
    layers: layers.map((layer) =>
      layer.label === undefined
        ? layer
        : { ...layer, label: { ...layer.label, content: numbers.get(layer) ?? '' } },
    ),
    key: ordered.map(({ label }, index) => `${index + 1}: ${label?.content ?? ''}`),
    share: NUMBER_SHARE,
  };
}

const topOf = ({ corners }: Layer): number => Math.max(...corners.map(([, z]) => z));

export const slab = (fromX: number, toX: number, fromZ: number, toZ: number): Layer['corners'] => [
  [fromX, fromZ],
  [toX, fromZ],
  [toX, toZ],
  [fromX, toZ],
];

export function layerMarks(
  { corners, fill, hatch }: Layer,
  at: (corner: readonly [number, number]) => Point,
): readonly Mark[] {
  const ring: Ring = corners.map(at);
  return [
    shape([ring], undefined, fill),
    ...(hatch === undefined ? [] : hatched([ring], hatch)),
    shape([ring], 'fine', 'none'),
  ];
}

interface Columns {
  readonly sheet: OpenSheet;
  readonly reach: number;
  readonly share: number;
}

/** From one line of a name to the next, and from one name to the next. */
const LINE_MM = 3.2;
const AIR_MM = 0.9;

/** Names stand in a column on their side, spread so that none touch, each led to the middle of its layer. */
export function sideLabels(
  layers: readonly Layer[],
  at: (corner: readonly [number, number]) => Point,
  { sheet, reach, share }: Columns,
): readonly Mark[] {
  const { area } = sheet;
  const room = area.width * share - 4;
  return (['left', 'right'] as const).flatMap((side) => {
    const named = layers
      .flatMap((layer) =>
        layer.label?.side === side
          ? [
              {
                lines: wrapped(layer.label.content, room, sizes.fine, 'regular'),
                spot: anchorOf(layer, side, reach),
              },
            ]
          : [],
      )
      .map(({ lines, spot }) => ({ lines, spot: at(spot) }))
      .sort((a, b) => a.spot[1] - b.spot[1]);
    const gap = AIR_MM + LINE_MM * Math.max(1, ...named.map(({ lines }) => lines.length));
    const levels = spread(
      named.map(({ spot }) => spot[1]),
      gap,
      area.y + 14,
      area.y + area.height - 3,
    );
    const edge = side === 'left' ? area.x + 0.5 : area.x + area.width - 0.5;
    const knee = side === 'left' ? edge + room + 1.5 : edge - room - 1.5;
    return named.flatMap(({ lines, spot }, index) =>
      nameMarks(lines, spot, { side, edge, knee, level: levels[index] }),
    );
  });
}

interface Stand {
  readonly side: 'left' | 'right';
  readonly edge: number;
  readonly knee: number;
  readonly level: number;
}

function nameMarks(
  lines: readonly string[],
  spot: Point,
  { side, edge, knee, level }: Stand,
): readonly Mark[] {
  const first = level + 0.9 - ((lines.length - 1) * LINE_MM) / 2;
  const names = lines.map((content, index) =>
    text([edge, first + index * LINE_MM], content, {
      sizeMm: sizes.fine,
      anchor: side === 'left' ? 'start' : 'end',
    }),
  );
  const boxes = names.map(textBox);
  const from: Point = [
    side === 'left'
      ? Math.max(...boxes.map(({ x, width }) => x + width)) + 0.8
      : Math.min(...boxes.map(({ x }) => x)) - 0.8,
    level,
  ];
  return [
    ...names,
    line('dimension', from, [knee, level], spot),
    shape(
      [
        [
          [spot[0] - 0.35, spot[1]],
          [spot[0], spot[1] - 0.35],
          [spot[0] + 0.35, spot[1]],
          [spot[0], spot[1] + 0.35],
        ],
      ],
      undefined,
      'ink',
    ),
  ];
}

/** A point inside the layer near its side of the drawing. */
function anchorOf({ corners }: Layer, side: 'left' | 'right', reach: number): readonly [number, number] {
  const xs = corners.map(([x]) => x);
  const [left, right] = [Math.min(...xs), Math.max(...xs)];
  const inset = Math.min(reach * 0.06, (right - left) / 2);
  const zs = corners.map(([, z]) => z);
  return [side === 'left' ? left + inset : right - inset, (Math.min(...zs) + Math.max(...zs)) / 2];
}
