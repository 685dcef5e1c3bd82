import { type CountedBy, countedBys, type RunOrigin } from '../../kernel/index.ts';
import { type BarPlan, barPlan, type CutRun } from '../../parts/index.ts';
import { mostCounted_count } from './constants.ts';
import type { CountedFor, CountedOne, Cutting, KitPart } from './kitFacts.ts';

/** Kinds of part that are cut from bars, by the length that counts them. */
const barKinds: Readonly<Partial<Record<CountedBy, readonly string[]>>> = {
  gutterMetre: ['gutter'],
  downpipeMetre: ['downpipe', 'pipe'],
  pipeMetre: ['pipe', 'downpipe'],
};

/** Lengths, of what parts are counted by. */
export function isLength(countedBy: CountedBy): boolean {
  return countedBy.endsWith('Metre') && countedBys.includes(countedBy);
}

/** Is a part cut from bars for this length: a gutter for gutters, a pipe or downpipe for pipes and downpipes, sold by the piece? */
export function isCut({ kind, kit }: KitPart, countedBy: CountedBy): boolean {
  return kit.countedIn === 'piece' && (barKinds[countedBy]?.includes(kind) ?? false);
}

/** Things that are counted, and those whose number or length is not known. */
export interface Known {
  readonly known: readonly CountedOne[];
  readonly unknown: readonly CountedOne[];
}

export function knownOf(ones: readonly CountedOne[]): Known {
  const isKnown = (one: CountedOne) => amountOf(one) !== null;
  return { known: ones.filter(isKnown), unknown: ones.filter((one) => !isKnown(one)) };
}

/** How many things, or how many metres; null: not known, or no number one can reckon with. */
export function amountOf({ countedBy, things_count, run }: CountedOne): number | null {
  const amount = isLength(countedBy) ? (run?.length_m ?? null) : things_count;
  return amount !== null && amount >= 0 && amount <= mostCounted_count ? amount : null;
}

/**
 * What is to be cut for a rule, or for what the design names: each run by itself, as many times as the rule asks for whole ones, and longer or
 * shorter by what it asks for beside.
 */
export function cutsOf({ rule }: CountedFor, known: readonly CountedOne[]): readonly CutRun[] {
  const each = rule?.each_count ?? 1;
  const times = Math.max(1, Math.floor(each));
  return known.flatMap((one) => {
    const length_m = (one.run?.length_m ?? 0) * (each / times);
    return Array.from({ length: times }, () => ({ runId: one.ofId ?? '', length_m }));
  });
}

/** The plan of all runs of one part at one site; null where the part cannot be cut. */
export function planOf(cuts: readonly CutRun[], { length_m }: KitPart, cutting: Cutting): BarPlan | null {
  if (length_m === null) return null;
  const inOrder = [...cuts].sort(
    (a, b) => (a.runId < b.runId ? -1 : Number(a.runId > b.runId)) || b.length_m - a.length_m,
  );
  return barPlan(inOrder, { length_m, ...cutting });
}

/** What is known of these runs in a way: ids of those whose length is assumed, say. */
export function idsFrom(ones: readonly CountedOne[], from: RunOrigin): readonly string[] {
  return ones.flatMap(({ run, ofId }) => (run?.from === from && ofId !== null ? [ofId] : []));
}
