import type { components } from '../../api/apiTypes.ts';

/** The years of every site as the server answers them. */
export type YearsBody = components['schemas']['years'];
export type SiteOfYears = YearsBody['sites'][number];

/** A site in one year of the record. */
export interface SiteInYear {
  readonly site: SiteOfYears;
  readonly longestRun_days: number;
  readonly dryDays: number;
  /** The longest dry run its target allows [day]. */
  readonly limit_days: number;
}

/** Sites with the people who live there, as far as they are known. */
export interface SitesAndPeople {
  readonly sites: number;
  readonly people: number;
  readonly withoutPeople_count: number;
}

/** One water year over many sites. */
export interface ProgrammeYear {
  /** The calendar year in which it ends. */
  readonly year: number;
  readonly enough: SitesAndPeople;
  readonly hurt: SitesAndPeople;
  /** The sites that would have run dry for longer than their target allows, the longest run first. */
  readonly hurtSites: readonly SiteInYear[];
}

/** The years of many sites, and the sites that have none. */
export interface ProgrammeYears {
  /** In their order; those that no site has judged between two that some have are there with nobody in them. */
  readonly years: readonly ProgrammeYear[];
  readonly counted: SitesAndPeople;
  /** Sites on made-up rain: its years are none of the calendar. */
  readonly onMadeRain: SitesAndPeople;
  /** Sites that were not judged, or whose years cannot be told. */
  readonly notJudged: SitesAndPeople;
}

const nobody: SitesAndPeople = { sites: 0, people: 0, withoutPeople_count: 0 };

const and = (sum: SitesAndPeople, { people }: SiteOfYears): SitesAndPeople => ({
  sites: sum.sites + 1,
  people: sum.people + (people ?? 0),
  withoutPeople_count: sum.withoutPeople_count + Number(people === null),
});

const together = (sites: readonly SiteOfYears[]) => sites.reduce(and, nobody);

/** Longest run first; of runs as long the one with more dry days, then with more people, then by name. */
const worstFirst = (a: SiteInYear, b: SiteInYear) =>
  b.longestRun_days - a.longestRun_days ||
  b.dryDays - a.dryDays ||
  (b.site.people ?? 0) - (a.site.people ?? 0) ||
  a.site.name.localeCompare(b.site.name) ||
  a.site.key.localeCompare(b.site.key);

/**
 * Which past year would have hurt whom? A year of a site is good where its longest dry run is within the site's own target.
 *
 * @param sites - the sites, each with its years
 * @returns every year of the record with the sites that have it, and the sites that have none
 */
export function programmeYears(sites: readonly SiteOfYears[]): ProgrammeYears {
  const judged = sites.filter(({ years }) => years !== null && !years.isMade);
  const byYear = new Map<number, { enough: SiteOfYears[]; hurt: SiteInYear[] }>();
  for (const site of judged) {
    const { firstYear, longestRun_days, dryDays, limit_days } = site.years!;
    for (const [i, longest] of longestRun_days.entries()) {
      if (longest === null) continue;
      const found = byYear.get(firstYear + i) ?? { enough: [], hurt: [] };
      byYear.set(firstYear + i, found);
      if (longest <= limit_days) found.enough.push(site);
      else found.hurt.push({ site, longestRun_days: longest, dryDays: dryDays[i] ?? 0, limit_days });
    }
  }
  const labels = [...byYear.keys()];
  const years: ProgrammeYear[] = [];
  for (let year = Math.min(...labels); year <= Math.max(...labels); year++) {
    const { enough = [], hurt = [] } = byYear.get(year) ?? {};
    const hurtSites = hurt.sort(worstFirst);
    years.push({ year, enough: together(enough), hurt: together(hurtSites.map(({ site }) => site)), hurtSites });
  }
  return {
    years,
    counted: together(judged),
    onMadeRain: together(sites.filter(({ years: one }) => one?.isMade === true)),
    notJudged: together(sites.filter(({ years: one }) => one === null)),
  };
}

/**
 * The year that would have hurt the most people; of years as bad the later one.
 *
 * @param years - the years
 * @returns null where no year would have hurt anybody
 */
export function worstYear(years: readonly ProgrammeYear[]): ProgrammeYear | null {
  let worst: ProgrammeYear | null = null;
  for (const one of years) if (one.hurt.sites > 0 && (worst === null || isAsBad(one, worst))) worst = one;
  return worst;
}

const isAsBad = ({ hurt: a }: ProgrammeYear, { hurt: b }: ProgrammeYear) =>
  a.people > b.people || (a.people === b.people && a.sites >= b.sites);

/** What the years come to in one area; null: sites of no area. */
export interface AreaYears {
  readonly area: string | null;
  readonly years: ProgrammeYears;
  /** Years in which no site of the area would have run dry for too long, of those that any of its sites has. */
  readonly goodYears_count: number;
  readonly years_count: number;
  readonly worst: ProgrammeYear | null;
}

/** The same by area, in the order of a language; sites of no area last. */
export function yearsByArea(sites: readonly SiteOfYears[], compare: (a: string, b: string) => number): AreaYears[] {
  return [...groupsOf(sites)]
    .sort(([a], [b]) => Number(a === null) - Number(b === null) || compare(a ?? '', b ?? ''))
    .map(([area, ofArea]) => {
      const years = programmeYears(ofArea);
      const known = years.years.filter(({ enough, hurt }) => enough.sites + hurt.sites > 0);
      return {
        ...{ area, years, years_count: known.length },
        goodYears_count: known.filter(({ hurt }) => hurt.sites === 0).length,
        worst: worstYear(known),
      };
    });
}

function groupsOf(sites: readonly SiteOfYears[]): Map<string | null, SiteOfYears[]> {
  const groups = new Map<string | null, SiteOfYears[]>();
  for (const site of sites) {
    const known = groups.get(site.area);
    if (known === undefined) groups.set(site.area, [site]);
    else known.push(site);
  }
  return groups;
}
