import type { Problem } from '@eavewell/engine';
import { recordName, recordProblem } from '@eavewell/records';
import { type Language, problemSentence } from '@eavewell/words';
import { Stopped } from '@eavewell/work';
import type { OpenProgramme } from '../openProgramme.ts';
import type { RunningTasks } from '../runningTasks.ts';
import { enteredSince, type FoundPlan, type FoundPlans } from './foundPlans.ts';
import { changesToKeep, freePlanId, type PlanToKeep } from './planKept.ts';
import type { SearchStart } from './rolloutAsks.ts';
import type { SearchFound, SearchTold, SearchWanted } from './rolloutSearchTask.ts';
import type { RolloutTold } from './rolloutTold.ts';

/** What a search is asked. */
export interface SearchFor {
  readonly by: string;
  /** The plan that is made anew in place; null: a plan beside the others. */
  readonly into: string | null;
  /** What is found in place of a plan is held until somebody keeps it or leaves it. */
  readonly isHeld: boolean;
  readonly name: string;
  readonly seconds: number;
  readonly seed: number;
}

/** How the search of a programme gets on. */
export interface SearchState {
  readonly taskId: string | null;
  readonly done_fraction: number;
  readonly waiting: number | null;
  readonly bound: number | null;
  readonly gap_fraction: number | null;
  /** The plan that was made last. */
  readonly planId: string | null;
  /** Why none was made, in words. */
  readonly problem: string | null;
}

const noSearch: SearchState = {
  ...{ taskId: null, done_fraction: 0, waiting: null, bound: null, gap_fraction: null, planId: null, problem: null },
};

/** What was kept: which plan it is, and whether in place of the one it was made from. */
interface Kept {
  readonly planId: string;
  readonly isInPlace: boolean;
  readonly problems: readonly Problem[];
}

/** The searches for plans: of each programme one at a time. */
export class Searches {
  onTold: (told: RolloutTold) => void = () => undefined;
  onFault: (error: unknown) => void = () => undefined;
  /** Called with the bound of a rollout once it is known. */
  onBounds: (programmeId: string, key: string, bounds: SearchFound['bounds']) => void = () => undefined;
  private readonly states = new Map<string, SearchState>();
  /** Programmes of which a search runs, or is about to. */
  private readonly running = new Set<string>();
  /** What is being kept. */
  private readonly taken = new WeakSet<FoundPlan>();

  constructor(
    private readonly tasks: RunningTasks,
    private readonly at: () => string,
    readonly found: FoundPlans,
  ) {}

  state({ entry }: OpenProgramme): SearchState {
    return this.states.get(entry.programmeId) ?? noSearch;
  }

  isRunning({ entry }: OpenProgramme): boolean {
    return this.running.has(entry.programmeId);
  }

  /** Begins a search, once what it begins with is there; gives the id of its task. Null: one runs already. */
  async begin(
    programme: OpenProgramme,
    asked: SearchFor,
    language: Language,
    start: () => Promise<SearchStart>,
  ): Promise<string | null> {
    const { programmeId } = programme.entry;
    if (this.running.has(programmeId)) return null;
    this.running.add(programmeId);
    const last = programme.records.at(-1);
    const begun = {
      ...{ at: this.at(), version: programme.version, lastRecord: last === undefined ? null : recordName(last) },
    };
    try {
      const from = await start();
      const planId = asked.into ?? freePlanId(programme.facts);
      const wanted: SearchWanted = { from, planId, seconds: asked.seconds, seed: asked.seed };
      const about = { kind: 'rollout', programmeId, name: asked.name, importId: null } as const;
      const before = this.state(programme).planId;
      const job = this.tasks.start<SearchFound>(about, 'rolloutSearch', wanted, (done_fraction, piece) =>
        this.hear(programmeId, done_fraction, piece as SearchTold),
      );
      this.states.set(programmeId, { ...noSearch, taskId: job.taskId, planId: before });
      void job.result
        .then(async (found) => {
          this.onBounds(programmeId, from.key, found.bounds);
          const { planTrips, planStops } = found;
          const { by, name, into } = asked;
          const made = { ...begun, by, name, into, from: from.from, planTrips, planStops };
          this.end(programmeId, await this.came(programme, made, asked.isHeld, language));
        })
        .catch((error: unknown) => {
          const isStopped = error instanceof Stopped;
          this.end(programmeId, isStopped ? {} : wordsOf([recordProblem('request.our_fault', {}, {})], language));
          if (!isStopped) this.onFault(error);
        });
      return job.taskId;
    } catch (error) {
      this.running.delete(programmeId);
      throw error;
    }
  }

