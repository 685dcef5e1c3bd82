import {
  burdenRange,
  burdenRangeOfWaters,
  defaultSettings,
  neededOfWaters_log10,
  noSafety,
  pathogens,
  referencePathogens,
  type SiteFacts,
  safetyFinding,
  unmeasuredSite,
  type WaterTestsFinding,
  yearOfDrinking,
  yearOfWaters,
} from '@eavewell/engine';
import fc from 'fast-check';
import { describe, it } from 'vitest';

const numRuns = process.env['EAVEWELL_SOAK'] ? 2_000 : 100;
const settings = { numRuns, seed: 20261126 };
const fewer = { ...settings, numRuns: numRuns / 5 };

const power = fc.double({ min: -6, max: 2, noNaN: true });
const worse = fc.double({ min: 0, max: 4, noNaN: true });
const spread = fc.double({ min: 0, max: 2, noNaN: true });
const steps = fc.double({ min: 0, max: 7, noNaN: true });
const pathogen = fc.constantFrom(...Object.values(referencePathogens));
const skip = fc.constantFrom(0, 1e-5, 0.01, 0.5);
const off = fc.constantFrom(0, 1, 30, 365);
const daysOf = fc.integer({ min: 0, max: 365 });
/** Days of each year, and as many or more of each. */
const years = fc.array(fc.tuple(daysOf, daysOf), { minLength: 1, maxLength: 12 }).map((pairs) => ({
  few: pairs.map(([a, b]) => Math.min(a, b)),
  many: pairs.map(([a, b]) => Math.max(a, b)),
}));
const body = (days_by_year: readonly number[]) => [{ people: 40, days_by_year }];
const hair = 1e-12;

