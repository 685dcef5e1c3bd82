import {
  type AirTest,
  airToWaterSmooth_ratio,
  airToWaterStirred_ratio,
  cutFibreLeak,
  type DecayTest,
  decayReduction_log10,
  defaultSettings,
  erlangMeanWait_min,
  erlangWaiting_fraction,
  flowAtReference,
  handleForce_N,
  hoursNeeded_h_per_day,
  keptUpFlow,
  leastTestPressure_kPa,
  litresPossible_L_per_day,
  membraneFlux_L_per_m2_per_h,
  type PumpAtHand,
  peakLines,
  roundAndWetted,
  type SiteFacts,
  smallestDefect_um,
  strokeVolume_L,
  tapsFlow_L_per_min,
  treatmentFindings,
  type UnitAtWork,
  unitFlow_L_per_min,
  unitPressure_kPa,
  unitResistance_per_m3,
  unmeasuredSite,
  unmeasuredUnit,
  verdictOrder,
} from '@eavewell/engine';
import fc from 'fast-check';
import { describe, it } from 'vitest';

const settings = { numRuns: process.env['EAVEWELL_SOAK'] ? 20_000 : 500, seed: 20261126 };
const hair = 1e-9;

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
/** Two of a kind, the smaller first. */
const pair = (min: number, max: number) =>
  fc.tuple(between(min, max), between(min, max)).map(([a, b]) => (a < b ? [a, b] : [b, a]) as [number, number]);
const clean = between(1e10, 1e14);
const pressure = pair(0, 1000);
const warmth = pair(0, 40);
const wear = pair(1, 50);
const notMore = (a: number, b: number) => a <= b * (1 + hair) + 1e-12;

describe('a membrane', () => {
  it('never gives less for more pressure or warmer water, nor more when worn', () => {
    fc.assert(
      fc.property(clean, pressure, warmth, wear, (c, [p, P], [t, T], [w, W]) =>
        notMore(unitFlow_L_per_min(c, p, t, W), unitFlow_L_per_min(c, P, T, w)),
      ),
      settings,
    );
  });

  it('takes the pressure at which it gives the flow, and has the resistance of what it gives', () => {
    fc.assert(
      fc.property(clean, between(0.1, 1000), between(0, 40), between(1, 50), (c, p, t, w) => {
        const flow = unitFlow_L_per_min(c, p, t, w);
        const back = unitPressure_kPa(c, flow, t, w);
        const resistance = unitResistance_per_m3(flow, p, t);
        return Math.abs(back / p - 1) < hair && Math.abs(resistance / (c * w) - 1) < hair;
      }),
      settings,
    );
  });

  it('never lets more through with something more lying on it', () => {
    const resistance = between(0, 1e13);
    fc.assert(
      fc.property(between(0, 500), between(0, 40), between(1e9, 1e13), resistance, resistance, (p, t, r, cake, more) =>
        notMore(membraneFlux_L_per_m2_per_h(p, t, [r, cake, more]), membraneFlux_L_per_m2_per_h(p, t, [r, cake])),
      ),
      settings,
    );
  });

  it('has the same flow at 20 °C, whatever the temperature it is measured at', () => {
    fc.assert(
      fc.property(clean, between(1, 500), between(0, 40), (c, p, t) => {
        const there = flowAtReference(unitFlow_L_per_min(c, p, t, 1), t);
        return Math.abs(there / unitFlow_L_per_min(c, p, 20, 1) - 1) < hair;
      }),
      settings,
    );
  });
});

