import { ApiExtraModels } from '@nestjs/swagger';
import type { CoreType } from '#lib/catalogue';
import {
  asFoundQuestions,
  backingPlateQuestions,
  classDeckLoadQuestions,
  coreValuesQuestions,
  craftForPanelQuestions,
  criteriaQuestions,
  eachEdgeQuestions,
  openedPanelQuestions,
  panelCheckQuestions,
  panelFittingQuestions,
  panelSizeQuestions,
  patchLoadQuestions,
  personLoadQuestions,
  pressureLoadQuestions,
  sandwichValuesQuestions,
  skinValuesQuestions,
  yardstickLoadQuestions,
  type AsFound,
  type CoreValues,
  type CraftForPanel,
  type Criteria,
  type EachEdge,
  type EdgeFixing,
  type EdgeKindAsked,
  type FittingRequest,
  type LoadedFitting,
  type LoadRequest,
  type OpenedPanel,
  type PanelCheckRequest,
  type PanelSize,
  type SandwichValues,
  type SkinValues,
} from '#lib/panel';
import { Asked, AskedByKind, AskedPart, AskedParts } from '../../edge/dto/index.js';

export class EachEdgeDto implements EachEdge {
  @Asked(eachEdgeQuestions.xStart)
  readonly xStart!: EdgeKindAsked;

  @Asked(eachEdgeQuestions.xEnd)
  readonly xEnd!: EdgeKindAsked;

  @Asked(eachEdgeQuestions.yStart)
  readonly yStart!: EdgeKindAsked;

  @Asked(eachEdgeQuestions.yEnd)
  readonly yEnd!: EdgeKindAsked;
}

export class PanelSizeDto implements PanelSize {
  @Asked(panelSizeQuestions.lengthXMm)
  readonly lengthXMm!: number;

  @Asked(panelSizeQuestions.widthYMm)
  readonly widthYMm!: number;

  @Asked(panelSizeQuestions.edges)
  readonly edges?: EdgeKindAsked;

  @AskedPart(panelSizeQuestions.eachEdge, () => EachEdgeDto)
  readonly eachEdge?: EachEdgeDto;
}

export class SkinValuesDto implements SkinValues {
  @Asked(skinValuesQuestions.thicknessMm)
  readonly thicknessMm!: number;

  @Asked(skinValuesQuestions.modulusXMPa)
  readonly modulusXMPa!: number;

  @Asked(skinValuesQuestions.modulusYMPa)
  readonly modulusYMPa!: number;

  @Asked(skinValuesQuestions.shearModulusMPa)
  readonly shearModulusMPa!: number;

  @Asked(skinValuesQuestions.poissonXY)
  readonly poissonXY!: number;

  @Asked(skinValuesQuestions.tensileStrengthMPa)
  readonly tensileStrengthMPa!: number;

  @Asked(skinValuesQuestions.compressiveStrengthMPa)
  readonly compressiveStrengthMPa!: number;

  @Asked(skinValuesQuestions.tensileStrengthYMPa)
  readonly tensileStrengthYMPa?: number;

  @Asked(skinValuesQuestions.compressiveStrengthYMPa)
  readonly compressiveStrengthYMPa?: number;

  @Asked(skinValuesQuestions.dryFibreKgPerM2)
  readonly dryFibreKgPerM2?: number;
}

export class CoreValuesDto implements CoreValues {
  @Asked(coreValuesQuestions.coreType)
  readonly coreType!: CoreType;

  @Asked(coreValuesQuestions.thicknessMm)
  readonly thicknessMm!: number;

  @Asked(coreValuesQuestions.shearModulusMPa)
  readonly shearModulusMPa!: number;

  @Asked(coreValuesQuestions.shearStrengthMPa)
  readonly shearStrengthMPa!: number;

  @Asked(coreValuesQuestions.compressiveModulusMPa)
  readonly compressiveModulusMPa!: number;

  @Asked(coreValuesQuestions.compressiveStrengthMPa)
  readonly compressiveStrengthMPa!: number;

