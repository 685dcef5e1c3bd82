import {
  creditedReductions,
  meanReduction_log10,
  parallelReduction_log10,
  performanceTier_count,
  reductionWithDaysOff_log10,
  rowReductions,
  type StatedBarrier,
  staysInWater,
} from '@eavewell/engine';
import fc from 'fast-check';
import { describe, it } from 'vitest';

const settings = { numRuns: process.env['EAVEWELL_SOAK'] ? 20_000 : 1_000, seed: 20261126 };
const hair = 1e-12;

const log10 = fc.double({ min: 0, max: 9, noNaN: true });
const share = fc.double({ min: 0, max: 1, noNaN: true });
const anyReduction = fc.option(fc.double({ min: -2, max: 12, noNaN: true }));
const stated: fc.Arbitrary<StatedBarrier['stated']> = fc.record({
  bacteria_log10: anyReduction,
  viruses_log10: anyReduction,
  protozoa_log10: anyReduction,
  evidence: fc.constantFrom('challengeTest', 'credited', 'none', null),
  source: fc.constant(null),
});
const barrier: fc.Arbitrary<StatedBarrier> = fc.record({
  kind: fc.constantFrom('membrane' as const, 'chlorine' as const, 'boiling' as const),
  stated,
  most: fc.option(fc.record({ bacteria_log10: log10, viruses_log10: log10, protozoa_log10: log10 })),
});
const classes = ['bacteria_log10', 'viruses_log10', 'protozoa_log10'] as const;

describe('barriers in a row', () => {
  it('are never credited with more than each states, than its own most, than 6, or with anything without evidence', () => {
    fc.assert(
      fc.property(barrier, (one) => {
        const credited = creditedReductions(one);
        const isShown = one.stated.evidence === 'challengeTest' || one.stated.evidence === 'credited';
        return classes.every((field) => {
          const most = isShown ? Math.min(one.stated[field] ?? 0, one.most?.[field] ?? 6, 6) : 0;
          return credited[field] >= 0 && credited[field] <= Math.max(0, most);
        });
      }),
      settings,
    );
  });

  it('are never credited with more than the sum of their credits, in any order, and one more never takes away', () => {
    fc.assert(
      fc.property(fc.array(barrier, { maxLength: 5 }), barrier, (row, more) => {
        const credits = row.map(creditedReductions);
        const [all, turned] = [rowReductions(credits), rowReductions(credits.toReversed())];
        const longer = rowReductions([...credits, creditedReductions(more)]);
        return classes.every((field) => {
          const sum = credits.reduce((total, one) => total + one[field], 0);
          return (
            all[field] <= sum + hair &&
            Math.abs(all[field] - turned[field]) <= hair &&
            longer[field] >= all[field] - hair
          );
        });
      }),
      settings,
    );
  });
});

describe('water that is treated in shares', () => {
  it('has a log reduction between the least and the greatest of them', () => {
    const shares = fc.array(fc.record({ share_factor: share, reduction_log10: log10 }), { minLength: 1, maxLength: 5 });
    fc.assert(
      fc.property(shares, (all) => {
        const mean = meanReduction_log10(all);
        const used = all.filter(({ share_factor }) => share_factor > 0).map(({ reduction_log10 }) => reduction_log10);
        if (used.length === 0) return mean === null;
        return mean !== null && mean >= Math.min(...used) - 1e-9 && mean <= Math.max(...used) + 1e-9;
      }),
      settings,
    );
  });

  it('is never cleaner for a leak', () => {
    const cartridge = fc.record({
      flow_L_per_min: fc.double({ min: 0.1, max: 20, noNaN: true }),
      reduction_log10: log10,
      leak_fraction: share,
    });
    fc.assert(
      fc.property(fc.array(cartridge, { minLength: 1, maxLength: 4 }), share, (set, leak) => {
        const [first, ...rest] = set;
        const worse = { ...first!, leak_fraction: first!.leak_fraction + (1 - first!.leak_fraction) * leak };
        return parallelReduction_log10([worse, ...rest])! <= parallelReduction_log10(set)! + hair;
      }),
      settings,
    );
  });

  it('is never cleaner for a day off', () => {
    const days = fc.double({ min: 0, max: 365, noNaN: true });
    fc.assert(
      fc.property(log10, days, days, (reduction, a, b) => {
        const [few, many] = [Math.min(a, b), Math.max(a, b)];
        return reductionWithDaysOff_log10(reduction, many) <= reductionWithDaysOff_log10(reduction, few) + hair;
      }),
      settings,
    );
  });
});

describe('stars and what stays', () => {
  it('more log reduction of a class never takes a star away', () => {
    fc.assert(
      fc.property(log10, log10, log10, fc.constantFrom(...classes), log10, (b, v, p, field, more) => {
        const before = { bacteria_log10: b, viruses_log10: v, protozoa_log10: p };
        return performanceTier_count({ ...before, [field]: before[field] + more }) >= performanceTier_count(before);
      }),
      settings,
    );
  });

  it('one more treatment never leaves more in', () => {
    const kind = fc.constantFrom('settling' as const, 'membrane' as const, 'chlorine' as const, 'boiling' as const);
    fc.assert(
      fc.property(fc.array(kind, { maxLength: 4 }), kind, fc.boolean(), (done, more, isTested) => {
        const before = staysInWater(done, isTested);
        return staysInWater([...done, more], isTested).every((trouble) => before.includes(trouble));
      }),
      settings,
    );
  });
});
