import type { Cite } from '#lib/provenance';
import { commonPractice, fromMemory, injectionLimit } from './cites.js';
import type { CoreState, FittingFacts, MethodFacts } from './facts.js';
import { isKnown } from '#lib/kernel';
import { limits } from './limits.js';
import type { Test } from './method.js';

export const inPrint: Cite = { source: 'METHODS-IN-PRINT' };

const stateWords: Readonly<Record<CoreState, string>> = {
  'dry-sound': 'dry and sound',
  'damp-sound': 'damp, but pale and hard',
  'wet-bonded': 'wet, still bonded',
  'wet-rotten': 'wet and rotten',
  'dry-debonded': 'dry, let go from its skin',
};

export const wordsFor = (state: CoreState): string => stateWords[state];

/** Area as a surveyor writes it; a small one in the digits that decide. */
export const m2Words = (areaM2: number): string => `${areaM2.toFixed(areaM2 < 0.1 ? 3 : 2)} m2`;

export const isBad = ({ place: { core, badAreaM2 } }: MethodFacts): boolean =>
  badAreaM2 > 0 || core === 'wet-bonded' || core === 'wet-rotten' || core === 'dry-debonded';

/** Refused in these states of the core. */
export const refusedWhen =
  (
    states: readonly CoreState[],
    why: string,
    options: { readonly cite: Cite; readonly wouldFit: string; readonly code?: string },
  ): Test =>
  ({ place: { core } }) =>
    isKnown(core) && states.includes(core)
      ? { code: 'core-state', text: `the core is ${stateWords[core]}: ${why}`, ...options }
      : undefined;

interface AreaLimit {
  readonly code: string;
  readonly limitM2: number;
  readonly why: string;
  readonly cite: Cite;
  readonly wouldFit?: string;
}

export const refusedAboveArea =
  ({ code, limitM2, why, cite, wouldFit }: AreaLimit): Test =>
  ({ place: { badAreaM2 } }) =>
    badAreaM2 > limitM2
      ? {
          code,
          text: `${m2Words(badAreaM2)} is more than the ${m2Words(limitM2)} ${why}`,
          value: badAreaM2,
          limit: limitM2,
          unit: 'm2',
          cite,
          ...(wouldFit === undefined ? {} : { wouldFit }),
        }
      : undefined;

/** A place with nothing bad in it is nothing to open. */
export const refusedWithoutBadCore: Test = (facts) =>
  isBad(facts)
    ? undefined
    : {
        code: 'nothing-to-open',
        text: 'no bad core was found here: nothing is to be opened',
        value: 0,
        limit: 0,
        unit: 'm2',
        cite: commonPractice,
        wouldFit: 'a plug or a reading that shows wet, rotten or loose core',
      };

const loadedOn = ({ place }: MethodFacts): FittingFacts | undefined =>
  place.fittings.find(({ isHighlyLoaded, isOnPlace }) => isHighlyLoaded && isOnPlace);

/** A name that says its kind already is not given it again. */
function namedWithKind({ id, kind }: FittingFacts): string {
  const words = kind.replaceAll('-', ' ');
  return id.toLowerCase().replaceAll('-', ' ').includes(words) ? id : `${id}, a ${words},`;
}

export const refusedUnderLoad =
  (why: string): Test =>
  (facts) => {
    const loaded = loadedOn(facts);
    return loaded === undefined
      ? undefined
      : {
          code: 'under-load',
          text: `${namedWithKind(loaded)} stands on it: ${why}`,
          cite: commonPractice,
          wouldFit: 'solid laminate or dense core under the fitting',
        };
  };

/** Whatever is done under a mast step, chainplate or windlass, somebody else judges it first. */
export const referredUnderLoad: Test = (facts) => {
  const loaded = loadedOn(facts);
  return loaded === undefined
    ? undefined
    : {
        code: 'naval-architect',
        text: `${loaded.id} is highly loaded: a naval architect or a qualified surveyor judges the repair before it is begun`,
        cite: commonPractice,
      };
};

