import type { AddressInfo } from 'node:net';
import { machineProblem } from '@eavewell/database';
import type { Checked, Problem } from '@eavewell/engine';
import { recordProblem } from '@eavewell/records';
import { type Keeping, keepingHere, keepingThread, Stopped, threadWork, type Work } from '@eavewell/work';
import type { FastifyInstance } from 'fastify';
import { Designs } from './designs/designs.ts';
import type { DesignDone } from './designs/designTask.ts';
import { buildApp } from './http/app.ts';
import { freshKeys, type Keys } from './http/guard.ts';
import { Reviews } from './imports/reviews.ts';
import { KeptExports } from './keptExports.ts';
import { Kits } from './kits/kits.ts';
import { computerClock } from './openProgramme.ts';
import { Overviews } from './overview.ts';
import { Programmes } from './programmes.ts';
import { FoundPlans } from './rollouts/foundPlans.ts';
import { RolloutPapers } from './rollouts/rolloutPapers.ts';
import { Rollouts } from './rollouts/rollouts.ts';
import { Searches } from './rollouts/searches.ts';
import { RunningTasks } from './runningTasks.ts';
import { servedDemo } from './servedDemo.ts';

/** How a server is to be started. */
export interface ServeAsked {
  /** The data folder; made where there is none. */
  readonly folder: string;
  /** 0: any that is free; null: the usual one, or where that is taken any that is free. */
  readonly port: number | null;
  readonly version: string;
  /** What the demo programme is called, where the folder has none; null: none is made. */
  readonly demoName: string | null;
  /** Who made it. */
  readonly by: string;
  /** The folder the pages for people were built into; null: there are none. */
  readonly pages?: string | null;
  onFault(error: unknown): void;
  /** Told of each design that is done. */
  onDesign?(done: DesignDone): void;
  /** Told what went wrong beside the requests, and the person can mend. */
  onProblem?(problem: Problem): void;
  /** An export, or a folder of exports, that a new data folder starts from; null or not given: none. */
  readonly from?: string | null;
  /** Where long work runs; threads where it is not given. */
  readonly work?: Work;
}

/** Where it listens unless told otherwise, so that a browser finds what it kept of the pages. Ours. */
const usualPort = 4783;

/** A server that runs. */
export interface Served {
  /** The address to open, with its key. */
  readonly address: string;
  readonly port: number;
  readonly programmes: number;
  close(): Promise<void>;
}

/** The built file a thread is started with, from the sources as from what is built. */
const threadFile = (name = 'thread') =>
  new URL(import.meta.url.endsWith('.ts') ? `../dist/${name}.js` : `./${name}.js`, import.meta.url);

/** Threads for imports and exports at a time. Ours. */
const look_threads = 2;

const refused = (problem: Problem) => ({ ok: false, problems: [problem] }) as const;

/**
 * Opens a data folder and answers on this computer alone. An empty folder gets the demo programme, whole or not at all.
 *
 * @param given - folder, port, version
 * @returns the address with its key, and how to end it
 * @problem database.in_use - another program has the folder open; and the other codes of Programmes.open
 * @problem export.folder_used - and the other codes of bringIn, where it is to start from an export
 * @problem server.port_taken - another program listens there
 * @definition ours: docs/decisions/0106-data-folder.md
 */
export async function serve(given: ServeAsked): Promise<Checked<Served>> {
  const asked = { ...given, onFault: (error: unknown) => tellFault(given, error) };
  const opened = await Programmes.open(asked.folder, computerClock);
  if (!opened.ok) return opened;
  const programmes = opened.value;
  const work = asked.work ?? threadWork(threadFile(), look_threads);
  // Designs have a thread of their own: one that takes minutes keeps no import waiting.
  const designWork = asked.work ?? threadWork(threadFile(), 1);
  const keeping = asked.work ? await asksHere() : keepingThread(threadFile('rollouts/rolloutThread'));
  const close = async () => {
    await keeping.close();
    await work.close();
    await designWork.close();
    await programmes.close();
  };
  const kept = keptBeside(programmes, work, asked);
  const brought = asked.from ? await programmes.bringIn(asked.from) : null;
  const made = brought ?? (await demoWhereEmpty(programmes, asked));
  if (!made.ok) {
    await close();
    return made;
  }
  const keys = freshKeys();
  let port = asked.port ?? usualPort;
  const threads = { others: work, design: designWork, keeping };
  const { app, designs, rollouts } = await built(programmes, threads, keys, asked, () => port);
  try {
    await listen(app, port, asked.port === null);
  } catch (error) {
    await app.close();
    await close();
    if ((error as NodeJS.ErrnoException).code !== 'EADDRINUSE') throw error;
    return refused(recordProblem('server.port_taken', {}, { value: String(port) }));
  }
  port = (app.server.address() as AddressInfo).port;
  const address = `http://127.0.0.1:${port}/open?key=${keys.address}`;
  const end = async () => {
    await app.close();
    await rollouts.close();
    await designs.close();
    await kept.close();
    await close();
  };
  void kept.begin();
  const problems = [...opened.problems, ...made.problems];
  return { ok: true, value: { address, port, programmes: made.value.programmes, close: end }, problems };
}

