// long: one made-up programme, and all that the server answers of its rollout
import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { evaluatePlan, isoDay, type RolloutPlan, readNumbers } from '@eavewell/engine';
import {
  type RolloutSheet,
  type RolloutTripAnswer,
  rolloutComparison,
  rolloutTrip,
  rolloutWorking,
} from '@eavewell/tables';
import { expect, it } from 'vitest';
import { good } from './folder.ts';
import { change, codesOf, dayIn, ended, ready, searched, sheetOf, taken, wanted } from './rolloutServed.ts';
import { type Page, withServer } from './served.ts';

/** What the kit of a site holds, by part [count]. */
async function kitOf(page: Page, programme: string, siteId: string) {
  const { body } = await page.ask('GET', `${programme}/sites/${siteId}/kit`);
  const lines = body.lines as readonly { readonly partId: string; readonly total_count: number | null }[];
  return Object.fromEntries(
    lines.flatMap(({ partId, total_count: all }) => (all === null || all === 0 ? [] : [[`${siteId} ${partId}`, all]])),
  );
}

/** What is put aboard, by site and part [count]. */
function aboardBySite(aboard: RolloutTripAnswer['aboard']) {
  const found: Record<string, number> = {};
  for (const { siteId, partId, count, each_count } of aboard)
    found[`${siteId} ${partId}`] = (found[`${siteId} ${partId}`] ?? 0) + count * each_count;
  return found;
}

const plansOf = async (page: Page, programme: string) =>
  (await sheetOf(page, programme)).plans.map(({ planId, name, trips_count }) => [planId, name, trips_count > 0]);

it('a programme without ways, crews or plans has a sheet that says so; what is not there is refused with words', async () => {
  await withServer(async (page) => {
    const programme = await taken(page, good);
    const sheet = await sheetOf(page, programme);
    expect([sheet.planId, sheet.plans, sheet.crews, sheet.finish]).toEqual([null, [], [], null]);
    expect(sheet.sentence).toBe('No plan is kept yet. No site can be planned as the tables stand.');
    expect(sheet.problems.map(({ code }) => code)).toContain('rollout.no_crews');
    expect(sheet.candidates.map(({ siteId, reason, said }) => [siteId, reason, said !== ''])).toEqual(
      ['S001', 'S002', 'S003'].map((siteId) => [siteId, expect.any(String), true]),
    );
    const odd: readonly (readonly [string, number, string])[] = [
      ['/rollout?plan=P9', 404, 'request.not_found'],
      ['/rollout?plan=%2e%2e', 400, 'request.wrong'],
      ['/rollout/trips/T001', 404, 'request.not_found'],
      ['/rollout/trips/T001?plan=P9', 404, 'request.not_found'],
      ['/rollout/compared?a=P1&b=P2', 404, 'request.not_found'],
      ['/rollout/numbers?plan=P9', 404, 'request.not_found'],
    ];
    for (const [path, status, code] of odd)
      expect([path, ...codesOf(await page.ask('GET', `${programme}${path}`))]).toEqual([path, status, code]);
    const nothing = await page.ask('POST', `${programme}/rollout/search`, wanted);
    expect(codesOf(nothing)).toEqual([409, 'request.nothing_to_plan']);
    expect(nothing.body.detail).not.toBe('');
    const bad = { ...wanted, seconds: -1 };
    expect(codesOf(await page.ask('POST', `${programme}/rollout/search`, bad))).toEqual([400, 'request.wrong']);
  });
});

