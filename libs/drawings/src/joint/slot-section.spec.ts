import { describe, expect, test } from '@jest/globals';
import { estimateOf, sampleRecordOf } from '../../../../test/samples/sample-record.js';
import { sampleRequest, smallSample } from '../../../../test/support/sample-estimate.js';
import { pressPlanInput, slotSectionInputs } from '../report/inputs.js';
import { jobPackOf } from '../report/job-pack.js';
import { openedOf, type ReportRequest } from '../report/request.js';
import { defaultReader } from '../reader.js';
import { figure } from '../sheet/formats.js';
import { slotSection } from './slot-section.js';

const requestOf = (record: ReportRequest['record']): ReportRequest => ({
  ...sampleRequest(smallSample),
  record,
  estimate: estimateOf(record),
});

describe('a strip that is routed out through a slot', () => {
  const request = requestOf(sampleRecordOf('toe-rail'));
  const [input] = slotSectionInputs(request);
  const block = { job: '', reference: '', made: '', sheet: '' };
  const drawing = slotSection(input, { format: figure(176, 92), reader: defaultReader, block });

  test('is as deep as its place, in a deck as thick as the record says', () => {
    expect(input).toEqual({ place: 'Z1', outerSkinMm: 3, coreMm: 12.7, innerSkinMm: 2, stripMm: 70 });
  });

  test('is drawn to the scale that the sheet states', () => {
    const boxes = drawing.marks.flatMap((mark) =>
      mark.kind === 'path' && mark.fill === 'light' ? mark.rings.map((ring) => ring.map(([x]) => x)) : [],
    );
    const [fill] = boxes.map((xs) => Math.max(...xs) - Math.min(...xs));
    expect(fill).toBeCloseTo(70 * drawing.scale!.factor, 6);
  });

  test('has its sheet in the pack of that job, and none where an opening is cut', () => {
    const titles = (one: ReportRequest) => jobPackOf(one).sections.map(({ title }) => title);
    expect(titles(request)).toContain('Slot, fill and tapes');
    expect(JSON.stringify(jobPackOf(request))).toContain('Gate: the deck is dry and stays dry');
    expect(slotSectionInputs(requestOf(sampleRecordOf('foredeck')))).toEqual([]);
  });
});

describe('the tape of a vacuum bag', () => {
  const record = sampleRecordOf('foredeck');
  const bagged = requestOf({
    ...record,
    panel: { ...record.panel, isInnerSkinAirtight: true },
    method: { ...record.method, press: 'vacuum' },
  });
  const opened = openedOf(bagged)!;
  const input = pressPlanInput(opened)!;

  const fromLine = ([px, py]: readonly number[], a: readonly number[], b: readonly number[]): number => {
    const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
    const along = Math.min(1, Math.max(0, ((px - a[0]) * dx + (py - a[1]) * dy) / (dx * dx + dy * dy)));
    return Math.hypot(px - a[0] - along * dx, py - a[1] - along * dy);
  };
  const fromRing = (at: readonly number[], ring: readonly (readonly number[])[]): number =>
    Math.min(...ring.map((a, index) => fromLine(at, a, ring[(index + 1) % ring.length])));

  test('lies outside the taper all round, so that it never sits on ground that is laminated', () => {
    const [{ outer }] = input.bag!.seal;
    const off = outer.map((at) => fromRing(at, opened.estimate.scope.openings[0].area.outer));
    expect(Math.min(...off)).toBeGreaterThan(opened.estimate.laminate.taperWidthMm);
  });

  test('takes in the windlass, whose bolts are holes in the skin, and is drawn nowhere without a bag', () => {
    const windlass = record.fittings!.find(({ id }) => id === 'windlass')!;
    expect(input.bag!.breaches).toContainEqual(windlass.at);
    expect(pressPlanInput(openedOf(requestOf(record))!)!.bag).toBeUndefined();
  });
});
