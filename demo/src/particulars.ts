import { greatCircle_km } from '@eavewell/engine';
import { chanceFor } from './chance.ts';
import { nearest, type Place } from './islands.ts';
import type { MadeSite } from './sites.ts';

/** What sets a site apart from most: each such site has one of these. */
export type Particular =
  | 'tanksApart'
  | 'rations'
  | 'settles'
  | 'river'
  | 'spring'
  | 'unreadIsland'
  | 'betweenGauges'
  | 'households'
  | 'growing'
  | 'feast'
  | 'harvest';

/** From so many sites on a programme has particulars; a smaller one stays plain [site]. Ours. */
export const particularsFrom_sites = 30;
/** Among so many sites each wish is granted once [site]. Ours. */
const round_sites = 60;
/** A site between two gauges has both within this [km], inside the default reach of 50 km. */
const between_km = 48;

/** One wish: what the site is to be, and which sites it suits. */
interface Wish {
  readonly what: Particular;
  readonly suits: (site: MadeSite, index: number, gauges: readonly Place[]) => boolean;
}

const isHall = ({ kind }: MadeSite) => kind === 'hall';
const atDryGauge = ({ place }: MadeSite, gauges: readonly Place[]) => nearest(place, gauges) === 1;
const lacks = ({ lot }: MadeSite) => lot !== 'ample';
const large = ({ kind, people, lot }: MadeSite) => kind !== 'clinic' && people > 90 && lot === 'ample';
/** A school beside a hall stays beside it. */
const standsAlone = (index: number) => index % 5 < 3;

function isBetween({ place }: MadeSite, gauges: readonly Place[]): boolean {
  return gauges.filter((gauge) => greatCircle_km(place, gauge) < between_km).length > 1;
}

/** In the order in which they are granted: the hardest to suit first. */
const wishes: readonly Wish[] = [
  { what: 'river', suits: (site, _, gauges) => isHall(site) && lacks(site) && atDryGauge(site, gauges) },
  { what: 'spring', suits: (site, _, gauges) => lacks(site) && atDryGauge(site, gauges) },
  { what: 'river', suits: (site, _, gauges) => isHall(site) && atDryGauge(site, gauges) },
  { what: 'spring', suits: (site, _, gauges) => atDryGauge(site, gauges) },
  { what: 'unreadIsland', suits: (site, index) => isHall(site) && lacks(site) && standsAlone(index) },
  { what: 'rations', suits: (site) => isHall(site) && lacks(site) },
  ...Array<Wish>(2).fill({ what: 'betweenGauges', suits: (site, _, gauges) => isBetween(site, gauges) }),
  ...Array<Wish>(3).fill({ what: 'tanksApart', suits: large }),
  ...Array<Wish>(2).fill({ what: 'unreadIsland', suits: (site, index) => isHall(site) && standsAlone(index) }),
  { what: 'settles', suits: isHall },
  { what: 'households', suits: isHall },
  { what: 'harvest', suits: isHall },
  { what: 'feast', suits: isHall },
  ...Array<Wish>(7).fill({ what: 'growing', suits: (site) => isHall(site) && site.handOverDay !== null }),
];

/**
 * How many rounds some are granted in. One site alone has the calendar that a fault is planted in. A site that rations takes as long as
 * dozens of others, and an island is only so large.
 */
const mostRounds: ReadonlyMap<Particular, number> = new Map([
  ['harvest', 1],
  ['rations', 1],
  ['unreadIsland', 5],
]);

/** Which sites have which particular? None in a small programme; of a wish that suits no site nothing is made. */
export function particularsOf(made: readonly MadeSite[], gauges: readonly Place[]): ReadonlyMap<string, Particular> {
  const granted = new Map<string, Particular>();
  if (made.length < particularsFrom_sites) return granted;
  for (let start = 0; start < made.length; start += round_sites) {
    const round = made.slice(start, start + round_sites);
    for (const { what, suits } of wishes) {
      if (start >= (mostRounds.get(what) ?? Infinity) * round_sites) continue;
      const found = round.find((site, i) => !granted.has(site.siteId) && suits(site, start + i, gauges));
      if (found) granted.set(found.siteId, what);
    }
  }
  return granted;
}

/** The sites of the island whose gauge is not read yet, moved there; the others as they are. */
export function withIsland(
  seed: number,
  made: readonly MadeSite[],
  particulars: ReadonlyMap<string, Particular>,
  island: Place,
): readonly MadeSite[] {
  const chance = chanceFor(seed, 'the island that is not read');
  return made.map((site) => {
    if (particulars.get(site.siteId) !== 'unreadIsland') return site;
    const latitude_deg = island.latitude_deg + chance.between(-0.05, 0.05);
    return { ...site, place: { latitude_deg, longitude_deg: island.longitude_deg + chance.between(-0.07, 0.07) } };
  });
}
