import {
  ask,
  askPart,
  askWhether,
  askWhich,
  closesABed,
  practice,
  remembered,
  sagsLeast,
  type AnswersTo,
  type ProcessAssumption,
} from '#lib/asking';
import type { PressLine } from './press-lines.js';

export const pressMethods = ['weights', 'battens', 'vacuum'] as const;
/** What may be asked for from above; work from below is held up with jacks or a bag. */
export type PressMethod = (typeof pressMethods)[number] | 'jacks';

export const pressedSkinQuestions = {
  thicknessMm: ask({
    meaning: 'thickness',
    note: 'The skin that stays.',
    unit: 'mm',
    range: { from: 0.3, upTo: 30 },
    example: 3,
  }),
  modulusMPa: ask({
    meaning: 'modulus of the inner skin',
    unit: 'MPa',
    range: { from: 1000, upTo: 100_000 },
    otherwise: remembered(9000, { low: 6000, high: 14000, because: 'hand-laid mat and woven glass' }),
  }),
  strengthMPa: ask({
    meaning: 'bending strength of the inner skin',
    unit: 'MPa',
    range: { from: 5, upTo: 2000 },
    otherwise: remembered(140, { low: 100, high: 200, because: 'hand-laid mat and woven glass, sound' }),
  }),
  spanMm: ask({
    meaning: 'span',
    description: 'Clear distance between the supports that are there.',
    unit: 'mm',
    range: { above: 0, upTo: 5000 },
    example: 600,
  }),
  isAirtight: askWhether({
    meaning: 'whether it is airtight',
    note: 'Proven by a drop test; absent: not known, which refuses a bag.',
    otherwise: 'unknown',
  }),
};

export const pressedCamberQuestions = {
  radiusMm: ask({
    meaning: 'radius',
    description: 'Radius of the curve that the core is pressed to.',
    unit: 'mm',
    range: { from: 100, upTo: 1_000_000 },
  }),
  pieceLengthMm: ask({
    meaning: 'piece length',
    description: 'Length of a piece along the curve.',
    unit: 'mm',
    range: { from: 10, upTo: 5000 },
  }),
  thicknessMm: ask({
    meaning: 'thickness',
    description: 'Thickness of the core that is pressed to the curve.',
    unit: 'mm',
    range: { above: 0, upTo: 100 },
  }),
  modulusMPa: ask({
    meaning: 'modulus',
    description: "Young's modulus of the core as it bends.",
    unit: 'MPa',
    range: { above: 0, upTo: 20_000 },
  }),
};

export const weightsQuestions = {
  availableKg: ask({
    meaning: 'available',
    description: 'Mass of the weights at hand.',
    unit: 'kg',
    range: { above: 0, upTo: 20_000 },
    otherwise: 'unknown',
  }),
  bagKg: ask({
    meaning: 'one weight',
    unit: 'kg',
    range: { above: 0, upTo: 50 },
    otherwise: remembered(20, { low: 10, high: 25, because: 'a sand bag that one person lifts' }),
  }),
};

export const battensQuestions = {
  deckAround: askWhich({
    meaning: 'deck around',
    description: 'What the screws hold in, around the opening.',
    choices: ['wood', 'laminate-only', 'none'],
  }),
  isIntoInnerSkin: askWhether({
    meaning: 'whether it is into inner skin',
    description:
      'Whether the screws go through the piece into the inner skin, which then hangs on them; threadMm is its thickness.',
    otherwise: 'unknown',
  }),
  woodSpecificGravity: ask({
    meaning: 'wood specific gravity',
    description: 'Specific gravity of that wood, oven-dry.',
    unit: '1',
    range: { above: 0.1, upTo: 1.2 },
    otherwise: 'unknown',
  }),
  widthMm: ask({
    meaning: 'width of a batten',
    unit: 'mm',
    range: { from: 10, upTo: 500 },
    otherwise: remembered(45, { low: 40, high: 100, because: 'common timber' }),
  }),
  heightMm: ask({
    meaning: 'height of a batten',
    unit: 'mm',
    range: { from: 5, upTo: 200 },
    otherwise: remembered(20, { low: 18, high: 45, because: 'common timber' }),
  }),
  modulusMPa: ask({
    meaning: 'modulus of a batten',
    unit: 'MPa',
    range: { from: 500, upTo: 210_000 },
    otherwise: remembered(9000, { low: 7000, high: 12000, because: 'softwood along the grain' }),
  }),
  spacingMm: ask({
    meaning: 'spacing',
    description: 'Distance from the middle of one to the middle of the next.',
    unit: 'mm',
    range: { from: 10, upTo: 1000 },
    otherwise: 'unknown',
  }),
  screwSpacingMm: ask({
    meaning: 'spacing of screws along a batten',
    unit: 'mm',
    range: { from: 20, upTo: 2000 },
    otherwise: remembered(150, {
      low: 100,
      high: 250,
      because: 'sag between screws grows with the fourth power of it',
    }),
  }),
  screwDiameterMm: ask({
    meaning: 'diameter of a screw',
    unit: 'mm',
    range: { above: 1, upTo: 12 },
    otherwise: remembered(4.2, { low: 3.5, high: 5, because: 'common screw' }),
  }),
  threadMm: ask({
    meaning: 'thread in the deck',
    unit: 'mm',
    range: { above: 0, upTo: 150 },
    otherwise: remembered(10, { low: 6, high: 15, because: 'short of the inner skin' }),
  }),
};

