// long: one case for each fault
import { describe, expect, it } from 'vitest';
import { good, readFiles } from './folder.ts';
import {
  assertInBook,
  bookBytes,
  bookLine,
  changedCell,
  changedSheet,
  dateCell,
  goodSheets,
  type PlantedInBook,
  readBytes,
  type SheetMade,
  sheetNamed,
  styles,
} from './workbook.ts';

const inCell = (fault: string, sheet: string, at: string, cell: Parameters<typeof changedCell>[2]) => ({
  fault,
  book: () => ({ sheets: changedCell(sheet, at, cell) }),
});

/** The good workbook with an id of a sheet's name changed, or a sheet more. */
const withSheet = (sheet: SheetMade) => [...goodSheets(), sheet];
const renamed = (from: string, to: string) =>
  goodSheets().map((sheet) => (sheet.name === from ? { ...sheet, name: to } : sheet));

describe('the good workbook', () => {
  it('comes to the same as the good folder, without a problem', async () => {
    const read = await assertInBook({ fault: '', book: () => ({ sheets: goodSheets() }), problems: [] });
    const folder = await readFiles(good);
    expect(read.facts.settings).toEqual(folder.facts.settings);
    expect([read.facts.parts, read.facts.prices]).toEqual([folder.facts.parts, folder.facts.prices]);
    expect(read.files.map(({ file, rows, used }) => [file, rows - used])).toEqual(
      ['sites', 'roofs', 'diverters', 'tanks', 'demand', 'gauges', 'parts', 'prices', 'settings', 'rain'].map(
        (name) => [`plan.xlsx/${name}`, 0],
      ),
    );
  });

  it('may have its texts shared, its rows and cells unnumbered, prefixes before its names, and rain by gauge', async () => {
    const sheets = goodSheets().filter(({ name }) => name !== 'rain');
    const rain = sheetNamed(goodSheets(), 'rain');
    for (const gaugeId of ['G-east', 'G-west']) {
      const rows = rain.rows.filter((row, i) => i === 0 || row![0] === gaugeId).map((row) => row!.slice(1));
      sheets.push({ name: `rain ${gaugeId}`, rows });
    }
    sheetNamed(sheets, 'sites').rows[1]![1] = { t: 's', v: 0 };
    const plain = `<x:worksheet xmlns:x="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><x:sheetData><x:row><x:c t="str"><x:v>field</x:v></x:c><x:c t="str"><x:v>value</x:v></x:c></x:row><x:row><x:c t="str"><x:v>programme</x:v></x:c><x:c t="inlineStr"><x:is><x:r><x:t>Tarn </x:t></x:r><x:r><x:t>water</x:t></x:r><x:rPh sb="0" eb="1"><x:t>tarn</x:t></x:rPh></x:is></x:c></x:row></x:sheetData></x:worksheet>`;
    const book = { sheets, texts: ['Upper Tarn'], parts: { 'xl/worksheets/sheet9.xml': plain } };
    const read = await assertInBook({ fault: '', book: () => book, problems: [] });
    expect(read.facts.settings.programme).toBe('Tarn water');
  });
});

