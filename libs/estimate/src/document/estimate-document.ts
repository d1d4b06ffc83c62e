import type { Assumption as AskedAssumption } from '#lib/asking';
import type { BilledBy, GoodsBilling, LineDepreciation, RiskKind } from '#lib/costing';
import type { Figure } from '#lib/provenance';
import type { MoneyJson } from '#lib/money';
import type { CauseClass, FindingClass, FittingKind } from '../job/defect-record.js';
import type { EvidenceGrade, NextReadings, Place } from '#lib/extent';
import type { PressLine } from '#lib/press';
import type { BuiltCheck } from '#lib/panel';
import type { RepairVerdict, SaidVerdict } from '../conclusion/verdict.js';

/**
 * The document a surveyor attaches: everything in JSON-safe values, SI units in the names.
 * Immutable once made. `derivations` answers "why?" and is stored beside the document.
 */
export interface Estimate extends EstimateBody {
  /** The figures that a reader asks for first. */
  readonly summary: Summary;
  /** What it comes to in words: the page that is read first. */
  readonly conclusion: ConclusionSection;
  /** Every source named in the document, by the key it is named with. */
  readonly bibliography: readonly BibliographyEntry[];
}

/** Everything that is worked out, before it is said in words. */
export interface EstimateBody {
  /** Title of the estimated job. */
  readonly title: string;
  /** Reference that the caller gave. */
  readonly reference?: string;
  readonly summary: BodySummary;
  /** Every way to mend this deck, which one is planned, and why. */
  readonly methods: MethodsSection;
  /** What is opened, kept and left alone. */
  readonly scope: Scope;
  /** Absent where the method opens nothing; `leftOut` says why. */
  readonly core?: CoreSection;
  /** New skin; absent where none is laid. */
  readonly laminate?: LaminateSection;
  /** Comparison with the deck before; absent where it could not be made. */
  readonly panel?: PanelSection;
  /** Sections that this method has no use for, each with the reason. */
  readonly leftOut: readonly LeftOutSection[];
  /** One card for each fitting that comes off. */
  readonly hardware: readonly HardwareCard[];
  /** How the water came in, and whether this plan stops it. */
  readonly leak: LeakSection;
  /** Every check of the repair in one list. */
  readonly checks: readonly Check[];
  /** Mixing, cure, pressing and calendar. */
  readonly process: ProcessSection;
  /** Sums of the parts of the price. */
  readonly sections: readonly CostSection[];
  /** Lines of the price. */
  readonly lines: readonly EstimateLine[];
  /** From the lines to the total. */
  readonly totals: Totals;
  /** What can hurt somebody. */
  readonly cautions: readonly Caution[];
  /** All that was taken because nobody stated it. */
  readonly assumptions: readonly Assumption[];
  /** What the estimate does not say. */
  readonly limits: readonly string[];
  /** What the estimate was made with. */
  readonly provenance: ProvenanceStamp;
}

export interface ConclusionSection {
  /** What is said of the repair. */
  readonly verdict: SaidVerdict & {
    /** Shortfalls, and remarks on how the deck was built. */
    readonly notes: readonly string[];
  };
  /** What was found, each graded by urgency. */
  readonly findings: readonly GradedFinding[];
  /** What is recommended and why. */
  readonly method: {
    /** The recommendation, sentence by sentence. */
    readonly sentences: readonly string[];
    /** The method that comes next. */
    readonly runnerUp?: {
      /** Name of the method that comes next. */
      readonly title: string;
      /** Why it is not the first. */
      readonly because: string;
      /** What it would cost; absent where it is not priced. */
      readonly price?: MoneyJson;
    };
  };
  /** When to look again, and at what. */
  readonly reinspection: readonly ReinspectionPoint[];
}

/** What a finding is about, as facts. */
export interface FindingSubject {
  /** A zone, a fitting, or the surveyor's own label. */
  readonly about: string;
  /** Condition of the core at the finding. */
  readonly condition: string;
  /** Area that the finding is about. */
  readonly areaM2: number;
  /** Distance of the finding from the aft edge of the panel, nearest and farthest. */
  readonly fromAftMm?: readonly [number, number];
  /** Fittings at the finding. */
  readonly fittings: readonly {
    /** Id of a fitting at the finding. */
    readonly id: string;
    /** What fitting it is. */
    readonly kind: FittingKind;
    /** Whether water comes in at it. */
    readonly isLeaking: boolean;
  }[];
}

export interface GradedFinding extends FindingSubject {
  /** Class that the report gives the finding. */
  readonly class: FindingClass;
  /** Class that the rules would give it. */
  readonly classByService: FindingClass;
  /** Why the rules give this class. */
  readonly classBecause: string;
  /** What was found. */
  readonly wording: Worded;
  /** What to do about it. */
  readonly recommendation: Worded;
  /** What not to do until then. */
  readonly restriction: Worded;
}

/** Words that a surveyor may replace; what the service would say stays beside them. */
export interface Worded {
  /** What is printed. */
  readonly text: string;
  /** The sentence that the rules give. */
  readonly byService: string;
  /** Whether the surveyor's own words stand in its place. */
  readonly isSurveyors: boolean;
}

export interface ReinspectionPoint {
  /** At which point of the work. */
  readonly when: string;
  /** What must not begin before. */
  readonly before: string;
  /** What to look at or measure. */
  readonly look: string;
  /** What makes it good. */
  readonly accept: string;
  /** Who should look. */
  readonly by: string;
  /** Source of the point. */
  readonly source: string;
}

export interface BibliographyEntry {
  /** Number that the text refers by. */
  readonly number: number;
  /** Key of the source in the catalogue. */
  readonly key: string;
  /** Title of the publication. */
  readonly title: string;
  /** Who published it. */
  readonly body: string;
  /** When it was published. */
  readonly year: string;
  /** How far the source itself was read. */
  readonly readAs: 'first-hand' | 'second-hand' | 'memory' | 'derived' | 'common-practice';
  /** Where it can be read, when freely. */
  readonly url?: string;
}

export interface LeftOutSection {
  /** Section that the estimate has not. */
  readonly section: 'core' | 'laminate' | 'panel' | 'bond-pressure';
  /** Why it has not. */
  readonly because: string;
}

export type RungVerdict = 'fit' | 'fit-with-conditions' | 'unfit';

