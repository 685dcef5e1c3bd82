// Writes one record after another into a data folder and says each number once it is answered for, until it is killed.
import { openDatabase } from '@eavewell/database';

/** @typedef {import('@eavewell/records').ChangeRecord} ChangeRecord */

const found = await openDatabase(/** @type {string} */ (process.argv[2]));
if (!found.ok) throw new Error(found.problems[0]?.code);
const database = found.value;
if ((await database.programmes()).length === 0)
  await database.makeProgramme({ programmeId: 'p', name: 'P', madeAt: '2026-03-01T00:00:00.000Z' });
const kept = await database.records('p');
if (!kept.ok) throw new Error(kept.problems[0]?.code);
for (let number = kept.value.length + 1; ; number++) {
  const changes = Array.from({ length: 1 + (number % 40) }, (_, i) => ({
    kind: /** @type {const} */ ('added'),
    table: 'sites',
    key: `S${number}-${i}`,
    after: { siteId: `S${number}-${i}`, name: 'x'.repeat(200) },
  }));
  /** @type {ChangeRecord} */
  const record = {
    device: 'office',
    number,
    clock: number,
    at: '2026-03-02T09:00:00.000Z',
    offset_min: 0,
    by: 'Nadi',
    source: { kind: 'import', name: null },
    takesBack: null,
    changes,
  };
  const written = await database.append('p', [record]);
  if (!written.ok) throw new Error(written.problems[0]?.code);
  process.stdout.write(`${number}\n`);
}
