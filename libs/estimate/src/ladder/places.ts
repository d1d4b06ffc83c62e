import { isHighlyLoaded, type Plug, type ZoneShape } from '#lib/extent';
import {
  areaMm2,
  containsPoint,
  distance,
  distanceToRegion,
  distanceToSegment,
  edgesOf,
  type Point,
  type Region,
} from '#lib/geometry';
import {
  closedAlone,
  leakRemedies,
  type CoreState,
  type EdgeFacts,
  type FittingFacts,
  type PlaceFacts,
} from '#lib/methods';
import { m2FromMm2, mm2 } from '#lib/units';
import type { DefectRecord, FittingRecord, SupportLine, ZoneCondition } from '../job/defect-record.js';
import type { Job } from '../job/job.js';
import { usualCondition } from '../job/questions/defect.js';

/** A fitting this near to bad core belongs to it. Source: [FROM-MEMORY] about a foot. */
const FITTING_REACH_MM = 300;
/** A plug this near to a fitting speaks for the core at its holes. Source: [FROM-MEMORY]. */
const PLUG_REACH_MM = 150;

/** Zones of bad core, and fittings away from them that leak or were found wet. */
export function placesOf(job: Job, zones: readonly ZoneShape[]): readonly PlaceFacts[] {
  const regions = zones.map(regionOfZone);
  const apart = (job.record.fittings ?? []).filter(({ at }) =>
    regions.every((region) => distanceToRegion(at, region) > FITTING_REACH_MM),
  );
  return [
    ...zones.map((zone, index) => zonePlace(job, zone, regions[index])),
    ...apart.flatMap((fitting) => fittingPlace(job, fitting)),
  ];
}

/** Whether nobody drew a zone and every reading is a plug beside a fitting. */
export function isPlugsAtFittings({ record: { zones = [], survey, fittings = [] } }: Job): boolean {
  const readings = survey?.readings ?? [];
  return (
    zones.length === 0 &&
    readings.length > 0 &&
    readings.every(
      ({ kind, at }) =>
        kind === 'plug' && fittings.some((fitting) => distance(at, fitting.at) <= plugReachMm(fitting)),
    )
  );
}

/** Whether nobody drew a zone and every reading is a plug that shows sound core: there is nothing to map. */
export const isSoundInPlugs = ({ record: { zones = [], survey } }: Job): boolean => {
  const readings = survey?.readings ?? [];
  return (
    zones.length === 0 &&
    readings.length > 0 &&
    readings.every((reading) => reading.kind === 'plug' && isSound(reading))
  );
};

const isSound = ({ condition }: Plug): boolean => condition === 'dry-sound' || condition === 'damp-sound';

/** A crack, an open joint, a hatch or a chainplate that lets water in over core that plugs show to be sound. */
export function leakPlaces(job: Job): readonly PlaceFacts[] {
  const plugs = plugsOf(job.record);
  const cause = closedAlone.find((one) => one === job.record.cause?.leak);
  if (cause === undefined || plugs.length === 0 || !plugs.every(isSound)) return [];
  return [
    {
      id: leakRemedies[cause].title,
      kind: 'leak',
      badAreaM2: 0,
      longMm: job.record.cause?.lengthMm ?? 0,
      narrowMm: 0,
      core: stateOf(plugs, undefined),
      moisturePercent: wettest(plugs),
      isProvenByPlug: true,
      wetReachMm: 'unknown',
      fittings: [],
      edge: 'none',
    },
  ];
}

const plugReachMm = ({ baseMm = 0 }: FittingRecord): number => PLUG_REACH_MM + baseMm / 2;

const regionOfZone = ({ outline, holes = [] }: ZoneShape): Region => [{ outer: outline, holes }];

const plugsBeside = (record: DefectRecord, fitting: FittingRecord): readonly Plug[] =>
  plugsOf(record).filter(({ at }) => distance(at, fitting.at) <= plugReachMm(fitting));

