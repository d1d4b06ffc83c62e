import { MOST_CORNERS } from '#lib/geometry';
import { problemWords } from '#lib/kernel';
import { permissions, roles, rolesThatMay, scopes, type Permission } from '../access/roles.js';
import { USUAL_BODY_BYTES } from '../edge/body.js';
import { MOST_ON_PAGE, USUAL_ON_PAGE } from '../edge/dto/query.js';
import { problemKinds } from '../edge/problems.js';
import { MOST_PHOTOGRAPHS, photographLimits } from '../estimates/photograph-limits.js';
import { logoLimits } from '../letterhead/logo-limits.js';
import { settings } from '../settings/configuration.js';

/** Pages made from the values that the service itself goes by, so that they cannot say something else. */
export const madePages: Readonly<Record<string, () => string>> = {
  'roles-and-limits': rolesAndLimits,
  'settings': settingsPage,
  'refusals': refusals,
};

const MADE = 'Made from the values of the service; a test holds this page to them.';

function rolesAndLimits(): string {
  return page('Roles and limits', [
    MADE,
    'A key has roles, and no role reaches beyond the organisation of its key. An integrator may do what its scopes name. A publishable key and the secret of one estimate have no role: they make an estimate, read and revise that one, and add photographs to it.',
    table(
      ['permission', ...roles],
      permissionNames.map((permission) => [
        code(permission),
        ...roles.map((role) => allowed(permission, role)),
      ]),
    ),
    'x: has it. scope: can be given it by name.',
    '## Limits',
    table(
      ['what', 'at most'],
      [
        [
          'requests of one key in a minute',
          `${settings.REQUESTS_PER_MINUTE.otherwise} (${code('REQUESTS_PER_MINUTE')})`,
        ],
        [
          'requests of an organisation in a minute',
          `${settings.ORGANISATION_REQUESTS_PER_MINUTE.otherwise} (${code('ORGANISATION_REQUESTS_PER_MINUTE')})`,
        ],
        [
          'a request, from its first byte to its answer',
          `${settings.REQUEST_TIMEOUT_MS.otherwise} ms (${code('REQUEST_TIMEOUT_MS')})`,
        ],
        [
          'an Idempotency-Key is remembered',
          `${settings.IDEMPOTENCY_KEY_DAYS.otherwise} days (${code('IDEMPOTENCY_KEY_DAYS')})`,
        ],
        ['body of a request', `${USUAL_BODY_BYTES} bytes, pictures apart`],
        ['entries on a page of a list', `${MOST_ON_PAGE}; ${USUAL_ON_PAGE} when not said`],
        ['corners of an outline', String(MOST_CORNERS)],
        [
          'photographs of an estimate',
          `${MOST_PHOTOGRAPHS}, each ${photographLimits.mostBytes} bytes and ${photographLimits.mostPixelsASide} pixels a side`,
        ],
        ['logo', `${logoLimits.mostBytes} bytes and ${logoLimits.mostPixelsASide} pixels a side`],
      ],
    ),
    'What is left of the minute stands in the `RateLimit` header; a refusal says in `Retry-After` how long to wait.',
  ]);
}

const permissionNames: readonly Permission[] = typedKeys(permissions);

function allowed(permission: Permission, role: (typeof roles)[number]): string {
  if (!rolesThatMay(permission).includes(role)) return '';
  return role === 'integrator' && scopes.some((scope) => scope === permission) ? 'scope' : 'x';
}

function settingsPage(): string {
  return page('Settings', [
    MADE,
    'The service reads them from its environment once, when it starts; it names everything wrong with them at once and does not start.',
    table(
      ['setting', 'without it', 'means'],
      typedKeys(settings).map((name) => {
        const setting = settings[name];
        const range = 'range' in setting ? ` From ${setting.range.from} to ${setting.range.upTo}.` : '';
        return [
          code(name),
          'otherwise' in setting ? code(setting.otherwise) : '',
          `${setting.meaning}${range}`,
        ];
      }),
    ),
    'Secrets (`DATABASE_URL`, `MIGRATION_DATABASE_URL`, `FIRST_KEY`) have no default and are never logged.',
  ]);
}

function refusals(): string {
  return page('Refusals', [
    MADE,
    'Every refusal is a problem document (RFC 9457): `type` ends in the kind, `status` is that of HTTP, `errors` holds one entry for each fault with its `code`, the place (`pointer`, `parameter`, `header`, or `row` and `column` of a sheet) and a sentence.',
    '## Kinds',
    table(
      ['kind', 'status', 'means'],
      typedKeys(problemKinds).map((kind) => [
        code(kind),
        String(problemKinds[kind].status),
        problemKinds[kind].title,
      ]),
    ),
    'Worth sending again as it was: 408, 429 and 503, after `Retry-After`. Worth reading again first: 409 and 412. The others come back the same.',
    '## Codes',
    'Names in braces are put in from the request. Codes are promises: they are added, never renamed.',
    table(
      ['code', 'means', 'is said so'],
      typedKeys(problemWords).map((name) => [
        code(name),
        problemWords[name].title,
        // The nearest of the words that were to choose from is said only where one is near.
        problemWords[name].detail.replace('{nearest}', ''),
      ]),
    ),
  ]);
}

const page = (title: string, parts: readonly string[]): string =>
  `${[`# ${title}`, ...parts].join('\n\n')}\n`;

const code = (text: string): string => `\`${text}\``;

const table = (heads: readonly string[], rows: readonly (readonly string[])[]): string =>
  [heads, heads.map(() => '---'), ...rows.map((row) => row.map((cell) => cell.replaceAll('|', '\\|')))]
    .map((cells) => `| ${cells.join(' | ')} |`)
    .join('\n');

function typedKeys<T extends object>(values: T): readonly (keyof T & string)[] {
  const isKey = (key: string): key is keyof T & string => Object.hasOwn(values, key);
  return Object.keys(values).filter(isKey);
}
