import { keep } from 'kingplank-deck/page';
import type { Comparison } from 'kingplank-sdk';
import { html, type TemplateResult } from 'lit';
import { money, number, textFile, trying, type Desk, type Page } from '../desk.js';

/** What changed between two estimates, figure by figure and line by line. */
export function comparePage(desk: Desk, id: string, before: string): Page {
  let found: Comparison | undefined;
  void trying(desk, async () => {
    found = await desk.client.estimates.compare(id, { with: before });
  });
  const keepCsv = (): Promise<void> =>
    trying(desk, async () => {
      const csv = await desk.client.estimates.comparisonCsv(id, { with: before });
      keep(textFile(csv, 'text/csv', `comparison-${id.slice(0, 8)}.csv`));
    });
  return {
    view: () =>
      html`<h1>${desk.words.changed}</h1>
        ${
          found === undefined
            ? html`<p>${desk.words.working}</p>`
            : html`<div class="row">
                  <a class="button" href=${`#/estimates/${before}`}>${desk.words.before}</a>
                  <a class="button" href=${`#/estimates/${id}`}>${desk.words.after}</a>
                  <button type="button" @click=${keepCsv}>${desk.words.asCsv}</button>
                </div>
                ${figures(desk, found)} ${lines(desk, found)}`
        }`,
  };
}

const heads = ({ words }: Desk, first: string, last: string): TemplateResult =>
  html`<thead>
    <tr>
      <th scope="col">${first}</th>
      <th scope="col" class="number">${words.before}</th>
      <th scope="col" class="number">${words.after}</th>
      <th scope="col" class="number">${last}</th>
    </tr>
  </thead>`;

/** What the service says is in its own language. */
const english = (what: unknown): TemplateResult => html`<span lang="en">${what}</span>`;

const row = (what: unknown, ...numbers: readonly string[]): TemplateResult =>
  html`<tr>
    <td>${what}</td>
    ${numbers.map((text) => html`<td class="number">${text}</td>`)}
  </tr>`;

const figures = (desk: Desk, { figures: all, totals }: Comparison): TemplateResult =>
  html`<div class="scroll" tabindex="0" role="region" aria-label=${desk.words.figure}>
    <table>
      ${heads(desk, desk.words.figure, desk.words.difference)}
      <tbody>
        ${all.map(({ name, unit, before, after }) =>
          row(
            english(`${name}, ${unit}`),
            ...[before, after, after - before].map((value) => number(value, desk, 2)),
          ),
        )}
        ${totals.map(({ name, before, after, difference }) =>
          row(english(name), ...[before, after, difference].map((amount) => money(amount, desk))),
        )}
      </tbody>
    </table>
  </div>`;

const lines = (desk: Desk, { lines: all }: Comparison): TemplateResult =>
  html`<h2>${desk.words.line}</h2>
    <div class="scroll" tabindex="0" role="region" aria-label=${desk.words.line}>
      <table>
        ${heads(desk, desk.words.line, desk.words.difference)}
        <tbody>
          ${all
            .filter(({ change }) => change !== 'same')
            .map(({ title, because, before, after, difference }) =>
              row(
                english(html`${title}<br /><span class="soft">${because.join('; ')}</span>`),
                ...[before, after, difference].map((amount) => money(amount, desk)),
              ),
            )}
        </tbody>
      </table>
    </div>`;
