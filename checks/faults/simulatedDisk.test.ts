import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { openDatabase } from '@eavewell/database';
import { seededDice } from '@eavewell/engine';
import { foldRecords, recordText } from '@eavewell/records';
import { strFromU8, unzipSync } from 'fflate';
import { expect, it } from 'vitest';
import { repository } from '../rules/repository.ts';
import { canTrace, type DiskEvent, FailingDisk, traced } from './tracedDisk.ts';

const isLong = process.env['EAVEWELL_SOAK'] === '1';
/** Programs whose writes are recorded, and how often the power is cut in each. */
const [programs, cutsEach, steps] = isLong ? [8, 250, 90] : [1, 60, 40];
/** Recording needs strace (Linux; apt-get install strace). The long form fails without it; the short one is told as skipped. */
const isHere = canTrace();

/** What stood at the end of a recorded program, and everything it asked of the disk. */
interface Recorded {
  readonly events: readonly DiskEvent[];
  readonly programmeId: string;
  readonly texts: readonly string[];
}

async function inRoom<T>(work: (room: string) => Promise<T>): Promise<T> {
  const room = mkdtempSync(join(tmpdir(), 'eavewell-disk-'));
  try {
    return await work(room);
  } finally {
    rmSync(room, { recursive: true, force: true });
  }
}

const textsIn = async (folder: string, programmeId: string): Promise<readonly string[] | string> => {
  const found = await openDatabase(folder);
  if (!found.ok) return found.problems[0]!.code;
  try {
    const kept = await found.value.records(programmeId);
    if (!kept.ok) return kept.problems[0]!.code;
    foldRecords(kept.value);
    return kept.value.map(recordText);
  } finally {
    await found.value.close();
  }
};

const known = new Map<number, Promise<Recorded>>();
/** Runs imports, edits, undo, redo and designs once for each seed, and records what they ask of the disk. */
function recorded(seed: number): Promise<Recorded> {
  const found = known.get(seed) ?? record(seed);
  known.set(seed, found);
  return found;
}

async function record(seed: number): Promise<Recorded> {
  return inRoom(async (room) => {
    const writer = join(repository, 'checks/faults/diskWriter.mjs');
    const command = [process.execPath, writer, room, String(seed), String(steps), seed % 2 === 0 ? 'ended' : 'gone'];
    const events = traced(room, command);
    const made = events.find((event) => event.kind === 'answered');
    const programmeId = made?.kind === 'answered' ? made.text.replace('made ', '') : '';
    const texts = await textsIn(join(room, 'data'), programmeId);
    if (typeof texts === 'string') throw new Error(texts);
    expect(texts.length).toBeGreaterThan(steps / 2);
    return { events, programmeId, texts };
  });
}

interface Counts {
  cuts: number;
  lost: number;
  unansweredThere: number;
  exportsSeen: number;
}

/** Cuts the power so often, at seeded events, and counts what is lost; what is half there fails at once. */
async function cut(
  { events, programmeId, texts }: Recorded,
  cuts: number,
  seed: number,
  counts: Counts,
  isDeaf?: (path: string) => boolean,
): Promise<void> {
  const below = seededDice(seed).next;
  const disk = new FailingDisk(isDeaf);
  const places = Array.from({ length: cuts }, () => 1 + below(events.length)).sort((a, b) => a - b);
  let [taken, answered, isMade] = [0, 0, false];
  for (const place of places) {
    for (; taken < place; taken++) {
      const event = events[taken]!;
      disk.take(event);
      if (event.kind !== 'answered') continue;
      isMade = true;
      if (event.text.startsWith('version')) answered = Number(event.text.replace('version ', ''));
    }
    await inRoom(async (room) => {
      disk.cutInto(room, below);
      const there = await textsIn(join(room, 'data'), programmeId);
      counts.cuts++;
      if (there === 'database.programme_unknown' && !isMade) return;
      if (typeof there === 'string' || there.length < answered) {
        counts.lost++;
        if (!isDeaf)
          throw new Error(
            `at event ${place} of seed ${seed}: ${answered} answered, ${there.length} there: ${there.slice(0, 40)}`,
          );
        return;
      }
      // Whole records, those of the program, in its order; at most one more than was answered.
      expect(there).toEqual(texts.slice(0, there.length));
      expect(there.length).toBeLessThanOrEqual(answered + 1);
      if (there.length > answered) counts.unansweredThere++;
      counts.exportsSeen += exportsWhole(join(room, 'data', 'exports', programmeId), there.length);
    });
  }
}

/** Every export under its name is whole, and holds nothing that the database does not. */
function exportsWhole(own: string, most: number): number {
  if (!existsSync(own)) return 0;
  const zips = readdirSync(own).filter((name) => name.endsWith('.zip'));
  for (const name of zips) {
    const lines = strFromU8(unzipSync(readFileSync(join(own, name)))['records.jsonl']!)
      .trimEnd()
      .split('\n');
    expect([name, lines.length]).toEqual([name, Number(/-(\d+)\.zip/.exec(name)![1])]);
    expect(lines.length).toBeLessThanOrEqual(most);
  }
  return zips.length;
}

const nothing = (): Counts => ({ cuts: 0, lost: 0, unansweredThere: 0, exportsSeen: 0 });

it.skipIf(!isHere && !isLong)(
  `the power cut ${programs * cutsEach} times while imports, edits, undo, redo and designs write (needs strace): nothing answered is lost`,
  async () => {
    expect(isHere, 'strace is needed: apt-get install strace').toBe(true);
    const counts = nothing();
    for (let seed = 1; seed <= programs; seed++) await cut(await recorded(seed), cutsEach, seed, counts);
    console.log(`cuts of the power: ${JSON.stringify(counts)}`);
    expect(counts.cuts).toBe(programs * cutsEach);
    expect(counts.lost).toBe(0);
    expect(counts.unansweredThere).toBeGreaterThan(0);
    expect(counts.exportsSeen).toBeGreaterThan(0);
  },
  3_600_000,
);

it.skipIf(!isHere && !isLong)(
  'would see what is lost where the journal is not synced before the answer (needs strace)',
  async () => {
    expect(isHere, 'strace is needed: apt-get install strace').toBe(true);
    const counts = nothing();
    await cut(await recorded(1), 60, 1, counts, (path) => path.endsWith('-wal'));
    expect(counts.lost).toBeGreaterThan(3);
  },
  600_000,
);
