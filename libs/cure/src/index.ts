export { type CurePlan, type Milestone, type MilestoneCode, milestoneCodes, planCure } from './cure-plan.js';
export {
  cureTemperatureQuestions,
  type CureRequest,
  type CureTemperature,
  type TemperatureInput,
} from './cure-request.js';
export {
  type Forecast,
  type ForecastHour,
  epochOf,
  forecastFaults,
  forecastHourQuestions,
  forecastQuestions,
} from './weather/forecast.js';
export type { WeatherPlan } from './weather/windows.js';
export { coreMoistureAsked, weatherGates, type WeatherRequest } from './weather/windows.js';
export { type PlaceClock, type Sky, clockOf, deckAt, skyOf } from './weather/sky.js';
export {
  type ZoneOffset,
  instantFaults,
  readInstant,
  writeInstant,
  zoneFaults,
  zoneOffset,
} from './weather/instant.js';
export { type Weekday, type WorkTimes, weekdays, worksAt } from './weather/working-time.js';
export {
  type DeckWarmth,
  heldWarmthK,
  deckWarmthQuestions,
  skyAssumptions,
  warmthAssumptions,
  warmthFaults,
  warmthUnder,
} from './weather/deck.js';
export { clearSkyEmissivity, nightCoolingK } from './weather/night-sky.js';
export {
  type StepWeather,
  type WeatherStep,
  type WindowEnd,
  type WorkWindow,
  openHours,
} from './weather/windows.js';
export {
  type GateLimits,
  type GateName,
  type Requirement,
  MOST_CORE_MOISTURE_PERCENT,
  coatingLimits,
  requirementsOf,
  resinLimits,
} from './weather/gates.js';
export {
  type MagnusCoefficients,
  absoluteHumidity,
  alduchovEskridge,
  dewPointOf,
  fullSaturationPressurePa,
  humidityFromDewPoint,
  saturationPressureHPa,
  wmoMagnus,
} from './weather/humid-air.js';
export {
  equilibriumMoisture,
  greatestMoisture,
  moistureContent,
  sinkMoisture,
  waterInCore,
} from './moisture.js';
export {
  CURE_REFERENCE_C,
  adiabaticRise,
  energyFromTimes,
  rateRatioOf,
  timeBetweenTemperatures,
} from './arrhenius.js';
export { equivalentAges, hoursToAge, temperatureAdjustedAge, temperatureTimeSum } from './equivalent-age.js';
export { practicalSpreadingRate, spotMean, spreadingRate, thinnedSolids, wetFilm } from './spreading-rate.js';
export { formulas } from './formulas.js';
export {
  curePlan,
  curePlanQuestions,
  mixedByCodeQuestions,
  weatherStepQuestions,
  type CureAndWeather,
  type CurePlanRequest,
  type WeatherStepByCode,
} from './by-code.js';
