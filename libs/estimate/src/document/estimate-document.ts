import type { BilledBy, GoodsBilling, LineDepreciation, RiskKind } from '#lib/costing';
import type { Figure } from '#lib/provenance';
import type { MoneyJson } from '#lib/money';
import type { CauseClass, FindingClass, FittingKind } from '../job/defect-record.js';
import type { EvidenceGrade, NextReadings, Place } from '#lib/extent';
import type { BuiltCheck } from '#lib/panel';
import type { RepairVerdict, SaidVerdict } from '../conclusion/verdict.js';

/**
 * The document a surveyor attaches: everything in JSON-safe values, SI units in the names.
 * Immutable once made. `derivations` answers "why?" and is stored beside the document.
 */
export interface Estimate extends EstimateBody {
  readonly summary: Summary;
  /** What it comes to in words: the page that is read first. */
  readonly conclusion: ConclusionSection;
  /** Every source named in the document, by the key it is named with. */
  readonly bibliography: readonly BibliographyEntry[];
}

/** Everything that is worked out, before it is said in words. */
export interface EstimateBody {
  readonly title: string;
  readonly reference?: string;
  readonly summary: BodySummary;
  /** Every way to mend this deck, which one is planned, and why. */
  readonly methods: MethodsSection;
  readonly scope: Scope;
  /** Absent where the method opens nothing; `leftOut` says why. */
  readonly core?: CoreSection;
  readonly laminate?: LaminateSection;
  readonly panel?: PanelSection;
  /** Sections that this method has no use for, each with the reason. */
  readonly leftOut: readonly LeftOutSection[];
  /** One card for each fitting that comes off. */
  readonly hardware: readonly HardwareCard[];
  /** How the water came in, and whether this plan stops it. */
  readonly leak: LeakSection;
  readonly checks: readonly Check[];
  readonly process: ProcessSection;
  readonly sections: readonly CostSection[];
  readonly lines: readonly EstimateLine[];
  readonly totals: Totals;
  readonly cautions: readonly Caution[];
  readonly assumptions: readonly Assumption[];
  readonly limits: readonly string[];
  readonly provenance: ProvenanceStamp;
}

export interface ConclusionSection {
  readonly verdict: SaidVerdict & {
    /** Shortfalls, and remarks on how the deck was built. */
    readonly notes: readonly string[];
  };
  readonly findings: readonly GradedFinding[];
  readonly method: {
    readonly sentences: readonly string[];
    readonly runnerUp?: { readonly title: string; readonly because: string; readonly price?: MoneyJson };
  };
  readonly reinspection: readonly ReinspectionPoint[];
}

/** What a finding is about, as facts. */
export interface FindingSubject {
  /** A zone, a fitting, or the surveyor's own label. */
  readonly about: string;
  readonly condition: string;
  readonly areaM2: number;
  /** From the aft edge of the panel. */
  readonly fromAftMm?: readonly [number, number];
  readonly fittings: readonly {
    readonly id: string;
    readonly kind: FittingKind;
    readonly isLeaking: boolean;
  }[];
}

export interface GradedFinding extends FindingSubject {
  readonly class: FindingClass;
  readonly classByService: FindingClass;
  readonly classBecause: string;
  readonly wording: Worded;
  readonly recommendation: Worded;
  readonly restriction: Worded;
}

/** Words that a surveyor may replace; what the service would say stays beside them. */
export interface Worded {
  /** What is printed. */
  readonly text: string;
  readonly byService: string;
  readonly isSurveyors: boolean;
}

export interface ReinspectionPoint {
  readonly when: string;
  readonly before: string;
  readonly look: string;
  readonly accept: string;
  readonly by: string;
  readonly source: string;
}

export interface BibliographyEntry {
  readonly number: number;
  readonly key: string;
  readonly title: string;
  readonly body: string;
  readonly year: string;
  /** How far the source itself was read. */
  readonly readAs: 'first-hand' | 'second-hand' | 'memory' | 'derived' | 'common-practice';
  readonly url?: string;
}

