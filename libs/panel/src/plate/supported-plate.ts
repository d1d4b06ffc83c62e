import { FIELD_COUNT, harmonicOf, type Harmonic } from './harmonic.js';
import {
  addFields,
  turnedFields,
  turnedLoad,
  turnedRectangle,
  turnedSpot,
  turnedStiffness,
  type PlateEdge,
  type PlateFields,
  type PlateStiffness,
  type Rectangle,
  type RectangularLoad,
  type Spot,
} from './plate.js';
import { partlyLoadedBeam } from './partly-loaded-beam.js';
import { newWaveAnswer, waveAnswer, type LoadedSpan, type WaveAnswer } from './wave-answer.js';

const MOST_HARMONICS = 400;
const TOLERANCE = 1e-7;
/** Terms looked back over, so that a harmonic that the load happens to miss does not end the sum. */
const WINDOW = 4;
const SMALLEST = 1e-300;
const CANCELLED = 0.01;
/** Place of slopeX among the fields. */
const SLOPE_X = 6;

export interface SeriesFields {
  readonly fields: PlateFields;
  /** Estimated share of the deflection and of the moments and shears left out by ending the series. */
  readonly truncation: number;
  readonly harmonics: number;
}

/** A simply supported orthotropic plate with shear deformation, ready to answer for any rectangle of pressure. */
export interface SupportedPlate {
  readonly stiffness: PlateStiffness;
  readonly size: Rectangle;
  readonly at: (load: RectangularLoad, spot: Spot) => SeriesFields;
  /** Amplitudes of the sine waves that make up the rotation along an edge, first wave first. */
  readonly edgeRotation: (load: RectangularLoad, edge: PlateEdge, waves: number) => Float64Array;
}

/**
 * Navier's double series with the sum along one side done in closed form and the local strip taken out, so that the
 * remaining terms fall exponentially with the distance from the edge of the load.
 *
 * Valid:  edges that can neither sink nor twist, free to rotate about themselves; small deflections.
 * Source: [TIMOSHENKO-PLATES-1959] Navier and Levy solutions; shear deformation as in [ZENKERT-1995].
 * Worked: test/reference/cases/panel-plates.ts
 */
export function supportedPlate(stiffness: PlateStiffness, size: Rectangle): SupportedPlate {
  const bothWays = waysOf(stiffness, size);
  const ratio = (stiffness.d22 / stiffness.d11) ** 0.25;
  const at = (load: RectangularLoad, spot: Spot): SeriesFields => {
    const rateAlongX = (clearance(spot.xMm, load.x1Mm, load.x2Mm) / size.widthYMm) * ratio;
    const rateAlongY = clearance(spot.yMm, load.y1Mm, load.y2Mm) / (size.lengthXMm * ratio);
    const { straight, turned } = bothWays(load);
    if (rateAlongX >= rateAlongY) return seriesAt(straight, spot);
    const answer = seriesAt(turned, turnedSpot(spot));
    return { ...answer, fields: turnedFields(answer.fields) };
  };
  const edgeRotation = (load: RectangularLoad, edge: PlateEdge, waves: number): Float64Array =>
    edge === 'xStart' || edge === 'xEnd'
      ? rotationWaves(bothWays(load).straight, edge === 'xEnd', waves)
      : rotationWaves(bothWays(load).turned, edge === 'yEnd', waves);
  return { stiffness, size, at, edgeRotation };
}

interface Ways {
  readonly straight: Series;
  readonly turned: Series;
}

/** The series of a load with the closed form along x, and along y: kept, because many spots are asked of one load. */
function waysOf(stiffness: PlateStiffness, size: Rectangle): (load: RectangularLoad) => Ways {
  const straight = { stiffness, size, bank: harmonicBank(stiffness, size.widthYMm) };
  const across = turnedStiffness(stiffness);
  const turned = {
    stiffness: across,
    size: turnedRectangle(size),
    bank: harmonicBank(across, size.lengthXMm),
  };
  const known = new WeakMap<RectangularLoad, Ways>();
  return (load) => {
    const ways = known.get(load) ?? {
      straight: { ...straight, load, brought: new Map() },
      turned: { ...turned, load: turnedLoad(load), brought: new Map() },
    };
    known.set(load, ways);
    return ways;
  };
}

