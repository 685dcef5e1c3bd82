import type { Query, QueryKey, QueryPersister } from '@tanstack/react-query';
import { clear, del, entries, get, set, type UseStore } from 'idb-keyval';
import { NotDone } from '../api/client.ts';
import { answersStore } from './keepOverview.ts';

/** An answer of the program as this browser keeps it. */
interface KeptAnswer {
  /** The form answers had when it was read: one of another form is not used. */
  readonly form: string;
  /** When it was read [ms since 1970]. */
  readonly at: number;
  readonly data: unknown;
}

/** Answers are kept so long [ms]: three months. Ours. */
const longest_ms = 90 * 86_400_000;
/** An answer is written at once; the next of the same question, where it comes within so long, when nothing newer came [ms]. Ours. */
const usualSettle_ms = 1500;

/** What is read of programmes, kept in this browser for when the program does not answer. */
export class KeptAnswers {
  private store: UseStore | null = null;
  private readonly waiting = new Map<string, ReturnType<typeof setTimeout>>();
  private readonly writtenAt = new Map<string, number>();
  private readonly readAt = new Map<string, number>();
  private readonly listeners = new Set<() => void>();

  constructor(
    private readonly form: string,
    private readonly settle_ms = usualSettle_ms,
  ) {}

  /** Asks the program; where it does not answer, or does not know this page any more, gives what it answered last. */
  // biome-ignore lint/suspicious/noExplicitAny: the library's own type of what stands for any question
  readonly persister: QueryPersister<any, any> = async (ask, context, query) => {
    try {
      const data = await ask(context);
      this.tell(query.queryHash, Date.now());
      if (isKept(query)) this.keepSoon(query.queryHash, data);
      return data;
    } catch (error) {
      const isAway = error instanceof NotDone && error.reason !== 'problems';
      // What is on the page stays there: it is as new as what was kept.
      const known = isAway && query.state.data === undefined ? await this.find(query.queryHash) : null;
      if (known === null) throw error;
      this.tell(query.queryHash, known.at);
      return known.data;
    }
  };

  /** When an answer was read [ms since 1970]; null where it was not. */
  readonly whenRead = (queryHash: string): number | null => this.readAt.get(queryHash) ?? null;

  readonly subscribe = (listener: () => void): (() => void) => {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  };

  /** Throws away what is older than three months, or of another form. */
  async tidy(): Promise<void> {
    await this.tried(async (store) => {
      for (const [key, value] of await entries<string, KeptAnswer>(store))
        if (value?.form !== this.form || Date.now() - value.at > longest_ms) await del(key, store);
    });
  }

  /** Forgets all that was read. */
  async forget(): Promise<void> {
    for (const timer of this.waiting.values()) clearTimeout(timer);
    this.waiting.clear();
    await this.tried((store) => clear(store));
  }

  private tell(queryHash: string, at: number): void {
    this.readAt.set(queryHash, at);
    for (const listener of this.listeners) listener();
  }

  private async find(queryHash: string): Promise<KeptAnswer | null> {
    const found = await this.tried((store) => get<KeptAnswer>(queryHash, store));
    return found?.form === this.form ? found : null;
  }

  private keepSoon(queryHash: string, data: unknown): void {
    clearTimeout(this.waiting.get(queryHash));
    const at = Date.now();
    const isFirst = at - (this.writtenAt.get(queryHash) ?? 0) > this.settle_ms;
    this.writtenAt.set(queryHash, at);
    const write = () => {
      this.waiting.delete(queryHash);
      void this.tried((store) => set(queryHash, { form: this.form, at, data } satisfies KeptAnswer, store));
    };
    // A page may be left at any moment: what was read first is kept without waiting.
    this.waiting.set(queryHash, setTimeout(write, isFirst ? 0 : this.settle_ms));
  }

  /** A browser that keeps nothing is no fault: the pages then need the program, as they say. */
  private async tried<T>(work: (store: UseStore) => Promise<T>): Promise<T | undefined> {
    try {
      this.store ??= answersStore();
      return await work(this.store);
    } catch {
      return undefined;
    }
  }
}

/** Reviews of files are gone with the program, so they are not kept; nor is what says so of itself. */
function isKept({ queryKey, meta }: Query<unknown, Error, unknown, QueryKey>): boolean {
  return meta?.['isNotKept'] !== true && queryKey[2] !== 'import';
}
