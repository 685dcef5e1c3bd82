import type { Problem } from '@eavewell/engine';

/** Nothing was written, and why. */
export class WriteRefused extends Error {
  readonly problem: Problem;
  constructor(problem: Problem) {
    super(`${problem.code}: ${problem.facts['value']}`);
    this.name = 'WriteRefused';
    this.problem = problem;
  }
}
