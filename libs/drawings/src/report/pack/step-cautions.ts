import { cautionCallouts, orderedCautions } from '../cost-sections.js';
import { dense, list, paragraph, type Block, type Callout } from '../document.js';
import type { ReportRequest } from '../request.js';

/** Sheets of a pack that cautions are read on. */
export type CautionSheet =
  'front' | 'mark-out' | 'pressing' | 'fittings' | 'pieces' | 'plies' | 'pots' | 'gates';

/** Where a hand is when it needs to know; whatever is not named here stands in front. */
const sheetOf: Readonly<Record<string, CautionSheet>> = {
  'cut-too-deep': 'mark-out',
  'open-deck': 'mark-out',
  'wiring-below': 'mark-out',
  'tank-or-hose-below': 'mark-out',
  'fuel-below': 'mark-out',
  'under-unknown': 'mark-out',
  'open-inner-skin': 'pressing',
  'heavy-weights': 'pressing',
  'jacks-slip': 'pressing',
  'overhead-work': 'pressing',
  'prop-first': 'pressing',
  'bolt-crush': 'fittings',
  'air-under-core': 'pieces',
  'layer-heats': 'plies',
  'glass-dust': 'plies',
  'resin-rain': 'plies',
  'off-ratio-scale': 'pots',
  'hardener-on-dust': 'pots',
  'light-powders': 'pots',
  'exotherm': 'pots',
  'core-wet': 'gates',
  'blush': 'gates',
  'paint-too-soon': 'gates',
  'gelcoat-on-epoxy': 'gates',
  'nonskid-match': 'gates',
};

/** More than a crew reads before it begins is read by nobody. */
const MOST_IN_FRONT = 8;

/** What is said of the report's figures is for whoever signs it; a crew works by the rest. */
const ofTheWork = (request: ReportRequest): ReportRequest => ({
  ...request,
  estimate: {
    ...request.estimate,
    cautions: request.estimate.cautions.filter(({ code }) => code !== 'comparison-only'),
  },
});

/** The gravest, without their reasons; each with its reason stands in the report. */
export const cautionsInFront = (request: ReportRequest): readonly Callout[] =>
  cautionCallouts(ofTheWork(request))
    .slice(0, MOST_IN_FRONT)
    .map((callout) => ({ ...callout, small: '' }));

/** Every other caution once, on the sheet of its step or, where this pack has no such sheet, in front. */
export function cautionsAt(
  sheet: CautionSheet,
  present: ReadonlySet<CautionSheet>,
  request: ReportRequest,
): readonly Block[] {
  const others = orderedCautions(ofTheWork(request)).slice(MOST_IN_FRONT);
  const own = others.filter(({ code }) => {
    const at = sheetOf[code] ?? 'front';
    return (present.has(at) ? at : 'front') === sheet;
  });
  return own.length === 0
    ? []
    : [dense(paragraph(request.reader.words.jobPack.mind)), dense(list(own.map(({ text }) => text)))];
}
