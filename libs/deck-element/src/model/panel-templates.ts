import type { Place, Ring } from './record.js';

/** Parts of a deck that are drawn by a few sizes, in millimetres; every one lies on the centreline but the side deck. */
export interface PanelSizes {
  readonly lengthMm: number;
  /** Across the deck at the after end. */
  readonly widthAftMm: number;
  /** Across the deck at the forward end. */
  readonly widthForwardMm: number;
}

export interface PanelTemplate {
  readonly code: 'foredeck' | 'side-deck' | 'cockpit-sole' | 'coachroof';
  /** Where a tape is held first: shown as an example, never taken without being seen. */
  readonly example: PanelSizes;
  readonly outline: (sizes: PanelSizes) => Ring;
}

const onCentreline = ({ lengthMm, widthAftMm, widthForwardMm }: PanelSizes): Ring => [
  [0, -widthAftMm / 2],
  [lengthMm, -widthForwardMm / 2],
  [lengthMm, widthForwardMm / 2],
  [0, widthAftMm / 2],
];

/** Inner edge straight, outer edge towards the hull. */
const alongside = ({ lengthMm, widthAftMm, widthForwardMm }: PanelSizes): Ring => [
  [0, 0],
  [lengthMm, 0],
  [lengthMm, widthForwardMm],
  [0, widthAftMm],
];

export const panelTemplates: readonly PanelTemplate[] = [
  {
    code: 'foredeck',
    example: { lengthMm: 1650, widthAftMm: 1400, widthForwardMm: 900 },
    outline: onCentreline,
  },
  {
    code: 'side-deck',
    example: { lengthMm: 2900, widthAftMm: 440, widthForwardMm: 440 },
    outline: alongside,
  },
  {
    code: 'cockpit-sole',
    example: { lengthMm: 1800, widthAftMm: 700, widthForwardMm: 800 },
    outline: onCentreline,
  },
  {
    code: 'coachroof',
    example: { lengthMm: 2400, widthAftMm: 1800, widthForwardMm: 1300 },
    outline: onCentreline,
  },
];

export type Mirrored =
  { readonly ring: Ring } | { readonly refused: 'crosses-centreline' | 'off-centreline' };

const ON_LINE_MM = 0.5;

/** A half outline with both ends on the centreline, completed by its reflection. */
export function mirrored(half: Ring): Mirrored {
  const sides = new Set(half.filter((place) => !isOnCentreline(place)).map(([, y]) => Math.sign(y)));
  if (sides.size !== 1) return { refused: 'crosses-centreline' };
  const opened = fromCentreline(half);
  const last = opened.at(-1);
  if (opened.length < 2 || last === undefined || !isOnCentreline(opened[0]) || !isOnCentreline(last))
    return { refused: 'off-centreline' };
  const reflected = opened.slice(1, -1).map(([x, y]): Place => [x, -y]);
  return { ring: [...opened, ...reflected.reverse()] };
}

const isOnCentreline = ([, y]: Place): boolean => Math.abs(y) <= ON_LINE_MM;

/** The ring turned so that it begins on the centreline and its last corner is on it too. */
function fromCentreline(ring: Ring): Ring {
  const start = ring.findIndex(
    (place, at) => isOnCentreline(place) && isOnCentreline(ring[(at + ring.length - 1) % ring.length]),
  );
  return start < 0 ? ring : [...ring.slice(start), ...ring.slice(0, start)];
}