/** The ladder as judged on the place where the defect is largest. */
export interface MethodLadder {
  /** Gentlest rung that fits; absent when none does. */
  readonly recommended?: RungNamed;
  /** The next rung that fits. */
  readonly runnerUp?: RungNamed;
  /** All rungs, the gentlest first. */
  readonly rungs: readonly RungSection[];
  /** What each place gets; the set-up of the job is counted once. */
  readonly places: readonly PlaceSection[];
}

/** The same with the rung that is planned. */
export interface MethodsSection extends MethodLadder {
  /** Rung that the estimate plans. */
  readonly planned: RungNamed & {
    /** Whether the record asked for it by name. */
    readonly isNamedInRecord: boolean;
  };
}

/** A method of repair and why it stands where it stands among the methods. */
export interface RungNamed {
  /** Code of the rung. */
  readonly rung: string;
  /** Name of the rung. */
  readonly title: string;
  /** Why the rung stands where it stands. */
  readonly because: string;
}

/** One place of the deck and the method that fits it. */
export interface PlaceSection extends RungNamed {
  /** What is found at the place. */
  readonly place: string;
  /** Bad area to be expected there. */
  readonly badAreaM2: number;
}

/** One rung: whether it fits, the one reason that decides, what it takes and what it leaves undone. */
export interface RungSection {
  /** Code of the method. */
  readonly rung: string;
  /** Name of the method. */
  readonly title: string;
  /** Whether the method fits this deck. */
  readonly verdict: RungVerdict;
  /** Condition that decided. */
  readonly deciding: RungReason;
  /** All conditions that were looked at. */
  readonly conditions: readonly RungReason[];
  /** What the method does not put right. */
  readonly leavesUndone: readonly string[];
  /** Work of the method, in order. */
  readonly stages: readonly string[];
  /** True where openings were taken as boxes round the places; the planned rung is worked out in full. */
  readonly isRough: boolean;
  /** Why a rung that fits could not be worked out, where it could not. */
  readonly notWorkedOut?: string;
  /** Absent for a rung that is refused: it is not priced. */
  readonly labourH?: Range;
  /** Days of work that it takes, as a spread. */
  readonly workingDays?: Range;
  /** Days that it takes with all waits, as a spread. */
  readonly calendarDays?: Range;
  /** What it costs, as a spread. */
  readonly priceRange?: MoneyRange;
}

/** A condition that speaks for or against a method. */
export interface RungReason {
  /** Code of the condition. */
  readonly code: string;
  /** The condition on this deck, in a sentence. */
  readonly text: string;
  /** Measured or worked-out value. */
  readonly value?: number;
  /** Value that the method allows. */
  readonly limit?: number;
  /** Unit of value and limit. */
  readonly unit?: string;
  /** Source of the condition. */
  readonly source: string;
  /** What would let the method fit. */
  readonly wouldFit?: string;
}

/** What one fitting takes, from the record where it says so and from its kind where it does not. */
export interface HardwareCard {
  /** Fitting that the card is for. */
  readonly id: string;
  /** Kind of the fitting on the card. */
  readonly kind: string;
  /** Fasteners of the fitting. */
  readonly fasteners: number;
  /** Diameter of its fasteners. */
  readonly fastenerMm: number;
  /** Length that the fasteners need in the new deck. */
  readonly fastenerLengthMm: number;
  /** Diameter of the potted hole. */
  readonly plugMm: number;
  /** Potting mix for all its holes. */
  readonly plugMl: number;
  /** Pours that a hole is filled in. */
  readonly pours: number;
  /** Size of its base on deck. */
  readonly baseMm: number;
  /** Solid insert under the fitting; absent when none is needed. */
  readonly insert?: {
    /** Length of the insert. */
    readonly lengthMm: number;
    /** Width of the insert. */
    readonly widthMm: number;
    /** Thickness of the insert. */
    readonly thicknessMm: number;
    /** What the insert is made of. */
    readonly material: string;
  };
  /** Plate under the deck; absent when none is needed. */
  readonly plate?: {
    /** Length of the plate. */
    readonly lengthMm: number;
    /** Width of the plate. */
    readonly widthMm: number;
    /** Thickness of the plate. */
    readonly thicknessMm: number;
    /** What the plate is made of. */
    readonly material: string;
    /** Rule that its size follows. */
    readonly rule: string;
  };
  /** What it is bedded in. */
  readonly sealant: {
    /** Kind of sealant. */
    readonly kind: string;
    /** How much sealant. */
    readonly ml: number;
  };
  /** How to tighten it. */
  readonly tightening: string;
  /** Hours to take it off, as a spread. */
  readonly offH: Range;
  /** Hours to set it again, as a spread. */
  readonly onH: Range;
  /** Whether somebody must help from below. */
  readonly needsSecondPerson: boolean;
  /** Who else must look at it, and why. */
  readonly referral?: string;
  /** What else to know about the fitting. */
  readonly note?: string;
  /** What was taken about the fitting. */
  readonly assumed: readonly string[];
  /** Where the card's rules come from. */
  readonly source: string;
}

export interface LeakSection {
  /** Code of the leak's cause. */
  readonly cause: string;
  /** Name of the leak's cause. */
  readonly title: string;
  /** What stops the leak. */
  readonly remedy: string;
  /** What is measured again, and the value that passes. */
  readonly verify: string;
  /** Whether this work stops it. */
  readonly isRemedied: boolean;
  /** The leak in a sentence. */
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
  /** One job in ten comes to less. */
  readonly p10: number;
  /** Half of the jobs come to less. */
  readonly p50: number;
  /** Nine jobs in ten come to less. */
  readonly p90: number;
}

export interface MoneyRange {
  /** Amount that one job in ten stays below. */
  readonly p10: MoneyJson;
  /** Amount that half of the jobs stay below. */
  readonly p50: MoneyJson;
  /** Amount that eight jobs in ten stay below. */
  readonly p80: MoneyJson;
  /** Amount that nine jobs in ten stay below. */
  readonly p90: MoneyJson;
}

