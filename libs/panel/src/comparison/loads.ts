import { fraction, kg, kPa, m, mm, mPaFromKPa, newton, type In } from '#lib/units';
import { assumed, computeChecked, derived, entered, type Figure } from '#lib/provenance';
import { CLASS_DECK_PRESSURE_KPA } from '../yardstick/class-rules.js';
import { answeredIn } from '#lib/asking';
import { footSideMm } from './panel-faults.js';
import {
  craftForPanelQuestions,
  personLoadQuestions,
  type CraftForPanel,
  type LoadRequest,
  type PanelCheckRequest,
  type PanelSize,
} from './panel-request.js';
import { everywhere, type RectangularLoad } from '../plate/plate.js';
import {
  areaReduction,
  deckPressure,
  designCategoryFactor,
  lengthwiseFactor,
  motorDeckBasePressure,
  sailDeckBasePressure,
} from '../yardstick/yardstick.js';

export interface Foot {
  readonly forceN: number;
  readonly radiusMm: number;
}

export interface ResolvedLoad {
  readonly code: string;
  readonly title: string;
  readonly rectangle: RectangularLoad;
  readonly pressure: Figure<'kPa'>;
  /** Set for a person: the dent of the skin is checked too. */
  readonly foot?: Foot;
}

export type LoadedPanel = Pick<PanelCheckRequest, 'panel' | 'craft' | 'loads'>;

/** Loads as asked, or a person and the deck pressure that can be established. */
export function loadsOf(request: LoadedPanel): readonly ResolvedLoad[] {
  const fallback: readonly LoadRequest[] = [
    { kind: request.craft === undefined ? 'class-deck' : 'yardstick' },
    { kind: 'person' },
  ];
  const asked = request.loads ?? fallback;
  const resolved = asked.map((load, at) => resolve(load, `/loads/${at}`, request));
  return resolved.map((load, at) => ({ ...load, code: uniqueCode(resolved, at) }));
}

const wordsOfLoads: Readonly<Record<string, string>> = {
  'class-deck': 'deck load of a class rule',
  'yardstick': 'small-craft yardstick',
  'person': 'one person',
};

/** A load as a sentence names it: the words of its kind, with its number where there are several. */
export function loadInWords(code: string): string {
  const [, kind, number] = /^(.*?)(?:-(\d+))?$/.exec(code) ?? [];
  const words = wordsOfLoads[kind] ?? kind.replaceAll('-', ' ');
  return number === undefined ? words : `${words} ${number}`;
}

/** The kind alone where it stands once, otherwise numbered. */
function uniqueCode(all: readonly ResolvedLoad[], at: number): string {
  const { code } = all[at];
  const before = all.slice(0, at).filter((other) => other.code === code).length;
  return all.filter((other) => other.code === code).length === 1 ? code : `${code}-${before + 1}`;
}

function resolve(load: LoadRequest, at: string, { panel, craft }: LoadedPanel): ResolvedLoad {
  switch (load.kind) {
    case 'pressure':
      return overall(
        'pressure',
        load.name ?? 'Uniform pressure',
        entered('kPa', kPa(load.pressureKPa), 'pressure given', `${at}/pressureKPa`),
        panel,
      );
    case 'patch':
      return patchLoad(load, at);
    case 'person':
      return personLoad(load, at, panel);
    case 'class-deck':
      return overall(
        'class-deck',
        load.name ?? 'Weather deck pressure of a class rule',
        classPressure(at),
        panel,
      );
    case 'yardstick':
      return overall(
        'yardstick',
        load.name ?? 'Small-craft yardstick pressure',
        yardstickPressure(craft, panel),
        panel,
      );
  }
}

const overall = (code: string, title: string, pressure: Figure<'kPa'>, panel: PanelSize): ResolvedLoad => ({
  code,
  title,
  pressure,
  rectangle: everywhere(panel, mPaFromKPa(pressure.value)),
});

const classPressure = (at: string): Figure<'kPa'> =>
  assumed('kPa', kPa(CLASS_DECK_PRESSURE_KPA), 'weather deck pressure', {
    at,
    because: 'least pressure a class rule asks on a weather deck',
    cite: { source: 'LR-SSC-2020', clause: 'part 5 chapter 4' },
  });

function patchLoad(load: Extract<LoadRequest, { kind: 'patch' }>, at: string): ResolvedLoad {
  const force = entered('N', newton(load.forceN), 'force on the patch', `${at}/forceN`);
  return spread('patch', load.name ?? 'Load on a patch', force, {
    lengthX: entered('mm', mm(load.lengthXMm), 'patch along x', `${at}/lengthXMm`),
    widthY: entered('mm', mm(load.widthYMm), 'patch along y', `${at}/widthYMm`),
    xMm: load.xMm,
    yMm: load.yMm,
  });
}

