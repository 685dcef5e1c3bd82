import {
  boreArea_m2,
  emptyingTime_s,
  gravityFlow_m3_per_s,
  kinematicViscosity_m2_per_s,
  orificeFlow_m3_per_s,
  type PipeRun,
  pipeLoss,
  risingRoot,
  rowLoss_m,
} from '@eavewell/engine';
import fc from 'fast-check';
import { describe, it } from 'vitest';

const settings = { numRuns: process.env['EAVEWELL_SOAK'] ? 20_000 : 1_000, seed: 20261126 };

const flow_m3_per_s = fc.double({ min: 1e-7, max: 0.01, noNaN: true });
const bore_m = fc.double({ min: 0.006, max: 0.2, noNaN: true });
const length_m = fc.double({ min: 0, max: 500, noNaN: true });
/** None, or a hair's breadth and more. */
const head_m = fc.oneof(fc.constant(0), fc.double({ min: 1e-6, max: 60, noNaN: true }));
const temperature_C = fc.double({ min: 0, max: 40, noNaN: true });
const roughness_m = fc.constantFrom(1.5e-6, 4.5e-5, 1.5e-4, 2.6e-4);
const fittings_factor = fc.double({ min: 0, max: 40, noNaN: true });
const run: fc.Arbitrary<PipeRun> = fc.record({ bore_m, length_m, roughness_m, fittings_factor });
const runs = fc.array(run, { minLength: 1, maxLength: 3 });
const unit = fc.option(fc.record({ head_m, flow_m3_per_s }), { nil: null });
const hair = 1e-9;

describe('a pipe', () => {
  it('takes no less of more flow, and no less when longer or with more in it', () => {
    fc.assert(
      fc.property(run, flow_m3_per_s, flow_m3_per_s, length_m, fittings_factor, temperature_C, (one, a, b, l, k, t) => {
        const nu = kinematicViscosity_m2_per_s(t);
        const more = { ...one, length_m: one.length_m + l, fittings_factor: one.fittings_factor + k };
        const little = pipeLoss(one, Math.min(a, b), nu);
        const much = pipeLoss(more, Math.max(a, b), nu);
        return much.friction_m >= little.friction_m * (1 - hair) && much.minor_m >= little.minor_m * (1 - hair);
      }),
      settings,
    );
  });

  it('takes no less when it is narrower or rougher', () => {
    fc.assert(
      fc.property(run, bore_m, flow_m3_per_s, temperature_C, (one, other_m, q, t) => {
        const narrow = { ...one, bore_m: Math.min(one.bore_m, other_m) };
        const wide = { ...one, bore_m: Math.max(one.bore_m, other_m) };
        const all_m = (of: PipeRun) => rowLoss_m([of], null, q, kinematicViscosity_m2_per_s(t));
        return all_m(narrow) >= all_m(wide) * (1 - hair);
      }),
      settings,
    );
    fc.assert(
      fc.property(run, flow_m3_per_s, roughness_m, (one, q, rough) => {
        const smooth = { ...one, roughness_m: Math.min(one.roughness_m, rough) };
        const rougher = { ...one, roughness_m: Math.max(one.roughness_m, rough) };
        return rowLoss_m([rougher], null, q, 1e-6) >= rowLoss_m([smooth], null, q, 1e-6) * (1 - hair);
      }),
      settings,
    );
  });

  it('loses nothing of its water: what its end gets is what its start gives, by the sum of its parts', () => {
    fc.assert(
      fc.property(run, flow_m3_per_s, fc.double({ min: 0.05, max: 0.95, noNaN: true }), (one, q, share) => {
        const whole = pipeLoss({ ...one, fittings_factor: 0 }, q, 1e-6).friction_m;
        const parts = [share, 1 - share].map(
          (part) => pipeLoss({ ...one, length_m: one.length_m * part, fittings_factor: 0 }, q, 1e-6).friction_m,
        );
        return Math.abs(parts[0]! + parts[1]! - whole) <= Math.max(1e-12, whole * hair);
      }),
      settings,
    );
  });
});

describe('what flows by itself', () => {
  it('is no less with more head, no more through longer, narrower pipes or a unit', () => {
    fc.assert(
      fc.property(
        runs,
        unit,
        head_m,
        head_m,
        length_m,
        fc.double({ min: 0.3, max: 1, noNaN: true }),
        (row, one, h, g, l, n) => {
          const worse = row.map((each) => ({
            ...each,
            length_m: each.length_m + l,
            bore_m: Math.max(0.004, each.bore_m * n),
          }));
          const little = gravityFlow_m3_per_s(worse, one, Math.min(h, g), 1e-6);
          const much = gravityFlow_m3_per_s(row, null, Math.max(h, g), 1e-6);
          return little >= 0 && little <= much * (1 + hair);
        },
      ),
      settings,
    );
  });

  it('takes the head there is, to the last drop of it or where smooth flow breaks', () => {
    fc.assert(
      fc.property(runs, unit, fc.double({ min: 0.001, max: 60, noNaN: true }), (row, one, h) => {
        const hasLoss = row.some((each) => each.length_m > 0.01 || each.fittings_factor > 0.01);
        if (!hasLoss) return true;
        const flow = gravityFlow_m3_per_s(row, one, h, 1e-6);
        const at_m = rowLoss_m(row, one, flow, 1e-6);
        const under_m = rowLoss_m(row, one, flow * (1 - 1e-9), 1e-6);
        return at_m >= h * (1 - hair) && under_m <= h;
      }),
      settings,
    );
  });
});

describe('a hole', () => {
  const hole = fc.double({ min: 0.001, max: 0.1, noNaN: true });

  it('lets out no less under more water, and twice as much under four times as much', () => {
    fc.assert(
      fc.property(hole, head_m, head_m, (d, a, b) => {
        const out = (head: number) => orificeFlow_m3_per_s(boreArea_m2(d), head, 0.62);
        return out(Math.max(a, b)) >= out(Math.min(a, b)) && Math.abs(out(4 * a) - 2 * out(a)) <= out(4 * a) * hair;
      }),
      settings,
    );
  });

  it('empties a tank in the sum of the times of its parts', () => {
    fc.assert(
      fc.property(hole, head_m, head_m, head_m, (d, a, b, c) => {
        const [low, middle, high] = [a, b, c].sort((x, y) => x - y) as [number, number, number];
        const time = (from: number, to: number) => emptyingTime_s(1, boreArea_m2(d), from, to, 0.62);
        const whole = time(high, low);
        return Math.abs(time(high, middle) + time(middle, low) - whole) <= Math.max(1e-6, whole * hair);
      }),
      settings,
    );
  });
});

describe('a root', () => {
  it('is where a rising function is no longer under zero, and under it just before', () => {
    fc.assert(
      fc.property(fc.double({ min: -50, max: 50, noNaN: true }), (wanted) => {
        const rising = (x: number) => Math.atan(x - wanted);
        const root = risingRoot(rising, -100, 100);
        return rising(root) >= 0 && Math.abs(root - wanted) <= 1e-12;
      }),
      settings,
    );
  });
});
