import { problem, type Problem } from '#lib/kernel';
import { filled, isRecord, problemsOf, shownValue, type DtoClass } from '../../edge/dto/field.js';
import { HttpProblem, summaryOf } from '../../edge/problems.js';
import type { CatalogueTable } from '../catalogue-rows.js';
import { materialKinds } from './materials.dto.js';
import { LabourRatesDto, PriceListDto } from './prices.dto.js';
import { SourceDto } from './source.dto.js';

/** What a table keeps beside the document, read from it. */
export interface CheckedDocument {
  readonly code: string;
  readonly kind: string;
  readonly name: string;
  readonly body: unknown;
}

/** The class that a document of a table is checked by; materials say their kind themselves. */
export function classOf(table: CatalogueTable, raw: unknown): DtoClass | undefined {
  switch (table) {
    case 'material':
      return materialClass(raw);
    case 'price_list':
      return PriceListDto;
    case 'labour_rates':
      return LabourRatesDto;
    case 'source':
      return SourceDto;
  }
}

function materialClass(raw: unknown): DtoClass | undefined {
  const kind = isRecord(raw) ? raw.kind : undefined;
  return Object.entries(materialKinds).find(([known]) => known === kind)?.[1];
}

/** Everything wrong with a document of a table; the same checks for what is sent, patched, imported and shipped. */
export function documentFaults(table: CatalogueTable, raw: unknown): readonly Problem[] {
  if (!isRecord(raw)) return [problem('not-an-object', '', { value: shownValue(raw) })];
  const type = classOf(table, raw);
  if (type === undefined) return [kindProblem(raw.kind)];
  const dto = filled(type, raw);
  return isRecord(dto) ? problemsOf(dto) : [];
}

function kindProblem(given: unknown): Problem {
  const choices = Object.keys(materialKinds).join(', ');
  return given === undefined
    ? problem('missing', '/kind', { expected: `one of ${choices}` })
    : problem('not-one-of', '/kind', { value: shownValue(given), choices });
}

/** @throws {HttpProblem} unprocessable, with every fault */
export function checkedDocument(table: CatalogueTable, raw: unknown): CheckedDocument {
  const problems = documentFaults(table, raw);
  if (problems.length > 0) throw new HttpProblem('unprocessable', { detail: summaryOf(problems), problems });
  return { ...labelsOf(table, raw), body: structuredClone(raw) };
}

function labelsOf(table: CatalogueTable, raw: unknown): Omit<CheckedDocument, 'body'> {
  const word = (key: string): string => (isRecord(raw) && typeof raw[key] === 'string' ? raw[key] : '');
  switch (table) {
    case 'material':
      return { code: word('code'), kind: word('kind'), name: word('name') };
    case 'price_list':
    case 'labour_rates':
      return { code: word('code'), kind: word('currency'), name: word('name') };
    case 'source':
      return { code: word('key'), kind: word('readAs'), name: word('title') };
  }
}
