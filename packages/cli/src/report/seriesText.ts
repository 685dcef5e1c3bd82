import { filledDay, isoDay, madeDay, measured, neighbourDay, type StorageSeries } from '@eavewell/engine';

/** Daily litres and millimetres are written to the millionth. */
const millionths = 1e6;

function rounded(value: number): number {
  if (!Number.isFinite(value)) throw new Error(`the daily series would hold ${value}`);
  return Math.round(value * millionths) / millionths;
}

function list(values: Float64Array): string {
  return `[${Array.from(values, rounded).join(',')}]`;
}

/** How the rain of a day is known, as a word. */
function knownAs(state: number | undefined): 'measured' | 'filled' | 'neighbours' | 'made' | 'unknown' {
  if (state === measured) return 'measured';
  if (state === neighbourDay) return 'neighbours';
  if (state === madeDay) return 'made';
  return state === filledDay ? 'filled' : 'unknown';
}

/** The daily series of one body of water as JSON. */
export function seriesJson(series: StorageSeries): string {
  const known = Array.from(series.state, (state) => `"${knownAs(state)}"`);
  const dry = Array.from(series.dry, (day) => (day === 1 ? 'true' : 'false'));
  return `{"tankIds":${JSON.stringify(series.tankIds)},"firstDay":"${isoDay(series.firstDay)}","rain_mm":${list(series.rain_mm)},"known":[${known.join(',')}],"inflow_L":${list(series.inflow_L)},"judgedAsked_L":${list(series.judgedAsked_L)},"content_L":${list(series.content_L)},"judgedTaken_L":${list(series.judgedTaken_L)},"otherTaken_L":${list(series.otherTaken_L)},"spill_L":${list(series.spill_L)},"secondSource_L":${list(series.secondSource_L)},"dry":[${dry.join(',')}]}`;
}

const columns = [
  'date',
  'rain_mm',
  'known',
  'inflow_L',
  'judgedAsked_L',
  'content_L',
  'judgedTaken_L',
  'otherTaken_L',
  'spill_L',
  'secondSource_L',
  'dry',
];

/** The daily series of one body of water as CSV, one line a day. */
export function seriesCsv(series: StorageSeries): string {
  const lines = [columns.join(',')];
  for (let day = 0; day < series.rain_mm.length; day++) {
    const known = knownAs(series.state[day]);
    lines.push(
      [
        isoDay(series.firstDay + day),
        known === 'unknown' ? '' : rounded(series.rain_mm[day]!),
        known,
        rounded(series.inflow_L[day]!),
        rounded(series.judgedAsked_L[day]!),
        rounded(series.content_L[day]!),
        rounded(series.judgedTaken_L[day]!),
        rounded(series.otherTaken_L[day]!),
        rounded(series.spill_L[day]!),
        rounded(series.secondSource_L[day]!),
        series.dry[day] === 1 ? 'yes' : 'no',
      ].join(','),
    );
  }
  return `${lines.join('\n')}\n`;
}
