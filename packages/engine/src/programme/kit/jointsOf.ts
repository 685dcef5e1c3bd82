import type { CountedBy } from '../../kernel/index.ts';
import type { CountedDesign, CountedOne } from './kitFacts.ts';
import type { KitLine } from './kitLine.ts';
import { isCut } from './kitRuns.ts';
import type { ReadyRules } from './readyRules.ts';

/** What joints are counted by, by the lengths they are in. */
const jointOf: Readonly<Partial<Record<CountedBy, CountedBy>>> = { gutterMetre: 'gutterJoint', pipeMetre: 'pipeJoint' };

/**
 * Where are runs joined? A gutter or pipe that is cut from bars is joined once less than it has pieces; one that is bought by the metre
 * nowhere; of one that nothing is counted for nobody knows.
 */
export function jointsOf(
  design: CountedDesign,
  lines: readonly KitLine[],
  { parts }: ReadyRules,
): readonly CountedOne[] {
  const counted = new Set<string>();
  const joints = new Map<string, number>();
  for (const { partId, counts, cuts } of lines) {
    for (const { countedBy, ofIds } of counts) {
      // Brackets along a gutter are no gutter.
      const part = parts.get(partId);
      if (part === undefined || !isCut({ ...part, kit: { ...part.kit, countedIn: 'piece' } }, countedBy)) continue;
      for (const ofId of ofIds) counted.add(`${countedBy} ${ofId}`);
      for (const { runId, joints_count } of cuts?.joints ?? [])
        if (ofIds.includes(runId))
          joints.set(`${countedBy} ${runId}`, (joints.get(`${countedBy} ${runId}`) ?? 0) + joints_count);
    }
  }
  return design.counted.flatMap((one) => {
    const countedBy = jointOf[one.countedBy];
    if (countedBy === undefined) return [];
    const key = `${one.countedBy} ${one.ofId ?? ''}`;
    const things_count = counted.has(key) ? (joints.get(key) ?? 0) : null;
    return [{ ...one, countedBy, things_count, run: null, partId: null }];
  });
}
