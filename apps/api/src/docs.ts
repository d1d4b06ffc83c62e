import type { NestExpressApplication } from '@nestjs/platform-express';
import type { OpenAPIObject } from '@nestjs/swagger';
import type { RequestHandler } from 'express';
import swaggerUi from 'swagger-ui-express';
import { documentWithOne, looks, OPERATIONS, pageOf, scriptOf } from './docs-page.js';
import { keptFile, sendKept, type KeptFile } from './edge/kept-file.js';
import { Engine } from './estimates/engine.js';
import { guide } from './guide/guide.js';
import { openApiDocument } from './openapi-document.js';

/** The guide at /docs, the document at /openapi.json and its page at /docs/api; made on the first request for each. */
export function serveDocs(app: NestExpressApplication): void {
  let made: OpenAPIObject | undefined;
  app.use(reference(() => (made ??= openApiDocument(app))));
  app.use('/docs/api', swaggerUi.serve);
  app.use(
    '/docs',
    guide(() => app.get(Engine).example()),
  );
}

const JSON_TYPE = 'application/json; charset=utf-8';

type Documented = () => OpenAPIObject;

const page = (): KeptFile => keptFile(pageOf(), 'text/html; charset=utf-8');

/** What is served beside the page's own library, by the path it is asked for under. */
const files: Readonly<Record<string, (document: Documented) => KeptFile>> = {
  '/openapi.json': (document) => keptFile(JSON.stringify(document()), JSON_TYPE),
  '/docs/api': page,
  // The library brings a page of its own, which shows an example of its makers.
  '/docs/api/index.html': page,
  '/docs/api/page.js': (document) => keptFile(scriptOf(document()), 'text/javascript; charset=utf-8'),
  '/docs/api/page.css': () => keptFile(looks, 'text/css; charset=utf-8'),
};

function reference(document: Documented): RequestHandler {
  const made = new Map<string, KeptFile>();
  return (request, response, next) => {
    const at = request.path.replace(/\/$/, '');
    const isRead = request.method === 'GET' || request.method === 'HEAD';
    const file = isRead ? (made.get(at) ?? fileAt(at, document)) : undefined;
    if (file === undefined) {
      next();
      return;
    }
    made.set(at, file);
    sendKept(file, response);
  };
}

function fileAt(at: string, document: Documented): KeptFile | undefined {
  if (Object.hasOwn(files, at)) return files[at](document);
  if (!at.startsWith(OPERATIONS)) return undefined;
  const one = documentWithOne(document(), at.slice(OPERATIONS.length).replace(/\.json$/, ''));
  return one === undefined ? undefined : keptFile(JSON.stringify(one), JSON_TYPE);
}
