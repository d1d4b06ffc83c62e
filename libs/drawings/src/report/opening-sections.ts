import { saidCorner } from '../deck/datum-dimensions.js';
import { listedCorners } from '../deck/opening-plan.js';
import { setCorner, settingOut } from '../deck/setting-out.js';
import type { Place } from '../deck/place.js';
import { areaText, dimensionText, lengthText, percentText, upTo, type Reader } from '../reader.js';
import type { Reading } from '#lib/extent';
import {
  facts,
  flow,
  list,
  narrow,
  numeric,
  paragraph,
  row,
  table,
  wide,
  type Block,
  type Callout,
  type Column,
  type Section,
  type Table,
} from './document.js';
import { defectMapFigure, openingPlanFigure } from './figures.js';
import { panelOf } from './inputs.js';
import type { ReportRequest } from './request.js';
import { codeText, rangeText, word } from './said.js';

const MOST_READINGS = 120;

/** What the extent rests on, with every reading that was used. */
export function basisSections(request: ReportRequest): readonly Section[] {
  const {
    estimate: { scope },
    record,
    reader,
  } = request;
  const said = reader.words.basis;
  const readings = record.survey?.readings ?? [];
  const rows: readonly (readonly [string, string])[] = [
    [said.evidence, word(said.grades, scope.evidence)],
    [said.damaged, rangeText(reader, scope.damagedAreaM2, (area) => areaText(reader, area))],
    ...(readings.length === 0 ? [] : [[said.readings, upTo(reader, readings.length, 0)] as const]),
    ...scope.contours.map(
      ({ probability, areaM2 }) =>
        [said.contour(percentText(reader, probability)), areaText(reader, areaM2)] as const,
    ),
    ...(record.cause === undefined ? [] : [[said.cause, causeText(request)] as const]),
  ];
  return [
    flow('basis', 1, reader.words.sections.basis, [facts(reader.words.sections.basis, rows)]),
    ...mathLimits(request),
    ...mapSections(request),
  ];
}

function causeText({ record, reader }: ReportRequest): string {
  const cause = word(reader.words.basis.causes, record.cause?.cause ?? 'unknown');
  const note = record.cause?.note;
  return note === undefined ? cause : `${cause}: ${note}`;
}

/** What nobody looked at stands in the body; here, what the calculation leaves out, where its own annex does not say it. */
function mathLimits({ estimate: { panel }, annexes, reader }: ReportRequest): readonly Section[] {
  const limits = panel?.limits ?? [];
  return limits.length === 0 || annexes.includes('structure')
    ? []
    : [flow('limits', 2, reader.words.sections.mathLimits, [list(limits)])];
}

/** The body shows the deck with its zones and plugs; the map stands here where it has more to show. */
function mapSections(request: ReportRequest): readonly Section[] {
  const { estimate, record, reader } = request;
  const read = (record.survey?.readings ?? []).some(({ kind }) => kind !== 'plug');
  const isMore = read || (estimate.scope.nextReadings?.readings ?? []).length > 0;
  return isMore ? [flow('defect', 2, reader.words.sections.defect, [defectMapFigure(request)])] : [];
}

/** Where to read next, as numbered on the map above, and whether that pays. */
export function nextSections({ estimate: { scope }, reader }: ReportRequest): readonly Section[] {
  const { nextReadings: next } = scope;
  if (next === undefined) return [];
  const { columns, basis } = reader.words;
  const advice = paragraph(next.advice.text);
  if (next.readings.length === 0) return [flow('next-readings', 1, basis.nextTitle, [advice])];
  return [
    flow('next-readings', 1, basis.nextTitle, [
      advice,
      table(
        basis.nextTable,
        [
          numeric(columns.number),
          numeric('x'),
          numeric('y'),
          wide(columns.kind),
          numeric(basis.chance),
          numeric(basis.minutes),
        ],
        next.readings.map(({ number, kind, at, chance, minutes }) =>
          row(
            String(number),
            ...placeTexts(at, reader),
            basis.readingKinds[kind],
            percentText(reader, chance),
            upTo(reader, minutes, 1),
          ),
        ),
      ),
    ]),
  ];
}

const placeTexts = ([x, y]: Place, reader: Reader): readonly [string, string] => {
  const unit = reader.units === 'us' ? '' : ' mm';
  return [`${dimensionText(reader, x)}${unit}`, `${dimensionText(reader, y)}${unit}`];
};

