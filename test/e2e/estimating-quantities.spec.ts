import { afterAll, beforeAll, describe, expect, test } from '@jest/globals';
import { startService, type TestService } from './service.js';

describe('POST /v1/estimating/quantities', () => {
  let service: TestService;
  beforeAll(async () => {
    service = await startService();
  });
  afterAll(async () => {
    await service.stop();
  });

  test('five eighths of an inch are 15.875 mm, 65 degrees Fahrenheit 18.3 Celsius', async () => {
    const answer = await service.post('/v1/estimating/quantities', {
      quantities: [
        { dimension: 'length', text: '5/8 in' },
        { dimension: 'temperature', text: '65 degF' },
      ],
    });
    expect(answer.status).toBe(200);
    expect(answer.body.quantities[0]).toEqual({ text: '5/8 in', value: 15.875, unit: 'mm' });
    expect(answer.body.quantities[1].value).toBeCloseTo(((65 - 32) * 5) / 9, 12);
  });

  test('every quantity that cannot be read is named, with what would be right', async () => {
    const answer = await service.post('/v1/estimating/quantities', {
      quantities: [
        { dimension: 'length', text: '12,7 mm' },
        { dimension: 'length', text: '3 mm' },
        { dimension: 'length', text: '3 kg' },
      ],
    });
    expect(answer.status).toBe(422);
    expect(answer.headers.get('content-type')).toContain('application/problem+json');
    expect(answer.body.errors[0].detail).toBe(
      'quantities.0.text must be a number in mm or text with a unit such as "5/8 in"; it is "12,7 mm": decimals are written with a point, and thousands without a mark.',
    );
    expect(
      answer.body.errors.map((error: { pointer: string; code: string }) => [error.pointer, error.code]),
    ).toEqual([
      ['/quantities/0/text', 'not-a-quantity'],
      ['/quantities/2/text', 'wrong-unit'],
    ]);
  });

  test('a request of the wrong shape is refused field by field, unknown fields too', async () => {
    const answer = await service.post('/v1/estimating/quantities', {
      quantities: [{ dimension: 'colour', text: null }, 5],
      colour: 'red',
    });
    expect(answer.status).toBe(422);
    expect(
      answer.body.errors
        .map((error: { pointer: string; code: string }) => [error.pointer, error.code])
        .sort(),
    ).toEqual([
      ['/colour', 'unknown-field'],
      ['/quantities/0/dimension', 'not-one-of'],
      ['/quantities/0/text', 'not-text'],
      ['/quantities/1', 'not-an-object'],
    ]);
  });

  test('a list that is too short says how long it must be, whatever the number', async () => {
    const { body } = await service.post('/v1/estimating/quantities', { quantities: [] });
    expect(body.errors[0].detail).toBe('quantities is a list of 0; it must hold 1 or more.');
  });
});
