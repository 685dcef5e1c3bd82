import { expect, test } from 'vitest';
import { factsAnswered, readingsAnswered } from './answerForTests.ts';
import { factsOfAnswer, readingsOfAnswer, shortRainOfAnswer } from './factsOfAnswer.ts';

const facts = factsAnswered();
const readings = readingsAnswered;

test('every number comes back as it was, and a text that looks like one stays a text', () => {
  const one = factsOfAnswer(facts, new Map([['G1', readings]]));
  expect(one.site.latitude_deg).toBe(-0);
  expect(one.site.rainFactor).toBe(Number.POSITIVE_INFINITY);
  expect(one.site.name).toBe('NaN');
  expect(one.facts.gauges.map(({ gaugeId, readings: read }) => [gaugeId, read.length])).toEqual([
    ['G1', 4],
    ['G2', 0],
  ]);
  expect(readingsOfAnswer(readings)).toEqual([
    { day: 100, rain_mm: 0.1, row: 2 },
    { day: 101, rain_mm: null, row: 2 },
    { day: 102, rain_mm: Number.NaN, row: 3 },
    { day: 99, rain_mm: 12.5, row: 7 },
  ]);
  expect(shortRainOfAnswer(readings)).toEqual([
    { day: 100, minuteOfDay: 605, interval_min: 5, rain_mm: 4.2 },
    { day: 100, minuteOfDay: 610, interval_min: 5, rain_mm: 6.1 },
    { day: 101, minuteOfDay: 0, interval_min: 5, rain_mm: 0.3 },
  ]);
  expect(one.facts.gauges.map(({ shortRain, storms }) => [shortRain.length, storms.length])).toEqual([
    [3, 1],
    [0, 0],
  ]);
  expect(one.site.tapHeight_m).toBe(-0);
  expect(one.site.hasHandPump).toBe(false);
  expect(one.site.treatment.flowReadings).toEqual([
    {
      ...{ unitSerial: 'U1', readOn: 20_100, flow_L_per_h: Number.POSITIVE_INFINITY },
      ...{ pressure_kPa: 50, waterTemperature_C: null, passed_L: -0 },
    },
  ]);
  expect([one.site.safety.altitude_m, one.site.safety.skipping_fraction]).toEqual([-0, 0.1]);
});

test('what does not hold together is not taken for facts', () => {
  expect(() => factsOfAnswer(facts, new Map())).toThrow('G1');
  expect(() => readingsOfAnswer({ ...readings, days: [[100, 3, 1]] })).toThrow('G1');
  expect(() => shortRainOfAnswer({ ...readings, short: { ...readings.short, intervals: [[5, 2, 0]] } })).toThrow('G1');
});
