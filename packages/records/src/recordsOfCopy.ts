import type { ChangeRecord } from './changeRecord.ts';

/** The longest name a device may have. */
const longestName = 64;

/**
 * What does the history of a programme come to in a second programme made of it? The same records with the same people, days and
 * changes, each under a name of its own, so that what is exchanged later is never taken for the other's.
 *
 * @param records - all records of the programme
 * @param mark - names the copy, the same for no two [text]: letters and figures
 * @returns the records of the copy, in the same order
 * @law folded, they give the same facts; no record of the copy is one of the programme's
 * @definition ours: docs/decisions/0135-a-second-programme-beside.md
 */
export function recordsOfCopy(records: readonly ChangeRecord[], mark: string): readonly ChangeRecord[] {
  const devices = [...new Set(records.map(({ device }) => device))].sort();
  const named = devices.map((device) => `${mark}-${device}`);
  // Devices decide between records of one clock, by the order of their names: the names of the copy keep that order.
  const areShort = named.every((name) => name.length <= longestName);
  const width = String(devices.length).length;
  const ranked = devices.map((_, rank) => `${mark}-${String(rank + 1).padStart(width, '0')}`);
  const names = new Map(devices.map((device, i) => [device, (areShort ? named : ranked)[i]!]));
  return records.map((record) => ({
    ...record,
    device: names.get(record.device)!,
    takesBack: record.takesBack === null ? null : renamed(record.takesBack, names),
  }));
}

/** The name of a record under its device's new name. One that is not among them stays: it names nothing here either. */
function renamed(name: string, names: ReadonlyMap<string, string>): string {
  const dot = name.lastIndexOf('.');
  const device = names.get(name.slice(0, dot));
  return device === undefined ? name : `${device}${name.slice(dot)}`;
}
