import { below, pointer, problem, type Problem } from '#lib/kernel';
import { depreciationTermsFaults } from '#lib/costing';
import { distanceToRegion, readOutline, regionOf } from '#lib/geometry';
import { dateFaults, forecastFaults, warmthFaults } from '#lib/cure';
import type { DefectRecord, FittingRecord, ZoneRecord } from './defect-record.js';

interface Bounds {
  readonly above?: number;
  readonly from?: number;
  readonly upTo: number;
  readonly unit: string;
}

/** What a deck, a crew and a workplace can be; outside these the record is refused rather than stretched. */
const ranges = {
  skinMm: { above: 0.2, upTo: 40, unit: 'mm' },
  coreMm: { above: 1, upTo: 120, unit: 'mm' },
  densityKgPerM3: { above: 20, upTo: 1000, unit: 'kg/m3' },
  camberRadiusMm: { above: 300, upTo: 1_000_000, unit: 'mm' },
  taperRatio: { from: 3, upTo: 100, unit: '(length to thickness)' },
  marginMm: { from: 0, upTo: 500, unit: 'mm' },
  flangeMm: { from: 10, upTo: 500, unit: 'mm' },
  temperatureC: { from: -20, upTo: 50, unit: 'degC' },
  humidityPercent: { from: 1, upTo: 100, unit: '%' },
  altitudeM: { from: -430, upTo: 5000, unit: 'm' },
  pumpMl: { above: 0, upTo: 500, unit: 'ml' },
  people: { from: 1, upTo: 20, unit: 'people' },
  hoursPerDay: { from: 1, upTo: 16, unit: 'h' },
  holes: { from: 0, upTo: 200, unit: 'holes' },
  holeDiameterMm: { above: 0, upTo: 200, unit: 'mm' },
  baseMm: { above: 0, upTo: 2000, unit: 'mm' },
  lengthM: { from: 2, upTo: 60, unit: 'm' },
  massKg: { from: 100, upTo: 500_000, unit: 'kg' },
  yearBuilt: { from: 1940, upTo: 2100, unit: '(year)' },
  contingencyPercent: { from: 0, upTo: 100, unit: '%' },
  samples: { from: 1000, upTo: 100_000, unit: 'samples' },
  seed: { from: 0, upTo: 4_294_967_295, unit: '(whole number)' },
  wholeDeckAreaM2: { above: 0, upTo: 500, unit: 'm2' },
} as const satisfies Readonly<Record<string, Bounds>>;

const MOST_ZONES = 40;
const MOST_OLD_BOND_MM = 10;
const MOST_FITTINGS = 200;

/** Everything wrong with the record itself, before any room looks at it. */
export const faultsOfRecord = (record: DefectRecord): readonly Problem[] => [
  ...numberFaults(record),
  ...cavityFaults(record),
  ...outlineFaults(record),
  ...zoneFaults(record.zones),
  ...fittingFaults(record.fittings ?? []),
  ...strayFittings(record),
  ...extentFaults(record),
  ...weatherFaults(record),
  ...dayFaults(record),
  ...(record.pricing?.depreciation === undefined
    ? []
    : depreciationTermsFaults(record.pricing.depreciation, '/pricing/depreciation')),
];

function numberFaults(record: DefectRecord): readonly Problem[] {
  const { craft, panel, method, conditions, crew, pricing } = record;
  return [
    outside(record.outerSkin.thicknessMm, '/outerSkin/thicknessMm', ranges.skinMm),
    outside(record.innerSkin.thicknessMm, '/innerSkin/thicknessMm', ranges.skinMm),
    outside(record.core.thicknessMm, '/core/thicknessMm', ranges.coreMm),
    outside(record.core.cavityMm, '/core/cavityMm', ranges.coreMm),
    outside(record.core.densityKgPerM3, '/core/densityKgPerM3', ranges.densityKgPerM3),
    outside(panel.camberRadiusMm, '/panel/camberRadiusMm', ranges.camberRadiusMm),
    outside(method?.taperRatio, '/method/taperRatio', ranges.taperRatio),
    outside(method?.cutMarginMm, '/method/cutMarginMm', ranges.marginMm),
    outside(method?.flangeMm, '/method/flangeMm', ranges.flangeMm),
    outside(method?.wholeDeckAreaM2, '/method/wholeDeckAreaM2', ranges.wholeDeckAreaM2),
    outside(method?.pumpResinMlPerStroke, '/method/pumpResinMlPerStroke', ranges.pumpMl),
    outside(conditions?.temperatureC, '/conditions/temperatureC', ranges.temperatureC),
    outside(
      conditions?.relativeHumidityPercent,
      '/conditions/relativeHumidityPercent',
      ranges.humidityPercent,
    ),
    outside(conditions?.altitudeM, '/conditions/altitudeM', ranges.altitudeM),
    outside(crew?.people, '/crew/people', ranges.people),
    outside(crew?.hoursPerDay, '/crew/hoursPerDay', ranges.hoursPerDay),
    outside(craft?.lengthHullM, '/craft/lengthHullM', ranges.lengthM),
    outside(craft?.lengthWaterlineM, '/craft/lengthWaterlineM', ranges.lengthM),
    outside(craft?.massLoadedKg, '/craft/massLoadedKg', ranges.massKg),
    outside(craft?.yearBuilt, '/craft/yearBuilt', ranges.yearBuilt),
    outside(pricing?.contingencyPercent, '/pricing/contingencyPercent', ranges.contingencyPercent),
    outside(pricing?.samples, '/pricing/samples', ranges.samples),
    outside(pricing?.seed, '/pricing/seed', ranges.seed),
  ].flat();
}

