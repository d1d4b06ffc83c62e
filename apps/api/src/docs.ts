import type { INestApplication } from '@nestjs/common';
import { SwaggerModule, type OpenAPIObject } from '@nestjs/swagger';
import { openApiDocument } from './openapi-document.js';

/** The document at /openapi.json and the page at /docs; made on the first request for either. */
export function serveDocs(app: INestApplication): void {
  let made: OpenAPIObject | undefined;
  SwaggerModule.setup('docs', app, () => (made ??= openApiDocument(app)), {
    jsonDocumentUrl: 'openapi.json',
    raw: ['json'],
    customSiteTitle: 'Kingplank API',
    customCss: accessibleColours,
    swaggerOptions: { persistAuthorization: false, tryItOutEnabled: true, displayRequestDuration: true },
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
