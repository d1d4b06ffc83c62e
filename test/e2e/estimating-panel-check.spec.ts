import { afterAll, beforeAll, describe, expect, test } from '@jest/globals';
import { startService, type TestService } from './service.js';

const skin = (thicknessMm: number | string) => ({
  thicknessMm,
  modulusXMPa: 12000,
  modulusYMPa: 11000,
  shearModulusMPa: 3000,
  poissonXY: 0.2,
  tensileStrengthMPa: 150,
  compressiveStrengthMPa: 130,
});
const core = {
  coreType: 'end-grain-balsa',
  thicknessMm: '1/2 in',
  shearModulusMPa: 129,
  shearStrengthMPa: 2.33,
  compressiveModulusMPa: 3255,
  compressiveStrengthMPa: 10.3,
};
const example = {
  panel: { lengthXMm: 900, widthYMm: '2 ft' },
  asBuilt: { outer: skin(3), inner: skin(2), core },
  repaired: { outer: skin(3.1), inner: skin(2), core },
};

describe('POST /v1/estimating/panel-check', () => {
  let service: TestService;
  beforeAll(async () => {
    service = await startService();
  });
  afterAll(async () => {
    await service.stop();
  });

  test('a skin a tenth of a millimetre thicker gives the deck back', async () => {
    const answer = await service.post('/v1/estimating/panel-check', example);
    expect(answer.status).toBe(200);
    expect(answer.body.verdict).toBe('restored');
    expect(answer.body.states.map(({ state }: { state: string }) => state)).toEqual([
      'as-built',
      'as-found',
      'opened',
      'repaired',
    ]);
    expect(answer.body.loads.map(({ code }: { code: string }) => code)).toEqual(['class-deck', 'person']);
  });

  test('what cannot be is named field by field', async () => {
    const answer = await service.post('/v1/estimating/panel-check', {
      ...example,
      panel: { ...example.panel, edges: 'free' },
      asBuilt: { ...example.asBuilt, outer: { ...skin(3), poissonXY: 2 } },
      loads: [{ kind: 'patch', forceN: 500, xMm: 890, yMm: 300, lengthXMm: 100, widthYMm: 100 }],
    });
    expect(answer.status).toBe(422);
    expect(
      answer.body.errors.map(({ pointer, code }: { pointer: string; code: string }) => [pointer, code]),
    ).toEqual([
      ['/panel/edges', 'not-supported'],
      ['/asBuilt/outer/poissonXY', 'contradiction'],
      ['/loads/0', 'outside-panel'],
    ]);
  });

  test('a load of an unknown kind is refused with the kinds there are', async () => {
    const answer = await service.post('/v1/estimating/panel-check', {
      ...example,
      loads: [{ kind: 'elephant' }],
    });
    expect(answer.status).toBe(422);
    expect(answer.body.errors[0].pointer).toBe('/loads/0/kind');
  });
});
