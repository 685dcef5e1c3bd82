import {
  type AirTest,
  airToWaterSmooth_ratio,
  airToWaterStirred_ratio,
  cutFibreLeak,
  type DecayTest,
  decayReduction_log10,
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
  smallestDefect_um,
  strokeVolume_L,
  tapsFlow_L_per_min,
  type UnitAtWork,
  unitFlow_L_per_min,
  unitPressure_kPa,
  unitResistance_per_m3,
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
