import { mkdirSync, writeFileSync } from 'node:fs';
import { heldOutTeams, teams } from './decks/survey.js';
import { report } from './decks/tables.js';
import { trial, type Setting, type Trial } from './decks/trial.js';
import { damageNames } from './decks/truth.js';

/**
 * How well readings find bad core, on simulated decks whose truth is known and which share nothing with the map.
 * Run: npm run build && node dist/test/bench/extent.bench.js [decks a cell] [first]
 */
const COUNTS: readonly number[] = [20, 60, 200];
const decksACell = Number(process.argv[2] ?? 4);

function settings(seed: number, crews: typeof teams, share: Setting['share']): readonly Setting[] {
  return damageNames.flatMap((damage, one) =>
    crews.flatMap((team, other) =>
      COUNTS.flatMap((count) =>
        Array.from({ length: decksACell }, (_, deck): Setting => ({
          damage,
          team,
          count,
          share,
          seed: seed + 10_000 * one + 1000 * other + deck,
        })),
      ),
    ),
  );
}

const which = process.argv[3] ?? 'both';
const tuned = which === 'held' ? [] : settings(20_261_128, teams, [0.18, 0.8]).map(run);
const heldOut = which === 'tuned' ? [] : settings(77_000_000, heldOutTeams, [0.15, 1]).map(run);

function run(setting: Setting): Trial {
  return trial(setting);
}

const text = report({ tuned, heldOut }, COUNTS);
mkdirSync('test/bench/results', { recursive: true });
if (which === 'both') writeFileSync('test/bench/results/extent.md', text);
console.log(text);
