import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { programmeOfRows, readProgramme, writeProgramme } from '@eavewell/formats';
import { afterAll, describe, expect, it } from 'vitest';
import { withRowNames } from './rowNames.ts';

const folder = await mkdtemp(join(tmpdir(), 'eavewell-rows-'));
afterAll(() => rm(folder, { recursive: true }));

type Cells = Readonly<Record<string, string>>;

/** What reading finds of tables as they were entered: of each problem its column and the name of its row. */
async function told(tables: Readonly<Record<string, readonly Cells[]>>) {
  const rowsOf = (table: string) => tables[table] ?? [];
  const entered = (table: string) => rowsOf(table).map((cells, at) => [String(at), cells] as const);
  await writeProgramme(folder, programmeOfRows({ rowsAsEntered: entered }));
  const { problems } = await readProgramme(folder);
  return withRowNames(problems, rowsOf).map(({ place, facts }) => [place.file, place.column, facts['rowName']]);
}

const place = { placeId: 'P1', name: 'Harbour', kind: 'store' };
const carrier = { carrierId: 'B1', name: 'Long boat', mode: 'boat' };

describe('the row that is told of', () => {
  it('is named by its own name, or by what it is of and when', async () => {
    const found = await told({
      places: [place, { placeId: 'P2', name: 'Hill', kind: 'landing' }],
      carriers: [carrier],
      crews: [
        { crewId: 'C1', name: 'North', base: 'P1', people: '3' },
        { crewId: 'C2', name: 'South', base: 'P1', people: 'four' },
      ],
      ways: [{ wayId: 'W1', name: 'Upper river', from: 'P1', to: 'P2', mode: 'river' }],
      closures: [
        { closureId: 'K1', wayId: 'W1', from: '2027-01-01', to: '2027-02-01' },
        { closureId: 'K2', wayId: 'W1', from: '2027-03-01', to: 'soon' },
      ],
      carriersAway: [{ awayId: 'A1', carrierId: 'B1', count: 'one', from: '2027-01-01', to: '2027-02-01' }],
      parts: [{ partId: 'tank', name: 'Tank', kind: 'tank' }],
      arrivals: [{ arrivalId: 'R1', store: 'P1', partId: 'tank', quantity: 'some', dueOn: '2027-01-09' }],
    });
    expect(found).toContainEqual(['crews.csv', 'people', 'South']);
    expect(found).toContainEqual(['closures.csv', 'to', 'Upper river, 2027-03-01']);
    expect(found).toContainEqual(['carriersAway.csv', 'count', 'Long boat, 2027-01-01']);
    expect(found).toContainEqual(['arrivals.csv', 'quantity', 'Tank, 2027-01-09']);
  });

  it('has no name where its table has none, and no row is guessed', async () => {
    expect(withRowNames([{ code: 'x', severity: 'note', place: { file: 'crews.csv' }, facts: {} }], () => [])).toEqual([
      { code: 'x', severity: 'note', place: { file: 'crews.csv' }, facts: {} },
    ]);
  });
});
