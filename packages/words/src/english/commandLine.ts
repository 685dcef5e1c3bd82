import type { Range, SpiClass, Verdict } from '@eavewell/engine';
import { numbers } from './numbers.ts';

const many = (count: number, one: string, more: string): string =>
  `${numbers.quantity(count, 'number')} ${count === 1 ? one : more}`;

const sites = (count: number): string => many(count, 'site', 'sites');

const verdictGroups: Readonly<Record<Verdict, (count: number) => string>> = {
  short: (count) => `${sites(count)} short`,
  unknown: (count) => `${sites(count)} unknown`,
  tight: (count) => `${sites(count)} tight`,
  holds: (count) => `${sites(count)} ${count === 1 ? 'holds' : 'hold'}`,
};

/** What commands say about themselves. */
const help = {
  about: 'Plans rain-fed village water: will the roof and the tank carry the people through the dry spells?',
  check: 'Read a folder of tables or a workbook and say what is wrong in it, where, and what to do.',
  design: 'Give every site its verdict: holds, tight, short or unknown.',
  rain: 'Say what one gauge measured, what is wrong in it, and what rests on it.',
  demo: 'Make an invented programme to try things on.',
  convert: 'Write a programme anew: a folder of tables as a workbook, or a workbook as a folder.',
  folder: 'folder of tables, or workbook .xlsx (docs/tables.md)',
  to: 'workbook (NAME.xlsx) or folder to write',
  overwrite: 'replace files that are there',
  gauge: 'id of a gauge (gauges.csv)',
  newFolder: 'folder to make; it must be new or empty',
  out: 'write the results as files into DIR',
  all: 'list every problem, not the first few of each kind',
  site: 'show one site in full, with its working',
  json: 'write one JSON document (docs/design.schema.json) and nothing else',
  pricesOn: 'cost remedies at the latest prices up to DATE (YYYY-MM-DD)',
  series: 'with --out or --json: add the daily series of every site',
  sites: 'how many sites',
  seed: 'the same seed makes the same programme',
  clean: 'plant no faults',
  version: 'say which version this is',
  help: 'say how to use it',
  examples: {
    main: `
Start here:
  $ eavewell demo islands             make an invented programme of 60 sites
  $ eavewell check islands            what is wrong in its tables?
  $ eavewell design islands           a verdict for every site
  $ eavewell rain islands G1          what did this gauge measure?
  $ eavewell convert islands i.xlsx   the tables as one workbook; back too
  $ eavewell design --help            more on one command

Exit codes: 0 done, 1 at least one blocker, 2 wrong use, 70 our own fault.`,
    check: `
Examples:
  $ eavewell check islands            problems, worst first, a few of each kind
  $ eavewell check islands --all      every one of them
  $ eavewell check islands --out out  also as out/problems.csv and
                                      out/not-used.csv

A blocker withholds a site's verdict, a warning may change one, a note is only
worth knowing. One bad row never stops the others.`,
    design: `
Examples:
  $ eavewell design islands                 the exceptions, worst first
  $ eavewell design islands --site S007     one site, with its working
  $ eavewell design islands --out out       also verdicts.csv, design.json,
                                            problems.csv and not-used.csv
  $ eavewell design islands --json > d.json every figure, for other programs
  $ eavewell design islands --out out --series   and every day of every site

holds: meets the target over its whole range.  tight: not at its worse end.
short: misses it.  unknown: not enough facts, which is never a pass.`,
    rain: `
Examples:
  $ eavewell rain islands G1     record and its faults, normals, dry runs,
                                 driest months, and what rests on filled days

A filled day was not measured: it serves the tank's balance only, and enters
no normal, no dry run and no index of drought.`,
    convert: `
Examples:
  $ eavewell convert islands islands.xlsx    the tables as sheets
  $ eavewell convert islands.xlsx islands2   the sheets as files

Every row is carried over as it stands, also those that cannot be used. What
cannot be carried over is said.`,
    demo: `
Examples:
  $ eavewell demo islands                    60 sites, with faults planted
  $ eavewell demo large --sites 1500         a large programme
  $ eavewell demo tidy --clean --seed 7      no faults, another chain

Every place, name and figure in it is invented.`,
  },
};

