import { defaultSettings } from '../../packages/engine/src/kernel/index.ts';
import {
  dailyDemand,
  serviceLevels_L_per_person_per_day as levels,
  survivalNeed_L_per_person_per_day,
} from '../../packages/engine/src/water/people/index.ts';
import type { PublishedFile } from './published.ts';

/** Litres a day of so many people at so many litres each [L/day]. */
function litresADay(people: number, litres_per_person_per_day: number): number {
  const demand = [{ purpose: 'all', litres_per_person_per_day, judged: true }];
  const found = dailyDemand({ siteId: 'S', people, demand, presence: null }, defaultSettings, []);
  if (!found.ok) throw new Error('no demand came of a row with people and litres');
  return found.value.judged_L_per_day;
}

const dispensary = { staff: 7, litresOfStaff: 45, patients: 40, litresOfPatient: 10 };
const dispensary_L_per_day = () => litresADay(7, 45) + litresADay(40, 10);

export const warwickDemand: PublishedFile = {
  source: 'warwick-dtu',
  method: 'dailyDemand',
  rows: [
    {
      place: 'method 1: a year of six people at 20 L [L]',
      inputs: { people: 6, litres: 20 },
      printed: '43800',
      got: () => litresADay(6, 20) * 365,
    },
    {
      place: 'method 2, dispensary: demand, L a day',
      inputs: dispensary,
      printed: '715',
      got: dispensary_L_per_day,
    },
    {
      place: 'method 2, dispensary: demand, m³ in a mean month',
      inputs: dispensary,
      printed: '21.75',
      got: () => (dispensary_L_per_day() * 365) / 12 / 1000,
    },
  ],
};

const survival = { drinkingFood: [2.5, 3], hygiene: [2, 6], cooking: [3, 6] };

export const sphere: PublishedFile = {
  source: 'sphere-2018',
  method: 'survivalNeed_L_per_person_per_day',
  rows: [
    {
      place: 'water supply standard 2.1, simplified basic survival needs: total, low end',
      inputs: survival,
      printed: '7.5',
      got: () => survivalNeed_L_per_person_per_day().low,
    },
    {
      place: 'water supply standard 2.1, simplified basic survival needs: total, high end',
      inputs: survival,
      printed: '15',
      got: () => survivalNeed_L_per_person_per_day().high,
    },
    {
      place: 'water supply standard 2.1: low end, as the default of a programme',
      inputs: survival,
      printed: '7.5',
      got: () => defaultSettings.litres_per_person_per_day,
      method: 'defaultSettings',
    },
  ],
};

export const who: PublishedFile = {
  source: 'who-2020',
  method: 'serviceLevels_L_per_person_per_day',
  rows: (['basic', 'intermediate', 'optimal'] as const).map((level, i) => ({
    place: `service level ${level}, L a person a day`,
    inputs: {},
    printed: ['20', '50', '100'][i]!,
    got: () => levels[level],
  })),
};
