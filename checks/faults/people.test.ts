// long: the tables about people, each with its faults, on one set of files
import { describe, expect, it } from 'vitest';
import { doubted, type Files, good, line, listed, readFiles } from './folder.ts';

/** The good folder with a class for each site, and a table of targets. */
const classed: Readonly<Record<string, string>> = {
  ...good,
  'sites.csv': [
    'siteId,name,people,gaugeId,siteClass',
    'S001,Upper Tarn,120,G-east,school',
    'S002,Lower Tarn,85,G-east,clinic',
    'S003,Ferry Stones,240,G-west,',
    '',
  ].join('\n'),
  'targets.csv': [
    'siteClass,daysMet_fraction,longestDryRun_days,goodYears_fraction',
    'clinic,0.99,2,0.9',
    'school,0.9,,',
    '',
  ].join('\n'),
};

/** One piece of one file changed; the piece must stand there exactly once. */
function changedIn(files: Readonly<Record<string, string>>, file: string, from: string, to: string): Files {
  expect(files[file]!.split(from)).toHaveLength(2);
  return { ...files, [file]: files[file]!.replace(from, () => to) };
}

interface Fault {
  readonly fault: string;
  readonly files: () => Files;
  readonly problems: readonly string[];
  readonly notUsed: readonly string[];
  readonly inDoubt: readonly string[];
}

async function assertFault({ files, problems, notUsed, inDoubt }: Fault): Promise<void> {
  const read = await readFiles(files());
  expect(read.problems.map(line)).toEqual(problems);
  expect(listed(read)).toEqual(notUsed);
  expect(doubted(read)).toEqual(inDoubt);
}

describe('targets by class', () => {
  it('are joined to their sites; what a row leaves empty is the programme’s', async () => {
    const read = await readFiles(classed);
    expect(read.problems).toEqual([]);
    expect(read.facts.sites.map(({ siteClass, target }) => [siteClass, target])).toEqual([
      // settings.json of the good folder asks for runs of 5 days; the rest are the defaults.
      ['school', { daysMet_fraction: 0.9, longestDryRun_days: 5, goodYears_fraction: 0.8 }],
      ['clinic', { daysMet_fraction: 0.99, longestDryRun_days: 2, goodYears_fraction: 0.9 }],
      [null, null],
    ]);
  });

  const faults: readonly Fault[] = [
    {
      fault: 'a class that no site is of',
      files: () => changedIn(classed, 'targets.csv', 'clinic,', 'clinics,'),
      problems: ['link.class_unused note @ targets.csv 2 siteClass = "clinics"'],
      notUsed: [],
      inDoubt: [],
    },
    {
      fault: 'a share in percent puts the sites of the class in doubt',
      files: () => changedIn(classed, 'targets.csv', 'clinic,0.99', 'clinic,99'),
      problems: ['cell.out_of_range blocker @ targets.csv 2 daysMet_fraction = "99"'],
      notUsed: ['targets.csv 2 daysMet_fraction cell.out_of_range'],
      inDoubt: ['S002'],
    },
    {
      fault: 'two rows for one class',
      files: () => changedIn(classed, 'targets.csv', 'school,0.9,,', 'clinic,0.9,,'),
      problems: ['row.key_twice blocker @ targets.csv 3 siteClass = "clinic"'],
      notUsed: ['targets.csv 3 whole row.key_twice'],
      inDoubt: ['S002'],
    },
    {
      fault: 'a class that is no id',
      files: () => changedIn(classed, 'sites.csv', ',clinic', ',health post'),
      problems: [
        'cell.unsafe_id blocker @ sites.csv 3 siteClass = "health post"',
        'link.class_unused note @ targets.csv 2 siteClass = "clinic"',
      ],
      notUsed: ['sites.csv 3 siteClass cell.unsafe_id'],
      inDoubt: ['S002'],
    },
    {
      fault: 'a first line that cannot be used puts every site in doubt',
      files: () => changedIn(classed, 'targets.csv', 'siteClass,days', 'class,days'),
      problems: [
        'header.column_missing blocker @ targets.csv 1 siteClass = ""',
        'header.column_unknown note @ targets.csv 1 class = "class"',
      ],
      notUsed: ['targets.csv 2 whole header.column_missing', 'targets.csv 3 whole header.column_missing'],
      inDoubt: ['S001', 'S002', 'S003'],
    },
  ];
  it.each(faults)('$fault', assertFault);
});

