import { execFileSync } from 'node:child_process';
import { cpSync, existsSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { describe, expect, test } from '@jest/globals';

const root = path.join(import.meta.dirname, '../..');
const file = (name: string): string => readFileSync(path.join(root, name), 'utf8');

/** No container engine runs where the suite runs, so what can be read is checked. */
describe('the container', () => {
  const stages = file('Dockerfile')
    .split(/^FROM /m)
    .slice(1);

  test('what it copies from the project exists', () => {
    const copied = [...file('Dockerfile').matchAll(/^COPY (?!--from)(.+) \S+$/gm)].flatMap((match) =>
      match[1].split(' '),
    );
    expect(copied.length).toBeGreaterThan(4);
    for (const name of copied) expect([name, existsSync(path.join(root, name))]).toEqual([name, true]);
  });

  test('the last stage installs nothing, runs without root and starts the service itself', () => {
    const last = stages.at(-1) ?? '';
    expect(stages).toHaveLength(2);
    expect(last).not.toMatch(/npm (ci|install)/);
    expect(last).toMatch(/^USER node$/m);
    expect(last).toMatch(/^CMD \["node", .*"dist\/apps\/api\/src\/main\.js"\]$/m);
    expect(existsSync(path.join(root, 'apps/api/src/main.ts'))).toBe(true);
  });

  test('both stages build on one Node that the project supports', () => {
    const versions = stages.map((stage) => /^node:(\d+)/.exec(stage)?.[1]);
    expect(new Set(versions).size).toBe(1);
    expect(['20', '22', '24']).toContain(versions[0]);
  });

  test('the settings that the composition names are settings of the service', () => {
    const settings = file('apps/api/src/settings/configuration.ts');
    const api = file('docker-compose.yml').split(/^ {2}db:$/m)[0];
    for (const [, name] of api.matchAll(/^ {6}([A-Z_]+):/gm))
      expect([name, settings.includes(name)]).toEqual([name, true]);
  });

  test('no secret has a value when nobody sets it', () => {
    const composition = file('docker-compose.yml');
    const secrets = [...composition.matchAll(/\$\{(\w*(?:PASSWORD|KEY|SECRET)\w*)([^}]*)\}/g)];
    expect(secrets.length).toBeGreaterThan(5);
    for (const [, name, otherwise] of secrets)
      expect([name, otherwise]).toEqual([name, name === 'FIRST_KEY' ? ':-' : expect.stringMatching(/^:\?/)]);
  });

  test('its images are pinned to what their tags are now, and pinned anew', () => {
    const folder = mkdtempSync(path.join(tmpdir(), 'pins-'));
    for (const name of ['Dockerfile', 'docker-compose.yml'])
      cpSync(path.join(root, name), path.join(folder, name));
    const pinnedTo = (digit: string): string => {
      // Stands in for a container engine, which would ask a registry.
      writeFileSync(path.join(folder, 'docker'), `#!/bin/sh\necho sha256:${digit.repeat(64)}\n`, {
        mode: 0o755,
      });
      execFileSync(path.join(root, 'apps/api/deployment/pin-images.sh'), {
        cwd: folder,
        env: { ...process.env, PATH: `${folder}:${process.env.PATH ?? ''}` },
      });
      return ['Dockerfile', 'docker-compose.yml']
        .map((name) => readFileSync(path.join(folder, name), 'utf8'))
        .join('\n');
    };
    for (const digit of ['a', 'b']) {
      const named = [...pinnedTo(digit).matchAll(/^(?:FROM| +image:) (\S+)/gm)].map(([, image]) => image);
      expect(named).toEqual([
        `node:24-bookworm-slim@sha256:${digit.repeat(64)}`,
        `node:24-bookworm-slim@sha256:${digit.repeat(64)}`,
        `postgres:18-bookworm@sha256:${digit.repeat(64)}`,
      ]);
    }
    expect(pinnedTo('b').replaceAll(/@sha256:[0-9a-f]{64}/g, '')).toBe(
      [file('Dockerfile'), file('docker-compose.yml')].join('\n').replaceAll(/@sha256:[0-9a-f]{64}/g, ''),
    );
  });
});
