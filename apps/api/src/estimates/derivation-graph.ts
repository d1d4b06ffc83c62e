import { gunzipSync, gzipSync } from 'node:zlib';
import { Defect } from '#lib/kernel';
import type { Figure } from '#lib/provenance';

/**
 * Derivations as they are kept: every figure once, its inputs by number. As trees they repeat what they share and are
 * twice as long; compressed where they were computed they cost the database a tenth of the work.
 */
interface Graph {
  readonly nodes: readonly GraphNode[];
  readonly roots: Readonly<Record<string, number>>;
}

type GraphNode = Omit<Figure, 'origin'> & {
  readonly origin: unknown;
  readonly inputs?: Readonly<Record<string, number>>;
};

/** Fast compression: the texts repeat so much that more effort gains little. */
const LEVEL = 1;

export function packedDerivations(derivations: Readonly<Record<string, Figure>>): Uint8Array {
  const nodes: GraphNode[] = [];
  const known = new Map<Figure, number>();
  const roots = Object.fromEntries(
    Object.entries(derivations).map(([code, figure]) => [code, addNode(figure, nodes, known)]),
  );
  return new Uint8Array(gzipSync(JSON.stringify({ nodes, roots } satisfies Graph), { level: LEVEL }));
}

function addNode(figure: Figure, nodes: GraphNode[], known: Map<Figure, number>): number {
  const earlier = known.get(figure);
  if (earlier !== undefined) return earlier;
  const node = nodeOf(figure, nodes, known);
  nodes.push(node);
  known.set(figure, nodes.length - 1);
  return nodes.length - 1;
}

function nodeOf({ origin, ...rest }: Figure, nodes: GraphNode[], known: Map<Figure, number>): GraphNode {
  if (origin.kind !== 'computed') return { ...rest, origin };
  const { inputs, ...about } = origin;
  return {
    ...rest,
    origin: about,
    inputs: Object.fromEntries(
      Object.entries(inputs).map(([name, input]) => [name, addNode(input, nodes, known)]),
    ),
  };
}

/** The tree below one code, as JSON; undefined when nothing is known under it. */
export function derivationOf(packed: Uint8Array, code: string): Figure | undefined {
  const { nodes, roots }: Graph = JSON.parse(gunzipSync(packed).toString('utf8'));
  if (!Object.hasOwn(roots, code)) return undefined;
  const tree = treeOf(nodes, roots[code]);
  if (!isFigure(tree)) throw new Defect('What was kept as a derivation is no figure');
  return tree;
}

const isFigure = (value: unknown): value is Figure =>
  typeof value === 'object' &&
  value !== null &&
  ['value', 'unit', 'meaning', 'origin'].every((key) => Object.hasOwn(value, key));

function treeOf(nodes: readonly GraphNode[], index: number): unknown {
  const { origin, inputs, ...rest } = nodes[index];
  if (inputs === undefined) return { ...rest, origin };
  if (typeof origin !== 'object' || origin === null)
    throw new Defect('A computed figure was kept without its origin');
  return {
    ...rest,
    origin: {
      ...origin,
      inputs: Object.fromEntries(Object.entries(inputs).map(([name, input]) => [name, treeOf(nodes, input)])),
    },
  };
}
