import {
  ask,
  askFor,
  askLabel,
  askList,
  askOutline,
  askPart,
  askPlace,
  askText,
  askWhether,
  askWhich,
  fittingBaseAsked,
  fittingHolesAsked,
  practice,
} from '#lib/asking';
import { evidenceGrades, fittingKinds, surveyFaults, type Survey } from '#lib/extent';
import { leakCauses } from '#lib/methods';

/** The state of a zone that nobody stated and no plug has shown. */
export const usualCondition = practice(
  'wet-rotten',
  'the commonest state of a core that has gone soft; a plug shows the real one',
);

export const zoneQuestions = {
  id: askLabel({ meaning: 'name of the zone' }),
  outline: askOutline({ meaning: 'the region of bad core' }),
  condition: askWhich({
    meaning: 'condition of the core',
    choices: ['wet-rotten', 'wet-bonded', 'dry-debonded'],
    otherwise: usualCondition,
  }),
};

export const zones = askList({
  meaning: 'zones of bad core',
  least: 0,
  most: 50,
  unlike: 'id',
  of: zoneQuestions,
  otherwise: 'none',
});

export const fittingQuestions = {
  id: askLabel({ meaning: 'name of the fitting' }),
  kind: askWhich({
    meaning: 'kind of fitting',
    description: 'What the fitting is, such as a cleat or the base of a stanchion.',
    choices: fittingKinds,
  }),
  at: askPlace({ meaning: 'where it stands' }),
  holes: ask({ ...fittingHolesAsked, otherwise: 'unknown' }),
  holeDiameterMm: ask({
    unit: 'mm',
    meaning: 'diameter of its holes',
    range: { above: 0, upTo: 200 },
    otherwise: 'unknown',
  }),
  baseMm: ask({ ...fittingBaseAsked, otherwise: 'unknown' }),
  isLeaking: askWhether({
    meaning: 'whether it leaks',
    description: 'Whether water comes in at the fitting.',
    otherwise: 'unknown',
  }),
  wetReachMm: ask({
    unit: 'mm',
    meaning: 'reach of wet core from a hole',
    note: 'From the side of a hole to the first dry, clean core, as far as somebody dug.',
    range: { from: 0, upTo: 500 },
    otherwise: 'unknown',
  }),
  boltMm: ask({
    unit: 'mm',
    meaning: 'size of its bolts',
    range: { above: 0, upTo: 40 },
    otherwise: 'unknown',
  }),
  boltLengthMm: ask({
    unit: 'mm',
    meaning: 'length of its bolts',
    range: { above: 0, upTo: 400 },
    otherwise: 'unknown',
  }),
  plateMm: ask({
    unit: 'mm',
    meaning: 'side of its backing plate',
    description: 'Side of its backing plate; not smaller than the base.',
    range: { above: 0, upTo: 3000 },
    otherwise: 'unknown',
  }),
  plateThicknessMm: ask({
    unit: 'mm',
    meaning: 'thickness of its backing plate',
    range: { above: 0, upTo: 60 },
    otherwise: 'unknown',
  }),
  insertMm: ask({
    unit: 'mm',
    meaning: 'side of the solid that goes under it',
    range: { above: 0, upTo: 3000 },
    otherwise: 'unknown',
  }),
  offH: ask({
    unit: 'h',
    meaning: 'hours to take it off',
    note: 'Of one pair of hands, by whoever knows how it sits; absent, those of its kind.',
    range: { above: 0, upTo: 200 },
    otherwise: 'unknown',
  }),
  onH: ask({
    unit: 'h',
    meaning: 'hours to set it again',
    note: 'Base cleaned, bedded and bolted; a second person comes on top.',
    range: { above: 0, upTo: 200 },
    otherwise: 'unknown',
  }),
};

export const causeQuestions = {
  cause: askWhich({
    meaning: 'what let the water in',
    choices: ['leaking-fitting', 'impact', 'construction', 'unknown'],
  }),
  causeClass: askWhich({
    meaning: 'class of the cause',
    note: 'What the insurer will ask: sudden, already there, or upkeep.',
    choices: ['sudden', 'pre-existing', 'maintenance'],
    otherwise: 'unknown',
  }),
  leak: askWhich({
    meaning: 'where the water came in',
    description: 'Where the water came in; its remedy becomes part of the plan.',
    choices: leakCauses,
    otherwise: 'unknown',
  }),
  lengthMm: ask({
    unit: 'mm',
    meaning: 'length of the joint or crack that leaks',
    range: { above: 0, upTo: 50_000 },
    otherwise: 'unknown',
  }),
  note: askText({ meaning: 'note on the cause', atMost: 2000, otherwise: 'unknown' }),
};

/** Parts of the record that describe what is wrong with the deck, and how well that is known. */
export const defectParts = {
  zones,
  survey: askFor<Survey, 'unknown'>({
    meaning: 'readings of hammer, meter and plugs',
    faults: surveyFaults,
    otherwise: 'unknown',
  }),
  fittings: askList({
    meaning: 'fittings through the deck',
    least: 0,
    most: 200,
    unlike: 'id',
    of: fittingQuestions,
    otherwise: 'none',
  }),
  evidence: askWhich({
    meaning: 'how well the extent is known',
    choices: evidenceGrades,
    otherwise: practice(
      'sounded-and-metered',
      'a drawn boundary is taken to have been sounded and metered; plugs on both sides of it would narrow the range',
    ),
  }),
  cause: askPart({
    meaning: 'the cause',
    note: 'What let the water in, and how an insurer would class it.',
    of: causeQuestions,
    otherwise: 'unknown',
  }),
};
