import { expect, test } from '@jest/globals';
import {
  areaMm2,
  difference,
  distance,
  edgesOf,
  rectangle,
  regionOf,
  union,
  type Point,
  type Region,
  type Ring,
} from '#lib/geometry';
import { randomStream, type RandomStream } from '#lib/kernel';
import { planOpenings, type OpeningPlan, type OpeningRequest } from '../index.js';
import { asDrawn, drawnInto, ownFrameOf, regionInto, type DeckGeometry } from './own-frame.js';

/** A quadrangle with a hatch or without, and damage of some corners on it. */
function deckByLot(random: RandomStream): Pick<OpeningRequest, 'panel' | 'zones'> {
  const between = (low: number, high: number): number => low + (high - low) * random();
  const outline: Ring = [
    [0, between(0, 150)],
    [between(900, 1900), between(0, 150)],
    [between(900, 1900), between(600, 900)],
    [between(0, 200), between(600, 900)],
  ];
  const holes = random() < 0.3 ? [rectangle(400, 300, 600, 450)] : [];
  const at: Point = [between(150, 900), between(150, 600)];
  const corners = 5 + Math.floor(6 * random());
  const zone = Array.from({ length: corners }, (_, index): Point => {
    const [angle, reach] = [(2 * Math.PI * index) / corners, between(60, 240)];
    return [at[0] + reach * Math.cos(angle), at[1] + reach * Math.sin(angle)];
  });
  return { panel: { outline, holes }, zones: [{ id: 'z', outline: zone }] };
}

const build = { outerSkin: { thicknessMm: 3 }, innerSkin: { thicknessMm: 2 }, core: { thicknessMm: 12.7 } };

function planned(deck: Pick<OpeningRequest, 'panel' | 'zones'>): OpeningPlan | undefined {
  const plan = planOpenings({ ...build, ...deck, method: { skin: 'relay', cutMarginMm: 40 } });
  return plan.ok ? plan.value : undefined;
}

/** The other side of the boat, turned by 37 degrees and set down elsewhere. */
function astray([x, y]: Point): Point {
  const angle = (37 * Math.PI) / 180;
  return [-x * Math.cos(angle) - y * Math.sin(angle) + 731, -x * Math.sin(angle) + y * Math.cos(angle) - 257];
}

const deckAstray = ({ panel, zones }: Pick<OpeningRequest, 'panel' | 'zones'>) => ({
  panel: {
    outline: panel.outline.map(astray),
    holes: (panel.holes ?? []).map((hole) => hole.map(astray)),
  },
  zones: zones.map(({ id, outline }) => ({ id, outline: outline.map(astray) })),
});

const opened = (plan: OpeningPlan): Region => union(plan.openings.map(({ area }) => area));

test('1,000 decks stand on the same place of their own frame when they are mirrored, turned and moved', () => {
  const random = randomStream(20_261_129);
  for (let deck = 0; deck < 1000; deck += 1) {
    const { panel, zones } = deckByLot(random);
    const geometry = (change: (point: Point) => Point): DeckGeometry => ({
      panel: regionOf(
        panel.outline.map(change),
        (panel.holes ?? []).map((hole) => hole.map(change)),
      ),
      bad: regionOf(zones[0].outline.map(change)),
      supports: [],
    });
    const [here, there] = [geometry((point) => point), geometry(astray)];
    const [one, other] = [here, there].map((of) => regionInto(of.bad, ownFrameOf(of)));
    const apart = areaMm2(difference(one, other)) + areaMm2(difference(other, one));
    // Twice a hundredth of a millimetre along the edge.
    expect(apart).toBeLessThan(40);
  }
});

test('what is drawn stands on the very same hundredths in the frame of a deck that is turned', () => {
  const random = randomStream(27);
  for (let deck = 0; deck < 300; deck += 1) {
    const request = deckByLot(random);
    const [one, other] = [request, deckAstray(request)].map(({ panel, zones }) => {
      const given = { outer: panel.outline, holes: panel.holes ?? [] };
      const frame = ownFrameOf({
        panel: asDrawn(regionOf(given.outer, given.holes), panel),
        bad: regionOf(zones[0].outline),
        supports: [],
      });
      return [given, { outer: zones[0].outline, holes: [] }].map((drawn) => drawnInto(drawn, frame));
    });
    expect(other).toEqual(one);
  }
});

test('port and starboard get the same openings, however the deck lies', () => {
  const random = randomStream(4711);
  let compared = 0;
  for (let deck = 0; deck < 60; deck += 1) {
    const request = deckByLot(random);
    const plan = planned(request);
    if (plan === undefined) continue;
    const other = planned(deckAstray(request));
    if (other === undefined) throw new Error('refused where it was astray');
    const moved = opened(plan).flatMap(({ outer, holes }) =>
      regionOf(
        outer.map(astray),
        holes.map((hole) => hole.map(astray)),
      ),
    );
    const apart = areaMm2(difference(moved, opened(other))) + areaMm2(difference(opened(other), moved));
    expect(apart).toBeLessThan(0.001 * Math.max(1e4, areaMm2(moved)));
    expect(other.openings.map(({ label, form }) => ({ label, form }))).toEqual(
      plan.openings.map(({ label, form }) => ({ label, form })),
    );
    compared += 1;
  }
  expect(compared).toBeGreaterThan(50);
});

test('the tape is hooked to the same end of the same edge on either side of the boat', () => {
  const request = deckByLot(randomStream(99));
  const [plan, other] = [planned(request), planned(deckAstray(request))];
  const [opening] = plan?.openings ?? [];
  const [mirrored] = other?.openings ?? [];
  expect(distance(astray(opening.marking.datum.from), mirrored.marking.datum.from)).toBeLessThan(0.05);
  const running = (corners: typeof opening.marking.corners) =>
    corners.map(({ alongMm }) => Math.round(alongMm)).sort((one, next) => one - next);
  expect(running(mirrored.marking.corners)).toEqual(running(opening.marking.corners));
});

// By hand: the longest edge lies at y 0 from 0 to 400, the deck above it; bad core by the right end leans that way, so x
// stays and starts in the middle of the edge: (380, 50) becomes (180, 50). By the left end x is turned round.
test('the frame starts in the middle of the longest edge and runs towards the bad core', () => {
  const panel = regionOf(rectangle(0, 0, 400, 100));
  const frameFor = (bad: Ring) => ownFrameOf({ panel, bad: regionOf(bad), supports: [] });
  expect(frameFor(rectangle(360, 10, 390, 30)).into([380, 40])).toEqual([180, 60]);
  expect(frameFor(rectangle(360, 60, 390, 90)).into([380, 60])).toEqual([180, 60]);
  expect(frameFor(rectangle(10, 60, 40, 90)).into([20, 60])).toEqual([180, 60]);
  expect(frameFor(rectangle(10, 60, 40, 90)).isMirrored).toBe(true);
});

test('no saw edge is shorter than the radius of its corners', () => {
  const random = randomStream(815);
  for (let deck = 0; deck < 60; deck += 1) {
    const plan = planned(deckByLot(random));
    const lengths = (plan?.openings ?? []).flatMap(({ sawLine }) =>
      edgesOf(sawLine).map(([from, to]) => distance(from, to)),
    );
    for (const lengthMm of lengths) expect(lengthMm).toBeGreaterThan(39.9);
  }
});
