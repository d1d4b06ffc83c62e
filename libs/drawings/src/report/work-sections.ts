import { areaMm2, leastRectangle, rotatePoint, type LeastRectangle } from '#lib/geometry';
import type { Outline } from '../deck/place.js';
import { loadInWords } from '#lib/panel';
import type { Check, CureMilestones, PanelState, WeatherSection, WeatherStepSection } from '#lib/estimate';
import {
  areaText,
  fixed,
  lengthText,
  massText,
  metresText,
  percentText,
  temperatureText,
  upTo,
  volumeText,
  type Reader,
} from '../reader.js';
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
  type Row,
  type Section,
  type Table,
} from './document.js';
import {
  chartFigure,
  ganttFigures,
  piecePlanFigure,
  plyPlanFigure,
  sectionFigure,
  sheetFigures,
} from './figures.js';
import { citedIn } from './cited.js';
import type { OpenedRequest, ReportRequest } from './request.js';
import {
  codeText,
  dateText,
  daysText,
  figureText,
  momentText,
  hoursText,
  rangeText,
  timeOfDayText,
  valueText,
  word,
} from './said.js';

export function coreSection(request: OpenedRequest): Section {
  const {
    estimate: { core },
    reader,
  } = request;
  const said = reader.words.core;
  const rows: readonly (readonly [string, string])[] = [
    [said.material, core.materialName],
    [said.cavity, lengthText(reader, core.cavityMm, 1)],
    [said.stackHeight, lengthText(reader, core.stackMm, 1)],
    [said.flush, lengthText(reader, core.flushMm, 1)],
    [said.net, areaText(reader, core.netAreaM2, 3)],
    [said.waste, areaText(reader, core.wasteAreaM2, 3)],
    [said.purchase, areaText(reader, core.purchaseAreaM2, 3)],
    ...core.wasteByCause.map(
      ({ cause, areaM2 }) => [said.wasteCause(cause), areaText(reader, areaM2, 3)] as const,
    ),
    [said.utilisation, percentText(reader, core.utilisation, 1)],
    [said.massChange, massText(reader, core.massChangeKg)],
    ...(core.waterLeavingKg === undefined
      ? []
      : [[said.water, massText(reader, core.waterLeavingKg)] as const]),
  ];
  return flow('core', 1, reader.words.sections.core, [
    facts(reader.words.sections.core, rows),
    stackTable(request),
    ...(core.notes.length === 0 ? [] : [list(core.notes)]),
    ...(core.pieces.length === 0 ? [] : [piecePlanFigure(request, undefined), pieceTable(request)]),
    ...(core.sheets.length === 0 ? [] : [...sheetFigures(request), sheetTable(request)]),
  ]);
}

export function stackTable({ estimate: { core }, reader }: OpenedRequest): Table {
  const said = reader.words.columns;
  return table(
    reader.words.core.stack,
    [wide(said.layer), numeric(said.thickness)],
    core.stack.map(({ layer, thicknessMm }) => row(layer, lengthText(reader, thicknessMm, 2))),
  );
}

/** A straight piece is cut by its length and width; what is curved or at an angle, from the box that it comes out of. */
export function pieceTable(
  { estimate: { core }, reader }: OpenedRequest,
  openings?: readonly string[],
): Table {
  const said = reader.words.columns;
  const pieces = core.pieces.filter(({ opening }) => openings === undefined || openings.includes(opening));
  return table(
    reader.words.core.pieces,
    [
      numeric(said.order),
      narrow(said.piece),
      ...(openings === undefined ? [narrow(said.opening)] : []),
      wide(said.size, 2),
      numeric(said.thickness),
      numeric(said.area),
    ],
    [...pieces]
      .sort((a, b) => a.beddingOrder - b.beddingOrder)
      .map(({ beddingOrder, label, opening: cut, outline, thicknessMm, areaM2 }) =>
        row(
          String(beddingOrder),
          label,
          ...(openings === undefined ? [cut] : []),
          sizeSaid(outline, reader),
          lengthText(reader, thicknessMm, 1),
          areaText(reader, areaM2, 4),
        ),
      ),
  );
}

