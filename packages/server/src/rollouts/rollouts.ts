import { createHash } from 'node:crypto';
import { rm } from 'node:fs/promises';
import { join } from 'node:path';
import { dayOnClock, type WaitingBounds } from '@eavewell/engine';
import { type Language, loadLanguage } from '@eavewell/words';
import { type Job, type Keeping, Stopped, type Work } from '@eavewell/work';
import type { Designs } from '../designs/designs.ts';
import type { OpenProgramme } from '../openProgramme.ts';
import { programBuild } from '../programBuild.ts';
import type { Programmes } from '../programmes.ts';
import { changesAmong, changesSince } from './changesSince.ts';
import type { AnewAsked } from './comparedAsk.ts';
import { enteredSince, type FoundPlan, idOfFound, rowsWithFound } from './foundPlans.ts';
import { factsVersion, planRowsOf } from './planRowsSent.ts';
import type * as asks from './rolloutAsks.ts';
import type { RolloutAt } from './rolloutAt.ts';
import type { DrawnFound } from './rolloutDrawTask.ts';
import type { RolloutTold } from './rolloutTold.ts';
import type { Searches } from './searches.ts';
import type { SheetFound } from './sheetAsk.ts';

/** An answer that was put together elsewhere, as JSON. */
type Text = { readonly text: string };

/** An ask that may be of a plan that was found and is not kept. */
interface MayAskFound {
  readonly planId?: string | null;
  readonly b?: string;
  readonly goesOnWith?: string | null;
  readonly language?: string;
}

/** How often a page is told how far the making is [ms]. Ours. */
const told_ms = 200;
/** How often is looked whether the design of the present facts is there [ms]. Ours. */
const again_ms = 100;

/** The rollouts of programmes: a thread that stays holds the one asked for last, and answers what is asked of it. */
export class Rollouts {
  onTold: (told: RolloutTold) => void = () => undefined;
  onFault: (error: unknown) => void = () => undefined;
  /** The facts that were asked of last: the thread holds what it made of them. */
  private heldFacts: string | null = null;
  /** Futures that are being drawn, by programme. */
  private readonly drawing = new Map<string, { readonly key: string; job: Job<DrawnFound> | null }>();
  /** Futures that could not be drawn: our own fault, told on the screen of the program. */
  private readonly notDrawn = new Set<string>();
  private isClosed = false;

  constructor(
    private readonly programmes: Programmes,
    private readonly designs: Designs,
    private readonly work: Work,
    private readonly keeping: Keeping,
    readonly searches: Searches,
  ) {
    searches.onBounds = (programmeId, key, bounds) => this.keepBounds(programmeId, key, bounds);
  }

  /** The page of a plan, as JSON; null: there is none of that id. What is still to be drawn of it is begun. */
  async sheet(programme: OpenProgramme, asked: Pick<asks.SheetAsked, 'planId' | 'language'>): Promise<string | null> {
    const changes = changesSince(programme);
    const found = await this.ask<SheetFound | null>(programme, 'sheet', {
      ...{ ...asked, changes, notDrawn: [...this.notDrawn] },
    });
    if (found === null) return null;
    if (found.drawKey !== null) void this.draw(programme, found.planId, found.drawKey).catch(this.onFault);
    return found.text;
  }

  /** One trip in full; `plan`, `trip`: there is none of that id. */
  trip(programme: OpenProgramme, asked: Omit<asks.TripAsked, 'at'>): Promise<Text | 'plan' | 'trip'> {
    return this.ask(programme, 'trip', asked);
  }

  /** How a figure of a plan was reached; null: there is no such plan, or no such figure. */
  working(programme: OpenProgramme, asked: Omit<asks.WorkingAsked, 'at'>): Promise<Text | null> {
    return this.ask(programme, 'working', asked);
  }

  /** Two plans side by side; null: one of them is not there. */
  async compared(programme: OpenProgramme, asked: Pick<asks.ComparedAsked, 'a' | 'b' | 'language'>) {
    const found = await this.foundAs(programme, asked.b);
    const anew = found?.into === asked.a ? anewOf(programme, found) : null;
    return this.ask<Text | null>(programme, 'compared', { ...asked, anew });
  }

  /** A plan as numbers; null: there is none of that id. */
  numbers(programme: OpenProgramme, asked: Omit<asks.NumbersAsked, 'at'>): Promise<Text | null> {
    return this.ask(programme, 'numbers', asked);
  }

  /** More legs; null: they are asked of a state that is no more. */
  async legs(programme: OpenProgramme, { stamp, ...asked }: Omit<asks.LegsAsked, 'at'> & { readonly stamp: string }) {
    const at = await this.stateOf(programme, '');
    if (at.stamp !== stamp) return null;
    return this.ask<Text | null>(programme, 'legs', asked);
  }

  /** What a search begins with; `plan`, `crew`: there is none of that id; `nothing`: there is nothing to plan. */
  searchStart(programme: OpenProgramme, asked: Omit<asks.SearchAsked, 'at'>) {
    return this.ask<asks.SearchStart | 'plan' | 'crew' | 'nothing'>(programme, 'searchStart', asked);
  }

  /** Calls off what is drawn and waited for beside requests, and ends the thread. */
  async close(): Promise<void> {
    this.isClosed = true;
    for (const { job } of this.drawing.values()) job?.cancel();
    await this.keeping.close();
  }

