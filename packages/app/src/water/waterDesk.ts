import type { WaterCurve } from '@eavewell/drawing';
import type { BandAtSize, ProgrammeFacts, SiteFacts } from '@eavewell/engine';
import {
  type Draft,
  type DraftStep,
  emptyDraft,
  isAsked,
  noQuestion,
  type Question,
  stepWithin,
  withAgain,
  withoutLast,
  withStep,
} from './draft.ts';
import type { Drafted } from './draftedSite.ts';
import type { Judged, JudgedOf } from './siteJudge.ts';
import type { SiteReport } from './siteReport.ts';
import type { FromWater, WaterProblem } from './waterMessages.ts';
import { browserThread, type SiteLoaded, type WaterPort, WaterThread } from './waterThread.ts';

/** After so long without another change what would mend the site is worked out [ms]; ours: longer than between two presses of a key. */
const settle_ms = 400;

/** What a page shows of one site's water. */
export interface WaterState {
  /** As it is saved; null until it is judged. */
  readonly saved: Judged | null;
  /** With the draft, and with what is pointed at; null where there is neither. */
  readonly drafted: Judged | null;
  /** Drafted, or else saved, under the question; null where nothing is asked. */
  readonly asked: Judged | null;
  /** What would mend the site as drafted, without what is pointed at; null where nothing has to, and until it is worked out. */
  readonly remedies: SiteReport['remedies'];
  /** Is it still being worked out what would mend it? */
  readonly isMending: boolean;
  readonly draft: Draft;
  readonly question: Question;
  /** What is pointed at or dragged: judged, and not in the draft. */
  readonly pointed: DraftStep | null;
  readonly isJudging: boolean;
  readonly problem: { readonly kind: WaterProblem; readonly body: unknown } | null;
}

const nothingYet: WaterState = {
  saved: null,
  drafted: null,
  asked: null,
  remedies: null,
  isMending: false,
  draft: emptyDraft,
  question: noQuestion,
  pointed: null,
  isJudging: false,
  problem: null,
};

/** One site on the page: what is saved of it, what is drafted, and what both come to. Of no framework. */
export class WaterDesk {
  private state: WaterState = nothingYet;
  private thread: WaterThread | null = null;
  private language = 'en';
  /** Counts what was asked, so that an answer to an older question is not shown. */
  private asked_count = 0;
  private mends_count = 0;
  private mendSoon: ReturnType<typeof setTimeout> | undefined;
  /** Judgements of the draft without what is pointed at. */
  private standing: Pick<WaterState, 'drafted' | 'asked'> | null = null;
  private readonly listeners = new Set<() => void>();

  constructor(private readonly begin: () => WaterPort = browserThread) {}

  readonly now = (): WaterState => this.state;

  readonly subscribe = (listener: () => void): (() => void) => {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  };

  /** Reads the site anew; what was judged stands where nothing is other. */
  load(from: { programmeId: string; siteId: string; form: string; language: string }): Promise<SiteLoaded> {
    this.language = from.language;
    return this.taken(this.open().load(from));
  }

  /** The same with facts that are at hand. */
  hand(facts: ProgrammeFacts, siteId: string): Promise<SiteLoaded> {
    return this.taken(this.open().hand(facts, siteId));
  }

  /** The sentences are wanted in another language. */
  speak(language: string): void {
    if (language === this.language) return;
    this.language = language;
    if (this.state.saved !== null) this.judgeAll();
  }

  /** One step more; a drag is one, made when it is let go. */
  readonly change = (step: DraftStep): void => this.take(withStep(this.state.draft, step));
  readonly undo = (): void => this.take(withoutLast(this.state.draft));
  readonly redo = (): void => this.take(withAgain(this.state.draft));
  readonly discard = (): void => this.take(emptyDraft);

  /** What is pointed at or dragged is judged and not made; null: nothing is any more. */
  readonly preview = (step: DraftStep | null): void => {
    const pointed = step && stepWithin(step);
    if (pointed === null && this.state.pointed === null) return;
    this.set({ pointed });
    if (pointed !== null || this.standing === null) this.judge();
    else {
      this.asked_count++;
      this.set({ ...this.standing, isJudging: false });
    }
  };

  readonly ask = (question: Question): void => {
    this.standing = null;
    this.set({ question });
    this.judge();
  };

  /** What the draft comes to, for keeping it; null where nothing is loaded. */
  toKeep(): Promise<{ readonly before: SiteFacts; readonly after: Drafted } | null> {
    return this.thread?.toKeep(this.state.draft) ?? Promise.resolve(null);
  }

  /** The draft was kept: what was drafted is saved, at once. */
  kept(site: SiteFacts): void {
    const { drafted, pointed } = this.state;
    this.thread?.settle(site);
    const isStanding = drafted !== null && pointed === null && !this.state.isJudging;
    this.set({ draft: emptyDraft, drafted: null, pointed: null, saved: isStanding ? drafted : this.state.saved });
    this.standing = null;
    if (isStanding) this.judge();
    else this.judgeAll();
    this.mendLater();
  }

