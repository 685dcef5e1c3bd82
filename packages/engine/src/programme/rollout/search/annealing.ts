import type { SearchRules } from './searchRules.ts';

/** What the search does at a poll: go on, begin anew from nothing, or go on from the best of all beginnings. */
export type Turn = 'on' | 'anew' | 'best';

/**
 * How hot a search is, by what is spent of its budget. One fall of temperature over the whole budget, or, where the pace of the first tries
 * says that there are enough for it, several beginnings that share the first part of the budget and one gentler fall from the best of
 * them: where few plans are good (tight fleets, narrow windows) one beginning is often caught far from them.
 *
 * @definition ours
 */
export class Annealing {
  temperature: number;
  private readonly first: number;
  private readonly rules: SearchRules;
  private readonly jobs: number;
  private starts = 0;
  private start = 0;

  constructor(rules: SearchRules, scale: number, jobs: number) {
    this.rules = rules;
    this.first = rules.firstTemperature_ratio * scale;
    this.jobs = Math.max(1, jobs);
    this.temperature = this.first;
  }

  /** Sets the temperature for the tries until the next poll. `spent`: of the budget, 0 to 1; `tries` so far. */
  poll(spent: number, tries: number): Turn {
    const { rules } = this;
    if (this.starts === 0 && spent >= rules.paceAfter_fraction) {
      const triesAJob = tries / spent / this.jobs;
      this.starts = Math.max(
        1,
        Math.min(rules.mostStarts_count, Math.floor(triesAJob / rules.triesAJobAndStart_count)),
      );
    }
    if (this.starts <= 1) {
      this.cool(1, spent);
      return 'on';
    }
    const share = rules.startsShare_fraction / this.starts;
    const start = Math.min(this.starts, Math.floor(spent / share));
    const isLast = start === this.starts;
    if (isLast) this.cool(rules.gentler_ratio, (spent - rules.startsShare_fraction) / (1 - rules.startsShare_fraction));
    else this.cool(1, (spent - start * share) / share);
    if (start === this.start) return 'on';
    this.start = start;
    return isLast ? 'best' : 'anew';
  }

  private cool(from: number, spent: number): void {
    const { firstTemperature_ratio, lastTemperature_ratio } = this.rules;
    const fall = Math.log(lastTemperature_ratio / (from * firstTemperature_ratio));
    this.temperature = from * this.first * Math.exp(fall * spent);
  }
}
