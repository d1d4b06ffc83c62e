import { existsSync } from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { deflateSync, crc32 } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, jest, test } from '@jest/globals';
import { parse } from 'csv-parse/sync';
import { ReportService } from '../../apps/api/src/report/report.service.js';
import type { ReportSubject } from '../../apps/api/src/report/render.js';
import { sampleEstimate, sampleRequest, smallSample } from '../../libs/drawings/src/sample-estimate.js';
import { bare, readPdf, textOf } from './report-parts.js';

jest.setTimeout(120_000);

const { estimate, record, issue } = sampleRequest(smallSample);
const subject: ReportSubject = { estimate, record, issue, reader: { locale: 'en-GB', units: 'si', paper: 'a4' } };
let service: ReportService;
beforeAll(() => { service = new ReportService(); });
afterAll(() => service.onModuleDestroy());

describe('the readers’ habits', () => {
  test('an American reads feet and inches on letter paper', async () => {
    const reading = await readPdf(await service.pdf({ ...subject, reader: { locale: 'en-US', units: 'us', paper: 'letter' } }, 'report'));
    const text = bare(textOf(reading));
    expect(text).toContain(bare('12 ft 7/8 in'));
    expect(text).toContain(bare('4.70 ft²'));
    expect(text).toContain(bare('64 °F'));
    expect(text).toContain(bare('March 2, 2026'));
    expect(text).not.toContain('Alldimensionsinmm');
  });

  test('a German reads decimal commas and dates of his own', async () => {
    const text = bare(textOf(await readPdf(await service.pdf({ ...subject, reader: { locale: 'de-DE', units: 'si', paper: 'a4' } }, 'report'))));
    expect(text).toContain(bare('9.333,21 EUR'));
    expect(text).toContain(bare('2. März 2026'));
  });
});

