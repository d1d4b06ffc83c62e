import type { Datum, Hardener, ResinSystem } from '#lib/catalogue';
import { problem, refusal, unreachable, success, type Outcome, type Problem } from '#lib/kernel';
import { assumptionFrom, faultsIn, type ProcessAssumption, answeredIn, saidOr } from '#lib/asking';
import { deckWarmthQuestions, heldWarmthK, warmthAssumptions, warmthFaults } from './weather/deck.js';
import { forecastFaults } from './weather/forecast.js';
import { instantFaults, readInstant, writeInstant } from './weather/instant.js';
import { CURE_REFERENCE_C } from './arrhenius.js';
import {
  cureTemperatureQuestions,
  mixQuestions,
  type CureRequest,
  type TemperatureInput,
} from './cure-request.js';
import { courseFor, startOf, type DeckCourse } from './deck-course.js';
import { equivalentAges, hoursToAge, type AgeLaw } from './equivalent-age.js';

export const milestoneCodes = ['gel', 'release', 'recoat-shuts', 'sandable', 'full'] as const;
export type MilestoneCode = (typeof milestoneCodes)[number];

/** When something may be done: likely, with the band of the spec and of the temperature law. */
export interface Milestone {
  /** Which milestone of the cure. */
  readonly code: MilestoneCode;
  /** Name of the milestone. */
  readonly title: string;
  /** Hours that it takes at the reference temperature. */
  readonly ageH: number;
  /** Hours from mixing as the deck is warm; absent when the cure stands still. */
  readonly likelyH?: number;
  /** Earliest hours to reckon with. */
  readonly earlyH?: number;
  /** Latest hours to reckon with. */
  readonly lateH?: number;
  /** When it is likely reached (RFC 3339), where a start was stated. */
  readonly at?: string;
  /** Why a figure is absent. */
  readonly reason?: string;
}

export interface CurePlan {
  /** Step that the plan is for, when one was named. */
  readonly step?: string;
  /** Code of the resin that cures. */
  readonly resin: string;
  /** Code of the hardener that cures it. */
  readonly hardener: string;
  /** Temperature that the data sheet's times hold for. */
  readonly referenceC: number;
  /** How strongly warmth hastens the cure. */
  readonly activationEnergy: {
    /** Likely value, in kJ/mol. */
    readonly likely: number;
    /** Low end of the spread, in kJ/mol. */
    readonly low: number;
    /** High end of the spread, in kJ/mol. */
    readonly high: number;
    /** What the value leans on. */
    readonly basis: string;
  };
  /** Temperature below which this mix does not cure. */
  readonly stopsBelowC: number;
  /** Warmth of the deck while it cures. */
  readonly deck: {
    /** Mean temperature of the deck. */
    readonly meanC: number;
    /** Lowest temperature of the deck. */
    readonly coldestC: number;
    /** Highest temperature of the deck. */
    readonly warmestC: number;
    /** Hours that these three are taken over. */
    readonly overH: number;
  };
  /** Hours, until full cure or the end, in which the deck is too cold and nothing counts. */
  readonly stoppedH: number;
  /** When the mix gels, can be sanded, is hard. */
  readonly milestones: readonly Milestone[];
  /** What the crew should heed about the cure. */
  readonly notes: readonly string[];
  /** Figures of the cure that nobody stated. */
  readonly assumptions: readonly ProcessAssumption[];
}

const titles: Readonly<Record<MilestoneCode, string>> = {
  'gel': 'Gelled: leave it alone',
  'release': 'Pressure may come off',
  'recoat-shuts': 'Last moment to go on without sanding',
  'sandable': 'Sandable',
  'full': 'Full cure',
};

const hoursOf = (hardener: Hardener): Readonly<Record<MilestoneCode, Datum>> => ({
  'gel': hardener.gelH,
  'release': hardener.releaseH,
  'recoat-shuts': hardener.recoatShutsH,
  'sandable': hardener.sandableH,
  'full': hardener.fullCureH,
});

/** When the resin gels, may be let go, sanded, loaded, on a deck whose temperature goes up and down. */
export function planCure(request: CureRequest): Outcome<CurePlan> {
  const hardener = request.resin.hardeners.find(({ code }) => code === request.hardener);
  const problems = cureFaults(request, hardener);
  if (problems.length > 0 || hardener === undefined) return refusal(...problems);
  const course = courseFor(request);
  return success(planOver(request, hardener, course));
}

