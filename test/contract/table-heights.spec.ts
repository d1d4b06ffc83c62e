import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { NodeCompiler } from '@myriaddreamin/typst-ts-node-compiler';
import { describe, expect, jest, test } from '@jest/globals';
import { annexNames, jobPackOf, reportOf, type ReportDocument, type ReportRequest } from '#lib/drawings';
import { typstInput } from '../../apps/api/src/documents/typst-input.js';
import { typstTemplate } from '../../apps/api/src/documents/typst-template.js';
import { estimateOf, sampleRecordOf } from '../samples/sample-record.js';
import { sampleRequest, smallSample } from '../support/sample-estimate.js';
import { hostileRequest, hostileStrings } from './hostile-strings.js';
import { readPdf, type PdfRun } from './report-parts.js';

jest.setTimeout(120_000);

/**
 * Tables tell the setter how high their rows are, so that it need not lay every cell out to find it. What it finds by
 * itself is the check: with the heights taken out of the template, every text must stand where it stood.
 */
const finding = typstTemplate.replace(/^ *rows: \(auto, .*\n/m, '');

const require = createRequire(import.meta.url);
const fontBlobs = ['400Regular/Arimo_400Regular.ttf', '700Bold/Arimo_700Bold.ttf'].map((face) =>
  readFileSync(require.resolve(`@expo-google-fonts/arimo/${face}`)),
);
const compiler = NodeCompiler.create({ workspace: '/', fontArgs: [{ fontBlobs }] });

async function placesIn(template: string, report: ReportDocument): Promise<readonly PdfRun[]> {
  const { result } = compiler.compile({ mainFileContent: template, inputs: { doc: typstInput(report, '') } });
  if (result === null) throw new Error('not set');
  const { pages } = await readPdf(new Uint8Array(compiler.pdf(result, {})));
  return pages.flatMap((runs, page) => runs.map((run) => ({ ...run, y: run.y - page * 10_000 })));
}

/** PDF rounds to hundredths of a point. */
const SEEN_PT = 0.1;

async function movedIn(report: ReportDocument): Promise<readonly string[]> {
  const [told, found] = [await placesIn(typstTemplate, report), await placesIn(finding, report)];
  expect(told.length).toBe(found.length);
  return told
    .filter(({ x, y }, at) => Math.hypot(x - found[at].x, y - found[at].y) > SEEN_PT)
    .map(({ says }) => says);
}

/** Pictures are files to the template; they say nothing about rows. */
const withoutPictures = (request: ReportRequest): ReportRequest => ({
  ...request,
  issue: { ...request.issue, photographs: [], letterhead: { name: 'Invented yard', lines: [] } },
});

const sample = (name: string): ReportRequest => {
  const record = sampleRecordOf(name);
  const request = withoutPictures(sampleRequest(smallSample));
  return { ...request, record, estimate: estimateOf(record), annexes: annexNames };
};

test('the template does tell heights', () => expect(finding).not.toBe(typstTemplate));

describe('no text stands elsewhere than where the setter alone would put it', () => {
  test.each(['foredeck', 'toe-rail', 'cockpit-sole'])('%s: every annex and the job pack', async (name) => {
    const request = sample(name);
    expect(await movedIn(reportOf(request))).toEqual([]);
    expect(await movedIn(jobPackOf(request))).toEqual([]);
  });

  test('a Letter page in US units', async () => {
    const request = sample('foredeck');
    const reader = { ...request.reader, locale: 'en-US', units: 'us' } as const;
    expect(await movedIn(reportOf({ ...request, reader, paper: 'letter' }))).toEqual([]);
  });

  test('names that no line holds, in every script', async () => {
    const request = withoutPictures(hostileRequest(hostileStrings()));
    expect(await movedIn(reportOf(request))).toEqual([]);
  });
});
