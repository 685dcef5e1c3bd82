import type { DayOrder, Range, Ration, Verdict } from '@eavewell/engine';
import type { Speech } from '../problems.ts';
import { columnsIn, typed } from './columnWords.ts';
import { convertIn, demoIn } from './copyWords.ts';
import { headPageIn, settlingPageIn } from './flowPages.ts';
import { kitPageIn } from './kitPages.ts';
import { mapsIn } from './maps.ts';
import { packPageIn } from './packPages.ts';
import { parserIn } from './parserWords.ts';
import { rainIn, scenarioIn } from './rainPages.ts';
import { rolloutPagesIn } from './rolloutPages.ts';
import { serveIn } from './serve.ts';
import { stormPageIn } from './stormPages.ts';
import { yes } from './telling.ts';
import { translateIn } from './translateWords.ts';
import { safetyPageIn, treatmentPageIn, wearPageIn } from './treatmentPages.ts';

const verdictGroupsIn = ({ say }: Speech): Readonly<Record<Verdict, (count: number) => string>> => ({
  short: (count) => say('commandLine.verdictGroups.short', { count }),
  unknown: (count) => say('commandLine.verdictGroups.unknown', { count }),
  tight: (count) => say('commandLine.verdictGroups.tight', { count }),
  holds: (count) => say('commandLine.verdictGroups.holds', { count }),
});

/** What commands say about themselves. */
// long: what commands say about themselves, one a line
const helpIn = ({ say }: Speech) => ({
  about: say('commandLine.help.about'),
  check: say('commandLine.help.check'),
  design: say('commandLine.help.design'),
  rain: say('commandLine.help.rain'),
  columns: say('commandLine.help.columns'),
  demo: say('commandLine.help.demo'),
  convert: say('commandLine.help.convert'),
  folder: say('commandLine.help.folder'),
  to: say('commandLine.help.to'),
  overwrite: say('commandLine.help.overwrite'),
  gauge: say('commandLine.help.gauge'),
  newFolder: say('commandLine.help.newFolder'),
  out: say('commandLine.help.out'),
  all: say('commandLine.help.all'),
  site: say('commandLine.help.site'),
  json: say('commandLine.help.json'),
  pricesOn: say('commandLine.help.pricesOn'),
  order: say('commandLine.help.order'),
  wetDays: say('commandLine.help.wetDays'),
  wetDayRain: say('commandLine.help.wetDayRain'),
  lastYears: say('commandLine.help.lastYears'),
  series: say('commandLine.help.series'),
  accept: say('commandLine.help.accept'),
  set: say('commandLine.help.set'),
  sites: say('commandLine.help.sites'),
  seed: say('commandLine.help.seed'),
  clean: say('commandLine.help.clean'),
  language: say('commandLine.help.language'),
  version: say('commandLine.help.version'),
  help: say('commandLine.help.help'),
  examples: {
    main: say('commandLine.help.examples.main'),
    check: say('commandLine.help.examples.check'),
    design: say('commandLine.help.examples.design'),
    rain: say('commandLine.help.examples.rain'),
    columns: say('commandLine.help.examples.columns'),
    convert: say('commandLine.help.examples.convert'),
    demo: say('commandLine.help.examples.demo'),
  },
});

const headingsIn = ({ say }: Speech) => ({
  read: say('commandLine.headings.read'),
  gauges: say('commandLine.headings.gauges'),
  problems: say('commandLine.headings.problems'),
  notUsed: say('commandLine.headings.notUsed'),
  stations: say('commandLine.headings.stations'),
  figures: say('commandLine.headings.figures'),
  figuresOf: (tanks: string, people: string) => say('commandLine.headings.figuresOf', { tanks, people }),
  years: say('commandLine.headings.years'),
  dryRuns: say('commandLine.headings.dryRuns'),
  sizes: say('commandLine.headings.sizes'),
  sizesAlone: say('commandLine.headings.sizesAlone'),
  firstService: say('commandLine.headings.firstService'),
  drainage: say('commandLine.headings.drainage'),
  stands: say('commandLine.headings.stands'),
  heaviestPiece: say('commandLine.headings.heaviestPiece'),
  working: say('commandLine.headings.working'),
  cautions: say('commandLine.headings.cautions'),
});

