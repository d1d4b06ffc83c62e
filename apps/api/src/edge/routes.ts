import type { Application } from 'express';

/** The methods that some route answers at a path: what `Allow` says, and what makes a 404 a 405. */
export function methodsAt(app: Application, path: string): readonly string[] {
  const methods = new Set<string>();
  for (const layer of routeLayers(app)) {
    if (matches(layer, path)) layer.route.methods.forEach((method) => methods.add(method.toUpperCase()));
  }
  if (methods.has('GET')) methods.add('HEAD');
  if (methods.size > 0) methods.add('OPTIONS');
  return [...methods].sort();
}

interface RouteLayer {
  readonly match: (path: string) => boolean;
  readonly route: { readonly methods: readonly string[] };
}

function routeLayers(app: Application): readonly RouteLayer[] {
  const { stack } = app.router;
  return stack.flatMap((layer) => {
    if (layer.route === undefined || layer.route.path.includes('*')) return [];
    const methods = new Set(layer.route.stack.map((handler) => handler.method));
    return [
      {
        match: (path: string) => matchesLayer(layer, path),
        route: { methods: [...methods].filter((method) => method !== undefined) },
      },
    ];
  });
}

/** Express's own matcher of a layer, which its types leave out. */
const matchesLayer = (layer: object, path: string): boolean =>
  'match' in layer && typeof layer.match === 'function' && Boolean(layer.match(path));

function matches(layer: RouteLayer, path: string): boolean {
  try {
    return layer.match(path);
  } catch {
    return false;
  }
}
