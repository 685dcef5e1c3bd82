import {
  calendarDay,
  type DesignSettings,
  dayIndexOf,
  designSites,
  drawPool,
  drawYears,
  type ProgrammeFacts,
  rainOfSite,
  readyProgramme,
  type SiteFacts,
  seriesOf,
  unmeasuredUnit,
  wearOf,
} from '@eavewell/engine';
import { describe, expect, it } from 'vitest';
import { madeProgramme, twoTanks } from './madeSites.ts';

// The dates of a set against a slow plain run: water year by water year, tank by tank, day by day, everything looked up by its date.

const putIn = dayIndexOf(2027, 8, 20);
const rated_L = 400_000;
const figures = { ...unmeasuredUnit, ratedLitres_L: rated_L, ratedTurbidity_NTU: 5 };
const unit = { serial: 'U1', partId: null, figures, installedOn: putIn, removedOn: null };
const treatment = (backwash_fraction: number | null = null) => ({
  units: [{ ...unit, figures: { ...figures, backwash_fraction } }],
  cartridges: [],
  flowReadings: [],
  pressureTests: [],
});

function programme(seed: number, change: Partial<SiteFacts> = {}) {
  const made = madeProgramme(seed);
  const tanks = seed % 2 === 0 ? twoTanks(made.site, seed) : made.site;
  const { secondSource: source } = tanks;
  const site: SiteFacts = { ...tanks, secondSource: source && { ...source, turbidity_NTU: 1 }, ...change };
  // Clear water that ends no set but by its litres.
  const settings: DesignSettings = { ...made.settings, roofTurbidity_NTU: 1, futures: 60, gapFilling: 'otherYears' };
  const facts: ProgrammeFacts = { ...made, settings, sites: [site] };
  return { site, settings, ready: readyProgramme(facts, { today: putIn }) };
}

/** When each future has passed the rated litres, as whole days from the day the set was new; Infinity where it does not in 15 years. */
function slowEnds({ site, settings, ready }: ReturnType<typeof programme>, growth: (year: number) => number): number[] {
  const { rain } = rainOfSite(site, ready)!;
  const { startMonth, judgedYears } = rain!;
  const series = seriesOf(site, ready);
  const [design] = designSites([site], ready);
  const pool = drawPool(rain!);
  const drawn = drawYears(judgedYears, settings.draws, settings.seed);
  const ends: number[] = [];
  for (let future = 0; future < settings.futures; future++) {
    const started = (day: number) => {
      const { year, month } = calendarDay(day);
      return dayIndexOf(month >= startMonth ? year : year - 1, startMonth, 1);
    };
    const yearOf = (day: number) => {
      const nth = calendarDay(started(day)).year - calendarDay(started(putIn)).year;
      return pool[drawn.positions[(future % drawn.draws) * drawn.length + (nth % drawn.length)]!]!;
    };
    const placeOf = (day: number) => {
      const { year } = yearOf(day);
      return Math.min(year.to - 1, year.from + (day - started(day)));
    };
    const contents = series.map((one) => {
      const before = placeOf(putIn) - 1;
      return before < 0 ? one.content_L.at(-1)! : one.content_L[before]!;
    });
    let passed = 0;
    let end = Infinity;
    for (let day = putIn; day < putIn + 5479; day++) {
      const place = placeOf(day);
      const { year: calendarYear, month } = calendarDay(day);
      for (const [which, one] of series.entries()) {
        const { tankVolume_L, judgedDemand_L_per_day, otherDemand_L_per_day } = design!.storages.find(
          ({ tankIds }) => tankIds[0] === one.tankIds[0],
        )!;
        const judged = judgedDemand_L_per_day * growth(calendarYear);
        const had = contents[which]!;
        const taken = Math.min(had, judged + otherDemand_L_per_day * growth(calendarYear));
        passed += taken;
        if (site.secondSource?.months.includes(month)) passed += Math.max(0, judged - had);
        contents[which] = Math.min(tankVolume_L, had - taken + one.inflow_L[place]! * yearOf(day).inflowFactor);
      }
      if (passed >= rated_L) {
        end = day - putIn;
        break;
      }
    }
    ends.push(end);
  }
  return ends.sort((a, b) => a - b);
}