it('a plan that is found is kept as one step, and its sheet, trips, comparison and numbers say the same of it', async () => {
  await withServer(async (page) => {
    const programme = await taken(page, ready);
    const before = await sheetOf(page, programme);
    expect(before.sentence).toBe('No plan is kept yet. 3 sites can be planned.');
    for (const [asked, value] of [
      [{ from: 'P9' }, 'P9'],
      [{ into: 'P9' }, 'P9'],
      [{ onlyCrews: ['nobody'] }, 'nobody'],
    ] as const) {
      const refused = await page.ask('POST', `${programme}/rollout/search`, { ...wanted, ...asked });
      expect([...codesOf(refused), refused.body.problems[0].facts.value]).toEqual([404, 'request.not_found', value]);
    }
    expect(await searched(page, programme)).toMatchObject({ planId: 'P1', problem: null });
    const sheet = await sheetOf(page, programme);
    expect([sheet.planId, sheet.version, sheet.plans[0]]).toMatchObject([
      'P1',
      before.version + 1,
      { name: 'First', sites_count: 3 },
    ]);
    const trips = sheet.crews.flatMap((crew) => crew.trips);
    const stops = trips.flatMap((trip) => trip.stops);
    expect(stops.map(({ siteId }) => siteId).sort()).toEqual(['S001', 'S002', 'S003']);
    // What was worked out last is what is worked out now.
    for (const { handOver, kept } of stops) expect(kept).toBe(handOver);
    expect(sheet.changedSince).toBeNull();
    // Where it is not known when a tank fills, the hand-over is told.
    const last = stops
      .map(({ served, handOver }) => served ?? handOver!)
      .sort()
      .at(-1)!;
    expect(sheet.finish!.likely).toBe(last);
    expect(sheet.served.at(-1)).toEqual({ day: last, people: 445 });
    for (const { tripId, stops: own } of trips) {
      const { status, body } = await page.ask('GET', `${programme}/rollout/trips/${tripId}`);
      const trip = rolloutTrip.parse(body);
      expect([status, trip.trip.stops.map(({ siteId }) => siteId)]).toEqual([200, own.map(({ siteId }) => siteId)]);
      const wants = await Promise.all(own.map(({ siteId }) => kitOf(page, programme, siteId)));
      expect(aboardBySite(trip.aboard)).toEqual(Object.assign({}, ...wants));
      expect([trip.days[0]!.day, trip.days.at(-1)!.day]).toEqual([trip.trip.leaves, trip.trip.back]);
    }
    const opened = async (figure: string) => {
      const { status, body } = await page.ask('GET', `${programme}/rollout/working?figure=${figure}`);
      expect([figure, status]).toEqual([figure, 200]);
      const { opens, working } = rolloutWorking.parse(body);
      return working.find(({ code }) => code === opens)!.value;
    };
    expect(await opened('waiting')).toBe(sheet.waiting!.personDays);
    expect(await opened('cost')).toBe(sheet.cost);
    for (const { siteId, served, handOver } of stops) {
      const value = await opened(`drinks&site=${siteId}`);
      expect(isoDay(Date.parse(sheet.from) / 86_400_000 + Number(value))).toBe(served ?? handOver);
    }
    // Lines name the tables their inputs were entered in: people as they stand there, by the site.
    const { body: waiting } = await page.ask('GET', `${programme}/rollout/working?figure=waiting`);
    const entered = rolloutWorking
      .parse(waiting)
      .working.filter(({ code }) => code === 'rollout.siteWaits')
      .map(({ inputs }) => inputs.find(({ name }) => name === 'waitingPeople')!.from);
    expect(entered.map((from) => from?.map(({ table, key, column }) => [table, key, column]))).toEqual(
      ['S001', 'S002', 'S003'].map((siteId) => [['sites', siteId, 'people']]),
    );
    for (const { store, partId, points } of sheet.stock)
      for (const { day, left_count } of points)
        expect(await opened(`stock&store=${store}&part=${partId}&day=${day}`)).toBe(left_count);
    const none = await page.ask('GET', `${programme}/rollout/working?figure=drinks&site=nowhere`);
    expect(codesOf(none)).toEqual([404, 'request.not_found']);
    const same = rolloutComparison.parse((await page.ask('GET', `${programme}/rollout/compared?a=P1&b=P1`)).body);
    expect([same.sites, same.finish_days, same.waiting_personDays, same.said]).toEqual([
      [],
      0,
      0,
      ['First and First go to the same sites on the same days.'],
    ]);
    // Their lines hold every site, though none of them moves.
    expect([same.servedA, same.servedB, same.people_count]).toEqual([sheet.served, sheet.served, sheet.people_count]);
    const { body: numbers } = await page.ask('GET', `${programme}/rollout/numbers`);
    const problem = readNumbers(numbers.numbers);
    const outcome = evaluatePlan(problem, numbers.plan as RolloutPlan);
    const days = outcome.trips
      .flat()
      .flatMap((trip) =>
        trip.stops.map(({ job, handOverDay }) => [problem.jobs[job]!.siteId, isoDay(problem.firstDay + handOverDay)]),
      );
    expect(days).toEqual(stops.map(({ siteId, handOver }) => [siteId, handOver]));
    const pairs = [{ travel: 0, from: 0, to: problem.placeIds.length }];
    const legs = await page.ask('POST', `${programme}/rollout/legs`, { stamp: numbers.stamp, pairs });
    expect([legs.status, legs.body.legs.travels[0].keySteps]).toEqual([200, [problem.placeIds.length]]);
    const odd = await page.ask('POST', `${programme}/rollout/legs`, { stamp: 'of-yesterday', pairs });
    expect(codesOf(odd)).toEqual([409, 'request.other_state']);
    // One step back, and nothing of it is left.
    expect((await page.ask('POST', `${programme}/undo`, { by: 'Nadi' })).status).toBe(200);
    const after = await sheetOf(page, programme);
    expect([after.plans, after.planId]).toEqual([[], null]);
  });
});

