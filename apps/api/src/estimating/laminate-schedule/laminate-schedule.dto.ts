import {
  coreLayerQuestions,
  flushQuestions,
  jointQuestions,
  laminateScheduleQuestions,
  layOutQuestions,
  namedFabricQuestions,
  namedPlyQuestions,
  oldSkinQuestions,
  otherSkinQuestions,
  panelBelowQuestions,
  rebeddedSkinQuestions,
  relaidSkinQuestions,
  scheduleLimitsQuestions,
  type LaminateScheduleRequest,
  type LayingOrder,
  type LayOutRequest,
  type NamedFabric,
  type NamedPly,
  type PanelBelow,
  type PlyMethodName,
  type RebeddedSkinRequest,
  type RelaidSkinRequest,
  type ScheduleLimits,
} from '#lib/laminate';
import { Asked, AskedPart, AskedParts, Outline, saidOf } from '../../edge/dto/index.js';

type OutlinePoints = LayOutRequest['opening'];

export class NamedPlyDto implements NamedPly {
  @Asked(namedPlyQuestions.material)
  readonly material!: string;

  @Asked(namedPlyQuestions.turnDeg)
  readonly turnDeg?: number;

  @Asked(namedPlyQuestions.fibreMassFraction)
  readonly fibreMassFraction?: number;
}

export class NamedFabricDto implements NamedFabric {
  @Asked(namedFabricQuestions.material)
  readonly material!: string;

  @Asked(namedFabricQuestions.pricePerM2)
  readonly pricePerM2?: number;

  @Asked(namedFabricQuestions.turnsDeg)
  readonly turnsDeg?: readonly number[];

  @Asked(namedFabricQuestions.fibreMassFraction)
  readonly fibreMassFraction?: number;
}

export class OldSkinDto {
  @Asked(oldSkinQuestions.thicknessMm)
  readonly thicknessMm!: number;

  @AskedParts(oldSkinQuestions.plies, () => NamedPlyDto)
  readonly plies?: readonly NamedPlyDto[];

  @Asked(oldSkinQuestions.resin)
  readonly resin?: string;
}

export class CoreLayerDto {
  @Asked(coreLayerQuestions.thicknessMm)
  readonly thicknessMm!: number;

  @Asked(coreLayerQuestions.youngMPa)
  readonly youngMPa!: number;
}

export class OtherSkinDto {
  @Asked(otherSkinQuestions.thicknessMm)
  readonly thicknessMm!: number;

  @Asked(otherSkinQuestions.alongNPerMm)
  readonly alongNPerMm!: number;

  @Asked(otherSkinQuestions.acrossNPerMm)
  readonly acrossNPerMm!: number;
}

export class PanelBelowDto implements PanelBelow {
  @AskedPart(panelBelowQuestions.core, () => CoreLayerDto)
  readonly core!: CoreLayerDto;

  @AskedPart(panelBelowQuestions.newCore, () => CoreLayerDto)
  readonly newCore?: CoreLayerDto;

  @AskedPart(panelBelowQuestions.otherSkin, () => OtherSkinDto)
  readonly otherSkin!: OtherSkinDto;
}

export class FlushDto {
  @Asked(flushQuestions.proudUpToMm)
  readonly proudUpToMm!: number;

  @Asked(flushQuestions.lowUpToMm)
  readonly lowUpToMm!: number;
}

export class ScheduleLimitsDto implements ScheduleLimits {
  @Asked(scheduleLimitsQuestions.mostPlies)
  readonly mostPlies?: number;

  @Asked(scheduleLimitsQuestions.mostKinds)
  readonly mostKinds?: number;

  @Asked(scheduleLimitsQuestions.taperRatio)
  readonly taperRatio?: number;

  @Asked(scheduleLimitsQuestions.smallestStepMm)
  readonly smallestStepMm?: number;

  @Asked(scheduleLimitsQuestions.worstPrintThrough)
  readonly worstPrintThrough?: number;
}

export class LayOutDto implements LayOutRequest {
  @Outline(saidOf(layOutQuestions.opening))
  readonly opening!: OutlinePoints;

