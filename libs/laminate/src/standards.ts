import { commonPractice as practice, fromMemory } from '#lib/asking';
import type { Standard } from './assumption.js';

/** What is taken where nobody says, each once: the questions, the answers and the list of assumptions read it here. */
export const standards = {
  method: {
    value: 'class-bv',
    meaning: 'method for the properties of plies',
    shown: 'the BV set',
    because: 'it covers mat, woven and unidirectional in three resins, with strengths',
    cite: { source: 'BV-NR546-2022', clause: 'section 5' },
  },
  flush: {
    value: { proudUpToMm: 0.5, lowUpToMm: 1 },
    meaning: 'level of the new skin',
    shown: '0.5 mm proud to 1 mm low',
    because: 'what is faired without a visible hump, and what fairing fills',
    cite: practice,
  },
  mostKinds: {
    value: 3,
    meaning: 'most kinds of fabric in one skin',
    shown: '3',
    because: 'fewer rolls, fewer mistakes',
    cite: practice,
  },
  smallestStepMm: {
    value: 5,
    meaning: 'smallest step between ply edges, on average',
    shown: '5 mm',
    because: 'smaller steps cannot be laid true by hand',
    cite: practice,
  },
  worstPrintThrough: {
    value: 1,
    meaning: 'most that the outer ply may print through',
    shown: '1 of 3',
    because: 'the pattern of roving shows through gloss paint',
    cite: practice,
  },
  order: {
    value: 'smallest-first',
    meaning: 'order of the plies',
    shown: 'the smallest first',
    because: 'both orders are in use, and no published test decides between them for decks',
    cite: practice,
  },
  overlapMm: {
    value: 50,
    meaning: 'overlap of strips of one ply',
    shown: '50 mm',
    because:
      'edges of successive reinforcements stagger by 50 mm, and seams of the next ply keep away from them',
    cite: { source: 'LR-SSC-2020', clause: 'Pt 8 Ch 2, section 4' },
  },
  endAllowanceMm: {
    value: 50,
    meaning: 'trimmed off each strip',
    shown: '50 mm',
    because: 'an inch at either end',
    cite: practice,
  },
  wetLimitMm: {
    value: 4,
    meaning: 'most laid wet on wet',
    shown: '4 mm',
    because: 'solid hand lay-up of 4 to 6 mm in one go is where overheating is reported',
    cite: fromMemory,
  },
  kerfMm: {
    value: 4,
    meaning: 'width of the cut',
    shown: '4 mm',
    because: 'a circular saw with a glass-cutting blade',
    cite: practice,
  },
  longestStripMm: {
    value: 2000,
    meaning: 'longest strip',
    shown: '2 m',
    because: 'as long as two people lay wet before it kicks',
    cite: practice,
  },
} as const satisfies Readonly<Record<string, Standard & { readonly value: unknown }>>;
