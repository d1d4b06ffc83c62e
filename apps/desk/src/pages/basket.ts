import { freshKey, keep } from 'kingplank-deck/page';
import type { EstimateBasket } from 'kingplank-sdk';
import { html, nothing, type TemplateResult } from 'lit';
import { money, textFile, trying, type Desk, type Page } from '../desk.js';

/** The packs for one estimate or several in one order, with an order form for each supplier. */
export function basketPage(desk: Desk, list: string): Page {
  const [first, ...together] = list.split(',');
  let basket: EstimateBasket | undefined;
  void trying(desk, async () => {
    basket = await desk.client.estimates.basket(first, together.length === 0 ? {} : { together }, {
      idempotencyKey: freshKey(),
      timeoutMs: 60_000,
    });
  });
  return {
    view: () =>
      html`<h1>${desk.words.basket}</h1>
        ${basket === undefined ? html`<p>${desk.words.working}</p>` : basketView(desk, basket, first, together)}`,
  };
}

function basketView(
  desk: Desk,
  basket: EstimateBasket,
  id: string,
  together: readonly string[],
): TemplateResult {
  const { words } = desk;
  return html`
    ${basket.warnings.map((warning) => html`<p class="fault" lang="en">${warning}</p>`)}
    <div class="scroll" tabindex="0" role="region" aria-label=${words.packs}>
      <table>
        <thead>
          <tr>
            <th scope="col">${words.packs}</th>
            <th scope="col">${words.supplier}</th>
            <th scope="col" class="number">${words.perPack}</th>
            <th scope="col" class="number">${words.price}</th>
          </tr>
        </thead>
        <tbody lang="en">
          ${basket.lines.map(
            (line) =>
              html`<tr>
                <td>${line.packCount} × ${line.name}</td>
                <td>${line.supplier}</td>
                <td class="number">${money(line.unitPrice, desk)}</td>
                <td class="number">${money(line.amount, desk)}</td>
              </tr>`,
          )}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row" colspan="3">${words.total}</th>
            <td class="number">${money(basket.total, desk)}</td>
          </tr>
        </tfoot>
      </table>
    </div>
    ${
      basket.missing.length === 0
        ? nothing
        : html`<p class="fault">
            ${words.missing}: ${basket.missing.map(({ material }) => material).join(', ')}
          </p>`
    }
    <h2>${words.orderForm}</h2>
    <div class="row">
      ${basket.orders.map(
        ({ supplier, name, total }) =>
          html`<button type="button" @click=${() => void keepOrder(desk, id, together, supplier)}>
            ${name} · ${money(total, desk)}
          </button>`,
      )}
      <button type="button" @click=${() => void keepOrder(desk, id, together)}>${words.asCsv}</button>
    </div>
    ${together.length === 0 ? nothing : sharesOf(desk, basket)}
  `;
}

const sharesOf = (desk: Desk, { byEstimate }: EstimateBasket): TemplateResult =>
  html`<h2>${desk.words.ofEach}</h2>
    <ul>
      ${byEstimate.map(
        ({ estimate, amount }) =>
          html`<li>
            <a href=${`#/estimates/${estimate}`}>${estimate.slice(0, 8)}</a> ${money(amount, desk)}
          </li>`,
      )}
    </ul>`;

/** The whole list as CSV, or the order to one supplier as XML; for several estimates the same choice is sent again. */
const keepOrder = (desk: Desk, id: string, together: readonly string[], supplier?: string): Promise<void> =>
  trying(desk, async () => {
    const isOrder = supplier !== undefined;
    const type = isOrder ? 'application/xml' : 'text/csv';
    const text = await desk.client.request(
      'post',
      '/v1/estimates/{id}/basket',
      {
        path: { id },
        accept: type,
        body: { ...(together.length === 0 ? {} : { together }), ...(isOrder ? { supplier } : {}) },
      },
      { idempotencyKey: freshKey(), timeoutMs: 60_000 },
    );
    keep(textFile(String(text), type, isOrder ? `order-${supplier}.xml` : 'packs.csv'));
  });
