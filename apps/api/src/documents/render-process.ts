import { render, type RenderOrder, type Rendered } from './render.js';

/** What a press sends back for each order. */
export type Delivery =
  { readonly ok: true; readonly rendered: Rendered } | { readonly ok: false; readonly message: string };

/** The entry of a press: one order in, one delivery out, until the service lets it go. */
process.on('message', (order: RenderOrder) => {
  void delivered(order).then((delivery) => process.send?.(delivery));
});

async function delivered(order: RenderOrder): Promise<Delivery> {
  try {
    return { ok: true, rendered: await render(order) };
  } catch (failure) {
    return { ok: false, message: failure instanceof Error ? failure.message : String(failure) };
  }
}
