import type { NestExpressApplication } from '@nestjs/platform-express';
import type { RequestHandler } from 'express';
import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { keptFile, sendKept } from './edge/kept-file.js';
import type { Log } from './edge/log.js';
import { projectRoot } from './settings/project-root.js';

/** The page of the desk and what it is made of, by the path it is asked for under. */
const parts: Readonly<Record<string, { readonly file: string; readonly type: string }>> = {
  '/': { file: 'index.html', type: 'text/html; charset=utf-8' },
  '/desk/desk.js': { file: 'desk.js', type: 'text/javascript; charset=utf-8' },
  '/desk/desk.css': { file: 'desk.css', type: 'text/css; charset=utf-8' },
};

/** Nothing from elsewhere, nothing inline; drawings are shown from memory, documents are kept from memory. */
const POLICY =
  "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' blob: data:; connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

/** Serves the desk at `/`; where it was not built, says so once and leaves the paths alone. */
export function serveDesk(app: NestExpressApplication, log: Log): void {
  const folder = path.join(projectRoot, 'dist', 'desk');
  if (!Object.values(parts).every(({ file }) => existsSync(path.join(folder, file)))) {
    log.entry('warn', 'The desk is not built, so nothing is served at /', { folder });
    return;
  }
  app.use(serving(folder));
}

function serving(folder: string): RequestHandler {
  const made = new Map(
    Object.entries(parts).map(([at, { file, type }]) => [
      at,
      keptFile(readFileSync(path.join(folder, file)), type),
    ]),
  );
  return (request, response, next) => {
    const part = made.get(request.path);
    const isRead = request.method === 'GET' || request.method === 'HEAD';
    if (part === undefined || !isRead) {
      next();
      return;
    }
    response.setHeader('Content-Security-Policy', POLICY);
    sendKept(part, response);
  };
}
