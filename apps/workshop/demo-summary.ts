import type { StoredEstimate } from '../../libs/sdk/src/index.js';

type Estimate = StoredEstimate['estimate'];
type MoneyJson = Estimate['totals']['total'];

/** What a person wants to read first, on a screen 100 characters wide. */
export function summaryText(estimate: Estimate): string {
  return [
    '',
    estimate.title,
    '='.repeat(estimate.title.length),
    ...methodLines(estimate),
    ...scopeLines(estimate),
    ...quantityLines(estimate),
    ...workLines(estimate),
    ...costLines(estimate),
    ...checkLines(estimate),
    ...cautionLines(estimate),
    '',
  ].join('\n');
}

const row = (name: string, text: string): string => `  ${name.padEnd(22)} ${text}`;
const heading = (text: string): readonly string[] => ['', text];
const fixed = (value: number, decimals: number): string => value.toFixed(decimals);
const money = ({ amount, currency }: MoneyJson): string =>
  `${amount.replace(/\B(?=(\d{3})+(?!\d))(?<!\.\d*)/g, ' ')} ${currency}`;

function scopeLines({ scope }: Estimate): readonly string[] {
  return [
    ...heading('Scope'),
    row('panel', `${scope.panel.name}, ${fixed(scope.panel.areaM2, 2)} m2`),
    row(
      'bad core',
      `${fixed(scope.damagedAreaM2.p10, 2)} to ${fixed(scope.damagedAreaM2.p90, 2)} m2 (P10 to P90, ${scope.evidence})`,
    ),
    ...scope.openings.map(({ label, areaM2, cutLengthM, cutDepthMm }) =>
      row(
        `opening ${label}`,
        `${fixed(areaM2, 3)} m2, ${fixed(cutLengthM, 2)} m of cut${cutDepthMm === undefined ? '' : `, saw set to ${fixed(cutDepthMm, 1)} mm`}`,
      ),
    ),
    row(
      'stays',
      `${fixed(scope.retainedAreaM2, 2)} m2 of skin, ${fixed(scope.undercutAreaM2, 3)} m2 reamed under it`,
    ),
    ...scope.fittings.map(({ id, kind, work }) => row(id, `${kind}: ${work.join(', ')}`)),
    ...scope.findings.map(({ severity, text }) => row(severity, text)),
  ];
}

function quantityLines({ summary, core, laminate, process }: Estimate): readonly string[] {
  return [
    ...heading('Quantities'),
    ...(core === undefined ? [] : coreLines(core)),
    ...(laminate?.plies ?? []).map(({ order, materialName, areaM2 }) =>
      row(`ply ${order}`, `${materialName}, ${fixed(areaM2, 2)} m2`),
    ),
    row(
      'resin',
      `${fixed(summary.mixedResinL, 1)} l with waste, in ${process.batches.length} pots; ${process.resin.hardenerName}`,
    ),
    ...(process.bondPressure === undefined ? [] : [row('pressure', process.bondPressure.recommendation)]),
  ];
}

function coreLines(core: NonNullable<Estimate['core']>): readonly string[] {
  const bought = core.sheets.filter(({ isBought }) => isBought);
  return [
    row(
      'core',
      `${core.pieces.length} pieces, ${fixed(core.netAreaM2, 2)} m2 net from ${bought.length} sheet(s) of ${core.materialName}`,
    ),
    row('stack', core.notes[0] ?? ''),
  ];
}

/** Every way to mend the deck with the reason that decides; what fits has its hours and price. */
function methodLines({ methods, hardware, leak }: Estimate): readonly string[] {
  return [
    ...heading(`Method: ${methods.planned.title}`),
    ...methods.rungs.map(({ title, verdict, deciding, labourH, priceRange }) =>
      row(
        verdict,
        `${title}${labourH === undefined || priceRange === undefined ? '' : ` (${fixed(labourH.p50, 0)} h, P50 ${money(priceRange.p50)})`}: ${deciding.text}`,
      ),
    ),
    ...hardware.map(({ id, fasteners, fastenerMm, fastenerLengthMm, insert, plate }) =>
      row(
        id,
        `${fasteners} x ${fixed(fastenerMm, 1)} x ${fastenerLengthMm} mm${insert === undefined ? '' : `, solid ${fixed(insert.lengthMm, 0)} x ${fixed(insert.widthMm, 0)} mm`}${plate === undefined ? '' : `, plate ${plate.lengthMm} x ${plate.widthMm} x ${plate.thicknessMm} mm`}`,
      ),
    ),
    row('leak', leak.text),
  ];
}

