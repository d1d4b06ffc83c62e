import type { Catalogue } from '#lib/catalogue';
import { estimate, type DefectRecord, type Estimate } from '#lib/estimate';
import { mapValue, type Outcome } from '#lib/kernel';
import { packedDerivations } from './derivation-graph.js';

/** An order to a thread; the catalogue only comes along when the thread does not have it yet. */
export interface EstimatingOrder {
  readonly record: DefectRecord;
  readonly catalogueHash: string;
  readonly catalogue?: Catalogue;
  readonly engineVersion: string;
}

/** The estimate as text, written once where it was computed, and the few values that the table keeps in columns. */
export interface WrittenEstimate extends Pick<
  Estimate,
  'title' | 'reference' | 'summary' | 'totals' | 'provenance'
> {
  readonly resultJson: string;
  /** See derivation-graph.ts. */
  readonly derivations: Uint8Array;
}

export type EstimatingAnswer = Outcome<WrittenEstimate> | 'catalogue-needed';

const MOST_CATALOGUES = 8;
const catalogues = new Map<string, Catalogue>();

/** Computes and writes one estimate. Runs in a worker; takes and gives plain data only. */
export function estimated({
  record,
  catalogueHash,
  catalogue,
  engineVersion,
}: EstimatingOrder): EstimatingAnswer {
  const known = catalogue ?? catalogues.get(catalogueHash);
  if (known === undefined) return 'catalogue-needed';
  if (catalogues.size >= MOST_CATALOGUES) catalogues.clear();
  catalogues.set(catalogueHash, known);
  return mapValue(estimate(record, known, engineVersion), ({ estimate: made, derivations }) => ({
    title: made.title,
    reference: made.reference,
    summary: made.summary,
    totals: made.totals,
    provenance: made.provenance,
    resultJson: JSON.stringify(made),
    derivations: packedDerivations(derivations),
  }));
}