const headings = {
  read: 'Read',
  problems: 'Problems',
  notUsed: 'Not used',
  stations: 'Stations',
  figures: 'Figures',
  years: 'Dry days, year by year',
  dryRuns: 'Longest dry runs',
  sizes: 'Other tanks',
  firstService: 'First day of service',
  working: 'How the figures were reached',
  cautions: 'Cautions',
};

/** The labels of the figures of one site. */
const figures = {
  goodYears: 'Good years',
  dryDays: 'Dry days',
  daysMet: 'Days with enough',
  longestRun: 'Longest dry run',
  tank: 'Tank, usable',
  tankForTarget: 'Tank for the target',
  asked: 'Asked',
  askedOther: 'Asked besides',
  otherShort: 'Besides, short',
  caught: 'Caught',
  shortfall: 'Litres short',
  generous: 'If rain came first',
  columns: ['', 'figure', 'likely', 'target'],
  sizeColumns: ['tank', 'part', 'dry days a year', 'good years', 'target'],
  atLeast: (text: string) => `at least ${text}`,
  atMost: (text: string) => `at most ${text}`,
  limitIn: (days: number) => `at most ${numbers.days(days)}`,
  noTank: 'no tank would do',
  meets: 'met',
  misses: 'missed',
  thisTank: 'this tank',
};

const check = {
  nothingWrong: 'Nothing is wrong.',
  counted: (blockers: number, warnings: number, notes: number) =>
    `${many(blockers, 'blocker', 'blockers')}, ${many(warnings, 'warning', 'warnings')}, ${many(notes, 'note', 'notes')}`,
  rowsUsed: (used: number, rows: number) => `${numbers.quantity(used, 'number')} of ${many(rows, 'row', 'rows')} used`,
  manyRainFiles: (files: number) => `rain/, ${many(files, 'file', 'files')}`,
  more: (count: number) => `and ${numbers.quantity(count, 'number')} more: --all lists them`,
  notUsed: (rows: number, cells: number) =>
    `${many(rows, 'row was', 'rows were')} not used, and ${many(cells, 'cell', 'cells')} of other rows.`,
  wholeRow: 'whole row',
  writeThem: '--out DIR writes them as files.',
};

const design = {
  programme: (count: number, people: number, gauges: number) =>
    `${sites(count)}, ${numbers.people(people)}, ${many(gauges, 'gauge', 'gauges')}`,
  peopleUnknown: (count: number) => `${sites(count)} with people not known`,
  record: (least: number, most: number, first: number, last: number) =>
    `Rain: ${least === most ? numbers.years(least) : `${least} to ${numbers.years(most)}`} judged, water years ${first} to ${last}`,
  noRecord: 'Rain: no gauge has a record that can be judged',
  target: (text: string) => `Target: ${text}`,
  litres: (value: number) =>
    `Drinking and cooking: ${numbers.quantity(value, 'L_per_person_per_day')} unless demand.csv says otherwise`,
  who: (name: string, id: string, people: string) => `${name} (${id}), ${people}`,
  peopleNotKnown: 'people not known',
  dryDays: (days: number, range: Range) => `${numbers.dryDaysAYear(days)}, ${numbers.likely(range)}`,
  longestRun: (days: number, from: string) => `longest dry run ${numbers.days(days)} from ${from}`,
  seeOne: (folder: string, id: string) => `See one: eavewell design ${folder} --site ${id}`,
  allHold: 'Every site holds.',
  moreSites: (count: number) =>
    `And ${numbers.quantity(count, 'number')} more; the most people-days without water came first. --out DIR writes them all into verdicts.csv.`,
  noSites: 'There is no site to judge.',
  seeProblems: (folder: string) => `What is wrong in the tables: eavewell check ${folder}`,
  notJudgedYet: 'Roof, gutter, treatment unit and tap are not judged yet.',
  range: (fraction: number) =>
    `"likely": ${numbers.percent(fraction)} of records drawn again from these years; the truth lies outside more often, most of all with few years`,
  noDryRuns: 'No dry day in the record.',
  run: (days: number, from: string, to: string) => `${numbers.days(days)}, ${from} to ${to}`,
  yearsKey: 'each year: dry days (longest dry run); * not judged',
  stripKey: (drawn: boolean) =>
    drawn
      ? 'one mark a year: · none, ▁ to █ up to the worst, ? not judged'
      : 'one mark a year: . none, 1 to 9 up to the worst, ? not judged',
  firstService: (handOver: string, wait: string, range: string, day: string) =>
    `Handed over empty on ${handOver}, the tank first serves after ${wait} (${range} in 8 years of 10), about ${day}.`,
  neverServes: 'No hand-over day is set, or it never serves.',
  written: (path: string) => `Written: ${path}`,
  unknownSite: (id: string, near: readonly string[]) =>
    `There is no site ${id}.${near.length > 0 ? ` Near it: ${near.join(', ')}.` : ''}`,
  sourceOf: (text: string) => `source: ${text}`,
};

