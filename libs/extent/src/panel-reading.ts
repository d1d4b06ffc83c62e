import {
  allOf,
  andThen,
  below,
  pointer,
  problem,
  refusal,
  success,
  type Outcome,
  type Problem,
} from '#lib/kernel';
import {
  areaMm2,
  difference,
  intersection,
  readOutline,
  readPoint,
  regionOf,
  type Region,
  type Ring,
} from '#lib/geometry';
import { m2FromMm2, mm2 } from '#lib/units';
import { finding, roundTo, type Finding } from './finding.js';
import { drawnByHand, type ZoneOnPanel } from './drawn-zone.js';
import type { PanelShape, SupportShape, ZoneShape } from './openings/request.js';

const MOST_HOLES = 100;
const MOST_SUPPORTS = 100;
const MOST_ZONES = 50;

const panelsRead = new WeakMap<PanelShape, Region>();

/** The panel as a region; a hole that swallows it is refused. One that was found right is read once, however often it is asked for. */
export function readPanel(panel: PanelShape, at: string): Outcome<Region> {
  const known = panelsRead.get(panel);
  if (known !== undefined) return success(known);
  const read = panelFrom(panel, at);
  if (read.ok) panelsRead.set(panel, read.value);
  return read;
}

function panelFrom(panel: PanelShape, at: string): Outcome<Region> {
  const outer = readOutline(panel.outline, `${at}/outline`);
  const holes = readRings(panel.holes ?? [], `${at}/holes`);
  const supports = supportProblems(panel.supports ?? [], `${at}/supports`);
  const read = allOf({
    outer,
    holes,
    supports: supports.length === 0 ? success(undefined) : refusal(...supports),
  });
  return andThen(read, (rings) => {
    const region = regionOf(rings.outer, rings.holes);
    return areaMm2(region) < 1 ? refusal(problem('nothing-left', `${at}/holes`)) : success(region);
  });
}

function readRings(rings: readonly (readonly unknown[])[], at: string): Outcome<readonly Ring[]> {
  if (rings.length > MOST_HOLES)
    return refusal(problem('too-many', at, { count: rings.length, most: MOST_HOLES }));
  const read = rings.map((ring, index) => readOutline(ring, pointer(at, index)));
  const problems = read.flatMap((outcome) => (outcome.ok ? [] : outcome.problems));
  return problems.length > 0
    ? refusal(...problems)
    : success(read.flatMap((outcome) => (outcome.ok ? [outcome.value] : [])));
}

function supportProblems(supports: readonly SupportShape[], at: string): readonly Problem[] {
  if (supports.length > MOST_SUPPORTS)
    return [problem('too-many', at, { count: supports.length, most: MOST_SUPPORTS })];
  return supports.flatMap(({ from, to }, index) => {
    const here = pointer(at, index);
    const ends = [readPoint(from, `${here}/from`), readPoint(to, `${here}/to`)];
    const problems = ends.flatMap((end) => (end.ok ? [] : end.problems));
    if (problems.length > 0) return problems;
    const isPoint = Math.hypot(to[0] - from[0], to[1] - from[1]) < 1;
    return isPoint
      ? [
          problem('contradiction', `${here}/to`, {
            other: `${here}/from`,
            why: 'a line of support needs two different ends',
          }),
        ]
      : [];
  });
}

export interface ZonesRead {
  readonly zones: readonly ZoneOnPanel[];
  readonly findings: readonly Finding[];
}

/** Less of a zone than this on the panel is a slip of the pencil, and less of it outside is not worth a word. */
const [LEAST_INSIDE_MM2, LEAST_OUTSIDE_MM2] = [100, 100];

export function readZones(zones: readonly ZoneShape[], panel: Region, at: string): Outcome<ZonesRead> {
  if (zones.length > MOST_ZONES)
    return refusal(problem('too-many', at, { count: zones.length, most: MOST_ZONES }));
  if (zones.length === 0) return refusal(problem('too-few', at, { count: 0, least: 1 }));
  const read = zones.map((zone, index) => readZone(zone, panel, pointer(at, index)));
  const repeats = zones.flatMap(({ id }, index) =>
    zones.findIndex((zone) => zone.id === id) < index
      ? [problem('duplicate', pointer(at, index, 'id'), { value: id })]
      : [],
  );
  const problems = [...repeats, ...read.flatMap((outcome) => (outcome.ok ? [] : outcome.problems))];
  if (problems.length > 0) return refusal(...problems);
  const found = read.flatMap((outcome) => (outcome.ok ? [outcome.value] : []));
  const { zones: planned, findings } = drawnByHand(
    found.map(({ zone }) => zone),
    panel,
  );
  return success({ zones: planned, findings: [...found.flatMap((one) => one.findings), ...findings] });
}

interface ZoneRead {
  readonly zone: ZoneOnPanel;
  readonly findings: readonly Finding[];
}

const zonesRead = new WeakMap<ZoneShape, { readonly panel: Region; readonly read: ZoneRead }>();

/** A zone that was found right on a panel is read once. */
function readZone(zone: ZoneShape, panel: Region, at: string): Outcome<ZoneRead> {
  const known = zonesRead.get(zone);
  if (known?.panel === panel) return success(known.read);
  const outcome = zoneFrom(zone, panel, at);
  if (outcome.ok) zonesRead.set(zone, { panel, read: outcome.value });
  return outcome;
}

function zoneFrom(zone: ZoneShape, panel: Region, at: string): Outcome<ZoneRead> {
  const rings = allOf({
    outer: readOutline(zone.outline, `${at}/outline`),
    holes: readRings(zone.holes ?? [], `${at}/holes`),
  });
  return andThen(rings, ({ outer, holes }) => {
    const drawn = regionOf(outer, holes);
    const inside = intersection(drawn, panel);
    const outsideMm2 = areaMm2(difference(drawn, panel));
    const outsideM2 = roundTo(m2FromMm2(mm2(outsideMm2)), 4);
    if (areaMm2(inside) < LEAST_INSIDE_MM2)
      return refusal(problem('outside-panel', `${at}/outline`, { outsideM2 }));
    return success({
      zone: { id: zone.id, region: inside, drawn: { outer, holes } },
      findings:
        outsideMm2 > LEAST_OUTSIDE_MM2 ? [clipped(zone.id, outsideM2, outsideMm2 / areaMm2(drawn))] : [],
    });
  });
}

const clipped = (zone: string, outsideM2: number, share: number): Finding =>
  finding('zone-clipped', { zone, outsideM2, share: Math.max(1, roundTo(100 * share, 0)) });

/** Keeps the problems of a part and their place in the whole. */
export const problemsOf = (outcome: Outcome<unknown>, at = ''): readonly Problem[] =>
  outcome.ok ? [] : below(at, outcome.problems);
