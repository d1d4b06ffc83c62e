import type { ThreePoint } from '#lib/kernel';
import type { Cite } from '#lib/provenance';
import { threePoint } from './operations/cites.js';
import {
  appliesTo,
  type AppliesWhen,
  type Operation,
  type OperationFlags,
  type Strain,
} from './operation.js';

/** A circumstance that multiplies the hours of the operations it touches. */
export interface Modifier {
  readonly code: string;
  readonly title: string;
  readonly factor: ThreePoint;
  readonly appliesWhen: AppliesWhen;
  /** Absent: every operation; otherwise those that carry the strain. */
  readonly strain?: Strain;
  /** Codes of modifiers whose factor holds this one already, where they touch the operation. */
  readonly heldBy?: readonly string[];
  readonly cite: Cite;
}

const cite: Cite = { source: 'FROM-MEMORY', note: 'printed as a range; the likely value between is ours' };

export const modifiers: readonly Modifier[] = [
  {
    code: 'overhead',
    title: 'Overhead, from below',
    factor: threePoint(1.7, 2.1, 2.5),
    appliesWhen: { access: ['from-below'] },
    strain: 'overhead-from-below',
    cite,
  },
  {
    code: 'owner-first-time',
    title: 'Owner, first time',
    factor: threePoint(1.5, 2, 3),
    appliesWhen: { skill: ['owner'] },
    cite: { source: 'FROM-MEMORY' },
  },
  {
    code: 'outdoors',
    title: 'Outdoors without a tent',
    factor: threePoint(1.2, 1.35, 1.5),
    appliesWhen: { shelter: ['open'], access: ['from-above'] },
    strain: 'on-deck',
    cite,
  },
  {
    code: 'afloat',
    title: 'Afloat',
    factor: threePoint(1.2, 1.2, 1.2),
    appliesWhen: { berth: ['afloat'] },
    // A boat afloat lies in the open nearly always: the told factors of both hold the same wind and wet.
    heldBy: ['outdoors'],
    cite: { source: 'FROM-MEMORY' },
  },
  {
    code: 'cambered',
    title: 'Curved or cambered deck',
    factor: threePoint(1.05, 1.15, 1.25),
    appliesWhen: { panel: ['cambered'] },
    strain: 'by-area',
    cite: { source: 'FROM-MEMORY' },
  },
];

export function modifiersFor(operation: Operation, flags: OperationFlags): readonly Modifier[] {
  const touching = modifiers.filter(
    ({ code, appliesWhen, strain }) =>
      appliesTo(appliesWhen, flags) &&
      operation.holds?.includes(code) !== true &&
      (strain === undefined || operation.strains.includes(strain)),
  );
  const codes = touching.map(({ code }) => code);
  return touching.filter(({ heldBy = [] }) => !heldBy.some((code) => codes.includes(code)));
}
