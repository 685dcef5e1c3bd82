import {
  calendarDay,
  type DesignSettings,
  engineProblem,
  type Problem,
  type SiteFacts,
  type WorkingLine,
  workingInput,
} from '../../kernel/index.ts';
import { headcountSlack_count } from './constants.ts';

/** How many people a site is judged for, and how many were counted. */
export interface Headcount {
  /** As counted, or made from the households; null where neither is known. */
  readonly counted_people: number | null;
  /** In the design year. */
  readonly design_people: number | null;
  /** How they grow from the year of the count on; null where no growth is stated, or not when they were counted. */
  readonly grows: PeopleGrowing | null;
  readonly problems: readonly Problem[];
  readonly working: readonly WorkingLine[];
}

/** People that grow from year to year. */
export interface PeopleGrowing {
  readonly growthFraction_per_year: number;
  /** The year they were counted in. */
  readonly countYear: number;
}

type CountFacts = Pick<SiteFacts, 'siteId' | 'people' | 'households_count'>;
type GrowthFacts = CountFacts &
  Pick<SiteFacts, 'peopleCountedOn' | 'growthFraction_per_year' | 'designYear' | 'handOverDay'>;

/**
 * How many people were counted at a site? Those of the survey; else the households × the programme's people a household, where it
 * states that.
 *
 * @param site - people [person] or null, households [count] or null
 * @param settings - people_per_household [person] or null
 * @returns people [person], whole; null where they are not known
 * @law people who were counted stand, whatever the households
 * @definition households × people a household, rounded up to whole people
 * @example
 * countedPeople({ people: null, households_count: 11 }, { people_per_household: 4.5 }) // → 50
 * countedPeople({ people: 48, households_count: 11 }, { people_per_household: 4.5 }) // → 48
 */
export function countedPeople(
  site: Pick<SiteFacts, 'people' | 'households_count'>,
  settings: Pick<DesignSettings, 'people_per_household'>,
): number | null {
  const { people, households_count } = site;
  const { people_per_household } = settings;
  if (people !== null || households_count === null || people_per_household === null) return people;
  return Math.ceil(households_count * people_per_household - headcountSlack_count);
}

/**
 * How many people is a site judged for? Those of its design year: people as counted × (1 + growth) ^ (design year − year of the
 * count), rounded up. Without growth the people given are those of the design year.
 *
 * @param site - people [person], households [count], day of the count [day], growthFraction_per_year [fraction/year], designYear [year], hand-over day [day]
 * @param settings - the programme's growth [fraction/year] or null, years from hand-over to the design year [year], people a household [person]
 * @returns people counted and people of the design year [person], whole; null where they are not known; how they grow [fraction/year]; problems and the working
 * @problem site.people_from_households - people are not counted; households × people a household is taken
 * @problem site.growth_not_used - growth is stated, but not when the people were counted or for which year to design
 * @problem site.design_year_before_count - the design year lies before the count: the people are taken as counted
 * @law growth of 0 changes nothing; growth never runs along the past record of rain
 * @definition ours: docs/decisions/0096-people-of-the-design-year.md
 */
export function headcount(
  site: GrowthFacts,
  settings: Pick<DesignSettings, 'people_per_household' | 'growthFraction_per_year' | 'designAfterHandOver_years'>,
): Headcount {
  const problems: Problem[] = [];
  const place = { file: 'sites.csv', siteId: site.siteId };
  const counted = countedPeople(site, settings);
  if (site.people === null && counted !== null) {
    const facts = {
      households: site.households_count ?? 0,
      people_per_household: settings.people_per_household ?? 0,
      counted,
    };
    problems.push(engineProblem('site.people_from_households', { ...place, column: 'people' }, facts));
  }
  const growth = site.growthFraction_per_year ?? settings.growthFraction_per_year;
  const asCounted = { counted_people: counted, design_people: counted, grows: null, problems, working: [] };
  if (growth === null || growth === 0 || counted === null || !(counted > 0 && counted < Infinity)) return asCounted;
  const countYear = site.peopleCountedOn === null ? null : calendarDay(site.peopleCountedOn).year;
  const designYear = designYearOf(site, settings);
  if (countYear === null || designYear === null) {
    const missing = countYear === null ? 'peopleCountedOn' : 'designYear';
    const facts = { growthFraction_per_year: growth, missing };
    problems.push(engineProblem('site.growth_not_used', { ...place, column: missing }, facts));
    return { ...asCounted, grows: countYear === null ? null : { growthFraction_per_year: growth, countYear } };
  }
  if (designYear < countYear) {
    const facts = { designYear: String(designYear), countYear: String(countYear) };
    problems.push(engineProblem('site.design_year_before_count', { ...place, column: 'designYear' }, facts));
    return asCounted;
  }
  const design_people = Math.ceil(counted * (1 + growth) ** (designYear - countYear) - headcountSlack_count);
  return {
    ...asCounted,
    design_people,
    grows: { growthFraction_per_year: growth, countYear },
    working: [designWorking(counted, growth, countYear, designYear, design_people)],
  };
}

/** The year to design for: the site's own, else so many years after it is handed over. */
function designYearOf(
  { designYear, handOverDay }: Pick<SiteFacts, 'designYear' | 'handOverDay'>,
  { designAfterHandOver_years }: Pick<DesignSettings, 'designAfterHandOver_years'>,
): number | null {
  if (designYear !== null || handOverDay === null) return designYear;
  return calendarDay(handOverDay).year + designAfterHandOver_years;
}

function designWorking(
  counted: number,
  growth: number,
  countYear: number,
  designYear: number,
  design_people: number,
): WorkingLine {
  return {
    code: 'people.designYear',
    value: design_people,
    unit: 'person',
    inputs: [
      workingInput('people', counted, 'person'),
      workingInput('growth', growth, 'fraction'),
      workingInput('yearCounted', String(countYear), 'text'),
      workingInput('designYear', String(designYear), 'text'),
    ],
    source: 'survey',
  };
}
