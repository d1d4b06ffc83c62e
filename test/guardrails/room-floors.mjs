import path from 'node:path';
import { aboutImports } from './about-imports.mjs';

/** Floors of the house, lowest first. A room may import only rooms on lower floors. */
export const floors = [
  ['kernel'],
  ['units', 'money', 'geometry'],
  ['provenance', 'catalogue'],
  ['asking'],
  ['work', 'nesting'],
  ['cure'],
  ['extent', 'coring', 'laminate', 'panel', 'resin', 'press', 'calendar', 'cautions'],
  ['methods'],
  ['takeoff'],
  ['costing'],
  ['estimate'],
  ['drawings'],
];

/**
 * Edges inside one floor that are decisions, each explained in the README of the room that has it.
 * @type {Record<string, readonly string[]>}
 */
export const sameFloorEdges = {
  geometry: ['units'],
  catalogue: ['provenance'],
};

/** @param {string} room */
const floorOf = (room) => floors.findIndex((floor) => floor.includes(room));

/**
 * @param {string} from
 * @param {string} to
 */
const isBelow = (from, to) => floorOf(to) >= 0 && floorOf(to) < floorOf(from);

/** The room that a file belongs to. @param {string} file */
const roomOf = (file) => /(?:^|\/)libs\/([^/]+)\/src(?:\/|$)/.exec(file)?.[1];

const floorsRule = aboutImports(
  {
    noFloor: '{{room}} stands on no floor: give it one in floors.',
    notBelow: '{{from}} may import only lower floors; {{to}} is not below it.',
    ownIndex: 'Inside a room use relative imports.',
    inside: 'Import a room through its index only.',
    leaves: 'A relative import must not leave the room.',
  },
  (file, specifier) => {
    const from = roomOf(file);
    if (from === undefined) return undefined;
    if (floorOf(from) < 0) return { messageId: 'noFloor', data: { room: from } };
    if (specifier.startsWith('.')) return leavesRoom(from, file, specifier);
    const [, to, rest] = /^#lib\/([^/]+)(\/.*)?$/.exec(specifier) ?? [];
    return to === undefined ? undefined : edgeFault(from, to, rest !== undefined);
  },
);

/**
 * @param {string} room
 * @param {string} file
 * @param {string} specifier
 */
function leavesRoom(room, file, specifier) {
  const target = path.posix.join(path.posix.dirname(file), specifier);
  return roomOf(target) === room ? undefined : { messageId: 'leaves' };
}

/**
 * @param {string} from
 * @param {string} to
 * @param {boolean} isInside
 */
function edgeFault(from, to, isInside) {
  if (to === from) return { messageId: 'ownIndex' };
  if (isInside) return { messageId: 'inside' };
  const isAllowed = isBelow(from, to) || (sameFloorEdges[from] ?? []).includes(to);
  return isAllowed ? undefined : { messageId: 'notBelow', data: { from, to } };
}

export const directionRules = [
  {
    files: ['libs/*/src/**/*.ts'],
    ignores: ['**/*.spec.ts', 'libs/sdk/**', 'libs/deck-element/**'],
    plugins: { rooms: { rules: { floors: floorsRule } } },
    rules: { 'rooms/floors': 'error' },
  },
];
