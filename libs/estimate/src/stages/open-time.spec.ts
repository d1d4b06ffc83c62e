import { describe, expect, test } from '@jest/globals';
import { shippedCatalogue } from '#lib/catalogue';
import { aRecord } from '../../../../test/samples/a-record.js';
import type { DefectRecord } from '../job/defect-record.js';
import { jobOf } from '../job/job.js';
import { bayInOpenTime } from './open-time.js';

function bayOf(change: Partial<DefectRecord>) {
  const job = jobOf(aRecord(change), shippedCatalogue);
  if (!job.ok) throw new Error(JSON.stringify(job.problems));
  return bayInOpenTime(job.value);
}

describe('what is bedded in one go', () => {
  test('is a square metre where two people have a slow hardener at 20 degC: 2.7 m2 would be in time', () => {
    expect(bayOf({ crew: { people: 2 } })).toBeUndefined();
  });

  test('is less where one person works in the heat', () => {
    const bay = bayOf({ crew: { people: 1 }, conditions: { temperatureC: 30 } });
    // 2.2 h of gel at 25 degC, 55 kJ/mol: 2.2 / exp(6615 x (1/298.15 - 1/303.15)) = 1.524 h, half of it over 1.2 h for a square metre
    expect(bay?.bayM2).toBeCloseTo(0.635, 2);
    expect(bay?.words).toContain('one person presses in the 46 minutes');
  });

  test('shrinks with the heat, and a second pair of hands doubles it to more than is bedded in one go', () => {
    const at = (temperatureC: number, people: number) =>
      bayOf({ crew: { people }, conditions: { temperatureC } })?.bayM2;
    expect(at(32, 1)).toBeLessThan(at(30, 1) ?? 0);
    expect(at(30, 2)).toBeUndefined();
  });
});
