import { defaultSettings, unitsWritten } from '@eavewell/engine';
import { allTables } from '../contract/allTables.ts';
import { expectedText, limitsText, longestText } from '../contract/columns.ts';
import { settingsColumns, targetColumns } from '../contract/settings.ts';
import type { Column, Table } from '../contract/table.ts';

const rules = `# The tables

A programme is a folder of tables. This page is made from \`packages/tables\`, which the reader, the writer and \`datapackage.json\` use
too: do not edit it by hand, run \`npm run generate\`.

## The folder

| file | | |
|---|---|---|
FILES
| settings.json | may be left out | what the programme asks of its water |
| ways.geojson | may be left out | the lines of ways: GeoJSON (RFC 7946), a LineString or MultiLineString for each, its id the wayId |
| datapackage.json | may be left out; always written | the folder described in the open Data Package standard, version 2 |
| columns.json | may be left out | which other header stands for which column, as it was accepted |
| not-used.csv | written on request, never read | what was not used, and why |

## Rules for every file

- **Text** is UTF-8, with or without a byte order mark. UTF-16 with its mark, and Windows-1252 where every byte has a letter there, are read too, with one warning a file that names what it was taken for. Another encoding is a blocker for the file; single bytes that are no letter spoil only their own cell.
- **Cells** are separated by commas (RFC 4180: quotes round a cell that holds a comma, a quote or a line end; a quote inside is doubled). Semicolons and tabs are read too. Lines may end in LF, CRLF or CR; LF is written.
- **The first line** names the columns, exactly as below, in any order. A name that is nearly right is pointed out, never taken, until it is accepted (\`eavewell columns\`, below). Other columns are not used; they are kept and written back behind the known ones.
- **An empty cell** is "not known", never 0. Where a column gives an empty cell another meaning, it is said below.
- **Numbers** have digits, a point and perhaps an exponent: \`12.5\`, \`-3\`, \`1e3\`. No unit, no thousands mark, no \`NaN\`. In files separated by semicolons or tabs a decimal comma is read, with one warning a column; a number with exactly three digits behind its only mark (\`1,500\`) is not read where it could mean two things.
- **Dates** are \`YYYY-MM-DD\`, and no other form is guessed at. **Times** are \`HH:MM\`, 00:00 to 23:59.
- **Ids** match \`[A-Za-z0-9_-]{1,64}\`: they may become part of a path, so nothing else is let in. Large and small letters differ.
- **Characters that cannot be seen** (spaces that do not break, soft hyphens, joiners, marks of direction, byte order marks) are taken off the ends of cells and headers, with one note a column. Inside an id they are a blocker, and the site it looks like is in doubt; inside a number, date or choice a blocker; inside a text they are kept, with one note a column. Each is named by its code point.
- **Text cells** hold at most ${longestText} characters and no control characters but tab and line ends.
- **The apostrophe rule**: a text that begins with = + - @ TAB or CR (behind any apostrophes of its own) and is not a number gets one leading apostrophe on writing and loses exactly one on reading, so that no spreadsheet takes it for a formula. Numbers such as -3.25 are never touched.
- **Two ranges.** Outside the hard range a value is a blocker and is not used. Outside the usual range it is used, with a warning. The ranges are ours (common practice, no source) unless a column says otherwise.
- **Units and places mixed up** are named with what is likely meant, and never turned into it. Not used (blocker): a tank of 50 L or less, which is one in m³; a latitude beyond 90 degrees that would be a longitude; degrees with minutes (\`7.45.30\`, \`7°45'\`) or a letter (\`8.5 S\`); a roof's plan area that is 10.76 times (within 3 %) length × width, as many square feet as m². Used, with a warning: length and width whose product is 10.76 times the plan area, so in feet; a position over 5 degrees from the middle of its table (five positions or more) that is within 2 degrees of it the other way round. A latitude below 90 swapped in every row cannot be told, nor feet where no area stands beside them. For rain see docs/methods/rain.md.
- **A key** stands once. The same row twice is dropped with a warning; two rows with one key that differ are a blocker: the first is used.
- **A blocker in a row about a site puts the site in doubt**: it gets the verdict \`unknown\` until the row is mended, so that nothing is judged on half its facts. No bad row stops another, and all that was not used is listed.
- **Ways and places.** \`from\` and \`to\` name a site or a place; no place has the id of a site. A line of ways.geojson without its way is a warning, and so is a stated length that is 20 % off its line, or a way shorter than the straight line between its ends (by over 5 % and 0.5 km).
- **In a rain file** a row that cannot be read leaves its day unknown, with a warning. \`-9999\`, \`NA\` and their like mean "not read"; \`T\` (a trace) is unknown too, never 0, until a number is written.
- **A station file of GHCN-Daily** may stand in place of a rain file: \`rain/<gaugeId>.dly\` (fixed width), or a \`rain/<gaugeId>.csv\` with the columns ID, DATE or YYYYMMDD, ELEMENT, VALUE, M, Q, S (also without a header, in this order). Rain (PRCP) is in tenths of mm and -9999 is "not read". A value with a quality flag is not used; "missing presumed zero" (P) is unknown; a trace (T) is 0 mm; the days of one total over several days (MDPR, DAPR) are unknown. With several stations in a file, the one with the gauge's id is used, else none. One gauge has one file: a .csv beside a .dly is a blocker.
- **A large rain file** (over 32 MB) is read piece by piece, so its length takes no memory; in it a quoted cell ends with its line. Of more than 400,000 readings those that say nothing new of their day are counted and left out; of more than 100,000 rows or cells not used the rest are counted, not listed. Station files and other tables may have 500 MB.

## Other headers: columns.json

\`eavewell columns FOLDER\` proposes which column a header stands for, and keeps what is accepted in \`columns.json\`. Nothing is used before that.

    {
      "roofs.csv": {
        "Roof length": { "column": "length_m", "unit": "ft" },
        "Cover": "material",
        "Remark": null
      },
      "rain/*.csv": { "Day": { "column": "date", "dateOrder": "dmy" } }
    }

- A header is written as it stands in the file; \`null\` leaves it alone without a note. \`rain/*.csv\` is for every rain file without an entry of its own. A column under its own name may have an entry too, for its unit or its order of days.
- **Units**: UNITS. There is no plain gallon.
- **dateOrder** is \`dmy\`, \`mdy\` or \`ymd\`, with - / or . between and a year of four digits; \`YYYY-MM-DD\` is read beside it. A day that does not exist in that order is not read.
- A columns.json that cannot be read, a column or a unit there is not, and two headers for one column are blockers that put every site in doubt. A header that is no longer there is a warning.
- Each file that is read with it has a note that says so.
`;

