import {
  andThen,
  lazily,
  problem,
  randomStream,
  refusal,
  success,
  type Outcome,
  type Problem,
  type ThreePoint,
} from '#lib/kernel';
import { areaMm2, containsPoint, distanceToRegion, union, type Region, type Ring } from '#lib/geometry';
import { assumed, assumptionsOf, computeChecked, derived, entered, type Figure } from '#lib/provenance';
import { fraction, m2, m2FromMm2, mm2 } from '#lib/units';
import { gradeOf, grownArea, settledGrade, silentMultipliers, type Grading } from './evidence-grade.js';
import type { ExtentRequest } from './extent-request.js';
import { growthCite, growthLaw, growthQuantile, mappedLaw, type GrowthLaw } from './growth-law.js';
import { finding, roundTo, toWholeMm, type Finding } from './finding.js';
import { areaDraws } from './map/area-draws.js';
import { contourAt } from './map/contour.js';
import { chosenCut, cutProbabilityFigure, leaveCostFigure, type CutChoice } from './cut-choice.js';
import { mapAssumptions, settingProblems, settingsOf, type Settings } from './map/settings.js';
import { sourcesOn } from './map/sources.js';
import { mapOf, type SurveyMap } from './map/survey-map.js';
import type { ZoneOnPanel } from './drawn-zone.js';
import { problemsOf, readPanel, readZones } from './panel-reading.js';
import { quantileAmong, quantilesOf, weighedQuantilesOf, type Quantiles } from './quantiles.js';
import { plugCount, withSilent } from './silent.js';
import { readingFindings, sparseFindings, zoneFindings } from './reading-findings.js';
import type { EvidenceGrade, Place, Survey } from './reading.js';
import { nextReadingsOf, type NextReadings } from './next/next-readings.js';
import { readingWords } from './next/kinds.js';
import { nextAnswers, nextProblems } from './next/questions.js';
import { LEAST_READINGS, surveySoFarFaults } from './survey-questions.js';

/** How far the damage goes, and how sure that is. */
export interface Extent {
  /** Whether readings or only drawn zones say where the core is bad. */
  readonly from: 'readings' | 'drawn-zones';
  /** Bad core to be opened, largest first; ready to be the zones of `planOpenings`. */
  readonly zones: readonly ExtentZone[];
  /** Edges within which the core is bad with a given chance. */
  readonly contours: readonly ProbabilityContour[];
  /** Chance of bad core at the middle of each cell of the panel; absent for drawn zones. */
  readonly map?: ProbabilityMap;
  /** How the cut was decided; absent for drawn zones. */
  readonly cut?: CutChoice;
  /** Area of the zones. */
  readonly mappedAreaM2: number;
  /** Area of bad core as far as the readings leave it open; absent for drawn zones. */
  readonly mapSpreadM2?: Quantiles;
  /** Area of bad core once the deck is open: the map's own spread, or what the evidence grade says of a drawn zone. */
  readonly damagedAreaM2: Quantiles;
  /** `damagedAreaM2` over `mappedAreaM2`; absent when nothing is mapped. */
  readonly growth?: Quantiles;
  /** How good the evidence is, and what follows from that. */
  readonly evidence: {
    /** Grade of the evidence. */
    readonly grade: EvidenceGrade;
    /** Why it has this grade. */
    readonly because: string;
    /** Growth at P10, P50 and P90. */
    readonly multiplier: ThreePoint;
    /** How the found area grows over the recorded one at this grade. */
    readonly law: GrowthLaw;
  };
  /** What about the evidence deserves attention. */
  readonly findings: readonly Finding[];
  /** Where to tap or plug next, and whether it is worth it; absent for drawn zones, unless it is asked for. */
  readonly nextReadings?: NextReadings;
  /** What was taken about readings and decay. */
  readonly assumptions: readonly Figure[];
  /** Areas with their derivations. */
  readonly figures: ExtentFigures;
}

export interface ExtentZone {
  /** Id of the damaged zone. */
  readonly id: string;
  /** Edge of the damaged zone. */
  readonly outline: Ring;
  /** Sound islands within the zone. */
  readonly holes: readonly Ring[];
  /** Area of the zone without its islands. */
  readonly areaM2: number;
  /** Whether somebody drew the edge or the map gave it. */
  readonly boundary: 'drawn' | 'mapped';
}