const cells: readonly PlantedInBook[] = [
  {
    ...inCell('text in a number', 'sites', 'E2', 'many'),
    problems: ['cell.not_a_number blocker @ sites 2 people E2 = "many"'],
    notUsed: ['sites 2 people cell.not_a_number'],
    inDoubt: ['S001'],
  },
  {
    ...inCell('a formula with its value', 'sites', 'E2', { f: '100+20', v: '120.00000000000001' }),
    problems: ['column.formulas note @ sites 2 people E2 = "120"'],
  },
  {
    ...inCell('a formula that was never worked out', 'sites', 'E2', { f: 'SUM(A1:A9)' }),
    problems: [
      'column.formulas note @ sites 2 people E2 = "=SUM(A1:A9)"',
      'cell.formula_without_value blocker @ sites 2 people E2 = "=SUM(A1:A9)"',
    ],
    notUsed: ['sites 2 people cell.formula_without_value'],
    inDoubt: ['S001'],
  },
  {
    ...inCell('a formula gone wrong in a number', 'sites', 'E2', { t: 'e', v: '#REF!' }),
    problems: ['cell.formula_error blocker @ sites 2 people E2 = "#REF!"'],
    notUsed: ['sites 2 people cell.formula_error'],
    inDoubt: ['S001'],
  },
  {
    ...inCell('a formula gone wrong in a name', 'sites', 'B2', { t: 'e', v: '#N/A' }),
    problems: ['cell.formula_error blocker @ sites 2 name B2 = "#N/A"'],
    notUsed: ['sites 2 name cell.formula_error'],
    inDoubt: ['S001'],
  },
  {
    ...inCell('a formula gone wrong in rain', 'rain', 'C3', { t: 'e', v: '#DIV/0!', f: '1/0' }),
    problems: [
      'column.formulas note @ rain 3 rain_mm C3 = "#DIV/0!"',
      'rainFile.value_unreadable warning @ rain 3 rain_mm C3 = "#DIV/0!"',
    ],
    notUsed: ['rain 3 rain_mm rainFile.value_unreadable'],
    gauges: ['G-east'],
  },
  {
    ...inCell('a shared text that is not there', 'sites', 'B2', { t: 's', v: 99 }),
    problems: ['cell.value_lost blocker @ sites 2 name B2 = "99"'],
    notUsed: ['sites 2 name cell.value_lost'],
    inDoubt: ['S001'],
  },
  {
    ...inCell('a number as text', 'sites', 'E2', '120'),
    problems: [],
  },
  {
    ...inCell('a unit behind the number', 'roofs', 'C2', '24 m'),
    problems: ['cell.unit_in_number blocker @ roofs 2 length_m C2 = "24 m"'],
    notUsed: ['roofs 2 length_m cell.unit_in_number'],
    inDoubt: ['S001'],
  },
  {
    ...inCell('a comma in a number as text', 'roofs', 'C2', '7,5'),
    problems: ['cell.decimal_comma blocker @ roofs 2 length_m C2 = "7,5"'],
    notUsed: ['roofs 2 length_m cell.decimal_comma'],
    inDoubt: ['S001'],
  },
  { ...inCell('a share in percent', 'roofs', 'G2', { v: 0.85, s: styles.percent }), problems: [] },
  { ...inCell('TRUE where yes is asked', 'demand', 'D2', true), problems: [] },
  { ...inCell('a time of day', 'gauges', 'E2', { v: 7 / 24, s: styles.time }), problems: [] },
  {
    ...inCell('a date where a number is asked', 'sites', 'E2', dateCell('2026-03-01')),
    problems: ['cell.not_a_number blocker @ sites 2 people E2 = "2026-03-01"'],
    notUsed: ['sites 2 people cell.not_a_number'],
    inDoubt: ['S001'],
  },
  {
    ...inCell('a date where a name is asked', 'sites', 'B2', dateCell('2026-03-01')),
    problems: ['column.date_not_asked warning @ sites 2 name B2 = "46082"'],
    differ: ['S001'],
  },
];

describe('a cell of a workbook', () => {
  it.each(cells)('$fault', async (planted) => {
    const read = await assertInBook(planted);
    for (const { facts } of read.problems) expect(facts['value']).toBeDefined();
  });

  it('keeps the zeros it is shown with, as an id', async () => {
    const sheets = goodSheets();
    for (const name of ['sites', 'roofs', 'diverters', 'tanks'])
      for (const row of sheetNamed(sheets, name).rows) if (row![0] === 'S001') row![0] = { v: 7, s: styles.zeros };
    const read = await readBytes(bookBytes({ sheets }));
    expect(read.problems).toEqual([]);
    expect(read.facts.sites[0]!.siteId).toBe('007');
    expect(read.facts.sites[0]!.roofs).toHaveLength(2);
  });

  it('loses one apostrophe of the rule, and a text that begins with = is no formula', async () => {
    const sheets = changedCell('sites', 'B2', "'=1+1");
    sheetNamed(sheets, 'sites').rows[2]![1] = '=1+1';
    const read = await readBytes(bookBytes({ sheets }));
    expect(read.problems).toEqual([]);
    expect(read.facts.sites.slice(0, 2).map(({ name }) => name)).toEqual(['=1+1', '=1+1']);
  });

  it('gives the letter meant by its number', async () => {
    const read = await readBytes(bookBytes({ sheets: changedCell('sites', 'B2', 'Upper_x0041_ _x005F_x0041_') }));
    expect(read.facts.sites[0]!.name).toBe('UpperA _x0041_');
  });
});