export interface LeftOutSection {
  readonly section: 'core' | 'laminate' | 'panel' | 'bond-pressure';
  readonly because: string;
}

export type RungVerdict = 'fit' | 'fit-with-conditions' | 'unfit';

/** The ladder as judged on the place where the defect is largest. */
export interface MethodLadder {
  readonly recommended?: RungNamed;
  readonly runnerUp?: RungNamed;
  readonly rungs: readonly RungSection[];
  /** What each place gets; the set-up of the job is counted once. */
  readonly places: readonly PlaceSection[];
}

/** The same with the rung that is planned. */
export interface MethodsSection extends MethodLadder {
  readonly planned: RungNamed & { readonly isNamedInRecord: boolean };
}

export interface RungNamed {
  readonly rung: string;
  readonly title: string;
  readonly because: string;
}

export interface PlaceSection extends RungNamed {
  readonly place: string;
  readonly badAreaM2: number;
}

/** One rung: whether it fits, the one reason that decides, what it takes and what it leaves undone. */
export interface RungSection {
  readonly rung: string;
  readonly title: string;
  readonly verdict: RungVerdict;
  readonly deciding: RungReason;
  readonly conditions: readonly RungReason[];
  readonly leavesUndone: readonly string[];
  readonly stages: readonly string[];
  /** True where openings were taken as boxes round the places; the planned rung is worked out in full. */
  readonly isRough: boolean;
  /** Why a rung that fits could not be worked out, where it could not. */
  readonly notWorkedOut?: string;
  /** Absent for a rung that is refused: it is not priced. */
  readonly labourH?: Range;
  readonly workingDays?: Range;
  readonly calendarDays?: Range;
  readonly priceRange?: MoneyRange;
}

export interface RungReason {
  readonly code: string;
  readonly text: string;
  readonly value?: number;
  readonly limit?: number;
  readonly unit?: string;
  readonly source: string;
  readonly wouldFit?: string;
}

/** What one fitting takes, from the record where it says so and from its kind where it does not. */
export interface HardwareCard {
  readonly id: string;
  readonly kind: string;
  readonly fasteners: number;
  readonly fastenerMm: number;
  readonly fastenerLengthMm: number;
  readonly plugMm: number;
  readonly plugMl: number;
  readonly pours: number;
  readonly baseMm: number;
  readonly insert?: {
    readonly lengthMm: number;
    readonly widthMm: number;
    readonly thicknessMm: number;
    readonly material: string;
  };
  readonly plate?: {
    readonly lengthMm: number;
    readonly widthMm: number;
    readonly thicknessMm: number;
    readonly material: string;
    readonly rule: string;
  };
  readonly sealant: { readonly kind: string; readonly ml: number };
  readonly tightening: string;
  readonly offH: Range;
  readonly onH: Range;
  readonly needsSecondPerson: boolean;
  readonly referral?: string;
  readonly note?: string;
  readonly assumed: readonly string[];
  readonly source: string;
}

export interface LeakSection {
  readonly cause: string;
  readonly title: string;
  readonly remedy: string;
  /** What is measured again, and the value that passes. */
  readonly verify: string;
  readonly isRemedied: boolean;
  readonly text: string;
}

/** What `estimate()` returns: the document, and the derivation of each figure that has a code. */
export interface EstimateWithWhy extends WithWhy {
  readonly estimate: Estimate;
}

export interface BodyWithWhy extends WithWhy {
  readonly estimate: EstimateBody;
}

interface WithWhy {
  /** Keyed by line code, and by `check:<code>` and `quantity:<code>`. */
  readonly derivations: Readonly<Record<string, Figure>>;
}

/** Three points of one uncertain number. */
export interface Range {
  readonly p10: number;
  readonly p50: number;
  readonly p90: number;
}

