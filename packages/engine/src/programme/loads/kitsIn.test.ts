import { expect, it } from 'vitest';
import { kitsIn } from './kitsIn.ts';
import { carrier, piece } from './pieces.testing.ts';

const kit = [
  piece('tank', 40, 2, { sides_m: [1, 1, 1.5] }),
  piece('gutter', 5, 10, { sides_m: [4, 0.1, 0.1] }),
  piece('box', 10, 1, { bulk_L: 100 }),
];
// 140 kg and 3000 + 400 + 100 = 3500 L.
const space = (more = {}) =>
  carrier('shippingContainer', 20_000, { limit_L: 33_000, longest_m: 5.9, stowage_fraction: 0.8, ...more });
const kitsOf = (checked: ReturnType<typeof kitsIn>) => (checked.ok ? checked.value : null);
const codesOf = (checked: ReturnType<typeof kitsIn>) => checked.problems.map(({ code }) => code);

it('counts whole kits by the limit that is reached first', () => {
  const found = kitsOf(kitsIn(kit, space(), []));
  expect(found).toMatchObject({ kits_count: 7, limitedBy: 'bulk', byMass_count: 142, byBulk_count: 7 });
  expect(found!.kit_kg).toBe(140);
  expect(found!.kit_L).toBeCloseTo(3500, 9);
  expect(kitsOf(kitsIn(kit, space({ limit_kg: 600 }), []))).toMatchObject({ kits_count: 4, limitedBy: 'mass' });
  expect(kitsOf(kitsIn(kit, space({ limit_L: null }), []))).toMatchObject({
    kits_count: 142,
    limitedBy: 'mass',
  });
});

it('counts none where a piece is too long or the kit is not to travel together', () => {
  const long = kitsIn(kit, space({ longest_m: 3.9 }), []);
  expect(kitsOf(long)).toMatchObject({ kits_count: 0, limitedBy: 'longest' });
  expect(long.problems[0]!.facts['over_m']).toBeCloseTo(0.1, 12);
  const apart = kitsIn(kit, space(), [{ partId: 'box', otherPartId: 'tank' }]);
  expect(kitsOf(apart)).toMatchObject({ kits_count: 0, limitedBy: 'keptApart' });
  expect(codesOf(apart)).toEqual(['loads.kit_kept_apart']);
});

it('counts one kit where it holds a part that is kept apart from its own kind', () => {
  const apart = [{ partId: 'box', otherPartId: 'box' }];
  expect(kitsOf(kitsIn(kit, space(), apart))).toMatchObject({
    kits_count: 1,
    limitedBy: 'keptApart',
    byMass_count: 142,
  });
  expect(kitsOf(kitsIn([...kit, piece('box', 1, 1, { bulk_L: 1 })], space(), apart))).toMatchObject({ kits_count: 0 });
});

it('counts nothing where something is not known, and says what', () => {
  const noMass = kitsIn([...kit, piece('bag', null, 3, { bulk_L: 1 })], space(), []);
  expect(kitsOf(noMass)).toMatchObject({ kits_count: null, limitedBy: null, byMass_count: 142 });
  expect(kitsOf(noMass)!.noMass).toEqual([{ partId: 'bag', name: 'bag', each_count: 1, count: 3 }]);
  expect(codesOf(kitsIn([...kit, piece('bag', 1)], space(), []))).toEqual(['loads.bulk_unknown']);
  expect(codesOf(kitsIn(kit, carrier('truck', null), []))).toEqual(['loads.no_limit']);
  for (const stowage_fraction of [0, -1, 1.1, Number.NaN])
    expect(codesOf(kitsIn(kit, space({ stowage_fraction }), []))).toEqual(['loads.figure_unusable']);
  expect(kitsOf(kitsIn([], space(), []))).toMatchObject({ kits_count: null });
});