function planOver(request: CureRequest, hardener: Hardener, course: DeckCourse): CurePlan {
  const energy = energyOf(request.resin);
  const stopsBelowC = hardener.lowestTemperatureC.value;
  const laws = [energy.likely, energy.low, energy.high].map((activationEnergyKJPerMol): AgeLaw => ({
    referenceC: CURE_REFERENCE_C,
    activationEnergyKJPerMol,
    stopsBelowC,
  }));
  const ages = laws.map((law) => equivalentAges(course, law));
  const milestones = milestoneCodes.map((code) => milestoneOf(code, { request, hardener, course, ages }));
  const overH = milestones.reduce((most, { likelyH }) => Math.max(most, likelyH ?? course.lengthH), 0);
  return {
    ...(request.step === undefined ? {} : { step: request.step }),
    resin: request.resin.code,
    hardener: hardener.code,
    referenceC: CURE_REFERENCE_C,
    activationEnergy: energy,
    stopsBelowC,
    deck: deckOver(course, overH),
    stoppedH: stoppedOver(course, overH, stopsBelowC),
    milestones,
    notes: notesOn(request, hardener, { course, overH }),
    assumptions: [...warmthAssumptions('/warmth', request.warmth), ...startAssumptions(request)],
  };
}

function energyOf({
  activationEnergyKJPerMol: { value, low = value, high = value },
}: ResinSystem): CurePlan['activationEnergy'] {
  return {
    likely: value,
    low,
    high,
    basis: "activation energy of the resin with its band; the hours are the hardener's own at 25 degC",
  };
}

interface MilestoneContext {
  readonly request: CureRequest;
  readonly hardener: Hardener;
  readonly course: DeckCourse;
  readonly ages: readonly Float64Array[];
}

function milestoneOf(code: MilestoneCode, { request, hardener, course, ages }: MilestoneContext): Milestone {
  const { value, low = value, high = value } = hoursOf(hardener)[code];
  const [likelyH, ...others] = ages.map((age) => hoursToAge(age, course.stepH, value));
  const earlyH = least(ages.map((age) => hoursToAge(age, course.stepH, low)));
  const lates = ages.map((age) => hoursToAge(age, course.stepH, high));
  const lateH =
    lates.every((late) => late !== undefined) && others.length > 0
      ? Math.max(...lates.map((late) => late ?? 0))
      : undefined;
  return {
    code,
    title: titles[code],
    ageH: value,
    ...(likelyH === undefined
      ? { reason: endsBefore(course, ages[0], value) }
      : { likelyH, ...momentOf(request, course, likelyH) }),
    ...(earlyH === undefined ? {} : { earlyH }),
    ...(lateH === undefined ? {} : { lateH }),
  };
}

function least(values: readonly (number | undefined)[]): number | undefined {
  const known = values.flatMap((value) => value ?? []);
  return known.length === 0 ? undefined : Math.min(...known);
}

function endsBefore({ lengthH, kind }: DeckCourse, age: Float64Array, neededH: number): string {
  const reached = Math.floor((100 * age[age.length - 1]) / neededH);
  return kind === 'hourly'
    ? `the forecast ends after ${lengthH} h with ${reached} % of the cure done`
    : `not within ${lengthH / 24} days: the deck is too cold; ${reached} % of the cure is done by then`;
}

function momentOf(request: CureRequest, course: DeckCourse, hours: number): { readonly at?: string } {
  const start = startOf(request);
  return start === undefined
    ? {}
    : { at: writeInstant(start.epochMs + Math.round(hours * 60) * 60_000, course.offsetMinAt(hours)) };
}

function deckOver({ temperaturesC, stepH }: DeckCourse, overH: number): CurePlan['deck'] {
  const part = temperaturesC.subarray(0, Math.max(1, Math.floor(overH / stepH) + 1));
  return {
    meanC: part.reduce((sum, value) => sum + value, 0) / part.length,
    coldestC: part.reduce((a, b) => Math.min(a, b)),
    warmestC: part.reduce((a, b) => Math.max(a, b)),
    overH,
  };
}

const stoppedOver = ({ temperaturesC, stepH }: DeckCourse, overH: number, stopsBelowC: number): number =>
  temperaturesC
    .subarray(0, Math.floor(overH / stepH))
    .reduce((sum, value) => sum + (value < stopsBelowC ? stepH : 0), 0);

function notesOn(
  request: CureRequest,
  hardener: Hardener,
  { course: { temperaturesC, offsetMinAt }, overH }: { readonly course: DeckCourse; readonly overH: number },
): readonly string[] {
  const warmest = temperaturesC
    .subarray(0, Math.min(temperaturesC.length, 25))
    .reduce((a, b) => Math.max(a, b));
  const isEpoxy = request.resin.chemistry === 'epoxy';
  return [
    ...(warmest > hardener.highestTemperatureC.value
      ? [
          `The deck reaches ${warmest.toFixed(0)} degC in the first day, above the ${hardener.highestTemperatureC.value} degC of ${hardener.name}: it gels sooner and hotter than planned; shade it or take a slower hardener.`,
        ]
      : []),
    ...(isEpoxy
      ? ['Wash off the amine blush with water and abrade before anything else goes on.']
      : ['A surface open to the air may stay tacky; waxed resin or film lets it harden.']),
    ...(offsetMinAt(0) !== offsetMinAt(overH)
      ? ['The clocks change during this cure; hours are elapsed hours, moments carry their own offset.']
      : []),
    'Press with a thumbnail before you trust a clock: the milestone is reached when the resin says so.',
  ];
}