export interface ProbabilityContour {
  /** Chance of bad core along this edge. */
  readonly probability: number;
  /** Where core is bad with at least this probability. */
  readonly areas: Region;
  /** Area within this edge. */
  readonly areaM2: number;
}

export interface ProbabilityMap {
  /** Distance between the places of the map. */
  readonly stepMm: number;
  /** Distance over which the readings suggest that the damage hangs together. */
  readonly rangeMm: number;
  /** How often the hammer errs, as the readings agree with each other and with plugs; absent where the odds of soundings were given. */
  readonly hammer?: {
    /** Share of sound places that sound dull. */
    readonly falseAlarmShare: number;
    /** Share of bad places that ring clear. */
    readonly missedShare: number;
    /** How likely it is that its errors hang together in patches. */
    readonly hangingTogether: number;
  };
  /** Where the meter reads over sound and over bad core, as shares of its scale from dry to wet reference, and how far it strays. */
  readonly meter?: {
    /** Mean reading over sound core, as a share of the meter's span. */
    readonly overSoundShare: number;
    /** Mean reading over bad core, as a share of the meter's span. */
    readonly overBadShare: number;
    /** Scatter of readings, as a share of the meter's span. */
    readonly sdShare: number;
  };
  /** Places with their chances. */
  readonly cells: readonly {
    /** Middle of the cell, [xMm, yMm]. */
    readonly at: Place;
    /** Chance that the core is bad there. */
    readonly chance: number;
  }[];
}

export interface ExtentFigures {
  /** Area within the chosen edge. */
  readonly mappedArea: Figure<'m2'>;
  /** Bad area to be expected. */
  readonly likelyArea: Figure<'m2'>;
}

/** From readings, a map of chances and the contour worth cutting to; from drawn zones, the zones; from both, the zones as graded by the readings. */
export function estimateExtent(request: ExtentRequest): Outcome<Extent> {
  const panel = readPanel(request.panel, '/panel');
  const hasZones = (request.zones ?? []).length > 0;
  const zones =
    panel.ok && hasZones ? readZones(request.zones ?? [], panel.value, '/zones') : success(undefined);
  const problems = [...problemsOf(panel), ...problemsOf(zones), ...requestProblems(request)];
  if (problems.length > 0 || !panel.ok || !zones.ok) return refusal(...problems);
  if (zones.value === undefined)
    return fromReadings(request, panel.value, request.survey ?? { readings: [] });
  const drawn = fromZones(request, panel.value, zones.value.zones);
  return success({ ...drawn, findings: [...zones.value.findings, ...drawn.findings] });
}

function requestProblems({ survey, zones, map, next }: ExtentRequest): readonly Problem[] {
  const nothing =
    survey === undefined && (zones ?? []).length === 0
      ? [
          problem('missing', '/survey', {
            expected: 'give the readings of a survey, or draw at least one zone',
          }),
        ]
      : [];
  return [
    ...nothing,
    ...(survey === undefined ? [] : surveySoFarFaults(survey, '/survey')),
    ...settingProblems(map),
    ...nextProblems({ next }),
  ];
}

/** Readings beyond the edge, as when one survey serves several panels, say nothing about this one. */
function onPanel(
  survey: Survey,
  panel: Region,
): { readonly survey: Survey; readonly findings: readonly Finding[] } {
  const isOn = survey.readings.map(({ at }) => containsPoint(panel, at) || distanceToRegion(at, panel) < 1);
  const away = survey.readings
    .filter((_, index) => !isOn[index])
    .map(({ at }) => distanceToRegion(at, panel));
  return {
    survey: { ...survey, readings: survey.readings.filter((_, index) => isOn[index]) },
    findings:
      away.length === 0
        ? []
        : [finding('readings-outside', { count: away.length, farthestMm: toWholeMm(Math.max(...away)) })],
  };
}

