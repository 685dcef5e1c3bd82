import type { Speech } from '../problems.ts';
import { yes } from './telling.ts';

/** What the command for the rollout says of itself, and where it was used wrongly. */
const rolloutHelpIn = ({ say }: Speech) => ({
  help: say('commandLine.rollout.help'),
  secondsHelp: say('commandLine.rollout.secondsHelp'),
  triesHelp: say('commandLine.rollout.triesHelp'),
  seedHelp: say('commandLine.rollout.seedHelp'),
  fromHelp: say('commandLine.rollout.fromHelp'),
  todayHelp: say('commandLine.rollout.todayHelp'),
  planHelp: say('commandLine.rollout.planHelp'),
  anewHelp: say('commandLine.rollout.anewHelp'),
  noPlans: say('commandLine.rollout.noPlans'),
  unknownPlan: (id: string, near: readonly string[]) =>
    say('commandLine.rollout.unknownPlan', { id, hasNear: yes(near.length > 0), near: near.join(', ') }),
  futuresHelp: say('commandLine.rollout.futuresHelp'),
  compareHelp: say('commandLine.rollout.compareHelp'),
  strongBoundHelp: say('commandLine.rollout.strongBoundHelp'),
  outHelp: say('commandLine.rollout.outHelp'),
  overwriteHelp: say('commandLine.rollout.overwriteHelp'),
  pdfHelp: say('commandLine.rollout.pdfHelp'),
  pdfNeedsOut: say('commandLine.rollout.pdfNeedsOut'),
  pdfNotMade: (file: string, said: string) => say('commandLine.rollout.pdfNotMade', { file, said }),
  planOn: (day: string) => say('commandLine.rollout.planOn', { day }),
  jsonHelp: say('commandLine.rollout.jsonHelp'),
  examples: say('commandLine.rollout.examples'),
  number: (option: string, least: number, most: number) => say('commandLine.rollout.number', { option, least, most }),
  dayForm: say('commandLine.rollout.dayForm'),
  either: say('commandLine.rollout.either'),
  isThere: (path: string) => say('commandLine.rollout.isThere', { path }),
  outIsProgramme: (path: string, file: string) => say('commandLine.rollout.outIsProgramme', { path, file }),
  written: (path: string) => say('commandLine.rollout.written', { path }),
});

/** What it says of keeping a plan. */
const rolloutKeepIn = ({ say }: Speech) => ({
  keep: {
    help: say('commandLine.rollout.keep.help'),
    byHelp: say('commandLine.rollout.keep.byHelp'),
    idHelp: say('commandLine.rollout.keep.idHelp'),
    inForceHelp: say('commandLine.rollout.keep.inForceHelp'),
    nameless: say('commandLine.rollout.keep.nameless'),
    nowhere: say('commandLine.rollout.keep.nowhere'),
    nobody: say('commandLine.rollout.keep.nobody'),
    idForm: (id: string) => say('commandLine.rollout.keep.idForm', { id }),
    workbook: say('commandLine.rollout.keep.workbook'),
    taken: (id: string, free: string) => say('commandLine.rollout.keep.taken', { id, free }),
    nothing: say('commandLine.rollout.keep.nothing'),
    kept: (name: string, id: string, where: string) => say('commandLine.rollout.keep.kept', { name, id, where }),
    tables: (path: string) => say('commandLine.rollout.keep.tables', { path }),
  },
});

