import { type RolloutComparison, rolloutComparison } from '@eavewell/tables';
import { expect } from 'vitest';
import { dayIn } from './rolloutServed.ts';
import type { Page } from './served.ts';

export type Row = { readonly key: string; readonly cells: Readonly<Record<string, string>> };

/** What is held of plans that were found. */
export const found = async (page: Page, programme: string) =>
  (await page.ask('GET', `${programme}/rollout/search`)).body.found as readonly {
    readonly into: string;
    readonly planId: string;
    readonly by: string;
    readonly at: string;
    readonly entered_count: number;
    readonly isPlanChanged: boolean;
  }[];

/** Asks for a plan in place of the first that is held. */
export const heldAsk = { from: 'P1', into: 'P1', isHeld: true };

/** What was found beside the first plan. */
export async function beside(page: Page, programme: string, id: string): Promise<RolloutComparison> {
  const { status, body } = await page.ask('GET', `${programme}/rollout/compared?a=P1&b=${id}`);
  expect([status, body.detail]).toEqual([200, undefined]);
  return rolloutComparison.parse(body);
}

/** A way that is closed from today on. */
export const closes = (wayId: string, days: number) => ({
  ...{ kind: 'added', table: 'closures', key: 'C9' },
  after: { closureId: 'C9', wayId, from: dayIn(0), to: dayIn(days), reason: 'a tree across' },
});
