import { plateModel, type PlateAnswer, type PlateModel } from './plate-answer.js';

/** Where plates come from: made anew each time, or kept for the length of one job. */
export type PlateSource = typeof plateModel;

/**
 * A source that makes each plate once and lets it answer each load once. The deck as built and the repair chosen are asked
 * about by the search for a schedule and again by the check of the panel.
 */
export function keptPlates(): PlateSource {
  const models = new Map<string, PlateModel>();
  return (stiffness, size, edges) =>
    kept(models, keyOf([stiffness, size, edges]), () => answeringOnce(plateModel(stiffness, size, edges)));
}

function answeringOnce({ answerTo }: PlateModel): PlateModel {
  const answers = new Map<string, PlateAnswer>();
  return { answerTo: (load) => kept(answers, keyOf([load]), () => answerTo(load)) };
}

function kept<T>(known: Map<string, T>, key: string, make: () => T): T {
  const found = known.get(key);
  if (found !== undefined) return found;
  const made = make();
  known.set(key, made);
  return made;
}

/** Every value by name, to the last digit. */
const keyOf = (parts: readonly object[]): string => JSON.stringify(parts);
