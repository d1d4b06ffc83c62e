import { readFileSync } from 'node:fs';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from '@jest/globals';
import { Kingplank } from '../../libs/sdk/src/index.js';
import { greyJpeg } from '../support/pictures.js';
import { startService, TEST_KEY, type TestService } from './service.js';

const foredeck = JSON.parse(
  readFileSync(path.join(import.meta.dirname, '../../apps/workshop/samples/foredeck.json'), 'utf8'),
) as Record<string, unknown>;

/** Invented people, so that each of their names is found wherever it is kept. */
const said = {
  parties: {
    client: 'Invented Client',
    instructedBy: 'Invented Broker',
    surveyor: { name: 'Invented Surveyor', firm: 'Invented Firm', qualification: 'Invented Title' },
  },
  vessel: { name: 'Invented Vessel', registration: 'REG 0001', hullNumber: 'HIN 0002' },
  occurrence: { cause: 'bedding that had gone hard', insurerReference: 'CLAIM 0003' },
};
const NAMES = /Invented (?:Client|Broker|Surveyor|Firm|Title|Vessel)|REG 0001|HIN 0002|CLAIM 0003/;
const html = { accept: 'text/html' };

describe('what an estimate says of people', () => {
  let service: TestService;
  let client: Kingplank;
  let id: string;
  let revisedId: string;
  beforeAll(async () => {
    service = await startService();
    client = new Kingplank({ baseUrl: service.url, apiKey: TEST_KEY });
    const made = await service.post('/v1/estimates', { ...foredeck, ...said });
    id = String(made.body.id);
    const revised = await service.post(`/v1/estimates/${id}/revisions`, {
      reason: 'measured again',
      record: { ...foredeck, ...said, title: 'Invented foredeck, revised' },
    });
    revisedId = String(revised.body.id);
    await client.estimates.setPhotograph(id, 1, greyJpeg, { caption: 'Invented Client at the windlass' });
  });
  afterAll(async () => {
    await service.stop();
  });

  test('is erased from every revision and from print, and no figure changes', async () => {
    const page = async (one: string) => (await service.get(`/v1/estimates/${one}`, html)).text;
    expect(await page(id)).toMatch(NAMES);
    expect(JSON.stringify(await client.estimates.record(revisedId))).toMatch(NAMES);
    const before = (await service.get(`/v1/estimates/${id}`)).text;

    await client.estimates.eraseParties(revisedId);

    await client.estimates.removePhotograph(id, 1);
    for (const one of [id, revisedId]) {
      const record = await client.estimates.record(one);
      expect(JSON.stringify(record)).not.toMatch(NAMES);
      expect(record.occurrence).toEqual({ cause: 'bedding that had gone hard' });
      expect(await page(one)).not.toMatch(NAMES);
    }
    expect((await service.get(`/v1/estimates/${id}`)).text).toBe(before);
    expect(await client.estimates.replay(id)).toMatchObject({ isSame: true });
  });

  test('leaves no name in the audit trail, which says that it was erased', async () => {
    const { body } = await service.get('/v1/audit?limit=100');
    const entries: readonly { readonly subject: string; readonly action: string }[] = body.items;
    const own = entries.filter(({ subject }) => ['parties', 'photograph'].includes(subject));
    expect(own.map(({ subject, action }) => `${subject} ${action}`)).toEqual([
      'photograph removed',
      'parties removed',
      'photograph changed',
    ]);
    expect(JSON.stringify(entries)).not.toMatch(NAMES);
  });

  test('is not there to erase where there is no estimate', async () => {
    const nowhere = '/v1/estimates/01890a5d-ac96-774b-bcce-b302099a8057/parties';
    expect((await service.send('DELETE', nowhere)).status).toBe(404);
  });
});
