import type { DrawingRequest } from '../drawing-request.js';
import { fixed, lengthText, shown, upTo, type Reader } from '../reader.js';
import { spanDimension } from '../sheet/dimension.js';
import { closeSheet, openSheet, type OpenSheet } from '../sheet/furniture.js';
import { line, sizes, text, type Mark } from '../sheet/marks.js';
import { scaleToFit, type Scale } from '../sheet/scale.js';
import type { Box, Point } from '../sheet/shapes.js';
import type { Drawing } from '../sheet/svg.js';
import { labelled, layerMarks, sideLabels, slab, type Layer } from './layers.js';

export interface SectionInput {
  readonly method: 're-bed' | 'relay';
  /** Which skin is cut: the one on deck, or the one seen from below; the section is drawn as the deck lies. */
  readonly cutFrom: 'above' | 'below';
  /** The skin that stays whole. */
  readonly wholeSkinMm: number;
  /** The skin that is cut and tapered. */
  readonly cutSkinMm: number;
  /** Height between the skins of the sound deck. */
  readonly cavityMm: number;
  /** What fills the cavity in the opening, from the inner skin upwards. */
  readonly stack: readonly {
    readonly layer: string;
    readonly thicknessMm: number;
    readonly isBond: boolean;
  }[];
  readonly taperRatio: number;
  readonly taperWidthMm: number;
  /** Plies of the schedule, from the core outwards. */
  readonly plies: readonly {
    readonly order: number;
    readonly materialName: string;
    readonly thicknessMm: number;
    readonly widthMm?: number;
  }[];
}

const exaggerations = [5, 4, 3, 2, 1];

/** Across the cut edge: what stays, what is new, how the plies step down the taper. */
export function jointSection(input: SectionInput, request: DrawingRequest): Drawing {
  const { reader } = request;
  const said = reader.words.section;
  const reach = reachOf(input);
  const heightMm = input.wholeSkinMm + input.cavityMm + input.cutSkinMm + overheight(input);
  const plan = (notes: readonly string[]): OpenSheet =>
    openSheet({
      name: 'section',
      title: said.title,
      ...request,
      isToScale: true,
      notes,
      legend: [],
      description: '',
    });
  const { layers, key, share } = labelled(layersOf(input, reach, reader), request.format.kind === 'phone');
  const { scale, times } = scaled(reach, heightMm, plan([' ', ...key]).area, share);
  const factor = fixed(reader, times, 0);
  const sheet = plan([said.exaggerated(scale.text, factor), ...key]);
  const described = said.describe(
    said.methods[input.method],
    `${upTo(reader, input.taperRatio, 1)}:1`,
    factor,
  );
  const { area } = sheet;
  const middle: Point = [
    area.x + area.width / 2,
    area.y + area.height - 4 - Math.max(0, (area.height - 24 - heightMm * scale.factor * times) / 2),
  ];
  const up = (z: number): number => (input.cutFrom === 'above' ? z : heightMm - z);
  const at = ([x, z]: readonly [number, number]): Point => [
    middle[0] + x * scale.factor,
    middle[1] - up(z) * scale.factor * times,
  ];
  const marks = [
    ...layers.flatMap((layer) => layerMarks(layer, at)),
    ...sideLabels(layers, at, { sheet, reach, share }),
    ...cutMarks(input, at, reader),
  ];
  return closeSheet({ ...sheet, request: { ...sheet.request, description: described } }, marks, { scale });
}

/** How far the plies stand above the old skin; drawn, so that it is seen. */
const overheight = ({ plies, cutSkinMm }: SectionInput): number =>
  Math.max(0, plies.reduce((sum, { thicknessMm }) => sum + thicknessMm, 0) - cutSkinMm);

const reachOf = ({ taperWidthMm }: SectionInput): number => taperWidthMm * 1.25 + 12;

/** Widths at the largest scale that fits between the label columns; heights then as much larger as there is room for. */
function scaled(
  reach: number,
  heightMm: number,
  area: Box,
  share: number,
): { readonly scale: Scale; readonly times: number } {
  const room = area.height - 26;
  const scale = scaleToFit(2 * reach, heightMm, area.width * (1 - 2 * share), room);
  const times = exaggerations.find((factor) => heightMm * scale.factor * factor <= room) ?? 1;
  return { scale, times };
}

