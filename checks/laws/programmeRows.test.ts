import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { demoProgramme } from '@eavewell/demo';
import {
  type ProgrammeTables,
  programmeOfRows,
  type RainRow,
  type RowsByTable,
  readProgramme,
  rowsOfProgramme,
  tablesAsRead,
  writeProgramme,
} from '@eavewell/formats';
import { type ChangeRecord, changesBetween, type Facts, foldRecords, readRecord, recordText } from '@eavewell/records';
import fc from 'fast-check';
import { expect, it } from 'vitest';

const record = (rows: RowsByTable, facts: Facts): ChangeRecord => {
  const changes = [...rows].flatMap(([table, wanted]) => [...changesBetween(facts, table, wanted, 'go')]);
  const made = { device: 'office', number: 1, clock: 1, at: '2026-03-02T09:00:00.000Z', offset_min: 0, by: 'Nadi' };
  return { ...made, source: { kind: 'import', name: null }, takesBack: null, changes };
};

/** As it comes back from a store: through text, checked as any record that comes from outside. */
function stored(one: ChangeRecord): ChangeRecord {
  const read = readRecord(JSON.parse(recordText(one)));
  expect(read).not.toBeNull();
  return read!;
}

const throughRecords = (programme: ProgrammeTables) =>
  foldRecords([stored(record(rowsOfProgramme(programme), foldRecords([])))]);

async function inRoom<T>(work: (room: string) => Promise<T>): Promise<T> {
  const room = await mkdtemp(join(tmpdir(), 'eavewell-rows-'));
  try {
    return await work(room);
  } finally {
    await rm(room, { recursive: true, force: true });
  }
}

const textCell = fc.option(
  fc.oneof(fc.constantFrom('7,5', ' ', "'x", '=1', 'Ferry', '12', '-3.25', 'a/b'), fc.string()),
  {
    nil: null,
  },
);
const day = fc.integer({ min: 0, max: 90 }).map((i) => new Date(Date.UTC(2001, 0, 20 + i)).toISOString().slice(0, 10));
const reading: fc.Arbitrary<RainRow> = fc.record({
  date: fc.oneof(
    { weight: 8, arbitrary: day },
    { weight: 1, arbitrary: fc.constantFrom('', '30/1/2001', '2001-02-30') },
  ),
  rain_mm: fc.oneof(
    fc.constantFrom(0, 12.5, null, 'T', '_', ';', '1;2', '-9999'),
    fc.double({ min: 0, max: 300, noNaN: true }),
  ),
});
const rainRows = fc.oneof(
  fc.array(reading, { maxLength: 60 }),
  fc
    .uniqueArray(reading, { maxLength: 90, selector: ({ date }) => date })
    .map((rows) => rows.sort((a, b) => (a.date < b.date ? -1 : 1))),
);
/** Any rows, and what a file of them holds: numbers and texts are the same there. */
const asWritten = (value: unknown) => (value === null || value === '' ? null : String(value));

it('rows of rain come back from their months, whatever they hold and in whatever order', () => {
  fc.assert(
    fc.property(rainRows, (rows) => {
      const programme = { settings: {}, tables: {}, rain: [{ gaugeId: 'G1', rows }] };
      const back = programmeOfRows(throughRecords(programme)).rain[0]!;
      expect(back.rows.map(({ date, rain_mm }) => [date, asWritten(rain_mm)])).toEqual(
        rows.map(({ date, rain_mm }) => [date, asWritten(rain_mm)]),
      );
    }),
    { seed: 4, numRuns: 400 },
  );
});

it('rows of a table come back in their order, with columns and keys of any kind', () => {
  const row = fc.record({ siteId: textCell, people: textCell, observer: textCell, '=sum': textCell });
  fc.assert(
    fc.property(fc.array(row, { minLength: 1, maxLength: 20 }), (rows) => {
      const back = programmeOfRows(throughRecords({ settings: {}, tables: { sites: rows }, rain: [] }));
      const found = back.tables.sites!.map((one) => [one['siteId'], one['people'], one['observer'], one['=sum']]);
      const wanted = rows.map((one) => [one.siteId, one.people, one.observer, one['=sum']].map(asWritten));
      expect(found).toEqual(wanted);
      expect(Object.keys(back.tables.sites![0]!).slice(-2)).toEqual(['observer', '=sum']);
    }),
    { seed: 5, numRuns: 300 },
  );
});

it('the demo with its planted faults reads from its records as from its folder, and again changes nothing', async () => {
  await inRoom(async (room) => {
    const { planted, ...programme } = demoProgramme({ sites: 60 });
    await writeProgramme(join(room, 'from'), programme);
    const first = await readProgramme(join(room, 'from'));
    const { programme: asRead } = await tablesAsRead(join(room, 'from'));
    const rows = rowsOfProgramme(asRead);
    const facts = throughRecords(asRead);
    expect(record(rows, facts).changes).toEqual([]);
    await writeProgramme(join(room, 'to'), programmeOfRows(facts));
    const second = await readProgramme(join(room, 'to'));
    expect(planted.length).toBeGreaterThan(10);
    expect(first.problems.length).toBeGreaterThan(10);
    expect(second.facts).toEqual(first.facts);
    expect(second.problems).toEqual(first.problems);
    expect(second.notUsed).toEqual(first.notUsed);
    // Years of days stay few rows.
    const days = programme.rain.reduce((sum, one) => sum + one.rows.length, 0);
    expect(rows.get('rain')!.size).toBeLessThan(days / 20);
  });
});

it('one reading more is one edit of one row', () => {
  const rows = [1, 2, 3].map((i) => ({ date: `2001-03-0${i}`, rain_mm: i }));
  const programme = (days: readonly RainRow[]) => ({ settings: {}, tables: {}, rain: [{ gaugeId: 'G1', rows: days }] });
  const facts = throughRecords(programme(rows));
  const { changes } = record(rowsOfProgramme(programme([...rows, { date: '2001-03-05', rain_mm: 8 }])), facts);
  expect(changes).toEqual([
    {
      kind: 'edited',
      table: 'rain',
      key: 'G1/2001-03',
      before: { readings: '1;2;3' },
      after: { readings: '1;2;3;_;8' },
    },
  ]);
});

it('lines of ways are a row each, and come back as they were', () => {
  const line = (wayId: string) => ({
    type: 'Feature',
    properties: { wayId },
    geometry: {
      type: 'LineString',
      coordinates: [
        [125.5, -8.5],
        [125.75, -8.25],
      ],
    },
  });
  const text = JSON.stringify({ type: 'FeatureCollection', features: [line('W2'), line('W1')] }, null, 2);
  const programme = { settings: {}, tables: {}, rain: [], rawFiles: [{ path: 'ways.geojson', text }] };
  expect([...rowsOfProgramme(programme).get('wayLines')!.keys()]).toEqual(['#around', 'W2', 'W1']);
  const back = programmeOfRows(throughRecords(programme)).rawFiles!;
  expect(back.map(({ path }) => path)).toEqual(['ways.geojson']);
  expect(JSON.parse(back[0]!.text)).toEqual(JSON.parse(text));
  // A file that would not be the same JSON again is kept letter for letter.
  const odd = text.replace('125.5,', '125.50,');
  const kept = { ...programme, rawFiles: [{ path: 'ways.geojson', text: odd }] };
  expect(programmeOfRows(throughRecords(kept)).rawFiles).toEqual([{ path: 'ways.geojson', text: odd }]);
});
