import { afterAll, beforeAll, describe, expect, test } from '@jest/globals';
import { startService, type TestService } from './service.js';

const rectangle = (length: number, width: number) => [
  [0, 0],
  [length, 0],
  [length, width],
  [0, width],
];
const full = { id: 'full', outline: rectangle(1220, 610), cost: 50 };

describe('cutting by HTTP', () => {
  let service: TestService;
  beforeAll(async () => {
    service = await startService();
  });
  afterAll(async () => {
    await service.stop();
  });

  test('any pieces are cut from the cheapest sheets', async () => {
    const answer = await service.post('/v1/estimating/cutting-plan', {
      pieces: [{ id: 'a', outline: rectangle(400, 280), count: 6, turnsDeg: [0, 90, 180, 270] }],
      stock: [full],
      kerfMm: 3,
      edgeTrimMm: 3,
      workUnits: 200,
    });
    expect(answer.status).toBe(200);
    expect(answer.body.onSheets.sheets).toHaveLength(1);
    expect(answer.body.onSheets.sheets[0].placements).toHaveLength(6);
  });

  test('plies are laid on a roll at the least length', async () => {
    const answer = await service.post('/v1/estimating/cutting-plan', {
      pieces: [{ id: 'ply', outline: rectangle(900, 600), count: 4, turnsDeg: [0, 180] }],
      roll: { widthMm: 1250 },
      kerfMm: 0,
      edgeTrimMm: 0,
      workUnits: 100,
    });
    expect(answer.body.onRoll.lengthMm).toBeCloseTo(1800, 6);
  });

  test('a time limit of nothing or of ten minutes is refused, each with what would be right', async () => {
    for (const timeLimitS of [0, 600]) {
      const answer = await service.post('/v1/estimating/cutting-plan', {
        pieces: [{ id: 'a', outline: rectangle(10, 10), turnsDeg: [] }],
        stock: [full],
        kerfMm: 3,
        edgeTrimMm: 0,
        timeLimitS,
      });
      expect(answer.status).toBe(422);
      expect(answer.body.errors).toMatchObject([{ pointer: '/timeLimitS', code: 'out-of-range' }]);
    }
  });

  test('five thousand pieces and a piece larger than the sheet are refused with the limit and the size', async () => {
    const many = await service.post('/v1/estimating/cutting-plan', {
      pieces: [{ id: 'a', outline: rectangle(10, 10), count: 5000, turnsDeg: [] }],
      stock: [full],
      kerfMm: 0,
      edgeTrimMm: 0,
    });
    expect(many.body.errors).toMatchObject([{ pointer: '/pieces/0/count', code: 'out-of-range' }]);
    const large = await service.post('/v1/estimating/cutting-plan', {
      pieces: [{ id: 'deck', outline: rectangle(1300, 610), turnsDeg: [] }],
      stock: [full],
      kerfMm: 0,
      edgeTrimMm: 0,
    });
    expect(large.body.errors).toMatchObject([{ pointer: '/pieces/0', code: 'too-large-for-stock' }]);
    expect(large.body.errors[0].detail).toContain('cut it into 2 parts of at most 650 x 610 mm');
  });

  test('sheets and a roll at once, and whatever else is wrong, are told together', async () => {
    const crossed = {
      id: 'a',
      outline: [
        [0, 0],
        [100, 100],
        [100, 0],
        [0, 100],
      ],
      turnsDeg: [0],
    };
    const answer = await service.post('/v1/estimating/cutting-plan', {
      pieces: [crossed, { ...crossed, outline: rectangle(10, 10) }],
      stock: [full],
      roll: { widthMm: 1250 },
      kerfMm: 0,
      edgeTrimMm: 0,
    });
    expect(answer.body.errors.map(({ pointer }: { readonly pointer: string }) => pointer)).toEqual([
      '/pieces/1/id',
      '/pieces/0/outline',
      '/roll',
    ]);
  });

  test('openings and a core become a stack, labelled pieces and sheets', async () => {
    const answer = await service.post('/v1/estimating/core-bill', {
      material: 'core-balsa-150',
      cavityMm: '11/16 in',
      openings: [{ label: 'A', outline: rectangle(800, 450), undercutMm: 40 }],
      workUnits: 100,
    });
    expect(answer.status).toBe(200);
    expect(answer.body.stack.check.verdict).toBe('holds');
    expect(answer.body.mosaic.pieces[0].label).toBe('A1');
    expect(answer.body.sheetCount).toBeGreaterThan(0);
    const unknown = await service.post('/v1/estimating/core-bill', {
      material: 'core-cork',
      cavityMm: 15,
      openings: [{ label: 'A', outline: rectangle(800, 450) }],
    });
    expect(unknown.body.errors).toMatchObject([{ pointer: '/material', code: 'unknown-code' }]);
  });

  test('faults of a core bill point at the fields that the caller wrote', async () => {
    const bill = {
      material: 'core-balsa-150',
      cavityMm: '11/16 in',
      openings: [{ label: 'A', outline: rectangle(800, 450), undercutMm: 40 }],
      workUnits: 0,
    };
    const pointersOf = async (changes: object): Promise<readonly string[]> =>
      (await service.post('/v1/estimating/core-bill', { ...bill, ...changes })).body.errors.map(
        ({ pointer }: { readonly pointer: string }) => pointer,
      );
    expect(
      await pointersOf({
        offcuts: [
          { id: 'other', outline: rectangle(50, 50), thicknessMm: 3 },
          {
            id: 'mine',
            outline: [
              [0, 0],
              [90, 90],
              [90, 0],
              [0, 90],
            ],
            thicknessMm: 15.9,
          },
        ],
      }),
    ).toEqual(['/offcuts/1/outline']);
    expect(await pointersOf({ sheets: [{ lengthMm: 120, widthMm: 60, cost: 5 }] })).toEqual(['/sheets']);
    expect(
      await pointersOf({ openings: [bill.openings[0], { label: 'B', outline: rectangle(500, 500) }] }),
    ).toEqual(['/openings/1/outline']);
  });
});
