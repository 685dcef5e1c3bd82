import { isoDay, type Place, type Problem, type RainReading } from '@eavewell/engine';
import { rain } from '../contract/rain.ts';
import { shown } from './readCell.ts';
import type { RainRead } from './readRain.ts';
import { namedOneByOne } from './readRain.ts';
import { type NotUsed, type TableProblemCode, tableProblem } from './tableProblems.ts';

/** One value of a station file with its flags, each as it is written. */
export interface StationValue {
  readonly row: number;
  /** The column it stands in. */
  readonly column: string;
  readonly stationId: string;
  /** The day, or null where there is no such day. */
  readonly day: number | null;
  readonly dayText: string;
  readonly element: string;
  readonly value: string;
  readonly measurementFlag: string;
  readonly qualityFlag: string;
  readonly sourceFlag: string;
}

/** A line of a station file: its values, or null where it cannot be read. */
export interface StationLine {
  readonly row: number;
  readonly cells: readonly string[];
  readonly values: readonly StationValue[] | null;
}

/** Totals over several days, and the days they cover. */
const [rainOfDay, rainOfDays, daysOfTotal, wetDaysOfTotal] = ['PRCP', 'MDPR', 'DAPR', 'DWPR'] as const;
const ofRain: readonly string[] = [rainOfDay, rainOfDays, daysOfTotal, wetDaysOfTotal];
const missing = '-9999';
const wholeNumber = /^-?\d{1,6}$/;
const tenthsInOne = 10;
/** Longest time that a total is believed to cover [day]; ours. */
const longestTotal_days = 366;
/** Days named in one problem before the rest are only counted [count]. Ours. */
const daysNamed_count = 10;
const { low: firstDay, high: lastDay } = rain.columns.date.hard!;

/** The values of one station being read: tenths of mm and their flags. */
class StationReader {
  readonly readings: RainReading[] = [];
  readonly problems: Problem[] = [];
  readonly notUsed: NotUsed[] = [];
  private readonly tallies = new Map<string, { problem: Problem; count: number; days: string[] }>();
  private readonly named = new Map<TableProblemCode, { count: number; place: Place; lastRow: number }>();
  private readonly totals: StationValue[] = [];
  private readonly daysOf = new Map<number, number>();
  private readonly place: Place;
  private readonly file: string;

  constructor(file: string, gaugeId: string) {
    this.file = file;
    this.place = { file, gaugeId };
  }

  list(line: StationLine, value: string, code: TableProblemCode, column?: string): void {
    const whole = { file: this.file, row: line.row, value, code, cells: line.cells };
    this.notUsed.push(column === undefined ? whole : { ...whole, column });
  }

  /** One problem for each, up to a number; then they are counted. */
  name(code: TableProblemCode, at: Pick<StationValue, 'row' | 'column'> | { row: number }, facts: Problem['facts']) {
    const place = { ...this.place, ...('column' in at ? { column: at.column } : {}), row: at.row };
    const { count } = this.named.get(code) ?? { count: 0 };
    if (count < namedOneByOne) this.problems.push(tableProblem(code, place, facts));
    const first = count <= namedOneByOne ? place : this.named.get(code)!.place;
    this.named.set(code, { count: count + 1, place: first, lastRow: at.row });
  }

  /** One problem for all days with the same flag. */
  private tally(value: StationValue, code: TableProblemCode, flag: string): void {
    const before = this.tallies.get(`${code} ${flag}`);
    const place = { ...this.place, row: value.row, column: value.column, day: value.dayText };
    const tally = before ?? { problem: tableProblem(code, place, { value: flag }), count: 0, days: [] };
    tally.count++;
    if (tally.days.length < daysNamed_count) tally.days.push(value.dayText);
    this.tallies.set(`${code} ${flag}`, tally);
  }

  read(line: StationLine, value: StationValue): void {
    const written = value.value.trim();
    const isMissing = written === '' || written === missing;
    if (value.day === null || value.day < firstDay || value.day > lastDay) {
      if (isMissing) return; // slots behind the end of a month are no days
      const facts = { value: value.dayText, expected: 'a day', reason: 'cell.date_not_real', readings: [] };
      this.name('rainFile.day_unreadable', value, facts);
      this.list(line, written, 'rainFile.day_unreadable', value.column);
    } else if (value.element === daysOfTotal) {
      const days = Number(written);
      const isBelieved = wholeNumber.test(written) && days >= 1 && days <= longestTotal_days;
      if (!isMissing && value.qualityFlag === '' && isBelieved) this.daysOf.set(value.day, days);
    } else if (value.element === rainOfDays) {
      if (!isMissing) this.totals.push(value);
    } else if (value.element === rainOfDay) {
      const rain_mm = isMissing ? this.unread(value) : this.depth(line, value, written);
      this.readings.push({ day: value.day, rain_mm, row: value.row });
    }
  }

  private unread(value: StationValue): null {
    if (value.measurementFlag === 'P') this.tally(value, 'station.presumed_zero', 'P');
    return null;
  }

