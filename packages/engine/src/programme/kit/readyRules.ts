import { conditionIsUsable, engineProblem, type KitRule, type Problem } from '../../kernel/index.ts';
import { mostCutEach_count, mostEach_count, mostSpare_fraction } from './constants.ts';
import type { KitPart } from './kitFacts.ts';
import { isCut } from './kitRuns.ts';

/** Rules and parts looked through once, for all sites of a programme. */
export interface ReadyRules {
  /** Those that can be used, by ruleId. */
  readonly rules: readonly KitRule[];
  readonly parts: ReadonlyMap<string, KitPart>;
  readonly problems: readonly Problem[];
}

/**
 * Which rules can be used? Those whose part is in the catalogue, whose figures are figures, and whose conditions can be met or
 * not. The others are told, and count nothing.
 *
 * @param rules - rules as they stand in the table: each_count [count], spares [fraction, count]
 * @param parts - the catalogue: lengths [m], packs, stock [count], days to arrival [day]
 * @returns the rules by ruleId [count, fraction], parts by partId, and what is wrong with the others
 * @problem kit.part_unknown - a rule names a part that is not in the catalogue
 * @problem kit.rule_unusable - a figure of a rule is under 0, far too large or none
 * @problem kit.condition_unusable - a condition of a rule compares with something that cannot be compared
 * @law the order of rules changes nothing
 * @definition ours: docs/methods/kit.md
 */
export function readyRules(rules: readonly KitRule[], parts: readonly KitPart[]): ReadyRules {
  const byId = new Map(parts.map((part) => [part.partId, part]));
  const sorted = [...rules].sort(
    (a, b) => compareText(a.ruleId, b.ruleId) || compareText(JSON.stringify(a), JSON.stringify(b)),
  );
  const problems: Problem[] = [];
  const usable = sorted.filter((rule) => {
    const faults = [...faultsOf(rule, byId)];
    problems.push(...faults);
    return faults.length === 0;
  });
  return { rules: usable, parts: byId, problems };
}

function* faultsOf(rule: KitRule, parts: ReadonlyMap<string, KitPart>): Iterable<Problem> {
  const { ruleId, partId, countedBy, each_count, spare_fraction, leastSpare_count } = rule;
  const part = parts.get(partId);
  const place = { file: 'kitRules.csv' };
  if (part === undefined) yield engineProblem('kit.part_unknown', place, { partId, by: 'rule', of: [ruleId] });
  const isWithin = (value: number, most: number) => value >= 0 && value <= most;
  if (
    !isWithin(each_count, part && isCut(part, countedBy) ? mostCutEach_count : mostEach_count) ||
    !isWithin(spare_fraction, mostSpare_fraction) ||
    !isWithin(leastSpare_count, mostEach_count)
  )
    yield engineProblem('kit.rule_unusable', place, { ruleId });
  for (const condition of rule.conditions) {
    const { field, test, value } = condition;
    if (!conditionIsUsable(condition))
      yield engineProblem('kit.condition_unusable', { file: 'kitConditions.csv' }, { ruleId, field, test, value });
  }
}

/** The order of ids: by their letters, the same in every language. */
export function compareText(a: string, b: string): number {
  return a < b ? -1 : Number(a > b);
}