export interface BodySummary {
  /** Skin taken off the deck. */
  readonly openedAreaM2: number;
  /** Sawing to do. */
  readonly cutLengthM: number;
  /** Sheets of core to buy. */
  readonly coreSheets: number;
  /** Resin to mix, losses included. */
  readonly mixedResinL: number;
  /** Sum of the most likely hours of each operation: seldom enough for all of them together. */
  readonly labourLikelyH: number;
  /** Sum of the labour lines: the recorded scope at mean hours. */
  readonly labourMeanH: number;
  /** Of the whole job with what is found besides, from the same simulation as money and days. */
  readonly labourH: Range;
  /** Days with somebody at work, as a spread. */
  readonly workingDays: Range;
  /** Days that the boat lies, as a spread. */
  readonly calendarDays: Range;
  /** The price with tax: base and what will probably be found besides. */
  readonly total: MoneyJson;
  /** Spread of the total. */
  readonly totalRange: MoneyRange;
  /** Beside the price, with tax. */
  readonly totalWithContingency: MoneyJson;
  /** Total by what an insurer asks for. */
  readonly insurer: Pick<InsurerSplit, 'attributable' | 'prior' | 'improvement'>;
}

export interface Summary extends BodySummary {
  /** What the conclusion says of the finished repair. */
  readonly verdict: RepairVerdict;
}

export type Outline = readonly Place[];
/** A region of the deck plane: its outer edge and what is left out of it. */
export interface Area {
  /** Outer edge. */
  readonly outer: Outline;
  /** Edges of what is left out. */
  readonly holes: readonly Outline[];
}

export interface Scope {
  /** The panel that is repaired. */
  readonly panel: {
    /** Name of the panel. */
    readonly name: string;
    /** Edge of the panel. */
    readonly outline: Outline;
    /** Hatches and other openings of the panel. */
    readonly holes: readonly Outline[];
    /** Area of the panel without its holes. */
    readonly areaM2: number;
  };
  /** Grade of the evidence about the extent. */
  readonly evidence: EvidenceGrade;
  /** Bad area, as a spread. */
  readonly damagedAreaM2: Range;
  /** Damaged zones. */
  readonly zones: readonly {
    /** Id of the zone. */
    readonly id: string;
    /** Edge of the zone. */
    readonly outline: Outline;
    /** Area of the zone. */
    readonly areaM2: number;
    /** What the core in the zone is like. */
    readonly condition: string;
  }[];
  /** Probability contours when the extent came from readings. */
  readonly contours: readonly {
    /** Chance of bad core at the edge of these areas. */
    readonly probability: number;
    /** Areas with at least that chance. */
    readonly areas: readonly Area[];
    /** Sum of these areas. */
    readonly areaM2: number;
  }[];
  /** Where to tap, meter or plug next, and whether that pays; when the extent came from readings. */
  readonly nextReadings?: NextReadingsSection;
  /** Openings in the skin. */
  readonly openings: readonly Opening[];
  /** Area of skin taken off. */
  readonly openedAreaM2: number;
  /** Of the opening, where core comes out; and sound core that is left where it is. */
  readonly coreOutAreaM2: number;
  /** Opened area whose sound core stays. */
  readonly coreStaysAreaM2: number;
  /** Skin that is bedded again. */
  readonly retainedAreaM2: number;
  /** Core taken from under skin that stays. */
  readonly undercutAreaM2: number;
  /** Length of all cuts. */
  readonly cutLengthM: number;
  /** Old skin ground to a taper. */
  readonly taperBandM2: number;
  /** Fittings that the work touches. */
  readonly fittings: readonly FittingScope[];
  /** What about the scope deserves attention. */
  readonly findings: readonly Finding[];
  /** Choices that the scope rests on. */
  readonly method: readonly {
    /** What was chosen. */
    readonly choice: string;
    /** The choice, in words. */
    readonly value: string;
    /** Why the choice fell so. */
    readonly reason: string;
  }[];
  /** Work that the price holds. */
  readonly included: readonly string[];
  /** Work that it does not hold. */
  readonly excluded: readonly string[];
}

/** Its assumptions stand among those of the estimate. */
export interface NextReadingsSection extends Omit<NextReadings, 'assumptions' | 'advice'> {
  /** Whether more readings would pay. */
  readonly advice: Finding;
}

export interface Opening {
  /** Name of the opening on drawings. */
  readonly label: string;
  /** Edge of the opening. */
  readonly area: Area;
  /** Corners of the saw line before rounding, measured from the datum corner of the panel. */
  readonly sawLine: Outline;
  /** Radius to round the corners to. */
  readonly cornerRadiusMm: number;
  /** Area of the opening. */
  readonly areaM2: number;
  /** Length of its saw cuts. */
  readonly cutLengthM: number;
  /** Absent when no depth is safe; a finding says why. */
  readonly cutDepthMm?: number;
  /** Where core is taken from under the edge. */
  readonly undercut: readonly Area[];
  /** How much core is taken from under the edge. */
  readonly undercutAreaM2: number;
  /** Sound core in the opening that is left where it is. */
  readonly coreStays: readonly Area[];
  /** Sound core that stays in the opening. */
  readonly coreStaysAreaM2: number;
  /** Where the old skin is ground. */
  readonly taperBand: readonly Area[];
  /** Why the opening has this form. */
  readonly reason: string;
}

export interface FittingScope {
  /** Id of the fitting in the record. */
  readonly id: string;
  /** What the fitting is. */
  readonly kind: FittingKind;
  /** Where its middle is, [xMm, yMm]. */
  readonly at: Place;
  /** How many holes it has. */
  readonly holes: number;
  /** In an opening, or near one. */
  readonly where: 'inside' | 'near';
  /** What the crew does with it. */
  readonly work: readonly ('remove' | 'pot' | 'insert' | 'plate' | 'refit' | 're-bed')[];
  /** Whether lives or the rig hang on it. */
  readonly isHighlyLoaded: boolean;
}

/** Something measured that does not fit, with its numbers. */
export interface Finding {
  /** Stable code of the finding. */
  readonly code: string;
  /** Whether it stops the repair, warns, or is only worth knowing. */
  readonly severity: 'stop' | 'warn' | 'note';
  /** The finding in a sentence for the reader. */
  readonly text: string;
  /** Numbers and words that the finding names. */
  readonly facts: Readonly<Record<string, string | number>>;
}

