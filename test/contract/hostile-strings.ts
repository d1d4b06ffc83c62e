import type { ReportRequest } from '#lib/drawings';
import { sampleRequest, smallSample } from '../../libs/drawings/src/sample-estimate.js';

/** A thousand strings that have broken templates, escapes, layouts and fonts elsewhere. */
export function hostileStrings(): readonly string[] {
  const seeds = [
    '#panic("x")', '#read("/etc/passwd")', '#import "a.typ"', '#eval("1+1")', '= Heading', '== Sub', '- item', '+ item', '/ term: text', '$ x^2 $', '*bold*', '_under_', '`raw`', '```raw```',
    '<label>', '@ref', '\\', '\\\\', '\\u{41}', '// comment', '/* comment */', '~', '--', '---', '...', '#let x = 1', '#sys.inputs', '#{', '}', ']', '[', '#[', '"', "'", '""', "''",
    '<script>alert(1)</script>', '<img src=x onerror=alert(1)>', '</title>', ']]>', '<!--', '&amp;', '&#0;', '${process.env}', '{{7*7}}', '%s%n', '../../etc', 'C:\\nul', "Robert'); DROP TABLE x;--",
    '=1+1', '@SUM(A1)', '-2+3', '\t', '\u0000', '\u0007', '\u001B[31m', '\u202Eevil', '\u2066x\u2069', '\uFEFFbom', 'zero\u200Bwidth', 'soft\u00ADhyphen', '\uD800', '\uDFFF', '\uFFFD', '\uFFFF',
    '龍', '甲板', '🛥️', '👩‍🔧', '🇪🇺', 'שלום', 'مرحبا', 'ไทย', 'हिन्दी', 'e\u0301', 'Å', 'ﬁ', 'ß', 'İ', 'Ǆ', '½', '²', '∑', '∞', '≤', 'µ', '°C', '€', '﷽', 'a'.repeat(300), 'W'.repeat(80), 'i.'.repeat(90),
    'a b '.repeat(60).trim(), 'http://example.invalid/' + 'x'.repeat(120), 'null', 'undefined', 'NaN', 'true', '[object Object]', '0', '1e309', '-0',
  ];
  return Array.from({ length: 1000 }, (_, index) => {
    const [a, b] = [seeds[index % seeds.length], seeds[(index * 7 + Math.floor(index / seeds.length)) % seeds.length]];
    return `${index}:${a} ${b}`;
  });
}

/** A report with these strings in lines, limits, fittings and cautions. */
export function hostileRequest(strings: readonly string[]): ReportRequest {
  const base = sampleRequest({ ...smallSample, lines: strings.length });
  const estimate = {
    ...base.estimate, title: strings[3], limits: strings,
    lines: base.estimate.lines.map((line, index) => ({ ...line, title: strings[index] })),
    scope: { ...base.estimate.scope, fittings: base.estimate.scope.fittings.map((fitting, index) => ({ ...fitting, id: strings[index] })) },
    cautions: base.estimate.cautions.map((caution, index) => ({ ...caution, text: strings[20 + index], because: strings[40 + index] })),
  };
  return { ...base, estimate };
}
