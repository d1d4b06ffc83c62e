import type { ThreePoint } from '#lib/kernel';
import type { Skill } from '#lib/catalogue';
import type { Cite } from '#lib/provenance';
import type { HoursBySize } from './job-size.js';

/**
 * What an operation's hours are counted by. `-coat` and `-cycle` are area times number of coats or cycles;
 * `extra-ply-m2` is the ply area beyond two plies, `lip-m` the cut with core taken out under the skin that stays; `day` is a
 * day on which somebody works, `covering-m2` a covering that is bonded to the deck and comes off. Skin and core are loose
 * where they have let go and held where they have not.
 */
export const drivers = [
  'job',
  'day',
  'opened-m2',
  'loose-skin-m2',
  'held-skin-m2',
  'loose-core-m2',
  'held-core-m2',
  'cut-m',
  'lip-m',
  'taper-m',
  'laminate-m2',
  'extra-ply-m2',
  'faired-m2-cycle',
  'primed-m2-coat',
  'topcoat-m2-coat',
  'finish-m2',
  'covering-m2',
  'nonskid-m2',
  'hole',
  'fitting-small',
  'fitting-large',
  'insert',
  'plate',
  'support-m2-below',
  'injection-hole',
  'bedded-hole',
  'dry-hole',
  'dry-set-up',
  'dry-reading',
  'strip-m',
  'upstand-m',
  'rail-m',
  'bow',
  'overlay-screwed-m2',
  'overlay-glued-m2',
  'overlay-relay-m2',
  'lining-zipped-m2',
  'lining-panel-m2',
  'lining-glued-m2',
] as const;
export type Driver = (typeof drivers)[number];

/** Amount of each driver on this job; one left out is none of it. `job` is 1 unless it is given. */
export type DriverAmounts = Readonly<Partial<Record<Driver, number>>>;

/** The choices and circumstances that decide which operations belong to a job, and what slows them. */
export interface OperationFlags {
  /** What becomes of the skin: bedded back, laid anew, left in place and injected under, or not touched at all. */
  readonly skin: 're-bed' | 'relay' | 'inject' | 'closed';
  readonly access: 'from-above' | 'from-below';
  /** Core state that decides how it comes out, and how hard the skin lifts. */
  readonly condition: 'wet-rotten' | 'wet-bonded' | 'dry-debonded';
  readonly press: 'weights' | 'battens' | 'vacuum';
  readonly shelter: 'shed' | 'tent' | 'open';
  readonly below: 'open' | 'lined' | 'none';
  readonly skill: 'professional' | 'owner';
  readonly props: 'needed' | 'not-needed';
  readonly finish: 'painted' | 'none';
  readonly nonskid: 'yes' | 'no';
  readonly berth: 'ashore' | 'afloat';
  readonly panel: 'flat' | 'cambered';
}

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
