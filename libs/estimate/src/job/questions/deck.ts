import {
  ask,
  askCode,
  askList,
  askOutline,
  askOutlines,
  askPart,
  askPlace,
  askSome,
  askText,
  askWhether,
  askWhich,
  cavityAsked,
  coreThicknessAsked,
  fromMemory,
  practice,
  skinThicknessAsked,
  type Answers,
} from '#lib/asking';
import { liningKinds } from '#lib/methods';

const edgeKinds = ['hull-joint', 'coaming', 'hatch', 'toe-rail', 'bulkhead', 'beam', 'other'] as const;

export const supportQuestions = {
  kind: askWhich({
    meaning: 'what it is',
    description: 'What bears the panel along the line.',
    choices: edgeKinds,
  }),
  from: askPlace({ meaning: 'where it starts' }),
  to: askPlace({ meaning: 'where it ends' }),
};

export const overlayQuestions = {
  kind: askWhich({
    meaning: 'kind of overlay',
    description: 'What lies on the deck and must come off first.',
    choices: ['screwed-planks', 'glued-planks', 'synthetic'],
  }),
  thicknessMm: ask({
    unit: 'mm',
    meaning: 'thickness of the overlay',
    note: 'Screws, caulk and the step that is left follow from it.',
    range: { above: 0, upTo: 60 },
  }),
  then: askWhich({
    meaning: 'what becomes of the overlay',
    note: 'Laid again, replaced by paint, left to others by the wish of the customer, or not touched at all: then the deck is mended from below alone.',
    choices: ['back', 'paint', 'not-included', 'stays'],
    otherwise: practice('paint', 'most decks that lose their planks are painted'),
  }),
};

export const panelQuestions = {
  name: askText({ meaning: 'name of the panel', atMost: 100, otherwise: 'unknown' }),
  outline: askOutline({
    meaning: 'the edge of the panel, from support to support',
    example: [
      [0, 0],
      [1600, 0],
      [1600, 1200],
      [0, 1200],
    ],
  }),
  holes: askOutlines({
    meaning: 'hatches and other openings in the deck',
    least: 0,
    most: 100,
    otherwise: 'unknown',
  }),
  supports: askList({
    meaning: 'Lines the deck rests on: no joint of core or skin over them',
    least: 0,
    most: 100,
    of: supportQuestions,
    otherwise: 'none',
  }),
  edges: askWhich({
    meaning: 'how the panel is held at its edges',
    choices: ['simply-supported', 'clamped'],
    otherwise: practice(
      'simply-supported',
      'gives the larger deflection, so the comparison errs on the safe side',
    ),
  }),
  camberRadiusMm: ask({
    unit: 'mm',
    meaning: 'radius of the camber',
    description: 'Radius of the camber; absent means flat.',
    range: { above: 300, upTo: 1_000_000 },
    otherwise: 'unknown',
  }),
  under: askSome({
    meaning: 'what lies below',
    description: 'What lies below: each brings its caution and its checks.',
    choices: ['wiring', 'fuel-tank', 'water-tank', 'hoses', 'lining', 'insulation'],
    otherwise: 'unknown',
  }),
  accessBelow: askWhich({
    meaning: 'access from below',
    choices: ['open', 'lined', 'none'],
    otherwise: practice(
      'lined',
      'most decks have a lining that comes down before work and goes back after it',
    ),
  }),
  isInnerSkinAirtight: askWhether({
    meaning: 'whether the inner skin is airtight',
    note: 'Shown by a drop test with every hole sealed from below; a vacuum bag needs it.',
    otherwise: 'unknown',
  }),
  surface: askWhich({
    meaning: 'surface of the deck',
    choices: ['smooth-paint', 'painted-nonskid', 'moulded-nonskid', 'planked', 'bonded-mat'],
    otherwise: practice('painted-nonskid', 'the usual surface of an older deck'),
  }),
  overlay: askPart({
    meaning: 'what lies on the deck',
    description:
      'What lies on the deck and must come off before the skin is cut; asked for where the surface is planked.',
    of: overlayQuestions,
    otherwise: 'unknown',
  }),
  outerSkinState: askWhich({
    meaning: 'state of the outer skin',
    description: 'Whether the outer skin is whole, or cracked or crazed.',
    choices: ['whole', 'cracked'],
    otherwise: 'unknown',
  }),
  lining: askWhich({
    meaning: 'kind of lining below',
    note: 'A bonded moulded liner is no way through.',
    choices: liningKinds,
    otherwise: 'unknown',
  }),
  workingHeightMm: ask({
    unit: 'mm',
    meaning: 'height clear for a person to work overhead',
    range: { from: 0, upTo: 5000 },
    otherwise: 'unknown',
  }),
  coreEndsMm: ask({
    unit: 'mm',
    meaning: 'where the core ends before the edge of the deck',
    note: 'From the edge inwards; 0 where the core runs right out.',
    range: { from: 0, upTo: 500 },
    otherwise: 'unknown',
  }),
};

export const plyQuestions = {
  material: askCode({
    meaning: 'reinforcement',
    description: 'Code of the fabric that the ply is of, in the catalogue.',
  }),
};

const skinQuestions = (skin: string) => ({
  thicknessMm: ask({ ...skinThicknessAsked, meaning: `${skin} thickness` }),
  plies: askList({
    meaning: 'known plies',
    description: 'Known plies, from the face of the skin inwards.',
    least: 0,
    most: 60,
    of: plyQuestions,
    otherwise: 'unknown',
  }),
});

export const outerSkinQuestions = skinQuestions('outer skin');
export const innerSkinQuestions = skinQuestions('inner skin');

const OLD_BOND_LINES_MM = 1;

const thicknessMm = ask({ ...coreThicknessAsked, meaning: 'old core thickness' });

export const coreQuestions = {
  thicknessMm,
  cavityMm: ask({
    ...cavityAsked,
    otherwise: (answers: Answers) => ({
      value: answers.of(thicknessMm).value + OLD_BOND_LINES_MM,
      because: 'the old core was bedded on a line of about half a millimetre at each face',
      cite: fromMemory,
    }),
  }),
  coreType: askWhich({
    meaning: 'kind of the old core',
    choices: ['end-grain-balsa', 'cross-linked-foam', 'san-foam', 'linear-foam', 'marine-plywood'],
    otherwise: practice('end-grain-balsa', 'the commonest deck core; a plug would tell'),
  }),
  densityKgPerM3: ask({
    unit: 'kg/m3',
    meaning: 'density of the old core',
    range: { above: 20, upTo: 1200 },
    otherwise: 'unknown',
  }),
};

/** Parts of the record that describe the deck. */
export const deckParts = {
  panel: askPart({
    meaning: 'the panel of deck',
    description: 'The panel of deck: its edge, what holds it and what lies under it.',
    of: panelQuestions,
  }),
  outerSkin: askPart({
    meaning: 'the outer skin',
    description: 'The skin that is walked on, as it was found.',
    of: outerSkinQuestions,
  }),
  innerSkin: askPart({
    meaning: 'the inner skin',
    description: 'The skin below the core, as it was found.',
    of: innerSkinQuestions,
  }),
  core: askPart({
    meaning: 'the old core',
    description: 'The old core between the skins, as it was built.',
    of: coreQuestions,
  }),
};
