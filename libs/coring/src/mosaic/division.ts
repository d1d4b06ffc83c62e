import { areaMm2, perimeterMm, type Region } from '#lib/geometry';
import { DIVISION_HOURS, divisionHours } from './division-hours.js';
import { keeper } from './kept.js';
import { layerCells, MM2_PER_M2, usualInsideMm, type LayerTask } from './layer-cells.js';
import type { MosaicRequest } from './request.js';
import type { MosaicNumbers } from './rules.js';

/** How many pieces, and why so many. */
export interface MosaicDivision {
  /** Limit of a piece bedded from above, of the choice that was taken. */
  readonly largestPieceM2: number;
  /** What keeps it from being fewer pieces. */
  readonly limitedBy: 'nothing' | 'bed' | 'sheet' | 'camber' | 'lip';
  /** To cut, fit and bed, and to mend hollows. */
  readonly hours: number;
  /** Divisions that were looked at, the largest pieces first. */
  readonly choices: readonly DivisionChoice[];
  /** Why the core is cut into this many pieces. */
  readonly words: string;
}

export interface DivisionChoice {
  /** Area that no piece may exceed with this division. */
  readonly largestPieceM2: number;
  /** Pieces of this division. */
  readonly pieces: number;
  /** Hours to cut, fit and bed the pieces of this division. */
  readonly workH: number;
  /** Expected for air shut in under large pieces. */
  readonly airH: number;
}

interface Cavity {
  readonly area: Region;
  readonly coreable: Region;
}

/** The other size that is looked at, as a share of the largest piece. */
const SMALLER_SHARE = 0.5;

/** The division that was taken, and its cells by layer and opening. */
export interface ChosenDivision {
  readonly division: MosaicDivision;
  readonly cells: readonly (readonly (readonly Region[])[])[];
}

/** The limit of size with the fewest hours in all: larger pieces are quicker to cut, fit and bed, smaller ones shut in less air. */
export function chosenDivision(
  request: MosaicRequest,
  cavities: readonly Cavity[],
  numbers: MosaicNumbers,
): ChosenDivision {
  const most = request.rules?.largestPieceM2 ?? request.core.largestPieceM2.value;
  const largest = divided(request, cavities, { numbers, largestPieceM2: most });
  const all = mayPay(largest.choice)
    ? [largest, divided(request, cavities, { numbers, largestPieceM2: SMALLER_SHARE * most })]
    : [largest];
  const hours = ({ choice: { workH, airH } }: Divided): number => workH + airH;
  const best = all.reduce((one, other) => (hours(other) < hours(one) - 1e-9 ? other : one));
  const choices = all.map(({ choice }) => choice);
  const limitedBy = limitOf(request, cavities, best.choice);
  return {
    division: {
      largestPieceM2: best.choice.largestPieceM2,
      limitedBy,
      hours: hours(best),
      choices,
      words: wordsOf(best.choice, choices, limitedBy),
    },
    cells: best.cells,
  };
}

/** Smaller pieces can only pay where they save more air than one more piece takes. */
const mayPay = ({ airH }: DivisionChoice): boolean => airH > DIVISION_HOURS.perPieceH;

interface Divided {
  readonly choice: DivisionChoice;
  readonly cells: ChosenDivision['cells'];
}

function divided(
  request: MosaicRequest,
  cavities: readonly Cavity[],
  { numbers, largestPieceM2 }: { readonly numbers: MosaicNumbers; readonly largestPieceM2: number },
): Divided {
  const cells = request.layers.map((_, layer) =>
    cavities.map(({ area, coreable }) =>
      cellsOnce({
        request,
        numbers,
        area,
        coreable,
        layer,
        largestMm2: largestPieceM2 * MM2_PER_M2,
        insideMm: usualInsideMm(layer),
      }),
    ),
  );
  const hours = cells.map((own, layer) =>
    divisionHours(
      own.flat().map((cell) => ({ areaM2: areaMm2(cell) / MM2_PER_M2, edgeM: perimeterMm(cell) / MM_PER_M })),
      request.layers[layer].form,
    ),
  );
  const sum = (key: 'workH' | 'airH'): number => hours.reduce((all, one) => all + one[key], 0);
  return {
    choice: { largestPieceM2, pieces: cells.flat(2).length, workH: sum('workH'), airH: sum('airH') },
    cells,
  };
}

const MM_PER_M = 1000;

const keptCells = keeper<readonly Region[]>();

/**
 * Half of what one sheet allows is looked at as the smaller of two sizes, and again as the larger of the next two; every other
 * layer is divided alike.
 */
function cellsOnce(task: LayerTask): readonly Region[] {
  const { request, numbers, coreable, layer, largestMm2, insideMm } = task;
  const { sheets, longestSideMm, grainDeg, core, supports } = request;
  const key = JSON.stringify([
    [layer % 2, largestMm2, insideMm, longestSideMm, grainDeg],
    [numbers, sheets, core.allowedTurnsDeg, supports],
  ]);
  return keptCells(coreable, key, () => layerCells(task));
}

function limitOf(
  { layers, longestSideMm }: MosaicRequest,
  cavities: readonly Cavity[],
  { pieces, largestPieceM2 }: DivisionChoice,
): MosaicDivision['limitedBy'] {
  const whole = cavities.reduce((sum, { coreable }) => sum + coreable.length, 0);
  if (pieces <= whole * layers.length) return 'nothing';
  if (cavities.some(({ area, coreable }) => reachesUnder(area, coreable))) return 'lip';
  const byBed = cavities.reduce(
    (sum, { coreable }) =>
      sum + coreable.reduce((all, part) => all + Math.ceil(areaMm2([part]) / MM2_PER_M2 / largestPieceM2), 0),
    0,
  );
  if (byBed * layers.length >= pieces) return 'bed';
  return longestSideMm === undefined ? 'sheet' : 'camber';
}

const UNDER_MM2 = 2500;

const reachesUnder = (area: Region, coreable: Region): boolean =>
  areaMm2(coreable) > areaMm2(area) + UNDER_MM2;

const reasons: Readonly<Record<MosaicDivision['limitedBy'], string>> = {
  nothing: 'each place in one piece',
  bed: 'as few as one bed holds inside half its pot life',
  sheet: 'as few as come out of a sheet',
  camber: 'as few as lie down on the camber',
  lip: 'hand-sized where they slide under the lip, as few as one bed holds in the open',
};

function wordsOf(
  { pieces, largestPieceM2 }: DivisionChoice,
  choices: readonly DivisionChoice[],
  limitedBy: MosaicDivision['limitedBy'],
): string {
  const start = `${pieces} ${pieces === 1 ? 'piece' : 'pieces'} of at most ${largestPieceM2.toFixed(2)} m2: ${reasons[limitedBy]}`;
  const other = choices.find(
    (choice) => choice.largestPieceM2 !== largestPieceM2 && choice.pieces !== pieces,
  );
  const best = choices.find((choice) => choice.largestPieceM2 === largestPieceM2);
  if (other === undefined || best === undefined) return start;
  const more = other.workH - best.workH;
  const air = best.airH - other.airH;
  return `${start}; ${other.pieces} pieces would take ${hoursText(Math.abs(more))} ${more < 0 ? 'less' : 'more'} to cut, fit and bed and ${air < 0 ? 'cost' : 'save'} ${hoursText(Math.abs(air))} of mending hollows`;
}

const hoursText = (hours: number): string => `${hours.toFixed(1)} h`;
