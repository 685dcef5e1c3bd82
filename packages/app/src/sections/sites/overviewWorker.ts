/// <reference lib="webworker" />
import { keepOverview, keptSites } from '../../offline/keepOverview.ts';
import { SiteFinder } from './findSites.ts';
import { listNumbersOf } from './listNumbers.ts';
import type { OverviewBody } from './overview.ts';
import { type FromWorker, piece_sites, type ToWorker } from './overviewMessages.ts';

// The list of a country is some megabytes: it is read and searched here, so that the page never waits for it.
declare const self: DedicatedWorkerGlobalScope;

const finders = new Map<string, SiteFinder>();
const tell = (told: FromWorker) => self.postMessage(told);

async function load({ programmeId, ask, language, keepAs, form }: Extract<ToWorker, { kind: 'load' }>): Promise<void> {
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
  finders.set(keepAs, new SiteFinder(sites));
  tell({ kind: 'head', ask, head, count: sites.length });
  for (let at = 0; at < sites.length; at += piece_sites)
    tell({ kind: 'piece', ask, sites: sites.slice(at, at + piece_sites) });
  const { compare } = new Intl.Collator(language, { numeric: true });
  const numbers = listNumbersOf(sites, compare);
  tell({ kind: 'end', ask, numbers });
  await keepOverview(keepAs, form, head, sites, numbers);
}

/** What finds in a list; where it was read before this thread began, of what is kept of it. */
async function finderOf(keepAs: string): Promise<SiteFinder | null> {
  const known = finders.get(keepAs);
  if (known !== undefined) return known;
  const sites = await keptSites(keepAs);
  if (sites === null) return null;
  const made = new SiteFinder(sites);
  finders.set(keepAs, made);
  return made;
}

async function find({ ask, keepAs, text }: Extract<ToWorker, { kind: 'find' }>): Promise<void> {
  const finder = await finderOf(keepAs);
  tell({ kind: 'found', ask, places: finder?.find(text) ?? null });
}

self.addEventListener('message', ({ data }: MessageEvent<ToWorker>) => {
  void (data.kind === 'load' ? load(data) : find(data));
});
