/** What figures of a plan lean on that nobody stated. */
export interface LeanedOn {
  /** Sites of whose kit something could not be counted. */
  readonly kitInPart: ReadonlySet<string>;
  /** Sites with a part that has no mass. */
  readonly unweighed: ReadonlySet<string>;
  /** Parts that are planned as if they lay in store. */
  readonly presumed: ReadonlySet<string>;
}

interface Told {
  readonly code: string;
  readonly facts: Readonly<Record<string, unknown>>;
}

/** Which sites and parts do problems name of which less is known than the figures say? */
export function leanedOn(problems: readonly Told[]): LeanedOn {
  const named = (code: string, fact: string) =>
    new Set(problems.filter((one) => one.code === code).flatMap(({ facts }) => idsOf(facts[fact])));
  return {
    kitInPart: named('rollout.kit_in_part', 'sites'),
    unweighed: named('rollout.mass_unknown', 'sites'),
    presumed: named('rollout.stock_unknown', 'parts'),
  };
}

const idsOf = (value: unknown): readonly string[] => (Array.isArray(value) ? value.map(String) : []);