/** The rows that name a site, as they are linked. */
const rowsOfSites = [
  ['roofs', 2, 'S001'],
  ['roofs', 3, 'S001'],
  ['roofs', 4, 'S002'],
  ['roofs', 5, 'S003'],
  ['tanks', 2, 'S001'],
  ['tanks', 3, 'S001'],
  ['tanks', 4, 'S002'],
  ['tanks', 5, 'S003'],
  ['demand', 4, 'S003'],
  ['diverters', 2, 'S001'],
  ['diverters', 3, 'S003'],
] as const;

const sheetFaults: readonly PlantedInBook[] = [
  {
    fault: 'a needed sheet under nearly its name',
    book: () => ({ sheets: renamed('tanks', 'Tanks ') }),
    problems: ['sheet.missing blocker @ tanks - - = "tanks"', 'sheet.misnamed warning @ Tanks  - - = "Tanks "'],
    differ: ['S001', 'S002', 'S003'],
  },
  {
    fault: 'a sheet of something else',
    book: () => ({ sheets: withSheet({ name: 'Budget 2026', rows: [['x']] }) }),
    problems: ['sheet.unknown note @ Budget 2026 - - = "Budget 2026"'],
  },
  {
    fault: 'a sheet again with other capitals',
    book: () => ({ sheets: withSheet({ name: 'SITES', rows: [['x']] }) }),
    problems: ['sheet.misnamed warning @ SITES - - = "SITES"'],
  },
  {
    fault: 'two sheets of one name',
    book: () => ({ sheets: withSheet(sheetNamed(goodSheets(), 'diverters')) }),
    problems: ['sheet.twice blocker @ diverters - - = "diverters"'],
    inDoubt: ['S001', 'S002', 'S003'],
  },
  {
    fault: 'a hidden sheet',
    book: () => ({ sheets: changedSheet('roofs', (sheet) => Object.assign(sheet, { hidden: true })) }),
    problems: ['sheet.hidden warning @ roofs - - = "roofs"'],
  },
  {
    fault: 'an empty sheet',
    book: () => ({ sheets: changedSheet('diverters', (sheet) => Object.assign(sheet, { rows: [] })) }),
    problems: ['file.empty blocker @ diverters - - = "plan.xlsx/diverters"'],
    inDoubt: ['S001', 'S002', 'S003'],
  },
  {
    fault: 'a header with nothing under it',
    book: () => ({ sheets: changedSheet('sites', (sheet) => sheet.rows.splice(1)) }),
    problems: [
      'file.no_rows blocker @ sites - - = "plan.xlsx/sites"',
      ...rowsOfSites.map(([sheet, row, id]) => `link.unknown_site blocker @ ${sheet} ${row} siteId A${row} = "${id}"`),
    ],
    notUsed: rowsOfSites.map(([sheet, row]) => `${sheet} ${row} whole link.unknown_site`),
    differ: ['S001', 'S002', 'S003'],
  },
  {
    fault: 'titles above the header',
    book: () => ({
      sheets: changedSheet('sites', (sheet) =>
        sheet.rows.unshift(['Sites of the programme'], null, ['as of March', 2027]),
      ),
    }),
    problems: ['sheet.header_below note @ sites 4 - = "Sites of the programme"'],
  },
  {
    fault: 'a column misspelt under titles',
    book: () => ({
      sheets: changedSheet('sites', (sheet) => {
        sheet.rows[0]![4] = 'Peopel';
        sheet.rows.unshift(['Sites'], null);
      }),
    }),
    problems: [
      'sheet.header_below note @ sites 3 - = "Sites"',
      'header.column_misspelt blocker @ sites 3 Peopel E3 = "Peopel"',
    ],
    inDoubt: ['S001', 'S002', 'S003'],
  },
  {
    fault: 'a column missing in a needed sheet',
    book: () => ({
      sheets: changedSheet('roofs', (sheet) => {
        sheet.rows = sheet.rows.map((row) => row!.slice(1));
      }),
    }),
    problems: ['header.column_missing blocker @ roofs 1 siteId = ""'],
    notUsed: [2, 3, 4, 5].map((row) => `roofs ${row} whole header.column_missing`),
    inDoubt: ['S001', 'S002', 'S003'],
  },
  {
    fault: 'a row left empty among the others',
    book: () => ({ sheets: changedSheet('tanks', (sheet) => sheet.rows.splice(2, 0, null, [])) }),
    problems: ['row.empty note @ tanks 3 - = ""'],
  },
  {
    fault: 'an empty column before the table, and one within it',
    book: () => ({
      sheets: changedSheet('tanks', (sheet) => {
        sheet.rows = sheet.rows.map((row) => [null, row![0]!, null, ...row!.slice(1)]);
      }),
    }),
    problems: [],
  },
  {
    fault: 'a note beside the table',
    book: () => ({ sheets: changedSheet('sites', (sheet) => sheet.rows[2]!.push(null, null, 'ask Ana')) }),
    problems: ['sheet.beside_table warning @ sites 3 - K3 = "ask Ana"'],
    notUsed: ['sites 3 K sheet.beside_table'],
  },
  {
    fault: 'a cell just beyond the last column',
    book: () => ({
      sheets: changedSheet('sites', (sheet) => {
        sheet.rows[2]![8] = 'ask Ana';
      }),
    }),
    problems: ['row.cells_too_many blocker @ sites 3 - = "S002,Lower Tarn,-8.55,125.3,85,G-east,,,ask Ana"'],
    notUsed: ['sites 3 whole row.cells_too_many'],
    inDoubt: ['S002'],
  },
  {
    fault: 'hidden rows and columns',
    book: () => ({
      sheets: changedSheet('sites', (sheet) =>
        Object.assign(sheet, { hiddenRows: [3], before: '<cols><col min="5" max="6" hidden="1"/></cols>' }),
      ),
    }),
    problems: ['sheet.rows_hidden note @ sites 3 - = ""'],
  },
  {
    fault: 'merged cells with values under them',
    book: () => ({
      sheets: changedSheet('roofs', (sheet) =>
        Object.assign(sheet, { after: '<mergeCells count="1"><mergeCell ref="G2:G3"/></mergeCells>' }),
      ),
    }),
    problems: ['sheet.merged warning @ roofs 2 runoffFraction G2 = "G2:G3"'],
  },
  {
    fault: 'merged cells that hide a value',
    book: () => ({
      sheets: changedSheet('roofs', (sheet) =>
        Object.assign(sheet, { after: '<mergeCells count="1"><mergeCell ref="H2:H3"/></mergeCells>' }),
      ),
    }),
    problems: [
      'sheet.merged warning @ roofs 2 gutteredFraction H2 = "H2:H3"',
      'cell.under_merge warning @ roofs 3 gutteredFraction H3 = "0.5"',
    ],
    notUsed: ['roofs 3 H cell.under_merge'],
    differ: ['S001'],
  },
  {
    fault: 'an id merged over the rows of a site',
    book: () => ({
      sheets: changedSheet('roofs', (sheet) => {
        sheet.rows[2]![0] = null;
        sheet.after = '<mergeCells count="1"><mergeCell ref="A2:A3"/></mergeCells>';
      }),
    }),
    problems: [
      'sheet.merged warning @ roofs 2 siteId A2 = "A2:A3"',
      'sheet.merged_ids blocker @ roofs 2 siteId A2 = "A2:A3"',
      'cell.missing blocker @ roofs 3 siteId A3 = ""',
    ],
    notUsed: ['roofs 3 whole cell.missing'],
    inDoubt: ['S001'],
  },
  {
    fault: 'a merged title',
    book: () => ({
      sheets: changedSheet('sites', (sheet) => {
        sheet.rows.unshift(['Sites']);
        sheet.after = '<mergeCells count="1"><mergeCell ref="A1:H1"/></mergeCells>';
      }),
    }),
    problems: ['sheet.header_below note @ sites 2 - = "Sites"'],
  },
  {
    fault: 'a sheet whose XML is broken',
    book: () => ({
      sheets: goodSheets(),
      parts: { 'xl/worksheets/sheet4.xml': '<worksheet><sheetData><row></sheetData>' },
    }),
    problems: ['sheet.unreadable blocker @ tanks - - = "plan.xlsx/tanks"'],
    inDoubt: ['S001', 'S002', 'S003'],
  },
  {
    fault: 'a sheet that is a chart',
    book: () => ({ sheets: goodSheets(), parts: { 'xl/worksheets/sheet4.xml': '<chartsheet></chartsheet>' } }),
    problems: ['sheet.unreadable blocker @ tanks - - = "plan.xlsx/tanks"'],
    inDoubt: ['S001', 'S002', 'S003'],
  },
  {
    fault: 'rows out of order',
    book: () => ({
      sheets: goodSheets(),
      parts: { 'xl/worksheets/sheet4.xml': '<worksheet><sheetData><row r="2"/><row r="2"/></sheetData></worksheet>' },
    }),
    problems: ['sheet.unreadable blocker @ tanks - - = "plan.xlsx/tanks"'],
    inDoubt: ['S001', 'S002', 'S003'],
  },
  {
    fault: 'cells out of order',
    book: () => ({
      sheets: goodSheets(),
      parts: {
        'xl/worksheets/sheet4.xml':
          '<worksheet><sheetData><row r="2"><c r="B2"><v>1</v></c><c r="A2"><v>1</v></c></row></sheetData></worksheet>',
      },
    }),
    problems: ['sheet.unreadable blocker @ tanks - - = "plan.xlsx/tanks"'],
    inDoubt: ['S001', 'S002', 'S003'],
  },
];