function fromReadings(request: ExtentRequest, panel: Region, given: Survey): Outcome<Extent> {
  const { survey, findings } = onPanel(given, panel);
  const count = survey.readings.length;
  // Who asks where to read first has read nothing yet.
  const least = request.next === undefined ? LEAST_READINGS : 0;
  if (count < least) return refusal(problem('too-few', '/survey/readings', { count, least }));
  const settings = settingsOf(request.map, sourcesOn(panel, request.fittings ?? []));
  const map = mapOf(panel, survey, settings);
  const { zones: cut, choice } = chosenCut(request, panel, map);
  const zones = zonesFrom(cut);
  const grading = settledGrade(
    request.evidence,
    gradeOf(
      survey,
      zones.map(({ id, outline, holes }) => ({ id, region: [{ outer: outline, holes }] })),
      settings.odds,
    ),
  );
  const areas = areaDraws(map, settings);
  const spread = spreadOf(areas, { survey, grading, settings }, panel);
  const next = lazily(() =>
    nextOn(request, { panel, survey, settings, map, areas }, { ...choice, opened: cut }),
  );
  const all = [
    ...findings,
    ...(count === 0 ? [] : readingFindings(survey, settings.odds)),
    ...sparseFindings(map, survey.readings),
    ...emptyFindings(zones, map, { spread, choice, next }),
    ...grading.findings,
    ...spread.findings,
  ];
  return success(
    assembled({
      request,
      survey,
      zones,
      grading,
      spread,
      findings: all,
      map,
      choice,
      next,
      panel,
      contours: contoursOf(map, settings, panel, choice),
    }),
  );
}

/** What the next readings of a survey are looked for from. */
interface Mapped {
  readonly panel: Region;
  readonly survey: Survey;
  readonly settings: Settings;
  readonly map: SurveyMap;
  /** Draws of the area of bad core, mm2. */
  readonly areas: Float64Array;
}

function nextOn(
  request: ExtentRequest,
  { panel, survey, settings, map, areas }: Mapped,
  { probability, opened }: Pick<CutChoice, 'probability'> & { readonly opened: Region },
): NextReadings {
  const { seed, odds } = settings;
  return nextReadingsOf({
    map,
    deck: { panel, shape: request.panel, fittings: request.fittings ?? [], survey },
    answers: nextAnswers(request),
    odds,
    seed,
    opened,
    cutProbability: probability,
    leaveHPerM2: leaveCostFigure(request.map?.leaveCostHPerM2).value,
    areas,
  });
}

/** Beside drawn zones the readings are mapped only for who asks where to read next. */
function nextBeside(
  request: ExtentRequest,
  panel: Region,
  survey: Survey,
  drawn: readonly ZoneOnPanel[],
): NextReadings | undefined {
  if (request.next === undefined || request.survey === undefined) return undefined;
  const settings = settingsOf(request.map, sourcesOn(panel, request.fittings ?? []));
  const map = mapOf(panel, survey, settings);
  return nextOn(
    request,
    { panel, survey, settings, map, areas: areaDraws(map, settings) },
    {
      probability: request.map?.cutProbability ?? cutProbabilityFigure(request.map?.leaveCostHPerM2).value,
      opened: union(...drawn.map(({ region }) => region)),
    },
  );
}

function contoursOf(
  map: SurveyMap,
  settings: Settings,
  panel: Region,
  { probability: cut }: CutChoice,
): readonly ProbabilityContour[] {
  return [...new Set([...settings.contourProbabilities, cut])]
    .sort((one, other) => one - other)
    .map((probability) => ({ probability, areas: contourAt(probability, map.chance, map.lattice, panel) }))
    .map(({ probability, areas }) => ({ probability, areas, areaM2: squareMetres(areas) }));
}

const squareMetres = (region: Region): number => m2FromMm2(mm2(areaMm2(region)));

const zonesFrom = (cut: Region): readonly ExtentZone[] =>
  cut
    .map(({ outer, holes }) => ({
      outline: outer,
      holes,
      areaM2: squareMetres([{ outer, holes }]),
      boundary: 'mapped' as const,
    }))
    .sort((one, other) => other.areaM2 - one.areaM2)
    .map((zone, index) => ({ id: `Z${index + 1}`, ...zone }));

