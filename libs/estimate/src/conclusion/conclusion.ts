import type { Source } from '#lib/catalogue';
import type { Estimate, EstimateBody, RungSection } from '../document/estimate-document.js';
import type { DefectRecord } from '../job/defect-record.js';
import { bibliographyOf } from './bibliography.js';
import { findingsOf } from './finding-words.js';
import { methodSentences, verdictOn } from './method-words.js';
import { reinspectionPoints } from './reinspection.js';

/** Says in words what everything that was worked out comes to: findings, advice, verdict, and what is looked at again. */
export function concluded(body: EstimateBody, record: DefectRecord, sources: readonly Source[]): Estimate {
  const reinspection = reinspectionPoints(body);
  const verdict = verdictOn(body);
  return {
    ...body,
    summary: { ...body.summary, verdict: verdict.code },
    conclusion: {
      verdict,
      findings: findingsOf(body, record),
      method: { sentences: methodSentences(body), ...runnerUpOf(body.methods) },
      reinspection,
    },
    bibliography: bibliographyOf(
      body,
      reinspection.map(({ source }) => source),
      sources,
    ),
  };
}

/** With what it would cost, so that a reader sees what the choice was between. */
function runnerUpOf({ runnerUp, rungs }: EstimateBody['methods']) {
  if (runnerUp === undefined) return {};
  const rung = rungs.find(({ rung: code }) => code === runnerUp.rung);
  return { runnerUp: { title: runnerUp.title, because: runnerUp.because, ...pricesOf(rung) } };
}

const pricesOf = (rung: RungSection | undefined) =>
  rung?.priceRange === undefined ? {} : { price: rung.priceRange.p50 };
