import { readFileSync } from 'node:fs';
import path from 'node:path';
import type { RequestHandler, Response } from 'express';
import { isFresh, tagOfBytes } from '../edge/preconditions.js';
import { projectRoot } from '../settings/project-root.js';
import { htmlOf, titleOf } from './markdown.js';
import { madePages } from './made-pages.js';
import { httpFileOf } from './requests.js';

/** Pages that somebody wrote; the others are made. */
export const writtenPages = [
  'index',
  'surveyor',
  'chandlery',
  'catalogue-admin',
  'integrator',
  'recipes',
] as const;

export const guideFolder = path.join(projectRoot, 'docs');

/** A page as Markdown, or undefined where there is none of that name. */
export function pageNamed(name: string): string | undefined {
  const written = writtenPages.find((known) => known === name);
  return written === undefined
    ? madePages[name]?.()
    : readFileSync(path.join(guideFolder, `${written}.md`), 'utf8');
}

/** The guide under /docs: its pages, their requests as files, and one estimate; each made when it is first asked for. */
export function guide(example: () => Promise<string>): RequestHandler {
  const made = new Map<string, Promise<Made | undefined>>();
  return (request, response, next) => {
    const at = request.path.replace(/^\/|\/$/g, '');
    const part = made.get(at) ?? madeAt(at, example);
    made.set(at, part);
    part
      .then((found) => {
        if (found === undefined) {
          made.delete(at);
          next();
        } else if (isFresh(request, found.tag)) response.status(304).end();
        else send(found, response);
      })
      .catch((failure: unknown) => {
        made.delete(at);
        next(failure);
      });
  };
}

interface Made {
  readonly type: string;
  readonly text: string;
  readonly tag: string;
}

async function madeAt(at: string, example: () => Promise<string>): Promise<Made | undefined> {
  const [, requests] = /^requests\/([a-z-]+)\.http$/.exec(at) ?? [];
  if (at === 'estimate.json') return madeOf('application/json; charset=utf-8', await example());
  const markdown = pageNamed(requests ?? (at === '' ? 'index' : at));
  if (markdown === undefined) return undefined;
  return requests === undefined
    ? madeOf('text/html; charset=utf-8', shown(markdown))
    : madeOf('text/plain; charset=utf-8', httpFileOf(markdown));
}

const madeOf = (type: string, text: string): Made => ({ type, text, tag: tagOfBytes(Buffer.from(text)) });

function send({ type, text, tag }: Made, response: Response): void {
  response.setHeader('Cache-Control', 'no-cache');
  response.setHeader('ETag', tag);
  response.type(type).send(text);
}

const shown = (markdown: string): string => `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width">
<title>${titleOf(markdown)} · Kingplank</title>
<style>${looks}</style>
</head>
<body>
<nav><a href="/docs">Guide</a> <a href="/docs/recipes">Recipes</a> <a href="/docs/api">Reference</a> <a href="/">Desk</a></nav>
<main>
${htmlOf(markdown)}
</main>
</body>
</html>
`;

const looks = `
:root { color-scheme: light dark; }
body { margin: 0 auto; max-width: 60rem; padding: 1rem; font: 1rem/1.5 system-ui, sans-serif; }
nav a { margin-inline-end: 1rem; }
pre { overflow-x: auto; padding: 0.75rem; border-inline-start: 3px solid; background: color-mix(in srgb, CanvasText 6%, Canvas); }
code { font: 0.9em/1.4 ui-monospace, monospace; }
main { overflow-x: auto; }
table { border-collapse: collapse; }
th, td { padding: 0.3rem 0.6rem; border: 1px solid color-mix(in srgb, CanvasText 30%, Canvas); text-align: start; vertical-align: top; }
`;