/** The labels of the figures of one site. */
// long: labels, one a line
const figuresIn = ({ say, numbers }: Speech) => ({
  goodYears: say('commandLine.figures.goodYears'),
  dryDays: say('commandLine.figures.dryDays'),
  daysMet: say('commandLine.figures.daysMet'),
  longestRun: say('commandLine.figures.longestRun'),
  tank: say('commandLine.figures.tank'),
  tankForTarget: say('commandLine.figures.tankForTarget'),
  tankAlone: say('commandLine.figures.tankAlone'),
  asked: say('commandLine.figures.asked'),
  askedDays: say('commandLine.figures.askedDays'),
  upTo: (text: string) => say('commandLine.figures.upTo', { text }),
  askedOther: say('commandLine.figures.askedOther'),
  otherShort: say('commandLine.figures.otherShort'),
  caught: say('commandLine.figures.caught'),
  shortfall: say('commandLine.figures.shortfall'),
  generous: say('commandLine.figures.generous'),
  rationed: say('commandLine.figures.rationed'),
  unrationed: say('commandLine.figures.unrationed'),
  columns: [
    '',
    say('commandLine.figures.columns.2'),
    say('commandLine.figures.columns.3'),
    say('commandLine.figures.columns.4'),
  ],
  drainageColumns: [
    say('commandLine.figures.drainageColumns.1'),
    say('commandLine.figures.drainageColumns.2'),
    say('commandLine.figures.drainageColumns.3'),
    say('commandLine.figures.drainageColumns.4'),
    say('commandLine.figures.drainageColumns.5'),
    say('commandLine.figures.drainageColumns.6'),
  ],
  sizeColumns: [
    say('commandLine.figures.sizeColumns.1'),
    say('commandLine.figures.sizeColumns.2'),
    say('commandLine.figures.sizeColumns.3'),
    say('commandLine.figures.sizeColumns.4'),
    say('commandLine.figures.sizeColumns.5'),
  ],
  standColumns: [
    say('commandLine.figures.standColumns.1'),
    say('commandLine.figures.standColumns.2'),
    say('commandLine.figures.standColumns.3'),
    say('commandLine.figures.standColumns.4'),
    say('commandLine.figures.standColumns.5'),
    say('commandLine.figures.standColumns.6'),
  ],
  atLeast: (text: string) => say('commandLine.figures.atLeast', { text }),
  atMost: (text: string) => say('commandLine.figures.atMost', { text }),
  limitIn: (days: number) => say('commandLine.figures.limitIn', { days: numbers.days(days) }),
  noTank: say('commandLine.figures.noTank'),
  noneOfCatalogue: say('commandLine.figures.noneOfCatalogue'),
  meets: say('commandLine.figures.meets'),
  misses: say('commandLine.figures.misses'),
  thisTank: say('commandLine.figures.thisTank'),
});

