import { type DayIndex, isoDay } from '@eavewell/engine';
import { type Column, folderTables, type RolloutSheet } from '@eavewell/tables';
import type { Language } from '@eavewell/words';
import { isHandedOver, type SheetGiven } from './rolloutSheetTold.ts';
import { isServed } from './rolloutTold.ts';

/** One record since the days of a plan were worked out: what it changed of what the rollout is planned from. */
export interface ChangeSince {
  readonly at: string;
  readonly by: string;
  readonly source: { readonly kind: 'form' | 'import' | 'visit' | 'undo' | 'redo'; readonly name: string | null };
  readonly rows_count: number;
  /** Of which tables they are; and what became of all of them. */
  readonly tables: readonly { readonly table: string; readonly rows_count: number }[];
  readonly kind: RowChanged['kind'];
  /** The only row it changed; null: there are several. */
  readonly only: RowChanged | null;
}

export interface RowChanged {
  readonly kind: 'added' | 'edited' | 'removed';
  readonly table: string;
  readonly key: string;
  /** The only cell that changed; null: there are several, or the row came or went. */
  readonly cell: { readonly column: string; readonly before: string | null; readonly after: string | null } | null;
}

/** What changed since the days of a plan were worked out. */
export interface ChangesSince {
  /** When they were. */
  readonly at: string;
  /** How many records there were then [count]. */
  readonly version: number;
  /** The newest first, a few. */
  readonly changes: readonly ChangeSince[];
  readonly changes_count: number;
  /** Sites that an entry took out of the trips of the plan, and that stand in none of them now. */
  readonly takenOut: readonly {
    readonly siteId: string;
    /** The day they were to be handed over [ISO]; null: it was not kept. */
    readonly was: string | null;
    /** The day their trip came back without it [ISO]; null: it was taken out otherwise. */
    readonly backOn: string | null;
  }[];
}

/** What is changed of a plan, and days of hand-over before that, for sites of which none was kept [day]; null: all are. */
type Given = Omit<SheetGiven, 'changedSince'> & { readonly before: ReadonlyMap<string, DayIndex | null> | null };

/** What is said of it; null where nothing changed and no site has moved. */
export function changedSaid(since: ChangesSince, given: Given, language: Language): RolloutSheet['changedSince'] {
  const moved = movedOf(given);
  const { moved_count } = moved;
  const gone = goneFrom(since, given, language);
  const goneIds = new Set(gone.map(({ siteId }) => siteId));
  const later = [...gone, ...moved.later.filter(({ siteId }) => !goneIds.has(siteId))];
  const later_count = later.length;
  if (since.changes_count === 0 && moved_count === 0 && later_count === 0) return null;
  const said = language.say('rolloutAnswers.changedSince', {
    ...{ changes: since.changes_count, gone: gone.length, moved: moved_count, later: moved.later.length },
    unkept: moved.unkept_count,
  });
  return {
    at: since.at,
    changes: since.changes.map((change) => ({
      at: change.at,
      by: change.by,
      said: changeSaid(change, given, language),
    })),
    ...{ changes_count: since.changes_count, moved_count, later_count, later, said },
  };
}

/** Sites that were to be handed over and stand in no trip any more: those that an entry took out, and those no longer planned with. */
function goneFrom(
  { takenOut }: ChangesSince,
  { facts, today, past, outcome, problem, planId, leftOut, peopleOf, before }: Given,
  { say, numbers }: Language,
): readonly Later[] {
  const trips = facts.rollout.plans.find((one) => one.planId === planId)?.trips ?? [];
  const left = new Set(past.map(({ tripId }) => tripId));
  const placed = new Set([
    ...outcome.trips.flat().flatMap(({ stops }) => stops.map(({ job }) => problem.jobs[job]!.siteId)),
    ...past.filter(({ state }) => state === 'underWay').flatMap(({ stops }) => stops.map(({ siteId }) => siteId)),
  ]);
  const reasonOf = new Map(leftOut.map(({ siteId, reason }) => [siteId, reason]));
  const crewIds = new Set(problem.crews.map(({ crewId }) => crewId));
  const dropped = trips.flatMap(({ tripId, crewId, stops }) =>
    left.has(tripId)
      ? []
      : stops.flatMap(({ siteId, handOver: kept }) => {
          const handOver = kept ?? before?.get(siteId) ?? null;
          if (handOver === null) return [];
          const reason = reasonOf.get(siteId);
          const why = crewIds.has(crewId)
            ? say(`rolloutReport.leftOut.${reason ?? 'notAsked'}`, { over: '' })
            : say('rolloutAnswers.gone.crew');
          return [{ siteId, was: isoDay(handOver), why }];
        }),
  );
  const entered = takenOut.flatMap(({ siteId, was: kept, backOn }) => {
    const day = before?.get(siteId) ?? null;
    const was = kept ?? (day === null ? null : isoDay(day));
    if (was === null) return [];
    const why =
      backOn === null
        ? say('rolloutAnswers.gone.taken')
        : say('rolloutAnswers.gone.back', { day: numbers.date(backOn) });
    return [{ siteId, was, why }];
  });
  const siteOf = new Map(facts.sites.map((site) => [site.siteId, site]));
  return [...entered, ...dropped]
    .filter(({ siteId }) => !placed.has(siteId) && !isHandedOver(siteOf.get(siteId), today) && siteOf.has(siteId))
    .map((one) => ({
      ...{ ...one, name: siteOf.get(one.siteId)?.name ?? one.siteId, people: peopleOf.get(one.siteId) ?? null },
      ...{ now: null, later_days: null },
    }))
    .sort((a, b) => (b.people ?? 0) - (a.people ?? 0));
}

