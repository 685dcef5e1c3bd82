import { get, set } from 'idb-keyval';
import { answersStore } from '../offline/keepOverview.ts';
import { type FactsAnswer, factsOfAnswer, type OneSite, type ReadingsAnswer } from './factsOfAnswer.ts';
import type { ToWater, WaterProblem } from './waterMessages.ts';

/** The facts of a site with all it rests on, or why there are none. */
export type FactsLoaded =
  | {
      readonly problem: null;
      readonly found: OneSite;
      /** Another text whenever anything of it is other, the versions aside. */
      readonly tag: string;
    }
  | { readonly problem: WaterProblem; readonly body: unknown };

/** What the program answered, or what this browser kept of it; else why there is none. */
type Answered<T> =
  | { readonly problem: null; readonly data: T }
  | { readonly problem: WaterProblem; readonly body: unknown };

type Asked = Extract<ToWater, { kind: 'load' }>;

/** Is an answer not there because the site is not judged yet, or not there any more? */
const notYet_status = [404, 409, 503];

/**
 * Reads the facts of a site and the readings of its gauges from the program; while it does not answer, from what this browser kept
 * of them when they were read last. Readings that are kept under their name are not asked for again.
 *
 * @param asked - the programme, the site, the form answers have
 * @returns the programme of the one site, or why there is none
 */
export async function loadFacts(asked: Asked): Promise<FactsLoaded> {
  const { programmeId, siteId } = asked;
  const path = `/api/programmes/${encodeURIComponent(programmeId)}/sites/${encodeURIComponent(siteId)}/facts`;
  const facts = await answerAt<FactsAnswer>(path, asked, false);
  if (facts.problem !== null) return facts;
  const readings = new Map<string, ReadingsAnswer>();
  const wanted = facts.data.gauges.flatMap(({ gaugeId, readings: at }) => (at === null ? [] : [{ gaugeId, at }]));
  const read = await Promise.all(wanted.map(({ at }) => answerAt<ReadingsAnswer>(at.address, asked, true)));
  for (const [index, one] of read.entries()) {
    if (one.problem !== null) return one;
    readings.set(wanted[index]!.gaugeId, one.data);
  }
  const tag = JSON.stringify({ ...facts.data, version: 0, designVersion: 0 });
  return { problem: null, found: factsOfAnswer(facts.data, readings), tag };
}

/** Under what an answer is kept in this browser. */
const nameOf = (path: string) => `water ${path}`;

async function answerAt<T>(path: string, { form, language }: Asked, isForGood: boolean): Promise<Answered<T>> {
  const kept = isForGood ? await keptAt<T>(path, form) : null;
  if (kept !== null) return { problem: null, data: kept };
  let answer: Response;
  try {
    answer = await fetch(path, { headers: { accept: 'application/json', 'accept-language': language } });
  } catch {
    return (await keptOr<T>(path, form)) ?? { problem: 'unreachable', body: null };
  }
  const data: unknown = await answer.json().catch(() => null);
  if (answer.ok && data !== null) {
    const at = Date.now();
    // A browser that keeps nothing is no fault.
    await set(nameOf(path), { form, at, data }, answersStore()).catch(() => undefined);
    return { problem: null, data: data as T };
  }
  if (answer.status === 403) return (await keptOr<T>(path, form)) ?? { problem: 'refused', body: data };
  return { problem: notYet_status.includes(answer.status) ? 'notYet' : 'broken', body: data };
}

async function keptOr<T>(path: string, form: string): Promise<Answered<T> | null> {
  const data = await keptAt<T>(path, form);
  return data === null ? null : { problem: null, data };
}

async function keptAt<T>(path: string, form: string): Promise<T | null> {
  const kept = await get<{ readonly form: string; readonly data: T }>(nameOf(path), answersStore()).catch(
    () => undefined,
  );
  return kept?.form === form ? kept.data : null;
}
