import { expect, it } from 'vitest';
import { type SiteFacts, unmeasuredGutter, unmeasuredRoof, unmeasuredSite, unmeasuredTank } from '../kernel/index.ts';
import type { FittingChange } from './changes.ts';
import { nothingToBuy } from './cost.ts';
import { fittedSite } from './fittedSite.ts';

const gutter = { ...unmeasuredGutter, gutterId: 'G1', roofId: 'R1', length_m: 9, outlet_mm: 60, runToOutlet_m: 9 };
const site = {
  ...unmeasuredSite,
  roofs: [{ ...unmeasuredRoof, roofId: 'R1', eaveHeight_m: 4 }],
  gutters: [gutter],
  downpipes: [{ downpipeId: 'D7', roofId: 'R1', bore_mm: 50, length_m: 3.2 }],
  tanks: [{ ...unmeasuredTank, tankId: 'T1', overflowBore_mm: 60, overflows_count: 2 }],
} as unknown as SiteFacts;
const made = (change: FittingChange, before = nothingToBuy, of = site) => fittedSite(of, change, before);

it('gives a gutter the section of its part, and buys one that was to be hung anyway as that part alone', () => {
  const change: FittingChange = {
    kind: 'largerGutter',
    gutterIds: ['G1'],
    partId: 'big',
    shape: 'halfRound',
    topWidth_mm: 200,
    baseWidth_mm: null,
    depth_mm: 100,
  };
  const hung = { gutterId: 'G1', length_m: 9, leastWidth_mm: null, leastDepth_mm: null };
  const { site: after, toBuy } = made(change, { ...nothingToBuy, gutter_m: [hung] });
  expect(after.gutters[0]).toMatchObject({ shape: 'halfRound', width_mm: 200, depth_mm: 100, length_m: 9 });
  expect(toBuy).toMatchObject({ gutter_m: [], runs: [{ partId: 'big', runs_m: [9] }] });
});

it('buys every outlet of a larger bore, and only the new one beside those there; ways to outlets are alike again', () => {
  const outlet = { kind: 'outlet', gutterIds: ['G1'], partId: 'o' } as const;
  const both = made({ ...outlet, outlet_mm: 90, added_count: 1 });
  expect(both.site.gutters[0]).toMatchObject({ outlet_mm: 90, outlets_count: 2, runToOutlet_m: null });
  expect(both.toBuy.pieces).toEqual([{ partId: 'o', pieces_count: 2 }]);
  const beside = made({ ...outlet, outlet_mm: null, added_count: 1 });
  expect(beside.site.gutters[0]).toMatchObject({ outlet_mm: 60, outlets_count: 2 });
  expect(beside.toBuy.pieces).toEqual([{ partId: 'o', pieces_count: 1 }]);
  const unmeasured = { ...site, gutters: [{ ...gutter, length_m: null }] };
  // Nine metres to one outlet, of a length nobody knows: to two it is half as far at most.
  expect(made({ ...outlet, outlet_mm: null, added_count: 1 }, nothingToBuy, unmeasured).site.gutters[0]).toMatchObject({
    runToOutlet_m: 4.5,
  });
});

it('never makes the way to an outlet longer by one more: those in the middle stay there', () => {
  const runWith = (length_m: number, outlets_count: number, runToOutlet_m: number) => {
    const of = { ...site, gutters: [{ ...gutter, length_m, outlets_count, runToOutlet_m }] };
    const change = { kind: 'outlet', gutterIds: ['G1'], partId: 'o', outlet_mm: null, added_count: 1 } as const;
    return made(change, nothingToBuy, of).site.gutters[0]!.runToOutlet_m;
  };
  // Two outlets over twelve metres, each in the middle of six: three metres to them. Three in the middle of four: two.
  expect(runWith(12, 2, 3)).toBe(2);
  expect(runWith(12, 1, 6)).toBe(3);
  // Neither at the ends nor in the middle: three of them at the ends would be four metres off, so the way stays.
  expect(runWith(12, 2, 3.5)).toBe(3.5);
  expect(runWith(12, 2, 6)).toBeNull();
});

it('sets downpipes in the place of those named and beside them, as long as the longest there', () => {
  const pipe = { kind: 'downpipe', roofId: 'R1', partId: 'd', bore_mm: 90 } as const;
  const { site: after, toBuy } = made({ ...pipe, downpipeIds: ['D7'], added_count: 1 });
  expect(after.downpipes).toEqual([
    { downpipeId: 'D7', roofId: 'R1', bore_mm: 90, length_m: 3.2 },
    { downpipeId: 'D1', roofId: 'R1', bore_mm: 90, length_m: 3.2 },
  ]);
  expect(toBuy.runs).toEqual([{ partId: 'd', runs_m: [3.2, 3.2] }]);
  // Where none was measured there is still none to judge, and it is bought as long as the eave is high.
  const bare = made({ ...pipe, downpipeIds: [], added_count: 1 }, nothingToBuy, { ...site, downpipes: [] });
  expect([bare.site.downpipes, bare.toBuy.runs]).toEqual([[], [{ partId: 'd', runs_m: [4] }]]);
});

it('buys as many overflows as the tank has, and changes nothing that is not there', () => {
  const overflow = { kind: 'overflow', partId: 'v', bore_mm: 110 } as const;
  const { site: after, toBuy } = made({ ...overflow, tankId: 'T1' });
  expect([after.tanks[0]!.overflowBore_mm, toBuy.pieces]).toEqual([110, [{ partId: 'v', pieces_count: 2 }]]);
  expect(made({ ...overflow, tankId: 'T9' })).toEqual({ site, toBuy: nothingToBuy });
});

it('has what takes the place of something that stands still to be built, and leaves what stays as it is', () => {
  const built = <T extends object>(one: T) => ({ ...one, isBuilt: true });
  const of = { ...site, gutters: [built(gutter)], downpipes: site.downpipes.map(built) };
  const pipes = made(
    { kind: 'downpipe', roofId: 'R1', downpipeIds: ['D7'], added_count: 1, partId: 'd', bore_mm: 90 },
    nothingToBuy,
    of,
  );
  expect(pipes.site.downpipes.map(({ isBuilt }) => isBuilt ?? false)).toEqual([false, false]);
  expect(pipes.site.gutters).toBe(of.gutters);
  const size = { shape: 'halfRound', topWidth_mm: 200, baseWidth_mm: null, depth_mm: 100 } as const;
  const gutters = made({ kind: 'largerGutter', gutterIds: ['G1'], partId: 'big', ...size }, nothingToBuy, of);
  expect(gutters.site.gutters[0]!.isBuilt).toBe(false);
});
