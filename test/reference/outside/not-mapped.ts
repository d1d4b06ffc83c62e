/** Jobs that were read and give nothing that could be put beside an estimate, each with the reason. */
export const notMapped: readonly { readonly what: string; readonly why: string }[] = [
  { what: 'Deck repair by a yard, 50 h at 70, seven days, 2014', why: 'neither area nor scope is told' },
  {
    what: 'Underside of a cabin roof glassed, 2011',
    why: 'no core work: 12.5 m2 of fabric took 18.9 l of epoxy, 1.5 l a square metre',
  },
  {
    what: 'Strip of 2 m x 15 cm along a genoa track, 2005',
    why: 'no hours, price or days: "the better part of a season"',
  },
  { what: "Owner's budget for 2.4 m2 on a 44-ft deck", why: 'a plan without a year: 500 of materials' },
  {
    what: 'Side deck of 1 x 8 ft through chainplates, 2011',
    why: 'no figure but that haul-out and mast out were forced',
  },
  {
    what: 'Deck and cabin top of a 30-ft sloop, 30,000 declined',
    why: 'neither area, year nor scope of the finish',
  },
  { what: '24-ft racer, repairs and refinish, 2023', why: 'whole boat with keel and hull; no area' },
  {
    what: 'Winch area of 15 x 9 in, 2013',
    why: 'one of many jobs of a winter: no hours or price of its own',
  },
  { what: 'Aft deck of a 28-ft cruiser, bid of 10,000, 2019', why: 'plywood deck and frames, no sandwich' },
  {
    what: 'Planks of a 42-ft deck replaced, four prices; of a 50-ft deck, 850 h',
    why: 'a covering laid anew, no core',
  },
  { what: 'Hull, deck and interior of an 18-ft boat painted in 67.5 h, 2016', why: 'painted area not told' },
  { what: 'Patch at the shrouds, 0.12 m2 and going on, 2012', why: 'under way: no hours' },
  { what: 'Stanchions, then all wet areas a year later, 2016', why: 'growth without areas' },
  {
    what: 'Lid of an anchor locker on the bench, 2018',
    why: 'no hours; three days in the sun dried it, four fifths of the time were cures',
  },
  {
    what: 'Chainplate from below, left open for more than a year, 2014',
    why: 'the owner, not the work, set the time',
  },
  {
    what: 'Bonded wet core drilled and dried for 190 days, 2012',
    why: 'drying of core that stays; the days of an opened deck are another figure',
  },
  { what: 'Catamaran wet at every fitting, over 50,000', why: 'neither area, year nor currency' },
  { what: 'Tapered repair of a crack, 10 to 30 h, 2007', why: 'single skin, no area' },
  {
    what: 'Planks off half of a 37-ft deck in more than 20 h; refurbishing for 20,000',
    why: 'a covering, no area',
  },
  {
    what: 'Cockpit sole, a foot more than tapped; swim platform, five times',
    why: 'growth without areas; see the growth of the foredeck',
  },
  { what: 'Plywood squares out of a cockpit sole in several hours', why: 'hours in words, no area' },
];
