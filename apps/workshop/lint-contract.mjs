/**
 * Four kept linters look at the API contract, and their counts are held to `test/contract/ratchet.json`: a count that got
 * worse fails, one that got better is to be written down (`--write`). They live in `.ci/linters` with a lock file of their
 * own, because they are four times what the service itself installs.
 *
 * A score or a count is a floor, never the aim: words that help nobody would raise them as well.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = join(dirname(fileURLToPath(import.meta.url)), '..', '..');
const linters = join(root, '.ci', 'linters');
const contract = join(root, 'test', 'contract', 'openapi.json');
const ratchetFile = join(root, 'test', 'contract', 'ratchet.json');
const scratch = mkdtempSync(join(tmpdir(), 'linters-'));

/** Rules that are wrong for this contract, each with its reason; they are not counted. */
const exempt = {
  owasp: [
    {
      rules: [
        'owasp:api4:2023-string-limit',
        'owasp:api4:2023-string-restricted',
        'owasp:api4:2023-array-limit',
      ],
      where: 'answers',
      because:
        'A limit in an answer that the engine does not promise breaks the validators made from it; requests state every limit that is kept.',
    },
    {
      rules: ['owasp:api8:2023-define-error-responses-401', 'owasp:api2:2023-read-restricted'],
      where: 'health',
      because: 'Health needs no key, so that it cannot answer 401.',
    },
    {
      rules: [
        'owasp:api8:2023-define-error-responses-401',
        'owasp:api8:2023-define-error-responses-500',
        'owasp:api8:2023-define-error-validation',
        'owasp:api4:2023-rate-limit-responses-429',
        'owasp:api4:2023-rate-limit',
        'owasp:api8:2023-define-cors-origin',
      ],
      where: 'not-an-answer',
      because:
        'A property that is called `responses`, and webhooks, which the service sends and does not answer, are no answers of the service.',
    },
  ],
};

/** IBM's rules that are off: nine, each with its reason. */
const ibmOff = {
  'ibm-property-casing-convention': 'camelCase is the style of the contract since its first version',
  'ibm-enum-casing-convention': 'kebab-case words are the style of the contract since its first version',
  'ibm-operationid-casing-convention': 'camelCase, as the methods of clients are',
  'ibm-path-segment-casing-convention': 'kebab-case, as addresses are read',
  'ibm-parameter-casing-convention': 'camelCase, as properties are',
  'ibm-no-array-of-arrays': 'outlines are [[x, y]], as GeoJSON has them',
  'ibm-error-content-type-is-json': 'refusals are application/problem+json (RFC 9457)',
  'ibm-error-response-schemas': 'refusals have the shape of RFC 9457',
  'no-$ref-siblings':
    'forbidden in OpenAPI 3.0 and meant in 3.1: a description for the field beside what it refers to',
};

const document = JSON.parse(readFileSync(contract, 'utf8'));

/** Schemas that no request reaches. */
function answerSchemas() {
  const reached = new Set();
  const follow = (node) => {
    if (Array.isArray(node)) return node.forEach(follow);
    if (typeof node !== 'object' || node === null) return undefined;
    const name = typeof node.$ref === 'string' ? /^#\/components\/(\w+)\/(.+)$/.exec(node.$ref) : null;
    if (name !== null && !reached.has(name[0])) {
      reached.add(name[0]);
      follow(document.components[name[1]][name[2]]);
    }
    return Object.values(node).forEach(follow);
  };
  for (const item of Object.values(document.paths))
    for (const operation of Object.values(item)) follow([operation.parameters, operation.requestBody]);
  return Object.keys(document.components.schemas).filter(
    (name) => !reached.has(`#/components/schemas/${name}`),
  );
}

const answers = new Set(answerSchemas());

/** Where a fault of a linter lies, by its path in the document. */
const places = {
  'answers': ([first, second, third]) =>
    (first === 'components' && (second === 'headers' || (second === 'schemas' && answers.has(third)))) ||
    first === 'webhooks' ||
    (first === 'paths' && second !== undefined && isInAnswer),
  'health': ([, path]) => /^\/health\//.test(path ?? ''),
  'not-an-answer': ([first]) => first === 'components' || first === 'webhooks',
};
let isInAnswer = false;