export const vacuumQuestions = {
  fraction: ask({
    meaning: 'share of the air that the pump takes away',
    unit: '1',
    range: { above: 0, upTo: 0.98 },
    otherwise: remembered(0.75, {
      low: 0.65,
      high: 0.85,
      because: '22 inHg of 30 is what repair manuals ask at least',
    }),
  }),
  pumpLPerMin: ask({
    meaning: 'free flow of the pump',
    unit: 'l/min',
    range: { above: 0, upTo: 10_000 },
    otherwise: remembered(50, { low: 25, high: 150, because: 'small workshop pump' }),
  }),
  bagVolumeL: ask({
    meaning: 'bag volume',
    description: 'Air in bag and hoses before it is pumped out.',
    unit: 'l',
    range: { above: 0, upTo: 10_000 },
    otherwise: 'unknown',
  }),
  dropKPa: ask({
    meaning: 'drop',
    description: 'Loss of vacuum in a drop test with the pump shut off.',
    unit: 'kPa',
    range: { from: 0, upTo: 100 },
    otherwise: 'unknown',
  }),
  dropMinutes: ask({
    meaning: 'drop minutes',
    description: 'Minutes over which the gauge was watched with the pump shut off.',
    unit: 'min',
    range: { above: 0, upTo: 600 },
    otherwise: 'unknown',
  }),
};

export const bondPressureQuestions = {
  areaM2: ask({
    meaning: 'area',
    description: 'Area of core that is pressed down.',
    unit: 'm2',
    range: { above: 0, upTo: 100 },
    example: 0.8,
  }),
  lengthMm: ask({
    meaning: 'length',
    description: 'Length of the bedded area, fore and aft.',
    unit: 'mm',
    range: { above: 0, upTo: 20_000 },
    example: 1000,
  }),
  widthMm: ask({
    meaning: 'width',
    description: 'Width of the bedded area athwart.',
    unit: 'mm',
    range: { above: 0, upTo: 20_000 },
    example: 800,
  }),
  perimeterM: ask({
    meaning: 'perimeter',
    description: 'Edge of the bedded area all round, along which a bag is sealed.',
    unit: 'm',
    range: { above: 0, upTo: 200 },
    otherwise: 'unknown',
  }),
  prefer: askWhich({
    meaning: 'prefer',
    description: 'What the crew would like best.',
    choices: pressMethods,
    otherwise: 'unknown',
  }),
  requiredKPa: ask({
    meaning: 'pressure that the bed needs',
    unit: 'kPa',
    range: { above: 0, upTo: 100 },
    description: `Pressure that the bed needs. Absent: ${closesABed.value} kPa, or ${sagsLeast.value} where no prop can be set below.`,
    otherwise: 'unknown',
  }),
  camber: askPart({
    meaning: 'camber',
    description: 'Plain core that must be bent onto the camber.',
    of: pressedCamberQuestions,
    otherwise: 'unknown',
  }),
  innerSkin: askPart({
    meaning: 'inner skin',
    note: 'What the pressing bears on.',
    of: pressedSkinQuestions,
  }),
  deadLoadKgPerM2: ask({
    meaning: 'core, bed and skin on the inner skin',
    unit: 'kg/m2',
    range: { from: 0, upTo: 200 },
    otherwise: remembered(10, { low: 5, high: 15, because: 'new core 2, wet bed 2, skin 5 kg/m2' }),
  }),
  slopeDeg: ask({
    meaning: 'slope',
    description: 'Slope of the deck where it is bedded; weights slide on a steep one.',
    unit: 'degrees',
    range: { from: 0, upTo: 60 },
    otherwise: 'unknown',
  }),
  canPropFromBelow: askWhether({
    meaning: 'can prop from below',
    description: 'Whether anybody can set props from below; absent: yes.',
    otherwise: 'unknown',
  }),
  weights: askPart({
    meaning: 'weights',
    note: 'What can be laid on the core.',
    of: weightsQuestions,
    otherwise: 'unknown',
  }),
  battens: askPart({
    meaning: 'battens',
    note: 'Timber over the core, screwed down beside it.',
    of: battensQuestions,
    otherwise: 'unknown',
  }),
  vacuum: askPart({
    meaning: 'vacuum',
    note: 'A bag over the core, its pump and its drop test.',
    of: vacuumQuestions,
    otherwise: 'unknown',
  }),
  altitudeM: ask({
    meaning: 'altitude',
    unit: 'm',
    range: { from: -500, upTo: 5000 },
    otherwise: practice(0, 'boats lie near the sea'),
  }),
};

