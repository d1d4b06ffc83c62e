import { readdirSync } from 'node:fs';
import path from 'node:path';
import ts from 'typescript';
import { root, sourcesBelow } from './made-file.mjs';

/**
 * JSON Schemas of the result types that answers are documented by, made from the TypeScript types themselves, so that the
 * OpenAPI document and the code cannot say two things.
 *
 * The names asked for are the texts in `@Answers('Name')`, `@AnswersIn('Name', ...)` and `@RoomEndpoint({ result: 'Name' })`;
 * each must be exported by a room's index or by a file of `apps/api/src`.
 */
const apiFiles = sourcesBelow('apps/api/src');
const roomIndexes = readdirSync(path.join(root, 'libs'))
  .sort()
  .filter((room) => room !== 'sdk')
  .map((room) => path.join(root, 'libs', room, 'src/index.ts'))
  .filter((file) => ts.sys.fileExists(file));

const { config } = ts.readConfigFile(path.join(root, 'tsconfig.json'), ts.sys.readFile);
const { options } = ts.parseJsonConfigFileContent({ ...config, include: [], files: [] }, ts.sys, root);
const program = ts.createProgram([...apiFiles, ...roomIndexes], {
  ...options,
  noEmit: true,
  incremental: false,
  tsBuildInfoFile: undefined,
});
const checker = program.getTypeChecker();

const declarations = new Map();
/** Types that need a name of their own, in the order they were met. */
const named = new Map();
let componentNames = new Map();

function sourceOf(file) {
  const source = program.getSourceFile(file);
  if (source === undefined) throw new Error(`${file} is not part of the program`);
  return source;
}

function requestedNames() {
  const names = new Set();
  for (const file of apiFiles)
    ts.forEachChild(sourceOf(file), function look(node) {
      for (const name of namesAskedAt(node)) names.add(name);
      ts.forEachChild(node, look);
    });
  return [...names].sort();
}

/** `Answers('Name')`, `AnswersIn('Name')` and `RoomEndpoint({ result: 'Name' })` ask for a schema. */
function namesAskedAt(node) {
  if (!ts.isCallExpression(node) || !ts.isIdentifier(node.expression)) return [];
  const [first] = node.arguments;
  if (first === undefined) return [];
  const called = node.expression.text;
  if (['Answers', 'AnswersIn'].includes(called) && ts.isStringLiteral(first)) return [first.text];
  if (called !== 'RoomEndpoint' || !ts.isObjectLiteralExpression(first)) return [];
  return first.properties
    .filter(ts.isPropertyAssignment)
    .filter(({ name }) => name.getText() === 'result')
    .map(({ initializer }) => initializer)
    .filter(ts.isStringLiteral)
    .map(({ text }) => text);
}

function exportedType(name) {
  const found = new Map();
  for (const file of [...roomIndexes, ...apiFiles]) {
    const module = checker.getSymbolAtLocation(sourceOf(file));
    if (module === undefined) continue;
    const symbol = checker.getExportsOfModule(module).find((candidate) => candidate.name === name);
    if (symbol === undefined) continue;
    const original = symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol;
    if (original.flags & (ts.SymbolFlags.Interface | ts.SymbolFlags.TypeAlias))
      found.set(original, checker.getDeclaredTypeOfSymbol(original));
  }
  if (found.size === 1) return [...found.values()][0];
  throw new Error(
    found.size === 0
      ? `No room and no file of apps/api exports the type ${name}`
      : `${name} is exported by ${found.size} places with different meanings; give one of them another name`,
  );
}

const isMapped = (type) => ((type.objectFlags ?? 0) & ts.ObjectFlags.Mapped) !== 0;

/** @param {import('typescript').Symbol} symbol */
const isGeneric = (symbol) =>
  (symbol.declarations ?? []).some(
    (one) => ts.isTypeAliasDeclaration(one) && one.typeParameters !== undefined,
  );

/** Types that a room works out from a value (a request from its questions) and exports under a name of their own. */
const workedOut = roomIndexes
  .flatMap((file) => {
    const source = program.getSourceFile(file);
    const module = source === undefined ? undefined : checker.getSymbolAtLocation(source);
    return module === undefined ? [] : checker.getExportsOfModule(module);
  })
  .map((symbol) => (symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol))
  .filter((symbol) => symbol.flags & ts.SymbolFlags.TypeAlias)
  .map((symbol) => ({ symbol, type: checker.getDeclaredTypeOfSymbol(symbol) }))
  .filter(({ symbol, type }) => isMapped(type) && !isGeneric(symbol));

const propertyNames = (type) =>
  checker
    .getPropertiesOfType(type)
    .map(({ name }) => name)
    .sort()
    .join();
const isSame = (a, b) =>
  propertyNames(a) === propertyNames(b) &&
  checker.isTypeAssignableTo(a, b) &&
  checker.isTypeAssignableTo(b, a);