function isExempt({ code, path }) {
  isInAnswer = path.includes('responses');
  return exempt.owasp.some(({ rules, where }) => rules.includes(code) && places[where](path));
}

function tool(name, args, options = {}) {
  const { stdout, stderr, error } = spawnSync(join(linters, 'node_modules', '.bin', name), args, {
    cwd: scratch,
    encoding: 'utf8',
    maxBuffer: 512 * 1024 * 1024,
    env: { ...process.env, REDOCLY_TELEMETRY: 'off', REDOCLY_SUPPRESS_UPDATE_NOTICE: 'true' },
    ...options,
  });
  if (error !== undefined) throw error;
  return { stdout, stderr };
}

/** The JSON in what a tool writes, whatever it says before and after. */
const jsonIn = (text) =>
  JSON.parse(text.slice(text.search(/[[{]/), Math.max(text.lastIndexOf(']'), text.lastIndexOf('}')) + 1));

function redoclyCounts() {
  const { stdout } = tool('redocly', [
    'lint',
    contract,
    '--extends',
    'recommended-strict',
    '--format',
    'json',
  ]);
  const { totals } = jsonIn(stdout);
  return { errors: totals.errors, warnings: totals.warnings };
}

function redoclyScore() {
  const { stdout } = tool('redocly', ['score', contract, '--format', 'json']);
  return jsonIn(stdout).agentReadiness;
}

function spectralFaults(ruleset) {
  const file = join(linters, ruleset);
  const { stdout, stderr } = tool('spectral', ['lint', '--ruleset', file, '--format', 'json', contract]);
  if (stdout.trim() === '') throw new Error(stderr);
  return jsonIn(stdout);
}

const counted = (faults) => ({
  errors: faults.filter(({ severity }) => severity === 0).length,
  warnings: faults.filter(({ severity }) => severity === 1).length,
});

function ibmScore() {
  const script = join(linters, 'ibm.cjs');
  const { stdout, stderr } = spawnSync(process.execPath, [script, contract], {
    cwd: linters,
    encoding: 'utf8',
    maxBuffer: 512 * 1024 * 1024,
    env: { ...process.env, RULES_OFF: Object.keys(ibmOff).join() },
  });
  if (!stdout.includes('{')) throw new Error(stderr);
  return jsonIn(stdout).impactScore.categorizedSummary.overall;
}

if (!existsSync(join(linters, 'node_modules'))) {
  console.error('The linters are not installed: npm ci --prefix .ci/linters --ignore-scripts');
  process.exit(1);
}

const owasp = spectralFaults('owasp.yaml').filter((fault) => !isExempt(fault));
const found = {
  redoclyStrict: redoclyCounts(),
  redoclyScore: redoclyScore(),
  spectral: counted(spectralFaults('spectral.yaml')),
  owasp: counted(owasp),
  ibmScore: ibmScore(),
};

const ratchet = JSON.parse(readFileSync(ratchetFile, 'utf8'));
if (process.argv.includes('--write')) {
  writeFileSync(ratchetFile, `${JSON.stringify({ ...ratchet, linters: found }, undefined, 2)}\n`);
} else {
  const kept = ratchet.linters;
  const worse = [
    ...['redoclyStrict', 'spectral', 'owasp'].flatMap((name) =>
      ['errors', 'warnings'].flatMap((kind) =>
        found[name][kind] > kept[name][kind]
          ? [`${name}: ${found[name][kind]} ${kind}, were ${kept[name][kind]}`]
          : [],
      ),
    ),
    ...['redoclyScore', 'ibmScore'].flatMap((name) =>
      found[name] < kept[name] ? [`${name}: ${found[name]}, was ${kept[name]}`] : [],
    ),
  ];
  if (worse.length > 0) {
    console.error(['The contract got worse:', ...worse].join('\n'));
    process.exit(1);
  }
}
console.log(JSON.stringify(found));
if (process.argv.includes('--list'))
  for (const { code, path, message } of owasp.slice(0, 40)) console.log(code, path.join('/'), message);
