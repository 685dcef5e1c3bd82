/// <reference lib="webworker" />
import { SiteFinder } from './findSites.ts';
import type { OverviewBody } from './overview.ts';
import { type FromWorker, piece_sites, type ToWorker } from './overviewMessages.ts';

// The list of a country is some megabytes: it is read and searched here, so that the page never waits for it.
declare const self: DedicatedWorkerGlobalScope;

const finders = new Map<string, SiteFinder>();
const tell = (told: FromWorker) => self.postMessage(told);

async function load({ programmeId, ask, language }: Extract<ToWorker, { kind: 'load' }>): Promise<void> {
  let answer: Response;
  try {
    const path = `/api/programmes/${encodeURIComponent(programmeId)}/overview`;
    answer = await fetch(path, { headers: { accept: 'application/json', 'accept-language': language } });
  } catch {
    return tell({ kind: 'unreachable', ask });
  }
  const body: unknown = await answer.json().catch(() => null);
  if (!answer.ok || body === null) return tell({ kind: 'refused', ask, status: answer.status, body });
  const { sites, ...head } = body as OverviewBody;
  finders.set(programmeId, new SiteFinder(sites));
  tell({ kind: 'head', ask, head, count: sites.length });
  for (let at = 0; at < sites.length; at += piece_sites)
    tell({ kind: 'piece', ask, sites: sites.slice(at, at + piece_sites) });
  tell({ kind: 'end', ask });
}

self.addEventListener('message', ({ data }: MessageEvent<ToWorker>) => {
  if (data.kind === 'load') return void load(data);
  tell({ kind: 'found', ask: data.ask, places: finders.get(data.programmeId)?.find(data.text) ?? null });
});