export interface MoneyRange {
  readonly p10: MoneyJson;
  readonly p50: MoneyJson;
  readonly p80: MoneyJson;
  readonly p90: MoneyJson;
}

export interface BodySummary {
  readonly openedAreaM2: number;
  readonly cutLengthM: number;
  readonly coreSheets: number;
  readonly mixedResinL: number;
  /** Sum of the most likely hours of each operation: seldom enough for all of them together. */
  readonly labourLikelyH: number;
  /** Sum of the labour lines: the recorded scope at mean hours. */
  readonly labourMeanH: number;
  /** Of the whole job with what is found besides, from the same simulation as money and days. */
  readonly labourH: Range;
  readonly workingDays: Range;
  readonly calendarDays: Range;
  /** The price with tax: base and what will probably be found besides. */
  readonly total: MoneyJson;
  readonly totalRange: MoneyRange;
  /** Beside the price, with tax. */
  readonly totalWithContingency: MoneyJson;
  readonly insurer: Pick<InsurerSplit, 'attributable' | 'prior' | 'improvement'>;
}

export interface Summary extends BodySummary {
  /** What the conclusion says of the finished repair. */
  readonly verdict: RepairVerdict;
}

export type Outline = readonly Place[];
export interface Area {
  readonly outer: Outline;
  readonly holes: readonly Outline[];
}

export interface Scope {
  readonly panel: {
    readonly name: string;
    readonly outline: Outline;
    readonly holes: readonly Outline[];
    readonly areaM2: number;
  };
  readonly evidence: EvidenceGrade;
  readonly damagedAreaM2: Range;
  readonly zones: readonly {
    readonly id: string;
    readonly outline: Outline;
    readonly areaM2: number;
    readonly condition: string;
  }[];
  /** Probability contours when the extent came from readings. */
  readonly contours: readonly {
    readonly probability: number;
    readonly areas: readonly Area[];
    readonly areaM2: number;
  }[];
  /** Where to tap, meter or plug next, and whether that pays; when the extent came from readings. */
  readonly nextReadings?: NextReadingsSection;
  readonly openings: readonly Opening[];
  readonly openedAreaM2: number;
  /** Of the opening, where core comes out; and sound core that is left where it is. */
  readonly coreOutAreaM2: number;
  readonly coreStaysAreaM2: number;
  readonly retainedAreaM2: number;
  readonly undercutAreaM2: number;
  readonly cutLengthM: number;
  readonly taperBandM2: number;
  readonly fittings: readonly FittingScope[];
  readonly findings: readonly Finding[];
  readonly method: readonly { readonly choice: string; readonly value: string; readonly reason: string }[];
  readonly included: readonly string[];
  readonly excluded: readonly string[];
}

/** Its assumptions stand among those of the estimate. */
export interface NextReadingsSection extends Omit<NextReadings, 'assumptions' | 'advice'> {
  readonly advice: Finding;
}

export interface Opening {
  readonly label: string;
  readonly area: Area;
  /** Corners of the saw line before rounding, measured from the datum corner of the panel. */
  readonly sawLine: Outline;
  readonly cornerRadiusMm: number;
  readonly areaM2: number;
  readonly cutLengthM: number;
  /** Absent when no depth is safe; a finding says why. */
  readonly cutDepthMm?: number;
  readonly undercut: readonly Area[];
  readonly undercutAreaM2: number;
  /** Sound core in the opening that is left where it is. */
  readonly coreStays: readonly Area[];
  readonly coreStaysAreaM2: number;
  readonly taperBand: readonly Area[];
  readonly reason: string;
}

export interface FittingScope {
  readonly id: string;
  readonly kind: FittingKind;
  readonly at: Place;
  readonly holes: number;
  readonly where: 'inside' | 'near';
  readonly work: readonly ('remove' | 'pot' | 'insert' | 'plate' | 'refit' | 're-bed')[];
  readonly isHighlyLoaded: boolean;
}

