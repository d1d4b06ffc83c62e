import { nothing, svg, type SVGTemplateResult } from 'lit';
import type { EstimatePreview } from 'kingplank-sdk';
import { toPx, type Frame } from '../model/frame.js';
import { cornersOf } from '../model/hit.js';
import { unitOf, writeLength, type Units } from '../model/lengths.js';
import {
  fittingsOf,
  holesOf,
  outlineOf,
  placeOf,
  readingsOf,
  ringOf,
  supportsOf,
  zonesOf,
  type Fitting,
  type Place,
  type Reading,
  type Ring,
} from '../model/record.js';
import type { Drawn } from '../model/edits.js';
import type { SheetState } from './sheet.js';

/** The deck seen from above, bow to the right, as a drawing office lays it out. */
export function planOf(state: SheetState): SVGTemplateResult {
  const { record, frame, units, preview } = state;
  const shown = 'last' in preview ? preview.last : undefined;
  return svg`
    ${hatching()}
    ${centreline(frame)}
    ${outlineOf(record).length > 1 ? panel(state) : nothing}
    ${holesOf(record).map((hole) => opening(frame, hole))}
    ${supportsOf(record).map(({ from, to }) => line(frame, placeOf(from), placeOf(to), 'support'))}
    ${zonesOf(record).map(({ id, outline }) => zone(frame, id, ringOf(outline)))}
    ${shown === undefined ? nothing : sawLines(frame, shown)}
    ${readingsOf(record).map((reading) => readingMark(frame, reading))}
    ${fittingsOf(record).map((fitting) => fittingMark(frame, fitting))}
    ${dimensions(frame, outlineOf(record), units)}
    ${chosenMark(state)}
    ${penMark(state)}
    ${photographMarks(state)}
    ${askedMarks(state)} ${nextMark(state)}
    ${cursorMark(state)}
    ${bowMark(frame, state.language.words.bow)}`;
}

const hatching = (): SVGTemplateResult => svg`
  <defs>
    <pattern id="bad" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <line class="hatch" x1="0" y1="0" x2="0" y2="7"></line>
    </pattern>
  </defs>`;

const pointsOf = (frame: Frame, ring: Ring): string =>
  ring.map((place) => toPx(frame, place).join(',')).join(' ');

function line(frame: Frame, from: Place, to: Place, name: string): SVGTemplateResult {
  const [[x1, y1], [x2, y2]] = [toPx(frame, from), toPx(frame, to)];
  return svg`<line class=${name} x1=${x1} y1=${y1} x2=${x2} y2=${y2}></line>`;
}

function centreline(frame: Frame): SVGTemplateResult {
  const y = toPx(frame, [0, 0])[1];
  return svg`<line class="centreline" x1="10" y1=${y} x2=${frame.widthPx - 10} y2=${y}></line>`;
}

const panel = ({ record, frame }: SheetState): SVGTemplateResult =>
  svg`<polygon class="panel" points=${pointsOf(frame, outlineOf(record))}></polygon>`;

/** An opening is crossed out from corner to corner. */
function opening(frame: Frame, ring: Ring): SVGTemplateResult {
  return svg`<polygon class="hole" points=${pointsOf(frame, ring)}></polygon>
    ${ring.length === 4 ? [line(frame, ring[0], ring[2], 'cross'), line(frame, ring[1], ring[3], 'cross')] : nothing}`;
}

function zone(frame: Frame, id: string, ring: Ring): SVGTemplateResult {
  const [x, y] = toPx(frame, middleOf(ring));
  return svg`<polygon class="zone" fill="url(#bad)" points=${pointsOf(frame, ring)}></polygon>
    ${label(x, y + 22, id, 'zone-name')}`;
}

function middleOf(ring: Ring): Place {
  const sum = ring.reduce<Place>(([sx, sy], [x, y]) => [sx + x, sy + y], [0, 0]);
  return [sum[0] / Math.max(1, ring.length), sum[1] / Math.max(1, ring.length)];
}