describe('a person at a pump', () => {
  const limit = fc.option(between(0, 500), { nil: null });
  const world = fc.record({
    clean_per_m3: clean,
    beside_kPa: between(-200, 300),
    efficiency: between(0.05, 1),
    mostPressure_kPa: limit,
    mostStrokes_L_per_min: limit,
  });
  const found = (of: typeof world extends fc.Arbitrary<infer W> ? W : never, power_W: number, t: number, w: number) => {
    const unit: UnitAtWork = {
      clean_per_m3: of.clean_per_m3,
      worn_ratio: w,
      temperature_C: t,
      beside_kPa: of.beside_kPa,
    };
    const pump: PumpAtHand = {
      power_W,
      efficiency_fraction: of.efficiency,
      mostPressure_kPa: of.mostPressure_kPa,
      mostStrokes_L_per_min: of.mostStrokes_L_per_min,
    };
    return keptUpFlow(unit, pump);
  };

  it('never pumps less when stronger or in warmer water, nor more through a worn unit', () => {
    fc.assert(
      fc.property(world, pair(0, 100), warmth, wear, (of, [p, P], [t, T], [w, W]) =>
        notMore(found(of, p, t, W).flow_L_per_min, found(of, P, T, w).flow_L_per_min),
      ),
      settings,
    );
  });

  it('never pumps more with more to lift, nor works harder than is kept up, nor passes a limit', () => {
    fc.assert(
      fc.property(world, between(0, 100), between(0, 40), between(1, 50), between(0, 100), (of, p, t, w, more) => {
        const one = found(of, p, t, w);
        const higher = found({ ...of, beside_kPa: of.beside_kPa + more }, p, t, w);
        return (
          notMore(higher.flow_L_per_min, one.flow_L_per_min) &&
          one.power_W <= p * (1 + 1e-6) + 1e-6 &&
          notMore(one.pressure_kPa, of.mostPressure_kPa ?? Infinity) &&
          notMore(one.flow_L_per_min, of.mostStrokes_L_per_min ?? Infinity) &&
          one.flow_L_per_min >= 0
        );
      }),
      settings,
    );
  });

  it('gives no less a stroke with a larger piston, and pushes no less', () => {
    fc.assert(
      fc.property(pair(1, 200), pair(1, 500), pair(0, 1), between(0, 500), (b, s, f, p) => {
        const gives = notMore(strokeVolume_L(b[0], s[0], f[0]), strokeVolume_L(b[1], s[1], f[1]));
        return gives && notMore(handleForce_N(p, b[0], 4, 0.5), handleForce_N(p, b[1], 4, 0.5));
      }),
      settings,
    );
  });
});

describe('a day', () => {
  it('gives just the litres asked in the hours they need', () => {
    fc.assert(
      fc.property(
        between(1, 10_000),
        between(0.1, 100),
        between(0, 0.9),
        between(0, 120),
        (litres, flow, backwash_fraction, backwash_min_per_day) => {
          const backwash = { backwash_fraction, backwash_min_per_day };
          const hours = hoursNeeded_h_per_day(litres, flow, backwash);
          return Math.abs(litresPossible_L_per_day(hours, flow, backwash) / litres - 1) < 1e-6;
        },
      ),
      settings,
    );
  });

  const day = fc
    .tuple(between(0, 10_000), between(0, 1), between(0, 1), between(0.1, 12))
    .map(([litres_L_per_day, morning, evening, between_h]) => ({
      litres_L_per_day,
      morning_fraction: morning / Math.max(1, morning + evening),
      evening_fraction: evening / Math.max(1, morning + evening),
      between_h,
    }));

  it('never has a longer wait with more taps on the same unit, or with a unit that gives more', () => {
    fc.assert(
      fc.property(
        day,
        fc.integer({ min: 1, max: 8 }),
        between(0.1, 20),
        pair(0.01, 60),
        (of, taps, tap, [unit, more]) => {
          const few = peakLines(of, tapsFlow_L_per_min(taps, tap, unit));
          const better = [tapsFlow_L_per_min(taps + 1, tap, unit), tapsFlow_L_per_min(taps, tap, more)];
          return better.every((given) => {
            const lines = peakLines(of, given);
            return (['morning', 'evening'] as const).every(
              (peak) =>
                notMore(lines[peak].lastWait_min, few[peak].lastWait_min) &&
                notMore(lines[peak].longestLine_L, few[peak].longestLine_L) &&
                notMore(lines[peak].goneAfter_min, few[peak].goneAfter_min + 1e-6),
            );
          });
        },
      ),
      settings,
    );
  });

  it('never has a longer wait with fewer litres', () => {
    fc.assert(
      fc.property(day, between(0, 1), between(0.1, 60), (of, less, given) => {
        const fewer = peakLines({ ...of, litres_L_per_day: of.litres_L_per_day * less }, given);
        const all = peakLines(of, given);
        return (['morning', 'evening'] as const).every((peak) =>
          notMore(fewer[peak].lastWait_min, all[peak].lastWait_min),
        );
      }),
      settings,
    );
  });
});

