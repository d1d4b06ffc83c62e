import { failsByRepair } from '../sections/check-section.js';
import type { ConclusionSection, EstimateBody } from '../document/estimate-document.js';
import { lower } from './finding-words.js';
import { areaSaid, digits } from './speaking.js';

/** What is done, what holds it while it cures, and what becomes of fittings and leak: three sentences. */
export function methodSentences(estimate: EstimateBody): readonly string[] {
  return [openingSentence(estimate), fittingSentence(estimate), leakSentence(estimate)];
}

function openingSentence({ core, laminate, scope, methods, process }: EstimateBody): string {
  const rung = methods.rungs.find(({ rung: code }) => code === methods.planned.rung);
  if (core === undefined || laminate === undefined)
    return `${methods.planned.title}: ${(rung?.stages ?? []).join(', ')}.`;
  const skin =
    laminate.method === 're-bed'
      ? 'the old skin is bonded back'
      : `a new skin of ${laminate.plies.length} plies is laid, tapered ${digits(laminate.taperRatio, 3)}:1 into the old one`;
  const under = process.bondPressure?.props.needed === true ? ' over a propped inner skin' : '';
  const filled =
    core.pieces.length === 0
      ? 'it is filled solid'
      : `new core (${lower(core.materialName)}) is bedded${under}`;
  return `${methods.planned.title}: ${areaSaid(scope.openedAreaM2)} is opened, bad core comes out, ${filled}, and ${skin}.`;
}

const MOST_NAMED = 6;

function fittingSentence({ hardware, scope }: EstimateBody): string {
  if (hardware.length === 0) return 'No fitting has to come off.';
  const names = hardware.map(({ id }) => id);
  const who = names.length > MOST_NAMED ? `${names.length} fittings come off` : `Off come ${listed(names)}`;
  const solid = scope.fittings.filter(({ work }) => work.includes('insert')).map(({ id }) => id);
  const under = solid.length === 0 ? '' : `, solid goes under ${listed(solid)},`;
  return `${who}; holes are potted and redrilled${under} and all is bedded anew.`;
}

const listed = (names: readonly string[]): string =>
  names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names[names.length - 1]}`;

const leakSentence = ({ leak }: EstimateBody): string =>
  leak.isRemedied
    ? `The way in of the water is stopped: ${leak.remedy}.`
    : `The way in of the water is not stopped by this plan: ${lower(leak.title)}; ${leak.remedy}.`;

/** One verdict on the finished repair, in one sentence, and what is only a remark on the deck as it was built. */
export function verdictOn(estimate: EstimateBody): ConclusionSection['verdict'] {
  const failed = estimate.checks.filter(failsByRepair);
  const { panel, process } = estimate;
  if (process.bondPressure !== undefined && process.bondPressure.method === undefined)
    return {
      code: 'cannot-be-carried-out',
      sentence: 'As recorded the repair cannot be carried out: no way was found to press what is bonded.',
      notes: process.bondPressure.refusals,
    };
  if (panel === undefined)
    return {
      code: 'deck-stays-closed',
      sentence: 'The deck stays closed; the repair is good when the core proves dry and the water stays out.',
      notes: [],
    };
  const shortfalls = [...panel.shortfalls, ...failed.map(({ title }) => lower(title))];
  return shortfalls.length > 0
    ? {
        code: 'not-restored',
        sentence:
          'Repaired as planned, this deck does not get back all that it had when built; the shortfalls are named.',
        notes: [...shortfalls, ...builtLighter(estimate)],
      }
    : {
        code: 'restored',
        sentence: 'Repaired as planned, this deck is as stiff and as strong as it was built, by calculation.',
        notes: builtLighter(estimate),
      };
}

/** A modern yardstick that the deck never was built to says nothing against the deck or the repair. */
function builtLighter({ checks }: EstimateBody): readonly string[] {
  const old = checks.filter(
    (check) => check.verdict === 'fails' && check.state === 'repaired' && !failsByRepair(check),
  );
  return old.length === 0
    ? []
    : [
        `A deck designed today to the yardsticks named in the annex would be stiffer (${[...new Set(old.map(({ title }) => lower(title.replace(/, yardstick$/, ''))))].join('; ')}). That is a remark on its design, and no fault of the deck or of the repair.`,
      ];
}
