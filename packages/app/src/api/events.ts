import type { QueryClient } from '@tanstack/react-query';

/** Does the program on this computer answer? */
export type Reach = 'here' | 'gone';

/** Listens to what changes on the server and makes the pages ask anew. The last of many changes close together counts. */
export class Heard {
  private reach: Reach = 'here';
  private readonly listeners = new Set<() => void>();

  constructor(private readonly client: QueryClient) {}

  /** Begins to listen; the answer ends it. */
  readonly open = (): (() => void) => {
    const source = new EventSource('/api/events');
    source.addEventListener('open', () => {
      if (this.reach === 'gone') void this.client.invalidateQueries();
      this.say('here');
    });
    source.addEventListener('error', () => this.say('gone'));
    const told = (event: Event) => JSON.parse((event as MessageEvent<string>).data);
    source.addEventListener('changed', (event) => this.pass(told(event)));
    source.addEventListener('design', (event) => this.progress(told(event)));
    return () => source.close();
  };

  readonly subscribe = (listener: () => void): (() => void) => {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  };

  readonly now = (): Reach => this.reach;

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

  private say(reach: Reach): void {
    if (this.reach === reach) return;
    this.reach = reach;
    for (const listener of this.listeners) listener();
  }
}
