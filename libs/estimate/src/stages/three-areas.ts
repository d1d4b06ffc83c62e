import { areaMm2, difference, intersection, offset, union, type Region } from '#lib/geometry';
import { limits, type CoreState, type Method } from '#lib/methods';
import { m2FromMm2, mm2 } from '#lib/units';
import type { PanelRecord } from '../job/defect-record.js';
import type { Job } from '../job/job.js';
import { coreStateIn, isProvenDry } from '../ladder/places.js';
import type { ScopeWork } from './scope-stage.js';

/** What is opened, what core comes out of it, and what is filled solid: three areas that a yard prices apart. */
export interface ThreeAreas {
  readonly fill: Method['fill'];
  /** Sound core in each opening that is left where it is, by the opening's label. */
  readonly stays: ReadonlyMap<string, Region>;
  readonly recorded: RecordedAreas;
}

/** At the extent that was recorded, in square metres; `wet` of the core that comes out. */
export interface RecordedAreas {
  readonly openedM2: number;
  readonly cutM: number;
  readonly staysM2: number;
  readonly looseSkinM2: number;
  readonly heldSkinM2: number;
  readonly looseCoreM2: number;
  readonly heldCoreM2: number;
  readonly wetM2: number;
}

/** Openings with what stays in them. */
export interface OpenedScope extends ScopeWork {
  readonly areas: ThreeAreas;
}

/** Core that stays between two places where it comes out, and is narrower than this, crumbles under the chisel and comes out too. From memory. */
const LEAST_RIB_MM = 40;

/**
 * Bad core and the margin that proves its boundary come out; sound core beyond stays, because it is bonded to the skin below
 * and to the core under the lip. Core that a plug shows dry under a skin that let go stays as well.
 */
export function withAreas(job: Job, scope: ScopeWork): OpenedScope {
  const states = scope.zones.map((zone) => ({
    region: [{ outer: zone.outline, holes: zone.holes ?? [] }],
    state: coreStateIn(job, zone),
    comesOut: !(staysIn(job) && isProvenDry(job, zone)),
  }));
  const panel = groundOf(job.record.panel);
  const bad = union(...states.flatMap(({ region, comesOut }) => (comesOut ? [region] : [])));
  const out = bad.length === 0 ? [] : offset(bad, limits.provenMarginMm, 'round', ARC_MM);
  const sound = staysIn(job) ? withoutRibs(difference(panel, out)) : [];
  const stays = new Map(
    scope.plan.openings.map(({ label, area }) => [label, withoutCrumbs(intersection(sound, [area]))]),
  );
  return {
    ...scope,
    areas: { fill: job.fill, stays, recorded: recordedAreas(scope, states, [...stays.values()]) },
  };
}

const ARC_MM = 0.5;
const CRUMB_MM2 = 200;

const staysIn = ({ answers }: Job): boolean => answers.method.soundCore.value === 'stays';

const groundOf = ({ outline, holes = [] }: PanelRecord): Region =>
  difference(
    [{ outer: outline, holes: [] }],
    holes.flatMap((hole) => [{ outer: hole, holes: [] }]),
  );

const withoutRibs = (sound: Region): Region =>
  intersection(sound, offset(offset(sound, -LEAST_RIB_MM / 2, 'miter'), LEAST_RIB_MM / 2, 'round', ARC_MM));

const withoutCrumbs = (region: Region): Region => region.filter((polygon) => areaMm2([polygon]) >= CRUMB_MM2);

interface ZoneState {
  readonly region: Region;
  readonly state: CoreState;
}

/** Skin holds wherever its core is sound or merely wet; core is scooped where it is rotten and cut where it holds. */
function recordedAreas(
  { plan }: ScopeWork,
  zones: readonly ZoneState[],
  staying: readonly Region[],
): RecordedAreas {
  const opened = union(...plan.openings.map(({ area }) => [area]));
  const stays = union(...staying);
  const out = difference(opened, stays);
  const inState = (...states: readonly CoreState[]): Region =>
    union(...zones.flatMap(({ region, state }) => (states.includes(state) ? [region] : [])));
  const within = (ground: Region, part: Region): number =>
    m2FromMm2(mm2(areaMm2(intersection(ground, part))));
  const openedM2 = m2FromMm2(mm2(areaMm2(opened)));
  const outM2 = m2FromMm2(mm2(areaMm2(out)));
  const looseSkinM2 = within(opened, inState('wet-rotten', 'dry-debonded'));
  const looseCoreM2 = within(out, inState('wet-rotten'));
  const dryM2 = within(out, inState('dry-debonded'));
  return {
    openedM2,
    cutM: plan.figures.cutLength.value,
    staysM2: openedM2 - outM2,
    looseSkinM2,
    heldSkinM2: openedM2 - looseSkinM2,
    looseCoreM2,
    heldCoreM2: outM2 - looseCoreM2,
    wetM2: outM2 - dryM2,
  };
}