export type BondPressureRequest = AnswersTo<typeof bondPressureQuestions>;

/** Something that the pressing takes, counted or measured. */
export interface PressQuantity {
  /** What is counted for the pressing. */
  readonly code: string;
  /** Name of what is counted. */
  readonly name: string;
  /** How much of it. */
  readonly value: number;
  /** Unit of the count or measure. */
  readonly unit: string;
  /** What to heed about it. */
  readonly note?: string;
}

export type PressVerdict = 'passes' | 'fails' | 'not-established';

/** One way to press, with what it can do here and what speaks against it. */
export interface PressOption {
  /** The way of pressing judged. */
  readonly method: PressMethod;
  /** Pressure that this way can give. */
  readonly availableKPa?: number;
  /** Needed pressure over what this way gives; above 1 it is too weak. */
  readonly utilisation?: number;
  /** Whether this way will do. */
  readonly verdict: PressVerdict;
  /** What carries the force of this way. */
  readonly restsOn: string;
  /** Load that the inner skin must carry while it cures. */
  readonly onInnerSkinKPa: number;
  /** Span over which it carries that; the clear span where nothing else holds it. */
  readonly skinSpanMm?: number;
  /** One after another, where a crew cannot press the whole opening at once. */
  readonly turns?: number;
  /** How evenly it presses. */
  readonly evenness: string;
  /** What this way would take. */
  readonly quantities: readonly PressQuantity[];
  /** Where its timber lies, from one corner of the area. */
  readonly lines?: readonly PressLine[];
  /** What lies on each square metre of a piece, or pushes against it. */
  readonly onPieceKgPerM2?: number;
  /** What speaks for it or against it. */
  readonly reasons: readonly string[];
  /** Why it cannot be used here at all. */
  readonly refusals: readonly string[];
}

export interface InnerSkinCheck {
  /** Pressure and weight on the inner skin together. */
  readonly loadKPa: number;
  /** How far the inner skin sags under it. */
  readonly sagMm: number;
  /** Sag that still leaves a fair deck. */
  readonly allowedSagMm: number;
  /** Bending stress in the inner skin. */
  readonly stressMPa: number;
  /** Stress that the inner skin may have. */
  readonly allowedStressMPa: number;
  /** Whether the inner skin bears the pressing without props. */
  readonly verdict: 'passes' | 'fails';
  /** Props from below that the pressing needs. */
  readonly props: {
    /** Whether the inner skin must be propped. */
    readonly needed: boolean;
    /** Greatest distance between lines of props. */
    readonly spacingMm?: number;
    /** Bay for which that was worked out; one as wide has at least one line. */
    readonly spanMm?: number;
    /** Props in all. */
    readonly count?: number;
    /** Lines that the props stand in. */
    readonly lines?: number;
    /** Why props are or are not needed. */
    readonly why: string;
  };
}

export interface BondPressurePlan {
  /** Way of pressing that was chosen; absent when none will do. */
  readonly method: PressMethod | undefined;
  /** Pressure that the bond line needs. */
  readonly requiredKPa: number;
  /** Pressure that the chosen way gives. */
  readonly availableKPa?: number;
  /** What carries the pressing force in the end. */
  readonly restsOn: string;
  /** One after another, where a crew cannot press the whole opening at once. */
  readonly turns: number;
  /** Whether the inner skin bears the pressing. */
  readonly innerSkin: InnerSkinCheck;
  /** Every way of pressing, judged. */
  readonly options: readonly PressOption[];
  /** What the chosen way takes: bags, screws, battens. */
  readonly quantities: readonly PressQuantity[];
  /** Where boards, battens or bows lie, from one corner of the area; none when no way will do. */
  readonly lines: readonly PressLine[];
  /** Weight on each square metre of a piece, or force under it; absent where nothing is laid on or jacked. */
  readonly onPieceKgPerM2?: number;
  /** What to do, in a sentence. */
  readonly recommendation: string;
  /** Why ways of pressing are ruled out. */
  readonly refusals: readonly string[];
  /** Pressure of the air at the altitude of the work. */
  readonly ambientKPa: number;
  /** What was taken about the pressing that nobody stated. */
  readonly assumptions: readonly ProcessAssumption[];
}

/** The request with every default filled in, so that the parts below need not ask again. */
export interface PressSettings {
  readonly requiredKPa: number;
  readonly ambientKPa: number;
  readonly skinModulusMPa: number;
  readonly skinStrengthMPa: number;
  readonly deadLoadKPa: number;
  readonly bagKg: number;
  readonly batten: {
    readonly widthMm: number;
    readonly heightMm: number;
    readonly modulusMPa: number;
    readonly spacingMm: number;
    readonly screwSpacingMm: number;
    readonly screwDiameterMm: number;
    readonly threadMm: number;
  };
  readonly vacuum: { readonly fraction: number; readonly pumpLPerMin: number; readonly bagVolumeL: number };
  readonly perimeterM: number;
  readonly assumptions: readonly ProcessAssumption[];
}
