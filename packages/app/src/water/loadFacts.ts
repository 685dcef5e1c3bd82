import type { ProgrammeFacts } from '@eavewell/engine';
import type { ToWater, WaterProblem } from './waterMessages.ts';

/** The facts of a site with all it rests on, or why there are none. */
export type FactsLoaded =
  | {
      readonly problem: null;
      readonly facts: ProgrammeFacts /** Another whenever anything of it is another. */;
      readonly tag: string;
    }
  | { readonly problem: WaterProblem; readonly body: unknown };

export async function loadFacts(_asked: Extract<ToWater, { kind: 'load' }>): Promise<FactsLoaded> {
  return { problem: 'notYet', body: null };
}
