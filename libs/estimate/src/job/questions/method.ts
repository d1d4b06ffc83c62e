import { ask, askCode, askWhich, practice, type Answers, type Default } from '#lib/asking';
import { openingMethodQuestions, skinMethodAsked, taperRatioAsked } from '#lib/extent';
import { usualTaper } from '#lib/laminate';
import { rungCodes } from '#lib/methods';
import { innerSkinQuestions, outerSkinQuestions, panelQuestions } from './deck.js';
import { defectParts, zones } from './defect.js';

const { access, cutMarginMm, flangeMm } = openingMethodQuestions;

export const methodQuestions = {
  rung: askWhich({
    meaning: 'rung of the ladder of methods',
    description:
      'A rung of the ladder by name; without one the recommended rung is planned. One that does not fit is answered with the reason.',
    choices: rungCodes,
    otherwise: 'unknown',
  }),
  skin: askWhich({ ...skinMethodAsked, otherwise: skinMethod }),
  access,
  press: askWhich({
    meaning: 'what presses the core down',
    choices: ['weights', 'battens', 'vacuum'],
    otherwise: practice('weights', 'needs no fastening into the deck and no airtight inner skin'),
  }),
  core: askCode({
    meaning: 'core sheet',
    description: 'Code of a core sheet in the catalogue.',
    otherwise: 'unknown',
  }),
  resin: askCode({
    meaning: 'resin system',
    description: 'Code of a resin system in the catalogue.',
    otherwise: 'unknown',
  }),
  pumpResinMlPerStroke: ask({
    unit: 'ml',
    meaning: 'stroke of the resin pump',
    description: 'What one stroke of the resin pump gives; the batch cards then count strokes.',
    range: { above: 0, upTo: 500 },
    otherwise: 'unknown',
  }),
  finish: askWhich({
    meaning: 'how far the finish goes',
    choices: ['patch', 'panel', 'whole-deck'],
    otherwise: practice('panel', 'a patch inside a panel shows; a panel ends at natural edges'),
  }),
  finishIn: askWhich({
    meaning: 'what the deck is finished in',
    description: 'Gelcoat takes no primer or paint; over epoxy it waits for the whole cure.',
    choices: ['paint', 'gelcoat'],
    otherwise: practice('paint', 'holds on any resin; gelcoat holds poorly on epoxy'),
  }),
  topcoat: askCode({
    meaning: 'topcoat',
    description: 'Code of a topcoat in the catalogue.',
    otherwise: 'unknown',
  }),
  application: askWhich({
    meaning: 'how the topcoats go on',
    choices: ['brush-and-roller', 'spray-in-booth', 'spray-elsewhere'],
    otherwise: practice('brush-and-roller', 'what a deck gets where no booth stands'),
  }),
  wholeDeckAreaM2: ask({
    unit: 'm2',
    meaning: 'area of the whole deck',
    range: { above: 0, upTo: 2000 },
    otherwise: 'unknown',
  }),
  soundCore: askWhich({
    meaning: 'what becomes of sound core in the opening',
    description:
      'Core that zones, readings or a plug show to be sound is left and its face cleaned, or comes out with the rest.',
    choices: ['stays', 'comes-out'],
    otherwise: soundCore,
  }),
  taperRatio: ask({ ...taperRatioAsked, otherwise: taperOfWorkedSkin }),
  cutMarginMm,
  flangeMm,
};

/** Moulded nonskid is worth saving where the core under it is not rotten; anything else is laminated anew. */
function skinMethod(answers: Answers): Default<'re-bed' | 'relay'> {
  const surface = answers.of(panelQuestions.surface).value;
  const drawn = answers.of(zones);
  const isBonded = drawn.every(({ condition }) => condition.value !== 'wet-rotten');
  return surface === 'moulded-nonskid' && drawn.length > 0 && isBonded
    ? practice('re-bed', 'moulded nonskid cannot be matched, and a skin over bonded core comes off whole')
    : practice(
        'relay',
        'a new laminate gives the soundest skin; a lifted skin rarely comes off whole over rotten core',
      );
}

/** Where one symptom is all that is known, nobody has found a boundary beyond which core is sound. */
function soundCore(answers: Answers): Default<'stays' | 'comes-out'> {
  return answers.of(defectParts.evidence).value === 'single-symptom'
    ? practice('comes-out', 'one symptom shows no boundary beyond which core is sound')
    : practice('stays', 'dry core that holds to the skin below is left and reamed to, not bought anew');
}

function taperOfWorkedSkin(answers: Answers): Default {
  const worked = answers.of(access).value === 'from-below' ? innerSkinQuestions : outerSkinQuestions;
  const { value, because, cite } = usualTaper(answers.of(worked.thicknessMm).value);
  return { value, because, cite };
}
