import { readdirSync, readFileSync } from 'node:fs';
import { doors } from './bounds/doors.js';
import { isObject } from './from-schema.js';

const SAMPLES = 'apps/workshop/samples';
const kinds = ['materials', 'price-lists', 'labour-rates', 'sources'] as const;

export interface Seeded {
  readonly seeds: Readonly<Record<string, readonly unknown[]>>;
  readonly draft: string;
}

/** Valid bodies by address: the samples, the smallest request of each door, and what the catalogue holds; and a draft to write to. */
export async function seedsFrom(url: string, key: string): Promise<Seeded> {
  const draft = 'made-requests';
  const authorization = `Bearer ${key}`;
  await fetch(`${url}/v1/editions`, {
    method: 'POST',
    headers: { authorization, 'content-type': 'application/json' },
    body: JSON.stringify({ code: draft }),
  });
  const records: readonly unknown[] = readdirSync(SAMPLES)
    .filter((file) => file.endsWith('.json'))
    .map((file) => JSON.parse(readFileSync(`${SAMPLES}/${file}`, 'utf8')));
  const seeds: Record<string, readonly unknown[]> = {
    ...Object.fromEntries(doors.map(({ path, request }) => [path, [request]])),
    '/v1/estimates': records,
    '/v1/estimating/preview': records,
    '/v1/estimating/ladder': records,
    '/v1/estimates/{id}/revisions': records.map((record) => ({ reason: 'found more', record })),
    '/v1/estimating/variants': records.map((record) => ({
      record,
      variants: [{ code: 'relay', method: { skin: 'relay' } }],
    })),
  };
  for (const kind of kinds) {
    const at = `${url}/v1/${kind}?edition=${draft}`;
    const list: unknown = await (await fetch(at, { headers: { authorization } })).json();
    const items: readonly unknown[] = isObject(list) && Array.isArray(list.items) ? list.items : [];
    seeds[`/v1/${kind}`] = items.map((item, index) =>
      isObject(item) ? { ...item, code: `made-${index}` } : item,
    );
    seeds[`/v1/${kind}/{code}`] = items;
    seeds[`/v1/imports/${kind}`] = [
      await (await fetch(at, { headers: { authorization, accept: 'text/csv' } })).text(),
    ];
  }
  return { seeds, draft };
}
