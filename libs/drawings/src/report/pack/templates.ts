import type { CoreSection } from '#lib/estimate';
import { templateTiles } from '../../job/template.js';
import { svgOf, type Drawing } from '../../sheet/svg.js';
import type { Section } from '../document.js';
import type { ReportRequest } from '../request.js';
import { isBoard } from '../work-sections.js';

type Piece = CoreSection['pieces'][number];

/** A piece with its sheets at full size. */
export interface Template {
  readonly piece: Piece;
  readonly tiles: readonly Drawing[];
}

const templateOf = (piece: Piece, { paper, reader }: ReportRequest): Template => ({
  piece,
  tiles: templateTiles(piece, paper, { reader, block: { job: '', reference: '', made: '', sheet: '' } }),
});

/** Templates of the pieces with a curve or an odd angle; a board is cut by its length and width. */
export const shapedTemplates = (request: ReportRequest): readonly Template[] =>
  (request.estimate.core?.pieces ?? [])
    .filter(({ outline }) => !isBoard(outline))
    .map((piece) => templateOf(piece, request));

/** More sheets than this are not glued together true. */
const MOST_TILES = 4;

export const isTooLarge = ({ tiles }: Template): boolean => tiles.length > MOST_TILES;

/** Full size is for paper; a screen shows the plans and says where the templates are. */
export const templatesInPack = (
  templates: readonly Template[],
  request: ReportRequest,
): readonly Section[] =>
  request.medium === 'screen'
    ? []
    : templates
        .filter((template) => !isTooLarge(template))
        .flatMap((template) => tilePages(template, request));

/** Pieces at 1:1 over as many pages as they take. */
export const templatePages = (request: ReportRequest, pieces: readonly Piece[]): readonly Section[] =>
  pieces.flatMap((piece) => tilePages(templateOf(piece, request), request));

const tilePages = ({ piece, tiles }: Template, request: ReportRequest): readonly Section[] =>
  tiles.map((tile, index) => ({
    id: tile.name,
    level: 1,
    layout: 'template',
    title: request.reader.words.jobPack.template(piece.label, String(index + 1), String(tiles.length)),
    blocks: [
      {
        kind: 'figure',
        name: tile.name,
        caption: '',
        alt: tile.description,
        svg: svgOf(tile),
        widthMm: tile.widthMm,
        heightMm: tile.heightMm,
      },
    ],
  }));
