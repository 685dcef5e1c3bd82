import type { EngineProblemCode, Facts, Place, Problem } from '@eavewell/engine';
import type { RecordProblemCode } from '@eavewell/records';
import type { TableProblemCode } from '@eavewell/tables';
import type { Say } from './messages/texts.ts';
import type { NumberWords } from './numberWords.ts';

/** Every problem the product can name. */
export type ProblemCode = EngineProblemCode | RecordProblemCode | TableProblemCode;

/** What is wrong, and what to do about it. */
export interface ProblemSentence {
  readonly what: string;
  readonly todo: string;
}

/** What a sentence is made with: the messages and the numbers of a language. */
export interface Speech {
  readonly say: Say;
  readonly numbers: NumberWords;
}

/** What a problem's sentence may ask of the problem, and of the language it is told in. */
export interface Told extends Speech {
  readonly place: Place;
  has(name: string): boolean;
  /** A fact as text; an empty cell reads `(empty)`. */
  text(name: string): string;
  /** A fact as a number, or null where it is none. */
  number(name: string): number | null;
  /** The first of the facts that is a number, for a count in a message; 0 where none is. */
  count(...names: readonly string[]): number;
  list(name: string): readonly string[];
  /** A list as "a or b". */
  either(name: string): string;
  /** A list as "a and b". */
  both(name: string): string;
}

/** Long values are cut, so that one bad cell cannot fill the screen. */
const longestValue = 60;

function clipped(value: string): string {
  const oneLine = value.replace(/\s+/g, ' ').trim();
  return oneLine.length > longestValue ? `${oneLine.slice(0, longestValue - 1)}…` : oneLine;
}

/** The facts of a problem, ready to be put into words. */
export function told(problem: Pick<Problem, 'place' | 'facts'>, { say, numbers }: Speech): Told {
  const facts: Facts = problem.facts;
  const number = (name: string) => {
    const value = facts[name];
    return typeof value === 'number' && Number.isFinite(value) ? value : null;
  };
  const list = (name: string) => {
    const value = facts[name];
    return typeof value === 'object' ? value : value === undefined ? [] : [String(value)];
  };
  const joined = (name: string, key: 'problems.part.and' | 'problems.part.or') =>
    list(name).reduce((first, second) => (first === '' ? second : say(key, { first, second })), '');
  return {
    say,
    numbers,
    place: problem.place,
    has: (name) => facts[name] !== undefined,
    text: (name) => {
      const value = facts[name];
      if (value === undefined) return say('problems.part.notSaid');
      if (typeof value === 'object') return value.map(clipped).join(', ');
      const text = clipped(String(value));
      return text === '' ? say('problems.part.empty') : text;
    },
    number,
    count: (...names) => names.map(number).find((value) => value !== null) ?? 0,
    list,
    either: (name) => joined(name, 'problems.part.or'),
    both: (name) => joined(name, 'problems.part.and'),
  };
}