const spiClasses: Readonly<Record<SpiClass, string>> = {
  extremelyDry: 'extremely dry',
  severelyDry: 'severely dry',
  moderatelyDry: 'moderately dry',
  nearNormal: 'near normal',
  moderatelyWet: 'moderately wet',
  veryWet: 'very wet',
  extremelyWet: 'extremely wet',
};

const rain = {
  who: (name: string, id: string) => `${name} (${id})`,
  unknownGauge: (id: string, near: readonly string[]) =>
    `There is no gauge ${id}.${near.length > 0 ? ` Near it: ${near.join(', ')}.` : ''}`,
  record: (from: string, to: string, days: number, missing: number) =>
    `Record: ${from} to ${to}, ${numbers.days(days)}; ${missing === 0 ? 'all measured' : `${numbers.days(missing)} not measured`}`,
  wettest: (rain: string, day: string) => `Wettest day: ${rain} on ${day}`,
  years: (month: string, judged: number, all: number) =>
    `Water year: from ${month}; ${numbers.ofYears(judged, all)} judged`,
  noYears: 'No year of it can be judged: the faults below say why.',
  notJudged: (years: readonly string[]) => `Not judged, with days missing: ${years.join(', ')}`,
  mean: (rain: string) => `Rain of a mean judged year: ${rain}`,
  longestRun: (days: string) => `Longest run of days under 1 mm: ${days}, filled days among them`,
  filled: 'Filled days',
  filledBy: (all: number, fromYears: number, fromGauges: number) =>
    all === 0
      ? 'No day was filled.'
      : `${numbers.days(all)}: ${numbers.quantity(fromYears, 'number')} from the same days of other years, ${numbers.quantity(fromGauges, 'number')} from gauges near by`,
  judgedFilled: (filled: number, days: number, share: string) =>
    `Every verdict on this gauge rests on ${numbers.days(days)} of judged years; ${numbers.quantity(filled, 'number')} of them (${share}) are filled.`,
  normals: 'What a month usually brings',
  normalColumns: ['', 'rain, mm', 'wet days', 'mm a day', 'whole years'],
  none: '-',
  ofYears: (complete: number, all: number) => `${complete} of ${all}`,
  normalsKey: 'wet: 1 mm or more; -: too few years with every day measured',
  runs: 'Longest run of days under 1 mm, by water year',
  stripKey: (drawn: boolean) =>
    drawn
      ? 'one mark a year: · none, ▁ to █ up to the longest, ? a day not known'
      : 'one mark a year: . none, 1 to 9 up to the longest, ? a day not known',
  runsKey: 'each year: days of its longest run; * with filled days in the year',
  driest: 'Driest months',
  indexColumns: ['over', 'ending', 'rain', 'index', ''],
  span: (months: number) => many(months, 'month', 'months'),
  indexKey: 'index: standardised precipitation index, gamma by L-moments (WMO-No. 1090 classes)',
  noIndex: 'too few years with every day measured',
  classes: spiClasses,
  sites: 'Sites on this gauge',
  noSites: 'No site uses it.',
  noneRest: 'No dry day of theirs falls on a filled day.',
  siteColumns: ['site', '', 'verdict', 'dry days', 'on filled days'],
  moreSites: (count: number) => `and ${sites(count)} more with dry days on filled days`,
  faults: 'Faults of the record',
  noFaults: 'None was found.',
};

