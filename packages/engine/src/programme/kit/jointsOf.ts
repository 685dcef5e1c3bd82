import type { CountedBy } from '../../kernel/index.ts';
import type { CountedDesign, CountedFor, CountedOne, Cutting, KitPart } from './kitFacts.ts';
import { cutsOf, isCut, knownOf, planOf } from './kitRuns.ts';
import type { ReadyRules } from './readyRules.ts';

/** What joints are counted by, by the lengths they are in. */
const jointOf: Readonly<Partial<Record<CountedBy, CountedBy>>> = { gutterMetre: 'gutterJoint', pipeMetre: 'pipeJoint' };

/**
 * Where are runs joined? A gutter or pipe that is cut from bars is joined once less than it has pieces; one that is bought by the metre
 * nowhere; of one that nothing is counted for nobody knows. Each run that is cut counts once, by whatever it is counted.
 */
export function jointsOf(
  design: CountedDesign,
  counted: readonly CountedFor[],
  { parts }: ReadyRules,
  cutting: Cutting,
): readonly CountedOne[] {
  const joints = new Map<string, number>();
  for (const one of counted) {
    const part = parts.get(one.partId);
    // Brackets along a gutter are no gutter, and spares alone are not cut.
    if (part === undefined || !isRun(part, one)) continue;
    for (const run of knownOf(one.ones).known) {
      const found_count = jointsIn(part, { ...one, ones: [run] }, cutting);
      const key = keyOf(run);
      if (found_count !== null) joints.set(key, (joints.get(key) ?? 0) + found_count);
    }
  }
  return design.counted.flatMap((one) => {
    const countedBy = jointOf[one.countedBy];
    if (countedBy === undefined) return [];
    return [{ ...one, countedBy, things_count: joints.get(keyOf(one)) ?? null, run: null, partId: null }];
  });
}

/** Is a run made of the part, in bars or by the metre? */
function isRun(part: KitPart, { countedBy, rule }: CountedFor): boolean {
  const isWanted = rule === null || rule.each_count > 0;
  return isWanted && isCut({ ...part, kit: { ...part.kit, countedIn: 'piece' } }, countedBy);
}

/** Joints of one run; null where the part has no length to cut from. */
function jointsIn(part: KitPart, one: CountedFor, cutting: Cutting): number | null {
  if (!isCut(part, one.countedBy)) return 0;
  const plans = cutsOf(one, one.ones).map((cut) => planOf([cut], part, cutting));
  return plans.reduce<number | null>(
    (sum, plan) => (sum === null || plan === null ? null : sum + plan.joints_count),
    0,
  );
}

function keyOf({ countedBy, ofId }: CountedOne): string {
  return `${countedBy} ${ofId ?? ''}`;
}
