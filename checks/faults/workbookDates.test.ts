import { describe, expect, it } from 'vitest';
import {
  assertInBook,
  bookBytes,
  bookLine,
  type Cell,
  changedCell,
  changedSheet,
  dateCell,
  type goodSheets,
  readBytes,
  sheetNamed,
  styles,
} from './workbook.ts';

/** The good workbook with other days of hand-over, site by site. */
const handOver = (...days: readonly Cell[]) =>
  changedSheet('sites', (sheet) => {
    for (const [i, day] of days.entries()) sheet.rows[i + 1]![7] = day;
  });

/** The days of the rain of the eastern gauge, which stands in rows 2 to 8. */
const rainDays = (...days: readonly Cell[]) =>
  changedSheet('rain', (sheet) => {
    for (const [i, day] of days.entries()) sheet.rows[i + 1]![1] = day;
  });

/** Hand-over days as they were read, as dates. */
async function daysOf(sheets: ReturnType<typeof goodSheets>, date1904 = false) {
  const read = await readBytes(bookBytes({ sheets, date1904 }));
  const days = read.facts.sites.map(({ handOverDay }) =>
    handOverDay === null ? null : new Date(handOverDay * 864e5).toISOString().slice(0, 10),
  );
  return { days, problems: read.problems.map(bookLine), read };
}

describe('days as spreadsheets keep them', () => {
  it('are counted from 1900', async () => {
    // 36526 is 2000-01-01 and 43831 is 2020-01-01 (common practice, no source).
    const { days } = await daysOf(handOver({ v: 36526, s: styles.date }, { v: 43831, s: styles.date }));
    expect(days.slice(0, 2)).toEqual(['2000-01-01', '2020-01-01']);
  });

  it('are counted from 1904 where the workbook says so: 1,462 fewer', async () => {
    const sheets = handOver({ v: 36526 - 1462, s: styles.date }, { v: 43831 - 1462, s: styles.date });
    for (const name of ['rain', 'prices']) sheetNamed(sheets, name).rows.splice(1);
    const { days } = await daysOf(sheets, true);
    expect(days.slice(0, 2)).toEqual(['2000-01-01', '2020-01-01']);
  });

  it('with a time of day are that day, and said', async () => {
    const { days, problems } = await daysOf(handOver({ v: 43831.75, s: styles.dateTime }));
    expect(days[0]).toBe('2020-01-01');
    expect(problems).toEqual(['column.time_left_out note @ sites 2 handOverDay H2 = "43831.75"']);
  });

  it('as text of the form that is asked are read', async () => {
    expect((await daysOf(handOver('2027-03-01'))).problems).toEqual([]);
  });

  it('stored as text of a date are read', async () => {
    const { days, problems } = await daysOf(handOver({ t: 'd', v: '2027-03-02T00:00:00Z' }));
    expect([days[0], problems]).toEqual(['2027-03-02', []]);
  });

  it('without their format are read from the count, and said', async () => {
    const { days, problems, read } = await daysOf(handOver(43831, null, { v: 43832 }));
    expect(days).toEqual(['2020-01-01', null, '2020-01-02']);
    expect(problems).toEqual(['column.dates_from_numbers warning @ sites 2 handOverDay H2 = "43831"']);
    expect(read.problems[0]!.facts).toMatchObject({ count: 2, likely: '2020-01-01', system: '1900' });
  });

  it('that are a year alone, or run together, are not guessed at', async () => {
    const { days, problems } = await daysOf(handOver(2027, 20270301));
    expect(days.slice(0, 2)).toEqual([null, null]);
    expect(problems).toEqual([
      'cell.not_a_date blocker @ sites 2 handOverDay H2 = "2027"',
      'cell.date_form blocker @ sites 3 handOverDay H3 = "20270301"',
    ]);
  });

  const inRain = (v: number) => ({ sheets: rainDays({ v, s: styles.date }) });
  it.each([
    ['29 February 1900, which never was', 60, '1900-02-29'],
    ['day 0', 0, '1900-01-00'],
    ['a day before the count', -400, '-400'],
    ['a day beyond any', 3000000, '3000000'],
    ['a time of day alone', 0.5, '1900-01-00'],
  ])('not used: %s', async (_, number, value) => {
    await assertInBook({
      fault: '',
      book: () => inRain(number),
      problems: [
        ...(number === 0.5 ? ['column.time_left_out note @ rain 2 date B2 = "0.5"'] : []),
        `rainFile.day_unreadable warning @ rain 2 date B2 = "${value}"`,
      ],
      notUsed: ['rain 2 whole rainFile.day_unreadable'],
      gauges: ['G-east'],
    });
  });

  it('about the 29 February 1900 that never was are right on both sides', async () => {
    // By the count of spreadsheets 59 is 28 February 1900 and 61 is 1 March 1900 (from memory).
    const read = await readBytes(bookBytes({ sheets: rainDays({ v: 59, s: styles.date }, { v: 61, s: styles.date }) }));
    const days = read.facts.gauges[0]!.readings.slice(0, 2).map(({ day }) => new Date(day * 864e5).toISOString());
    expect(days.map((day) => day.slice(0, 10))).toEqual(['1900-02-28', '1900-03-01']);
  });
});

