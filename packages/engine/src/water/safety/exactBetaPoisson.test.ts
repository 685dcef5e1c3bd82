import { describe, expect, it } from 'vitest';
import { exactBetaPoisson_fraction } from './exactBetaPoisson.ts';

const doses = [1e-9, 1e-6, 0.01, 1, 10, 59, 61, 100, 1000, 30_000, 1_000_000];
/** 1 − ₁F₁(α; α + β; −dose) worked out elsewhere with 60 digits (mpmath 1.3.0, hyp1f1). */
const elsewhere = [
  [
    0.167,
    0.191,
    [
      4.664804467269389e-10, 4.664802464919859e-7, 0.004644822179807266, 0.3153465035030256, 0.6433080057215708,
      0.7382264374234314, 0.7396999519160896, 0.7605366841641031, 0.8371810082256239, 0.9077494349646923,
      0.9486374724488715,
    ],
  ],
  [
    0.0044,
    0.002,
    [
      6.874999996569331e-10, 6.874996569332422e-7, 0.006840807269586754, 0.4350087519342086, 0.6912409833116303,
      0.6938027237580181, 0.693848406919409, 0.6945223463405505, 0.6976137149440844, 0.7021065798829035,
      0.7066675007940036,
    ],
  ],
  [
    0.145,
    7.59,
    [
      1.874595992120188e-11, 1.8745958693803e-8, 0.0001873368266367929, 0.01760139866233533, 0.1164097566958507,
      0.2746685728528141, 0.2778152587421204, 0.3239260365822971, 0.5117745530287571, 0.7015731728945998,
      0.8205126439571915,
    ],
  ],
  [
    3,
    40,
    [
      6.97674418572939e-11, 6.976743868921788e-8, 0.0006973574112842389, 0.06670992909756678, 0.468606771925645,
      0.9286053196700511, 0.9327380944265896, 0.9746656654708692, 0.9999386023047304, 0.9999999974588131,
      0.9999999999999311,
    ],
  ],
  [
    25,
    300,
    [
      7.692307692000944e-11, 7.692307385559234e-8, 0.0007689241051726803, 0.0739382479545346, 0.5316432276918837,
      0.9849191511727985, 0.9867742977089101, 0.9988442571969257, 0.9999999999999997, 1, 1,
    ],
  ],
] as const;

describe('exactBetaPoisson_fraction', () => {
  it.each(elsewhere)(
    'is one less the confluent function to 1e-10 of its size, shapes %f and %f',
    (alpha, beta, wanted) => {
      for (const [index, dose] of doses.entries())
        expect(
          Math.abs(exactBetaPoisson_fraction(dose, alpha, beta) / wanted[index]! - 1),
          `dose ${dose}`,
        ).toBeLessThan(1e-10);
    },
  );

  it('is nobody without a dose, everybody with an endless one, and does not hang on the least dose there is', () => {
    expect(exactBetaPoisson_fraction(0, 0.2, 0.3)).toBe(0);
    expect(exactBetaPoisson_fraction(Infinity, 0.2, 0.3)).toBe(1);
    expect(exactBetaPoisson_fraction(Number.MIN_VALUE, 0.2, 0.3)).toBeLessThan(1e-300);
    expect(exactBetaPoisson_fraction(1e15, 0.2, 0.3)).toBeLessThan(1);
  });

  it('refuses what is no dose or no shape', () => {
    for (const [dose, alpha, beta] of [
      [Number.NaN, 1, 1],
      [-1, 1, 1],
      [1, 0, 1],
      [1, 1, Number.NaN],
    ] as const)
      expect(() => exactBetaPoisson_fraction(dose, alpha, beta)).toThrow(RangeError);
  });
});