/** Cut by its length and width: straight and square, or so but for corners that are rounded. */
export const isBoard = (outline: Outline): boolean => {
  const around = leastRectangle(outline);
  return fills(outline, around) || roundedCorners(outline, around).length > 0;
};

/**
 * Radii of the corners of a board whose corners are rounded; none where the outline is no such board. A corner is round
 * when the outline leaves both of its sides at the same distance from it, and the whole is a board when what the corners
 * lack, (1 - pi/4) r2 each by elementary geometry, is what the outline lacks of the rectangle round it.
 */
function roundedCorners(outline: Outline, around: LeastRectangle): readonly number[] {
  const own = outline.map(([x, y]) =>
    rotatePoint([x - around.centre[0], y - around.centre[1]], -around.angle),
  );
  const [halfL, halfW] = [around.lengthMm / 2, around.widthMm / 2];
  const corners = [
    [halfL, halfW],
    [halfL, -halfW],
    [-halfL, halfW],
    [-halfL, -halfW],
  ] as const;
  const radii = corners.map(([x, y]) => {
    const alongLength = own
      .filter((point) => Math.abs(point[1] - y) < ON_SIDE_MM)
      .map((point) => Math.abs(point[0] - x));
    const alongWidth = own
      .filter((point) => Math.abs(point[0] - x) < ON_SIDE_MM)
      .map((point) => Math.abs(point[1] - y));
    const [a, b] = [Math.min(...alongLength), Math.min(...alongWidth)];
    return Math.abs(a - b) < 1 ? Math.max(a, b) : Number.NaN;
  });
  const lackMm2 = radii.reduce((sum, radius) => sum + (1 - Math.PI / 4) * radius ** 2, 0);
  const lacksMm2 = around.lengthMm * around.widthMm - areaMm2([{ outer: outline, holes: [] }]);
  return Math.abs(lackMm2 - lacksMm2) <= around.lengthMm * around.widthMm * A_PART_IN_A_THOUSAND
    ? radii.filter((radius) => radius >= 1)
    : [];
}

const ON_SIDE_MM = 0.05;
const A_PART_IN_A_THOUSAND = 0.001;

const fills = (outline: Outline, { lengthMm, widthMm }: LeastRectangle): boolean =>
  areaMm2([{ outer: outline, holes: [] }]) >= lengthMm * widthMm * 0.999;

function sizeSaid(outline: Outline, reader: Reader): string {
  const around = leastRectangle(outline);
  const size = `${lengthText(reader, around.lengthMm)} × ${lengthText(reader, around.widthMm)}`;
  if (fills(outline, around)) return size;
  const [radius] = roundedCorners(outline, around);
  return radius === undefined
    ? reader.words.core.outOf(size)
    : reader.words.core.rounded(size, lengthText(reader, radius));
}

function sheetTable({ estimate: { core }, reader }: OpenedRequest): Table {
  const said = reader.words.columns;
  return table(
    reader.words.core.sheets,
    [wide(said.sheet), numeric(said.size), numeric(said.thickness), numeric(said.used)],
    core.sheets.map(({ label, lengthMm, widthMm, thicknessMm, utilisation, isBought }) =>
      row(
        isBought ? label : `${label} (${reader.words.core.ofCustomer})`,
        `${lengthText(reader, lengthMm)} × ${lengthText(reader, widthMm)}`,
        lengthText(reader, thicknessMm, 1),
        percentText(reader, utilisation, 1),
      ),
    ),
  );
}

