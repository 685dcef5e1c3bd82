/// <reference lib="webworker" />
import type { PackedLegs, PackedRollout, TravelPair } from '@eavewell/engine';
import type { FromByHand, PlanAsked, ToByHand } from './byHandMessages.ts';
import { Evaluator, type Tried } from './evaluator.ts';

// A plan of a country is timed here, so that the page never waits for it.
declare const self: DedicatedWorkerGlobalScope;

/** Legs are asked for so many at a time at the most: the server takes no more. */
const most_legs = 20_000;
/** A question has legs fetched for it so often at the most: each time all that its plan lacks. */
const mostRounds = 4;

/** The numbers are of another state of the programme, or are not to be had. */
class NotHad extends Error {
  constructor(readonly kind: 'otherState' | 'noAnswer') {
    super(kind);
  }
}

let made: { readonly key: string; readonly of: PlanAsked; readonly evaluator: Promise<Evaluator> } | null = null;

const keyOf = ({ programmeId, stamp, plan }: PlanAsked) => JSON.stringify([programmeId, stamp, plan]);

const address = ({ programmeId }: PlanAsked, path: string) =>
  `/api/programmes/${encodeURIComponent(programmeId)}/rollout/${path}`;

async function bodyOf<T>(asked: Promise<Response>): Promise<T> {
  const answer = await asked.catch(() => null);
  if (answer?.status === 409) throw new NotHad('otherState');
  const body: unknown = answer?.ok ? await answer.json().catch(() => null) : null;
  if (body === null) throw new NotHad('noAnswer');
  return body as T;
}

async function makeEvaluator(of: PlanAsked): Promise<Evaluator> {
  const asked = fetch(address(of, `numbers?plan=${encodeURIComponent(of.plan.planId)}`));
  const { stamp, numbers } = await bodyOf<{ stamp: string; numbers: PackedRollout }>(asked);
  if (stamp !== of.stamp) throw new NotHad('otherState');
  return new Evaluator(numbers, of.plan);
}

/** The evaluator of a state: that of the last question, where it is of the same. */
function evaluatorOf(of: PlanAsked): Promise<Evaluator> {
  const key = keyOf(of);
  if (made?.key === key) return made.evaluator;
  const evaluator = makeEvaluator(of);
  made = { key, of, evaluator };
  // One that could not be made is not kept: the next question tries again.
  evaluator.catch(() => {
    if (made?.key === key) made = null;
  });
  return evaluator;
}

async function addLegs(evaluator: Evaluator, of: PlanAsked, pairs: readonly TravelPair[]): Promise<void> {
  for (let at = 0; at < pairs.length; at += most_legs) {
    const body = JSON.stringify({ stamp: of.stamp, pairs: pairs.slice(at, at + most_legs) });
    const headers = { 'content-type': 'application/json' };
    const { legs } = await bodyOf<{ legs: PackedLegs }>(
      fetch(address(of, `legs?plan=${encodeURIComponent(of.plan.planId)}`), { method: 'POST', headers, body }),
    );
    if (!evaluator.addLegs(legs)) throw new NotHad('otherState');
  }
}

async function answerOf<T>(evaluator: Evaluator, of: PlanAsked, ask: () => Tried<T>): Promise<T | null> {
  for (let round = 0; round < mostRounds; round++) {
    const tried = ask();
    if (tried.kind === 'answer') return tried.answer;
    if (tried.kind === 'unknown') return null;
    await addLegs(evaluator, of, tried.pairs);
  }
  throw new NotHad('noAnswer');
}

async function answered(asked: ToByHand): Promise<FromByHand> {
  const { ask, of, held } = asked;
  const evaluator = await evaluatorOf(of);
  if (asked.kind === 'ready') {
    if (held !== null) await addLegs(evaluator, of, evaluator.pairsOf(held));
    return { kind: 'ready', ask };
  }
  const { kind, place } = asked;
  if (kind === 'nearest') {
    const found = await answerOf(evaluator, of, () => evaluator.nearest(asked.held, place));
    return found === null ? { kind: 'unknown', ask } : { kind: 'nearest', ask, found };
  }
  const answer = await answerOf(evaluator, of, () => evaluator.become(asked.held, place, kind === 'whole'));
  return answer === null ? { kind: 'unknown', ask } : { kind: 'becomes', ask, answer };
}

self.addEventListener('message', ({ data }: MessageEvent<ToByHand>) => {
  answered(data).then(
    (told) => self.postMessage(told),
    (error: unknown) => {
      if (!(error instanceof NotHad)) console.error(error);
      const kind = error instanceof NotHad ? error.kind : 'noAnswer';
      self.postMessage({ kind, ask: data.ask } satisfies FromByHand);
    },
  );
});