describe('people who come at random', () => {
  it('wait no less often and no less long when more come or fewer taps are open', () => {
    fc.assert(
      fc.property(pair(0, 30), between(0.1, 20), fc.integer({ min: 1, max: 40 }), ([few, many], filling, taps) => {
        const [a, b] = [erlangWaiting_fraction(few, taps), erlangWaiting_fraction(many, taps)];
        const share = a >= 0 && b <= 1 && notMore(a, b) && notMore(erlangWaiting_fraction(few, taps + 1), a);
        const wait = erlangMeanWait_min(few, filling, taps);
        return share && (wait === Infinity || notMore(erlangMeanWait_min(few, filling, taps + 1), wait));
      }),
      settings,
    );
  });

  it('wait no longer before one of more taps that share the same flow', () => {
    fc.assert(
      fc.property(between(0.01, 0.99), between(0.1, 20), fc.integer({ min: 1, max: 20 }), (busy, all_min, taps) => {
        // Together the taps need all_min for one vessel, however many they are.
        const comers_per_min = busy / all_min;
        const wait = (of: number) => erlangMeanWait_min(comers_per_min, all_min * of, of);
        return notMore(wait(taps + 1), wait(taps));
      }),
      settings,
    );
  });
});

describe('tests of a membrane', () => {
  const test = fc.record<AirTest>({
    test_kPa: between(1, 300),
    back_kPa: between(0, 50),
    across_kPa: between(1, 300),
    temperature_C: between(0, 40),
    atmosphere_kPa: between(60, 105),
  });

  it('see smaller holes at more pressure; no pressure of the field empties an intact pore of 20 nm', () => {
    fc.assert(
      fc.property(pair(1, 500), between(0, 40), between(0, 50), ([less, more], t, back) => {
        const sees =
          smallestDefect_um(more, t, roundAndWetted, back) <= smallestDefect_um(less, t, roundAndWetted, back);
        return sees && leastTestPressure_kPa(0.02, t, roundAndWetted, 0) > 10_000;
      }),
      settings,
    );
  });

  it('lose no less air at more pressure, and no more with water pushing from behind', () => {
    fc.assert(
      fc.property(test, between(0, 100), between(0, 50), (of, more, back) =>
        [airToWaterSmooth_ratio, (one: AirTest) => airToWaterStirred_ratio(one, 0.8)].every(
          (ratio) =>
            notMore(ratio(of), ratio({ ...of, test_kPa: of.test_kPa + more })) &&
            notMore(ratio({ ...of, back_kPa: of.back_kPa + back }), ratio(of)),
        ),
      ),
      settings,
    );
  });

  it('support no more for a faster fall of pressure', () => {
    fc.assert(
      fc.property(pair(1e-3, 100), between(0.1, 100), between(1, 200), ([slow, fast], flow_L_per_min, ratio) => {
        const one: DecayTest = {
          flow_L_per_min,
          airToWater_ratio: ratio,
          atmosphere_kPa: 101.325,
          held_L: 2,
          concentration_factor: 1,
        };
        return notMore(decayReduction_log10(one, fast), decayReduction_log10(one, slow));
      }),
      settings,
    );
  });

  it('of cut fibres: more of them, or a nearer cut, never leave more reduction', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 50 }), pair(10, 1000), pair(0.2, 2), (fibres_count, length, bore) => {
        const leak = (count: number, toCut_mm: number, fibreBore_mm: number) =>
          cutFibreLeak({
            fibres_count: count,
            fibreBore_mm,
            toCut_mm,
            across_kPa: 50,
            temperature_C: 20,
            unitFlow_L_per_min: 5,
          }).ceiling_log10;
        return notMore(leak(fibres_count + 1, length[0], bore[1]), leak(fibres_count, length[1], bore[0]));
      }),
      settings,
    );
  });
});

describe('a verdict on a unit', () => {
  const world = fc.record({
    ratedFlow_L_per_h: between(20, 5000),
    lowest: between(0.05, 1.2),
    taps_count: fc.option(fc.integer({ min: 1, max: 6 }), { nil: null }),
    hasHandPump: fc.option(fc.boolean(), { nil: null }),
    gravityHead_m: fc.option(between(-3, 15), { nil: null }),
    highestPressure_kPa: fc.option(between(20, 400), { nil: null }),
    pistonBore_mm: fc.option(between(20, 120), { nil: null }),
  });
  type World = typeof world extends fc.Arbitrary<infer W> ? W : never;
  /** The verdict, by its place from worst to best. */
  const found = (of: World, asked_L: number, resistance: number, temperature_C: number) => {
    const { ratedFlow_L_per_h, lowest, taps_count, hasHandPump, gravityHead_m, ...pump } = of;
    const figures = {
      ...unmeasuredUnit,
      ...pump,
      ratedFlow_L_per_h,
      ratedPressure_kPa: 100,
      lowestFlow_L_per_h: ratedFlow_L_per_h * lowest,
      pistonStroke_mm: 150,
    };
    const reading = {
      unitSerial: null,
      readOn: 20_000,
      flow_L_per_h: ratedFlow_L_per_h / resistance,
      pressure_kPa: 100,
      waterTemperature_C: 20,
      passed_L: null,
    };
    const unit = { serial: 'U1', partId: 'P1', figures, installedOn: null, removedOn: null };
    const site = {
      ...unmeasuredSite,
      siteId: 'S1',
      taps_count,
      hasHandPump,
      treatment: { units: [unit], cartridges: [], flowReadings: [reading], pressureTests: [] },
    } as unknown as SiteFacts;
    const settings = { ...defaultSettings, waterTemperature_C: temperature_C };
    const judged = treatmentFindings({ site, demandHighest_L_per_day: asked_L, gravityHead_m, settings });
    return judged.finding![0]!;
  };
  const rank = ({ verdict }: { readonly verdict: (typeof verdictOrder)[number] }) => verdictOrder.indexOf(verdict);

  it('never gets better with more asked, a more worn set or colder water; no figure of it is not a number', () => {
    fc.assert(
      fc.property(world, pair(1, 20_000), pair(1, 12), warmth, (of, [few, many], [r, R], [t, T]) => {
        const [better, worse] = [found(of, few, r, T), found(of, many, R, t)];
        const figures = Object.values(worse).filter((value) => typeof value === 'number');
        return rank(worse) <= rank(better) && figures.every((value) => Number.isFinite(value) && value >= 0);
      }),
      settings,
    );
  });
});