export function laminateSection(request: OpenedRequest): Section {
  const {
    estimate: { laminate },
    reader,
  } = request;
  const said = reader.words.laminate;
  return flow('laminate', 1, reader.words.sections.laminate, [
    paragraph(`${said.methods[laminate.method]}.`),
    facts(reader.words.sections.laminate, [
      [
        said.taper,
        said.taperText(upTo(reader, laminate.taperRatio, 1), lengthText(reader, laminate.taperWidthMm)),
      ],
      [said.newThickness, lengthText(reader, laminate.totalThicknessMm, 2)],
      [said.oldThickness, lengthText(reader, laminate.oldThicknessMm, 2)],
      [said.glass, massText(reader, laminate.glassKg)],
      [said.resin, massText(reader, laminate.resinKg)],
    ]),
    sectionFigure(request),
    ...(laminate.plies.length === 0 ? [] : [plyTable(request), plyPlanFigure(request, undefined)]),
    ...alternativesTable(request),
    ...(laminate.properties.length === 0
      ? []
      : [
          facts(
            said.properties,
            laminate.properties.map(
              ({ name, value, unit, note }) =>
                [
                  name,
                  note === undefined
                    ? valueText(reader, value, unit)
                    : `${valueText(reader, value, unit)} (${note})`,
                ] as const,
            ),
          ),
        ]),
    ...(laminate.notes.length === 0 ? [] : [list(laminate.notes)]),
  ]);
}

export function plyTable({ estimate: { laminate }, reader }: OpenedRequest): Table {
  const said = reader.words.columns;
  return table(
    reader.words.laminate.plies,
    [
      numeric(said.ply),
      wide(said.material),
      numeric(said.direction),
      numeric(said.thickness),
      numeric(said.area),
      numeric(said.rollLength),
      numeric(said.glass),
      numeric(said.resin),
    ],
    laminate.plies.map((ply) =>
      row(
        String(ply.order),
        ply.materialName,
        `${upTo(reader, ply.orientationDeg, 0)}°`,
        lengthText(reader, ply.thicknessMm, 2),
        areaText(reader, ply.areaM2, 3),
        `${metresText(reader, ply.rollLengthM)} × ${lengthText(reader, ply.rollWidthMm)}`,
        massText(reader, ply.glassKg),
        massText(reader, ply.resinKg),
      ),
    ),
  );
}

function alternativesTable({ estimate: { laminate }, reader }: OpenedRequest): readonly Table[] {
  const { columns, laminate: said } = reader.words;
  if (laminate.alternatives.length === 0) return [];
  return [
    table(
      said.alternatives,
      [
        numeric(columns.rank),
        wide(said.plies, 2),
        numeric(columns.thickness),
        numeric(`${columns.amount} ${said.perM2}`),
        wide(columns.reason, 2),
      ],
      laminate.alternatives.map(({ rank, plies, thicknessMm, costPerM2, reason }) =>
        row(String(rank), plies.join(' / '), lengthText(reader, thicknessMm, 2), costPerM2, reason),
      ),
    ),
  ];
}

export function checkSection(request: OpenedRequest): Section {
  const {
    estimate: { checks },
    reader,
  } = request;
  const said = reader.words.columns;
  const measured = checks.some(({ utilisation }) => utilisation !== undefined);
  return flow('checks', 1, reader.words.sections.checks, [
    paragraph(reader.words.checks.note),
    ...panelBlocks(request),
    ...(measured ? [chartFigure(request)] : []),
    table(
      reader.words.checks.table,
      [
        wide(said.check, 2),
        narrow(said.state),
        numeric(said.demand),
        numeric(said.capacity),
        numeric(said.utilisation),
        narrow(said.verdict),
        narrow(said.source),
      ],
      checks.map((check) => checkRow(check, request)),
    ),
  ]);
}

/** The four states of the panel side by side, and what the comparison comes to. */
function panelBlocks({ estimate: { panel }, reader }: OpenedRequest): readonly Block[] {
  const said = reader.words.panel;
  const named = (values: typeof panel.loads): readonly (readonly [string, string])[] =>
    values.map(({ name, value, unit, note }) => [
      name,
      note === undefined ? valueText(reader, value, unit) : `${valueText(reader, value, unit)} (${note})`,
    ]);
  const size = panel.sizeMm.map((side) => lengthText(reader, side)).join(' × ');
  return [
    facts(said.comparison, [
      [said.verdict, word(said.verdicts, panel.verdict)],
      [said.size, size],
      ...named(panel.loads),
    ]),
    ...(panel.shortfalls.length === 0 ? [] : [list(panel.shortfalls)]),
    stateTable(panel.states, reader),
    facts(
      said.governs,
      panel.states.map(({ state, governs }) => [
        `${said.governs}, ${reader.words.checks.states[state]}`,
        governs ?? '–',
      ]),
    ),
    ...(panel.ratios.length === 0
      ? []
      : [
          table(
            said.ratios,
            [wide(reader.words.columns.what), numeric(said.ratio)],
            named(panel.ratios).map(([name, value]) => row(name, value)),
          ),
        ]),
    ...(panel.limits.length === 0 ? [] : [list(panel.limits)]),
  ];
}

