import type { FastifyReply } from 'fastify';
import type { RolloutTold } from '../rollouts/rolloutTold.ts';
import type { Task } from '../runningTasks.ts';

/** What a page is told without asking. */
export type Told =
  | { readonly kind: 'changed'; readonly programmeId: string; readonly version: number }
  | { readonly kind: 'design'; readonly programmeId: string; readonly version: number; readonly done_fraction: number }
  | { readonly kind: 'task'; readonly task: Task }
  | ({ readonly kind: 'rollout' } & RolloutTold)
  | { readonly kind: 'programmes' };

/** A sign of life, so that a page knows when the program has ended [ms]. Ours. */
const alive_ms = 20_000;

/** The pages that listen. */
export class Listeners {
  private readonly open = new Set<FastifyReply>();
  private readonly timer = setInterval(() => this.write(': alive\n\n'), alive_ms);

  constructor() {
    this.timer.unref();
  }

  /** Keeps the answer open and tells it what happens from now on. */
  add(reply: FastifyReply): void {
    reply.hijack();
    reply.raw.writeHead(200, {
      ...(reply.getHeaders() as Record<string, string>),
      'content-type': 'text/event-stream; charset=utf-8',
      'cache-control': 'no-store',
    });
    reply.raw.write(': here\n\n');
    this.open.add(reply);
    reply.raw.on('close', () => this.open.delete(reply));
  }

  tell(told: Told): void {
    this.write(`event: ${told.kind}\ndata: ${JSON.stringify(told)}\n\n`);
  }

  close(): void {
    clearInterval(this.timer);
    for (const reply of this.open) reply.raw.end();
    this.open.clear();
  }

  private write(text: string): void {
    for (const reply of this.open) reply.raw.write(text);
  }
}
