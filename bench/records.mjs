import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { openDatabase } from '@eavewell/database';
import { demoProgramme } from '@eavewell/demo';
import { filesOfProgramme, programmeOfRows, rowsOfProgramme } from '@eavewell/formats';
import { foldRecords, readRecord, recordText } from '@eavewell/records';

/** Rows of the record: an import of the demo programme with so many sites has about 30,000. */
const sites = 3400;
const times = 5;

/** The middle of several times [ms]. @param {() => unknown} work */
function median_ms(work) {
  const found = Array.from({ length: times }, () => {
    const start = performance.now();
    work();
    return performance.now() - start;
  }).sort((a, b) => a - b);
  return /** @type {number} */ (found[Math.floor(times / 2)]);
}

/** One record of some 30,000 rows: read and checked, folded, as tables again, on the disk and back. */
export async function recordsBench() {
  const rows = rowsOfProgramme(demoProgramme({ sites }));
  const changes = [...rows].flatMap(([table, own]) =>
    [...own].map(([key, after]) => ({ kind: /** @type {const} */ ('added'), table, key, after })),
  );
  /** @type {import('@eavewell/records').ChangeRecord} */
  const record = {
    ...{ device: 'bench', number: 1, clock: 1, at: '2026-03-02T09:00:00.000Z', offset_min: 0, by: 'Nadi' },
    ...{ source: { kind: 'import', name: null }, takesBack: null, changes },
  };
  const text = recordText(record);
  const parsed_ms = median_ms(() => JSON.parse(text));
  const facts = foldRecords([record]);
  const folder = await mkdtemp(join(tmpdir(), 'eavewell-bench-'));
  try {
    const opened = await openDatabase(folder);
    if (!opened.ok) throw new Error(opened.problems[0]?.code);
    const database = opened.value;
    await database.makeProgramme({ programmeId: 'p', name: 'P', madeAt: record.at });
    const start = performance.now();
    await database.append('p', [record]);
    const written_ms = performance.now() - start;
    await database.close();
    const again = performance.now();
    const reopened = await openDatabase(folder);
    if (!reopened.ok) throw new Error(reopened.problems[0]?.code);
    const reopened_ms = performance.now() - again;
    const reading = performance.now();
    await reopened.value.records('p');
    const fromDisk_ms = performance.now() - reading;
    await reopened.value.close();
    /** @param {string} name @param {number} took_ms */
    const line = (name, took_ms) =>
      `records: ${name}: ${(took_ms / parsed_ms).toFixed(1)} × JSON.parse of its text (${took_ms.toFixed(0)} ms)`;
    return [
      `records: one record of ${changes.length} rows, ${(text.length / 1e6).toFixed(1)} MB, JSON.parse ${parsed_ms.toFixed(0)} ms`,
      line(
        'read and checked',
        median_ms(() => readRecord(JSON.parse(text))),
      ),
      line(
        'folded',
        median_ms(() => foldRecords([record])),
      ),
      line(
        'as tables again',
        median_ms(() => filesOfProgramme(programmeOfRows(facts))),
      ),
      line('written to the disk', written_ms),
      line('data folder opened and looked through', reopened_ms),
      line('read from the disk', fromDisk_ms),
    ];
  } finally {
    await rm(folder, { recursive: true });
  }
}
