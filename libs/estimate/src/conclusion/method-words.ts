import { failsByRepair } from '../sections/check-section.js';
import type { ConclusionSection, EstimateBody } from '../document/estimate-document.js';
import { lower } from './speaking.js';
import { areaSaid, digits } from './speaking.js';
import { verdictOf, type SaidVerdict } from './verdict.js';

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
  const who =
    names.length > MOST_NAMED
      ? `${names.length} fittings come off`
      : `Off ${names.length === 1 ? 'comes' : 'come'} ${listed(names)}`;
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
  const failed = estimate.checks.filter(failsByRepair).map(({ title }) => lower(title));
  const { panel, process } = estimate;
  const press = process.bondPressure;
  const shortfalls = [...(panel?.shortfalls ?? []), ...failed];
  const said = verdictOf({
    isPressed: press === undefined || press.method !== undefined,
    isOpened: panel !== undefined,
    shortfalls,
  });
  return { ...said, notes: notesOn(said, shortfalls, estimate) };
}

function notesOn({ code }: SaidVerdict, shortfalls: readonly string[], estimate: EstimateBody) {
  if (code === 'cannot-be-carried-out') return estimate.process.bondPressure?.refusals ?? [];
  return code === 'deck-stays-closed'
    ? []
    : [...shortfalls, ...(estimate.panel?.withinHands ?? []), ...builtLighter(estimate)];
}

/** A modern yardstick that the deck never was built to says nothing against the deck or the repair. */
function builtLighter({ checks }: EstimateBody): readonly string[] {
  const old = checks.filter(
    (check) => check.verdict === 'fails' && check.state === 'repaired' && !failsByRepair(check),
  );
  return old.length === 0
    ? []
    : [
        `A deck designed today to the yardsticks named in the annex would be stiffer (${[...new Set(old.map(({ title }) => lower(title.replace(/, small-craft yardstick$/, ''))))].join('; ')}). That is a remark on its design, and no fault of the deck or of the repair.`,
      ];
}