  /** Ends the threads; the draft stays, for the page may come back. */
  close(): void {
    clearTimeout(this.mendSoon);
    this.asked_count++;
    this.mends_count++;
    this.thread?.end();
    this.thread = null;
    this.state = { ...nothingYet, draft: this.state.draft, question: this.state.question };
  }

  private open(): WaterThread {
    this.thread ??= new WaterThread(this.begin, () => {
      this.thread?.end();
      this.thread = null;
      this.set({ isJudging: false, isMending: false, problem: { kind: 'broken', body: null } });
    });
    return this.thread;
  }

  private async taken(loading: Promise<SiteLoaded>): Promise<SiteLoaded> {
    const loaded = await loading;
    if (this.thread === null) return loaded;
    if (loaded.problem !== null) {
      // What was judged stays: it is as new as what the program said last.
      this.set({ problem: { kind: loaded.problem, body: loaded.body } });
      return loaded;
    }
    this.set({ problem: null });
    if (loaded.isSame && this.state.saved !== null) return loaded;
    this.judgeAll();
    this.mendLater();
    return loaded;
  }

  private take(draft: Draft): void {
    if (draft === this.state.draft) {
      this.preview(null);
      return;
    }
    this.standing = null;
    this.set({ draft, pointed: null });
    this.judge();
    this.mendLater();
  }

  private judgeAll(): void {
    this.standing = null;
    this.judgeThose(['saved', 'drafted', 'asked']);
  }

  private judge(): void {
    const { saved, question } = this.state;
    // What is looked at comes first; what is saved again only where its band was overtaken.
    const shown: readonly JudgedOf[] = isAsked(question) ? ['asked', 'drafted'] : ['drafted', 'asked'];
    if (saved === null) this.judgeThose(['saved', ...shown]);
    else this.judgeThose(hasBands(saved) ? shown : [...shown, 'saved']);
  }

  private judgeThose(wanted: readonly JudgedOf[]): void {
    if (this.thread === null) return;
    const { draft, question, pointed } = this.state;
    const number = ++this.asked_count;
    const left = new Set(this.state.saved === null ? wanted : wanted.filter((of) => of !== 'saved'));
    this.set({ isJudging: true });
    const shown = pointed === null ? draft : { ...draft, steps: [...draft.steps, pointed] };
    this.thread.judge({ language: this.language, draft: shown, question, wanted }, (told) => {
      if (number !== this.asked_count) return;
      if (told.kind === 'judged') {
        left.delete(told.of);
        this.set({ [told.of]: told.judged, ...(left.size === 0 ? { isJudging: false } : {}) });
      }
      if (told.kind === 'bands') this.set({ [told.of]: withBands(this.state[told.of], told) });
      if (told.kind === 'end') this.set({ isJudging: false });
      if (pointed === null && left.size === 0) this.standing = { drafted: this.state.drafted, asked: this.state.asked };
    });
  }

  /** What would mend the site is worked out when nothing was changed for a moment. */
  private mendLater(): void {
    clearTimeout(this.mendSoon);
    const number = ++this.mends_count;
    this.set({ isMending: true });
    this.mendSoon = setTimeout(() => {
      if (this.thread === null) return;
      this.thread.mend({ language: this.language, draft: this.state.draft }, (told) => {
        if (number !== this.mends_count) return;
        if (told.kind === 'remedies') this.set({ remedies: told.remedies });
        if (told.kind === 'end') this.set({ isMending: false });
      });
    }, settle_ms);
  }

  private set(more: Partial<WaterState>): void {
    this.state = { ...this.state, ...more };
    for (const listener of this.listeners) listener();
  }
}

/** Is the doubt about every size worked out? */
function hasBands({ storages }: Judged): boolean {
  return storages.every(({ curve }) => !curve.isExact || curve.band.length > 0);
}

function withBands(judged: Judged | null, { bands }: Extract<FromWater, { kind: 'bands' }>): Judged | null {
  if (judged === null) return null;
  const storages = judged.storages.map((storage, index) => ({
    ...storage,
    curve: { ...storage.curve, ...bandsOf(bands[index] ?? []) },
  }));
  return { ...judged, storages };
}

function bandsOf(sizes: readonly BandAtSize[]): Pick<WaterCurve, 'band' | 'yearsBand'> {
  const of = (range: 'dryDays_per_year' | 'comingGood_years') =>
    sizes.map((size) => ({ tankVolume_L: size.tankVolume_L, ...size[range] }));
  return { band: of('dryDays_per_year'), yearsBand: sizes.length === 0 ? null : of('comingGood_years') };
}
