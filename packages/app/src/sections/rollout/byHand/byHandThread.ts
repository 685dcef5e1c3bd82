import type { FromByHand, ToByHand } from './byHandMessages.ts';

type Question = ToByHand extends infer T ? (T extends ToByHand ? Omit<T, 'ask'> : never) : never;

let worker: Worker | null = null;
let asked_count = 0;
const waiting = new Map<number, (told: FromByHand) => void>();

/** The thread that evaluates moves, begun when something is taken up for the first time. */
function thread(): Worker {
  if (worker !== null) return worker;
  worker = new Worker(new URL('./byHandWorker.ts', import.meta.url), { type: 'module' });
  worker.addEventListener('message', ({ data }: MessageEvent<FromByHand>) => {
    const hear = waiting.get(data.ask);
    waiting.delete(data.ask);
    hear?.(data);
  });
  // A thread that breaks is put away; the next question begins another.
  worker.addEventListener('error', () => {
    worker?.terminate();
    worker = null;
    for (const [ask, hear] of [...waiting]) hear({ kind: 'noAnswer', ask });
    waiting.clear();
  });
  return worker;
}

/** Asks the thread that evaluates moves; what cannot be answered is said so. */
export function askByHand(question: Question): Promise<FromByHand> {
  const ask = ++asked_count;
  return new Promise((resolve) => {
    waiting.set(ask, resolve);
    thread().postMessage({ ...question, ask });
  });
}
