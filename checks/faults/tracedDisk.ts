import { spawnSync } from 'node:child_process';
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';

/** What a program asked of the disk, in order. Paths are within the room it worked in. */
export type DiskEvent =
  | { readonly kind: 'opened'; readonly path: string; readonly isMade: boolean; readonly isEmptied: boolean }
  | { readonly kind: 'written'; readonly path: string; readonly at: number; readonly bytes: Buffer }
  | { readonly kind: 'cut'; readonly path: string; readonly length: number }
  | { readonly kind: 'synced'; readonly path: string }
  | { readonly kind: 'renamed'; readonly path: string; readonly to: string }
  | { readonly kind: 'removed'; readonly path: string }
  | { readonly kind: 'answered'; readonly text: string };

/** The file a program notes its answers in: no part of the disk that fails. */
const answersFile = 'answers.txt';

const calls = [
  ...['openat', 'pwrite64', 'write', 'writev', 'pwritev', 'ftruncate', 'truncate', 'fsync', 'fdatasync'],
  ...['rename', 'renameat', 'renameat2', 'unlink', 'unlinkat', 'fallocate', 'copy_file_range', 'sendfile'],
];

/** Can this system record what a program asks of the disk? */
export function canTrace(): boolean {
  return spawnSync('strace', ['-f', '-e', 'trace=fsync', 'true']).status === 0;
}

const textOf = (hex: string) => Buffer.from(hex.replaceAll('\\x', ''), 'hex');

/** Runs a program and gives what it asked of the disk within its room. Needs strace. */
export function traced(room: string, command: readonly string[]): readonly DiskEvent[] {
  const traces = join(room, 'traces');
  mkdirSync(traces);
  const options = ['-ff', '-ttt', '-y', '-xx', '-s', '100000000', '--seccomp-bpf', '-e', `trace=${calls.join()}`];
  const ran = spawnSync('strace', [...options, '-o', join(traces, 't'), ...command], { encoding: 'utf8' });
  if (ran.status !== 0) throw new Error(`the program failed under strace: ${ran.stderr.slice(-2000)}`);
  const lines = readdirSync(traces).flatMap((name) => readFileSync(join(traces, name), 'latin1').split('\n'));
  const timed = lines.flatMap((line) => {
    const [, time, call, rest, result] = /^(\d+\.\d+) (\w+)\((.*)\) += (-?\d+)/.exec(line) ?? [];
    return time === undefined || Number(result) < 0 ? [] : [{ time: Number(time), call: call!, rest: rest!, line }];
  });
  timed.sort((a, b) => a.time - b.time);
  const positions = new Map<string, number>();
  return timed.flatMap((one) => eventOf(one, `${room}/`, positions));
}

interface Call {
  readonly call: string;
  readonly rest: string;
  readonly line: string;
}