  @Outline(saidOf(layOutQuestions.soundSkin))
  readonly soundSkin?: OutlinePoints;

  @Asked(layOutQuestions.order)
  readonly order?: LayingOrder;

  @Asked(layOutQuestions.overlapMm)
  readonly overlapMm?: number;

  @Asked(layOutQuestions.endAllowanceMm)
  readonly endAllowanceMm?: number;

  @Asked(layOutQuestions.wetLimitMm)
  readonly wetLimitMm?: number;
}

export class RelaidSkinDto implements RelaidSkinRequest {
  @AskedPart(relaidSkinQuestions.oldSkin, () => OldSkinDto)
  readonly oldSkin!: OldSkinDto;

  @AskedParts(relaidSkinQuestions.fabrics, () => NamedFabricDto)
  readonly fabrics?: readonly NamedFabricDto[];

  @AskedPart(relaidSkinQuestions.panel, () => PanelBelowDto)
  readonly panel?: PanelBelowDto;

  @AskedPart(relaidSkinQuestions.flush, () => FlushDto)
  readonly flush?: FlushDto;

  @AskedPart(relaidSkinQuestions.limits, () => ScheduleLimitsDto)
  readonly limits?: ScheduleLimitsDto;

  @Asked(relaidSkinQuestions.restore)
  readonly restore?: 'likely' | 'strongest';

  @Asked(relaidSkinQuestions.restoreShear)
  readonly restoreShear?: boolean;

  @AskedPart(relaidSkinQuestions.layOut, () => LayOutDto)
  readonly layOut?: LayOutDto;
}

export class JointDto {
  @Asked(jointQuestions.stressMPa)
  readonly stressMPa!: number;

  @Asked(jointQuestions.allowableShearMPa)
  readonly allowableShearMPa!: number;

  @Asked(jointQuestions.allowablePeelMPa)
  readonly allowablePeelMPa?: number;
}

export class RebeddedSkinDto implements RebeddedSkinRequest {
  @Asked(rebeddedSkinQuestions.skinThicknessMm)
  readonly skinThicknessMm!: number;

  @Outline(saidOf(rebeddedSkinQuestions.opening))
  readonly opening?: OutlinePoints;

  @Asked(rebeddedSkinQuestions.cutLengthMm)
  readonly cutLengthMm?: number;

  @Asked(rebeddedSkinQuestions.kerfMm)
  readonly kerfMm?: number;

  @Asked(rebeddedSkinQuestions.taperRatio)
  readonly taperRatio?: number;

  @AskedParts(rebeddedSkinQuestions.plies, () => NamedPlyDto)
  readonly plies?: readonly NamedPlyDto[];

  @Asked(rebeddedSkinQuestions.fillWith)
  readonly fillWith?: string;

  @Asked(rebeddedSkinQuestions.order)
  readonly order?: LayingOrder;

  @Asked(rebeddedSkinQuestions.overlapMm)
  readonly overlapMm?: number;

  @Asked(rebeddedSkinQuestions.longestStripMm)
  readonly longestStripMm?: number;

  @Asked(rebeddedSkinQuestions.wetLimitMm)
  readonly wetLimitMm?: number;

  @Asked(rebeddedSkinQuestions.roomMm)
  readonly roomMm?: number;

  @AskedPart(rebeddedSkinQuestions.joint, () => JointDto)
  readonly joint?: JointDto;
}

/** A skin laid anew, one bonded back, or both; materials by their codes. */
export class LaminateScheduleRequestDto implements LaminateScheduleRequest {
  @Asked(laminateScheduleQuestions.resin)
  readonly resin!: string;

  @Asked(laminateScheduleQuestions.method)
  readonly method?: PlyMethodName;

  @AskedPart(laminateScheduleQuestions.relaid, () => RelaidSkinDto)
  readonly relaid?: RelaidSkinDto;

  @AskedPart(laminateScheduleQuestions.rebedded, () => RebeddedSkinDto)
  readonly rebedded?: RebeddedSkinDto;
}
