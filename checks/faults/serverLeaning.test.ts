import { dayOnClock, isoDay } from '@eavewell/engine';
import { type RolloutSheet, rolloutSheet } from '@eavewell/tables';
import { expect, it } from 'vitest';
import type { Files } from './folder.ts';
import { lines, sound } from './rolloutFolder.ts';
import { type Page, withServer, zipOf } from './served.ts';

const dayIn = (days: number) => isoDay(dayOnClock(new Date()) + days);

/** Four sites: one of them has no people, no one a treatment unit; rest days that are none, a closure of months and dates. */
const leaning: Files = {
  ...Object.fromEntries(
    Object.entries(sound).filter(([name]) => !/^(?:plan|arrivals|carriersAway|workCal|treatment|cartr)/.test(name)),
  ),
  'kitRules.csv': 'ruleId,partId,countedBy,each_count\nK1,gutter-4,site,3\n',
  'ways.csv': String(sound['ways.csv'])
    .replace('400,,hills,R-tarn', '4000,,hills,R-tarn')
    .replace('foot,10,,,,2', 'road,10,,,,'),
  'carriers.csv': String(sound['carriers.csv']).replace('boat,600', 'boat,2600'),
  'closures.csv': lines(
    'closureId,wayId,weatherArea,months,from,to,slower_factor,reason',
    `LOW,W3,,1 to 2,${dayIn(60)},${dayIn(90)},,low`,
  ),
  'crews.csv': lines(
    'crewId,name,base,store,people,restDays,mostDaysAway,cost_per_day,currency,priceDate,porters',
    'east,East crew,store,,5,Sundays,7,120,USD,2026-02-01,4',
    'west,West crew,,shed,4,sun,7,,,,4',
  ),
  'sites.csv': lines(
    'siteId,name,latitude_deg,longitude_deg,people,gaugeId,place,weatherArea',
    'S001,Upper Tarn,-8.5,125.25,120,G-east,,hills',
    'S002,Lower Tarn,-8.55,125.3,85,G-east,,',
    'S003,Ferry Stones,-8.75,125.5,240,G-west,jetty,',
    'S004,Far Stones,-8.75,125.5,,G-west,jetty,',
  ),
  'settings.json':
    '{ "programme": "Tarn water", "target": { "longestDryRun_days": 5 }, "currency": "USD", "mainStore": "store", "mustHold": "no", "installLow_days": 3, "installLikely_days": 4, "installHigh_days": 6 }\n',
};

async function sheetOf(page: Page, programme: string): Promise<RolloutSheet> {
  return rolloutSheet.parse((await page.ask('GET', `${programme}/rollout`)).body);
}

async function planned(page: Page, programme: string): Promise<RolloutSheet> {
  const wanted = { by: 'Nadi', from: null, into: null, name: 'First', seconds: 0.3, seed: 1, onlyCrews: null };
  const begun = await page.ask('POST', `${programme}/rollout/search`, wanted);
  expect(begun.status, JSON.stringify(begun.body)).toBe(200);
  while ((await page.ask('GET', `${programme}/rollout/search`)).body.taskId !== null)
    await new Promise((later) => setTimeout(later, 20));
  return sheetOf(page, programme);
}

it('the page of a plan is told of rows that are not used, and of sites that its first sentence does not count', async () => {
  await withServer(async (page) => {
    const programme = await page.empty();
    expect((await page.takeIn(programme, 'tarn.zip', zipOf(leaning))).status).toBe(200);
    const before = await sheetOf(page, programme);
    expect(before.provisos).toEqual([]);
    const sheet = await planned(page, programme);
    const unused = sheet.problems
      .filter(({ severity }) => severity === 'blocker')
      .map(({ place }) => [place.file, place.column]);
    for (const one of [
      ['crews.csv', 'restDays'],
      ['crews.csv', 'base'],
      ['closures.csv', 'months'],
    ])
      expect(unused).toContainEqual(one);
    const said = Object.fromEntries(sheet.provisos.map((one) => [one.kind, one]));
    expect(said['untreated']!.siteIds).toEqual(['S001', 'S002', 'S003']);
    expect(said['untreated']!.people_count).toBe(445);
    expect(said['leftOut']!.siteIds).toEqual(['S004']);
    expect(said['leftOut']!.said).toContain('Far Stones');
    // Sites that have a day of hand-over and none from which water runs.
    const stops = sheet.crews.flatMap(({ trips }) => trips.flatMap((trip) => trip.stops));
    const undated = stops.filter(({ handOver, served }) => handOver !== null && served === null);
    expect(undated.length).toBeGreaterThan(0);
    expect(said['undated']!.siteIds.toSorted()).toEqual(undated.map(({ siteId }) => siteId).toSorted());
    expect(said['undated']!.said).toContain('nobody knows when rain fills the tank');
    expect(sheet.sentence).toContain('will have water');
    expect(sheet.sentence).not.toContain('drink');
    const short = sheet.problems.find(({ code }) => code === 'rollout.short_planned');
    expect(short?.facts['sites']).toContain('S001');
    expect(short?.what).toContain('Upper Tarn');
  });
});
