import { render, type RenderOrder, type Rendered } from './render.js';

/** What a press sends back for each order. */
export type Delivery = { readonly ok: true; readonly rendered: Rendered } | { readonly ok: false; readonly message: string };

/** The entry of a press: one order in, one delivery out, until the service lets it go. */
process.on('message', (order: RenderOrder) => {
  process.send?.(delivered(order));
});

function delivered(order: RenderOrder): Delivery {
  try {
    return { ok: true, rendered: render(order) };
  } catch (failure) {
    return { ok: false, message: failure instanceof Error ? failure.message : String(failure) };
  }
}
