import { deflateSync } from 'node:zlib';
import { afterAll, describe, expect, jest, test } from '@jest/globals';
import { parse } from 'csv-parse/sync';
import { annexNames } from '#lib/drawings';
import type { ReportSubject, PageKind } from '../../apps/api/src/documents/render.js';
import { sampleEstimate, sampleRequest, smallSample } from '../support/sample-estimate.js';
import { Metrics } from '../../apps/api/src/edge/metrics.js';
import { readConfiguration } from '../../apps/api/src/settings/configuration.js';
import { compiledModule } from '../support/compiled.js';
import { chunk, chunksOf, greyJpeg, png, PNG_SIGNATURE, sizeOfPng } from '../support/pictures.js';
import { alternativeTexts, bare, readPdf, textOf } from './report-parts.js';
import { opened } from '../samples/opened.js';

jest.setTimeout(120_000);

const { estimate, record, issue } = sampleRequest(smallSample);
const subject: ReportSubject = {
  estimate,
  record,
  issue,
  reader: { locale: 'en-GB', units: 'si', paper: 'a4', purpose: 'condition', annexes: annexNames },
};
type Documents = typeof import('../../apps/api/src/documents/documents.service.js');
type Bench = typeof import('../../apps/api/src/workbench/workbench.js');
type Logos = typeof import('../../apps/api/src/letterhead/logo.js');

const { DocumentsService } = await compiledModule<Documents>('apps/api/src/documents/documents.service.ts');
const { Workbench } = await compiledModule<Bench>('apps/api/src/workbench/workbench.ts');
const { logoFrom } = await compiledModule<Logos>('apps/api/src/letterhead/logo.ts');

/** The compiled service, which sets documents in processes, as customers run it. */
const workbench = new Workbench(readConfiguration({}), new Metrics());
const documents = new DocumentsService(workbench);
const customer = { organisationId: '0192f0c1-0000-7000-8000-000000000001' };
const service = {
  pdf: (about: ReportSubject, what: PageKind | 'templates', signal?: AbortSignal) =>
    documents.pdf(about, what, { ...customer, signal }),
  drawing: (about: ReportSubject, name: string) => documents.drawing(about, name, customer),
  drawingPdf: (about: ReportSubject, name: string) => documents.drawingPdf(about, name, customer),
  drawingNames: (about: ReportSubject) => documents.drawingNames(about),
  csv: (about: ReportSubject['estimate']) => documents.csv(about),
  logo: (uploaded: Uint8Array) => logoFrom(uploaded, workbench, customer),
};
afterAll(() => workbench.onModuleDestroy());

describe('the readers’ habits', () => {
  test('an American reads feet and inches on letter paper', async () => {
    const reading = await readPdf(
      await service.pdf(
        {
          ...subject,
          reader: {
            locale: 'en-US',
            units: 'us',
            paper: 'letter',
            purpose: 'condition',
            annexes: annexNames,
          },
        },
        'report',
      ),
    );
    const text = bare(textOf(reading));
    // 2.2 m round opening A
    expect(text).toContain(bare('7 ft 2 5/8 in'));
    expect(text).toContain(bare('4.70 ft²'));
    expect(text).toContain(bare('64 °F'));
    expect(text).toContain(bare('March 2, 2026'));
    expect(text).not.toContain('Alldimensionsinmm');
  });

  test('a German reads decimal commas and dates of his own', async () => {
    const text = bare(
      textOf(
        await readPdf(
          await service.pdf(
            {
              ...subject,
              reader: {
                locale: 'de-DE',
                units: 'si',
                paper: 'a4',
                purpose: 'condition',
                annexes: annexNames,
              },
            },
            'report',
          ),
        ),
      ),
    );
    expect(text).toContain(bare('9.333,21 EUR'));
    expect(text).toContain(bare('2. März 2026'));
  });
});

