import { beforeAll, describe, expect, jest, test } from '@jest/globals';
import { pdfPress, type PdfPress } from '../../apps/api/src/documents/typst-compiler.js';
import { paperText } from '../../apps/api/src/documents/paper-text.js';
import {
  jobPackOf,
  reportOf,
  templateDocument,
  type ReportDocument,
  type ReportRequest,
} from '#lib/drawings';
import { sampleRequest, smallSample, type SampleSize } from '../support/sample-estimate.js';
import { hostileRequest, hostileStrings } from './hostile-strings.js';
import { bare, findTool, readPdf, runOn, textOf, type PdfReading } from './report-parts.js';
import { opened } from '../samples/opened.js';

jest.setTimeout(120_000);

const many: SampleSize = { lines: 300, fittings: 40, zones: 6, nameLength: 0 };
const long: SampleSize = { lines: 24, fittings: 12, zones: 6, nameLength: 180 };

let press: PdfPress;
beforeAll(() => {
  press = pdfPress();
});

const pdfOf = (report: ReportDocument): Uint8Array => press.print(report, 'a-2a');

/** Written here anew, so that the report's own formatting is checked by another. */
function money(amount: string): string {
  const [whole, part] = amount.split('.');
  return `EUR${whole.replace(/\B(?=(\d{3})+$)/g, ',')}.${part}`;
}

