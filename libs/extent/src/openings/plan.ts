import { mapValue, type Outcome } from '#lib/kernel';
import {
  areaMm2,
  difference,
  distance,
  intersection,
  offset,
  union,
  type Point,
  type Polygon,
  type Region,
  type Ring,
} from '#lib/geometry';
import { derived, assumptionsOf, assumed, type Figure } from '#lib/provenance';
import { m, m2, m2FromMm2, mFromMm, mm, mm2, fraction } from '#lib/units';
import { finding, roundTo, toWholeMm, type Finding } from '../finding.js';
import { cornerRadii, shapeOf, type CutShape } from './cut-shape.js';
import { isSpent } from './design-work.js';
import { depthOf, taperFigure, type CutDepth } from './depth.js';
import { fittingsInScope, type FittingInScope, type FittingsFound } from './fittings.js';
import type { DeckUnderCut } from './ground.js';
import { ARC_MM, layoutOf, type Layout } from './layout.js';
import { markingOut, type MarkingOut } from './marking-out.js';
import { gapBetween, type Join, type OpeningGroup } from './merge.js';
import { longAxisIn, type OwnFrame } from './own-frame.js';
import { skinPieces } from './pieces.js';
import { reachUnder } from './reach.js';
import { readOpeningRequest, type ReadRequest } from './read-request.js';
import { bridgeFindings, shapeFindings, type JudgedOpening } from './fit.js';
import type { OpeningRequest } from './request.js';
import { ruleFigures, rulesOf, usualBondable, type RuleFigures } from './rules.js';

/** Where to saw, how deep, what to ream out, what stays, and what does not fit. */
export interface OpeningPlan {
  /** From the largest to the smallest. */
  readonly openings: readonly PlannedOpening[];
  /** Area of the whole panel. */
  readonly panelAreaM2: number;
  /** Area whose outer skin comes off. */
  readonly openedAreaM2: number;
  /** Skin that stays: with the openings it is the whole panel. */
  readonly retained: Region;
  /** Area of opened skin that is bedded again. */
  readonly retainedAreaM2: number;
  /** Core taken out under skin that stays. */
  readonly undercutAreaM2: number;
  /** Area of old skin that is ground to a taper. */
  readonly taperBandAreaM2: number;
  /** Length of the cuts to saw. */
  readonly cutLengthM: number;
  /** Cuts across lifted skin, beside the cuts round the openings. */
  readonly splitLengthM: number;
  /** Absent when no depth is safe; a finding of severity `stop` says why. */
  readonly cutDepthMm?: number;
  /** Width of the ground taper. */
  readonly taperWidthMm: number;
  /** Distance kept from edges: the flange, or the taper where that is wider and there is room. */
  readonly insetMm: number;
  /** Bad core that no opening reaches. */
  readonly unreached: Region;
  /** Fittings that the openings touch. */
  readonly fittings: readonly FittingInScope[];
  /** What about the openings deserves attention. */
  readonly findings: readonly Finding[];
  /** Defaults that were used, each with its reason and source. */
  readonly assumptions: readonly Figure[];
  /** The plan's areas and lengths with their derivations. */
  readonly figures: PlanFigures;
}

export interface PlanFigures {
  /** Derivation of the opened area. */
  readonly openedArea: Figure<'m2'>;
  /** Derivation of the skin bedded again. */
  readonly retainedArea: Figure<'m2'>;
  /** Derivation of the undercut area. */
  readonly undercutArea: Figure<'m2'>;
  /** Derivation of the ground area. */
  readonly taperBandArea: Figure<'m2'>;
  /** Derivation of the length of cuts. */
  readonly cutLength: Figure<'m'>;
  /** Derivation of the length of cuts between skin pieces. */
  readonly splitLength: Figure<'m'>;
  /** Derivation of the taper's width. */
  readonly taperWidth: Figure<'mm'>;
  /** Derivation of the saw's depth. */
  readonly cutDepth?: Figure<'mm'>;
}

