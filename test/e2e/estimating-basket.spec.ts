import { afterAll, beforeAll, describe, expect, test } from '@jest/globals';
import { startService, type TestService } from './service.js';

const where = '/v1/estimating/basket';
const needs = [
  {
    id: 'core',
    material: 'core-balsa-150',
    thicknessMm: 12.7,
    form: 'plain',
    requiredQuantity: 2.53,
    unit: 'm2',
  },
  { id: 'resin', material: 'resin-epoxy-5to1', requiredQuantity: 7.8, unit: 'kg' },
  { id: 'hardener', material: 'resin-epoxy-5to1', part: 'slow', requiredQuantity: 1.36, unit: 'kg' },
  { id: 'gloves', material: 'safety-gloves', requiredQuantity: 26, unit: 'pair' },
];

describe('POST /v1/estimating/basket', () => {
  let service: TestService;
  beforeAll(async () => {
    service = await startService();
  });
  afterAll(async () => {
    await service.stop();
  });

  test('whole packs cover every need, hardener suffices for all the resin bought, and nothing is cheaper', async () => {
    const answer = await service.post(where, { priceList: 'invented-euro', needs });
    expect(answer.status).toBe(200);
    const { body } = answer;
    expect([body.proof, body.isComplete, body.missing]).toEqual([{ kind: 'proven' }, true, []]);
    expect(body.matched[0].hardeners[0].curesKg).toBeGreaterThanOrEqual(body.matched[0].resinKg);
    const cents = (amount: string): number => Math.round(Number(amount) * 100);
    const orders = body.orders.reduce(
      (sum: number, order: { total: { amount: string } }) => sum + cents(order.total.amount),
      0,
    );
    expect(cents(body.total.amount)).toBe(orders);
    expect(Number(body.secondBest.difference.amount)).toBeGreaterThanOrEqual(0);
    expect(body.warnings.join()).toContain('invented');
  });

  test('by air the hazardous goods are missing, and said to be', async () => {
    const answer = await service.post(where, {
      priceList: 'invented-euro',
      needs,
      options: { transport: 'air', secondBest: false },
    });
    expect(answer.status).toBe(200);
    expect(
      answer.body.missing.map(({ needs: ids, reason }: { needs: string[]; reason: string }) => [
        ids[0],
        reason,
      ]),
    ).toEqual([
      ['resin', 'all-excluded'],
      ['hardener', 'all-excluded'],
    ]);
  });

  test('a hardener that is none of the resin is refused with those that are', async () => {
    const answer = await service.post(where, {
      priceList: 'invented-euro',
      needs: [{ ...needs[2], part: 'instant' }],
    });
    expect(answer.status).toBe(422);
    expect(answer.body.errors).toMatchObject([{ pointer: '/needs/0/part', code: 'hardener-without-resin' }]);
    expect(answer.body.errors[0].facts.known).toContain('slow');
  });

  test('codes that the edition does not have are named with their places', async () => {
    const answer = await service.post(where, {
      priceList: 'none',
      needs: [{ id: 'a', material: 'core-none', requiredQuantity: 1, unit: 'm2' }],
      hardeners: [{ resin: 'resin-epoxy-5to1', hardener: 'instant' }],
    });
    expect(answer.status).toBe(422);
    expect(
      answer.body.errors.map((error: { pointer: string; code: string }) => [error.pointer, error.code]),
    ).toEqual([
      ['/priceList', 'unknown-code'],
      ['/needs/0/material', 'unknown-code'],
      ['/hardeners/0/hardener', 'hardener-without-resin'],
    ]);
  });

  test('fields of the wrong form are refused one by one', async () => {
    const answer = await service.post(where, {
      priceList: 'invented-euro',
      needs: [{ ...needs[0], requiredQuantity: 'much', unit: 'furlong' }],
      options: { transport: 'mule' },
    });
    expect(answer.status).toBe(422);
    expect(
      answer.body.errors.map((error: { pointer: string; code: string }) => [error.pointer, error.code]),
    ).toEqual([
      ['/needs/0/requiredQuantity', 'not-a-number'],
      ['/needs/0/unit', 'not-one-of'],
      ['/options/transport', 'not-one-of'],
    ]);
  });
});