const convert = {
  book: (path: string, sheets: number, rows: number, days: number) =>
    `Wrote ${path}: ${many(sheets, 'sheet', 'sheets')}, ${many(rows, 'row', 'rows')} and ${many(days, 'day', 'days')} of rain.`,
  folder: (path: string, files: number, rows: number, days: number) =>
    `Wrote ${path}: ${many(files, 'file', 'files')}, ${many(rows, 'row', 'rows')} and ${many(days, 'day', 'days')} of rain.`,
  told: 'Left, or carried over otherwise',
  onItself: 'FROM and TO are the same. Name another place to write to.',
  notThere: (path: string) => `There is no folder or workbook ${path}. Check the path.`,
};

const demo = {
  made: (count: number, gauges: number, folder: string) =>
    `Made ${sites(count)} and ${many(gauges, 'gauge', 'gauges')} in ${folder}. Every place and name is invented.`,
  faults: (count: number) =>
    count === 0 ? 'No faults are planted.' : `${many(count, 'fault is', 'faults are')} planted.`,
  next: 'Next:',
  notEmpty: (folder: string) =>
    `The folder ${folder} is not empty. Name a new folder, or empty it yourself; nothing was written.`,
  notAFolder: (folder: string) => `${folder} is a file. Name a new folder; nothing was written.`,
  wholeSites: 'How many sites must be a whole number from 1 to 100000.',
  wholeSeed: 'The seed must be a whole number.',
};

const trouble = {
  ourFault: (message: string) =>
    `This is our fault, not yours: ${message}. Please report it with the command you typed; EAVEWELL_TRACE=1 before it shows where.`,
  wrongUse: (message: string) => `Wrong use: ${message}`,
  seeHelp: 'eavewell --help shows how.',
  pricesOnForm: '--prices-on needs a day: YYYY-MM-DD',
  seriesAlone: '--series needs --out DIR or --json',
  folderUnnamed: 'The folder has no name. Name one, as in: eavewell design islands --out results',
  outIsFile: (path: string) => `${path} is a file. Name a folder for --out.`,
  cannotWrite: (path: string, reason: string) => `${path} could not be written: ${reason}.`,
  theOutput: 'The output',
  refusals: {
    ENOSPC: 'the disk is full',
    EDQUOT: 'the disk space allowed is used up',
    EACCES: 'you may not write there',
    EPERM: 'you may not write there',
    EROFS: 'the disk can only be read',
    EISDIR: 'a folder stands there',
    ENOTDIR: 'a file stands where a folder should be',
    ENAMETOOLONG: 'the name is too long',
    ENOENT: 'no folder can be made there',
    EEXIST: 'something that is no folder stands there',
  },
};

const progress = {
  reading: (file: string) => `reading ${file}`,
  judging: (done: number, all: number) => `judging site ${done} of ${all}`,
  making: (folder: string) => `making ${folder}`,
};

/** What the command line says beside findings and problems. */
export const commandLine = {
  verdictGroups,
  help,
  headings,
  figures,
  check,
  design,
  rain,
  convert,
  demo,
  trouble,
  progress,
};

/** The command line's texts in any language: the same keys as the English ones. */
export type CommandLineWords = typeof commandLine;
