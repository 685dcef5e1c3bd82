import { expect, it } from 'vitest';
import { dayIndexOf, filledDay, measured, unknownDay } from '../../kernel/index.ts';
import { dailyMaxima } from './dailyMaxima.ts';

const firstDay = dayIndexOf(2001, 7, 1);
const days = dayIndexOf(2005, 3, 1) - firstDay;
const record = (change: (rain_mm: Float64Array, state: Uint8Array, at: typeof dayIndexOf) => void) => {
  const rain_mm = new Float64Array(days).fill(1);
  const state = new Uint8Array(days).fill(measured);
  change(rain_mm, state, (...day) => dayIndexOf(...day) - firstDay);
  return { gaugeId: 'G1', firstDay, rain_mm, state };
};

it('finds the wettest measured day of each whole year of the calendar', () => {
  const found = dailyMaxima(
    record((rain_mm, state, at) => {
      rain_mm[at(2001, 9, 1)] = 300;
      rain_mm[at(2002, 1, 1)] = 80;
      rain_mm[at(2002, 12, 31)] = 90;
      rain_mm[at(2003, 5, 5)] = 70;
      rain_mm[at(2004, 2, 29)] = 60;
      rain_mm[at(2004, 6, 1)] = 500;
      state[at(2004, 6, 1)] = filledDay;
    }),
    0.1,
  );
  expect(found).toEqual([
    { year: 2002, rain_mm: 90 },
    { year: 2003, rain_mm: 70 },
    { year: 2004, rain_mm: 60 },
  ]);
});

it('leaves out a year with too many days missing, and one without rain', () => {
  const found = dailyMaxima(
    record((rain_mm, state, at) => {
      for (let day = at(2002, 1, 1); day < at(2002, 2, 7); day++) state[day] = unknownDay;
      rain_mm.fill(0, at(2003, 1, 1), at(2004, 1, 1));
    }),
    0.1,
  );
  expect(found).toEqual([{ year: 2004, rain_mm: 1 }]);
  expect(dailyMaxima({ gaugeId: 'G1', firstDay, rain_mm: new Float64Array(0), state: new Uint8Array(0) }, 0.1)).toEqual(
    [],
  );
});