/** Something measured that does not fit, with its numbers. */
export interface Finding {
  readonly code: string;
  readonly severity: 'stop' | 'warn' | 'note';
  readonly text: string;
  readonly facts: Readonly<Record<string, string | number>>;
}

export interface CoreSection {
  readonly material: string;
  readonly materialName: string;
  readonly stack: readonly { readonly layer: string; readonly thicknessMm: number }[];
  readonly cavityMm: number;
  readonly stackMm: number;
  readonly flushMm: number;
  readonly netAreaM2: number;
  readonly wasteAreaM2: number;
  readonly purchaseAreaM2: number;
  readonly wasteByCause: readonly { readonly cause: string; readonly areaM2: number }[];
  readonly pieces: readonly CorePiece[];
  /** Why it is so many pieces. */
  readonly division: string;
  /** Places that take no core: too narrow, too far under the lip, or a spot that is wanted solid. */
  readonly solidFills: readonly CoreSolidFill[];
  readonly solidAreaM2: number;
  readonly solidVolumeL: number;
  readonly sheets: readonly CoreSheetLayout[];
  /** Left between the pieces on a sheet for the blade. */
  readonly kerfMm: number;
  readonly utilisation: number;
  readonly massChangeKg: number;
  readonly waterLeavingKg?: number;
  readonly notes: readonly string[];
}

export interface CorePiece {
  readonly label: string;
  readonly beddingOrder: number;
  readonly opening: string;
  /** What is bedded in one go; counted from 1 in each layer of an opening. */
  readonly bay: number;
  /** In deck coordinates. */
  readonly outline: Outline;
  readonly holes: readonly Outline[];
  readonly thicknessMm: number;
  readonly form: 'plain' | 'scored';
  /** 1 lies on the inner skin. */
  readonly layer: number;
  readonly areaM2: number;
  /** Slid under the skin that stays; the others drop in. */
  readonly isUnderLip: boolean;
  /** Only for core that has a grain in its plane. */
  readonly grainDeg?: number;
  readonly bleedHoles: readonly Place[];
}

/** Filled solid from skin to skin, before the core goes in. */
export interface CoreSolidFill {
  readonly opening: string;
  readonly kind: 'paste' | 'solid-laminate' | 'high-density-strip';
  /** In deck coordinates. */
  readonly outline: Outline;
  readonly holes: readonly Outline[];
  readonly areaM2: number;
  readonly volumeL: number;
  readonly widthMm: number;
  /** As paste: how many lifts, for its heat. */
  readonly lifts: number;
  readonly isUnderLip: boolean;
}

export interface CoreSheetLayout {
  readonly label: string;
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly thicknessMm: number;
  readonly form: 'plain' | 'scored';
  /** False for a piece that the customer has. */
  readonly isBought: boolean;
  readonly utilisation: number;
  readonly placed: readonly {
    readonly piece: string;
    readonly outline: Outline;
    readonly holes: readonly Outline[];
    readonly turnDeg: number;
    readonly cutOrder: number;
  }[];
  readonly offcutsKept: readonly Outline[];
}

export interface LaminateSection {
  readonly method: 're-bed' | 'relay';
  readonly taperRatio: number;
  readonly taperWidthMm: number;
  readonly plies: readonly PlyLine[];
  readonly totalThicknessMm: number;
  readonly oldThicknessMm: number;
  readonly glassKg: number;
  readonly resinKg: number;
  /** Relaid: the best schedules with why the others lost. Re-bedded: empty. */
  readonly alternatives: readonly {
    readonly rank: number;
    readonly plies: readonly string[];
    readonly thicknessMm: number;
    readonly costPerM2: string;
    readonly reason: string;
  }[];
  readonly properties: readonly NamedValue[];
  readonly notes: readonly string[];
}

