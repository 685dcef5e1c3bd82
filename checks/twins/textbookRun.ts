import type { Balance, RunRules } from '@eavewell/engine';

/** What the textbook rules give on one day [L]. */
export interface TextbookDay {
  readonly judged: number;
  readonly other: number;
  readonly content: number;
  readonly spill: number;
}

/**
 * The rules as printed, written apart from the engine: with θ = 0 yield after spill, θ = 1 yield before spill,
 * Y = min(D, V + θQ), V' = min(V + Q − Y, S − (1 − θ)Y) (Jenkins 1978; Latham 1983; Fewkes & Butler 2000).
 * Ours, drawFirst, takes Y as θ = 0 does and fills to S: Y = min(D, V), V' = min(V − Y + Q, S).
 */
export function textbookRun(balance: Balance, S: number, rules: RunRules): TextbookDay[] {
  const theta = rules.order === 'ybs' ? 1 : 0;
  let V = rules.start === 'full' ? S : 0;
  let found: TextbookDay[] = [];
  for (let pass = 0; pass < rules.passes; pass++) {
    found = [];
    balance.inflow_L.forEach((Q, day) => {
      const [D1, D2] = [balance.judged_L[day]!, balance.other_L[day]!];
      const Y = Math.min(D1 + D2, V + theta * Q);
      const ceiling = rules.order === 'drawFirst' ? S : S - (1 - theta) * Y;
      const next = Math.min(V + Q - Y, ceiling);
      found.push({ judged: Math.min(D1, Y), other: Y - Math.min(D1, Y), content: next, spill: V + Q - Y - next });
      V = next;
    });
  }
  return found;
}
