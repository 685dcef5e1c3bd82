import type { EngineProblemCode, Facts, Place, Problem } from '@eavewell/engine';
import type { RecordProblemCode } from '@eavewell/records';
import type { TableProblemCode } from '@eavewell/tables';

/** Every problem the product can name. */
export type ProblemCode = EngineProblemCode | RecordProblemCode | TableProblemCode;

/** What a problem's sentence may ask of the problem. */
export interface Told {
  readonly place: Place;
  has(name: string): boolean;
  /** A fact as text; an empty cell reads `(empty)`. */
  text(name: string): string;
  /** A fact as a number, or null where it is none. */
  number(name: string): number | null;
  list(name: string): readonly string[];
}

/** Long values are cut, so that one bad cell cannot fill the screen. */
const longestValue = 60;

function clipped(value: string): string {
  const oneLine = value.replace(/\s+/g, ' ').trim();
  return oneLine.length > longestValue ? `${oneLine.slice(0, longestValue - 1)}…` : oneLine;
}

/** The facts of a problem, ready to be put into words. */
export function told(problem: Pick<Problem, 'place' | 'facts'>): Told {
  const facts: Facts = problem.facts;
  return {
    place: problem.place,
    has: (name) => facts[name] !== undefined,
    text: (name) => {
      const value = facts[name];
      if (value === undefined) return '(not said)';
      if (typeof value === 'object') return value.map(clipped).join(', ');
      const text = clipped(String(value));
      return text === '' ? '(empty)' : text;
    },
    number: (name) => {
      const value = facts[name];
      return typeof value === 'number' && Number.isFinite(value) ? value : null;
    },
    list: (name) => {
      const value = facts[name];
      return typeof value === 'object' ? value : value === undefined ? [] : [String(value)];
    },
  };
}
