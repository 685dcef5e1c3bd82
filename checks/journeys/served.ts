import { type ChildProcess, spawn } from 'node:child_process';
import { cp, mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { repository } from '../rules/repository.ts';

const command = join(repository, 'packages/cli/bin/eavewell.js');

/** How long the program may take until it listens [ms]; with another build beside it, some seconds are usual. */
const patience_ms = 60_000;

/** The program itself, as `npm start` runs it, on a data folder of its own. */
export class Served {
  private child: ChildProcess | null = null;
  private said = '';
  private faults = '';
  /** The address to open, with its key. */
  address = '';

  private constructor(
    /** Its data folder. */
    readonly folder: string,
    private readonly room: string,
  ) {}

  /**
   * Starts the program on a data folder of its own and any free port.
   *
   * @param from - a data folder to begin with a copy of; null: an empty one
   */
  static async begin(from: string | null): Promise<Served> {
    const room = await mkdtemp(join(tmpdir(), 'eavewell-journey-'));
    const served = new Served(join(room, 'data'), room);
    if (from !== null) await cp(from, served.folder, { recursive: true, preserveTimestamps: true });
    await served.start();
    return served;
  }

  /** One that somebody else started, and stops: it is only asked. */
  static at(address: string): Served {
    const served = new Served('', '');
    served.address = address;
    return served;
  }

  /** `http://127.0.0.1:PORT`. */
  get origin(): string {
    return new URL(this.address).origin;
  }

  get port(): number {
    return Number(new URL(this.address).port);
  }

  /** What the program printed. */
  get printed(): string {
    return this.said;
  }

  /** Starts the program anew, on the same data folder and, where it ran before, the same port. */
  async start(): Promise<void> {
    const port = this.address === '' ? 0 : this.port;
    const args = [command, 'serve', '--data', this.folder, '--port', String(port)];
    const child = spawn(process.execPath, args, { env: { ...process.env, LANG: 'C.UTF-8', NO_COLOR: '1' } });
    this.child = child;
    this.said = '';
    child.stderr.on('data', (chunk: Buffer) => {
      this.faults += chunk.toString('utf8');
    });
    this.address = await new Promise<string>((resolve, reject) => {
      const late = setTimeout(() => reject(new Error(`serve did not listen: ${this.said}${this.faults}`)), patience_ms);
      child.stdout.on('data', (chunk: Buffer) => {
        this.said += chunk.toString('utf8');
        const found = /^http:\S+\/open\?key=\S+$/m.exec(this.said);
        if (!found) return;
        clearTimeout(late);
        resolve(found[0]);
      });
      child.once('exit', (code) => reject(new Error(`serve ended with ${code}: ${this.said}${this.faults}`)));
    });
  }

  /** Ends the program as Ctrl+C does, and waits until it has ended. */
  async stop(): Promise<void> {
    const { child } = this;
    this.child = null;
    if (child === null || child.exitCode !== null) return;
    const ended = new Promise((resolve) => child.once('exit', resolve));
    child.kill('SIGINT');
    await ended;
  }

  /** Ends the program and removes its data folder. What it said of faults of its own is thrown. */
  async end(): Promise<void> {
    await this.stop();
    await rm(this.room, { recursive: true, force: true });
    if (this.faults !== '') throw new Error(`The program told of a fault: ${this.faults}`);
  }
}