  private async ask<T>(programme: OpenProgramme, name: string, asked: object): Promise<T> {
    const { programmeId } = programme.entry;
    await this.judged(programme);
    const passing = await this.programmes.passingFolder('designs');
    let told = Number.NEGATIVE_INFINITY;
    try {
      const at = await this.stateOf(programme, passing, await this.foundOf(programme, asked));
      // Nothing is asked of a thread that ended: it would begin anew, and the program would not end.
      if (this.isClosed) throw new Stopped();
      this.heldFacts = at.factsStamp;
      return await this.keeping.ask<T>(
        name,
        { ...asked, at },
        {
          onReport: (done_fraction) => {
            const now = performance.now();
            if (now - told < told_ms && done_fraction < 1) return;
            told = now;
            this.tell(programmeId, 'making', done_fraction);
          },
        },
      ).result;
    } finally {
      await rm(passing, { recursive: true, force: true });
    }
  }

  /** Waits for the verdicts of the present facts, which the design works out anyway, unless the thread has them. */
  private async judged(programme: OpenProgramme): Promise<void> {
    for (;;) {
      const { factsStamp } = await this.stateOf(programme, '');
      if (this.isClosed || factsStamp === this.heldFacts) return;
      const { done_fraction, isFailed, isCalledOff } = await this.designs.state(programme);
      if (done_fraction >= 1 || isFailed || isCalledOff) return;
      await new Promise((later) => setTimeout(later, again_ms));
    }
  }

  /** The plan that was found and is asked by an id; null: none is. */
  private async foundAs(programme: OpenProgramme, id: string | null | undefined): Promise<FoundPlan | null> {
    const all = await this.searches.found.list(programme);
    return all.find(({ into }) => idOfFound(into) === id) ?? null;
  }

  /** The plan that was found and is asked of, with the language its name is to be said in; null: it is asked of plans that are kept. */
  private async foundOf(programme: OpenProgramme, asked: MayAskFound) {
    const found = await this.foundAs(programme, asked.goesOnWith ?? asked.b ?? asked.planId);
    return found && { found, language: await loadLanguage(asked.language ?? '') };
  }

  private async stateOf(
    programme: OpenProgramme,
    passing: string,
    held: { readonly found: FoundPlan; readonly language: Language } | null = null,
  ): Promise<RolloutAt> {
    const { entry, version, facts } = programme;
    const { programmeId } = entry;
    const planRows = () => (held === null ? planRowsOf(facts) : rowsWithFound(facts, held.found, held.language));
    const [today, build] = [dayOnClock(new Date()), await programBuild()];
    const stampOf = (at: number, ...more: readonly string[]) =>
      createHash('sha256')
        .update(JSON.stringify([programmeId, at, today, build, ...more]))
        .digest('hex')
        .slice(0, 20);
    return {
      ...{ dataFolder: this.programmes.folder, programmeId, version, today, build, passing },
      stamp: held === null ? stampOf(version) : stampOf(version, held.found.into, held.found.at, held.language.code),
      factsStamp: stampOf(factsVersion(programme)),
      planRows: passing === '' ? '' : JSON.stringify(planRows()),
      designs: this.programmes.derivedFolder(join('designs', programmeId)),
    };
  }

  private tell(programmeId: string, what: RolloutTold['what'], done_fraction: number): void {
    this.onTold({ programmeId, what, done_fraction, waiting: null, bound: null, gap_fraction: null });
  }

  /** Draws futures of a plan beside, and tells when they are there. Of a programme the last that were asked for are drawn. */
  private async draw(programme: OpenProgramme, planId: string | null, drawKey: string): Promise<void> {
    const { programmeId } = programme.entry;
    const before = this.drawing.get(programmeId);
    if (before?.key === drawKey) return;
    before?.job?.cancel();
    const mine: { readonly key: string; job: Job<DrawnFound> | null } = { key: drawKey, job: null };
    this.drawing.set(programmeId, mine);
    try {
      const start = await this.ask<asks.DrawStart | null>(programme, 'drawStart', { planId, drawKey });
      if (start === null || this.isClosed || this.drawing.get(programmeId) !== mine) return;
      mine.job = this.work.start<DrawnFound>('rolloutDraw', start);
      const found = await mine.job.result;
      await this.keeping.ask('keepDrawn', { drawKey, key: start.key, ...found }).result;
    } catch (error) {
      if (error instanceof Stopped) return;
      this.notDrawn.add(drawKey);
      throw error;
    } finally {
      if (this.drawing.get(programmeId) === mine) {
        this.drawing.delete(programmeId);
        this.tell(programmeId, 'sheet', 1);
      }
    }
  }

  private keepBounds(programmeId: string, key: string, bounds: WaitingBounds | null): void {
    void this.keeping.ask('keepBounds', { key, bounds }).result.then(
      () => this.tell(programmeId, 'sheet', 1),
      (error: unknown) => {
        if (!(error instanceof Stopped)) this.onFault(error);
      },
    );
  }
}

/** What is told of a plan that was found beside the one it would take the place of. */
function anewOf(programme: OpenProgramme, found: FoundPlan): AnewAsked {
  const { records, isPlanChanged } = enteredSince(programme, found);
  const { by, at } = found;
  return {
    ...{ by, at, entered: changesAmong(records, found.into), isPlanChanged },
    since: changesSince(programme)[found.into] ?? null,
  };
}
