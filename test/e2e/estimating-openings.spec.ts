import { afterAll, beforeAll, describe, expect, test } from '@jest/globals';
import { startService, type TestService } from './service.js';

const panel = {
  outline: [
    [0, 0],
    [2000, 0],
    [2000, 1000],
    [0, 1000],
  ],
};
const build = {
  panel,
  outerSkin: { thicknessMm: '1/8 in' },
  innerSkin: { thicknessMm: 2 },
  core: { thicknessMm: '1/2 in' },
};

describe('POST /v1/estimating/openings', () => {
  let service: TestService;
  beforeAll(async () => {
    service = await startService();
  });
  afterAll(async () => {
    await service.stop();
  });

  test('a drawn zone is answered with its cut line, depth and corners to mark', async () => {
    const answer = await service.post('/v1/estimating/openings', {
      ...build,
      zones: [
        {
          id: 'Z1',
          outline: [
            [600, 400],
            [900, 400],
            [900, 600],
            [600, 600],
          ],
        },
      ],
      fittings: [{ id: 'cleat', kind: 'cleat', at: [700, 500] }],
    });
    expect(answer.status).toBe(200);
    const { extent, plan } = answer.body;
    expect(extent.mappedAreaM2).toBeCloseTo(0.06, 9);
    expect(plan.openings[0].sawLine).toEqual([
      [525, 325],
      [975, 325],
      [975, 675],
      [525, 675],
    ]);
    // 3.175 + 2, to the hundredth that millimetres are answered with; in binary it lies just below the half.
    expect(plan.cutDepthMm).toBe(5.17);
    expect(plan.openings[0].marking.corners).toHaveLength(4);
    // Holes through a solid insert need no potting.
    expect(plan.fittings[0].work).toEqual(['remove', 'insert', 'plate', 're-bed', 'refit']);
    expect(plan.openedAreaM2 + plan.retainedAreaM2).toBeCloseTo(plan.panelAreaM2, 6);
  });

  test('soundings alone are mapped, and the plan follows the map', async () => {
    const readings = Array.from({ length: 45 }, (_, index) => {
      const at = [200 + 200 * (index % 9), 100 + 200 * Math.floor(index / 9)];
      return { kind: 'sounding', at, sound: Math.hypot(at[0] - 800, at[1] - 500) < 320 ? 'void' : 'sharp' };
    });
    const answer = await service.post('/v1/estimating/openings', { ...build, survey: { readings } });
    expect(answer.status).toBe(200);
    expect(answer.body.extent.evidence.grade).toBe('single-symptom');
    expect(answer.body.extent.contours.length).toBe(4);
    expect(answer.body.plan.openings.length).toBeGreaterThan(0);
    expect(answer.body.extent.findings.map(({ code }: { code: string }) => code)).toContain(
      'no-plug-in-zone',
    );
  });

  test('what cannot be answered is named field by field', async () => {
    const answer = await service.post('/v1/estimating/openings', {
      ...build,
      zones: [
        {
          id: 'Z1',
          outline: [
            [0, 0],
            [100, 100],
            [100, 0],
            [0, 100],
          ],
        },
      ],
      method: { taperRatio: 12 },
      rules: { cornerRadiusMm: '2 in' },
    });
    expect(answer.status).toBe(422);
    expect(
      answer.body.errors.map((error: { pointer: string; code: string }) => [error.pointer, error.code]),
    ).toEqual([['/zones/0/outline', 'outline-crosses-itself']]);
    const neither = await service.post('/v1/estimating/openings', build);
    expect(
      neither.body.errors.map((error: { pointer: string; code: string }) => [error.pointer, error.code]),
    ).toEqual([['/survey', 'missing']]);
  });
});
