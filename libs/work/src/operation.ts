import { ask, askWhich, type AnswersTo } from '#lib/asking';
import type { ThreePoint } from '#lib/kernel';
import type { Skill } from '#lib/catalogue';
import type { Cite } from '#lib/provenance';
import type { HoursBySize } from './job-size.js';

const amount = { unit: '1', range: { from: 0, upTo: 100_000 }, otherwise: 'unknown' } as const;

/** Amount of each driver on this job; one left out is none of it. `job` is 1 unless it is given. */
export const driverAmountsQuestions = {
  'job': ask({ ...amount, meaning: 'the job itself', note: 'One job unless it is given.' }),
  'day': ask({ ...amount, meaning: 'days on the job' }),
  'shade-day': ask({ ...amount, meaning: 'days with a shade to rig' }),
  'heat-day': ask({ ...amount, meaning: 'days with a heater to tend' }),
  'opened-m2': ask({ ...amount, meaning: 'opened area' }),
  'bared-m2': ask({
    ...amount,
    meaning: 'ground from which core comes out',
    note: 'Absent: all that is opened.',
  }),
  'kept-core-m2': ask({ ...amount, meaning: 'sound core that stays in the opening' }),
  'dried-m2': ask({ ...amount, meaning: 'ground that was wet', note: 'Absent: all that is bared.' }),
  'cored-m2': ask({
    ...amount,
    meaning: 'ground that takes new core',
    note: 'Absent: all that is bared.',
  }),
  'solid-l': ask({ ...amount, meaning: 'what is filled solid' }),
  'loose-skin-m2': ask({
    ...amount,
    meaning: 'skin that has let go',
    description: 'Of the opening, skin that has let go; absent, with the other three: by the condition.',
  }),
  'held-skin-m2': ask({ ...amount, meaning: 'skin that still holds' }),
  'loose-core-m2': ask({ ...amount, meaning: 'rotten core' }),
  'held-core-m2': ask({ ...amount, meaning: 'core that still holds' }),
  'cut-m': ask({ ...amount, meaning: 'length of cut' }),
  'lip-m': ask({ ...amount, meaning: 'edge under which core is taken out' }),
  'taper-m': ask({ ...amount, meaning: 'length of taper' }),
  'laminate-pause-m2': ask({
    ...amount,
    meaning: 'laminate that cures before the next plies are laid on it',
  }),
  'laminate-m2': ask({ ...amount, meaning: 'area of the new skin, two plies' }),
  'extra-ply-m2': ask({ ...amount, meaning: 'ply area beyond two plies' }),
  'faired-m2-cycle': ask({ ...amount, meaning: 'faired area times cycles' }),
  'primed-m2-coat': ask({ ...amount, meaning: 'primed area times coats' }),
  'topcoat-m2-coat': ask({ ...amount, meaning: 'painted area times coats' }),
  'finish-m2': ask({ ...amount, meaning: 'finished area' }),
  'old-finish-m2': ask({
    ...amount,
    meaning: 'finished area beyond the fairing of the repair',
    note: 'Where the old finish is sanded and skimmed; absent: all that is finished.',
  }),
  'covering-m2': ask({ ...amount, meaning: 'covering bonded to the deck that comes off' }),
  'nonskid-m2': ask({ ...amount, meaning: 'area of non-skid' }),
  'buffed-m2': ask({ ...amount, meaning: 'gelcoat that is wet-sanded and buffed' }),
  'hole': ask({ ...amount, meaning: 'holes through the deck' }),
  'fitting-off-h': ask({
    ...amount,
    meaning: 'hours of the cards of fittings to take them off',
  }),
  'fitting-on-h': ask({
    ...amount,
    meaning: 'hours of the cards of fittings to set them again',
  }),
  'fitting-helped-h': ask({
    ...amount,
    meaning: 'of the hours to set fittings again, those with somebody below',
  }),
  'insert': ask({ ...amount, meaning: 'inserts' }),
  'plate': ask({ ...amount, meaning: 'backing plates' }),
  'support-m2-below': ask({ ...amount, meaning: 'lining and supports below' }),
  'injection-hole': ask({ ...amount, meaning: 'holes drilled to inject resin under the skin' }),
  'injected-place': ask({
    ...amount,
    meaning: 'places injected',
    note: 'Absent: one where the skin is injected under, none elsewhere.',
  }),
  'dry-hole': ask({ ...amount, meaning: 'holes drilled to dry the core' }),
  'dry-set-up': ask({ ...amount, meaning: 'set-ups of drying' }),
  'dry-reading': ask({ ...amount, meaning: 'readings while the core dries' }),
  'strip-m': ask({ ...amount, meaning: 'length of strip' }),
  'slot-m': ask({
    ...amount,
    meaning: 'length of slot along a strip',
    note: 'None where the core lies bare, as at a hatch whose frame is off.',
  }),
  'upstand-m': ask({ ...amount, meaning: 'length of upstand' }),
  'rail-m': ask({ ...amount, meaning: 'length of rail' }),
  'bow': ask({ ...amount, meaning: 'bows' }),
  'joint-m': ask({ ...amount, meaning: 'joint of hull and deck that is closed' }),
  'crack-m': ask({ ...amount, meaning: 'crack that is ground out and closed' }),
  'leak-frame': ask({ ...amount, meaning: 'frames whose bare core is dug back and sealed' }),
  'leak-slot': ask({ ...amount, meaning: 'chainplate slots filled, to be cut anew' }),
  'core-joint-m': ask({ ...amount, meaning: 'joints of plywood core that are grooved, filled and taped' }),
  'leak-hunt': ask({ ...amount, meaning: 'searches for the way in of the water' }),
  'overlay-screwed-m2': ask({ ...amount, meaning: 'screwed planks that come off' }),
  'overlay-glued-m2': ask({ ...amount, meaning: 'glued planks that come off' }),
  'overlay-relay-m2': ask({ ...amount, meaning: 'planks that are laid again' }),
  'lining-zipped-m2': ask({ ...amount, meaning: 'lining that is zipped open' }),
  'lining-panel-m2': ask({ ...amount, meaning: 'lining in panels' }),
  'lining-glued-m2': ask({ ...amount, meaning: 'lining that is glued' }),
};

