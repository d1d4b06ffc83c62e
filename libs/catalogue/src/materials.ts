import type { Cite } from '#lib/provenance';

/** One catalogue value. Its unit is in the key it stands under. */
export interface Datum {
  readonly value: number;
  readonly low?: number;
  readonly high?: number;
  readonly cite: Cite;
}

export interface SheetFormat {
  readonly lengthMm: number;
  readonly widthMm: number;
}

interface Described {
  /** Stable code, e.g. `core-balsa-150`. */
  readonly code: string;
  /** Generic specification in trade words. */
  readonly name: string;
  readonly hazards?: readonly string[];
}

export type CoreType =
  'end-grain-balsa' | 'cross-linked-foam' | 'san-foam' | 'linear-foam' | 'marine-plywood';

export interface CoreSheet extends Described {
  readonly kind: 'core';
  readonly coreType: CoreType;
  readonly densityKgPerM3: Datum;
  readonly shearStrengthMPa: Datum;
  readonly shearModulusMPa: Datum;
  readonly compressiveStrengthMPa: Datum;
  /** Through the thickness, for wrinkling and crush. */
  readonly compressiveModulusMPa: Datum;
  readonly inPlaneModulusMPa: Datum;
  readonly thicknessesMm: readonly number[];
  readonly sheets: readonly SheetFormat[];
  readonly forms: readonly CoreForm[];
  /** Turns (degrees) that keep the grain right; empty when any turn will do. */
  readonly allowedTurnsDeg: readonly number[];
  readonly largestPieceM2: Datum;
  readonly needsBleedHoles: boolean;
  /** Mixed resin that both faces take before bedding. */
  readonly wetOutLPerM2: Datum;
}

export interface CoreForm {
  readonly form: 'plain' | 'scored';
  /** Scored sheet only: squares of this side, cut this wide, this share of the thickness deep. */
  readonly scoreSpacingMm?: number;
  readonly scoreWidthMm?: number;
  readonly scoreDepthFraction?: number;
}

export type Fabric = 'mat' | 'cloth' | 'woven-roving' | 'biaxial' | 'biaxial-mat' | 'unidirectional' | 'tape';
export type Layup = 'mat' | 'woven' | 'unidirectional';

/** One layer of a fabric, bottom first; angles from the roll direction. */
export interface FabricLayer {
  readonly layup: Layup;
  readonly angleDeg: number;
  readonly arealMassGPerM2: number;
}

export interface Reinforcement extends Described {
  readonly kind: 'reinforcement';
  readonly fabric: Fabric;
  readonly fibre: 'e-glass';
  readonly arealMassGPerM2: Datum;
  readonly layers: readonly FabricLayer[];
  /** Fibre mass fraction by hand lay-up. */
  readonly fibreMassFraction: Datum;
  readonly rollWidthsMm: readonly number[];
  readonly rollLengthsM: readonly number[];
  readonly suitsAgainstCore: boolean;
  /** How much the weave shows through paint: 0 not at all, 3 strongly. */
  readonly printThrough: number;
  readonly suitsResins: readonly Chemistry[];
}

export type Chemistry = 'epoxy' | 'polyester' | 'vinylester';

export interface PotLife {
  readonly massG: number;
  readonly temperatureC: number;
  readonly minutes: Datum;
}

export interface Hardener {
  readonly code: string;
  readonly name: string;
  readonly speed: 'fast' | 'medium' | 'slow' | 'extra-slow';
  readonly densityGPerCm3: Datum;
  /** Parts of hardener to 100 parts of resin. */
  readonly partsByMass: Datum;
  readonly partsByVolume: Datum;
  readonly potLives: readonly PotLife[];
  readonly lowestTemperatureC: Datum;
  readonly highestTemperatureC: Datum;
  /** Hours at 25 degC. */
  readonly gelH: Datum;
  readonly releaseH: Datum;
  readonly sandableH: Datum;
  readonly recoatShutsH: Datum;
  readonly fullCureH: Datum;
  readonly hazards?: readonly string[];
}

export interface ResinSystem extends Described {
  readonly kind: 'resin';
  readonly chemistry: Chemistry;
  readonly densityGPerCm3: Datum;
  readonly curedDensityGPerCm3: Datum;
  readonly youngModulusMPa: Datum;
  readonly poissonRatio: Datum;
  readonly heatOfReactionJPerG: Datum;
  readonly specificHeatJPerGK: Datum;
  readonly activationEnergyKJPerMol: Datum;
  readonly hardeners: readonly Hardener[];
}

export type FillerUse = 'bedding' | 'filleting' | 'potting' | 'fairing' | 'thickening';

export interface Filler extends Described {
  readonly kind: 'filler';
  readonly trueDensityGPerCm3: Datum;
  readonly bulkDensityGPerCm3: Datum;
  readonly uses: readonly FillerUse[];
  /** Parts by mass to 100 parts of mixed resin for its main use. */
  readonly partsPerHundred: Datum;
}

export interface Coating extends Described {
  readonly kind: 'coating';
  readonly coating: 'fairing-compound' | 'primer' | 'topcoat' | 'nonskid' | 'gelcoat';
  readonly densityKgPerL: Datum;
  readonly coverageM2PerL: Datum;
  readonly coats: Datum;
  readonly recoatH: Datum;
  readonly lowestTemperatureC: Datum;
  readonly highestRelativeHumidityPercent: Datum;
  readonly isIsocyanate: boolean;
}

export type UsageDriver =
  | 'job'
  | 'opened-m2'
  | 'cut-m'
  | 'taper-m'
  | 'laminate-m2'
  | 'laminate-session-m2'
  | 'faired-m2'
  | 'finish-m2'
  | 'hole'
  | 'fitting'
  | 'labour-h'
  | 'mixed-l'
  /** Of polyester or vinylester. */
  | 'styrenated-l'
  /** Finished in gelcoat. */
  | 'gelcoat-m2'
  | 'bag-perimeter-m'
  | 'person'
  | 'prop'
  | 'prop-board-m'
  | 'press-bag'
  | 'batten-m'
  | 'batten-screw';

/** Use of an item per unit of a driver, three points. */
export interface Usage {
  readonly driver: UsageDriver;
  readonly perDriver: Datum;
}

export interface BoltSize {
  readonly diameterMm: number;
  readonly lengthMm: number;
}

export interface Consumable extends Described {
  readonly kind: 'consumable' | 'safety' | 'fastener';
  readonly unit: 'each' | 'pair' | 'm' | 'm2' | 'l' | 'kg' | 'roll' | 'pack';
  /** When it belongs to a job at all; absent means always. */
  readonly when?:
    | 'relay'
    | 're-bed'
    | 'vacuum'
    | 'battens'
    | 'weights'
    | 'epoxy'
    | 'polyester'
    | 'paint'
    | 'nonskid'
    | 'from-below';
  /** Size of a screw that is bought by its diameter and length. */
  readonly bolt?: BoltSize;
  /** Jobs that one of it serves before it is worn out; absent, it is used up or stays in the boat. */
  readonly servesJobs?: Datum;
  /** None for what is bought by a card of its own, as a fitting's fastenings are. */
  readonly usages: readonly Usage[];
}

export type Material = CoreSheet | Reinforcement | ResinSystem | Filler | Coating | Consumable;
export type MaterialKind = Material['kind'];
