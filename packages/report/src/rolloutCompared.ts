import { isoDay, type ProgrammeFacts, type RolloutChange, type RolloutProblem } from '@eavewell/engine';
import type { RolloutReport } from '@eavewell/tables';
import type { Language } from '@eavewell/words';

/** What came of a variant of the rollout. */
export interface ComparedGiven {
  readonly change: RolloutChange;
  readonly crews_count: number;
  readonly waiting: number;
  readonly cost: number;
  readonly finish: number;
  readonly leftOut_count: number;
}

/** What its sentences are made with. */
interface ComparedTold {
  readonly facts: ProgrammeFacts;
  readonly problem: RolloutProblem;
  readonly nameOf: ReadonlyMap<string, string>;
  readonly language: Language;
}

/** The cheapest first: down the list waiting falls, save for those that another beats in both. */
export function rolloutCompared(
  all: readonly ComparedGiven[],
  { facts, problem, nameOf, language }: ComparedTold,
): NonNullable<RolloutReport['compared']> {
  const carriers = new Map(facts.kit.carriers.map(({ carrierId, name }) => [carrierId, name]));
  const priced = all.map((one) => {
    const setUp_amount = one.change.kind === 'newStore' ? setUpOf(facts, one.change.of) : null;
    return { ...one, setUp_amount, cost: one.cost + (setUp_amount ?? 0) };
  });
  const crewName = (id: string | null) => facts.rollout.crews.find(({ crewId }) => crewId === id)?.name ?? id ?? '';
  const isBeaten = (one: ComparedGiven) =>
    priced.some(
      (by) => by.waiting <= one.waiting && by.cost <= one.cost && (by.waiting < one.waiting || by.cost < one.cost),
    );
  return priced
    .sort((a, b) => a.cost - b.cost || a.waiting - b.waiting)
    .map((one) => {
      const { kind, of, by_count, crewId, otherCrewId } = one.change;
      const name = of === null ? '' : (carriers.get(of) ?? nameOf.get(of) ?? of);
      return {
        ...{
          kind,
          of,
          by_count,
          crewId,
          otherCrewId,
          setUp_amount: one.setUp_amount,
          crews_count: one.crews_count,
          leftOut_count: one.leftOut_count,
        },
        ...{
          finish: isoDay(problem.firstDay + Math.floor(one.finish)),
          weighted: one.waiting,
          cost: one.cost,
          isBeaten: isBeaten(one),
        },
        said: language.say(`rolloutReport.variant.${kind}`, {
          count: Math.abs(by_count),
          isMore: by_count > 0 ? 'yes' : 'no',
          name,
          ...{ crew: crewName(crewId), other: crewName(otherCrewId), isTwo: otherCrewId === null ? 'no' : 'yes' },
          isPriced: one.setUp_amount === null ? 'no' : 'yes',
        }),
      };
    });
}

/** What making a store of a place costs; null: not known. */
function setUpOf({ rollout }: ProgrammeFacts, placeId: string | null): number | null {
  return rollout.places.find((place) => place.placeId === placeId)?.setUp_amount ?? null;
}
