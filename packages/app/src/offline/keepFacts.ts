import { get, set } from 'idb-keyval';
import type { FactsAnswer, ReadingsAnswer } from '../water/factsOfAnswer.ts';
import { answersStore } from './keepOverview.ts';

/** Readings with what they are called. */
export interface ReadingsKept {
  readonly of: string;
  readonly readings: ReadingsAnswer;
}

/** An answer that is kept, and when it was read [ms since 1970]. */
export interface Kept<T> {
  readonly at: number;
  readonly data: T;
}

/**
 * What the sites that were looked at are judged by, kept as every other answer is: a site by its id, and the last readings of each
 * gauge. A browser that keeps nothing is no fault.
 */
export class KeptFacts {
  constructor(
    private readonly programmeId: string,
    /** The form answers have: those of another form are not used. */
    private readonly form: string,
  ) {}

  site(siteId: string): Promise<Kept<FactsAnswer> | null> {
    return this.find(this.nameOf('siteFacts', siteId));
  }

  readings(gaugeId: string): Promise<Kept<ReadingsKept> | null> {
    return this.find(this.nameOf('readings', gaugeId));
  }

  keepSite(siteId: string, answer: FactsAnswer): Promise<void> {
    return this.keep(this.nameOf('siteFacts', siteId), answer);
  }

  keepReadings(gaugeId: string, read: ReadingsKept): Promise<void> {
    return this.keep(this.nameOf('readings', gaugeId), read);
  }

  private nameOf(kind: string, id: string): string {
    return JSON.stringify(['programme', this.programmeId, kind, id]);
  }

  private async find<T>(name: string): Promise<Kept<T> | null> {
    try {
      const found = await get<Kept<T> & { readonly form: string }>(name, answersStore());
      return found?.form === this.form ? found : null;
    } catch {
      return null;
    }
  }

  private async keep(name: string, data: FactsAnswer | ReadingsKept): Promise<void> {
    try {
      await set(name, { form: this.form, at: Date.now(), data }, answersStore());
    } catch {
      // What is not kept is asked for again.
    }
  }
}