export const refusedUnderFitting: Test = ({ place }) => {
  const near = place.fittings.at(0);
  return near === undefined
    ? undefined
    : {
        code: 'injection-under-fitting',
        text: `${near.id} stands on it or within 300 mm: its core is replaced by something dense`,
        value: 300,
        unit: 'mm',
        cite: injectionLimit,
        wouldFit: 'no fitting on the place',
      };
};

/** Wet core that only a guess calls dry. */
export const conditionPlug =
  (what: string): Test =>
  ({ place: { isProvenByPlug } }) =>
    isProvenByPlug
      ? undefined
      : {
          code: 'plug-first',
          text: `take a plug first: ${what}`,
          value: 0,
          limit: 1,
          unit: 'plugs',
          cite: commonPractice,
        };

export const refusedWithoutPlug =
  (code: string, what: string): Test =>
  ({ place: { isProvenByPlug } }) =>
    isProvenByPlug
      ? undefined
      : {
          code,
          text: what,
          value: 0,
          limit: 1,
          unit: 'plugs',
          cite: injectionLimit,
          wouldFit: 'a plug that shows dry, sound core',
        };

export const conditionOverlay: Test = ({ deck: { overlay } }) =>
  overlay === 'comes-off'
    ? {
        code: 'overlay-off',
        text: 'the overlay comes off first: screws out, holes filled, deck made good',
        cite: commonPractice,
      }
    : undefined;

export const refusedUnderOverlay: Test = ({ deck: { overlay } }) =>
  overlay === 'stays'
    ? {
        code: 'overlay-in-the-way',
        text: 'the overlay is to stay, and nothing is cut or filled through planks',
        cite: commonPractice,
        wouldFit: 'the overlay taken off over the place, or work from below',
      }
    : undefined;

/** A piece that is bedded must be wide enough for hand and core. */
export const refusedTooNarrow: Test = ({ place: { narrowMm, edge } }) => {
  const isLip = edge !== 'none' && needsLip(edge.gapMm, edge.flangeMm);
  return isLip && narrowMm < limits.coreUnderLipMm
    ? {
        code: 'no-room-on-the-flange',
        text: `the bad core is ${Math.round(narrowMm)} mm wide and lies under the flange of ${Math.round(edge.flangeMm)} mm: core is bedded under a lip from ${limits.coreUnderLipMm} mm of width`,
        value: narrowMm,
        limit: limits.coreUnderLipMm,
        unit: 'mm',
        cite: fromMemory,
        wouldFit: 'rout it out under the lip and fill it, wrap the plies up the edge, or take the rail off',
      }
    : undefined;
};

export const needsLip = (gapMm: number, flangeMm: number): boolean => gapMm < flangeMm;

/** The cut with its reach must take in the wet boundary and a margin: `cut ∪ reach ⊇ wet + 25 mm`. */
export const refusedOutOfReach: Test = ({ place: { edge } }) => {
  if (edge === 'none') return undefined;
  const endsMm = isKnown(edge.coreEndsMm) ? edge.coreEndsMm : 0;
  const underLipMm = edge.flangeMm - Math.max(endsMm, edge.gapMm - limits.provenMarginMm);
  return underLipMm > limits.lipReachMm
    ? {
        code: 'out-of-reach',
        text: `bad core with its margin runs ${Math.round(underLipMm)} mm under the flange; tools reach ${limits.lipReachMm} mm`,
        value: underLipMm,
        limit: limits.lipReachMm,
        unit: 'mm',
        cite: inPrint,
        wouldFit: 'a narrower flange, plies wrapped up the edge, the rail off, or work from below',
      }
    : undefined;
};

export const conditionCoreEnd: Test = ({ place: { edge } }) =>
  edge === 'none' || isKnown(edge.coreEndsMm)
    ? undefined
    : {
        code: 'core-end',
        text: 'measure where the core ends before the edge: 25 to 100 mm of solid laminate are usual, and none is taken as known',
        value: 25,
        limit: 100,
        unit: 'mm',
        cite: inPrint,
      };