export interface PlyLine {
  readonly order: number;
  readonly material: string;
  readonly materialName: string;
  readonly thicknessMm: number;
  readonly areaM2: number;
  readonly outline: readonly Area[];
  readonly widthMm?: number;
  readonly rollLengthM: number;
  readonly rollWidthMm: number;
  readonly glassKg: number;
  readonly resinKg: number;
  readonly orientationDeg: number;
}

export interface NamedValue {
  readonly code: string;
  readonly name: string;
  readonly value: number;
  readonly unit: string;
  readonly note?: string;
}

/** The panel as built, as found, opened and repaired, under the same loads. A comparison, never a design approval. */
export interface PanelSection {
  readonly verdict: 'restored' | 'not-restored';
  /** By more than a laminate is repeated by hand. */
  readonly shortfalls: readonly string[];
  /** What is short by less than that, in a sentence. */
  readonly withinHands: readonly string[];
  readonly sizeMm: readonly [number, number];
  readonly loads: readonly NamedValue[];
  readonly states: readonly PanelState[];
  /** Repaired over as built, stiffness; as built over repaired, utilisation: at least 1 means restored. */
  readonly ratios: readonly NamedValue[];
  readonly limits: readonly string[];
}

export interface PanelState {
  readonly state: 'as-built' | 'as-found' | 'opened' | 'repaired';
  readonly bendingXNmm: number;
  readonly bendingYNmm: number;
  readonly shearNPerMm: number;
  /** Only those that linear plate theory can stand for; `note` says which are left out. */
  readonly deflections: readonly { readonly load: string; readonly deflectionMm: number }[];
  readonly governs?: string;
  readonly utilisation?: number;
  readonly note?: string;
}

export type Verdict = 'passes' | 'fails' | 'not-established';

/** A check that fails is a result. `utilisation` is demand over capacity. */
export interface Check {
  readonly code: string;
  readonly title: string;
  readonly state?: 'as-built' | 'as-found' | 'opened' | 'repaired';
  readonly demand?: number;
  readonly capacity?: number;
  readonly unit: string;
  readonly utilisation?: number;
  readonly verdict: Verdict;
  readonly governs: string;
  readonly remedy?: string;
  readonly source: string;
  readonly reason?: string;
  /** Of the repaired panel: what the same check comes to on the deck as built. */
  readonly asBuilt?: BuiltCheck;
}

export interface ProcessSection {
  readonly resin: {
    readonly code: string;
    readonly name: string;
    readonly hardener: string;
    readonly hardenerName: string;
    readonly why: string;
  };
  readonly demands: readonly ResinStep[];
  readonly batches: readonly BatchCard[];
  /** What stands against these pots at this temperature with this crew. */
  readonly findings: readonly Finding[];
  /** Absent where nothing is bedded that would have to be pressed. */
  readonly bondPressure?: BondPressureSection;
  readonly cure: readonly CureMilestones[];
  readonly gates: readonly { readonly step: string; readonly requires: readonly string[] }[];
  /** When each step may start; only with a forecast. Without one the gates say what to require. */
  readonly weather?: WeatherSection;
  readonly calendar: CalendarSection;
}

/** What the forecast opens and shuts. */
export interface WeatherSection {
  /** Moments in the local time of the place. */
  readonly fromAt: string;
  /** The end of the last hour of the forecast. */
  readonly untilAt: string;
  readonly timeZone: string;
  readonly hours: number;
  readonly coldestDeckC: number;
  readonly warmestDeckC: number;
  readonly leastDewMarginK: number;
  readonly steps: readonly WeatherStepSection[];
  readonly notes: readonly string[];
}

export interface WeatherStepSection {
  readonly code: string;
  readonly title: string;
  readonly gate: 'dry-deck' | 'resin' | 'coating';
  /** What comes before is done then, by likely values. */
  readonly earliestAt: string;
  readonly plannedAt: string;
  readonly plannedEndAt: string;
  /** Crew hours that it takes. */
  readonly neededH: number;
  /** Working hours of the forecast from `earliestAt` in which an hour of it may be begun. */
  readonly openH: number;
  /** The best few, the longest first. */
  readonly windows: readonly WeatherWindow[];
  readonly windowCount: number;
  /** Working hours that each condition takes away. */
  readonly shutBy: readonly { readonly gate: string; readonly hours: number }[];
}