export interface CoreSection {
  /** Code of the new core. */
  readonly material: string;
  /** Name of the new core. */
  readonly materialName: string;
  /** Layers of the new stack from below. */
  readonly stack: readonly {
    /** What the layer is. */
    readonly layer: string;
    /** How thick the layer is. */
    readonly thicknessMm: number;
  }[];
  /** Height to fill between the skins. */
  readonly cavityMm: number;
  /** Height of the new stack. */
  readonly stackMm: number;
  /** New stack less cavity; positive stands proud. */
  readonly flushMm: number;
  /** Core in the deck. */
  readonly netAreaM2: number;
  /** Bought core that goes to waste. */
  readonly wasteAreaM2: number;
  /** Core that is bought. */
  readonly purchaseAreaM2: number;
  /** Where the waste comes from. */
  readonly wasteByCause: readonly {
    /** Why core goes to waste. */
    readonly cause: string;
    /** How much goes to waste so. */
    readonly areaM2: number;
  }[];
  /** Pieces in the order they are bedded. */
  readonly pieces: readonly CorePiece[];
  /** Why it is so many pieces. */
  readonly division: string;
  /** Places that take no core: too narrow, too far under the lip, or a spot that is wanted solid. */
  readonly solidFills: readonly CoreSolidFill[];
  /** Area that is filled solid. */
  readonly solidAreaM2: number;
  /** Solid filling. */
  readonly solidVolumeL: number;
  /** Sheets with the pieces cut from them. */
  readonly sheets: readonly CoreSheetLayout[];
  /** Left between the pieces on a sheet for the blade. */
  readonly kerfMm: number;
  /** Share of bought core that ends up in the deck. */
  readonly utilisation: number;
  /** How much heavier the deck becomes; negative is lighter. */
  readonly massChangeKg: number;
  /** Water that leaves with the wet core; absent when its moisture is unknown. */
  readonly waterLeavingKg?: number;
  /** What the crew should know about the core. */
  readonly notes: readonly string[];
}

export interface CorePiece {
  /** Name written on the piece. */
  readonly label: string;
  /** Place in the order of bedding, from 1. */
  readonly beddingOrder: number;
  /** Opening that it is bedded in. */
  readonly opening: string;
  /** What is bedded in one go; counted from 1 in each layer of an opening. */
  readonly bay: number;
  /** Edge of it in the deck plane, points [xMm, yMm] in order. */
  readonly outline: Outline;
  /** What is cut out of the piece. */
  readonly holes: readonly Outline[];
  /** Thickness of the piece. */
  readonly thicknessMm: number;
  /** Whether the piece is plain or scored. */
  readonly form: 'plain' | 'scored';
  /** Layer of the stack that the piece belongs to; 1 lies on the inner skin. */
  readonly layer: number;
  /** Area of the cut piece. */
  readonly areaM2: number;
  /** Slid under the skin that stays; the others drop in. */
  readonly isUnderLip: boolean;
  /** Only for core that has a grain in its plane. */
  readonly grainDeg?: number;
  /** Where the piece is drilled for air, [xMm, yMm]. */
  readonly bleedHoles: readonly Place[];
}

/** Filled solid from skin to skin, before the core goes in. */
export interface CoreSolidFill {
  /** Opening that the filling lies in. */
  readonly opening: string;
  /** Paste, laminate or a strip of dense core. */
  readonly kind: 'paste' | 'solid-laminate' | 'high-density-strip';
  /** Edge of it in the deck plane, points [xMm, yMm] in order. */
  readonly outline: Outline;
  /** Free places in the filling. */
  readonly holes: readonly Outline[];
  /** Area under the filling. */
  readonly areaM2: number;
  /** How much filling. */
  readonly volumeL: number;
  /** Width of the filled strip. */
  readonly widthMm: number;
  /** As paste: how many lifts, for its heat. */
  readonly lifts: number;
  /** Whether the filling goes under skin that stays. */
  readonly isUnderLip: boolean;
}

export interface CoreSheetLayout {
  /** Name of the sheet. */
  readonly label: string;
  /** Length of the sheet. */
  readonly lengthMm: number;
  /** Width of the sheet. */
  readonly widthMm: number;
  /** Thickness of the sheet. */
  readonly thicknessMm: number;
  /** Plain or scored sheet. */
  readonly form: 'plain' | 'scored';
  /** False for a piece that the customer has. */
  readonly isBought: boolean;
  /** How much of this sheet is used. */
  readonly utilisation: number;
  /** Pieces on the sheet. */
  readonly placed: readonly {
    /** Label of the piece. */
    readonly piece: string;
    /** Where its edge lies on the sheet. */
    readonly outline: Outline;
    /** Where its holes lie on the sheet. */
    readonly holes: readonly Outline[];
    /** How far it is turned. */
    readonly turnDeg: number;
    /** Place in the order of cutting. */
    readonly cutOrder: number;
  }[];
  /** Remainders worth keeping. */
  readonly offcutsKept: readonly Outline[];
}

export interface LaminateSection {
  /** Old skin bedded again, or a new one laid. */
  readonly method: 're-bed' | 'relay';
  /** Length of the taper over thickness of the skin. */
  readonly taperRatio: number;
  /** Width that is ground. */
  readonly taperWidthMm: number;
  /** New plies, the first laid first. */
  readonly plies: readonly PlyLine[];
  /** Thickness of the new skin. */
  readonly totalThicknessMm: number;
  /** Thickness of the skin that it replaces. */
  readonly oldThicknessMm: number;
  /** Glass to wet out. */
  readonly glassKg: number;
  /** Resin to wet it with. */
  readonly resinKg: number;
  /** Relaid: the best schedules with why the others lost. Re-bedded: empty. */
  readonly alternatives: readonly {
    /** Place of the alternative, 1 the one planned. */
    readonly rank: number;
    /** Its plies by name. */
    readonly plies: readonly string[];
    /** Its thickness. */
    readonly thicknessMm: number;
    /** Its price for a square metre, as text. */
    readonly costPerM2: string;
    /** Why it was not taken. */
    readonly reason: string;
  }[];
  /** Stiffness and strength of the new skin. */
  readonly properties: readonly NamedValue[];
  /** What to heed when laminating. */
  readonly notes: readonly string[];
}

export interface PlyLine {
  /** Place in the order of laying, from 1. */
  readonly order: number;
  /** Code of the glass. */
  readonly material: string;
  /** Name of the glass. */
  readonly materialName: string;
  /** Thickness when cured. */
  readonly thicknessMm: number;
  /** Glass to cut, without waste. */
  readonly areaM2: number;
  /** Shape to cut. */
  readonly outline: readonly Area[];
  /** Width, where the ply is a strip. */
  readonly widthMm?: number;
  /** Length off the roll. */
  readonly rollLengthM: number;
  /** Width of that roll. */
  readonly rollWidthMm: number;
  /** Mass of the glass. */
  readonly glassKg: number;
  /** Mass of resin that it takes. */
  readonly resinKg: number;
  /** Direction of the warp against fore and aft. */
  readonly orientationDeg: number;
}