describe('a sheet of a workbook', () => {
  it.each(sheetFaults)('$fault', async (planted) => {
    await assertInBook(planted);
  });

  it('proposes the sheet that was meant', async () => {
    const read = await readBytes(bookBytes({ sheets: renamed('tanks', 'Tanks ') }));
    expect(read.problems.map(({ facts }) => facts['likely'])).toEqual(['Tanks ', 'tanks']);
  });
});

const settings: readonly PlantedInBook[] = [
  {
    ...inCell('a setting in words', 'settings', 'B3', 'five'),
    problems: ['settings.wrong_value blocker @ settings 3 target.longestDryRun_days B3 = "\\"five\\""'],
    inDoubt: ['S001', 'S002', 'S003'],
  },
  {
    ...inCell('a setting that is not known', 'settings', 'A3', 'target.longestDryRun'),
    problems: ['settings.unknown_key warning @ settings 3 target.longestDryRun B3 = "5"'],
  },
  {
    fault: 'a setting twice',
    book: () => ({ sheets: changedSheet('settings', (sheet) => sheet.rows.push(['programme', 'Other water'])) }),
    problems: ['row.key_twice blocker @ settings 4 field A4 = "programme"'],
    notUsed: ['settings 4 whole row.key_twice'],
    inDoubt: ['S001', 'S002', 'S003'],
  },
  {
    fault: 'settings without a header',
    book: () => ({ sheets: changedSheet('settings', (sheet) => sheet.rows.shift()) }),
    problems: [
      'header.column_missing blocker @ settings 1 field = ""',
      'header.column_unknown note @ settings 1 programme A1 = "programme"',
      'header.column_unknown note @ settings 1 Tarn water B1 = "Tarn water"',
    ],
    notUsed: ['settings 2 whole header.column_missing'],
    inDoubt: ['S001', 'S002', 'S003'],
  },
];

