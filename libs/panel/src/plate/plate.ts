/**
 * A rectangular plate with shear deformation, per unit width: bending D (N.mm), transverse shear S (N/mm).
 * x runs fore and aft, y athwartships; w and pressure are positive downwards; a sagging moment is positive.
 */
export interface PlateStiffness {
  readonly d11: number;
  readonly d12: number;
  readonly d22: number;
  readonly d66: number;
  readonly sx: number;
  readonly sy: number;
}

export interface Rectangle {
  readonly lengthXMm: number;
  readonly widthYMm: number;
}

/** Uniform pressure (MPa) on a rectangle of the plate. */
export interface RectangularLoad {
  readonly pressureMPa: number;
  readonly x1Mm: number;
  readonly x2Mm: number;
  readonly y1Mm: number;
  readonly y2Mm: number;
}

export type PlateEdge = 'xStart' | 'xEnd' | 'yStart' | 'yEnd';

export interface Spot {
  readonly xMm: number;
  readonly yMm: number;
}

/** What the plate feels at one spot: mm, N.mm per mm, N per mm, radians. */
export interface PlateFields {
  readonly w: number;
  readonly mx: number;
  readonly my: number;
  readonly mxy: number;
  readonly qx: number;
  readonly qy: number;
  readonly slopeX: number;
  readonly slopeY: number;
}

export const noFields: PlateFields = { w: 0, mx: 0, my: 0, mxy: 0, qx: 0, qy: 0, slopeX: 0, slopeY: 0 };

export const addFields = (a: PlateFields, b: PlateFields): PlateFields => ({
  w: a.w + b.w,
  mx: a.mx + b.mx,
  my: a.my + b.my,
  mxy: a.mxy + b.mxy,
  qx: a.qx + b.qx,
  qy: a.qy + b.qy,
  slopeX: a.slopeX + b.slopeX,
  slopeY: a.slopeY + b.slopeY,
});

/** The same plate seen with x and y exchanged. */
export const turnedStiffness = ({ d11, d12, d22, d66, sx, sy }: PlateStiffness): PlateStiffness => ({
  d11: d22,
  d12,
  d22: d11,
  d66,
  sx: sy,
  sy: sx,
});

export const turnedRectangle = ({ lengthXMm, widthYMm }: Rectangle): Rectangle => ({
  lengthXMm: widthYMm,
  widthYMm: lengthXMm,
});

export const turnedLoad = ({ pressureMPa, x1Mm, x2Mm, y1Mm, y2Mm }: RectangularLoad): RectangularLoad => ({
  pressureMPa,
  x1Mm: y1Mm,
  x2Mm: y2Mm,
  y1Mm: x1Mm,
  y2Mm: x2Mm,
});

export const turnedFields = ({ w, mx, my, mxy, qx, qy, slopeX, slopeY }: PlateFields): PlateFields => ({
  w,
  mx: my,
  my: mx,
  mxy,
  qx: qy,
  qy: qx,
  slopeX: slopeY,
  slopeY: slopeX,
});

export const turnedSpot = ({ xMm, yMm }: Spot): Spot => ({ xMm: yMm, yMm: xMm });

export const everywhere = ({ lengthXMm, widthYMm }: Rectangle, pressureMPa: number): RectangularLoad => ({
  pressureMPa,
  x1Mm: 0,
  x2Mm: lengthXMm,
  y1Mm: 0,
  y2Mm: widthYMm,
});
