import type { CountedBy, KitRule } from '../../kernel/index.ts';
import type { CountedDesign, CountedFor, CountedOne } from './kitFacts.ts';
import type { ReadyRules } from './readyRules.ts';
import { conditionsHold } from './ruleHolds.ts';

/** All that is counted at a site, and what was left out on the way. */
export interface AllCounted {
  readonly counted: readonly CountedFor[];
  /** Things a rule would count though the design names the part they are. */
  readonly twice: readonly { readonly rule: KitRule; readonly ids: readonly string[] }[];
  /** Things a rule may or may not count, since a field it looks at is not known. */
  readonly undecided: readonly {
    readonly rule: KitRule;
    readonly ids: readonly string[];
    readonly fields: readonly string[];
  }[];
}

/** Of each part of a site: what counts it. Parts the design names come first, then rules in their order. */
export function countedFor(design: CountedDesign, { rules, parts }: ReadyRules): AllCounted {
  const byThing = new Map<CountedBy, CountedOne[]>();
  for (const one of design.counted) {
    const others = byThing.get(one.countedBy);
    if (others === undefined) byThing.set(one.countedBy, [one]);
    else others.push(one);
  }
  const names = namesOf(design);
  const counted: CountedFor[] = [...namedParts(design)];
  const twice: AllCounted['twice'][number][] = [];
  const undecided: AllCounted['undecided'][number][] = [];
  for (const rule of rules) {
    const kind = parts.get(rule.partId)!.kind;
    const isNamed = (one: CountedOne) =>
      rule.each_count > 0 &&
      (names.get(thingOf(one)) ?? []).some((partId) => partId === rule.partId || parts.get(partId)?.kind === kind);
    const ones: CountedOne[] = [];
    const named: CountedOne[] = [];
    const open: { readonly one: CountedOne; readonly fields: readonly string[] }[] = [];
    for (const one of byThing.get(rule.countedBy) ?? []) {
      const { held, fields } = conditionsHold(rule.conditions, one.choices, design.choices);
      if (held === 'unknown') open.push({ one, fields });
      else if (held === 'yes') (isNamed(one) ? named : ones).push(one);
    }
    if (named.length > 0) twice.push({ rule, ids: idsOf(named) });
    if (open.length > 0) {
      const fields = [...new Set(open.flatMap((each) => each.fields))].sort();
      undecided.push({ rule, ids: idsOf(open.map(({ one }) => one)), fields });
    }
    if (ones.length > 0) counted.push({ rule, partId: rule.partId, countedBy: rule.countedBy, ones });
  }
  return { counted, twice, undecided };
}

/** The parts each thing is said to be, whichever way it is counted: a gutter by its metres too, cartridges as their set. */
function namesOf({ counted }: CountedDesign): ReadonlyMap<string, readonly string[]> {
  const names = new Map<string, string[]>();
  for (const one of counted)
    if (one.partId !== null) names.set(thingOf(one), [...(names.get(thingOf(one)) ?? []), one.partId]);
  return names;
}

function thingOf({ countedBy, ofId }: CountedOne): string {
  return `${countedBy === 'cartridge' ? 'cartridgeSet' : countedBy.replace(/Metre$/, '')} ${ofId ?? ''}`;
}

/** Parts that the design names, each with the things that are so. */
function namedParts({ counted }: CountedDesign): Iterable<CountedFor> {
  const found = new Map<string, { partId: string; countedBy: CountedBy; ones: CountedOne[] }>();
  for (const one of counted) {
    const { partId, countedBy } = one;
    if (partId === null) continue;
    const key = JSON.stringify([partId, countedBy]);
    const others = found.get(key);
    if (others === undefined) found.set(key, { partId, countedBy, ones: [one] });
    else others.ones.push(one);
  }
  return [...found.values()].map((one) => ({ rule: null, ...one }));
}

export function idsOf(ones: readonly CountedOne[]): readonly string[] {
  return ones.flatMap(({ ofId }) => (ofId === null ? [] : [ofId]));
}
