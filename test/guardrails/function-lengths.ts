import ts from 'typescript';
import type { SourceFile } from './source-files.js';

/** How many lines each function of a file has, from its first to its last. */
export function functionLengths({ syntax }: SourceFile): readonly number[] {
  const lengths: number[] = [];
  const lineAt = (position: number): number => syntax.getLineAndCharacterOfPosition(position).line;
  const visit = (node: ts.Node): void => {
    if (ts.isFunctionLike(node) && 'body' in node && node.body !== undefined)
      lengths.push(lineAt(node.getEnd()) - lineAt(node.getStart(syntax)) + 1);
    ts.forEachChild(node, visit);
  };
  visit(syntax);
  return lengths;
}
