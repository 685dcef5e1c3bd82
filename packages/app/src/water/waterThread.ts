import type { ProgrammeFacts, SiteFacts } from '@eavewell/engine';
import type { Draft, Question } from './draft.ts';
import type { Drafted } from './draftedSite.ts';
import type { JudgedOf } from './siteJudge.ts';
import type { FromWater, ToWater, WaterProblem } from './waterMessages.ts';

type Heard = (told: FromWater) => void;
type Unasked = ToWater extends infer T ? (T extends ToWater ? Omit<T, 'ask'> : never) : never;
type Told = Exclude<FromWater, { kind: 'loaded' | 'notLoaded' }>;

/** What came of reading a site's facts. */
export type SiteLoaded =
  | { readonly problem: null; readonly site: SiteFacts; readonly isSame: boolean }
  | { readonly problem: WaterProblem; readonly body: unknown };

/** A thread as this page sees it; another in a test. */
export interface WaterPort {
  postMessage(told: ToWater): void;
  terminate(): void;
  onTold(hear: Heard): void;
  onBroken(hear: () => void): void;
}

/** A thread of the browser. */
export function browserThread(): WaterPort {
  const worker = new Worker(new URL('./waterWorker.ts', import.meta.url), { type: 'module' });
  return {
    postMessage: (told) => worker.postMessage(told),
    terminate: () => worker.terminate(),
    onTold: (hear) => worker.addEventListener('message', ({ data }: MessageEvent<FromWater>) => hear(data)),
    onBroken: (hear) => worker.addEventListener('error', hear),
  };
}

/** One thread with what is asked of it. */
class Line {
  private readonly waiting = new Map<number, Heard>();
  private asked_count = 0;

  constructor(
    private readonly port: WaterPort,
    onBroken: () => void,
  ) {
    port.onTold((told) => this.waiting.get(told.ask)?.(told));
    port.onBroken(onBroken);
  }

  ask(question: Unasked, hear: Heard): void {
    const ask = ++this.asked_count;
    this.waiting.set(ask, (told) => {
      if (told.kind === 'end' || told.kind === 'loaded' || told.kind === 'notLoaded') this.waiting.delete(ask);
      hear(told);
    });
    this.port.postMessage({ ...question, ask });
  }

  say(question: Unasked): void {
    this.port.postMessage({ ...question, ask: ++this.asked_count });
  }

  end(): void {
    this.port.terminate();
    this.waiting.clear();
  }
}

/**
 * The threads that judge one site: one answers at once, the other works out what would mend it, which may take a second, so that neither
 * waits for the other.
 */
export class WaterThread {
  private readonly quick: Line;
  private slow: Line | null = null;
  private loaded: Unasked | null = null;
  private settled: SiteFacts | null = null;

  constructor(
    private readonly begin: () => WaterPort,
    private readonly onBroken: () => void,
  ) {
    this.quick = new Line(begin(), onBroken);
  }

  /** Reads the facts of a site, from the program or from what this browser keeps of it. */
  load(from: { programmeId: string; siteId: string; form: string; language: string }): Promise<SiteLoaded> {
    return this.take({ kind: 'load', ...from });
  }

  /** Takes facts that are at hand. */
  hand(facts: ProgrammeFacts, siteId: string): Promise<SiteLoaded> {
    return this.take({ kind: 'facts', facts, siteId });
  }

  /** Judges what is wanted; each is told as it is done. A newer call overtakes this one. */
  judge(
    asked: { language: string; draft: Draft; question: Question; wanted: readonly JudgedOf[] },
    hear: (told: Told) => void,
  ): void {
    this.quick.ask({ kind: 'judge', ...asked }, (told) => hear(told as Told));
  }

  /** Works out what would mend the site as drafted. A newer call overtakes this one. */
  mend(asked: { language: string; draft: Draft }, hear: (told: Told) => void): void {
    this.slow ??= this.beginSlow();
    this.slow.ask({ kind: 'remedies', ...asked }, (told) => hear(told as Told));
  }

  /** What the draft comes to, for keeping it; null where nothing is loaded. */
  toKeep(draft: Draft): Promise<{ readonly before: SiteFacts; readonly after: Drafted } | null> {
    return new Promise((resolve) => {
      this.quick.ask({ kind: 'drafted', draft }, (told) => {
        if (told.kind === 'toKeep') resolve(told);
        if (told.kind === 'end') resolve(null);
      });
    });
  }

  /** A draft was kept: these are the saved facts from now on. */
  settle(site: SiteFacts): void {
    this.settled = site;
    this.quick.say({ kind: 'settle', site });
    this.slow?.say({ kind: 'settle', site });
  }

  end(): void {
    this.quick.end();
    this.forgetSlow();
  }

  private take(how: Unasked): Promise<SiteLoaded> {
    this.loaded = how;
    return new Promise((resolve) => {
      this.quick.ask(how, (told) => {
        if (told.kind === 'loaded') {
          if (!told.isSame) this.forgetSlow();
          resolve({ problem: null, site: told.site, isSame: told.isSame });
        }
        if (told.kind === 'notLoaded') resolve({ problem: told.problem, body: told.body });
      });
    });
  }

  private beginSlow(): Line {
    const line = new Line(this.begin(), this.onBroken);
    if (this.loaded !== null) line.say(this.loaded);
    if (this.settled !== null) line.say({ kind: 'settle', site: this.settled });
    return line;
  }

  /** It is begun again with the new facts when it is next needed. */
  private forgetSlow(): void {
    this.settled = null;
    this.slow?.end();
    this.slow = null;
  }
}