/** The worst that plugs beside a fitting show, or all of them where the place is a leak; not known where nobody took one. */
export function coreBeside(record: DefectRecord, id: string): CoreState | 'unknown' {
  const own = (record.fittings ?? []).filter((fitting) => fitting.id === id);
  const plugs = own.length === 0 ? plugsOf(record) : own.flatMap((fitting) => plugsBeside(record, fitting));
  return plugs.length === 0 ? 'unknown' : stateOf(plugs, undefined);
}

const plugsOf = ({ survey }: DefectRecord): readonly Plug[] =>
  (survey?.readings ?? []).flatMap((reading) => (reading.kind === 'plug' ? [reading] : []));

function zonePlace(job: Job, zone: ZoneShape, region: Region): PlaceFacts {
  const plugs = plugsIn(job, zone);
  const fittings = (job.record.fittings ?? []).filter(
    ({ at }) => distanceToRegion(at, region) <= FITTING_REACH_MM,
  );
  const { longMm, narrowMm } = widthsOf(zone.outline);
  return {
    id: zone.id,
    kind: 'zone',
    badAreaM2: m2FromMm2(mm2(areaMm2(region))),
    longMm,
    narrowMm,
    core: coreStateIn(job, zone),
    moisturePercent: wettest(plugs),
    isProvenByPlug: plugs.length > 0,
    wetReachMm: 'unknown',
    fittings: fittings.map((fitting) => factsFor(fitting, distanceToRegion(fitting.at, region) === 0)),
    edge: edgeOf(job, zone.outline),
  };
}

/** A fitting that leaks, was dug at, or has a bad plug beside it; others are none of this job. */
function fittingPlace(job: Job, fitting: FittingRecord): readonly PlaceFacts[] {
  const plugs = plugsBeside(job.record, fitting);
  const isBad = plugs.some(({ condition }) => condition !== 'dry-sound');
  if (fitting.isLeaking !== true && !isBad && fitting.wetReachMm === undefined) return [];
  const state = stateOf(plugs, undefined);
  return [
    {
      id: fitting.id,
      kind: 'fitting',
      badAreaM2: dugM2(fitting),
      longMm: fitting.baseMm ?? 0,
      narrowMm: fitting.baseMm ?? 0,
      core: plugs.length > 0 ? state : fitting.wetReachMm === undefined ? 'unknown' : 'wet-bonded',
      moisturePercent: wettest(plugs),
      isProvenByPlug: plugs.length > 0,
      wetReachMm: fitting.wetReachMm ?? 'unknown',
      fittings: [factsFor(fitting, true)],
      edge: 'none',
    },
  ];
}

/** Pockets round its holes, as far as somebody dug; none where nobody did. */
function dugM2({ wetReachMm, holes = 4, holeDiameterMm = 6 }: FittingRecord): number {
  if (wetReachMm === undefined || wetReachMm === 0) return 0;
  const pocketMm2 = (Math.PI / 4) * (holeDiameterMm + 2 * wetReachMm) ** 2;
  return m2FromMm2(mm2(holes * pocketMm2));
}

const factsFor = (
  { id, kind, holes, isLeaking, baseMm }: FittingRecord,
  isOnPlace: boolean,
): FittingFacts => ({
  id,
  kind,
  holes: holes ?? 'unknown',
  isHighlyLoaded: isHighlyLoaded(kind),
  isLeaking: isLeaking ?? 'unknown',
  isOnPlace,
  baseMm: baseMm ?? 'unknown',
});

const worstFirst: readonly CoreState[] = [
  'wet-rotten',
  'wet-bonded',
  'dry-debonded',
  'damp-sound',
  'dry-sound',
];
const fromPlug: Readonly<Record<Plug['condition'], CoreState>> = {
  'rotten': 'wet-rotten',
  'wet-bonded': 'wet-bonded',
  'debonded-dry': 'dry-debonded',
  'damp-sound': 'damp-sound',
  'dry-sound': 'dry-sound',
};

/** What was found in the core of a zone. */
export const coreStateIn = (job: Job, zone: ZoneShape): CoreState =>
  stateOf(plugsIn(job, zone), drawnAs(job, zone));

