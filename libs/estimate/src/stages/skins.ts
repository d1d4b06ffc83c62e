import { below, problem, refusal, success, type Outcome } from '#lib/kernel';
import {
  findPlyMethod,
  measureOldSkin,
  type OldPly,
  type OldSkinMeasure,
  type PlyMethodName,
} from '#lib/laminate';
import { findMaterial, type Catalogue } from '#lib/catalogue';
import type { SkinRecord } from '../job/defect-record.js';
import type { Job } from '../job/job.js';

/** One ply-property method for the whole estimate: families are compared, never blended. */
export const plyMethodName: PlyMethodName = 'class-bv';

export interface OldSkins {
  readonly outer: OldSkinMeasure;
  readonly inner: OldSkinMeasure;
}

/** Stiffness and strength of the skins as built, from their plies or guessed from their thickness. */
export function oldSkinsOf({ record, catalogue }: Job): Outcome<OldSkins> {
  const outer = measured(record.outerSkin, catalogue, '/outerSkin');
  const inner = measured(record.innerSkin, catalogue, '/innerSkin');
  if (outer.ok && inner.ok) return success({ outer: outer.value, inner: inner.value });
  return refusal(...(outer.ok ? [] : outer.problems), ...(inner.ok ? [] : inner.problems));
}

function measured(skin: SkinRecord, catalogue: Catalogue, at: string): Outcome<OldSkinMeasure> {
  const plies = pliesOf(skin, catalogue, at);
  if (!plies.ok) return plies;
  const method = findPlyMethod(plyMethodName);
  if (method === undefined)
    return refusal(problem('not-supported', at, { why: `the method ${plyMethodName} is not known` }));
  const outcome = measureOldSkin(
    { thicknessMm: skin.thicknessMm, ...(plies.value === undefined ? {} : { plies: plies.value }) },
    method,
  );
  return outcome.ok ? outcome : refusal(...below(at, outcome.problems));
}

export function pliesOf(
  { plies }: SkinRecord,
  catalogue: Catalogue,
  at: string,
): Outcome<readonly OldPly[] | undefined> {
  if (plies === undefined) return success(undefined);
  const found = plies.map(({ material }, index) => ({
    index,
    material,
    fabric: findMaterial(catalogue, 'reinforcement', material),
  }));
  const unknown = found.filter(({ fabric }) => fabric === undefined);
  if (unknown.length > 0) {
    return refusal(
      ...unknown.map(({ index, material }) =>
        problem('unknown-code', `${at}/plies/${index}/material`, {
          value: material,
          kind: 'reinforcement',
          known: catalogue.materials
            .filter(({ kind }) => kind === 'reinforcement')
            .map(({ code }) => code)
            .join(', '),
        }),
      ),
    );
  }
  // A record names plies from the face inwards; the laminate room counts from the core outwards.
  return success(
    found.flatMap(({ fabric }) => (fabric === undefined ? [] : [{ material: fabric }])).reverse(),
  );
}

/** The skin that is opened and closed again, and the one that stays. */
export const workedSkin = (job: Job, skins: OldSkins) =>
  job.answers.method.access.value === 'from-above'
    ? {
        worked: skins.outer,
        other: skins.inner,
        workedMm: job.answers.outerSkin.thicknessMm,
        otherMm: job.answers.innerSkin.thicknessMm,
        record: job.record.outerSkin,
        at: '/outerSkin',
      }
    : {
        worked: skins.inner,
        other: skins.outer,
        workedMm: job.answers.innerSkin.thicknessMm,
        otherMm: job.answers.outerSkin.thicknessMm,
        record: job.record.innerSkin,
        at: '/innerSkin',
      };
