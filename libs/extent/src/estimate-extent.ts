import {
  problem,
  randomStream,
  refusal,
  success,
  triangularQuantile,
  type Outcome,
  type Problem,
  type ThreePoint,
} from '#lib/kernel';
import { areaMm2, containsPoint, distanceToRegion, union, type Region, type Ring } from '#lib/geometry';
import { assumed, assumptionsOf, computeChecked, derived, entered, type Figure } from '#lib/provenance';
import { fraction, m2, m2FromMm2, mm2 } from '#lib/units';
import {
  extentMultipliers,
  gradeOf,
  grownArea,
  multiplierCite,
  settledGrade,
  type Grading,
} from './evidence-grade.js';
import type { ExtentRequest } from './extent-request.js';
import { finding, roundTo, toWholeMm, type Finding } from './finding.js';
import { areaDraws } from './map/area-draws.js';
import { contourAt } from './map/contour.js';
import { drawable } from './map/drawable.js';
import {
  cutProbabilityFigure,
  mapAssumptions,
  settingProblems,
  settingsOf,
  type Settings,
} from './map/settings.js';
import { mapOf, type SurveyMap } from './map/survey-map.js';
import { problemsOf, readPanel, readZones, type ZoneOnPanel } from './panel-reading.js';
import { quantilesOf, type Quantiles } from './quantiles.js';
import { readingFindings, sparseFindings, zoneFindings } from './reading-findings.js';
import type { EvidenceGrade, Place, Survey } from './reading.js';
import { LEAST_READINGS, surveyProblems } from './survey-reading.js';

/** How far the damage goes, and how sure that is. */
export interface Extent {
  readonly from: 'readings' | 'drawn-zones';
  /** Bad core to be opened, largest first; ready to be the zones of `planOpenings`. */
  readonly zones: readonly ExtentZone[];
  readonly contours: readonly ProbabilityContour[];
  /** Chance of bad core at the middle of each cell of the panel; absent for drawn zones. */
  readonly map?: ProbabilityMap;
  /** Area of the zones. */
  readonly mappedAreaM2: number;
  /** Area of bad core as far as the readings leave it open; absent for drawn zones. */
  readonly mapSpreadM2?: Quantiles;
  /** Area of bad core once the deck is open: the map's spread widened by the evidence grade. */
  readonly damagedAreaM2: Quantiles;
  /** `damagedAreaM2` over `mappedAreaM2`; absent when nothing is mapped. */
  readonly growth?: Quantiles;
  readonly evidence: {
    readonly grade: EvidenceGrade;
    readonly because: string;
    readonly multiplier: ThreePoint;
  };
  readonly findings: readonly Finding[];
  readonly assumptions: readonly Figure[];
  readonly figures: ExtentFigures;
}

export interface ExtentZone {
  readonly id: string;
  readonly outline: Ring;
  readonly holes: readonly Ring[];
  readonly areaM2: number;
}

export interface ProbabilityContour {
  readonly probability: number;
  /** Where core is bad with at least this probability. */
  readonly areas: Region;
  readonly areaM2: number;
}

export interface ProbabilityMap {
  readonly stepMm: number;
  /** Distance over which the readings suggest that the damage hangs together. */
  readonly rangeMm: number;
  /** How often the hammer errs, as the readings agree with each other and with plugs; absent where the odds of soundings were given. */
  readonly hammer?: { readonly falseAlarmShare: number; readonly missedShare: number };
  readonly cells: readonly { readonly at: Place; readonly chance: number }[];
}

export interface ExtentFigures {
  readonly mappedArea: Figure<'m2'>;
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

function requestProblems({ survey, zones, map }: ExtentRequest): readonly Problem[] {
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
    ...(survey === undefined ? [] : surveyProblems(survey, '/survey')),
    ...settingProblems(map),
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
  if (count < LEAST_READINGS)
    return refusal(problem('too-few', '/survey/readings', { count, least: LEAST_READINGS }));
  const settings = settingsOf(request.map);
  const map = mapOf(panel, survey, settings);
  const cut = contourAt(settings.cutProbability, map.chance, map.lattice, panel);
  const zones = zonesFrom(cut);
  const grading = settledGrade(
    request.evidence,
    gradeOf(
      survey,
      zones.map(({ id, outline, holes }) => ({ id, region: [{ outer: outline, holes }] })),
      settings.odds,
    ),
  );
  const spread = spreadOf(map, grading, settings, panel);
  const all = [
    ...findings,
    ...readingFindings(survey, settings.odds),
    ...sparseFindings(map, survey.readings),
    ...emptyFindings(zones, map, settings),
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
      settings,
      map,
      contours: contoursOf(map, settings, panel, cut),
    }),
  );
}

function contoursOf(
  map: SurveyMap,
  settings: Settings,
  panel: Region,
  cut: Region,
): readonly ProbabilityContour[] {
  const others = settings.contourProbabilities
    .filter((probability) => probability !== settings.cutProbability)
    .map((probability) => ({ probability, areas: contourAt(probability, map.chance, map.lattice, panel) }));
  return [...others, { probability: settings.cutProbability, areas: cut }]
    .sort((one, other) => one.probability - other.probability)
    .map(({ probability, areas }) => ({ probability, areas, areaM2: squareMetres(areas) }));
}

const squareMetres = (region: Region): number => m2FromMm2(mm2(areaMm2(region)));

