import type { Scenario, SpiClass } from '@eavewell/engine';
import type { Speech } from '../problems.ts';
import { yes } from './telling.ts';

/** Gauges by name where they are few. */
const gaugesIn = ({ say }: Speech, gauges: readonly string[]) =>
  gauges.length > 3 ? say('commandLine.scenario.gauges', { count: gauges.length }) : gauges.join(', ');

/** What is said of the verdicts if it had rained otherwise. */
// long: the words of one question, a line or two each
export const scenarioIn = ({ say, numbers }: Speech) => ({
  heading: say('commandLine.scenario.heading'),
  standsBelow: say('commandLine.scenario.standsBelow'),
  madeWhole: (gauges: readonly string[]) =>
    say('commandLine.scenario.madeWhole', { gauges: gaugesIn({ say, numbers }, gauges) }),
  asked: ({ wetDays_fraction, wetDayRain_fraction, lastYears }: Scenario) => {
    const asked = [
      ...(wetDays_fraction === 1
        ? []
        : [say('commandLine.scenario.asked.wetDays', { share: numbers.percent(wetDays_fraction) })]),
      ...(wetDayRain_fraction === 1
        ? []
        : [say('commandLine.scenario.asked.wetDayRain', { share: numbers.percent(wetDayRain_fraction) })]),
      ...(lastYears === null ? [] : [say('commandLine.scenario.asked.lastYears', { count: lastYears })]),
    ];
    return asked.length === 0
      ? say('commandLine.scenario.asked.nothing')
      : say('commandLine.scenario.asked', { asked: asked.join(', ') });
  },
  shorter: (gauges: readonly string[], years: number) =>
    say('commandLine.scenario.shorter', {
      gauges: gaugesIn({ say, numbers }, gauges),
      count: gauges.length,
      years: numbers.years(years),
    }),
  notForecast: say('commandLine.scenario.notForecast'),
  countColumns: [
    say('commandLine.scenario.countColumns.1'),
    say('commandLine.scenario.countColumns.2'),
    say('commandLine.scenario.countColumns.3'),
  ],
  changeColumns: [
    say('commandLine.scenario.changeColumns.1'),
    '',
    say('commandLine.scenario.changeColumns.3'),
    say('commandLine.scenario.changeColumns.4'),
    say('commandLine.scenario.changeColumns.5'),
    say('commandLine.scenario.changeColumns.6'),
  ],
  siteColumns: ['', say('commandLine.scenario.siteColumns.2'), say('commandLine.scenario.siteColumns.3')],
  noneChanges: say('commandLine.scenario.noneChanges'),
  moreChange: (count: number) => say('commandLine.scenario.moreChange', { count }),
  verdict: say('commandLine.scenario.verdict'),
  goodYears: say('commandLine.scenario.goodYears'),
  dryDays: say('commandLine.scenario.dryDays'),
  tankForTarget: say('commandLine.scenario.tankForTarget'),
  tankForTargetAlone: say('commandLine.scenario.tankForTargetAlone'),
  noTank: say('commandLine.scenario.noTank'),
  notKnown: say('commandLine.scenario.notKnown'),
  wrongShare: (option: string, text: string, least: number, most: number) =>
    say('commandLine.scenario.wrongShare', { option, text, least, most }),
  wrongYears: (text: string, most: number) =>
    say('commandLine.scenario.wrongYears', { text, most: numbers.quantity(most, 'number') }),
});

const spiClassesIn = ({ say }: Speech): Readonly<Record<SpiClass, string>> => ({
  extremelyDry: say('commandLine.spiClasses.extremelyDry'),
  severelyDry: say('commandLine.spiClasses.severelyDry'),
  moderatelyDry: say('commandLine.spiClasses.moderatelyDry'),
  nearNormal: say('commandLine.spiClasses.nearNormal'),
  moderatelyWet: say('commandLine.spiClasses.moderatelyWet'),
  veryWet: say('commandLine.spiClasses.veryWet'),
  extremelyWet: say('commandLine.spiClasses.extremelyWet'),
});

