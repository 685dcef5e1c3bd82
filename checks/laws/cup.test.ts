import {
  defaultSettings,
  noSafety,
  pathogens,
  type SiteFacts,
  type StatedBarrier,
  safetyFinding,
  unmeasuredSite,
  type WaterTestsFinding,
} from '@eavewell/engine';
import fc from 'fast-check';
import { describe, it } from 'vitest';

const settings = { numRuns: process.env['EAVEWELL_SOAK'] ? 2_000 : 100, seed: 20261126 };
const log10 = fc.double({ min: 0, max: 9, noNaN: true });

describe('the verdict of the cup', () => {
  const verdictOrder = ['short', 'unknown', 'tight', 'holds'];
  const reductions = fc.record({
    bacteria_log10: log10,
    viruses_log10: log10,
    protozoa_log10: log10,
    evidence: fc.constant('challengeTest' as const),
    source: fc.constant('An invented laboratory'),
  });
  const rawPower = fc.double({ min: -6, max: 0, noNaN: true });
  const of = (
    powers: readonly number[],
    barriers: readonly { readonly reductions: StatedBarrier['stated']; readonly used_fraction: number }[],
    skipping_fraction: number,
    daysOff_per_year: number,
  ) => {
    const rawWater = pathogens.map((germ, index) => ({
      ...{ secondSourceId: null, pathogen: germ, source: 'An invented survey' },
      ...{ typical_per_L: 10 ** powers[index]!, low_per_L: null, high_per_L: 10 ** (powers[index]! + 0.5) },
    }));
    const stated = barriers.map((one, index) => ({ ...one, barrierId: `B${index}`, kind: 'other' as const }));
    const site = {
      ...{ ...unmeasuredSite, siteId: 'S1', roofs: [], secondSource: null },
      safety: { ...noSafety, rawWater, barriers: stated, skipping_fraction, daysOff_per_year },
    } as unknown as SiteFacts;
    const clean = { last: null, clean_count: 1, tests: [], unusable: [] } as unknown as WaterTestsFinding;
    const given = {
      site,
      waterTests: clean,
      chlorine: null,
      boilsAt_C: null,
      treatment: [],
      settings: defaultSettings,
    };
    return safetyFinding(given).finding!;
  };
  const rank = (...given: Parameters<typeof of>) => verdictOrder.indexOf(of(...given).verdict);
  const barriersOf = fc.array(fc.record({ reductions, used_fraction: fc.constantFrom(1, 0.999999, 0.5) }), {
    minLength: 1,
    maxLength: 3,
  });
  const powers = fc.tuple(rawPower, rawPower, rawPower);
  const skip = fc.constantFrom(0, 1e-7, 1e-5, 0.01, 0.5, 1);
  const off = fc.constantFrom(0, 0.001, 1, 30, 365);

  it('is never better for more who skip, more days off or one barrier fewer', () => {
    fc.assert(
      fc.property(powers, barriersOf, skip, skip, off, off, (raws, barriers, a, b, c, d) => {
        const best = rank(raws, barriers, Math.min(a, b), Math.min(c, d));
        const without = barriers.slice(1);
        return (
          best >= rank(raws, barriers, Math.max(a, b), Math.max(c, d)) &&
          (without.length === 0 || best >= rank(raws, without, Math.min(a, b), Math.min(c, d)))
        );
      }),
      settings,
    );
  });

  it('comes with figures that are numbers, shares that are shares, and a high end not under the usual', () => {
    fc.assert(
      fc.property(powers, barriersOf, skip, off, (raws, barriers, skipped, days) =>
        of(raws, barriers, skipped, days).risks.every(
          (risk) =>
            risk.infection_per_year >= 0 &&
            risk.infection_per_year <= 1 &&
            risk.fromSkipping_fraction >= 0 &&
            risk.fromSkipping_fraction <= 1 &&
            risk.DALYHigh_per_person_per_year >= risk.DALY_per_person_per_year &&
            Object.values(risk).every((value) => typeof value !== 'number' || Number.isFinite(value)),
        ),
      ),
      settings,
    );
  });
});
