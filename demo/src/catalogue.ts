import type { Row } from './draft.ts';

/** A tank of the demo's catalogue: every size, mass and price is made up. */
export interface CatalogueTank {
  readonly partId: string;
  readonly volume_L: number;
  readonly diameter_m: number;
  /** Height of the overflow above the floor [m]. */
  readonly overflowHeight_m: number;
  readonly mass_kg: number;
  readonly amount: number;
}

/** Height of every tank's outlet above its floor [m]: the foot keeps the settled dirt. */
export const outletHeight_m = 0.1;

/** Smallest first. The overflow stands where the round tank holds its stated volume. */
export const catalogueTanks: readonly CatalogueTank[] = [
  tank(2000, 1.3, 48, 260),
  tank(4500, 1.75, 96, 520),
  tank(7500, 2.1, 150, 830),
  tank(11000, 2.4, 215, 1160),
  tank(16500, 2.8, 310, 1690),
  tank(26000, 3.4, 470, 2600),
  tank(40000, 4.2, 690, 3900),
];

function tank(volume_L: number, diameter_m: number, mass_kg: number, amount: number): CatalogueTank {
  const floor_m2 = (Math.PI / 4) * diameter_m ** 2;
  const overflowHeight_m = Math.round(volume_L / floor_m2 / 10) / 100;
  return { partId: `tank-${volume_L}`, volume_L, diameter_m, overflowHeight_m, mass_kg, amount };
}

const currency = 'USD';
const seller = 'Works store';

/** Everything the demo programme buys. */
export function partRows(): Row[] {
  const tanks = catalogueTanks.map((of) => ({
    partId: of.partId,
    kind: 'tank',
    name: `tank, ${of.volume_L} L`,
    volume_L: of.volume_L,
    mass_kg: of.mass_kg,
    // The largest sizes travel as rings, nested.
    length_m: of.diameter_m,
    width_m: of.diameter_m,
    height_m: of.volume_L > 12000 ? 0.9 : Math.round((of.overflowHeight_m + 0.25) * 100) / 100,
    packSize: 1,
    supplier: 'Tank maker',
    leadTime_days: of.volume_L > 12000 ? 84 : 42,
  }));
  return [...tanks, ...smallParts.map(({ amount: _, ...part }) => part)];
}

/** What the parts cost on two days. */
export function priceRows(): Row[] {
  const priced = [...catalogueTanks, ...smallParts].map(({ partId, amount }) => ({ partId, amount }));
  return priced.flatMap(({ partId, amount }) => [
    { partId, priceDate: '2025-02-03', amount: Math.round(amount * 0.96), currency },
    { partId, priceDate: '2026-02-02', amount, currency },
  ]);
}

const smallParts = [
  small('gutter-4m', 'gutter', 'gutter, 4 m, with brackets', 6.5, [4, 0.16, 0.12], 10, 21, 24),
  small('downpipe-3m', 'downpipe', 'downpipe, 3 m', 4.2, [3, 0.1, 0.1], 10, 21, 15),
  small('diverter-pipe', 'diverter', 'first-flush pipe with ball and drain', 8, [2.4, 0.17, 0.17], 1, 35, 48),
  small('unit-hand', 'treatmentUnit', 'treatment unit with hand pump', 52, [1.1, 0.6, 0.8], 1, 90, 1450),
  small('cartridge-set', 'cartridge', 'set of three cartridges', 5.4, [0.6, 0.4, 0.2], 1, 90, 210),
];

function small(
  partId: string,
  kind: string,
  name: string,
  mass_kg: number,
  [length_m, width_m, height_m]: readonly [number, number, number],
  packSize: number,
  leadTime_days: number,
  amount: number,
) {
  return {
    partId,
    kind,
    name,
    mass_kg,
    length_m,
    width_m,
    height_m,
    packSize,
    supplier: seller,
    leadTime_days,
    amount,
  };
}
