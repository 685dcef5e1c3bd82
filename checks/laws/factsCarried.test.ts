import type { RainReading } from '@eavewell/engine';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import {
  type ReadingsAnswer,
  readingsOfAnswer,
  shortRainOfAnswer,
} from '../../packages/app/src/water/factsOfAnswer.ts';
import { exactJson, nameOfText, readingsText } from '../../packages/server/src/designs/keptFacts.ts';

const runs = process.env['EAVEWELL_SOAK'] ? 20_000 : 1_000;

const figure = fc.oneof(
  fc.double(),
  fc.constantFrom(-0, 0, 0.1 + 0.2, 5e-324, Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, 1e300),
);
/** Days as a gauge is read: mostly one after the other, some left out, some twice, some out of order. */
const readings: fc.Arbitrary<readonly RainReading[]> = fc
  .array(
    fc.record({
      step: fc.oneof({ weight: 8, arbitrary: fc.constant(1) }, fc.integer({ min: -400, max: 4000 })),
      rowStep: fc.oneof({ weight: 8, arbitrary: fc.constant(1) }, fc.integer({ min: 0, max: 3 })),
      rain_mm: fc.option(figure),
    }),
    { maxLength: 60 },
  )
  .map((steps) => {
    let [day, row] = [11_000, 1];
    return steps.map(({ step, rowStep, rain_mm }) => {
      [day, row] = [day + step, row + rowStep];
      return { day, rain_mm, row };
    });
  });

/** Intervals that follow on each other or not, of one length or of several. */
const shortRain = fc
  .array(
    fc.record({
      step: fc.oneof({ weight: 8, arbitrary: fc.constant(5) }, fc.integer({ min: 1, max: 40_000 })),
      interval_min: fc.oneof({ weight: 8, arbitrary: fc.constant(5) }, fc.integer({ min: 1, max: 1440 })),
      rain_mm: figure,
    }),
    { maxLength: 60 },
  )
  .map((steps) => {
    let minute = -3000;
    return steps.map(({ step, ...rest }) => {
      minute += step;
      const day = Math.floor(minute / 1440);
      return { day, minuteOfDay: minute - day * 1440, ...rest };
    });
  });

it('readings come out of what is sent as they went in, number by number', () => {
  let stretched = 0;
  fc.assert(
    fc.property(readings, shortRain, (before, short) => {
      const text = readingsText({ gaugeId: 'G1', readings: before, shortRain: short });
      const answer = JSON.parse(text) as ReadingsAnswer;
      if (answer.days.length < before.length) stretched++;
      expect(readingsOfAnswer(answer)).toEqual(before);
      expect(shortRainOfAnswer(answer)).toEqual(short);
    }),
    { numRuns: runs, seed: 20261126 },
  );
  expect(stretched).toBeGreaterThan(runs / 2);
});

it('no text is called as another is, and every number but four stands as JavaScript writes it', () => {
  fc.assert(
    fc.property(fc.string(), fc.string(), (one, other) => {
      expect(nameOfText(one) === nameOfText(other)).toBe(one === other);
    }),
    { numRuns: runs, seed: 20261126 },
  );
  expect(exactJson({ a: -0, b: [0.1, null, Number.NaN], c: { d: Number.NEGATIVE_INFINITY }, e: 'NaN' })).toBe(
    '{"a":{"figure":"-0"},"b":[0.1,null,{"figure":"NaN"}],"c":{"d":{"figure":"-Infinity"}},"e":"NaN"}',
  );
});
