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
    for (const kind of ['changed', 'design'])
      source.addEventListener(kind, (event) => this.pass(JSON.parse((event as MessageEvent<string>).data)));
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

  private say(reach: Reach): void {
    if (this.reach === reach) return;
    this.reach = reach;
    for (const listener of this.listeners) listener();
  }
}