  @Asked(coreValuesQuestions.inPlaneModulusMPa)
  readonly inPlaneModulusMPa?: number;

  @Asked(coreValuesQuestions.densityKgPerM3)
  readonly densityKgPerM3?: number;
}

export class SandwichValuesDto implements SandwichValues {
  @AskedPart(sandwichValuesQuestions.outer, () => SkinValuesDto)
  readonly outer!: SkinValuesDto;

  @AskedPart(sandwichValuesQuestions.inner, () => SkinValuesDto)
  readonly inner!: SkinValuesDto;

  @AskedPart(sandwichValuesQuestions.core, () => CoreValuesDto)
  readonly core!: CoreValuesDto;
}

export class AsFoundDto implements AsFound {
  @Asked(asFoundQuestions.degradedFraction)
  readonly degradedFraction?: number;

  @Asked(asFoundQuestions.stiffnessFraction)
  readonly stiffnessFraction?: number;

  @Asked(asFoundQuestions.strengthFraction)
  readonly strengthFraction?: number;
}

export class OpenedPanelDto implements OpenedPanel {
  @Asked(openedPanelQuestions.lengthXMm)
  readonly lengthXMm?: number;

  @Asked(openedPanelQuestions.widthYMm)
  readonly widthYMm?: number;

  @Asked(openedPanelQuestions.edges)
  readonly edges?: EdgeFixing;

  @Asked(openedPanelQuestions.clampPressureKPa)
  readonly clampPressureKPa?: number;

  @Asked(openedPanelQuestions.allowedSagMm)
  readonly allowedSagMm?: number;
}

export class PressureLoadDto {
  @Asked(pressureLoadQuestions.kind)
  readonly kind!: 'pressure';

  @Asked(pressureLoadQuestions.name)
  readonly name?: string;

  @Asked(pressureLoadQuestions.pressureKPa)
  readonly pressureKPa!: number;
}

export class PatchLoadDto {
  @Asked(patchLoadQuestions.kind)
  readonly kind!: 'patch';

  @Asked(patchLoadQuestions.name)
  readonly name?: string;

  @Asked(patchLoadQuestions.forceN)
  readonly forceN!: number;

  @Asked(patchLoadQuestions.xMm)
  readonly xMm!: number;

  @Asked(patchLoadQuestions.yMm)
  readonly yMm!: number;

  @Asked(patchLoadQuestions.lengthXMm)
  readonly lengthXMm!: number;

  @Asked(patchLoadQuestions.widthYMm)
  readonly widthYMm!: number;
}

export class PersonLoadDto {
  @Asked(personLoadQuestions.kind)
  readonly kind!: 'person';

  @Asked(personLoadQuestions.name)
  readonly name?: string;

  @Asked(personLoadQuestions.forceN)
  readonly forceN?: number;

  @Asked(personLoadQuestions.heelRadiusMm)
  readonly heelRadiusMm?: number;

  @Asked(personLoadQuestions.xMm)
  readonly xMm?: number;

  @Asked(personLoadQuestions.yMm)
  readonly yMm?: number;
}

export class ClassDeckLoadDto {
  @Asked(classDeckLoadQuestions.kind)
  readonly kind!: 'class-deck';

  @Asked(classDeckLoadQuestions.name)
  readonly name?: string;
}

export class YardstickLoadDto {
  @Asked(yardstickLoadQuestions.kind)
  readonly kind!: 'yardstick';

  @Asked(yardstickLoadQuestions.name)
  readonly name?: string;
}

export class CraftForPanelDto implements CraftForPanel {
  @Asked(craftForPanelQuestions.craftType)
  readonly craftType!: CraftForPanel['craftType'];

  @Asked(craftForPanelQuestions.lengthWaterlineM)
  readonly lengthWaterlineM!: number;

  @Asked(craftForPanelQuestions.lengthHullM)
  readonly lengthHullM?: number;

  @Asked(craftForPanelQuestions.massLoadedKg)
  readonly massLoadedKg!: number;

