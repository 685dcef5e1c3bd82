import {
  calendarDay,
  type DayIndex,
  type GaugeFinding,
  type Judged,
  type JudgedRain,
  type SiteDesign,
  type SiteFacts,
  type WearFinding,
} from './kernel/index.ts';
import { siteUntilToday } from './siteUntilToday.ts';
import { drawnYears, type GroupWater, type Programme, siteWater } from './siteWater.ts';
import { headcount } from './water/people/index.ts';
import {
  type Balance,
  coveredDays,
  type DrawnYears,
  dayByDay,
  drawPool,
  leftToSource_L,
  type PoolYear,
  rulesOf,
} from './water/storage/index.ts';
import { askedAhead_L, type DaysAhead, wearFindings, yearsAhead } from './water/wear/index.ts';

/**
 * When are the cartridges of this site due? Leads its water forward: years drawn again from the record, people growing from year to year, the balance of its tanks day by day, and on the days a second source covers
 * what the tanks lack.
 *
 * @param whole - the site's facts, rows of days to come among them
 * @param gauge - its gauge, or undefined where the site names none that is known
 * @param programme - settings, catalogue and shared stores
 * @param design - the site's design, where it is known already: what presses the water through its units
 * @returns a finding for each unit in use [day, L]; null where the site has none
 * @law the same facts give the same days, whatever other sites there are
 * @definition ours: docs/methods/wear.md
 */
export function siteWear(
  whole: SiteFacts,
  gauge: GaugeFinding | undefined,
  programme: Programme,
  design?: SiteDesign,
): Judged<readonly WearFinding[]> {
  const { settings, today = null } = programme;
  const { site } = siteUntilToday(whole, today);
  const isInUse = site.treatment.units.some(({ removedOn }) => removedOn === null);
  if (!isInUse) return { finding: null, problems: [], working: [] };
  const water = siteWater(site, gauge, programme, { restated: [], own: [] }, []);
  const futureOf =
    water === null ? null : futures(site, water, drawnYears(programme, water.rain.judgedYears), settings);
  const pressure_kPa = design?.treatment.find((one) => one.pressure_kPa !== null)?.pressure_kPa ?? null;
  return wearFindings({ site, settings, today, pressure_kPa, futureOf });
}

type Water = NonNullable<ReturnType<typeof siteWater>>;

/** The futures of a site's water. */
function futures(site: SiteFacts, { rain, groups }: Water, drawn: DrawnYears, settings: Programme['settings']) {
  const pool = drawPool(rain);
  const rules = rulesOf(settings.dayOrder, groups[0]?.ration ?? null);
  const tanks = groups.map((group) => ({
    group,
    content_L: contentsOf(group, settings),
    otherIsAsked: group.otherDemand_L_per_day > 0,
  }));
  const asked = askedFrom(site, groups, settings);
  return (future: number, from: DayIndex, days: number): DaysAhead => {
    const balances = asked(from, days);
    const years = yearsOf(rain, pool, drawn, future, from, days);
    const roof_L = new Float64Array(days);
    const secondSource_L = new Float64Array(days);
    for (const [place, { group, content_L, otherIsAsked }] of tanks.entries()) {
      const balance = { ...balances[place]!, inflow_L: inflowOf(group, years, days) };
      const startContent_L = Math.min(group.tankVolume_L, content_L(years[0]!));
      const { series } = dayByDay(balance, group.tankVolume_L, { ...rules, passes: 1, startContent_L }, true);
      const { judgedTaken_L, otherTaken_L } = series!;
      addTo(roof_L, judgedTaken_L);
      if (otherIsAsked) addTo(roof_L, otherTaken_L);
      if (balance.covered !== undefined) addTo(secondSource_L, leftToSource_L(balance, judgedTaken_L));
    }
    return { roof_L, secondSource_L };
  };
}

function addTo(sum_L: Float64Array, more_L: Float64Array): void {
  for (let day = 0; day < sum_L.length; day++) sum_L[day]! += more_L[day]!;
}

/** A stretch of a future, and the year of the record it is. */
interface YearTaken {
  readonly from: number;
  readonly to: number;
  readonly skipped_days: number;
  readonly taken: PoolYear;
}

/** Which years of the record come in a future, from a day on. */
function yearsOf(
  rain: JudgedRain,
  pool: readonly PoolYear[],
  { draws, length, positions }: DrawnYears,
  future: number,
  from: DayIndex,
  days: number,
): readonly YearTaken[] {
  const row = (future % draws) * length;
  return yearsAhead(from, rain.startMonth, days).map((stretch, year) => ({
    ...stretch,
    taken: pool[positions[row + (year % length)]!]!,
  }));
}

/** What runs in day by day; a day that a drawn year is too short for is as its last one. */
function inflowOf({ balance }: GroupWater, years: readonly YearTaken[], days: number): Float64Array {
  const inflow_L = new Float64Array(days);
  for (const { from, to, skipped_days, taken } of years) {
    const { year, inflowFactor } = taken;
    for (let day = from; day < to; day++) {
      const at = Math.min(year.to - 1, year.from + skipped_days + day - from);
      inflow_L[day] = balance.inflow_L[at]! * inflowFactor;
    }
  }
  return inflow_L;
}

/** What is in a tank on the morning a future begins: what was in it on that day of the year of the record that comes first. */
function contentsOf(group: GroupWater, settings: Programme['settings']): (first: YearTaken) => number {
  const { series, startContent_L } = dayByDay(
    group.balance,
    group.tankVolume_L,
    rulesOf(settings.dayOrder, group.ration),
    true,
  );
  return ({ skipped_days, taken: { year } }) => {
    const before = Math.min(year.to - 1, year.from + skipped_days) - 1;
    return before < 0 ? startContent_L : series!.content_L[before]!;
  };
}

/** What is asked of each body of water from a day on, as people grow; worked out once for a day, and anew only where more days are asked for. */
function askedFrom(site: SiteFacts, groups: readonly GroupWater[], settings: Programme['settings']) {
  const { counted_people, design_people, grows } = headcount(site, settings);
  const { secondSource } = site;
  // Of the people counted, in the year of the count; what is asked of the tanks is that of the people of the design year.
  const counted = grows === null || !counted_people || !design_people ? 1 : counted_people / design_people;
  const known = new Map<DayIndex, { readonly days: number; readonly asked: readonly Omit<Balance, 'inflow_L'>[] }>();
  const askedOn = (from: DayIndex, days: number) => {
    const askedIn_year = grows?.countYear ?? calendarDay(from).year;
    const growth = grows?.growthFraction_per_year ?? 0;
    const ahead_L = (byDay_L: Float64Array) =>
      askedAhead_L(
        byDay_L.map((litres) => litres * counted),
        askedIn_year,
        growth,
        from,
        days,
      );
    const covered = secondSource === null ? undefined : coveredDays(secondSource, from, days);
    return groups.map(({ madeFrom: { demand } }) => ({
      judged_L: ahead_L(demand.judgedByDay_L),
      other_L: ahead_L(demand.otherByDay_L),
      covered,
    }));
  };
  return (from: DayIndex, days: number) => {
    const before = known.get(from);
    const found = before !== undefined && before.days >= days ? before : { days, asked: askedOn(from, days) };
    known.set(from, found);
    return found.asked.map(({ judged_L, other_L, covered }) => ({
      judged_L: judged_L.subarray(0, days),
      other_L: other_L.subarray(0, days),
      covered: covered?.subarray(0, days),
    }));
  };
}
