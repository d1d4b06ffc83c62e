import type { RuleFigures } from './rules.js';

/** One way to fill the cavity from stock. */
export interface StackChoice {
  /** Thickness of each layer, from the inner skin up. */
  readonly layersMm: readonly number[];
  /** Bond line that this choice needs under each layer. */
  readonly bondLineMm: number;
  /** Height that this choice comes to. */
  readonly heightMm: number;
  /** Height less cavity: positive stands proud. */
  readonly flushMm: number;
  /** How this choice lies to the old core. */
  readonly fit: 'flush' | 'proud' | 'low';
  /** How far beyond what is allowed; 0 when flush. */
  readonly beyondMm: number;
  /** This choice in a sentence. */
  readonly words: string;
}

/** What closes the stack, and the rules for its beds. */
interface Closing {
  readonly rules: RuleFigures;
  readonly skin?: 're-bed' | 'relay';
}

/** Beds of paste: under each layer, and under a skin that is bedded again. */
export const bondLineCount = (layersMm: readonly number[], skin: Closing['skin']): number =>
  layersMm.length + (skin === 'relay' ? 0 : 1);

/** One layer before two, then bond lines nearest to the usual; what does not fit comes after, the nearest first. */
export function rankedChoices(
  thicknessesMm: readonly number[],
  cavityMm: number,
  { rules, skin = 're-bed' }: Closing,
): readonly StackChoice[] {
  const rising = [...new Set(thicknessesMm)].sort((a, b) => a - b);
  const singles = rising.map((thickness) => [thickness]);
  const pairs = rising.flatMap((thickness, k) => rising.slice(k).map((other) => [other, thickness]));
  const choices = [...singles, ...pairs].map((layersMm) => choiceOf(layersMm, cavityMm, { rules, skin }));
  const usual = rules.bondLineMm.value;
  return choices.sort(
    (a, b) =>
      rank(a) - rank(b) ||
      a.beyondMm - b.beyondMm ||
      Math.abs(a.bondLineMm - usual) - Math.abs(b.bondLineMm - usual) ||
      b.layersMm[0] - a.layersMm[0],
  );
}

/** More sheets than this one over the other nobody beds. Source: [FROM-MEMORY]. */
const MOST_LAYERS = 6;
const SINGLE_AND_PAIR = 2;

/** Three layers and more of one thickness that fill the cavity, the fewest first: for a camber that thicker sheet does not follow, or a cavity higher than any pair. */
export const thinLayers = (
  thicknessesMm: readonly number[],
  cavityMm: number,
  { rules, skin = 're-bed' }: Closing,
): readonly StackChoice[] =>
  Array.from({ length: MOST_LAYERS - SINGLE_AND_PAIR }, (_, k) => k + SINGLE_AND_PAIR + 1).flatMap((count) =>
    [...new Set(thicknessesMm)]
      .map((thickness) =>
        choiceOf(
          Array.from({ length: count }, () => thickness),
          cavityMm,
          { rules, skin },
        ),
      )
      .filter(({ fit }) => fit === 'flush'),
  );

/** Low can still be made up with a ply or a thicker bed; proud cannot be helped, so it comes last. */
function rank({ fit, layersMm }: StackChoice): number {
  if (fit === 'flush') return layersMm.length - 1;
  return fit === 'low' ? 2 : 3;
}

function choiceOf(layersMm: readonly number[], cavityMm: number, { rules, skin }: Closing): StackChoice {
  const wetMm = skin === 'relay' ? rules.wetLineMm.value : 0;
  const core = layersMm.reduce((sum, thickness) => sum + thickness, wetMm);
  const count = bondLineCount(layersMm, skin);
  const [least, most] = [rules.leastBondLineMm.value, rules.mostBondLineMm.value];
  const thickest = (cavityMm + rules.highestFlushMm.value - core) / count;
  const thinnest = (cavityMm + rules.lowestFlushMm.value - core) / count;
  const fit = thickest < least - 1e-9 ? 'proud' : thinnest > most + 1e-9 ? 'low' : 'flush';
  const bondLineMm = rounded(
    Math.max(least, thinnest, Math.min(most, thickest, rules.bondLineMm.value)),
    fit,
    {
      least,
      most,
    },
  );
  const heightMm = core + count * bondLineMm;
  const flushMm = tidy(heightMm - cavityMm);
  const beyondMm =
    fit === 'proud'
      ? tidy(flushMm - rules.highestFlushMm.value)
      : fit === 'low'
        ? tidy(rules.lowestFlushMm.value - flushMm)
        : 0;
  return {
    layersMm,
    bondLineMm,
    heightMm: tidy(heightMm),
    flushMm,
    fit,
    beyondMm,
    words: wordsOf(layersMm, bondLineMm, { fit, flushMm, beyondMm }),
  };
}

const rounded = (
  bondLineMm: number,
  fit: StackChoice['fit'],
  { least, most }: { readonly least: number; readonly most: number },
): number => (fit === 'proud' ? least : fit === 'low' ? most : bondLineMm);

/** A micrometre is finer than anything here. */
const tidy = (value: number): number => Math.round(value * 1000) / 1000 + 0;

function wordsOf(
  layersMm: readonly number[],
  bondLineMm: number,
  { fit, flushMm, beyondMm }: Pick<StackChoice, 'fit' | 'flushMm' | 'beyondMm'>,
): string {
  const stack = `${layersMm.join(' + ')} mm core on bond lines of ${Math.round(bondLineMm * 100) / 100} mm`;
  const at = (value: number): string => `${Math.round(Math.abs(value) * 10) / 10} mm`;
  if (fit === 'proud') return `${stack} stands proud by ${at(beyondMm)}`;
  if (fit === 'low') return `${stack} lies low by ${at(flushMm)}`;
  return `${stack} lies ${Math.abs(flushMm) < 0.05 ? 'flush' : `${at(flushMm)} below flush`}`;
}
