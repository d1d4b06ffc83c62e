import type { Comparison } from './report.js';

/** Hours of one job against its area, as told and as ours. */
export interface Plotted {
  readonly number: number;
  readonly m2: number;
  readonly isStated: boolean;
  readonly hours: Comparison;
}

const WIDE = 720;
const HIGH = 460;
const MARGIN = { left: 56, right: 16, top: 16, bottom: 44 } as const;
const areas = { from: 0.01, upTo: 50 } as const;
const hoursShown = { from: 1, upTo: 500 } as const;

const along = (value: number, { from, upTo }: { readonly from: number; readonly upTo: number }): number =>
  Math.log(value / from) / Math.log(upTo / from);
const across = (m2: number): number => MARGIN.left + along(m2, areas) * (WIDE - MARGIN.left - MARGIN.right);
const up = (h: number): number =>
  HIGH -
  MARGIN.bottom -
  along(Math.max(h, hoursShown.from), hoursShown) * (HIGH - MARGIN.top - MARGIN.bottom);
const at = (value: number): string => value.toFixed(1);

/** Both axes logarithmic; for each job our P10 to P90 as a broad bar with P50 across it, and what was told as a line beside it. */
export const hoursPlot = (jobs: readonly Plotted[]): string =>
  [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${WIDE} ${HIGH}" font-family="sans-serif" font-size="11">`,
    '<title>Hours against area: what was told and our P10 to P90</title>',
    `<rect width="${WIDE}" height="${HIGH}" fill="white"/>`,
    ...[0.01, 0.03, 0.1, 0.3, 1, 3, 10, 30].map((m2) => gridLine(across(m2), `${m2}`)),
    ...[1, 3, 10, 30, 100, 300].map((h) => levelLine(up(h), `${h}`)),
    `<text x="${WIDE / 2}" y="${HIGH - 8}" text-anchor="middle">m2 of core; of painted deck for a finish told by itself</text>`,
    `<text x="14" y="${HIGH / 2}" text-anchor="middle" transform="rotate(-90 14 ${HIGH / 2})">hours counted by the source</text>`,
    ...jobs.map(jobMark),
    ...legend(),
    '</svg>',
    '',
  ].join('\n');

const gridLine = (x: number, label: string): string =>
  `<path d="M${at(x)} ${MARGIN.top}V${HIGH - MARGIN.bottom}" stroke="#ddd"/><text x="${at(x)}" y="${HIGH - MARGIN.bottom + 16}" text-anchor="middle">${label}</text>`;
const levelLine = (y: number, label: string): string =>
  `<path d="M${MARGIN.left} ${at(y)}H${WIDE - MARGIN.right}" stroke="#ddd"/><text x="${MARGIN.left - 6}" y="${at(y + 4)}" text-anchor="end">${label}</text>`;

function jobMark({ number, m2, isStated, hours: { told, ours, isInside } }: Plotted): string {
  const x = across(m2) + ((number % 3) - 1) * 7;
  const [low, high] = [up(told.low), up(told.high)];
  const colour = isInside ? '#1b4965' : '#b3261e';
  const dash = isStated ? '' : ' stroke-dasharray="3 2"';
  return [
    `<rect x="${at(x - 3)}" y="${at(up(ours.p90))}" width="6" height="${at(up(ours.p10) - up(ours.p90))}" fill="#bcd4de"/>`,
    `<path d="M${at(x - 3)} ${at(up(ours.p50))}h6" stroke="#5c7c8a"/>`,
    `<path d="M${at(x)} ${at(low + 1)}V${at(high - 1)}" stroke="${colour}" stroke-width="2"${dash}/>`,
    `<path d="M${at(x - 4)} ${at(high)}h8" stroke="${colour}" stroke-width="2"/>`,
    `<text x="${at(x + 6)}" y="${at(high - 3)}" fill="${colour}">${number}</text>`,
  ].join('');
}

const legend = (): readonly string[] => [
  `<rect x="${MARGIN.left + 10}" y="22" width="6" height="12" fill="#bcd4de"/><text x="${MARGIN.left + 22}" y="32">ours, P10 to P90, P50 across</text>`,
  `<path d="M${MARGIN.left + 13} 40v12" stroke="#1b4965" stroke-width="2"/><text x="${MARGIN.left + 22}" y="50">told, inside; red outside; dashed where the area is a reader's bracket</text>`,
];