/** The good folder with calendars of presence, and a purpose of some months. */
const comingAndGoing: Readonly<Record<string, string>> = {
  ...good,
  'sites.csv': [
    'siteId,name,people,gaugeId,presenceCalendar',
    'S001,Upper Tarn,120,G-east,terms',
    'S002,Lower Tarn,85,G-east,terms',
    'S003,Ferry Stones,240,G-west,',
    '',
  ].join('\n'),
  'presence.csv': [
    'calendarId,from,to,presentFraction,reason',
    'terms,12-15,01-10,0.1,long holidays',
    'terms,06-01,06-30,0.2,harvest',
    'feasts,08-01,08-07,1.4,feast of boats',
    '',
  ].join('\n'),
  'demand.csv': [
    'siteId,purpose,litres_per_person_per_day,judged,months',
    ',drinking,7.5,yes,',
    ',washing,5,no,11 to 2',
    '',
  ].join('\n'),
};

describe('calendars of presence', () => {
  it('are joined to their sites, and months to their purposes', async () => {
    const read = await readFiles(comingAndGoing);
    expect(read.problems).toEqual([]);
    const terms = {
      calendarId: 'terms',
      periods: [
        { from_dayOfYear: 152, to_dayOfYear: 181, presentFraction: 0.2, reason: 'harvest' },
        { from_dayOfYear: 349, to_dayOfYear: 10, presentFraction: 0.1, reason: 'long holidays' },
      ],
    };
    expect(read.facts.sites.map(({ presence }) => presence)).toEqual([terms, terms, null]);
    expect(read.facts.sites[0]!.demand.map(({ months }) => months)).toEqual([undefined, [1, 2, 11, 12]]);
  });

  const faults: readonly Fault[] = [
    {
      fault: 'a calendar that is not there',
      files: () => changedIn(comingAndGoing, 'sites.csv', '85,G-east,terms', '85,G-east,term'),
      problems: ['link.unknown_calendar blocker @ sites.csv 3 presenceCalendar = "term"'],
      notUsed: ['sites.csv 3 presenceCalendar link.unknown_calendar'],
      inDoubt: ['S002'],
    },
    {
      fault: 'no table of calendars',
      files: () => {
        const { 'presence.csv': _presence, ...rest } = comingAndGoing;
        return rest;
      },
      problems: [
        'link.unknown_calendar blocker @ sites.csv 2 presenceCalendar = "terms"',
        'link.unknown_calendar blocker @ sites.csv 3 presenceCalendar = "terms"',
      ],
      notUsed: [
        'sites.csv 2 presenceCalendar link.unknown_calendar',
        'sites.csv 3 presenceCalendar link.unknown_calendar',
      ],
      inDoubt: ['S001', 'S002'],
    },
    {
      fault: 'two periods that share a day, over the year’s end',
      files: () => changedIn(comingAndGoing, 'presence.csv', 'terms,06-01,06-30', 'terms,01-10,01-20'),
      problems: ['link.periods_overlap blocker @ presence.csv 3 from = "terms"'],
      notUsed: [],
      inDoubt: ['S001', 'S002'],
    },
    {
      fault: 'two periods with one first day',
      files: () => changedIn(comingAndGoing, 'presence.csv', 'terms,06-01,06-30', 'terms,12-15,12-20'),
      problems: ['row.key_twice blocker @ presence.csv 3 from = "terms 12-15"'],
      notUsed: ['presence.csv 3 whole row.key_twice'],
      inDoubt: ['S001', 'S002'],
    },
    {
      fault: 'a day a spreadsheet made a date of',
      files: () => changedIn(comingAndGoing, 'presence.csv', 'terms,06-01,', 'terms,01-Jun,'),
      problems: ['cell.not_a_month_day blocker @ presence.csv 3 from = "01-Jun"'],
      notUsed: ['presence.csv 3 whole cell.not_a_month_day'],
      inDoubt: ['S001', 'S002'],
    },
    {
      fault: 'a share in percent',
      files: () => changedIn(comingAndGoing, 'presence.csv', '06-30,0.2', '06-30,20'),
      problems: ['cell.out_of_range blocker @ presence.csv 3 presentFraction = "20"'],
      notUsed: ['presence.csv 3 whole cell.out_of_range'],
      inDoubt: ['S001', 'S002'],
    },
    {
      fault: 'months a spreadsheet made a date of, in the programme’s own demand',
      files: () => changedIn(comingAndGoing, 'demand.csv', '11 to 2', '02-Nov'),
      problems: ['cell.not_months blocker @ demand.csv 3 months = "02-Nov"'],
      notUsed: ['demand.csv 3 months cell.not_months'],
      inDoubt: ['S001', 'S002', 'S003'],
    },
    {
      fault: 'a first line that cannot be used puts every site in doubt',
      files: () => changedIn(comingAndGoing, 'presence.csv', ',from,', ',start,'),
      problems: [
        'header.column_missing blocker @ presence.csv 1 from = ""',
        'header.column_unknown note @ presence.csv 1 start = "start"',
      ],
      notUsed: [2, 3, 4].map((row) => `presence.csv ${row} whole header.column_missing`),
      inDoubt: ['S001', 'S002', 'S003'],
    },
  ];
  it.each(faults)('$fault', assertFault);

  it('name the day a spreadsheet was given', async () => {
    const read = await readFiles(changedIn(comingAndGoing, 'presence.csv', 'terms,06-01,', 'terms,01-Jun,'));
    expect(read.problems[0]!.facts['likely']).toBe('06-01');
  });
});

