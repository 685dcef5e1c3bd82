import type { RolloutPlan, RolloutProblem } from '@eavewell/engine';

/** A plan to go on from; where only some crews may change, the trips of all others are locked, and so are those that are to be kept. */
export function startOf(
  { crews }: RolloutProblem,
  { trips }: RolloutPlan,
  onlyCrews: readonly string[] | null,
  isKept: (crew: number, trip: number) => boolean = () => false,
): RolloutPlan {
  const mayChange = (crew: number) => onlyCrews === null || onlyCrews.includes(crews[crew]!.crewId);
  return {
    trips: trips.map((own, crew) =>
      own.map((trip, at) => (mayChange(crew) && !isKept(crew, at) ? trip : { ...trip, isLocked: true })),
    ),
  };
}