describe('the days of a second source', () => {
  const habits = fc.record({
    off_days: off,
    pathogen,
    dirtied: fc.constantFrom(null, { growth_factor: 1, comesBack_fraction: 0.001, added_per_L: 0 }),
    groups: fc.tuple(steps, skip).map(([reduction_log10, skipping]) => [
      { people_factor: 1 - skipping, reduction_log10, untreated_fraction: 0 },
      { people_factor: skipping, reduction_log10: 0, untreated_fraction: 0 },
    ]),
  });

  it('never make the burden lower where they are more, of a water that is worse', () => {
    fc.assert(
      fc.property(habits, power, worse, years, (of, rain, more, { few, many }) => {
        const given = { ...of, raw_per_L: 10 ** rain, drunk_L_per_day: 1 };
        const [a, b] = [few, many].map(
          (days) => yearOfWaters(given, { raw: 10 ** (rain + more), bodies: body(days) })!,
        );
        return b!.burden_DALY_per_person_per_year >= a!.burden_DALY_per_person_per_year * (1 - hair);
      }),
      settings,
    );
  });

  it('never make the middle or the judged end of its range lower, where that water is worse throughout its range', () => {
    fc.assert(
      fc.property(habits, power, worse, spread, spread, years, (of, rain, more, up, down, { few, many }) => {
        const around = (middle: number) => ({
          low_per_L: 10 ** (middle - down),
          typical_per_L: 10 ** middle,
          high_per_L: 10 ** (middle + up),
        });
        const litres = { usual_L_per_day: 1, high_L_per_day: 2 };
        const [a, b] = [few, many].map((days) => {
          const second = { raw: around(rain + more), bodies: body(days) };
          return burdenRangeOfWaters(of, around(rain), second, litres, 7, 100)!;
        });
        return (
          b!.middle_DALY_per_person_per_year >= a!.middle_DALY_per_person_per_year * (1 - hair) &&
          b!.judged_DALY_per_person_per_year >= a!.judged_DALY_per_person_per_year * (1 - hair)
        );
      }),
      fewer,
    );
  });

  it('none of them leave the first water alone, and all of them the second', () => {
    fc.assert(
      fc.property(habits, power, power, (of, rain, source) => {
        const given = { ...of, raw_per_L: 10 ** rain, drunk_L_per_day: 1 };
        const second = (days: number) => yearOfWaters(given, { raw: 10 ** source, bodies: body([days, days]) })!;
        const near = (a: number, b: number) => Math.abs(a - b) <= hair * Math.max(a, b);
        const [alone, other] = [yearOfDrinking(given)!, yearOfDrinking({ ...given, raw_per_L: 10 ** source })!];
        return (
          near(second(0).infected_fraction, alone.infected_fraction) &&
          near(second(365).infected_fraction, other.infected_fraction)
        );
      }),
      settings,
    );
  });

  it('of two waters that are the same are of no account, but for the interpolation between draws', () => {
    fc.assert(
      fc.property(habits, power, spread, years, (of, rain, up, { many }) => {
        const raw = { low_per_L: null, typical_per_L: 10 ** rain, high_per_L: 10 ** (rain + up) };
        const litres = { usual_L_per_day: 1, high_L_per_day: 2 };
        const one = burdenRange(of, raw, litres, 7)!.judged_DALY_per_person_per_year;
        const two = burdenRangeOfWaters(of, raw, { raw, bodies: body(many) }, litres, 7)!;
        return Math.abs(two.judged_DALY_per_person_per_year / one - 1) <= 1e-3;
      }),
      fewer,
    );
  });

  it('and what is needed to be taken out of both brings the burden to what is borne', () => {
    const target = 1e-6;
    fc.assert(
      fc.property(pathogen, power, worse, years, (germ, rain, more, { many }) => {
        const given = { pathogen: germ, raw_per_L: 10 ** rain, drunk_L_per_day: 1 };
        const second = { raw: 10 ** (rain + more), bodies: body(many) };
        const needed = neededOfWaters_log10(given, second, target);
        const at = (reduction_log10: number) => {
          const groups = [{ people_factor: 1, reduction_log10, untreated_fraction: 0 }];
          const year = yearOfWaters({ ...given, groups, off_days: 0, dirtied: null }, second)!;
          return year.burden_DALY_per_person_per_year;
        };
        return at(needed) <= target && (needed === 0 || at(needed * (1 - 1e-9)) >= target * (1 - 1e-6));
      }),
      settings,
    );
  });

  it('never make the verdict of the cup better where they are more', () => {
    const order = ['short', 'unknown', 'tight', 'holds'];
    const may = ['no', 'notShown', 'yes'];
    const cup = (rain: number, more: number, reduction: number, skipping_fraction: number, days: readonly number[]) => {
      const rawWater = [null, 'R'].flatMap((secondSourceId) =>
        pathogens.map((germ) => {
          const typical_per_L = 10 ** (secondSourceId === null ? rain : rain + more);
          const high_per_L = typical_per_L * 3;
          return { secondSourceId, pathogen: germ, typical_per_L, low_per_L: null, high_per_L, source: 'x' };
        }),
      );
      const all = { bacteria_log10: reduction, viruses_log10: reduction, protozoa_log10: reduction };
      const reductions = { ...all, evidence: 'challengeTest', source: 'An invented laboratory' };
      const barriers = [{ barrierId: 'B', kind: 'other', reductions, used_fraction: null }];
      const site = {
        ...{ ...unmeasuredSite, siteId: 'S1', roofs: [] },
        secondSource: { secondSourceId: 'R', name: 'R', kind: 'river', months: [1], turbidity_NTU: null },
        safety: { ...noSafety, rawWater, barriers, skipping_fraction, daysOff_per_year: 0 },
      } as unknown as SiteFacts;
      const waterTests = { last: null, clean_count: 1, tests: [], unusable: [] } as unknown as WaterTestsFinding;
      const given = { site, waterTests, chlorine: null, boilsAt_C: null, treatment: [], settings: defaultSettings };
      const { verdict, mayDrink } = safetyFinding({ ...given, sourceDays: body(days) }).finding!;
      return [order.indexOf(verdict), may.indexOf(mayDrink)] as const;
    };
    const rainPower = fc.double({ min: -3, max: 0, noNaN: true });
    fc.assert(
      fc.property(rainPower, worse, steps, skip, years, (rain, more, reduction, skipping, { few, many }) => {
        const [better, same] = [cup(rain, more, reduction, skipping, few), cup(rain, more, reduction, skipping, many)];
        return better[0] >= same[0] && better[1] >= same[1];
      }),
      fewer,
    );
  });
});