/** The good folder with counts, growth and households. */
const growing: Readonly<Record<string, string>> = {
  ...good,
  'sites.csv': [
    'siteId,name,people,gaugeId,peopleCountedOn,growthFraction_per_year,designYear,households',
    'S001,Upper Tarn,120,G-east,2026-05-01,0.02,2033,',
    'S002,Lower Tarn,,G-east,,,,17',
    'S003,Ferry Stones,240,G-west,,,,',
    '',
  ].join('\n'),
  'settings.json': '{ "growthFraction_per_year": null, "people_per_household": 5.5, "designAfterHandOver_years": 8 }\n',
};

describe('growth and households', () => {
  it('are read as they stand', async () => {
    const read = await readFiles(growing);
    expect(read.problems).toEqual([]);
    expect(read.facts.settings).toMatchObject({
      growthFraction_per_year: null,
      people_per_household: 5.5,
      designAfterHandOver_years: 8,
    });
    const { facts } = read;
    expect(
      facts.sites.map((one) => [one.people, one.growthFraction_per_year, one.designYear, one.households_count]),
    ).toEqual([
      [120, 0.02, 2033, null],
      [null, null, null, 17],
      [240, null, null, null],
    ]);
  });

  const faults: readonly Fault[] = [
    {
      fault: 'growth that is hardly believed is used, with a warning',
      files: () => changedIn(growing, 'sites.csv', '0.02', '0.2'),
      problems: ['cell.unusual warning @ sites.csv 2 growthFraction_per_year = "0.2"'],
      notUsed: [],
      inDoubt: [],
    },
    {
      fault: 'growth in percent is not',
      files: () => changedIn(growing, 'sites.csv', '0.02', '2'),
      problems: ['cell.out_of_range blocker @ sites.csv 2 growthFraction_per_year = "2"'],
      notUsed: ['sites.csv 2 growthFraction_per_year cell.out_of_range'],
      inDoubt: ['S001'],
    },
    {
      fault: 'half a household',
      files: () => changedIn(growing, 'sites.csv', ',17', ',17.5'),
      problems: ['cell.not_whole blocker @ sites.csv 3 households = "17.5"'],
      notUsed: ['sites.csv 3 households cell.not_whole'],
      inDoubt: ['S002'],
    },
    {
      fault: 'no people in a household: the default stands in, and every site is in doubt',
      files: () => changedIn(growing, 'settings.json', '5.5', '0'),
      problems: ['settings.wrong_value blocker @ settings.json - people_per_household = "0"'],
      notUsed: [],
      inDoubt: ['S001', 'S002', 'S003'],
    },
  ];
  it.each(faults)('$fault', assertFault);
});

