import { describe, expect, test } from '@jest/globals';
import { shippedCatalogue } from '#lib/catalogue';
import { detailOf } from '#lib/kernel';
import type { JudgedRung, RungCode } from '#lib/methods';
import { aRecord } from '../../../../test/samples/a-record.js';
import { estimate } from '../estimate.js';
import type { DefectRecord } from '../job/defect-record.js';
import { jobOf } from '../job/job.js';
import { judgedLadder } from './method-ladder.js';

function rungOf(record: DefectRecord, code: RungCode): JudgedRung {
  const job = jobOf(record, shippedCatalogue);
  const judged = job.ok ? judgedLadder(job.value) : job;
  if (!judged.ok) throw new Error(judged.problems.map(detailOf).join(' '));
  const found = judged.value.ladder.governing.rungs.find(({ method }) => method.code === code);
  if (found === undefined) throw new Error(`no rung is called ${code}`);
  return found;
}

describe('a rung whose own cut shows that it cannot be carried out is not priced:', () => {
  /** Plywood in three layers on a deck of 2.5 m radius, and nobody can prop below: even 1.2 kPa sags 2 mm of laminate too far. */
  const stiff = aRecord({
    panel: { ...aRecord().panel, accessBelow: 'none', camberRadiusMm: 2500 },
    core: { thicknessMm: 19, coreType: 'marine-plywood' },
  });

  test('nothing presses stiff core onto a camber above a skin that nobody can prop', () => {
    const { verdict, deciding } = rungOf(stiff, 'above-new-skin');
    expect([verdict, deciding.code]).toEqual(['unfit', 'nothing-presses']);
    expect(deciding.text).toMatch(/weights: .*props.*battens: .*props/);
    expect(deciding.wouldFit).toContain('scored core');
  });

  test('where that leaves no rung, the finding is the whole answer', () => {
    const outcome = estimate(stiff, shippedCatalogue, 'test');
    if (outcome.ok) throw new Error('priced what cannot be carried out');
    expect(new Set(outcome.problems.map(({ code }) => code))).toEqual(new Set(['no-method-fits']));
  });

  test('named in the record, it is answered with the reason', () => {
    const outcome = estimate({ ...stiff, method: { rung: 'above-new-skin' } }, shippedCatalogue, 'test');
    if (outcome.ok) throw new Error('priced what cannot be carried out');
    expect(outcome.problems.map(({ at, code }) => [at, code])).toEqual([['/method/rung', 'method-unfit']]);
    expect(detailOf(outcome.problems[0])).toContain('nothing presses the bed');
  });

  test('above a skin that is propped the same plywood goes down in three layers that bend', () => {
    const outcome = estimate(
      {
        ...stiff,
        panel: { ...stiff.panel, accessBelow: 'open' },
        method: { rung: 'above-new-skin' },
        pricing: { samples: 1000 },
      },
      shippedCatalogue,
      'test',
    );
    if (!outcome.ok) throw new Error(outcome.problems.map(detailOf).join(' '));
    const { core, process } = outcome.value.estimate;
    expect(new Set(core?.pieces.map(({ thicknessMm }) => thicknessMm))).toEqual(new Set([6]));
    expect(new Set(core?.pieces.map(({ layer }) => layer))).toEqual(new Set([1, 2, 3]));
    expect(core?.notes.join(' ')).toContain('in 3 layers with joints staggered');
    // 1 kPa for the bed and 8 x 4300 x 6^3 / (12 x 2500 x 600^2) = 0.69 kPa to bend 6 mm
    expect(process.bondPressure?.requiredKPa).toBeCloseTo(1 + 0.688, 2);
  });

  test.each([
    ['lies far below flush', 180, 'low', 'thicker sheets'],
    ['stands proud', 2, 'proud', 'thinner sheets'],
  ])('core that %s in the cavity fills nothing', (_, thicknessMm, governs, wouldFit) => {
    const { verdict, deciding } = rungOf(
      aRecord({ core: { thicknessMm, coreType: 'marine-plywood' } }),
      'above-new-skin',
    );
    expect([verdict, deciding.code]).toEqual(['unfit', 'core-does-not-fill']);
    expect(deciding.text).toContain(governs);
    expect(deciding.wouldFit).toContain(wouldFit);
  });

  test('plies wrapped up the edge do not reach it across a flange that the record keeps', () => {
    const kept = aRecord({
      zones: [
        {
          id: 'Z1',
          outline: [
            [700, 30],
            [1300, 30],
            [1300, 330],
            [700, 330],
          ],
        },
      ],
      method: { flangeMm: 200 },
    });
    const { verdict, deciding } = rungOf(kept, 'edge-wrap');
    expect([verdict, deciding.code]).toEqual(['unfit', 'plan-does-not-reach']);
    // 600 mm of the strip from 30 to 125 mm off the edge (a flange of 200, 75 mm of reach), and the margin at its ends
    expect(deciding.value).toBeGreaterThan(0.6 * (0.2 - 0.075 - 0.03));
    expect(deciding.value).toBeLessThan(0.65 * (0.2 - 0.075));
    expect(rungOf({ ...kept, method: {} }, 'edge-wrap').verdict).not.toBe('unfit');
  });

  test('a thin skin that nobody can prop is pressed by battens whose screws hold it up', () => {
    const outcome = estimate(
      aRecord({ panel: { ...aRecord().panel, accessBelow: 'none' }, pricing: { samples: 1000 } }),
      shippedCatalogue,
      'test',
    );
    if (!outcome.ok) throw new Error(outcome.problems.map(detailOf).join(' '));
    const press = outcome.value.estimate.process.bondPressure;
    expect([press?.method, press?.requiredKPa, press?.props.needed]).toEqual(['battens', 0.5, false]);
    expect(outcome.value.estimate.lines.map(({ code }) => code)).toContain(
      'material-fastener-temporary-screw',
    );
  });
});
