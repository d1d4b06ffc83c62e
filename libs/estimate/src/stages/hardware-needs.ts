import { materialsOf, type Consumable } from '#lib/catalogue';
import type { RollStrip } from '#lib/laminate';
import type { FittingCard, SealantKind } from '#lib/methods';
import { derived, type Figure } from '#lib/provenance';
import type { NeedRequest } from '#lib/takeoff';
import { fraction, l, m2FromMm2, mm2 } from '#lib/units';
import type { Job } from '../job/job.js';
import { boardsFor, layersFor, type Board } from './boards.js';

/** What the cards of the fittings buy: screws by size and length, board for plates and inserts, sealant by its kind. */
export const hardwareNeeds = (job: Job, cards: readonly FittingCard[]): readonly NeedRequest[] => [
  ...boltNeeds(job, cards),
  ...boardNeeds(job, cards),
  ...sealantNeeds(job, cards),
];

const PREFIX = 'hardware-';

/** Whether a need came from a fitting's card, and so grows with the fittings. */
export const isHardware = (id: string): boolean => id.startsWith(PREFIX);

const cardFigure = <U extends 'm2' | 'l' | '1'>(
  unit: U,
  value: Figure<U>['value'],
  meaning: string,
): Figure<U> =>
  derived(unit, value, meaning, {
    formula: 'scope.hardware',
    title: 'Counted from the cards of the fittings',
    symbol: 'n',
    cite: { source: 'METHODS-IN-PRINT' },
    inputs: {},
  });

function boltNeeds({ catalogue }: Job, cards: readonly FittingCard[]): readonly NeedRequest[] {
  const stock = materialsOf(catalogue, 'fastener');
  const counts = new Map<string, { readonly bolt: Bought; readonly count: number }>();
  for (const card of cards) {
    const bolt = boltFor(stock, card);
    counts.set(bolt.code, { bolt, count: (counts.get(bolt.code)?.count ?? 0) + card.fasteners });
  }
  return [...counts.values()].map(({ bolt, count }) => ({
    id: `${PREFIX}${bolt.code}`,
    title: bolt.name,
    material: bolt.code,
    unit: 'each',
    purpose: 'fastener',
    netQuantity: cardFigure('1', fraction(count), `${bolt.name}, counted`),
  }));
}

interface Bought {
  readonly code: string;
  readonly name: string;
}

/** An inch size and the metric one beside it: the hole is drilled anew either way. */
const NEAR_MM = 1;

/** The stock screw nearest to the card's own, long enough for it; one that nobody stocks is named all the same. */
function boltFor(
  stock: readonly Consumable[],
  { fastenerMm, fastenerLengthMm }: Pick<FittingCard, 'fastenerMm' | 'fastenerLengthMm'>,
): Bought {
  const away = (diameterMm: number): number => Math.abs(diameterMm - fastenerMm);
  const [found] = stock
    .flatMap(({ code, name, bolt }) => (bolt === undefined ? [] : [{ code, name, ...bolt }]))
    .filter(({ diameterMm, lengthMm }) => away(diameterMm) <= NEAR_MM && lengthMm >= fastenerLengthMm)
    .sort((a, b) => away(a.diameterMm) - away(b.diameterMm) || a.lengthMm - b.lengthMm);
  return (
    found ?? {
      code: `fastener-bolt-${fastenerMm}x${fastenerLengthMm}`,
      name: `Machine screw, nut and penny washer, stainless 316, ${fastenerMm} x ${fastenerLengthMm} mm`,
    }
  );
}

const BOARD = 'fastener-laminate-board';

/** A longer plate is made of two that butt on a bolt's pitch. */
const LONGEST_PIECE_MM = 1200;

