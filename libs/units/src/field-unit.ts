/** How field names say their unit, and the unit they mean. A name inside a longer one stands after it. */
const unitsByEnding: Readonly<Record<string, string>> = {
  GPerCm3: 'g/cm3',
  GPerM2: 'g/m2',
  KgPerM2: 'kg/m2',
  KgPerM3: 'kg/m3',
  NPerMm: 'N/mm',
  MPerS: 'm/s',
  Mm2: 'mm2',
  Mm3: 'mm3',
  Nmm: 'N.mm',
  Mm: 'mm',
  M2: 'm2',
  KPa: 'kPa',
  MPa: 'MPa',
  Kg: 'kg',
  Ml: 'ml',
  G: 'g',
  M: 'm',
  L: 'l',
  N: 'N',
  C: 'degC',
};

/** The ending starts a new word of the name; X and Y are axes. What stands after "Per" is part of a rate of something else. */
const ending = new RegExp(`(?<=[a-z0-9XY])(?<!Per)(${Object.keys(unitsByEnding).join('|')})$`);

/** The SI unit that the name of a field ends with: mm for `thicknessMm`; undefined for names that say a kind or a rate of money or time. */
export function unitOfField(name: string): string | undefined {
  const found = ending.exec(name);
  return found === null ? undefined : unitsByEnding[found[1]];
}
