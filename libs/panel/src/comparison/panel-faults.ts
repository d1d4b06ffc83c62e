import { pointer, problem, type Problem } from '#lib/kernel';
import type {
  AsFound,
  CraftForPanel,
  Criteria,
  EdgeKindAsked,
  FittingRequest,
  LoadRequest,
  OpenedPanel,
  PanelCheckRequest,
  PanelSize,
} from './panel-request.js';
import type { CoreValues, SandwichValues, SkinValues } from '../plate/states.js';

/** Everything that makes the request impossible, all at once. */
export function faultsOfRequest(request: PanelCheckRequest): readonly Problem[] {
  return [
    ...faultsOfPanel(request.panel),
    ...faultsOfSandwich(request.asBuilt, '/asBuilt', request.deckThicknessMm),
    ...faultsOfSandwich(request.repaired, '/repaired', undefined),
    ...faultsOfFound(request.asFound ?? {}),
    ...faultsOfOpened(request.opened ?? {}, request.panel),
    ...faultsOfLoads(request),
    ...((request.explain ?? []).length > MOST_EXPLAINED
      ? [problem('too-many', '/explain', { count: (request.explain ?? []).length, most: MOST_EXPLAINED })]
      : []),
    ...faultsOfCriteria(request.criteria ?? {}),
    ...(request.craft === undefined ? [] : faultsOfCraft(request.craft)),
    ...(request.fittings ?? []).flatMap((fitting, at) => faultsOfFitting(fitting, pointer('/fittings', at))),
  ];
}

const MOST_EXPLAINED = 20;

interface Range {
  readonly above?: number;
  readonly from?: number;
  readonly below?: number;
  readonly upTo?: number;
  readonly unit?: string;
}

/** A number that must be there and lie in a range. */
export function numberFaults(value: unknown, at: string, range: Range): readonly Problem[] {
  if (typeof value !== 'number' || !Number.isFinite(value)) {
    return [
      problem('not-a-number', at, {
        value: String(value),
        hint: range.unit === undefined ? '' : ` in ${range.unit}`,
      }),
    ];
  }
  const isInside =
    (range.above === undefined || value > range.above) &&
    (range.from === undefined || value >= range.from) &&
    (range.below === undefined || value < range.below) &&
    (range.upTo === undefined || value <= range.upTo);
  return isInside ? [] : [problem('out-of-range', at, { value, range: inWords(range) })];
}

const optionalFaults = (value: unknown, at: string, range: Range): readonly Problem[] =>
  value === undefined ? [] : numberFaults(value, at, range);

function inWords({ above, from, below, upTo, unit = '' }: Range): string {
  const lower = above === undefined ? (from === undefined ? [] : [`${from} or more`]) : [`above ${above}`];
  const upper = below === undefined ? (upTo === undefined ? [] : [`at most ${upTo}`]) : [`below ${below}`];
  return `${[...lower, ...upper].join(' and ')} ${unit}`.trim();
}

const lengths: Range = { above: 1, upTo: 20000, unit: 'mm' };
const thicknesses: Range = { from: 0.1, upTo: 200, unit: 'mm' };
const moduli: Range = { from: 1, upTo: 1e6, unit: 'MPa' };
const strengths: Range = { above: 0, upTo: 1e4, unit: 'MPa' };
const shares: Range = { from: 0, upTo: 1 };

function faultsOfPanel({ lengthXMm, widthYMm, edges, eachEdge }: PanelSize): readonly Problem[] {
  return [
    ...numberFaults(lengthXMm, '/panel/lengthXMm', lengths),
    ...numberFaults(widthYMm, '/panel/widthYMm', lengths),
    ...(edges === undefined ? [] : faultsOfEdges([[edges, '/panel/edges']])),
    ...(eachEdge === undefined
      ? []
      : faultsOfEdges(edgeNames.map((name) => [eachEdge[name], pointer('/panel/eachEdge', name)]))),
    ...(edges === undefined || eachEdge === undefined
      ? []
      : [
          problem('contradiction', '/panel/eachEdge', {
            other: 'panel.edges',
            why: 'the edges are given all alike and each by itself; give one of the two',
          }),
        ]),
  ];
}

const edgeNames = ['xStart', 'xEnd', 'yStart', 'yEnd'] as const;
const edgeChoices = 'simply-supported, clamped';

