import { faultsIn } from '#lib/asking';
import { pointer, problem, unreachable, type Problem } from '#lib/kernel';
import {
  panelCheckQuestions,
  personLoadQuestions,
  type EdgeKindAsked,
  type FittingRequest,
  type LoadRequest,
  type OpenedPanel,
  type PanelCheckRequest,
  type PanelSize,
} from './panel-request.js';
import type { SandwichValues, SkinValues } from '../plate/states.js';

/** Everything that makes the request impossible, all at once. */
export function faultsOfRequest(request: PanelCheckRequest): readonly Problem[] {
  const wrong = faultsIn(request, panelCheckQuestions);
  if (wrong.length > 0) return wrong;
  const { panel, asBuilt, repaired, opened = {}, fittings = [], deckThicknessMm } = request;
  return [
    ...faultsOfPanel(panel),
    ...faultsOfSandwich(asBuilt, '/asBuilt', deckThicknessMm),
    ...faultsOfSandwich(repaired, '/repaired', undefined),
    ...faultsOfOpened(opened, panel),
    ...faultsOfLoads(request),
    ...fittings.flatMap((fitting, at) => faultsOfFitting(fitting, pointer('/fittings', at))),
  ];
}

function faultsOfPanel({ edges, eachEdge }: PanelSize): readonly Problem[] {
  return [
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
function faultsOfEdges(asked: readonly (readonly [EdgeKindAsked, string])[]): readonly Problem[] {
  if (asked.every(([edge]) => edge === 'free')) {
    return [
      problem('not-supported', asked.length === 1 ? '/panel/edges' : '/panel/eachEdge', {
        why: 'a panel with no support carries nothing; say which edges rest on something',
      }),
    ];
  }
  return asked.flatMap(([edge, at]) =>
    edge === 'free'
      ? [
          problem('not-supported', at, {
            why: 'an edge without support is not answered; take the panel on to its next support, or use the strip between two supports',
          }),
        ]
      : [],
  );
}

function faultsOfSandwich(
  sandwich: SandwichValues,
  at: string,
  deckThicknessMm: number | undefined,
): readonly Problem[] {
  return [
    ...poissonFaults(sandwich.outer, `${at}/outer`),
    ...poissonFaults(sandwich.inner, `${at}/inner`),
    ...faultsOfStack(sandwich, at, deckThicknessMm),
  ];
}

function faultsOfStack(
  { outer, inner, core }: SandwichValues,
  at: string,
  deckMm: number | undefined,
): readonly Problem[] {
  if (deckMm === undefined) return [];
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

/** The pair of Poisson's ratios of a real material keeps its energy positive. */
function poissonFaults({ modulusXMPa, modulusYMPa, poissonXY }: SkinValues, at: string): readonly Problem[] {
  const product = (poissonXY * poissonXY * modulusYMPa) / modulusXMPa;
  if (product < 1) return [];
  const limit = Math.sqrt(modulusXMPa / modulusYMPa);
  return [
    problem('contradiction', `${at}/poissonXY`, {
      other: `${at}/modulusXMPa and modulusYMPa`,
      why: `nu12 nu21 must stay below 1, so with these moduli the ratio lies between ${-limit} and ${limit}`,
    }),
  ];
}

const faultsOfOpened = ({ lengthXMm, widthYMm }: OpenedPanel, panel: PanelSize): readonly Problem[] => [
  ...largerThan(panel.lengthXMm, lengthXMm, 'lengthXMm'),
  ...largerThan(panel.widthYMm, widthYMm, 'widthYMm'),
];

const largerThan = (panelMm: number, openedMm: number | undefined, name: string): readonly Problem[] =>
  openedMm === undefined || openedMm <= panelMm
    ? []
    : [
        problem('contradiction', `/opened/${name}`, {
          other: `/panel/${name}`,
          why: `an opening of ${openedMm} mm does not fit in a panel of ${panelMm} mm`,
        }),
      ];

function faultsOfLoads({ loads, panel, craft }: PanelCheckRequest): readonly Problem[] {
  if (loads === undefined) return [];
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
    case 'patch':
      return offPanel(load, at, panel);
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
    case 'pressure':
    case 'class-deck':
      return [];
    default:
      return unreachable(load);
  }
}

function faultsOfPerson(
  load: Extract<LoadRequest, { kind: 'person' }>,
  at: string,
  panel: PanelSize,
): readonly Problem[] {
  const side = footSideMm(load.heelRadiusMm ?? personLoadQuestions.heelRadiusMm.otherwise.value);
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

function faultsOfFitting({ boltMm, washerMm, pottedMm }: FittingRequest, at: string): readonly Problem[] {
  return [
    ...(washerMm === undefined || washerMm > boltMm
      ? []
      : [
          problem('contradiction', `${at}/washerMm`, {
            other: `${at}/boltMm`,
            why: `a washer of ${washerMm} mm does not reach past a bolt of ${boltMm} mm`,
          }),
        ]),
    ...(pottedMm === undefined || pottedMm >= boltMm
      ? []
      : [
          problem('contradiction', `${at}/pottedMm`, {
            other: `${at}/boltMm`,
            why: `a bolt of ${boltMm} mm does not pass through a potted hole of ${pottedMm} mm`,
          }),
        ]),
  ];
}