describe('figures that nobody can reckon with', () => {
  const hostile = fc.constantFrom(Number.NaN, Infinity, -Infinity, -1, -0, 5e-324, 1e-300, 1e-12, 1e12, 1e300);
  const known = (usual: number) =>
    fc.oneof({ weight: 6, arbitrary: fc.constantFrom(usual, null) }, { weight: 1, arbitrary: hostile });
  const told = fc.record({
    figures: fc.record({
      ...Object.fromEntries(Object.keys(unmeasuredUnit).map((name) => [name, fc.constant(null)])),
      membraneArea_m2: known(3),
      permeability_L_per_m2_h_bar: known(200),
      ratedFlow_L_per_h: known(500),
      ratedPressure_kPa: known(100),
      highestPressure_kPa: known(200),
      lowestFlow_L_per_h: known(100),
      backwash_fraction: known(0.1),
      backwash_min_per_day: known(10),
      pistonBore_mm: known(50),
      pistonStroke_mm: known(150),
      lever_ratio: known(4),
      reductions: fc.record({ protozoa_log10: known(4) }),
    }),
    taps_count: known(2),
    hasHandPump: fc.constantFrom(null, true, false),
    demandHighest_L_per_day: known(600),
    gravityHead_m: known(5),
    reading: fc.record({ flow_L_per_h: known(300), pressure_kPa: known(100), waterTemperature_C: known(25) }),
    test: fc.record({ pressure_kPa: known(100), fall_kPa_per_min: known(1), airVolume_L: known(2) }),
  });

  /** Every place in a value that holds a number which is none. */
  const unendingIn = (value: unknown, path: string): readonly string[] => {
    if (typeof value === 'number') return Number.isFinite(value) ? [] : [`${path}: ${value}`];
    if (typeof value === 'string') return /\b(?:NaN|Infinity)\b/.test(value) ? [`${path}: ${value}`] : [];
    if (value === null || typeof value !== 'object') return [];
    return Object.entries(value).flatMap(([key, inner]) => unendingIn(inner, `${path}.${key}`));
  };

  it('never come out of a finding, its problems or its working', () => {
    const verdicts = new Set<string>();
    fc.assert(
      fc.property(told, ({ figures, reading, test, demandHighest_L_per_day, gravityHead_m, ...site }) => {
        const unit = { serial: 'U1', partId: 'P1', figures, installedOn: null, removedOn: null };
        const of = {
          ...{ ...unmeasuredSite, siteId: 'S1', ...site },
          treatment: {
            units: [unit],
            cartridges: [],
            flowReadings: [{ unitSerial: null, readOn: 20_000, passed_L: null, ...reading }],
            pressureTests: [{ unitSerial: 'U1', testedOn: 20_000, ...test }],
          },
        } as unknown as SiteFacts;
        const judged = treatmentFindings({
          ...{ site: of, demandHighest_L_per_day, gravityHead_m },
          settings: defaultSettings,
        });
        verdicts.add(judged.finding![0]!.verdict);
        return unendingIn(judged, 'judged').join('\n') === '';
      }),
      { ...settings, numRuns: settings.numRuns * 4 },
    );
    if (verdicts.size < 4) throw new Error(`only ${[...verdicts].join(', ')}`);
  });
});