export type DriverAmounts = AnswersTo<typeof driverAmountsQuestions>;
export type Driver = keyof DriverAmounts;

/** Counted by the days on which somebody comes: done on each of them beside the steps of the job. */
export const visitDrivers = ['day', 'shade-day', 'heat-day'] as const satisfies readonly Driver[];
export const isByVisit = (driver: Driver): boolean => visitDrivers.some((one) => one === driver);

const isDriver = (name: string): name is Driver => Object.hasOwn(driverAmountsQuestions, name);
export const drivers: readonly Driver[] = Object.keys(driverAmountsQuestions).filter(isDriver);

/**
 * The choices and circumstances that decide which operations belong to a job, and what slows them. The skin is bedded
 * back, laid anew, left in place and injected under, or not touched at all; the state of the core decides how it comes
 * out and how hard the skin lifts.
 */
export const operationFlagsQuestions = {
  skin: askWhich({
    meaning: 'what becomes of the skin',
    choices: ['re-bed', 'relay', 'inject', 'closed'],
  }),
  access: askWhich({
    meaning: 'side of the work',
    choices: ['from-above', 'from-below'],
  }),
  condition: askWhich({
    meaning: 'state of the core',
    choices: ['wet-rotten', 'wet-bonded', 'dry-debonded'],
  }),
  press: askWhich({
    meaning: 'what presses the bed',
    choices: ['weights', 'battens', 'vacuum'],
  }),
  shelter: askWhich({ meaning: 'shelter over the work', choices: ['shed', 'tent', 'open'] }),
  below: askWhich({ meaning: 'what lies below the deck', choices: ['open', 'lined', 'none'] }),
  skill: askWhich({ meaning: 'who does the work', choices: ['professional', 'owner'] }),
  props: askWhich({ meaning: 'whether props are needed', choices: ['needed', 'not-needed'] }),
  finish: askWhich({
    meaning: 'finish of the deck',
    choices: ['painted', 'gelcoat', 'gelcoat-over-epoxy', 'none'],
  }),
  nonskid: askWhich({ meaning: 'whether there is non-skid', choices: ['yes', 'no'] }),
  berth: askWhich({ meaning: 'where the boat lies', choices: ['ashore', 'afloat'] }),
  panel: askWhich({ meaning: 'whether the panel is cambered', choices: ['flat', 'cambered'] }),
};
export type OperationFlags = AnswersTo<typeof operationFlagsQuestions>;