describe('the settings of a workbook', () => {
  it.each(settings)('$fault', async (planted) => {
    await assertInBook(planted);
  });
});

const rainFaults: readonly PlantedInBook[] = [
  {
    fault: 'a gauge without rain',
    book: () => ({ sheets: changedSheet('rain', (sheet) => sheet.rows.splice(8)) }),
    problems: ['rainFile.missing blocker @ rain G-west - - = "plan.xlsx/rain G-west"'],
    gauges: ['G-west'],
  },
  {
    fault: 'a gauge with rain in two places',
    book: () => ({
      sheets: withSheet({
        name: 'rain G-west',
        rows: [
          ['date', 'rain_mm'],
          [dateCell('2001-02-26'), 5],
        ],
      }),
    }),
    problems: ['rainFile.two_files blocker @ rain 9 - = "plan.xlsx/rain"'],
    notUsed: [9, 10, 11, 12, 13, 14, 15].map((row) => `rain ${row} whole rainFile.two_files`),
    gauges: ['G-west'],
  },
  {
    fault: 'rain of a gauge that is not there',
    book: () => ({ sheets: changedSheet('rain', (sheet) => sheet.rows.push(['G-wset', dateCell('2001-02-26'), 5])) }),
    problems: ['rainFile.rows_without_gauge warning @ rain 16 gaugeId A16 = "G-wset"'],
    notUsed: ['rain 16 whole rainFile.rows_without_gauge'],
  },
  {
    fault: 'rain of no gauge',
    book: () => ({ sheets: changedSheet('rain', (sheet) => sheet.rows.push([null, dateCell('2001-02-26'), 5])) }),
    problems: ['cell.missing blocker @ rain 16 gaugeId A16 = ""'],
    notUsed: ['rain 16 whole cell.missing'],
  },
  {
    fault: 'rain of a gauge that is no id',
    book: () => ({ sheets: changedSheet('rain', (sheet) => sheet.rows.push(['../x', dateCell('2001-02-26'), 5])) }),
    problems: ['cell.unsafe_id blocker @ rain 16 gaugeId A16 = "../x"'],
    notUsed: ['rain 16 whole cell.unsafe_id'],
  },
  {
    fault: 'rain without its column of gauges',
    book: () => ({
      sheets: changedSheet('rain', (sheet) => {
        sheet.rows = sheet.rows.map((row) => row!.slice(1));
      }),
    }),
    problems: ['header.column_missing blocker @ rain 1 gaugeId = ""'],
    notUsed: Array.from({ length: 14 }, (_, i) => `rain ${i + 2} whole header.column_missing`),
    gauges: ['G-east', 'G-west'],
  },
  {
    fault: 'a column more in the rain',
    book: () => ({
      sheets: changedSheet('rain', (sheet) => {
        for (const [i, row] of sheet.rows.entries()) row!.push(i === 0 ? 'read by' : 'Ana');
      }),
    }),
    problems: ['header.column_unknown note @ rain 1 read by D1 = "read by"'],
  },
  {
    fault: 'a sheet of rain for a gauge that is not there',
    book: () => ({ sheets: withSheet({ name: 'rain G-eats', rows: [['date', 'rain_mm']] }) }),
    problems: ['rainFile.without_gauge warning @ rain G-eats - - = "rain G-eats"'],
  },
  {
    ...inCell('-9999 in the rain', 'rain', 'C3', -9999),
    problems: ['rainFile.missing_code warning @ rain 3 rain_mm C3 = "-9999"'],
    notUsed: ['rain 3 rain_mm rainFile.missing_code'],
    gauges: ['G-east'],
  },
];

describe('the rain of a workbook', () => {
  it.each(rainFaults)('$fault', async (planted) => {
    const read = await assertInBook(planted);
    for (const { readings } of read.facts.gauges)
      for (const { rain_mm } of readings) expect(rain_mm === null || Number.isFinite(rain_mm)).toBe(true);
  });
});

describe('a workbook with all ids of one sort in doubt', () => {
  it('names the cell in the doubts of a site too', async () => {
    const read = await readBytes(bookBytes({ sheets: changedCell('sites', 'E2', 'many') }));
    expect(read.facts.sites[0]!.doubts).toEqual([
      { file: 'plan.xlsx/sites', row: 2, column: 'people', siteId: 'S001', cell: 'E2' },
    ]);
    expect(read.problems.map(bookLine)).toHaveLength(1);
  });
});
