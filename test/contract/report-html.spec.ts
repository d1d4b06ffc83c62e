import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { afterAll, beforeAll, describe, expect, jest, test } from '@jest/globals';
import { chromium, type Browser, type Page } from 'playwright-core';
import {
  contentSecurityPolicy,
  htmlOf,
  jobPackOf,
  reportOf,
  stylesheet,
  type ReportDocument,
  type ReportRequest,
} from '#lib/drawings';
import { sampleRequest, smallSample, type SampleSize } from '../support/sample-estimate.js';
import { hostileRequest, hostileStrings } from './hostile-strings.js';
import { findTool } from './report-parts.js';
import { opened } from '../samples/opened.js';

jest.setTimeout(120_000);

const require = createRequire(import.meta.url);
const styleHash = createHash('sha256').update(stylesheet).digest('base64');
const many: SampleSize = { lines: 300, fittings: 40, zones: 6, nameLength: 0 };
const long: SampleSize = { lines: 24, fittings: 12, zones: 6, nameLength: 180 };

const onScreen = (size: SampleSize): ReportRequest => {
  const request = sampleRequest(size);
  return { ...request, medium: 'screen', reader: { ...request.reader, glyphs: 'any' } };
};
const pageOf = (report: ReportDocument): string => htmlOf(report, { styleHash });

const EVIL = '"><script>alert(1)</script><img src=x onerror=alert(1)>\'</title>';

/** Markup in every place that people write in. */
function written(request: ReportRequest): ReportRequest {
  const { estimate, record, issue } = request;
  return {
    ...request,
    record: {
      ...record,
      cause: { cause: 'unknown', note: EVIL },
      panel: { ...record.panel, name: EVIL },
      fittings: record.fittings?.map((fitting) => ({ ...fitting, id: EVIL })),
    },
    issue: {
      ...issue,
      id: EVIL,
      madeBy: EVIL,
      purpose: EVIL,
      letterhead: { name: EVIL, lines: [EVIL] },
      history: issue.history.map((one) => ({ ...one, reason: EVIL })),
      changes: [{ kind: 'figure', what: EVIL, unit: EVIL, before: 1, after: 2 }],
    },
    estimate: {
      ...estimate,
      title: EVIL,
      reference: EVIL,
      limits: [EVIL],
      lines: estimate.lines.map((line) => ({ ...line, title: EVIL })),
      cautions: estimate.cautions.map((caution) => ({ ...caution, text: EVIL, because: EVIL, source: EVIL })),
      assumptions: estimate.assumptions.map((assumption) => ({
        ...assumption,
        at: EVIL,
        meaning: EVIL,
        value: EVIL,
        because: EVIL,
      })),
      scope: {
        ...estimate.scope,
        included: [EVIL],
        excluded: [EVIL],
        method: [{ choice: EVIL, value: EVIL, reason: EVIL }],
        panel: { ...estimate.scope.panel, name: EVIL },
        zones: estimate.scope.zones.map((zone) => ({ ...zone, id: EVIL, condition: EVIL })),
        openings: estimate.scope.openings.map((opening) => ({ ...opening, label: EVIL, reason: EVIL })),
        fittings: estimate.scope.fittings.map((fitting) => ({ ...fitting, id: EVIL })),
      },
      core: {
        ...opened(estimate).core,
        pieces: opened(estimate).core.pieces.map((piece) => ({ ...piece, label: EVIL, opening: EVIL })),
        notes: [EVIL],
      },
    },
  };
}

const pages = [
  ['report of a small job', pageOf(reportOf(onScreen(smallSample)))],
  ['job pack of a small job', pageOf(jobPackOf(onScreen(smallSample)))],
  ['report of 40 fittings, six zones and 300 lines', pageOf(reportOf(onScreen(many)))],
  ['report of very long names', pageOf(reportOf(onScreen(long)))],
  ['report with markup in every name', pageOf(reportOf(written(onScreen(smallSample))))],
  ['job pack with markup in every name', pageOf(jobPackOf(written(onScreen(smallSample))))],
] as const;

