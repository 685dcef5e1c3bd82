import { type CountedBy, engineProblem, type Problem } from '../../kernel/index.ts';
import type { CountedDesign, CountedFor } from './kitFacts.ts';
import type { ReadyRules } from './readyRules.ts';

/** The kind of part a thing is made of. Small things (bends, elbows, screens) may come with others, so that nobody is asked for them. */
const kindOf: Readonly<Partial<Record<CountedBy, readonly string[]>>> = {
  gutter: ['gutter'],
  downpipe: ['downpipe', 'pipe'],
  diverter: ['diverter'],
  tank: ['tank'],
  settlingTank: ['tank'],
  // Of blocks and cement, of boards or of steel.
  stand: ['stand', 'other'],
  pipe: ['pipe', 'downpipe'],
  tap: ['tap'],
  unit: ['treatmentUnit'],
  cartridgeSet: ['cartridge'],
};

/** Things that are there and that no part of their kind is counted for, by the thing or by its metres. */
export function thingsWithoutPart(
  design: CountedDesign,
  counted: readonly CountedFor[],
  { parts }: ReadyRules,
): readonly Problem[] {
  const served = new Set<string>();
  for (const { partId, countedBy, ones, rule } of counted) {
    const thing = countedBy.replace(/Metre$/, '') as CountedBy;
    const kind = parts.get(partId)?.kind;
    if (kind === undefined || !kindOf[thing]?.includes(kind) || rule?.each_count === 0) continue;
    for (const { ofId } of ones) served.add(`${thing} ${ofId ?? ''}`);
  }
  const cartridges = counted.some(({ partId, countedBy }) => countedBy === 'cartridge' && parts.has(partId));
  const without = new Map<CountedBy, string[]>();
  for (const { countedBy, ofId, things_count } of design.counted) {
    if (kindOf[countedBy] === undefined || things_count === 0) continue;
    if (served.has(`${countedBy} ${ofId ?? ''}`) || (countedBy === 'cartridgeSet' && cartridges)) continue;
    without.set(countedBy, [...(without.get(countedBy) ?? []), ...(ofId === null ? [] : [ofId])]);
  }
  return [...without].map(([countedBy, of]) =>
    engineProblem('kit.thing_without_part', { siteId: design.siteId }, { countedBy, of }),
  );
}
