import { afterAll, beforeAll, describe, expect, test } from '@jest/globals';
import { startService, type TestService } from './service.js';

const where = '/v1/estimating/cost-rollup';
const taxGroups = [
  { code: 'parts', name: 'Goods', percent: '20' },
  { code: 'labour', name: 'Services', percent: '20' },
];
const core = {
  code: 'core',
  section: 'materials',
  title: 'Balsa core',
  partOrLabour: 'part',
  causeClass: 'pre-existing',
  netQuantity: 2.2,
  wasteFraction: 0.15,
  purchaseQuantity: 2.9768,
  unit: 'm2',
  unitRate: '47.65',
  taxGroup: 'parts',
  atExtents: [
    { extentFactor: 0.5, amountFactor: 0.7 },
    { extentFactor: 2, amountFactor: 1.6 },
    { extentFactor: 4, amountFactor: 2.4 },
  ],
  spread: { low: 0.9, high: 1.3 },
};
const labour = {
  code: 'bed',
  section: 'labour',
  title: 'Bed core',
  partOrLabour: 'labour',
  causeClass: 'sudden',
  netQuantity: 24,
  unit: 'h',
  unitRate: '74',
  taxGroup: 'labour',
  atExtents: [
    { extentFactor: 0.5, amountFactor: 0.7 },
    { extentFactor: 2, amountFactor: 1.6 },
    { extentFactor: 4, amountFactor: 2.4 },
  ],
  spread: { low: 0.6, high: 1.8 },
};

describe('POST /v1/estimating/cost-rollup', () => {
  let service: TestService;
  beforeAll(async () => {
    service = await startService();
  });
  afterAll(async () => {
    await service.stop();
  });

  test('two lines come to a total to the cent, split by cause and by part or labour', async () => {
    const answer = await service.post(where, {
      currency: 'EUR',
      lines: [core, labour],
      taxGroups,
      overheadPercent: '6',
      profitPercent: '8',
    });
    expect(answer.status).toBe(200);
    const { rollUp } = answer.body;
    expect([
      rollUp.direct.amount,
      rollUp.overhead.amount,
      rollUp.profit.amount,
      rollUp.net.amount,
      rollUp.gross.amount,
    ]).toEqual(['1917.85', '115.07', '162.63', '2195.55', '2634.66']);
    expect(rollUp.byCause.map(({ causeClass }: { causeClass: string }) => causeClass)).toEqual([
      'sudden',
      'pre-existing',
    ]);
    expect(rollUp.lines[0].why.origin.kind).toBe('computed');
    expect(answer.body.risk).toBeUndefined();
  });

  test('with evidence of one symptom only, hidden extent drives the range and P80 sets the contingency', async () => {
    const request = {
      currency: 'EUR',
      lines: [core, labour],
      taxGroups,
      risk: { evidence: 'single-symptom', seed: 4, stageZeroCost: '300.00' },
    };
    const answer = await service.post(where, request);
    expect(answer.status).toBe(200);
    const { rollUp, risk } = answer.body;
    expect(risk.drivers[0].code).toBe('extent');
    expect(rollUp.contingency).toEqual(risk.contingency);
    expect(Number(risk.p10.amount)).toBeLessThan(Number(risk.p90.amount));
    expect((await service.post(where, request)).text).toBe(answer.text);
    expect(answer.text).not.toMatch(/NaN|Infinity/);
  });

  test('everything wrong is named at once, where it stands', async () => {
    const answer = await service.post(where, {
      currency: 'EUR',
      taxGroups,
      contingencyPercent: '5',
      contingencyAmount: '5.00',
      lines: [
        { ...core, unitRate: undefined, packs: undefined },
        { ...labour, taxGroup: 'none' },
      ],
      risk: {},
    });
    expect(answer.status).toBe(422);
    expect(
      answer.body.errors.map((error: { pointer: string; code: string }) => [error.pointer, error.code]),
    ).toEqual([
      ['/contingencyAmount', 'contradiction'],
      ['/risk/evidence', 'missing'],
    ]);
    const lines = await service.post(where, {
      currency: 'XXX',
      taxGroups,
      lines: [{ ...core, netQuantity: -1, unit: 'furlong' }],
    });
    expect(
      lines.body.errors.map((error: { pointer: string; code: string }) => [error.pointer, error.code]),
    ).toEqual([
      ['/currency', 'not-one-of'],
      ['/lines/0/netQuantity', 'out-of-range'],
      ['/lines/0/unit', 'not-one-of'],
    ]);
  });
});