it('what changed in the tables since is told, and what happened stays when it is planned anew', async () => {
  await withServer(async (page) => {
    const programme = await taken(page, ready);
    await searched(page, programme);
    const before = await sheetOf(page, programme);
    const [trip, ...others] = before.crews.flatMap((crew) => crew.trips);
    expect(others.length).toBeGreaterThan(0);
    const closed = { closureId: 'C9', wayId: 'W1', from: dayIn(0), to: dayIn(9), reason: 'a tree across' };
    expect((await change(page, programme, { kind: 'added', table: 'closures', key: 'C9', after: closed })).status).toBe(
      200,
    );
    const told = (await sheetOf(page, programme)).changedSince!;
    expect([told.changes_count, told.moved_count > 0]).toEqual([1, true]);
    expect(told.changes.map(({ by, said }) => [by, said])).toEqual([['Oren', expect.stringContaining('C9')]]);
    const handedOver = (sheet: RolloutSheet) =>
      new Map(
        sheet.crews
          .flatMap((crew) => crew.trips.flatMap(({ stops }) => stops))
          .map((stop) => [stop.siteId, stop.handOver]),
      );
    const [was, now] = [handedOver(before), handedOver(await sheetOf(page, programme))];
    expect(told.later.length).toBe(told.later_count);
    expect(told.later.length).toBeGreaterThan(0);
    const days = (later: string, earlier: string) => (Date.parse(later) - Date.parse(earlier)) / 86_400_000;
    for (const one of told.later) {
      expect([one.was, one.now]).toEqual([was.get(one.siteId), now.get(one.siteId)]);
      expect(one.later_days).toBe(days(one.now!, one.was));
    }
    await page.ask('POST', `${programme}/undo`, { by: 'Oren' });
    // It left today.
    const left = {
      kind: 'edited',
      table: 'planTrips',
      key: `P1/${trip!.tripId}`,
      before: { leftOn: null },
      after: { leftOn: dayIn(0) },
    };
    expect((await change(page, programme, left)).status).toBe(200);
    const under = (await sheetOf(page, programme)).crews.flatMap((crew) => crew.trips);
    expect(under.find(({ tripId }) => tripId === trip!.tripId)).toMatchObject({ state: 'underWay', leaves: dayIn(0) });
    expect(await searched(page, programme, { from: 'P1', into: 'P1' })).toMatchObject({ planId: 'P1' });
    const anew = (await sheetOf(page, programme)).crews.flatMap((crew) => crew.trips);
    const gone = anew.filter(({ state }) => state === 'underWay');
    expect(gone.map(({ tripId, stops }) => [tripId, stops.map(({ siteId }) => siteId)])).toEqual([
      [trip!.tripId, trip!.stops.map(({ siteId }) => siteId)],
    ]);
    const all = anew.flatMap(({ stops }) => stops.map(({ siteId }) => siteId)).sort();
    expect(all).toEqual(['S001', 'S002', 'S003']);
    // It is back, and a site of it is handed over today: its people drink from then on, in the curve and not before it.
    const [first] = trip!.stops;
    const back = {
      kind: 'edited',
      table: 'planTrips',
      key: `P1/${trip!.tripId}`,
      before: {},
      after: { backOn: dayIn(0) },
    };
    const handed = { kind: 'edited', table: 'sites', key: first!.siteId, before: {}, after: { handOverDay: dayIn(0) } };
    expect((await change(page, programme, { ...back, before: { backOn: null } })).status).toBe(200);
    expect((await change(page, programme, { ...handed, before: { handOverDay: null } })).status).toBe(200);
    const later = await sheetOf(page, programme);
    expect(later.servedBefore_people).toBe(0);
    expect(later.served[0]).toEqual({ day: dayIn(0), people: first!.people });
  });
});