function stateTable(states: readonly PanelState[], reader: Reader): Table {
  const said = reader.words.panel;
  const stated = (name: string, say: (state: PanelState) => string): Row => row(name, ...states.map(say));
  const loads = [...new Set(states.flatMap(({ deflections }) => deflections.map(({ load }) => load)))];
  const deflection = (state: PanelState, load: string): string => {
    const found = state.deflections.find((one) => one.load === load);
    return found === undefined ? '–' : lengthText(reader, found.deflectionMm, 2);
  };
  return table(
    said.states,
    [
      wide(reader.words.columns.what),
      ...states.map(({ state }) => numeric(reader.words.checks.states[state])),
    ],
    [
      stated(said.bendingX, ({ bendingXNmm }) => valueText(reader, bendingXNmm, 'N.mm')),
      stated(said.bendingY, ({ bendingYNmm }) => valueText(reader, bendingYNmm, 'N.mm')),
      stated(said.shear, ({ shearNPerMm }) => valueText(reader, shearNPerMm, 'N/mm')),
      ...loads.map((load) => stated(said.deflection(loadInWords(load)), (state) => deflection(state, load))),
      stated(reader.words.columns.utilisation, ({ utilisation }) =>
        utilisation === undefined ? '–' : percentText(reader, utilisation, 1),
      ),
    ],
  );
}

function checkRow(check: Check, request: ReportRequest): Row {
  const { reader } = request;
  const said = reader.words.checks;
  const { title, state, demand, capacity, unit, utilisation, verdict, remedy, reason, source } = check;
  const isOldFault =
    state === 'as-built' ||
    state === 'as-found' ||
    (check.asBuilt?.verdict === 'fails' && check.asBuilt.isNoWorse);
  const value = (given: number | undefined): string =>
    given === undefined ? '–' : valueText(reader, given, unit);
  const note = [
    ...governing(check, reader),
    ...(reason === undefined ? [] : [reason]),
    ...(verdict === 'fails' ? beside(check, reader) : []),
    ...(remedy === undefined || verdict !== 'fails' ? [] : [`${said.remedy}: ${remedy}`]),
  ].join('. ');
  return {
    ...row(
      title,
      state === undefined ? '–' : said.states[state],
      value(demand),
      value(capacity),
      utilisation === undefined ? '–' : percentText(reader, utilisation, 1),
      said.verdicts[verdict],
      citedIn(request, source),
    ),
    ...(note === '' ? {} : { note }),
    ...(verdict === 'fails' && !isOldFault ? { emphasis: 'fails' } : {}),
  };
}

/** What decides the check; a whole sentence stands without its full stop, as the parts of a note are joined by one. */
function governing({ governs, title }: Check, reader: Reader): readonly string[] {
  if (governs === '' || governs.toLowerCase() === title.toLowerCase()) return [];
  const speaksForItself = /^(at|under) |\.$/.test(governs);
  return [speaksForItself ? governs.replace(/\.$/, '') : `${reader.words.checks.governs} ${governs}`];
}

/** Whether the deck had the same fault as built. */
function beside({ asBuilt }: Check, reader: Reader): readonly string[] {
  if (asBuilt === undefined) return [];
  const said = reader.words.checks;
  const use = percentText(reader, asBuilt.utilisation, 1);
  if (asBuilt.verdict !== 'fails') return [said.passedAsBuilt(use)];
  return [asBuilt.isNoWorse ? said.builtToo(use) : said.worseThanBuilt(use)];
}

const findingSeverities = { stop: 'danger', warn: 'warning', note: 'note' } as const;