export interface WeatherWindow {
  readonly rank: number;
  readonly fromAt: string;
  /** The end of the last hour in which it may be begun. */
  readonly untilAt: string;
  readonly hours: number;
  readonly leastDewMarginK: number;
  readonly meanDeckC: number;
  readonly limitedBy: string;
}

export interface ResinStep {
  readonly step: string;
  readonly title: string;
  readonly netL: number;
  readonly wasteL: number;
  readonly totalL: number;
  readonly totalKg: number;
  readonly fillerKg?: number;
  readonly filler?: string;
}

export interface BatchCard {
  readonly number: number;
  readonly step: string;
  readonly title: string;
  readonly resinG: number;
  readonly hardenerG: number;
  readonly fillerG: number;
  readonly filler?: string;
  /** What to weigh, in this order, on a scale that is not set to nothing between; volumes for cup or pump. */
  readonly weigh: readonly {
    readonly what: 'resin' | 'hardener' | 'filler';
    readonly name: string;
    readonly addG: number;
    readonly scaleShowsG: number;
    readonly volumeMl: number;
  }[];
  readonly mixedMl: number;
  readonly covers: readonly string[];
  readonly useWithinMin: number;
  readonly limitedBy: string;
  readonly pumps?: string;
}

export interface BondPressureSection {
  /** Absent when no way to press can be recommended; the refusals say why. */
  readonly method?: 'weights' | 'battens' | 'vacuum' | 'jacks';
  readonly requiredKPa: number;
  readonly availableKPa?: number;
  readonly restsOn: string;
  readonly quantities: readonly NamedValue[];
  readonly props: { readonly needed: boolean; readonly spacingMm?: number; readonly why: string };
  readonly recommendation: string;
  readonly refusals: readonly string[];
}

export interface CureMilestones {
  readonly step: string;
  /** Steady as stated, or the mean of the deck until full cure. */
  readonly temperatureC: number;
  readonly basis: 'stated' | 'forecast' | 'forecast-then-stated';
  /** When the last of the resin goes on; only where a forecast is followed. */
  readonly startAt?: string;
  readonly gelH?: number;
  readonly releaseH?: number;
  readonly sandableH?: number;
  readonly recoatShutsH?: number;
  readonly fullCureH?: number;
  readonly note?: string;
}

export interface CalendarSection {
  /** Absent when the record names no start: days are then counted from any Monday. */
  readonly startDate?: string;
  /** Zone, or offset, that the moments are written in. */
  readonly timeZone?: string;
  readonly workingDays: Range;
  /** From the first day to the last, waits counted. */
  readonly calendarDays: Range;
  /** Of the one walk that the tasks show, by mean hours and waits. */
  readonly planned: { readonly workingDays: number; readonly calendarDays: number };
  readonly tasks: readonly CalendarTask[];
  readonly criticalChain: readonly string[];
  readonly finish?: { readonly early: string; readonly likely: string; readonly late: string };
  readonly milestones: readonly { readonly code: string; readonly title: string; readonly at?: string }[];
  readonly notes: readonly string[];
}

export interface CalendarTask {
  readonly code: string;
  readonly title: string;
  /** What it waits for in the weather. */
  readonly gate: 'none' | 'dry-deck' | 'resin' | 'coating';
  readonly startDay: number;
  readonly endDay: number;
  readonly startAt?: string;
  readonly endAt?: string;
  /** When its cure, drying or hold is over. */
  readonly readyAt?: string;
  readonly labourH: number;
  readonly waitH: number;
  readonly waitKind: 'none' | 'cure' | 'drying' | 'hold' | 'elapsed';
  readonly isCritical: boolean;
  readonly isHoldPoint: boolean;
  readonly startsBecause: string;
  readonly after: readonly string[];
}

