import { describe, expect, it } from 'vitest';
import {
  hoursNeeded_h_per_day,
  litresPossible_L_per_day,
  membraneArea_m2,
  treatedLitres_L_per_day,
} from './dayOfTreating.ts';

const none = { backwash_fraction: 0, backwash_min_per_day: 0 };
const some = { backwash_fraction: 0.1, backwash_min_per_day: 20 };

describe('hours and litres of a day', () => {
  it('are 4 h for 1,200 L at 5 L/min, and 4 h 44 min with a tenth more and 20 min for backwash', () => {
    expect(hoursNeeded_h_per_day(1200, 5, none)).toBeCloseTo(4, 12);
    expect(hoursNeeded_h_per_day(1200, 5, some)).toBeCloseTo((1320 / 5 + 20) / 60, 12);
  });

  it('belong to each other', () => {
    const hours = hoursNeeded_h_per_day(1200, 5, some);
    expect(litresPossible_L_per_day(hours, 5, some)).toBeCloseTo(1200, 9);
  });

  it('are nothing where nothing is asked, and never enough where nothing flows', () => {
    expect(hoursNeeded_h_per_day(0, 0, some)).toBe(0);
    expect(hoursNeeded_h_per_day(1, 0, none)).toBe(Infinity);
    expect(litresPossible_L_per_day(0.2, 5, some)).toBe(0);
  });
});

describe('treatedLitres_L_per_day', () => {
  it('is 1,100 for 1,000 with a tenth for backwash', () => {
    expect(treatedLitres_L_per_day(1000, 0.1)).toBeCloseTo(1100, 9);
    expect(treatedLitres_L_per_day(0, 1)).toBe(0);
  });
});

describe('membraneArea_m2', () => {
  it('is 10.42 and 4.17 m² for 1,000 L a day at 4 and 10 L/m²/h, worked out elsewhere', () => {
    expect(membraneArea_m2(1000, 4, 24)).toBeCloseTo(10.42, 2);
    expect(membraneArea_m2(1000, 10, 24)).toBeCloseTo(4.17, 2);
  });
});
