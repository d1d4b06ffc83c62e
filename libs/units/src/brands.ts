declare const unit: unique symbol;

/** A plain number at run time; to the compiler, a number of one unit that no other unit can stand in for. */
export type In<U extends string> = number & { readonly [unit]: U };

export type Mm = In<'mm'>;
export type Mm2 = In<'mm2'>;
export type Mm3 = In<'mm3'>;
export type M = In<'m'>;
export type M2 = In<'m2'>;
export type L = In<'l'>;
export type G = In<'g'>;
export type Kg = In<'kg'>;
export type GPerM2 = In<'g/m2'>;
export type KgPerM2 = In<'kg/m2'>;
export type KgPerM3 = In<'kg/m3'>;
export type N = In<'N'>;
export type NPerMm = In<'N/mm'>;
export type Nmm = In<'N.mm'>;
export type MPa = In<'MPa'>;
export type KPa = In<'kPa'>;
export type DegC = In<'degC'>;
export type K = In<'K'>;
export type Min = In<'min'>;
export type H = In<'h'>;
export type Days = In<'d'>;
export type Percent = In<'%'>;
export type Years = In<'years'>;
export type Fraction = In<'1'>;

const named = <T extends number>(value: number): T => value as T;

export const mm = named<Mm>;
export const mm2 = named<Mm2>;
export const mm3 = named<Mm3>;
export const m = named<M>;
export const m2 = named<M2>;
export const l = named<L>;
export const g = named<G>;
export const kg = named<Kg>;
export const gPerM2 = named<GPerM2>;
export const kgPerM2 = named<KgPerM2>;
export const kgPerM3 = named<KgPerM3>;
export const newton = named<N>;
export const nPerMm = named<NPerMm>;
export const nmm = named<Nmm>;
export const mPa = named<MPa>;
export const kPa = named<KPa>;
export const degC = named<DegC>;
export const kelvin = named<K>;
export const min = named<Min>;
export const h = named<H>;
export const days = named<Days>;
export const years = named<Years>;
export const percent = named<Percent>;
export const fraction = named<Fraction>;
