import { describe, expect, it } from 'vitest';
import { australianPathogens, referencePathogens } from './constants.ts';
import { doseThatInfects_organisms, infection_fraction } from './doseResponse.ts';
import type { DoseResponse } from './germs.ts';

const responses: readonly DoseResponse[] = [
  ...Object.values(referencePathogens).map(({ response }) => response),
  ...Object.values(australianPathogens).map(({ response }) => response),
];

describe('doseThatInfects_organisms', () => {
  it('turns every response round, from one in a billion to two in three', () => {
    for (const response of responses)
      for (const wanted of [1e-9, 1e-6, 0.001, 0.1, 0.5, 0.66]) {
        const dose = doseThatInfects_organisms(wanted, response);
        expect(Math.abs(infection_fraction(dose, response) / wanted - 1)).toBeLessThan(1e-9);
      }
  });

  it('is nothing for nobody, and endless for everybody and for more than any dose infects', () => {
    for (const response of responses) {
      expect(doseThatInfects_organisms(0, response)).toBe(0);
      expect(doseThatInfects_organisms(1, response)).toBe(Infinity);
    }
    expect(doseThatInfects_organisms(0.9999, australianPathogens.norovirus.response)).toBe(Infinity);
  });

  it('refuses what is no share, and a dose that is none', () => {
    expect(() => doseThatInfects_organisms(1.1, responses[0]!)).toThrow(RangeError);
    expect(() => doseThatInfects_organisms(Number.NaN, responses[0]!)).toThrow(RangeError);
    expect(() => infection_fraction(-1, responses[0]!)).toThrow(RangeError);
    expect(() => infection_fraction(Number.NaN, responses[0]!)).toThrow(RangeError);
  });
});
