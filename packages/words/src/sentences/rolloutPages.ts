import type { Speech } from '../problems.ts';
import { yes } from './telling.ts';

/** What the command for the rollout says of itself, and where it was used wrongly. */
const rolloutHelpIn = ({ say }: Speech) => ({
  help: say('commandLine.rollout.help'),
  secondsHelp: say('commandLine.rollout.secondsHelp'),
  triesHelp: say('commandLine.rollout.triesHelp'),
  seedHelp: say('commandLine.rollout.seedHelp'),
  fromHelp: say('commandLine.rollout.fromHelp'),
  futuresHelp: say('commandLine.rollout.futuresHelp'),
  compareHelp: say('commandLine.rollout.compareHelp'),
  outHelp: say('commandLine.rollout.outHelp'),
  overwriteHelp: say('commandLine.rollout.overwriteHelp'),
  jsonHelp: say('commandLine.rollout.jsonHelp'),
  examples: say('commandLine.rollout.examples'),
  number: (option: string, least: number, most: number) => say('commandLine.rollout.number', { option, least, most }),
  dayForm: say('commandLine.rollout.dayForm'),
  either: say('commandLine.rollout.either'),
  isThere: (path: string) => say('commandLine.rollout.isThere', { path }),
  written: (path: string) => say('commandLine.rollout.written', { path }),
});

/** How far it is. */
const rolloutProgressIn = ({ say, numbers }: Speech) => ({
  judging: (done: number, all: number) => say('commandLine.rollout.judging', { done, all }),
  searching: (left: number, waiting: number, gap: number | null) =>
    say('commandLine.rollout.searching', {
      ...{ done: numbers.percent(1 - left), waiting, hasGap: yes(gap !== null) },
      gap: gap === null ? '' : numbers.percent(Math.ceil(gap * 1000) / 1000),
    }),
  drawing: (done: number, all: number) => say('commandLine.rollout.drawing', { done, all }),
  comparing: (done: number, all: number) => say('commandLine.rollout.comparing', { done, all }),
});

/** The page. */
// long: the words of one page, one a line
const rolloutPageIn = ({ say }: Speech) => ({
  nothing: say('commandLine.rollout.nothing'),
  planned: (sites: number, people: string, from: string, finish: string) =>
    say('commandLine.rollout.planned', { sites, people, from, finish }),
  futures: (runs: number, p50: string, p90: string, between: readonly string[]) =>
    say('commandLine.rollout.futures', {
      ...{ runs, p50, p90, hasBetween: yes(between.length === 2 && between[0] !== between[1]) },
      ...{ low: between[0] ?? '', high: between[1] ?? '' },
    }),
  waiting: (mean: string, name: string, days: string) =>
    say('commandLine.rollout.waiting', { mean, hasLongest: yes(name !== ''), name, days }),
  cost: (amount: string, fuel: string) => say('commandLine.rollout.cost', { amount, fuel }),
  exceptions: say('commandLine.rollout.exceptions'),
  leftOut: (count: number, names: string, rest: number, reason: string) =>
    say('commandLine.rollout.leftOut', { count, names, rest, reason }),
  crew: (name: string, trips: number) => say('commandLine.rollout.crew', { name, trips }),
  locked: say('commandLine.rollout.locked'),
  stop: (name: string, people: string, handOver: string, served: string, between: readonly [string, string] | null) =>
    say('commandLine.rollout.stop', {
      ...{ name, people, handOver, served, hasBetween: yes(between !== null) },
      ...{ low: between?.[0] ?? '', high: between?.[1] ?? '' },
    }),
  hauls: say('commandLine.rollout.hauls'),
  haul: (from: string, store: string, leaves: string, arrives: string, trips: number, forTrip: string) =>
    say('commandLine.rollout.haul', { from, store, leaves, arrives, trips, forTrip }),
  goods: say('commandLine.rollout.goods'),
  /** The part, its store, what came, what went, the least that was left, and when. */
  goodsColumns: [
    say('commandLine.rollout.columns.part'),
    say('commandLine.rollout.columns.store'),
    say('commandLine.rollout.columns.in'),
    say('commandLine.rollout.columns.out'),
    say('commandLine.rollout.columns.least'),
    say('commandLine.rollout.columns.on'),
  ],
  money: say('commandLine.rollout.money'),
  monthColumn: say('commandLine.rollout.columns.month'),
  amountColumn: say('commandLine.rollout.columns.amount'),
  areas: say('commandLine.rollout.areas'),
  noArea: say('commandLine.rollout.noArea'),
  /** The area, its people, and how long one of them waits. */
  areaColumns: [
    say('commandLine.rollout.columns.area'),
    say('commandLine.rollout.columns.people'),
    say('commandLine.rollout.columns.wait'),
  ],
  compared: say('commandLine.rollout.compared'),
  comparedColumns: [
    say('commandLine.rollout.columns.crews'),
    say('commandLine.rollout.columns.carriers'),
    say('commandLine.rollout.columns.stores'),
    say('commandLine.rollout.columns.finish'),
    say('commandLine.rollout.columns.waiting'),
    say('commandLine.rollout.columns.amount'),
  ],
});

/** What the command for the rollout says. */
export const rolloutPagesIn = (speech: Speech) => ({
  ...rolloutHelpIn(speech),
  ...rolloutProgressIn(speech),
  ...rolloutPageIn(speech),
});
