import { fraction, mm, mPa, newton, nmm } from '#lib/units';
import { answeredIn } from '#lib/asking';
import { assumed, computeChecked, derived, entered, type Figure } from '#lib/provenance';
import { defineCheck, inWords, type ReasonedCheck } from './check.js';
import type { ResolvedCriteria } from './criteria.js';
import { bearingOfBolt, bearingOfWasher, clampForceOfTorque, punchingShear } from '../yardstick/fastening.js';
import { panelFittingQuestions, type FittingRequest } from './panel-request.js';
import { figuresOf } from './state-analysis.js';
import type { SandwichValues } from '../plate/states.js';
import { designCoreShear } from '../yardstick/yardstick.js';

const statics = { source: 'PANEL-DERIVED' };

/** Washer, bolt and plate of one fitting in the repaired deck. */
export function fittingChecks(
  fitting: FittingRequest,
  at: string,
  repaired: SandwichValues,
  criteria: ResolvedCriteria,
): readonly ReasonedCheck[] {
  const setting: Setting = {
    fitting,
    at,
    repaired,
    criteria,
    where: { state: 'repaired', fitting: fitting.id },
  };
  const clamp = clampForce(fitting, at);
  return [
    ...(clamp === undefined ? [] : crushCheck(setting, clamp)),
    ...bearingCheck(setting),
    ...punchingCheck(setting),
  ];
}

interface Setting {
  readonly fitting: FittingRequest;
  readonly at: string;
  readonly repaired: SandwichValues;
  readonly criteria: ResolvedCriteria;
  readonly where: { readonly state: 'repaired'; readonly fitting: string };
}

function clampForce({ clampForceN, torqueNm, boltMm }: FittingRequest, at: string): Figure<'N'> | undefined {
  if (clampForceN !== undefined)
    return entered('N', newton(clampForceN), 'clamp force of one bolt', `${at}/clampForceN`);
  if (torqueNm === undefined) return undefined;
  return computeChecked(clampForceOfTorque, {
    torqueNmm: entered('N.mm', nmm(torqueNm * MM_PER_M), 'tightening torque', `${at}/torqueNm`),
    boltMm: boltFigure(boltMm, at),
    nutFactor: assumed('1', fraction(0.2), 'nut factor', {
      at: `${at}/torqueNm`,
      because: 'dry steel threads',
      cite: clampForceOfTorque.cite,
      low: 0.15,
      high: 0.25,
    }),
  });
}

const MM_PER_M = 1000;
const boltFigure = (boltMm: number, at: string): Figure<'mm'> =>
  entered('mm', mm(boltMm), 'bolt diameter', `${at}/boltMm`);

/** Washers of common steel hardware are about twice the bolt wide. */
const washerFigure = ({ washerMm, boltMm }: FittingRequest, at: string): Figure<'mm'> =>
  washerMm === undefined
    ? assumed('mm', mm(2 * boltMm), 'washer diameter', {
        at: `${at}/washerMm`,
        because: 'a plain washer is about twice the bolt wide',
        cite: { source: 'COMMON-PRACTICE' },
        low: 2 * boltMm,
        high: 3 * boltMm,
      })
    : entered('mm', mm(washerMm), 'washer diameter', `${at}/washerMm`);

/** The clamp of the bolt on the core, or on the plug of thickened resin where the hole is potted. */
function crushCheck(
  { fitting, at, repaired, criteria, where }: Setting,
  clamp: Figure<'N'>,
): readonly ReasonedCheck[] {
  const plug = fitting.pottedMm;
  const isPotted = plug !== undefined && plug > fitting.boltMm;
  const bearing = isPotted
    ? entered('mm', mm(plug), 'diameter of the potted hole', `${at}/pottedMm`)
    : bearingWidth(fitting, at);
  const demand = computeChecked(bearingOfWasher, {
    forceN: clamp,
    washerMm: bearing,
    holeMm: boltFigure(fitting.boltMm, at),
  });
  const strength = isPotted
    ? plugStrength(fitting, at)
    : figuresOf(repaired, '/repaired').coreCompressiveStrength;
  const capacity = derived(
    'MPa',
    mPa(strength.value * criteria.coreCrushShare.value),
    'usable compressive strength',
    {
      formula: 'panel.core-crush',
      title: 'Share of the compressive strength',
      symbol: 'sigma_c,d',
      cite: { source: 'COMMON-PRACTICE' },
      inputs: { share: criteria.coreCrushShare, strength },
    },
  );
  return [
    defineCheck({
      code: 'core-crush',
      title: isPotted ? 'Crush of the potted plug under the bolt' : 'Crush of the core under the washer',
      where,
      demand,
      capacity,
      cite: statics,
      governs: isPotted
        ? 'clamp force on the plug of thickened resin'
        : 'clamp force on the core under the washer or plate',
      remedy: (excess) =>
        isPotted
          ? `a plug of ${inWords(plug * Math.sqrt(excess))} mm`
          : `${inWords(excess)} times the bearing area, or a potted hole; a bolt through bare core goes slack as the core crushes`,
    }),
  ];
}

/** A backing plate spreads the clamp of all bolts; one bolt has its share of the plate. */
function bearingWidth(fitting: FittingRequest, at: string): Figure<'mm'> {
  const washer = washerFigure(fitting, at);
  if (fitting.backingPlate === undefined) return washer;
  const { lengthMm, widthMm } = fitting.backingPlate;
  const share = Math.sqrt((4 * lengthMm * widthMm) / (Math.PI * fitting.bolts));
  return derived(
    'mm',
    mm(Math.max(share, washer.value)),
    "disc with the area of one bolt's share of the backing plate",
    {
      formula: 'panel.plate-share',
      title: 'Equal disc',
      symbol: 'd_w',
      cite: statics,
      inputs: {
        plateLength: entered('mm', mm(lengthMm), 'backing plate length', `${at}/backingPlate/lengthMm`),
        plateWidth: entered('mm', mm(widthMm), 'backing plate width', `${at}/backingPlate/widthMm`),
        washer,
      },
    },
  );
}