/** The rotation about the edge x = 0 or x = span; the local strip does not turn that way. */
function rotationWaves(series: Series, isEnd: boolean, waves: number): Float64Array {
  const { size, load } = series;
  const broughtBy = harmonicsAt(series, isEnd ? size.lengthXMm : 0);
  const amplitudes = new Float64Array(waves);
  for (let n = 1; n <= waves; n += 1)
    amplitudes[n - 1] = broughtBy(n)[SLOPE_X] * harmonicPressure(load, size.widthYMm, n);
  return amplitudes;
}

const clearance = (at: number, from: number, to: number): number =>
  Math.min(Math.abs(at - from), Math.abs(at - to));

type HarmonicBank = (n: number) => Harmonic;

function harmonicBank(stiffness: PlateStiffness, width: number): HarmonicBank {
  const kept: Harmonic[] = [];
  return (n) => {
    while (kept.length < n) kept.push(harmonicOf(stiffness, ((kept.length + 1) * Math.PI) / width));
    return kept[n - 1];
  };
}

interface Series {
  readonly stiffness: PlateStiffness;
  readonly size: Rectangle;
  readonly bank: HarmonicBank;
  readonly load: RectangularLoad;
  /** What each harmonic brings at a place along x, first harmonic first: spots in one column share it. */
  readonly brought: Map<number, Float64Array[]>;
}

function harmonicsAt({ size, bank, load, brought }: Series, at: number): (n: number) => Float64Array {
  const wave = newWaveAnswer();
  const where = { span: size.lengthXMm, from: load.x1Mm, to: load.x2Mm, at };
  const known = brought.get(at) ?? [];
  brought.set(at, known);
  return (n) => {
    while (known.length < n) known.push(alongTheWave(bank(known.length + 1), where, wave));
    return known[n - 1];
  };
}

function seriesAt(series: Series, spot: Spot): SeriesFields {
  const { stiffness, size, bank, load } = series;
  const strip = localStrip(stiffness, size, load, spot);
  const running: Running = {
    total: new Float64Array(FIELD_COUNT),
    scale: new Float64Array(FIELD_COUNT),
    last: new Float64Array(FIELD_COUNT),
    base: [strip.w, strip.mx, strip.my, strip.qy],
  };
  const broughtBy = harmonicsAt(series, spot.xMm);
  const envelopes: number[] = [];
  let n = 0;
  while (n < MOST_HARMONICS && !isSettled(envelopes)) {
    n += 1;
    const pressure = harmonicPressure(load, size.widthYMm, n);
    envelopes.push(accumulate(running, broughtBy(n), pressure, bank(n).beta * spot.yMm));
  }
  return { fields: addFields(strip, fieldsOf(running.total)), truncation: tailOf(envelopes), harmonics: n };
}

const fieldsOf = ([w, mx, my, mxy, qx, qy, slopeX, slopeY]: Float64Array): PlateFields => ({
  w,
  mx,
  my,
  mxy,
  qx,
  qy,
  slopeX,
  slopeY,
});

const harmonicPressure = ({ pressureMPa, y1Mm, y2Mm }: RectangularLoad, width: number, n: number): number => {
  const k = (n * Math.PI) / width;
  return (
    ((4 * pressureMPa) / (n * Math.PI)) *
    Math.sin((k * (y1Mm + y2Mm)) / 2) *
    Math.sin((k * (y2Mm - y1Mm)) / 2)
  );
};

interface Running {
  readonly total: Float64Array;
  readonly scale: Float64Array;
  /** Sizes of what the last harmonic brought. */
  readonly last: Float64Array;
  /** The local strip's deflection, both moments and shear. */
  readonly base: readonly [number, number, number, number];
}

/** Fields that go with cos(beta y) rather than sin(beta y): mxy, qy, slopeY. */
const goesWithCosine = [false, false, false, true, false, true, false, true] as const;