describe.each(pages)('the page of the %s', (_, html) => {
  test('carries everything inside and asks for nothing', () => {
    const tags = html
      .replace(/<style>[^]*?<\/style>/, '')
      .match(/<[a-z][^>"]*(?:"[^"]*"[^>"]*)*>/gi)!
      .map((tag) => tag.replace(/"[^"]*"/g, '""'));
    expect(
      [...new Set(tags)].filter((tag) =>
        /^<(script|link|iframe|object|embed|form|base)\b|\s(on\w+|style|srcset|action)=/i.test(tag),
      ),
    ).toEqual([]);
    expect(html.match(/@import|url\(/)).toBeNull();
    expect(
      [...html.matchAll(/(?:src|href)="([^"]*)"/g)]
        .map(([, target]) => target)
        .filter((target) => !/^(#|data:image\/(png|jpeg);base64,)/.test(target)),
    ).toEqual([]);
    expect(html.includes('default-src &#39;none&#39;')).toBe(true);
  });

  test('has no identifier twice', () => {
    const ids = [...html.matchAll(/\sid="([^"]*)"/g)].map(([, id]) => id);
    expect(ids.filter((id, index) => ids.indexOf(id) !== index)).toEqual([]);
  });

  test('points only at places that exist', () => {
    const ids = new Set([...html.matchAll(/\sid="([^"]*)"/g)].map(([, id]) => id));
    const named = [...html.matchAll(/(?:href="#|aria-labelledby=")([^"]*)"/g)].flatMap(([, list]) =>
      list.split(' '),
    );
    expect(named.filter((id) => !ids.has(id))).toEqual([]);
  });
});

test('the policy allows the page its own style by its hash and nothing else', () => {
  expect(contentSecurityPolicy(styleHash, false)).toBe(
    `default-src 'none'; style-src 'sha256-${styleHash}'; base-uri 'none'; form-action 'none'`,
  );
  expect(contentSecurityPolicy(styleHash, true)).toBe(
    `default-src 'none'; style-src 'sha256-${styleHash}'; img-src data:; base-uri 'none'; form-action 'none'`,
  );
});

test('a logo travels inside the page, with words for those who cannot see it, and the page then allows itself pictures it carries', () => {
  const request = onScreen(smallSample);
  const logo = { type: 'image/png', base64: 'iVBORw0KGgo=', description: 'A lighthouse' } as const;
  const html = pageOf(
    reportOf({ ...request, issue: { ...request.issue, letterhead: { ...request.issue.letterhead, logo } } }),
  );
  expect(html).toContain('<img alt="A lighthouse" src="data:image/png;base64,iVBORw0KGgo=">');
  expect(html).toContain('img-src data:');
});

test('page and paper say the same', () => {
  const words = (report: ReportDocument): readonly string[] =>
    report.sections.flatMap(({ title, blocks }) => [
      title,
      ...blocks.flatMap((block) => {
        switch (block.kind) {
          case 'table':
            return block.rows.flatMap(({ cells, note }) => [...cells, note ?? '']);
          case 'facts':
            return block.rows.flatMap(({ name, value }) => [name, value]);
          case 'list':
            return block.items;
          case 'callout':
            return [block.text, block.small];
          case 'paragraph':
            return [block.text];
          default:
            return [];
        }
      }),
    ]);
  expect(words(reportOf(onScreen(many)))).toEqual(words(reportOf(sampleRequest(many))));
});

describe('a thousand hostile strings', () => {
  const strings = hostileStrings();
  const request = hostileRequest(strings);
  const html = pageOf(
    reportOf({ ...request, medium: 'screen', reader: { ...request.reader, glyphs: 'any' } }),
  );

  test('come through as text, with what cannot be shown named by its code', () => {
    const shown = html
      .replace(/<[^>]*>/g, '')
      .replace(
        /&(lt|gt|quot|#39|amp);/g,
        (_, name: string) => ({ 'lt': '<', 'gt': '>', 'quot': '"', '#39': "'", 'amp': '&' })[name]!,
      );
    const asShown = (text: string): string =>
      text
        .replace(/\p{Surrogate}|[\uFFFE\uFFFF]/gu, '\uFFFD')
        .replace(
          /[\u0000-\u0008\u000B\u000C\u000E-\u001F\u007F-\u009F\u202A-\u202E\u2066-\u2069]/g,
          (letter) => `[U+${letter.charCodeAt(0).toString(16).toUpperCase().padStart(4, '0')}]`,
        );
    expect(strings.filter((one) => shown.split(asShown(one)).length - 1 < 2)).toEqual([]);
  });

  test('add no element, no attribute and no identifier to the page', () => {
    const usual = pageOf(reportOf(onScreen({ ...smallSample, lines: strings.length })));
    const tags = (page: string): ReadonlySet<string> => new Set(page.match(/<[a-z][a-z0-9]*/g));
    expect([...tags(html)].filter((tag) => !tags(usual).has(tag) && tag !== '<bdi')).toEqual([]);
  });
});

/** Code for the browser is text, for it runs there and knows nothing of this file. */
const LAYOUT = `({ broad: document.documentElement.scrollWidth, styled: getComputedStyle(document.querySelector('table')).borderCollapse })`;

/** Pairs of texts in one visible drawing whose boxes cover each other; line boxes are taller than letters, so a third of the height is forgiven. */
const CLASHES = `[...document.querySelectorAll('svg')].filter((svg) => svg.getBoundingClientRect().width > 0).flatMap((svg) => {
  const boxes = [...svg.querySelectorAll('text')].map((text) => ({ says: text.textContent, box: text.getBoundingClientRect() }));
  return boxes.flatMap(({ says, box }, index) => boxes.slice(index + 1).filter(({ box: other }) => {
    const across = Math.min(box.right, other.right) - Math.max(box.left, other.left);
    const down = Math.min(box.bottom, other.bottom) - Math.max(box.top, other.top);
    return across > 0.5 && down > Math.min(box.height, other.height, box.width, other.width) * 0.3;
  }).map(({ says: other }) => svg.querySelector('title').textContent + ': "' + says + '" on "' + other + '"'));
})`;

const browserPath = findTool('chromium');
const inBrowser = browserPath === undefined ? describe.skip : describe;

inBrowser('in a real browser (needs chromium)', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await chromium.launch({ executablePath: browserPath!, args: ['--no-sandbox'] });
  });
  afterAll(async () => {
    await browser?.close();
  });

  const opened = async (
    html: string,
    width: number,
    bypassCSP: boolean,
  ): Promise<{ readonly page: Page; readonly said: readonly string[] }> => {
    const context = await browser.newContext({ viewport: { width, height: 900 }, bypassCSP, offline: true });
    const page = await context.newPage();
    const said: string[] = [];
    page.on('console', (message) => {
      said.push(message.text());
    });
    page.on('pageerror', (failure) => {
      said.push(failure.message);
    });
    await page.setContent(html);
    return { page, said };
  };

  const widths = [
    ['a desk', 1200],
    ['a phone', 390],
  ] as const;
  const combinations = pages.flatMap(([name, html]) =>
    widths.map(([place, width]) => [name, place, html, width] as const),
  );

  test.each(combinations)('the %s on %s has no accessibility violation', async (_, __, html, width) => {
    const { page } = await opened(html, width, true);
    await page.evaluate(readFileSync(require.resolve('axe-core/axe.min.js'), 'utf8'));
    const found = await page.evaluate(
      'axe.run(document, { resultTypes: ["violations"] }).then(({ violations }) => violations.map(({ id, nodes }) => id + ": " + nodes[0].html.slice(0, 200)))',
    );
    await page.context().close();
    expect(found).toEqual([]);
  });

  test.each(combinations)(
    'the %s on %s obeys its own policy and does not scroll sideways',
    async (_, __, html, width) => {
      const { page, said } = await opened(html, width, false);
      const { broad, styled } = await page.evaluate<{ broad: number; styled: string }>(LAYOUT);
      await page.context().close();
      expect(said).toEqual([]);
      expect(styled).toBe('collapse');
      expect(broad).toBeLessThanOrEqual(width);
    },
  );

  test.each(combinations)('the drawings in the %s on %s have no text on text', async (_, __, html, width) => {
    const { page } = await opened(html, width, true);
    const clashes = await page.evaluate(CLASHES);
    await page.context().close();
    expect(clashes).toEqual([]);
  });

  test('a drawing with text on text would be found', async () => {
    const { page } = await opened(
      '<svg width="200" height="50"><title>planted</title><text x="5" y="20">one label</text><text x="20" y="22">another</text></svg>',
      390,
      true,
    );
    const clashes = await page.evaluate(CLASHES);
    await page.context().close();
    expect(clashes).toEqual(['planted: "one label" on "another"']);
  });
});
