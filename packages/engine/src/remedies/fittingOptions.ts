import type { PartFacts, SiteFacts, Verdict } from '../kernel/index.ts';
import type { FittingChange } from './changes.ts';
import { compareCosts, type RemedyCost, remedyCost, type ToBuy } from './cost.ts';
import { fittedSite } from './fittedSite.ts';
import type { OthersTried } from './judgeOthers.ts';
import type { Market } from './market.ts';

/** What gutters and pipes are looked for with. */
export interface FittingCase {
  /** What has to be bought for the other changes: gutter among it that may be of another part. */
  readonly toBuy: ToBuy;
  readonly market: Market;
  /** How do the stations stand that no day of rain is run for? */
  judge(site: SiteFacts): Pick<OthersTried, 'drainage' | 'head'>;
}

/** Changes made together to one place, with what they cost. */
export interface FittingOption {
  readonly changes: readonly FittingChange[];
  readonly cost: RemedyCost;
  /** Of the parts together, to tell the smaller of two that cost the same [mm]. */
  readonly size_mm: number;
}

/** What a change is to reach. */
export type Reached = Extract<Verdict, 'holds' | 'tight'>;

export function reaches(verdict: Verdict | undefined, target: Reached): boolean {
  return verdict === 'holds' || (target === 'tight' && verdict === 'tight');
}

/** The site with these changes, and what they cost. */
export function optionOf(
  site: SiteFacts,
  changes: readonly FittingChange[],
  given: FittingCase,
  toBuy: ToBuy,
): FittingOption {
  let bought = toBuy;
  let changed = site;
  for (const change of changes) ({ site: changed, toBuy: bought } = fittedSite(changed, change, bought));
  const size_mm = changes.reduce((sum, change) => sum + sizeOf_mm(change), 0);
  return { changes, cost: remedyCost(bought, given.market), size_mm };
}

export function withFittings(site: SiteFacts, changes: readonly FittingChange[], toBuy: ToBuy): SiteFacts {
  return changes.reduce((changed, change) => fittedSite(changed, change, toBuy).site, site);
}

function sizeOf_mm(change: FittingChange): number {
  switch (change.kind) {
    case 'largerGutter':
      return change.topWidth_mm + change.depth_mm;
    case 'outlet':
      return change.outlet_mm ?? 0;
    default:
      return change.bore_mm;
  }
}

/** Which is bought rather: the cheaper, an unknown cost last; then fewer changes, smaller parts, and by name. */
export function compareOptions(a: FittingOption, b: FittingOption): number {
  return (
    compareCosts(a.cost, b.cost) ||
    a.changes.length - b.changes.length ||
    a.size_mm - b.size_mm ||
    byText(namesOf(a), namesOf(b))
  );
}

export function cheapestOf(options: readonly FittingOption[]): FittingOption | null {
  return options.reduce<FittingOption | null>(
    (best, one) => (best === null || compareOptions(one, best) < 0 ? one : best),
    null,
  );
}

/** Catalogue parts of a kind whose bore is known, the smallest first. */
export function boresOf(
  kind: string,
  parts: readonly PartFacts[],
): readonly (PartFacts & { readonly bore_mm: number })[] {
  return parts
    .filter((part): part is PartFacts & { readonly bore_mm: number } => part.kind === kind && part.bore_mm !== null)
    .sort((a, b) => a.bore_mm - b.bore_mm || byText(a.partId, b.partId));
}

function namesOf({ changes }: FittingOption): string {
  return JSON.stringify(changes);
}

function byText(a: string, b: string): number {
  return a < b ? -1 : Number(a > b);
}
