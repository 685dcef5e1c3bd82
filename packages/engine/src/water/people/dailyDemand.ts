import {
  type Checked,
  type DemandPurpose,
  type DesignSettings,
  engineProblem,
  explain,
  type Problem,
  type SiteFacts,
  type WorkingCode,
  type WorkingLine,
  workingInput,
} from '../../kernel/index.ts';
import { purposesOf } from './purposesOf.ts';

/** Litres a site asks of its tank in a day. */
export interface DailyDemand {
  readonly judged_L_per_day: number;
  readonly other_L_per_day: number;
}

/**
 * How many litres do the people of a site ask of the tank in a day? People × the litres of each purpose, the judged
 * purposes and the others apart. Where neither site nor programme states a purpose, the programme's litres a person a day
 * stand for drinking and cooking, judged.
 *
 * @param site - siteId [text], people [person] above 0 or null, and demand: purposes with litres_per_person_per_day [L/person/day]
 * @param settings - litres_per_person_per_day [L/person/day] used where there is no purpose
 * @param working - lines already written; judged and other demand are added
 * @returns judged_L_per_day [L/day] above 0 and other_L_per_day [L/day] 0 or more; problems alone where there is a blocker
 * @problem site.people_unknown - people are not known, or not above 0
 * @problem site.demand_assumed - no purpose is stated; the programme's litres are taken
 * @problem site.no_judged_demand - purposes are stated and none of them asks for judged litres
 * @law judged + other = people × the sum over all purposes
 * @definition ours; the default of 7.5 L a person a day is sphere-2018, water supply standard 2.1
 */
export function dailyDemand(
  site: Pick<SiteFacts, 'siteId' | 'people' | 'demand'>,
  settings: Pick<DesignSettings, 'litres_per_person_per_day'>,
  working: WorkingLine[],
): Checked<DailyDemand> {
  const { siteId, people } = site;
  const problems: Problem[] = [];
  const purposes = purposesOf(site, settings);
  if (site.demand.length === 0) {
    const { litres_per_person_per_day } = settings;
    problems.push(engineProblem('site.demand_assumed', { file: 'demand.csv', siteId }, { litres_per_person_per_day }));
  }
  const judged = purposes.filter((purpose) => purpose.judged);
  const other = purposes.filter((purpose) => !purpose.judged);
  if (!(litresOf(judged) > 0)) problems.push(engineProblem('site.no_judged_demand', { file: 'demand.csv', siteId }));
  if (people === null || !(people > 0 && people < Infinity)) {
    problems.push(engineProblem('site.people_unknown', { file: 'sites.csv', siteId, column: 'people' }));
  } else if (litresOf(judged) > 0) {
    const source = site.demand.length === 0 ? 'settings' : 'survey';
    const explained = (code: WorkingCode, some: readonly DemandPurpose[]) => {
      const inputs = [workingInput('people', people, 'person')];
      for (const { purpose, litres_per_person_per_day } of some) {
        inputs.push(workingInput('purpose', purpose, 'text'));
        inputs.push(workingInput('litresPerPerson', litres_per_person_per_day, 'L/person/day'));
      }
      return explain(working, { code, value: people * litresOf(some), unit: 'L/day', inputs, source });
    };
    const judged_L_per_day = explained('people.judgedDemand', judged);
    const other_L_per_day = other.length > 0 ? explained('people.otherDemand', other) : 0;
    return { ok: true, value: { judged_L_per_day, other_L_per_day }, problems };
  }
  return { ok: false, problems };
}

function litresOf(purposes: readonly DemandPurpose[]): number {
  return purposes.reduce((sum, { litres_per_person_per_day }) => sum + litres_per_person_per_day, 0);
}
