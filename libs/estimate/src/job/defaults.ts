import type { Cite } from '#lib/provenance';
import type { EvidenceGrade } from '#lib/extent';
import { usualTaper } from '#lib/laminate';
import type { Fallback } from './choice.js';
import type { DefectRecord, PanelRecord } from './defect-record.js';

export const commonPractice: Cite = { source: 'COMMON-PRACTICE' };

const practice = <T>(value: T, because: string): Fallback<T> => ({ value, because, cite: commonPractice });

const OLD_BOND_LINES_MM = 1;

/** What is taken when the record is silent. Each use is listed in the estimate with its reason and source. */
export const fallbacks = {
  oldCoreType: practice<NonNullable<DefectRecord['core']['coreType']>>(
    'end-grain-balsa',
    'the commonest deck core; a plug would tell',
  ),
  access: practice<'from-above' | 'from-below'>(
    'from-above',
    'most decks are opened from above: the work is face down and the resin stays where it is put',
  ),
  press: practice<'weights' | 'battens' | 'vacuum'>(
    'weights',
    'needs no fastening into the deck and no airtight inner skin',
  ),
  finish: practice<'patch' | 'panel' | 'whole-deck'>(
    'panel',
    'a patch inside a panel shows; a panel ends at natural edges',
  ),
  evidence: practice<EvidenceGrade>(
    'sounded-and-metered',
    'a drawn boundary is taken to have been sounded and metered; plugs on both sides of it would narrow the range',
  ),
  edges: practice<'simply-supported' | 'clamped'>(
    'simply-supported',
    'gives the larger deflection, so the comparison errs on the safe side',
  ),
  surface: practice<NonNullable<PanelRecord['surface']>>(
    'painted-nonskid',
    'the usual surface of an older deck',
  ),
  accessBelow: practice<NonNullable<PanelRecord['accessBelow']>>(
    'lined',
    'most decks have a lining that comes down before work and goes back after it',
  ),
  shelter: practice<'shed' | 'tent' | 'open'>(
    'tent',
    'an opened deck needs cover; a tent is the least that keeps rain and dew out',
  ),
  workers: practice<'professional' | 'owner'>(
    'professional',
    'the hours of the catalogue are for a skilled hand',
  ),
  taperRatio: (workedSkinMm: number): Fallback<number> => usualTaper(workedSkinMm),
  cutMarginMm: practice(75, 'a few inches past the sound boundary, 50 to 100 mm'),
  flangeMm: practice(50, 'about 2 in of deck kept round a cut, so that the new laminate can tie in'),
  temperatureC: practice(
    20,
    'a heated or summer workplace; state the real one, it decides hardener and waits',
  ),
  relativeHumidityPercent: practice(60, 'a dry workplace; state the real one'),
  altitudeM: practice(0, 'most decks are repaired at sea level'),
  people: practice(2, 'bedding core and fastening through the deck take two'),
  hoursPerDay: practice(8, 'a working day'),
  cavityMm: (coreMm: number): Fallback<number> => ({
    value: coreMm + OLD_BOND_LINES_MM,
    because: 'the old core was bedded on a line of about half a millimetre at each face',
    cite: { source: 'FROM-MEMORY' },
  }),
  /** For numbers that the record must carry; `faultsOfRecord` refuses before this could be used. */
  never: practice(Number.NaN, 'required'),
} as const;

/** The skin method when the record is silent: moulded nonskid is worth saving, anything else is laminated anew. */
export const skinMethodFor = (record: DefectRecord, surface: string): Fallback<'re-bed' | 'relay'> =>
  surface === 'moulded-nonskid' && record.zones?.every(({ condition }) => condition !== 'wet-rotten') === true
    ? practice('re-bed', 'moulded nonskid cannot be matched, and a skin over bonded core comes off whole')
    : practice(
        'relay',
        'a new laminate gives the soundest skin; a lifted skin rarely comes off whole over rotten core',
      );
