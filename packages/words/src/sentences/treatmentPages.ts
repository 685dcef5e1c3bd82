import type {
  BarrierFinding,
  DayIndex,
  GermBand,
  Pathogen,
  PeakFinding,
  ReductionEvidence,
  TestNeed,
  WaterTestFinding,
} from '@eavewell/engine';
import type { Speech } from '../problems.ts';
import { roundedDown } from './roundedDown.ts';
import { yes } from './telling.ts';
import { type SourceOfRisk, waterOfRisk } from './waterOfRisk.ts';

/** What the page of a site says about its treatment units, beside their sentences. */
export const treatmentPageIn = ({ say }: Speech) => ({
  heading: (unit: string | null) =>
    say('commandLine.treatment.heading', { hasUnit: yes(unit !== null), unit: unit ?? '' }),
  peak: (peak: PeakFinding['peak']) => say('commandLine.treatment.peak', { peak }),
  /** The hour, what is asked, what is possible, the wait of the last as the set is now and when it is worn. */
  columns: [
    say('commandLine.treatment.hour'),
    say('commandLine.treatment.asked'),
    say('commandLine.treatment.possible'),
    say('commandLine.treatment.wait'),
    say('commandLine.treatment.waitWorn'),
  ],
  noEnd: say('commandLine.treatment.noEnd'),
});

/** What the page of a site, and the command for cartridges, say about when they are due. */
export const wearPageIn = ({ say, numbers }: Speech) => ({
  heading: (unit: string) => say('commandLine.wear.heading', { unit }),
  /** The site, its unit, the day it is likely due, the range of it. */
  columns: [
    say('commandLine.wear.site'),
    say('commandLine.wear.unit'),
    say('commandLine.wear.likely'),
    say('commandLine.wear.range'),
  ],
  between: (from: DayIndex, to: DayIndex) =>
    from === to ? numbers.date(from) : say('numbers.between', { from: numbers.date(from), to: numbers.date(to) }),
  programme: (sets: number, sites: number) => say('commandLine.wear.programme', { sets, sites }),
  overdue: (count: number) => say('commandLine.wear.overdue', { count }),
  noDate: (count: number) => say('commandLine.wear.noDate', { count }),
  why: (what: string) => say('commandLine.wear.why', { what }),
  none: say('commandLine.wear.none'),
  noneHere: say('commandLine.wear.noneHere'),
  working: (done: number, all: number) => say('commandLine.wear.working', { done, all }),
  help: say('commandLine.wear.help'),
  jsonHelp: say('commandLine.wear.jsonHelp'),
  examples: say('commandLine.wear.examples'),
});

/** What the page of a site, and the command for safety, say about whether water is fit to drink, beside its sentences. */
// long: the words of one page, one a line
export const safetyPageIn = ({ say, numbers }: Speech) => ({
  heading: say('commandLine.safety.heading'),
  barrier: ({ kind, barrierId }: Pick<BarrierFinding, 'kind' | 'barrierId'>) =>
    say('commandLine.safety.barrier', { kind, hasId: yes(barrierId !== null), id: barrierId ?? '' }),
  evidence: (evidence: ReductionEvidence) => say('commandLine.safety.evidence', { evidence }),
  /** The barrier, what says so, tenfold steps of bacteria, viruses and protozoa. */
  barrierColumns: [
    say('commandLine.safety.columns.barrier'),
    say('commandLine.safety.columns.evidence'),
    say('commandLine.safety.columns.bacteria'),
    say('commandLine.safety.columns.viruses'),
    say('commandLine.safety.columns.protozoa'),
  ],
  pathogen: (pathogen: Pathogen) => say('commandLine.safety.pathogen', { pathogen }),
  water: (of: SourceOfRisk) =>
    of.secondSourceId === null
      ? say('commandLine.safety.ofRoofs')
      : say('commandLine.safety.ofSource', waterOfRisk(of, { numbers })),
  risksAbout: say('commandLine.safety.risksAbout'),
  lostYears: (value_DALY_per_person_per_year: number) => numbers.quantity(value_DALY_per_person_per_year * 1e6, ''),
  /** The germ, the water it is in, healthy years lost, the high end of them, the target. */
  riskColumns: [
    say('commandLine.safety.columns.germ'),
    say('commandLine.safety.columns.water'),
    say('commandLine.safety.columns.lost'),
    say('commandLine.safety.columns.high'),
    say('commandLine.safety.columns.target'),
  ],
  point: (point: WaterTestFinding['point']) => say('commandLine.safety.point', { point }),
  count: ({ sign, count_per_100mL }: Pick<WaterTestFinding, 'sign' | 'count_per_100mL'>, isUnread: boolean) =>
    sign === null || count_per_100mL === null
      ? say(isUnread ? 'commandLine.safety.notRead' : 'commandLine.safety.notLookedFor')
      : say('commandLine.safety.count', {
          sign,
          count: numbers.quantity(sign === 'more' ? roundedDown(count_per_100mL) : count_per_100mL, 'count'),
        }),
  band: (band: GermBand | null) => (band === null ? '' : say('commandLine.safety.band', { band })),
  beforeHandOver: (text: string) => say('commandLine.safety.beforeHandOver', { text }),
  /** The day, where it was taken, E. coli in 100 mL, its band. */
  testColumns: [
    say('commandLine.safety.columns.day'),
    say('commandLine.safety.columns.point'),
    say('commandLine.safety.columns.count'),
    say('commandLine.safety.columns.band'),
  ],
  boils: (boilsAt_C: number) => say('commandLine.safety.boils', { at: numbers.quantity(boilsAt_C, 'C') }),
  testFails: say('commandLine.safety.testFails'),
  programme: (count: number, sites: number) => say('commandLine.safety.programme', { count, sites }),
  groups: (mayDrink: 'no' | 'notShown' | 'yes', count: number) => say('commandLine.safety.groups', { mayDrink, count }),
  lastTest: (day: string) => say('commandLine.safety.lastTest', { day }),
  noTest: say('commandLine.safety.noTest'),
  testWanted: (needs: readonly TestNeed[]) =>
    say('commandLine.safety.testWanted', {
      needs: needs.map((need) => say('commandLine.safety.need', { need })).join(', '),
    }),
  needsTest: (count: number) => say('commandLine.safety.needsTest', { count }),
  setOverdue: say('commandLine.safety.setOverdue'),
  notJudged: (count: number) => say('commandLine.safety.notJudged', { count }),
  none: say('commandLine.safety.none'),
  noneHere: say('commandLine.safety.noneHere'),
  working: (done: number, all: number) => say('commandLine.safety.working', { done, all }),
  help: say('commandLine.safety.help'),
  jsonHelp: say('commandLine.safety.jsonHelp'),
  examples: say('commandLine.safety.examples'),
});
