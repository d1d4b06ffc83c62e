/** What the reader finds in a drawing: each entity with its layer, and the box that the header states. */
export interface ReadDrawing {
  readonly header: Readonly<Record<string, readonly (readonly [code: number, value: string])[]>>;
  readonly entities: readonly ReadEntity[];
}

export interface ReadEntity {
  readonly type: string;
  readonly layer: string;
  /** Corners of an outline, ends of a line, centre of a circle, foot of a text. */
  readonly points: readonly (readonly [number, number])[];
  readonly isClosed: boolean;
  readonly radiusMm: number;
  readonly text: string;
}

type Pair = readonly [code: number, value: string];

/**
 * Reads an ASCII drawing exchange file by its group codes alone, without the library that writes ours: lines alternate
 * between a code and its value; code 0 begins an entity, 9 names a variable of the header, 8 is the layer, 10/20 and 11/21
 * are points, 40 a radius, 70 the flags of an outline (1: closed), 1 a text.
 *
 * Source: the public reference of the format, group codes in numerical order; from memory
 */
export function readDxf(text: string): ReadDrawing {
  const lines = text.split(/\r?\n/);
  const pairs = Array.from({ length: Math.floor(lines.length / 2) }, (_, k): Pair => [
    Number(lines[2 * k].trim()),
    lines[2 * k + 1],
  ]);
  return { header: headerOf(section(pairs, 'HEADER')), entities: entitiesOf(section(pairs, 'ENTITIES')) };
}

function section(pairs: readonly Pair[], name: string): readonly Pair[] {
  const start = pairs.findIndex(
    ([code, value], k) => code === 2 && value.trim() === name && pairs[k - 1][1].trim() === 'SECTION',
  );
  const length = pairs.slice(start).findIndex(([code, value]) => code === 0 && value.trim() === 'ENDSEC');
  return start < 0 ? [] : pairs.slice(start + 1, start + length);
}

/** The pairs that follow each one with this code, up to the next. */
function partsAt(pairs: readonly Pair[], opening: number): readonly (readonly Pair[])[] {
  const starts = pairs.flatMap(([code], k) => (code === opening ? [k] : []));
  return starts.map((start, k) => pairs.slice(start, starts[k + 1]));
}

const headerOf = (pairs: readonly Pair[]): ReadDrawing['header'] =>
  Object.fromEntries(partsAt(pairs, 9).map(([[, name], ...values]) => [name.trim(), values]));

const entitiesOf = (pairs: readonly Pair[]): readonly ReadEntity[] =>
  partsAt(pairs, 0).map(([[, type], ...values]): ReadEntity => {
    const all = (wanted: number): readonly string[] =>
      values.filter(([code]) => code === wanted).map(([, value]) => value);
    const numbers = (wanted: number): readonly number[] => all(wanted).map(Number);
    const [xs, ys] = [
      [...numbers(10), ...numbers(11)],
      [...numbers(20), ...numbers(21)],
    ];
    return {
      type: type.trim(),
      layer: all(8).join(),
      points: xs.map((x, k) => [x, ys[k]] as const),
      isClosed: numbers(70).some((flags) => flags % 2 === 1),
      radiusMm: type.trim() === 'CIRCLE' ? Number(all(40)[0]) : 0,
      text: all(1).join(),
    };
  });
