import { Defect } from '#lib/kernel';

/**
 * Pages of the guide as HTML. They keep to a few forms of Markdown (headings, paragraphs, lists, tables, fenced code,
 * links, bold, code), so that this reads them whole; a form that it does not know stays text.
 */
export function htmlOf(markdown: string): string {
  const blocks: string[] = [];
  let rest = markdown.replaceAll('\r\n', '\n').trim();
  while (rest !== '') {
    const found = blockIn(rest);
    blocks.push(found.html);
    rest = rest.slice(found.length).replace(/^\n+/, '');
  }
  return blocks.join('\n');
}

/** The first heading. */
export const titleOf = (markdown: string): string => /^# (.+)$/m.exec(markdown)?.[1] ?? 'Kingplank';

/** The place of a heading in its page, as links name it. */
export const placeOf = (heading: string): string =>
  heading
    .toLowerCase()
    .replace(/[^\p{L}\p{N} -]/gu, '')
    .replaceAll(' ', '-');

interface Block {
  readonly html: string;
  readonly length: number;
}

const forms: readonly { readonly form: RegExp; readonly html: (match: RegExpExecArray) => string }[] = [
  {
    form: /^```(\w*)\n([\s\S]*?)\n```(?=\n|$)/,
    html: ([, , code]) => `<pre><code>${escaped(code)}</code></pre>`,
  },
  {
    form: /^(#{1,4}) (.+)(?=\n|$)/,
    html: ([, marks, text]) => `<h${marks.length} id="${placeOf(text)}">${inline(text)}</h${marks.length}>`,
  },
  { form: /^(?:\|.*\|(?:\n|$))+/, html: ([rows]) => tableOf(rows.trim().split('\n')) },
  { form: /^(?:- .+(?:\n|$))+/, html: ([items]) => listOf('ul', items, /^- /) },
  { form: /^(?:\d+\. .+(?:\n|$))+/, html: ([items]) => listOf('ol', items, /^\d+\. /) },
  { form: /^.+(?:\n(?!\n|```|#|\||- ).+)*/, html: ([text]) => `<p>${inline(text)}</p>` },
];

function blockIn(text: string): Block {
  for (const { form, html } of forms) {
    const match = form.exec(text);
    if (match !== null) return { html: html(match), length: match[0].length };
  }
  throw new Defect(`No form of the guide begins with ${JSON.stringify(text.slice(0, 40))}`);
}

const listOf = (tag: string, items: string, mark: RegExp): string =>
  `<${tag}>${items
    .trim()
    .split('\n')
    .map((item) => `<li>${inline(item.replace(mark, ''))}</li>`)
    .join('')}</${tag}>`;

function tableOf([head, , ...rows]: readonly string[]): string {
  const cells = (row: string, tag: string): string =>
    `<tr>${row
      .slice(1, -1)
      .split(/(?<!\\)\|/)
      .map((cell) => `<${tag}>${inline(cell.trim().replaceAll('\\|', '|'))}</${tag}>`)
      .join('')}</tr>`;
  return `<table><thead>${cells(head, 'th')}</thead><tbody>${rows.map((row) => cells(row, 'td')).join('')}</tbody></table>`;
}

/** Code is taken out first, because nothing in it is marked. */
const inline = (text: string): string =>
  text
    .split(/(`[^`]+`)/)
    .map((part) =>
      part.startsWith('`') && part.length > 1
        ? `<code>${escaped(part.slice(1, -1))}</code>`
        : escaped(part)
            .replace(/\*\*([^*]+)\*\*/g, '<strong>$1</strong>')
            .replace(/\[([^\]]+)\]\(([^)]+)\)/g, (_, label: string, target: string) => linked(label, target)),
    )
    .join('');

/** A page is served without the ending of its file; what lies outside the guide is not served. */
const linked = (label: string, target: string): string =>
  target.startsWith('../') ? label : `<a href="${servedAt(target)}">${label}</a>`;

const servedAt = (target: string): string =>
  /^[a-z]+:|^#/.test(target)
    ? target
    : `/docs/${target.replace(/^index\.md/, '').replace(/\.md(?=#|$)/, '')}`;

const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');