/** Every reading, behind the report itself: the map above shows the same. */
export function readingSections({ record, reader }: ReportRequest): readonly Section[] {
  const readings = record.survey?.readings ?? [];
  return readings.length === 0
    ? []
    : [flow('readings', 1, reader.words.sections.readings, readingTable(readings, reader))];
}

function readingTable(readings: readonly Reading[], reader: Reader): readonly Block[] {
  const { columns, basis } = reader.words;
  const rows = readings
    .slice(0, MOST_READINGS)
    .map((reading, index) =>
      row(
        String(index + 1),
        ...placeTexts(reading.at, reader),
        basis.readingKinds[reading.kind],
        `${resultText(reading, reader)}${reading.isUnreliable === true ? ` (${basis.doubtful})` : ''}`,
      ),
    );
  return [
    table(
      basis.readingTable,
      [numeric(columns.number), numeric('x'), numeric('y'), narrow(columns.kind), wide(columns.result)],
      rows,
    ),
    ...(readings.length > MOST_READINGS
      ? [paragraph(basis.moreReadings(upTo(reader, MOST_READINGS, 0), upTo(reader, readings.length, 0)))]
      : []),
  ];
}

function resultText(reading: Reading, reader: Reader): string {
  const { basis } = reader.words;
  switch (reading.kind) {
    case 'sounding':
      return basis.hammer[reading.sound];
    case 'moisture':
      return upTo(reader, reading.value, 2);
    case 'plug':
      return [
        basis.plug[reading.condition],
        ...(reading.moisturePercent === undefined ? [] : [`${upTo(reader, reading.moisturePercent, 1)} %`]),
      ].join(', ');
  }
}

export function scopeSections(request: ReportRequest): readonly Section[] {
  const {
    estimate: { scope, core },
    reader,
  } = request;
  const said = reader.words.scope;
  /** What there is none of is not listed. */
  const areas = [
    [said.panelArea, scope.panel.areaM2],
    [said.opened, scope.openedAreaM2],
    [said.coreOut, scope.coreOutAreaM2],
    [said.coreStays, scope.coreStaysAreaM2],
    [said.filledSolid, core?.solidAreaM2 ?? 0],
    [said.retained, scope.retainedAreaM2],
    [said.undercut, scope.undercutAreaM2],
    [said.taperBand, scope.taperBandM2],
  ] as const;
  return [
    flow('scope', 1, reader.words.sections.scope, [
      facts(
        said.areas,
        areas.filter(([, areaM2]) => areaM2 > 0).map(([name, areaM2]) => [name, areaText(reader, areaM2)]),
      ),
    ]),
    flow('included', 2, reader.words.sections.included, [
      scope.included.length === 0 ? paragraph(reader.words.report.none) : list(scope.included),
    ]),
    ...(scope.openings.length === 0
      ? []
      : [
          flow('openings', 2, reader.words.sections.openings, [
            openingPlanFigure(request),
            openingTable(request),
            ...cornerTable(request),
          ]),
        ]),
    ...(scope.fittings.length === 0
      ? []
      : [flow('fittings', 2, reader.words.sections.fittings, [fittingTable(request)])]),
    ...(scope.findings.length === 0
      ? []
      : [flow('notices', 2, reader.words.sections.findings, findingCallouts(request))]),
    flow('method', 2, reader.words.sections.method, [methodTable(request)]),
  ];
}

function openingTable({ estimate: { scope }, reader }: ReportRequest): Table {
  const said = reader.words.columns;
  return table(
    reader.words.sections.openings,
    [
      narrow(said.opening),
      numeric(said.area),
      numeric(said.cutLength),
      numeric(said.cutDepth),
      numeric(said.undercut),
      numeric(said.coreStays),
      wide(said.reason),
    ],
    scope.openings.map(({ label, areaM2, cutLengthM, cutDepthMm, undercutAreaM2, coreStaysAreaM2, reason }) =>
      row(
        label,
        areaText(reader, areaM2),
        lengthText(reader, cutLengthM * 1000),
        cutDepthMm === undefined ? reader.words.report.notEstablished : lengthText(reader, cutDepthMm, 1),
        areaText(reader, undercutAreaM2),
        areaText(reader, coreStaysAreaM2),
        reason,
      ),
    ),
  );
}

