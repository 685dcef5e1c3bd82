import type { Checked } from '@eavewell/engine';
import { type ChangeRecord, recordProblem, recordText } from '@eavewell/records';
import { recordsOf } from '../recordsOf.ts';
import type { LookAsked, OtherProgramme } from './lookTask.ts';
import type { Unpacked } from './unpack.ts';

/** The records of an export that are to be taken in first, and the other programme that has them already. */
export interface History {
  readonly records: readonly ChangeRecord[];
  readonly there: OtherProgramme | null;
}

/** The records in an export, where they are this programme's, or it has none yet. */
export async function historyOf(
  asked: LookAsked,
  known: readonly ChangeRecord[],
  records: Unpacked['records'],
): Promise<Checked<History>> {
  const taken = (value: readonly ChangeRecord[], there: OtherProgramme | null = null) =>
    ({ ok: true, value: { records: value, there }, problems: [] }) as const;
  if (records === null || records.length === 0) return taken([]);
  const texts = new Set(records.map(recordText));
  const shares = (ours: readonly ChangeRecord[]) => ours.some((record) => texts.has(recordText(record)));
  const file = asked.sent[0]?.name ?? '';
  if (shares(known)) return taken(records);
  if (known.length > 0) {
    const problem = recordProblem('import.records_of_another', { file }, { value: file });
    return { ...taken([]), problems: [problem] };
  }
  for (const { programmeId, name } of asked.others) {
    const other = await recordsOf({ ...asked, programmeId, version: -1 });
    if (other.ok && shares(other.value)) return taken(records, { programmeId, name });
  }
  return taken(records);
}
