import type { Row } from './draft.ts';
import { crewParts, withStock } from './kit.ts';
import { cartridgePart, unitFigures, unitParts } from './units.ts';

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

/** A shell of a large tank weighs so much at most [kg]. Invented. */
const shell_kg = 25;

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
    // The largest sizes travel as shells of rings, which two people carry.
    length_m: of.diameter_m,
    width_m: of.diameter_m,
    height_m: of.volume_L > 12000 ? 0.9 : Math.round((of.overflowHeight_m + 0.25) * 100) / 100,
    packSize: 1,
    ...(of.volume_L > 12000 ? { pieces_count: Math.ceil(of.mass_kg / shell_kg) } : {}),
    supplier: 'Tank maker',
    leadTime_days: of.volume_L > 12000 ? 84 : 42,
  }));
  return [...tanks, ...[...smallParts, ...fittings, ...crewParts].map(({ amount: _, ...part }) => part)].map(withStock);
}

/** What the parts cost on two days. */
export function priceRows(): Row[] {
  const priced = [...catalogueTanks, ...smallParts, ...fittings, ...crewParts].map(({ partId, amount }) => ({
    partId,
    amount,
  }));
  return priced.flatMap(({ partId, amount }) => [
    { partId, priceDate: '2025-02-03', amount: Math.round(amount * 0.96), currency },
    { partId, priceDate: '2026-02-02', amount, currency },
  ]);
}

const smallParts = [
  {
    ...small('gutter-4m', 'gutter', 'gutter, 4 m, with brackets', 6.5, [4, 0.16, 0.12], 10, 21, 24),
    ...{ shape: 'halfRound', topWidth_mm: 150, depth_mm: 75 },
  },
  { ...small('downpipe-3m', 'downpipe', 'downpipe, 3 m', 4.2, [3, 0.1, 0.1], 10, 21, 15), bore_mm: 90 },
  small('diverter-pipe', 'diverter', 'first-flush pipe with ball and drain', 8, [2.4, 0.17, 0.17], 1, 35, 48),
  {
    ...small(unitParts.plain, 'treatmentUnit', 'treatment unit with hand pump', 52, [1.1, 0.6, 0.8], 1, 90, 1450),
    ...unitFigures.plain,
  },
  {
    ...small(
      unitParts.virusTested,
      'treatmentUnit',
      'treatment unit with hand pump, tested with viruses',
      52,
      [1.1, 0.6, 0.8],
      1,
      90,
      1690,
    ),
    ...unitFigures.virusTested,
  },
  small(cartridgePart, 'cartridge', 'set of three cartridges', 5.4, [0.6, 0.4, 0.2], 1, 90, 210),
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

/** What goes between roof, tank, unit and tap, in the sizes that are sold. */
const fittings = [
  gutter(
    'gutter-half-200',
    'gutter, half round, 200 mm, 4 m',
    9.4,
    { shape: 'halfRound', topWidth_mm: 200, depth_mm: 100 },
    38,
  ),
  gutter(
    'gutter-half-250',
    'gutter, half round, 250 mm, 4 m',
    13,
    { shape: 'halfRound', topWidth_mm: 250, depth_mm: 125 },
    54,
  ),
  gutter(
    'gutter-box-200',
    'gutter, box, 200 mm, 4 m',
    14.5,
    { shape: 'rectangular', topWidth_mm: 200, depth_mm: 140 },
    61,
  ),
  gutter(
    'gutter-wide-240',
    'gutter, wider at the top, 240 mm, 4 m',
    15,
    { shape: 'trapezoidal', topWidth_mm: 240, baseWidth_mm: 175, depth_mm: 150 },
    66,
  ),
  bored('downpipe-110-3m', 'downpipe', 'downpipe, 110 mm, 3 m', 5.6, [3, 0.12, 0.12], 110, 21),
  bored('downpipe-160-3m', 'downpipe', 'downpipe, 160 mm, 3 m', 9.8, [3, 0.17, 0.17], 160, 37),
  bored('outlet-90', 'outlet', 'gutter outlet, 90 mm', 0.3, [0.2, 0.15, 0.12], 90, 6),
  bored('outlet-110', 'outlet', 'gutter outlet, 110 mm', 0.4, [0.22, 0.17, 0.14], 110, 8),
  bored('outlet-125', 'outlet', 'gutter outlet, 125 mm', 0.5, [0.24, 0.18, 0.15], 125, 10),
  bored('outlet-160', 'outlet', 'gutter outlet, 160 mm', 0.7, [0.28, 0.22, 0.18], 160, 14),
  bored('overflow-110', 'overflow', 'overflow pipe with elbow, 110 mm', 1.4, [0.5, 0.3, 0.15], 110, 16),
  bored('overflow-160', 'overflow', 'overflow pipe with elbow, 160 mm', 2.6, [0.6, 0.35, 0.2], 160, 29),
  bored('overflow-200', 'overflow', 'overflow pipe with elbow, 200 mm', 4.1, [0.7, 0.45, 0.25], 200, 46),
  bored('overflow-250', 'overflow', 'overflow pipe with elbow, 250 mm', 6.3, [0.8, 0.5, 0.3], 250, 71),
  bored('pipe-20', 'pipe', 'water pipe, 20.4 mm bore, 6 m', 1.3, [6, 0.03, 0.03], 20.4, 7),
  bored('pipe-26', 'pipe', 'water pipe, 26.2 mm bore, 6 m', 2, [6, 0.04, 0.04], 26.2, 11),
  bored('pipe-33', 'pipe', 'water pipe, 32.6 mm bore, 6 m', 3.1, [6, 0.05, 0.05], 32.6, 17),
  bored('pipe-41', 'pipe', 'water pipe, 40.8 mm bore, 6 m', 4.7, [6, 0.06, 0.06], 40.8, 26),
  bored('valve-26', 'valve', 'ball valve, 26 mm', 0.5, [0.12, 0.08, 0.08], 26.2, 13),
  bored('tap-20', 'tap', 'tap, 20 mm', 0.4, [0.15, 0.1, 0.08], 20.4, 9),
  small('leaf-screen', 'screen', 'leaf screen for a gutter outlet', 0.2, [0.2, 0.15, 0.15], 10, 21, 4),
  small('mosquito-screen', 'screen', 'mosquito screen for an overflow, 1 mm mesh', 0.3, [0.3, 0.3, 0.05], 5, 35, 7),
];

function gutter(
  partId: string,
  name: string,
  mass_kg: number,
  section: { shape: string; topWidth_mm: number; baseWidth_mm?: number; depth_mm: number },
  amount: number,
) {
  const { topWidth_mm, depth_mm } = section;
  const packed = [4, topWidth_mm / 1000, depth_mm / 1000] as const;
  return { ...small(partId, 'gutter', name, mass_kg, packed, 10, 35, amount), ...section };
}

function bored(
  partId: string,
  kind: string,
  name: string,
  mass_kg: number,
  packed: readonly [number, number, number],
  bore_mm: number,
  amount: number,
) {
  return { ...small(partId, kind, name, mass_kg, packed, 10, 21, amount), bore_mm };
}
