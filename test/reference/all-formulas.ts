import { existsSync, readdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AnyFormula } from '#lib/provenance';

const here = dirname(fileURLToPath(import.meta.url));

export interface RoomFormula {
  readonly room: string;
  readonly formula: AnyFormula;
}

const isFormula = (value: unknown): value is AnyFormula =>
  typeof value === 'object' && value !== null && 'evaluate' in value && 'worked' in value && 'cite' in value;

/** Every formula that a room exports, so that a new room needs no registration. Rooms share modules, so one is loaded after the other. */
export async function allFormulas(): Promise<readonly RoomFormula[]> {
  const libs = join(here, '..', '..', 'libs');
  // What is published on its own is no room.
  const rooms = readdirSync(libs)
    .filter((room) => !room.includes('.') && !existsSync(join(libs, room, 'package.json')))
    .sort();
  const found: RoomFormula[] = [];
  for (const room of rooms) {
    const module: Readonly<Record<string, unknown>> = await import(`#lib/${room}`);
    const formulas = Array.isArray(module['formulas']) ? module['formulas'].filter(isFormula) : [];
    found.push(...formulas.map((formula) => ({ room, formula })));
  }
  return found;
}
