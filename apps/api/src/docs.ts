import type { NestExpressApplication } from '@nestjs/platform-express';
import { SwaggerModule, type OpenAPIObject } from '@nestjs/swagger';
import { Engine } from './estimates/engine.js';
import { guide } from './guide/guide.js';
import { openApiDocument } from './openapi-document.js';

/** The guide at /docs, the document at /openapi.json and its page at /docs/api; made on the first request for each. */
export function serveDocs(app: NestExpressApplication): void {
  app.use(
    '/docs',
    guide(() => app.get(Engine).example()),
  );
  let made: OpenAPIObject | undefined;
  SwaggerModule.setup('docs/api', app, () => (made ??= openApiDocument(app)), {
    jsonDocumentUrl: 'openapi.json',
    raw: ['json'],
    customSiteTitle: 'Kingplank API',
    customCss: accessibleColours,
    swaggerOptions: {
      persistAuthorization: true,
      filter: true,
      docExpansion: 'none',
      defaultModelsExpandDepth: -1,
      tryItOutEnabled: true,
      displayRequestDuration: true,
    },
  });
}

/** Swagger UI's own greys and tints are too faint to read for many; these pass WCAG contrast at AA. */
const accessibleColours = `
.swagger-ui .opblock .opblock-summary-method { color: #fff; text-shadow: none; }
.swagger-ui .opblock.opblock-get .opblock-summary-method { background: #1f5e99; }
.swagger-ui .opblock.opblock-post .opblock-summary-method { background: #1d6b47; }
.swagger-ui .opblock.opblock-patch .opblock-summary-method { background: #1b6a64; }
.swagger-ui .opblock.opblock-put .opblock-summary-method { background: #8a4b08; }
.swagger-ui .opblock.opblock-delete .opblock-summary-method { background: #a32020; }
.swagger-ui .topbar { display: none; }
.swagger-ui, .swagger-ui .info a, .swagger-ui .parameter__type, .swagger-ui .parameter__in, .swagger-ui .prop-format { color: #1b2330; }
.swagger-ui .btn.authorize { color: #1d6b47; border-color: #1d6b47; }
.swagger-ui .btn.authorize svg { fill: #1d6b47; }
.swagger-ui .info .title small, .swagger-ui .info .title small.version-stamp { background: #47535f; }
`;