/** What the page of a gauge says. */
// long: the words of one page, a line or two each
export const rainIn = ({ say, numbers }: Speech) => ({
  who: (name: string, id: string) => say('commandLine.rain.who', { name, id }),
  unknownGauge: (id: string, near: readonly string[]) =>
    say('commandLine.rain.unknownGauge', { id, hasNear: yes(near.length > 0), near: near.join(', ') }),
  record: (from: string, to: string, days: number, missing: number) =>
    say('commandLine.rain.record', {
      from,
      to,
      days: numbers.days(days),
      isWhole: yes(missing === 0),
      missing: numbers.days(missing),
    }),
  wettest: (rain: string, day: string) => say('commandLine.rain.wettest', { rain, day }),
  years: (month: string, judged: number, all: number) =>
    say('commandLine.rain.years', { month, judged: numbers.ofYears(judged, all) }),
  noYears: say('commandLine.rain.noYears'),
  notJudged: (years: readonly string[]) => say('commandLine.rain.notJudged', { years: years.join(', ') }),
  mean: (rain: string) => say('commandLine.rain.mean', { rain }),
  longestRun: (days: string, made: boolean) => say('commandLine.rain.longestRun', { days, isMade: yes(made) }),
  filled: say('commandLine.rain.filled'),
  filledBy: (all: number, fromYears: number, fromGauges: number) =>
    say('commandLine.rain.filledBy', {
      isNone: yes(all === 0),
      all: numbers.days(all),
      fromYears: numbers.quantity(fromYears, 'number'),
      fromGauges: numbers.quantity(fromGauges, 'number'),
    }),
  judgedFilled: (filled: number, days: number, share: string) =>
    say('commandLine.rain.judgedFilled', {
      days: numbers.days(days),
      filled: numbers.quantity(filled, 'number'),
      share,
    }),
  sources: say('commandLine.rain.sources'),
  sourceColumns: ['', say('commandLine.rain.sourceColumns.2'), say('commandLine.rain.sourceColumns.3')],
  sourceNames: [
    say('commandLine.rain.sourceNames.1'),
    say('commandLine.rain.sourceNames.2'),
    say('commandLine.rain.sourceNames.3'),
    say('commandLine.rain.sourceNames.4'),
  ],
  allMade: say('commandLine.rain.allMade'),
  given: say('commandLine.rain.given'),
  givenColumns: (made: boolean) => [
    '',
    say('commandLine.rain.givenColumns.2'),
    say('commandLine.rain.givenColumns.3'),
    made ? say('commandLine.rain.givenColumns.4') : say('commandLine.rain.givenColumns.4.otherwise'),
    say('commandLine.rain.givenColumns.5'),
  ],
  yearByYear: say('commandLine.rain.yearByYear'),
  yearColumns: [
    say('commandLine.rain.yearColumns.1'),
    say('commandLine.rain.yearColumns.2'),
    say('commandLine.rain.yearColumns.3'),
    say('commandLine.rain.yearColumns.4'),
    say('commandLine.rain.yearColumns.5'),
  ],
  yearsKey: say('commandLine.rain.yearsKey'),
  latest: (span: string, ending: string, index: string, name: string) =>
    say('commandLine.rain.latest', { span, ending, index, name }),
  beside: say('commandLine.rain.beside'),
  mass: (others: string, share: string, day: string, months: number) =>
    say('commandLine.rain.mass', { day, share, others, months }),
  noMass: say('commandLine.rain.noMass'),
  made: say('commandLine.rain.made'),
  madeColumns: ['', say('commandLine.rain.madeColumns.2'), say('commandLine.rain.madeColumns.3')],
  madeRows: {
    rain: say('commandLine.rain.madeRows.rain'),
    spread: say('commandLine.rain.madeRows.spread'),
    wetDays: say('commandLine.rain.madeRows.wetDays'),
    run: say('commandLine.rain.madeRows.run'),
    longest: say('commandLine.rain.madeRows.longest'),
  },
  amountKinds: {
    gamma: say('commandLine.rain.amountKinds.gamma'),
    mixedExponential: say('commandLine.rain.amountKinds.mixedExponential'),
  },
  madeKey: (years: number, kind: string) => say('commandLine.rain.madeKey', { years: numbers.years(years), kind }),
  noMade: say('commandLine.rain.noMade'),
  withinReach: (count: number) => say('commandLine.rain.withinReach', { count }),
  normals: say('commandLine.rain.normals'),
  normalColumns: [
    '',
    say('commandLine.rain.normalColumns.2'),
    say('commandLine.rain.normalColumns.3'),
    say('commandLine.rain.normalColumns.4'),
    say('commandLine.rain.normalColumns.5'),
  ],
  none: '-',
  ofYears: (complete: number, all: number) => say('commandLine.rain.ofYears', { complete, all }),
  normalsKey: say('commandLine.rain.normalsKey'),
  runs: say('commandLine.rain.runs'),
  stripKey: (drawn: boolean) => say('commandLine.rain.stripKey', { isDrawn: yes(drawn) }),
  runsKey: say('commandLine.rain.runsKey'),
  driest: say('commandLine.rain.driest'),
  indexColumns: [
    say('commandLine.rain.indexColumns.1'),
    say('commandLine.rain.indexColumns.2'),
    say('commandLine.rain.indexColumns.3'),
    say('commandLine.rain.indexColumns.4'),
    '',
  ],
  span: (months: number) => say('commandLine.rain.span', { months }),
  indexKey: say('commandLine.rain.indexKey'),
  noIndex: say('commandLine.rain.noIndex'),
  classes: spiClassesIn({ say, numbers }),
  sites: say('commandLine.rain.sites'),
  noSites: say('commandLine.rain.noSites'),
  noneRest: say('commandLine.rain.noneRest'),
  siteColumns: [
    say('commandLine.rain.siteColumns.1'),
    '',
    say('commandLine.rain.siteColumns.3'),
    say('commandLine.rain.siteColumns.4'),
    say('commandLine.rain.siteColumns.5'),
  ],
  moreSites: (count: number) => say('commandLine.rain.moreSites', { count }),
  faults: say('commandLine.rain.faults'),
  noFaults: say('commandLine.rain.noFaults'),
});