export interface PlannedOpening {
  /** A, B, C ... from the largest. */
  readonly label: string;
  /** Ids of the zones it opens. */
  readonly zones: readonly string[];
  /** What is cut out, corners rounded. */
  readonly area: Polygon;
  /** The straight lines to mark, meeting in sharp corners. */
  readonly sawLine: Ring;
  /** Cuts round what stays within the opening. */
  readonly innerSawLines: readonly Ring[];
  /** Radius that the corners are cut to. */
  readonly cornerRadiusMm: number;
  /** How to mark the cuts out on deck with a tape. */
  readonly marking: MarkingOut;
  /** Area of skin that the opening takes off. */
  readonly areaM2: number;
  /** Length of the opening's cuts. */
  readonly cutLengthM: number;
  /** Depth to set the saw to; absent when the skin is not known. */
  readonly cutDepthMm?: number;
  /** Bad core under skin that stays. */
  readonly undercut: Region;
  /** Core taken out from under the opening's edges. */
  readonly undercutAreaM2: number;
  /** Farthest reach under the edge. */
  readonly undercutReachMm: number;
  /** Old skin round the opening that is ground. */
  readonly taperBand: Region;
  /** Area of that band. */
  readonly taperBandAreaM2: number;
  /** Pieces the skin comes off in. */
  readonly skinPieces: readonly {
    /** Name of the piece of skin. */
    readonly label: string;
    /** Edge of the piece of skin. */
    readonly area: Region;
    /** Area of the piece of skin. */
    readonly areaM2: number;
  }[];
  /** Cuts that part the skin into pieces, each from point to point. */
  readonly splits: readonly (readonly [Point, Point])[];
  /** Openings that were made into this one, with the reason. */
  readonly joins: readonly Join[];
  /** Form of the opening. */
  readonly form: 'rectangle' | 'octagon' | 'outline' | 'hull';
  /** Why this form was chosen. */
  readonly reason: string;
}

export const planOpenings = (request: OpeningRequest): Outcome<OpeningPlan> =>
  mapValue(readOpeningRequest(request), (read) => planned(request, read));

function planned(request: OpeningRequest, read: ReadRequest): OpeningPlan {
  const rules = rulesOf(request);
  const figures = ruleFigures(request);
  const taper = taperFigure(request, rules, figures);
  const layout = layoutOf(read.zones, read.panel, request.panel, {
    rules,
    taperWidthMm: taper.value,
  });
  const depth = depthOf(request, rules, figures);
  const openings = openingsOf(layout, read, request, depth);
  const opened = union(...openings.map(({ planned: { area } }) => [area]));
  const fittings = fittingsInScope(
    request.fittings ?? [],
    openings.map(({ planned: { label, area } }) => ({ label, region: [area] })),
    rules.fittingReachMm,
  );
  const judged = openings.map(({ judged: one }) => one);
  const findings = [
    ...depth.findings,
    ...read.findings,
    ...unopenedFindings(layout, read),
    ...(isSpent(layout.work) ? [finding('openings-not-proven', { openings: openings.length })] : []),
    ...judged.flatMap((one) => shapeFindings(one, layout.deck)),
    ...bridgeFindings(judged, layout.deck),
    ...fittings.findings,
  ];
  const plans = openings.map(({ planned: one }) => one);
  return assembled({ request, read, layout, depth, taper, figures, fittings, plans, opened, findings });
}

function unopenedFindings({ unopened, deck }: Layout, { zones }: ReadRequest): readonly Finding[] {
  return unopened
    .flatMap((region) => zones.filter((zone) => areaMm2(intersection(zone.region, region)) > 1))
    .map(({ id }) => finding('no-room-for-opening', { zone: id, insetMm: toWholeMm(deck.insetMm) }));
}

interface OpeningAndJudgement {
  readonly planned: PlannedOpening;
  readonly judged: JudgedOpening;
}

function openingsOf(
  { deck, groups, frame }: Layout,
  { zones, panel }: ReadRequest,
  request: OpeningRequest,
  depth: CutDepth,
): readonly OpeningAndJudgement[] {
  const opened = union(...groups.map(({ shape }) => shape.region));
  const parts = groups.flatMap((group) =>
    group.shape.sharp.map((sharp) => ({ group, shape: shapeOf(group.shape.form, [sharp], deck.rules) })),
  );
  const ordered = [...parts].sort((one, other) => sizeOf(other.shape) - sizeOf(one.shape));
  return ordered.map(({ group, shape }, index) => {
    const label = labelOf(index);
    const left = difference(group.seeds, opened);
    const undercut =
      group.shape.sharp.length === 1 ? left : left.filter((polygon) => isNearest(polygon, shape, group));
    const pieces = skinPieces(shape.region, longAxisIn(shape.region, frame), request.fittings ?? [], deck);
    const judged = { label, shape, undercut, pieces };
    const taperBand = difference(
      intersection(offset(shape.region, deck.taperWidthMm, 'round', ARC_MM), panel),
      opened,
    );
    return { judged, planned: plannedOpening({ judged, group, zones, taperBand, deck, frame, depth }) };
  });
}