function workLines({ summary, process: { calendar } }: Estimate): readonly string[] {
  const finish =
    calendar.finish === undefined
      ? ''
      : `; done ${calendar.finish.early.slice(0, 10)} to ${calendar.finish.late.slice(0, 10)}`;
  return [
    ...heading('Work'),
    row(
      'hours',
      `${fixed(summary.labourMeanH, 0)} h as listed; with what is found besides P10 ${fixed(summary.labourH.p10, 0)}, P50 ${fixed(summary.labourH.p50, 0)}, P90 ${fixed(summary.labourH.p90, 0)}`,
    ),
    row(
      'days',
      `${fixed(summary.workingDays.p50, 0)} working days, ${fixed(summary.calendarDays.p50, 0)} on the calendar with drying and cure${finish}`,
    ),
  ];
}

function costLines({ sections, totals }: Estimate): readonly string[] {
  return [
    ...heading('Cost (invented prices)'),
    ...sections.map(({ title, amount }) => row(title, money(amount).padStart(16))),
    row('Overhead, profit', `${money(totals.overhead)}, ${money(totals.profit)}`),
    row(
      'Growth, new areas',
      `${money(totals.growth.amount)}, ${money(totals.newAreas.amount)} (provisional)`,
    ),
    row('Tax', money(totals.tax)),
    row('TOTAL', money(totals.total).padStart(16)),
    row('Contingency beside it', `${money(totals.contingency)} (${totals.contingencyBasis})`),
    row(
      'range',
      `P10 ${money(totals.range.p10)}   P50 ${money(totals.range.p50)}   P90 ${money(totals.range.p90)}`,
    ),
    ...driverLines(totals),
  ];
}

/** A small job may have none that stands out of the simulation's own error. */
const driverLines = ({ drivers }: Estimate['totals']): readonly string[] =>
  drivers.length === 0
    ? []
    : [
        row(
          'driven by',
          drivers
            .slice(0, 2)
            .map(({ name, shareOfVariance }) => `${name} (${fixed(shareOfVariance * 100, 0)} %)`)
            .join(', '),
        ),
      ];

function checkLines({ checks, panel }: Estimate): readonly string[] {
  if (panel === undefined) return [];
  const failed = checks.filter(
    ({ verdict, state }) => verdict === 'fails' && (state === undefined || state === 'repaired'),
  );
  const old = failed.filter(({ asBuilt }) => asBuilt?.verdict === 'fails' && asBuilt.isNoWorse);
  return [
    ...heading(
      `Checks: panel ${panel.verdict === 'restored' ? 'restored' : 'not fully restored'}, ${checks.length} checks, ${failed.length - old.length} of the repair fail${old.length === 0 ? '' : `, ${old.length} fail as the deck as built does`}`,
    ),
    ...panel.shortfalls.map((text) => row('short', text)),
    ...failed
      .filter((check) => !old.includes(check))
      .map(({ title, utilisation, remedy }) =>
        row('fails', `${title}${used(utilisation)}${remedy === undefined ? '' : `; ${remedy}`}`),
      ),
    ...old.map(({ title, utilisation, asBuilt }) =>
      row(
        'as built',
        `${title}${used(utilisation)}; the deck as built fails this too${used(asBuilt?.utilisation)}, and the repair is no worse`,
      ),
    ),
  ];
}

const used = (utilisation: number | undefined): string =>
  utilisation === undefined ? '' : `: ${fixed(utilisation, 2)} of what is allowed`;

function cautionLines({ cautions, assumptions, limits }: Estimate): readonly string[] {
  return [
    ...heading(`Cautions (${cautions.length}; the dangers here, all in the report)`),
    ...cautions.filter(({ severity }) => severity === 'danger').map(({ text }) => `  ! ${text}`),
    '',
    `${assumptions.length} assumptions with their sources and ${limits.length} limits are in the document.`,
  ];
}
