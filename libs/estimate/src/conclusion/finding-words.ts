import type { EvidenceGrade } from '#lib/extent';
import type { EstimateBody, FindingSubject, GradedFinding, Worded } from '../document/estimate-document.js';
import type { DefectRecord, FindingClass, StatedFinding } from '../job/defect-record.js';
import { gradeOf, subjectsOf } from './grading.js';
import { areaSaid, lower, tensOfMm } from './speaking.js';

const conditions: Readonly<Record<string, string>> = {
  'wet-rotten': 'wet and rotten',
  'wet-bonded': 'wet, hard and still bonded to the skins',
  'dry-debonded': 'dry, with the skin loose from it',
  'damp-sound': 'damp, and sound',
  'dry-sound': 'dry and sound',
};

const knownFrom: Readonly<Record<EvidenceGrade, string>> = {
  'opened-and-measured': 'It was opened and measured.',
  'mapped-with-plugs': 'It was mapped, with core samples on both sides of its boundary.',
  'sounded-and-metered': 'It was sounded with a hammer and measured with a moisture meter.',
  'single-symptom': 'It rests on a single symptom; its extent is a guess.',
};

/** A finding for each place, as the surveyor words it or else as the facts do. */
export function findingsOf(estimate: EstimateBody, record: DefectRecord): readonly GradedFinding[] {
  const stated = record.findings ?? [];
  const subjects = subjectsOf(estimate, record);
  const plugs = (record.survey?.readings ?? []).filter(({ kind }) => kind === 'plug').length;
  return [
    ...subjects.map((subject) =>
      worded(
        subject,
        stated.find(({ about }) => about === subject.about),
        { estimate, plugs },
      ),
    ),
    ...stated
      .filter(({ about }) => !subjects.some((subject) => subject.about === about))
      .map((finding) => ofTheSurveyor(finding)),
  ];
}

interface Known {
  readonly estimate: EstimateBody;
  /** How many core samples the record holds. */
  readonly plugs: number;
}

function worded(
  subject: FindingSubject,
  stated: StatedFinding | undefined,
  { estimate, plugs }: Known,
): GradedFinding {
  const grade = gradeOf(subject);
  const own = stated?.class;
  const byClass = own ?? grade.class;
  return {
    ...subject,
    class: byClass,
    classByService: grade.class,
    classBecause: own === undefined ? grade.because : 'so classed by the surveyor',
    wording: saidBy(stated?.wording, factsOf(subject, { estimate, plugs })),
    recommendation: saidBy(stated?.recommendation, adviceOf(byClass, subject, estimate)),
    restriction: saidBy(stated?.restriction, restrictionOf(byClass, subject)),
  };
}

/** About something that the service knows nothing of: it stands as it was written. */
const ofTheSurveyor = ({
  about,
  class: stated,
  wording,
  recommendation,
  restriction,
}: StatedFinding): GradedFinding => ({
  about,
  condition: 'unknown',
  areaM2: 0,
  fittings: [],
  class: stated ?? 'next-opportunity',
  classByService: 'next-opportunity',
  classBecause:
    stated === undefined
      ? 'no class was stated, and it is not a zone of the record'
      : 'so classed by the surveyor',
  wording: saidBy(wording, `${about}: not described.`),
  recommendation: saidBy(recommendation, 'Have it looked at.'),
  restriction: saidBy(restriction, 'None stated.'),
});

export const saidBy = (surveyor: string | undefined, service: string): Worded => ({
  text: surveyor ?? service,
  byService: service,
  isSurveyors: surveyor !== undefined,
});

/** Where, what, how large and how it is known: fact before opinion. */
function factsOf(
  { about, condition, areaM2, fromAftMm, fittings }: FindingSubject,
  { estimate: { scope }, plugs }: Known,
): string {
  const state = conditions[condition];
  const where =
    fromAftMm === undefined
      ? ''
      : `, ${tensOfMm(fromAftMm[0])} to ${tensOfMm(fromAftMm[1])} mm forward of its aft edge`;
  const extent = areaM2 > 0 ? ` over ${areaSaid(areaM2)}` : '';
  return [
    `${about}, ${scope.panel.name}${where}: the core is ${state ?? 'not sound; its condition is not known'}${extent}.`,
    ...(fittings.length === 0 ? [] : [`On it: ${fittings.map(({ id }) => id).join(', ')}.`]),
    knownFrom[scope.evidence],
    ...samplesSaid(scope.evidence, plugs),
  ].join(' ');
}

/** Core that was opened or mapped was seen; otherwise it is said whether a sample was taken. */
function samplesSaid(evidence: EvidenceGrade, plugs: number): readonly string[] {
  if (evidence === 'opened-and-measured' || evidence === 'mapped-with-plugs') return [];
  if (plugs === 0) return ['No core was seen.'];
  return [plugs === 1 ? 'One core sample was taken.' : `${plugs} core samples were taken.`];
}

const by: Readonly<Record<FindingClass, string>> = {
  'before-use': 'before the vessel is used again',
  'next-opportunity': 'at the next opportunity, before another season',
  'monitor': 'when the readings rise',
};

function adviceOf(
  byClass: FindingClass,
  { condition }: FindingSubject,
  { methods, leak }: EstimateBody,
): string {
  const way = methods.planned.title;
  const verb = condition === 'dry-sound' ? 'Close' : 'Repair';
  const what =
    byClass === 'monitor'
      ? `Stop the water, read the same points again each season, and repair (${lower(way)}) ${by[byClass]}.`
      : `${verb} it (${lower(way)}) ${by[byClass]}.`;
  return `${what} Verify by ${leak.verify}.`;
}

function restrictionOf(byClass: FindingClass, { fittings, condition }: FindingSubject): string {
  if (condition === 'dry-sound')
    return 'Until it is closed, keep it taped over, and look under it after rain.';
  const names = fittings.map(({ id }) => id).join(', ');
  switch (byClass) {
    case 'before-use':
      return `Until it is repaired, put no load on ${names === '' ? 'what stands on it' : `what stands on it (${names})`}, and keep people off the marked area.`;
    case 'next-opportunity':
      return 'Until it is repaired, do not jump or drop loads on the marked area, and keep water out of its fittings.';
    case 'monitor':
      return 'None, for as long as the readings stay as they are.';
  }
}
