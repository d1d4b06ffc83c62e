import { Marked, type Tokens } from 'marked';

/** A page of the guide as HTML; its links lead to served pages, and text that looks like HTML stays text. */
export const htmlOf = (markdown: string): string => reader.parse(markdown, { async: false }).trim();

/** The first heading. */
export const titleOf = (markdown: string): string => /^# (.+)$/m.exec(markdown)?.[1] ?? 'Kingplank';

/** The place of a heading in its page, as links name it. */
export const placeOf = (heading: string): string =>
  heading
    .toLowerCase()
    .replace(/[^\p{L}\p{N} -]/gu, '')
    .replaceAll(' ', '-');

const reader = new Marked({
  renderer: {
    heading({ depth, text, tokens }: Tokens.Heading): string {
      return `<h${depth} id="${placeOf(text)}">${this.parser.parseInline(tokens)}</h${depth}>\n`;
    },
    /** A page is served without the ending of its file; what lies outside the guide is not served. */
    link({ href, tokens }: Tokens.Link): string {
      const label = this.parser.parseInline(tokens);
      return href.startsWith('../') ? label : `<a href="${escaped(servedAt(href))}">${label}</a>`;
    },
    html: ({ text }: Tokens.HTML | Tokens.Tag): string => escaped(text),
  },
});

const servedAt = (target: string): string =>
  /^[a-z]+:|^#/.test(target)
    ? target
    : `/docs/${target.replace(/^index\.md/, '').replace(/\.md(?=#|$)/, '')}`;

const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');