const plugStrength = ({ pottedStrengthMPa }: FittingRequest, at: string): Figure<'MPa'> =>
  answeredIn(panelFittingQuestions.pottedStrengthMPa, pottedStrengthMPa, `${at}/pottedStrengthMPa`);

/** The skins bear the bolt; a plug bears over the core too, no more than its own strength allows. */
function bearingCheck({ fitting, at, repaired, criteria, where }: Setting): readonly ReasonedCheck[] {
  if (fitting.shearN === undefined) return [];
  const { outer, inner, core } = repaired;
  const isPotted = fitting.pottedMm !== undefined && fitting.pottedMm > fitting.boltMm;
  const skins = figuresOf(repaired, '/repaired').sizes;
  const strengthMPa = Math.min(outer.compressiveStrengthMPa, inner.compressiveStrengthMPa);
  const plugShare = isPotted ? Math.min(1, plugStrength(fitting, at).value / strengthMPa) : 0;
  const bearingMm = derived(
    'mm',
    mm(outer.thicknessMm + inner.thicknessMm + plugShare * core.thicknessMm),
    'thickness that bears',
    {
      formula: 'panel.bearing-thickness',
      title: 'Skins, and the plug at its own strength',
      symbol: 't',
      cite: statics,
      inputs: isPotted ? { ...skins, plug: plugStrength(fitting, at) } : skins,
    },
  );
  const forceN = derived('N', newton(fitting.shearN / fitting.bolts), 'shear on one bolt', {
    formula: 'panel.bolt-share',
    title: 'Equal share',
    symbol: 'F',
    cite: statics,
    inputs: { shear: entered('N', newton(fitting.shearN), 'shear on the fitting', `${at}/shearN`) },
  });
  const strength = entered(
    'MPa',
    mPa(strengthMPa),
    'bearing strength, taken as the compressive strength of the weaker skin',
    '/repaired',
  );
  return [
    defineCheck({
      code: 'bolt-bearing',
      title: 'Bearing of the bolts',
      where,
      cite: statics,
      governs: isPotted ? 'bolt on skins and plug' : 'bolt on the skins alone',
      demand: computeChecked(bearingOfBolt, { forceN, boltMm: boltFigure(fitting.boltMm, at), bearingMm }),
      capacity: derived('MPa', mPa(strengthMPa * criteria.skinShare.value), 'usable bearing strength', {
        formula: 'panel.bearing-strength',
        title: 'Share of the strength',
        symbol: 'sigma_b,d',
        cite: { source: 'ISO-12215-5-2008', clause: 'table 11' },
        inputs: { strength, share: criteria.skinShare },
      }),
      remedy: (excess) =>
        `${inWords(fitting.bolts * excess)} bolts of this size, larger bolts, or${isPotted ? ' thicker skins' : ' potted holes'}`,
    }),
  ];
}

/** Pull on the fitting against the core round its plate. */
function punchingCheck({ fitting, at, repaired, criteria, where }: Setting): readonly ReasonedCheck[] {
  if (fitting.pullN === undefined) return [];
  const figures = figuresOf(repaired, '/repaired');
  const demand = computeChecked(punchingShear, {
    pullN: entered('N', newton(fitting.pullN), 'pull on the fitting', `${at}/pullN`),
    perimeterMm: perimeterOf(fitting, at),
    leverMm: figures.leverMm,
  });
  const capacity = computeChecked(designCoreShear, {
    share: criteria.coreShearShare(repaired.core.coreType),
    ultimate: figures.coreShearStrength,
  });
  return [
    defineCheck({
      code: 'pull-through',
      title: 'Shear of the core round the plate',
      where,
      demand,
      capacity,
      cite: statics,
      governs:
        fitting.backingPlate === undefined ? 'pull over the washers alone' : 'pull over the backing plate',
      remedy: (excess) =>
        `${inWords(excess)} times the perimeter of the backing plate, or a dense insert in place of core`,
    }),
  ];
}

function perimeterOf(fitting: FittingRequest, at: string): Figure<'mm'> {
  const washer = washerFigure(fitting, at);
  const plate = fitting.backingPlate;
  const inputs: Readonly<Record<string, Figure>> =
    plate === undefined
      ? { washer }
      : {
          plateLength: entered(
            'mm',
            mm(plate.lengthMm),
            'backing plate length',
            `${at}/backingPlate/lengthMm`,
          ),
          plateWidth: entered('mm', mm(plate.widthMm), 'backing plate width', `${at}/backingPlate/widthMm`),
        };
  const perimeter =
    plate === undefined ? fitting.bolts * Math.PI * washer.value : 2 * (plate.lengthMm + plate.widthMm);
  return derived(
    'mm',
    mm(perimeter),
    plate === undefined ? 'perimeter of the washers' : 'perimeter of the backing plate',
    {
      formula: 'panel.perimeter',
      title: 'Perimeter',
      symbol: 'u',
      cite: statics,
      inputs,
    },
  );
}

/** Fittings whose loads are not for a chandler's table. */
export const isHighlyLoaded = ({ kind }: Pick<FittingRequest, 'kind'>): boolean => highlyLoaded.has(kind);

const highlyLoaded: ReadonlySet<FittingRequest['kind']> = new Set([
  'mast-step',
  'chainplate',
  'windlass',
  'cleat',
  'winch',
  'pad-eye',
]);
