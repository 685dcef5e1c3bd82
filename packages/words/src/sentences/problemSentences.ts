import type { ProblemCode } from '../problems.ts';
import { engineProblemSentences } from './engineProblems.ts';
import { recordProblemSentences } from './recordProblems.ts';
import { tableProblemSentences } from './tableProblems.ts';
import type { Sentences } from './telling.ts';

/** One sentence for every problem the product can name. A code without one does not compile. */
export const problemSentences: Sentences<ProblemCode> = {
  ...engineProblemSentences,
  ...recordProblemSentences,
  ...tableProblemSentences,
};
