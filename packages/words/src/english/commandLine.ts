import type { DayOrder, Range, Ration, Verdict } from '@eavewell/engine';
import { columns, typed } from './columnWords.ts';
import { convert, demo } from './copyWords.ts';
import { many, sites } from './counted.ts';
import { maps } from './maps.ts';
import { numbers } from './numbers.ts';
import { rain, scenario } from './rainPages.ts';
import { serve } from './serve.ts';

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
  columns: 'Match headers that are not understood to the columns of the tables.',
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
  order: 'judge by another order of the day: drawFirst, yas or ybs',
  wetDays: 'ask: what if wet days were SHARE of what they were (0.1 to 3)?',
  wetDayRain: 'ask: what if a wet day brought SHARE of its rain (0.1 to 3)?',
  lastYears: 'ask: what of the last N water years alone?',
  series: 'with --out or --json: add the daily series of every site',
  accept: 'keep every match that is proposed without a question',
  set: 'keep one match, FILE:HEADER=COLUMN or =COLUMN:UNIT; =- leaves the header alone (may be repeated)',
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
  $ eavewell columns islands          which headers are not understood?
  $ eavewell positions islands a.gpx  take positions from a map
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
    columns: `
Examples:
  $ eavewell columns islands             headers not understood, and what each
                                         is likely to be; writes nothing
  $ eavewell columns islands --accept    keep what is proposed in columns.json
  $ eavewell columns islands --set 'roofs.csv:Roof length=length_m:ft'
  $ eavewell columns islands --set 'rain/*.csv:Day=date:dmy'
  $ eavewell columns i.xlsx --set 'Rain data=rain'
  $ eavewell columns i.xlsx --set 'Rain data:Precip=rain_mm:in'

Units: ft, in, cm, mm for m; ft2 for m2; in, cm, tenths for mm; m3, usgal,
impgal for L; percent for fraction. Dates: dmy, mdy, ymd.`,
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
  gauges: 'Rain gauges',
  problems: 'Problems',
  notUsed: 'Not used',
  stations: 'Stations',
  figures: 'Figures',
  figuresOf: (tanks: string, people: string) => `Figures of ${tanks}, ${people}`,
  years: 'Dry days, year by year',
  dryRuns: 'Longest dry runs',
  sizes: 'Other tanks',
  sizesAlone: 'Other tanks, without the second source',
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
  tankAlone: 'Without the second source',
  asked: 'Asked',
  askedDays: 'Asked on',
  upTo: (text: string) => `up to ${text}`,
  askedOther: 'Asked besides',
  otherShort: 'Besides, short',
  caught: 'Caught',
  shortfall: 'Litres short',
  generous: 'If rain came first',
  rationed: 'Rationed',
  unrationed: 'Not rationed, dry',
  columns: ['', 'figure', 'likely', 'target'],
  sizeColumns: ['tank', 'part', 'dry days a year', 'good years', 'target'],
  atLeast: (text: string) => `at least ${text}`,
  atMost: (text: string) => `at most ${text}`,
  limitIn: (days: number) => `at most ${numbers.days(days)}`,
  noTank: 'no tank would do',
  noneOfCatalogue: 'none of these would do',
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
  gaugeColumns: ['', 'sites', 'rain', 'years', 'a year', 'wettest', 'on', 'not read'],
  gaugeKey:
    'years judged of years read; mean rain of a judged year and wettest day in mm; not read: share of the days from first to last',
  ofYears: (judged: number, all: number) => `${judged} of ${all}`,
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
  matchingUsed: (count: number) =>
    `A saved matching of headers is used for ${many(count, 'file', 'files')}; "eavewell columns" shows it`,
  who: (name: string, id: string, people: string) => `${name} (${id}), ${people}`,
  peopleNotKnown: 'people not known',
  inDesignYear: (people: number) => `, ${numbers.quantity(people, 'number')} in the design year`,
  dryDays: (days: number, range: Range) => `${numbers.dryDaysAYear(days)}, ${numbers.likely(range)}`,
  longestRun: (days: number, from: string) => `longest dry run ${numbers.days(days)} from ${from}`,
  seeOne: (folder: string, id: string) => `See one: eavewell design ${typed(folder)} --site ${id}`,
  allHold: 'Every site holds.',
  moreSites: (count: number) =>
    `And ${numbers.quantity(count, 'number')} more; the most people-days without water came first. --out DIR writes them all into verdicts.csv.`,
  noSites: 'There is no site to judge.',
  seeProblems: (folder: string) => `What is wrong in the tables: eavewell check ${typed(folder)}`,
  notJudgedYet: 'Roof, gutter, treatment unit and tap are not judged yet.',
  range: (fraction: number) =>
    `"likely": ${numbers.percent(fraction)} of records drawn again from these years; the truth lies outside more often, most of all with few years`,
  order: (order: DayOrder) =>
    order === 'yas'
      ? 'Order of each day: rain runs in and spills before people draw (yield after spill)'
      : order === 'ybs'
        ? 'Order of each day: rain runs in and people draw before it spills (yield before spill), the generous order'
        : 'Order of each day: people draw before the rain runs in',
  ration: ({ below_fraction, judged_fraction, other_fraction }: Ration, tankVolume_L: number) =>
    `Rationed under ${numbers.litres(below_fraction * tankVolume_L)}: ${numbers.percent(judged_fraction)} of the judged litres are given then, ${numbers.percent(other_fraction)} of the others; a day that cuts the judged litres is a dry day`,
  noExactSize: 'Each size of tank was run on its own, so the smallest that would do is one of those below',
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

const trouble = {
  ourFault: (message: string) =>
    `This is our fault, not yours: ${message}. Please report it with the command you typed; EAVEWELL_TRACE=1 before it shows where.`,
  wrongUse: (message: string) => `Wrong use: ${message}`,
  seeHelp: 'eavewell --help shows how.',
  pricesOnForm: '--prices-on needs a day: YYYY-MM-DD',
  orderForm: '--order is drawFirst, yas or ybs',
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
  columns,
  convert,
  demo,
  maps,
  serve,
  trouble,
  progress,
};

/** The command line's texts in any language: the same keys as the English ones. */
export type CommandLineWords = typeof commandLine;
