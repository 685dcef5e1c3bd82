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
