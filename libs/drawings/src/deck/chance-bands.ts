import { percentText, type Reader } from '../reader.js';
import type { LegendEntry } from '../sheet/furniture.js';
import { boxMark, shape, type Fill, type Mark } from '../sheet/marks.js';
import type { DeckView } from './deck-view.js';
import { ringsOf, type Area } from './place.js';

/** Where bad core has at least this probability. */
export interface Contour {
  readonly probability: number;
  readonly areas: readonly Area[];
}

type ChanceWord = keyof Reader['words']['defectMap']['chances'];

interface Level {
  readonly word: ChanceWord;
  readonly fill: Fill;
  readonly below: number;
}

/** What a chance is called: even odds part likely from unlikely, and nine in ten is as sure as a map of readings gets. */
const levels: readonly Level[] = [
  { word: 'little', fill: 'band-1', below: 0.2 },
  { word: 'possible', fill: 'band-2', below: 0.5 },
  { word: 'likely', fill: 'band-3', below: 0.9 },
  { word: 'nearlySure', fill: 'band-4', below: 1 },
];

interface Band extends Level {
  readonly from: number;
  readonly to: number;
  readonly contours: readonly Contour[];
}

/** Contours under one word share a band, which begins at the lowest of them and ends where the next band begins. */
function bandsOf(contours: readonly Contour[]): readonly Band[] {
  const inOrder = [...contours].sort((a, b) => a.probability - b.probability);
  const found = levels.flatMap((level, index) => {
    const from = index === 0 ? 0 : levels[index - 1].below;
    const own = inOrder.filter(({ probability }) => probability >= from && probability < level.below);
    return own.length === 0 ? [] : [{ ...level, from: own[0].probability, contours: own }];
  });
  return found.map((band, index) => ({ ...band, to: index + 1 < found.length ? found[index + 1].from : 1 }));
}

/** The surer the bad core, the darker the ground; each contour has a fine edge besides. */
export const bandMarks = (contours: readonly Contour[], view: DeckView): readonly Mark[] =>
  bandsOf(contours).flatMap(({ fill, contours: own }) =>
    own.flatMap(({ areas }) => areas.map((area) => shape(ringsOf(area).map(view.ring), 'dimension', fill))),
  );

/** The bands in words with their chances, and what no colour means. */
export function bandLegend(contours: readonly Contour[], reader: Reader): readonly LegendEntry[] {
  const said = reader.words.defectMap;
  const bands = bandsOf(contours);
  if (bands.length === 0) return [];
  const percent = (chance: number): string => percentText(reader, chance);
  return [
    ...[...bands].reverse().map(({ word, fill, from, to }) => ({
      sample: (box: Parameters<LegendEntry['sample']>[0]) => [boxMark(box, 'dimension', fill)],
      meaning: said.band(said.chances[word], percent(from), percent(to)),
    })),
    {
      sample: (box) => [boxMark(box, 'dimension', 'paper')],
      meaning: said.noSign(percent(bands[0].from)),
    },
  ];
}