export function processSections(request: ReportRequest): readonly Section[] {
  const {
    estimate: { process },
    reader,
  } = request;
  const { sections, process: said } = reader.words;
  return [
    flow('process', 1, sections.process, [
      facts(said.resin, [
        [said.resin, `${process.resin.name}, ${process.resin.hardenerName}`],
        [reader.words.columns.because, process.resin.why],
      ]),
      ...process.findings.map((finding): Callout => ({
        kind: 'callout',
        severity: findingSeverities[finding.severity],
        label: reader.words.scope.severities[finding.severity],
        text: finding.text,
        small: '',
      })),
      demandTable(request),
      batchTable(request),
    ]),
    ...flowUnlessEmpty('pressure', said.pressure, pressureBlocks(request)),
    ...flowUnlessEmpty('cure', said.cure, cureBlocks(request)),
    flow('gates', 2, sections.gates, [gateTable(request), ...weatherBlocks(request)]),
    flow('calendar', 1, sections.calendar, calendarBlocks(request)),
  ];
}

function demandTable({ estimate: { process }, reader }: ReportRequest): Table {
  const said = reader.words.columns;
  return table(
    reader.words.process.demands,
    [
      wide(said.step),
      numeric(said.net),
      numeric(said.waste),
      numeric(said.total),
      numeric(`${said.total}, ${reader.units === 'us' ? 'lb' : 'kg'}`),
      numeric(said.filler),
    ],
    process.demands.map(({ title, netL, wasteL, totalL, totalKg, fillerKg, filler }) =>
      row(
        title,
        volumeText(reader, netL),
        volumeText(reader, wasteL),
        volumeText(reader, totalL),
        massText(reader, totalKg),
        fillerKg === undefined
          ? '–'
          : `${massText(reader, fillerKg)}${filler === undefined ? '' : ` ${codeText({}, filler)}`}`,
      ),
    ),
  );
}

function batchTable({ estimate: { process }, reader }: ReportRequest): Table {
  const said = reader.words.columns;
  // Pots are weighed on a scale that shows grams, whatever else the reader measures in; so the cards have it too.
  const grams = (value: number): string => upTo(reader, value, 1);
  return table(
    reader.words.process.batches,
    [
      numeric(said.batch),
      wide(said.step),
      ...[said.resin, said.hardener, said.filler].map((what) => numeric(`${what}, g`)),
      numeric(said.useWithin),
      wide(said.covers),
    ],
    process.batches.map(({ number, title, resinG, hardenerG, fillerG, useWithinMin, covers }) =>
      row(
        String(number),
        title,
        grams(resinG),
        grams(hardenerG),
        grams(fillerG),
        `${fixed(reader, useWithinMin, 0)} min`,
        covers.join(', '),
      ),
    ),
  );
}

export function pressureBlocks(request: ReportRequest): readonly Block[] {
  const { bondPressure } = request.estimate.process;
  if (bondPressure === undefined) return [];
  const { process: said, columns } = request.reader.words;
  const { method, recommendation } = bondPressure;
  return [
    facts(said.pressure, [
      [columns.choice, method === undefined ? said.noMethod : word(said.methods, method)],
      ...(bondPressure.availableKPa === undefined
        ? []
        : [[said.available, `${fixed(request.reader, bondPressure.availableKPa, 2)} kPa`] as const]),
      ...pressFacts(bondPressure, request.reader),
      ...pressedGoods(bondPressure, request.reader),
    ]),
    paragraph(recommendation),
    ...refusedPresses(bondPressure, request.reader),
  ];
}

type Press = NonNullable<ReportRequest['estimate']['process']['bondPressure']>;

/** What is pressed how hard, and what carries it. */
export function pressFacts(
  { method, requiredKPa, restsOn, props }: Press,
  reader: Reader,
): readonly (readonly [string, string])[] {
  const said = reader.words.process;
  const spacing =
    props.spacingMm === undefined ? said.propsNeeded : said.propsSpacing(lengthText(reader, props.spacingMm));
  return [
    [said.required, `${fixed(reader, requiredKPa, 2)} kPa`],
    [said.restsOn, restsOn],
    // Jacks lift the skin above; the one below is cut away, and nothing props it.
    method === 'jacks'
      ? [said.skinAbove, props.why]
      : [said.props, `${props.needed ? spacing : said.propsNotNeeded}; ${props.why}`],
  ];
}

