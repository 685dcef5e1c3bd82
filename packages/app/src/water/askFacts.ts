import { KeptFacts, type ReadingsKept } from '../offline/keepFacts.ts';
import { type FactsAnswer, factsOfAnswer, type OneSite, type ReadingsAnswer } from './factsOfAnswer.ts';

/** Whose facts are asked for. */
export interface FactsWanted {
  readonly programmeId: string;
  readonly siteId: string;
  /** The form of answers these pages were built for. */
  readonly form: string;
  readonly language: string;
}

/**
 * The facts of a site, or why there are none. `unreachable`: the program does not answer; `refused`: it does not know this page
 * any more, or says what is wrong; `notYet`: it is still judging the sites, and tells when it is done; `broken`: what it sent cannot be read.
 */
export type FactsAsked =
  | {
      readonly problem: null;
      readonly one: OneSite;
      /** Another whenever anything of it is another. */
      readonly tag: string;
      /** When it was read [ms since 1970]. */
      readonly at: number;
      /** It is what this browser kept: the program was not there. */
      readonly isKept: boolean;
    }
  | { readonly problem: 'unreachable' | 'refused' | 'notYet' | 'broken'; readonly body: unknown };

type Answered = { readonly status: number; readonly body: unknown } | null;

/** Statuses of the program: this page is not known, there is no design yet. */
const [notKnown, notJudged, notThere] = [403, 409, 404] as const;

/** Null where the program does not answer. */
async function answered(address: string, language: string): Promise<Answered> {
  try {
    const answer = await fetch(address, { headers: { accept: 'application/json', 'accept-language': language } });
    return { status: answer.status, body: await answer.json().catch(() => null) };
  } catch {
    return null;
  }
}

/**
 * All that one site is judged by: of the program, or where that is away what this browser keeps of a site that was looked at before.
 * Readings are asked for once for each content.
 *
 * @param wanted - programme, site, form and language
 * @returns the facts, decoded, or why there are none
 */
export async function askFacts(wanted: FactsWanted): Promise<FactsAsked> {
  const kept = new KeptFacts(wanted.programmeId, wanted.form);
  for (const isLast of [false, true]) {
    const found = await askOnce(wanted, kept);
    // The readings were changed between the two questions: the facts name others by now.
    if (found !== 'changed') return found;
    if (isLast) break;
  }
  return { problem: 'notYet', body: null };
}

async function askOnce(wanted: FactsWanted, kept: KeptFacts): Promise<FactsAsked | 'changed'> {
  const { programmeId, siteId, language } = wanted;
  const address = `/api/programmes/${encodeURIComponent(programmeId)}/sites/${encodeURIComponent(siteId)}/facts`;
  const answer = await answered(address, language);
  if (answer === null) return (await asKept(siteId, kept)) ?? { problem: 'unreachable', body: null };
  const { status, body } = answer;
  if (status === notKnown) return (await asKept(siteId, kept)) ?? { problem: 'refused', body };
  if (status === notJudged) return { problem: 'notYet', body };
  if (status >= 400) return { problem: 'refused', body };
  if (body === null) return { problem: 'broken', body };
  const facts = body as FactsAnswer;
  const readings = new Map<string, ReadingsAnswer>();
  const fresh: [string, ReadingsKept][] = [];
  for (const { gaugeId, readings: at } of facts.gauges) {
    if (at === null) continue;
    const read = await readingsAt({ gaugeId, ...at }, language, kept);
    if (read === 'changed') return 'changed';
    if (!('readings' in read)) return read;
    readings.set(gaugeId, read.readings);
    if (!read.isKept) fresh.push([gaugeId, { of: at.of, readings: read.readings }]);
  }
  const found = decoded(facts, readings, { at: Date.now(), isKept: false });
  if (found.problem !== null) return found;
  for (const [gaugeId, read] of fresh) await kept.keepReadings(gaugeId, read);
  await kept.keepSite(siteId, facts);
  return found;
}

interface ReadingsWanted {
  readonly gaugeId: string;
  readonly of: string;
  readonly address: string;
}

async function readingsAt({ gaugeId, of, address }: ReadingsWanted, language: string, kept: KeptFacts) {
  const known = await kept.readings(gaugeId);
  if (known?.data.of === of) return { readings: known.data.readings, isKept: true };
  const answer = await answered(address, language);
  if (answer === null) return { problem: 'unreachable', body: null } as const;
  const { status, body } = answer;
  if (status === notThere || status === notJudged) return 'changed';
  if (status >= 400) return { problem: 'refused', body } as const;
  if (body === null) return { problem: 'broken', body } as const;
  return { readings: body as ReadingsAnswer, isKept: false };
}

/** The site as it was kept; null where it was not, or where its readings are others by now. */
async function asKept(siteId: string, kept: KeptFacts): Promise<FactsAsked | null> {
  const found = await kept.site(siteId);
  if (found === null) return null;
  const readings = new Map<string, ReadingsAnswer>();
  for (const { gaugeId, readings: at } of found.data.gauges) {
    if (at === null) continue;
    const read = await kept.readings(gaugeId);
    if (read?.data.of !== at.of) return null;
    readings.set(gaugeId, read.data.readings);
  }
  const one = decoded(found.data, readings, { at: found.at, isKept: true });
  return one.problem === null ? one : null;
}

function decoded(
  facts: FactsAnswer,
  readings: ReadonlyMap<string, ReadingsAnswer>,
  when: { readonly at: number; readonly isKept: boolean },
): FactsAsked {
  // Versions grow with every change of anything: what is judged by is the rest.
  const { version: _, designVersion: _d, ...content } = facts;
  try {
    return { problem: null, one: factsOfAnswer(facts, readings), tag: JSON.stringify(content), ...when };
  } catch {
    return { problem: 'broken', body: facts };
  }
}
