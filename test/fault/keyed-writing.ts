import { TEST_KEY } from '../e2e/database-of-test.js';

const headers = { 'authorization': `Bearer ${TEST_KEY}`, 'content-type': 'application/json' };

/** What is written under one key: an organisation, an estimate, or an estimate that comes later. */
export interface Writing {
  readonly key: string;
  readonly kind: 'organisation' | 'estimate' | 'later';
}

export interface Acknowledged extends Writing {
  readonly location: string;
}

/** What the writers of one run have been told so far. */
export interface Ledger {
  readonly acknowledged: Acknowledged[];
  /** Statuses that nobody should have seen: neither an answer nor "come back". */
  readonly wrong: string[];
  /** How often a writer had to ask again under its key. */
  askedAgain: number;
  isOver: boolean;
}

export const newLedger = (): Ledger => ({ acknowledged: [], wrong: [], askedAgain: 0, isOver: false });

const pause = (ms: number): Promise<void> =>
  new Promise((resolve) => {
    setTimeout(resolve, ms);
  });

/** Who hears nothing for so long asks again. */
const LONGEST_ANSWER_MS = 60_000;

/** A small square of deck, so that many are written before somebody dies; its reference is the key. */
const smallJob = (key: string): object => ({
  reference: key,
  panel: { outline: square(0, 600) },
  outerSkin: { thicknessMm: 3 },
  innerSkin: { thicknessMm: 2 },
  core: { thicknessMm: 12.7 },
  zones: [{ id: 'Z1', outline: square(200, 300) }],
  pricing: { samples: 1000 },
});

const square = (from: number, to: number): readonly (readonly [number, number])[] => [
  [from, from],
  [to, from],
  [to, to],
  [from, to],
];

/** Of ten writings seven are organisations, two estimates, and one an estimate that comes later. */
const kindOf = (turn: number): Writing['kind'] =>
  turn % 10 === 9 ? 'later' : turn % 5 === 2 ? 'estimate' : 'organisation';

/** One writer: thing after thing, each asked for under its own key until it is answered, whichever copy answers. */
export async function writeKeyed(name: string, ledger: Ledger, addressOf: () => string): Promise<void> {
  for (let turn = 0; !ledger.isOver; turn += 1) {
    const writing = { key: `${name}-${turn}`, kind: kindOf(turn) };
    while (!(await isSettled(writing, ledger, addressOf()))) {
      ledger.askedAgain += 1;
      await pause(60);
    }
  }
}

/** Whether the request was answered; a copy that is gone, or says "come back", is asked again. */
async function isSettled(writing: Writing, ledger: Ledger, address: string): Promise<boolean> {
  const answer = await posted(writing, address);
  if (answer === undefined || answer.status === 503 || answer.status === 409) return ledger.isOver;
  if (answer.status === 201 || answer.status === 202)
    ledger.acknowledged.push({ ...writing, location: answer.location });
  else ledger.wrong.push(`${writing.kind} ${answer.status}`);
  return true;
}

interface Posted {
  readonly status: number;
  readonly location: string;
}

async function posted({ key, kind }: Writing, address: string): Promise<Posted | undefined> {
  const isEstimate = kind !== 'organisation';
  try {
    const response = await fetch(address + (isEstimate ? '/v1/estimates' : '/v1/organisations'), {
      method: 'POST',
      signal: AbortSignal.timeout(LONGEST_ANSWER_MS),
      headers: {
        ...headers,
        'idempotency-key': key,
        ...(kind === 'later' ? { prefer: 'respond-async' } : {}),
      },
      body: JSON.stringify(isEstimate ? smallJob(key) : { name: key }),
    });
    await response.arrayBuffer();
    return { status: response.status, location: response.headers.get('location') ?? '' };
  } catch {
    return undefined;
  }
}

/** What is not there, or there more than once, of all that was acknowledged. */
export async function lostOrDoubled({ acknowledged }: Ledger, address: string): Promise<readonly string[]> {
  const names = await organisationNames(address);
  const until = Date.now() + LONGEST_MS;
  const faults: string[] = [];
  for (const one of acknowledged) {
    const ended = one.kind === 'later' ? await endOf(address + one.location, until) : 'answered';
    const count =
      one.kind === 'organisation'
        ? names.filter((name) => name === one.key).length
        : await estimatesOf(one, address);
    if (count !== 1) faults.push(`${one.key} (${one.kind}, ${ended}) is there ${count} times`);
  }
  return faults;
}

async function organisationNames(address: string): Promise<readonly string[]> {
  const names: string[] = [];
  let cursor: string | undefined;
  do {
    const query = cursor === undefined ? '' : `&cursor=${encodeURIComponent(cursor)}`;
    const page = await read<Page<{ readonly name: string }>>(`${address}/v1/organisations?limit=200${query}`);
    names.push(...page.items.map(({ name }) => name));
    cursor = page.nextCursor ?? undefined;
  } while (cursor !== undefined);
  return names;
}

interface Page<T> {
  readonly items: readonly T[];
  readonly nextCursor?: string | null;
}

async function estimatesOf({ key, kind, location }: Acknowledged, address: string): Promise<number> {
  if (kind !== 'later' && (await fetch(address + location, { headers })).status !== 200) return 0;
  const { items } = await read<Page<unknown>>(`${address}/v1/estimates?reference=${key}`);
  return items.length;
}

const LONGEST_MS = 240_000;

/** How an operation ended, however often it was taken over, or what it still is when the time that all of a run have is over. */
async function endOf(operation: string, until: number): Promise<string> {
  for (;;) {
    const response = await fetch(operation, { headers, redirect: 'manual' });
    const body = (await response.json().catch(() => ({}))) as { readonly status?: string };
    const status = body.status ?? `answered ${response.status}`;
    if (status === 'done' || status === 'failed' || Date.now() >= until) return status;
    await pause(200);
  }
}

const read = async <T>(address: string): Promise<T> =>
  (await (await fetch(address, { headers })).json()) as T;