/** Every named flag must have one of the listed values; no flag named means always. */
export type AppliesWhen = { readonly [K in keyof OperationFlags]?: readonly OperationFlags[K][] };

export const phases = ['survey', 'prepare', 'open', 'bond', 'close', 'finish', 'refit', 'hand-over'] as const;
export type Phase = (typeof phases)[number];

/** What must pass before a successor may start, beyond the hours of work. */
export type Wait =
  | { readonly kind: 'none' }
  | { readonly kind: 'cure'; readonly until: 'gel' | 'release' | 'sandable' | 'full' }
  | {
      readonly kind: 'drying';
      /** Where the drying is of its own kind; else the days of an opened edge by core, shelter, warmth and readings. */
      readonly daysThreePoint?: ThreePoint;
      readonly cite: Cite;
    }
  | { readonly kind: 'hold'; readonly hoursThreePoint: ThreePoint; readonly why: string; readonly cite: Cite }
  | {
      readonly kind: 'elapsed';
      readonly hoursThreePoint: ThreePoint;
      /** Printed for 21 degC and as slow or fast as a cure at others. */
      readonly isCure?: boolean;
      readonly why: string;
      readonly cite: Cite;
    };

/** Which weather gate the work stands behind. */
export const gateKinds = ['none', 'dry-deck', 'resin', 'coating'] as const;
export type GateKind = (typeof gateKinds)[number];

/** What an operation takes from the stores; the amounts are worked out by take-off. */
export type Consumes =
  | 'resin'
  | 'filler'
  | 'core'
  | 'fabric'
  | 'primer'
  | 'topcoat'
  | 'gelcoat'
  | 'nonskid'
  | 'fairing'
  | 'abrasive'
  | 'sealant';

/** Conditions that slow or speed an operation; see `modifiers`. */
export type Strain = 'overhead-from-below' | 'on-deck' | 'by-area';

export interface Operation {
  readonly code: string;
  readonly title: string;
  readonly phase: Phase;
  readonly driver: Driver;
  /** Man-hours per unit of the driver: a skilled hand, under cover. */
  readonly hours: ThreePoint;
  /** Where they follow the size of the job instead; `hours` are then those of a panel. */
  readonly bySize?: HoursBySize;
  readonly skill: Skill;
  readonly appliesWhen: AppliesWhen;
  /** Finish-to-start predecessors; one that does not belong to the job hands its own predecessors on. */
  readonly after: readonly string[];
  /** Of the predecessors, those it is laid on while they are still wet: it does not wait for their cure. */
  readonly wetOn?: readonly string[];
  /** Of the predecessors, those it bonds to without sanding while they are tacky: from gel until their window shuts. */
  readonly tackyOn?: readonly string[];
  readonly waits: Wait;
  /** Between its own coats or cycles, where that is another wait than after the last of them. */
  readonly waitsBetween?: Wait;
  readonly gate: GateKind;
  readonly strains: readonly Strain[];
  /** Modifiers that the rate holds already, because it was observed under them. */
  readonly holds?: readonly string[];
  readonly consumes?: readonly Consumes[];
  /** Work stops here until somebody outside the crew agrees. */
  readonly isHoldPoint?: boolean;
  /** What is other where the skin below is opened and all is done overhead. */
  readonly fromBelow?: {
    readonly title?: string;
    readonly wetOn?: readonly string[];
    readonly tackyOn?: readonly string[];
  };
  /** Done by one hand in the shop or below while others work on deck: it needs no deck. */
  readonly isOffDeck?: boolean;
  readonly cite: Cite;
}

export const defineOperation = (operation: Operation): Operation => operation;

export const appliesTo = (appliesWhen: AppliesWhen, flags: OperationFlags): boolean =>
  flagNames.every((name) => isAmong(appliesWhen[name], flags[name]));

const isAmong = (values: readonly string[] | undefined, value: string): boolean =>
  values === undefined || values.includes(value);

const flagNames = [
  'skin',
  'access',
  'condition',
  'press',
  'shelter',
  'below',
  'skill',
  'props',
  'finish',
  'nonskid',
  'berth',
  'panel',
] as const satisfies readonly (keyof OperationFlags)[];