describe('days as text with the year last', () => {
  it('are read day first where one of them shows it', async () => {
    const { days, problems, read } = await daysOf(handOver('02/03/2027', '13/03/2027', '01/04/2027'));
    expect(days).toEqual(['2027-03-02', '2027-03-13', '2027-04-01']);
    expect(problems).toEqual(['column.date_order_taken warning @ sites 2 handOverDay H2 = "02/03/2027"']);
    expect(read.problems[0]!.facts).toMatchObject({
      order: 'dayFirst',
      proof: '13/03/2027',
      count: 3,
      likely: '2027-03-02',
    });
  });

  it('are read month first where one of them shows it', async () => {
    const { days } = await daysOf(handOver('02/03/2027', '3/13/2027', '01/04/2027'));
    expect(days).toEqual(['2027-02-03', '2027-03-13', '2027-01-04']);
  });

  it('are not read where none shows it, and both days are named', async () => {
    const { days, problems, read } = await daysOf(handOver('02/03/2027', '05.06.2027'));
    expect(days.slice(0, 2)).toEqual([null, null]);
    expect(problems).toEqual([
      'column.date_order_unknown blocker @ sites 2 handOverDay H2 = "02/03/2027"',
      'cell.date_form blocker @ sites 2 handOverDay H2 = "02/03/2027"',
      'cell.date_form blocker @ sites 3 handOverDay H3 = "05.06.2027"',
    ]);
    expect(read.problems[0]!.facts['readings']).toEqual(['2027-03-02', '2027-02-03']);
    expect(read.facts.sites.map(({ doubts }) => doubts.length)).toEqual([1, 1, 0]);
  });

  it('are not read where two contradict each other', async () => {
    const { days } = await daysOf(handOver('13/03/2027', '03/13/2027', '01/04/2027'));
    expect(days).toEqual([null, null, null]);
  });

  it('that are no day in the order shown are named, and the others read', async () => {
    const { days, problems } = await daysOf(handOver('31/02/2027', '13/03/2027', '01/04/2027'));
    expect(days).toEqual([null, '2027-03-13', '2027-04-01']);
    expect(problems.at(-1)).toBe('cell.date_form blocker @ sites 2 handOverDay H2 = "31/02/2027"');
  });

  it('of one gauge prove nothing for another', async () => {
    const sheets = rainDays(
      '26/02/2001',
      '27/02/2001',
      '28/02/2001',
      '01/03/2001',
      '02/03/2001',
      '03/03/2001',
      '04/03/2001',
    );
    for (const row of sheetNamed(sheets, 'rain').rows.slice(8)) row![1] = '01/02/2001';
    const read = await readBytes(bookBytes({ sheets }));
    expect(read.problems.slice(0, 2).map(bookLine)).toEqual([
      'column.date_order_taken warning @ rain 2 date B2 = "26/02/2001"',
      'column.date_order_unknown blocker @ rain 9 date B9 = "01/02/2001"',
    ]);
    expect(read.facts.gauges.map(({ readings }) => readings.length)).toEqual([7, 0]);
  });

  it('among dates up to the 12th only are taken for swapped, and neither is used', async () => {
    // Written day first: 1 to 4 February and 13, 14 February; opened where the month comes first.
    const swapped = ['2001-01-02', '2001-02-02', '2001-03-02', '2001-04-02'].map(dateCell);
    const sheets = rainDays(...swapped, '13/02/2001', '14/02/2001', null);
    const read = await readBytes(bookBytes({ sheets }));
    expect(read.facts.gauges[0]!.readings).toEqual([]);
    expect(bookLine(read.problems[0]!)).toBe('column.dates_swapped blocker @ rain 6 date B6 = "13/02/2001"');
    expect(read.problems[0]!.facts['readings']).toEqual(['2001-01-02', '2001-02-01']);
    const reasons = read.problems.slice(1).map(({ facts }) => facts['reason']);
    expect(reasons).toEqual([
      ...Array(4).fill('cell.date_swapped'),
      'cell.date_form',
      'cell.date_form',
      'cell.missing',
    ]);
  });

  it('among dates after the 12th are in no such doubt', async () => {
    const { days, problems } = await daysOf(handOver(dateCell('2027-03-15'), '13/03/2027', '14/03/2027'));
    expect(days).toEqual(['2027-03-15', '2027-03-13', '2027-03-14']);
    expect(problems).toEqual(['column.date_order_taken warning @ sites 3 handOverDay H3 = "13/03/2027"']);
  });

  it('a few among many dates are named one by one', async () => {
    const { problems } = await daysOf(changedCell('sites', 'H2', '01/03/2027'));
    expect(problems).toEqual(['cell.date_form blocker @ sites 2 handOverDay H2 = "01/03/2027"']);
  });
});
