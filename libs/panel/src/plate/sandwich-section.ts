import type { PlateStiffness } from './plate.js';
import type { SandwichValues, SkinValues } from './states.js';

/** Symmetric 2 x 2 part of a stiffness, with its shear entry apart. */
interface InPlane {
  readonly e11: number;
  readonly e12: number;
  readonly e22: number;
  readonly e66: number;
}

/** Stress (MPa) at one height per unit of moment (N.mm/mm): sigma_x = xx Mx + xy My, and so on. */
export interface StressPerMoment {
  readonly xx: number;
  readonly xy: number;
  readonly yx: number;
  readonly yy: number;
}

export interface SandwichSection {
  readonly stiffness: PlateStiffness;
  /** Distance between the middles of the skins. */
  readonly leverMm: number;
  /** At the outside of each skin. */
  readonly outerFace: StressPerMoment;
  readonly innerFace: StressPerMoment;
  /** At the middle of each skin, as the small-craft yardstick and class rules take it. */
  readonly outerMiddle: StressPerMoment;
  readonly innerMiddle: StressPerMoment;
  /** Bending stiffness along x of the thin-skin engineering form, and how far it is from the exact one. */
  readonly thinSkinD11: number;
  readonly thinSkinError: number;
  /** The thin-skin form errs by less than 1 % when d/t is above 5.77. */
  readonly leverOverSkin: number;
  readonly isThinSkinFair: boolean;
}

const THIN_SKIN_LIMIT = 5.77;
/** Poisson's ratio of a core in its plane; it moves the stiffness of a deck panel by less than a part in a thousand. */
const CORE_POISSON = 0.3;

/**
 * Section of a sandwich per unit width, each layer at its own height: A, B and D of the layers, then D - B A^-1 B.
 *
 * z is measured from the middle of the core, positive downwards, so that a sagging moment pulls the inner skin.
 * Valid:  skins bonded to the core; shear carried by the core alone at S = G d^2 / t_c.
 * Source: [ZENKERT-1995] §3.1 eq. 3.4 to 3.7; unequal skins by the parallel axis theorem.
 * Worked: test/reference/cases/panel-sandwich.ts
 */
export function sandwichSection({ outer, inner, core }: SandwichValues): SandwichSection {
  const half = core.thicknessMm / 2;
  const layers: readonly Layer[] = [
    { top: -half - outer.thicknessMm, bottom: -half, plane: planeOf(outer) },
    { top: -half, bottom: half, plane: isotropicPlane(core.inPlaneModulusMPa ?? 0) },
    { top: half, bottom: half + inner.thicknessMm, plane: planeOf(inner) },
  ];
  const a = momentOf(layers, 1);
  const b = momentOf(layers, 2);
  const d = momentOf(layers, 3);
  const bending = reduced(a, b, d);
  const leverMm = core.thicknessMm + (outer.thicknessMm + inner.thicknessMm) / 2;
  const shear = (core.shearModulusMPa * leverMm * leverMm) / core.thicknessMm;
  const stiffness = {
    d11: bending.e11,
    d12: bending.e12,
    d22: bending.e22,
    d66: bending.e66,
    sx: shear,
    sy: shear,
  };
  const at = (layer: Layer, z: number): StressPerMoment => stressAt(layer.plane, z, { a, b, bending });
  const middle = (layer: Layer): StressPerMoment => at(layer, (layer.top + layer.bottom) / 2);
  return {
    stiffness,
    leverMm,
    outerFace: at(layers[0], layers[0].top),
    innerFace: at(layers[2], layers[2].bottom),
    outerMiddle: middle(layers[0]),
    innerMiddle: middle(layers[2]),
    ...thinSkinForm({ outer, inner, leverMm, d11: bending.e11 }),
  };
}

/** One skin alone, bending about its own middle; its shear by the usual five sixths of G t. */
export function skinPlate(skin: SkinValues): {
  readonly stiffness: PlateStiffness;
  readonly face: StressPerMoment;
} {
  const plane = planeOf(skin);
  const cube = skin.thicknessMm ** 3 / 12;
  const shear = (5 / 6) * skin.shearModulusMPa * skin.thicknessMm;
  const bending = scaled(plane, cube);
  return {
    stiffness: {
      d11: bending.e11,
      d12: bending.e12,
      d22: bending.e22,
      d66: bending.e66,
      sx: shear,
      sy: shear,
    },
    face: stressAt(plane, skin.thicknessMm / 2, { a: plane, b: scaled(plane, 0), bending }),
  };
}

/** Skins that have let go of the core: each bends about its own middle, and they share the load by stiffness. */
export function separateSkins({ outer, inner }: SandwichValues): PlateStiffness {
  const one = skinPlate(outer).stiffness;
  const two = skinPlate(inner).stiffness;
  return {
    d11: one.d11 + two.d11,
    d12: one.d12 + two.d12,
    d22: one.d22 + two.d22,
    d66: one.d66 + two.d66,
    sx: one.sx + two.sx,
    sy: one.sy + two.sy,
  };
}

/** Stress at the lower face of one skin when several bend together without sliding being held. */
export function faceInCommonBending(
  skin: SkinValues,
  { d11, d12, d22, d66 }: PlateStiffness,
): StressPerMoment {
  const plane = planeOf(skin);
  return stressAt(plane, skin.thicknessMm / 2, {
    a: plane,
    b: scaled(plane, 0),
    bending: { e11: d11, e12: d12, e22: d22, e66: d66 },
  });
}

