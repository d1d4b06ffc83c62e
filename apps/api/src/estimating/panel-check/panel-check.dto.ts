import { ApiExtraModels } from '@nestjs/swagger';
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
} from '#lib/panel';
import { answering } from '../../edge/dto/index.js';

export class EachEdgeDto extends answering(eachEdgeQuestions) {}

export class PanelSizeDto extends answering(panelSizeQuestions, { eachEdge: () => EachEdgeDto }) {}

export class SkinValuesDto extends answering(skinValuesQuestions) {}

export class CoreValuesDto extends answering(coreValuesQuestions) {}

export class SandwichValuesDto extends answering(sandwichValuesQuestions, {
  outer: () => SkinValuesDto,
  inner: () => SkinValuesDto,
  core: () => CoreValuesDto,
}) {}

export class AsFoundDto extends answering(asFoundQuestions) {}

export class OpenedPanelDto extends answering(openedPanelQuestions) {}

export class PressureLoadDto extends answering(pressureLoadQuestions) {}

export class PatchLoadDto extends answering(patchLoadQuestions) {}

export class PersonLoadDto extends answering(personLoadQuestions) {}

export class ClassDeckLoadDto extends answering(classDeckLoadQuestions) {}

export class YardstickLoadDto extends answering(yardstickLoadQuestions) {}

export class CraftForPanelDto extends answering(craftForPanelQuestions) {}

export class CriteriaDto extends answering(criteriaQuestions) {}

export class BackingPlateDto extends answering(backingPlateQuestions) {}

export class PanelFittingDto extends answering(panelFittingQuestions, {
  backingPlate: () => BackingPlateDto,
}) {}

const loadKinds = () => ({
  'pressure': PressureLoadDto,
  'patch': PatchLoadDto,
  'person': PersonLoadDto,
  'class-deck': ClassDeckLoadDto,
  'yardstick': YardstickLoadDto,
});

@ApiExtraModels(PressureLoadDto, PatchLoadDto, PersonLoadDto, ClassDeckLoadDto, YardstickLoadDto)
export class PanelCheckRequestDto extends answering(panelCheckQuestions, {
  panel: () => PanelSizeDto,
  asBuilt: () => SandwichValuesDto,
  repaired: () => SandwichValuesDto,
  asFound: () => AsFoundDto,
  opened: () => OpenedPanelDto,
  loads: loadKinds,
  craft: () => CraftForPanelDto,
  fittings: () => PanelFittingDto,
  criteria: () => CriteriaDto,
}) {}
