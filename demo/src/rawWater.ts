import type { Part } from './cast.ts';
import { type Chance, chanceFor } from './chance.ts';
import { changed, type Row } from './draft.ts';
import { isChlorinated } from './treatment.ts';

/** How many of a germ are in a litre: usual, and at the high end [1/L]. */
type Germs = readonly (readonly [pathogen: string, typical_per_L: number, high_per_L: number])[];

/** Every figure of raw water in the demo is invented; so its source says. */
const invented = 'invented: no sample was taken';
const ofRoofs: Germs = [
  ['campylobacter', 0.3, 1.6],
  ['rotavirus', 0.01, 0.06],
  ['cryptosporidium', 0.02, 0.1],
];
const ofSources: Readonly<Record<string, Germs>> = {
  RIVER1: [
    ['campylobacter', 100, 900],
    ['rotavirus', 1, 8],
    ['cryptosporidium', 10, 70],
  ],
  SPRING1: [
    ['campylobacter', 0.6, 3],
    ['rotavirus', 0.02, 0.1],
    ['cryptosporidium', 0.03, 0.15],
  ],
};
/** Under trees, where birds sit, there are more [ratio]. Ours. */
const underTrees_ratio = 6;

/** Germs in the water of a site's roofs, and of the second source it names. */
export function rawWaterRows(seed: number, siteId: string, part: Part, secondSourceId: string | null): Row[] {
  const chance = chanceFor(seed, `germs of ${siteId}`);
  const more = part === 'trees' ? underTrees_ratio : Math.exp(0.2 * chance.normal());
  const roofs = rowsOf(chance, siteId, null, ofRoofs, more);
  return secondSourceId === null
    ? roofs
    : [...roofs, ...rowsOf(chance, siteId, secondSourceId, ofSources[secondSourceId] ?? [], 1)];
}

function rowsOf(chance: Chance, siteId: string, secondSourceId: string | null, germs: Germs, more: number): Row[] {
  return germs.map(([pathogen, typical, high]) => ({
    ...{ siteId, secondSourceId, pathogen },
    typical_per_L: twoDigits(typical * more),
    low_per_L: twoDigits((typical * more) / chance.between(4, 8)),
    high_per_L: twoDigits(high * more),
    source: invented,
  }));
}

const twoDigits = (value: number) => Number(value.toPrecision(2));

/** How people of a site drink, where that is not what most do. */
export function habitCells(part: Part | undefined): Row {
  if (part === 'skips') return { skipping_fraction: 0.1 };
  return part === 'daysOff' ? { daysOff_per_year: 14 } : {};
}

/** Height above the sea: low islands, with hills. */
export function altitude_m(seed: number, siteId: string): number {
  const chance = chanceFor(seed, `height of ${siteId}`);
  return chance.share() < 0.85 ? chance.whole(3, 60) : chance.whole(80, 640);
}

/** What somebody saw who looked for lead, paint and trees at a roof; nothing where nobody looked. */
export function roofCells(seed: number, siteId: string, part: Part | undefined, clean: boolean): Row {
  const chance = chanceFor(seed, `roof of ${siteId}`);
  if (part === 'lead') return { lead: true, underTrees: false };
  if (part === 'unknownPaint') return { coating: 'unknownPaint', lead: false };
  if (part === 'trees') return { lead: false, underTrees: true };
  if (part === undefined) return {};
  return clean || chance.share() < 0.7 ? { lead: false, underTrees: false } : {};
}

/** How two sites chlorinate: one as it is meant, one with too little for too short a time. */
export function chlorinationRows(siteId: string, part: Part): Row[] {
  if (!isChlorinated(part)) return [];
  const isWell = part === 'chlorine';
  return [
    {
      ...{ siteId, product: 'bleach', active_fraction: 0.05, stock_g_per_L: 10, batch_L: 200 },
      ...(isWell
        ? { dose_mg_per_L: 1.5, residual_mg_per_L: 0.7, contact_min: 45, baffling_fraction: 1 }
        : { dose_mg_per_L: 0.5, residual_mg_per_L: 0.05, contact_min: 15 }),
      ...{ pH: 7.2, waterTemperature_C: 25 },
    },
  ];
}

/** Somebody looked at the first roof of fibre cement, and found asbestos in its sheets. */
export function withAsbestos(roofs: readonly Row[]): readonly Row[] {
  const index = roofs.findIndex(({ material }) => material === 'fibreCement');
  return index < 0 ? roofs : roofs.with(index, changed(roofs[index]!, { asbestos: true, fragile: true }));
}
