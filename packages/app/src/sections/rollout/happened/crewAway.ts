import type { RowChange } from '../../../api/client.ts';
import type { RowNow } from '../../../forms/draft.ts';
import { edited } from '../plans/planRows.ts';
import type { EnteredCells, EntryFault } from './happenedChanges.ts';

const needed = (field: string): EntryFault => ({ field, key: 'forms.fault_missing' });

/** A name for a calendar that no other has. */
function freeCalendar(crewId: string, taken: ReadonlySet<string>): string {
  let id = crewId;
  while (taken.has(id)) id = `${id}-own`;
  return id;
}

/**
 * A crew does not work from one day to another. Its calendar says so; one that it shares with other crews is copied for it first,
 * so that theirs stays as it is.
 *
 * @param rows - of crews and workCalendars
 * @param cells - crewId, from, to, reason
 * @returns the changes, as one record, or what stands against them
 */
export function crewAwayEntry(
  rows: readonly RowNow[],
  cells: EnteredCells,
): { readonly changes: readonly RowChange[]; readonly faults: readonly EntryFault[] } {
  const { crewId = null, from = null, to = null, reason = null } = cells;
  const crews = rows.filter(({ table }) => table === 'crews');
  const days = rows.filter(({ table }) => table === 'workCalendars');
  const crew = crews.find(({ key }) => key === crewId);
  const isTurned = from !== null && to !== null && to < from;
  const missing = [crew === undefined ? 'crewId' : '', from === null ? 'from' : '', to === null ? 'to' : ''];
  const faults: readonly EntryFault[] = [
    ...missing.filter((field) => field !== '').map(needed),
    ...(isTurned ? [{ field: 'to', key: 'rolloutHappened.fault_before', values: { day: from } } as const] : []),
  ];
  if (faults.length > 0 || crew === undefined || from === null || to === null) return { changes: [], faults };
  const named = crew.cells['calendarId'] ?? null;
  const isOwn = named !== null && crews.every((one) => one === crew || one.cells['calendarId'] !== named);
  const taken = new Set([...days, ...crews].flatMap((row) => row.cells['calendarId'] ?? []));
  const calendarId = isOwn ? named : freeCalendar(crew.key, taken);
  const copied = isOwn ? [] : days.filter((row) => row.cells['calendarId'] === named && named !== null);
  const asRow = (after: Record<string, string>): RowChange => ({
    ...{ kind: 'added', table: 'workCalendars', key: `${after['calendarId']}/${after['from']}`, after },
  });
  if (days.some((row) => row.cells['calendarId'] === named && named !== null && row.cells['from'] === from))
    return { changes: [], faults: [{ field: 'from', key: 'rolloutHappened.fault_calendar_taken' }] };
  const own = { calendarId, from, to, works: 'no', ...(reason === null ? {} : { reason }) };
  const changes = [
    ...copied.map(({ cells: day }) => asRow({ ...day, calendarId })),
    asRow(own),
    edited(crew, { calendarId }),
  ];
  return { changes: changes.filter((change) => change !== null), faults: [] };
}