/** Which units are converted, from what unitsWritten says. */
function unitsText(): string {
  const units = new Set(allTables.flatMap((table) => Object.values(table.columns).map(({ unit }) => unit)));
  const written = [...units].flatMap((unit) => {
    const others = unitsWritten(unit);
    return others.length === 0 ? [] : [`${others.join(', ')} for ${unit}`];
  });
  return written.join('; ');
}
const workbookRules = `## The workbook

One workbook (.xlsx) may stand in place of the folder: its sheets are called as the tables, letter for letter.

- **Rain** is in the sheet \`rain\` (gaugeId, date, rain_mm), or in a sheet \`rain <gaugeId>\` for each gauge (date, rain_mm). One gauge has one of the two.
- **Settings** are in the sheet \`settings\` (field, value); those of the target are called \`target.longestDryRun_days\` and so on. An empty value is the default.
- **The header** may stand below titles. Rows and cells are named as the spreadsheet does. A cell just right of the table makes its row one with too many cells; one beyond an empty column is left, and named.
- **Numbers and days** are best as the spreadsheet keeps them; texts follow the rules for files. A column of days may also be text with the year last where its own values prove that day or month comes first; else none is used. A number without a date format in a column of days is read from the workbook's count, with a warning.
- **Formulas** count by the value last stored. Without one, and where a cell shows an error such as \`#N/A\`, it is not used. A merged range has the value of its first cell.
- **Hidden** sheets, rows and columns are read, and named. Other sheets are left. Macros and links to other workbooks are never followed.
- **Sheets and headers of other names** are matched by \`eavewell columns BOOK.xlsx\`; what is accepted is kept in \`BOOK.columns.json\` beside the workbook, in the form of columns.json by the names of its sheets. A sheet of another name is given to one of ours, or to \`rain <gaugeId>\`, under \`sheets\`: \`{ "sheets": { "Rain data": "rain G1", "Budget": null }, "Rain data": { "Precip (in)": { "column": "rain_mm", "unit": "in" } } }\`; \`null\` leaves a sheet alone. Rename or move the two together.
- **Limits**: docs/decisions/0071-limits-of-workbooks.md. Old workbooks (.xls), .xlsb, .ods and those with a password are to be saved as .xlsx first.
`;

