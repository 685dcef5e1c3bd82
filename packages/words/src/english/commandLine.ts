import type { Range, Scenario, SpiClass, Verdict } from '@eavewell/engine';
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
  check: 'Read a folder of tables and say what is wrong in it, where, and what to do.',
  design: 'Give every site its verdict: holds, tight, short or unknown.',
  rain: 'Say what one gauge measured, what is wrong in it, and what rests on it.',
  demo: 'Make an invented programme to try things on.',
  folder: 'folder of tables (docs/tables.md)',
  gauge: 'id of a gauge (gauges.csv)',
  newFolder: 'folder to make; it must be new or empty',
  out: 'write the results as files into DIR',
  all: 'list every problem, not the first few of each kind',
  site: 'show one site in full, with its working',
  json: 'write one JSON document (docs/design.schema.json) and nothing else',
  pricesOn: 'cost remedies at the latest prices up to DATE (YYYY-MM-DD)',
  wetDays: 'ask: what if wet days were SHARE of what they were (0.1 to 3)?',
  wetDayRain: 'ask: what if a wet day brought SHARE of its rain (0.1 to 3)?',
  lastYears: 'ask: what of the last N water years alone?',
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
  $ eavewell design islands --wet-days 0.9 --wet-day-rain 0.95
                                            what if it were drier?

holds: meets the target over its whole range.  tight: not at its worse end.
short: misses it.  unknown: not enough facts, which is never a pass.`,
    rain: `
Examples:
  $ eavewell rain islands G1     record and its faults, normals, dry runs,
                                 driest months, and what rests on filled days

A filled day was not measured: it serves the tank's balance only, and enters
no normal, no dry run and no index of drought.`,
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
  gauges: 'Gauges',
  gaugeColumns: ['', 'rain', 'years judged', 'mean year', 'wettest day', 'not read'],
  measured: 'measured',
  madeRain: 'made up',
  noRain: 'none',
  none: '-',
  moreGauges: (count: number) => `and ${many(count, 'gauge', 'gauges')} more: eavewell rain shows one`,
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
  made: (gauges: number, years: number) =>
    `Made-up rain: ${many(gauges, 'gauge has', 'gauges have')} normals and no record; ${numbers.years(years)} made up`,
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

const scenario = {
  heading: 'If it had rained otherwise',
  asked: ({ wetDays_fraction, wetDayRain_fraction, lastYears }: Scenario) => {
    const asked = [
      ...(wetDays_fraction === 1 ? [] : [`wet days at ${numbers.percent(wetDays_fraction)} of what they were`]),
      ...(wetDayRain_fraction === 1 ? [] : [`rain of a wet day at ${numbers.percent(wetDayRain_fraction)}`]),
      ...(lastYears === null ? [] : [`the last ${many(lastYears, 'water year', 'water years')} alone`]),
    ];
    return `Asked: ${asked.length === 0 ? 'nothing changed' : asked.join(', ')}.`;
  },
  shorter: (gauges: readonly string[], years: number) =>
    `${gauges.length > 3 ? `${numbers.quantity(gauges.length, 'number')} gauges have` : `${gauges.join(', ')} ${gauges.length === 1 ? 'has' : 'have'}`} fewer than ${numbers.years(years)}; all of them are used.`,
  notForecast: 'A question put to the rain of the past, not a forecast. Remedies are for the present verdict.',
  countColumns: ['sites', 'as it is', 'then'],
  changeColumns: ['changes', '', 'is', 'then', 'dry days a year', 'then'],
  siteColumns: ['', 'as it is', 'then'],
  noneChanges: 'No verdict changes.',
  moreChange: (count: number) => `and ${sites(count)} more; --out DIR writes them all into verdicts.csv`,
  verdict: 'Verdict',
  goodYears: 'Good years',
  dryDays: 'Dry days a year',
  tankForTarget: 'Tank for the target',
  noTank: 'no tank would do',
  notKnown: 'not known',
  wrongShare: (option: string, text: string, least: number, most: number) =>
    `${option} cannot be "${text}": write a share from ${least} to ${most}, as 0.9 for nine in ten.`,
  wrongYears: (text: string, most: number) =>
    `--last-years cannot be "${text}": write a whole number of years from 1 to ${numbers.quantity(most, 'number')}.`,
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
  longestRun: (days: string, made: boolean) =>
    `Longest run of days under 1 mm: ${days}, ${made ? 'all made up' : 'filled days among them'}`,
  filled: 'Filled days',
  filledBy: (all: number, fromYears: number, fromGauges: number) =>
    all === 0
      ? 'No day was filled.'
      : `${numbers.days(all)}: ${numbers.quantity(fromYears, 'number')} from the same days of other years, ${numbers.quantity(fromGauges, 'number')} from gauges near by`,
  judgedFilled: (filled: number, days: number, share: string) =>
    `Every verdict on this gauge rests on ${numbers.days(days)} of judged years; ${numbers.quantity(filled, 'number')} of them (${share}) are filled.`,
  sources: 'Where the judged days come from',
  sourceColumns: ['', 'days', 'share'],
  sourceNames: ['measured', 'other years', 'gauges near by', 'made up'],
  allMade: 'Nobody measured here: every verdict on this gauge rests on made-up days and is tight at best.',
  given: 'Normals as given',
  givenColumns: (made: boolean) => ['', 'rain, mm', 'wet days', made ? 'made, mm' : 'record, mm', 'wet days'],
  yearByYear: 'Year by year',
  yearColumns: ['water year', 'rain, mm', 'wet days', 'longest dry run', 'wettest day, mm'],
  yearsKey: '* with filled days; -: a day of the year not known, or for the wettest day not measured',
  latest: (span: string, ending: string, index: string, name: string) =>
    `Latest over ${span}, ending ${ending}: ${index}, ${name}`,
  beside: 'Against the gauges near by',
  mass: (others: string, share: string, day: string, months: number) =>
    `From ${day} on it measured ${share} of its earlier share beside ${others} (${many(months, 'month', 'months')}); 100 % is no change.`,
  noMass: 'No gauge near by shares ten years of whole months with it.',
  made: 'What made-up rain would make of this record',
  madeColumns: ['', 'record', 'made up'],
  madeRows: {
    rain: 'rain of a year',
    spread: 'spread between years (standard deviation)',
    wetDays: 'wet days of a year',
    run: 'longest dry run of a year, mean',
    longest: 'longest dry run of all',
  },
  amountKinds: { gamma: 'gamma', mixedExponential: 'mixed exponential' },
  madeKey: (years: number, kind: string) =>
    `${numbers.years(years)} made up from its own months, amounts ${kind}; rain of days under 1 mm is left out. No verdict rests on them. Where they spread less than the record, made-up rain understates droughts.`,
  noMade: 'Too few days, each with the day before it, to make up rain from its months.',
  withinReach: (count: number) =>
    `${sites(count)} without a gauge of their own ${count === 1 ? 'has' : 'have'} it within reach.`,
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
  siteColumns: ['site', '', 'verdict', 'dry days', 'not measured'],
  moreSites: (count: number) => `and ${sites(count)} more with dry days on filled days`,
  faults: 'Faults of the record',
  noFaults: 'None was found.',
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
  scenario,
  rain,
  demo,
  trouble,
  progress,
};

/** The command line's texts in any language: the same keys as the English ones. */
export type CommandLineWords = typeof commandLine;