// long: the words of one command, one a line
const checkIn = ({ say, numbers }: Speech) => ({
  nothingWrong: say('commandLine.check.nothingWrong'),
  counted: (blockers: number, warnings: number, notes: number) =>
    say('commandLine.check.counted', { blockers, warnings, notes }),
  rowsUsed: (used: number, rows: number) =>
    say('commandLine.check.rowsUsed', { used: numbers.quantity(used, 'number'), rows }),
  gauges: say('commandLine.check.gauges'),
  gaugeColumns: [
    '',
    say('commandLine.check.gaugeColumns.2'),
    say('commandLine.check.gaugeColumns.3'),
    say('commandLine.check.gaugeColumns.4'),
    say('commandLine.check.gaugeColumns.5'),
    say('commandLine.check.gaugeColumns.6'),
    say('commandLine.check.gaugeColumns.7'),
    say('commandLine.check.gaugeColumns.8'),
  ],
  gaugeKey: say('commandLine.check.gaugeKey'),
  ofYears: (judged: number, all: number) => say('commandLine.check.ofYears', { judged, all }),
  measured: say('commandLine.check.measured'),
  madeRain: say('commandLine.check.madeRain'),
  noRain: say('commandLine.check.noRain'),
  none: '-',
  moreGauges: (count: number) => say('commandLine.check.moreGauges', { count }),
  manyRainFiles: (files: number) => say('commandLine.check.manyRainFiles', { files }),
  more: (count: number) => say('commandLine.check.more', { count: numbers.quantity(count, 'number') }),
  notUsed: (rows: number, cells: number) => say('commandLine.check.notUsed', { rows, cells }),
  wholeRow: say('commandLine.check.wholeRow'),
  writeThem: say('commandLine.check.writeThem'),
});

// long: the words of one command, one a line
const designIn = ({ say, numbers }: Speech) => ({
  programme: (count: number, people: number, gauges: number) =>
    say('commandLine.design.programme', { count, people: numbers.people(people), gauges }),
  peopleUnknown: (count: number) => say('commandLine.design.peopleUnknown', { count }),
  record: (least: number, most: number, first: number, last: number) =>
    say('commandLine.design.record', {
      years:
        least === most
          ? numbers.years(least)
          : say('numbers.between', { from: String(least), to: numbers.years(most) }),
      first: String(first),
      last: String(last),
    }),
  made: (gauges: number, years: number) => say('commandLine.design.made', { gauges, years: numbers.years(years) }),
  noRecord: say('commandLine.design.noRecord'),
  target: (text: string) => say('commandLine.design.target', { text }),
  litres: (value: number) =>
    say('commandLine.design.litres', { value: numbers.quantity(value, 'L_per_person_per_day') }),
  matchingUsed: (count: number) => say('commandLine.design.matchingUsed', { count }),
  who: (name: string, id: string, people: string) => say('commandLine.design.who', { name, id, people }),
  peopleNotKnown: say('commandLine.design.peopleNotKnown'),
  inDesignYear: (people: number) =>
    say('commandLine.design.inDesignYear', { people: numbers.quantity(people, 'number') }),
  dryDays: (days: number, range: Range) =>
    say('commandLine.design.dryDays', { days: numbers.dryDaysAYear(days), range: numbers.likely(range) }),
  longestRun: (days: number, from: string) => say('commandLine.design.longestRun', { days: numbers.days(days), from }),
  seeOne: (folder: string, id: string) => say('commandLine.design.seeOne', { folder: typed(folder), id }),
  allHold: say('commandLine.design.allHold'),
  moreSites: (count: number) => say('commandLine.design.moreSites', { count: numbers.quantity(count, 'number') }),
  noSites: say('commandLine.design.noSites'),
  seeProblems: (folder: string) => say('commandLine.design.seeProblems', { folder: typed(folder) }),
  notJudgedYet: say('commandLine.design.notJudgedYet'),
  range: (fraction: number) => say('commandLine.design.range', { fraction: numbers.percent(fraction) }),
  order: (order: DayOrder) => say('commandLine.design.order', { order }),
  ration: ({ below_fraction, judged_fraction, other_fraction }: Ration, tankVolume_L: number) =>
    say('commandLine.design.ration', {
      below: numbers.litres(below_fraction * tankVolume_L),
      judged: numbers.percent(judged_fraction),
      other: numbers.percent(other_fraction),
    }),
  noExactSize: say('commandLine.design.noExactSize'),
  noDryRuns: say('commandLine.design.noDryRuns'),
  run: (days: number, from: string, to: string) =>
    say('commandLine.design.run', { days: numbers.days(days), from, to }),
  yearsKey: say('commandLine.design.yearsKey'),
  stripKey: (drawn: boolean) => say('commandLine.design.stripKey', { isDrawn: yes(drawn) }),
  firstService: (handOver: string, wait: string, range: string, day: string) =>
    say('commandLine.design.firstService', { handOver, wait, range, day }),
  neverServes: say('commandLine.design.neverServes'),
  written: (path: string) => say('commandLine.design.written', { path }),
  unknownSite: (id: string, near: readonly string[]) =>
    say('commandLine.design.unknownSite', { id, hasNear: yes(near.length > 0), near: near.join(', ') }),
  sourceOf: (text: string) => say('commandLine.design.sourceOf', { text }),
});

