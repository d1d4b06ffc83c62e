import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';

export const root = fileURLToPath(new URL('../../', import.meta.url));

/** A name as the other file has it, and as it is called here. */
export interface Taken {
  readonly name: string;
  readonly as: string;
}

/** What one file takes from another; `names` is 'all' for a namespace, a star or an import for its effect. */
export interface Import {
  readonly from: string;
  readonly names: readonly Taken[] | 'all';
  readonly isReExport: boolean;
}

export interface SourceFile {
  readonly path: string;
  readonly isTest: boolean;
  readonly isGenerated: boolean;
  readonly syntax: ts.SourceFile;
  readonly imports: readonly Import[];
}

const isSource = (name: string): boolean =>
  /\.(ts|mjs)$/.test(name) && !/\.d\.(m?ts)$/.test(name) && !name.includes('must-not-compile');

const listed = ['apps', 'libs', 'test'].flatMap((folder) =>
  readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter(isSource)
    .filter((name) => !/node_modules|consumers/.test(name))
    .map((name) => `${folder}/${name.replaceAll('\\', '/')}`),
);

export function sourceFileOf(path: string, text: string): SourceFile {
  const syntax = ts.createSourceFile(path, text, ts.ScriptTarget.ES2022, true);
  return {
    path,
    syntax,
    isTest: path.startsWith('test/') || path.endsWith('.spec.ts'),
    isGenerated: path.includes('/generated/'),
    imports: importsOf(path, syntax),
  };
}

export const sourceFiles: readonly SourceFile[] = listed.map((path) =>
  sourceFileOf(path, readFileSync(join(root, path), 'utf8')),
);

export const productionFiles = sourceFiles.filter(({ isTest, isGenerated }) => !isTest && !isGenerated);

/** The path of the file that a specifier means, or the specifier itself for a library. */
export function meant(from: string, specifier: string): string {
  const room = /^#lib\/([^/]+)$/.exec(specifier)?.[1];
  if (room !== undefined) return `libs/${room}/src/index.ts`;
  if (!specifier.startsWith('.')) return specifier;
  return relative(root, join(root, dirname(from), specifier))
    .replaceAll('\\', '/')
    .replace(/\.js$/, '.ts');
}

function importsOf(path: string, syntax: ts.SourceFile): readonly Import[] {
  const found: Import[] = [];
  const visit = (node: ts.Node): void => {
    const one = importAt(path, node);
    if (one !== undefined) found.push(one);
    ts.forEachChild(node, visit);
  };
  visit(syntax);
  return found;
}

function importAt(path: string, node: ts.Node): Import | undefined {
  if (ts.isImportDeclaration(node) && ts.isStringLiteral(node.moduleSpecifier))
    return { from: meant(path, node.moduleSpecifier.text), names: namesImported(node), isReExport: false };
  if (
    ts.isExportDeclaration(node) &&
    node.moduleSpecifier !== undefined &&
    ts.isStringLiteral(node.moduleSpecifier)
  )
    return { from: meant(path, node.moduleSpecifier.text), names: namesReExported(node), isReExport: true };
  const called = calledImport(node);
  return called === undefined ? undefined : { from: meant(path, called), names: 'all', isReExport: false };
}

function namesImported({ importClause }: ts.ImportDeclaration): readonly Taken[] | 'all' {
  const bindings = importClause?.namedBindings;
  if (bindings === undefined || !ts.isNamedImports(bindings)) return 'all';
  return bindings.elements.map(takenOf);
}

function namesReExported({ exportClause }: ts.ExportDeclaration): readonly Taken[] | 'all' {
  if (exportClause === undefined || !ts.isNamedExports(exportClause)) return 'all';
  return exportClause.elements.map(takenOf);
}

function takenOf({ propertyName, name }: ts.ImportSpecifier | ts.ExportSpecifier): Taken {
  return { name: (propertyName ?? name).text, as: name.text };
}

/** `import('x')` as a value or as a type. */
function calledImport(node: ts.Node): string | undefined {
  const isCall = ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword;
  const argument = isCall
    ? node.arguments[0]
    : ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument)
      ? node.argument.literal
      : undefined;
  return argument !== undefined && ts.isStringLiteralLike(argument) ? argument.text : undefined;
}
