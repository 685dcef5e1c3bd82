import type { Crew, RolloutProblem } from './problem.ts';

/** What is otherwise than in the programme. `by`: so many more, or fewer. */
export interface RolloutChange {
  readonly kind: 'asIs' | 'crews' | 'carriers' | 'forwardStore' | 'newStore';
  /** Id of the carrier or of the store's place; null: of no one thing. */
  readonly of: string | null;
  readonly by_count: number;
  /** Id of the crew that loads elsewhere, and of a second that does so too; null: of no one crew. */
  readonly crewId: string | null;
  readonly otherCrewId: string | null;
}

export interface RolloutVariant {
  readonly change: RolloutChange;
  readonly problem: RolloutProblem;
}

/**
 * What would other crews, boats and stores do? The rollout as it is; with a crew fewer, and one and two more like its first; with one more and one fewer
 * of each carrier that crews share; without each forward store, its crews loading at the store behind; with each store that is not there yet, one crew of the store behind loading at it.
 *
 * @param problem - the rollout as numbers [day, kg, L, person]
 * @param possible - the same with stores that could be, at which no crew loads; left out: none
 * @returns variants, the rollout as it is first [count]
 * @law sites, ways and goods are the same in all
 * @definition ours: docs/methods/rollout.md, The command
 */
export function rolloutVariants(
  problem: RolloutProblem,
  possible: RolloutProblem = problem,
): readonly RolloutVariant[] {
  const { crews, pools, stores, placeIds } = problem;
  const first = crews[0];
  if (first === undefined) return [];
  const fewer = crews.length > 1 ? [crewsBy(problem, -1, crews.slice(0, -1))] : [];
  const more = [1, 2].map((by) =>
    crewsBy(problem, by, [...crews, ...Array.from({ length: by }, (_, at) => like(first, at + 1))]),
  );
  const carriers = pools.flatMap(({ carrierId, carriers_count }, at) =>
    [-1, 1]
      .filter((by) => carriers_count + by > 0)
      .map(
        (by_count): RolloutVariant => ({
          change: { ...ofNobody, kind: 'carriers', of: carrierId, by_count },
          problem: {
            ...problem,
            pools: pools.map((pool, nth) =>
              nth === at ? { ...pool, carriers_count: carriers_count + by_count } : pool,
            ),
          },
        }),
      ),
  );
  const without = stores.flatMap(({ node, filledBy }, at): readonly RolloutVariant[] =>
    filledBy === null || !crews.some(({ store }) => store === at)
      ? []
      : [
          {
            change: { ...ofNobody, kind: 'forwardStore', of: placeIds[node]!, by_count: -1 },
            problem: {
              ...problem,
              crews: crews.map((crew) => (crew.store === at ? { ...crew, store: filledBy.store } : crew)),
            },
          },
        ],
  );
  const asIs: RolloutVariant = { change: { ...ofNobody, kind: 'asIs' }, problem };
  return [asIs, ...fewer, ...more, ...carriers, ...without, ...withStores(possible)];
}

const ofNobody = { of: null, by_count: 0, crewId: null, otherCrewId: null } as const;

/** Each store that can be filled and at which nobody loads: one crew after the other of those that load behind it loads there. */
function withStores(problem: RolloutProblem): readonly RolloutVariant[] {
  const { crews, stores, placeIds } = problem;
  return stores.flatMap(({ node, filledBy }, at): readonly RolloutVariant[] => {
    if (filledBy === null || crews.some(({ store }) => store === at)) return [];
    const { there_days, back_days, store: behind } = filledBy;
    if (![there_days, back_days].every((days) => days.some(Number.isFinite))) return [];
    return crews
      .filter(({ store }) => store === behind)
      .map(({ crewId }) => ({
        change: { kind: 'newStore', of: placeIds[node]!, by_count: 1, crewId, otherCrewId: null },
        problem: { ...problem, crews: crews.map((crew) => (crew.crewId === crewId ? { ...crew, store: at } : crew)) },
      }));
  });
}

/** What came of a variant, as far as it is held against others. */
interface Tried {
  readonly change: RolloutChange;
  readonly waiting: number;
  readonly cost: number;
}

/**
 * Would a store that is not there yet serve two crews? Those two of the crews that did best when each loaded there alone, at every store that more than one
 * of them tried.
 *
 * @param possible - the rollout with stores that could be, at which no crew loads [day, kg, L, person]
 * @param tried - what came of the variants with one crew at such a store [person-day, currency]
 * @returns a variant for each such store, the two crews that waited least at it [count]
 * @law two crews and a store, as tried alone; nothing else is otherwise
 * @definition ours: docs/methods/rollout.md, The command
 */
export function pairedVariants(possible: RolloutProblem, tried: readonly Tried[]): readonly RolloutVariant[] {
  const { stores, placeIds, crews } = possible;
  const alone = tried.filter(({ change }) => change.kind === 'newStore');
  return [...new Set(alone.map(({ change }) => change.of))].flatMap((of): readonly RolloutVariant[] => {
    const [best, next] = alone
      .filter(({ change }) => change.of === of)
      .sort((a, b) => a.waiting - b.waiting || a.cost - b.cost);
    if (best === undefined || next === undefined) return [];
    const at = stores.findIndex(({ node, filledBy }) => placeIds[node] === of && filledBy !== null);
    const both = [best.change.crewId, next.change.crewId];
    return [
      {
        change: { ...best.change, otherCrewId: next.change.crewId },
        problem: {
          ...possible,
          crews: crews.map((crew) => (both.includes(crew.crewId) ? { ...crew, store: at } : crew)),
        },
      },
    ];
  });
}

function crewsBy(problem: RolloutProblem, by_count: number, crews: readonly Crew[]): RolloutVariant {
  return { change: { ...ofNobody, kind: 'crews', by_count }, problem: { ...problem, crews } };
}

/** A crew like another, that has learned nothing yet. */
function like(crew: Crew, nth: number): Crew {
  return { ...crew, crewId: `${crew.crewId}+${nth}`, done_count: 0 };
}