/** A value with its name and unit. */
export interface NamedValue {
  /** Code of the value. */
  readonly code: string;
  /** Name of the value. */
  readonly name: string;
  /** The value, in `unit`. */
  readonly value: number;
  /** Unit that the value is in. */
  readonly unit: string;
  /** What goes with the value. */
  readonly note?: string;
}

/** The panel as built, as found, opened and repaired, under the same loads. A comparison, never a design approval. */
export interface PanelSection {
  /** Whether the deck is as good as it was. */
  readonly verdict: 'restored' | 'not-restored';
  /** By more than a laminate is repeated by hand. */
  readonly shortfalls: readonly string[];
  /** What is short by less than that, in a sentence. */
  readonly withinHands: readonly string[];
  /** Length and width of the panel between supports. */
  readonly sizeMm: readonly [number, number];
  /** Loads that the deck is compared under. */
  readonly loads: readonly NamedValue[];
  /** The deck before, open and after. */
  readonly states: readonly PanelState[];
  /** Repaired over as built, stiffness; as built over repaired, utilisation: at least 1 means restored. */
  readonly ratios: readonly NamedValue[];
  /** What the comparison leaves out. */
  readonly limits: readonly string[];
}

export interface PanelState {
  /** As built, as found, opened or repaired. */
  readonly state: 'as-built' | 'as-found' | 'opened' | 'repaired';
  /** Bending stiffness of the deck fore and aft. */
  readonly bendingXNmm: number;
  /** Bending stiffness of the deck athwart. */
  readonly bendingYNmm: number;
  /** Shear stiffness of the deck. */
  readonly shearNPerMm: number;
  /** Only those that linear plate theory can stand for; `note` says which are left out. */
  readonly deflections: readonly {
    /** Load under which the deck sags. */
    readonly load: string;
    /** Greatest sag under it. */
    readonly deflectionMm: number;
  }[];
  /** What is nearest to its limit in this state. */
  readonly governs?: string;
  /** How near: demand over capacity. */
  readonly utilisation?: number;
  /** What to know about this state. */
  readonly note?: string;
}

export type Verdict = 'passes' | 'fails' | 'not-established';

/** A check that fails is a result. `utilisation` is demand over capacity. */
export interface Check {
  /** Code of the check. */
  readonly code: string;
  /** Name of the check. */
  readonly title: string;
  /** State of the deck that the check is about. */
  readonly state?: 'as-built' | 'as-found' | 'opened' | 'repaired';
  /** What is required or acts. */
  readonly demand?: number;
  /** What is there or allowed. */
  readonly capacity?: number;
  /** Unit of what acts and what is there. */
  readonly unit: string;
  /** What acts over what is allowed. */
  readonly utilisation?: number;
  /** What the check says. */
  readonly verdict: Verdict;
  /** What decides the check. */
  readonly governs: string;
  /** What would let the check pass. */
  readonly remedy?: string;
  /** Publication that the check follows. */
  readonly source: string;
  /** Why the check has no figure. */
  readonly reason?: string;
  /** Of the repaired panel: what the same check comes to on the deck as built. */
  readonly asBuilt?: BuiltCheck;
}

export interface ProcessSection {
  /** Resin and hardener that the work is planned with. */
  readonly resin: {
    /** Code of the planned resin. */
    readonly code: string;
    /** Name of the planned resin. */
    readonly name: string;
    /** Code of the planned hardener. */
    readonly hardener: string;
    /** Name of the planned hardener. */
    readonly hardenerName: string;
    /** Why they suit the work and its warmth. */
    readonly why: string;
  };
  /** Mix that each step takes. */
  readonly demands: readonly ResinStep[];
  /** A card for each pot. */
  readonly batches: readonly BatchCard[];
  /** What stands against these pots at this temperature with this crew. */
  readonly findings: readonly Finding[];
  /** Absent where nothing is bedded that would have to be pressed. */
  readonly bondPressure?: BondPressureSection;
  /** When each mix can be worked on. */
  readonly cure: readonly CureMilestones[];
  /** What each step waits for. */
  readonly gates: readonly {
    /** Step that waits. */
    readonly step: string;
    /** What it waits for, in words. */
    readonly requires: readonly string[];
  }[];
  /** When each step may start; only with a forecast. Without one the gates say what to require. */
  readonly weather?: WeatherSection;
  /** Tasks and days. */
  readonly calendar: CalendarSection;
}

/** What the forecast opens and shuts. */
export interface WeatherSection {
  /** Moments in the local time of the place. */
  readonly fromAt: string;
  /** The end of the last hour of the forecast. */
  readonly untilAt: string;
  /** IANA time zone that local times are read in. */
  readonly timeZone: string;
  /** Hours that the forecast reaches. */
  readonly hours: number;
  /** Coldest that the deck becomes. */
  readonly coldestDeckC: number;
  /** Warmest that the deck becomes. */
  readonly warmestDeckC: number;
  /** Closest that the deck comes to the dew point. */
  readonly leastDewMarginK: number;
  /** Steps that wait for weather, each with its windows. */
  readonly steps: readonly WeatherStepSection[];
  /** What to know about the forecast. */
  readonly notes: readonly string[];
}

export interface WeatherStepSection {
  /** Step of the calendar. */
  readonly code: string;
  /** What the step is. */
  readonly title: string;
  /** Which gate the weather must open. */
  readonly gate: 'dry-deck' | 'resin' | 'coating';
  /** What comes before is done then, by likely values. */
  readonly earliestAt: string;
  /** When the plan starts the step (RFC 3339). */
  readonly plannedAt: string;
  /** When the plan ends the step (RFC 3339). */
  readonly plannedEndAt: string;
  /** Crew hours that it takes. */
  readonly neededH: number;
  /** Working hours of the forecast from `earliestAt` in which an hour of it may be begun. */
  readonly openH: number;
  /** The best few, the longest first. */
  readonly windows: readonly WeatherWindow[];
  /** How many windows the forecast holds for it. */
  readonly windowCount: number;
  /** Working hours that each condition takes away. */
  readonly shutBy: readonly {
    /** Requirement that shuts the step. */
    readonly gate: string;
    /** Hours of the forecast that it shuts. */
    readonly hours: number;
  }[];
}

