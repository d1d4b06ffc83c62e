import { flow, paragraph, type PhotographBlock, type Section } from './document.js';
import type { Photograph, Picture, ReportRequest } from './request.js';

/** Photographs behind what is signed, two thirds of the page wide at most, so that two stand on a page. */
const LARGEST_MM = { width: 120, height: 88 } as const;

export function photographSections({ issue: { photographs }, reader }: ReportRequest): readonly Section[] {
  const shown = photographs.flatMap((one) =>
    one.picture === undefined ? [] : [{ ...one, picture: one.picture }],
  );
  if (shown.length === 0) return [];
  const said = reader.words.body;
  return [
    flow('photographs', 1, said.photographs, [
      paragraph(said.photographsLead),
      ...shown.map((one) => blockOf(one, said.photograph(String(one.number), one.caption))),
    ]),
  ];
}

function blockOf(
  { number, picture: { type, base64, widthPx, heightPx } }: Photograph & { readonly picture: Picture },
  caption: string,
): PhotographBlock {
  const mmPerPx = Math.min(LARGEST_MM.width / widthPx, LARGEST_MM.height / heightPx);
  return {
    kind: 'photograph',
    number,
    caption,
    type,
    base64,
    widthMm: widthPx * mmPerPx,
    heightMm: heightPx * mmPerPx,
  };
}
