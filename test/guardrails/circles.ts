import type { SourceFile } from './source-files.js';

/** The circles of files that import each other, by value or by type (Tarjan's strongly connected components). */
export function circlesAmong(files: readonly SourceFile[]): readonly (readonly string[])[] {
  const known = new Map(files.map((file) => [file.path, file]));
  const order = new Map<string, number>();
  const lowest = new Map<string, number>();
  const open: string[] = [];
  const circles: string[][] = [];

  const visit = (path: string): number => {
    const at = order.size;
    order.set(path, at);
    lowest.set(path, at);
    open.push(path);
    for (const { from } of known.get(path)?.imports ?? []) {
      if (!known.has(from)) continue;
      const reached = order.has(from) ? (open.includes(from) ? order.get(from)! : at) : visit(from);
      lowest.set(path, Math.min(lowest.get(path)!, reached));
    }
    if (lowest.get(path) === at) circles.push(open.splice(open.indexOf(path)).sort());
    return lowest.get(path)!;
  };
  for (const { path } of files) if (!order.has(path)) visit(path);
  return circles.filter((circle) => circle.length > 1);
}
