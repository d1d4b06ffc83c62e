import type { Method } from '../method.js';
import { dryInPlace, inject, reamAndPot, rebed } from './closed.js';
import { edgeRailOff, edgeRoutAndFill, edgeWrap } from './edge.js';
import { closeLeak } from './leak.js';
import { aboveNewSkin, aboveOldSkin, fromBelow, solidSpot, wholePanel } from './opened.js';

/** Every rung, in the order in which a repairer considers them. */
export const methods: readonly Method[] = [
  closeLeak,
  rebed,
  reamAndPot,
  dryInPlace,
  inject,
  aboveOldSkin,
  aboveNewSkin,
  fromBelow,
  edgeRoutAndFill,
  edgeWrap,
  edgeRailOff,
  wholePanel,
  solidSpot,
];