export interface WeatherWindow {
  /** Place among the windows of the step, 1 the best. */
  readonly rank: number;
  /** When the window opens (RFC 3339). */
  readonly fromAt: string;
  /** The end of the last hour in which it may be begun. */
  readonly untilAt: string;
  /** How long the window stays open. */
  readonly hours: number;
  /** How close the deck comes to the dew point within the window. */
  readonly leastDewMarginK: number;
  /** How warm the deck is on average within the window. */
  readonly meanDeckC: number;
  /** Which requirement closes the window. */
  readonly limitedBy: string;
}

export interface ResinStep {
  /** Step that takes resin. */
  readonly step: string;
  /** Name of the step that takes resin. */
  readonly title: string;
  /** What stays in the deck. */
  readonly netL: number;
  /** What is lost at the step. */
  readonly wasteL: number;
  /** What is mixed for the step. */
  readonly totalL: number;
  /** Mass of all that is mixed for the step. */
  readonly totalKg: number;
  /** Filler stirred in at the step. */
  readonly fillerKg?: number;
  /** Name of the filler at the step. */
  readonly filler?: string;
}

export interface BatchCard {
  /** Number on the card. */
  readonly number: number;
  /** Step that the card is for. */
  readonly step: string;
  /** Heading of the card. */
  readonly title: string;
  /** Resin on the card. */
  readonly resinG: number;
  /** Hardener on the card. */
  readonly hardenerG: number;
  /** Filler on the card. */
  readonly fillerG: number;
  /** Name of the filler on the card. */
  readonly filler?: string;
  /** What to weigh, in this order, on a scale that is not set to nothing between; volumes for cup or pump. */
  readonly weigh: readonly {
    /** Which component. */
    readonly what: 'resin' | 'hardener' | 'filler';
    /** What stands on its can. */
    readonly name: string;
    /** Grams to add. */
    readonly addG: number;
    /** What the scale then shows, when it was zeroed with the empty pot. */
    readonly scaleShowsG: number;
    /** The same by volume. */
    readonly volumeMl: number;
  }[];
  /** Volume in the pot. */
  readonly mixedMl: number;
  /** What the pot is enough for. */
  readonly covers: readonly string[];
  /** Minutes until the pot must be empty. */
  readonly useWithinMin: number;
  /** What set the size of the pot. */
  readonly limitedBy: string;
  /** Strokes of the pump, where one is used. */
  readonly pumps?: string;
}

export interface BondPressureSection {
  /** Absent when no way to press can be recommended; the refusals say why. */
  readonly method?: 'weights' | 'battens' | 'vacuum' | 'jacks';
  /** Pressure that the core needs while it beds. */
  readonly requiredKPa: number;
  /** Pressure that the planned way gives. */
  readonly availableKPa?: number;
  /** What the pressing rests on. */
  readonly restsOn: string;
  /** What the pressing takes. */
  readonly quantities: readonly NamedValue[];
  /** Props under the deck. */
  readonly props: {
    /** Whether props go under the deck. */
    readonly needed: boolean;
    /** How far apart they may stand. */
    readonly spacingMm?: number;
    /** How far the skin that stays reaches between supports without them; absent where it stands by itself. */
    readonly spanMm?: number;
    /** Why they are needed or not. */
    readonly why: string;
  };
  /** Boards on props, battens and bows, where they lie in the plane of the deck. */
  readonly lines: readonly PressLine[];
  /** What goes on or under each piece, in the order of bedding. */
  readonly pieces: readonly {
    /** Piece that is pressed. */
    readonly label: string;
    /** Weight laid on it, or force under it as a weight, counted up to whole kilograms; absent where battens or a bag press. */
    readonly massKg?: number;
    /** Where a jack stands under the board that holds the piece; empty when it is pressed from above. */
    readonly jacks: readonly Place[];
  }[];
  /** How to press, in a sentence. */
  readonly recommendation: string;
  /** Ways of pressing that are ruled out, with why. */
  readonly refusals: readonly string[];
}

export interface CureMilestones {
  /** Step whose mix cures. */
  readonly step: string;
  /** Steady as stated, or the mean of the deck until full cure. */
  readonly temperatureC: number;
  /** Whether the warmth was stated, forecast, or first one and then the other. */
  readonly basis: 'stated' | 'forecast' | 'forecast-then-stated';
  /** When the last of the resin goes on; only where a forecast is followed. */
  readonly startAt?: string;
  /** Hours until it gels. */
  readonly gelH?: number;
  /** Hours until the pressing may come off. */
  readonly releaseH?: number;
  /** Hours until it can be sanded. */
  readonly sandableH?: number;
  /** Hours until a new layer needs sanding first. */
  readonly recoatShutsH?: number;
  /** Hours until it is fully hard. */
  readonly fullCureH?: number;
  /** What to heed while it cures. */
  readonly note?: string;
}

/** Tasks, waits and days of the job. */
export interface CalendarSection {
  /** Absent when the record names no start: days are then counted from any Monday. */
  readonly startDate?: string;
  /** Zone, or offset, that the moments are written in. */
  readonly timeZone?: string;
  /** Days on which somebody must come, as a spread. */
  readonly workingDays: Range;
  /** From the first day to the last, waits counted. */
  readonly calendarDays: Range;
  /** Of the one walk that the tasks show, by mean hours and waits. */
  readonly planned: {
    /** Working days of the plan as drawn. */
    readonly workingDays: number;
    /** Calendar days of the plan as drawn. */
    readonly calendarDays: number;
  };
  /** Tasks in the order they start. */
  readonly tasks: readonly CalendarTask[];
  /** Tasks whose delay delays the end, by code. */
  readonly criticalChain: readonly string[];
  /** When the job ends; absent when no start was stated. */
  readonly finish?: {
    /** End that one job in ten is done by (RFC 3339). */
    readonly early: string;
    /** End that half of the jobs are done by (RFC 3339). */
    readonly likely: string;
    /** End that nine jobs in ten are done by (RFC 3339). */
    readonly late: string;
  };
  /** Days worth announcing. */
  readonly milestones: readonly {
    /** Code of the milestone. */
    readonly code: string;
    /** What is reached then. */
    readonly title: string;
    /** When it is reached (RFC 3339); absent when no start was stated. */
    readonly at?: string;
  }[];
  /** What to know about the calendar. */
  readonly notes: readonly string[];
}

