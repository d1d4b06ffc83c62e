import type { DrawingRequest } from '../drawing-request.js';
import { lengthText, shown, type Reader } from '../reader.js';
import { closeSheet, openSheet } from '../sheet/furniture.js';
import { scaleToFit } from '../sheet/scale.js';
import type { Point } from '../sheet/shapes.js';
import type { Drawing } from '../sheet/svg.js';
import { labelled, layerMarks, sideLabels, slab, type Layer } from './layers.js';

/** One bolt of a fitting, and what it goes through; fittings that are bedded alike share it. */
export interface FittingSectionInput {
  readonly names: readonly string[];
  readonly outerSkinMm: number;
  readonly coreMm: number;
  readonly innerSkinMm: number;
  readonly fastenerMm: number;
  readonly fastenerLengthMm: number;
  /** The hole that is filled and drilled anew; it is not made where solid stands in place of core. */
  readonly plugMm: number;
  readonly insert?: { readonly material: string };
  readonly plate?: { readonly thicknessMm: number; readonly material: string };
  readonly sealant: string;
}

/** What is drawn of base, sealant, nut and head; it is there to be seen and has no figure. */
const BASE_MM = 6;
const SEALANT_MM = 0.8;
const NUT_SHARE = 0.8;
/** Shown of the deck on each side of the hole. */
const ASIDE_MM = 16;

/** Through one hole, as it is bedded: base, sealant, plug or solid, plate and nut. */
export function fittingSection(input: FittingSectionInput, request: DrawingRequest): Drawing {
  const { reader } = request;
  const said = reader.words.fittingSection;
  const names = input.names.map((name) => shown(reader, name)).join(', ');
  const reach = input.plugMm / 2 + ASIDE_MM;
  const { layers, key, share } = labelled(layersOf(input, reach, reader), request.format.kind === 'phone');
  const sheet = openSheet({
    name: 'fitting-section',
    title: said.title(names),
    ...request,
    isToScale: true,
    notes: key,
    legend: [],
    description: said.describe(names),
  });
  const levels = layers.flatMap(({ corners }) => corners.map(([, z]) => z));
  const [low, high] = [Math.min(...levels), Math.max(...levels)];
  const { area } = sheet;
  const scale = scaleToFit(2 * reach, high - low, area.width * (1 - 2 * share), area.height - 6);
  const bottom = area.y + (area.height + (high - low) * scale.factor) / 2;
  const at = ([x, z]: readonly [number, number]): Point => [
    area.x + area.width / 2 + x * scale.factor,
    bottom - (z - low) * scale.factor,
  ];
  return closeSheet(
    sheet,
    [...layers.flatMap((layer) => layerMarks(layer, at)), ...sideLabels(layers, at, { sheet, reach, share })],
    { scale },
  );
}

function layersOf(input: FittingSectionInput, reach: number, reader: Reader): readonly Layer[] {
  const top = input.innerSkinMm + input.coreMm + input.outerSkinMm;
  const said = reader.words.fittingSection;
  return [
    ...deckLayers(input, reach, reader),
    ...plateLayers(input, reach, reader),
    {
      corners: slab(-reach, reach, top, top + SEALANT_MM),
      fill: 'ink',
      label: { side: 'left', content: said.sealant(shown(reader, input.sealant.replaceAll('-', ' '))) },
    },
    {
      corners: slab(-reach, reach, top + SEALANT_MM, top + SEALANT_MM + BASE_MM),
      fill: 'paper',
      hatch: 'sparse',
      label: { side: 'right', content: said.base },
    },
    ...boltLayers(input, top, reader),
  ];
}

/** Skins, and between them old core with its plug, or solid. */
function deckLayers(input: FittingSectionInput, reach: number, reader: Reader): readonly Layer[] {
  const { innerSkinMm, coreMm, outerSkinMm, plugMm, insert } = input;
  const said = reader.words.fittingSection;
  const coreTop = innerSkinMm + coreMm;
  const named = (thicknessMm: number, name: string): string =>
    `${lengthText(reader, thicknessMm, 1)}  ${name}`;
  return [
    {
      corners: slab(-reach, reach, 0, innerSkinMm),
      fill: 'mid',
      label: { side: 'right', content: named(innerSkinMm, said.innerSkin) },
    },
    {
      corners: slab(-reach, reach, innerSkinMm, coreTop),
      fill: insert === undefined ? 'paper' : 'light',
      hatch: insert === undefined ? 'back-diagonal' : 'crossed',
      label: { side: 'right', content: named(coreMm, insert?.material ?? said.core) },
    },
    {
      corners: slab(-reach, reach, coreTop, coreTop + outerSkinMm),
      fill: 'mid',
      label: { side: 'right', content: named(outerSkinMm, said.outerSkin) },
    },
    ...(insert !== undefined
      ? []
      : [
          {
            corners: slab(-plugMm / 2, plugMm / 2, innerSkinMm, coreTop + outerSkinMm),
            fill: 'light',
            label: { side: 'left', content: said.plug(lengthText(reader, plugMm, 1)) },
          } as const,
        ]),
  ];
}

const plateLayers = ({ plate }: FittingSectionInput, reach: number, reader: Reader): readonly Layer[] =>
  plate === undefined
    ? []
    : [
        {
          corners: slab(-reach, reach, -plate.thicknessMm, 0),
          fill: 'paper',
          hatch: 'level',
          label: {
            side: 'right',
            content: `${lengthText(reader, plate.thicknessMm, 1)}  ${reader.words.fittingSection.plate(shown(reader, plate.material))}`,
          },
        },
      ];

/** Shank through everything, head on the base, washer and nut below. */
function boltLayers(input: FittingSectionInput, top: number, reader: Reader): readonly Layer[] {
  const { fastenerMm, fastenerLengthMm, plate } = input;
  const [radius, high] = [fastenerMm / 2, NUT_SHARE * fastenerMm];
  const [head, nut] = [top + SEALANT_MM + BASE_MM, -(plate?.thicknessMm ?? 0)];
  const said = reader.words.fittingSection;
  return [
    {
      corners: slab(-radius, radius, nut - high - fastenerMm / 3, head),
      fill: 'paper',
      label: {
        side: 'left',
        content: said.bolt(
          lengthText(reader, fastenerMm, reader.units === 'si' && Number.isInteger(fastenerMm) ? 0 : 1),
          lengthText(reader, fastenerLengthMm),
        ),
      },
    },
    { corners: slab(-fastenerMm, fastenerMm, head, head + high), fill: 'paper' },
    {
      corners: slab(-fastenerMm, fastenerMm, nut - high, nut),
      fill: 'paper',
      label: { side: 'left', content: said.nut },
    },
  ];
}