/** Openings of one size keep the order in which they were designed. */
const sizeOf = ({ areaMm2: area }: CutShape): number => Math.round(area);

function isNearest(polygon: Polygon, shape: CutShape, group: OpeningGroup): boolean {
  const gaps = group.shape.region.map((part) => gapBetween([polygon], [part]));
  return gapBetween([polygon], shape.region) <= Math.min(...gaps) + 1e-6;
}

interface Making {
  readonly judged: JudgedOpening;
  readonly group: OpeningGroup;
  readonly zones: ReadRequest['zones'];
  readonly taperBand: Region;
  readonly deck: DeckUnderCut;
  readonly frame: OwnFrame;
  readonly depth: CutDepth;
}

function plannedOpening({
  judged: { label, shape, undercut, pieces },
  group,
  zones,
  taperBand,
  deck,
  frame,
  depth,
}: Making): PlannedOpening {
  const [sharp] = shape.sharp;
  const ids = zones
    .filter(({ region }) => areaMm2(intersection(region, group.seeds)) > 1)
    .map(({ id }) => id);
  return {
    label,
    zones: ids,
    area: shape.region[0],
    sawLine: sharp.outer,
    innerSawLines: sharp.holes,
    cornerRadiusMm: deck.rules.cornerRadiusMm,
    marking: markingOut(sharp, deck.panel, cornerRadii(deck.rules), frame),
    areaM2: m2FromMm2(mm2(shape.areaMm2)),
    cutLengthM: mFromMm(mm(shape.lengthMm)),
    ...(depth.depthMm === undefined ? {} : { cutDepthMm: depth.depthMm }),
    undercut,
    undercutAreaM2: m2FromMm2(mm2(areaMm2(undercut))),
    undercutReachMm: reachUnder(undercut, shape.region),
    taperBand,
    taperBandAreaM2: m2FromMm2(mm2(areaMm2(taperBand))),
    skinPieces: pieces.pieces.map((area, index) => ({
      label: pieces.pieces.length === 1 ? label : `${label}${index + 1}`,
      area,
      areaM2: m2FromMm2(mm2(areaMm2(area))),
    })),
    splits: pieces.splits,
    joins: group.joins,
    form: shape.form,
    reason: reasonFor(ids, shape, group.joins, deck.rules.cutMarginMm),
  };
}

const formWords: Readonly<Record<CutShape['form'], string>> = {
  rectangle: 'a rectangle',
  octagon: 'a rectangle with cut corners',
  outline: 'straight lines along the outline',
  hull: 'straight lines round the outline',
};

function reasonFor(
  zones: readonly string[],
  shape: CutShape,
  joins: readonly Join[],
  cutMarginMm: number,
): string {
  const about = `${formWords[shape.form]} takes in ${zones.length === 1 ? `zone ${zones[0]}` : `zones ${zones.join(', ')}`} at the least labour (${roundTo(shape.hours, 1)} h for ${roundTo(mFromMm(mm(shape.lengthMm)), 2)} m of cut and ${roundTo(m2FromMm2(mm2(shape.areaMm2)), 2)} m2)`;
  const meet =
    zones.length > 1 && joins.length === 0
      ? [`the margins of ${toWholeMm(cutMarginMm)} mm round these zones meet`]
      : [];
  return [about, ...meet, ...joins.map(joinWords)].join('; ');
}

function joinWords({ why, hoursTogether, hoursApart, bridgeMm, neededBridgeMm: needed }: Join): string {
  const hours = `${roundTo(hoursTogether, 1)} h together against ${roundTo(hoursApart, 1)} h apart`;
  if (why === 'overlap') return `two cuts would overlap (${hours})`;
  return why === 'bridge-too-narrow'
    ? `a bridge of ${toWholeMm(bridgeMm)} mm between two cuts is less than the ${toWholeMm(needed)} mm both tapers need (${hours})`
    : `one opening costs less than two: ${hours}`;
}

/** A to Z, then AA, AB and on. */
export function labelOf(index: number): string {
  const letter = String.fromCharCode(65 + (index % 26));
  return index < 26 ? letter : labelOf(Math.floor(index / 26) - 1) + letter;
}

interface Parts {
  readonly request: OpeningRequest;
  readonly read: ReadRequest;
  readonly layout: Layout;
  readonly depth: CutDepth;
  readonly taper: Figure<'mm'>;
  readonly figures: RuleFigures;
  readonly fittings: FittingsFound;
  readonly plans: readonly PlannedOpening[];
  readonly opened: Region;
  readonly findings: readonly Finding[];
}