const zonesFrom = (cut: Region): readonly ExtentZone[] =>
  drawable(cut)
    .map(({ outer, holes }) => ({ outline: outer, holes, areaM2: squareMetres([{ outer, holes }]) }))
    .sort((one, other) => other.areaM2 - one.areaM2)
    .map((zone, index) => ({ id: `mapped-${index + 1}`, ...zone }));

function emptyFindings(
  zones: readonly ExtentZone[],
  { chance }: SurveyMap,
  { cutProbability: threshold }: Settings,
): readonly Finding[] {
  if (zones.length > 0) return [];
  return [
    finding('nothing-to-open', {
      threshold: roundTo(100 * threshold, 0),
      probability: roundTo(100 * Math.max(...chance), 0),
    }),
  ];
}

interface Spread {
  readonly map?: Quantiles;
  readonly damaged: Quantiles;
  readonly findings: readonly Finding[];
}

/** Each draw of the map's area is grown by a draw of the grade's multiplier, and held to the panel. */
function spreadOf(map: SurveyMap, { grade }: Grading, { draws, seed }: Settings, panel: Region): Spread {
  const areas = areaDraws(map, { draws, seed });
  const random = randomStream(seed ^ 0x5bd1e995);
  const grown = areas.map((area) => area * triangularQuantile(extentMultipliers[grade], random()));
  return { map: inSquareMetres(quantilesOf(areas)), ...held(grown, panel) };
}

const inSquareMetres = ({ p10, p50, p90 }: Quantiles): Quantiles => ({
  p10: m2FromMm2(mm2(p10)),
  p50: m2FromMm2(mm2(p50)),
  p90: m2FromMm2(mm2(p90)),
});

/** A tenth of the cases past the panel is worth a word. */
const CAPPED_SHARE = 0.1;

function held(grown: Float64Array, panel: Region): Omit<Spread, 'map'> {
  const most = areaMm2(panel);
  const share = grown.filter((area) => area > most).length / grown.length;
  return {
    damaged: inSquareMetres(quantilesOf(grown.map((area) => Math.min(area, most)))),
    findings: share >= CAPPED_SHARE ? [finding('growth-capped', { share: roundTo(100 * share, 0) })] : [],
  };
}

/** Evenly spread probabilities, of which quantiles are exact: a drawn zone's area grows by the grade's multiplier alone, which needs no chance. */
const EVEN = Array.from({ length: 1001 }, (_, index) => index / 1000);

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
    })),
  );
  const mappedMm2 = areaMm2(union(...drawn.map(({ region }) => region)));
  const spread = held(
    Float64Array.from(
      EVEN,
      (probability) => mappedMm2 * triangularQuantile(extentMultipliers[grading.grade], probability),
    ),
    panel,
  );
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
    settings,
    contours: [],
    mappedMm2,
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
  readonly settings: Settings;
  readonly map?: SurveyMap;
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
  settings,
  map,
  mappedMm2,
}: Parts): Extent {
  const mappedAreaM2 =
    mappedMm2 === undefined ? zones.reduce((sum, { areaM2 }) => sum + areaM2, 0) : m2FromMm2(mm2(mappedMm2));
  const multiplier = extentMultipliers[grading.grade];
  const figures = figuresOf({ mappedAreaM2, request, map, settings, grading });
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
    ...(spread.map === undefined ? {} : { mapSpreadM2: spread.map }),
    damagedAreaM2: damaged,
    ...(mappedAreaM2 > 0 ? { growth } : {}),
    evidence: { grade: grading.grade, because: grading.because, multiplier },
    findings,
    figures,
    assumptions: [
      ...(map === undefined ? [] : mapAssumptions(request.map, survey)),
      ...assumptionsOf(figures.likelyArea).filter(
        ({ origin }) => origin.kind === 'assumed' && !origin.at.startsWith('/map'),
      ),
    ],
  };
}

function mapForReaders({ lattice, chance, rangeMm, rates }: SurveyMap): ProbabilityMap {
  const cells = lattice.nodes.flatMap(({ place: [x, y], areaMm2: inside }, node) =>
    inside > 0 ? [{ at: [roundTo(x, 1), roundTo(y, 1)] as const, chance: roundTo(chance[node], 4) }] : [],
  );
  const hammer =
    rates === undefined
      ? {}
      : {
          hammer: {
            falseAlarmShare: roundTo(1 - rates.overSound.sharp, 3),
            missedShare: roundTo(rates.overBad.sharp, 3),
          },
        };
  return { stepMm: lattice.stepMm, rangeMm, ...hammer, cells };
}

function figuresOf({
  mappedAreaM2,
  request,
  map,
  settings,
  grading,
}: Pick<Parts, 'request' | 'map' | 'settings' | 'grading'> & {
  readonly mappedAreaM2: number;
}): ExtentFigures {
  const cut =
    request.map?.cutProbability === undefined
      ? cutProbabilityFigure()
      : entered(
          '1',
          fraction(settings.cutProbability),
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
  const { low, likely, high } = extentMultipliers[grading.grade];
  const multiplier = assumed(
    '1',
    fraction(likely),
    `likely growth of the extent, evidence ${grading.grade}`,
    { at: '/evidence', because: grading.because, cite: multiplierCite, low, high },
  );
  return { mappedArea, likelyArea: computeChecked(grownArea, { mappedM2: mappedArea, multiplier }) };
}
