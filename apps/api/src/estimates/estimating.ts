import type { Catalogue } from '#lib/catalogue';
import { estimate, type DefectRecord, type Estimate } from '#lib/estimate';
import { mapValue, type Outcome } from '#lib/kernel';
import { keepToLimits } from '../edge/answer-limits.js';
import { precise } from '../edge/precision.js';
import { hashOf } from './content-hash.js';
import { packedDerivations } from './derivation-graph.js';

/** An order to a thread. */
export interface EstimatingOrder {
  readonly record: DefectRecord;
  readonly engineVersion: string;
  /** Whether the derivations are wanted beside the document. */
  readonly isDerived: boolean;
}

/** The estimate as text, written once where it was computed, in the precision of its units, and the few values that the table keeps in columns. */
export interface WrittenEstimate extends Pick<
  Estimate,
  'title' | 'reference' | 'summary' | 'totals' | 'provenance'
> {
  readonly resultJson: string;
  /** SHA-256 of the record, with its members in order. */
  readonly inputHash: string;
  /** See derivation-graph.ts; null where they were not wanted. */
  readonly derivations: Uint8Array | null;
}

export type EstimatingAnswer = Outcome<WrittenEstimate>;

/** Computes and writes one estimate. Runs in a thread; takes and gives plain data only. */
export const run = (
  { record, engineVersion, isDerived }: EstimatingOrder,
  catalogue: Catalogue,
): EstimatingAnswer =>
  mapValue(estimate(record, catalogue, engineVersion), ({ estimate: made, derivations }) => {
    keepToLimits(made);
    return {
      title: made.title,
      reference: made.reference,
      summary: made.summary,
      totals: made.totals,
      provenance: made.provenance,
      resultJson: JSON.stringify(precise(made)),
      inputHash: hashOf(record),
      derivations: isDerived ? packedDerivations(derivations) : null,
    };
  });
