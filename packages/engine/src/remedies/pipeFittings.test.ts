import { expect, it } from 'vitest';
import { type PartFacts, type PipeFacts, type SiteFacts, unmeasuredPart, unmeasuredSite } from '../kernel/index.ts';
import { nothingToBuy } from './cost.ts';
import { fittedSite } from './fittedSite.ts';
import type { FittingCase } from './fittingOptions.ts';
import { pipeFittings } from './pipeFittings.ts';

const pipe = (pipeId: string, tankId: string | null, bore_mm = 15) =>
  ({ pipeId, tankId, bore_mm, length_m: 10, leg: tankId === null ? 'unitToTap' : 'tankToUnit' }) as PipeFacts;
const site = {
  ...unmeasuredSite,
  tanks: ['T1', 'T2'].map((tankId) => ({ tankId, joinedTo: null })),
  pipes: [pipe('A', 'T1'), pipe('B', 'T2'), pipe('C', null)],
} as unknown as SiteFacts;
const parts = [25, 40].map((bore_mm): PartFacts => {
  return { ...unmeasuredPart, partId: `p${bore_mm}`, kind: 'pipe', name: '', bore_mm, length_m: 5 };
});
const price = { currency: 'XTS', priceDate: 0 };
const prices = new Map(parts.map(({ partId, bore_mm }) => [partId, { price: { ...price, amount: bore_mm! } }]));

/** Each tank wants its own bore in the pipe that both share, and nothing else. */
function found(wanted_mm: Readonly<Record<string, number>>) {
  const judge = (changed: SiteFacts) => ({
    drainage: null,
    head: Object.entries(wanted_mm).map(([tankId, least_mm]) => ({
      tankIds: [tankId],
      verdict: changed.pipes[2]!.bore_mm! >= least_mm ? ('holds' as const) : ('short' as const),
    })),
  });
  const given = { toBuy: nothingToBuy, market: { parts, prices, cutWaste_mm: 0 }, judge } as unknown as FittingCase;
  const changes = pipeFittings(site, given, 'holds')!;
  let made = { site, toBuy: nothingToBuy };
  for (const change of changes) made = fittedSite(made.site, change, made.toBuy);
  return { changes, bores_mm: made.site.pipes.map(({ bore_mm }) => bore_mm), runs: made.toBuy.runs };
}

it('changes a pipe that two tanks share once, to the wider of the bores they want, whichever comes first', () => {
  const once = { bores_mm: [15, 15, 40], runs: [{ partId: 'p40', runs_m: [10] }] };
  expect(found({ T1: 25, T2: 40 })).toMatchObject(once);
  expect(found({ T1: 40, T2: 25 })).toMatchObject(once);
  expect(found({ T1: 40, T2: 25 }).changes).toEqual([{ kind: 'pipe', pipeIds: ['C'], partId: 'p40', bore_mm: 40 }]);
  expect(found({ T1: 25, T2: 25 }).runs).toEqual([{ partId: 'p25', runs_m: [10] }]);
});
