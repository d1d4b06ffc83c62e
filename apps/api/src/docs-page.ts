import type { OpenAPIObject } from '@nestjs/swagger';
import { isRecord } from './edge/dto/field.js';

type Node = Record<string, unknown>;

/** Where the page asks for one operation with all that it refers to. */
export const OPERATIONS = '/docs/api/operations/';

/**
 * The page of the interface. It is shown from an outline, and asks for an operation when that is opened: the whole
 * document takes a browser seconds to go through, of which whoever looks for one operation needs a hundredth.
 */
export const pageOf = (): string => `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width">
<title>Kingplank API</title>
<link rel="icon" type="image/png" href="/docs/api/favicon-32x32.png">
<link rel="preload" as="script" href="/docs/api/page.js">
<link rel="stylesheet" href="/docs/api/swagger-ui.css">
<link rel="stylesheet" href="/docs/api/page.css">
</head>
<body>
<nav><a href="/docs">Guide</a> <a href="/docs/recipes">Recipes</a> <a href="/openapi.json">The document itself</a> <a href="/">Desk</a></nav>
<main id="page"></main>
<script src="/docs/api/swagger-ui-bundle.js"></script>
<script src="/docs/api/page.js"></script>
</body>
</html>
`;

/** Shows the outline; finds operations by any word of theirs; resolves each from a document of its own. */
export const scriptOf = (document: OpenAPIObject): string => `
const wordsOf = (tag, operation) =>
  [tag, operation.get('path'), operation.getIn(['operation', 'summary']), operation.getIn(['operation', 'operationId'])]
    .join(' ')
    .toLowerCase();

const opsFilter = (groups, phrase) =>
  groups
    .map((group, tag) =>
      group.update('operations', (all) => all.filter((one) => wordsOf(tag, one).includes(phrase.toLowerCase()))))
    .filter((group) => group.get('operations').size > 0);

const asked = new Set();

const resolved = async (system, path, id) => {
  const address = new URL('${OPERATIONS}' + id + '.json', document.baseURI).href;
  const answer = await fetch(address);
  if (!answer.ok) throw new Error(address + ' was answered ' + answer.status);
  const { spec } = await system.fn.resolveSubtree(await answer.json(), path, { baseDoc: address });
  system.specActions.updateResolvedSubtree(path, spec);
};

const requestResolvedSubtree = (usual, system) => (path) => {
  const id = path[0] === 'paths' ? system.specSelectors.specJson().getIn([...path, 'operationId']) : undefined;
  if (id === undefined) return usual(path);
  if (asked.has(id)) return;
  asked.add(id);
  resolved(system, path, id).catch((fault) => {
    asked.delete(id);
    system.errActions.newThrownErr(fault);
  });
};

window.ui = SwaggerUIBundle({
  dom_id: '#page',
  spec: ${JSON.stringify(outlineOf(document))},
  plugins: [() => ({ fn: { opsFilter }, statePlugins: { spec: { wrapActions: { requestResolvedSubtree } } } })],
  deepLinking: true,
  persistAuthorization: true,
  filter: true,
  docExpansion: 'none',
  defaultModelsExpandDepth: -1,
  tryItOutEnabled: true,
  displayRequestDuration: true,
});
`;

/** What a list of operations shows of each. */
const inAList = ['operationId', 'summary', 'tags', 'security', 'deprecated'] as const;

function outlineOf({ openapi, info, servers, tags, components, paths }: OpenAPIObject): object {
  const listed = Object.entries(paths).map(([path, item]) => {
    const operations = Object.entries(item).map(
      ([method, operation]) => [method, listedOf(operation)] as const,
    );
    return [path, Object.fromEntries(operations)] as const;
  });
  return {
    openapi,
    info,
    servers,
    tags,
    paths: Object.fromEntries(listed),
    components: { securitySchemes: components?.securitySchemes },
  };
}

const listedOf = (operation: unknown): object =>
  isRecord(operation)
    ? { ...Object.fromEntries(inAList.map((key) => [key, operation[key]])), responses: {} }
    : {};

/** A document with one operation and all that it refers to; undefined where there is none of that name. */
export function documentWithOne(document: OpenAPIObject, operationId: string): object | undefined {
  const { openapi, info, servers, components, paths } = document;
  for (const [path, item] of Object.entries(paths))
    for (const [method, operation] of Object.entries(item)) {
      if (!isRecord(operation) || operation.operationId !== operationId) continue;
      const used: Record<string, Node> = {};
      gatherUsed(operation, Object.fromEntries(Object.entries(components ?? {})), used);
      const said = { ...operation, description: withNeeds(operation, document) };
      return { openapi, info, servers, paths: { [path]: { [method]: said } }, components: used };
    }
  return undefined;
}

/** The page does not show what an operation says of permissions, so its words do. */
function withNeeds(operation: Node, document: OpenAPIObject): string {
  const permission = operation['x-permission'];
  const roles: unknown = Reflect.get(document, 'x-permissions');
  const named = typeof permission === 'string' && isRecord(roles) ? roles[permission] : undefined;
  return [
    String(operation.description),
    ...(Array.isArray(named)
      ? [`Needs \`${String(permission)}\`, which can be had as ${named.join(', ')}.`]
      : []),
  ].join('\n\n');
}

/** What is referred to from here, and from there, by section and name. */
function gatherUsed(node: unknown, components: Node, used: Record<string, Node>): void {
  if (Array.isArray(node))
    node.forEach((part) => {
      gatherUsed(part, components, used);
    });
  if (!isRecord(node)) return;
  const [, section, name] = /^#\/components\/(\w+)\/(.+)$/.exec(String(node.$ref)) ?? [];
  const all = section === undefined ? undefined : components[section];
  if (isRecord(all) && used[section]?.[name] === undefined) {
    used[section] = { ...used[section], [name]: all[name] };
    gatherUsed(all[name], components, used);
  }
  for (const part of Object.values(node)) gatherUsed(part, components, used);
}

/** Swagger UI's own greys and tints are too faint to read for many; these pass WCAG contrast at AA. */
export const looks = `
body { margin: 0; background: #fafafa; }
nav { padding: 0.75rem 1.25rem; font: 1rem/1.5 system-ui, sans-serif; }
nav a { margin-inline-end: 1rem; color: #1f5e99; }
.swagger-ui .opblock .opblock-summary-method { color: #fff; text-shadow: none; }
.swagger-ui .opblock.opblock-get .opblock-summary-method { background: #1f5e99; }
.swagger-ui .opblock.opblock-post .opblock-summary-method { background: #1d6b47; }
.swagger-ui .opblock.opblock-patch .opblock-summary-method { background: #1b6a64; }
.swagger-ui .opblock.opblock-put .opblock-summary-method { background: #8a4b08; }
.swagger-ui .opblock.opblock-delete .opblock-summary-method { background: #a32020; }
.swagger-ui, .swagger-ui .info a, .swagger-ui .parameter__type, .swagger-ui .parameter__in, .swagger-ui .prop-format { color: #1b2330; }
.swagger-ui .btn.authorize { color: #1d6b47; border-color: #1d6b47; }
.swagger-ui .btn.authorize svg { fill: #1d6b47; }
.swagger-ui .info .title small, .swagger-ui .info .title small.version-stamp { background: #47535f; }
`;