/** Corner by corner as a person with two tapes marks them out, and the two lengths that prove each of them. */
export function cornerTable(request: ReportRequest, only?: string): readonly Block[] {
  const {
    estimate: { scope },
    reader,
  } = request;
  const { columns, scope: said } = reader.words;
  const openings = scope.openings.filter(({ label }) => only === undefined || label === only);
  const radii = [...new Set(openings.map(({ cornerRadiusMm }) => cornerRadiusMm))];
  const places = openings.flatMap((opening) =>
    listedCorners(opening).map((corner, index) => ({
      named: [opening.label, String(index + 1)],
      at: corner,
    })),
  );
  const { way } = settingOut(panelOf(request).outer);
  return setOutBlocks(request, {
    caption: said.corners[way],
    names: [narrow(columns.opening), numeric(columns.corner)],
    places,
    notes: radii.map((radius) => said.roundCorners(lengthText(reader, radius))),
  });
}

/** Where fittings and corners of bad core lie on a deck that stays closed, from the same two tapes. */
export function placeTable(request: ReportRequest): readonly Block[] {
  const { scope } = request.estimate;
  const { columns, jobPack } = request.reader.words;
  return setOutBlocks(request, {
    caption: jobPack.places,
    names: [wide(columns.what), numeric(columns.corner)],
    places: [
      ...scope.fittings.map(({ id, at }) => ({ named: [id, ''], at })),
      ...scope.zones.flatMap(({ id, outline }) =>
        outline.length > MOST_ZONE_CORNERS
          ? []
          : outline.map((corner, index) => ({ named: [id, String(index + 1)], at: corner })),
      ),
    ],
    notes: [],
  });
}

/** A zone with more is a curve that nobody sets out; the plan shows it. */
const MOST_ZONE_CORNERS = 12;

interface SetOut {
  readonly caption: string;
  readonly names: readonly [Column, Column];
  readonly places: readonly { readonly named: readonly string[]; readonly at: Place }[];
  readonly notes: readonly string[];
}

function setOutBlocks(request: ReportRequest, { caption, names, places, notes }: SetOut): readonly Block[] {
  const { reader } = request;
  const { columns, scope: said } = reader.words;
  const out = settingOut(panelOf(request).outer);
  const unit = reader.units === 'us' ? 'ft in' : 'mm';
  if (places.length === 0) return [];
  return [
    table(
      caption,
      [
        ...names,
        numeric(columns.forward(unit)),
        numeric(out.way === 'edges' ? columns.fromPort(unit) : columns.offset(unit)),
        numeric(columns.checkPort(unit)),
        numeric(columns.checkStarboard(unit)),
      ],
      places.map(({ named, at }) =>
        row(
          ...named,
          ...saidCorner(at, out, reader),
          ...setCorner(at, out).checksMm.map((check) => dimensionText(reader, check)),
        ),
      ),
    ),
    paragraph([said.cornersChecked, ...notes].join(' ')),
  ];
}

export function fittingTable({ estimate: { scope }, reader }: ReportRequest): Table {
  const { columns, scope: said } = reader.words;
  return table(
    reader.words.sections.fittings,
    [
      wide(columns.fitting),
      narrow(columns.kind),
      narrow(columns.place),
      numeric(columns.holes),
      wide(columns.work, 2),
    ],
    scope.fittings.map(({ id, kind, where, holes, work, isHighlyLoaded }) => ({
      ...row(
        id,
        word(said.fittingKinds, kind),
        word(said.where, where),
        upTo(reader, holes, 0),
        work.map((one) => word(said.work, one)).join(', '),
      ),
      ...(isHighlyLoaded ? { note: said.highlyLoaded } : {}),
    })),
  );
}

const severityOf = { stop: 'danger', warn: 'warning', note: 'note' } as const;

const findingCallouts = ({ estimate: { scope }, reader }: ReportRequest): readonly Callout[] =>
  scope.findings.map(({ severity, text }) => ({
    kind: 'callout',
    severity: severityOf[severity],
    label: reader.words.scope.severities[severity],
    text,
    small: '',
  }));

function methodTable({ estimate: { scope, core, process }, reader }: ReportRequest): Table {
  const said = reader.words.columns;
  const names = {
    ...reader.words.scope.choices,
    ...(core === undefined ? {} : { [core.material]: core.materialName }),
    [process.resin.code]: process.resin.name,
  };
  return table(
    reader.words.sections.method,
    [wide(said.choice), wide(said.value), wide(said.reason, 2)],
    scope.method.map(({ choice, value, reason }) => row(choice, codeText(names, value), reason)),
  );
}
