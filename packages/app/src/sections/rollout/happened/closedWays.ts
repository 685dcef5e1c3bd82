import type { RolloutSheet } from '@eavewell/tables';
import type { RowChange } from '../../../api/client.ts';
import type { RowNow } from '../../../forms/draft.ts';
import { edited } from '../plans/planRows.ts';
import {
  addedRow,
  cannot,
  come,
  dayBeside,
  type Entered,
  type EnteredCells,
  type EntryFault,
  needed,
  notBefore,
} from './happenedChanges.ts';

/** How a way is gone. */
export type Mode = RolloutSheet['ways'][number]['mode'];

/** A stretch of a way whose ends and mode are known. */
export interface Stretch {
  readonly wayId: string;
  readonly name: string | null;
  readonly from: string;
  readonly to: string;
  readonly mode: Mode;
  readonly area: string | null;
}

export const modes = ['river', 'road', 'foot'] as const satisfies readonly Mode[];

/** What is chosen together: all of an area, all of one name, or what is gone one way from one place to another. */
export const areaChoice = (area: string): string => `area:${area}`;
export const nameChoice = (name: string): string => `name:${name}`;
export const modeChoice = (mode: Mode): string => `mode:${mode}`;

/** The stretches of the table of ways; one that leads nowhere yet is none. */
export function stretchesOf(rows: readonly RowNow[]): readonly Stretch[] {
  return rows.flatMap(({ table, key, cells }): readonly Stretch[] => {
    if (table !== 'ways') return [];
    const { name = null, from, to, weatherArea: area = null } = cells;
    const mode = modes.find((one) => one === cells['mode']);
    if (from === undefined || to === undefined || mode === undefined || from === to) return [];
    return [{ wayId: key, name, from, to, mode, area }];
  });
}

const textOf = (what: string, choice: string): string | null =>
  what.startsWith(choice) ? what.slice(choice.length) : null;

/** Does the choice ask from where to where? All of one name may be closed, or a part of it. */
export const asksEnds = (what: string | null): 'no' | 'may' | 'must' => {
  if (what === null) return 'no';
  if (textOf(what, 'mode:') !== null) return 'must';
  return textOf(what, nameChoice('')) === null ? 'no' : 'may';
};

/**
 * The stretches that a choice means.
 *
 * @param cells - what, start, end
 * @returns the stretches in the order they are gone, or what is missing or wrong
 */
export function chosenStretches(
  stretches: readonly Stretch[],
  { what = null, start = null, end = null }: EnteredCells,
): { readonly chosen: readonly Stretch[]; readonly faults: readonly EntryFault[] } {
  const without = (...faults: readonly EntryFault[]) => ({ chosen: [], faults });
  if (what === null) return without(needed('what'));
  const area = textOf(what, areaChoice(''));
  const name = textOf(what, nameChoice(''));
  const mode = textOf(what, 'mode:');
  const meant = stretches.filter((one) => {
    if (area !== null) return one.area === area;
    if (name !== null) return one.name === name;
    return mode === null ? one.wayId === what : one.mode === mode;
  });
  const ends = asksEnds(what);
  if (ends === 'no' || (ends === 'may' && start === null && end === null)) return { chosen: meant, faults: [] };
  if (start === null || end === null)
    return without(...[start === null ? [needed('start')] : [], end === null ? [needed('end')] : []].flat());
  if (start === end) return without({ field: 'end', key: 'rolloutHappened.fault_same_place' });
  const path = fewestStretches(meant, start, end);
  return path === null ? without({ field: 'end', key: 'rolloutHappened.fault_no_path' }) : { chosen: path, faults: [] };
}

/** The way from one end to another over the fewest stretches, gone in both directions; null: there is none. */
function fewestStretches(stretches: readonly Stretch[], start: string, end: string): readonly Stretch[] | null {
  const by = new Map<string, Stretch>();
  const front = [start];
  for (const at of front) {
    if (at === end) break;
    for (const one of stretches) {
      const next = one.from === at ? one.to : one.to === at ? one.from : null;
      if (next === null || next === start || by.has(next)) continue;
      by.set(next, one);
      front.push(next);
    }
  }
  const path: Stretch[] = [];
  for (let at = end; at !== start; ) {
    const one = by.get(at);
    if (one === undefined) return null;
    path.unshift(one);
    at = one.from === at ? one.to : one.from;
  }
  return path;
}

