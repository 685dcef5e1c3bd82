import type { AppLanguage } from '@eavewell/words/app';
import type { ProgrammeYear, ProgrammeYears, SiteOfYears, SitesAndPeople } from './programmeYears.ts';

type Words = Pick<AppLanguage, 'say' | 'numbers'>;

/** Sites and people in words: "31 sites, 4,210 people", and of how many the people are not known. */
export function sitesWords({ sites, people, withoutPeople_count }: SitesAndPeople, { say }: Words): string {
  const told = say('waterYears.sites_people', { sites, people });
  return withoutPeople_count === 0
    ? told
    : `${told} ${say('waterYears.people_not_known', { count: withoutPeople_count })}`;
}

/** The longest dry run that is allowed, where it is the same at every site; null where it is not. */
function limitOfAll(sites: readonly SiteOfYears[], area: string | null): number | null {
  const limits = new Set(
    sites.flatMap(({ years, area: its }) =>
      years && !years.isMade && (area === null || its === area) ? [years.limit_days] : [],
    ),
  );
  return limits.size === 1 ? [...limits][0]! : null;
}

/** The one sentence: which year was the worst, and for whom. */
export function worstWords(
  { years }: ProgrammeYears,
  worst: ProgrammeYear | null,
  sites: readonly SiteOfYears[],
  area: string | null,
  { say }: Words,
): string {
  const from = String(years[0]?.year ?? '');
  const to = String(years.at(-1)?.year ?? '');
  const where = area ?? 'none';
  const days = limitOfAll(sites, area);
  if (worst === null) return say('waterYears.all_good', { from, to, where });
  const asked = { year: String(worst.year), where, sites: worst.hurt.sites, people: worst.hurt.people };
  return days === null ? say('waterYears.worst_targets', asked) : say('waterYears.worst_days', { ...asked, days });
}

/** Which sites have no year in the picture, and why; nothing where all have. */
export function notInPicture({ onMadeRain, notJudged }: ProgrammeYears, { say }: Words): string {
  return [
    onMadeRain.sites === 0
      ? ''
      : say('waterYears.on_made_rain', { sites: onMadeRain.sites, people: onMadeRain.people }),
    notJudged.sites === 0 ? '' : say('waterYears.not_judged', { sites: notJudged.sites, people: notJudged.people }),
  ]
    .filter((text) => text !== '')
    .join(' ');
}

/** How a year went, in words. */
export function yearWords({ enough, hurt }: ProgrammeYear, { say }: Words): string {
  const of = enough.sites + hurt.sites;
  if (of === 0) return say('waterYears.year_nobody');
  if (hurt.sites === 0) return say('waterYears.year_good', { of });
  return say('waterYears.year_hurt', { sites: hurt.sites, people: hurt.people, of });
}
