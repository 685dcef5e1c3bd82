import type { TankFacts } from './buildingFacts.ts';

/** A tank, or tanks joined at the foot: one body of water at one level. */
export interface TankGroup {
  /** By their letters: the first names the group. */
  readonly tankIds: readonly string[];
  /** In the order given. */
  readonly tanks: readonly TankFacts[];
}

/**
 * Which tanks are one body of water? Those joined at the foot, straight or through others.
 *
 * @param tanks - tanks as surveyed: tankId and joinedTo [text]
 * @returns the bodies of water in the order of their first tanks: tankIds [text]
 * @law every tank is in exactly one; which of two names the other, and the order of rows, change no body of water
 * @definition ours
 */
export function tankGroups(tanks: readonly TankFacts[]): readonly TankGroup[] {
  const left = new Set(tanks);
  const groups: TankGroup[] = [];
  for (const first of tanks) {
    if (!left.delete(first)) continue;
    const members = [first];
    for (const one of members)
      for (const other of left)
        if (areJoined(one, other)) {
          left.delete(other);
          members.push(other);
        }
    const inOrder = tanks.filter((tank) => members.includes(tank));
    groups.push({ tankIds: inOrder.map(({ tankId }) => tankId).sort(), tanks: inOrder });
  }
  return groups;
}

function areJoined(a: TankFacts, b: TankFacts): boolean {
  return a.joinedTo === b.tankId || b.joinedTo === a.tankId;
}