/** Nothing is opened only where that costs least; what chance of bad core remains, and what would settle it, is said with it. */
function emptyFindings(
  zones: readonly ExtentZone[],
  { chance, lattice }: SurveyMap,
  {
    spread,
    choice,
    next,
  }: { readonly spread: Spread; readonly choice: CutChoice; readonly next: () => NextReadings },
): readonly Finding[] {
  if (zones.length > 0) return [];
  const likeliest = lattice.nodes.reduce(
    (best, { areaMm2: area }, node) => (area > 0 && chance[node] > chance[best] ? node : best),
    lattice.nodes.findIndex(({ areaMm2: area }) => area > 0),
  );
  const [xMm, yMm] = lattice.nodes[likeliest].place.map(toWholeMm);
  return [
    finding('nothing-to-open', {
      probability: roundTo(100 * chance[likeliest], 0),
      xMm,
      yMm,
      expectedM2: roundTo(choice.expectedLeftM2, 2),
      upToM2: roundTo(spread.damaged.p90, 2),
      next: settledBy(next()),
    }),
  ];
}

const settledBy = ({ readings: [first], advice }: NextReadings): string =>
  first === undefined
    ? `${advice.text} A plug at that place would settle it; otherwise stop every leak above it and sound it again next season.`
    : `What would settle it best: first a ${readingWords[first.kind]} at (${first.at.join(', ')}) mm, which finds bad core with ${roundTo(100 * first.chance, 0)} %, then the further next readings.`;

interface Spread {
  readonly map?: Quantiles;
  readonly damaged: Quantiles;
  readonly findings: readonly Finding[];
}

interface Known {
  readonly survey: Survey;
  readonly grading: Grading;
  readonly settings: Settings;
}

/** Each draw of the map's area is grown by what symptoms may miss, as far as plugs leave that open, and held to the panel. */
function spreadOf(areas: Float64Array, { survey, grading, settings }: Known, panel: Region): Spread {
  const { seed, odds } = settings;
  const panelMm2 = areaMm2(panel);
  const random = randomStream(seed ^ 0x5bd1e995);
  const grown = withSilent(areas, silentMultipliers[grading.grade], {
    ...plugCount(survey, odds),
    panelMm2,
    random,
  });
  const inPanel = grown.map(({ areaMm2: area, weight }) => ({ value: Math.min(area, panelMm2), weight }));
  return {
    map: inSquareMetres(quantilesOf(areas)),
    damaged: inSquareMetres(weighedQuantilesOf(inPanel)),
    findings: cappedFindings(grown.filter(({ areaMm2: area }) => area > panelMm2).length / grown.length),
  };
}

const inSquareMetres = ({ p10, p50, p90 }: Quantiles): Quantiles => ({
  p10: m2FromMm2(mm2(p10)),
  p50: m2FromMm2(mm2(p50)),
  p90: m2FromMm2(mm2(p90)),
});

/** A tenth of the cases past the panel is worth a word. */
const CAPPED_SHARE = 0.1;

/** Of areas that rise with their place, `EVEN` of them. */
function held(areaAt: (place: number) => number, panel: Region): Omit<Spread, 'map'> {
  const most = areaMm2(panel);
  const at = (probability: number): number =>
    quantileAmong(EVEN, (place) => Math.min(areaAt(place), most), probability);
  const first = firstPlace((place) => areaAt(place) >= most * (1 - 1e-9));
  return {
    damaged: inSquareMetres({ p10: at(0.1), p50: at(0.5), p90: at(0.9) }),
    findings: cappedFindings((EVEN - first) / EVEN),
  };
}

/** The first place from which on something holds, by halving. */
function firstPlace(holds: (place: number) => boolean): number {
  let [low, high] = [0, EVEN];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (holds(middle)) high = middle;
    else low = middle + 1;
  }
  return low;
}

const cappedFindings = (share: number): readonly Finding[] =>
  share >= CAPPED_SHARE ? [finding('growth-capped', { share: roundTo(100 * share, 0) })] : [];

/** So many evenly spread probabilities, of which quantiles are exact: a drawn zone's area grows by the grade's multiplier alone, which needs no chance. */
const EVEN = 1000;

