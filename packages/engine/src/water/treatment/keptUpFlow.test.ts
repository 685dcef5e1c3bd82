import { describe, expect, it } from 'vitest';
import { unitFlow_L_per_min, unitResistance_per_m3 } from '../../kernel/index.ts';
import { keptUpFlow, type PumpAtHand, type UnitAtWork } from './keptUpFlow.ts';

/** A unit that lets 5 L/min through at 100 kPa and 20 °C. */
const unit: UnitAtWork = {
  clean_per_m3: unitResistance_per_m3(5, 100, 20),
  worn_ratio: 1,
  temperature_C: 20,
  beside_kPa: 0,
};
const pump: PumpAtHand = { power_W: 40, efficiency_fraction: 0.5, mostPressure_kPa: null, mostStrokes_L_per_min: null };

describe('keptUpFlow', () => {
  it('takes 8.3 W of water, 16.7 W at the handle, for 5 L/min at 100 kPa, worked out elsewhere', () => {
    const found = keptUpFlow(unit, { ...pump, mostPressure_kPa: 100 });
    expect(found.flow_L_per_min).toBeCloseTo(5, 12);
    expect(found.pressure_kPa).toBeCloseTo(100, 9);
    expect(found.power_W).toBeCloseTo((100_000 * 5) / 60_000 / 0.5, 9);
    expect(found.limitedBy).toBe('pressure');
  });

  it('grows with the root of the power where the membrane alone is in the way', () => {
    // p = 20 kPa·min/L × Q; p Q = 20 W of water: Q = √(20 W ÷ (20,000 Pa·min/L ÷ 60,000 L/m3·s/min)) = √60 L/min.
    const found = keptUpFlow(unit, pump);
    expect(found.flow_L_per_min).toBeCloseTo(Math.sqrt(60), 9);
    expect(found.power_W).toBeCloseTo(40, 9);
    expect(found.limitedBy).toBe('power');
    expect(keptUpFlow(unit, { ...pump, power_W: 160 }).flow_L_per_min).toBeCloseTo(2 * Math.sqrt(60), 9);
  });

  it.each([200, 30, 1e-9, 0, -1e-9, -30])(
    'takes just the power there is with %d kPa beside the membranes',
    (beside) => {
      const found = keptUpFlow({ ...unit, beside_kPa: beside }, pump);
      expect(found.power_W).toBeCloseTo(40, 7);
      expect(found.pumped_kPa).toBeCloseTo(found.pressure_kPa + beside, 9);
    },
  );

  it('is what comes by itself where nobody pumps', () => {
    const found = keptUpFlow({ ...unit, beside_kPa: -50 }, { ...pump, power_W: 0 });
    expect(found.flow_L_per_min).toBeCloseTo(unitFlow_L_per_min(unit.clean_per_m3, 50, 20, 1), 12);
    expect(found.power_W).toBeCloseTo(0, 9);
    expect(keptUpFlow(unit, { ...pump, power_W: 0 })).toMatchObject({ flow_L_per_min: 0, power_W: 0 });
    expect(keptUpFlow({ ...unit, beside_kPa: 50 }, { ...pump, power_W: 0 }).flow_L_per_min).toBe(0);
  });

  it('stops at the strokes, and then takes less power', () => {
    const found = keptUpFlow(unit, { ...pump, mostStrokes_L_per_min: 4 });
    expect(found.limitedBy).toBe('strokes');
    expect(found.flow_L_per_min).toBe(4);
    expect(found.power_W).toBeLessThan(40);
  });
});