function layersOf(input: SectionInput, reach: number, reader: Reader): readonly Layer[] {
  const { wholeSkinMm, cavityMm, cutSkinMm } = input;
  const said = reader.words.section;
  const coreTop = wholeSkinMm + cavityMm;
  const named = (name: string, thicknessMm: number): string =>
    `${lengthText(reader, thicknessMm, 1)}  ${name}`;
  let level = wholeSkinMm;
  const stack = input.stack.map(({ layer, thicknessMm, isBond }): Layer => {
    const corners = slab(-reach, 0, level, level + thicknessMm);
    level += thicknessMm;
    return {
      corners,
      fill: isBond ? 'ink' : 'paper',
      ...(isBond ? {} : { hatch: 'diagonal' }),
      label: { side: 'left', content: named(shown(reader, layer), thicknessMm) },
    };
  });
  const outer: Layer['corners'] = [
    [0, coreTop],
    [reach, coreTop],
    [reach, coreTop + cutSkinMm],
    [input.taperWidthMm, coreTop + cutSkinMm],
  ];
  const lifted: readonly Layer[] =
    input.method === 'relay'
      ? []
      : [
          {
            corners: outer.map(([x, z]) => [-x, z + level - coreTop]),
            fill: 'mid',
            label: { side: 'left', content: named(said.liftedSkin, cutSkinMm) },
          },
        ];
  return [
    {
      corners: slab(-reach, reach, 0, wholeSkinMm),
      fill: 'mid',
      label: { side: 'right', content: named(said.wholeSkin[input.cutFrom], wholeSkinMm) },
    },
    ...stack,
    {
      corners: slab(0, reach, wholeSkinMm, coreTop),
      fill: 'paper',
      hatch: 'back-diagonal',
      label: { side: 'right', content: named(said.oldCore, cavityMm) },
    },
    {
      corners: outer,
      fill: 'mid',
      label: { side: 'right', content: named(said.cutSkin[input.cutFrom], cutSkinMm) },
    },
    ...lifted,
    ...plyLayers(input, reach, level, reader),
  ];
}

interface PlyShape {
  readonly corners: Layer['corners'];
  /** Where the next ply lies on. */
  readonly top: (x: number) => number;
}

function plyLayers(input: SectionInput, reach: number, startLevel: number, reader: Reader): readonly Layer[] {
  const base = input.wholeSkinMm + input.cavityMm;
  const slope = input.taperWidthMm === 0 ? 0 : input.cutSkinMm / input.taperWidthMm;
  const ground = (x: number): number => base + Math.min(input.cutSkinMm, Math.abs(x) * slope);
  let below: PlyShape = { corners: [], top: input.method === 'relay' ? () => startLevel : ground };
  return input.plies.map((ply, index): Layer => {
    below =
      input.method === 'relay'
        ? relaidPly(ply, below, { base, slope, reach })
        : closingPly(input, index, below);
    const content = `${lengthText(reader, ply.thicknessMm, 2)}  ${reader.words.section.ply(String(ply.order))}, ${shown(reader, ply.materialName)}`;
    return {
      corners: below.corners,
      fill: index % 2 === 0 ? 'light' : 'paper',
      label: { side: 'left', content },
    };
  });
}

/** A relaid ply ends on the ground taper, so that the stack comes up flush with the old skin. */
function relaidPly(
  { thicknessMm }: SectionInput['plies'][number],
  below: PlyShape,
  { base, slope, reach }: { base: number; slope: number; reach: number },
): PlyShape {
  const low = below.top(0);
  const high = low + thicknessMm;
  const edge = (z: number): number => (slope === 0 ? 0 : Math.max(0, (z - base) / slope));
  return {
    corners: [
      [-reach, low],
      [edge(low), low],
      [edge(high), high],
      [-reach, high],
    ],
    top: () => high,
  };
}

/** A closing ply lies over both tapers and follows what is below it. */
function closingPly(input: SectionInput, index: number, below: PlyShape): PlyShape {
  const { thicknessMm } = input.plies[index];
  const half = halfWidth(input, index);
  const hem = 0.01;
  const breaks = input.plies
    .slice(0, index)
    .map((_, earlier) => halfWidth(input, earlier))
    .filter((at) => at < half)
    .flatMap((at) => [-at - hem, -at + hem, at - hem, at + hem]);
  const stations = [-half, ...breaks, 0, half].sort((a, b) => a - b);
  const covers = (x: number): boolean => Math.abs(x) < half;
  return {
    corners: [
      ...stations.map((x): readonly [number, number] => [x, below.top(x)]),
      ...[...stations].reverse().map((x): readonly [number, number] => [x, below.top(x) + thicknessMm]),
    ],
    top: (x) => below.top(x) + (covers(x) ? thicknessMm : 0),
  };
}

const halfWidth = ({ plies, taperWidthMm }: SectionInput, index: number): number =>
  (plies[index].widthMm ?? (2 * taperWidthMm * (index + 1)) / plies.length) / 2;

function cutMarks(
  input: SectionInput,
  at: (corner: readonly [number, number]) => Point,
  reader: Reader,
): readonly Mark[] {
  const top = input.wholeSkinMm + input.cavityMm + input.cutSkinMm + overheight(input);
  const [x, y] = at([0, top]);
  const [taperX] = at([input.taperWidthMm, top]);
  // Marks stand off the face that is cut: over the deck, or under it.
  const away = input.cutFrom === 'above' ? 1 : -1;
  const said = reader.words.section;
  const content = `${said.taperWidth} ${lengthText(reader, input.taperWidthMm)}`;
  const bottom = at([0, input.wholeSkinMm + input.cavityMm])[1];
  return [
    line('centre', [x, y - 11 * away], [x, bottom]),
    text([x - 1.5, y - 8.6 * away], said.cutLine, { sizeMm: sizes.fine, anchor: 'end' }),
    ...(input.taperWidthMm <= 0
      ? []
      : spanDimension({
          along: 'x',
          from: x,
          to: taperX,
          level: y - 5 * away,
          startLevel: y - 0.8 * away,
          content,
        })),
  ];
}
