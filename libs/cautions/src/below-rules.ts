import type { CautionContext, CautionRule } from './caution-context.js';

const isFromBelow = ({ flags, openedAreaM2 }: CautionContext): boolean =>
  flags.access === 'from-below' && openedAreaM2 > 0;

/** Work overhead: what falls, what lifts, and what keeps the deck's shape. */
export const belowRules: readonly CautionRule[] = [
  {
    code: 'deck-shape',
    severity: 'danger',
    kind: 'structure',
    harm: 84,
    source: 'METHODS-FROM-BELOW',
    when: (context) =>
      isFromBelow(context) ? 'the inner skin is cut away, and the outer skin stands alone' : undefined,
    text: 'Nobody stands on the deck above an opened inner skin. Bows across the deck, or ballast on it, go in as each strip is opened: jacks from below lift the outer skin and it cures as it lies.',
  },
  {
    code: 'overhead-work',
    severity: 'warning',
    kind: 'work',
    harm: 74,
    source: 'METHODS-FROM-BELOW',
    when: (context) =>
      isFromBelow(context) ? 'cutting, pressing and laminating is done overhead' : undefined,
    text: 'Face shield and cap, never goggles alone; nobody under a piece that is lifted; two hold it until every jack is snug; sheet every berth. Saw, dust and resin fall towards the face: stop when the arms tire.',
    protection: ['face shield', 'cap', 'sheets', 'second person'],
  },
  {
    code: 'cut-through-deck',
    severity: 'warning',
    kind: 'structure',
    harm: 61,
    source: 'METHODS-FROM-BELOW',
    when: (context) => (isFromBelow(context) ? 'the skin is cut from below' : undefined),
    text: 'Saw, chisel and grinder go through the outer skin in a moment, and then the deck above has to be mended too: depth from measured holes, the inner skin and 1 to 3 mm, no more.',
  },
  {
    code: 'jacks-slip',
    severity: 'warning',
    kind: 'structure',
    harm: 73,
    source: 'COMMON-PRACTICE',
    when: (context) =>
      isFromBelow(context) ? 'jacks and sticks press boards up against the deck' : undefined,
    text: 'Jacks stand on a plank that spreads them over beams, plumb under the padded board; a stick that slips drops board, core and resin. Snug is enough: the bed closes under 1 kPa, and more bends the deck.',
  },
];
