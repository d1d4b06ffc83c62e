import type { Comparison } from 'kingplank-sdk';
import { html, type TemplateResult } from 'lit';
import { keepFile, money, number, textFile, trying, type Desk, type Page } from '../desk.js';

/** What changed between two estimates, figure by figure and line by line. */
export function comparePage(desk: Desk, id: string, before: string): Page {
  let found: Comparison | undefined;
  void trying(desk, async () => {
    found = await desk.client.estimates.compare(id, { with: before });
  });
  const keepCsv = (): Promise<void> =>
    trying(desk, async () => {
      const csv = await desk.client.estimates.comparisonCsv(id, { with: before });
      keepFile(textFile(csv, 'text/csv'), `comparison-${id.slice(0, 8)}.csv`);
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

const figures = (desk: Desk, { figures: all, totals }: Comparison): TemplateResult =>
  html`<div class="scroll" tabindex="0" role="region" aria-label=${desk.words.figure}>
    <table>
      ${heads(desk, desk.words.figure, desk.words.difference)}
      <tbody>
        ${all.map(
          ({ name, unit, before, after }) =>
            html`<tr>
              <td lang="en">${name}, ${unit}</td>
              <td class="number">${number(before, desk, 2)}</td>
              <td class="number">${number(after, desk, 2)}</td>
              <td class="number">${number(after - before, desk, 2)}</td>
            </tr>`,
        )}
        ${totals.map(
          ({ name, before, after, difference }) =>
            html`<tr>
              <td lang="en">${name}</td>
              <td class="number">${money(before, desk)}</td>
              <td class="number">${money(after, desk)}</td>
              <td class="number">${money(difference, desk)}</td>
            </tr>`,
        )}
      </tbody>
    </table>
  </div>`;

const lines = (desk: Desk, { lines: all }: Comparison): TemplateResult =>
  html`<h2>${desk.words.line}</h2>
    <div class="scroll" tabindex="0" role="region" aria-label=${desk.words.line}>
      <table>
        ${heads(desk, desk.words.line, desk.words.difference)}
        <tbody lang="en">
          ${all
            .filter(({ change }) => change !== 'same')
            .map(
              ({ title, because, before, after, difference }) =>
                html`<tr>
                  <td>${title}<br /><span class="soft">${because.join('; ')}</span></td>
                  <td class="number">${money(before, desk)}</td>
                  <td class="number">${money(after, desk)}</td>
                  <td class="number">${money(difference, desk)}</td>
                </tr>`,
            )}
        </tbody>
      </table>
    </div>`;
