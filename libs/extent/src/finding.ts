/** Something measured that does not fit or that must be known, with its numbers; never an exception. */
export interface Finding {
  /** What was found about the extent. */
  readonly code: FindingCode;
  /** `stop`: do not cut before this is settled; `warn`: changes the work; `note`: good to know. */
  readonly severity: 'stop' | 'warn' | 'note';
  /** What was found, in a sentence. */
  readonly text: string;
  /** Numbers that the finding about the extent names. */
  readonly facts: Readonly<Record<string, string | number>>;
}

interface FindingWords {
  readonly severity: Finding['severity'];
  readonly text: string;
}

/** The only place where findings become words; names in braces are facts. */
const findingWords = {
  'no-room-for-opening': {
    severity: 'stop',
    text: 'Zone {zone} cannot be opened: it lies within {insetMm} mm of an edge, where sound deck must stay; open from the other side or rebuild the edge.',
  },
  'undercut-too-deep': {
    severity: 'warn',
    text: 'Opening {opening}: bad core runs {reachMm} mm under the skin that stays, more than the {mostMm} mm that can be reamed from the cut.',
  },
  'no-room-for-taper': {
    severity: 'warn',
    text: 'Opening {opening}: the taper needs {neededMm} mm of skin beyond the cut and has {availableMm} mm near ({xMm}, {yMm}) mm; turn the laminate up the edge or taper the new plies inside the opening.',
  },
  'cut-on-support': {
    severity: 'warn',
    text: 'Opening {opening}: a cut of {lengthMm} mm runs {awayMm} mm from the {kind} at its nearest, and there is no room to move it {clearanceMm} mm clear.',
  },
  'cut-crosses-support': {
    severity: 'note',
    text: 'Opening {opening} crosses the {kind} near ({xMm}, {yMm}) mm; keep joints of core and skin {clearanceMm} mm clear of it.',
  },
  'corner-too-tight': {
    severity: 'note',
    text: 'Opening {opening}: a corner has room for a radius of {radiusMm} mm only, under the {leastMm} mm wanted.',
  },
  'narrow-bridge': {
    severity: 'warn',
    text: 'Openings {opening} and {other} leave a bridge of {bridgeMm} mm between them, less than the {neededMm} mm that both tapers need, and cannot be made one.',
  },
  'openings-not-proven': {
    severity: 'note',
    text: 'So many openings could be joined that not every pair was tried: the best found is planned, {openings} in all, and other joinings may cost less.',
  },
  'fitting-on-cut': {
    severity: 'warn',
    text: 'The cut of opening {opening} passes under the base of {name}; take the fitting off before marking, and give it a dense insert across the joint.',
  },
  'highly-loaded-fitting': {
    severity: 'warn',
    text: '{name} is highly loaded: a repair under it needs a naval architect or a qualified surveyor before the deck is cut.',
  },
  'leak-elsewhere': {
    severity: 'warn',
    text: '{name} leaks but lies {distanceMm} mm from the nearest opening; it is re-bedded all the same, and the core round it should be probed.',
  },
  'depth-not-established': {
    severity: 'stop',
    text: 'No safe depth of cut: the {cutSkin} skin is up to {skinMm} mm, and only {roomMm} mm lie before the last {clearanceMm} mm of core on the {otherSkin} skin.',
  },
  'depth-margin-short': {
    severity: 'warn',
    text: 'The saw is set to {depthMm} mm, only {marginMm} mm past the thickest skin, to stay {clearanceMm} mm clear of the {otherSkin} skin.',
  },
  'depth-over-usual': {
    severity: 'warn',
    text: 'The saw is set to {depthMm} mm, deeper than the {usualMm} mm usual on ordinary decks; confirm the skin by test holes on the line.',
  },
  'skin-varies': {
    severity: 'warn',
    text: 'Plugs measured the skin from {leastMm} to {mostMm} mm against {statedMm} mm planned with; the thickest governs the depth of cut.',
  },
  'measured-overrules': {
    severity: 'warn',
    text: 'The record states {statedMm} mm for {what}; {plugs} of its plugs measured {measuredMm} mm. What was measured is planned with: correct the record, or measure again.',
  },
  'plugs-disagree': {
    severity: 'warn',
    text: 'Plugs measured {what} from {leastMm} to {mostMm} mm; {measuredMm} mm are planned with, so drill test holes along the cut before it is made.',
  },
  'piece-too-large': {
    severity: 'warn',
    text: 'Opening {opening}: a skin piece of {areaM2} m2, {lengthMm} mm long is more than can be bonded at once ({mostM2} m2, {mostMm} mm).',
  },
  'zone-clipped': {
    severity: 'note',
    text: 'Zone {zone} reaches {outsideM2} m2 ({share} % of it) past the panel or over a hatch; that part is left out. If the core is bad there too, draw the panel as far as the deck goes.',
  },
  'zones-smoothed': {
    severity: 'note',
    text: 'The zones were drawn with {corners} corners: gaps in them up to {gapMm} mm wide are taken in, and {planned} corners are planned with, up to {reachMm} mm outside what was drawn.',
  },
  'no-plug-in-zone': {
    severity: 'warn',
    text: 'No plug was taken in zone {zone}: sounding and meters err both ways, so take one before the deck is cut.',
  },
  'no-plug-outside-zone': {
    severity: 'note',
    text: 'No sound plug within {withinMm} mm outside zone {zone}: its boundary is not proven from outside.',
  },
  'readings-outside': {
    severity: 'note',
    text: 'Readings outside the panel are left out of the map: {count}, the farthest by {farthestMm} mm.',
  },
  'readings-contradict': {
    severity: 'note',
    text: 'Pairs of readings within {withinMm} mm of each other that say opposite things: {count}, first near ({xMm}, {yMm}) mm; both count, and the map stays undecided there.',
  },
  'plug-contradicts': {
    severity: 'warn',
    text: 'Plugs that contradict the symptoms within {withinMm} mm of them: {count}, first near ({xMm}, {yMm}) mm; the plug is proof and outweighs them there, but the same symptoms may mislead elsewhere, so take another plug where they say the same.',
  },
  'readings-unreliable': {
    severity: 'note',
    text: 'Readings marked unreliable: {count} of {all}; each keeps {share} % of its weight, and they prove nothing about the boundary.',
  },
  'readings-in-line': {
    severity: 'warn',
    text: 'All readings lie in one line: nothing is known across it, so take readings to both sides.',
  },
  'readings-all-alike': {
    severity: 'warn',
    text: 'Every reading says {verdict}: the boundary is not found, so sound outwards until the answer changes.',
  },
  'readings-sparse': {
    severity: 'warn',
    text: '{share} % of the panel lies more than {rangeMm} mm from any reading; there the map says only what is usual.',
  },
  'bad-reading-outside-zone': {
    severity: 'warn',
    text: 'Readings outside the drawn zones that say bad core: {count}, first near ({xMm}, {yMm}) mm, {distanceMm} mm from the nearest zone.',
  },
  'sound-reading-in-zone': {
    severity: 'note',
    text: 'Readings inside the drawn zones that say sound core: {count}, first near ({xMm}, {yMm}) mm.',
  },
  'evidence-overstated': {
    severity: 'warn',
    text: 'The record says {stated}; the readings amount to {found}, which is used.',
  },
  'nothing-to-open': {
    severity: 'warn',
    text: 'Opening now would cost more than it is likely to save, so nothing is opened, but bad core is not ruled out: {expectedM2} m2 is to be expected and up to {upToM2} m2 possible (one in ten has more). The likeliest place is ({xMm}, {yMm}) mm with {probability} %. {next}',
  },
  'readings-worth-taking': {
    severity: 'note',
    text: 'Worth taking before the deck is cut: {kinds}, about {minutes} min in all. They are expected to save {worthH} h of work, and to narrow the range of bad core from {nowM2} to {afterM2} m2.',
  },
  'readings-enough': {
    severity: 'note',
    text: 'Enough is read: further readings are expected to change the work by less than the time they take.',
  },
  'growth-capped': {
    severity: 'note',
    text: 'In {share} % of the cases the damage would outgrow the panel; it is held to the panel, so probe the panels beside it.',
  },
} as const satisfies Readonly<Record<string, FindingWords>>;

export type FindingCode = keyof typeof findingWords;

export function finding(code: FindingCode, facts: Readonly<Record<string, string | number>>): Finding {
  const { severity, text } = findingWords[code];
  const filled = text.replace(/\{(\w+)\}/g, (_, name: string) => String(facts[name] ?? '(not stated)'));
  return { code, severity, facts, text: filled.charAt(0).toUpperCase() + filled.slice(1) };
}

/** Millimetres as a tape reads them. */
export const toWholeMm = (value: number): number => Math.round(value) + 0;

export const roundTo = (value: number, decimals: number): number => Number(value.toFixed(decimals)) + 0;
