import { cpSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';
import { withServer } from '../faults/served.ts';

/**
 * A data folder as the version left it that first had tables of gutters, pipes, storms and stands: a programme taken in from the files
 * beside it, and one gutter then changed by hand; ended in order, and copied while it ran.
 */
const saved = fileURLToPath(new URL('./stationTables/', import.meta.url));

type Rows = readonly Readonly<Record<string, string>>[];

/** The rows that were taken in: each line of a file as its filled cells. No cell of them holds a comma. */
function rowsOf(file: string): Rows {
  const [header, ...lines] = readFileSync(join(saved, 'taken-in', file), 'utf8')
    .trim()
    .split('\n');
  const names = header!.split(',');
  return lines.map((line) =>
    Object.fromEntries(line.split(',').flatMap((cell, i) => (cell === '' ? [] : [[names[i]!, cell]]))),
  );
}

const byText = (rows: Rows) => rows.map((row) => JSON.stringify(Object.entries(row).sort())).sort();

const tables = [
  ...['sites', 'roofs', 'gutters', 'downpipes', 'diverters', 'tanks', 'pipes', 'demand', 'gauges', 'parts'],
  ...['storms', 'stormCoefficients', 'shortRain'],
];

it.each(['ended', 'cut'])('a data folder with measures of every station, %s, opens with all of it', async (how) => {
  const room = mkdtempSync(join(tmpdir(), 'eavewell-saved-'));
  try {
    const folder = join(room, 'data');
    cpSync(join(saved, how), folder, { recursive: true });
    await withServer(
      async (page) => {
        const { body } = await page.ask('GET', '/api/programmes');
        expect(body.programmes.map(({ name }: { name: string }) => name)).toEqual(['Tarn water']);
        const at = `/api/programmes/${body.programmes[0].programmeId}`;
        for (const table of tables) {
          const wanted = rowsOf(`${table}.csv`).map((row) =>
            // Changed by hand once it was taken in.
            row['gutterId'] === 'G1' ? { ...row, width_mm: '160' } : row,
          );
          expect(wanted.length, table).toBeGreaterThan(0);
          const { rows } = (await page.ask('GET', `${at}/tables/${table}`)).body;
          expect(byText(rows.map(({ cells }: { cells: Rows[number] }) => cells)), table).toEqual(byText(wanted));
        }
        const history = await page.ask('GET', `${at}/history?table=gutters&key=S001/G1&column=width_mm`);
        expect(history.body.entries.map(({ after }: { after: string }) => after)).toEqual(['150', '160']);
      },
      { folder, keep: true },
    );
  } finally {
    rmSync(room, { recursive: true, force: true });
  }
});