const startAssumptions = (request: CureRequest): readonly ProcessAssumption[] =>
  request.startHour !== undefined || request.startAt !== undefined || request.temperature.kind === 'constant'
    ? []
    : assumptionFrom(answeredIn(mixQuestions.startHour, undefined, '/startHour'));

function cureFaults(request: CureRequest, hardener: Hardener | undefined): readonly Problem[] {
  const { resin, temperature } = request;
  const own = [
    ...(hardener === undefined
      ? [
          problem('unknown-code', '/hardener', {
            value: request.hardener,
            kind: `hardener of ${resin.code}`,
            known: resin.hardeners.map(({ code }) => code).join(', '),
          }),
        ]
      : []),
    ...warmthFaults('/warmth', request.warmth),
    ...faultsIn(request, mixQuestions),
    ...(request.startAt === undefined ? [] : instantFaults('/startAt', request.startAt)),
    ...temperatureFaults(temperature),
  ];
  return own.length > 0 || hardener === undefined
    ? own
    : [...coldFaults(request, hardener), ...outsideForecast(request)];
}

const { temperatureC: steady, dayC: byDay, nightC: byNight } = cureTemperatureQuestions;

function temperatureFaults(temperature: TemperatureInput): readonly Problem[] {
  switch (temperature.kind) {
    case 'constant':
      return steady.faults(temperature.temperatureC, '/temperature/temperatureC');
    case 'day-night':
      return [
        ...byDay.faults(temperature.dayC, '/temperature/dayC'),
        ...byNight.faults(temperature.nightC, '/temperature/nightC'),
        ...(temperature.nightC > temperature.dayC
          ? [
              problem('contradiction', '/temperature/nightC', {
                other: '/temperature/dayC',
                why: 'the night is warmer than the day',
              }),
            ]
          : []),
      ];
    case 'hourly':
      return [
        ...forecastFaults(temperature.forecast, '/temperature/forecast'),
        ...(temperature.elsewhereDeckC === undefined
          ? []
          : steady.faults(temperature.elsewhereDeckC, '/temperature/elsewhereDeckC')),
      ];
    default:
      return unreachable(temperature);
  }
}

/** A deck that never rises above the limit cures nothing: that is not a long wait but a wrong resin. */
function coldFaults(request: CureRequest, hardener: Hardener): readonly Problem[] {
  const { temperature, warmth } = request;
  const extraK = heldWarmthK(warmth) + saidOr(deckWarmthQuestions.sunK, warmth?.sunK);
  const warmestC =
    temperature.kind === 'constant'
      ? temperature.temperatureC
      : temperature.kind === 'day-night'
        ? temperature.dayC
        : Math.max(
            temperature.elsewhereDeckC ?? Number.NEGATIVE_INFINITY,
            ...temperature.forecast.hours.map(({ temperatureC }) => temperatureC),
          );
  if (!Number.isFinite(warmestC) || warmestC + extraK >= hardener.lowestTemperatureC.value) return [];
  const at =
    temperature.kind === 'constant'
      ? '/temperature/temperatureC'
      : temperature.kind === 'day-night'
        ? '/temperature/dayC'
        : '/temperature/forecast/hours';
  return [
    problem('resin-too-cold', at, {
      value: warmestC,
      resin: `${request.resin.name} with ${hardener.name}`,
      lowest: hardener.lowestTemperatureC.value,
      instead: 'a hardener made for the cold',
    }),
  ];
}

function outsideForecast({ temperature, startAt }: CureRequest): readonly Problem[] {
  if (temperature.kind !== 'hourly' || startAt === undefined || temperature.elsewhereDeckC !== undefined)
    return [];
  const start = readInstant(startAt)?.epochMs;
  const [first, last] = [
    temperature.forecast.hours[0],
    temperature.forecast.hours[temperature.forecast.hours.length - 1],
  ].map((hour) => (hour === undefined ? undefined : readInstant(hour.at)?.epochMs));
  if (start === undefined || first === undefined || last === undefined || (start >= first && start < last))
    return [];
  return [
    problem('contradiction', '/startAt', {
      other: '/temperature/forecast',
      why: `${startAt} does not lie within the forecast, which begins at ${temperature.forecast.hours[0].at}`,
    }),
  ];
}