/** The good folder with a second source. */
const fallingBack: Readonly<Record<string, string>> = {
  ...good,
  'sites.csv': [
    'siteId,name,people,gaugeId,secondSourceId,nearSecondSource',
    'S001,Upper Tarn,120,G-east,,ford',
    'S002,Lower Tarn,85,G-east,ford,',
    'S003,Ferry Stones,240,G-west,,',
    '',
  ].join('\n'),
  'secondSources.csv': [
    'secondSourceId,name,kind,months,turbidity_NTU,source',
    'ford,Tarn at the ford,river,5 to 9,40,caretaker 2026',
    '',
  ].join('\n'),
};

describe('second sources', () => {
  it('are joined to their sites', async () => {
    const read = await readFiles(fallingBack);
    expect(read.problems).toEqual([]);
    const ford = {
      secondSourceId: 'ford',
      name: 'Tarn at the ford',
      kind: 'river',
      months: [5, 6, 7, 8, 9],
      turbidity_NTU: 40,
    };
    expect(read.facts.sites.map(({ secondSource }) => secondSource)).toEqual([null, ford, null]);
    expect(read.facts.sites.map(({ nearSecondSource }) => nearSecondSource)).toEqual([ford, null, null]);
  });

  const faults: readonly Fault[] = [
    {
      fault: 'a source that is not there',
      files: () => changedIn(fallingBack, 'sites.csv', '85,G-east,ford', '85,G-east,fjord'),
      problems: ['link.unknown_second_source blocker @ sites.csv 3 secondSourceId = "fjord"'],
      notUsed: ['sites.csv 3 secondSourceId link.unknown_second_source'],
      inDoubt: ['S002'],
    },
    {
      fault: 'a source near by that is not there: the site is judged without it',
      files: () => changedIn(fallingBack, 'sites.csv', ',,ford', ',,fjord'),
      problems: ['link.unknown_near_source warning @ sites.csv 2 nearSecondSource = "fjord"'],
      notUsed: ['sites.csv 2 nearSecondSource link.unknown_near_source'],
      inDoubt: [],
    },
    {
      fault: 'a source that is near by and in use',
      files: () => changedIn(fallingBack, 'sites.csv', ',ford,', ',ford,ford'),
      problems: ['link.near_source_in_use note @ sites.csv 3 nearSecondSource = "ford"'],
      notUsed: [],
      inDoubt: [],
    },
    {
      fault: 'a kind of source nobody knows',
      files: () => changedIn(fallingBack, 'secondSources.csv', ',river,', ',rivr,'),
      problems: ['cell.not_a_choice blocker @ secondSources.csv 2 kind = "rivr"'],
      notUsed: ['secondSources.csv 2 whole cell.not_a_choice'],
      inDoubt: ['S002'],
    },
    {
      fault: 'no months: it is not taken to flow all the year',
      files: () => changedIn(fallingBack, 'secondSources.csv', '5 to 9', ''),
      problems: ['cell.missing blocker @ secondSources.csv 2 months = ""'],
      notUsed: ['secondSources.csv 2 whole cell.missing'],
      inDoubt: ['S002'],
    },
    {
      fault: 'turbidity below nothing',
      files: () => changedIn(fallingBack, 'secondSources.csv', ',40,', ',-4,'),
      problems: ['cell.out_of_range blocker @ secondSources.csv 2 turbidity_NTU = "-4"'],
      notUsed: ['secondSources.csv 2 turbidity_NTU cell.out_of_range'],
      inDoubt: ['S002'],
    },
  ];
  it.each(faults)('$fault', assertFault);
});