it('figures of two plans side by side open to workings that come to them', async () => {
  await withServer(async (page) => {
    const programme = await taken(page, ready);
    await searched(page, programme);
    await searched(page, programme, { name: 'Second' });
    const trips = (await sheetOf(page, programme)).crews.flatMap((crew) => crew.trips);
    const held = { kind: 'edited', table: 'planTrips', before: { notBefore: null }, after: { notBefore: dayIn(60) } };
    for (const { tripId } of trips)
      expect((await change(page, programme, { ...held, key: `P2/${tripId}` })).status).toBe(200);
    // What has happened of the first plan counts for both: by itself the second is timed otherwise.
    const left = { kind: 'edited', table: 'planTrips', before: { leftOn: null }, after: { leftOn: dayIn(0) } };
    expect((await change(page, programme, { ...left, key: `P1/${trips[0]!.tripId}` })).status).toBe(200);
    const compared = rolloutComparison.parse((await page.ask('GET', `${programme}/rollout/compared?a=P1&b=P2`)).body);
    const opened = async (plan: string, figure: string) => {
      const asked = `${programme}/rollout/working?plan=${plan}&beside=P1&figure=${figure}`;
      const { status, body } = await page.ask('GET', asked);
      expect([figure, status]).toEqual([figure, 200]);
      const { opens, working } = rolloutWorking.parse(body);
      return working.findLast(({ code }) => code === opens)!;
    };
    expect(compared.sites.length).toBeGreaterThan(0);
    const { from } = await sheetOf(page, programme);
    for (const { siteId, servedA, servedB } of compared.sites)
      for (const [plan, served] of [
        ['P1', servedA],
        ['P2', servedB],
      ] as const) {
        if (served === null) continue;
        const { value } = await opened(plan, `drinks&site=${siteId}`);
        expect([plan, isoDay(Date.parse(from) / 86_400_000 + Number(value))]).toEqual([plan, served]);
      }
    const { finish_days, waiting_personDays, cost, fuel_L, trips_count } = compared;
    expect(waiting_personDays).toBeGreaterThan(0);
    for (const [differs, value] of Object.entries({
      ...{ finish: finish_days, waiting: waiting_personDays, cost, fuel: fuel_L, trips: trips_count },
    }))
      expect((await opened('P2', `differs&differs=${differs}`)).value).toBeCloseTo(value, 9);
    for (const { area, meanA_days, meanB_days } of compared.byArea)
      for (const [plan, mean] of [
        ['P1', meanA_days],
        ['P2', meanB_days],
      ] as const)
        expect((await opened(plan, area === null ? 'area' : `area&area=${area}`)).value).toBeCloseTo(mean, 9);
    const alone = await page.ask('GET', `${programme}/rollout/working?plan=P2&figure=differs&differs=cost`);
    expect(codesOf(alone)).toEqual([404, 'request.not_found']);
  });
});

it('a site that an entry takes out of every trip is the first of who is later, with why, until it is taken back', async () => {
  await withServer(async (page) => {
    const programme = await taken(page, ready);
    await searched(page, programme);
    const [trip, ...others] = (await sheetOf(page, programme)).crews.flatMap((crew) => crew.trips);
    const [stop] = trip!.stops;
    // It left and came back today, and this site of it is not handed over.
    const before = { planId: 'P1', siteId: stop!.siteId, tripId: trip!.tripId, order: '1', handOver: stop!.handOver };
    const back = [
      {
        ...{ kind: 'edited', table: 'planTrips', key: `P1/${trip!.tripId}` },
        ...{ before: { leftOn: null, backOn: null }, after: { leftOn: dayIn(0), backOn: dayIn(0) } },
      },
      { kind: 'removed', table: 'planStops', key: `P1/${stop!.siteId}`, before },
    ];
    const answer = await change(page, programme, ...back);
    expect([answer.status, answer.body.detail]).toEqual([200, undefined]);
    const told = (await sheetOf(page, programme)).changedSince!;
    expect(told.changes_count).toBe(1);
    const { siteId, name, people, handOver } = stop!;
    const why = expect.stringMatching(/^Its trip came back on .* without handing it over/);
    expect(told.later[0]).toEqual({ siteId, name, people, was: handOver, now: null, later_days: null, why });
    expect(told.said).toContain('1 site is in no trip any more');
    // Nobody knows any more how many live at a site of another trip: it is in no trip either, and its people are not 0.
    const other = others.flatMap(({ stops }) => stops)[0]!;
    const cell = String(other.people);
    const unknown = {
      kind: 'edited',
      table: 'sites',
      key: other.siteId,
      before: { people: cell },
      after: { people: null },
    };
    expect((await change(page, programme, unknown)).status).toBe(200);
    const both = (await sheetOf(page, programme)).changedSince!.later.filter((one) => one.why !== null);
    expect(both.map((one) => [one.siteId, one.people, one.was, one.now])).toEqual([
      [siteId, people, handOver, null],
      [other.siteId, null, other.handOver, null],
    ]);
    expect(both[1]!.why).toBe('How many people live there is not known.');
    await page.ask('POST', `${programme}/undo`, { by: 'Oren' });
    await page.ask('POST', `${programme}/undo`, { by: 'Oren' });
    expect((await sheetOf(page, programme)).changedSince).toBeNull();
  });
});

