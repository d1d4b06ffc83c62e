import { writeFileSync } from 'node:fs';
import { planOpenings, type OpeningPlan, type OpeningRequest } from '#lib/extent';
import {
  areaMm2,
  difference,
  distance,
  edgesOf,
  intersection,
  offset,
  rectangle,
  regionOf,
  union,
  type Point,
  type Region,
  type Ring,
} from '#lib/geometry';
import { randomStream, type RandomStream } from '#lib/kernel';

/**
 * Whether port and starboard get the same openings: plans of panels and of their mirror images, and of panels turned and moved.
 * Run: npm run build && node dist/test/bench/mirror.bench.js [panels] [first]
 */
const panels = Number(process.argv[2] ?? 250);
const first = Number(process.argv[3] ?? 0);

const RADIUS_MM = 40;
const TONGUE_MM = 40;
const CORNER_MM2 = 300;

const shapes: readonly { readonly outline: Ring; readonly holes: readonly Ring[] }[] = [
  { outline: rectangle(0, 0, 2400, 1200), holes: [rectangle(1000, 450, 1400, 750)] },
  { outline: [[0, 0], [2300, 450], [2300, 950], [0, 1500]], holes: [] }, // prettier-ignore
  { outline: [[0, 0], [1200, 60], [2400, 240], [2400, 640], [1200, 450], [0, 380]], holes: [] }, // prettier-ignore
  { outline: [[0, 0], [2200, 0], [2200, 700], [1000, 700], [1000, 1500], [0, 1500]], holes: [] }, // prettier-ignore
];

/** A quadrangle, or a side deck between two arcs, of sizes that no other has. */
function shapeByLot(random: RandomStream): { readonly outline: Ring; readonly holes: readonly Ring[] } {
  const between = (low: number, high: number): number => low + (high - low) * random();
  if (random() < 0.5)
    return {
      outline: [
        [0, between(0, 200)],
        [between(1200, 2600), between(0, 200)],
        [between(1200, 2600), between(700, 1300)],
        [between(0, 300), between(700, 1300)],
      ],
      holes: [],
    };
  const [radiusMm, widthMm, angle] = [between(4000, 9000), between(220, 520), between(0.2, 0.5)];
  const arc = (radius: number, step: number): Point => [
    radius * Math.sin((angle * step) / 10),
    radiusMm + widthMm - radius * Math.cos((angle * step) / 10),
  ];
  const steps = Array.from({ length: 11 }, (_, step) => step);
  return {
    outline: [
      ...steps.map((step) => arc(radiusMm + widthMm, step)),
      ...steps.map((step) => arc(radiusMm, 10 - step)),
    ],
    holes: [],
  };
}

function requestOf(random: RandomStream): OpeningRequest {
  const shape = random() < 0.5 ? shapes[Math.floor(random() * shapes.length)] : shapeByLot(random);
  const deck = regionOf(shape.outline, shape.holes);
  const zones = Array.from({ length: 1 + Math.floor(4 * random()) }, () => blob(shape.outline, random))
    .flatMap((ring) => intersection(regionOf(ring), deck))
    .filter((polygon) => areaMm2([polygon]) > 500);
  return {
    outerSkin: { thicknessMm: 3 },
    innerSkin: { thicknessMm: 2 },
    core: { thicknessMm: 12.7 },
    method: { skin: random() < 0.5 ? 'relay' : 're-bed', cutMarginMm: 120 * random() },
    panel: shape,
    zones: zones.map(({ outer, holes }, index) => ({ id: `z${index}`, outline: outer, holes })),
  };
}

function blob(outline: Ring, random: RandomStream): Ring {
  const [longMm, wideMm] = [0, 1].map((axis) => Math.max(...outline.map((point) => point[axis])));
  const at: Point = [longMm * random(), wideMm * random()];
  const sizeMm = 60 + 290 * random();
  const corners = 5 + Math.floor(18 * random());
  return Array.from({ length: corners }, (_, index): Point => {
    const angle = (2 * Math.PI * index) / corners;
    const reach = sizeMm * (0.35 + 0.65 * random());
    return [at[0] + reach * Math.cos(angle), at[1] + reach * Math.sin(angle)];
  });
}

const moved = (request: OpeningRequest, move: (point: Point) => Point): OpeningRequest => ({
  ...request,
  panel: {
    outline: request.panel.outline.map(move),
    holes: (request.panel.holes ?? []).map((hole) => hole.map(move)),
  },
  zones: request.zones.map(({ id, outline, holes = [] }) => ({
    id,
    outline: outline.map(move),
    holes: holes.map((hole) => hole.map(move)),
  })),
});

function planned(request: OpeningRequest): OpeningPlan {
  const outcome = planOpenings(request);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}

