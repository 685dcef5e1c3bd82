import {
  fergusonChurchVelocity_m_per_s,
  firstTenth_fraction,
  grainInWater,
  overflowRate_m_per_s,
  settledFraction,
  stokesVelocity_m_per_s,
} from '@eavewell/engine';
import fc from 'fast-check';
import { describe, it } from 'vitest';

const settings = { numRuns: process.env['EAVEWELL_SOAK'] ? 20_000 : 1_000, seed: 20261126 };

const size_um = fc.double({ min: 0.1, max: 2000, noNaN: true });
const density = fc.double({ min: 500, max: 8000, noNaN: true });
const temperature_C = fc.double({ min: 0, max: 40, noNaN: true });
const rate_m_per_s = fc.double({ min: 1e-9, max: 0.1, noNaN: true });
const cells = fc.integer({ min: 1, max: 30 });
const hair = 1e-12;

describe('grains in water', () => {
  it('sink no slower when larger, heavier or in warmer water', () => {
    fc.assert(
      fc.property(size_um, size_um, density, density, temperature_C, temperature_C, (a, b, c, d, e, f) => {
        const slow = grainInWater(Math.min(a, b), Math.min(c, d), Math.min(e, f));
        const fast = grainInWater(Math.max(a, b), Math.max(c, d), Math.max(e, f));
        return [stokesVelocity_m_per_s, fergusonChurchVelocity_m_per_s].every(
          (velocity) => velocity(fast) >= velocity(slow) * (1 - hair),
        );
      }),
      settings,
    );
  });

  it('never sink faster than Stokes says, and as he says where they are small', () => {
    fc.assert(
      fc.property(size_um, density, temperature_C, (a, b, c) => {
        const stokes = stokesVelocity_m_per_s(grainInWater(a, b, c));
        return fergusonChurchVelocity_m_per_s(grainInWater(a, b, c)) <= stokes * (1 + hair);
      }),
      settings,
    );
    fc.assert(
      fc.property(density, temperature_C, (b, c) => {
        const grain = grainInWater(0.1, b, c);
        const stokes = stokesVelocity_m_per_s(grain);
        return Math.abs(fergusonChurchVelocity_m_per_s(grain) - stokes) <= stokes * 1e-3;
      }),
      settings,
    );
  });
});

describe('what settles', () => {
  const share = (velocity: number, rate: number, n: number) => settledFraction(velocity, rate, n);

  it('is a share, never less for a faster grain or with more cells, never more with more flow', () => {
    fc.assert(
      fc.property(rate_m_per_s, rate_m_per_s, rate_m_per_s, rate_m_per_s, cells, cells, (v, w, q, r, m, n) => {
        const least = share(Math.min(v, w), Math.max(q, r), Math.min(m, n));
        const most = share(Math.max(v, w), Math.min(q, r), Math.max(m, n));
        return least >= 0 && most <= 1 && most >= least - hair;
      }),
      settings,
    );
  });

  it('with what leaves makes what came in: cell by cell as all at once', () => {
    fc.assert(
      fc.property(
        rate_m_per_s,
        rate_m_per_s,
        cells,
        fc.double({ min: 0.01, max: 1e4, noNaN: true }),
        (v, q, n, dirt_kg) => {
          // Each cell keeps what sinks while it is mixed: in = out + v × area of the cell × concentration.
          let passing_kg = dirt_kg;
          let kept_kg = 0;
          for (let cell = 0; cell < n; cell++) {
            const out_kg = passing_kg / (1 + v / (n * q));
            kept_kg += passing_kg - out_kg;
            passing_kg = out_kg;
          }
          const settled_kg = share(v, q, n) * dirt_kg;
          return (
            Math.abs(settled_kg - kept_kg) <= dirt_kg * 1e-9 &&
            Math.abs(settled_kg + passing_kg - dirt_kg) <= dirt_kg * 1e-9
          );
        },
      ),
      settings,
    );
  });

  it('is the same for twice the flow over twice the area', () => {
    fc.assert(
      fc.property(
        rate_m_per_s,
        fc.double({ min: 0.1, max: 100, noNaN: true }),
        rate_m_per_s,
        cells,
        (q, area, v, n) => {
          const once = share(v, overflowRate_m_per_s(q, area), n);
          return Math.abs(share(v, overflowRate_m_per_s(2 * q, 2 * area), n) - once) <= hair;
        },
      ),
      settings,
    );
  });

  it('goes with a first tenth that never comes sooner with more cells', () => {
    fc.assert(
      fc.property(cells, cells, (m, n) => {
        const [few, many] = [firstTenth_fraction(Math.min(m, n)), firstTenth_fraction(Math.max(m, n))];
        return few > 0 && few <= many && many < 1;
      }),
      settings,
    );
  });
});