export const pressedGoods = ({ quantities }: Press, reader: Reader): readonly (readonly [string, string])[] =>
  quantities.map(({ name, value, unit }) => [name, pressedText(reader, value, unit)] as const);

export const refusedPresses = ({ refusals }: Press, reader: Reader): readonly Callout[] =>
  refusals.map((text) => ({
    kind: 'callout',
    severity: 'warning',
    label: reader.words.process.refused,
    text,
    small: '',
  }));

/** What is carried on deck is counted; cloth and weight are rounded as they are cut and lifted. */
function pressedText(reader: Reader, value: number, unit: string): string {
  if (unit === 'each') return upTo(reader, value, 0);
  return unit === 'kg' && reader.units === 'si'
    ? `${upTo(reader, value, 1)} kg`
    : figureText(reader, value, unit);
}

/** The table, and what is to be known of its steps; what holds for all of them is said once. */
export function cureBlocks(request: ReportRequest): readonly Block[] {
  const noted = request.estimate.process.cure.flatMap(({ step, note }) =>
    note === undefined ? [] : [{ step, note }],
  );
  const notes = new Set(noted.map(({ note }) => note));
  const said = notes.size === 1 ? [...notes] : noted.map(({ step, note }) => `${step}: ${note}`);
  if (request.estimate.process.cure.length === 0) return [];
  return [cureTable(request), ...(said.length === 0 ? [] : [list(said)])];
}

function cureTable({ estimate: { process }, reader }: ReportRequest): Table {
  const said = reader.words.columns;
  const hours = (value: CureMilestones['gelH']): string =>
    value === undefined ? '–' : hoursText(reader, value);
  return table(
    reader.words.process.cure,
    [
      wide(said.step),
      numeric(said.temperature),
      numeric(said.gel),
      numeric(said.release),
      numeric(said.sandable),
      numeric(said.recoatShuts),
      numeric(said.fullCure),
    ],
    process.cure.map(({ step, startAt, temperatureC, gelH, releaseH, sandableH, recoatShutsH, fullCureH }) =>
      row(
        startAt === undefined ? step : reader.words.process.cureFrom(step, momentText(reader, startAt)),
        temperatureText(reader, temperatureC),
        hours(gelH),
        hours(releaseH),
        hours(sandableH),
        hours(recoatShutsH),
        hours(fullCureH),
      ),
    ),
  );
}

export function gateTable({ estimate: { process }, reader }: ReportRequest): Table {
  const said = reader.words.columns;
  return table(
    reader.words.sections.gates,
    [wide(said.step), wide(said.requires, 3)],
    process.gates.map(({ step, requires }) => row(step, requires.join('; '))),
  );
}

/** The windows of the forecast for each step; without one the gates above are what to require. */
export function weatherBlocks(request: ReportRequest): readonly Block[] {
  const {
    estimate: {
      process: { weather },
    },
    reader,
  } = request;
  const said = reader.words.weather;
  if (weather === undefined) return [paragraph(said.none)];
  return [
    facts(said.forecast, [
      [
        said.forecast,
        said.fromTo(
          momentText(reader, weather.fromAt),
          momentText(reader, weather.untilAt),
          weather.timeZone,
        ),
      ],
      [
        said.deck,
        said.range(
          temperatureText(reader, weather.coldestDeckC),
          temperatureText(reader, weather.warmestDeckC),
        ),
      ],
      [said.leastMargin, `${fixed(reader, weather.leastDewMarginK, 1)} K`],
    ]),
    ...(weather.notes.length === 0 ? [] : [list(weather.notes)]),
    windowTable(weather, reader),
  ];
}

const SHOWN_WINDOWS = 3;

function windowTable({ steps, untilAt }: WeatherSection, reader: Reader): Table {
  const { columns, weather: said } = reader.words;
  return table(
    said.windows,
    [wide(columns.step), numeric(said.planned), numeric(said.needed), numeric(said.open), wide(said.best, 2)],
    steps.map((step) =>
      row(
        step.title,
        momentText(reader, step.plannedAt),
        hoursText(reader, step.neededH),
        hoursText(reader, step.openH),
        Date.parse(step.earliestAt) >= Date.parse(untilAt) ? said.afterForecast : windowsText(step, reader),
      ),
    ),
  );
}

