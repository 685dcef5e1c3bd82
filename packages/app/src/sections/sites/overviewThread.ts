import { NotDone, type ProblemBody } from '../../api/client.ts';
import type { FromWorker, ToWorker } from './overviewMessages.ts';
import type { OverviewPacked } from './overviewPacked.ts';

type Heard = (told: FromWorker) => void;
type Question = ToWorker extends infer T ? (T extends ToWorker ? Omit<T, 'ask'> : never) : never;

let worker: Worker | null = null;
let asked_count = 0;
const waiting = new Map<number, Heard>();

/** The thread that reads and searches the list of sites, begun when it is first asked. */
function thread(): Worker {
  if (worker !== null) return worker;
  worker = new Worker(new URL('./overviewWorker.ts', import.meta.url), { type: 'module' });
  worker.addEventListener('message', ({ data }: MessageEvent<FromWorker>) => waiting.get(data.ask)?.(data));
  // A thread that breaks is put away; the next question begins another.
  worker.addEventListener('error', () => {
    worker?.terminate();
    worker = null;
    for (const [ask, hear] of [...waiting]) hear({ kind: 'unreachable', ask });
    waiting.clear();
  });
  return worker;
}

function ask(question: Question, hear: Heard): number {
  const number = ++asked_count;
  waiting.set(number, hear);
  thread().postMessage({ ...question, ask: number });
  return number;
}

/**
 * The list of sites, read and packed by its thread.
 *
 * @param programmeId - whose
 * @param language - the language the sentences are wanted in
 * @param keepAs - under what it is kept in this browser
 * @returns the whole list; a `NotDone` is thrown where it is not to be had
 */
export function loadOverview(programmeId: string, language: string, keepAs: string): Promise<OverviewPacked> {
  return new Promise((resolve, reject) => {
    ask({ kind: 'load', programmeId, language, keepAs, form: ANSWERS_FORM }, (told) => {
      waiting.delete(told.ask);
      if (told.kind === 'read') return resolve(told.packed);
      if (told.kind !== 'refused') return reject(new NotDone('unreachable'));
      const reason = told.status === 403 ? 'refused' : 'problems';
      reject(new NotDone(reason, told.body as ProblemBody | null));
    });
  });
}

/** Places of the sites a text means, the likeliest first; null where it means none in particular. */
export function findInOverview(keepAs: string, text: string): Promise<Uint32Array | null> {
  return new Promise((resolve) => {
    ask({ kind: 'find', keepAs, form: ANSWERS_FORM, text }, (told) => {
      waiting.delete(told.ask);
      resolve(told.kind === 'found' ? told.places : null);
    });
  });
}