describe('drawings by name', () => {
  test('each drawing that the estimate lists can be had as SVG and as PDF', async () => {
    const names = service.drawingNames(subject);
    expect(names).toEqual(
      expect.arrayContaining([
        'defect-map',
        'opening-plan',
        'piece-plan',
        'press-plan',
        'sheet-layout',
        'ply-plan',
        'section',
        'panel-checks',
        'calendar',
        'batch-1',
      ]),
    );
    for (const name of names) {
      expect(await service.drawing(subject, name)).toMatch(
        /^<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg" width="297mm" height="210mm"/,
      );
      const reading = await readPdf((await service.drawingPdf(subject, name))!);
      expect({ name, pages: reading.pages.length, isTagged: reading.isTagged }).toEqual({
        name,
        pages: 1,
        isTagged: true,
      });
    }
  });

  test('a name that is none gives nothing', async () => {
    expect(await service.drawing(subject, '../etc/passwd')).toBeUndefined();
    expect(await service.drawingPdf(subject, '__proto__')).toBeUndefined();
  });

  test('the templates come as one document', async () => {
    const reading = await readPdf(await service.pdf(subject, 'templates'));
    expect(reading.pages.length).toBeGreaterThanOrEqual(opened(estimate).core.pieces.length);
    for (const piece of opened(estimate).core.pieces)
      expect(bare(textOf(reading))).toContain(bare(`Template ${piece.label}, tile 1`));
  });

  test('an estimate without openings, pieces, plies or batches still has its report and its drawings', async () => {
    const nothing: ReportSubject = {
      ...subject,
      estimate: {
        ...estimate,
        lines: [],
        checks: [],
        assumptions: [],
        cautions: [],
        limits: [],
        scope: {
          ...estimate.scope,
          openings: [],
          zones: [],
          fittings: [],
          findings: [],
          included: [],
          excluded: [],
          method: [],
        },
        core: { ...opened(estimate).core, pieces: [], sheets: [], stack: [], notes: [] },
        laminate: { ...opened(estimate).laminate, plies: [], alternatives: [], properties: [] },
        process: {
          ...estimate.process,
          demands: [],
          batches: [],
          cure: [],
          gates: [],
          calendar: { ...estimate.process.calendar, tasks: [] },
        },
        totals: { ...estimate.totals, drivers: [], taxes: [], byCause: [] },
      },
    };
    expect((await readPdf(await service.pdf(nothing, 'report'))).pages.length).toBeGreaterThan(3);
    expect((await readPdf(await service.pdf(nothing, 'job-pack'))).pages.length).toBeGreaterThan(1);
    for (const name of service.drawingNames(nothing))
      expect(await service.drawing(nothing, name)).toContain('<svg');
  });
});

describe('lines as CSV', () => {
  test('are the lines of the estimate, number for number', () => {
    const rows: readonly Record<string, string>[] = parse(service.csv(estimate), { columns: true });
    expect(
      rows.map(({ code, amount, currency, purchaseQuantity }) => [
        code,
        amount,
        currency,
        Number(purchaseQuantity),
      ]),
    ).toEqual(
      estimate.lines.map(({ code, amount, purchaseQuantity }) => [
        code,
        amount.amount,
        amount.currency,
        purchaseQuantity,
      ]),
    );
  });

  test('hold nothing that a spreadsheet would run', () => {
    const evil = [
      '=HYPERLINK("http://example.invalid")',
      '+1+1',
      '-2+3',
      '@SUM(A1)',
      '\t=1',
      'plain, "quoted"\nand broken',
    ];
    const lines = sampleEstimate(smallSample)
      .lines.slice(0, evil.length)
      .map((line, index) => ({ ...line, title: evil[index] }));
    const rows: readonly Record<string, string>[] = parse(service.csv({ ...estimate, lines }), {
      columns: true,
    });
    expect(rows.map(({ title }) => title)).toEqual([
      ...evil.slice(0, 5).map((title) => `'${title}`),
      evil[5],
    ]);
  });
});

