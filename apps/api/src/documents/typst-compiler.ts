import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { NodeCompiler } from '@myriaddreamin/typst-ts-node-compiler';
import type { ReportDocument } from '#lib/drawings';
import { Defect } from '#lib/kernel';
import { photographPath, typstInput } from './typst-input.js';
import { typstTemplate } from './typst-template.js';

/** Archival PDF/A-2a, or accessible PDF/UA-1; both are tagged. The library checks its own output against the one chosen. */
export type PdfStandard = 'a-2a' | 'ua-1';

const require = createRequire(import.meta.url);
const faces = ['400Regular/Arimo_400Regular.ttf', '700Bold/Arimo_700Bold.ttf'];

/** Compilations after which results that nobody asked for again leave the library's cache. */
const CACHE_AGE = 2;

/** Turns a report into a PDF: always the same bytes for the same report. Blocks while it works, so it lives in a worker. */
export interface PdfPress {
  readonly print: (report: ReportDocument, standard: PdfStandard) => Uint8Array;
}

export function pdfPress(): PdfPress {
  const fontBlobs = faces.map((face) => readFileSync(require.resolve(`@expo-google-fonts/arimo/${face}`)));
  const compiler = NodeCompiler.create({ workspace: '/', fontArgs: [{ fontBlobs }] });
  return { print: (report, standard) => printed(compiler, report, standard) };
}

function printed(compiler: NodeCompiler, report: ReportDocument, standard: PdfStandard): Uint8Array {
  const logo = mappedLogo(compiler, report);
  const photographs = mappedPhotographs(compiler, report);
  const result = compiler.compile({
    mainFileContent: typstTemplate,
    inputs: { doc: typstInput(report, logo) },
  });
  if (result.hasError() || result.result === null)
    throw new Defect(`The report could not be set: ${complaints(result.takeDiagnostics())}`);
  const pdf = compiler.pdf(result.result, {
    pdfStandard: standard,
    creationTimestamp: Math.floor(new Date(report.madeAt).getTime() / 1000),
  });
  for (const path of [...(logo === '' ? [] : [logo]), ...photographs]) compiler.unmapShadow(path);
  compiler.evictCache(CACHE_AGE);
  return new Uint8Array(pdf);
}

/** The logo is a file to the template. */
function mappedLogo(compiler: NodeCompiler, { letterhead: { logo } }: ReportDocument): string {
  if (logo === undefined) return '';
  const path = '/letterhead-logo.png';
  compiler.mapShadow(path, Buffer.from(logo.base64, 'base64'));
  return path;
}

/** Their paths, once they lie there. */
function mappedPhotographs(compiler: NodeCompiler, { sections }: ReportDocument): readonly string[] {
  return sections
    .flatMap(({ blocks }) => blocks)
    .flatMap((block) => {
      if (block.kind !== 'photograph') return [];
      const path = photographPath(block);
      compiler.mapShadow(path, Buffer.from(block.base64, 'base64'));
      return [path];
    });
}

const complaints = (error: { readonly shortDiagnostics: readonly unknown[] } | null): string =>
  (error?.shortDiagnostics ?? [])
    .map((one) => JSON.stringify(one))
    .join('; ')
    .slice(0, 2000);
