import type { DefectRecord } from 'kingplank-sdk';

/** One thing that can be typed or chosen, by its place in the record (a JSON Pointer, as faults name it). */
export interface Field {
  readonly at: string;
  readonly word: FieldWord;
  readonly kind: 'thickness' | 'text' | 'number' | 'date' | 'choice';
  /** What may be chosen, as the contract spells it. */
  readonly choices?: readonly string[];
  readonly isNeeded?: true;
}

export type FieldWord =
  | 'outerSkin'
  | 'innerSkin'
  | 'coreThickness'
  | 'coreType'
  | 'title'
  | 'reference'
  | 'panelName'
  | 'surface'
  | 'accessBelow'
  | 'evidence'
  | 'cause'
  | 'causeClass'
  | 'temperature'
  | 'shelter'
  | 'people'
  | 'skill'
  | 'startDate'
  | 'priceList'
  | 'hullLength'
  | 'craftType'
  | 'skinMethod'
  | 'press'
  | 'dryReference'
  | 'wetReference';

export const buildUpFields: readonly Field[] = [
  { at: '/outerSkin/thicknessMm', word: 'outerSkin', kind: 'thickness', isNeeded: true },
  { at: '/core/thicknessMm', word: 'coreThickness', kind: 'thickness', isNeeded: true },
  { at: '/innerSkin/thicknessMm', word: 'innerSkin', kind: 'thickness', isNeeded: true },
  {
    at: '/core/coreType',
    word: 'coreType',
    kind: 'choice',
    choices: ['end-grain-balsa', 'cross-linked-foam', 'san-foam', 'linear-foam', 'marine-plywood'],
  },
];

export const jobFields: readonly Field[] = [
  { at: '/title', word: 'title', kind: 'text' },
  { at: '/reference', word: 'reference', kind: 'text' },
  { at: '/panel/name', word: 'panelName', kind: 'text' },
  { at: '/craft/craftType', word: 'craftType', kind: 'choice', choices: ['sail', 'motor'] },
  { at: '/craft/lengthHullM', word: 'hullLength', kind: 'number' },
  {
    at: '/panel/surface',
    word: 'surface',
    kind: 'choice',
    choices: ['smooth-paint', 'painted-nonskid', 'moulded-nonskid', 'planked', 'bonded-mat'],
  },
  { at: '/panel/accessBelow', word: 'accessBelow', kind: 'choice', choices: ['open', 'lined', 'none'] },
  {
    at: '/evidence',
    word: 'evidence',
    kind: 'choice',
    choices: ['single-symptom', 'sounded-and-metered', 'mapped-with-plugs', 'opened-and-measured'],
  },
  {
    at: '/cause/cause',
    word: 'cause',
    kind: 'choice',
    choices: ['leaking-fitting', 'impact', 'construction', 'unknown'],
  },
  { at: '/method/skin', word: 'skinMethod', kind: 'choice', choices: ['re-bed', 'relay'] },
  { at: '/method/press', word: 'press', kind: 'choice', choices: ['weights', 'battens', 'vacuum'] },
  { at: '/conditions/temperatureC', word: 'temperature', kind: 'number' },
  { at: '/conditions/shelter', word: 'shelter', kind: 'choice', choices: ['shed', 'tent', 'open'] },
  { at: '/crew/people', word: 'people', kind: 'number' },
  { at: '/crew/skill', word: 'skill', kind: 'choice', choices: ['professional', 'owner'] },
  { at: '/crew/startDate', word: 'startDate', kind: 'date' },
  { at: '/pricing/priceList', word: 'priceList', kind: 'text' },
];

export const meterFields: readonly Field[] = [
  { at: '/survey/meter/dryReference', word: 'dryReference', kind: 'number' },
  { at: '/survey/meter/wetReference', word: 'wetReference', kind: 'number' },
];

/** What stands at a place of the record; undefined where nothing was said. */
export const valueAt = (record: DefectRecord, at: string): unknown =>
  partsOf(at).reduce<unknown>(
    (here, part) => (typeof here === 'object' && here !== null ? Reflect.get(here, part) : undefined),
    record,
  );

/** The record with a value at a place; without it when nothing was said, and without what is empty then. */
export function withValueAt(
  record: DefectRecord,
  at: string,
  value: number | string | undefined,
): DefectRecord {
  const copy: DefectRecord = JSON.parse(JSON.stringify(record));
  const parts = partsOf(at);
  const last = parts.pop() ?? '';
  const folders: object[] = [copy];
  for (const part of parts) folders.push(folderIn(folders[folders.length - 1], part));
  const folder = folders[folders.length - 1];
  if (value === undefined) Reflect.deleteProperty(folder, last);
  else Reflect.set(folder, last, value);
  dropEmpty(folders, parts);
  return copy;
}

const partsOf = (at: string): string[] => at.split('/').slice(1);

function folderIn(folder: object, part: string): object {
  const there: unknown = Reflect.get(folder, part);
  if (typeof there === 'object' && there !== null) return there;
  const made = {};
  Reflect.set(folder, part, made);
  return made;
}

function dropEmpty(folders: readonly object[], parts: readonly string[]): void {
  for (let depth = parts.length; depth > 0; depth -= 1) {
    if (Object.keys(folders[depth]).length > 0) return;
    Reflect.deleteProperty(folders[depth - 1], parts[depth - 1]);
  }
}
