import type { DrawingRequest } from '../drawing-request.js';
import { fixed, lengthText, type Reader } from '../reader.js';
import { spanDimension } from '../sheet/dimension.js';
import { closeSheet, openSheet, type OpenSheet } from '../sheet/furniture.js';
import { line, sizes, text, type Mark } from '../sheet/marks.js';
import { scaleToFit } from '../sheet/scale.js';
import type { Point } from '../sheet/shapes.js';
import type { Drawing } from '../sheet/svg.js';
import { labelled, layerMarks, sideLabels, slab, type Layer } from './layers.js';

/** Across a strip of bad core at an edge that is routed out through a slot and filled solid. */
export interface SlotSectionInput {
  /** Place that the strip is called by. */
  readonly place: string;
  readonly outerSkinMm: number;
  readonly coreMm: number;
  readonly innerSkinMm: number;
  /** From the edge to sound core. */
  readonly stripMm: number;
}

/** Not to scale: the slot is as wide as the tool that is put in asks, a tape as thick as can be seen. */
const SLOT_SHARE = 0.3;
const TAPE_MM = 0.9;
/** Heights are drawn as much larger than widths as there is room for. */
const exaggerations = [5, 4, 3, 2, 1];
/** What labels and the dimension take above and below. */
const BELOW_MM = 14;
const ROUND_MM = 22;
/** How far past the slot the narrower and the wider tape are drawn, as shares of the strip. */
const TAPE_LAPS = [0.35, 0.65] as const;
/** Of the strip, sound deck that is drawn beside it. */
const BESIDE_SHARE = 0.9;

/** The lip stays, the slot lies along the inboard side, and everything between the skins is filled to the edge. */
export function slotSection(input: SlotSectionInput, request: DrawingRequest): Drawing {
  const said = request.reader.words.slotSection;
  const { stripMm } = input;
  const heightMm = input.innerSkinMm + input.coreMm + input.outerSkinMm + 2 * TAPE_MM;
  const reach = (stripMm * (1 + BESIDE_SHARE)) / 2;
  const plan = (notes: readonly string[]): OpenSheet =>
    openSheet({
      name: 'slot-section',
      title: said.title(input.place),
      ...request,
      isToScale: true,
      notes,
      legend: [],
      description: said.describe(input.place, lengthText(request.reader, stripMm)),
    });
  const { layers, key, share } = labelled(layersOf(input, request.reader), request.format.kind === 'phone');
  const { area } = plan([' ', said.drawn, ...key]);
  const roomMm = area.height - ROUND_MM;
  const scale = scaleToFit(2 * reach, heightMm, area.width * (1 - 2 * share), roomMm);
  const times = exaggerations.find((factor) => heightMm * scale.factor * factor <= roomMm) ?? 1;
  const { exaggerated } = request.reader.words.section;
  const sheet = plan([exaggerated(scale.text, fixed(request.reader, times, 0)), said.drawn, ...key]);
  const at = ([x, z]: readonly [number, number]): Point => [
    area.x + area.width / 2 + x * scale.factor,
    area.y + (area.height - BELOW_MM) / 2 + (heightMm / 2 - z) * scale.factor * times,
  ];
  const marks = [
    ...layers.flatMap((layer) => layerMarks(layer, at)),
    ...sideLabels(layers, at, { sheet, reach, share }),
    ...edgeMarks(input, at, request.reader),
  ];
  return closeSheet(sheet, marks, { scale });
}

/** From the underside upwards; x runs from the middle of what is drawn, the edge of the deck at its right end. */
function layersOf(input: SlotSectionInput, reader: Reader): readonly Layer[] {
  const { outerSkinMm, coreMm, innerSkinMm, stripMm } = input;
  const said = reader.words.slotSection;
  const named = (thicknessMm: number, name: string): string =>
    `${lengthText(reader, thicknessMm, 1)}  ${name}`;
  const { from, sound, slot, edge } = stationsOf(input);
  const coreTop = innerSkinMm + coreMm;
  const top = coreTop + outerSkinMm;
  return [
    {
      corners: slab(from, edge, 0, innerSkinMm),
      fill: 'mid',
      label: { side: 'left', content: named(innerSkinMm, said.innerSkin) },
    },
    {
      corners: slab(from, sound, innerSkinMm, coreTop),
      fill: 'paper',
      hatch: 'back-diagonal',
      label: { side: 'left', content: named(coreMm, said.oldCore) },
    },
    {
      corners: slab(sound, edge, innerSkinMm, coreTop),
      fill: 'light',
      hatch: 'crossed',
      label: { side: 'right', content: said.fill },
    },
    {
      corners: slab(from, sound, coreTop, top),
      fill: 'mid',
      label: { side: 'left', content: named(outerSkinMm, said.outerSkin) },
    },
    {
      corners: slab(sound, slot, coreTop, top),
      fill: 'light',
      label: { side: 'left', content: said.slot },
    },
    {
      corners: slab(slot, edge, coreTop, top),
      fill: 'mid',
      label: { side: 'right', content: said.lip },
    },
    ...TAPE_LAPS.map((lap, index): Layer => ({
      corners: slab(
        sound - lap * stripMm,
        Math.min(edge, slot + lap * stripMm),
        top + index * TAPE_MM,
        top + (index + 1) * TAPE_MM,
      ),
      fill: index === 0 ? 'light' : 'paper',
      label: { side: 'right', content: said.tapes[index] },
    })),
  ];
}

/** Where the drawing begins, core becomes sound, the slot ends and the deck ends. */
function stationsOf({ stripMm }: SlotSectionInput) {
  const reach = (stripMm * (1 + BESIDE_SHARE)) / 2;
  const sound = reach - stripMm;
  return { from: -reach, sound, slot: sound + SLOT_SHARE * stripMm, edge: reach };
}

function edgeMarks(
  input: SlotSectionInput,
  at: (corner: readonly [number, number]) => Point,
  reader: Reader,
): readonly Mark[] {
  const { sound, edge } = stationsOf(input);
  const [edgeX, bottom] = at([edge, 0]);
  const [soundX] = at([sound, 0]);
  return [
    line('centre', at([edge, input.innerSkinMm + input.coreMm + input.outerSkinMm + 6]), [edgeX, bottom + 3]),
    text([edgeX - 1.5, bottom + 13.5], reader.words.slotSection.edge, { sizeMm: sizes.fine, anchor: 'end' }),
    ...spanDimension({
      along: 'x',
      from: soundX,
      to: edgeX,
      level: bottom + 7,
      startLevel: bottom + 0.8,
      content: lengthText(reader, input.stripMm),
    }),
  ];
}