describe('the report says what the data says', () => {
  let reading: PdfReading;
  let text: string;
  const request = sampleRequest(many);
  const { estimate } = request;
  beforeAll(async () => {
    reading = await readPdf(pdfOf(reportOf(request)));
    text = bare(textOf(reading));
  });

  test('every priced line has its title, its quantity and its amount on one row', () => {
    const wrong = estimate.lines.filter(({ title, purchaseQuantity, unit, amount }) => {
      const quantity = `${purchaseQuantity.toLocaleString('en-GB', { maximumFractionDigits: 3 })}${unit}`;
      // Titles repeat: one of the rows under this title is this line.
      const rows = text.split(bare(`${title} net`)).slice(1);
      return !rows.some((row) => {
        const own = row.slice(0, 240);
        return own.includes(quantity) && own.includes(money(amount.amount));
      });
    });
    expect(wrong.map(({ code }) => code)).toEqual([]);
  });

  test('every total, tax and percentile stands there to the cent', () => {
    const { totals, summary, sections } = estimate;
    const amounts = [
      totals.net,
      totals.overhead,
      totals.profit,
      totals.contingency,
      totals.tax,
      totals.total,
      totals.parts,
      totals.labour,
      summary.total,
      totals.range.p10,
      totals.range.p50,
      totals.range.p80,
      totals.range.p90,
      ...totals.taxes.flatMap(({ base, amount }) => [base, amount]),
      ...totals.byCause.map(({ amount }) => amount),
      ...sections.map(({ amount }) => amount),
    ];
    expect(amounts.map(({ amount }) => money(amount)).filter((said) => !text.includes(said))).toEqual([]);
  });

  test('the total read back from the page is the total of the data', () => {
    const read = [...text.matchAll(/TotalwithtaxEUR([\d,]+\.\d\d)/g)].map((found) =>
      found[1].replaceAll(',', ''),
    );
    expect(read).toContain(estimate.totals.total.amount);
  });

  test('areas, lengths, hours, days, batches and checks are the data rounded to the digits shown', () => {
    const { summary, scope, core, process, checks } = opened(estimate);
    const said = [
      `${summary.openedAreaM2.toFixed(2)}m²`,
      `about${Math.round(summary.labourH.p50 * 2) / 2}hofwork,${Math.ceil(summary.workingDays.p50)}workingdays`,
      `${core.netAreaM2.toFixed(3)}m²`,
      `${core.purchaseAreaM2.toFixed(3)}m²`,
      `${(core.utilisation * 100).toFixed(1)}%`,
      ...scope.openings.map(({ areaM2 }) => `${areaM2.toFixed(2)}m²`),
      // Grams by the heads of the columns: three numbers side by side.
      ...process.batches.map(({ resinG, hardenerG, fillerG }) => `${resinG}${hardenerG}${fillerG}`),
      ...process.demands.flatMap(({ netL, totalKg }) => [`${netL.toFixed(2)}l`, `${totalKg.toFixed(2)}kg`]),
      ...checks.flatMap(({ utilisation }) =>
        utilisation === undefined ? [] : [`${(utilisation * 100).toFixed(1)}%`],
      ),
    ];
    expect(said.filter((one) => !text.includes(bare(one)))).toEqual([]);
  });

  test('so are pieces, plies, the four states of the panel, pressures, cures, days, drivers and what changed', () => {
    const { core, laminate, panel, process, totals } = opened(estimate);
    const fewest = (value: number, decimals: number): string =>
      value.toLocaleString('en-GB', { maximumFractionDigits: decimals });
    // thirds of 560 x 540 mm and halves of 420 x 320 mm, less a joint of 2 mm
    const boards: Readonly<Record<string, string>> = { A: '185mm×178mm', B: '208mm×158mm' };
    const said = [
      ...core.pieces.map(
        ({ beddingOrder, label, opening, thicknessMm, areaM2 }) =>
          `${beddingOrder}${label}${opening}${boards[opening]}${thicknessMm.toFixed(1)}mm${areaM2.toFixed(4)}m²`,
      ),
      ...core.stack.map(({ layer, thicknessMm }) => `${layer}${thicknessMm.toFixed(2)}mm`),
      // Millimetres stand as on a drawing, without a mark between the thousands.
      ...core.sheets.map(({ lengthMm, widthMm }) => `${lengthMm.toFixed(0)}mm×${widthMm.toFixed(0)}mm`),
      ...laminate.plies.map(
        (ply) =>
          `${ply.thicknessMm.toFixed(2)}mm${ply.areaM2.toFixed(3)}m²${ply.rollLengthM.toFixed(2)}m×${ply.rollWidthMm.toFixed(0)}mm${ply.glassKg.toFixed(2)}kg${ply.resinKg.toFixed(2)}kg`,
      ),
      ...panel.states.flatMap(({ deflections }) =>
        deflections.map(({ deflectionMm }) => `${deflectionMm.toFixed(2)}mm`),
      ),
      `Bendingstiffnessforeandaft,bywidth${panel.states.map(({ bendingXNmm }) => `${fewest(Number((bendingXNmm / 1000).toPrecision(3)), 3)}N·m`).join('')}`,
      `${process.bondPressure.requiredKPa.toFixed(2)}kPa`,
      ...(process.bondPressure.availableKPa === undefined
        ? []
        : [`${process.bondPressure.availableKPa.toFixed(2)}kPa`]),
      ...process.cure.map(
        ({ temperatureC, gelH, releaseH }) =>
          `${fewest(temperatureC, 1)}°C${gelH!.toFixed(1)}h${releaseH!.toFixed(1)}h`,
      ),
      `${fewest(process.calendar.workingDays.p50, 1)}d(${fewest(process.calendar.workingDays.p10, 1)}dto${fewest(process.calendar.workingDays.p90, 1)}d)`,
      ...totals.drivers.map(({ name, shareOfVariance }) => `${name}${(shareOfVariance * 100).toFixed(1)}%`),
      ...request.issue.changes.map((change) =>
        change.kind === 'sum'
          ? `${change.what}${money(change.before.amount)}${money(change.after.amount)}`
          : `${change.what}${change.before.toFixed(2)}m²${change.after.toFixed(2)}m²`,
      ),
      ...request.issue.history.map(({ total }) => money(total.amount)),
    ];
    expect(said.filter((one) => !text.includes(bare(one)))).toEqual([]);
  });

  test('an American reads the same amounts, and the same areas and temperatures in his units, on his paper', async () => {
    const american: ReportRequest = {
      ...request,
      paper: 'letter',
      reader: { ...request.reader, locale: 'en-US', units: 'us' },
    };
    const pdf = pdfOf(reportOf(american));
    const us = bare(textOf(await readPdf(pdf)));
    // 1 ft = 0.3048 m exactly (international foot), so 1 ft2 = 0.09290304 m2; degF = 9/5 degC + 32.
    const squareFeet = (areaM2: number): string => `${(areaM2 / 0.09290304).toFixed(2)}ft²`;
    const said = [
      ...estimate.lines.map(({ amount }) => money(amount.amount)),
      money(estimate.totals.total.amount),
      squareFeet(estimate.summary.openedAreaM2),
      ...estimate.scope.openings.map(({ areaM2 }) => squareFeet(areaM2)),
      ...estimate.scope.zones.map(({ areaM2 }) => squareFeet(areaM2)),
      ...estimate.process.cure.map(({ temperatureC }) => `${Math.round(temperatureC * 1.8 + 32)}°F`),
    ];
    expect(said.filter((one) => !us.includes(bare(one)))).toEqual([]);
    expect(Buffer.from(pdf).toString('latin1')).toMatch(/\/MediaBox ?\[0 0 612 792\]/);
  });

  test('every assumption, caution, limit and item in or out of scope is there', () => {
    const said = [
      ...estimate.assumptions.flatMap(({ meaning, value, because }) => [meaning, value, because]),
      ...estimate.cautions.map(({ text: caution }) => caution),
      ...estimate.limits,
      ...estimate.scope.included,
      ...estimate.scope.excluded,
      ...estimate.scope.findings.map((finding) => finding.text),
    ];
    expect(said.filter((one) => !text.includes(bare(one)))).toEqual([]);
  });
});