/** The cavity holds the core: it cannot be thinner, and much thicker means that one of the two is wrong. */
function cavityFaults({ core: { thicknessMm, cavityMm } }: DefectRecord): readonly Problem[] {
  if (cavityMm === undefined || (cavityMm >= thicknessMm && cavityMm <= thicknessMm + MOST_OLD_BOND_MM))
    return [];
  return [
    problem('contradiction', '/core/cavityMm', {
      other: '/core/thicknessMm',
      why: `a core of ${thicknessMm} mm lies in a cavity of ${thicknessMm} to ${thicknessMm + MOST_OLD_BOND_MM} mm`,
    }),
  ];
}

const outlineFaults = ({ panel }: DefectRecord): readonly Problem[] => [
  ...faultsOfOutline(panel.outline, '/panel/outline'),
  ...(panel.holes ?? []).flatMap((hole, index) => faultsOfOutline(hole, pointer('/panel/holes', index))),
];

function zoneFaults(zones: readonly ZoneRecord[] = []): readonly Problem[] {
  if (zones.length > MOST_ZONES)
    return [problem('too-many', '/zones', { count: zones.length, most: MOST_ZONES })];
  return [
    ...repeated(
      zones.map(({ id }) => id),
      '/zones',
    ),
    ...zones.flatMap(({ outline }, index) => faultsOfOutline(outline, pointer('/zones', index, 'outline'))),
  ];
}

function fittingFaults(fittings: readonly FittingRecord[]): readonly Problem[] {
  if (fittings.length > MOST_FITTINGS)
    return [problem('too-many', '/fittings', { count: fittings.length, most: MOST_FITTINGS })];
  return [
    ...repeated(
      fittings.map(({ id }) => id),
      '/fittings',
    ),
    ...fittings.flatMap((fitting, index) =>
      below(pointer('/fittings', index), [
        ...outside(fitting.holes, '/holes', ranges.holes),
        ...outside(fitting.holeDiameterMm, '/holeDiameterMm', ranges.holeDiameterMm),
        ...outside(fitting.baseMm, '/baseMm', ranges.baseMm),
      ]),
    ),
  ];
}

/** A fitting that far from the panel is a slip of the keyboard, and would be left out without a word. */
const FARTHEST_FITTING_MM = 1000;

function strayFittings({ panel: { outline }, fittings = [] }: DefectRecord): readonly Problem[] {
  const whole = regionOf(outline);
  return fittings.flatMap(({ at }, index) => {
    const awayMm = Math.round(distanceToRegion(at, whole));
    if (!(awayMm > FARTHEST_FITTING_MM)) return [];
    return [
      problem('contradiction', pointer('/fittings', index, 'at'), {
        other: '/panel/outline',
        why: `it stands ${awayMm} mm from the panel; at most ${FARTHEST_FITTING_MM} mm can belong to the job`,
      }),
    ];
  });
}

function extentFaults({ zones, survey }: DefectRecord): readonly Problem[] {
  const hasZones = zones !== undefined && zones.length > 0;
  const hasReadings = survey !== undefined && survey.readings.length > 0;
  if (hasZones || hasReadings) return [];
  return [
    problem('missing', '/zones', {
      expected: 'draw at least one zone of bad core, or give `survey.readings`',
    }),
  ];
}

function weatherFaults({ conditions: { forecast, warmth } = {} }: DefectRecord): readonly Problem[] {
  if (forecast !== undefined)
    return [
      ...forecastFaults(forecast, '/conditions/forecast'),
      ...warmthFaults('/conditions/warmth', warmth),
    ];
  return warmth === undefined
    ? []
    : [
        problem('missing', '/conditions/forecast', {
          expected:
            'a forecast whose air the warmth counts above; without one state temperatureC, which is that of the deck',
        }),
      ];
}

const dayFaults = ({ crew: { startDate, workingDays = [] } = {} }: DefectRecord): readonly Problem[] => [
  ...(startDate === undefined ? [] : dateFaults('/crew/startDate', startDate)),
  ...workingDays.flatMap((day, index) =>
    workingDays.indexOf(day) === index
      ? []
      : [problem('duplicate', pointer('/crew/workingDays', index), { value: day })],
  ),
];

const faultsOfOutline = (outline: readonly (readonly [number, number])[], at: string): readonly Problem[] => {
  const read = readOutline(outline, at);
  return read.ok ? [] : read.problems;
};

function outside(value: number | undefined, at: string, bounds: Bounds): readonly Problem[] {
  if (value === undefined) return [];
  if (!Number.isFinite(value))
    return [problem('not-a-number', at, { value: String(value), hint: ` in ${bounds.unit}` })];
  const isTooSmall =
    bounds.above !== undefined ? value <= bounds.above : bounds.from !== undefined && value < bounds.from;
  if (!isTooSmall && value <= bounds.upTo) return [];
  const lower = bounds.above !== undefined ? `above ${bounds.above}` : `${bounds.from ?? 'any'} or more`;
  return [
    problem('out-of-range', at, { value, range: `${lower} and at most ${bounds.upTo} ${bounds.unit}` }),
  ];
}

const repeated = (names: readonly string[], at: string): readonly Problem[] =>
  names.flatMap((name, index) =>
    names.indexOf(name) < index ? [problem('duplicate', pointer(at, index, 'id'), { value: name })] : [],
  );
