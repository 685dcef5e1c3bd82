import { writeFile } from 'node:fs/promises';
import type { Checked } from '@eavewell/engine';
import { foldRecords } from '@eavewell/records';
import type { JobAround } from '@eavewell/work';
import { exportZip } from './exportZip.ts';
import { type KeptAt, recordsOf } from './recordsOf.ts';

/** What an export is asked of. */
export interface ExportAsked extends KeptAt {
  /** The file it is to be written into. */
  readonly file: string;
}

/** Packs a whole programme as a zip, and gives its size [byte]. */
export async function exportTask(asked: ExportAsked, around: JobAround): Promise<Checked<number>> {
  const found = await recordsOf(asked);
  if (!found.ok) return found;
  const records = found.value;
  around.report(0.2);
  const zip = exportZip({ facts: foldRecords(records), records });
  around.report(0.9);
  await writeFile(asked.file, zip);
  around.report(1);
  return { ok: true, value: zip.length, problems: [] };
}