// long: the words of trouble, one a line
const troubleIn = ({ say }: Speech) => ({
  ourFault: (message: string) => say('commandLine.trouble.ourFault', { message }),
  wrongUse: (message: string) => say('commandLine.trouble.wrongUse', { message }),
  noLanguage: (tag: string, known: string) => say('commandLine.trouble.noLanguage', { tag, known }),
  seeHelp: say('commandLine.trouble.seeHelp'),
  pricesOnForm: say('commandLine.trouble.pricesOnForm'),
  orderForm: say('commandLine.trouble.orderForm'),
  seriesAlone: say('commandLine.trouble.seriesAlone'),
  folderUnnamed: say('commandLine.trouble.folderUnnamed'),
  outIsFile: (path: string) => say('commandLine.trouble.outIsFile', { path }),
  cannotWrite: (path: string, reason: string) => say('commandLine.trouble.cannotWrite', { path, reason }),
  theOutput: say('commandLine.trouble.theOutput'),
  refusals: {
    ENOSPC: say('commandLine.trouble.refusals.ENOSPC'),
    EDQUOT: say('commandLine.trouble.refusals.EDQUOT'),
    EACCES: say('commandLine.trouble.refusals.EACCES'),
    EPERM: say('commandLine.trouble.refusals.EPERM'),
    EROFS: say('commandLine.trouble.refusals.EROFS'),
    EISDIR: say('commandLine.trouble.refusals.EISDIR'),
    ENOTDIR: say('commandLine.trouble.refusals.ENOTDIR'),
    ENAMETOOLONG: say('commandLine.trouble.refusals.ENAMETOOLONG'),
    ENOENT: say('commandLine.trouble.refusals.ENOENT'),
    EEXIST: say('commandLine.trouble.refusals.EEXIST'),
  },
});

const progressIn = ({ say }: Speech) => ({
  reading: (file: string) => say('commandLine.progress.reading', { file }),
  judging: (done: number, all: number) => say('commandLine.progress.judging', { done, all }),
  making: (folder: string) => say('commandLine.progress.making', { folder }),
});

/** What the command line says beside findings and problems. */
export const commandLineIn = (speech: Speech) => ({
  verdictGroups: verdictGroupsIn(speech),
  help: helpIn(speech),
  headings: headingsIn(speech),
  figures: figuresIn(speech),
  settling: settlingPageIn(speech),
  head: headPageIn(speech),
  treatment: treatmentPageIn(speech),
  pack: packPageIn(speech),
  wear: wearPageIn(speech),
  safety: safetyPageIn(speech),
  kit: kitPageIn(speech),
  rollout: rolloutPagesIn(speech),
  check: checkIn(speech),
  design: designIn(speech),
  scenario: scenarioIn(speech),
  rain: rainIn(speech),
  storm: stormPageIn(speech),
  columns: columnsIn(speech),
  convert: convertIn(speech),
  demo: demoIn(speech),
  maps: mapsIn(speech),
  serve: serveIn(speech),
  translate: translateIn(speech),
  parser: parserIn(speech),
  trouble: troubleIn(speech),
  progress: progressIn(speech),
});

/** The command line's texts. */
export type CommandLineWords = ReturnType<typeof commandLineIn>;