/** The symbol that names an object type, when it has one; a generic alias names no single type. */
function symbolOf(type) {
  if (isMapped(type)) return workedOut.find((one) => isSame(one.type, type))?.symbol;
  const symbol = type.aliasSymbol ?? type.symbol;
  if (symbol === undefined || symbol.name === '__type' || symbol.name === '__object') return undefined;
  return symbol;
}

const isPlainNumber = (type) =>
  ((type.flags & ts.TypeFlags.NumberLike) !== 0 && !(type.flags & ts.TypeFlags.NumberLiteral)) ||
  (type.isIntersection() && type.types.some((part) => part.flags & ts.TypeFlags.Number));
const isPlainText = (type) =>
  (type.flags & ts.TypeFlags.String) !== 0 ||
  (type.flags & ts.TypeFlags.TemplateLiteral) !== 0 ||
  (type.isIntersection() && type.types.some((part) => part.flags & ts.TypeFlags.String));
const isList = (type) => checker.isArrayType(type) || checker.isTupleType(type);
const indexOf = (type) => checker.getIndexInfosOfType(type)[0];
const isObject = (type) => (type.flags & ts.TypeFlags.Object) !== 0 && !isList(type) && !isPlainNumber(type);
const isUnion = (type) => type.isUnion() && !(type.flags & ts.TypeFlags.Boolean) && !isPlainNumber(type);
const partsOf = (type) => type.types.filter((part) => !(part.flags & ts.TypeFlags.Undefined));

function isNamed(type) {
  const symbol = symbolOf(type);
  return (
    symbol !== undefined &&
    (isObject(type) || (type.isIntersection() && !isPlainNumber(type) && !isPlainText(type))) &&
    checker.getPropertiesOfType(type).length > 0 &&
    declaredHere(symbol)
  );
}

const declaredHere = (symbol) =>
  (symbol.declarations ?? []).some((declaration) => {
    const file = declaration.getSourceFile().fileName;
    return file.startsWith(root) && !file.includes('/node_modules/');
  });

function visitNamed(type, seen = new Set()) {
  if (seen.has(type)) return;
  seen.add(type);
  if (isUnion(type)) return partsOf(type).forEach((part) => visitNamed(part, seen));
  if (isList(type)) return checker.getTypeArguments(type).forEach((item) => visitNamed(item, seen));
  if (isPlainNumber(type) || isPlainText(type) || !(isObject(type) || type.isIntersection())) return;
  if (isNamed(type)) {
    if (named.has(symbolOf(type))) return;
    named.set(symbolOf(type), genericOf(type));
  }
  const index = indexOf(type);
  if (index !== undefined) visitNamed(index.type, seen);
  for (const property of checker.getPropertiesOfType(type))
    visitNamed(checker.getTypeOfSymbol(property), seen);
}

/** A generic type (a figure in any unit) is described once, by what its parameters may be, not by the first use met. */
const genericOf = (type) => (checker.getTypeArguments(type).length > 0 ? type.target : type);

/** A type keeps its own name; where two rooms use one name, those not asked for are told apart by their room. */
function namesFor(symbols) {
  const byName = grouped(symbols);
  const names = new Map();
  for (const [name, same] of byName) {
    const kept =
      same.length === 1
        ? same[0]
        : same.find((symbol) => declarations.has(name) && symbolOf(declarations.get(name)) === symbol);
    for (const symbol of same)
      names.set(symbol, symbol === kept ? name : `${capitalised(roomOf(symbol))}${name}`);
  }
  if (new Set(names.values()).size !== names.size)
    throw new Error(`Two types have one name: ${[...names.values()].sort().join(', ')}`);
  return names;
}

function grouped(symbols) {
  const groups = new Map();
  for (const symbol of symbols) groups.set(symbol.name, [...(groups.get(symbol.name) ?? []), symbol]);
  return groups;
}

const roomOf = (symbol) =>
  /\/(?:libs|apps\/api\/src)\/([^/]+)\//.exec(symbol.declarations[0].getSourceFile().fileName)?.[1] ?? 'api';
const capitalised = (word) => word[0].toUpperCase() + word.slice(1);

