import ts from 'typescript';
import type { Import, SourceFile } from './source-files.js';

/** Names that a file exports of its own, not those that it hands on. */
export function exportsOf({ syntax }: SourceFile): readonly string[] {
  return syntax.statements.flatMap((statement) => {
    if (ts.isExportDeclaration(statement)) return ownList(statement);
    const isExported =
      ts.canHaveModifiers(statement) &&
      (ts.getModifiers(statement) ?? []).some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword);
    return isExported ? namesDeclared(statement) : [];
  });
}

function ownList({ moduleSpecifier, exportClause }: ts.ExportDeclaration): readonly string[] {
  if (moduleSpecifier !== undefined || exportClause === undefined || !ts.isNamedExports(exportClause))
    return [];
  return exportClause.elements.map(({ name }) => name.text);
}

function namesDeclared(statement: ts.Statement): readonly string[] {
  if (ts.isVariableStatement(statement))
    return statement.declarationList.declarations.flatMap(({ name }) =>
      ts.isIdentifier(name)
        ? [name.text]
        : name.elements.flatMap((part) => ('name' in part ? [part.name.getText()] : [])),
    );
  const isNamed =
    ts.isFunctionDeclaration(statement) ||
    ts.isClassDeclaration(statement) ||
    ts.isInterfaceDeclaration(statement) ||
    ts.isTypeAliasDeclaration(statement);
  return isNamed && statement.name !== undefined ? [statement.name.text] : [];
}

/**
 * Exports that nobody uses: no other file takes them, by whatever index they are handed on, and their own file does
 * not need them either. What is taken as a whole (`import * as`, an import at run time) counts as used.
 */
export function deadExports(files: readonly SourceFile[], published: readonly string[]): readonly string[] {
  const used = namesUsed(files, published);
  return files
    .filter(({ isTest, isGenerated }) => !isTest && !isGenerated)
    .flatMap((file) =>
      exportsOf(file)
        .filter((name) => !used.has(`${file.path}#${name}`) && !used.has(`${file.path}#*`))
        .filter((name) => timesNamed(file.syntax, name) === 1)
        .map((name) => `${file.path}: ${name}`),
    );
}

function namesUsed(files: readonly SourceFile[], published: readonly string[]): ReadonlySet<string> {
  const used = new Set(published.map((path) => `${path}#*`));
  const links = files.flatMap(({ path, imports }) => imports.map((taken) => ({ path, ...taken })));
  for (const { from, names, isReExport } of links)
    if (!isReExport)
      for (const name of names === 'all' ? ['*'] : names.map((one) => one.name)) used.add(`${from}#${name}`);
  handOn(
    used,
    links.filter(({ isReExport }) => isReExport),
  );
  return used;
}

interface Link extends Import {
  readonly path: string;
}

/** Whoever takes a name from an index uses the file that the index has it from, as far as the chain goes. */
function handOn(used: Set<string>, links: readonly Link[]): void {
  let before = -1;
  while (used.size > before) {
    before = used.size;
    for (const link of links) for (const name of namesThrough(used, link)) used.add(`${link.from}#${name}`);
  }
}

function namesThrough(used: ReadonlySet<string>, { path, names }: Link): readonly string[] {
  const start = `${path}#`;
  if (names === 'all')
    return [...used].filter((key) => key.startsWith(start)).map((key) => key.slice(start.length));
  return names.filter((one) => used.has(`${start}${one.as}`) || used.has(`${start}*`)).map((one) => one.name);
}

function timesNamed(syntax: ts.SourceFile, name: string): number {
  let times = 0;
  const visit = (node: ts.Node): void => {
    if (ts.isIdentifier(node) && node.text === name) times += 1;
    ts.forEachChild(node, visit);
  };
  visit(syntax);
  return times;
}
