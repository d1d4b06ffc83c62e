/** A request that a page shows, with what its answer is good for. */
export interface ShownRequest {
  /** As it stands in the page. */
  readonly text: string;
  readonly method: string;
  /** With names in double braces, as headers and body have them too. */
  readonly address: string;
  readonly headers: Readonly<Record<string, string>>;
  readonly body: string;
  /** Status that is expected; any success when absent. */
  readonly expected?: number;
  /** Names for later requests, and where in the answer each is: a JSON Pointer, `header Name` or `body`. */
  readonly kept: Readonly<Record<string, string>>;
}

/** The requests of a page, in its order. */
export const requestsIn = (markdown: string): readonly ShownRequest[] =>
  [...markdown.matchAll(/^```http\n([\s\S]*?)\n```$/gm)].map(([, text]) => requestOf(text));

function requestOf(text: string): ShownRequest {
  const lines = text.split('\n');
  const first = lines.findIndex((line) => !line.startsWith('#'));
  const gap = lines.indexOf('');
  const head = lines.slice(first, gap < 0 ? undefined : gap);
  const [method = '', ...address] = (head[0] ?? '').split(' ');
  const notes = lines.slice(0, first).join('\n');
  const expected = /^# expect (\d+)$/m.exec(notes)?.[1];
  return {
    text,
    method,
    address: address.join(' '),
    headers: Object.fromEntries(head.slice(1).map(headerOf)),
    body: gap < 0 ? '' : lines.slice(gap + 1).join('\n'),
    ...(expected === undefined ? {} : { expected: Number(expected) }),
    kept: Object.fromEntries(
      [...notes.matchAll(/^# keep (\w+) from (.+)$/gm)].map(([, name, place]) => [name, place]),
    ),
  };
}

const headerOf = (line: string): readonly [string, string] => {
  const colon = line.indexOf(':');
  return [line.slice(0, colon), line.slice(colon + 1).trim()];
};

/** The requests of a page as a file for an editor that sends them. */
export function httpFileOf(markdown: string): string {
  const requests = requestsIn(markdown);
  const names = [...new Set(markdown.match(/\{\{\w+\}\}/g) ?? [])]
    .map((name) => name.slice(2, -2))
    .filter((name) => name !== 'url' && name !== 'key');
  return [
    '@url = http://127.0.0.1:3000',
    '@key = kp_put-your-key-here',
    ...(names.length === 0 ? [] : ['# Put in from the answers, as the notes above each request say.']),
    ...names.map((name) => `@${name} = `),
    ...requests.flatMap(({ text }) => ['', '###', text]),
    '',
  ].join('\n');
}