const label = (x: number, y: number, text: string, name: string): SVGTemplateResult =>
  svg`<text class=${name} x=${x} y=${y}>${text}</text>`;

const sawLines = (frame: Frame, { openings }: EstimatePreview): readonly SVGTemplateResult[] =>
  openings.map(
    ({ sawLine }) =>
      svg`<polygon class="saw" part="saw-line" points=${pointsOf(frame, ringOf(sawLine))}></polygon>`,
  );

function fittingMark(frame: Frame, { id, at, isLeaking }: Fitting): SVGTemplateResult {
  const [x, y] = toPx(frame, placeOf(at));
  return svg`<g class=${isLeaking === true ? 'fitting leaking' : 'fitting'}>
    <circle cx=${x} cy=${y} r="7"></circle>
    <path d="M${x - 11} ${y}h22M${x} ${y - 11}v22"></path>
    ${label(x + 12, y - 8, id, 'name')}</g>`;
}

/** A sharp tap is an open ring, a dull one half filled, a void filled; a plug is a square; a meter reading its figure. */
function readingMark(frame: Frame, reading: Reading): SVGTemplateResult {
  const [x, y] = toPx(frame, placeOf(reading.at));
  switch (reading.kind) {
    case 'sounding':
      return svg`<g class="reading ${reading.sound}"><circle cx=${x} cy=${y} r="5"></circle>
        ${reading.sound === 'dull' ? svg`<path d="M${x} ${y - 5}a5 5 0 0 1 0 10z"></path>` : nothing}</g>`;
    case 'plug':
      return svg`<g class="plug ${reading.condition}">
        <rect x=${x - 6} y=${y - 6} width="12" height="12"></rect><circle cx=${x} cy=${y} r="2.5"></circle></g>`;
    case 'moisture':
      return label(x, y + 4, String(reading.value), 'meter');
  }
}

/** Overall length below and width behind, with their witness lines. */
function dimensions(frame: Frame, outline: Ring, units: Units): SVGTemplateResult | typeof nothing {
  if (outline.length < 3) return nothing;
  const [xs, ys] = [outline.map(([x]) => x), outline.map(([, y]) => y)];
  const [left, top] = toPx(frame, [Math.min(...xs), Math.min(...ys)]);
  const [right, bottom] = toPx(frame, [Math.max(...xs), Math.max(...ys)]);
  const written = (mm: number): string => `${writeLength(mm, units)} ${unitOf(units)}`;
  const [below, before] = [bottom + 22, left - 22];
  return svg`<g class="dimension" aria-hidden="true">
    <path d="M${left} ${bottom + 5}V${below + 5}M${right} ${bottom + 5}V${below + 5}M${left} ${below}H${right}"></path>
    <path d="M${left - 5} ${top}H${before - 5}M${left - 5} ${bottom}H${before - 5}M${before} ${top}V${bottom}"></path>
    <path class="tick" d="M${left - 4} ${below + 4}l8 -8M${right - 4} ${below + 4}l8 -8M${before - 4} ${top + 4}l8 -8M${before - 4} ${bottom + 4}l8 -8"></path>
    ${label((left + right) / 2, below - 5, written(Math.max(...xs) - Math.min(...xs)), 'size')}
    <text class="size" transform="translate(${before - 5} ${(top + bottom) / 2}) rotate(-90)">${written(Math.max(...ys) - Math.min(...ys))}</text></g>`;
}

function chosenMark({ chosen, record, frame }: SheetState): SVGTemplateResult | typeof nothing {
  if (chosen === undefined) return nothing;
  const corners = cornersOf(record, chosen);
  if (corners.length === 0) return ringRound(frame, placeOfDrawn(record, chosen), 'chosen');
  return svg`${corners.map((corner) => {
    const [x, y] = toPx(frame, corner);
    return svg`<rect class="handle" x=${x - 5} y=${y - 5} width="10" height="10"></rect>`;
  })}`;
}

