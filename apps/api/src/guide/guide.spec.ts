import { describe, expect, test } from '@jest/globals';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { guideFolder, pageNamed, writtenPages } from './guide.js';
import { madePages } from './made-pages.js';
import { htmlOf, placeOf } from './markdown.js';
import { httpFileOf, requestsIn } from './requests.js';

const textOf = (name: string): string => pageNamed(name) ?? '';
const allPages = [...writtenPages, ...Object.keys(madePages)];
const withRequests = writtenPages.filter((name) => requestsIn(textOf(name)).length > 0);

describe('the guide in the repository', () => {
  const files = new Map([
    ...Object.entries(madePages).map(([name, made]) => [`${name}.md`, made()] as const),
    ...withRequests.map((name) => [`requests/${name}.http`, httpFileOf(textOf(name))] as const),
  ]);

  test.each([...files])('%s is what the values make it', (name, made) => {
    const file = path.join(guideFolder, name);
    if (process.env.UPDATE_GOLDEN === '1') writeFileSync(file, made);
    expect(readFileSync(file, 'utf8')).toBe(made);
  });

  test.each(allPages)('every link of %s leads somewhere', (name) => {
    const links = [...textOf(name).matchAll(/\]\(([^)]+)\)/g)].map(([, target]) => target);
    // The reference and the estimate are made by a running service.
    for (const link of links.filter((target) => target !== 'api' && target !== 'estimate.json')) {
      const [file, place] = link.split('#');
      expect([link, existsSync(path.join(guideFolder, file))]).toEqual([link, true]);
      if (place === undefined) continue;
      const headings = [...textOf(file.replace(/\.md$/, '')).matchAll(/^#+ (.+)$/gm)];
      expect(headings.map(([, heading]) => placeOf(heading))).toContain(place);
    }
  });

  test('every page for a kind of user shows requests, and every name in them is kept from an answer before', () => {
    expect(withRequests).toEqual(writtenPages.filter((name) => name !== 'index'));
    for (const name of withRequests) {
      const known = new Set(['url', 'key', 'tomorrow']);
      for (const { text, kept } of requestsIn(textOf(name))) {
        for (const [, used] of text.matchAll(/\{\{(\w+)\}\}/g))
          expect([name, used, known.has(used)]).toEqual([name, used, true]);
        for (const own of Object.keys(kept)) known.add(own);
      }
    }
  });
});

describe('a page as HTML', () => {
  test('has places for its headings and links to served pages', () => {
    expect(
      htmlOf('# A & B\n\nSee [it](surveyor.md#x), [the start](index.md), [the code](../libs/README.md).'),
    ).toBe(
      '<h1 id="a--b">A &amp; B</h1>\n' +
        '<p>See <a href="/docs/surveyor#x">it</a>, <a href="/docs/">the start</a>, the code.</p>',
    );
  });

  test('runs nothing that its text holds', () => {
    const page = htmlOf('a <img src=x onerror=run()> b\n\n<script>run()</script>\n\n[c](j"k)');
    expect(page).not.toMatch(/<img|<script|"k/);
    expect(page).toContain('&lt;script&gt;run()&lt;/script&gt;');
  });
});