  @Asked(craftForPanelQuestions.designCategory)
  readonly designCategory!: CraftForPanel['designCategory'];

  @Asked(craftForPanelQuestions.shareOfWaterline)
  readonly shareOfWaterline?: number;

  @Asked(craftForPanelQuestions.dynamicLoadFactor)
  readonly dynamicLoadFactor?: number;
}

export class CriteriaDto implements Criteria {
  @Asked(criteriaQuestions.skinShare)
  readonly skinShare?: number;

  @Asked(criteriaQuestions.coreShearShare)
  readonly coreShearShare?: number;

  @Asked(criteriaQuestions.coreCrushShare)
  readonly coreCrushShare?: number;

  @Asked(criteriaQuestions.spanOverDeflection)
  readonly spanOverDeflection?: number;
}

export class BackingPlateDto {
  @Asked(backingPlateQuestions.lengthMm)
  readonly lengthMm!: number;

  @Asked(backingPlateQuestions.widthMm)
  readonly widthMm!: number;
}

export class PanelFittingDto implements FittingRequest {
  @Asked(panelFittingQuestions.id)
  readonly id!: string;

  @Asked(panelFittingQuestions.kind)
  readonly kind!: LoadedFitting;

  @Asked(panelFittingQuestions.bolts)
  readonly bolts!: number;

  @Asked(panelFittingQuestions.boltMm)
  readonly boltMm!: number;

  @Asked(panelFittingQuestions.clampForceN)
  readonly clampForceN?: number;

  @Asked(panelFittingQuestions.torqueNm)
  readonly torqueNm?: number;

  @Asked(panelFittingQuestions.pullN)
  readonly pullN?: number;

  @Asked(panelFittingQuestions.shearN)
  readonly shearN?: number;

  @Asked(panelFittingQuestions.washerMm)
  readonly washerMm?: number;

  @AskedPart(panelFittingQuestions.backingPlate, () => BackingPlateDto)
  readonly backingPlate?: BackingPlateDto;

  @Asked(panelFittingQuestions.pottedMm)
  readonly pottedMm?: number;

  @Asked(panelFittingQuestions.pottedStrengthMPa)
  readonly pottedStrengthMPa?: number;
}

const loadKinds = () => ({
  'pressure': PressureLoadDto,
  'patch': PatchLoadDto,
  'person': PersonLoadDto,
  'class-deck': ClassDeckLoadDto,
  'yardstick': YardstickLoadDto,
});

@ApiExtraModels(PressureLoadDto, PatchLoadDto, PersonLoadDto, ClassDeckLoadDto, YardstickLoadDto)
export class PanelCheckRequestDto implements PanelCheckRequest {
  @AskedPart(panelCheckQuestions.panel, () => PanelSizeDto)
  readonly panel!: PanelSizeDto;

  @AskedPart(panelCheckQuestions.asBuilt, () => SandwichValuesDto)
  readonly asBuilt!: SandwichValuesDto;

  @AskedPart(panelCheckQuestions.repaired, () => SandwichValuesDto)
  readonly repaired!: SandwichValuesDto;

  @AskedPart(panelCheckQuestions.asFound, () => AsFoundDto)
  readonly asFound?: AsFoundDto;

  @AskedPart(panelCheckQuestions.opened, () => OpenedPanelDto)
  readonly opened?: OpenedPanelDto;

  @AskedByKind(panelCheckQuestions.loads, loadKinds)
  readonly loads?: readonly LoadRequest[];

  @AskedPart(panelCheckQuestions.craft, () => CraftForPanelDto)
  readonly craft?: CraftForPanelDto;

  @AskedParts(panelCheckQuestions.fittings, () => PanelFittingDto)
  readonly fittings?: readonly PanelFittingDto[];

  @AskedPart(panelCheckQuestions.criteria, () => CriteriaDto)
  readonly criteria?: CriteriaDto;

  @Asked(panelCheckQuestions.explain)
  readonly explain?: readonly string[];

  @Asked(panelCheckQuestions.deckThicknessMm)
  readonly deckThicknessMm?: number;
}
