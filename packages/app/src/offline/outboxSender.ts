import type { RowChange } from '../api/client.ts';
import { NotDone } from '../api/client.ts';
import { clashesOf, followingOn, type KeptChange, nextToSend, type RowsNow } from './outbox.ts';
import type { OutboxStore } from './outboxStore.ts';

/** How the outbox reaches the program. */
export interface Post {
  /** Makes the record; throws `NotDone` where it is not made. */
  send(kept: KeptChange): Promise<void>;
  /** Rows of the named tables as they stand; throws `NotDone`. */
  rows(programmeId: string, tables: readonly string[]): Promise<RowsNow>;
}

/** Lets one page at a time send: the others leave it to that one. */
export type InTurn = (work: () => Promise<void>) => Promise<void>;

/** Changes kept in this browser until the program answers: in order, none lost, none made twice. */
export class Outbox {
  private kept: readonly KeptChange[] = [];
  private readonly listeners = new Set<() => void>();
  private readonly channel = typeof BroadcastChannel === 'undefined' ? null : new BroadcastChannel('eavewell-outbox');

  constructor(
    private readonly store: OutboxStore,
    private readonly post: Post,
    private readonly inTurn: InTurn = oneAtATime,
  ) {}

  /** Begins to follow what other pages of this browser keep; the answer ends it. */
  readonly open = (): (() => void) => {
    const hear = () => void this.read();
    this.channel?.addEventListener('message', hear);
    hear();
    return () => this.channel?.removeEventListener('message', hear);
  };

  readonly subscribe = (listener: () => void): (() => void) => {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  };

  /** What is kept, in the order it was made. */
  readonly now = (): readonly KeptChange[] => this.kept;

  /** Reads what is kept; what was known where the browser does not let it. */
  async read(): Promise<readonly KeptChange[]> {
    try {
      this.kept = await this.store.read();
    } catch {
      return this.kept;
    }
    for (const listener of this.listeners) listener();
    return this.kept;
  }

  /** Keeps changes; throws where the browser keeps nothing, and then they are not kept. */
  async keep(asked: { sendId: string; programmeId: string; by: string; changes: readonly RowChange[] }): Promise<void> {
    const at = new Date().toISOString();
    await this.alter((kept) => [
      ...kept,
      {
        ...asked,
        at,
        changes: followingOn(
          kept.filter(({ programmeId }) => programmeId === asked.programmeId),
          asked.changes,
        ),
        state: 'waits',
        isSure: false,
        clashes: [],
        problems: [],
      },
    ]);
  }

  /** Lets a kept change go: it is never sent. */
  async takeBack(sendId: string): Promise<void> {
    await this.alter((kept) => kept.filter((one) => one.sendId !== sendId));
  }

  /** Tries a change again that waited for a word: although somebody else changed the same, or because the fault is mended. */
  async tryAgain(sendId: string): Promise<void> {
    await this.mark(sendId, { state: 'waits', isSure: true, clashes: [], problems: [] });
    await this.send();
  }

  /** Sends all that can be sent, one after the other. */
  async send(): Promise<void> {
    await this.inTurn(async () => {
      for (;;) {
        const next = nextToSend(await this.read());
        if (next === null || !(await this.sendOne(next))) return;
      }
    });
  }

  /** True where the next may follow. */
  private async sendOne(kept: KeptChange): Promise<boolean> {
    try {
      const clashes = kept.isSure ? [] : await this.clashes(kept);
      if (clashes.length > 0) {
        await this.mark(kept.sendId, { state: 'clash', clashes });
        return true;
      }
      await this.post.send(kept);
      await this.takeBack(kept.sendId);
      return true;
    } catch (error) {
      if (!(error instanceof NotDone) || error.reason !== 'problems') return false;
      await this.mark(kept.sendId, { state: 'refused', problems: error.body?.problems ?? [] });
      return true;
    }
  }

  private async clashes({ programmeId, changes }: KeptChange) {
    const tables = [...new Set(changes.filter(({ kind }) => kind !== 'added').map(({ table }) => table))];
    return tables.length === 0 ? [] : clashesOf(changes, await this.post.rows(programmeId, tables));
  }

  private mark(sendId: string, what: Partial<KeptChange>): Promise<void> {
    return this.alter((kept) => kept.map((one) => (one.sendId === sendId ? { ...one, ...what } : one)));
  }

  private async alter(work: (kept: readonly KeptChange[]) => readonly KeptChange[]): Promise<void> {
    await this.store.alter(work);
    await this.read();
    this.channel?.postMessage('altered');
  }
}

/** Of all pages of this browser only one sends at a time. */
const oneAtATime: InTurn = async (work) => {
  if (!('locks' in navigator)) return work();
  await navigator.locks.request('eavewell-outbox', { ifAvailable: true }, async (lock) => {
    if (lock !== null) await work();
  });
};
