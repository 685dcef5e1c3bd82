import { describe, expect, it } from 'vitest';
import {
  type DesignSettings,
  dayIndexOf,
  defaultSettings,
  type GaugeFacts,
  noKit,
  noRollout,
  type StormFacts,
} from './kernel/index.ts';
import { readyProgramme } from './plan.ts';
import { gauge, normals, readings, site, twelveYears } from './siteRain.testing.ts';
import { gaugeOf, gaugesOfSite, rainUnder } from './siteRain.ts';

const at = (distance_km: number) => ({ latitude_deg: 0, longitude_deg: 10 + distance_km / 111.19 });
const stated = (intensity_mm_per_h: number, returnPeriod_years = 20): StormFacts => ({
  returnPeriod_years,
  intensity_mm_per_h,
  low_mm_per_h: null,
  high_mm_per_h: null,
  source: 'An invented weather service',
});
const ready = (gauges: readonly GaugeFacts[], settings: Partial<DesignSettings> = {}, only?: ReadonlySet<string>) =>
  readyProgramme(
    {
      settings: { ...defaultSettings, madeYears: 10, ...settings },
      sites: [],
      gauges,
      parts: [],
      prices: [],
      kit: noKit,
      rollout: noRollout,
    },
    only && { gauges: only },
  );
const codes = (told: readonly { readonly code: string }[]) => told.map(({ code }) => code);

describe('the storm of a gauge', () => {
  it('is worked out with its rain, and what is wrong in its rows is told at the gauge', () => {
    const found = ready([gauge('G1', { storms: [{ ...stated(210), source: null }], normals })]).gauges.get('G1')!;
    expect(found.storm).toMatchObject({ gaugeId: 'G1', from: 'stated', intensity_mm_per_h: 210 });
    expect(codes(found.problems)).toContain('storm.source_missing');
    expect(found.stormTold.problems).toEqual([]);
    expect(found.stormTold.working.at(-2)).toMatchObject({ code: 'storm.intensity', value: 210 });
  });

  it('where nothing is said of storms nothing is told at the gauge', () => {
    const found = ready([gauge('G1', { normals })]).gauges.get('G1')!;
    expect(found.storm).toBeNull();
    expect(codes(found.problems).filter((code) => code.startsWith('storm.'))).toEqual([]);
    expect(codes(found.stormTold.problems)).toEqual(['storm.no_intensity']);
  });

  it('by its wettest days rests on measured ones alone, and is told at the sites', () => {
    const wet = readings(twelveYears).map((reading) =>
      // The wettest day of each year is another.
      reading.row % 365 === 200 ? { ...reading, rain_mm: 60 + (reading.row % 17) } : reading,
    );
    const share = { fiveMinutesOfDay_fraction: 0.15, fiveMinutesOfDaySource: 'An invented study' };
    const found = ready([gauge('G1', { readings: wet })], share).gauges.get('G1')!;
    expect(found.storm).toMatchObject({ from: 'dailyMaxima', years_count: 12, cappedBy: 'storm.from_daily' });
    expect(codes(found.stormTold.problems)).toEqual(['storm.from_daily']);
    const gaps = wet.filter(({ day }) => day < dayIndexOf(2004, 1, 1) || day >= dayIndexOf(2004, 3, 1));
    const fewer = ready([gauge('G1', { readings: gaps })], share).gauges.get('G1')!;
    expect(fewer.storm!.years_count).toBe(11);
    // Made-up rain has no storms.
    expect(ready([gauge('G1', { normals })], share).gauges.get('G1')!.storm).toBeNull();
  });

  it('is the same under drier rain', () => {
    const own = ready([gauge('G1', { storms: [stated(210)], normals })]);
    const drier = rainUnder(own, { wetDays_fraction: 0.5, wetDayRain_fraction: 0.5, lastYears: null });
    expect(drier.gauges.get('G1')!.storm).toEqual(own.gauges.get('G1')!.storm);
  });
});

describe('the storm of another gauge', () => {
  const gauges = [
    gauge('silent', { ...at(0), normals }),
    gauge('near', { ...at(20), storms: [stated(180)] }),
    gauge('nearer', { ...at(-10), storms: [stated(2000)] }),
    gauge('far', { ...at(60), storms: [stated(150)] }),
    gauge('nowhere', { storms: [stated(120)] }),
  ];

  it('stands in where a gauge has none: the nearest within reach that has one', () => {
    const found = ready(gauges).gauges.get('silent')!;
    expect(found.storm).toMatchObject({ gaugeId: 'near', intensity_mm_per_h: 180 });
    expect(codes(found.stormTold.problems)).toEqual(['storm.other_gauge']);
    expect(found.stormTold.problems[0]).toMatchObject({ place: { gaugeId: 'silent' }, facts: { other: 'near' } });
    expect(found.stormTold.problems[0]!.facts['distance_km']).toBeCloseTo(20, 1);
    expect(ready(gauges, { gaugeReach_km: 15 }).gauges.get('silent')!.storm).toBeNull();
  });

  it('never stands in for one that is stated and cannot be believed', () => {
    const found = ready(gauges).gauges.get('nearer')!;
    expect(found.storm).toBeNull();
    expect(codes(found.problems)).toContain('storm.intensity_unlikely');
  });

  it('is that of the nearest for a site without a gauge', () => {
    const programme = ready(gauges);
    const found = gaugeOf(site({ gaugeId: null, ...at(1) }), programme)!;
    expect(found.storm!.gaugeId).toBe('near');
    expect(found.stormTold.problems[0]).toMatchObject({ code: 'storm.other_gauge', place: { siteId: 'S1' } });
    const none = gaugeOf(site({ gaugeId: null, ...at(-200) }), programme)!;
    expect(none.storm).toBeNull();
    expect(codes(none.stormTold.problems)).toEqual(['storm.no_intensity']);
  });

  it('is the same whichever gauges are wanted, and among the gauges of one site alone', () => {
    const all = ready(gauges, { gaugeReach_km: 150 });
    const some = ready(gauges, { gaugeReach_km: 150 }, new Set(['silent']));
    expect(some.gauges.get('silent')).toEqual(all.gauges.get('silent'));
    const beyond = [gauge('own', { ...at(0), normals }), gauge('lends', { ...at(120), storms: [stated(170)] })];
    const settings = { ...defaultSettings, madeYears: 10, gaugeReach_km: 150 };
    const { read } = gaugesOfSite({ gaugeId: 'own', ...at(0) }, { gauges: beyond, settings });
    expect([...read].sort()).toEqual(['lends', 'own']);
    expect(ready(beyond, { gaugeReach_km: 150 }).gauges.get('own')!.storm!.gaugeId).toBe('lends');
  });
});

it('rain by its intensity is that of the gauge itself, else of the gauge that lends its storm', () => {
  const shortRain = [{ day: dayIndexOf(2001, 5, 1), minuteOfDay: 600, interval_min: 5, rain_mm: 4 }];
  const lends = gauge('lends', { ...at(20), storms: [stated(180)], shortRain });
  const found = (own: Partial<GaugeFacts>) => ready([gauge('own', { ...at(0), ...own }), lends]).gauges.get('own')!;
  expect(found({}).rainByIntensity!.intensities_mm_per_h).toEqual(Float64Array.of(48));
  expect(found({ shortRain: [{ ...shortRain[0]!, rain_mm: 2 }] }).rainByIntensity!.intensities_mm_per_h).toEqual(
    Float64Array.of(24),
  );
  expect(found({ storms: [stated(200)] }).rainByIntensity).toBeNull();
});
