/**
 * What a part of a request is, where several fields take one: said of the part itself, since a field says only what it
 * means there. Parts that one field takes are described by that field.
 */
export const requestWords: Readonly<Record<string, string>> = {
  BasketOptionsInput: 'How an order is put together: from whom, how carried, and what may be cut.',
  CiteInput: 'Where a value is printed: a source of the edition and the place in it.',
  ConditionsInput: 'Where and in what air the work is done.',
  CoreLayerInput: 'A core by its thickness and its modulus in the plane of the panel.',
  DatumInput: 'A value of the catalogue with its spread and where it is published.',
  DeckWarmthInput: 'By how much sun, heater and tent keep the deck above the temperature of the air.',
  DefectRecordInput:
    'All that is known of a deck and its repair: what was found, how it is built, who works and at what prices.',
  DepreciationInput: 'Wear of a part: its age over its life, or a percentage.',
  FittingInput: 'A fitting bolted through the deck.',
  ForecastInput: 'Weather of the place, hour by hour.',
  HardenerChoiceInput: 'The hardener that is to be bought with a resin.',
  LabourRatesInput: 'Prices of an hour, charges, loadings and taxes of a yard.',
  MapSettingsInput: 'How readings become a map of where the core is likely bad.',
  MaterialVariantInput: 'A material in the thickness, form and size that is meant.',
  MeterInput: 'What the moisture meter shows on dry and on soaked core.',
  MethodInput: 'How the deck is repaired; what is left out is chosen by the condition of the deck.',
  NamedPlyInput: 'A ply of a fabric of the catalogue.',
  OldCoreInput: 'The core that is in the deck.',
  OnHandInput: 'Material that is there already and is not bought again.',
  OpeningMethodInput: 'How the deck is opened.',
  OpeningRulesInput: 'Distances and least sizes that openings keep to.',
  OpeningZoneInput: 'A region of bad core.',
  PackInput: 'A pack as a supplier sells it: what is in it, and its price from one pack upwards.',
  PanelInput:
    'The panel of deck that the repair lies in: its edge, what bears it, and what lies on and below it.',
  PriceListInput: 'Packs and terms of suppliers in one currency, for a stated time.',
  SandwichValuesInput: 'Two skins and a core, by the values that a panel is worked out with.',
  SheetFormatInput: 'Length and width of a sheet.',
  SheetSizeInput: 'Length and width of a sheet that is asked for or at hand.',
  SkinInput: 'A skin by its thickness, and by its plies where they are known.',
  SkinValuesInput: 'A skin by thickness, moduli and strengths.',
  SourceInput: 'A publication that values are cited from, and how far it was read.',
  SubstituteInput: 'A material that would do instead of another, at a ratio and a penalty.',
  SurveyInput: 'What hammer, moisture meter and plugs showed, place by place.',
  ThreePointInput: 'A value as least, likely and most.',
};
