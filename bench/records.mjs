import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { openDatabase } from '@eavewell/database';
import { demoProgramme } from '@eavewell/demo';
import { filesOfProgramme, programmeOfRows, rowsOfProgramme } from '@eavewell/formats';
import { foldRecords, readRecord, recordText } from '@eavewell/records';
import { median, timed } from './plainRun.mjs';

/** Rows of the record: an import of the demo programme with so many sites has about 30,000. */
const sites = 3400;
const times = 5;

/** @param {() => unknown} work */
const median_ms = (work) => median(Array.from({ length: times }, () => timed(work)));

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
  const disk = await onDisk_ms(record);
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
    line('written to the disk', disk.written_ms),
    line('data folder opened and looked through', disk.opened_ms),
    line('read from the disk', disk.read_ms),
  ];
}

/**
 * Written into a data folder, which is closed and opened again, and read.
 *
 * @param {import('@eavewell/records').ChangeRecord} record
 */
async function onDisk_ms(record) {
  const folder = await mkdtemp(join(tmpdir(), 'eavewell-bench-'));
  const open = async () => {
    const opened = await openDatabase(folder);
    if (!opened.ok) throw new Error(opened.problems[0]?.code);
    return opened.value;
  };
  try {
    const first = await open();
    await first.makeProgramme({ programmeId: 'p', name: 'P', madeAt: record.at });
    const written_ms = await took_ms(() => first.append('p', [record]));
    await first.close();
    const start = performance.now();
    const second = await open();
    const opened_ms = performance.now() - start;
    const read_ms = await took_ms(() => second.records('p'));
    await second.close();
    return { written_ms, opened_ms, read_ms };
  } finally {
    await rm(folder, { recursive: true });
  }
}

/** @param {() => Promise<unknown>} work */
async function took_ms(work) {
  const start = performance.now();
  await work();
  return performance.now() - start;
}
