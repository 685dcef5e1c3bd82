import type { Speech } from '../problems.ts';
import { yes } from './telling.ts';

/** What the command for kits says of itself, and where it was used wrongly. */
const kitHelpIn = ({ say }: Speech) => ({
  help: say('commandLine.kit.help'),
  siteHelp: say('commandLine.kit.siteHelp'),
  neededOnHelp: say('commandLine.kit.neededOnHelp'),
  byHelp: say('commandLine.kit.byHelp'),
  workbookHelp: say('commandLine.kit.workbookHelp'),
  overwriteHelp: say('commandLine.kit.overwriteHelp'),
  jsonHelp: say('commandLine.kit.jsonHelp'),
  examples: say('commandLine.kit.examples'),
  working: (done: number, all: number) => say('commandLine.kit.working', { done, all }),
  neededOnForm: say('commandLine.kit.neededOnForm'),
  unknownCarrier: (id: string, near: readonly string[]) =>
    say('commandLine.kit.unknownCarrier', { id, hasNear: yes(near.length > 0), near: near.join(', ') }),
  noCarriers: say('commandLine.kit.noCarriers'),
  twice: (id: string) => say('commandLine.kit.twice', { id }),
  ending: (path: string) => say('commandLine.kit.ending', { path }),
  isThere: (path: string) => say('commandLine.kit.isThere', { path }),
  written: (path: string) => say('commandLine.kit.written', { path }),
});

/** Of all sites together: exceptions, what is short, what is bought. */
// long: the words of one page, one a line
const kitsPageIn = ({ say, numbers }: Speech) => ({
  noRules: say('commandLine.kit.noRules'),
  noCarriersYet: say('commandLine.kit.noCarriersYet'),
  programme: (sites: number, built: number, parts: number) => say('commandLine.kit.programme', { sites, built, parts }),
  exceptions: say('commandLine.kit.exceptions'),
  notCounted: (count: number) => say('commandLine.kit.notCounted', { count }),
  siteCounts: (name: string, id: string, problems: number) => say('commandLine.kit.siteCounts', { name, id, problems }),
  moreSites: (count: number, folder: string, id: string) => say('commandLine.kit.moreSites', { count, folder, id }),
  unpriced: (parts: string) => say('commandLine.kit.unpriced', { parts }),
  unweighed: (parts: string) => say('commandLine.kit.unweighed', { parts }),
  late: (parts: string) => say('commandLine.kit.late', { parts }),
  noExceptions: say('commandLine.kit.noExceptions'),
  short: say('commandLine.kit.short'),
  nothingShort: say('commandLine.kit.nothingShort'),
  noDay: say('commandLine.kit.noDay'),
  /** The part, how many are needed, in the store, short, and by when they are ordered. */
  shortColumns: [
    say('commandLine.kit.columns.part'),
    say('commandLine.kit.columns.needed'),
    say('commandLine.kit.columns.inStock'),
    say('commandLine.kit.columns.short'),
    say('commandLine.kit.columns.orderBy'),
  ],
  /** The part, how many packs, and what they cost. */
  buyColumns: [
    say('commandLine.kit.columns.part'),
    say('commandLine.kit.columns.packs'),
    say('commandLine.kit.columns.amount'),
  ],
  atLeast: (text: string) => say('commandLine.kit.atLeast', { text }),
  notKnown: say('commandLine.kit.notKnown'),
  notCountedYet: say('commandLine.kit.notCountedYet'),
  atOnce: (day: string, days: number) => say('commandLine.kit.atOnce', { day, days: numbers.days(days) }),
  moreRows: (count: number) => say('commandLine.kit.moreRows', { count }),
  purchases: say('commandLine.kit.purchases'),
  supplier: (name: string | null, sums: readonly string[], unpriced: number, day: string | null) =>
    say('commandLine.kit.supplier', {
      ...{ hasName: yes(name !== null), name: name ?? '', isOpen: yes(unpriced > 0), count: unpriced },
      sums: sums.length === 0 ? say('commandLine.kit.noSum') : sums.join(', '),
      ...{ hasDay: yes(day !== null), day: day ?? '' },
    }),
  carried: say('commandLine.kit.carried'),
});

/** What is said of cost. */
const costPageIn = ({ say }: Speech) => ({
  cost: say('commandLine.kit.cost'),
  ofServed: (count: number, sites: number) => say('commandLine.kit.ofServed', { count, sites }),
  noCost: say('commandLine.kit.noCost'),
  sitesWithoutCost: (count: number) => say('commandLine.kit.sitesWithoutCost', { count }),
  beside: say('commandLine.kit.beside'),
  besides: {
    boughtWater: say('commandLine.kit.boughtWater'),
    boiling: say('commandLine.kit.boiling'),
    pipedScheme: say('commandLine.kit.pipedScheme'),
  },
  besideOf: (what: string, text: string) => say('commandLine.kit.besideOf', { what, text }),
  missing: (missing: string) => say('commandLine.kit.missing', { missing }),
  why: (reasons: string) => say('commandLine.kit.why', { reasons }),
  swings: say('commandLine.kit.swings'),
  swingKey: say('commandLine.kit.swingKey'),
  noSwings: say('commandLine.kit.noSwings'),
  /** The head, its cost a year, and its range. */
  headColumns: [
    say('commandLine.kit.columns.head'),
    say('commandLine.kit.columns.perYear'),
    say('commandLine.kit.columns.likely'),
  ],
  /** The input, the cost at its ends, and a bar. */
  swingColumns: [
    say('commandLine.kit.columns.input'),
    say('commandLine.kit.columns.low'),
    '',
    say('commandLine.kit.columns.high'),
  ],
});

/** Of one site, or of a trip. */
const siteKitPageIn = ({ say }: Speech) => ({
  siteHeading: (name: string, id: string) => say('commandLine.kit.siteHeading', { name, id }),
  built: say('commandLine.kit.built'),
  nothing: say('commandLine.kit.nothing'),
  kit: say('commandLine.kit.kit'),
  /** The part, how many are needed, spares, and all in the kit. */
  kitColumns: [
    say('commandLine.kit.columns.part'),
    say('commandLine.kit.columns.needed'),
    say('commandLine.kit.columns.spares'),
    say('commandLine.kit.columns.total'),
  ],
  cuts: say('commandLine.kit.cuts'),
  cutsOf: (part: string, bars: number, joints: number) => say('commandLine.kit.cutsOf', { part, bars, joints }),
  loadsOf: (carrier: string) => say('commandLine.kit.loadsOf', { carrier }),
  load: (carriedBy: 'one' | 'two' | 'carrier', mass: string, bulk: string | null, pieces: string) =>
    say('commandLine.kit.load', {
      ...{ carriedBy: say(`loads.by.${carriedBy}`), mass, pieces },
      ...{ hasBulk: yes(bulk !== null), bulk: bulk ?? '' },
    }),
  fragile: (text: string) => say('commandLine.kit.fragile', { text }),
  moreLoads: (count: number, id: string) => say('commandLine.kit.moreLoads', { count, id }),
  trip: (stops: string) => say('commandLine.kit.trip', { stops }),
  tripParts: say('commandLine.kit.tripParts'),
  stowing: say('commandLine.kit.stowing'),
  stowed: (pieces: string, site: string, rules: string) => say('commandLine.kit.stowed', { pieces, site, rules }),
  cautions: say('commandLine.kit.cautions'),
});

/** What the command for kits says beside the sentences of its report. */
export const kitPageIn = (speech: Speech) => ({
  ...kitHelpIn(speech),
  ...kitsPageIn(speech),
  ...costPageIn(speech),
  ...siteKitPageIn(speech),
});