describe('a logo', () => {
  const redrawn = async (uploaded: Uint8Array): Promise<Uint8Array> => {
    const outcome = await service.logo(uploaded);
    if (!outcome.ok)
      throw new Error(`It was refused: ${outcome.problems.map(({ code }) => code).join(', ')}`);
    return outcome.value;
  };

  test('of a sound PNG goes on the letterhead, with words for those who cannot see it', async () => {
    const logo = {
      type: 'image/png',
      base64: Buffer.from(await redrawn(png(40, 20))).toString('base64'),
      description: 'A lighthouse on a rock',
    } as const;
    const pdf = await service.pdf(
      { ...subject, issue: { ...issue, letterhead: { ...issue.letterhead, logo } } },
      'report',
    );
    expect(Buffer.from(pdf).toString('latin1')).toMatch(/\/Subtype ?\/Image/);
    expect(await alternativeTexts(pdf)).toContain('A lighthouse on a rock');
  });

  test('is kept at the size it is printed, never enlarged, in its own proportions', async () => {
    expect(sizeOfPng(await redrawn(png(4000, 500)))).toEqual([1181, 148]);
    expect(sizeOfPng(await redrawn(png(300, 3000)))).toEqual([33, 331]);
    expect(sizeOfPng(await redrawn(png(12, 7)))).toEqual([12, 7]);
  });

  test('of a JPEG becomes a PNG', async () => {
    expect(sizeOfPng(await redrawn(greyJpeg))).toEqual([8, 8]);
  });

  test('keeps nothing that was hidden in the file: neither texts and places beside the picture nor files behind it', async () => {
    const place = chunk('tEXt', Buffer.from('Comment\0<script>alert(1)</script>', 'latin1'));
    const bomb = chunk(
      'zTXt',
      Buffer.concat([Buffer.from('Comment\0\0', 'latin1'), deflateSync(Buffer.alloc(50_000_000))]),
    );
    const polyglot = Buffer.concat([
      png(20, 20, { between: [place, bomb] }),
      Buffer.from('PK\u0003\u0004<html><script>alert(1)</script></html>%PDF-1.7', 'latin1'),
    ]);
    const kept = await redrawn(polyglot);
    expect(new Set(chunksOf(kept))).toEqual(
      new Set([
        'IHDR',
        'IDAT',
        'IEND',
        ...chunksOf(kept).filter((name) => ['PLTE', 'tRNS', 'pHYs'].includes(name)),
      ]),
    );
    expect(Buffer.from(kept).toString('latin1')).not.toMatch(/script|PDF|PK\u0003/);
    expect(kept.length).toBeLessThan(1000);
  });

  test.each([
    [
      'a drawing with script inside',
      Buffer.from('<svg xmlns="http://www.w3.org/2000/svg"><script/></svg>'),
      'not-one-of',
    ],
    [
      'a page that calls itself a picture',
      Buffer.from('<!doctype html><script>alert(1)</script>'),
      'not-one-of',
    ],
    ['a GIF', Buffer.from('GIF89a\u0001\0\u0001\0', 'latin1'), 'not-one-of'],
    ['nothing', Buffer.alloc(0), 'not-one-of'],
    ['the beginning of a PNG and no more', PNG_SIGNATURE, 'not-one-of'],
    ['a picture too wide', png(6000, 10), 'out-of-range'],
    ['a picture of too many points', png(4500, 4500, { rows: 1 }), 'out-of-range'],
    ['a picture cut short', png(400, 200).subarray(0, 60), 'not-supported'],
    ['a picture with fewer rows than it says', png(400, 200, { rows: 20 }), 'not-supported'],
    [
      'a picture with a byte changed',
      png(400, 200).map((value, index) => (index === 50 ? value ^ 1 : value)),
      'not-supported',
    ],
    ['a picture of zero width', png(0, 10), 'out-of-range'],
    ['a file too heavy', Buffer.concat([png(4, 4), Buffer.alloc(1_000_001)]), 'out-of-range'],
    ['a JPEG without an end', greyJpeg.subarray(0, 200), 'not-supported'],
  ])('that is %s is refused with the reason', async (_, bytes, code) => {
    const outcome = await service.logo(bytes);
    expect(outcome.ok ? [] : outcome.problems.map((found) => found.code)).toContain(code);
  });
});

test('documents are set in other processes, while the caller goes on', async () => {
  let turns = 0;
  const ticking = setInterval(() => {
    turns += 1;
  }, 5);
  const pdfs = await Promise.all(Array.from({ length: 4 }, () => service.pdf(subject, 'report')));
  clearInterval(ticking);
  expect(turns).toBeGreaterThan(5);
  for (const pdf of pdfs) expect(Buffer.compare(pdf, pdfs[0])).toBe(0);
  const gone = new AbortController();
  const late = service.pdf(subject, 'job-pack', gone.signal);
  gone.abort();
  await expect(late).rejects.toThrow();
  const after = await service.pdf(subject, 'report');
  expect(Buffer.compare(after, pdfs[0])).toBe(0);
});