function faultsOfEdges(asked: readonly (readonly [EdgeKindAsked, string])[]): readonly Problem[] {
  if (asked.every(([edge]) => edge === 'free')) {
    return [
      problem('not-supported', asked.length === 1 ? '/panel/edges' : '/panel/eachEdge', {
        why: 'a panel with no support carries nothing; say which edges rest on something',
      }),
    ];
  }
  return asked.flatMap(([edge, at]) => {
    if (edge === 'simply-supported' || edge === 'clamped') return [];
    if (edge === 'free')
      return [
        problem('not-supported', at, {
          why: 'an edge without support is not answered; take the panel on to its next support, or use the strip between two supports',
        }),
      ];
    return [problem('not-one-of', at, { value: String(edge), choices: edgeChoices })];
  });
}

export function faultsOfSandwich(
  { outer, inner, core }: SandwichValues,
  at: string,
  deckThicknessMm: number | undefined,
): readonly Problem[] {
  return [
    ...faultsOfSkin(outer, `${at}/outer`),
    ...faultsOfSkin(inner, `${at}/inner`),
    ...faultsOfCore(core, `${at}/core`),
    ...faultsOfStack({ outer, inner, core }, at, deckThicknessMm),
  ];
}

function faultsOfStack(
  { outer, inner, core }: SandwichValues,
  at: string,
  deckMm: number | undefined,
): readonly Problem[] {
  if (deckMm === undefined) return [];
  const wrong = numberFaults(deckMm, '/deckThicknessMm', thicknesses);
  if (wrong.length > 0) return wrong;
  return [outer.thicknessMm, inner.thicknessMm].flatMap((skin, which) =>
    skin < deckMm
      ? []
      : [
          problem('contradiction', `${at}/${which === 0 ? 'outer' : 'inner'}/thicknessMm`, {
            other: 'deckThicknessMm',
            why: `a skin of ${skin} mm cannot lie in a deck of ${deckMm} mm; the skins and the core (${core.thicknessMm} mm) add up to the deck`,
          }),
        ],
  );
}

export function faultsOfSkin(skin: SkinValues, at: string): readonly Problem[] {
  const field = (name: keyof SkinValues, range: Range): readonly Problem[] =>
    numberFaults(skin[name], `${at}/${name}`, range);
  const maybe = (name: keyof SkinValues, range: Range): readonly Problem[] =>
    optionalFaults(skin[name], `${at}/${name}`, range);
  const plain = [
    ...field('thicknessMm', { from: 0.1, upTo: 100, unit: 'mm' }),
    ...field('modulusXMPa', moduli),
    ...field('modulusYMPa', moduli),
    ...field('shearModulusMPa', moduli),
    ...field('poissonXY', { above: -1, upTo: 5 }),
    ...field('tensileStrengthMPa', strengths),
    ...field('compressiveStrengthMPa', strengths),
    ...maybe('tensileStrengthYMPa', strengths),
    ...maybe('compressiveStrengthYMPa', strengths),
    ...maybe('dryFibreKgPerM2', { above: 0, upTo: 100, unit: 'kg/m2' }),
  ];
  return plain.length > 0 ? plain : poissonFaults(skin, at);
}

/** The pair of Poisson's ratios of a real material keeps its energy positive. */
function poissonFaults({ modulusXMPa, modulusYMPa, poissonXY }: SkinValues, at: string): readonly Problem[] {
  const product = (poissonXY * poissonXY * modulusYMPa) / modulusXMPa;
  if (product < 1) return [];
  const limit = Math.sqrt(modulusXMPa / modulusYMPa);
  return [
    problem('out-of-range', `${at}/poissonXY`, {
      value: poissonXY,
      range: `between ${-limit} and ${limit}, so that nu12 nu21 stays below 1`,
    }),
  ];
}

export function faultsOfCore(core: CoreValues, at: string): readonly Problem[] {
  const field = (name: keyof CoreValues, range: Range): readonly Problem[] =>
    numberFaults(core[name], `${at}/${name}`, range);
  return [
    ...(coreTypes.includes(core.coreType)
      ? []
      : [
          problem('not-one-of', `${at}/coreType`, {
            value: String(core.coreType),
            choices: coreTypes.join(', '),
          }),
        ]),
    ...field('thicknessMm', { from: 1, upTo: 200, unit: 'mm' }),
    ...field('shearModulusMPa', { from: 0.1, upTo: 1e5, unit: 'MPa' }),
    ...field('shearStrengthMPa', strengths),
    ...field('compressiveModulusMPa', { from: 0.1, upTo: 1e6, unit: 'MPa' }),
    ...field('compressiveStrengthMPa', strengths),
    ...optionalFaults(core.inPlaneModulusMPa, `${at}/inPlaneModulusMPa`, { from: 0, upTo: 1e6, unit: 'MPa' }),
    ...optionalFaults(core.densityKgPerM3, `${at}/densityKgPerM3`, { above: 0, upTo: 2000, unit: 'kg/m3' }),
  ];
}