export interface CostSection {
  readonly code: string;
  readonly title: string;
  readonly amount: MoneyJson;
}

export interface EstimateLine {
  readonly code: string;
  readonly section: string;
  readonly title: string;
  readonly kind: 'material' | 'consumable' | 'labour' | 'hire' | 'disposal' | 'charge';
  readonly partOrLabour: 'part' | 'labour';
  readonly causeClass: CauseClass;
  readonly material?: string;
  readonly unit: string;
  readonly netQuantity: number;
  readonly wasteQuantity: number;
  readonly purchaseQuantity: number;
  /** Least and most that may be needed, waste counted; absent for services. */
  readonly range?: { readonly low: number; readonly high: number };
  /** Of labour: least, most likely, mean and most; the mean is priced. */
  readonly hours?: {
    readonly low: number;
    readonly likely: number;
    readonly mean: number;
    readonly high: number;
  };
  /** What was multiplied, as an exact decimal. */
  readonly pricedQuantity: string;
  /** Whole packs to be bought; empty for services. The amount is what is charged of their count times their price. */
  readonly packs: readonly {
    readonly sku: string;
    readonly name: string;
    readonly supplier: string;
    readonly count: number;
    readonly price: MoneyJson;
  }[];
  /** Of packs: whole, by what is used and lost of them, or by one job's wear; and what buying them whole comes to. */
  readonly goods?: { readonly billedBy: BilledBy; readonly bought: MoneyJson };
  readonly unitPrice: MoneyJson;
  /** True where packs were priced and `unitPrice` is their price over their content. */
  readonly isAveragePrice: boolean;
  readonly amount: MoneyJson;
  /** Least and most of the amount at the recorded extent. */
  readonly amountRange: { readonly low: MoneyJson; readonly high: MoneyJson };
  readonly depreciable: boolean;
  /** Where the record states the age of what is replaced: `amount` is the wear, before loadings and tax. */
  readonly depreciation?: LineDepreciation;
  readonly taxGroup: string;
}

export interface Totals {
  readonly currency: string;
  readonly net: MoneyJson;
  readonly overhead: MoneyJson;
  readonly profit: MoneyJson;
  /** Lines with overhead and profit: the recorded scope at mean hours, without tax. */
  readonly base: MoneyJson;
  /** What will probably be found besides, as a provisional quantity; without tax. */
  readonly growth: ProvisionalSum;
  /** Separate areas elsewhere; without tax. */
  readonly newAreas: ProvisionalSum;
  /** P80 less the price, without tax; it stands beside the price and is no part of it. */
  readonly contingency: MoneyJson;
  readonly contingencyBasis: string;
  /** By kind of risk; the shares make the whole. */
  readonly contingencyByKind: readonly {
    readonly kind: RiskKind;
    readonly name: string;
    readonly share: number;
    readonly amount: MoneyJson;
  }[];
  /** What better evidence would leave of the contingency, and what it would take off it; without tax. */
  readonly betterEvidence: readonly {
    readonly evidence: EvidenceGrade;
    readonly contingency: MoneyJson;
    readonly saves: MoneyJson;
  }[];
  readonly taxes: readonly {
    readonly code: string;
    readonly name: string;
    readonly percent: string;
    readonly base: MoneyJson;
    readonly amount: MoneyJson;
  }[];
  readonly tax: MoneyJson;
  /** The price: base, growth and new areas, with tax. About as many jobs cost more as cost less. */
  readonly total: MoneyJson;
  /** Share of the simulated jobs that cost no more than `total`. */
  readonly shareWithin: number;
  readonly totalWithContingency: MoneyJson;
  /** Of the whole job with tax: what the simulated jobs cost. */
  readonly range: MoneyRange;
  readonly byCause: readonly { readonly causeClass: CauseClass; readonly amount: MoneyJson }[];
  readonly parts: MoneyJson;
  readonly labour: MoneyJson;
  readonly goods: GoodsSums;
  /** Parts at their price, their wear and what remains, before loadings and tax; only where the record states an age. */
  readonly depreciation?: PartsWear;
  readonly drivers: readonly { readonly name: string; readonly shareOfVariance: number }[];
  readonly insurer: InsurerSplit;
  /** Only where the owner works himself. */
  readonly ownWork?: {
    readonly labourH: number;
    readonly aYardWouldAsk: MoneyJson;
    readonly basis: string;
  };
  readonly offer: Offer;
  /** Half of the points against the other half, P90 over P90. */
  readonly p90RelativeError: number;
  readonly samples: number;
}