const turnBy =
  (angle: number) =>
  ([x, y]: Point): Point => [
    x * Math.cos(angle) - y * Math.sin(angle) + 731,
    x * Math.sin(angle) + y * Math.cos(angle) - 257,
  ];

const edgesMm = ({ openings }: OpeningPlan): readonly number[] =>
  openings.flatMap(({ sawLine, innerSawLines }) =>
    [sawLine, ...innerSawLines].flatMap(edgesOf).map(([from, to]) => distance(from, to)),
  );

const openedBy = ({ openings }: OpeningPlan): Region => union(openings.map(({ area }) => area));

/** Parts of an opening that are narrower than a core piece may be, and larger than the rounding of a corner. */
function tonguesMm2(opened: Region): number {
  const broad = offset(offset(opened, -TONGUE_MM / 2, 'round'), TONGUE_MM / 2, 'round');
  const parts = difference(opened, broad).map((part) => areaMm2([part]));
  return parts.filter((area) => area > CORNER_MM2).reduce((sum, area) => sum + area, 0);
}

/** Area that only one of the plans opens, over what the first opens; two plans that open nothing are the same. */
function differs(one: Region, other: Region): number {
  const apart = areaMm2(difference(one, other)) + areaMm2(difference(other, one));
  return apart < 1 ? 0 : apart / Math.max(1, areaMm2(one));
}

const regionMoved = (region: Region, move: (point: Point) => Point): Region =>
  region.flatMap(({ outer, holes }) =>
    regionOf(
      outer.map(move),
      holes.map((hole) => hole.map(move)),
    ),
  );

const ways = [
  { name: 'mirrored', move: ([x, y]: Point): Point => [x, -y] },
  { name: 'turned by 37 degrees and moved', move: turnBy((37 * Math.PI) / 180) },
];
const found = ways.map(({ name }) => ({ name, differences: [] as number[] }));
const marked: { shortest: number; corners: number; tonguesMm2: number }[] = [];
const largestFirst: { panel: number; name: string; difference: number }[] = [];
for (let panel = first; panel < first + panels; panel += 1) {
  const request = requestOf(randomStream(20_261_129 + panel));
  if (request.zones.length === 0) continue;
  const plan = planned(request);
  const opened = openedBy(plan);
  marked.push({
    shortest: Math.min(...edgesMm(plan)),
    corners: Math.max(0, ...plan.openings.map(({ sawLine }) => sawLine.length)),
    tonguesMm2: tonguesMm2(opened),
  });
  for (const [index, { name, move }] of ways.entries()) {
    const difference = differs(regionMoved(opened, move), openedBy(planned(moved(request, move))));
    found[index].differences.push(difference);
    largestFirst.push({ panel, name, difference });
  }
}
largestFirst.sort((one, other) => other.difference - one.difference);

const over = (values: readonly number[], limit: number): number =>
  values.filter((value) => value > limit).length;
const text = [
  '# Openings of mirrored, turned and moved panels',
  '',
  `${marked.length} panels (four shapes, and quadrangles and curved side decks drawn by lot), one to four zones each, seeds from ${20_261_129 + first}. Compared is the area that only one of the two plans opens, over what the plan opens.`,
  '',
  '| panel | plans | differ by more than 0.1 % | 1 % | 5 % | worst |',
  '|---|---|---|---|---|---|',
  ...found.map(
    ({ name, differences }) =>
      `| ${name} | ${differences.length} | ${over(differences, 0.001)} | ${over(differences, 0.01)} | ${over(differences, 0.05)} | ${(100 * Math.max(...differences)).toFixed(2)} % |`,
  ),
  '',
  `Largest: ${largestFirst
    .slice(0, 3)
    .map(({ panel, name, difference }) => `${(100 * difference).toFixed(3)} % (panel ${panel}, ${name})`)
    .join('; ')}.`,
  '',
  `Plans with a saw edge shorter than the corner radius of ${RADIUS_MM} mm: ${marked.filter(({ shortest }) => shortest < RADIUS_MM - 0.1).length}, shorter than half of it: ${marked.filter(({ shortest }) => shortest < RADIUS_MM / 2).length}; shortest ${Math.min(...marked.map(({ shortest }) => shortest)).toFixed(1)} mm.`,
  `Plans with more than 16 corners in an opening: ${marked.filter(({ corners }) => corners > 16).length}; most ${Math.max(...marked.map(({ corners }) => corners))}.`,
  `Plans with a tongue narrower than ${TONGUE_MM} mm: ${marked.filter((one) => one.tonguesMm2 > 0).length}; largest ${(Math.max(...marked.map((one) => one.tonguesMm2)) / 100).toFixed(0)} cm2.`,
  '',
].join('\n');
writeFileSync('test/bench/results/mirror.md', text);
console.log(text);