const coreTypes: readonly string[] = [
  'end-grain-balsa',
  'cross-linked-foam',
  'san-foam',
  'linear-foam',
  'marine-plywood',
];

const faultsOfFound = ({
  degradedFraction,
  stiffnessFraction,
  strengthFraction,
}: AsFound): readonly Problem[] => [
  ...optionalFaults(degradedFraction, '/asFound/degradedFraction', shares),
  ...optionalFaults(stiffnessFraction, '/asFound/stiffnessFraction', shares),
  ...optionalFaults(strengthFraction, '/asFound/strengthFraction', shares),
];

function faultsOfOpened(
  { lengthXMm, widthYMm, edges, clampPressureKPa, allowedSagMm }: OpenedPanel,
  panel: PanelSize,
): readonly Problem[] {
  const wrongEdges =
    edges === undefined || edges === 'simply-supported' || edges === 'clamped'
      ? []
      : [problem('not-one-of', '/opened/edges', { value: String(edges), choices: edgeChoices })];
  return [
    ...optionalFaults(lengthXMm, '/opened/lengthXMm', { above: 1, upTo: panel.lengthXMm, unit: 'mm' }),
    ...optionalFaults(widthYMm, '/opened/widthYMm', { above: 1, upTo: panel.widthYMm, unit: 'mm' }),
    ...wrongEdges,
    ...optionalFaults(clampPressureKPa, '/opened/clampPressureKPa', { above: 0, upTo: 110, unit: 'kPa' }),
    ...optionalFaults(allowedSagMm, '/opened/allowedSagMm', { above: 0, upTo: 50, unit: 'mm' }),
  ];
}

const faultsOfCriteria = ({
  skinShare,
  coreShearShare,
  coreCrushShare,
  spanOverDeflection,
}: Criteria): readonly Problem[] => [
  ...optionalFaults(skinShare, '/criteria/skinShare', { above: 0, upTo: 1 }),
  ...optionalFaults(coreShearShare, '/criteria/coreShearShare', { above: 0, upTo: 1 }),
  ...optionalFaults(coreCrushShare, '/criteria/coreCrushShare', { above: 0, upTo: 1 }),
  ...optionalFaults(spanOverDeflection, '/criteria/spanOverDeflection', { from: 1, upTo: 10000 }),
];

const MOST_LOADS = 12;
const forces: Range = { above: 0, upTo: 1e6, unit: 'N' };

function faultsOfLoads({ loads, panel, craft }: PanelCheckRequest): readonly Problem[] {
  if (loads === undefined) return [];
  if (loads.length === 0) return [problem('too-few', '/loads', { count: 0, least: 1 })];
  if (loads.length > MOST_LOADS)
    return [problem('too-many', '/loads', { count: loads.length, most: MOST_LOADS })];
  return loads.flatMap((load, at) =>
    faultsOfLoad(load, pointer('/loads', at), { panel, hasCraft: craft !== undefined }),
  );
}

interface LoadSetting {
  readonly panel: PanelSize;
  readonly hasCraft: boolean;
}

function faultsOfLoad(load: LoadRequest, at: string, { panel, hasCraft }: LoadSetting): readonly Problem[] {
  switch (load.kind) {
    case 'pressure':
      return numberFaults(load.pressureKPa, `${at}/pressureKPa`, { above: 0, upTo: 1000, unit: 'kPa' });
    case 'patch':
      return faultsOfPatch(load, at, panel);
    case 'person':
      return faultsOfPerson(load, at, panel);
    case 'yardstick':
      return hasCraft
        ? []
        : [
            problem('missing', '/craft', {
              expected: 'the yardstick pressure follows from length, mass and category of the craft',
            }),
          ];
    case 'class-deck':
      return [];
    default:
      return [
        problem('not-one-of', `${at}/kind`, {
          value: String(Reflect.get(load, 'kind')),
          choices: 'pressure, patch, person, yardstick, class-deck',
        }),
      ];
  }
}

function faultsOfPatch(
  load: Extract<LoadRequest, { kind: 'patch' }>,
  at: string,
  panel: PanelSize,
): readonly Problem[] {
  const plain = [
    ...numberFaults(load.forceN, `${at}/forceN`, forces),
    ...numberFaults(load.xMm, `${at}/xMm`, { unit: 'mm' }),
    ...numberFaults(load.yMm, `${at}/yMm`, { unit: 'mm' }),
    ...numberFaults(load.lengthXMm, `${at}/lengthXMm`, { from: 1, unit: 'mm' }),
    ...numberFaults(load.widthYMm, `${at}/widthYMm`, { from: 1, unit: 'mm' }),
  ];
  return plain.length > 0 ? plain : offPanel(load, at, panel);
}

