import {
  type Checked,
  type DemandPurpose,
  type DesignSettings,
  engineProblem,
  explain,
  monthOfPlainYear,
  type Problem,
  type SiteFacts,
  type WorkingCode,
  type WorkingLine,
  workingInput,
} from '../../kernel/index.ts';
import { daysOfYear_count } from './constants.ts';
import { litresByMonth_L_per_person_per_day } from './litresByMonth.ts';
import { presenceWorking } from './presenceWorking.ts';
import { type PresentByDay, presentByDay } from './presentByDay.ts';
import { purposesOf } from './purposesOf.ts';

/** Litres a site asks of its tank in a day. */
export interface DailyDemand {
  /** Means over the days of the year. */
  readonly judged_L_per_day: number;
  readonly other_L_per_day: number;
  /** Judged litres of the day that asks for most. */
  readonly judgedHighest_L_per_day: number;
  /** By calendar day from 1 January on, 365 of them. */
  readonly judgedByDay_L: Float64Array;
  readonly otherByDay_L: Float64Array;
}

/**
 * How many litres do the people of a site ask of the tank in a day? People × the share of them that is there × the litres of
 * each purpose in its months, the judged purposes and the others apart. Where neither site nor programme states a purpose,
 * the programme's litres a person a day stand for drinking and cooking, judged.
 *
 * @param site - siteId [text], people [person] above 0 or null, presence by calendar day [fraction] or null, and demand: purposes with litres_per_person_per_day [L/person/day]
 * @param settings - litres_per_person_per_day [L/person/day] used where there is no purpose
 * @param working - lines already written; presence, judged and other demand are added
 * @returns judged_L_per_day [L/day] above 0, other_L_per_day [L/day] 0 or more, means of the year, the highest day [L/day], and litres by
 *   calendar day [L]; problems alone where there is a blocker
 * @problem site.people_unknown - people are not known, or not above 0
 * @problem site.demand_assumed - no purpose is stated; the programme's litres are taken
 * @problem site.no_judged_demand - purposes are stated and none of them asks for judged litres
 * @problem site.presence_gaps - the calendar says nothing of some days; everyone is taken to be there
 * @problem site.nobody_present - nobody is there on any day on which judged litres would be asked
 * @law judged + other = people × the sum over all purposes, on every day on which all are there
 * @definition ours; the default of 7.5 L a person a day is sphere-2018, water supply standard 2.1
 */
export function dailyDemand(
  site: Pick<SiteFacts, 'siteId' | 'people' | 'demand' | 'presence'>,
  settings: Pick<DesignSettings, 'litres_per_person_per_day'>,
  working: WorkingLine[],
): Checked<DailyDemand> {
  const { siteId, people, presence } = site;
  const problems: Problem[] = [];
  const purposes = purposesOf(site, settings);
  if (site.demand.length === 0) {
    const { litres_per_person_per_day } = settings;
    problems.push(engineProblem('site.demand_assumed', { file: 'demand.csv', siteId }, { litres_per_person_per_day }));
  }
  const present = presentByDay(presence);
  problems.push(...presenceProblems(site, present));
  const judged = perPersonByDay_L(purposes, true, present);
  const other = perPersonByDay_L(purposes, false, present);
  const isAsked = purposes.some((one) => one.judged && one.litres_per_person_per_day > 0);
  if (!isAsked) problems.push(engineProblem('site.no_judged_demand', { file: 'demand.csv', siteId }));
  else if (judged.every((litres) => litres === 0)) {
    const calendarId = presence?.calendarId ?? '';
    problems.push(engineProblem('site.nobody_present', { file: 'presence.csv', siteId }, { calendarId }));
  }
  if (people === null || !(people > 0 && people < Infinity))
    problems.push(engineProblem('site.people_unknown', { file: 'sites.csv', siteId, column: 'people' }));
  else if (!problems.some((problem) => problem.severity === 'blocker')) {
    working.push(...presenceWorking(presence, present));
    const value = explained({ ...site, people }, purposes, { judged, other }, working);
    return { ok: true, value, problems };
  }
  return { ok: false, problems };
}

/** Of a calendar: days it says nothing of, which is worth knowing. */
function presenceProblems({ siteId, presence }: Pick<SiteFacts, 'siteId' | 'presence'>, present: PresentByDay) {
  const days = present.withoutPeriod_days;
  if (presence === null || days === 0) return [];
  const place = { file: 'presence.csv', siteId };
  return [engineProblem('site.presence_gaps', place, { days, calendarId: presence.calendarId })];
}

/** Litres that one of the people counted asks for, by calendar day: 0 where nobody is there. */
function perPersonByDay_L(purposes: readonly DemandPurpose[], judged: boolean, present: PresentByDay): Float64Array {
  const byMonth = litresByMonth_L_per_person_per_day(purposes.filter((one) => one.judged === judged));
  return present.presentFraction.map((share, index) => share * byMonth[monthOfPlainYear(index + 1) - 1]!);
}

/** The figures of both demands, with their working. */
function explained(
  site: Pick<SiteFacts, 'demand' | 'presence'> & { readonly people: number },
  purposes: readonly DemandPurpose[],
  perPerson: Readonly<Record<'judged' | 'other', Float64Array>>,
  working: WorkingLine[],
): DailyDemand {
  const { people } = site;
  const source = site.demand.length === 0 ? 'settings' : 'survey';
  const line = (code: WorkingCode, some: readonly DemandPurpose[], value: number) => {
    const inputs = [workingInput('people', people, 'person')];
    for (const { purpose, litres_per_person_per_day, months } of some) {
      inputs.push(workingInput('purpose', purpose, 'text'));
      inputs.push(workingInput('litresPerPerson', litres_per_person_per_day, 'L/person/day'));
      if (months !== undefined) inputs.push(workingInput('months', months.join(' '), 'text'));
    }
    return explain(working, { code, value, unit: 'L/day', inputs, source });
  };
  const judgedPurposes = purposes.filter((purpose) => purpose.judged);
  const others = purposes.filter((purpose) => !purpose.judged);
  const judged_L_per_day = line('people.judgedDemand', judgedPurposes, people * mean(perPerson.judged));
  const highest = people * perPerson.judged.reduce((most, litres) => Math.max(most, litres), 0);
  if (highest > judged_L_per_day) line('people.highestDemand', judgedPurposes, highest);
  return {
    judged_L_per_day,
    other_L_per_day: others.length > 0 ? line('people.otherDemand', others, people * mean(perPerson.other)) : 0,
    judgedHighest_L_per_day: highest,
    judgedByDay_L: perPerson.judged.map((litres) => people * litres),
    otherByDay_L: perPerson.other.map((litres) => people * litres),
  };
}

/** The mean of a year's days; the value itself, to its last bit, where all are one. */
function mean(byDay: Float64Array): number {
  const first = byDay[0]!;
  if (byDay.every((value) => value === first)) return first;
  return byDay.reduce((sum, value) => sum + value, 0) / daysOfYear_count;
}
