import { writeFileSync } from 'node:fs';
import { planOpenings, type OpeningPlan, type OpeningRequest } from '#lib/extent';
import { areaMm2, intersection, rectangle, regionOf, type Point, type Ring } from '#lib/geometry';
import { randomStream, type RandomStream } from '#lib/kernel';

/**
 * Whether port and starboard get the same openings: plans of panels and of their mirror images, and of panels turned and moved.
 * Run: npm run build && node dist/test/bench/mirror.bench.js [panels] [first]
 */
const panels = Number(process.argv[2] ?? 250);
const first = Number(process.argv[3] ?? 0);

const RADIUS_MM = 40;

const shapes: readonly { readonly outline: Ring; readonly holes: readonly Ring[] }[] = [
  { outline: rectangle(0, 0, 2400, 1200), holes: [rectangle(1000, 450, 1400, 750)] },
  { outline: [[0, 0], [2300, 450], [2300, 950], [0, 1500]], holes: [] }, // prettier-ignore
  { outline: [[0, 0], [1200, 60], [2400, 240], [2400, 640], [1200, 450], [0, 380]], holes: [] }, // prettier-ignore
  { outline: [[0, 0], [2200, 0], [2200, 700], [1000, 700], [1000, 1500], [0, 1500]], holes: [] }, // prettier-ignore
];

function requestOf(random: RandomStream): OpeningRequest {
  const shape = shapes[Math.floor(random() * shapes.length)];
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

const shortEdges = ({ openings }: OpeningPlan): number =>
  openings
    .flatMap(({ sawLine }) =>
      sawLine.map((from, index) => {
        const to = sawLine[(index + 1) % sawLine.length];
        return Math.hypot(to[0] - from[0], to[1] - from[1]);
      }),
    )
    .filter((lengthMm) => lengthMm < RADIUS_MM - 0.01).length;

const differs = (one: OpeningPlan, other: OpeningPlan): number =>
  Math.abs(other.openedAreaM2 / Math.max(1e-9, one.openedAreaM2) - 1);

const ways = [
  { name: 'mirrored', move: ([x, y]: Point): Point => [x, -y] },
  { name: 'turned by 37 degrees and moved', move: turnBy((37 * Math.PI) / 180) },
];
const found = ways.map(({ name }) => ({ name, differences: [] as number[] }));
const edges: number[] = [];
for (let panel = first; panel < first + panels; panel += 1) {
  const request = requestOf(randomStream(20_261_129 + panel));
  if (request.zones.length === 0) continue;
  const plan = planned(request);
  edges.push(shortEdges(plan));
  for (const [index, { move }] of ways.entries())
    found[index].differences.push(differs(plan, planned(moved(request, move))));
}

const over = (values: readonly number[], limit: number): number =>
  values.filter((value) => value > limit).length;
const text = [
  '# Openings of mirrored, turned and moved panels',
  '',
  `${edges.length} panels of four shapes, one to four zones each, seeds from ${20_261_129 + first}. Opened area against that of the plan itself.`,
  '',
  '| panel | plans | differ by more than 0.1 % | 1 % | 5 % | worst |',
  '|---|---|---|---|---|---|',
  ...found.map(
    ({ name, differences }) =>
      `| ${name} | ${differences.length} | ${over(differences, 0.001)} | ${over(differences, 0.01)} | ${over(differences, 0.05)} | ${(100 * Math.max(...differences)).toFixed(2)} % |`,
  ),
  '',
  `Plans with a saw edge shorter than the corner radius of ${RADIUS_MM} mm: ${over(edges, 0)}.`,
  '',
].join('\n');
writeFileSync('test/bench/results/mirror.md', text);
console.log(text);