const kinds = [
  ['report', reportOf],
  ['job pack', jobPackOf],
] as const;
const sizes = [
  ['a small job', smallSample],
  ['40 fittings, six zones and 300 lines', many],
  ['very long names', long],
] as const;
const all = sizes.flatMap(([size, sample]) =>
  kinds.map(([kind, documentOf]) => [`${kind} of ${size}`, documentOf, sampleRequest(sample)] as const),
);

describe.each(all)('the %s', (_, documentOf, request: ReportRequest) => {
  let pdf: Uint8Array;
  let reading: PdfReading;
  beforeAll(async () => {
    pdf = pdfOf(documentOf(request));
    reading = await readPdf(pdf);
  });

  test('is tagged, titled, in a stated language, with a bookmark for each chapter', () => {
    const chapters = documentOf(request)
      .sections.filter(({ level }) => level === 1)
      .map(({ title }) => bare(paperText(title)));
    expect(reading.isTagged).toBe(true);
    expect(reading.language).toMatch(/^en/);
    expect(bare(reading.title)).toContain(bare(paperText(request.estimate.title)).slice(0, 30));
    expect(reading.bookmarks.map(bare)).toEqual(expect.arrayContaining(chapters));
    expect(reading.structure).toEqual(expect.arrayContaining(['H1', 'Table', 'TH', 'TD', 'Figure']));
  });

  test('numbers its pages and leaves none empty', () => {
    const numbered = reading.pages.filter((runs) =>
      /Page\d+of\d+/.test(bare(runs.map(({ says }) => says).join(''))),
    );
    expect(numbered.length).toBeGreaterThan(3);
    for (const [index, runs] of reading.pages.entries()) {
      const own = runs.filter(({ y, says }) => y > 50 && says.trim() !== '');
      expect({ page: index + 1, isEmpty: own.length < 2 }).toEqual({ page: index + 1, isEmpty: false });
    }
  });

  test('has no heading alone at the foot of a page', () => {
    const orphans = reading.pages.flatMap((runs, index) => {
      const body = runs.filter(({ says, y }) => says.trim() !== '' && y > 50);
      const lowest = body.reduce((low, run) => (run.y < low.y ? run : low), body[0]);
      return lowest.size > 10 && reading.bookmarks.some((title) => bare(title) === bare(lowest.says))
        ? [`${index + 1}: ${lowest.says}`]
        : [];
    });
    expect(orphans).toEqual([]);
  });

  test('keeps all text inside the page', () => {
    const outside = reading.pages.flatMap((runs) =>
      runs
        .filter(({ says, x, y }) => says.trim() !== '' && (x < 20 || x > 580 || y < 20 || y > 830))
        .map(({ says }) => says),
    );
    expect(outside).toEqual([]);
  });

  test('is the same bytes each time, also after other work', () => {
    pdfOf(templateDocument(sampleRequest(smallSample)));
    expect(Buffer.compare(pdfOf(documentOf(request)), pdf)).toBe(0);
  });

  test('is accepted by the library as PDF/UA-1 as well as PDF/A-2a', () => {
    const accessible = Buffer.from(press.print(documentOf(request), 'ua-1')).toString('latin1');
    expect(accessible).toContain('pdfuaid:part');
    expect(Buffer.from(pdf).toString('latin1')).toContain('pdfaid:part');
  });
});