function assembled({
  request,
  read,
  layout,
  depth,
  taper,
  figures,
  fittings,
  plans,
  opened,
  findings,
}: Parts): OpeningPlan {
  const retained = difference(read.panel, opened);
  const all = planFigures({ plans, opened, retained, depth, taper, figures });
  return {
    openings: plans,
    retained,
    insetMm: layout.deck.insetMm,
    unreached: union(...layout.unopened),
    panelAreaM2: m2FromMm2(mm2(areaMm2(read.panel))),
    openedAreaM2: all.openedArea.value,
    retainedAreaM2: all.retainedArea.value,
    undercutAreaM2: all.undercutArea.value,
    taperBandAreaM2: all.taperBandArea.value,
    cutLengthM: all.cutLength.value,
    splitLengthM: all.splitLength.value,
    taperWidthMm: taper.value,
    ...(depth.depthMm === undefined ? {} : { cutDepthMm: depth.depthMm }),
    fittings: fittings.inScope,
    findings,
    figures: all,
    assumptions: [
      ...Object.values(figures).flatMap(assumptionsOf),
      ...bondAssumptions(request),
      ...holeAssumptions(fittings),
    ],
  };
}

type Measured = Pick<Parts, 'plans' | 'opened' | 'depth' | 'taper' | 'figures'> & {
  readonly retained: Region;
};

const bySweep = { cite: { source: 'VATTI-1992' }, symbol: 'A' } as const;

function planFigures({ plans, opened, retained, depth, taper, figures }: Measured): PlanFigures {
  const { cutMarginMm, flangeMm, cornerRadiusMm } = figures;
  const inputs = { margin: cutMarginMm, flange: flangeMm, cornerRadius: cornerRadiusMm, taperWidth: taper };
  const area = (name: string, meaning: string, region: Region): Figure<'m2'> =>
    derived('m2', m2(m2FromMm2(mm2(areaMm2(region)))), meaning, {
      ...bySweep,
      formula: `extent.${name}`,
      title: meaning,
      inputs,
    });
  const length = (name: string, meaning: string, lengthM: number): Figure<'m'> =>
    derived('m', m(lengthM), meaning, {
      ...bySweep,
      symbol: 'L',
      formula: `extent.${name}`,
      title: meaning,
      inputs,
    });
  const bands = union(...plans.map(({ taperBand }) => taperBand));
  const splitMm = plans.flatMap(({ splits }) => splits).reduce((sum, [a, b]) => sum + distance(a, b), 0);
  return {
    openedArea: area('opened-area', 'skin cut out', opened),
    retainedArea: area('retained-area', 'skin that stays', retained),
    undercutArea: area(
      'undercut-area',
      'core taken out under skin that stays',
      union(...plans.map(({ undercut }) => undercut)),
    ),
    taperBandArea: area('taper-area', 'skin ground to a taper', bands),
    cutLength: length(
      'cut-length',
      'length of all cuts round the openings',
      plans.reduce((sum, { cutLengthM }) => sum + cutLengthM, 0),
    ),
    splitLength: length('split-length', 'length of cuts across lifted skin', mFromMm(mm(splitMm))),
    taperWidth: taper,
    ...(depth.figure === undefined ? {} : { cutDepth: depth.figure }),
  };
}

function bondAssumptions({ method, rules }: OpeningRequest): readonly Figure[] {
  if (method?.skin !== 're-bed') return [];
  const because =
    'lifted skins are cut to 2 to 3 ft lengths, because longer ones cannot be bedded before the resin gels';
  const cite = { source: 'COMMON-PRACTICE' };
  return [
    ...(rules?.bondableLengthMm === undefined
      ? [
          assumed('mm', mm(usualBondable.lengthMm), 'longest skin piece bedded at once', {
            at: '/rules/bondableLengthMm',
            because,
            cite,
          }),
        ]
      : []),
    ...(rules?.bondableAreaM2 === undefined
      ? [
          assumed('m2', m2(usualBondable.areaM2), 'largest skin piece bedded at once', {
            at: '/rules/bondableAreaM2',
            because,
            cite,
          }),
        ]
      : []),
  ];
}

const holeAssumptions = ({ assumedHoles }: FittingsFound): readonly Figure[] =>
  assumedHoles.map(({ index, kind, holes }) =>
    assumed('1', fraction(holes), 'fastening holes of a fitting', {
      at: `/fittings/${index}/holes`,
      because: `usual for a ${kind}`,
      cite: { source: 'COMMON-PRACTICE' },
    }),
  );
