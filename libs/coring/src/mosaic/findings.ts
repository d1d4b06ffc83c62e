import type { CorePiece } from './piece.js';
import type { SolidFill } from './solid-fill.js';

export interface MosaicFinding {
  /** What was found about the pieces. */
  readonly code:
    'cannot-be-slid-in' | 'order-not-proven' | 'joint-on-support' | 'filled-solid' | 'much-filled-solid';
  /** The opening it is about; absent when it is about all of them. */
  readonly opening?: string;
  /** The finding in a sentence. */
  readonly words: string;
}

interface Found {
  readonly pieces: readonly CorePiece[];
  readonly solidFills: readonly SolidFill[];
  readonly onSupportMm: number;
  /** Openings for which the search for ways in ran out of work. */
  readonly unproven: readonly string[];
}

/** What the crew has to know about the division; each thing once for an opening. */
export const mosaicFindings = (found: Found): readonly MosaicFinding[] => [
  ...openingsOf(found).flatMap((opening) => [
    ...orderFindings(found, opening),
    ...solidFindings(found, opening),
  ]),
  ...supportFindings(found),
];

const openingsOf = ({ pieces, solidFills }: Found): readonly string[] => [
  ...new Set([...pieces, ...solidFills].map(({ opening }) => opening)),
];

function orderFindings({ pieces, unproven }: Found, opening: string): readonly MosaicFinding[] {
  const stuck = pieces.filter((piece) => piece.opening === opening && piece.entry === undefined);
  if (stuck.length === 0) return [];
  const labels = stuck.map(({ label }) => label).join(', ');
  return unproven.includes(opening)
    ? [
        {
          code: 'order-not-proven',
          opening,
          words: `opening ${opening}: order of bedding not proven, best found: no way in under the lip was found for ${labels} within the work allowed; try ${stuck.length === 1 ? 'it' : 'them'} dry first`,
        },
      ]
    : [
        {
          code: 'cannot-be-slid-in',
          opening,
          words: `opening ${opening}: ${labels} cannot be slid in under the lip; open the skin there or fill the place solid`,
        },
      ];
}

/** More than this filled solid is heavy and warms up: about what is usual as a solid spot. From memory. */
const MUCH_M2 = 0.1;
/** Paste and laminate in place of light core, net of the core: common practice takes 12.7 mm as 20 kg/m2 more. */
const HEAVIER_KG_PER_L = 1.6;

function solidFindings({ solidFills }: Found, opening: string): readonly MosaicFinding[] {
  const own = solidFills.filter((fill) => fill.opening === opening);
  if (own.length === 0) return [];
  const sum = (key: 'areaM2' | 'volumeL'): number => own.reduce((all, fill) => all + fill[key], 0);
  const asked = own.filter(({ because }) => because === 'asked');
  if (asked.length === own.length) return [];
  const lip = own.filter(({ isUnderLip }) => isUnderLip).reduce((all, { areaM2 }) => all + areaM2, 0);
  const litres = sum('volumeL');
  const where = lip > sum('areaM2') / 2 ? 'under the lip' : 'too narrow for core';
  const words = `opening ${opening}: ${sum('areaM2').toFixed(3)} m2 ${where} filled solid, ${litres.toFixed(2)} l`;
  const filled: MosaicFinding = { code: 'filled-solid', opening, words };
  if (lip <= MUCH_M2) return [filled];
  return [
    filled,
    {
      code: 'much-filled-solid',
      opening,
      words: `opening ${opening}: ${lip.toFixed(2)} m2 under the lip filled solid adds about ${(litres * HEAVIER_KG_PER_L).toFixed(0)} kg; where the skin may be cut, a wider opening takes core instead`,
    },
  ];
}

function supportFindings({ onSupportMm }: Found): readonly MosaicFinding[] {
  if (onSupportMm < 1) return [];
  return [
    {
      code: 'joint-on-support',
      words: `${Math.round(onSupportMm)} mm of joint run along a support; glue a doubling piece there or move the opening`,
    },
  ];
}