function placeOfDrawn(record: SheetState['record'], { kind, index }: Drawn): Place | undefined {
  const list = kind === 'fitting' ? fittingsOf(record) : kind === 'reading' ? readingsOf(record) : [];
  const found = list[index];
  return found === undefined ? undefined : placeOf(found.at);
}

function ringRound(frame: Frame, at: Place | undefined, name: string): SVGTemplateResult | typeof nothing {
  if (at === undefined) return nothing;
  const [x, y] = toPx(frame, at);
  return svg`<circle class=${name} cx=${x} cy=${y} r="14"></circle>`;
}

function penMark({ pen, frame, cursor }: SheetState): SVGTemplateResult | typeof nothing {
  if (pen.corners.length === 0) return nothing;
  const ring = cursor === undefined ? pen.corners : [...pen.corners, cursor];
  const [x, y] = toPx(frame, pen.corners[0]);
  return svg`<polyline class="pen" points=${pointsOf(frame, ring)}></polyline>
    <circle class="pen-start" cx=${x} cy=${y} r="7"></circle>`;
}

/** Photographs with their numbers: those of the service, those of this device behind them, and the one being placed. */
function photographMarks({ filed, kept, pen, frame }: SheetState): readonly SVGTemplateResult[] {
  const last = Math.max(0, ...filed.map(({ number }) => number));
  const marks = [
    ...filed.map(({ number, at, directionDeg }) => ({
      text: String(number),
      at: at === undefined ? undefined : placeOf(at),
      directionDeg,
    })),
    ...kept.map(({ spot }, index) => ({ text: String(last + 1 + index), ...spot })),
    { text: '', ...pen.spot },
  ];
  return marks.flatMap(({ text, at, directionDeg }) =>
    at === undefined ? [] : [photographMark(toPx(frame, at), text, directionDeg)],
  );
}

/** A ring where somebody stood, and the two lines between which the picture lies. */
const photographMark = (
  [x, y]: Place,
  text: string,
  directionDeg: number | undefined,
): SVGTemplateResult => svg`<g class="photograph">
  ${directionDeg === undefined ? nothing : svg`<path d="M0 0l22 -10M0 0l22 10" transform="translate(${x} ${y}) rotate(${directionDeg})"></path>`}
  <circle cx=${x} cy=${y} r="9"></circle>${label(x, y + 4, text, 'asked-number')}</g>`;

/** The places that were asked for, numbered as in the list beside the plan. */
const askedMarks = ({ tab, nextReadings, frame }: SheetState): readonly SVGTemplateResult[] =>
  tab !== 'tap' || typeof nextReadings !== 'object'
    ? []
    : nextReadings.readings.map(({ at, number }) => {
        const [x, y] = toPx(frame, at);
        return svg`<g class="asked"><circle cx=${x} cy=${y} r="9"></circle>
          ${label(x, y + 4, String(number), 'asked-number')}</g>`;
      });

const nextMark = ({ tab, next, frame }: SheetState): SVGTemplateResult | typeof nothing =>
  tab === 'tap' ? ringRound(frame, next, 'next') : nothing;

function cursorMark({ cursor, frame }: SheetState): SVGTemplateResult | typeof nothing {
  if (cursor === undefined) return nothing;
  const [x, y] = toPx(frame, cursor);
  return svg`<path class="cursor" d="M${x - 16} ${y}h32M${x} ${y - 16}v32"></path>`;
}

const bowMark = (
  { widthPx }: Frame,
  word: string,
): SVGTemplateResult => svg`<g class="bow" aria-hidden="true">
  <path d="M${widthPx - 62} 18h44l-7 -4.500m7 4.500l-7 4.500"></path>
  <text class="size end" x=${widthPx - 68} y="22">${word}</text></g>`;
