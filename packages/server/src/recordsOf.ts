import { recordsBeside } from '@eavewell/database';
import type { Checked } from '@eavewell/engine';
import { type ChangeRecord, compareRecords } from '@eavewell/records';

/** A version of a programme, as it is kept in a data folder. */
export interface KeptAt {
  readonly dataFolder: string;
  readonly programmeId: string;
  /** How many records count. */
  readonly version: number;
}

/**
 * The records of a version in their order, read by a thread for itself: so that they are not handed over by the one that answers.
 *
 * @param kept - which programme and version
 * @returns the records
 * @problem record.unreadable - and the other codes of recordsBeside
 * @definition ours: docs/decisions/0114-work-beside-the-page.md
 */
export async function recordsOf({
  dataFolder,
  programmeId,
  version,
}: KeptAt): Promise<Checked<readonly ChangeRecord[]>> {
  const found = await recordsBeside(dataFolder, programmeId, version);
  return found.ok ? { ...found, value: [...found.value].sort(compareRecords) } : found;
}
