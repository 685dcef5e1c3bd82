import { dayIndexOf, defaultSettings, noKit, noRollout, noStorms, type ProgrammeFacts } from '@eavewell/engine';
import { loadLanguage } from '@eavewell/words';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { type DraftStep, noQuestion } from './draft.ts';
import { Judging } from './judging.ts';
import { siteWith } from './siteForTests.ts';
import { SiteJudge } from './siteJudge.ts';
import { WaterDesk } from './waterDesk.ts';
import type { FromWater, ToWater } from './waterMessages.ts';
import type { WaterPort } from './waterThread.ts';

/** Twelve years with rain every third day, but for a dry season of 60 days from 1 June. */
const first = dayIndexOf(2001, 1, 1);
const facts: ProgrammeFacts = {
  settings: { ...defaultSettings, draws: 50 },
  sites: [siteWith({})],
  parts: [],
  prices: [],
  kit: noKit,
  rollout: noRollout,
  gauges: [
    {
      ...noStorms,
      gaugeId: 'G1',
      name: 'Gauge',
      readingTime: null,
      latitude_deg: null,
      longitude_deg: null,
      file: 'rain/G1.csv',
      normals: [],
      readings: Array.from({ length: dayIndexOf(2013, 1, 1) - first }, (_, i) => {
        const isDry = i % 365 >= 150 && i % 365 < 210;
        return { day: first + i, rain_mm: !isDry && i % 3 === 0 ? 12 : 0, row: i + 2 };
      }),
    },
  ],
};

/** A thread of this process: what is told goes to and fro as messages do. */
class ThreadHere implements WaterPort {
  readonly asked: ToWater[] = [];
  private hear: (told: FromWater) => void = () => undefined;
  private readonly judging = new Judging(
    {
      tell: (told) => this.hear(structuredClone(told)),
      turn: () => new Promise((resolve) => setImmediate(resolve)),
    },
    loadLanguage,
  );

  onTold(hear: (told: FromWater) => void): void {
    this.hear = hear;
  }

  onBroken(): void {}
  terminate(): void {
    this.judging.judge = null;
  }

  postMessage(told: ToWater): void {
    this.asked.push(told);
    setImmediate(() => {
      if (told.kind === 'facts') {
        this.judging.judge = new SiteJudge(told.facts, told.siteId);
        this.hear({ kind: 'loaded', ask: told.ask, site: this.judging.judge.site, isSame: false });
      }
      if (told.kind === 'judge') void this.judging.answer(told);
      if (told.kind === 'remedies') void this.judging.mend(told);
      if (told.kind === 'drafted') this.judging.keep(told);
      if (told.kind === 'settle') this.judging.judge?.settle(told.site);
    });
  }
}

let threads: ThreadHere[];
let desk: WaterDesk;
beforeEach(async () => {
  threads = [];
  desk = new WaterDesk(() => {
    threads.push(new ThreadHere());
    return threads.at(-1)!;
  });
  await desk.hand(facts, 'S1');
  await idle();
});
afterEach(() => desk.close());

const idle = () => vi.waitFor(() => expect(desk.now().isJudging).toBe(false), 5000);
const tank = (volume_L: number): DraftStep => ({ kind: 'tank', tankId: 'T1', volume_L });
const volume = () => desk.now().drafted?.report.storages[0]?.tankVolume_L ?? null;

it('judges what is saved, then what is drafted, and takes steps back', async () => {
  expect(desk.now().saved!.report.storages[0]!.tankVolume_L).toBe(5000);
  expect(desk.now().drafted).toBe(null);
  desk.change(tank(9000));
  desk.change(tank(20_000));
  await idle();
  expect(volume()).toBe(20_000);
  desk.undo();
  await idle();
  expect(volume()).toBe(9000);
  desk.redo();
  desk.undo();
  desk.undo();
  await idle();
  expect(desk.now().drafted).toBe(null);
  expect(desk.now().saved!.report.storages[0]!.tankVolume_L).toBe(5000);
});

it('judges what is pointed at and puts it back without asking again', async () => {
  desk.change(tank(9000));
  await idle();
  desk.preview(tank(15_000));
  await idle();
  expect(volume()).toBe(15_000);
  expect(desk.now().draft.steps).toEqual([tank(9000)]);
  const asked = threads[0]!.asked.length;
  desk.preview(null);
  expect(volume()).toBe(9000);
  expect(threads[0]!.asked).toHaveLength(asked);
});

it('answers the last of a drag alone', async () => {
  const seen = new Set<number>();
  desk.subscribe(() => seen.add(volume() ?? 0));
  for (let litres = 6000; litres <= 12_000; litres += 500) desk.preview(tank(litres));
  await idle();
  expect(volume()).toBe(12_000);
  expect([...seen].sort((a, b) => a - b)).toEqual([0, 12_000]);
});

it('answers a question beside what is saved, and drops it', async () => {
  desk.ask({ ...noQuestion, scenario: { ...noQuestion.scenario, wetDayRain_fraction: 0.5 } });
  await idle();
  const { saved, asked } = desk.now();
  expect(asked!.report.storages[0]!.inflow_L_per_year).toBeLessThan(saved!.report.storages[0]!.inflow_L_per_year);
  desk.ask(noQuestion);
  await idle();
  expect(desk.now().asked).toBe(null);
});

it('is saved with the draft at once when it is kept', async () => {
  desk.change(tank(9000));
  desk.change({ kind: 'people', people: 12 });
  await idle();
  const { drafted } = desk.now();
  const { before, after } = (await desk.toKeep())!;
  expect(before.people).toBe(30);
  desk.kept(after.site);
  expect(desk.now().saved).toBe(drafted);
  expect(desk.now()).toMatchObject({ drafted: null, draft: { steps: [] } });
  desk.change(tank(9500));
  await idle();
  expect(desk.now().drafted!.report.people).toBe(12);
});

it('tells the doubt about every size, and what would mend the site, a little later', async () => {
  await vi.waitFor(() => expect(desk.now().saved!.storages[0]!.curve.band.length).toBeGreaterThan(30), 5000);
  await vi.waitFor(() => expect(desk.now().isMending).toBe(false), 5000);
  expect(threads).toHaveLength(2);
  expect(desk.now().saved!.report.verdict).toBe('short');
  expect(desk.now().remedies!.leaveIt).not.toBe(null);
});
