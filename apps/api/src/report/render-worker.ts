import { render, type RenderOrder, type Rendered } from './render.js';

/** The entry of a worker thread: the pool calls what its file names `run`. */
export const run = (order: RenderOrder): Rendered => render(order);
