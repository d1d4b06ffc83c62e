/**
 * Four kept linters look at the API contract, and their counts are held to `test/contract/ratchet.json`: a count that got
 * worse fails, one that got better is to be written down (`--write`). They live in `.ci/linters` with a lock file of their
 * own, because they are four times what the service itself installs.
 *
 * A score or a count is a floor, never the aim: words that help nobody would raise them as well.
 */
import { execFile } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';

const root = join(dirname(fileURLToPath(import.meta.url)), '..', '..');
const linters = join(root, '.ci', 'linters');
const contract = join(root, 'test', 'contract', 'openapi.json');
const ratchetFile = join(root, 'test', 'contract', 'ratchet.json');
const scratch = mkdtempSync(join(tmpdir(), 'linters-'));

/** Rules that are wrong for this contract, each with its reason; they are not counted. */
const exempt = {
  owasp: [
    {
      rules: ['owasp:api8:2023-define-error-responses-401', 'owasp:api2:2023-read-restricted'],
      where: 'health',
      because: 'Health needs no key, so that it cannot answer 401.',
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

/** Where a fault of a linter lies, by its path in the document. */
const places = { health: ([, path]) => /^\/health\//.test(path ?? '') };

const isExempt = ({ code, path }) =>
  exempt.owasp.some(({ rules, where }) => rules.includes(code) && places[where](path));

const execute = promisify(execFile);

/** What a program writes; a linter that found something ends with a status of its own. */
async function output(program, args, options) {
  const settings = { encoding: 'utf8', maxBuffer: 512 * 1024 * 1024, ...options };
  const { stdout, stderr } = await execute(program, args, settings).catch((failure) => failure);
  if (typeof stdout !== 'string' || stdout.trim() === '')
    throw new Error(`${program} said nothing: ${stderr}`);
  return stdout;
}

const quiet = { ...process.env, REDOCLY_TELEMETRY: 'off', REDOCLY_SUPPRESS_UPDATE_NOTICE: 'true' };
const tool = (name, args) =>
  output(join(linters, 'node_modules', '.bin', name), args, { cwd: scratch, env: quiet });

/** The JSON in what a tool writes, whatever it says before and after. */
const jsonIn = (text) =>
  JSON.parse(text.slice(text.search(/[[{]/), Math.max(text.lastIndexOf(']'), text.lastIndexOf('}')) + 1));

async function redoclyCounts() {
  const args = ['lint', contract, '--extends', 'recommended-strict', '--format', 'json'];
  const { errors, warnings } = jsonIn(await tool('redocly', args)).totals;
  return { errors, warnings };
}

const redoclyScore = async () =>
  jsonIn(await tool('redocly', ['score', contract, '--format', 'json'])).agentReadiness;

const spectralFaults = async (ruleset, document = contract) =>
  jsonIn(await tool('spectral', ['lint', '--ruleset', join(linters, ruleset), '--format', 'json', document]));

/**
 * A copy in which no member of a schema or of an example is called `responses`: the rules of OWASP look for that name
 * wherever it stands, and take what a panel answers to a load for what the service answers to a request.
 */
function withoutLikeNames() {
  const { paths, components, ...rest } = JSON.parse(readFileSync(contract, 'utf8'));
  const { responses, ...parts } = components;
  const renamed = (value) => JSON.parse(JSON.stringify(value).replaceAll('"responses"', '"responses_"'));
  const withRenamedExamples = (key, value) =>
    (key === 'example' || key === 'examples') && typeof value === 'object' ? renamed(value) : value;
  const copy = join(scratch, 'openapi-for-owasp.json');
  const all = { ...rest, paths, components: { ...renamed(parts), responses } };
  writeFileSync(copy, JSON.stringify(JSON.parse(JSON.stringify(all), withRenamedExamples)));
  return copy;
}

const counted = (faults) => ({
  errors: faults.filter(({ severity }) => severity === 0).length,
  warnings: faults.filter(({ severity }) => severity === 1).length,
});

async function ibmScore() {
  const env = { ...process.env, RULES_OFF: Object.keys(ibmOff).join() };
  const text = await output(process.execPath, [join(linters, 'ibm.cjs'), contract], { cwd: linters, env });
  return jsonIn(text).impactScore.categorizedSummary.overall;
}

if (!existsSync(join(linters, 'node_modules'))) {
  console.error('The linters are not installed: npm ci --prefix .ci/linters --ignore-scripts');
  process.exit(1);
}

// The two slow ones beside each other, since each keeps one core; the quick ones after the quicker of them.
const [ibm, owasp, spectral, strict, score] = await Promise.all([
  ibmScore(),
  ...chained([
    () => spectralFaults('owasp.yaml', withoutLikeNames()),
    () => spectralFaults('spectral.yaml'),
    redoclyCounts,
    redoclyScore,
  ]),
]);
const faults = owasp.filter((fault) => !isExempt(fault));
const found = {
  redoclyStrict: strict,
  redoclyScore: score,
  spectral: counted(spectral),
  owasp: counted(faults),
  ibmScore: ibm,
};

/** Each begins when the one before has ended. */
function chained(works) {
  let before = Promise.resolve();
  return works.map((work) => (before = before.then(work)));
}

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
  for (const { code, path, message } of faults.slice(0, 40)) console.log(code, path.join('/'), message);
