import type { Problem } from '@eavewell/engine';
import { problemSentence } from '@eavewell/words';
import { spoken } from '../language.ts';
import { printable } from '../print/text.ts';
import type { Context } from './context.ts';

/** What is wrong with a data folder, in words, on the screen of the program. */
export function tellProblems(problems: readonly Problem[], { stderr }: Context['around']): void {
  for (const problem of problems) {
    const { what, todo } = problemSentence(problem, spoken);
    stderr.write(`${printable(what)} ${printable(todo)}\n`);
  }
}
