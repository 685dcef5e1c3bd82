import { isoDay, type Problem } from '../../kernel/index.ts';
import type { FiveMinuteMaxima } from './fiveMinuteMaxima.ts';
import { stormProblem } from './stormProblem.ts';

/** What is wrong with a record of short intervals: what of it was left aside, and why. */
export function recordProblems(gaugeId: string, record: FiveMinuteMaxima): readonly Problem[] {
  const { coarse_count, overlapping_count, unlikely_count, firstUnlikelyDay, partYears, thinYears } = record;
  const tell = (code: Parameters<typeof stormProblem>[0], facts: Parameters<typeof stormProblem>[3]) =>
    stormProblem(code, gaugeId, 'shortRecord', facts);
  return [
    ...(coarse_count > 0 ? [tell('storm.record_too_coarse', { count: coarse_count })] : []),
    ...(overlapping_count > 0 ? [tell('storm.record_overlaps', { count: overlapping_count })] : []),
    ...(unlikely_count > 0
      ? [tell('storm.record_unlikely', { count: unlikely_count, day: isoDay(firstUnlikelyDay!) })]
      : []),
    ...(partYears.length + thinYears.length > 0
      ? [tell('storm.years_left_out', { partYears: partYears.map(String), thinYears: thinYears.map(String) })]
      : []),
  ];
}