  private depth(line: StationLine, value: StationValue, written: string): number | null {
    const { qualityFlag, measurementFlag } = value;
    const isTrace = measurementFlag === 'T';
    if (qualityFlag !== '' || measurementFlag === 'P') {
      const code = qualityFlag === '' ? 'station.presumed_zero' : 'station.failed_check';
      this.tally(value, code, qualityFlag === '' ? 'P' : qualityFlag);
      this.list(line, written, code, value.column);
      return null;
    }
    if (!wholeNumber.test(written) || (isTrace && Number(written) !== 0)) {
      const facts = { value: shown(isTrace ? `${written} T` : written), expected: 'a whole number [0.1 mm]' };
      this.name('rainFile.value_unreadable', value, { ...facts, reason: 'cell.not_whole' });
      this.list(line, written, 'rainFile.value_unreadable', value.column);
      return null;
    }
    if (isTrace) this.tally(value, 'station.trace', 'T');
    if (value.sourceFlag === 'S') this.tally(value, 'station.from_synoptic', 'S');
    return Number(written) / tenthsInOne;
  }

  /** The days that a total covers are unknown, whatever else was written for them. */
  private spreadTotals(): readonly RainReading[] {
    const covered = new Set<number>();
    for (const total of this.totals) {
      const day = total.day!;
      const days = this.daysOf.get(day);
      const value = wholeNumber.test(total.value.trim()) ? Number(total.value) / tenthsInOne : shown(total.value);
      for (let i = 0; i < (days ?? 1); i++) covered.add(day - i);
      if (days === undefined) this.name('station.accumulated_unsaid', total, { value, to: total.dayText });
      else this.name('station.accumulated', total, { value, days, from: isoDay(day - days + 1), to: total.dayText });
    }
    if (covered.size === 0) return this.readings;
    return this.readings.map((reading) => (covered.has(reading.day) ? { ...reading, rain_mm: null } : reading));
  }

  finish(): readonly RainReading[] {
    const readings = this.spreadTotals();
    for (const { problem, count, days } of this.tallies.values())
      this.problems.push({ ...problem, facts: { ...problem.facts, count, days } });
    for (const [value, { count, place, lastRow }] of this.named)
      if (count > namedOneByOne)
        this.problems.push(
          tableProblem('rainFile.more', place, { value, count: count - namedOneByOne, lastRow, expected: '' }),
        );
    return readings;
  }
}

/** Which station is the gauge's: the only one, or the one that has its id. */
function stationOf(stations: readonly string[], gaugeId: string): string | undefined {
  return stations.length === 1 ? stations[0] : stations.find((id) => id === gaugeId);
}

/**
 * Which readings has a gauge from a station file of GHCN-Daily? Tenths of mm become mm; what failed a check, what was presumed
 * and what was added up over days is unknown; all of it is named.
 *
 * @param gaugeId - the gauge [text]
 * @param file - the file's path within the folder [text]
 * @param lines - the lines with anything in them, with their values
 * @returns readings: day [day], rain [mm] or null, row; with the problems and what was not used
 * @problem station.several - more stations than one, none with the gauge's id; nothing is used
 * @problem station.failed_check - a value with a quality flag is not used
 * @problem station.presumed_zero - "missing presumed zero" is unknown, never a dry day
 * @problem station.accumulated - the days of one total are unknown
 * @law a day is never 0 mm unless the station measured 0 or a trace
 * @source ghcn-daily, readme section III
 */
export function readStationRain(gaugeId: string, file: string, lines: readonly StationLine[]): RainRead {
  const reader = new StationReader(file, gaugeId);
  const place = { file, gaugeId };
  const known = lines.filter(({ values }) => values !== null && values.length > 0);
  const aboutRain = known.filter(({ values }) => ofRain.includes(values![0]!.element));
  const stations = [...new Set(aboutRain.map(({ values }) => values![0]!.stationId))];
  const station = stationOf(stations, gaugeId);
  const tell = (code: TableProblemCode, facts: Problem['facts']) =>
    reader.problems.push(tableProblem(code, place, facts));
  let count = 0;
  for (const line of lines)
    if (line.values === null) {
      count++;
      const value = shown(line.cells.join(','));
      reader.name('station.line_unreadable', line, { value, expected: 'station, day, element, value, flags' });
      reader.list(line, value, 'station.line_unreadable');
    }
  const elements = new Set(known.map(({ values }) => values![0]!.element).filter((name) => !ofRain.includes(name)));
  if (elements.size > 0)
    tell('station.other_elements', { value: [...elements].join(', '), count: known.length - aboutRain.length });
  if (stations.length === 0) tell('station.none', { value: file, expected: rainOfDay });
  else if (station === undefined) {
    tell('station.several', { value: file, expected: gaugeId, stations });
    for (const line of aboutRain) reader.list(line, shown(line.cells.join(',')), 'station.several');
    count += aboutRain.length;
  } else {
    const own = aboutRain.filter(({ values }) => values![0]!.stationId === station);
    tell('station.file', { value: station, expected: 'GHCN-Daily', count: own.length });
    if (stations.length > 1)
      tell('station.others_left', {
        value: station,
        stations: stations.filter((id) => id !== station),
        count: aboutRain.length - own.length,
      });
    for (const line of own) for (const value of line.values!) reader.read(line, value);
    count += own.length;
  }
  const readings = reader.finish();
  const { problems, notUsed } = reader;
  return { readings, problems, notUsed, unlistedRows: 0, count, usable: station !== undefined };
}
