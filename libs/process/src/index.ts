export { operations } from './operations/all.js';
export { labourFor, operationsFor, type OperationHours } from './operations/labour.js';
export { modifiers, modifiersFor, type Modifier } from './operations/modifiers.js';
export {
  appliesTo,
  defineOperation,
  drivers,
  phases,
  type AppliesWhen,
  type Consumes,
  type Driver,
  type DriverAmounts,
  type GateKind,
  type Operation,
  type OperationFlags,
  type Phase,
  type Strain,
  type Wait,
} from './operations/operation.js';
export { planBatches } from './resin/batches.js';
export type {
  BatchFinding,
  BatchLimit,
  BatchPlan,
  BatchRequest,
  HardenerVerdict,
  PlannedBatch,
  Weighing,
} from './resin/batch-request.js';
export { resinDemand, type ResinDemand, type StepDemand } from './resin/resin-demand.js';
export type { BeddedPiece, PlyToWet, ResinDemandRequest, ResinStepRequest } from './resin/resin-request.js';
export {
  stepCodes,
  stepDefinitions,
  type StepBasis,
  type StepCode,
  type StepDefinition,
} from './resin/step-definitions.js';
export type { ProcessAssumption } from './unit-figures.js';
export { formulas } from './formulas.js';
export {
  planCure,
  milestoneCodes,
  type CurePlan,
  type CureRequest,
  type Milestone,
  type MilestoneCode,
  type TemperatureInput,
} from './cure/cure-plan.js';
export { forecastFaults, type Forecast, type ForecastHour } from './weather/forecast.js';
export { clockOf, skyOf, type PlaceClock, type Sky } from './weather/sky.js';
export { dateFaults, writeInstant } from './weather/instant.js';
export { weekdays, worksAt, type Weekday, type WorkTimes } from './weather/working-time.js';
export { warmthFaults, type DeckWarmth } from './weather/deck.js';
export {
  weatherGates,
  type StepWeather,
  type WeatherPlan,
  type WeatherRequest,
  type WeatherStep,
  type WindowEnd,
  type WorkWindow,
} from './weather/windows.js';
export {
  coatingLimits,
  requirementsOf,
  resinLimits,
  type GateLimits,
  type GateName,
  type Requirement,
} from './weather/gates.js';
export {
  absoluteHumidity,
  alduchovEskridge,
  dewPointOf,
  fullSaturationPressurePa,
  humidityFromDewPoint,
  saturationPressureHPa,
  wmoMagnus,
  type MagnusCoefficients,
} from './weather/humid-air.js';
export {
  equilibriumMoisture,
  greatestMoisture,
  moistureContent,
  sinkMoisture,
  waterInCore,
} from './core/moisture.js';
export { CURE_REFERENCE_C, energyFromTimes, rateRatioOf, timeBetweenTemperatures } from './cure/arrhenius.js';
export {
  equivalentAges,
  hoursToAge,
  temperatureAdjustedAge,
  temperatureTimeSum,
} from './cure/equivalent-age.js';
export { geopotentialM, pumpDownTime, standardPressurePa, vacuumPressure } from './press/atmosphere.js';
export {
  ALLOWABLE_LAG,
  battenSag,
  battenScrewLoad,
  lagAllowable,
  lagConstantSi,
  screwAllowable,
  screwConstantSi,
  screwUltimate,
} from './press/battens.js';
export { weightNeeded, weightPressure } from './press/dead-weight.js';
export { hardenerInBatch, mixedDensity, partsByMassFromVolume, thickenedDensity } from './resin/mixing.js';
export { plyResin } from './resin/step-volumes.js';
export {
  practicalSpreadingRate,
  spotMean,
  spreadingRate,
  thinnedSolids,
  wetFilm,
} from './coatings/spreading-rate.js';
export { massConcentration } from './cautions/exposure.js';
export { planBondPressure } from './press/bond-pressure.js';
export {
  pressMethods,
  type BondPressurePlan,
  type BondPressureRequest,
  type InnerSkinCheck,
  type PressMethod,
  type PressOption,
  type PressQuantity,
} from './press/bond-request.js';
export { planCalendar } from './calendar/calendar.js';
export { workTimes } from './calendar/calendar.js';
export { calendarText, type CalendarEvents, type ICalendarChoice } from './calendar/icalendar.js';
export { todayFor, type DatedTask } from './calendar/today.js';
export { deckAt } from './weather/sky.js';
export {
  criticalPath,
  threePointMean,
  threePointVariance,
  type Activity,
  type ActivityTimes,
  type CriticalPath,
} from './calendar/critical-path.js';
export type {
  CalendarMilestone,
  CalendarPlan,
  CalendarRequest,
  CustomOperation,
  PlannedTask,
  TodayItem,
} from './calendar/calendar-request.js';
export { cautionRules, cautionsFor } from './cautions/cautions.js';
export type {
  CautionContext,
  CautionKind,
  CautionRule,
  CautionSeverity,
  ProcessCaution,
} from './cautions/caution-context.js';
export { hazardStatements, statementsFor, type HazardStatement } from './cautions/hazard-statements.js';
export {
  curePlan,
  jobCalendar,
  resinBatches,
  type CureAndWeather,
  type CurePlanRequest,
  type CureTemperature,
  type JobCalendar,
  type JobCalendarRequest,
  type ResinBatchesRequest,
  type WeatherStepByCode,
} from './by-code.js';
