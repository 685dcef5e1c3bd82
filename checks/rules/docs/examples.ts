import ts from 'typescript';
import { docCommentOf } from './docRules.ts';
import type { DoorFunction } from './engineProgram.ts';

/** One line `expression // → literal` of a doc comment, with the lines before it in the same example. */
export interface ExampleLine {
  readonly own: string;
  readonly place: string;
  readonly before: string;
  readonly expression: string;
  readonly literal: string;
}

/** All example lines of a function. */
export function exampleLines(own: DoorFunction): readonly ExampleLine[] {
  return (docCommentOf(own)?.tags.get('example') ?? []).flatMap((text) => {
    let before = '';
    const found: ExampleLine[] = [];
    for (const line of text.split('\n')) {
      const [expression, literal] = line.split('// →').map((part) => part.trim());
      if (literal === undefined) before += `${line}\n`;
      else
        found.push({
          own: own.name,
          place: `${own.file}:${own.line}`,
          before,
          expression: expression!.replace(/;$/, ''),
          literal,
        });
    }
    return found;
  });
}

/** Runs an example with these names in reach. Null where it came out as written; else what came instead. */
export function runExample(example: ExampleLine, scope: Readonly<Record<string, unknown>>): string | null {
  const evaluate = (before: string, expression: string): unknown => {
    const code = ts.transpileModule(`${before}\nreturn (${expression}\n);`, {
      compilerOptions: { target: ts.ScriptTarget.ES2022, module: ts.ModuleKind.ESNext },
    }).outputText;
    return new Function(...Object.keys(scope), code)(...Object.values(scope));
  };
  try {
    const got = evaluate(example.before, example.expression);
    const wanted = evaluate('', example.literal);
    return same(got, wanted, roundingOf(example.literal)) ? null : `gave ${show(got)}, not ${example.literal}`;
  } catch (error) {
    return `threw ${String(error)}`;
  }
}

/** Half the last digit of a literal with a decimal point and three digits or more; others are meant to the full. */
export function roundingOf(literal: string): number {
  const found = /^-?(\d+)\.(\d+)(?:[eE]([-+]?\d+))?$/.exec(literal.replaceAll('_', ''));
  if (!found) return 0;
  const digits = `${found[1]}${found[2]}`.replace(/^0+/, '').length;
  return digits < 3 ? 0 : 0.5 * 10 ** (Number(found[3] ?? 0) - found[2]!.length);
}

/** Are these the same, numbers to 1e-9 of their size or the rounding allowed? A typed array may be written as a list. */
export function same(got: unknown, wanted: unknown, rounding = 0): boolean {
  if (typeof got === 'number' && typeof wanted === 'number') {
    if (Object.is(got, wanted) || got === wanted) return true;
    const far = Math.abs(got - wanted);
    return far <= Math.max(1e-9 * Math.abs(wanted), rounding * (1 + 1e-9));
  }
  const [a, b] = [plain(got), plain(wanted)];
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return Object.is(a, b);
  if (Array.isArray(a) !== Array.isArray(b)) return false;
  const [left, right] = [Object.entries(a), new Map(Object.entries(b))];
  return left.length === right.size && left.every(([key, value]) => right.has(key) && same(value, right.get(key)));
}

function plain(value: unknown): unknown {
  return ArrayBuffer.isView(value) ? Array.from(value as unknown as ArrayLike<number>) : value;
}

function show(value: unknown): string {
  return typeof value === 'object' ? JSON.stringify(plain(value)) : String(value);
}
