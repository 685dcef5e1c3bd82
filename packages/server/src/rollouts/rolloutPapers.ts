import { dayOnClock, isoDay } from '@eavewell/engine';
import type { RolloutSheet, RolloutTripAnswer } from '@eavewell/tables';
import type { Work } from '@eavewell/work';
import type { PackMade } from '../kits/packTask.ts';
import type { OpenProgramme } from '../openProgramme.ts';
import type { RolloutPaperAsked } from './rolloutPaperTask.ts';
import type { Rollouts } from './rollouts.ts';

/** Which plan, and in which language of paper. */
export interface PaperWanted {
  readonly planId: string | null;
  readonly language: string;
}

/** A paper, or what there is none of. */
export type PaperFound = PackMade | 'plan' | 'trip' | 'crew';

/** What of a rollout is printed and carried: laid in a thread, from the same answers as the pages show. */
export class RolloutPapers {
  constructor(
    private readonly rollouts: Pick<Rollouts, 'sheet' | 'trip'>,
    private readonly work: Work,
  ) {}

  /** The manifest of one trip, sheets of what is brought to its store before, or the notices to its villages. */
  async ofTrip(
    kind: 'manifest' | 'hauls' | 'notices',
    programme: OpenProgramme,
    tripId: string,
    wanted: PaperWanted,
  ): Promise<PaperFound> {
    const found = await this.rollouts.trip(programme, { ...wanted, tripId });
    if (typeof found === 'string') return found;
    const { hauls } = JSON.parse(found.text) as RolloutTripAnswer;
    if (kind === 'hauls' && hauls.length === 0) return 'trip';
    return this.laid({ kind, trips: [found.text], crew: null }, wanted);
  }

  /** Notices to every village a crew comes to in a month (`2026-06`). */
  async ofMonth(programme: OpenProgramme, month: string, wanted: PaperWanted): Promise<PaperFound> {
    const sheet = await this.sheet(programme, wanted);
    if (sheet === null) return 'plan';
    const ids = sheet.crews
      .flatMap(({ trips }) => trips)
      .filter(({ stops, state }) => state !== 'done' && stops.some(({ arrives }) => arrives?.startsWith(month)))
      .map(({ tripId }) => tripId);
    const trips = await this.tripsOf(programme, ids, wanted);
    if (trips === null || trips.length === 0) return 'trip';
    return this.laid({ kind: 'notices', trips: trips.map((text) => inMonth(text, month)), crew: null }, wanted);
  }

  /** What a crew does on the trips it has not done yet. */
  async ofCrew(programme: OpenProgramme, crewId: string, wanted: PaperWanted): Promise<PaperFound> {
    const sheet = await this.sheet(programme, wanted);
    if (sheet === null) return 'plan';
    const crew = sheet.crews.find((one) => one.crewId === crewId);
    if (crew === undefined) return 'crew';
    const { trips, ...figures } = crew;
    const ids = trips.filter(({ state }) => state !== 'done').map(({ tripId }) => tripId);
    const texts = await this.tripsOf(programme, ids, wanted);
    if (texts === null) return 'trip';
    const plan = sheet.plans.find(({ planId }) => planId === sheet.planId)?.name ?? '';
    return this.laid(
      { kind: 'itinerary', trips: texts, crew: { programme: sheet.programme, plan, crew: figures } },
      wanted,
    );
  }

  private async sheet(programme: OpenProgramme, wanted: PaperWanted): Promise<RolloutSheet | null> {
    const text = await this.rollouts.sheet(programme, wanted);
    return text === null ? null : (JSON.parse(text) as RolloutSheet);
  }

  /** Trips one after the other; null where one is there no more. */
  private async tripsOf(
    programme: OpenProgramme,
    ids: readonly string[],
    wanted: PaperWanted,
  ): Promise<readonly string[] | null> {
    const texts: string[] = [];
    for (const tripId of ids) {
      const found = await this.rollouts.trip(programme, { ...wanted, tripId });
      if (typeof found === 'string') return null;
      texts.push(found.text);
    }
    return texts;
  }

  private laid(
    asked: Pick<RolloutPaperAsked, 'kind' | 'trips' | 'crew'>,
    { language }: PaperWanted,
  ): Promise<PackMade> {
    const now = new Date();
    const two = (value: number) => String(value).padStart(2, '0');
    const printed = {
      printedOn: isoDay(dayOnClock(now)),
      printedAt: `${two(now.getHours())}:${two(now.getMinutes())}`,
    };
    return this.work.start<PackMade>('rolloutPaper', { ...asked, language, ...printed } satisfies RolloutPaperAsked)
      .result;
  }
}

/** A trip with the stops it comes to in a month alone. */
function inMonth(text: string, month: string): string {
  const answer = JSON.parse(text) as {
    readonly trip: { readonly stops: readonly { readonly arrives: string | null }[] };
  };
  const stops = answer.trip.stops.filter(({ arrives }) => arrives?.startsWith(month));
  return JSON.stringify({ ...answer, trip: { ...answer.trip, stops } });
}
