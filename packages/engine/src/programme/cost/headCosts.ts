import { type CostHead, costHeads } from '../../kernel/index.ts';
import type { CostItem, CostReason } from './costItem.ts';
import type { Doubtful } from './doubtful.ts';
import { headOfSpending } from './heads.ts';
import { spentPerYear } from './spending.ts';
import type { HeadCost } from './wholeLifeCost.ts';

/** Which value of an amount, or of a life, is reckoned with. */
export type PickEnd = (figure: Doubtful, of: 'amount' | 'life') => number;

/** Every figure as it is likely, at the end that costs least, and most: a long life costs less. */
export const ends: Readonly<Record<'likely' | 'least' | 'most', PickEnd>> = {
  likely: (figure) => figure.likely,
  least: (figure, of) => (of === 'life' ? figure.high : figure.low),
  most: (figure, of) => (of === 'life' ? figure.low : figure.high),
};

/** What one item adds to one head, plain money a year, or why it is not known. */
export interface HeadPart {
  readonly head: CostHead;
  readonly what: string;
  readonly likely_amount: number;
  readonly least_amount: number;
  readonly most_amount: number;
  readonly reason: CostReason | null;
}

/** What the items add to the heads, in plain money a year. */
export function headParts(items: readonly CostItem[], years_count: number): readonly HeadPart[] {
  return items.flatMap((item) => {
    const { head, timing, amount } = item;
    const life = timing.kind === 'renewed' ? timing.life_years : null;
    const isBoughtFirst = timing.kind !== 'renewed' || timing.isBoughtFirst;
    const unpriced = amount === null ? (item.reason ?? 'amountUnknown') : null;
    const parts = isBoughtFirst ? [partOf(item, head, 'first_factor', unpriced, years_count)] : [];
    if (timing.kind !== 'renewed') return parts;
    const renewals = partOf(
      item,
      headOfSpending('renewal', life?.likely ?? null),
      'renewals_factor',
      life === null ? 'lifeUnknown' : unpriced,
      years_count,
    );
    // What outlasts the years is not renewed in them: that is known, and adds nothing.
    const outlasts =
      life !== null && spentPerYear({ kind: 'renewed', isBoughtFirst }, life.low, years_count, 0).renewals_factor === 0;
    return outlasts ? parts : [...parts, renewals];
  });
}

function partOf(
  { what, amount, pieces_count, timing }: CostItem,
  head: CostHead,
  which: 'first_factor' | 'renewals_factor',
  reason: CostReason | null,
  years: number,
): HeadPart {
  const at = (pick: PickEnd): number => {
    if (reason !== null || amount === null) return 0;
    const isBoughtFirst = timing.kind !== 'renewed' || timing.isBoughtFirst;
    const life = timing.kind === 'renewed' && timing.life_years !== null ? pick(timing.life_years, 'life') : years;
    return (
      pieces_count * pick(amount, 'amount') * spentPerYear({ kind: timing.kind, isBoughtFirst }, life, years, 0)[which]
    );
  };
  return {
    head,
    what,
    likely_amount: at(ends.likely),
    least_amount: at(ends.least),
    most_amount: at(ends.most),
    reason,
  };
}

/** The heads but cost of capital. A head of which nothing is stated is not known; that of renewals is known where a life is that outlasts the years. */
export function plainHeads(parts: readonly HeadPart[], isRenewalKnown: boolean): readonly HeadCost[] {
  return costHeads
    .filter((head) => head !== 'costOfCapital')
    .map((head) => {
      const own = parts.filter((part) => part.head === head);
      const isKnownNothing = head === 'capManEx' && isRenewalKnown;
      return headCost(head, own, own.length === 0 && !isKnownNothing ? ['notStated'] : []);
    });
}

/** One head of its parts, and why it is not known. */
export function headCost(
  head: CostHead,
  parts: readonly Omit<HeadPart, 'head' | 'what'>[],
  more: readonly CostReason[],
): HeadCost {
  const found = [...parts.flatMap(({ reason }) => (reason === null ? [] : [reason])), ...more];
  const sum = (of: 'likely_amount' | 'least_amount' | 'most_amount') =>
    parts.reduce((total, part) => total + part[of], 0);
  return headOf(
    head,
    { known_amount: sum('likely_amount'), least_amount: sum('least_amount'), most_amount: sum('most_amount') },
    found,
  );
}

/** One head of its sums, and why it is not known. */
export function headOf(
  head: CostHead,
  sums: Pick<HeadCost, 'known_amount' | 'least_amount' | 'most_amount'>,
  all: readonly CostReason[],
): HeadCost {
  const reasons = [...new Set(all)];
  return { head, perYear_amount: reasons.length === 0 ? sums.known_amount : null, ...sums, reasons };
}
