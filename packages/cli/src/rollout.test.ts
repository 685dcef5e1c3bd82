// long: one made-up programme, and all that the command says of its rollout
import { cp, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { writeProgramme } from '@eavewell/formats';
import { type RolloutReport, rolloutReport, rolloutSchemaText } from '@eavewell/tables';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { keptRun } from './keptRun.ts';
import { rolloutPage } from './print/rolloutPage.ts';
import { Sheet } from './print/sheet.ts';
import { paperLook } from './print/terminal.ts';
import { carrier, made, quick, settings, sites, tables } from './rolloutForTests.ts';

const eavewell = (...args: readonly string[]) => keptRun(args);
let room: string;
let folder: string;
let out: string;
let said: Awaited<ReturnType<typeof keptRun>>;
let report: RolloutReport;

async function programme(name: string, changed: object = {}): Promise<string> {
  const path = join(room, name);
  const kept = Object.fromEntries(Object.entries({ ...tables, ...changed }).filter(([, rows]) => rows !== undefined));
  await writeProgramme(path, { settings, rain: made.rain, tables: kept });
  return path;
}
const stopsOf = ({ crews }: RolloutReport) => crews.flatMap(({ trips }) => trips.flatMap((trip) => trip.stops));
const read = (file: string) => readFile(join(out, file), 'utf8');

beforeAll(async () => {
  room = await mkdtemp(join(tmpdir(), 'eavewell-rollout-'));
  folder = await programme('islands');
  out = join(room, 'plan');
  said = await eavewell('rollout', folder, '--json', ...quick, '--out', out);
  report = rolloutReport.parse(JSON.parse(said.out));
});
afterAll(() => rm(room, { recursive: true, force: true }));

describe('rollout of a programme', () => {
  it('tells who goes where as the schema says, each site once', () => {
    const isReport = new Ajv2020().compile(JSON.parse(rolloutSchemaText()));
    expect([isReport(JSON.parse(said.out)), isReport.errors]).toEqual([true, null]);
    const planned = stopsOf(report).map(({ siteId }) => siteId);
    expect([report.leftOut, planned.toSorted()]).toEqual([[], sites.map(({ siteId }) => siteId).toSorted()]);
    expect([report.sites_count, report.people_count, said.code]).toEqual([3, 240, 0]);
  });

  it('plans the same with the same tries and seed', async () => {
    const again = await eavewell('rollout', folder, '--json', ...quick);
    expect(again.out).toBe(said.out);
  });

  it('reckons the strong bound on request alone, and tells it beside the others', async () => {
    const asked = await eavewell('rollout', folder, '--json', ...quick, '--strong-bound', '20');
    const { weighted, bound } = (JSON.parse(asked.out) as RolloutReport).waiting;
    const strong = bound!.all.filter(({ name }) => name === 'tripPrices');
    expect(strong).toHaveLength(1);
    expect(strong[0]!.weighted).toBeLessThanOrEqual(weighted + 1e-6);
    expect(bound!.weighted).toBe(Math.max(...bound!.all.map((one) => one.weighted)));
    expect(report.waiting.bound!.all.map(({ name }) => name)).not.toContain('tripPrices');
    const wrong = await eavewell('rollout', folder, ...quick, '--strong-bound', 'long');
    expect([wrong.code, wrong.err]).toEqual([2, expect.stringContaining('--strong-bound')]);
  });

  it('waits for goods that are not there: one tap until nine come in February', () => {
    const early = stopsOf(report).filter(({ starts }) => starts < '2027-02-10');
    expect(early).toHaveLength(1);
    const taps = report.stock.find(({ partId }) => partId === 'tap')!;
    expect(taps.points.map(({ left_count }) => left_count).every((left) => left >= 0)).toBe(true);
    expect(taps.points.at(-1)!.left_count).toBe(1 + 9 - 3);
  });

  it('tells when all drink, as the page does, that nothing treats their water, and that nobody knows how long tanks fill', async () => {
    const { drinking, finish } = report;
    // No rain is known here: the day of the hand-over counts for all.
    expect(stopsOf(report).map(({ served }) => served)).toEqual([null, null, null]);
    expect([drinking.likely, drinking.futures]).toEqual([finish.likely, finish.futures]);
    const text = plain((await eavewell('rollout', folder, ...quick)).out);
    expect(text).toContain('half have handed the last over by');
    // No unit is entered at any of them: they have water, and do not drink.
    expect(text).toMatch(/All 3 sites still to come in this plan will have water by .*, as likely as not; by /);
    expect(drinking.provisos).toEqual([
      expect.stringMatching(/^At 3 sites, 240 people, no treatment unit is entered/),
      expect.stringMatching(/^Of 3 sites \(240 people\) nobody knows when rain fills the tank/),
    ]);
    for (const proviso of drinking.provisos) expect(text).toContain(proviso);
  });

  it('writes tables with units in their heads, and an itinerary for each crew', async () => {
    const trips = report.crews.flatMap((crew) => crew.trips);
    const written = ['plan', 'itineraries', 'manifests', 'stock', 'served', 'money'].map((name) => `${name}.csv`);
    const texts = [
      ...report.crews.map(({ crewId }) => `itinerary-${crewId}.txt`),
      ...trips.map(({ tripId }) => `manifest-${tripId}.txt`),
    ];
    expect((await readdir(out)).toSorted()).toEqual(['kept', 'rollout.txt', ...written, ...texts].toSorted());
    expect((await read('manifests.csv')).split(/\r?\n/)[0]).toContain('mass_kg');
    expect(await read('plan.csv')).toContain("'=1+1");
    const all = (await Promise.all(texts.map(read))).join(' ').replace(/\s+/g, ' ');
    expect(all).toContain('on the river to Tarn jetty, 2 hours');
    expect(all).toContain('Work at Lower Tarn, 80 people.');
  });

  it('tells in an itinerary where each night of a trip is spent, and days of rest', async () => {
    const into = join(room, 'nights');
    const path = await programme('nights-of', {
      // A day's way to a landing, a day's way to the site, and work over a Sunday.
      sites: sites.slice(2),
      crews: tables.crews.slice(0, 1).map((crew) => ({ ...crew, restDays: 'sun' })),
      ways: tables.ways.map((way) => ({ ...way, there_h: way.wayId === 'W1' ? 7 : 4.87654321, back_h: 5 })),
    });
    const planned = rolloutReport.parse(
      JSON.parse((await eavewell('rollout', path, '--json', ...quick, '--from', '2027-01-08', '--out', into)).out),
    );
    const [trip] = planned.crews[0]!.trips;
    expect([trip!.leaves, trip!.stops[0]!.arrives, trip!.stops[0]!.handOver]).toEqual([
      '2027-01-08',
      '2027-01-09',
      '2027-01-12',
    ]);
    const text = plain(await readFile(join(into, 'itinerary-east.txt'), 'utf8'));
    const days = text.split(/ (?=\d+ January 2027 (?:On|Day|Hand|Work))/).slice(1);
    expect(days.map((day) => /^\d+/.exec(day)![0])).toEqual(['8', '9', '10', '12', '13']);
    expect(days[0]).toMatch(/Night at Tarn jetty\.$/);
    expect(days[1]).toMatch(/Work at Upper Tarn, 120 people\. Night at Upper Tarn\.$/);
    expect(days[2]).toMatch(/Day of rest\. Nights at Upper Tarn, until 12 January 2027\.$/);
    expect(days[3]).toMatch(/Hand over Upper Tarn, .* Night (?:at|on the way to) Tarn jetty\.$/);
    expect(days[4]).toContain('Back at Harbour store.');
    // A table is read by people; the report has all digits. An hour goes to changing over.
    expect(trip!.legs[0]!.stretches[1]!.hours_h).toBeCloseTo(4.87654321, 8);
    expect(await readFile(join(into, 'itineraries.csv'), 'utf8')).toMatch(/,foot,5\.88,/);
  });

  it('lists each trip with boxes to tick, and no load of a boat without its cautions', async () => {
    const trips = report.crews.flatMap((crew) => crew.trips);
    expect(trips.length).toBeGreaterThan(0);
    for (const trip of trips) {
      const text = (await read(`manifest-${trip.tripId}.txt`)).replace(/\s+/g, ' ');
      expect(text.split('[ ]')).toHaveLength(trip.aboard.length + 1);
      expect(trip.legs.some(({ stretches }) => stretches.some(({ mode }) => mode === 'river'))).toBe(true);
      for (const caution of ['A life vest', 'The local skipper decides', 'mark of the freeboard', 'after dark'])
        expect(text).toContain(caution);
      expect(text).toContain('Chlorine and fuel are both on this list');
      // Nobody states a stock of chlorine; of taps somebody does.
      expect(text).toContain('Chlorine – in store?');
      expect(text).not.toContain('Tap – in store?');
    }
  });

  it('holds each load against its limit, and names what that comes from', async () => {
    const trips = report.crews.flatMap((crew) => crew.trips);
    const toHill = trips.filter(({ stops }) => stops.some(({ siteId }) => siteId === sites[2]!.siteId));
    expect([toHill.length, trips.length > 1]).toEqual([1, true]);
    for (const { tripId, stops } of trips) {
      const text = (await read(`manifest-${tripId}.txt`)).replace(/\s+/g, ' ');
      const isHill = tripId === toHill[0]!.tripId;
      // A site's tap, chlorine and petrol: 0.5 + 5 + 17 kg.
      const [kg, limit_kg] = [22.5 * stops.length, isHill ? 4 * 25 : 900];
      expect(text).toContain(`${kg} kg Parts and fuel; limit ${limit_kg} kg: ${Math.floor(limit_kg - kg)} kg to spare`);
      expect(text).toContain(
        isHill
          ? 'The limit of 100 kg is what porters carry on Tarn jetty – Tarn hill.'
          : 'The limit of 900 kg is what Boat may carry.',
      );
    }
  });

  it('sums the fuel that is burnt on the way with the parts', async () => {
    const into = join(room, 'burnt');
    const boats = [{ ...carrier, fuel_L_per_km: 2, carrierId: 'boat', name: 'Boat', mode: 'boat' }];
    const path = await programme('burning', { carriers: boats, sites: sites.slice(0, 1) });
    await eavewell('rollout', path, ...quick, '--out', into);
    const file = (await readdir(into)).find((name) => name.startsWith('manifest-'))!;
    const text = (await readFile(join(into, file), 'utf8')).replace(/\s+/g, ' ');
    // 12 km there and 12 back at 2 L, 0.75 kg a litre, beside 22.5 kg of parts.
    expect(text).toContain('36 kg Fuel, 48 L 58.5 kg Parts and fuel; limit 900 kg: 841 kg to spare');
  });

  it('replaces nothing unasked; asked to, it leaves no manifest of an older plan, and speaks Spanish', async () => {
    const again = join(room, 'again');
    await cp(out, again, { recursive: true });
    await writeFile(join(again, 'manifest-older-9.txt'), 'x');
    const refused = await eavewell('rollout', folder, ...quick, '--out', again);
    expect([refused.code, refused.err]).toEqual([2, expect.stringContaining('--overwrite')]);
    await eavewell('--language', 'es', 'rollout', folder, ...quick, '--out', again, '--overwrite');
    expect(await readdir(again)).toEqual(await readdir(out));
  });
});

describe('a rollout on paper', () => {
  it('writes a manifest of every trip and an itinerary of every crew as PDF, and none of an older plan stays', async () => {
    const printed = join(room, 'printed');
    const { code } = await eavewell('rollout', folder, ...quick, '--out', printed, '--pdf', 'ar');
    expect(code).toBe(0);
    const files = await readdir(printed);
    const trips = report.crews.flatMap((crew) => crew.trips);
    const wanted = [
      ...report.crews.map(({ crewId }) => `itinerary-${crewId}.pdf`),
      ...trips.map(({ tripId }) => `manifest-${tripId}.pdf`),
    ];
    expect(files.filter((file) => file.endsWith('.pdf')).toSorted()).toEqual(wanted.toSorted());
    for (const file of wanted) {
      const bytes = await readFile(join(printed, file));
      expect(bytes.subarray(0, 5).toString('latin1')).toBe('%PDF-');
      expect(bytes.toString('latin1')).toContain('/Lang (ar)');
    }
    await writeFile(join(printed, 'manifest-older-9.pdf'), 'x');
    await eavewell('rollout', folder, ...quick, '--out', printed, '--overwrite');
    expect((await readdir(printed)).filter((file) => file.endsWith('.pdf'))).toEqual([]);
  });
});

/** A plan that was followed for a week: one trip is back, one is fixed, one is still to go, and a plan is kept beside. */
const plansKept = {
  plans: [
    { planId: 'P1', name: 'The board plan', from: '2027-01-04', isInForce: 'yes' },
    { planId: 'P2', name: 'Beside' },
  ],
  planTrips: [
    {
      planId: 'P1',
      tripId: 'T1',
      crewId: 'east',
      order: 1,
      leaves: '2027-01-04',
      leftOn: '2027-01-04',
      backOn: '2027-01-09',
    },
    { planId: 'P1', tripId: 'T2', crewId: 'west', order: 1, isLocked: 'yes', notBefore: '2027-02-22' },
    { planId: 'P1', tripId: 'T3', crewId: 'east', order: 2, notBefore: '2027-04-12' },
    { planId: 'P2', tripId: 'T1', crewId: 'east', order: 1 },
  ],
  planStops: [
    ...sites.map(({ siteId }, at) => ({ planId: 'P1', siteId, tripId: `T${at + 1}`, order: 1 })),
    { planId: 'P2', siteId: sites[2]!.siteId, tripId: 'T1', order: 1 },
  ],
  sites: sites.map((site, at) => ({ ...site, handOverDay: at === 0 ? '2027-01-08' : null })),
};
const onDay = ['--today', '2027-01-15', ...quick] as const;
const plain = (text: string) => text.replace(/\s+/g, ' ');

describe('a programme that keeps a plan', () => {
  let path: string;
  let now: RolloutReport;
  beforeAll(async () => {
    path = await programme('kept', plansKept);
    now = rolloutReport.parse(JSON.parse((await eavewell('rollout', path, '--json', ...onDay)).out));
  });

  it('goes on from the one in force: what has happened and what is fixed stays, only the rest is searched', () => {
    const [, fixed, free] = sites.map(({ siteId }) => siteId);
    expect(now.replanned).toMatchObject({ planId: 'P1', done_count: 1, toGo_count: 2, locked_count: 1 });
    expect([now.day, now.from]).toEqual(['2027-01-15', '2027-01-15']);
    expect(now.leftOut.map(({ reason }) => reason)).toEqual(['handedOver']);
    const trips = now.crews.flatMap(({ crewId, trips: own }) => own.map((trip) => ({ crewId, ...trip })));
    const of = (siteId: string) => trips.find(({ stops }) => stops.some((stop) => stop.siteId === siteId))!;
    expect(of(fixed!)).toMatchObject({ tripId: 'T2', crewId: 'west', isLocked: true });
    expect(of(fixed!).leaves >= '2027-02-22').toBe(true);
    // The tap that was there is taken: the next ones come on 10 February, and nothing else holds the free trip back.
    expect(of(free!).tripId).toBe('T3');
    expect(of(free!).leaves >= '2027-02-10' && of(free!).leaves < '2027-02-22').toBe(true);
  });

  it('tells who is earlier or later than if nothing were changed, which trips move, and what it costs', async () => {
    const { replanned } = now;
    const [moved] = replanned!.sites;
    expect(replanned!.sites).toHaveLength(1);
    expect(moved).toMatchObject({ siteId: sites[2]!.siteId, people: 120 });
    const days = (Date.parse(moved!.servedAfter!) - Date.parse(moved!.servedBefore!)) / 86_400_000;
    expect([moved!.later_days, replanned!.waiting_personDays]).toEqual([days, 120 * days]);
    expect(days).toBeLessThan(0);
    expect(replanned!.trips).toMatchObject([{ tripId: 'T3', kind: 'moved' }]);
    expect(replanned!.trips[0]!.leavesBefore! >= '2027-04-12').toBe(true);
    const said = plain((await eavewell('rollout', path, ...onDay)).out);
    expect(said).toContain(
      'It goes on from The board plan on 15 January 2027: 1 trip is back, 2 are still to go (1 fixed).',
    );
    expect(said).toContain(`Upper Tarn, 120 people: handed over`);
    expect(said).toContain(`(${-days} days sooner)`);
    expect(said).toContain('T3: leaves');
  });

  it('says that people drink only where something treats the water and its wait for rain is known', () => {
    const told = (change: object) => {
      const crews = now.crews.map((crew) => ({
        ...crew,
        trips: crew.trips.map((trip) => ({ ...trip, stops: trip.stops.map((stop) => ({ ...stop, ...change })) })),
      }));
      const sheet = new Sheet(paperLook);
      rolloutPage(sheet, { ...now, crews });
      return plain(sheet.text());
    };
    const served = '2027-03-01';
    const treated = told({ served, isUntreated: false });
    expect(treated).toMatch(/Upper Tarn, 120 people: handed over [^.;]*, drinks from 1 March 2027/);
    expect(treated).toContain('Upper Tarn, 120 people: drinks from');
    const untreated = told({ served, isUntreated: true });
    expect(untreated).toMatch(/Upper Tarn, 120 people: handed over [^.;]*, water runs from 1 March 2027/);
    expect(untreated).toContain('Upper Tarn, 120 people: water runs from');
    expect(untreated).not.toContain('drinks from');
    expect(told({ served: null })).not.toMatch(/drinks from|water runs/);
  });

  it('tells the load of a trip as at least so much where a part for one of its sites has no mass', async () => {
    const [tap, ...others] = tables.parts;
    const light = await programme('unweighed', { ...plansKept, parts: [{ ...tap!, mass_kg: null }, ...others] });
    const loads = /Upper Tarn; (at least )?\d+ kg aboard/;
    expect(loads.exec(plain((await eavewell('rollout', path, ...onDay)).out))?.[1]).toBeUndefined();
    expect(loads.exec(plain((await eavewell('rollout', light, ...onDay)).out))?.[1]).toBe('at least ');
    const json = rolloutReport.parse(JSON.parse((await eavewell('rollout', light, '--json', ...onDay)).out));
    expect(new Set(stopsOf(json).map(({ isUnweighed }) => isUnweighed))).toEqual(new Set([true]));
    expect(new Set(stopsOf(now).map(({ isUnweighed }) => isUnweighed))).toEqual(new Set([false]));
  });

  it('goes on from a plan that is named, or from nothing but what has happened, and writes what changes as a table', async () => {
    const beside = await eavewell('rollout', path, '--json', '--plan', 'P2', ...onDay);
    expect(rolloutReport.parse(JSON.parse(beside.out)).replanned).toMatchObject({
      ...{ planId: 'P2', done_count: 0, locked_count: 0 },
      notPlaced: [{ name: 'Lower Tarn' }],
    });
    const into = join(room, 'anew');
    const anew = await eavewell('rollout', path, '--json', '--anew', '--out', into, ...onDay);
    const report = rolloutReport.parse(JSON.parse(anew.out));
    expect(report.crews.flatMap(({ trips }) => trips).every(({ isLocked }) => !isLocked)).toBe(true);
    const rows = (await readFile(join(into, 'changes.csv'), 'utf8')).trim().split('\n');
    expect([rows[0]!.includes('later_days'), rows.length - 1]).toEqual([true, report.replanned!.sites.length]);
    await eavewell('rollout', folder, '--out', into, '--overwrite', ...quick);
    expect(await readdir(into)).not.toContain('changes.csv');
  });

  it('names a plan that is not there, and rows of a plan whose site is gone', async () => {
    const wrong = await eavewell('rollout', path, '--plan', 'p11', ...onDay);
    expect([wrong.code, plain(wrong.err)]).toEqual([2, expect.stringContaining('There is no plan p11. Near it: P1')]);
    const none = await eavewell('rollout', folder, '--plan', 'P1', ...quick);
    expect([none.code, plain(none.err)]).toEqual([2, expect.stringContaining('keeps no plan')]);
    const gone = await programme('gone', { ...plansKept, sites: plansKept.sites.slice(0, 2) });
    const run = await eavewell('rollout', gone, ...onDay);
    expect(run.code).toBe(1);
    expect(plain(run.out)).toContain(`"${sites[2]!.siteId}"`);
    expect(plain(run.out)).toContain('planStops.csv');
  });

  it('tells in Spanish, and of a site that cannot be planned any more why', async () => {
    const closed = plansKept.sites.map((site, at) => ({ ...site, agreedOn: at === 2 ? null : '2026-05-01' }));
    const run = await eavewell(
      '--language',
      'es',
      'rollout',
      await programme('closed', { ...plansKept, sites: closed }),
      ...onDay,
    );
    const said = plain(run.out);
    expect(said).toContain(
      'Sigue desde The board plan el 15 de enero de 2027: ha vuelto 1 viaje, queda 1 por salir (1 fijo).',
    );
    expect(said).toContain(
      '1 sitio estaba en él y ya no se puede planificar: Upper Tarn. Su gente aún no está de acuerdo.',
    );
  });
});

describe('a rollout that was asked wrongly', () => {
  it.each([
    [['--seconds', 'x'], '--seconds'],
    [['--seconds', '1', '--tries', '5'], '--tries'],
    [['--tries', '0'], '--tries'],
    [['--from', '1 May'], 'YYYY-MM-DD'],
    [['--today', '1 May'], 'YYYY-MM-DD'],
    [['--pdf'], '--out'],
    [['--pdf', 'tlh', '--out', 'x'], 'tlh'],
    [['--futures', '-1'], '--futures'],
  ])('%s: says so', async (args, said) => {
    const { code, err } = await eavewell('rollout', folder, ...args);
    expect([code, err]).toEqual([2, expect.stringContaining(said)]);
  });
});

describe('a programme that lacks what a rollout needs', () => {
  it.each([
    ['crews', 1, 'There is no crew to plan with.'],
    ['ways', 0, 'No way leads to it'],
    ['crewCarriers', 0, 'No way leads to it'],
    ['arrivals', 0, 'the sites need 3, and 1 are there or come'],
  ])('without %s it says what is missing', async (table, code, said) => {
    const run = await eavewell('rollout', await programme(`no-${table}`, { [table]: undefined }), ...quick);
    expect(run.out.replace(/\s+/g, ' ')).toContain(said);
    expect([run.code, run.out]).toEqual([code, expect.not.stringMatching(/NaN|Infinity|undefined|null/)]);
  });
});