/** Rollouts in this thread; what they are made with is loaded then alone. */
const asksHere = async () => keepingHere((await import('./rollouts/rolloutAsks.ts')).rolloutAsks);

/** The server over the programmes, not listening yet. */
async function built(
  programmes: Programmes,
  work: { readonly others: Work; readonly design: Work; readonly keeping: Keeping },
  keys: Keys,
  asked: ServeAsked,
  port: () => number,
) {
  const { onFault, version, folder, pages = null } = asked;
  const tasks = new RunningTasks(programmes.derivedFolder('tasks'), work, computerClock.at);
  await tasks.open();
  const designs = new Designs(programmes, tasks, version);
  designs.onDone = (done) => asked.onDesign?.(done);
  const kits = new Kits(programmes, designs, work.others, version);
  const overviews = new Overviews();
  const searches = new Searches(tasks, computerClock.at, new FoundPlans(programmes.derivedFolder('found')));
  const rollouts = new Rollouts(programmes, designs, work.others, work.keeping, searches);
  const rolloutPapers = new RolloutPapers(rollouts, work.others);
  const reviews = new Reviews(programmes, tasks);
  const behind = { programmes, designs, kits, rollouts, rolloutPapers, overviews, reviews, tasks };
  const app = await buildApp({ ...behind, keys, version, pages, dataFolder: folder, onFault, port });
  return { app, designs, rollouts };
}

/** What went wrong beside the requests: what the machine refused is told as such, all else is our own fault. */
function tellFault({ folder, onProblem, onFault }: ServeAsked, error: unknown): void {
  // What was called off, as the program ends, is no fault of anybody's.
  if (error instanceof Stopped) return;
  const problem = machineProblem(error, folder);
  if (problem && onProblem) onProblem(problem);
  else onFault(error);
}

/** The exports that are kept by themselves beside the programmes. */
function keptBeside(programmes: Programmes, work: Work, asked: ServeAsked): KeptExports {
  const { database } = programmes;
  const { folder, onFault } = asked;
  const onProblem = (problem: Problem) => asked.onProblem?.(problem);
  const kept = new KeptExports({ database, work, folder, now: computerClock, onProblem, onFault });
  programmes.onKept = (programme) => kept.changed(programme);
  return kept;
}

/** Listens at a port; where another program has it and any will do, at one that is free. */
async function listen(app: FastifyInstance, port: number, isAnyGood: boolean): Promise<void> {
  const host = '127.0.0.1';
  try {
    await app.listen({ host, port });
  } catch (error) {
    if (!isAnyGood || (error as NodeJS.ErrnoException).code !== 'EADDRINUSE') throw error;
    await app.listen({ host, port: 0 });
  }
}

/** How many programmes there are, once the demo stands where there was none; one that was cut short is filled. */
async function demoWhereEmpty(
  programmes: Programmes,
  { demoName, by }: ServeAsked,
): Promise<Checked<{ readonly programmes: number }>> {
  const list = await programmes.list();
  const [first] = list;
  const found = list.length === 1 && first!.name === demoName ? await programmes.programme(first!.programmeId) : null;
  const isCutShort = found?.ok === true && found.value.records.length === 0;
  if (demoName === null || (list.length > 0 && !isCutShort))
    return { ok: true, value: { programmes: list.length }, problems: [] };
  const tables = servedDemo();
  const made = isCutShort
    ? await programmes.fill(found.value, by, tables, 'demo')
    : await programmes.make(demoName, by, tables, 'demo');
  return made.ok ? { ok: true, value: { programmes: 1 }, problems: [] } : made;
}
