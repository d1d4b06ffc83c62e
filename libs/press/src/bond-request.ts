import type { ProcessAssumption } from '#lib/asking';

export const pressMethods = ['weights', 'battens', 'vacuum'] as const;
/** What may be asked for from above; work from below is held up with jacks or a bag. */
export type PressMethod = (typeof pressMethods)[number] | 'jacks';

export interface BondPressureRequest {
  /** Area pressed at once, and the size of its largest opening. */
  readonly areaM2: number;
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly perimeterM?: number;
  readonly prefer?: (typeof pressMethods)[number];
  /** Pressure the bed needs; the default is for a wet bed under a piece that lies on its camber. */
  readonly requiredKPa?: number;
  /** Plain core that must be bent onto the camber adds its own pressure. */
  readonly camber?: {
    readonly radiusMm: number;
    readonly pieceLengthMm: number;
    readonly thicknessMm: number;
    readonly modulusMPa: number;
  };
  readonly innerSkin: {
    readonly thicknessMm: number;
    readonly modulusMPa?: number;
    readonly strengthMPa?: number;
    /** Clear distance between bulkheads, beams or props already there. */
    readonly spanMm: number;
    readonly isAirtight?: boolean;
  };
  /** Core, bed and skin that lie on it besides the press. */
  readonly deadLoadKgPerM2?: number;
  /** Slope of the deck: loose weights slide on a steep one. */
  readonly slopeDeg?: number;
  readonly canPropFromBelow?: boolean;
  readonly weights?: { readonly availableKg?: number; readonly bagKg?: number };
  readonly battens?: {
    /** Sound deck around the opening in which the ends or a strongback can be held. */
    readonly deckAround: 'wood' | 'laminate-only' | 'none';
    /** Screws go through the piece into the inner skin, which then hangs on them; `threadMm` is its thickness. */
    readonly isIntoInnerSkin?: boolean;
    readonly woodSpecificGravity?: number;
    readonly widthMm?: number;
    readonly heightMm?: number;
    readonly modulusMPa?: number;
    readonly spacingMm?: number;
    readonly screwSpacingMm?: number;
    readonly screwDiameterMm?: number;
    readonly threadMm?: number;
  };
  readonly vacuum?: {
    readonly fraction?: number;
    readonly pumpLPerMin?: number;
    readonly bagVolumeL?: number;
    /** Loss of vacuum in a drop test, if one was made. */
    readonly dropKPa?: number;
    readonly dropMinutes?: number;
  };
  readonly altitudeM?: number;
}

export interface PressQuantity {
  readonly code: string;
  readonly name: string;
  readonly value: number;
  readonly unit: string;
  readonly note?: string;
}

export type PressVerdict = 'passes' | 'fails' | 'not-established';

/** One way to press, with what it can do here and what speaks against it. */
export interface PressOption {
  readonly method: PressMethod;
  readonly availableKPa?: number;
  readonly utilisation?: number;
  readonly verdict: PressVerdict;
  readonly restsOn: string;
  /** Load that the inner skin must carry while it cures. */
  readonly onInnerSkinKPa: number;
  /** Span over which it carries that; the clear span where nothing else holds it. */
  readonly skinSpanMm?: number;
  /** One after another, where a crew cannot press the whole opening at once. */
  readonly turns?: number;
  readonly evenness: string;
  readonly quantities: readonly PressQuantity[];
  readonly reasons: readonly string[];
  readonly refusals: readonly string[];
}

export interface InnerSkinCheck {
  readonly loadKPa: number;
  readonly sagMm: number;
  readonly allowedSagMm: number;
  readonly stressMPa: number;
  readonly allowedStressMPa: number;
  readonly verdict: 'passes' | 'fails';
  readonly props: {
    readonly needed: boolean;
    readonly spacingMm?: number;
    readonly count?: number;
    readonly lines?: number;
    readonly why: string;
  };
}

export interface BondPressurePlan {
  readonly method: PressMethod | undefined;
  readonly requiredKPa: number;
  readonly availableKPa?: number;
  readonly restsOn: string;
  /** One after another, where a crew cannot press the whole opening at once. */
  readonly turns: number;
  readonly innerSkin: InnerSkinCheck;
  readonly options: readonly PressOption[];
  readonly quantities: readonly PressQuantity[];
  readonly recommendation: string;
  readonly refusals: readonly string[];
  readonly ambientKPa: number;
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