function personLoad(
  load: Extract<LoadRequest, { kind: 'person' }>,
  at: string,
  panel: PanelSize,
): ResolvedLoad {
  const force = answeredIn(personLoadQuestions.forceN, load.forceN, `${at}/forceN`);
  const radius = answeredIn(personLoadQuestions.heelRadiusMm, load.heelRadiusMm, `${at}/heelRadiusMm`);
  const size = derived('mm', mm(footSideMm(radius.value)), 'square with the area of a heel', {
    formula: 'panel.foot-side',
    title: 'Square of the same area',
    symbol: 'a',
    cite: { source: 'PANEL-DERIVED' },
    inputs: { radius },
  });
  const resolved = spread('person', load.name ?? 'A person on one foot', force, {
    lengthX: size,
    widthY: size,
    xMm: load.xMm ?? panel.lengthXMm / 2,
    yMm: load.yMm ?? panel.widthYMm / 2,
  });
  return { ...resolved, foot: { forceN: force.value, radiusMm: radius.value } };
}

interface PatchSize {
  readonly lengthX: Figure<'mm'>;
  readonly widthY: Figure<'mm'>;
  readonly xMm: number;
  readonly yMm: number;
}

function spread(
  code: string,
  title: string,
  force: Figure<'N'>,
  { lengthX, widthY, xMm, yMm }: PatchSize,
): ResolvedLoad {
  const pressureMPa = force.value / (lengthX.value * widthY.value);
  const pressure = derived('kPa', kPa(pressureMPa * KPA_PER_MPA), 'pressure under the load', {
    formula: 'panel.patch-pressure',
    title: 'Force over area',
    symbol: 'q',
    cite: { source: 'ARITHMETIC' },
    inputs: { force, lengthX, widthY },
  });
  const rectangle = {
    pressureMPa,
    x1Mm: xMm - lengthX.value / 2,
    x2Mm: xMm + lengthX.value / 2,
    y1Mm: yMm - widthY.value / 2,
    y2Mm: yMm + widthY.value / 2,
  };
  return { code, title, pressure, rectangle };
}

const KPA_PER_MPA = 1000;

export const shortSideOf = ({ lengthXMm, widthYMm }: PanelSize): Figure<'mm'> => {
  const isAcross = widthYMm <= lengthXMm;
  return entered(
    'mm',
    mm(Math.min(lengthXMm, widthYMm)),
    'short side of the panel',
    isAcross ? '/panel/widthYMm' : '/panel/lengthXMm',
  );
};

export const longSideOf = ({ lengthXMm, widthYMm }: PanelSize): Figure<'mm'> => {
  const isAcross = widthYMm > lengthXMm;
  return entered(
    'mm',
    mm(Math.max(lengthXMm, widthYMm)),
    'long side of the panel',
    isAcross ? '/panel/widthYMm' : '/panel/lengthXMm',
  );
};

/** The craft was asked for when the request was read. */
function yardstickPressure(craft: CraftForPanel | undefined, panel: PanelSize): Figure<'kPa'> {
  if (craft === undefined) return classPressure('/craft');
  const massLoadedKg = entered(
    'kg',
    kg(craft.massLoadedKg),
    'mass of the loaded craft',
    '/craft/massLoadedKg',
  );
  const basePressure =
    craft.craftType === 'motor'
      ? computeChecked(motorDeckBasePressure, { lengthWaterlineM: waterlineOf(craft) })
      : computeChecked(sailDeckBasePressure, { massLoadedKg });
  const areaFactor = computeChecked(areaReduction, {
    shortSideMm: shortSideOf(panel),
    longSideMm: longSideOf(panel),
    massLoadedKg,
    floorFactor: assumed('1', fraction(0.4), 'least area factor of a sandwich', {
      at: '/craft',
      because: 'the panel is a sandwich',
      cite: { source: 'ISO-12215-5-2008', clause: 'eq. 3' },
    }),
  });
  const kL = computeChecked(lengthwiseFactor, {
    shareOfWaterline: answeredIn(
      craftForPanelQuestions.shareOfWaterline,
      craft.shareOfWaterline,
      '/craft/shareOfWaterline',
    ),
    dynamicLoadFactor: answeredIn(
      craftForPanelQuestions.dynamicLoadFactor,
      craft.dynamicLoadFactor,
      '/craft/dynamicLoadFactor',
    ),
  });
  return computeChecked(deckPressure, {
    basePressure,
    areaFactor,
    categoryFactor: categoryOf(craft),
    lengthwiseFactor: kL,
  });
}

export const waterlineOf = (craft: CraftForPanel): Figure<'m'> =>
  entered('m', m(craft.lengthWaterlineM), 'length of the waterline', '/craft/lengthWaterlineM');

export const categoryOf = ({ designCategory }: CraftForPanel): Figure<'1'> => {
  const value: In<'1'> = fraction(designCategoryFactor[designCategory]);
  return derived('1', value, 'design category factor', {
    formula: 'panel.yardstick.category-factor',
    title: `Category ${designCategory} in table 2`,
    symbol: 'k_DC',
    cite: { source: 'ISO-12215-5-2008', clause: 'table 2' },
    inputs: { category: entered('1', value, `category ${designCategory}`, '/craft/designCategory') },
  });
};