  private hear(programmeId: string, done_fraction: number, { waiting, bound }: SearchTold): void {
    const gap_fraction = waiting === null || bound === null || bound <= 0 ? null : Math.max(0, waiting / bound - 1);
    const state = this.states.get(programmeId) ?? noSearch;
    this.states.set(programmeId, { ...state, done_fraction, waiting, bound, gap_fraction });
    this.onTold({ programmeId, what: 'search', done_fraction, waiting, bound, gap_fraction });
  }

  private end(programmeId: string, came: Partial<Pick<SearchState, 'planId' | 'problem'>>): void {
    this.running.delete(programmeId);
    const { waiting, bound, gap_fraction, planId } = this.states.get(programmeId) ?? noSearch;
    this.states.set(programmeId, { ...noSearch, waiting, bound, gap_fraction, planId, done_fraction: 1, ...came });
    this.onTold({ programmeId, what: 'search', done_fraction: 1, waiting, bound, gap_fraction });
  }

  /** What becomes of a plan that was found. */
  private async came(
    programme: OpenProgramme,
    made: FoundHere,
    isHeld: boolean,
    language: Language,
  ): Promise<Partial<Pick<SearchState, 'planId' | 'problem'>>> {
    const { into } = made;
    if (isHeld && into !== null && programme.facts.row('plans', into) !== null) {
      await this.found.hold(programme, { ...made, into });
      return {};
    }
    const kept = await this.keep(programme, made.by, made);
    return kept.problems.length === 0 ? { planId: kept.planId } : wordsOf(kept.problems, language);
  }

  /** Keeps what was held of a plan, and holds it no longer. */
  async keepFound(programme: OpenProgramme, by: string, found: FoundPlan): Promise<Kept> {
    // Pressed by two at once it is kept once.
    if (this.taken.has(found))
      return { planId: '', isInPlace: false, problems: [recordProblem('request.other_state', {}, {})] };
    this.taken.add(found);
    const kept = await this.keep(programme, by, found);
    if (kept.problems.length === 0) await this.leaveFound(programme, found);
    else this.taken.delete(found);
    return kept;
  }

  /** What was held of a plan is let go of: nothing is written. */
  async leaveFound(programme: OpenProgramme, found: FoundPlan): Promise<void> {
    await this.found.leave(programme, found);
    this.tellFound(programme);
  }

  /** Pages ask anew what is held. */
  private tellFound({ entry: { programmeId } }: OpenProgramme): void {
    const { waiting, bound, gap_fraction, taskId, done_fraction } = this.states.get(programmeId) ?? noSearch;
    const done = taskId === null ? 1 : done_fraction;
    this.onTold({ programmeId, what: 'search', done_fraction: done, waiting, bound, gap_fraction });
  }

  /** Keeps what was found, as one step. A plan that somebody changed meanwhile stays as it is: what was found is kept beside it. */
  private async keep(programme: OpenProgramme, by: string, found: FoundHere): Promise<Kept> {
    const { into, name, from, at: timedAt, planTrips, planStops } = found;
    let [planId, isInPlace] = ['', false];
    const made = await programme.changeBy({ by, source: { kind: 'form', name: null } }, (facts) => {
      isInPlace =
        into !== null &&
        facts.row('plans', into) !== null &&
        !enteredSince(programme, { ...found, into }).isPlanChanged;
      planId = isInPlace && into !== null ? into : freePlanId(facts);
      const head = isInPlace ? null : { name, from };
      const wanted: PlanToKeep = { planTrips, planStops, planId, timedAt, head };
      return { ok: true, value: changesToKeep(facts, wanted), problems: [] };
    });
    return { planId, isInPlace, problems: made.ok ? [] : made.problems };
  }
}

/** What was found, in place of a plan or beside the others. */
type FoundHere = Omit<FoundPlan, 'into'> & { readonly into: string | null };

function wordsOf([problem]: readonly Problem[], language: Language): Pick<SearchState, 'problem'> {
  const { what, todo } = problemSentence(problem!, language);
  return { problem: `${what} ${todo}`.trim() };
}