/** Ids of stretches that a person took off the choice. */
export const takenOff = ({ without = null }: EnteredCells): ReadonlySet<string> =>
  new Set((without ?? '').split(';').filter((id) => id !== ''));

/**
 * Ways are closed, or slower, from one day to another: a row for each, or one for all of an area. A last day that nobody knows is
 * the day to look again, and its row says so.
 *
 * @param rows - of ways and closures
 * @param cells - what, start, end, without, from, ends (`guess`: nobody knows the last day), to, slower_factor, reason
 * @param today - of the sheet [ISO]
 */
export function closedEntry(rows: readonly RowNow[], cells: EnteredCells, today: string): Entered {
  const { what = null, from = null, to = null, slower_factor = null, reason = null } = cells;
  const found = chosenStretches(stretchesOf(rows), cells);
  const off = takenOff(cells);
  const closed = found.chosen.filter(({ wayId }) => !off.has(wayId));
  const isNone = found.faults.length === 0 && closed.length === 0;
  const faults = [
    ...found.faults,
    ...(isNone ? [{ field: 'what', key: 'rolloutHappened.fault_no_stretch' } as const] : []),
    ...(from === null ? [needed('from')] : []),
    ...endFaults(cells, from, today),
  ];
  if (faults.length > 0 || what === null) return cannot(...faults);
  const area = textOf(what, areaChoice(''));
  const isWhole = area !== null && closed.length === found.chosen.length;
  const places = isWhole ? [{ weatherArea: area }] : closed.map(({ wayId }) => ({ wayId }));
  const isToGuessed = isGuess(cells) ? 'yes' : null;
  const known = [...rows];
  const changes = places.map((place): RowChange => {
    const change = addedRow(
      'closures',
      'closureId',
      { ...place, from, to, slower_factor, reason, isToGuessed },
      known,
      'CL',
    );
    known.push({ table: 'closures', key: change.key, cells: change.after });
    return change;
  });
  return come(changes);
}

/** Closures have another last day, none that is past. */
export function otherEndEntry(rows: readonly RowNow[], cells: EnteredCells, today: string): Entered {
  const least = rows.reduce((last, { cells: { from = '' } }) => (from > last ? from : last), today);
  const faults = endFaults(cells, least, today);
  if (faults.length > 0) return cannot(...faults);
  return come(rows.map((row) => edited(row, { to: cells['to'] ?? null, isToGuessed: isGuess(cells) ? 'yes' : null })));
}

const isGuess = ({ ends = null }: EnteredCells): boolean => ends === 'guess';

/** A day to look again is one to come. */
function endFaults(cells: EnteredCells, from: string | null, today: string): readonly EntryFault[] {
  const { to = null } = cells;
  if (to === null) return [needed('to')];
  const early = notBefore('to', to, from);
  return early.length > 0 || !isGuess(cells) ? early : notBefore('to', to, dayBeside(today, 1));
}

type Together = readonly [RowNow, ...RowNow[]];

/** Closures that were entered together: of the same days, for the same reason. */
export function closedTogether(closures: readonly RowNow[]): readonly Together[] {
  const alike = new Map<string, [RowNow, ...RowNow[]]>();
  for (const row of closures) {
    const { wayId, from, to, slower_factor, reason, months, isToGuessed } = row.cells;
    const key = JSON.stringify(wayId === undefined ? row.key : [from, to, slower_factor, reason, months, isToGuessed]);
    const known = alike.get(key);
    if (known === undefined) alike.set(key, [row]);
    else known.push(row);
  }
  return [...alike.values()];
}

/** Closures of which nobody knows the last day, and whose day to look again has come. */
export const toLookAgain = (closures: readonly RowNow[], today: string): readonly RowNow[] =>
  closures.filter(
    ({ table, cells }) => table === 'closures' && cells['isToGuessed'] === 'yes' && cells['to']! <= today,
  );