export interface CalendarTask {
  /** Code of the task. */
  readonly code: string;
  /** What is done. */
  readonly title: string;
  /** What it waits for in the weather. */
  readonly gate: 'none' | 'dry-deck' | 'resin' | 'coating';
  /** When it starts, in days from the start of the job. */
  readonly startDay: number;
  /** When its work ends, in days from the start of the job; its wait comes after. */
  readonly endDay: number;
  /** When it starts (RFC 3339), where the job's start was stated. */
  readonly startAt?: string;
  /** When it ends (RFC 3339), where the job's start was stated. */
  readonly endAt?: string;
  /** When its cure, drying or hold is over. */
  readonly readyAt?: string;
  /** Mean hours of work, of all hands together. */
  readonly labourH: number;
  /** Hours of waiting after the work. */
  readonly waitH: number;
  /** What is waited for. */
  readonly waitKind: 'none' | 'cure' | 'drying' | 'hold' | 'elapsed';
  /** Whether its delay delays the end. */
  readonly isCritical: boolean;
  /** Whether work stops here until somebody has agreed. */
  readonly isHoldPoint: boolean;
  /** What lets it start no earlier. */
  readonly startsBecause: string;
  /** Tasks that must be done before it, by code. */
  readonly after: readonly string[];
}

export interface CostSection {
  /** Code of the section. */
  readonly code: string;
  /** Heading of the section. */
  readonly title: string;
  /** Sum of its lines. */
  readonly amount: MoneyJson;
}

export interface EstimateLine {
  /** Code of the line; asked with it, the service derives the quantity. */
  readonly code: string;
  /** Section that the line stands in. */
  readonly section: string;
  /** What the line is for. */
  readonly title: string;
  /** What sort of cost it is. */
  readonly kind: 'material' | 'consumable' | 'labour' | 'hire' | 'disposal' | 'charge';
  /** Goods or work. */
  readonly partOrLabour: 'part' | 'labour';
  /** Cause that the line is put down to. */
  readonly causeClass: CauseClass;
  /** Code of the material; absent for work. */
  readonly material?: string;
  /** Unit of the quantities. */
  readonly unit: string;
  /** Quantity in the finished repair. */
  readonly netQuantity: number;
  /** Quantity lost on the way. */
  readonly wasteQuantity: number;
  /** Quantity that is bought or paid. */
  readonly purchaseQuantity: number;
  /** Least and most that may be needed, waste counted; absent for services. */
  readonly range?: {
    /** Quantity at the low end. */
    readonly low: number;
    /** Quantity at the high end. */
    readonly high: number;
  };
  /** Of labour: least, most likely, mean and most; the mean is priced. */
  readonly hours?: {
    /** Hours when all goes well. */
    readonly low: number;
    /** Hours that are most likely. */
    readonly likely: number;
    /** Hours on average. */
    readonly mean: number;
    /** Hours when it goes badly. */
    readonly high: number;
  };
  /** What was multiplied, as an exact decimal. */
  readonly pricedQuantity: string;
  /** Whole packs to be bought; empty for services. The amount is what is charged of their count times their price. */
  readonly packs: readonly {
    /** Number of the pack to buy. */
    readonly sku: string;
    /** Name of the pack to buy. */
    readonly name: string;
    /** Who sells the pack. */
    readonly supplier: string;
    /** Packs to buy. */
    readonly count: number;
    /** Price of one of them. */
    readonly price: MoneyJson;
  }[];
  /** Of packs: whole, by what is used and lost of them, or by one job's wear; and what buying them whole comes to. */
  readonly goods?: {
    /** Whether the customer pays whole packs or what is used. */
    readonly billedBy: BilledBy;
    /** What the yard pays for the packs. */
    readonly bought: MoneyJson;
  };
  /** Price of a unit. */
  readonly unitPrice: MoneyJson;
  /** True where packs were priced and `unitPrice` is their price over their content. */
  readonly isAveragePrice: boolean;
  /** Quantity times price, rounded once. */
  readonly amount: MoneyJson;
  /** Least and most of the amount at the recorded extent. */
  readonly amountRange: {
    /** Amount with everything low. */
    readonly low: MoneyJson;
    /** Amount with everything high. */
    readonly high: MoneyJson;
  };
  /** Whether wear of the old part may be taken off. */
  readonly depreciable: boolean;
  /** Where the record states the age of what is replaced: `amount` is the wear, before loadings and tax. */
  readonly depreciation?: LineDepreciation;
  /** Tax group that the line falls in. */
  readonly taxGroup: string;
}

export interface Totals {
  /** Currency of the estimate (ISO 4217). */
  readonly currency: string;
  /** Sum of the lines, before overhead, profit and tax. */
  readonly net: MoneyJson;
  /** Overhead in the total. */
  readonly overhead: MoneyJson;
  /** Profit in the total. */
  readonly profit: MoneyJson;
  /** Lines with overhead and profit: the recorded scope at mean hours, without tax. */
  readonly base: MoneyJson;
  /** What will probably be found besides, as a provisional quantity; without tax. */
  readonly growth: ProvisionalSum;
  /** Separate areas elsewhere; without tax. */
  readonly newAreas: ProvisionalSum;
  /** P80 less the price, without tax; it stands beside the price and is no part of it. */
  readonly contingency: MoneyJson;
  /** How the reserve was worked out. */
  readonly contingencyBasis: string;
  /** By kind of risk; the shares make the whole. */
  readonly contingencyByKind: readonly {
    /** Kind of risk. */
    readonly kind: RiskKind;
    /** Name of the risk. */
    readonly name: string;
    /** Its share of the reserve. */
    readonly share: number;
    /** Its part of the reserve. */
    readonly amount: MoneyJson;
  }[];
  /** What better evidence would leave of the contingency, and what it would take off it; without tax. */
  readonly betterEvidence: readonly {
    /** A better grade of evidence. */
    readonly evidence: EvidenceGrade;
    /** Reserve at that grade. */
    readonly contingency: MoneyJson;
    /** What the reserve would shrink by. */
    readonly saves: MoneyJson;
  }[];
  /** Taxes in the price, each on its group of lines. */
  readonly taxes: readonly {
    /** Tax group of the sum. */
    readonly code: string;
    /** Name on the invoice. */
    readonly name: string;
    /** Rate in percent, as decimal text. */
    readonly percent: string;
    /** Sum that the tax is reckoned on. */
    readonly base: MoneyJson;
    /** The tax. */
    readonly amount: MoneyJson;
  }[];
  /** Sum of the taxes. */
  readonly tax: MoneyJson;
  /** The price: base, growth and new areas, with tax. About as many jobs cost more as cost less. */
  readonly total: MoneyJson;
  /** Share of the simulated jobs that cost no more than `total`. */
  readonly shareWithin: number;
  /** Price and contingency together, with tax. */
  readonly totalWithContingency: MoneyJson;
  /** Of the whole job with tax: what the simulated jobs cost. */
  readonly range: MoneyRange;
  /** Price with tax, by the cause of the lines. */
  readonly byCause: readonly {
    /** The cause. */
    readonly causeClass: CauseClass;
    /** What is put down to it. */
    readonly amount: MoneyJson;
  }[];
  /** Goods in the price, with their loadings and tax. */
  readonly parts: MoneyJson;
  /** Work in the price, with its loadings and tax. */
  readonly labour: MoneyJson;
  /** What is billed for goods and what is bought. */
  readonly goods: GoodsSums;
  /** Parts at their price, their wear and what remains, before loadings and tax; only where the record states an age. */
  readonly depreciation?: PartsWear;
  /** Kinds of risk by what they add to the uncertainty of the price. */
  readonly drivers: readonly {
    /** What is uncertain. */
    readonly name: string;
    /** Its share of the variance of the total. */
    readonly shareOfVariance: number;
  }[];
  /** Total as an insurer reads it. */
  readonly insurer: InsurerSplit;
  /** Only where the owner does the work. */
  readonly ownWork?: {
    /** Hours that the owner works. */
    readonly labourH: number;
    /** What a yard would ask for these hours. */
    readonly aYardWouldAsk: MoneyJson;
    /** How that was reckoned. */
    readonly basis: string;
  };
  /** What the customer is offered first. */
  readonly offer: Offer;
  /** Half of the points against the other half, P90 over P90. */
  readonly p90RelativeError: number;
  /** Jobs drawn for the spread. */
  readonly samples: number;
}

