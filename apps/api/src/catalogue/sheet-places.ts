import { HttpProblem, type LocatedProblem } from '../edge/problems.js';

/** The headings are the first row, and rows are counted from 1. */
const FIRST_ROW = 2;

/**
 * Where a fault of a document sits in the sheet that the document was read from. Empty lines of the sheet are not
 * counted, for they were left out when it was read.
 */
function inSheet(fault: LocatedProblem, list: string): LocatedProblem {
  if (!fault.at.startsWith(`${list}/`)) return fault;
  const [index, ...path] = fault.at.slice(list.length + 1).split('/');
  if (!/^\d+$/.test(index)) return fault;
  const column = path.map((part) => part.replaceAll('~1', '/').replaceAll('~0', '~')).join('.');
  return { ...fault, row: Number(index) + FIRST_ROW, ...(column === '' ? {} : { column }) };
}

/** Work on a sheet whose refusals name rows and columns. */
export async function sheetWork<T>(list: string, work: () => Promise<T>): Promise<T> {
  try {
    return await work();
  } catch (failure) {
    if (!(failure instanceof HttpProblem) || failure.kind !== 'unprocessable') throw failure;
    throw new HttpProblem('unprocessable', {
      detail: failure.message,
      problems: failure.problems.map((fault) => inSheet(fault, list)),
    });
  }
}
