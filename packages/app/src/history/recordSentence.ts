import type { AppLanguage } from '@eavewell/words/app';
import type { paths } from '../api/apiTypes.ts';
import { siteTables } from '../forms/siteTables.ts';
import type { FieldWords } from '../forms/useFieldWords.ts';

type Answer = paths['/api/programmes/{programmeId}/changes']['get']['responses']['200']['content']['application/json'];

/** A record as the program tells it: its head, and the first of its changes. */
export type RecordTold = Answer['records'][number];
export type ChangeTold = RecordTold['changes'][number];

/** What a record is put into words with. */
export interface RecordWords {
  readonly say: AppLanguage['say'];
  readonly words: Pick<FieldWords, 'label' | 'one' | 'choice'>;
  /** A cell as people read it. */
  cell(place: { readonly table: string; readonly column: string }, cell: string | null): string;
  /** What a site is called beside its id; null where that is not at hand. */
  siteName(siteId: string): string | null;
  /** A record by its name; undefined where it is not at hand. */
  find(name: string): RecordTold | undefined;
}

/** The name of a record. */
export const nameOfRecord = ({ device, number }: Pick<RecordTold, 'device' | 'number'>): string =>
  `${device}.${number}`;

/** A row in words, such as "roof R1 of S014". */
export function rowInWords(
  { table, key }: Pick<ChangeTold, 'table' | 'key'>,
  { say, words, siteName }: Pick<RecordWords, 'say' | 'words' | 'siteName'>,
): string {
  const slash = key.indexOf('/');
  if (table === 'sites') return nameAndId(key, siteName);
  if (table === 'settings') return say('history.settings');
  const one = words.one(table);
  if (slash === 0)
    return say('history.row', { what: one, id: table === 'demand' ? words.choice(key.slice(1)) : key.slice(1) });
  if (slash < 0) return say('history.row', { what: one, id: key });
  const [owner, last] = [key.slice(0, slash), key.slice(slash + 1)];
  const id = table === 'demand' ? words.choice(last) : last;
  return say('history.row_of', { what: one, id, owner: nameAndId(owner, siteName) });
}

function nameAndId(siteId: string, siteName: RecordWords['siteName']): string {
  const name = siteName(siteId);
  return name === null ? siteId : `${name} (${siteId})`;
}

/**
 * What a record did, in one sentence: who, what, from what to what.
 *
 * @param record - the record
 * @param telling - words of the language
 */
export function recordSentence(record: RecordTold, telling: RecordWords): string {
  const { say } = telling;
  const { by: who, source, changes, changeCount: count, said } = record;
  if (source.kind === 'undo' || source.kind === 'redo') return stepSentence(record, source.kind, telling);
  if (source.kind === 'import') return say('history.import', { who, file: source.name ?? '', count });
  // Told better than by its rows; an answer that was kept by an older page has none.
  if (said) return say('history.told', { who, what: said });
  const [only] = changes;
  if (only === undefined) return say('history.nothing', { who });
  const whole = wholeSite(record, telling);
  if (whole !== null) return whole;
  if (count === 1) return oneChange(who, only, telling);
  const site = siteOf(changes);
  if (site !== null) return say('history.of_site', { who, count, site: nameAndId(site, telling.siteName) });
  return say('history.many', { who, count });
}

/** A site that came or went with all its rows; null where the record is another. */
function wholeSite({ by: who, changes, changeCount }: RecordTold, telling: RecordWords): string | null {
  const own = changes.find(({ table }) => table === 'sites');
  if (own === undefined || own.kind === 'edited' || siteOf(changes) !== own.key) return null;
  if (changes.some(({ kind }) => kind !== own.kind)) return null;
  const name = (own.kind === 'added' ? own.after : own.before)['name'] ?? null;
  const site = nameAndId(own.key, (siteId) => name ?? telling.siteName(siteId));
  return telling.say(`history.${own.kind}_site`, { who, site, count: changeCount - 1 });
}

/** So many rows may be taken back without being asked about [count]. Ours. */
const fewRows = 50;

/**
 * What is asked before a record is taken back; null where a press is enough.
 *
 * @param record - the record that would be taken back
 * @returns `all`: it filled the programme, which would be empty; `many`: it changed many rows
 */
export function askedBefore({
  place,
  source,
  changes,
  changeCount,
}: Pick<RecordTold, 'place' | 'source' | 'changeCount'> & Partial<Pick<RecordTold, 'changes'>>): 'all' | 'many' | null {
  if (place === 1 && source.kind === 'import') return 'all';
  // One move in a plan writes the days that follow from it: that it takes back many rows is no more than it was.
  if (changes !== undefined && changes.length > 0 && changes.every(({ table }) => planTables.has(table))) return null;
  return changeCount > fewRows ? 'many' : null;
}

const planTables: ReadonlySet<string> = new Set(['plans', 'planTrips', 'planStops']);

/** An undo and a redo are told by what they took back or did again, where that is at hand. */
function stepSentence(record: RecordTold, kind: 'undo' | 'redo', telling: RecordWords): string {
  const { say } = telling;
  const { by: who, changeCount: count, said } = record;
  const meant = meantBy(record, telling.find);
  if (meant === record) return said ? say('history.told', { who, what: said }) : say(`history.${kind}`, { who, count });
  return say(`history.${kind}_of`, { who, what: recordSentence(meant, telling) });
}

/** What a record is about: for an undo or a redo the record that was taken back or made again. */
export function meantBy(record: RecordTold, find: RecordWords['find']): RecordTold {
  const taken = record.takesBack === null ? undefined : find(record.takesBack);
  return taken === undefined ? record : meantBy(taken, find);
}

function oneChange(who: string, change: ChangeTold, telling: RecordWords): string {
  const { say, words, cell } = telling;
  const row = rowInWords(change, telling);
  if (change.kind === 'added') return say('history.added', { who, row });
  if (change.kind === 'removed') return say('history.removed', { who, row });
  const columns = Object.keys(change.after);
  const [column = ''] = columns;
  if (columns.length !== 1) return say('history.cells', { who, row, count: columns.length });
  const isSetting = change.table === 'settings';
  const place = { table: change.table, column };
  return say('history.cell', {
    who,
    row,
    field: isSetting ? words.label('settings', change.key) : words.label(change.table, column),
    before: cell(place, change.before[column] ?? null),
    after: cell(place, change.after[column] ?? null),
  });
}

/** The site all changes are about; null where they are about more. */
function siteOf(changes: readonly ChangeTold[]): string | null {
  const ofSite: ReadonlySet<string> = new Set(siteTables);
  const sites = new Set(changes.map(({ table, key }) => (ofSite.has(table) ? key.split('/')[0]! : '')));
  const [site] = sites;
  return sites.size === 1 && site !== undefined && site !== '' ? site : null;
}