function schemaOf(type) {
  if (type.flags & ts.TypeFlags.TypeParameter)
    return schemaOf(checker.getBaseConstraintOfType(type) ?? checker.getAnyType());
  if (type.flags & ts.TypeFlags.Boolean) return { type: 'boolean' };
  if (type.flags & ts.TypeFlags.BooleanLiteral)
    return { type: 'boolean', enum: [type.intrinsicName === 'true'] };
  if (type.flags & ts.TypeFlags.Null) return { type: 'null' };
  // An optional unknown shows as {}, which any value but nothing is.
  if (type.flags & (ts.TypeFlags.Unknown | ts.TypeFlags.Any) || checker.typeToString(type) === '{}')
    return {};
  if (type.isStringLiteral()) return { type: 'string', enum: [type.value] };
  if (type.isNumberLiteral()) return { type: 'number', enum: [type.value] };
  if (isPlainNumber(type)) return { type: 'number' };
  if (isPlainText(type)) return { type: 'string' };
  if (isUnion(type)) return unionSchema(type);
  if (checker.isTupleType(type)) return tupleSchema(type);
  if (checker.isArrayType(type)) return { type: 'array', items: schemaOf(checker.getTypeArguments(type)[0]) };
  if (isNamed(type)) return { $ref: `#/components/schemas/${componentNames.get(symbolOf(type))}` };
  return objectSchema(type);
}

function unionSchema(type) {
  const parts = partsOf(type);
  const booleans = parts.filter((part) => part.flags & ts.TypeFlags.BooleanLiteral);
  const texts = parts.filter((part) => part.isStringLiteral());
  const numbers = parts.filter((part) => part.isNumberLiteral());
  const rest = parts.filter(
    (part) => !booleans.includes(part) && !texts.includes(part) && !numbers.includes(part),
  );
  const choices = [
    ...(texts.length > 0 ? [{ type: 'string', enum: texts.map((part) => part.value).sort() }] : []),
    ...(numbers.length > 0
      ? [{ type: 'number', enum: numbers.map((part) => part.value).sort((a, b) => a - b) }]
      : []),
    ...(booleans.length === 2 ? [{ type: 'boolean' }] : booleans.map(schemaOf)),
    ...rest.map(schemaOf),
  ];
  if (choices.length === 1) return choices[0];
  return { oneOf: choices, ...(rest.length === choices.length ? toldApart(rest) : {}) };
}

/** Named objects of which each has one word of its own in the same member are told apart by it. */
function toldApart(types) {
  if (types.length < 2 || !types.every(isNamed)) return {};
  const propertyName = ['kind', 'type'].find((name) =>
    types.every((type) => ownWord(type, name) !== undefined),
  );
  if (propertyName === undefined) return {};
  const mapping = types.map((type) => [ownWord(type, propertyName), schemaOf(type).$ref]);
  return { discriminator: { propertyName, mapping: Object.fromEntries(mapping) } };
}

function ownWord(type, name) {
  const property = checker.getPropertyOfType(type, name);
  const word = property && checker.getTypeOfSymbol(property);
  return word?.isStringLiteral() === true ? word.value : undefined;
}

function tupleSchema(type) {
  const items = checker.getTypeArguments(type);
  const { fixedLength, minLength, hasRestElement } = type.target;
  const schemas = items.map(schemaOf);
  const isUniform = new Set(schemas.map((schema) => JSON.stringify(schema))).size === 1;
  return {
    type: 'array',
    ...(isUniform ? { items: schemas[0] } : { prefixItems: schemas, items: false }),
    minItems: minLength,
    ...(hasRestElement ? {} : { maxItems: fixedLength }),
  };
}

function objectSchema(type, symbol) {
  const index = indexOf(type);
  const properties = checker.getPropertiesOfType(type).filter((property) => !property.name.startsWith('__@'));
  const entries = properties.map((property) => [property.name, propertySchema(property)]);
  const required = properties.filter((property) => !isOptional(property)).map((property) => property.name);
  return {
    type: 'object',
    ...(symbol === undefined ? {} : describedBy(symbol)),
    ...(entries.length > 0 ? { properties: Object.fromEntries(entries) } : {}),
    ...(required.length > 0 ? { required } : {}),
    ...(index === undefined ? {} : { additionalProperties: schemaOf(index.type) }),
  };
}

const isOptional = (property) => (property.flags & ts.SymbolFlags.Optional) !== 0;

function propertySchema(property) {
  const type = checker.getTypeOfSymbol(property);
  const schema = schemaOf(isOptional(property) ? checker.getNonNullableType(type) : type);
  const said = describedBy(property);
  return said.description === undefined ? schema : { ...schema, ...said };
}

function describedBy(symbol) {
  const description = ts.displayPartsToString(symbol.getDocumentationComment(checker)).trim();
  return description === '' ? {} : { description };
}

/** The schemas by their names. */
export function schemasOfTypes() {
  for (const name of requestedNames()) declarations.set(name, exportedType(name));
  for (const [, type] of declarations) visitNamed(type);
  componentNames = namesFor([...named.keys()]);
  return Object.fromEntries(
    [
      ...[...named].map(([symbol, type]) => [componentNames.get(symbol), objectSchema(type, symbol)]),
      ...[...declarations].filter(([, type]) => !isNamed(type)).map(([name, type]) => [name, schemaOf(type)]),
    ].sort(([a], [b]) => (a < b ? -1 : 1)),
  );
}
