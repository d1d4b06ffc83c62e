import 'reflect-metadata';
import { Worker, isMainThread, workerData } from 'node:worker_threads';
import { shippedCatalogue } from '#lib/catalogue';
import { estimate } from '#lib/estimate';
import { randomStream, type RandomStream } from '#lib/kernel';
import { checkedAs } from '../../apps/api/src/edge/dto.pipe.js';
import { DefectRecordDto } from '../../apps/api/src/inputs/defect-record.dto.js';
import { unseenDeck, unseenRecord, type UnseenDeck } from './decks/unseen-records.js';
import { changed, drawn, oneOf, recordOf, type Deck } from './decks/worst-records.js';
import { processorMs, reference } from './processor.js';

/**
 * Looks for the record that takes longest: invented decks are changed one trait at a time and the slowest are changed again.
 * Time is counted in turns of the reference computation, so that a busy machine does not look like a slow record; the slowest
 * are then worked out again in a thread of limited memory.
 *
 * Run:  npm run build && node dist/test/bench/worst-case.bench.js [tries] [seed] [unseen]     fails where a budget is broken
 *       With `unseen` decks of another kind are drawn, each on its own, that no budget was set by.
 */
const TRIES = Number(process.argv[2] ?? 150);
const SEED = Number(process.argv[3] ?? 20_261_129);
const IS_UNSEEN = process.argv[4] === 'unseen';
/** Of processor time on a quiet core, where the reference takes about so long. */
const MOST_MS = 2000;
const REFERENCE_MS = 11;
const MOST_MB = 256;

type Traits = Deck | UnseenDeck;

/** Whether it was estimated; a record that the service refuses at its door is none. */
function workedOut(deck: Traits): 'estimated' | 'refused' {
  try {
    const record = structuredClone(
      checkedAs(DefectRecordDto, 'hole' in deck ? recordOf(deck) : unseenRecord(deck)),
    );
    return estimate(record, shippedCatalogue, 'bench').ok ? 'estimated' : 'refused';
  } catch (error) {
    if (error instanceof Error && error.name === 'HttpProblem') return 'refused';
    throw error;
  }
}

interface Tried {
  readonly deck: Traits;
  readonly answer: 'estimated' | 'refused';
  /** On a quiet core. */
  readonly ms: number;
}

function tried(deck: Traits): Tried {
  const before = processorMs(reference);
  let answer: Tried['answer'] = 'refused';
  const ms = processorMs(() => (answer = workedOut(deck)));
  return { deck, answer, ms: (2 * ms * REFERENCE_MS) / (before + processorMs(reference)) };
}

const KEPT = 8;

function searched(): readonly Tried[] {
  const random = randomStream(SEED);
  let worst: readonly Tried[] = [];
  for (let turn = 0; turn < TRIES; turn += 1) {
    const next = tried(IS_UNSEEN ? unseenDeck(random) : likelyDeck(worst, random));
    worst = [...worst, next].sort((a, b) => b.ms - a.ms).slice(0, KEPT);
  }
  return worst.map(({ deck, ms }) => {
    const again = tried(deck);
    return { ...again, ms: Math.min(again.ms, ms) };
  });
}

/** Three in four are one of the slowest with another trait. */
function likelyDeck(worst: readonly Tried[], random: RandomStream): Deck {
  const slowest = worst.flatMap(({ deck }) => ('hole' in deck ? [deck] : []));
  const isFresh = slowest.length < KEPT || random() < 0.25;
  return isFresh ? drawn(random) : changed(oneOf(slowest, random), random);
}

/** Whether the record is worked out in a thread that may keep no more than the limit. */
const isWithinMemory = (deck: Traits): Promise<boolean> =>
  new Promise((settle) => {
    const worker = new Worker(new URL(import.meta.url), {
      workerData: deck,
      resourceLimits: { maxOldGenerationSizeMb: MOST_MB },
    });
    worker.on('error', () => {
      settle(false);
    });
    worker.on('exit', (code) => {
      settle(code === 0);
    });
  });

if (isMainThread) {
  for (let turn = 0; turn < 20; turn += 1) reference();
  const worst = searched();
  const rows = [];
  for (const one of worst) rows.push({ ...one, isWithinMemory: await isWithinMemory(one.deck) });
  console.table(
    rows.map(({ deck, answer, ms, isWithinMemory: isSmall }) => ({
      ms: Math.round(ms),
      answer,
      memory: isSmall ? `within ${MOST_MB} MB` : `over ${MOST_MB} MB`,
      ...deck,
    })),
  );
  const broken = rows.filter(({ ms, isWithinMemory: isSmall }) => ms > MOST_MS || !isSmall);
  console.log(
    `${TRIES} records tried from seed ${SEED}; ${broken.length} of the ${rows.length} slowest break a budget`,
  );
  if (broken.length > 0) process.exitCode = 1;
} else workedOut(workerData);