interface Layer {
  readonly top: number;
  readonly bottom: number;
  readonly plane: InPlane;
}

function planeOf({ modulusXMPa, modulusYMPa, shearModulusMPa, poissonXY }: SkinValues): InPlane {
  const poissonYX = (poissonXY * modulusYMPa) / modulusXMPa;
  const held = 1 - poissonXY * poissonYX;
  return {
    e11: modulusXMPa / held,
    e12: (poissonXY * modulusYMPa) / held,
    e22: modulusYMPa / held,
    e66: shearModulusMPa,
  };
}

const isotropicPlane = (modulus: number): InPlane => {
  const held = modulus / (1 - CORE_POISSON * CORE_POISSON);
  return { e11: held, e12: CORE_POISSON * held, e22: held, e66: modulus / (2 * (1 + CORE_POISSON)) };
};

const scaled = ({ e11, e12, e22, e66 }: InPlane, by: number): InPlane => ({
  e11: e11 * by,
  e12: e12 * by,
  e22: e22 * by,
  e66: e66 * by,
});

/** Integral of the in-plane stiffness times z to the power less one. */
function momentOf(layers: readonly Layer[], power: number): InPlane {
  const parts = layers.map(({ top, bottom, plane }) =>
    scaled(plane, (bottom ** power - top ** power) / power),
  );
  return parts.reduce((sum, part) => ({
    e11: sum.e11 + part.e11,
    e12: sum.e12 + part.e12,
    e22: sum.e22 + part.e22,
    e66: sum.e66 + part.e66,
  }));
}

/** D - B A^-1 B. */
function reduced(a: InPlane, b: InPlane, d: InPlane): InPlane {
  const c = shiftOf(a, b);
  return {
    e11: d.e11 - (b.e11 * c.c11 + b.e12 * c.c21),
    e12: d.e12 - (b.e11 * c.c12 + b.e12 * c.c22),
    e22: d.e22 - (b.e12 * c.c12 + b.e22 * c.c22),
    e66: d.e66 - (b.e66 * b.e66) / a.e66,
  };
}

/** A^-1 B: strain of the middle plane per curvature, with its sign turned. */
function shiftOf(
  a: InPlane,
  b: InPlane,
): { readonly c11: number; readonly c12: number; readonly c21: number; readonly c22: number } {
  const det = a.e11 * a.e22 - a.e12 * a.e12;
  return {
    c11: (a.e22 * b.e11 - a.e12 * b.e12) / det,
    c12: (a.e22 * b.e12 - a.e12 * b.e22) / det,
    c21: (a.e11 * b.e12 - a.e12 * b.e11) / det,
    c22: (a.e11 * b.e22 - a.e12 * b.e12) / det,
  };
}

interface Whole {
  readonly a: InPlane;
  readonly b: InPlane;
  readonly bending: InPlane;
}

function stressAt(plane: InPlane, z: number, { a, b, bending }: Whole): StressPerMoment {
  const det = bending.e11 * bending.e22 - bending.e12 * bending.e12;
  const curve = { xx: bending.e22 / det, xy: -bending.e12 / det, yy: bending.e11 / det };
  const c = shiftOf(a, b);
  const strain = (kx: number, ky: number): readonly [number, number] => [
    z * kx - (c.c11 * kx + c.c12 * ky),
    z * ky - (c.c21 * kx + c.c22 * ky),
  ];
  const stress = (kx: number, ky: number): readonly [number, number] => {
    const [ex, ey] = strain(kx, ky);
    return [plane.e11 * ex + plane.e12 * ey, plane.e12 * ex + plane.e22 * ey];
  };
  const [xx, yx] = stress(curve.xx, curve.xy);
  const [xy, yy] = stress(curve.xy, curve.yy);
  return { xx, xy, yx, yy };
}

interface ThinSkinInputs {
  readonly outer: SkinValues;
  readonly inner: SkinValues;
  readonly leverMm: number;
  readonly d11: number;
}

function thinSkinForm({
  outer,
  inner,
  leverMm,
  d11,
}: ThinSkinInputs): Pick<
  SandwichSection,
  'thinSkinD11' | 'thinSkinError' | 'leverOverSkin' | 'isThinSkinFair'
> {
  const one = planeOf(outer).e11 * outer.thicknessMm;
  const two = planeOf(inner).e11 * inner.thicknessMm;
  const thinSkinD11 = ((one * two) / (one + two)) * leverMm * leverMm;
  const leverOverSkin = leverMm / Math.max(outer.thicknessMm, inner.thicknessMm);
  return {
    thinSkinD11,
    thinSkinError: thinSkinD11 / d11 - 1,
    leverOverSkin,
    isThinSkinFair: leverOverSkin > THIN_SKIN_LIMIT,
  };
}

/** In-plane stiffness of skins and core together, N/mm: what a pull on the deck meets. */
export function membraneStiffness({ outer, inner, core }: SandwichValues): {
  readonly xNPerMm: number;
  readonly yNPerMm: number;
} {
  const coreShare = (core.inPlaneModulusMPa ?? 0) * core.thicknessMm;
  return {
    xNPerMm: outer.modulusXMPa * outer.thicknessMm + inner.modulusXMPa * inner.thicknessMm + coreShare,
    yNPerMm: outer.modulusYMPa * outer.thicknessMm + inner.modulusYMPa * inner.thicknessMm + coreShare,
  };
}