/** Goods by themselves, without loadings, freight and tax: as this job is charged for them, and in whole packs. */
export interface GoodsSums {
  /** How goods are billed. */
  readonly billing: GoodsBilling;
  /** What the customer pays for goods. */
  readonly billed: MoneyJson;
  /** What the yard pays for goods. */
  readonly bought: MoneyJson;
  /** Why the two differ. */
  readonly basis: string;
}

/** A quantity that nobody has measured yet, with the price that the measured one will have. */
export interface ProvisionalSum {
  /** Sum that is set aside. */
  readonly amount: MoneyJson;
  /** Quantity that it is enough for. */
  readonly quantity: number;
  /** Unit of that quantity. */
  readonly unit: string;
  /** Price at which it is measured later. */
  readonly unitPrice: MoneyJson;
  /** Why the sum is set aside. */
  readonly basis: string;
}

/** Three sums with tax, and what of the first an insurer might pay. */
export interface InsurerSplit {
  /** Part that the stated event caused. */
  readonly attributable: MoneyJson;
  /** Part that was there before. */
  readonly prior: MoneyJson;
  /** Part that makes the boat better than it was. */
  readonly improvement: MoneyJson;
  /** Wear taken off. */
  readonly wear: MoneyJson;
  /** Own share of the insured. */
  readonly deductible: MoneyJson;
  /** What remains to be paid by the insurer. */
  readonly payable: MoneyJson;
  /** How the split was made. */
  readonly basis: string;
}

/** In two stages: what is known at a firm price, what is not by rates. */
export interface Offer {
  /** Opening and mapping, priced by itself. */
  readonly stageZero: StageZero;
  /** Without tax, overhead and profit inside. */
  readonly unitRates: readonly {
    /** Code of the rate. */
    readonly code: 'opened-m2' | 'cut-m' | 'hole' | 'fitting-h' | 'visit';
    /** What the rate is for. */
    readonly what: string;
    /** Unit that it is paid by. */
    readonly unit: string;
    /** Quantity of it that this estimate holds. */
    readonly quantity: number;
    /** Price for one unit. */
    readonly rate: MoneyJson;
  }[];
  /** How far work may go on without asking. */
  readonly authorisation: {
    /** Percent above the price. */
    readonly percent: number;
    /** Hours above the planned ones. */
    readonly labourH: number;
    /** Why so much. */
    readonly basis: string;
  };
  /** Where work stops until the customer has agreed. */
  readonly holdPoint: string;
}

export interface PartsWear {
  /** Parts that wear counts on. */
  readonly parts: MoneyJson;
  /** Wear of the parts they replace. */
  readonly depreciation: MoneyJson;
  /** What is left of the price. */
  readonly remaining: MoneyJson;
}

/** Everything up to the hold point, so that the rest can be priced on what is then known. */
export interface StageZero {
  /** Name of the stage. */
  readonly title: string;
  /** Labour with its share of overhead and profit, before tax. */
  readonly amount: MoneyJson;
  /** Hours of the stage. */
  readonly labourH: number;
  /** What of the contingency need not be set aside any more, once the extent is known; without tax. */
  readonly contingencyFreed: MoneyJson;
  /** Lines of the price that belong to it, by code. */
  readonly lines: readonly string[];
}

export interface Caution {
  /** Code of this caution. */
  readonly code: string;
  /** What may come of it: death, injury or damage. */
  readonly severity: 'danger' | 'warning' | 'caution';
  /** What sort of harm. */
  readonly kind: 'structure' | 'health' | 'fire' | 'site' | 'work';
  /** What to do or to leave. */
  readonly text: string;
  /** The condition of this job that called it. */
  readonly because: string;
  /** What to wear or to set up. */
  readonly protection: readonly string[];
  /** GHS hazard statements of the materials concerned. */
  readonly hazards: readonly {
    /** Hazard statement (GHS). */
    readonly code: string;
    /** Wording of the statement. */
    readonly text: string;
  }[];
  /** Who decides, where it is not the crew. */
  readonly decides?: string;
  /** Publication that the caution follows. */
  readonly source: string;
}

/** A default that the estimate rests on, and where a caller would replace it. */
export interface Assumption extends AskedAssumption {
  /** `record`, or the stateless endpoint (`/v1/estimating/...`) that lets a caller set what the record has no field for. */
  readonly of: string;
}

export interface ProvenanceStamp {
  /** Version of the program. */
  readonly engineVersion: string;
  /** Code of the catalogue's edition. */
  readonly edition: string;
  /** Hash of the edition's content. */
  readonly catalogueHash: string;
  /** Code of the price list that the lines were priced from. */
  readonly priceList: string;
  /** Code of the labour rates. */
  readonly labourRates: string;
}
