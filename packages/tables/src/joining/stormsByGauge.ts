import type { GaugeFacts, ShortReading, StormCoefficients, StormFacts } from '@eavewell/engine';
import type { TablesRead } from './tablesRead.ts';

type StormsOfGauge = Pick<GaugeFacts, 'storms' | 'stormCoefficients' | 'shortRain'>;

const minutes_per_h = 60;

const minuteOf = (time: string): number => {
  const [hours = 0, minutes = 0] = time.split(':').map(Number);
  return hours * minutes_per_h + minutes;
};

/** What is said of storms, by gauge: stated ones by return period, the coefficient set, and short intervals in the order of time. */
export function stormsByGauge(tables: TablesRead): ReadonlyMap<string, StormsOfGauge> {
  const stated = new Map<string, StormFacts[]>();
  const sets = new Map<string, StormCoefficients>();
  const short = new Map<string, ShortReading[]>();
  for (const { values } of tables.storms?.rows ?? []) {
    const { returnPeriod_years, intensity_mm_per_h, low_mm_per_h, high_mm_per_h, source } = values;
    const one = {
      returnPeriod_years: returnPeriod_years!,
      intensity_mm_per_h: intensity_mm_per_h!,
      low_mm_per_h,
      high_mm_per_h,
      source,
    };
    listOf(stated, values.gaugeId!).push(one);
  }
  for (const { values } of tables.stormCoefficients?.rows ?? []) {
    const { gaugeId, lambda, kappa, theta_h, eta, leastPeriod_years, mostPeriod_years, source } = values;
    const powers = { lambda: lambda!, kappa: kappa!, theta_h: theta_h!, eta: eta! };
    sets.set(gaugeId!, { ...powers, leastPeriod_years, mostPeriod_years, source });
  }
  for (const { values } of tables.shortRain?.rows ?? []) {
    const { gaugeId, date, time, interval_min, rain_mm } = values;
    const reading = { day: date!, minuteOfDay: minuteOf(time!), interval_min: interval_min!, rain_mm: rain_mm! };
    listOf(short, gaugeId!).push(reading);
  }
  const ids = new Set([...stated.keys(), ...sets.keys(), ...short.keys()]);
  return new Map(
    [...ids].map((gaugeId) => [
      gaugeId,
      {
        storms: (stated.get(gaugeId) ?? []).sort((a, b) => a.returnPeriod_years - b.returnPeriod_years),
        stormCoefficients: sets.get(gaugeId) ?? null,
        shortRain: (short.get(gaugeId) ?? []).sort((a, b) => a.day - b.day || a.minuteOfDay - b.minuteOfDay),
      },
    ]),
  );
}

function listOf<T>(lists: Map<string, T[]>, id: string): T[] {
  const list = lists.get(id) ?? [];
  lists.set(id, list);
  return list;
}