function boardNeeds(job: Job, cards: readonly FittingCard[]): readonly NeedRequest[] {
  const packs = job.priceList.packs.filter(({ content }) => content.material === BOARD);
  const stockMm = [...new Set(packs.flatMap(({ content }) => content.thicknessMm ?? []))].sort(
    (a, b) => a - b,
  );
  const pieces = cards.flatMap((card) => [...platePieces(card, stockMm), ...insertPieces(card, stockMm)]);
  return [...new Set(pieces.map(({ thicknessMm }) => thicknessMm))].map((thicknessMm) => {
    const boards = packs.flatMap(({ content }) =>
      content.thicknessMm === thicknessMm && content.sheet !== undefined ? [content.sheet] : [],
    );
    return boardNeed(
      thicknessMm,
      pieces.filter((piece) => piece.thicknessMm === thicknessMm),
      boards,
    );
  });
}

interface BoardPiece extends RollStrip {
  readonly thicknessMm: number;
}

/** The stock board that is as thick as the plate or the next thicker. */
function platePieces({ plate }: FittingCard, stockMm: readonly number[]): readonly BoardPiece[] {
  if (plate === undefined) return [];
  const thicknessMm = stockMm.find((one) => one >= plate.thicknessMm) ?? plate.thicknessMm;
  const parts = Math.ceil(plate.lengthMm / LONGEST_PIECE_MM);
  return Array.from({ length: parts }, () => ({
    lengthMm: plate.lengthMm / parts,
    widthMm: plate.widthMm,
    thicknessMm,
  }));
}

const insertPieces = ({ insert }: FittingCard, stockMm: readonly number[]): readonly BoardPiece[] =>
  insert === undefined
    ? []
    : layersFor(insert.thicknessMm, stockMm).map((thicknessMm) => ({
        lengthMm: insert.lengthMm,
        widthMm: insert.widthMm,
        thicknessMm,
      }));

/** In the smaller board as long as every piece fits on it. */
function boardNeed(
  thicknessMm: number,
  pieces: readonly BoardPiece[],
  boards: readonly Board[],
): NeedRequest {
  const netMm2 = pieces.reduce((sum, { lengthMm, widthMm }) => sum + lengthMm * widthMm, 0);
  const [chosen] = boards
    .flatMap((sheet) => {
      const count = boardsFor(pieces, sheet);
      return count === undefined ? [] : [{ sheet, count, mm2: count * sheet.lengthMm * sheet.widthMm }];
    })
    .sort((a, b) => a.mm2 - b.mm2);
  return {
    id: `${PREFIX}board-${thicknessMm}`,
    title: `Laminate board, ${thicknessMm} mm, for ${pieces.length} plates and inserts`,
    material: BOARD,
    thicknessMm,
    unit: 'm2',
    purpose: 'fastener',
    netQuantity: cardFigure('m2', m2FromMm2(mm2(netMm2)), `plates and inserts of ${thicknessMm} mm`),
    ...(chosen === undefined
      ? {}
      : {
          sheet: chosen.sheet,
          wasteFraction: cardFigure(
            '1',
            fraction(chosen.mm2 / netMm2 - 1),
            'sawn to waste from whole boards',
          ),
          packQuantity: cardFigure(
            'm2',
            m2FromMm2(mm2(chosen.sheet.lengthMm * chosen.sheet.widthMm)),
            'one board',
          ),
        }),
  };
}

const ML_PER_L = 1000;

function sealantNeeds({ catalogue }: Job, cards: readonly FittingCard[]): readonly NeedRequest[] {
  const kinds = [...new Set(cards.map(({ sealant }) => sealant.kind))];
  return kinds.map((kind) => {
    const code = sealantCode(kind);
    const name = materialsOf(catalogue, 'consumable').find((one) => one.code === code)?.name ?? kind;
    const ml = cards
      .filter(({ sealant }) => sealant.kind === kind)
      .reduce((sum, { sealant }) => sum + sealant.ml, 0);
    return {
      id: `${PREFIX}${code}`,
      title: name,
      material: code,
      unit: 'l',
      purpose: 'consumable',
      netQuantity: cardFigure('l', l(ml / ML_PER_L), `${name}, by the cards`),
    };
  });
}

const sealantCode = (kind: SealantKind): string => `consumable-sealant-${kind}`;