function fileLines(tables: readonly Table[]): string {
  return tables
    .map(({ file, optional, about }) => `| ${file} | ${optional ? 'may be left out' : 'needed'} | ${about} |`)
    .join('\n');
}

function columnLine(name: string, column: Column<unknown>): string {
  const hard = column.hard ? limitsText(column, column.hard) : column.choices.join(', ');
  const usual = column.usual ? limitsText(column, column.usual) : '';
  const empty = column.required ? 'not allowed' : (column.emptyMeans ?? 'not known');
  const cells = [name, column.kind, column.unit, hard, usual, empty, column.about];
  return `| ${cells.join(' | ')} |`;
}

function keyText(table: Table): string {
  const links = table.foreignKeys.map(
    ({ fields, table: other, tableFields }) => `${fields.join(' + ')} → ${other} (${tableFields.join(' + ')})`,
  );
  const key = `Key: ${table.key.join(' + ')}.`;
  return links.length === 0 ? key : `${key} Links: ${links.join('; ')}.`;
}

function tableSection(table: Table): string {
  return [
    `## ${table.name}`,
    '',
    `\`${table.file}\`${table.optional ? ', may be left out' : ''}. ${table.about}`,
    '',
    `${keyText(table)} Used by: ${table.usedBy.join(', ')}.`,
    '',
    '| column | kind | unit | hard range or choices | usual range | empty | meaning |',
    '|---|---|---|---|---|---|---|',
    ...Object.entries(table.columns).map(([name, column]) => columnLine(name, column)),
    '',
  ].join('\n');
}

function settingLine(key: string, column: Column<unknown>, standard: unknown): string {
  const usual = column.usual ? limitsText(column, column.usual) : '';
  return `| ${[key, expectedText(column), usual, JSON.stringify(standard), column.about].join(' | ')} |`;
}

function settingsSection(): string {
  const { target, ...others } = defaultSettings;
  const standards: Readonly<Record<string, unknown>> = others;
  const targets: Readonly<Record<string, unknown>> = { ...target };
  return [
    '## settings',
    '',
    '`settings.json`, may be left out. One object; `target` is an object within it. A setting that is not given has its default. An unknown',
    'one is a warning. A wrong one is a blocker: the default stands in for it and every site is in doubt until it is mended.',
    '',
    '| setting | form | usual range | default | meaning |',
    '|---|---|---|---|---|',
    ...Object.entries(settingsColumns).map(([key, column]) => settingLine(key, column, standards[key])),
    ...Object.entries(targetColumns).map(([key, column]) => settingLine(`target.${key}`, column, targets[key])),
    '',
  ].join('\n');
}

/**
 * What does the page of tables say? Every table with its key, links, columns, units and ranges, and the rules for every file.
 *
 * @returns docs/tables.md [text]
 * @law says nothing that the reader does not do: it is made from the same columns
 * @definition ours
 */
export function tablesPage(): string {
  const sections = [rules.replace('FILES', fileLines(allTables)).replace('UNITS', unitsText()), workbookRules];
  return `${[...sections, ...allTables.map(tableSection), settingsSection()].join('\n').trimEnd()}\n`;
}
