import type { Assumption } from '#lib/asking';
import { finding, type Finding, type Plug } from '#lib/extent';
import type { DefectRecord } from './defect-record.js';

/** A thickness that plugs measured otherwise than the record states it. */
interface Overruled {
  readonly at: string;
  readonly what: string;
  readonly statedMm: number;
  readonly measuredMm: number;
  readonly leastMm: number;
  readonly mostMm: number;
  readonly plugs: number;
}

export interface MeasuredRecord {
  /** The record with measured thicknesses in place of stated ones. */
  readonly record: DefectRecord;
  readonly overruled: readonly Overruled[];
}

/** What a rule and a plug agree to: half a millimetre or a tenth, whichever is more, is no contradiction. Source: [COMMON-PRACTICE]. */
const AGREES_MM = 0.5;
const AGREES_SHARE = 0.1;

/**
 * What plugs measured goes before what the record states: the middle of them is what saw, laminate, stack and panel are
 * planned with. Millimetres throughout; doubtful readings measure nothing; a record without plugs comes back as it is.
 *
 * Source: [COMMON-PRACTICE] a measured thickness rules
 * Worked: libs/estimate/src/job/measured.spec.ts
 */
export function measuredRecord(record: DefectRecord): MeasuredRecord {
  const outer = measuredBy(record, ({ outerSkinMm }) => outerSkinMm);
  const inner = measuredBy(record, ({ innerSkinMm }) => innerSkinMm);
  const core = measuredBy(record, ({ coreMm }) => coreMm);
  return {
    record: {
      ...record,
      ...(outer === undefined ? {} : { outerSkin: { ...record.outerSkin, thicknessMm: outer.middleMm } }),
      ...(inner === undefined ? {} : { innerSkin: { ...record.innerSkin, thicknessMm: inner.middleMm } }),
      ...(core === undefined ? {} : { core: { ...record.core, thicknessMm: core.middleMm } }),
    },
    overruled: [
      ...overruledBy(outer, record.outerSkin.thicknessMm, {
        at: '/outerSkin/thicknessMm',
        what: 'the outer skin',
      }),
      ...overruledBy(inner, record.innerSkin.thicknessMm, {
        at: '/innerSkin/thicknessMm',
        what: 'the inner skin',
      }),
      ...overruledBy(core, record.core.thicknessMm, { at: '/core/thicknessMm', what: 'the core' }),
    ],
  };
}

interface Measured {
  readonly middleMm: number;
  readonly leastMm: number;
  readonly mostMm: number;
  readonly plugs: number;
}

function measuredBy({ survey }: DefectRecord, of: (plug: Plug) => number | undefined): Measured | undefined {
  const values = (survey?.readings ?? [])
    .flatMap((reading) =>
      reading.kind === 'plug' && reading.isUnreliable !== true ? (of(reading) ?? []) : [],
    )
    .sort((a, b) => a - b);
  if (values.length === 0) return undefined;
  const half = (values.length - 1) / 2;
  return {
    middleMm: (values[Math.floor(half)] + values[Math.ceil(half)]) / 2,
    leastMm: values[0],
    mostMm: values[values.length - 1],
    plugs: values.length,
  };
}

const agrees = (oneMm: number, otherMm: number): boolean =>
  Math.abs(oneMm - otherMm) <= Math.max(AGREES_MM, AGREES_SHARE * otherMm);

const overruledBy = (
  measured: Measured | undefined,
  statedMm: number,
  named: Pick<Overruled, 'at' | 'what'>,
): readonly Overruled[] =>
  measured === undefined || measured.middleMm === statedMm
    ? []
    : [{ ...named, ...measured, statedMm, measuredMm: measured.middleMm }];

/** The record's own value stays to be seen beside the one that overrules it. */
export const overruledAssumptions = (overruled: readonly Overruled[]): readonly Assumption[] =>
  overruled.map(({ at, what, statedMm, measuredMm, plugs }) => ({
    at,
    meaning: `thickness of ${what}`,
    value: `${measuredMm} mm`,
    because: `measured ${plugs === 1 ? 'at a plug' : `at ${plugs} plugs, the middle of them`}; the ${statedMm} mm of the record are overruled`,
    source: 'COMMON-PRACTICE',
  }));

/** Contradictions between what is stated and what was measured, and among plugs. */
export const measuredFindings = (record: DefectRecord): readonly Finding[] =>
  measuredRecord(record).overruled.flatMap(({ what, statedMm, measuredMm, leastMm, mostMm, plugs }) => [
    ...(agrees(measuredMm, statedMm)
      ? []
      : [finding('measured-overrules', { what, statedMm, measuredMm, plugs })]),
    ...(agrees(mostMm, leastMm) ? [] : [finding('plugs-disagree', { what, leastMm, mostMm, measuredMm })]),
  ]);
