import type { Problem } from '@eavewell/engine';
import { recordProblem } from '@eavewell/records';
import { type Language, problemSentence } from '@eavewell/words';
import { Stopped } from '@eavewell/work';
import type { OpenProgramme } from '../openProgramme.ts';
import type { RunningTasks } from '../runningTasks.ts';
import { changesToKeep, freePlanId, type PlanToKeep } from './planKept.ts';
import { touchesPlan } from './planRowsSent.ts';
import type { SearchStart } from './rolloutAsks.ts';
import type { SearchFound, SearchTold, SearchWanted } from './rolloutSearchTask.ts';
import type { RolloutTold } from './rolloutTold.ts';

/** What a search is asked. */
export interface SearchFor {
  readonly by: string;
  /** The plan that is made anew in place; null: a plan beside the others. */
  readonly into: string | null;
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

/** The searches for plans: of each programme one at a time. */
export class Searches {
  onTold: (told: RolloutTold) => void = () => undefined;
  onFault: (error: unknown) => void = () => undefined;
  /** Called with the bound of a rollout once it is known. */
  onBounds: (programmeId: string, key: string, bounds: SearchFound['bounds']) => void = () => undefined;
  private readonly states = new Map<string, SearchState>();
  /** Programmes of which a search runs, or is about to. */
  private readonly running = new Set<string>();

  constructor(
    private readonly tasks: RunningTasks,
    private readonly at: () => string,
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
    const [version, begunAt] = [programme.version, this.at()];
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
      const keep = (found: SearchFound) =>
        this.keep(programme, asked, found, { version, timedAt: begunAt, from: from.from });
      void job.result
        .then(async (found) => {
          this.onBounds(programmeId, from.key, found.bounds);
          const made = await keep(found);
          this.end(
            programmeId,
            made.problems.length === 0 ? { planId: made.planId } : wordsOf(made.problems, language),
          );
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

  /** Keeps what was found, as one step. A plan that somebody changed meanwhile stays as it is: what was found is kept beside it. */
  private async keep(
    programme: OpenProgramme,
    { by, into, name }: SearchFor,
    found: SearchFound,
    { version, timedAt, from }: { readonly version: number; readonly timedAt: string; readonly from: string },
  ): Promise<{ readonly planId: string; readonly problems: readonly Problem[] }> {
    let planId = '';
    const made = await programme.changeBy({ by, source: { kind: 'form', name: null } }, (facts) => {
      const since = programme.records.slice(version);
      const isInPlace =
        into !== null && facts.row('plans', into) !== null && !since.some((record) => touchesPlan(record, into));
      planId = isInPlace ? into : freePlanId(facts);
      const wanted: PlanToKeep = { ...found, planId, timedAt, head: isInPlace ? null : { name, from } };
      return { ok: true, value: changesToKeep(facts, wanted), problems: [] };
    });
    return { planId, problems: made.ok ? [] : made.problems };
  }
}

function wordsOf([problem]: readonly Problem[], language: Language): Pick<SearchState, 'problem'> {
  const { what, todo } = problemSentence(problem!, language);
  return { problem: `${what} ${todo}`.trim() };
}
