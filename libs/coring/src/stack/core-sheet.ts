import type { CoreForm, CoreSheet, Datum } from '#lib/catalogue';
import { fromCatalogue, type Figure } from '#lib/provenance';
import { kgPerM3, mPa } from '#lib/units';

const datum = <U extends string>(
  figure: (value: number, origin: { item: string; field: string } & Omit<Datum, 'value'>) => Figure<U>,
  core: CoreSheet,
  field: string,
  { value, ...spread }: Datum,
): Figure<U> => figure(value, { item: core.code, field, ...spread });

export const densityOf = (core: CoreSheet): Figure<'kg/m3'> =>
  datum(
    (value, origin) => fromCatalogue('kg/m3', kgPerM3(value), 'density of the new core', origin),
    core,
    'densityKgPerM3',
    core.densityKgPerM3,
  );

export const modulusOf = (core: CoreSheet): Figure<'MPa'> =>
  datum(
    (value, origin) => fromCatalogue('MPa', mPa(value), 'modulus of the core along its face', origin),
    core,
    'inPlaneModulusMPa',
    core.inPlaneModulusMPa,
  );

export const scoredForm = (core: CoreSheet): CoreForm | undefined =>
  core.forms.find(({ form }) => form === 'scored');
