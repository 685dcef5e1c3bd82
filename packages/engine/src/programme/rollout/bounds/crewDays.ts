import type { RolloutProblem } from '../problem.ts';

/**
 * How many crews work on each day, at the most?
 *
 * @param problem - the rollout
 * @param more_days - days that each crew goes on after its last working day [day]
 * @returns crews by day [count], `horizon_days` and those days long
 * @definition ours
 */
export function crewsAtWork({ crews, horizon_days }: RolloutProblem, more_days: number): Float64Array {
  const atWork = new Float64Array(horizon_days + more_days);
  for (const { works, freeFrom } of crews) {
    let next = Math.floor(freeFrom);
    for (let day = next; day < horizon_days; day++) {
      if (works[day] !== 1) continue;
      atWork[day] = atWork[day]! + 1;
      next = day + 1;
    }
    for (let day = next; day < Math.min(atWork.length, next + more_days); day++) atWork[day] = atWork[day]! + 1;
  }
  return atWork;
}

/**
 * How many days may pass while a crew works so many, at the longest?
 *
 * @param problem - the rollout
 * @param works_days - working days, not whole [day]
 * @returns the longest stretch of the calendar that holds no more of them for any crew [day]; to the horizon at the most
 * @definition ours
 */
export function longestSpan({ crews, horizon_days }: RolloutProblem, works_days: number): number {
  const whole = Math.ceil(works_days - 1e-9);
  let longest = 0;
  for (const { works, freeFrom } of crews) {
    const days: number[] = [];
    for (let day = Math.floor(freeFrom); day < horizon_days; day++) if (works[day] === 1) days.push(day);
    // From within one working day to the end of the one that many later: what rest lies between them counts.
    for (let at = 0; at + whole < days.length; at++) longest = Math.max(longest, days[at + whole]! - days[at]! - whole);
  }
  return works_days + longest;
}

/**
 * On which day has a crew worked so many days from a time on, at the earliest of all crews?
 *
 * @param problem - the rollout
 * @param from - from when [day]
 * @param works_days - working days [day]
 * @returns the day on which they end; the horizon where they do not
 * @definition ours
 */
export function earliestEnd({ crews, horizon_days }: RolloutProblem, from: number, works_days: number): number {
  let earliest = horizon_days;
  for (const { works, freeFrom } of crews) {
    const start = Math.max(from, freeFrom);
    let left = works_days - 1e-9;
    for (let day = Math.floor(start); day < earliest; day++) {
      if (works[day] === 1) left -= day < start ? 1 - (start - day) : 1;
      if (left <= 0) earliest = day;
    }
  }
  return earliest;
}
