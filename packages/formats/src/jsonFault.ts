/** What is wrong in a text that should be JSON, and where: line and column, counted from 1. */
export interface JsonFault {
  readonly kind:
    | 'empty'
    | 'comment'
    | 'trailingComma'
    | 'missingComma'
    | 'singleQuotes'
    | 'curlyQuotes'
    | 'nameWithoutQuotes'
    | 'notANumber'
    | 'decimalComma'
    | 'notClosed'
    | 'lineInText'
    | 'moreBehind'
    | 'tooDeep'
    | 'unexpected';
  readonly line: number;
  readonly column: number;
  /** What stands there. */
  readonly found: string;
}

/** A key that stands twice in one object: only the last of them would be read. */
export interface KeyTwice {
  readonly key: string;
  readonly line: number;
}

const number = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y;
// biome-ignore lint/suspicious/noControlCharactersInRegex: JSON lets none stand in a text
const text = /"(?:[^"\\\u0000-\u001f]|\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4}))*"/y;
const word = /[\p{L}_$][\p{L}\p{N}_$]*/uy;
/** Deeper than this no settings are; the scan would run out of room. */
const deepest = 200;
const longestFound = 20;

class Fault extends Error {
  readonly kind: JsonFault['kind'];
  readonly at: number;
  constructor(kind: JsonFault['kind'], at: number) {
    super(kind);
    this.kind = kind;
    this.at = at;
  }
}

/** Walks through a JSON text: finds the first thing that is none, and keys that stand twice. */
class Scan {
  readonly twice: { readonly key: string; readonly at: number }[] = [];
  private at = 0;
  private readonly source: string;

  constructor(source: string) {
    this.source = source;
  }

  whole(): void {
    this.space();
    if (this.at >= this.source.length) throw new Fault('empty', this.at);
    this.value(0);
    this.space();
    if (this.at < this.source.length) throw new Fault('moreBehind', this.at);
  }

  private here(): string {
    return this.source[this.at] ?? '';
  }

  private space(): void {
    while (/[ \t\r\n]/.test(this.here())) this.at++;
    if (this.source.startsWith('//', this.at) || this.source.startsWith('/*', this.at) || this.here() === '#')
      throw new Fault('comment', this.at);
  }

  private take(form: RegExp): string | null {
    form.lastIndex = this.at;
    const found = form.exec(this.source);
    if (found === null) return null;
    this.at = form.lastIndex;
    return found[0];
  }

  private value(depth: number): void {
    if (depth > deepest) throw new Fault('tooDeep', this.at);
    if (this.here() === '{') this.members('}', depth);
    else if (this.here() === '[') this.members(']', depth);
    else if (this.here() === '"') this.text();
    else this.plain();
  }

  private plain(): void {
    const start = this.at;
    if (this.here() === '') throw new Fault('notClosed', start);
    if (this.here() === "'") throw new Fault('singleQuotes', start);
    if (/[“”„‘’]/.test(this.here())) throw new Fault('curlyQuotes', start);
    if (this.take(number) !== null) {
      if (/[\p{L}\d._]/u.test(this.here())) throw new Fault('notANumber', start);
      return;
    }
    if (/[-+.]/.test(this.here())) throw new Fault('notANumber', start);
    const found = this.take(word);
    if (found === 'true' || found === 'false' || found === 'null') return;
    if (found === 'NaN' || found === 'Infinity') throw new Fault('notANumber', start);
    throw new Fault(found === null ? 'unexpected' : 'nameWithoutQuotes', start);
  }

  private text(): string {
    const start = this.at;
    const found = this.take(text);
    if (found !== null) return JSON.parse(found) as string;
    const line = /^"[^"\r\n]*/.exec(this.source.slice(start))![0];
    throw new Fault(start + line.length >= this.source.length ? 'notClosed' : 'lineInText', start);
  }

  private members(end: '}' | ']', depth: number): void {
    const keys = new Set<string>();
    const start = this.at++;
    this.space();
    if (this.here() === end) {
      this.at++;
      return;
    }
    for (;;) {
      if (end === '}') this.key(keys);
      this.value(depth + 1);
      this.space();
      const comma = this.at;
      if (this.here() === end) break;
      if (this.here() === '') throw new Fault('notClosed', start);
      if (this.here() !== ',')
        throw new Fault(/["\p{L}\d[{-]/u.test(this.here()) ? 'missingComma' : 'unexpected', this.at);
      this.at++;
      if (end === '}' && /\d/.test(this.here()) && /\d/.test(this.source[comma - 1] ?? ''))
        throw new Fault('decimalComma', comma);
      this.space();
      if (this.here() === end) throw new Fault('trailingComma', comma);
    }
    this.at++;
  }

  private key(keys: Set<string>): void {
    this.space();
    const start = this.at;
    if (this.here() !== '"') this.notAKey();
    const key = this.text();
    if (keys.has(key)) this.twice.push({ key, at: start });
    keys.add(key);
    this.space();
    if (this.here() !== ':') throw new Fault(this.here() === '' ? 'notClosed' : 'unexpected', this.at);
    this.at++;
    this.space();
  }

  private notAKey(): never {
    if (this.here() === '') throw new Fault('notClosed', this.at);
    if (this.here() === "'") throw new Fault('singleQuotes', this.at);
    if (/[“”„‘’]/.test(this.here())) throw new Fault('curlyQuotes', this.at);
    throw new Fault(/[\p{L}_$]/u.test(this.here()) ? 'nameWithoutQuotes' : 'unexpected', this.at);
  }
}

function isJson(source: string): boolean {
  try {
    JSON.parse(source);
    return true;
  } catch {
    return false;
  }
}

function lineOf(source: string, at: number): { line: number; column: number } {
  const before = source.slice(0, at).split(/\r\n?|\n/);
  return { line: before.length, column: before.at(-1)!.length + 1 };
}

/**
 * What is wrong in a text that should be JSON, in words a person can act on?
 *
 * @param source - the text [text]
 * @returns the first fault with its line and column, or null; and keys that stand twice
 * @law there is a fault exactly where JSON.parse would refuse
 * @source ecma-404
 */
export function jsonFaults(source: string): {
  readonly fault: JsonFault | null;
  readonly twice: readonly KeyTwice[];
} {
  const scan = new Scan(source);
  let fault: JsonFault | null = null;
  try {
    scan.whole();
  } catch (error) {
    if (!(error instanceof Fault)) throw error;
    if (error.kind === 'tooDeep' && isJson(source)) return { fault: null, twice: [] };
    const found = /^[^\r\n]*/.exec(source.slice(error.at))![0].slice(0, longestFound);
    fault = { kind: error.kind, ...lineOf(source, error.at), found };
  }
  return { fault, twice: scan.twice.map(({ key, at }) => ({ key, line: lineOf(source, at).line })) };
}
