import { expect } from 'vitest';
import { bookBytes } from '../faults/workbook.ts';
import { designedDemo } from './demo.ts';
import { journey } from './journey.ts';

/** A workbook as it comes from the field: two cells that cannot be used, and a header in other words. */
const book = () =>
  bookBytes({
    sheets: [
      {
        name: 'sites',
        rows: [
          ['siteId', 'name', 'people'],
          ['X901', 'Osk landing', '1,5'],
          ['X902', 'Tullen ford', 'many'],
        ],
      },
    ],
  });

journey(
  'a faulty workbook is looked at, two cells are mended, it is taken in, and undo takes it out again',
  async ({ atDoor: page }) => {
    const { programmeId } = await designedDemo(page);
    await page.evaluate(() => localStorage.setItem('eavewell.who', 'Nadi'));
    const sites = async () => {
      const at = new URL(`/api/programmes/${programmeId}/tables/sites`, page.url()).href;
      const { rows } = (await (await page.request.get(at)).json()) as {
        rows: readonly { key: string; cells: Readonly<Record<string, string>> }[];
      };
      return rows.filter(({ key }) => key.startsWith('X9')).map(({ cells }) => cells['people']);
    };
    const send = async () => {
      await page.goto(new URL(`/p/${programmeId}/take-in`, page.url()).href);
      await page.getByRole('heading', { level: 1, name: 'Take in files' }).waitFor();
      const chooser = page.waitForEvent('filechooser');
      await page.getByRole('button', { name: 'Choose files' }).click();
      const file = { name: 'survey.xlsx', mimeType: 'application/octet-stream', buffer: Buffer.from(book()) };
      await (await chooser).setFiles(file);
    };
    await send();
    await page.getByRole('heading', { level: 1, name: '2 rows would be added' }).waitFor();
    expect(await sites()).toEqual([]);

    // The address carries what waits: loading it again loses nothing.
    await page.reload();
    for (const [row, likely] of [
      ['2', '15'],
      ['3', '80'],
    ] as const) {
      await page
        .getByRole('button', { name: `Open row ${row}` })
        .first()
        .click();
      await page.getByRole('textbox', { name: 'Write' }).fill(likely);
      await page.getByRole('button', { name: 'Mend it', exact: true }).click();
      await page.getByRole('button', { name: 'Close the row' }).waitFor({ state: 'detached' });
    }
    await page.getByText('2 cells mended.').waitFor();
    await page.getByRole('button', { name: 'Take them in' }).click();
    await page.waitForURL(/\/sites/);
    expect(await sites()).toEqual(['15', '80']);

    await page.goto(new URL(`/p/${programmeId}/changes`, page.url()).href);
    await page
      .getByText(/^.*Nadi took in survey\.xlsx: 2 rows\./)
      .first()
      .waitFor();
    await page.getByRole('button', { name: /^Undo: Nadi took in survey\.xlsx/ }).click();
    await page.getByText(/^Taken back: Nadi took in survey\.xlsx/).waitFor();
    expect(await sites()).toEqual([]);
  },
);

journey(
  'a file that is no table is named in a sentence, and a table a second time changes nothing',
  async ({ open }) => {
    const { page, watch } = await open({ isAtDoor: true });
    // The program refuses a photo, and the browser tells that too.
    watch.expect(/status of 422/);
    const { programmeId } = await designedDemo(page);
    const take = new URL(`/p/${programmeId}/take-in`, page.url()).href;
    const send = async (name: string, buffer: Buffer) => {
      await page.goto(take);
      await page.locator('input[type=file]').first().setInputFiles({ name, mimeType: '', buffer });
    };
    await send('roof.jpg', Buffer.from([255, 216, 255, 224, 0, 16, 74, 70, 73, 70, 0]));
    await expect
      .poll(() => page.getByRole('main').textContent(), { timeout: 20_000 })
      .toMatch(/roof\.jpg[\s\S]*(?:photo|picture|image)/i);
    // It is not there, or cannot be pressed.
    expect(await page.getByRole('button', { name: 'Take them in', disabled: false }).count()).toBe(0);

    const at = new URL(`/api/programmes/${programmeId}/tables/places`, page.url()).href;
    const { rows } = (await (await page.request.get(at)).json()) as {
      rows: readonly { cells: Readonly<Record<string, string>> }[];
    };
    const columns = Object.keys(rows[0]!.cells);
    const lines = rows.map(({ cells }) => columns.map((column) => cells[column] ?? '').join(','));
    await send('places.csv', Buffer.from(`${columns.join(',')}\n${lines.join('\n')}\n`));
    await page.getByRole('heading', { level: 1, name: 'These files change nothing' }).waitFor();
  },
);
