import { existsSync, readFileSync } from 'node:fs';
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
});
