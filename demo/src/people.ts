import { chanceFor } from './chance.ts';
import type { Row } from './draft.ts';
import type { Particular } from './particulars.ts';
import type { Kind, MadeSite } from './sites.ts';

/** What people of a household come to where only households were counted [person]. Invented. */
export const people_per_household = 5.5;

const classes: Readonly<Record<Kind, string | null>> = { hall: null, school: 'school', clinic: 'clinic' };

/**
 * What schools and clinics are promised where it is not what the programme is: a clinic more, a school, where pupils go home, less.
 * Invented.
 */
export function targetRows(made: readonly MadeSite[]): Row[] {
  const rows: Row[] = [
    { siteClass: 'clinic', daysMet_fraction: 0.98, longestDryRun_days: 5, goodYears_fraction: 0.9 },
    { siteClass: 'school', daysMet_fraction: null, longestDryRun_days: 10, goodYears_fraction: null },
  ];
  const there = new Set(made.map(({ kind }) => classes[kind]));
  return rows.filter(({ siteClass }) => there.has(String(siteClass)));
}

const calendars: readonly Row[] = [
  period('terms', '12-12', '01-28', 0.05, 'long holidays; the caretaker stays'),
  period('terms', '04-11', '04-24', 0.05, 'holidays'),
  period('terms', '07-04', '07-17', 0.05, 'holidays'),
  period('terms', '09-26', '10-09', 0.05, 'holidays'),
  period('feast', '12-20', '01-05', 1.4, 'families come home for the feast'),
  period('harvest', '04-20', '05-20', 0.7, 'root harvest; some sleep in the gardens'),
  period('harvest', '10-01', '10-21', 0.8, 'planting'),
];

function period(calendarId: string, from: string, to: string, presentFraction: number, reason: string): Row {
  return { calendarId, from, to, presentFraction, reason };
}

/** The calendars that sites name. */
export function presenceRows(sites: readonly Row[]): Row[] {
  const named = new Set(sites.map(({ presenceCalendar }) => presenceCalendar));
  return calendars.filter(({ calendarId }) => named.has(calendarId!));
}

/** What sites.csv says of a site's people, beside their number. */
export function peopleCells(seed: number, site: MadeSite, particular: Particular | undefined): Row {
  const cells: Row = {
    siteClass: classes[site.kind],
    presenceCalendar: site.kind === 'school' ? 'terms' : null,
  };
  if (particular === 'households')
    return { ...cells, people: null, households: Math.max(1, Math.round(site.people / people_per_household)) };
  if (particular === 'feast' || particular === 'harvest') return { ...cells, presenceCalendar: particular };
  if (particular === 'growing') return { ...cells, ...growthCells(seed, site) };
  return cells;
}

/** Counted in the year before the first hand-overs; every third names its design year, the others leave it to the settings. */
function growthCells(seed: number, { siteId }: MadeSite): Row {
  const chance = chanceFor(seed, `growth of ${siteId}`);
  return {
    peopleCountedOn: `2023-${String(chance.whole(5, 9)).padStart(2, '0')}-${String(chance.whole(1, 28)).padStart(2, '0')}`,
    growthFraction_per_year: chance.pick([0.01, 0.015, 0.02, 0.025]),
    designYear: chance.share() < 1 / 3 ? 2033 : null,
  };
}
