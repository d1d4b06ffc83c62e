import { execFileSync } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** One run of text in a PDF: what it says, how high, and where, in points from the lower left of the page. */
export interface PdfRun {
  readonly says: string;
  readonly size: number;
  readonly x: number;
  readonly y: number;
  readonly font: string;
}

export interface PdfReading {
  readonly pages: readonly (readonly PdfRun[])[];
  readonly bookmarks: readonly string[];
  readonly isTagged: boolean;
  readonly language: string;
  readonly title: string;
  readonly structure: readonly string[];
}

/** Opens a PDF with a reader that has nothing to do with the program that wrote it. */
export async function readPdf(pdf: Uint8Array): Promise<PdfReading> {
  const loading = getDocument({ data: Uint8Array.from(pdf), useSystemFonts: false, verbosity: 0 });
  const document = await loading.promise;
  const pages: PdfRun[][] = [];
  const structure: string[] = [];
  for (let number = 1; number <= document.numPages; number += 1) {
    const page = await document.getPage(number);
    const { items } = await page.getTextContent();
    pages.push(
      items.flatMap((item) =>
        'str' in item
          ? [
              {
                says: item.str,
                size: item.height,
                x: item.transform[4],
                y: item.transform[5],
                font: item.fontName,
              },
            ]
          : [],
      ),
    );
    collectRoles(await page.getStructTree(), structure);
  }
  const mark = await document.getMarkInfo();
  const meta = await document.getMetadata();
  const outline = await document.getOutline();
  const info = meta.info as { readonly Title?: string; readonly Language?: string };
  await loading.destroy();
  return {
    pages,
    structure,
    isTagged: mark?.Marked === true,
    language: info.Language ?? '',
    title: info.Title ?? '',
    bookmarks: (outline ?? []).map(({ title }) => title),
  };
}

function collectRoles(node: unknown, into: string[]): void {
  if (typeof node !== 'object' || node === null) return;
  if ('role' in node && typeof node.role === 'string') into.push(node.role);
  if ('children' in node && Array.isArray(node.children))
    for (const child of node.children) collectRoles(child, into);
}

/** The texts that stand in for pictures in the structure of a PDF. */
export async function alternativeTexts(pdf: Uint8Array): Promise<readonly string[]> {
  const loading = getDocument({ data: Uint8Array.from(pdf), useSystemFonts: false, verbosity: 0 });
  const document = await loading.promise;
  const texts: string[] = [];
  for (let number = 1; number <= document.numPages; number += 1)
    collectAlternatives(await (await document.getPage(number)).getStructTree(), texts);
  await loading.destroy();
  return texts;
}

function collectAlternatives(node: unknown, into: string[]): void {
  if (typeof node !== 'object' || node === null) return;
  if ('alt' in node && typeof node.alt === 'string') into.push(node.alt);
  if ('children' in node && Array.isArray(node.children))
    for (const child of node.children) collectAlternatives(child, into);
}

/** All text without the spaces and the invisible places to break that the layout put in; look-alike glyphs (µ and μ, ﬁ and fi) count as one. */
export const bare = (text: string): string => text.normalize('NFKC').replace(/[\s\u00A0\u200B\u202F]+/gu, '');

export const textOf = ({ pages }: PdfReading): string =>
  pages.map((runs) => runs.map(({ says }) => says).join(' ')).join(' ');

/** Where a tool for looking at results is, or undefined; tests that need it then say so. */
export const findTool = (name: string): string | undefined =>
  ['/usr/bin', '/usr/local/bin', '/opt/homebrew/bin']
    .map((folder) => path.join(folder, name))
    .find((file) => existsSync(file));

/** Calls a tool on a temporary file. */
export function runOn(tool: string, bytes: Uint8Array, args: (file: string) => readonly string[]): Buffer {
  const folder = mkdtempSync(path.join(tmpdir(), 'kingplank-report-'));
  try {
    const file = path.join(folder, 'report.pdf');
    writeFileSync(file, bytes);
    return execFileSync(tool, [...args(file)], {
      maxBuffer: 512 * 1024 * 1024,
      stdio: ['ignore', 'pipe', 'ignore'],
    });
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