/** Goods by themselves, without loadings, freight and tax: as this job is charged for them, and in whole packs. */
export interface GoodsSums {
  readonly billing: GoodsBilling;
  readonly billed: MoneyJson;
  readonly bought: MoneyJson;
  readonly basis: string;
}

/** A quantity that nobody has measured yet, with the price that the measured one will have. */
export interface ProvisionalSum {
  readonly amount: MoneyJson;
  readonly quantity: number;
  readonly unit: string;
  readonly unitPrice: MoneyJson;
  readonly basis: string;
}

/** Three sums with tax, and what of the first an insurer might pay. */
export interface InsurerSplit {
  readonly attributable: MoneyJson;
  readonly prior: MoneyJson;
  readonly improvement: MoneyJson;
  readonly wear: MoneyJson;
  readonly deductible: MoneyJson;
  readonly payable: MoneyJson;
  readonly basis: string;
}

/** In two stages: what is known at a firm price, what is not by rates. */
export interface Offer {
  readonly stageZero: StageZero;
  /** Without tax, overhead and profit inside. */
  readonly unitRates: readonly {
    readonly code: 'opened-m2' | 'cut-m' | 'hole' | 'fitting-small' | 'fitting-large' | 'visit';
    readonly what: string;
    readonly unit: string;
    /** In this estimate. */
    readonly quantity: number;
    readonly rate: MoneyJson;
  }[];
  readonly authorisation: { readonly percent: number; readonly labourH: number; readonly basis: string };
  readonly holdPoint: string;
}

export interface PartsWear {
  readonly parts: MoneyJson;
  readonly depreciation: MoneyJson;
  readonly remaining: MoneyJson;
}

/** Everything up to the hold point, so that the rest can be priced on what is then known. */
export interface StageZero {
  readonly title: string;
  /** Labour with its share of overhead and profit, before tax. */
  readonly amount: MoneyJson;
  readonly labourH: number;
  /** What of the contingency need not be set aside any more, once the extent is known; without tax. */
  readonly contingencyFreed: MoneyJson;
  readonly lines: readonly string[];
}

export interface Caution {
  readonly code: string;
  readonly severity: 'danger' | 'warning' | 'caution';
  readonly kind: 'structure' | 'health' | 'fire' | 'site' | 'work';
  readonly text: string;
  /** The condition of this job that called it. */
  readonly because: string;
  readonly protection: readonly string[];
  /** GHS hazard statements of the materials concerned. */
  readonly hazards: readonly { readonly code: string; readonly text: string }[];
  /** Who decides, where it is not the crew. */
  readonly decides?: string;
  readonly source: string;
}

export interface Assumption {
  /** `record`, or the stateless endpoint (`/v1/estimating/...`) that lets a caller set what the record has no field for. */
  readonly of: string;
  /** JSON Pointer, in the record or in that endpoint's request, of the field that would replace the default. */
  readonly at: string;
  readonly meaning: string;
  readonly value: string;
  readonly because: string;
  readonly source: string;
}

export interface ProvenanceStamp {
  readonly engineVersion: string;
  readonly edition: string;
  readonly catalogueHash: string;
  readonly priceList: string;
  readonly labourRates: string;
}
