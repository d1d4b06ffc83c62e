import type { ThreePoint } from '#lib/kernel';
import { defineFormula } from '#lib/provenance';
import { m2 } from '#lib/units';
import { betterGrades, type EvidenceGrade, type Reading, type Survey } from './reading.js';
import { containsPoint, distanceToEdge, type Region } from '#lib/geometry';
import { finding, type Finding } from './finding.js';
import { growthCite } from './growth-law.js';
import { verdictOf, type ReadingOdds } from './map/reading-odds.js';

/**
 * What symptoms miss altogether where the extent is mapped from readings: wet core that still holds and sounds sharp. How far
 * hammer and meter err is the map's own affair and not in these; judgement, as no published rate was found.
 */
export const silentMultipliers: Readonly<Record<EvidenceGrade, ThreePoint>> = {
  'opened-and-measured': { low: 1, likely: 1, high: 1 },
  'mapped-with-plugs': { low: 1, likely: 1.01, high: 1.06 },
  'sounded-and-metered': { low: 1, likely: 1.02, high: 1.15 },
  'single-symptom': { low: 1, likely: 1.1, high: 1.6 },
};

export const grownArea = defineFormula({
  id: 'extent.grown-area',
  title: 'Bad core once the deck is open',
  cite: growthCite,
  inputs: {
    mappedM2: { symbol: 'A', unit: 'm2', meaning: 'bad core as mapped', from: 0 },
    multiplier: { symbol: 'k', unit: '1', meaning: 'multiplier of the evidence grade', from: 0 },
  },
  output: { symbol: 'Ak', unit: 'm2', meaning: 'bad core once the deck is open' },
  evaluate: ({ mappedM2, multiplier }) => m2(mappedM2 * multiplier),
  // By hand: 0.5 m2, of which 1.2 times is found: 0.6 m2.
  worked: [{ at: 'by hand', given: { mappedM2: 0.5, multiplier: 1.2 }, printed: '0.6' }],
});

/** A sound plug this near to a boundary proves it from outside. */
export const BRACKET_MM = 300;

/** Fewer readings of one kind are a spot check, not a survey. */
const LEAST_OF_KIND = 3;

export interface GradedZone {
  readonly id: string;
  readonly region: Region;
}

export interface Grading {
  readonly grade: EvidenceGrade;
  readonly because: string;
  readonly findings: readonly Finding[];
}

/** The grade that the readings themselves amount to; unreliable ones do not count. */
export function gradeOf(survey: Survey, zones: readonly GradedZone[], odds: ReadingOdds): Grading {
  const reliable = survey.readings.filter(({ isUnreliable }) => isUnreliable !== true);
  const plugs = reliable.filter(({ kind }) => kind === 'plug');
  const bracketing = zones.map((zone) => ({ zone, ...bracketOf(zone, plugs, survey, odds) }));
  const findings = bracketing.flatMap(({ zone, hasInside, hasOutside }) => [
    ...(hasInside ? [] : [finding('no-plug-in-zone', { zone: zone.id })]),
    ...(hasOutside ? [] : [finding('no-plug-outside-zone', { zone: zone.id, withinMm: BRACKET_MM })]),
  ]);
  if (zones.length > 0 && findings.length === 0) {
    return {
      grade: 'mapped-with-plugs',
      because: 'every zone has a plug of bad core inside and one of sound core just outside',
      findings,
    };
  }
  const kinds = (['sounding', 'moisture', 'plug'] as const).filter(
    (kind) =>
      reliable.filter((reading) => reading.kind === kind).length >= (kind === 'plug' ? 1 : LEAST_OF_KIND),
  );
  return kinds.length >= 2
    ? {
        grade: 'sounded-and-metered',
        because: `${kindWords(kinds)} agree, but not every boundary has plugs on both sides`,
        findings,
      }
    : {
        grade: 'single-symptom',
        because:
          kinds.length === 0 ? 'too few reliable readings of any one kind' : `only ${kindWords(kinds)}`,
        findings,
      };
}

const kindNames = { sounding: 'soundings', moisture: 'meter readings', plug: 'plugs' } as const;
const kindWords = (kinds: readonly (keyof typeof kindNames)[]): string =>
  kinds.map((kind) => kindNames[kind]).join(' and ');

function bracketOf(
  { region }: GradedZone,
  plugs: readonly Reading[],
  { meter }: Survey,
  odds: ReadingOdds,
): { readonly hasInside: boolean; readonly hasOutside: boolean } {
  const said = (reading: Reading) => verdictOf(reading, meter, odds);
  return {
    hasInside: plugs.some((plug) => said(plug) === 'bad' && containsPoint(region, plug.at)),
    hasOutside: plugs.some(
      (plug) =>
        said(plug) === 'sound' &&
        !containsPoint(region, plug.at) &&
        distanceToEdge(plug.at, region) <= BRACKET_MM,
    ),
  };
}

/** A stated grade is believed downwards, not upwards; that the deck was opened no reading from outside can show or deny. */
export function settledGrade(stated: EvidenceGrade | undefined, found: Grading): Grading {
  if (stated === undefined || stated === found.grade) return found;
  if (stated === 'opened-and-measured')
    return { ...found, grade: stated, because: 'stated in the record: opened and measured again' };
  if (betterGrades(stated).includes(found.grade))
    return { ...found, grade: stated, because: `stated in the record, although ${found.because}` };
  return {
    ...found,
    findings: [...found.findings, finding('evidence-overstated', { stated, found: found.grade })],
  };
}