function fromZones(request: ExtentRequest, panel: Region, drawn: readonly ZoneOnPanel[]): Extent {
  const settings = settingsOf(request.map);
  const { survey, findings } = onPanel(request.survey ?? { readings: [] }, panel);
  const grading =
    survey.readings.length > 0
      ? settledGrade(request.evidence, gradeOf(survey, drawn, settings.odds))
      : statedGrade(request.evidence);
  const zones = drawn.flatMap(({ id, region }) =>
    region.map(({ outer, holes }, index) => ({
      id: region.length === 1 ? id : `${id}-${index + 1}`,
      outline: outer,
      holes,
      areaM2: squareMetres([{ outer, holes }]),
      boundary: 'drawn' as const,
    })),
  );
  const mappedMm2 = areaMm2(union(...drawn.map(({ region }) => region)));
  const law = growthLaw({
    grade: grading.grade,
    recordedM2: m2FromMm2(mm2(mappedMm2)),
    mostM2: squareMetres(panel),
    ...(request.foundOverRecorded === undefined ? {} : { pairs: request.foundOverRecorded }),
  });
  const spread = held((place) => mappedMm2 * growthQuantile(law, (place + 0.5) / EVEN), panel);
  const all = [
    ...findings,
    ...zoneFindings(
      drawn.map(({ region }) => region),
      survey,
      settings.odds,
    ),
    ...grading.findings,
    ...spread.findings,
  ];
  return assembled({
    request,
    survey,
    zones,
    grading,
    spread,
    findings: all,
    contours: [],
    panel,
    mappedMm2,
    next: lazily(() => nextBeside(request, panel, survey, drawn)),
  });
}

/** Zones without readings: the record's own word, or that somebody sounded and metered before drawing. */
const statedGrade = (stated: EvidenceGrade | undefined): Grading =>
  stated === undefined
    ? {
        grade: 'sounded-and-metered',
        because: 'a drawn boundary is taken to have been sounded and metered',
        findings: [],
      }
    : { grade: stated, because: 'stated in the record', findings: [] };

interface Parts {
  readonly request: ExtentRequest;
  readonly survey: Survey;
  readonly zones: readonly ExtentZone[];
  readonly contours: readonly ProbabilityContour[];
  readonly grading: Grading;
  readonly spread: Spread;
  readonly findings: readonly Finding[];
  readonly map?: SurveyMap;
  readonly choice?: CutChoice;
  readonly next: () => NextReadings | undefined;
  readonly panel: Region;
  /** Drawn zones may overlap; mapped ones do not. */
  readonly mappedMm2?: number;
}

function assembled({
  request,
  survey,
  zones,
  contours,
  grading,
  spread,
  findings,
  map,
  choice,
  next,
  panel,
  mappedMm2,
}: Parts): Extent {
  const mappedAreaM2 =
    mappedMm2 === undefined ? zones.reduce((sum, { areaM2 }) => sum + areaM2, 0) : m2FromMm2(mm2(mappedMm2));
  const law = lawOf({ spread, grading, request, mappedAreaM2, panel });
  const multiplier = {
    low: growthQuantile(law, 0.1),
    likely: growthQuantile(law, 0.5),
    high: growthQuantile(law, 0.9),
  };
  const figures = figuresOf({ mappedAreaM2, request, map, multiplier, grading });
  const { damaged } = spread;
  const growth = {
    p10: damaged.p10 / mappedAreaM2,
    p50: damaged.p50 / mappedAreaM2,
    p90: damaged.p90 / mappedAreaM2,
  };
  return {
    from: map === undefined ? 'drawn-zones' : 'readings',
    zones,
    contours,
    mappedAreaM2,
    ...(map === undefined ? {} : { map: mapForReaders(map) }),
    ...(choice === undefined ? {} : { cut: choice }),
    ...(spread.map === undefined ? {} : { mapSpreadM2: spread.map }),
    damagedAreaM2: damaged,
    ...(mappedAreaM2 > 0 ? { growth } : {}),
    evidence: { grade: grading.grade, because: grading.because, multiplier, law },
    findings,
    figures,
    // A third of the work of a map, and more: whoever shows the map alone is spared it.
    get nextReadings() {
      return next();
    },
    assumptions: [
      ...(map === undefined ? [] : mapAssumptions(request.map, survey)),
      ...assumptionsOf(figures.likelyArea).filter(
        ({ origin }) => origin.kind === 'assumed' && !origin.at.startsWith('/map'),
      ),
    ],
  };
}