type Later = NonNullable<RolloutSheet['changedSince']>['later'][number];

/**
 * Sites whose hand-over is another day than when it was worked out last, and those of them that come later: those hurt most first, by people
 * and days. Of a site of which no day was kept, the one before the changes is taken; where there is none either, it is counted.
 */
export function movedOf({
  facts,
  problem,
  outcome,
  planId,
  before = null,
}: Pick<SheetGiven, 'facts' | 'problem' | 'outcome' | 'planId'> & Partial<Pick<Given, 'before'>>) {
  const plan = facts.rollout.plans.find((one) => one.planId === planId);
  const kept = new Map(plan?.trips.flatMap(({ stops }) => stops.map((stop) => [stop.siteId, stop.handOver] as const)));
  const later: Later[] = [];
  let [moved_count, unkept_count] = [0, 0];
  for (const stop of outcome.trips.flat().flatMap(({ stops }) => stops)) {
    const { siteId, people } = problem.jobs[stop.job]!;
    const was = kept.get(siteId) ?? before?.get(siteId) ?? null;
    const now = isServed(stop, problem) ? problem.firstDay + stop.handOverDay : null;
    if (was === null && !before?.has(siteId)) unkept_count++;
    if (was === null || was === now) continue;
    moved_count++;
    if (now !== null && now < was) continue;
    const name = facts.sites.find((site) => site.siteId === siteId)?.name ?? siteId;
    later.push({
      ...{ siteId, name, people, was: isoDay(was), now: now === null ? null : isoDay(now) },
      later_days: now === null ? null : now - was,
      why: null,
    });
  }
  const hurt = ({ later_days, people }: Later) =>
    later_days === null ? Number.POSITIVE_INFINITY : later_days * (people ?? 0);
  later.sort((a, b) => (hurt(a) === hurt(b) ? (b.people ?? 0) - (a.people ?? 0) : hurt(b) - hurt(a)));
  return { moved_count, unkept_count, later };
}

export function changeSaid(
  { source, rows_count, tables, kind, only }: ChangeSince,
  { facts }: Pick<SheetGiven, 'facts'>,
  language: Language,
): string {
  const { say } = language;
  if (source.kind === 'import')
    return say('rolloutAnswers.change.import', { file: source.name ?? '', count: rows_count });
  if (source.kind === 'undo' || source.kind === 'redo')
    return say(`rolloutAnswers.change.${source.kind}`, { count: rows_count });
  if (only === null) {
    const rows = tables.map(({ table, rows_count: count }) =>
      sayOr(language, `tableNames.${table}_count`, `${count} × ${table}`, { count }),
    );
    return say(`rolloutAnswers.change.many_${kind}`, { rows: rows.join(', ') });
  }
  const one = sayOr(language, `tableNames.${only.table}_one`, only.table);
  const row =
    namesOf(facts, only.table).get(only.key) ??
    (only.table === 'settings' ? say('history.settings') : say('history.row', { what: one, id: rowId(only.key) }));
  if (only.kind !== 'edited') return say(`rolloutAnswers.change.${only.kind}`, { row });
  if (only.cell === null) return say('rolloutAnswers.change.edited', { row });
  const { column, before, after } = only.cell;
  const name = only.table === 'settings' ? only.key : column;
  const figure = figureOf(only.table, column);
  return say('rolloutAnswers.change.cell', {
    ...{ row, field: sayOr(language, `fields.${only.table}_${name.replace('.', '_')}`, name) },
    ...{ before: cellSaid(before, figure, language), after: cellSaid(after, figure, language) },
  });
}

/** Names of rows that people know by name. */
function namesOf({ sites, rollout, kit }: SheetGiven['facts'], table: string): ReadonlyMap<string, string | null> {
  switch (table) {
    case 'sites':
      return new Map(sites.map(({ siteId, name }) => [siteId, name]));
    case 'crews':
      return new Map(rollout.crews.map(({ crewId, name }) => [crewId, name]));
    case 'ways':
      return new Map(rollout.ways.map(({ wayId, name }) => [wayId, name]));
    case 'places':
      return new Map(rollout.places.map(({ placeId, name }) => [placeId, name]));
    case 'carriers':
      return new Map(kit.carriers.map(({ carrierId, name }) => [carrierId, name]));
    default:
      return new Map();
  }
}

const rowId = (key: string) => key.split('/').at(-1)!;

const dayForm = /^\d{4}-\d{2}-\d{2}$/;

/** A column whose cells are figures with a unit, or shares; null: they are none. */
function figureOf(table: string, column: string): Column<unknown> | null {
  const tables: Readonly<Record<string, { readonly columns: Readonly<Record<string, Column<unknown>>> }>> =
    folderTables;
  const found = tables[table]?.columns[column];
  return found?.kind === 'quantity' || found?.kind === 'fraction' ? found : null;
}

function cellSaid(cell: string | null, figure: Column<unknown> | null, { say, numbers }: Language): string {
  if (cell === null) return say('rolloutAnswers.change.empty');
  const value = Number(cell);
  if (figure !== null && Number.isFinite(value))
    return figure.kind === 'fraction' ? numbers.percent(value) : numbers.given(value, figure.unit);
  return dayForm.test(cell) ? numbers.date(cell) : cell;
}

/** What has no word of its own stands as it is written in the tables. */
function sayOr(language: Language, key: string, otherwise: string, values: { readonly count?: number } = {}): string {
  try {
    return language.say(key as never, values as never);
  } catch {
    return otherwise;
  }
}