describe('drawings by name', () => {
  test('each drawing that the estimate lists can be had as SVG and as PDF', async () => {
    const names = service.drawingNames(subject);
    expect(names).toEqual(expect.arrayContaining(['defect-map', 'opening-plan', 'piece-plan', 'sheet-layout', 'ply-plan', 'section', 'panel-checks', 'calendar', 'batch-1']));
    for (const name of names) {
      expect(await service.drawing(subject, name)).toMatch(/^<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg" width="297mm" height="210mm"/);
      const reading = await readPdf((await service.drawingPdf(subject, name))!);
      expect({ name, pages: reading.pages.length, isTagged: reading.isTagged }).toEqual({ name, pages: 1, isTagged: true });
    }
  });

  test('a name that is none gives nothing', async () => {
    expect(await service.drawing(subject, '../etc/passwd')).toBeUndefined();
    expect(await service.drawingPdf(subject, '__proto__')).toBeUndefined();
  });

  test('the templates come as one document', async () => {
    const reading = await readPdf(await service.pdf(subject, 'templates'));
    expect(reading.pages.length).toBeGreaterThanOrEqual(estimate.core.pieces.length);
    for (const piece of estimate.core.pieces) expect(bare(textOf(reading))).toContain(bare(`Template ${piece.label}, tile 1`));
  });

  test('an estimate without openings, pieces, plies or batches still has its report and its drawings', async () => {
    const nothing: ReportSubject = {
      ...subject,
      estimate: {
        ...estimate, lines: [], checks: [], assumptions: [], cautions: [], limits: [],
        scope: { ...estimate.scope, openings: [], zones: [], fittings: [], findings: [], included: [], excluded: [], method: [] },
        core: { ...estimate.core, pieces: [], sheets: [], stack: [], notes: [] },
        laminate: { ...estimate.laminate, plies: [], alternatives: [], properties: [] },
        process: { ...estimate.process, demands: [], batches: [], cure: [], gates: [], calendar: { ...estimate.process.calendar, tasks: [] } },
        totals: { ...estimate.totals, drivers: [], taxes: [], byCause: [] },
      },
    };
    expect((await readPdf(await service.pdf(nothing, 'report'))).pages.length).toBeGreaterThan(3);
    expect((await readPdf(await service.pdf(nothing, 'job-pack'))).pages.length).toBeGreaterThan(1);
    for (const name of service.drawingNames(nothing)) expect(await service.drawing(nothing, name)).toContain('<svg');
  });
});

describe('lines as CSV', () => {
  test('are the lines of the estimate, number for number', () => {
    const rows: readonly Record<string, string>[] = parse(service.csv(estimate), { columns: true });
    expect(rows.map(({ code, amount, currency, purchaseQuantity }) => [code, amount, currency, Number(purchaseQuantity)]))
      .toEqual(estimate.lines.map(({ code, amount, purchaseQuantity }) => [code, amount.amount, amount.currency, purchaseQuantity]));
  });

  test('hold nothing that a spreadsheet would run', () => {
    const evil = ['=HYPERLINK("http://example.invalid")', '+1+1', '-2+3', '@SUM(A1)', '\t=1', 'plain, "quoted"\nand broken'];
    const lines = sampleEstimate(smallSample).lines.slice(0, evil.length).map((line, index) => ({ ...line, title: evil[index] }));
    const rows: readonly Record<string, string>[] = parse(service.csv({ ...estimate, lines }), { columns: true });
    expect(rows.map(({ title }) => title)).toEqual([...evil.slice(0, 5).map((title) => `'${title}`), evil[5]]);
  });
});

describe('a logo', () => {
  const chunk = (type: string, data: Buffer): Buffer => {
    const body = Buffer.concat([Buffer.from(type, 'latin1'), data]);
    const [length, check] = [Buffer.alloc(4), Buffer.alloc(4)];
    length.writeUInt32BE(data.length);
    check.writeUInt32BE(crc32(body));
    return Buffer.concat([length, body, check]);
  };
  const png = (width: number, height: number): Buffer => {
    const head = Buffer.alloc(13);
    head.writeUInt32BE(width, 0);
    head.writeUInt32BE(height, 4);
    head.set([8, 0, 0, 0, 0], 8);
    return Buffer.concat([Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]), chunk('IHDR', head), chunk('IDAT', deflateSync(Buffer.alloc((width + 1) * height))), chunk('IEND', Buffer.alloc(0))]);
  };

  test('of a sound PNG goes on the letterhead', async () => {
    const outcome = await service.logo(png(40, 20));
    expect(outcome.ok).toBe(true);
    if (!outcome.ok) return;
    const letterhead = { ...issue.letterhead, logo: outcome.value };
    const pdf = await service.pdf({ ...subject, issue: { ...issue, letterhead } }, 'report');
    expect(Buffer.from(pdf).toString('latin1')).toMatch(/\/Subtype ?\/Image/);
  });

  test.each([
    ['a drawing with script inside', Buffer.from('<svg xmlns="http://www.w3.org/2000/svg"><script/></svg>'), 'not-one-of'],
    ['nothing', Buffer.alloc(0), 'not-one-of'],
    ['a picture too large', png(3000, 10), 'out-of-range'],
    ['a picture cut short', png(400, 200).subarray(0, 60), 'not-supported'],
    ['a picture of zero width', png(0, 10), 'out-of-range'],
    ['a file too heavy', Buffer.concat([png(4, 4), Buffer.alloc(300_001)]), 'out-of-range'],
  ])('that is %s is refused with the reason', async (_, bytes, code) => {
    const outcome = await service.logo(bytes);
    expect(outcome.ok ? [] : outcome.problems.map((found) => found.code)).toContain(code);
  });
});

/** The compiled service; tests run from sources, where another process cannot load a file. */
const compiled = path.resolve('dist/apps/api/src/report/report.service.js');
(existsSync(compiled) ? test : test.skip)('the compiled service sets documents in other processes, while the caller goes on (needs a build)', async () => {
  const { ReportService: Compiled } = await import(pathToFileURL(compiled).href) as { readonly ReportService: typeof ReportService };
  const threaded = new Compiled();
  try {
    let turns = 0;
    const ticking = setInterval(() => { turns += 1; }, 5);
    const pdfs = await Promise.all(Array.from({ length: 4 }, () => threaded.pdf(subject, 'report')));
    clearInterval(ticking);
    expect(turns).toBeGreaterThan(5);
    for (const pdf of pdfs) expect(Buffer.compare(pdf, pdfs[0])).toBe(0);
    const gone = new AbortController();
    const late = threaded.pdf(subject, 'job-pack', { signal: gone.signal });
    gone.abort();
    await expect(late).rejects.toThrow();
    const after = await threaded.pdf(subject, 'report');
    expect(Buffer.compare(after, pdfs[0])).toBe(0);
  } finally {
    await threaded.onModuleDestroy();
  }
});
