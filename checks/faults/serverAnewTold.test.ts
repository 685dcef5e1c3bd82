import { expect, it } from 'vitest';
import { beside, closes, found, heldAsk, type Row } from './anewServed.ts';
import { change, dayIn, ready, searched, sheetOf, taken } from './rolloutServed.ts';
import { type Page, withServer } from './served.ts';

/**
 * Three sites that were told a day, one of them long after it can be, and a fourth that was told none; what is found after a closure, and
 * kept. As the plan stands a trip waits, so that what is found is sooner than that and yet later than was told.
 */
async function toldAndFound(page: Page, isPathGone: boolean) {
  const programme = await taken(page, ready);
  await searched(page, programme);
  const daysOf = async () =>
    new Map(
      (await sheetOf(page, programme)).crews
        .flatMap((crew) => crew.trips.flatMap(({ stops }) => stops))
        .map(({ siteId, handOver }) => [siteId, handOver!]),
    );
  const told = await daysOf();
  const trips = (await sheetOf(page, programme)).crews.flatMap((crew) => crew.trips);
  const { tripId } = trips.find(({ stops }) => stops.some(({ siteId }) => siteId === 'S001'))!;
  const late = { kind: 'edited', table: 'planTrips', key: `P1/${tripId}`, before: { notBefore: null } };
  const ways = (await page.ask('GET', `${programme}/tables/ways`)).body.rows as readonly Row[];
  const stop = { kind: 'edited', table: 'planStops', key: 'P1/S003', before: { handOver: told.get('S003') } };
  const fourth = { siteId: 'S004', name: 'Far Stones', people: '60', place: 'jetty', gaugeId: 'G-west' };
  for (const one of [
    { ...late, after: { notBefore: dayIn(80) } },
    { ...stop, after: { handOver: dayIn(250) } },
    closes('W1', 30),
    {
      ...{ kind: 'added', table: 'sites', key: 'S004' },
      after: { ...fourth, latitude_deg: '-8.76', longitude_deg: '125.5' },
    },
    ...ways
      .filter(({ key }) => isPathGone && key === 'W4')
      .map(({ key, cells }) => ({ kind: 'removed', table: 'ways', key, before: cells })),
  ])
    expect((await change(page, programme, one)).status).toBe(200);
  told.set('S003', dayIn(250));
  await searched(page, programme, heldAsk);
  const [one] = await found(page, programme);
  const { anew, sites } = await beside(page, programme, one!.planId);
  const kept = await page.ask('POST', `${programme}/rollout/found/P1`, { by: 'Oren', at: one!.at });
  expect(kept.status).toBe(200);
  const now = await daysOf();
  const line = (siteId: string, name: string, people: number) => {
    const [toldDay, newDay] = [told.get(siteId)!, now.get(siteId) ?? null];
    const later_days = newDay === null ? null : (Date.parse(newDay) - Date.parse(toldDay)) / 86_400_000;
    return { siteId, name, people, toldDay, newDay, later_days };
  };
  const [upper, lower] = [line('S001', 'Upper Tarn', 120), line('S002', 'Lower Tarn', 85)];
  // Beside the plan as it stands it is sooner.
  expect(sites.find(({ siteId }) => siteId === 'S001')!.later_days).toBeLessThan(0);
  return { anew: anew!, now, upper, lower, ferry: line('S003', 'Ferry Stones', 240) };
}

it('who is to be told another day: days that were told against days of the plan once it is kept, the later first, by people and days', async () => {
  await withServer(async (page) => {
    const { anew, now, upper, lower, ferry } = await toldAndFound(page, false);
    expect([...now.keys()].sort()).toEqual(['S001', 'S002', 'S003', 'S004']);
    expect([upper.later_days! > 0, lower.later_days! > 0, ferry.later_days! < 0]).toEqual([true, true, true]);
    const later = [upper, lower].sort((a, b) => b.people * b.later_days! - a.people * a.later_days!);
    expect([anew.toldOtherwise, anew.since.untold_count]).toEqual([[...later, ferry], 1]);
  });
}, 60_000);

it('a site that was told a day and can be gone to no more is told so: it counts to the last day looked at', async () => {
  await withServer(async (page) => {
    const { anew, now, upper, lower, ferry } = await toldAndFound(page, true);
    expect([now.has('S002'), lower.newDay, upper.later_days! > 0]).toEqual([false, null, true]);
    expect(anew.toldOtherwise).toEqual([lower, upper, ferry]);
  });
}, 60_000);
