import { mkdtemp, readdir, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { rolloutWorking } from '@eavewell/tables';
import { expect, it } from 'vitest';
import { beside, closes, found, heldAsk, type Row } from './anewServed.ts';
import { change, codesOf, dayIn, ended, ready, searched, sheetOf, taken, wanted } from './rolloutServed.ts';
import { type Page, withServer } from './served.ts';

/** Rows of the tables of plans. */
async function planRows(page: Page, programme: string): Promise<Readonly<Record<string, readonly Row[]>>> {
  const all = ['plans', 'planTrips', 'planStops'].map(async (table) => {
    const { body } = await page.ask('GET', `${programme}/tables/${table}`);
    return [table, body.rows] as const;
  });
  return Object.fromEntries(await Promise.all(all));
}

/** A plan whose first way closes for a month, with what was found in its place. */
async function closedAndFound(page: Page): Promise<string> {
  const programme = await taken(page, ready);
  await searched(page, programme);
  expect((await change(page, programme, closes('W1', 30))).status).toBe(200);
  expect(await searched(page, programme, heldAsk)).toMatchObject({ planId: 'P1', problem: null });
  return programme;
}

it('a plan made anew is held: no row changes until it is kept, and then it is the one that was shown; undo brings the plan back', async () => {
  await withServer(async (page) => {
    const programme = await taken(page, ready);
    await searched(page, programme);
    // Trips that were made to wait, so that there is something to win.
    const trips = (await sheetOf(page, programme)).crews.flatMap((crew) => crew.trips);
    const first = trips[0]!;
    const late = { kind: 'edited', table: 'planTrips', before: { notBefore: null }, after: { notBefore: dayIn(80) } };
    expect((await change(page, programme, { ...late, key: `P1/${first.tripId}` })).status).toBe(200);
    expect((await change(page, programme, closes('W1', 30))).status).toBe(200);
    const [version, before] = [(await sheetOf(page, programme)).version, await planRows(page, programme)];
    await searched(page, programme, heldAsk);
    expect([(await sheetOf(page, programme)).version, await planRows(page, programme)]).toEqual([version, before]);
    const [one] = await found(page, programme);
    expect(one).toMatchObject({ into: 'P1', by: 'Nadi', entered_count: 0, isPlanChanged: false });
    // It is in no list of plans.
    expect((await sheetOf(page, programme)).plans.map(({ planId }) => planId)).toEqual(['P1']);
    const shown = await beside(page, programme, one!.planId);
    expect(shown.b.name).toBe('First, made anew');
    // Its figures open, and come to what is shown.
    const asked = `${programme}/rollout/working?plan=${one!.planId}&beside=P1&figure=differs&differs=waiting`;
    const { opens, working } = rolloutWorking.parse((await page.ask('GET', asked)).body);
    expect(working.findLast(({ code }) => code === opens)!.value).toBe(shown.waiting_personDays);
    // Kept, it hands every site over on the day it was shown with.
    const kept = await page.ask('POST', `${programme}/rollout/found/P1`, { by: 'Oren', at: one!.at });
    expect([kept.status, kept.body]).toEqual([200, { planId: 'P1', isInPlace: true }]);
    const after = await sheetOf(page, programme);
    expect([after.version, after.served]).toEqual([version + 1, shown.servedB]);
    expect(await found(page, programme)).toEqual([]);
    expect((await page.ask('POST', `${programme}/undo`, { by: 'Oren' })).status).toBe(200);
    expect(await planRows(page, programme)).toEqual(before);
    expect(codesOf(await page.ask('POST', `${programme}/rollout/found/P1`, { by: 'Oren', at: one!.at }))).toEqual([
      ...[404, 'request.not_found'],
    ]);
  });
}, 60_000);

it('what happened and what the plan takes back are told apart, and add up to days that were told and days that are found', async () => {
  await withServer(async (page) => {
    const programme = await taken(page, ready);
    await searched(page, programme);
    const told = (await sheetOf(page, programme)).crews.flatMap((crew) => crew.trips.flatMap(({ stops }) => stops));
    const cost = (await sheetOf(page, programme)).cost;
    expect((await change(page, programme, closes('W1', 30))).status).toBe(200);
    const asIs = await sheetOf(page, programme);
    await searched(page, programme, heldAsk);
    const { planId } = (await found(page, programme))[0]!;
    const { anew, ...shown } = await beside(page, programme, planId);
    const now = new Map(
      asIs.crews.flatMap((crew) => crew.trips.flatMap(({ stops }) => stops)).map((stop) => [stop.siteId, stop]),
    );
    const days = (a: string, b: string) => (Date.parse(b) - Date.parse(a)) / 86_400_000;
    // These sites wait for no rain that is known: who is handed over drinks.
    const later = told.reduce(
      (sum, stop) => sum + stop.people * days(stop.handOver!, now.get(stop.siteId)!.handOver!),
      0,
    );
    expect(later).toBeGreaterThan(0);
    expect(anew!.since.waiting_personDays).toBe(later);
    expect(anew!.since.lastToldDay).toBe(
      told
        .map(({ handOver }) => handOver!)
        .sort()
        .at(-1),
    );
    expect(anew!.since.cost).toBeCloseTo(asIs.cost - cost, 6);
    expect(anew!.since.untold_count).toBe(0);
    expect(anew!.said[0]).toContain('person-days longer in all than was told');
    // Never worse than the plan as it stands, but for the share that is had for a cheaper one.
    expect(shown.waiting_personDays).toBeLessThanOrEqual(0.01 * asIs.waiting!.personDays);
    // Every trip that is told has another day, crew or sites than it had.
    const trips = new Map(asIs.crews.flatMap((crew) => crew.trips.map((trip) => [trip.tripId, trip])));
    for (const { tripId, kind, before, after } of anew!.trips) {
      const trip = trips.get(tripId);
      expect([tripId, kind === 'new']).toEqual([tripId, trip === undefined]);
      if (trip === undefined) continue;
      expect([before!.leaves, before!.stops]).toEqual([trip.leaves, trip.stops.map(({ name }) => name)]);
      expect(after !== null).toBe(kind !== 'gone');
    }
  });
}, 60_000);

it('a trip that should have left and goes elsewhere now has the days of the new plan; one that is as it was is still asked about', async () => {
  await withServer(async (page) => {
    const programme = await taken(page, ready);
    await searched(page, programme);
    const tripsNow = async () =>
      (await sheetOf(page, programme)).crews.flatMap(({ crewId, trips }) => trips.map((trip) => ({ ...trip, crewId })));
    const isOf = (crewId: string, stops: readonly { readonly siteId: string }[]) =>
      [crewId, ...stops.map(({ siteId }) => siteId)].join(' ');
    // One crew does all of it, a trip to each site, and two of them should have left; the first stays as it is.
    const { planTrips, planStops } = await planRows(page, programme);
    const of = { planId: 'P1', crewId: 'west', notBefore: dayIn(-12), leaves: dayIn(-10), back: dayIn(-4) };
    const trip = (tripId: string, order: string, more: object = {}) => ({
      ...{ kind: 'added', table: 'planTrips', key: `P1/${tripId}`, after: { ...of, tripId, order, ...more } },
    });
    const to = ['X1', 'X2', 'X3'];
    const moved = planStops!.map(({ key, cells: { tripId, order } }, at) => ({
      ...{ kind: 'edited', table: 'planStops', key, before: { tripId, order }, after: { tripId: to[at], order: '1' } },
    }));
    const gone = planTrips!.map(({ key, cells }) => ({ kind: 'removed', table: 'planTrips', key, before: cells }));
    const trips = [trip('X1', '1', { isLocked: 'yes' }), trip('X2', '2'), trip('X3', '3')];
    expect((await change(page, programme, ...trips, ...moved, ...gone)).status).toBe(200);
    const was = new Map((await tripsNow()).map((one) => [one.tripId, one]));
    expect([...was.values()].map(({ tripId, isOverdue }) => [tripId, isOverdue])).toEqual(to.map((id) => [id, true]));
    await searched(page, programme, heldAsk);
    const { at } = (await found(page, programme))[0]!;
    expect((await page.ask('POST', `${programme}/rollout/found/P1`, { by: 'Nadi', at })).status).toBe(200);
    const kept = await tripsNow();
    const rows = new Map((await planRows(page, programme))['planTrips']!.map(({ cells }) => [cells['tripId'], cells]));
    const same = kept.filter(({ tripId, crewId, stops }) => {
      const before = was.get(tripId);
      return before !== undefined && isOf(before.crewId, before.stops) === isOf(crewId, stops);
    });
    const other = kept.filter((one) => was.has(one.tripId) && !same.includes(one));
    expect([same.length > 0, other.length > 0]).toEqual([true, true]);
    for (const { tripId, isOverdue } of same)
      expect([isOverdue, rows.get(tripId)!['leaves'], rows.get(tripId)!['back']]).toEqual([
        ...[true, dayIn(-10), dayIn(-4)],
      ]);
    for (const { tripId, isOverdue, leaves, back } of other)
      expect([isOverdue, rows.get(tripId)!['leaves'], rows.get(tripId)!['back']]).toEqual([false, leaves, back]);
    expect(kept.filter(({ isOverdue }) => isOverdue)).toEqual(same);
  });
}, 60_000);

it('left, nothing is written and nothing is held; what came in between is not kept unseen', async () => {
  await withServer(async (page) => {
    const programme = await closedAndFound(page);
    const [rows, version] = [await planRows(page, programme), (await sheetOf(page, programme)).version];
    const [one] = await found(page, programme);
    // Another search meanwhile: what was looked at is not what is held.
    await searched(page, programme, { ...heldAsk, by: 'Tam', seed: 2 });
    const [other] = await found(page, programme);
    expect([other!.by, other!.at > one!.at]).toEqual(['Tam', true]);
    expect(codesOf(await page.ask('POST', `${programme}/rollout/found/P1`, { by: 'Nadi', at: one!.at }))).toEqual([
      ...[409, 'request.other_state'],
    ]);
    expect((await page.ask('DELETE', `${programme}/rollout/found/P1`)).status).toBe(204);
    expect(await found(page, programme)).toEqual([]);
    expect(codesOf(await page.ask('DELETE', `${programme}/rollout/found/P1`))).toEqual([404, 'request.not_found']);
    expect(codesOf(await page.ask('GET', `${programme}/rollout/compared?a=P1&b=${one!.planId}`))).toEqual([
      ...[404, 'request.not_found'],
    ]);
    expect([(await sheetOf(page, programme)).version, await planRows(page, programme)]).toEqual([version, rows]);
  });
}, 60_000);

it('pressed by two at once it is kept once', async () => {
  await withServer(async (page) => {
    const programme = await closedAndFound(page);
    const { at } = (await found(page, programme))[0]!;
    const both = await Promise.all(
      ['Nadi', 'Tam'].map((by) => page.ask('POST', `${programme}/rollout/found/P1`, { by, at })),
    );
    expect(both.map(({ status }) => status).filter((status) => status === 200)).toHaveLength(1);
    expect((await sheetOf(page, programme)).plans.map(({ planId }) => planId)).toEqual(['P1']);
  });
}, 60_000);

it('what is entered since is told; searched on, it is of the tables as they are then and no worse than what was found', async () => {
  await withServer(async (page) => {
    const programme = await closedAndFound(page);
    const crew = { kind: 'edited', table: 'crews', key: 'east', before: { people: '5' }, after: { people: '4' } };
    expect((await change(page, programme, crew)).status).toBe(200);
    const [one] = await found(page, programme);
    expect(one).toMatchObject({ entered_count: 1, isPlanChanged: false });
    const { anew } = await beside(page, programme, one!.planId);
    expect(anew!.entered.map(({ by }) => by)).toEqual(['Oren']);
    const was = await beside(page, programme, one!.planId);
    await searched(page, programme, { ...heldAsk, seconds: 0.2 });
    const [next] = await found(page, programme);
    expect(next).toMatchObject({ entered_count: 0, isPlanChanged: false });
    const is = await beside(page, programme, next!.planId);
    const asIs = (await sheetOf(page, programme)).waiting!.personDays;
    expect(is.waiting_personDays - was.waiting_personDays).toBeLessThanOrEqual(0.01 * asIs);
  });
}, 60_000);

it('a plan that somebody changed meanwhile stays: it is told, and what was found is kept beside it', async () => {
  await withServer(async (page) => {
    const programme = await closedAndFound(page);
    const note = { kind: 'edited', table: 'plans', key: 'P1', before: { note: null }, after: { note: 'mine' } };
    expect((await change(page, programme, note)).status).toBe(200);
    const rows = await planRows(page, programme);
    const [one] = await found(page, programme);
    expect(one).toMatchObject({ isPlanChanged: true });
    expect((await beside(page, programme, one!.planId)).anew!.isPlanChanged).toBe(true);
    const kept = await page.ask('POST', `${programme}/rollout/found/P1`, { by: 'Nadi', at: one!.at });
    expect(kept.body).toEqual({ planId: 'P2', isInPlace: false });
    const after = await planRows(page, programme);
    for (const [table, own] of Object.entries(after))
      expect([table, own.filter(({ cells }) => cells['planId'] === 'P1')]).toEqual([table, rows[table]]);
    expect(await found(page, programme)).toEqual([]);
  });
}, 60_000);

it('what was found outlives a restart, and a file of it that is damaged is let go of', async () => {
  const room = await mkdtemp(join(tmpdir(), 'eavewell-anew-'));
  const folder = join(room, 'data');
  try {
    let [programme, held, before]: [string, unknown, unknown] = ['', null, null];
    await withServer(
      async (page) => {
        programme = await closedAndFound(page);
        held = await found(page, programme);
        const [{ planId }] = held as [{ planId: string }];
        before = await beside(page, programme, planId);
      },
      { folder, keep: true },
    );
    await withServer(
      async (page) => {
        const [one] = await found(page, programme);
        expect([one]).toEqual(held);
        expect(await beside(page, programme, one!.planId)).toEqual(before);
      },
      { folder, keep: true },
    );
    const own = join(folder, 'derived', 'found', programme.split('/').at(-1)!);
    const [name] = await readdir(own);
    await writeFile(join(own, name!), '{ "into": "P1"');
    await withServer(async (page) => expect(await found(page, programme)).toEqual([]), { folder, keep: true });
  } finally {
    await rm(dirname(folder), { recursive: true, force: true });
  }
}, 60_000);

it('a search that is called off leaves what was found before it', async () => {
  await withServer(
    async (page) => {
      const programme = await closedAndFound(page);
      const before = await found(page, programme);
      const begun = await page.ask('POST', `${programme}/rollout/search`, { ...wanted, ...heldAsk, seconds: 30 });
      expect((await page.ask('DELETE', `/api/tasks/${begun.body.taskId}`)).status).toBe(204);
      await ended(page, programme);
      expect(await found(page, programme)).toEqual(before);
    },
    { threads: true },
  );
}, 60_000);
