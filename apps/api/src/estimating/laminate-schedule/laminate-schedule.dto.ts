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
} from '#lib/laminate';
import { Outline, answering } from '../../edge/dto/index.js';

export class NamedPlyDto extends answering(namedPlyQuestions) {}

export class NamedFabricDto extends answering(namedFabricQuestions) {}

export class OldSkinDto extends answering(oldSkinQuestions, { plies: () => NamedPlyDto }) {}

export class CoreLayerDto extends answering(coreLayerQuestions) {}

export class OtherSkinDto extends answering(otherSkinQuestions) {}

export class PanelBelowDto extends answering(panelBelowQuestions, {
  core: () => CoreLayerDto,
  newCore: () => CoreLayerDto,
  otherSkin: () => OtherSkinDto,
}) {}

export class FlushDto extends answering(flushQuestions) {}

export class ScheduleLimitsDto extends answering(scheduleLimitsQuestions) {}

export class LayOutDto extends answering(layOutQuestions, {}, { opening: Outline, soundSkin: Outline }) {}

export class RelaidSkinDto extends answering(relaidSkinQuestions, {
  oldSkin: () => OldSkinDto,
  fabrics: () => NamedFabricDto,
  panel: () => PanelBelowDto,
  flush: () => FlushDto,
  limits: () => ScheduleLimitsDto,
  layOut: () => LayOutDto,
}) {}

export class JointDto extends answering(jointQuestions) {}

export class RebeddedSkinDto extends answering(
  rebeddedSkinQuestions,
  { plies: () => NamedPlyDto, joint: () => JointDto },
  { opening: Outline },
) {}

/** A skin laid anew, one bonded back, or both; materials by their codes. */
export class LaminateScheduleRequestDto extends answering(laminateScheduleQuestions, {
  relaid: () => RelaidSkinDto,
  rebedded: () => RebeddedSkinDto,
}) {}
