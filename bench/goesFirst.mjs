// On a machine that others use as well: threads of a browser go before those of others while it is measured. It needs root, on Linux.
import { readdirSync, readFileSync } from 'node:fs';
import { setPriority } from 'node:os';

/** As `nice` counts: below 0 goes before others. */
const first = -15;

/** Processes by their parent. */
function children() {
  const of = new Map();
  for (const pid of readdirSync('/proc').filter((name) => /^\d+$/.test(name))) {
    try {
      const parent = Number(/\) \S (\d+)/.exec(readFileSync(`/proc/${pid}/stat`, 'utf8'))[1]);
      of.set(parent, [...(of.get(parent) ?? []), Number(pid)]);
    } catch {
      // It ended while it was looked at.
    }
  }
  return of;
}

/**
 * Puts all threads of a process and of those it began before others, and again every so often, as a browser sets its own.
 *
 * @param pid - the process
 * @returns ends it
 */
export function goesFirst(pid) {
  const put = () => {
    const of = children();
    const all = [pid];
    for (const one of all) all.push(...(of.get(one) ?? []));
    for (const one of all) {
      try {
        for (const thread of readdirSync(`/proc/${one}/task`)) setPriority(Number(thread), first);
      } catch {
        // It ended while it was looked at.
      }
    }
  };
  put();
  const again = setInterval(put, 150);
  return () => clearInterval(again);
}
