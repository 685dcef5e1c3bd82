/// <reference lib="webworker" />
import { keepOverview, keptOverview } from '../../offline/keepOverview.ts';
import { SiteFinder } from './findSites.ts';
import type { OverviewBody } from './overview.ts';
import type { FromWorker, ToWorker } from './overviewMessages.ts';
import { handedOver, packedOf, sitesOf } from './overviewPacked.ts';

// The list of a country is some megabytes: it is read and searched here, so that the page never waits for it.
declare const self: DedicatedWorkerGlobalScope;

const finders = new Map<string, SiteFinder>();
const tell = (told: FromWorker, given: Transferable[] = []) => self.postMessage(told, given);

async function load({ programmeId, ask, language, keepAs, form }: Extract<ToWorker, { kind: 'load' }>): Promise<void> {
  let answer: Response;
  try {
    const path = `/api/programmes/${encodeURIComponent(programmeId)}/overview`;
    answer = await fetch(path, { headers: { accept: 'application/json', 'accept-language': language } });
  } catch {
    return tell({ kind: 'unreachable', ask });
  }
  const body = (await answer.json().catch(() => null)) as OverviewBody | null;
  if (!answer.ok || body === null) return tell({ kind: 'refused', ask, status: answer.status, body });
  const { compare } = new Intl.Collator(language, { numeric: true });
  const packed = packedOf(body, compare);
  // One for the page, given away; one to be kept.
  const given = structuredClone(packed);
  tell({ kind: 'read', ask, packed: given }, handedOver(given));
  finders.set(keepAs, new SiteFinder(body.sites));
  await keepOverview(keepAs, form, packed);
}

/** What finds in a list; where it was read before this thread began, of what is kept of it. */
async function finderOf(keepAs: string, form: string): Promise<SiteFinder | null> {
  const known = finders.get(keepAs);
  if (known !== undefined) return known;
  const packed = await keptOverview(keepAs, form);
  if (packed === null) return null;
  const made = new SiteFinder(sitesOf(packed));
  finders.set(keepAs, made);
  return made;
}

async function find({ ask, keepAs, form, text }: Extract<ToWorker, { kind: 'find' }>): Promise<void> {
  const finder = await finderOf(keepAs, form);
  tell({ kind: 'found', ask, places: finder?.find(text) ?? null });
}

self.addEventListener('message', ({ data }: MessageEvent<ToWorker>) => {
  void (data.kind === 'load' ? load(data) : find(data));
});
