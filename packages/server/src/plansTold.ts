import { type ChangeRecord, planMoves, tablesOfPlans, takePlanRowsBack, touchesPlans } from '@eavewell/records';
import { type Language, planRecordSaid } from '@eavewell/words';
import type { OpenProgramme } from './openProgramme.ts';

/**
 * What records did to plans, in a sentence each: read back from what stands now, so that trips are told by the places they had then.
 *
 * @param programme - its records and present facts
 * @param of - records from `start` to before `end` are told
 * @param language - of the sentences
 * @returns the sentence of each record that has one
 */
export function plansTold(
  { records, facts }: Pick<OpenProgramme, 'records' | 'facts'>,
  { start, end }: { readonly start: number; readonly end: number },
  language: Language,
): ReadonlyMap<ChangeRecord, string> {
  const told = new Map<ChangeRecord, string>();
  const isTold = ({ changes, source }: ChangeRecord) => source.kind !== 'import' && touchesPlans(changes);
  if (!records.slice(start, end).some(isTold)) return told;
  const names = {
    siteOf: (siteId: string) => facts.row('sites', siteId)?.['name'] ?? siteId,
    crewOf: (crewId: string) => facts.row('crews', crewId)?.['name'] ?? crewId,
  };
  const rows = new Map(tablesOfPlans.map((table) => [table as string, new Map(facts.rows(table))]));
  for (let at = records.length - 1; at >= start; at--) {
    const record = records[at]!;
    if (!touchesPlans(record.changes)) continue;
    const found = at < end && isTold(record) ? planMoves(record.changes, rows) : null;
    if (found !== null) told.set(record, planRecordSaid(found, names, language));
    takePlanRowsBack(rows, record.changes);
  }
  return told;
}
