import type { DraftProgramme, MadeReading, PlantedFault } from './draft.ts';

type RainFault = (rows: MadeReading[], at: number) => { at: number; column: string; code: string; about: string };

/** One slip of the observer each, in the order planted, each in its own stretch of a record. */
const slips: readonly RainFault[] = [
  (rows, at) => {
    const { date } = rows[at]!;
    rows[at] = { ...rows[at]!, date: `${date.slice(8)}/${date.slice(5, 7)}/${date.slice(0, 4)}` };
    return { at, column: 'date', code: 'rainFile.day_unreadable', about: 'a date written day first' };
  },
  (rows, at) => {
    rows.splice(at + 1, 0, { date: rows[at]!.date, rain_mm: Number(rows[at]!.rain_mm) + 7.5 });
    return { at: at + 1, column: '', code: 'rain.day_twice_differs', about: 'one day read twice with two amounts' };
  },
  (rows, at) => {
    rows.splice(at, 0, ...rows.splice(at + 1, 3));
    return {
      at: at + 3,
      column: '',
      code: 'rain.out_of_order',
      about: 'three days entered before the day before them',
    };
  },
  (rows, at) => {
    rows[at] = { ...rows[at]!, rain_mm: -0.4 };
    return { at, column: 'rain_mm', code: 'rain.negative', about: 'less than no rain' };
  },
  (rows, at) => {
    rows[at] = { ...rows[at]!, rain_mm: 2140 };
    return { at, column: 'rain_mm', code: 'rain.absurd', about: 'a decimal point left out: 21.40 became 2140' };
  },
];

/** Plants a slip of each kind, going round the first three gauges. */
export function plantRainFaults(draft: DraftProgramme): PlantedFault[] {
  return slips.map((slip, i) => {
    const { gaugeId, rows } = draft.rain[i % 3]!;
    const { at, ...fault } = slip(rows, plainStretch(rows, 1500 + 700 * i));
    return { file: `rain/${gaugeId}.csv`, row: at + 2, ...fault };
  });
}

/** The first place from here on with ten readings and no gap among them, so that a fault is known by its own mark. */
function plainStretch(rows: readonly MadeReading[], from: number): number {
  let run = 0;
  for (let i = from; i < rows.length; i++) {
    run = typeof rows[i]!.rain_mm === 'number' && Number(rows[i]!.date.slice(8)) < 13 ? run + 1 : 0;
    if (run === 10) return i - 5;
  }
  throw new Error('no ten readings in a row to plant a fault among');
}
