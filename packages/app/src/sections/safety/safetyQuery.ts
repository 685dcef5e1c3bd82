import { hashKey, queryOptions } from '@tanstack/react-query';
import { NotDone, type ProblemBody } from '../../api/client.ts';
import type { SafetyHead, SiteOfSafety } from './cups.ts';
import type { FromSafety, ToSafety } from './safetyMessages.ts';

/** While verdicts are being worked out they are read again this often [ms]. Ours. */
const again_ms = 10_000;

/** The cups of all sites, the worst first. */
export interface ProgrammeSafety {
  readonly head: SafetyHead;
  readonly sites: readonly SiteOfSafety[];
}

let worker: Worker | null = null;
let asked_count = 0;
const waiting = new Map<number, (told: FromSafety) => void>();

/** The thread that reads the cups, begun when it is first asked; one that breaks is put away, and the next question begins another. */
function thread(): Worker {
  if (worker !== null) return worker;
  worker = new Worker(new URL('./safetyWorker.ts', import.meta.url), { type: 'module' });
  worker.addEventListener('message', ({ data }: MessageEvent<FromSafety>) => waiting.get(data.ask)?.(data));
  worker.addEventListener('error', () => {
    worker?.terminate();
    worker = null;
    for (const [ask, hear] of [...waiting]) hear({ kind: 'unreachable', ask });
  });
  return worker;
}

function load(programmeId: string, keepAs: string): Promise<ProgrammeSafety> {
  return new Promise((resolve, reject) => {
    const ask = ++asked_count;
    const sites: SiteOfSafety[] = [];
    waiting.set(ask, (told) => {
      if (told.kind === 'piece') return void sites.push(...told.sites);
      waiting.delete(ask);
      if (told.kind === 'end') return resolve({ head: told.head, sites });
      if (told.kind === 'unreachable') return reject(new NotDone('unreachable'));
      reject(new NotDone(told.status === 403 ? 'refused' : 'problems', told.body as ProblemBody | null));
    });
    thread().postMessage({ ask, programmeId, keepAs, form: ANSWERS_FORM } satisfies ToSafety);
  });
}

/**
 * The cups of all sites of a programme.
 *
 * @param programmeId - whose
 * @param isRunning - are verdicts being worked out? Then it is read again from time to time
 */
export const safetyQuery = (programmeId: string, isRunning: boolean) => {
  const queryKey = ['programme', programmeId, 'safety'] as const;
  return queryOptions({
    queryKey,
    queryFn: () => load(programmeId, hashKey(queryKey)),
    // Its thread keeps it.
    meta: { isNotKept: true },
    structuralSharing: false,
    refetchInterval: isRunning ? again_ms : false,
  });
};