it('who is later is told of sites of which no day was kept too: by what would have been, had nothing changed', async () => {
  await withServer(async (page) => {
    const programme = await taken(page, ready);
    await searched(page, programme);
    const { crews } = await sheetOf(page, programme);
    const closed = { closureId: 'C9', wayId: 'W1', from: dayIn(0), to: dayIn(9), reason: 'a tree across' };
    const close = { kind: 'added', table: 'closures', key: 'C9', after: closed };
    const byKeptDays = async () => {
      const { changedSince } = await sheetOf(page, programme);
      return { later: changedSince?.later, said: changedSince?.said };
    };
    expect((await change(page, programme, close)).status).toBe(200);
    const told = await byKeptDays();
    expect(told.later!.length).toBeGreaterThan(1);
    const hurt = told.later!.map(({ later_days, people }) => later_days! * people!);
    expect(hurt).toEqual([...hurt].sort((a, b) => b - a));
    await page.ask('POST', `${programme}/undo`, { by: 'Oren' });
    // What was done and undone is no change.
    expect(await byKeptDays()).toEqual({});

    // As a plan that came from tables without days.
    const stops = crews.flatMap((crew) => crew.trips).flatMap((trip) => trip.stops);
    const without = stops.map(({ siteId, handOver }) => ({
      ...{ kind: 'edited', table: 'planStops', key: `P1/${siteId}` },
      ...{ before: { handOver }, after: { handOver: null } },
    }));
    expect((await change(page, programme, ...without)).status).toBe(200);
    expect(await byKeptDays()).toEqual({});
    expect((await change(page, programme, close)).status).toBe(200);
    expect(await byKeptDays()).toEqual(told);
    await page.ask('POST', `${programme}/undo`, { by: 'Oren' });
    await page.ask('POST', `${programme}/redo`, { by: 'Oren' });
    expect(await byKeptDays()).toEqual(told);
  });
});

it('changes are told by what they are and by name; of sites no day was ever kept of, nobody says that they stay', async () => {
  await withServer(async (page) => {
    const programme = await taken(page, ready);
    await searched(page, programme);
    const [stop] = (await sheetOf(page, programme)).crews.flatMap(({ trips }) => trips.flatMap(({ stops }) => stops));
    const closing = ['W1', 'W2'].map((wayId, nth) => ({
      ...{ kind: 'added', table: 'closures', key: `C1${nth}` },
      after: { closureId: `C1${nth}`, wayId, from: dayIn(200), to: dayIn(201) },
    }));
    const crew = {
      kind: 'edited',
      table: 'crews',
      key: 'east',
      before: { mostDaysAway: '7' },
      after: { mostDaysAway: '6' },
    };
    const kept = { kind: 'edited', table: 'planStops', key: `P1/${stop!.siteId}` };
    const unkept = { ...kept, before: { handOver: stop!.handOver }, after: { handOver: null } };
    const limit = {
      kind: 'edited',
      table: 'ways',
      key: 'W1',
      before: { limit_kg: null },
      after: { limit_kg: '1250.5' },
    };
    for (const one of [closing, [crew], [limit], [unkept]])
      expect((await change(page, programme, ...one)).status).toBe(200);
    const told = (await sheetOf(page, programme)).changedSince!;
    expect(told.changes.map(({ said }) => said)).toEqual([
      expect.stringMatching(/: nothing became 1,250\.5 kg$/),
      expect.stringMatching(/ of East crew: 7 became 6$/),
      '2 closures of ways added',
    ]);
    // Its day follows from the facts as they were.
    expect(told.said).not.toContain('no day was ever kept');
    // Put into a plan since, no day was ever worked out for it.
    const [first, second] = (await sheetOf(page, programme)).crews.flatMap(({ trips }) =>
      trips.flatMap(({ stops }) => stops),
    );
    const of = (siteId: string, order: string) => ({
      ...{ kind: 'added', table: 'planStops', key: `P9/${siteId}` },
      after: { planId: 'P9', siteId, tripId: 'T1', order },
    });
    const trip = { planId: 'P9', tripId: 'T1', crewId: 'west', order: '1' };
    const other = [
      { kind: 'added', table: 'plans', key: 'P9', after: { planId: 'P9', name: 'Other' } },
      { kind: 'added', table: 'planTrips', key: 'P9/T1', after: trip },
      of(first!.siteId, '1'),
    ];
    const again = { ...crew, before: { mostDaysAway: '6' }, after: { mostDaysAway: '5' } };
    for (const one of [other, [of(second!.siteId, '2')], [again]])
      expect((await change(page, programme, ...one)).status).toBe(200);
    const { said } = (await sheetOf(page, programme, '?plan=P9')).changedSince!;
    expect(said).toContain('Of 1 site no day was ever kept');
    expect(said).not.toContain('no site has moved');
  });
});

