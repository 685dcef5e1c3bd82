/// <reference lib="webworker" />
import { loadLanguage } from '@eavewell/words';
import { askFacts } from './askFacts.ts';
import { Judging } from './judging.ts';
import { SiteJudge } from './siteJudge.ts';
import type { FromWater, ToWater } from './waterMessages.ts';

// A site is judged here, so that the page never waits for it.
declare const self: DedicatedWorkerGlobalScope;

const channel = new MessageChannel();
const turns: (() => void)[] = [];
channel.port1.onmessage = () => turns.shift()?.();

const judging = new Judging(
  {
    tell: (told, transfer = []) => self.postMessage(told, [...transfer]),
    turn: () =>
      new Promise((resolve) => {
        turns.push(resolve);
        channel.port2.postMessage(null);
      }),
  },
  loadLanguage,
);
const tell = (told: FromWater) => self.postMessage(told);

/** What was read last, as text: the same again changes nothing. */
let known: string | null = null;
/** A draft was kept, and the program has not judged the site with it yet. */
let isAhead = false;
/** Questions wait until the facts are there. */
let loading: Promise<void> = Promise.resolve();

async function load(asked: Extract<ToWater, { kind: 'load' }>): Promise<void> {
  const { ask, siteId } = asked;
  const loaded = await askFacts(asked);
  if (loaded.problem !== null) return tell({ kind: 'notLoaded', ask, problem: loaded.problem, body: loaded.body });
  const { version, designVersion } = loaded.one;
  // What the program still tells of before a draft was kept is older than what is judged here.
  const isBehind = isAhead && designVersion < version;
  const isSame = judging.judge !== null && (isBehind || known === loaded.tag);
  if (!isBehind) [known, isAhead] = [loaded.tag, false];
  if (!isSame) judging.judge = new SiteJudge(loaded.one.facts, siteId, loaded.one);
  tell({ kind: 'loaded', ask, site: judging.judge!.site, isSame });
}

async function hear(told: ToWater): Promise<void> {
  if (told.kind === 'load') {
    loading = load(told);
    return loading;
  }
  await loading;
  switch (told.kind) {
    case 'facts':
      judging.judge = new SiteJudge(told.facts, told.siteId);
      known = null;
      return tell({ kind: 'loaded', ask: told.ask, site: judging.judge.site, isSame: false });
    case 'judge':
      return judging.answer(told);
    case 'remedies':
      return judging.mend(told);
    case 'drafted':
      return judging.keep(told);
    case 'settle':
      [known, isAhead] = [null, true];
      return judging.judge?.settle(told.site);
  }
}

self.addEventListener('message', ({ data }: MessageEvent<ToWater>) => {
  // What fails in a promise is a fault of ours: it is told as every other is, so that the page says so instead of waiting.
  hear(data).catch((error: unknown) => {
    setTimeout(() => {
      throw error;
    });
  });
});
