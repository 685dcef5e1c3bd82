import { dayOnClock, isoDay } from '@eavewell/engine';
import { type RolloutSheet, rolloutSheet } from '@eavewell/tables';
import { expect } from 'vitest';
import type { Files } from './folder.ts';
import { lines, sound } from './rolloutFolder.ts';
import { type Page, zipOf } from './served.ts';

const today = dayOnClock(new Date());
export const dayIn = (days: number) => isoDay(today + days);

/** Three sites that are ready to be gone to from today on, whatever the day. */
export const ready: Files = {
  ...Object.fromEntries(
    Object.entries(sound).filter(([name]) => !/^(?:plan|arrivals|carriersAway|workCal)/.test(name)),
  ),
  'kitRules.csv': 'ruleId,partId,countedBy,each_count\nK1,gutter-4,site,3\n',
  'ways.csv': String(sound['ways.csv'])
    .replace('400,,hills,R-tarn', '4000,,hills,R-tarn')
    .replace('foot,10,,,,2', 'road,10,,,,'),
  'carriers.csv': String(sound['carriers.csv']).replace('boat,600', 'boat,2600'),
  'closures.csv': lines(
    'closureId,wayId,weatherArea,months,from,to,slower_factor,reason',
    `C1,W3,,,${dayIn(60)},${dayIn(90)},,flood`,
  ),
  'crews.csv': lines(
    'crewId,name,base,store,people,restDays,mostDaysAway,cost_per_day,currency,priceDate,porters',
    'east,East crew,store,,5,sun,7,120,USD,2026-02-01,4',
    'west,West crew,jetty,shed,4,sun,7,,,,4',
  ),
  'sites.csv': lines(
    'siteId,name,latitude_deg,longitude_deg,people,gaugeId,place,weatherArea',
    'S001,Upper Tarn,-8.5,125.25,120,G-east,,hills',
    'S002,Lower Tarn,-8.55,125.3,85,G-east,,',
    'S003,Ferry Stones,-8.75,125.5,240,G-west,jetty,',
  ),
  'settings.json':
    '{ "programme": "Tarn water", "target": { "longestDryRun_days": 5 }, "currency": "USD", "mainStore": "store", "mustHold": "no", "installLow_days": 3, "installLikely_days": 4, "installHigh_days": 6 }\n',
};

export const codesOf = ({ status, body }: Awaited<ReturnType<Page['ask']>>) => [
  status,
  ...(body.problems ?? []).map(({ code }: { code: string }) => code),
];

export async function taken(page: Page, files: Files): Promise<string> {
  const programme = await page.empty();
  expect((await page.takeIn(programme, 'tarn.zip', zipOf(files))).status).toBe(200);
  return programme;
}

export async function sheetOf(page: Page, programme: string, more = ''): Promise<RolloutSheet> {
  const { status, body } = await page.ask('GET', `${programme}/rollout${more}`);
  expect([status, body.detail]).toEqual([200, undefined]);
  return rolloutSheet.parse(body);
}

export const wanted = { by: 'Nadi', from: null, into: null, name: 'First', seconds: 0.3, seed: 1, onlyCrews: null };

/** Searches to the end, and gives how it ended. */
export async function searched(page: Page, programme: string, more: object = {}) {
  const begun = await page.ask('POST', `${programme}/rollout/search`, { ...wanted, ...more });
  expect(begun.status, JSON.stringify(begun.body)).toBe(200);
  return ended(page, programme);
}

export async function ended(page: Page, programme: string) {
  for (;;) {
    const { body } = await page.ask('GET', `${programme}/rollout/search`);
    if (body.taskId === null) return body;
    await new Promise((later) => setTimeout(later, 20));
  }
}

export const change = (page: Page, programme: string, ...changes: readonly object[]) =>
  page.ask('POST', `${programme}/changes`, { by: 'Oren', changes });
