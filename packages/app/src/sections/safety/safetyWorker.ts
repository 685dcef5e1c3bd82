/// <reference lib="webworker" />
import { createStore, set } from 'idb-keyval';
import { type SafetyBody, worstFirst } from './cups.ts';
import { type FromSafety, piece_sites, type ToSafety } from './safetyMessages.ts';

// The cups of a country are some megabytes: they are read and put in order here, so that the page never waits for them.
declare const self: DedicatedWorkerGlobalScope;

const tell = (told: FromSafety) => self.postMessage(told);

async function load({ ask, programmeId, keepAs, form }: ToSafety): Promise<void> {
  let answer: Response;
  try {
    const path = `/api/programmes/${encodeURIComponent(programmeId)}/safety`;
    answer = await fetch(path, { headers: { accept: 'application/json' } });
  } catch {
    return tell({ kind: 'unreachable', ask });
  }
  const body: unknown = await answer.json().catch(() => null);
  if (!answer.ok || body === null) return tell({ kind: 'refused', ask, status: answer.status, body });
  const { sites: read, ...head } = body as SafetyBody;
  const sites = [...read].sort(worstFirst);
  for (let at = 0; at < sites.length; at += piece_sites)
    tell({ kind: 'piece', ask, sites: sites.slice(at, at + piece_sites) });
  tell({ kind: 'end', ask, head });
  // It is kept as every other answer is; a browser that keeps nothing is no fault.
  const store = createStore('eavewell-answers', 'answers');
  await set(keepAs, { form, at: Date.now(), data: { head, sites } }, store).catch(() => undefined);
}

self.addEventListener('message', ({ data }: MessageEvent<ToSafety>) => {
  void load(data);
});
