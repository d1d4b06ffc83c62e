import path from 'node:path';
import { aboutImports } from './about-imports.mjs';

/**
 * Floors of the service, lowest first. A module may import only modules on lower floors; the files that stand directly in
 * `apps/api/src` put the service together and may import all of them, and nobody imports those files.
 */
export const shellFloors = [
  ['settings'],
  ['edge'],
  ['persistence', 'schemas', 'inputs', 'health', 'workbench', 'pictures'],
  ['idempotency'],
  ['audit'],
  ['access'],
  ['events'],
  ['catalogue', 'operations', 'documents'],
  ['letterhead'],
  ['estimating'],
  ['estimates'],
  ['guide'],
];

const SHELL = 'apps/api/src/';

/** The module that a file of the service belongs to; '' for the files that put it together; undefined elsewhere. */
function moduleOf(file) {
  const at = file.replaceAll(path.sep, '/').lastIndexOf(SHELL);
  if (at < 0) return undefined;
  const [first, ...rest] = file.slice(at + SHELL.length).split('/');
  return rest.length === 0 ? '' : first;
}

const floorOf = (module) => shellFloors.findIndex((floor) => floor.includes(module));

const floors = aboutImports(
  {
    noFloor: '{{module}} stands on no floor: give it one in shellFloors.',
    notBelow: '{{from}} may import only lower floors; {{to}} is not below it.',
    house: 'The files that put the service together are imported by nobody.',
  },
  (file, specifier) => {
    const from = moduleOf(file);
    if (from === undefined || from === '' || !specifier.startsWith('.')) return undefined;
    if (floorOf(from) < 0) return { messageId: 'noFloor', data: { module: from } };
    const to = moduleOf(path.resolve(path.dirname(file), specifier));
    if (to === from) return undefined;
    if (to === undefined || to === '') return { messageId: 'house' };
    return floorOf(to) >= 0 && floorOf(to) < floorOf(from)
      ? undefined
      : { messageId: 'notBelow', data: { from, to } };
  },
);

const ownRepository = aboutImports(
  { foreign: 'A repository is its own module’s business; ask {{to}} for a function instead.' },
  (file, specifier) => {
    if (!/\.repository\.js$/.test(specifier)) return undefined;
    const to = moduleOf(path.resolve(path.dirname(file), specifier));
    return to === moduleOf(file) ? undefined : { messageId: 'foreign', data: { to } };
  },
);

const TYPEORM_AT_HOME =
  /(\/persistence\/[^/]+|\.entity|\.entities|\.repository|\.module)\.ts$|\/migrations\//;

const typeormAtHome = aboutImports(
  { astray: 'TypeORM is for persistence, entities, repositories and modules.' },
  (file, specifier) =>
    /^(typeorm|@nestjs\/typeorm|pg)$/.test(specifier) && !TYPEORM_AT_HOME.test(file.replaceAll(path.sep, '/'))
      ? { messageId: 'astray' }
      : undefined,
);

export const shellRules = [
  {
    files: [`${SHELL}**/*.ts`],
    ignores: ['**/*.spec.ts'],
    plugins: {
      shell: {
        rules: { floors, 'own-repository': ownRepository, 'typeorm-at-home': typeormAtHome },
      },
    },
    rules: { 'shell/floors': 'error', 'shell/own-repository': 'error', 'shell/typeorm-at-home': 'error' },
  },
];