function faultsOfPerson(
  load: Extract<LoadRequest, { kind: 'person' }>,
  at: string,
  panel: PanelSize,
): readonly Problem[] {
  const plain = [
    ...optionalFaults(load.forceN, `${at}/forceN`, forces),
    ...optionalFaults(load.heelRadiusMm, `${at}/heelRadiusMm`, { from: 5, upTo: 200, unit: 'mm' }),
    ...optionalFaults(load.xMm, `${at}/xMm`, { unit: 'mm' }),
    ...optionalFaults(load.yMm, `${at}/yMm`, { unit: 'mm' }),
  ];
  if (plain.length > 0) return plain;
  const side = footSideMm(load.heelRadiusMm ?? HEEL_RADIUS_MM);
  return offPanel(
    {
      xMm: load.xMm ?? panel.lengthXMm / 2,
      yMm: load.yMm ?? panel.widthYMm / 2,
      lengthXMm: side,
      widthYMm: side,
    },
    at,
    panel,
  );
}

export const HEEL_RADIUS_MM = 30;
/** Side of the square with the area of the heel. */
export const footSideMm = (radiusMm: number): number => radiusMm * Math.sqrt(Math.PI);

interface Patch {
  readonly xMm: number;
  readonly yMm: number;
  readonly lengthXMm: number;
  readonly widthYMm: number;
}

const MM2_IN_M2 = 1000 * 1000;
const ROUNDING = 1e-9;

function offPanel(
  { xMm, yMm, lengthXMm, widthYMm }: Patch,
  at: string,
  panel: PanelSize,
): readonly Problem[] {
  const inside = (centre: number, size: number, whole: number): number =>
    Math.max(0, Math.min(whole, centre + size / 2) - Math.max(0, centre - size / 2));
  const area = lengthXMm * widthYMm;
  const outside = area - inside(xMm, lengthXMm, panel.lengthXMm) * inside(yMm, widthYMm, panel.widthYMm);
  if (!(outside > ROUNDING * area)) return [];
  return [problem('outside-panel', at, { outsideM2: Number((outside / MM2_IN_M2).toPrecision(3)) })];
}

function faultsOfCraft(craft: CraftForPanel): readonly Problem[] {
  return [
    ...(['sail', 'motor'].includes(craft.craftType)
      ? []
      : [
          problem('not-one-of', '/craft/craftType', {
            value: String(craft.craftType),
            choices: 'sail, motor',
          }),
        ]),
    ...(['A', 'B', 'C', 'D'].includes(craft.designCategory)
      ? []
      : [
          problem('not-one-of', '/craft/designCategory', {
            value: String(craft.designCategory),
            choices: 'A, B, C, D',
          }),
        ]),
    ...numberFaults(craft.lengthWaterlineM, '/craft/lengthWaterlineM', { from: 2, upTo: 24, unit: 'm' }),
    ...optionalFaults(craft.lengthHullM, '/craft/lengthHullM', { from: 2.5, upTo: 24, unit: 'm' }),
    ...numberFaults(craft.massLoadedKg, '/craft/massLoadedKg', { from: 50, upTo: 500000, unit: 'kg' }),
    ...optionalFaults(craft.shareOfWaterline, '/craft/shareOfWaterline', shares),
    ...optionalFaults(craft.dynamicLoadFactor, '/craft/dynamicLoadFactor', { from: 0, upTo: 20 }),
  ];
}

export function faultsOfFitting(fitting: FittingRequest, at: string): readonly Problem[] {
  const maybe = (name: keyof FittingRequest, range: Range): readonly Problem[] =>
    optionalFaults(fitting[name], `${at}/${name}`, range);
  const size: Range = { above: 0, upTo: 2000, unit: 'mm' };
  return [
    ...numberFaults(fitting.bolts, `${at}/bolts`, { from: 1, upTo: 100 }),
    ...numberFaults(fitting.boltMm, `${at}/boltMm`, { from: 2, upTo: 50, unit: 'mm' }),
    ...maybe('clampForceN', forces),
    ...maybe('torqueNm', { above: 0, upTo: 1000, unit: 'N.m' }),
    ...maybe('pullN', forces),
    ...maybe('shearN', forces),
    ...maybe('washerMm', { above: fitting.boltMm, upTo: 300, unit: 'mm' }),
    ...maybe('pottedMm', { from: fitting.boltMm, upTo: 200, unit: 'mm' }),
    ...maybe('pottedStrengthMPa', strengths),
    ...(fitting.backingPlate === undefined
      ? []
      : [
          ...numberFaults(fitting.backingPlate.lengthMm, `${at}/backingPlate/lengthMm`, size),
          ...numberFaults(fitting.backingPlate.widthMm, `${at}/backingPlate/widthMm`, size),
        ]),
  ];
}
