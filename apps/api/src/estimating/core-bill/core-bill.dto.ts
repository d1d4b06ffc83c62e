import {
  camberQuestions,
  coreBillQuestions,
  drawnOpeningQuestions,
  mosaicRuleQuestions,
  offcutQuestions,
  oldCoreQuestions,
  sheetQuestions,
  stackQuestions,
  supportLineQuestions,
  type CamberRequest,
  type CoreBillByCode,
  type DrawnOpening,
  type MosaicRules,
  type OldCoreRequest,
  type OwnOffcut,
  type SheetOnSale,
  type StackRules,
} from '#lib/coring';
import { Asked, AskedPart, AskedParts } from '../../edge/dto/index.js';

type Corners = DrawnOpening['outline'];
type Place = Corners[number];

export class DrawnOpeningDto implements DrawnOpening {
  @Asked(drawnOpeningQuestions.label)
  readonly label!: string;

  @Asked(drawnOpeningQuestions.outline)
  readonly outline!: Corners;

  @Asked(drawnOpeningQuestions.undercutMm)
  readonly undercutMm?: number;

  @Asked(drawnOpeningQuestions.cavity)
  readonly cavity?: Corners;
}

export class CoreSupportDto {
  @Asked(supportLineQuestions.from)
  readonly from!: Place;

  @Asked(supportLineQuestions.to)
  readonly to!: Place;
}

export class CamberDto implements CamberRequest {
  @Asked(camberQuestions.radiusMm)
  readonly radiusMm!: number;

  @Asked(camberQuestions.pieceLengthMm)
  readonly pieceLengthMm?: number;

  @Asked(camberQuestions.pressureKPa)
  readonly pressureKPa?: number;

  @Asked(camberQuestions.mostGapMm)
  readonly mostGapMm?: number;
}

export class OldCoreMassDto implements OldCoreRequest {
  @Asked(oldCoreQuestions.densityKgPerM3)
  readonly densityKgPerM3?: number;

  @Asked(oldCoreQuestions.moistureFraction)
  readonly moistureFraction?: number;
}

export class StackRulesDto implements StackRules {
  @Asked(stackQuestions.bondLineMm)
  readonly bondLineMm?: number;

  @Asked(stackQuestions.wetLineMm)
  readonly wetLineMm?: number;

  @Asked(stackQuestions.leastBondLineMm)
  readonly leastBondLineMm?: number;

  @Asked(stackQuestions.mostBondLineMm)
  readonly mostBondLineMm?: number;

  @Asked(stackQuestions.lowestFlushMm)
  readonly lowestFlushMm?: number;

  @Asked(stackQuestions.highestFlushMm)
  readonly highestFlushMm?: number;
}

export class MosaicRulesDto implements MosaicRules {
  @Asked(mosaicRuleQuestions.handPieceM2)
  readonly handPieceM2?: number;

  @Asked(mosaicRuleQuestions.largestPieceM2)
  readonly largestPieceM2?: number;

  @Asked(mosaicRuleQuestions.bayM2)
  readonly bayM2?: number;

  @Asked(mosaicRuleQuestions.jointGapMm)
  readonly jointGapMm?: number;

  @Asked(mosaicRuleQuestions.staggerMm)
  readonly staggerMm?: number;

  @Asked(mosaicRuleQuestions.narrowestMm)
  readonly narrowestMm?: number;

  @Asked(mosaicRuleQuestions.leastLipPieceMm)
  readonly leastLipPieceMm?: number;

  @Asked(mosaicRuleQuestions.leastPieceCm2)
  readonly leastPieceCm2?: number;

  @Asked(mosaicRuleQuestions.leastSlotMm)
  readonly leastSlotMm?: number;

  @Asked(mosaicRuleQuestions.lipFillMm)
  readonly lipFillMm?: number;

  @Asked(mosaicRuleQuestions.supportClearanceMm)
  readonly supportClearanceMm?: number;

  @Asked(mosaicRuleQuestions.bleedSpacingMm)
  readonly bleedSpacingMm?: number;

  @Asked(mosaicRuleQuestions.bleedDiameterMm)
  readonly bleedDiameterMm?: number;
}

export class SheetOnSaleDto implements SheetOnSale {
  @Asked(sheetQuestions.lengthMm)
  readonly lengthMm!: number;

  @Asked(sheetQuestions.widthMm)
  readonly widthMm!: number;

  @Asked(sheetQuestions.cost)
  readonly cost!: number;

  @Asked(sheetQuestions.available)
  readonly available?: number;
}

export class OwnOffcutDto implements OwnOffcut {
  @Asked(offcutQuestions.id)
  readonly id!: string;

  @Asked(offcutQuestions.outline)
  readonly outline!: Corners;

  @Asked(offcutQuestions.holes)
  readonly holes?: readonly Corners[];

  @Asked(offcutQuestions.thicknessMm)
  readonly thicknessMm!: number;

  @Asked(offcutQuestions.form)
  readonly form?: 'plain' | 'scored';
}

/** Openings and a core material; from there to labelled pieces and sheets. */
export class CoreBillRequestDto implements CoreBillByCode {
  @Asked(coreBillQuestions.material)
  readonly material!: string;

  @AskedParts(coreBillQuestions.openings, () => DrawnOpeningDto)
  readonly openings!: readonly DrawnOpeningDto[];

  @Asked(coreBillQuestions.cavityMm)
  readonly cavityMm!: number;

  @AskedParts(coreBillQuestions.supports, () => CoreSupportDto)
  readonly supports?: readonly CoreSupportDto[];

  @Asked(coreBillQuestions.wantedMm)
  readonly wantedMm?: number;

  @Asked(coreBillQuestions.form)
  readonly form?: 'plain' | 'scored';

  @Asked(coreBillQuestions.skin)
  readonly skin?: 're-bed' | 'relay';

  @AskedPart(coreBillQuestions.camber, () => CamberDto)
  readonly camber?: CamberDto;

  @AskedPart(coreBillQuestions.oldCore, () => OldCoreMassDto)
  readonly oldCore?: OldCoreMassDto;

  @Asked(coreBillQuestions.grainDeg)
  readonly grainDeg?: number;

  @AskedPart(coreBillQuestions.stackRules, () => StackRulesDto)
  readonly stackRules?: StackRulesDto;

  @AskedPart(coreBillQuestions.mosaicRules, () => MosaicRulesDto)
  readonly mosaicRules?: MosaicRulesDto;

  @AskedParts(coreBillQuestions.sheets, () => SheetOnSaleDto)
  readonly sheets?: readonly SheetOnSaleDto[];

  @AskedParts(coreBillQuestions.offcuts, () => OwnOffcutDto)
  readonly offcuts?: readonly OwnOffcutDto[];

  @Asked(coreBillQuestions.kerfMm)
  readonly kerfMm?: number;

  @Asked(coreBillQuestions.edgeTrimMm)
  readonly edgeTrimMm?: number;

  @Asked(coreBillQuestions.keepFromMm)
  readonly keepFromMm?: number;

  @Asked(coreBillQuestions.hourCost)
  readonly hourCost?: number;

  @Asked(coreBillQuestions.seed)
  readonly seed?: number;

  @Asked(coreBillQuestions.workUnits)
  readonly workUnits?: number;

  @Asked(coreBillQuestions.timeLimitS)
  readonly timeLimitS?: number;
}
