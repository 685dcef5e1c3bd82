/**
 * How likely is it that somebody who comes has to wait, where people come at random and each takes a random time at one of several taps?
 *
 * @param load_factor - how many taps would be busy on average [number], 0 or more: people a minute × minutes each
 * @param taps_count - taps [count], 1 or more
 * @returns share of those who come that wait [fraction]; 1 where more come than the taps can serve
 * @law never falls with the load, never rises with the taps
 * @source erlang-1917, waiting formula, by the recurrence of the loss formula (from memory)
 * @example
 * erlangWaiting_fraction(0.5, 1) // → 0.5
 * erlangWaiting_fraction(2, 2) // → 1
 */
export function erlangWaiting_fraction(load_factor: number, taps_count: number): number {
  if (load_factor <= 0) return 0;
  if (load_factor >= taps_count) return 1;
  let lost = 1;
  for (let taps = 1; taps <= taps_count; taps++) lost = (load_factor * lost) / (taps + load_factor * lost);
  const busy = load_factor / taps_count;
  return lost / (1 - busy * (1 - lost));
}

/**
 * How long does somebody wait on average for a tap, where people come at random and each takes a random time?
 *
 * @param comers_per_min - people who come [1/min], 0 or more
 * @param filling_min - mean time of one at a tap [min], 0 or more
 * @param taps_count - taps [count], 1 or more
 * @returns mean wait before the tap is free [min]; Infinity where more come than the taps can serve
 * @law never falls with the comers or their time, never rises with the taps
 * @source erlang-1917, mean wait = share that waits × time at a tap ÷ (taps − load) (from memory)
 * @example
 * erlangMeanWait_min(0.5, 1, 1) // → 1
 */
export function erlangMeanWait_min(comers_per_min: number, filling_min: number, taps_count: number): number {
  const load_factor = comers_per_min * filling_min;
  if (load_factor <= 0) return 0;
  if (load_factor >= taps_count) return Infinity;
  return (erlangWaiting_fraction(load_factor, taps_count) * filling_min) / (taps_count - load_factor);
}