/** Paths and texts of a call, as they stand in it. */
function partsOf({ rest, line }: Call): { paths: string[]; texts: Buffer[] } {
  const paths = [...rest.matchAll(/<((?:\\x[0-9a-f]{2})+)>/g)].map(([, hex]) => textOf(hex!).toString());
  const texts = [...rest.matchAll(/"((?:\\x[0-9a-f]{2})*)"/g)].map(([, hex]) => textOf(hex!));
  if (/"\.\.\./.test(rest)) throw new Error(`cut short: ${line.slice(0, 200)}`);
  return { paths, texts };
}

function eventOf(one: Call, room: string, positions: Map<string, number>): readonly DiskEvent[] {
  const { call, rest } = one;
  // Most lines are of other files and sockets.
  const { paths, texts } = partsOf(one);
  const named =
    call.startsWith('open') || call.startsWith('rename') || call.startsWith('unlink') || call === 'truncate';
  const asked = named ? texts.map(String) : paths;
  const [path, to] = asked.map((name) => (name.startsWith(room) ? name.slice(room.length) : null));
  if (path === null || path === undefined || isOutside(path)) return [];
  switch (call) {
    case 'openat': {
      const [isMade, isEmptied] = [rest.includes('O_CREAT'), rest.includes('O_TRUNC')];
      if (isMade || isEmptied) positions.set(path, 0);
      return [{ kind: 'opened', path, isMade, isEmptied }];
    }
    case 'write': {
      const [bytes] = texts as [Buffer];
      if (path === answersFile) return [{ kind: 'answered', text: bytes.toString().trim() }];
      const at = positions.get(path) ?? 0;
      positions.set(path, at + bytes.length);
      return [{ kind: 'written', path, at, bytes }];
    }
    case 'pwrite64': {
      const at = Number(/, (\d+)$/.exec(rest)![1]);
      return [{ kind: 'written', path, at, bytes: texts[0]! }];
    }
    case 'ftruncate':
      return [{ kind: 'cut', path, length: Number(/, (\d+)$/.exec(rest)![1]) }];
    case 'fsync':
    case 'fdatasync':
      return [{ kind: 'synced', path }];
    case 'rename':
    case 'renameat':
    case 'renameat2':
      return [{ kind: 'renamed', path, to: to! }];
    case 'unlink':
    case 'unlinkat':
      return [{ kind: 'removed', path }];
    default:
      throw new Error(`not understood: ${call} of ${path}`);
  }
}

/** Nothing of these counts after a restart: what passes through, the lock, and the index of the journal, which is made anew. */
const isOutside = (path: string) => /^traces\/|^data\/passing\/|^data\/in-use|-shm$|ended\.txt$/.test(path);

interface File {
  durable: Buffer;
  /** What was asked since it was last wholly on the disk. */
  waiting: Exclude<DiskEvent, { kind: 'answered' | 'synced' | 'renamed' | 'removed' }>[];
}

const sector = 512;

function grown(bytes: Buffer, length: number): Buffer {
  return bytes.length >= length ? bytes : Buffer.concat([bytes, Buffer.alloc(length - bytes.length)]);
}

/**
 * A disk that keeps what it was asked to keep: what is in a file counts once the file was synced, its name once its folder was.
 * Of all else, after a cut of the power, any sector may be there or not, and the names up to any one.
 */
export class FailingDisk {
  private readonly files = new Map<string, File>();
  private durableNames = new Map<string, File>();
  private readonly waitingNames: ((names: Map<string, File>) => void)[] = [];
  private readonly foldersOfNames: string[] = [];
  /** Syncs this disk takes no notice of: to see that they matter. */
  private readonly isDeaf: (path: string) => boolean;

  constructor(isDeaf: (path: string) => boolean = () => false) {
    this.isDeaf = isDeaf;
  }

  take(event: DiskEvent): void {
    if (event.kind === 'answered') return;
    const { path } = event;
    const file = this.files.get(path);
    if (event.kind === 'synced') this.sync(path, file);
    else if (event.kind === 'renamed') this.rename(path, event.to, file);
    else if (event.kind === 'removed') {
      this.files.delete(path);
      this.named(path, (names) => names.delete(path));
    } else if (event.kind === 'opened' && !file) {
      if (event.isMade) this.make(path);
    } else if (event.kind !== 'opened' || event.isEmptied) {
      if (!file) throw new Error(`written before it was made: ${path}`);
      file.waiting.push(event);
    }
  }

  private make(path: string): void {
    const made: File = { durable: Buffer.alloc(0), waiting: [] };
    this.files.set(path, made);
    this.named(path, (names) => names.set(path, made));
  }

  private rename(path: string, to: string, file: File | undefined): void {
    if (!file) throw new Error(`renamed before it was made: ${path}`);
    this.files.delete(path);
    this.files.set(to, file);
    this.named(path, (names) => {
      names.delete(path);
      names.set(to, file);
    });
  }

  private named(path: string, change: (names: Map<string, File>) => void): void {
    this.waitingNames.push(change);
    this.foldersOfNames.push(dirname(path));
  }

  private sync(path: string, file: File | undefined): void {
    if (this.isDeaf(path)) return;
    if (file) {
      file.durable = after(file, () => true, 0);
      file.waiting = [];
      return;
    }
    const kept = this.foldersOfNames.map((folder) => folder === path);
    for (const [i, isKept] of kept.entries()) if (isKept) this.waitingNames[i]!(this.durableNames);
    for (let i = kept.length - 1; i >= 0; i--) {
      if (!kept[i]) continue;
      this.waitingNames.splice(i, 1);
      this.foldersOfNames.splice(i, 1);
    }
  }

  /** Writes what a disk may hold when the power goes now. */
  cutInto(folder: string, below: (n: number) => number): void {
    const names = new Map(this.durableNames);
    for (const change of this.waitingNames.slice(0, below(this.waitingNames.length + 1))) change(names);
    const style = below(4);
    const isThere = () => (style === 0 ? false : style === 1 ? true : below(2) === 0);
    for (const [path, file] of names) {
      const to = join(folder, path);
      mkdirSync(dirname(to), { recursive: true });
      writeFileSync(to, after(file, isThere, style === 3 ? below(file.waiting.length + 1) : file.waiting.length));
    }
  }
}

/** A file with some of what waits: so many of the first wholly, the sectors of the others where they are there. */
function after(file: File, isThere: () => boolean, whole: number): Buffer {
  let bytes: Buffer = Buffer.from(file.durable);
  for (const [i, event] of file.waiting.entries()) {
    const isSure = i < whole;
    if (event.kind === 'opened') {
      if (isSure || isThere()) bytes = Buffer.alloc(0);
    } else if (event.kind === 'cut') {
      if (isSure || isThere()) bytes = Buffer.from(grown(bytes, event.length).subarray(0, event.length));
    } else {
      for (let from = 0; from < event.bytes.length; ) {
        const length = Math.min(sector - ((event.at + from) % sector), event.bytes.length - from);
        if (isSure || isThere()) {
          bytes = grown(bytes, event.at + from + length);
          event.bytes.copy(bytes, event.at + from, from, from + length);
        }
        from += length;
      }
    }
  }
  return bytes;
}