function windowsText({ windows, shutBy }: WeatherStepSection, reader: Reader): string {
  const said = reader.words.weather;
  const shut =
    shutBy.length === 0
      ? []
      : [
          said.shut(
            shutBy
              .map(({ gate, hours }) => `${word(said.gates, gate)} ${hoursText(reader, hours)}`)
              .join(', '),
          ),
        ];
  const best = windows
    .slice(0, SHOWN_WINDOWS)
    .map(({ rank, fromAt, untilAt, limitedBy }) =>
      said.window(
        String(rank),
        momentText(reader, fromAt),
        fromAt.slice(0, 10) === untilAt.slice(0, 10)
          ? timeOfDayText(reader, untilAt)
          : momentText(reader, untilAt),
        word(said.gates, limitedBy),
      ),
    );
  return [...(best.length === 0 ? [said.noWindow] : best), ...shut].join('; ');
}

function calendarBlocks(request: ReportRequest): readonly Block[] {
  const {
    estimate: {
      process: { calendar },
    },
    reader,
  } = request;
  const said = reader.words.calendar;
  const finish = calendar.finish;
  return [
    facts(reader.words.sections.calendar, [
      ...(calendar.startDate === undefined
        ? []
        : [[said.start, dateText(reader, calendar.startDate)] as const]),
      ...(finish === undefined
        ? []
        : [
            [
              said.finish,
              [finish.early, finish.likely, finish.late].map((day) => dateText(reader, day)).join(' / '),
            ] as const,
          ]),
      [said.days, rangeText(reader, calendar.workingDays, (days) => daysText(reader, days))],
      [said.calendarDays, rangeText(reader, calendar.calendarDays, (days) => daysText(reader, days))],
    ]),
    ...milestoneTable(request),
    ...(calendar.tasks.length === 0 ? [] : [...ganttFigures(request), taskTable(request)]),
    ...(calendar.notes.length === 0 ? [] : [list(calendar.notes)]),
    paragraph(said.note),
  ];
}

function milestoneTable({
  estimate: {
    process: { calendar },
  },
  reader,
}: ReportRequest): readonly Table[] {
  const dated = calendar.milestones.flatMap(({ title, at }) =>
    at === undefined ? [] : [row(title, momentText(reader, at))],
  );
  return dated.length === 0
    ? []
    : [
        table(
          reader.words.calendar.milestones,
          [wide(reader.words.columns.milestone), numeric(reader.words.columns.when)],
          dated,
        ),
      ];
}

export function taskTable({
  estimate: {
    process: { calendar },
  },
  reader,
}: ReportRequest): Table {
  const { columns, calendar: said } = reader.words;
  return table(
    said.tasks,
    [
      wide(columns.task),
      numeric(columns.start),
      numeric(columns.end),
      numeric(columns.labour),
      numeric(columns.wait),
    ],
    calendar.tasks.map(
      ({ title, startDay, endDay, startAt, endAt, labourH, waitH, isHoldPoint, isCritical }) => ({
        ...row(
          isHoldPoint ? holdTitle(title, said.hold) : isCritical ? `${title} (${said.critical})` : title,
          timeText(startDay, startAt, reader),
          timeText(endDay, endAt, reader),
          hoursText(reader, labourH),
          hoursText(reader, waitH),
        ),
        ...(isHoldPoint ? { emphasis: 'hold' } : {}),
      }),
    ),
  );
}

const holdTitle = (title: string, hold: string): string =>
  title.toLowerCase().startsWith(hold.toLowerCase()) ? title : `${hold}: ${title}`;

/** A date where the work has a start, else the day counted from any start. */
const timeText = (day: number, at: string | undefined, reader: Reader): string =>
  at === undefined ? reader.words.calendar.day(fixed(reader, day, 1)) : momentText(reader, at);

/** Where nothing is pressed, or nothing cures, no heading stands over nothing. */
const flowUnlessEmpty = (id: string, title: string, blocks: readonly Block[]): readonly Section[] =>
  blocks.length === 0 ? [] : [flow(id, 2, title, blocks)];