/** The map's own law where readings drew it, else that of the evidence grade. */
function lawOf({
  spread,
  grading,
  request,
  mappedAreaM2,
  panel,
}: Pick<Parts, 'spread' | 'grading' | 'request' | 'panel'> & { readonly mappedAreaM2: number }): GrowthLaw {
  const of = {
    recordedM2: Math.max(LEAST_MAPPED_M2, mappedAreaM2),
    mostM2: squareMetres(panel),
    ...(request.foundOverRecorded === undefined ? {} : { pairs: request.foundOverRecorded }),
  };
  return spread.map === undefined
    ? growthLaw({ grade: grading.grade, ...of })
    : mappedLaw(spread.damaged, of);
}

/** Where nothing is mapped nothing grows; the law still needs a size. */
const LEAST_MAPPED_M2 = 1e-4;

function mapForReaders({
  lattice,
  chance,
  rangeMm,
  team: { hammer, meter },
  hangingTogether,
}: SurveyMap): ProbabilityMap {
  const cells = lattice.nodes.flatMap(({ place: [x, y], areaMm2: inside }, node) =>
    inside > 0 ? [{ at: [roundTo(x, 1), roundTo(y, 1)] as const, chance: roundTo(chance[node], 4) }] : [],
  );
  return {
    stepMm: lattice.stepMm,
    rangeMm,
    ...(hammer === undefined
      ? {}
      : {
          hammer: {
            falseAlarmShare: roundTo(1 - hammer.overSound.sharp, 3),
            missedShare: roundTo(hammer.overBad.sharp, 3),
            hangingTogether: roundTo(hangingTogether, 3),
          },
        }),
    ...(meter === undefined
      ? {}
      : {
          meter: {
            overSoundShare: roundTo(meter.overSound, 3),
            overBadShare: roundTo(meter.overBad, 3),
            sdShare: roundTo(meter.sd, 3),
          },
        }),
    cells,
  };
}

function figuresOf({
  mappedAreaM2,
  request,
  map,
  multiplier: { low, likely, high },
  grading,
}: Pick<Parts, 'request' | 'map' | 'grading'> & {
  readonly mappedAreaM2: number;
  readonly multiplier: ThreePoint;
}): ExtentFigures {
  const cut =
    request.map?.cutProbability === undefined
      ? cutProbabilityFigure(request.map?.leaveCostHPerM2)
      : entered(
          '1',
          fraction(request.map.cutProbability),
          'chance of bad core from which core is taken out',
          '/map/cutProbability',
        );
  const mappedArea =
    map === undefined
      ? entered('m2', m2(mappedAreaM2), 'bad core as drawn', '/zones')
      : derived('m2', m2(mappedAreaM2), 'bad core as mapped from the readings', {
          formula: 'extent.mapped-area',
          title: 'Area inside the contour worth cutting to',
          symbol: 'A',
          cite: { source: 'LINDGREN-2011', clause: 'section 2.2' },
          inputs: { cutProbability: cut },
        });
  const multiplier = assumed(
    '1',
    fraction(likely),
    `middle growth of the extent, evidence ${grading.grade}`,
    { at: '/evidence', because: grading.because, cite: growthCite, low, high },
  );
  return { mappedArea, likelyArea: computeChecked(grownArea, { mappedM2: mappedArea, multiplier }) };
}

/** Where to tap or plug next, and whether it is worth it; with drawn zones these are what is opened as things stand. */
export function nextReadings(request: ExtentRequest): Outcome<NextReadings> {
  if (request.survey === undefined)
    return refusal(
      problem('missing', '/survey', { expected: 'give the readings so far, or an empty list of readings' }),
    );
  return andThen(estimateExtent({ ...request, next: request.next ?? {} }), ({ nextReadings: next }) =>
    next === undefined ? refusal(problem('missing', '/survey', { expected: 'readings' })) : success(next),
  );
}