/** How far it is. */
const rolloutProgressIn = ({ say, numbers }: Speech) => ({
  judging: (done: number, all: number) => say('commandLine.rollout.judging', { done, all }),
  searching: (left: number, waiting: number, gap: number | null) =>
    say('commandLine.rollout.searching', {
      ...{ done: numbers.percent(1 - left), waiting, hasGap: yes(gap !== null) },
      gap: gap === null ? '' : numbers.percentAtMost(gap),
    }),
  bounding: (left: number, gap: number | null) =>
    say('commandLine.rollout.bounding', {
      ...{ done: numbers.percent(1 - left), hasGap: yes(gap !== null) },
      gap: gap === null ? '' : numbers.percentAtMost(gap),
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
  early: say('commandLine.rollout.early'),
  notWithin: say('commandLine.rollout.notWithin'),
  waiting: (mean: string, name: string, days: string) =>
    say('commandLine.rollout.waiting', { mean, hasLongest: yes(name !== ''), name, days }),
  cost: (amount: string, fuel: string, isAtLeast: boolean) =>
    say('commandLine.rollout.cost', { amount, fuel, isAtLeast: yes(isAtLeast) }),
  exceptions: say('commandLine.rollout.exceptions'),
  leftOut: (count: number, names: string, rest: number, reason: string) =>
    say('commandLine.rollout.leftOut', { count, names, rest, reason }),
  handedOver: (count: number) => say('commandLine.rollout.handedOver', { count }),
  crew: (name: string, trips: number) => say('commandLine.rollout.crew', { name, trips }),
  locked: say('commandLine.rollout.locked'),
  stop: (given: {
    readonly name: string;
    readonly people: string;
    readonly handOver: string;
    readonly served: string;
    readonly isTreated: boolean;
    readonly between: readonly [string, string] | null;
  }) => {
    const { between, isTreated, ...values } = given;
    return say('commandLine.rollout.stop', {
      ...{ ...values, isTreated: yes(isTreated), hasBetween: yes(between !== null) },
      ...{ low: between?.[0] ?? '', high: between?.[1] ?? '' },
    });
  },
  stopUnknown: (name: string, people: string, handOver: string) =>
    say('commandLine.rollout.stopUnknown', { name, people, handOver }),
  hauls: say('commandLine.rollout.hauls'),
  haul: (given: {
    readonly leaves: string;
    readonly mass: string;
    readonly from: string;
    readonly store: string;
    readonly by: string | null;
    readonly trips: number;
    readonly arrives: string;
    readonly forTrip: string;
  }) => say('commandLine.rollout.haul', { ...given, by: given.by ?? '', hasBy: yes(given.by !== null) }),
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
    say('commandLine.rollout.columns.change'),
    say('commandLine.rollout.columns.crews'),
    say('commandLine.rollout.columns.leftOut'),
    say('commandLine.rollout.columns.finish'),
    say('commandLine.rollout.columns.waiting'),
    say('commandLine.rollout.columns.amount'),
  ],
  beaten: (variant: string) => say('commandLine.rollout.beaten', { variant }),
  comparedAbout: say('commandLine.rollout.comparedAbout'),
});

/** What is otherwise than in the plan that is gone on from. */
const replannedIn = ({ say }: Speech) => ({
  goesOn: (name: string, day: string, counts: { done: number; toGo: number; locked: number }) =>
    say('commandLine.rollout.goesOn', { name, day, ...counts }),
  underWay: (trip: string, back: string) => say('commandLine.rollout.underWay', { trip, back }),
  overdue: (trips: string) => say('commandLine.rollout.overdue', { trips }),
  dropped: (count: number, names: string, rest: number, reason: string) =>
    say('commandLine.rollout.dropped', { count, names, rest, reason }),
  notPlaced: (count: number, names: string, rest: number) =>
    say('commandLine.rollout.notPlaced', { count, names, rest }),
  movedSince: (moved: number, later: number) => say('commandLine.rollout.movedSince', { moved, later }),
  changes: say('commandLine.rollout.changes'),
  movedSite: (site: {
    readonly water: 'drinks' | 'runs' | 'handOver';
    readonly name: string;
    readonly people: string;
    readonly after: string;
    readonly before: string;
    /** Below 0: sooner; null: not known. */
    readonly later_days: number | null;
    readonly crew: string;
    readonly crewBefore: string;
  }) =>
    say('commandLine.rollout.movedSite', {
      ...{ name: site.name, people: site.people, after: site.after, before: site.before, water: site.water },
      ...{ crew: site.crew, crewBefore: site.crewBefore, isOtherCrew: yes(site.crew !== site.crewBefore) },
      ...{ isOtherDay: yes(site.after !== site.before), days: Math.abs(site.later_days ?? 0) },
      isSooner: yes((site.later_days ?? 0) < 0),
    }),
  noCrew: say('commandLine.rollout.noCrew'),
  moreSites: (count: number) => say('commandLine.rollout.moreSites', { count }),
});

/** What a crew is given on paper: where it goes, and what it takes. */
// long: the words of two pages, one a line
const rolloutPapersIn = ({ say }: Speech) => ({
  cautions: say('commandLine.rollout.caution.title'),
  cautionPlan: say('commandLine.rollout.caution.plan'),
  itinerary: {
    title: (name: string) => say('commandLine.rollout.itinerary.title', { name }),
    made: (programme: string, day: string) => say('commandLine.rollout.itinerary.made', { programme, day }),
    noTrip: say('commandLine.rollout.itinerary.noTrip'),
    take: (pieces: number, mass: string, file: string) =>
      say('commandLine.rollout.itinerary.take', { pieces, mass, file }),
  },
  manifest: {
    title: (trip: string, crew: string) => say('commandLine.rollout.manifest.title', { trip, crew }),
    leaves: (day: string) => say('commandLine.rollout.manifest.leaves', { day }),
    forSite: (name: string, site: string) => say('commandLine.rollout.manifest.forSite', { name, site }),
    nothing: say('commandLine.rollout.manifest.nothing'),
    pieces: (pieces: string, mass: string | null) =>
      mass === null
        ? say('commandLine.rollout.manifest.massUnknown', { pieces })
        : say('commandLine.rollout.manifest.mass', { pieces, mass }),
    apart: say('commandLine.rollout.manifest.apart'),
    hauls: say('commandLine.rollout.manifest.hauls'),
  },
});

/** What the command for the rollout says. */
export const rolloutPagesIn = (speech: Speech) => ({
  ...rolloutHelpIn(speech),
  ...rolloutKeepIn(speech),
  ...rolloutProgressIn(speech),
  ...rolloutPageIn(speech),
  ...rolloutPapersIn(speech),
  ...replannedIn(speech),
});
