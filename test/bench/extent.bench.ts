import { appendFileSync, existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { rangeTable, rangeTrial, type RangeTrial } from './decks/range-trial.js';
import { nextTable, nextTrial, type NextTrial } from './decks/next-trial.js';
import { setNames, settingsOf, simulatorSets, type SetName } from './decks/simulators.js';
import { report } from './decks/tables.js';
import { trial, type Trial } from './decks/trial.js';

/**
 * How well readings find bad core, on simulated decks whose truth is known and which share nothing with the map.
 * A piece at a time, each kept: npm run build && node dist/test/bench/extent.bench.js <set> <readings> <deck>
 * and for what comes next after so many: ... extent.bench.js <set> <readings> <deck> next <first cell> <last cell>
 * and whether the ranges hold alone, for all cells of some decks: ... extent.bench.js <set> <readings> <deck> range
 * Then the tables of all pieces kept: node dist/test/bench/extent.bench.js tables
 */
const COUNTS: readonly number[] = [20, 60, 200];
const KEPT = 'demo-output/extent-trials.jsonl';

interface Piece {
  readonly set: SetName;
  readonly trials: readonly Trial[];
  readonly next?: readonly NextTrial[];
  readonly ranges?: readonly RangeTrial[];
}

const [what = 'tables', readings = '60', deck = '0', mode = 'map', first = '0', last = '15'] =
  process.argv.slice(2);
const wanted = setNames.find((name) => name === what);
if (wanted === undefined) printTables();
else keep(pieceOf(wanted));

function pieceOf(set: SetName): Piece {
  const settings = settingsOf(set, Number(readings), Number(deck));
  if (mode === 'range') return { set, trials: [], ranges: settings.map(rangeTrial) };
  return mode === 'next'
    ? { set, trials: [], next: settings.slice(Number(first), Number(last) + 1).map(nextTrial) }
    : { set, trials: settings.map(trial) };
}

function keep(piece: Piece): void {
  mkdirSync('demo-output', { recursive: true });
  appendFileSync(KEPT, `${JSON.stringify(piece)}\n`);
}

function printTables(): void {
  const pieces = existsSync(KEPT) ? readFileSync(KEPT, 'utf8').trim().split('\n') : [];
  const kept = pieces.map((line): Piece => JSON.parse(line));
  const sets = setNames.map((name) => ({
    title: simulatorSets[name].title,
    trials: kept.filter(({ set }) => set === name).flatMap(({ trials }) => trials),
  }));
  const next = setNames.flatMap((name) => {
    const trials = kept.filter(({ set }) => set === name).flatMap((piece) => piece.next ?? []);
    return trials.length === 0 ? [] : nextTable(simulatorSets[name].title.toLowerCase(), trials);
  });
  const ranges = setNames.flatMap((name) => {
    const trials = kept.filter(({ set }) => set === name).flatMap((piece) => piece.ranges ?? []);
    return trials.length === 0 ? [] : rangeTable(simulatorSets[name].title, trials);
  });
  const tables = report(
    sets.filter(({ trials }) => trials.length > 0),
    COUNTS,
  );
  const rangePart =
    ranges.length === 0
      ? []
      : [
          '## Do the ranges hold',
          '',
          'More decks, for the ranges alone. Claimed: 80 %. In brackets what so many decks leave open of it (95 %).',
          '',
          ...ranges,
        ];
  const text = [tables, ...rangePart, ...next].join('\n');
  writeFileSync('test/bench/results/extent.md', text);
  console.log(text);
}
