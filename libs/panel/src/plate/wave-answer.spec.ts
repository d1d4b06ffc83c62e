import { expect, test } from '@jest/globals';
import { newWaveAnswer, waveAnswer } from './wave-answer.js';

/** The sine series of the same answer, summed by brute force. */
function bySeries(
  k: number,
  { span, from, to, at }: { span: number; from: number; to: number; at: number },
): number {
  let sum = 0;
  for (let m = 1; m <= 20000; m += 1) {
    const a = (m * Math.PI) / span;
    sum += ((2 / (span * a)) * (Math.cos(a * from) - Math.cos(a * to)) * Math.sin(a * at)) / (a * a + k * k);
  }
  return sum;
}

test.each([0.2, 0.5, 0.9])('the closed form is the sine series, at %s of the span', (share) => {
  const where = { span: 2, from: 0.6, to: 1.3, at: 2 * share };
  const answer = newWaveAnswer();
  waveAnswer(3, 0, where, answer);
  const under = where.at >= where.from && where.at <= where.to ? 1 : 0;
  expect((answer[0] + under) / 9).toBeCloseTo(bySeries(3, where), 8);
});

test('a wave with a trace of imaginary part answers as the real one', () => {
  const where = { span: 2, from: 0.6, to: 1.3, at: 1 };
  const [real, nearly] = [newWaveAnswer(), newWaveAnswer()];
  waveAnswer(3, 0, where, real);
  waveAnswer(3, 1e-9, where, nearly);
  expect(nearly[0]).toBeCloseTo(real[0], 8);
  expect(nearly[2]).toBeCloseTo(real[2], 7);
});

test('a wave too short to reach the ends is told by its near edge alone, without a jump', () => {
  const where = { span: 10, from: 4, to: 6, at: 4.5 };
  const [before, after] = [newWaveAnswer(), newWaveAnswer()];
  waveAnswer(4.7, 0, where, before);
  waveAnswer(4.71, 0, where, after);
  expect(after[0] / before[0]).toBeCloseTo(Math.exp(-0.01 * 0.5), 3);
});