/** Whether plugs in the zone show core that has let go of its skin and is dry, and none shows anything worse. */
export const isProvenDry = (job: Job, zone: ZoneShape): boolean =>
  plugsIn(job, zone).length > 0 && coreStateIn(job, zone) === 'dry-debonded';

const plugsIn = (job: Job, zone: ZoneShape): readonly Plug[] =>
  plugsOf(job.record).filter(({ at }) => containsPoint(regionOfZone(zone), at));
const drawnAs = ({ record }: Job, zone: ZoneShape): ZoneCondition | undefined =>
  record.zones?.find(({ id }) => id === zone.id)?.condition;

/** A plug is proof and goes before what was drawn; the worst of several decides. Undrawn, the commonest state is taken. */
function stateOf(plugs: readonly Plug[], drawn: ZoneCondition | undefined): CoreState {
  const found = plugs.map(({ condition }) => fromPlug[condition]);
  return worstFirst.find((state) => found.includes(state)) ?? drawn ?? usualCondition.value;
}

function wettest(plugs: readonly Plug[]): number | 'unknown' {
  const values = plugs.flatMap(({ moisturePercent }) => moisturePercent ?? []);
  return values.length === 0 ? 'unknown' : Math.max(...values);
}

/** Widths across the outline, over the directions of its own sides. */
function widthsOf(outline: readonly Point[]): { readonly longMm: number; readonly narrowMm: number } {
  const spans = edgesOf(outline).flatMap(([a, b]) => {
    const lengthMm = distance(a, b);
    if (lengthMm < 1) return [];
    const across: Point = [-(b[1] - a[1]) / lengthMm, (b[0] - a[0]) / lengthMm];
    const along: Point = [(b[0] - a[0]) / lengthMm, (b[1] - a[1]) / lengthMm];
    return [{ across: spanAlong(outline, across), along: spanAlong(outline, along) }];
  });
  return {
    longMm: Math.max(0, ...spans.map(({ along }) => along)),
    narrowMm: Math.min(...spans.map(({ across }) => across)),
  };
}

function spanAlong(outline: readonly Point[], [x, y]: Point): number {
  const values = outline.map((point) => point[0] * x + point[1] * y);
  return Math.max(...values) - Math.min(...values);
}

/** The nearest edge of the panel or of a hatch in it under whose flange this core runs. */
function edgeOf({ record: { panel }, answers }: Job, outline: readonly Point[]): EdgeFacts | 'none' {
  const flangeMm = answers.method.flangeMm.value;
  const edgeAt = (usualKind: string, a: Point, b: Point): EdgeFacts => {
    const away = outline.map((point) => distanceToSegment(point, a, b));
    return {
      kind: kindAt(panel.supports ?? [], a, b) ?? usualKind,
      gapMm: Math.min(...away),
      deepMm: Math.max(...away),
      coreEndsMm: panel.coreEndsMm ?? 'unknown',
      flangeMm,
    };
  };
  const edges = [
    ...edgesOf(panel.outline).map(([a, b]) => edgeAt('other', a, b)),
    ...(panel.holes ?? []).flatMap((hole) => edgesOf(hole).map(([a, b]) => edgeAt('hatch', a, b))),
  ];
  const [nearest] = edges.filter(({ gapMm }) => gapMm < flangeMm).sort((a, b) => a.gapMm - b.gapMm);
  return nearest ?? 'none';
}

const ON_EDGE_MM = 60;
const edgeKinds: readonly string[] = ['toe-rail', 'hull-joint', 'coaming', 'hatch'];

const kindAt = (supports: readonly SupportLine[], a: Point, b: Point): string | undefined =>
  supports.find(
    ({ kind, from, to }) =>
      edgeKinds.includes(kind) &&
      distanceToSegment(from, a, b) <= ON_EDGE_MM &&
      distanceToSegment(to, a, b) <= ON_EDGE_MM,
  )?.kind;
