import type { CostItem, CostReason } from './costItem.ts';
import { type CostHead, costHeads, headOfSpending } from './heads.ts';
import { spentPerYear } from './spending.ts';
import type { HeadCost } from './wholeLifeCost.ts';

/** What one item adds to one head, plain money a year, or why it is not known. */
export interface HeadPart {
  readonly head: CostHead;
  readonly what: string;
  readonly amount: number;
  readonly reason: CostReason | null;
}

/** What the items add to the heads, in plain money a year. */
export function headParts(items: readonly CostItem[], years_count: number): readonly HeadPart[] {
  return items.flatMap((item) => {
    const { head, what, timing, amount, pieces_count } = item;
    const life = timing.kind === 'renewed' ? (timing.life_years?.likely ?? null) : null;
    const isBoughtFirst = timing.kind !== 'renewed' || timing.isBoughtFirst;
    const spent = spentPerYear({ kind: timing.kind, isBoughtFirst }, life ?? years_count, years_count, 0);
    const part = (of: CostHead, factor: number, reason: CostReason | null): HeadPart => ({
      head: of,
      what,
      amount: reason === null && amount !== null ? pieces_count * amount.likely * factor : 0,
      reason,
    });
    const unpriced = amount === null ? (item.reason ?? 'amountUnknown') : null;
    const parts = isBoughtFirst ? [part(head, spent.first_factor, unpriced)] : [];
    if (timing.kind !== 'renewed') return parts;
    const isUnknown = life === null || unpriced !== null;
    // What outlasts the years is not renewed in them: that is known, and adds nothing.
    if (!isUnknown && spent.renewals_factor === 0) return parts;
    const reason = life === null ? 'lifeUnknown' : unpriced;
    return [...parts, part(headOfSpending('renewal', life), spent.renewals_factor, reason)];
  });
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
  parts: readonly Pick<HeadPart, 'amount' | 'reason'>[],
  more: readonly CostReason[],
): HeadCost {
  const found = [...parts.flatMap(({ reason }) => (reason === null ? [] : [reason])), ...more];
  const reasons = [...new Set(found)];
  const known_amount = parts.reduce((sum, { amount }) => sum + amount, 0);
  return { head, perYear_amount: reasons.length === 0 ? known_amount : null, known_amount, reasons };
}
