import { afterAll, beforeAll, describe, expect, test } from '@jest/globals';
import { execFileSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { startService, TEST_KEY, type TestService } from './service.js';

const root = path.join(import.meta.dirname, '../..');
const textOf = (file: string): string => readFileSync(path.join(root, file), 'utf8');

/** Blocks between fences, with the language that stands at the opening one. */
const blocksOf = (file: string): readonly { readonly language: string; readonly text: string }[] =>
  [...textOf(file).matchAll(/^```(\w*)\n([\s\S]+?)^```$/gm)].map(([, language, text]) => ({
    language,
    text,
  }));

let service: TestService;
let folder: string;
let stored = '';
beforeAll(async () => {
  service = await startService();
  folder = mkdtempSync(path.join(tmpdir(), 'kp-readme-'));
});
afterAll(async () => {
  rmSync(folder, { recursive: true, force: true });
  await service.stop();
});

const here = (text: string): string => text.replaceAll('http://127.0.0.1:3000', service.url);

/** A command line of the README as a shell runs it. */
const run = (command: string, environment: Readonly<Record<string, string>> = {}): string =>
  execFileSync('sh', ['-c', here(command)], {
    cwd: folder,
    encoding: 'utf8',
    env: { ...process.env, KEY: TEST_KEY, ...environment },
  });

describe('what the README shows', () => {
  const blocks = blocksOf('README.md');
  const requests = blocks.filter(({ text }) => text.startsWith('curl '));

  test('the first request stores an estimate', () => {
    const { id, estimate } = JSON.parse(run(requests[0].text));
    stored = id;
    expect(Number(estimate.summary.total.amount)).toBeGreaterThan(0);
    expect(estimate.assumptions.length).toBeGreaterThan(10);
    expect(requests).toHaveLength(2);
  });

  test('a figure of it says why', () => {
    const why = run(requests[1].text, { ID: stored });
    for (const part of ['"catalogue"', 'mean hours per cut-m', 'saw cut', 'unit rate', 'entered'])
      expect(why).toContain(part);
  });

  test('the program prints the id and the price', () => {
    const [program] = blocks.filter(({ language }) => language === 'ts');
    expect(programPrints(program.text)).toMatch(/^\S+ \{ amount: '\d+\.\d\d', currency: '[A-Z]{3}' \}/);
  });

  test('the program of the client prints what it says and lists what is stored', () => {
    const [program] = blocksOf('libs/sdk/README.md').filter(({ language }) => language === 'ts');
    const printed = programPrints(program.text.replace("'kp_…'", "process.env.KEY ?? ''"));
    expect(printed).toContain('amount');
    expect(printed).toContain(stored);
  });
});

/** The snippet in a folder of its own, against the client as it is packed. */
function programPrints(snippet: string): string {
  if (!existsSync(path.join(folder, 'node_modules'))) {
    execFileSync(process.execPath, [path.join(root, 'apps/workshop/pack-sdk.mjs'), '--pack', folder], {
      cwd: root,
    });
    writeFileSync(path.join(folder, 'package.json'), '{ "name": "reader", "private": true }');
    const tarball = readdirSync(folder).find((name) => name.endsWith('.tgz'));
    const install = ['install', '--offline', '--no-audit', '--no-fund', '--loglevel=error'];
    execFileSync('npm', [...install, `./${tarball}`], { cwd: folder });
  }
  writeFileSync(path.join(folder, 'program.mjs'), here(snippet));
  return run('node program.mjs');
}

describe('commands that pages name', () => {
  const pages = execFileSync('git', ['ls-files', '*.md', ':!test/reference', ':!test/bench'], {
    cwd: root,
    encoding: 'utf8',
  })
    .trim()
    .split('\n');
  const named = (pattern: RegExp): readonly string[] => [
    ...new Set(pages.flatMap((page) => [...textOf(page).matchAll(pattern)].map(([, name]) => name))),
  ];
  const { scripts } = JSON.parse(textOf('package.json')) as { scripts: Record<string, string> };

  test('every script is one of the package', () => {
    const asked = named(/npm run (?:-s )?([a-z][\w-]*)/g);
    expect(asked.length).toBeGreaterThan(4);
    expect(asked.filter((name) => !(name in scripts))).toEqual([]);
  });

  test('every program is there', () => {
    const asked = named(/node ((?:dist|apps|libs|test)\/[\w./-]+\.m?js)/g);
    expect(asked.length).toBeGreaterThan(2);
    const isThere = (file: string): boolean =>
      existsSync(path.join(root, file.replace(/^dist\/(.+)\.js$/, '$1.ts'))) ||
      existsSync(path.join(root, file));
    expect(asked.filter((file) => !isThere(file))).toEqual([]);
  });

  test('the two commands of the README are what the checks of the project run', () => {
    const [first] = blocksOf('README.md');
    const commands = first.text
      .trim()
      .split('\n')
      .map((line) => line.replace(/\s*#.*/, ''));
    expect(commands).toEqual(['npm run demo', 'npm test']);
    const checks = textOf('.ci/run');
    for (const command of ['npm run -s demo', 'npm test']) expect(checks).toContain(command);
  });
});