it('a search that runs is not begun twice; called off it leaves nothing; a plan changed meanwhile stays as it is', async () => {
  await withServer(
    async (page) => {
      const programme = await taken(page, ready);
      const begun = await page.ask('POST', `${programme}/rollout/search`, { ...wanted, seconds: 30 });
      expect(begun.status).toBe(200);
      const twice = await page.ask('POST', `${programme}/rollout/search`, wanted);
      expect(codesOf(twice)).toEqual([409, 'request.search_runs']);
      expect(twice.body.detail).not.toBe('');
      expect((await page.ask('DELETE', `/api/tasks/${begun.body.taskId}`)).status).toBe(204);
      expect(await ended(page, programme)).toMatchObject({ planId: null, problem: null });
      expect(await plansOf(page, programme)).toEqual([]);
      await searched(page, programme);
      await page.ask('POST', `${programme}/rollout/search`, {
        ...wanted,
        from: 'P1',
        into: 'P1',
        name: 'Beside',
        seconds: 1,
      });
      const renamed = { kind: 'edited', table: 'plans', key: 'P1', before: { name: 'First' }, after: { name: 'Ours' } };
      expect((await change(page, programme, renamed)).status).toBe(200);
      expect(await ended(page, programme)).toMatchObject({ planId: 'P2', problem: null });
      expect(await plansOf(page, programme)).toEqual([
        ['P1', 'Ours', true],
        ['P2', 'Beside', true],
      ]);
    },
    { threads: true },
  );
}, 60_000);

it('a search that ran when the program ended is said to be cut off, and nothing of it counts', async () => {
  const room = await mkdtemp(join(tmpdir(), 'eavewell-rollout-'));
  const folder = join(room, 'data');
  const marks = join(folder, 'derived', 'tasks');
  try {
    let [programme, mark, text] = ['', '', ''];
    await withServer(
      async (page) => {
        programme = await taken(page, ready);
        await page.ask('POST', `${programme}/rollout/search`, { ...wanted, seconds: 30 });
        while (text === '') {
          for (const name of (await readdir(marks)).filter((one) => one.endsWith('.json'))) {
            const found = await readFile(join(marks, name), 'utf8').catch(() => '{}');
            if (JSON.parse(found).kind === 'rollout') [mark, text] = [join(marks, name), found];
          }
          await new Promise((later) => setTimeout(later, 20));
        }
      },
      { folder, keep: true, threads: true },
    );
    expect(text).toContain('First');
    // As it lies there where the program was killed.
    await writeFile(mark, text);
    await withServer(
      async (page) => {
        const { body } = await page.ask('GET', '/api/tasks');
        expect(body.tasks.map(({ kind, state, name }: Record<string, string>) => [kind, state, name])).toContainEqual([
          'rollout',
          'cutOff',
          'First',
        ]);
        expect((await page.ask('GET', `${programme}/rollout/search`)).body.taskId).toBeNull();
        expect(await plansOf(page, programme)).toEqual([]);
      },
      { folder, keep: true },
    );
  } finally {
    await rm(dirname(folder), { recursive: true, force: true });
  }
}, 60_000);