/** What stands at a share of sorted values, a straight line between two neighbours. */
function at(sorted: readonly number[], share: number): number {
  const place = (sorted.length - 1) * share;
  const below = Math.floor(place);
  const [low, high] = [sorted[below]!, sorted[Math.min(sorted.length - 1, below + 1)]!];
  return low === high ? low : low + (place - below) * (high - low);
}

describe('when a set is due', () => {
  it.each([1, 2, 3, 4, 6, 22])('is what a plain run over dates finds (made site %d)', (seed) => {
    const made = programme(seed, { treatment: treatment() });
    const { finding } = wearOf(made.site, made.ready);
    const slow = slowEnds(made, () => 1);
    // A plain day counts whole, where the set ends within it; between two futures the place is that of the parts of their days.
    for (const [share, end] of [
      [0.1, finding![0]!.endsOn!.p10],
      [0.5, finding![0]!.endsOn!.p50],
      [0.9, finding![0]!.endsOn!.p90],
    ] as const)
      expect(Math.abs(at(slow, share) - (end - putIn))).toBeLessThanOrEqual(1);
    expect(finding![0]!.endsBy_fraction.litres).toBe(1);
  });

  it('and with people who grow from the year of the count on', () => {
    const grown = { growthFraction_per_year: 0.2, peopleCountedOn: dayIndexOf(2024, 5, 1), designYear: 2030 };
    const made = programme(3, { treatment: treatment(), ...grown });
    const { people } = made.site;
    const design_people = Math.ceil(people! * 1.2 ** 6 - 1e-6);
    const slow = slowEnds(made, (year) => (people! * 1.2 ** (year - 2024)) / design_people);
    const { finding } = wearOf(made.site, made.ready);
    expect(Math.abs(at(slow, 0.5) - (finding![0]!.endsOn!.p50 - putIn))).toBeLessThanOrEqual(1);
    const still = programme(3, { treatment: treatment() });
    expect(wearOf(still.site, still.ready).finding![0]!.endsOn!.p50).toBeGreaterThan(finding![0]!.endsOn!.p50);
  });

  it('is the same whatever is asked before, and whether the design is given or not', () => {
    const made = programme(4, { treatment: treatment() });
    const once = wearOf(made.site, made.ready);
    const [design] = designSites([made.site], made.ready);
    expect(wearOf(made.site, made.ready, design!)).toEqual(once);
  });
});

describe('what cleans the unit is asked of the tank', () => {
  it.each([1, 2, 5])('a tenth that goes back is as a tenth more asked by people (made site %d)', (seed) => {
    const plain = programme(seed);
    const litres =
      plain.site.demand.length === 0
        ? [{ purpose: 'drinking', litres_per_person_per_day: plain.settings.litres_per_person_per_day, judged: true }]
        : plain.site.demand;
    const demand = litres.map((one) => ({ ...one, litres_per_person_per_day: one.litres_per_person_per_day * 1.1 }));
    const [more] = designSites([{ ...plain.site, demand }], plain.ready);
    const washed = programme(seed, { treatment: treatment(0.1) });
    const [design] = designSites([washed.site], washed.ready);
    const figures = (one: typeof design) =>
      one!.storages.map(({ verdict, dryDays_per_year, goodYears, judgedDemand_L_per_day }) => ({
        ...{ verdict, dryDays_per_year, goodYears },
        asked: judgedDemand_L_per_day.toFixed(6),
      }));
    expect(figures(design)).toEqual(figures(more));
    expect(design!.working.map(({ code }) => code)).toContain('people.backwash');
  });

  it('and where none goes back the design is the one without a unit, but for the unit itself', () => {
    const [none] = designSites([programme(3).site], programme(3).ready);
    const withUnit = programme(3, { treatment: treatment() });
    const [design] = designSites([withUnit.site], withUnit.ready);
    expect(design!.storages).toEqual(none!.storages);
    expect(design!.working.filter(({ code }) => code.startsWith('people.'))).toEqual(
      none!.working.filter(({ code }) => code.startsWith('people.')),
    );
  });
});