describe('in other readers', () => {
  const pdfinfo = findTool('pdffonts');
  (pdfinfo === undefined ? test.skip : test)('every font is embedded and searchable (needs pdffonts)', () => {
    const fonts = runOn(pdfinfo!, pdfOf(reportOf(sampleRequest(smallSample))), (file) => [file])
      .toString()
      .split('\n')
      .slice(2)
      .filter((row) => row !== '');
    expect(fonts.length).toBeGreaterThan(0);
    for (const font of fonts) expect(font).toMatch(/Arimo.* yes\s+yes\s+yes /);
  });

  const qpdf = findTool('qpdf');
  (qpdf === undefined ? test.skip : test)('the file is sound (needs qpdf)', () => {
    expect(
      runOn(qpdf!, pdfOf(jobPackOf(sampleRequest(smallSample))), (file) => ['--check', file]).toString(),
    ).toContain('No syntax or stream encoding errors');
  });

  const pdftoppm = findTool('pdftoppm');
  (pdftoppm === undefined ? test.skip : test)(
    'the check line of a template measures 100 mm on paper (needs pdftoppm)',
    () => {
      const DOTS_PER_MM = 10;
      const image = runOn(pdftoppm!, pdfOf(templateDocument(sampleRequest(smallSample))), (file) => [
        '-gray',
        '-r',
        '254',
        '-f',
        '1',
        '-l',
        '1',
        file,
      ]);
      const header = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(image.subarray(0, 40).toString('latin1'))!;
      const [width, height] = [Number(header[1]), Number(header[2])];
      const runs = Array.from({ length: height }, (_, row) =>
        longestDark(image.subarray(header[0].length + row * width, header[0].length + (row + 1) * width)),
      );
      const footRuns = runs.slice(Math.floor(height * 0.88)).filter((run) => run > 500);
      expect(Math.max(...footRuns) / DOTS_PER_MM).toBeGreaterThan(99.8);
      expect(Math.max(...footRuns) / DOTS_PER_MM).toBeLessThan(100.4);
    },
  );
});

function longestDark(row: Uint8Array): number {
  let [best, run] = [0, 0];
  for (const value of row) {
    run = value < 128 ? run + 1 : 0;
    best = Math.max(best, run);
  }
  return best;
}

test('names of every hostile kind come through as text', async () => {
  const strings = hostileStrings();
  expect(new Set(strings).size).toBe(strings.length);
  expect(strings.length).toBeGreaterThanOrEqual(1000);
  const reading = await readPdf(pdfOf(reportOf(hostileRequest(strings))));
  const text = bare(textOf(reading));
  const sorted = (value: string): string => [...value].sort().join('');
  // A reader gives right-to-left text in another order, so only its letters are looked for.
  const isRightToLeft = (value: string): boolean => /[\u0590-\u05FF]/.test(value);
  const lost = strings.filter((one) => !isRightToLeft(one) && !text.includes(bare(paperText(one))));
  expect(lost).toEqual([]);
  const hebrew = strings
    .filter(isRightToLeft)
    .flatMap((one) => bare(paperText(one)).match(/[\u0590-\u05FF]+/g) ?? []);
  const present = sorted(text);
  expect(hebrew.filter((word) => ![...word].every((letter) => present.includes(letter)))).toEqual([]);
  expect(reading.pages.length).toBeGreaterThan(20);
});
