import { pointer, problem, type Problem } from '#lib/kernel';
import { distanceToRegion, regionOf } from '#lib/geometry';
import { methods } from '#lib/methods';
import type { DefectRecord, MethodChoice, PanelRecord } from './defect-record.js';
import { hardwareFaults } from './fitting-stated.js';

const MOST_OLD_BOND_MM = 10;

/** Answers that are good by themselves and contradict each other. */
export const contradictionsIn = (record: DefectRecord): readonly Problem[] => [
  ...cavityFaults(record),
  ...strayFittings(record),
  ...extentFaults(record),
  ...skyWithoutForecast(record),
  ...hardwareFaults(record.fittings ?? []),
  ...overlayFaults(record.panel),
  ...edgeFaults(record.panel),
  ...strayEdges(record.panel),
  ...methodFaults(record.method),
  ...finishFaults(record.method),
  ...placeFaults(record),
];

/** The cavity holds the core: it cannot be thinner, and much thicker means that one of the two is wrong. */
function cavityFaults({ core: { thicknessMm, cavityMm } }: DefectRecord): readonly Problem[] {
  if (cavityMm === undefined || (cavityMm >= thicknessMm && cavityMm <= thicknessMm + MOST_OLD_BOND_MM))
    return [];
  return [
    problem('contradiction', '/core/cavityMm', {
      other: '/core/thicknessMm',
      why: `a core of ${thicknessMm} mm lies in a cavity of ${thicknessMm} to ${thicknessMm + MOST_OLD_BOND_MM} mm`,
    }),
  ];
}

/** A fitting that far from the panel is a slip of the keyboard, and would be left out without a word. */
const FARTHEST_FITTING_MM = 1000;

function strayFittings({ panel: { outline }, fittings = [] }: DefectRecord): readonly Problem[] {
  const whole = regionOf(outline);
  return fittings.flatMap(({ at }, index) => {
    const awayMm = Math.round(distanceToRegion(at, whole));
    if (!(awayMm > FARTHEST_FITTING_MM)) return [];
    return [
      problem('contradiction', pointer('/fittings', index, 'at'), {
        other: '/panel/outline',
        why: `it stands ${awayMm} mm from the panel; at most ${FARTHEST_FITTING_MM} mm can belong to the job`,
      }),
    ];
  });
}

function extentFaults({ zones, survey }: DefectRecord): readonly Problem[] {
  const hasZones = zones !== undefined && zones.length > 0;
  const hasReadings = survey !== undefined && survey.readings.length > 0;
  if (hasZones || hasReadings) return [];
  return [
    problem('missing', '/zones', {
      expected: 'draw at least one zone of bad core, or give `survey.readings`',
    }),
  ];
}

/** Tent and heater add the same day and night; sun and open sky come and go with the hours of a forecast. */
function skyWithoutForecast({ conditions }: DefectRecord): readonly Problem[] {
  const { sunK, isUnderSky } = conditions?.warmth ?? {};
  if (conditions?.forecast !== undefined || (sunK === undefined && isUnderSky === undefined)) return [];
  return [
    problem('missing', '/conditions/forecast', {
      expected:
        'a forecast whose hours say when the sun and the open sky count; tent and heater need none, and `temperatureC` is that of the deck',
    }),
  ];
}

const edgeKinds: readonly string[] = ['toe-rail', 'hull-joint', 'coaming', 'hatch'];
/** A rail or a joint may be drawn a little off the outline; farther away it is no edge of this panel. */
const FARTHEST_EDGE_MM = 300;

function strayEdges({ outline, holes = [], supports = [] }: PanelRecord): readonly Problem[] {
  const panel = regionOf(outline, holes);
  return supports.flatMap(({ kind, from, to }, index) => {
    const awayMm = Math.max(distanceToRegion(from, panel), distanceToRegion(to, panel));
    return !edgeKinds.includes(kind) || awayMm <= FARTHEST_EDGE_MM
      ? []
      : [
          problem('contradiction', pointer('/panel/supports', index), {
            other: '/panel/outline',
            why: `a ${kind.replace('-', ' ')} lies ${Math.round(awayMm)} mm outside the panel; an edge runs along the outline, or no more than ${FARTHEST_EDGE_MM} mm from it`,
          }),
        ];
  });
}

/** What lies on the deck comes off before it is cut: nobody can price that without knowing how thick it is. */
function overlayFaults({ surface, overlay }: PanelRecord): readonly Problem[] {
  const expected =
    'say what lies on the deck: kind, thickness, and whether it goes back, is replaced by paint, or is not included';
  return overlay === undefined && surface === 'planked'
    ? [problem('missing', '/panel/overlay', { expected })]
    : [];
}

/** Core that ends farther in than the panel is wide is a slip of the keyboard. */
function edgeFaults({ outline, coreEndsMm }: PanelRecord): readonly Problem[] {
  const xs = outline.map(([x]) => x);
  const ys = outline.map(([, y]) => y);
  const narrowMm = Math.min(Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys));
  return [
    ...(coreEndsMm !== undefined && 2 * coreEndsMm >= narrowMm
      ? [
          problem('contradiction', '/panel/coreEndsMm', {
            other: '/panel/outline',
            why: `core that ends ${coreEndsMm} mm from both edges leaves none in a panel ${Math.round(narrowMm)} mm wide; it must be less than ${Math.floor(narrowMm / 2)} mm`,
          }),
        ]
      : []),
  ];
}

/** Paint over new gelcoat is another finish than gelcoat. */
const finishFaults = (method: MethodChoice | undefined): readonly Problem[] =>
  method?.finishIn === 'gelcoat' && method.topcoat !== undefined
    ? [
        problem('contradiction', '/method/topcoat', {
          other: '/method/finishIn',
          why: 'a deck that is finished in gelcoat takes no topcoat',
        }),
      ]
    : [];

/** A rung that is named, and an access or a skin that is not its own. */
function methodFaults(method: MethodChoice | undefined): readonly Problem[] {
  const rung = methods.find(({ code }) => code === method?.rung);
  if (rung === undefined || method === undefined) return [];
  const access =
    rung.cutSide === 'inner' ? 'from-below' : rung.cutSide === 'outer' ? 'from-above' : undefined;
  const skin = rung.skin === 'bonded-back' ? 're-bed' : rung.skin === 'new' ? 'relay' : undefined;
  return [
    ...contradicting('/method/access', method.access, access, rung.title),
    ...contradicting('/method/skin', method.skin, skin, rung.title),
  ];
}

const contradicting = (
  at: string,
  said: string | undefined,
  own: string | undefined,
  title: string,
): readonly Problem[] =>
  said === undefined || own === undefined || said === own
    ? []
    : [
        problem('contradiction', at, {
          other: '/method/rung',
          why: `the rung "${title}" is done ${own}; leave the field out or name another rung`,
        }),
      ];

/** She cannot float and stand ashore at once. */
const placeFaults = ({ conditions }: DefectRecord): readonly Problem[] =>
  conditions?.isAfloat === undefined ||
  conditions.place === undefined ||
  conditions.isAfloat === (conditions.place === 'afloat')
    ? []
    : [
        problem('contradiction', '/conditions/place', {
          other: '/conditions/isAfloat',
          why: `isAfloat is ${conditions.isAfloat} and the place is ${conditions.place}; state the place alone`,
        }),
      ];
