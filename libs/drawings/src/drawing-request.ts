import type { Reader } from './reader.js';
import type { SheetFormat } from './sheet/formats.js';
import type { TitleBlock } from './sheet/furniture.js';

/** How a drawing is wanted: on what, for whom, and what its title block says. */
export interface DrawingRequest {
  readonly format: SheetFormat;
  readonly reader: Reader;
  readonly block: TitleBlock;
}
