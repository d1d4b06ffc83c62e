/// <reference lib="es2024.string" />
import { getLocation, visit } from 'jsonc-parser';
import { pointer, problem, type Problem } from '#lib/kernel';

/** The value of a JSON text, or every reason why it is not accepted. */
export type JsonReading = { readonly value: unknown } | { readonly problems: readonly Problem[] };

export const DEEPEST_NESTING = 32;

/**
 * Reads JSON as RFC 8259 has it, and refuses what later stages cannot carry faithfully: a name given twice, names that
 * reach into object prototypes, NUL and lone surrogates (a database text holds neither), numbers beyond a double,
 * and nesting deeper than any request needs.
 */
export function readStrictJson(bytes: Uint8Array): JsonReading {
  const text = textOf(bytes);
  if (text === undefined)
    return { problems: [problem('malformed-json', '', { why: 'the bytes are not UTF-8' })] };
  const parsed = parsedOrFault(text);
  if ('problems' in parsed) return parsed;
  const problems = new Inspection(text).run();
  return problems.length === 0 ? parsed : { problems };
}

const utf8 = new TextDecoder('utf-8', { fatal: true });

function textOf(bytes: Uint8Array): string | undefined {
  try {
    return utf8.decode(bytes);
  } catch {
    return undefined;
  }
}

function parsedOrFault(text: string): JsonReading {
  try {
    const value: unknown = JSON.parse(text);
    return { value };
  } catch (fault) {
    return { problems: [syntaxFault(text, fault)] };
  }
}

function syntaxFault(text: string, fault: unknown): Problem {
  const reason = fault instanceof Error ? fault.message : String(fault);
  // The tolerant parser calls itself for every level, so it is not asked about texts that nest deeply.
  if (isDeep(text)) return problem('malformed-json', '', { why: reason.slice(0, 100) });
  const offset = firstFault(text);
  const path = offset > 20_000 ? [] : getLocation(text, offset).path.filter((key) => key !== '');
  const lines = text.slice(0, offset).split('\n');
  const [line, column] = [lines.length, (lines.at(-1) ?? '').length + 1];
  const why = `at line ${line}, column ${column}, ${syntaxWords(text, offset)}`;
  return problem('malformed-json', pointer('', ...path), { why, line, column });
}

function firstFault(text: string): number {
  const offsets: number[] = [];
  visit(
    text,
    {
      onError: (_, offset) => {
        offsets.push(offset);
      },
    },
    { disallowComments: true },
  );
  return offsets[0] ?? text.length;
}

const syntaxWords = (text: string, offset: number): string => {
  if (text.trim() === '') return 'the text is empty';
  const rest = text.slice(offset, offset + 12);
  if (rest.trim() === '') return 'the text ends too early';
  const near = JSON.stringify(rest.toWellFormed());
  return /^-?(NaN|Infinity)/.test(rest)
    ? `${near} does not begin a JSON number`
    : `something is missing before ${near}, or stands there that should not`;
};

const isDeep = (text: string): boolean => (text.match(/[[{]/g)?.length ?? 0) > 2000;

const mark = {
  quote: 34,
  backslash: 92,
  openBrace: 123,
  closeBrace: 125,
  openBracket: 91,
  closeBracket: 93,
  comma: 44,
  colon: 58,
  minus: 45,
  zero: 48,
  nine: 57,
} as const;

interface Level {
  /** Names seen so far in an object; absent in a list. */
  readonly names?: Set<string>;
  key: string | number;
}

const MOST_PROBLEMS = 100;
const reachesPrototype = new Set(['__proto__', 'constructor', 'prototype']);

/** One pass over a text already known to be well-formed JSON. */
class Inspection {
  private readonly levels: Level[] = [];
  private readonly problems: Problem[] = [];
  private at = 0;
  private expectsName = false;

  constructor(private readonly text: string) {}

  run(): readonly Problem[] {
    while (this.at < this.text.length && this.problems.length < MOST_PROBLEMS) {
      const code = this.text.charCodeAt(this.at);
      if (!this.step(code)) break;
    }
    return this.problems;
  }

  private step(code: number): boolean {
    switch (code) {
      case mark.openBrace:
        return this.open({ names: new Set(), key: '' }, true);
      case mark.openBracket:
        return this.open({ key: 0 }, false);
      case mark.closeBrace:
      case mark.closeBracket:
        return this.close();
      case mark.comma:
        return this.next();
      case mark.quote:
        return this.string();
      default:
        return this.isNumberStart(code) ? this.number() : this.skip();
    }
  }

  private readonly isNumberStart = (code: number): boolean =>
    code === mark.minus || (code >= mark.zero && code <= mark.nine);

  private skip(): true {
    this.at += 1;
    return true;
  }

  private open(level: Level, expectsName: boolean): boolean {
    if (this.levels.length === DEEPEST_NESTING) {
      this.problems.push(problem('too-deep', this.where(), { most: DEEPEST_NESTING }));
      return false;
    }
    this.levels.push(level);
    this.expectsName = expectsName;
    return this.skip();
  }

  private close(): true {
    this.levels.pop();
    this.expectsName = false;
    return this.skip();
  }

  private next(): true {
    const level = this.levels[this.levels.length - 1];
    if (typeof level.key === 'number') level.key += 1;
    this.expectsName = level.names !== undefined;
    return this.skip();
  }

  private string(): true {
    const start = this.at;
    const { text } = this;
    let end = start + 1;
    let escapes = false;
    for (let code = text.charCodeAt(end); code !== mark.quote; code = text.charCodeAt(end)) {
      if (code === mark.backslash) escapes = true;
      end += code === mark.backslash ? 2 : 1;
    }
    this.at = end + 1;
    const value = escapes ? String(JSON.parse(text.slice(start, end + 1))) : text.slice(start + 1, end);
    if (this.expectsName) this.name(value);
    // Unescaped text cannot hold NUL (JSON forbids it) or a lone surrogate (UTF-8 decoding refuses it).
    if (escapes) this.checkCharacters(value);
    this.expectsName = false;
    return true;
  }

  private name(name: string): void {
    const level = this.levels[this.levels.length - 1];
    level.key = name;
    if (reachesPrototype.has(name)) this.problems.push(problem('reserved-name', this.where(), { name }));
    if (level.names?.has(name) === true)
      this.problems.push(problem('duplicate-name', this.where(), { name }));
    level.names?.add(name);
  }

  private checkCharacters(value: string): void {
    if (value.includes('\u0000'))
      this.problems.push(problem('unusable-text', this.where(), { what: 'the character NUL' }));
    if (!value.isWellFormed())
      this.problems.push(problem('unusable-text', this.where(), { what: 'half of a surrogate pair' }));
  }

  private number(): true {
    const token = /[-+\d.eE]+/y;
    token.lastIndex = this.at;
    const digits = token.exec(this.text)?.[0] ?? '';
    this.at += Math.max(1, digits.length);
    if (!Number.isFinite(Number(digits))) {
      this.problems.push(
        problem('not-a-number', this.where(), {
          hint: ' within the range of a double',
          value: digits.slice(0, 40),
        }),
      );
    }
    return true;
  }

  private where(): string {
    return pointer('', ...this.levels.map((level) => level.key)).toWellFormed();
  }
}
