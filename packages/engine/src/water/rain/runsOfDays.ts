/** An unbroken run of days as offsets; `to` is not included. */
export interface DayRun {
  readonly from: number;
  readonly to: number;
}

/**
 * Where do days of one kind follow one another without a break?
 *
 * @param days - how many days there are [day], 0 or more
 * @param isOne - does the day at this offset belong?
 * @returns the runs in order: from [day] and to [day], not included
 * @definition ours
 * @example
 * runsOfDays(5, (day) => day !== 2) // → [{ from: 0, to: 2 }, { from: 3, to: 5 }]
 */
export function runsOfDays(days: number, isOne: (day: number) => boolean): readonly DayRun[] {
  const runs: DayRun[] = [];
  let from = -1;
  for (let day = 0; day <= days; day++) {
    const one = day < days && isOne(day);
    if (one && from < 0) from = day;
    else if (!one && from >= 0) {
      runs.push({ from, to: day });
      from = -1;
    }
  }
  return runs;
}
