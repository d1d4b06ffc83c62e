import type { PackContent } from '#lib/catalogue';
import type { MaterialVariant } from '#lib/takeoff';
import { m2FromMm2, mFromMm, mm, mm2, kgFromG, g } from '#lib/units';

/** Whether what is offered is what is asked for: every field that is asked for must agree. */
export function satisfies(offered: MaterialVariant, asked: MaterialVariant): boolean {
  return (
    offered.material === asked.material &&
    offered.part === asked.part &&
    (asked.thicknessMm === undefined || offered.thicknessMm === asked.thicknessMm) &&
    (asked.form === undefined || offered.form === asked.form) &&
    (asked.rollWidthMm === undefined || offered.rollWidthMm === asked.rollWidthMm) &&
    (asked.sheet === undefined || isSameSheet(offered.sheet, asked.sheet))
  );
}

type Sheet = NonNullable<MaterialVariant['sheet']>;

const isSameSheet = (a: Sheet | undefined, b: Sheet): boolean =>
  a !== undefined && a.lengthMm === b.lengthMm && a.widthMm === b.widthMm;

/** One text for each distinct variant. */
export const variantKey = ({
  material,
  part,
  thicknessMm,
  form,
  sheet,
  rollWidthMm,
}: MaterialVariant): string =>
  [
    material,
    part,
    thicknessMm,
    form,
    sheet === undefined ? undefined : `${sheet.lengthMm}x${sheet.widthMm}`,
    rollWidthMm,
  ]
    .map((field) => field ?? '')
    .join('|');

/** What a pack holds in the unit of the need; undefined when the units cannot meet. */
export function contentIn(content: PackContent, unit: string): number | undefined {
  if (content.unit === unit) return content.quantity;
  const factor = factorsTo(unit, content)[content.unit];
  return factor === undefined ? undefined : content.quantity * factor;
}

function factorsTo(unit: string, { sheet, rollWidthMm }: PackContent): Readonly<Record<string, number>> {
  const sheetM2 = sheet === undefined ? undefined : m2FromMm2(mm2(sheet.lengthMm * sheet.widthMm));
  const widthM = rollWidthMm === undefined ? undefined : mFromMm(mm(rollWidthMm));
  switch (unit) {
    case 'sheet':
      return sheetM2 === undefined ? {} : { m2: 1 / sheetM2 };
    case 'm':
      return widthM === undefined ? {} : { m2: 1 / widthM };
    case 'm2':
      return {
        ...(widthM === undefined ? {} : { m: widthM }),
        ...(sheetM2 === undefined ? {} : { sheet: sheetM2 }),
      };
    case 'kg':
      return { g: kgFromG(g(1)) };
    case 'g':
      return { kg: 1 / kgFromG(g(1)) };
    default:
      return {};
  }
}
