import { describe, expect, it } from 'vitest';
import {
  type DesignSettings,
  dayIndexOf,
  defaultSettings,
  type GaugeFacts,
  noKit,
  noRollout,
  type SiteFacts,
} from './kernel/index.ts';
import { designSites, rainOfSite, readyProgramme } from './plan.ts';
import { gauge, normals, readings, site, twelveYears } from './siteRain.testing.ts';
import { gaugesOfSite } from './siteRain.ts';

describe('the gauges of one site', () => {
  const at = (distance_km: number) => ({ latitude_deg: 0, longitude_deg: 10 + distance_km / 111.19 });
  /** A record of its own, with a month missing in one of its years. */
  const record = (rain_mm: number, every: number, gap: number) =>
    readings(twelveYears, rain_mm, every).filter(
      ({ day }) => day < dayIndexOf(gap, 5, 1) || day >= dayIndexOf(gap, 6, 1),
    );
  const gauges = [
    gauge('far', { ...at(400), readings: record(9, 5, 2003) }),
    gauge('near', { ...at(30), readings: record(14, 4, 2004) }),
    gauge('own', { ...at(12), readings: record(12, 3, 2005) }),
    gauge('unread', at(20)),
    gauge('usual', { ...at(45), normals }),
    gauge('beside', { ...at(90), readings: record(10, 3, 2007) }),
    gauge('nowhere', { readings: record(30, 2, 2002) }),
  ];
  const here = { gaugeId: null, ...at(0) };
  const cases: readonly (readonly [string, Partial<SiteFacts>, Partial<DesignSettings>, readonly string[]])[] = [
    ['given', { gaugeId: 'own' }, {}, ['own', 'near', 'unread', 'usual', 'beside']],
    ['given, gaps from neighbours', { gaugeId: 'own' }, { gapFilling: 'normalRatio' }, []],
    ['given, with normals alone', { gaugeId: 'usual' }, {}, []],
    ['given, without a position', { gaugeId: 'nowhere' }, { gapFilling: 'inverseDistance' }, ['nowhere']],
    ['within reach', here, {}, ['own', 'unread', 'near', 'usual']],
    ['within reach, one alone', here, { gaugeReach_km: 15 }, ['own']],
    ['within reach, none of them read', { gaugeId: null, ...at(45) }, { gaugeReach_km: 10 }, ['usual']],
    ['out of reach', here, { gaugeReach_km: 5 }, []],
    ['unknown', { gaugeId: 'none' }, {}, []],
    ['without a position', { gaugeId: null }, {}, []],
  ];
  const ready = (among: readonly GaugeFacts[], settings: DesignSettings, wanted?: ReadonlySet<string>) =>
    readyProgramme(
      { settings, sites: [], gauges: among, parts: [], prices: [], kit: noKit, rollout: noRollout },
      wanted && { gauges: wanted },
    );
  const comesTo = (of: SiteFacts, programme: ReturnType<typeof ready>) => ({
    rain: rainOfSite(of, programme),
    designs: [...designSites([of], programme)],
  });

  it.each(cases)('%s: alone they give the rain and the design that all give', (_, change, asked, read) => {
    const settings = { ...defaultSettings, madeYears: 30, ...asked };
    const of = site(change);
    const found = gaugesOfSite(of, { gauges, settings });
    if (read.length > 0) expect([...found.read].sort()).toEqual([...read].sort());
    const some = gauges.flatMap((one) =>
      found.read.has(one.gaugeId) ? [one] : found.placed.has(one.gaugeId) ? [{ ...one, readings: [] }] : [],
    );
    expect(some.length).toBeLessThan(gauges.length);
    expect(comesTo(of, ready(some, settings, found.wanted))).toEqual(comesTo(of, ready(gauges, settings)));
  });

  it('are no more than are needed: a neighbour that is left out is missed where gaps are filled from it', () => {
    const settings: DesignSettings = { ...defaultSettings, gapFilling: 'normalRatio' };
    const of = site({ gaugeId: 'own' });
    const { read, wanted } = gaugesOfSite(of, { gauges, settings });
    const without = gauges.filter(({ gaugeId }) => read.has(gaugeId) && gaugeId !== 'near');
    expect(comesTo(of, ready(without, settings, wanted))).not.toEqual(comesTo(of, ready(gauges, settings)));
  });
});