/** Adds one harmonic and returns the size of what it brought, relative to the sums so far. */
function accumulate(
  { total, scale, last, base }: Running,
  brought: Float64Array,
  amplitude: number,
  phase: number,
): number {
  const sine = Math.sin(phase);
  const cosine = Math.cos(phase);
  for (let field = 0; field < FIELD_COUNT; field += 1) {
    const part = amplitude * brought[field];
    total[field] += part * (goesWithCosine[field] ? cosine : sine);
    last[field] = Math.abs(part);
    scale[field] += last[field];
  }
  const deflection = last[0] / sizeToJudgeBy(Math.abs(base[0] + total[0]), Math.abs(base[0]) + scale[0]);
  const moment =
    Math.max(last[1], last[2], last[3]) /
    sizeToJudgeBy(
      Math.max(Math.abs(base[1] + total[1]), Math.abs(base[2] + total[2]), Math.abs(total[3])),
      Math.abs(base[2]) + scale[1] + scale[2] + scale[3],
    );
  const shear =
    Math.max(last[4], last[5]) /
    sizeToJudgeBy(
      Math.max(Math.abs(total[4]), Math.abs(base[3] + total[5])),
      Math.abs(base[3]) + scale[4] + scale[5],
    );
  return Math.max(deflection, moment, shear);
}

/** What there is, or a share of what was summed where the parts cancel, as a deflection does on an edge. */
const sizeToJudgeBy = (present: number, summed: number): number =>
  Math.max(present, CANCELLED * summed, SMALLEST);

function isSettled(envelopes: readonly number[]): boolean {
  const count = envelopes.length;
  if (count < WINDOW) return false;
  for (let back = 1; back <= WINDOW; back += 1) if (envelopes[count - back] > TOLERANCE) return false;
  return true;
}

/** Bound of what follows the last term, taking the fall over the last window to go on. */
function tailOf(envelopes: readonly number[]): number {
  const last = Math.max(...envelopes.slice(-WINDOW));
  const before = Math.max(...envelopes.slice(-2 * WINDOW, -WINDOW), SMALLEST);
  const fall = Math.min(0.999, (last / before) ** (1 / WINDOW));
  return (last * fall) / (1 - fall);
}

/** The answer across y where the load has no end along x; only under the load itself. */
function localStrip(
  { d22, d12, sy }: PlateStiffness,
  size: Rectangle,
  load: RectangularLoad,
  spot: Spot,
): PlateFields {
  const beam = partlyLoadedBeam(
    { span: size.widthYMm, bending: d22, shear: sy },
    { pressure: load.pressureMPa, from: load.y1Mm, to: load.y2Mm },
    spot.yMm,
  );
  const share = shareUnder(spot.xMm, load);
  return {
    w: share * beam.w,
    mx: share * beam.m * (d12 / d22),
    my: share * beam.m,
    mxy: 0,
    qx: 0,
    qy: share * beam.q,
    slopeX: 0,
    slopeY: share * beam.slope,
  };
}

const shareUnder = (x: number, { x1Mm, x2Mm }: RectangularLoad): number => (x >= x1Mm && x <= x2Mm ? 1 : 0);

/** Fields that go with the slope of the wave along x rather than with the wave itself: mxy, qx, slopeX. */
const goesWithSlope = [false, false, false, true, true, false, true, false] as const;

/** Sums each field over the three roots, without the local strip. */
function alongTheWave(
  { roots, waves, residues }: Harmonic,
  where: LoadedSpan,
  wave: WaveAnswer,
): Float64Array {
  const into = new Float64Array(FIELD_COUNT);
  for (let k = 0; k < 3; k += 1) {
    const sRe = roots[2 * k];
    const sIm = roots[2 * k + 1];
    const size = sRe * sRe + sIm * sIm;
    waveAnswer(waves[2 * k], waves[2 * k + 1], where, wave);
    const valueRe = (wave[0] * sRe + wave[1] * sIm) / size;
    const valueIm = (wave[1] * sRe - wave[0] * sIm) / size;
    const slopeRe = (wave[2] * sRe + wave[3] * sIm) / size;
    const slopeIm = (wave[3] * sRe - wave[2] * sIm) / size;
    for (let field = 0; field < FIELD_COUNT; field += 1) {
      const at = 2 * (k * FIELD_COUNT + field);
      into[field] += goesWithSlope[field]
        ? residues[at] * slopeRe - residues[at + 1] * slopeIm
        : residues[at] * valueRe - residues[at + 1] * valueIm;
    }
  }
  return into;
}
