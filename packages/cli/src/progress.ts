import type { Surroundings } from './print/terminal.ts';

/** Nothing is said before this [ms]. */
const patience_ms = 1000;
/** How often a line is rewritten on a terminal, and how often one is added elsewhere [ms]. */
const rewrite_ms = 150;
const repeat_ms = 15_000;

/** Says on stderr what is being done, once it takes longer than a second. Never on stdout. */
export class Progress {
  readonly #stderr: Surroundings['stderr'];
  readonly #started = Date.now();
  #lastSaid = 0;
  #shown = false;

  constructor(stderr: Surroundings['stderr']) {
    this.#stderr = stderr;
  }

  /** What is being done now; said only when it is time. */
  at(text: () => string): void {
    const now = Date.now();
    if (now - this.#started < patience_ms) return;
    const onTerminal = this.#stderr.isTTY === true;
    if (this.#lastSaid > 0 && now - this.#lastSaid < (onTerminal ? rewrite_ms : repeat_ms)) return;
    this.#lastSaid = now;
    this.#shown = true;
    this.#stderr.write(onTerminal ? `\r\u001b[K${text()}` : `${text()}\n`);
  }

  /** Wipes the line, before anything else is printed. */
  done(): void {
    if (this.#shown && this.#stderr.isTTY === true) this.#stderr.write('\r\u001b[K');
    this.#shown = false;
  }
}
