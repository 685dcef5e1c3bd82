import type { QueryClient } from '@tanstack/react-query';

/** Does the program on this computer answer? `refused`: it was started again since, and does not know this page. */
export type Reach = 'here' | 'gone' | 'refused';

/** What is told of the rollout of a programme. */
interface RolloutHeard {
  readonly programmeId: string;
  readonly what: 'making' | 'search' | 'sheet';
  readonly done_fraction: number;
  readonly waiting: number | null;
  readonly bound: number | null;
  readonly gap_fraction: number | null;
}

/** How long until it is tried again, where the browser does not do so itself [ms]. Ours. */
const again_ms = 4000;

/** Listens to what changes on the server and makes the pages ask anew. The last of many changes close together counts. */
export class Heard {
  private reach: Reach = 'here';
  private readonly listeners = new Set<() => void>();
  private source: EventSource | null = null;
  private timer: ReturnType<typeof setTimeout> | undefined;

  constructor(
    private readonly client: QueryClient,
    /** Called whenever the program is found to answer. */
    private readonly onHere: () => void = () => undefined,
  ) {}

  /** Begins to listen; the answer ends it. */
  readonly open = (): (() => void) => {
    this.connect();
    return () => {
      clearTimeout(this.timer);
      this.source?.close();
      this.source = null;
    };
  };

  readonly subscribe = (listener: () => void): (() => void) => {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  };

  readonly now = (): Reach => this.reach;

  private connect(): void {
    const source = new EventSource('/api/events');
    this.source = source;
    source.addEventListener('open', () => {
      if (this.reach !== 'here') void this.client.invalidateQueries();
      this.say('here');
      this.onHere();
    });
    source.addEventListener('error', () => {
      if (this.source !== source) return;
      if (source.readyState === EventSource.CLOSED) void this.askWhy();
      else this.say('gone');
    });
    const told = (event: Event) => JSON.parse((event as MessageEvent<string>).data);
    source.addEventListener('changed', (event) => this.pass(told(event)));
    source.addEventListener('design', (event) => this.progress(told(event)));
    source.addEventListener('rollout', (event) => this.rollout(told(event)));
  }

  /** The browser gave up listening: because nobody answers, or because the answer was no? */
  private async askWhy(): Promise<void> {
    const status = await fetch('/api/programmes').then(
      (answer) => answer.status,
      () => null,
    );
    if (this.source === null) return;
    this.say(status === 403 ? 'refused' : 'gone');
    clearTimeout(this.timer);
    // Another page may be let in meanwhile, and this one with it.
    this.timer = setTimeout(() => this.connect(), again_ms);
  }

  private pass({ programmeId }: { readonly programmeId: string }): void {
    void this.client.invalidateQueries({ queryKey: ['programme', programmeId] });
    void this.client.invalidateQueries({ queryKey: ['programmes'] });
  }

  /** How far a design is, is told some times a second: only the end of it makes the pages ask anew. */
  private progress(told: { readonly programmeId: string; readonly done_fraction: number }): void {
    const { programmeId, done_fraction } = told;
    if (done_fraction === 1) this.pass(told);
    else
      this.client.setQueryData(['programme', programmeId, 'state'], (state: object | undefined) =>
        state === undefined ? undefined : { ...state, done_fraction },
      );
  }

  /** How far a rollout or a search for a plan is, is told some times a second; once there is more to be shown, its pages ask anew. */
  private rollout({ programmeId, what, ...told }: RolloutHeard): void {
    if (what === 'making') this.client.setQueryData(['programme', programmeId, 'rolloutMaking'], told.done_fraction);
    if (what === 'sheet') void this.client.invalidateQueries({ queryKey: ['programme', programmeId, 'rollout'] });
    if (what !== 'search') return;
    const queryKey = ['programme', programmeId, 'rolloutSearch'];
    if (told.done_fraction === 1) void this.client.invalidateQueries({ queryKey });
    else
      this.client.setQueryData(queryKey, (state: object | undefined) =>
        state === undefined ? undefined : { ...state, ...told },
      );
  }

  private say(reach: Reach): void {
    if (this.reach === reach) return;
    this.reach = reach;
    for (const listener of this.listeners) listener();
  }
}
